// Reading a number as Python's read_number does: its patterns, units and limits come with the page as `table`.

class Refused extends Error {}
const refuse = (why) => { throw new Refused(why); };

function numberReader(table) {
  const at = (pattern, end = "") => new RegExp(`(?:${pattern})${end}`, "uy");
  // What Python counts as a part of a word, but for decimal digits and the low line.
  const ENDS = "(?![\\p{L}\\p{Nl}\\p{No}])";
  const numeral = at(table.numeral);
  const unit = at(table.unit, ENDS);
  const thousands = new RegExp(`^(?:${table.thousands})$`, "u");
  const raised = { "⁰": 0, "¹": 1, "²": 2, "³": 3, "⁴": 4, "⁵": 5, "⁶": 6, "⁷": 7, "⁸": 8, "⁹": 9, "⁻": "-", "⁺": "+" };
  const parts = new Map(
    Object.entries(table.parts).map(([whole, all]) => [whole, all.map((p) => ({ ...p, at: at(p.pattern, ENDS) }))]),
  );

  const matched = (pattern, text, place) => {
    pattern.lastIndex = place;
    return pattern.exec(text);
  };
  const afterSpaces = (text, place) => {
    while (text[place] === " ") place += 1;
    return place;
  };
  const unitAt = (text, place) => {
    const found = matched(unit, text, place);
    return found && { name: table.spelt[found.slice(1).findIndex((word) => word !== undefined)], end: unit.lastIndex };
  };
  const withUnit = (number, name) => (table.close.includes(name) ? `${number}${name}` : `${number} ${name}`);
  const keptIn = (name) => table.kinds[table.units[name][0]][1];

  function numeralAt(text, start) {
    const found = matched(numeral, text, start);
    if (!found) refuse(start < text.length ? "A number is expected here" : "There is no number here");
    const end = numeral.lastIndex;
    if (end < text.length && ".,/0123456789".includes(text[end]) && !unitAt(text, end)) {
      refuse("One number with one decimal point or comma is expected");
    }
    if ((found[0].match(/[0-9⁰¹²³⁴-⁹]/g) ?? []).length > table.most_digits) refuse("This number has too many digits");
    const shown = found[0].split(" ").filter(Boolean).join(" ");
    return { ...magnitude(found.groups), shown, end, whole: /^[0-9]+$/.test(shown) };
  }
  function magnitude(g) {
    if (g.decimal !== undefined) return { value: decimal(g), decimal: true };
    if (g.vulgar !== undefined) {
      const [top, bottom] = table.vulgar[g.vulgar];
      return { value: Number(g.before ?? 0) + top / bottom };
    }
    const [top, bottom] = g.whole === undefined ? [g.numerator, g.denominator] : [g.top, g.bottom];
    if (Number(bottom) === 0) refuse("A fraction cannot be divided by 0");
    if (g.whole === undefined) return { value: Number(top) / Number(bottom) };
    if (Number(top) >= Number(bottom)) refuse("The fraction after a whole number is less than one, as in 1 7/8");
    return { value: Number(g.whole) + Number(top) / Number(bottom) };
  }
  function decimal(g) {
    if (thousands.test(g.decimal)) {
      const [whole, part] = g.decimal.split(",");
      refuse(`The comma can be read in two ways: write ${whole}${part} or ${whole}.${part}`);
    }
    const power = g.exponent ?? g.power ?? [...(g.raised ?? "0")].map((c) => raised[c] ?? c).join("");
    const value = Number(`${g.decimal.replace(",", ".")}e${power}`);
    if (value === 0 && /[^0.,]/.test(g.decimal)) refuse("This number is too small to be told from 0");
    if (!Number.isFinite(value)) refuse("This number is too large");
    return value;
  }

  // Read the parts behind a unit, in falling order: 30′ 15″ behind 59°, 3 1/2 in behind 5 ft.
  function partsBehind(text, first, name, end) {
    const found = [];
    let previous = first;
    for (const part of parts.get(name) ?? []) {
      let start = afterSpaces(text, end);
      if (name === "ft" && text[start] === "-") start = afterSpaces(text, start + 1);
      if (!matched(numeral, text, start)) continue;
      const number = numeralAt(text, start);
      if (!matched(part.at, text, afterSpaces(text, number.end))) continue;
      const stop = part.at.lastIndex;
      if (!previous.whole) refuse("Only the last part may be broken");
      if (number.value >= part.most) refuse(`The ${part.unit} stay below ${part.most}`);
      found.push({ number, part });
      [previous, end] = [number, stop];
    }
    return { found, end };
  }

  function read(typed, box) {
    if ([...typed].length > table.longest) refuse(`This is longer than ${table.longest} characters`);
    const text = [...typed].map((c) => table.look_alikes[c] ?? c).join("").replace(/[ \r\n]+$/, "");
    const start = afterSpaces(text, 0);
    const sign = "+-".includes(text[start] ?? "?") ? text[start] : "";
    const first = numeralAt(text, afterSpaces(text, start + sign.length));
    let [name, end] = [box, first.end];
    if (end < text.length) {
      const found = unitAt(text, afterSpaces(text, end));
      if (!found) refuse("Behind the number only its unit is expected");
      ({ name, end } = found);
    }
    const behind = partsBehind(text, first, name, end);
    if (behind.end < text.length) refuse("Nothing more is expected behind the unit");
    const wanted = table.units[box][0];
    if (table.units[name][0] !== wanted) refuse(`This box asks for ${table.kinds[wanted][0]}`);
    const reading = behind.found.length ? several(first, name, behind.found) : single(first, name);
    if (!Number.isFinite(reading.value)) refuse("This number is too large");
    if (sign === "-") Object.assign(reading, { value: -reading.value, number: `-${reading.number}` });
    return { value: reading.value, unit: keptIn(box), echo: echo(reading) };
  }
  function single(number, name) {
    const factor = table.units[name][1];
    return { value: number.value * factor, number: number.shown, decimal: number.decimal, typedUnit: name, factor, unit: keptIn(name) };
  }
  function several(first, name, found) {
    const last = found.at(-1).part;
    const total = found.reduce((sum, f) => sum + f.number.value * (last.share / f.part.share), 0) + first.value * last.share;
    const shown = [withUnit(first.shown, name), ...found.slice(0, -1).map((f) => withUnit(f.number.shown, f.part.unit))];
    const factor = table.units[name][1];
    return {
      value: (total * factor) / last.share, number: [...shown, found.at(-1).number.shown].join(" "),
      typedUnit: last.unit, factor: factor / last.share, unit: keptIn(name),
    };
  }

  // How the text was read, step by step: 1 7/8 in = 1.875 in = 47.625 mm.
  function echo({ value, number, decimal, typedUnit, factor, unit }) {
    const plain = /^-?[0-9]*[.,]?[0-9]*$/.test(number);
    const steps = [withUnit(number, typedUnit)];
    if (decimal && number.includes(",") && plain) steps.push(`= ${withUnit(number.replace(",", "."), typedUnit)}`);
    else if (typedUnit in table.units && !plain) steps.push(equals(value / factor) + withUnit(sixDigits(value / factor), typedUnit));
    if (typedUnit !== unit) steps.push(equals(value) + withUnit(sixDigits(value), unit));
    return steps.join(" ");
  }
  const equals = (value) => {
    const near = Number(sixDigits(value));
    return Math.abs(near - value) <= 1e-12 * Math.max(Math.abs(near), Math.abs(value)) ? "= " : "≈ ";
  };

  return (typed, box) => {
    try {
      return read(typed, box);
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      const examples = table.kinds[table.units[box][0]][2];
      return { refused: `${error.message}. You can write ${examples.join(", ")}.` };
    }
  };
}

// A number to six digits, written as Python's ".6g" writes it.
function sixDigits(value) {
  if (value === 0) return Object.is(value, -0) ? "-0" : "0";
  // Enough digits to see every tie; of two equally near numbers the one with the even last digit is taken.
  const exact = Math.abs(value).toExponential(100);
  let [digits, power] = [exact.replace(".", "").split("e")[0], Number(exact.split("e")[1])];
  const [kept, rest] = [digits.slice(0, 6), digits.slice(6)];
  const tie = /^50*$/.test(rest);
  const up = tie ? Number(kept[5]) % 2 === 1 : rest[0] >= "5";
  let whole = String(Number(kept) + (up ? 1 : 0));
  if (whole.length > 6) [whole, power] = [whole.slice(0, 6), power + 1];
  const sign = value < 0 ? "-" : "";
  if (power < -4 || power >= 6) {
    const part = whole.slice(1).replace(/0+$/, "");
    return `${sign}${whole[0]}${part && `.${part}`}e${power < 0 ? "-" : "+"}${String(Math.abs(power)).padStart(2, "0")}`;
  }
  const plain = power < 0 ? `0.${"0".repeat(-power - 1)}${whole}` : `${whole.slice(0, power + 1)}.${whole.slice(power + 1)}`;
  return sign + plain.replace(/0+$/, "").replace(/\.$/, "");
}
