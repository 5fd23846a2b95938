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

const unitOf = (name) => numbers.quantities[name].unit;

// What each unit is written as in inches, and how many of the metric unit make one.
const INCH_UNITS = {
  mm: ["in", MM_PER_INCH],
  "mm/rev": ["in/rev", MM_PER_INCH],
  "mm/min": ["in/min", MM_PER_INCH],
  "m/min": ["ft/min", (12 * MM_PER_INCH) / 1000],
};

// The unit that a value is written in.
function unitWritten(name, units) {
  const unit = unitOf(name);
  return units === "inch" && unit in INCH_UNITS ? INCH_UNITS[unit][0] : unit;
}

function inInches(length) {
  return plainNumber(length, Math.abs(length) >= 1 ? 3 : 4);
}

function show(name, value, units) {
  if (!Number.isFinite(value)) return "…"; // not worked out yet
  const { unit, decimals } = numbers.quantities[name];
  if (unit === "mm" && units === "mm") return `${plainNumber(value, Math.abs(value) >= 1 ? 2 : 3)} mm`;
  if (units === "inch" && unit in INCH_UNITS) {
    const [written, factor] = INCH_UNITS[unit];
    const inches = value / factor;
    return `${name === "diameter" && isFraction(inches) ? fraction(inches) : inInches(inches)} ${written}`;
  }
  return plainNumber(value, decimals) + (unit === "°" || !unit ? unit : ` ${unit}`);
}

// likes: what else than itself a name is written like.
function fill(parts, values, units, likes = {}) {
  return parts.replace(/\{(\w+)\}/g, (_, name) => show(likes[name] ?? name, values[name], units));
}

function describe(words, values, units, likes) {
  return words.map((clause) => {
    const said = fill(clause.parts, values, units, likes);
    if (!clause.judged) return said;
    const value = values[clause.judged];
    if (!Number.isFinite(value)) return said;
    const { low = 0, high = 0 } = clause; // a limit that is not sent is 0
    const judgement = value < low ? clause.below : value > high ? clause.above : clause.within;
    return said + fill(judgement ?? "", values, units, likes);
  }).join("");
}

// How many of the metric unit make one inch, inch a turn or inch a minute, or foot a minute; 1 where nothing is turned over.
const inchFactor = (name) => INCH_UNITS[unitOf(name)]?.[1] ?? 1;

// Whether a formula gives the same in inches and feet. One with a number that stands for millimetres and metres does not.
function holdsInInches({ value, givens, result }, values) {
  const there = value(Object.fromEntries(givens.map((name) => [name, values[name] / inchFactor(name)])));
  const here = values[result] / inchFactor(result);
  return Math.abs(there - here) <= 1e-9 * Math.abs(here);
}

// A formula that holds only in metric units is worked out in them, and its result is turned into inches at the end.
function workedLine(name, values, units) {
  const relation = numbers.relations[name];
  const written = units === "inch" && holdsInInches(relation, values) ? "inch" : "mm";
  const letters = Object.fromEntries(relation.abbreviations.map((a) => [a, numbers.letters[a](values)]));
  const spelled = (key) => {
    const angle = numbers.angles.includes(key);
    // Letters that are no angles, such as the radius of the drill, are lengths.
    const factor = key in numbers.quantities ? inchFactor(key) : angle ? 1 : MM_PER_INCH;
    const value = key in letters ? letters[key] : values[key];
    const text = plainNumber(written === "inch" ? value / factor : value, 4) + (angle ? "°" : "");
    return text.startsWith("-") ? `(${text})` : text;
  };
  const { result } = relation;
  const { symbol } = numbers.quantities[result];
  const results = [...new Set([written, units].map((each) => show(result, values[result], each)))];
  return `${symbol} = ${relation.text.replace(/⟦(\w+)⟧/g, (_, key) => spelled(key))} = ${results.join(" = ")}`;
}
