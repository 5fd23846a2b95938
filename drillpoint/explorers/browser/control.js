// One slider with its number box.

const COARSE = 0.1; // mm; a slider with smaller steps is for sizes that no fraction is used for

function niceStep(least) {
  const power = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 5, 10].map((step) => step * power).find((step) => step >= least * (1 - 1e-9));
}

function makeControl(slider, host) {
  const id = ownName(slider.name);
  const { term, symbol } = numbers.quantities[slider.name];
  const unit = unitOf(slider.name);
  const wholeTerm = slider.share_of && numbers.quantities[slider.share_of].term.replace(/^drill /, "");
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
    const scale = slider.share_of ? host.state()[slider.share_of] : 1;
    const least = slider.step * scale;
    if (host.units() === "inch" && unit in INCH_UNITS) {
      // The workshop steps drills by sixty-fourths; smaller things by round decimals.
      if (unit === "mm" && !slider.share_of && least >= COARSE) return MM_PER_INCH / 64;
      return niceStep(least / INCH_UNITS[unit][1]) * INCH_UNITS[unit][1];
    }
    return slider.share_of ? niceStep(least) : least;
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
      const [written, factor] = INCH_UNITS[unit] ?? ["", 0];
      const meant = read.value * factor;
      if (factor && !read.inInches && meant >= low && meant <= high) {
        const typed = `${read.typed} ${written}`;
        problem += ` ${typed} would be ${show(slider.name, meant, "mm")}; write “${typed}” if that was meant.`;
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
    const ratio = slider.share_of ? ` = ${plainNumber(value / host.state()[slider.share_of], 3)} × ${wholeTerm}` : "";
    setAttribute(range, "aria-valuetext", shown + ratio);
    const written = unitWritten(slider.name, units);
    setText(unitText, written);
    if (rewrite || document.activeElement !== box) {
      box.value = written && shown.endsWith(written) ? shown.slice(0, -written.length).trim() : shown;
      setAttribute(box, "aria-invalid", "false");
    }
    setText(also, ratio || otherUnits(value, units));
  }

  function otherUnits(value, units) {
    if (!(unit in INCH_UNITS)) return "";
    const other = show(slider.name, value, units === "mm" ? "inch" : "mm");
    const near = unit === "mm" && units === "inch" && slider.step >= COARSE && !isFraction(value / MM_PER_INCH);
    return `= ${other}${near ? ` (near ${fraction(value / MM_PER_INCH)} in)` : ""}`;
  }
  return { root, update };
}
