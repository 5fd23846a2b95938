// One slider with its number box.

let made = 0;

function niceStep(least) {
  const power = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 5, 10].map((step) => step * power).find((step) => step >= least * (1 - 1e-9));
}

function makeControl(slider, host) {
  const id = `drillpoint-${slider.name}-${(made += 1)}`;
  const { term, symbol } = numbers.quantities[slider.name];
  const unit = unitOf(slider.name);
  const label = make("label", { for: id }, `${term} `, makeSymbol(symbol));
  const range = make("input", { type: "range", id, step: "any" });
  const box = make("input", { type: "text", inputmode: "text", autocomplete: "off", "aria-label": `${term}, typed` });
  const unitText = make("span", { class: "unit" });
  const also = make("span", { class: "also" });
  const [head, typed] = [make("div", { class: "head" }, label, also), make("span", { class: "typed" }, box, unitText)];
  const root = make("div", { class: "control" }, head, range, typed);

  const limits = () => {
    const scale = slider.share_of ? host.state()[slider.share_of] : 1;
    return [slider.low * scale, slider.high * scale];
  };
  const step = () => {
    if (unit === "°") return slider.step;
    const inch = host.units() === "inch";
    if (!slider.share_of) return inch ? MM_PER_INCH / 64 : slider.step;
    const scale = host.state()[slider.share_of] * slider.step;
    return inch ? niceStep(scale / MM_PER_INCH) * MM_PER_INCH : niceStep(scale);
  };
  const clip = (value) => Math.min(Math.max(value, limits()[0]), limits()[1]);
  const tidy = (value) => +(value.toPrecision(12));
  const snapped = (value) => tidy(clip(Math.round(value / step()) * step()));

  range.addEventListener("input", () => host.move(slider.name, snapped(+range.value)));
  range.addEventListener("keydown", (event) => {
    const value = host.state()[slider.name];
    const by = (steps) => snapped(value + steps * step());
    const to = {
      ArrowRight: () => by(1), ArrowUp: () => by(1), ArrowLeft: () => by(-1), ArrowDown: () => by(-1),
      PageUp: () => by(10), PageDown: () => by(-10), Home: () => tidy(limits()[0]), End: () => tidy(limits()[1]),
    }[event.key];
    if (!to || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    host.move(slider.name, to());
  });
  const commit = () => {
    const read = readNumber(box.value, unit, host.units());
    const [low, high] = limits();
    const span = `${show(slider.name, low, host.units())} to ${show(slider.name, high, host.units())}`;
    let problem = read.problem;
    if (!problem && !(read.value >= low * (1 - 1e-9) && read.value <= high * (1 + 1e-9))) {
      problem = `${term} ${show(slider.name, read.value, host.units())} is outside ${span}.`;
      const meant = read.value * MM_PER_INCH;
      if (unit === "mm" && !read.inInches && meant >= low && meant <= high) {
        problem += ` ${read.typed} in would be ${show(slider.name, meant, "mm")}; write “${read.typed} in” if that was meant.`;
      }
    }
    setAttribute(box, "aria-invalid", problem ? "true" : "false");
    if (problem) host.refuse(problem);
    else host.move(slider.name, tidy(clip(read.value)), true);
  };
  box.addEventListener("change", commit);
  box.addEventListener("keydown", (event) => {
    if (event.key === "Enter") commit();
    if (event.key === "Escape") update(true);
  });

  function update(rewrite) {
    const [value, units] = [host.state()[slider.name], host.units()];
    const [low, high] = limits();
    range.min = low;
    range.max = high;
    range.value = value;
    const shown = show(slider.name, value, units);
    const ratio = slider.share_of ? ` = ${plainNumber(value / host.state()[slider.share_of], 3)} × diameter` : "";
    setAttribute(range, "aria-valuetext", shown + ratio);
    setText(unitText, unit === "°" ? "°" : units === "inch" ? "in" : "mm");
    if (rewrite || document.activeElement !== box) {
      box.value = shown.replace(/ ?(°|mm|in)$/, "");
      setAttribute(box, "aria-invalid", "false");
    }
    const other = units === "mm" ? `${inInches(value / MM_PER_INCH)} in` : `${plainNumber(value, 2)} mm`;
    const near = isFraction(value / MM_PER_INCH) ? "" : ` (near ${fraction(value / MM_PER_INCH)} in)`;
    setText(also, ratio || (unit === "mm" ? `= ${other}${units === "inch" ? near : ""}` : ""));
  }
  return { root, update };
}
