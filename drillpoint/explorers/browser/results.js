// The table and the worked lines.

function makeTable(config) {
  const head = make("tr", {}, ...["", "mm", "inch", "nearest 1/64 in"].map((text) => make("th", { scope: "col" }, text)));
  const rows = config.table.map((name) => {
    const { term, symbol, unit } = numbers.quantities[name];
    const cells = unit === "mm" ? [make("td"), make("td"), make("td")] : [make("td", { colspan: "3" })];
    return { name, cells, root: make("tr", {}, make("th", { scope: "row" }, `${term} `, makeSymbol(symbol)), ...cells) };
  });
  const root = make("table", {}, make("caption", {}, "The same drill in numbers"), make("thead", {}, head),
    make("tbody", {}, ...rows.map((row) => row.root)));
  const update = (values) => rows.forEach(({ name, cells }) => {
    const value = values[name];
    if (cells.length === 1) return setText(cells[0], show(name, value, "mm"));
    const inches = value / MM_PER_INCH;
    setText(cells[0], show(name, value, "mm").replace(" mm", ""));
    setText(cells[1], inInches(inches));
    return setText(cells[2], (isFraction(inches) ? "" : "≈ ") + fraction(inches));
  });
  return { root, update };
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
