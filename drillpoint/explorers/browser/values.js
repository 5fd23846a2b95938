// Writing values: the same rules as drillpoint/drawing/showing.py.

const MM_PER_INCH = 25.4; // exact by definition: international yard and pound agreement of 1959

function plainNumber(value, decimals) {
  let text = value.toFixed(decimals);
  if (text.includes(".")) text = text.replace(/0+$/, "").replace(/\.$/, "");
  return text === "-0" ? "0" : text;
}

function fraction(inches) {
  const parts = Math.floor(inches * 64 + 0.5);
  const whole = Math.floor(parts / 64);
  let [top, bottom] = [parts % 64, 64];
  while (top && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  if (!top) return `${whole}`;
  return whole ? `${whole} ${top}/${bottom}` : `${top}/${bottom}`;
}

const isFraction = (inches) => Math.abs(inches * 64 - Math.round(inches * 64)) < 64e-6;

function unitOf(name) {
  return name in numbers.quantities ? numbers.quantities[name].unit : "°";
}

function inInches(mm) {
  const inches = mm / MM_PER_INCH;
  return plainNumber(inches, inches >= 1 ? 3 : 4);
}

function show(name, value, units) {
  const unit = unitOf(name);
  if (unit === "°") return plainNumber(value, name in numbers.quantities ? numbers.quantities[name].decimals : 1) + "°";
  if (unit === "") return plainNumber(value, numbers.quantities[name].decimals);
  if (units === "mm") return `${plainNumber(value, value >= 1 ? 2 : 3)} mm`;
  const inches = value / MM_PER_INCH;
  return `${name === "diameter" && isFraction(inches) ? fraction(inches) : inInches(value)} in`;
}

function fill(parts, values, units) {
  return parts.replace(/\{(\w+)\}/g, (_, name) => show(name, values[name], units));
}

function describe(words, values, units) {
  return words.map((clause) => {
    const said = fill(clause.parts, values, units);
    if (!clause.judged) return said;
    const value = values[clause.judged];
    const judgement = value < clause.low ? clause.below : value > clause.high ? clause.above : clause.within;
    return said + fill(judgement, values, units);
  }).join("");
}

function workedLine(name, values, units) {
  const relation = numbers.relations[name];
  const letters = Object.fromEntries(relation.abbreviations.map((a) => [a, numbers.letters[a](values)]));
  const spelled = (key) => {
    const angle = numbers.angles.includes(key);
    const length = key in numbers.quantities ? unitOf(key) === "mm" : !angle;
    const value = key in letters ? letters[key] : values[key];
    const text = plainNumber(length && units === "inch" ? value / MM_PER_INCH : value, 4) + (angle ? "°" : "");
    return text.startsWith("-") ? `(${text})` : text;
  };
  const symbol = numbers.quantities[relation.result].symbol;
  const result = show(relation.result, values[relation.result], units);
  return `${symbol} = ${relation.text.replace(/⟦(\w+)⟧/g, (_, key) => spelled(key))} = ${result}`;
}
