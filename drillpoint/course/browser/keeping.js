// Keeping answers in the browser, where it lets a page from a folder do so.

// `sheet` names whose answers they are: all pages opened from folders may share one store.
function makeKeeping(sheet, store = () => window.localStorage) {
  const key = ["drillpoint", sheet.course, sheet.set, sheet.version, sheet.student].join("|");
  const isRecord = (a) => a && ["task", "typed", "time"].every((name) => typeof a[name] === "string");

  function kept() {
    try {
      const text = store().getItem(key);
      if (text === null) return { records: [], handed: "" };
      const { records, handed } = JSON.parse(text);
      if (!Array.isArray(records) || !records.every(isRecord)) throw new TypeError("no records");
      return { records, handed: typeof handed === "string" ? handed : "" };
    } catch {
      return { records: [], handed: "" };
    }
  }
  // Whether it is there again when asked for: some browsers take everything and keep nothing.
  function keep(state) {
    const text = JSON.stringify(state);
    try {
      store().setItem(key, text);
      return store().getItem(key) === text;
    } catch {
      return false;
    }
  }
  return { key, kept, keep };
}
