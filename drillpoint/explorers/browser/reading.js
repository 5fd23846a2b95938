// Reading what is typed.

const VULGAR = { "½": 1 / 2, "¼": 1 / 4, "¾": 3 / 4, "⅛": 1 / 8, "⅜": 3 / 8, "⅝": 5 / 8, "⅞": 7 / 8, "⅓": 1 / 3, "⅔": 2 / 3 };
const UNIT_WORDS = [
  [/^(mm\.?|millimet(re|er)s?)$/, "mm", 1],
  [/^(cm\.?|centimet(re|er)s?)$/, "mm", 10],
  [/^(m\.?|met(re|er)s?)$/, "mm", 1000],
  [/^(in\.?|inch|inches|"|″|”|“|''|’’|′′)$/, "mm", MM_PER_INCH],
  [/^(°|º|˚|deg\.?|degrees?)$/, "°", 1],
  [/^mm ?(\/|per) ?(rev\.?|r|turn)$/, "mm/rev", 1],
  [/^(in\.?|inch|") ?(\/|per) ?(rev\.?|r|turn)$/, "mm/rev", MM_PER_INCH],
  [/^mm ?(\/|per) ?min\.?$/, "mm/min", 1],
  [/^(in\.?|inch|") ?(\/|per) ?min\.?$/, "mm/min", MM_PER_INCH],
  [/^m ?(\/|per) ?min\.?$/, "m/min", 1],
  [/^(ft\.?|feet) ?(\/|per) ?min\.?$/, "m/min", (12 * MM_PER_INCH) / 1000],
  [/^(rpm|rev\.? ?(\/|per) ?min\.?)$/, "rev/min", 1],
  [/^min\.?$/, "min", 1],
  [/^s$/, "min", 1 / 60],
  [/^n$/, "N", 1],
  [/^kn$/, "N", 1000],
  [/^n ?[·.*]? ?m$/, "N·m", 1],
  [/^kw$/, "kW", 1],
  [/^n ?\/ ?mm(²|\^?2)$/, "N/mm²", 1],
  [/^mm ?\/ ?mm$/, "mm/mm", 1],
];
const EXAMPLES = {
  "°": ["118, 118.5 or 118,5"],
  mm: ["9.5, 9,5 or 3/8 in", "3/8, 0.375 or 9.5 mm"],
  "mm/rev": ["0.2, 0,2 or 0.008 in", "0.008 or 0.2 mm"],
};
const NUMBER = new RegExp(
  "^([+-]?)\\s*(?:(\\d+)(?:\\s+|-)(\\d+)\\s*/\\s*(\\d+)|(\\d+)\\s*/\\s*(\\d+)|(?:(\\d+)[ -]?)?([½¼¾⅛⅜⅝⅞⅓⅔])" +
  "|((?:\\d+(?:[.,]\\d+|\\.(?!\\d))?|[.,]\\d+)(?:[eE][+-]?\\d{1,3})?))\\s*(\\D*)$",
);

function readNumber(typed, unit, units) {
  const examples = EXAMPLES[unit] ?? ["3, 3.5 or 3,5"];
  const example = (units === "inch" && examples[1]) || examples[0];
  const refuse = (why) => ({ problem: `${why}. You can write ${example}.` });
  const text = typed.replace(/[−–‐‑]/g, "-").replace(/[⁄∕]/g, "/").trim();
  if (!text) return refuse("Nothing was typed");
  const m = text.length <= 60 && NUMBER.exec(text);
  if (!m) return refuse(`“${typed.slice(0, 40)}” cannot be read as one number`);
  const [, sign, whole, top, bottom, numerator, denominator, before, vulgar, decimal, rest] = m;
  if (decimal && /^[1-9]\d{0,2},\d{3}(e|$)/i.test(decimal)) return refuse(`“${decimal}” could mean two numbers; use a point`);
  let value;
  if (whole) value = +whole + top / bottom;
  else if (numerator) value = numerator / denominator;
  else if (vulgar) value = +(before ?? 0) + VULGAR[vulgar];
  else value = +decimal.replace(",", ".");
  if (!Number.isFinite(value)) return refuse("A fraction needs a lower number that is not zero");
  if (sign === "-") value = -value;
  const written = rest.trim().toLowerCase();
  const known = UNIT_WORDS.find(([pattern]) => pattern.test(written));
  if (written && !known) return refuse(`“${rest.trim().slice(0, 20)}” is no unit that belongs here`);
  // A feed may be typed as the length it is, for each turn or each minute.
  if (known && known[1] !== unit && !(known[1] === "mm" && /^mm\/(rev|min)$/.test(unit))) {
    return refuse(`This box is for ${{ "°": "an angle", mm: "a length", "": "a plain number" }[unit] ?? unit}`);
  }
  const inInches = INCH_UNITS[unit]?.[1];
  const factor = known ? known[2] : (units === "inch" && inInches) || 1;
  return { value: value * factor, inInches: factor === inInches, typed: text };
}
