// One drawing: its elements are made once, then only their numbers change.

const number = (value) => plainNumber(value, 2);

function pathData(steps, coordinates) {
  return steps.map((step) => (typeof step === "string" ? step : number(coordinates[step]))).join(" ");
}

function barLength(longest, units) {
  const within = longest * (1 + 1e-9);
  if (units === "mm") {
    const steps = [-3, -2, -1, 0, 1, 2, 3].flatMap((power) => [1, 2, 5].map((digit) => [digit * 10 ** power, power]));
    const [length, power] = steps.filter(([step]) => step <= within).at(-1) ?? steps[0];
    return [length, `${plainNumber(length, Math.max(0, -power))} mm`];
  }
  const inches = within / MM_PER_INCH;
  const part = [1024, 512, 256, 128, 64, 32, 16, 8, 4, 2, 1].find((p) => p / 64 <= inches);
  if (part) return [(part / 64) * MM_PER_INCH, `${fraction(part / 64)} in`];
  const thousandths = [10, 5, 2, 1].find((n) => n / 1000 <= inches) ?? 1;
  return [(thousandths / 1000) * MM_PER_INCH, `${plainNumber(thousandths / 1000, 3)} in`];
}

const FILLINGS = new Set(["flank", "land", "flute", "paper", "section", "section_other"]);
const OUTLINES = new Set(["edge", "lip", "chisel"]);
const SECTIONS = { section: 45, section_other: -45 };

// Cut metal: a pattern for each kind in the scene. Its name is new each time, since another drawing may go away.
function makeHatching(scene, root) {
  const names = {};
  for (const [style, turn] of Object.entries(SECTIONS)) {
    if (!scene.shapes.some((shape) => shape.style === style)) continue;
    names[style] = ownName(`${scene.name}-${style}`);
    const size = { width: 7, height: 7, patternUnits: "userSpaceOnUse", patternTransform: `rotate(${turn})` };
    const pattern = makeSvg("pattern", { id: names[style], ...size });
    pattern.append(makeSvg("path", { class: "hatching", d: "M 0 0 L 0 7" }));
    root.appendChild(makeSvg("defs")).append(pattern);
  }
  return names;
}

// Where lines begin that no filling covers; what runs on below a break is cut off there.
function afterFillings({ shapes }) {
  const cut = shapes.findIndex(({ style }) => style === "cut");
  return cut >= 0 ? cut : shapes.map(({ style }) => FILLINGS.has(style)).lastIndexOf(true) + 1;
}

function makeDrawing(scene) {
  const root = makeSvg("svg", { class: "drillpoint-drawing", role: "img", viewBox: `0 0 ${scene.width} ${scene.height}` });
  const title = root.appendChild(makeSvg("title"));
  const description = root.appendChild(makeSvg("desc"));
  title.textContent = scene.title;
  const patterns = makeHatching(scene, root);
  root.append(makeSvg("rect", { class: "paper", width: scene.width, height: scene.height }));
  const elements = scene.shapes.map((shape) => {
    const text = !("steps" in shape);
    const element = makeSvg(text ? "text" : "path", { class: shape.style, ...(text && { "text-anchor": shape.anchor }) });
    if (shape.style in patterns) element.style.fill = `url(#${patterns[shape.style]})`;
    return root.appendChild(element);
  });
  const ghost = makeSvg("g", { class: "ghost" });
  root.insertBefore(ghost, elements[afterFillings(scene)] ?? null);
  const bar = scene.bar && root.appendChild(makeSvg("path", { class: "bar" }));
  const barText = scene.bar && root.appendChild(makeSvg("text", { class: "term", "text-anchor": "start" }));
  const likes = Object.fromEntries((scene.numbers ?? []).map(({ name, like }) => [name, like]));

  function updateBar(coordinates, units) {
    const { x, y, longest, scale } = scene.bar;
    const [length, written] = barLength(longest / coordinates[scale], units);
    const end = number(x + length * coordinates[scale]);
    const [left, top, bottom, middle] = [x, y - 5, y + 5, y].map(number);
    const ends = [left, end].map((at) => `M ${at} ${top} L ${at} ${bottom}`);
    setAttribute(bar, "d", `${ends[0]} M ${left} ${middle} L ${end} ${middle} ${ends[1]}`);
    setAttribute(barText, "x", left);
    setAttribute(barText, "y", number(y - 10));
    setText(barText, written);
  }

  // given: the coordinates, where they are not worked out here. Returns the numbers that only this drawing has.
  function update(known, units, mark, given) {
    const coordinates = given ?? scene.coordinates(known);
    const own = Object.fromEntries((scene.numbers ?? []).map(({ name, place }) => [name, coordinates[place]]));
    const values = { ...known, ...own };
    scene.shapes.forEach((shape, i) => {
      const element = elements[i];
      const shown = !("when" in shape) || coordinates[shape.when] > 0;
      // A shape that is left out may have no place at all, so its numbers are not looked at.
      if (!shown) return void element.setAttribute("display", "none");
      element.removeAttribute("display");
      if ("steps" in shape) return void setAttribute(element, "d", pathData(shape.steps, coordinates));
      setAttribute(element, "x", number(coordinates[shape.x]));
      setAttribute(element, "y", number(coordinates[shape.y]));
      setText(element, fill(shape.parts, values, units, likes));
    });
    if (bar) updateBar(coordinates, units);
    const said = mark + describe(scene.words, values, units, likes);
    setText(description, said);
    setAttribute(root, "aria-label", said);
    return { own, likes };
  }

  // The outline of another drill, dashed and lighter, under this one's lines; `other` is null to take it away.
  function hold(other) {
    ghost.replaceChildren();
    if (!other) return;
    const { coordinates, shapes } = other;
    for (const { style, steps, when } of shapes) {
      if (!OUTLINES.has(style) || (when !== undefined && !(coordinates[when] > 0))) continue;
      ghost.append(makeSvg("path", { class: style, d: pathData(steps, coordinates) }));
    }
  }
  return { root, update, hold };
}
