// One drawing: its elements are made once, then only their numbers change.

const number = (value) => plainNumber(value, 2);

function pathData(steps, coordinates) {
  return steps.map((step) => (typeof step === "string" ? step : number(coordinates[step]))).join(" ");
}

function barLength(diameter, units) {
  const steps = units === "mm"
    ? [0.2, 0.5, 1, 2, 5, 10, 20, 50].map((step) => [step, `${plainNumber(step, 2)} mm`])
    : [1, 2, 4, 8, 16, 32, 64, 128].map((part) => [(part / 64) * MM_PER_INCH, `${fraction(part / 64)} in`]);
  return steps.filter(([step]) => step <= 0.45 * diameter).at(-1) ?? steps[0];
}

function makeDrawing(scene) {
  const root = makeSvg("svg", { class: "drillpoint-drawing", role: "img", viewBox: `0 0 ${scene.width} ${scene.height}` });
  const title = root.appendChild(makeSvg("title"));
  const description = root.appendChild(makeSvg("desc"));
  root.append(makeSvg("rect", { class: "paper", width: scene.width, height: scene.height }));
  title.textContent = scene.title;
  const elements = scene.shapes.map((shape) => {
    const text = !("steps" in shape);
    const attributes = text ? { class: shape.style, "text-anchor": shape.anchor } : { class: shape.style };
    return root.appendChild(makeSvg(text ? "text" : "path", attributes));
  });
  const bar = root.appendChild(makeSvg("path", { class: "bar" }));
  const barText = root.appendChild(makeSvg("text", { class: "term", "text-anchor": "start" }));
  const update = (values, units, mark) => {
    const coordinates = scene.coordinates(values);
    scene.shapes.forEach((shape, i) => {
      const element = elements[i];
      if ("steps" in shape) return setAttribute(element, "d", pathData(shape.steps, coordinates));
      setAttribute(element, "x", number(coordinates[shape.x]));
      setAttribute(element, "y", number(coordinates[shape.y]));
      return setText(element, fill(shape.parts, values, units));
    });
    const [x, y] = scene.bar;
    const [length, written] = barLength(values.diameter, units);
    const end = number(x + (length / values.diameter) * scene.pixels_per_diameter);
    const [left, top, bottom, middle] = [x, y - 5, y + 5, y].map(number);
    const ends = [left, end].map((at) => `M ${at} ${top} L ${at} ${bottom}`);
    setAttribute(bar, "d", `${ends[0]} M ${left} ${middle} L ${end} ${middle} ${ends[1]}`);
    setAttribute(barText, "x", left);
    setAttribute(barText, "y", number(y - 10));
    setText(barText, written);
    const said = mark + describe(scene.words, values, units);
    setText(description, said);
    setAttribute(root, "aria-label", said);
  };
  return { root, update };
}
