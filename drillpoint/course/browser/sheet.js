// The sheet at work: what is typed is saved at once, read aloud in words, and put into the file that is handed in.

const PAUSE = 400; // ms without a key before the words under a box change: a reader should not hear every letter

function startSheet({ sheet, table }, keeping = makeKeeping(sheet)) {
  const read = answerReader(table);
  const by = (id) => document.getElementById(id);
  let { records, handed } = keeping.kept();
  let keeps = keeping.keep({ records, handed });
  const file = `${sheet.set}-${sheet.student}.hand-in.json`;
  const boxes = sheet.tasks.map((task, place) => makeBox(task, place + 1));

  function makeBox(task, place) {
    const said = by(`said-${place}`);
    const controls = [...document.querySelectorAll(`[name="box-${place}"]`)];
    const choice = controls[0].type === "radio";
    let timer = 0;
    const value = () => (choice ? controls.find((one) => one.checked)?.value ?? "" : controls[0].value);
    const show = (typed) => {
      if (choice) for (const one of controls) one.checked = one.value === typed;
      else controls[0].value = typed;
    };
    function say() {
      clearTimeout(timer);
      const words = inWords(value(), task);
      said.textContent = words.text;
      if (!choice) controls[0].setAttribute("aria-invalid", String(words.refused));
    }
    function take() {
      const typed = value().trim() ? value() : "";
      const before = lastAnswers(records).get(task.id)?.typed ?? "";
      if (typed !== before) {
        records = putAnswer(records, { task: task.id, typed, time: now() });
        save();
      }
    }
    for (const one of controls) {
      one.addEventListener("input", () => {
        take();
        said.textContent = "";
        clearTimeout(timer);
        timer = setTimeout(say, choice ? 0 : PAUSE);
      });
      // The words wait for their pause even so: a line that appears while a button is pressed would move the button away.
      one.addEventListener("change", take);
      one.addEventListener("keydown", (event) => { if (event.key === "Enter" && one.type === "text") say(); });
    }
    return {
      number: task.number,
      task: task.id,
      refresh() {
        const typed = given(records).get(task.id)?.typed ?? "";
        if (typed !== value()) show(typed);
        say();
      },
    };
  }

  function inWords(typed, task) {
    if (!typed.trim()) return { text: "", refused: false };
    const found = read(typed, task);
    if (found.refused) return { text: `Saved as typed, but it cannot be read yet. ${found.refused}`, refused: true };
    if (found.later) return { text: "Saved as typed. How it is read is worked out when it is marked.", refused: false };
    return { text: task.kind === "text" ? `Saved: ${found.echo}.` : `Read as ${found.echo}.`, refused: false };
  }

  const content = () => JSON.stringify([...given(records).values()].map(({ task, typed }) => [task, typed]).sort());

  function save() {
    keeps = keeping.keep({ records, handed });
    showState();
  }
  function showState() {
    const count = sheet.tasks.filter((task) => given(records).has(task.id)).length;
    const where = !count ? "" :
      handed === content() ? `Saved as a file, not yet handed in: give ${file} to your instructor.` :
      handed ? "Changed since the file was saved: save it again." :
      keeps ? "Saved in this browser, not yet handed in." :
      "Not saved: this browser keeps nothing for this page.";
    const lost = keeps ? "" : " Save the file before you close the page: this browser does not keep your answers.";
    by("state").textContent = `${count} of ${sheet.tasks.length} answers given. ${where}${lost}`;
    by("save").disabled = !count;
  }
  function showAll() {
    for (const box of boxes) box.refresh();
    showState();
  }

  function saveFile() {
    const { content: made, text } = handInOf(sheet, records, now());
    if (text.length > LARGEST_FILE) {
      by("receipt").textContent = "Your answers are too long for one file: shorten the longest.";
      return;
    }
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    link.download = file;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
    const left = boxes.filter((box) => !given(records).has(box.task)).map((box) => box.number);
    by("receipt").textContent = [
      `Receipt for ${sheet.student}, ${sheet.title}: ${receiptOf(made, sheet.tasks.length)}.`,
      ...(left.length ? [`Not answered: task ${left.join(", ")}. You can still answer and save again.`] : []),
      `Saved as a file, not yet handed in. Give this file to your instructor: ${file}`,
      "It is where this browser puts what it saves, mostly the folder Downloads.",
    ].join("\n");
    by("text").value = text;
    by("copy").hidden = false;
    handed = content();
    save();
  }

  async function openFile() {
    const chosen = by("open").files[0];
    if (!chosen) return;
    const lines = chosen.size > LARGEST_FILE ? "it is larger than 200 kB" : taken(await chosen.text(), chosen.name);
    by("opened").textContent = typeof lines === "string" ? `${chosen.name} was not taken up: ${lines}.` : lines.join("\n");
    by("open").value = "";
  }
  // Take up the answers of a file, and say what came of it; a sentence if it is not of this sheet.
  function taken(text, name) {
    const found = readHandIn(text, sheet);
    if (found.problem) return found.problem;
    const before = given(records);
    const { records: both, differences } = putTogether(records, found.answers);
    records = both;
    save();
    showAll();
    const fresh = boxes.filter((box) => given(records).has(box.task) && !before.has(box.task)).map((box) => box.number);
    const shown = (typed) => (typed ? `“${typed}”` : "the empty box");
    const number = (task) => boxes.find((box) => box.task === task)?.number;
    return [
      `Taken up from ${name}: ${fresh.length ? `answers ${fresh.join(", ")}` : "no new answer"}.`,
      ...(found.intact ? [] : ["The file was altered after it was made; your instructor will see that."]),
      ...differences.map((d) => `Task ${number(d.task)} was answered twice: ${shown(d.counts)} is the later one and counts, earlier ${shown(d.earlier)}.`),
    ];
  }

  function clear() {
    if (!window.confirm("Remove all answers to this sheet from this browser? A file you saved stays.")) return;
    [records, handed] = [[], ""];
    save();
    showAll();
    for (const id of ["receipt", "opened"]) by(id).textContent = "";
    by("copy").hidden = true;
  }

  // The same sheet may be open twice; the one that was typed into last is right.
  function follow() {
    const other = keeping.kept();
    if (!other.records.length || JSON.stringify(other.records) === JSON.stringify(records)) return;
    ({ records, handed } = other);
    showAll();
  }

  by("save").addEventListener("click", saveFile);
  by("open").addEventListener("change", openFile);
  by("print").addEventListener("click", () => window.print());
  by("clear").addEventListener("click", clear);
  window.addEventListener("storage", (event) => { if (event.key === keeping.key) follow(); });
  document.addEventListener("visibilitychange", () => { if (!document.hidden && keeps) follow(); });
  window.addEventListener("beforeunload", (event) => {
    if (!keeps && given(records).size && handed !== content()) event.preventDefault();
  });
  document.body.classList.add("at-work");
  showAll();
}
