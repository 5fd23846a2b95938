// The table and the worked lines.

function makeTable(config) {
  const heads = ["", "mm", "inch", "nearest 1/64 in", "held"].map((text) => make("th", { scope: "col" }, text));
  const rows = config.table.map((name) => {
    const { term, symbol, unit } = numbers.quantities[name];
    const cells = unit === "mm" ? [make("td"), make("td"), make("td")] : [make("td", { colspan: "3" })];
    const held = make("td", { class: "of-held" });
    const head = make("th", { scope: "row" }, `${term} `, makeSymbol(symbol));
    return { name, cells, held, root: make("tr", {}, head, ...cells, held) };
  });
  const root = make("table", {}, make("caption", {}, "The same drill in numbers"), make("thead", {}, make("tr", {}, ...heads)),
    make("tbody", {}, ...rows.map((row) => row.root)));
  // held: the values of the drill that is held, or null.
  const update = (values, units, held) => {
    for (const cell of [heads.at(-1), ...rows.map((row) => row.held)]) cell.hidden = !held;
    for (const { name, cells, held: cell } of rows) {
      const value = values[name];
      if (held) setText(cell, show(name, held[name], units));
      if (cells.length === 1) setText(cells[0], show(name, value, units));
      else fillLengths(cells, name, value);
    }
  };
  return { root, update };
}

function fillLengths(cells, name, value) {
  const inches = value / MM_PER_INCH;
  setText(cells[0], show(name, value, "mm").replace(" mm", ""));
  setText(cells[1], Number.isFinite(inches) ? inInches(inches) : "…");
  setText(cells[2], Number.isFinite(inches) ? (isFraction(inches) ? "" : "≈ ") + fraction(inches) : "…");
}

function makeWorked(config) {
  const lines = config.worked.map((name) => {
    const { formula_text: formula, result } = numbers.relations[name];
    const line = make("div", { class: "line" });
    const head = make("div", { class: "name" }, make("b", {}, numbers.quantities[result].term), makeFormula(formula));
    return { name, line, root: [head, line] };
  });
  const root = make("div", { class: "worked" }, ...lines.flatMap((line) => line.root));
  const update = (values, units) => lines.forEach(({ name, line }) => setFormula(line, workedLine(name, values, units)));
  return { root, update };
}
