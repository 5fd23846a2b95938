// The status line, the units and the call.

// One line for everybody; a screen reader hears it at most every SAID_EVERY milliseconds.
function makeStatus() {
  const root = make("p", { class: "status", role: "status" });
  const now = { failure: "", silence: "", trouble: "", refusal: "", problem: "", notice: "", summary: "" };
  let [speak, spoken] = [0, -Infinity];

  function put() {
    speak = 0;
    spoken = performance.now();
    const wrong = now.failure || now.silence || now.trouble || now.refusal || now.problem;
    setText(root, wrong || now.notice || now.summary);
    root.classList.toggle("problem", !!wrong);
  }
  function say(news, atOnce) {
    Object.assign(now, news);
    const wait = SAID_EVERY - (performance.now() - spoken);
    if (atOnce || wait <= 0) {
      clearTimeout(speak);
      put();
    } else if (!speak) speak = setTimeout(put, wait);
  }
  return { root, say, close: () => clearTimeout(speak) };
}

function makeUnits(changed) {
  const group = ownName("units");
  let choose = () => {};
  const choices = ["mm", "inch"].map((choice) => {
    const input = make("input", { type: "radio", name: group, value: choice });
    input.addEventListener("change", () => {
      choose(choice);
      changed();
    });
    return { input, root: make("label", {}, input, choice) };
  });
  const root = make("fieldset", { class: "units" }, make("legend", {}, "units"), ...choices.map((c) => c.root));
  const update = (units) => choices.forEach(({ input }) => (input.checked = input.value === units));
  return { root, update, onChoice: (then) => (choose = then) };
}

// The calls that draw the same drill without any slider, a line for each drawing.
function makeCall(config, told) {
  const code = make("code", {});
  const copy = make("button", { type: "button", class: "copy" }, "Copy");
  const root = make("p", { class: "call" }, "The same as a plain call: ", code, " ", copy);
  copy.addEventListener("click", async () => {
    try {
      await navigator.clipboard.writeText(code.textContent);
      told("Copied. Paste it into a cell.");
    } catch {
      // A page from a folder may not write to the clipboard; it can mark the text.
      getSelection().selectAllChildren(code);
      told("Marked. Copy it with Ctrl+C.");
    }
  });
  const update = (state, units) => {
    const values = { ...config.fixed, ...state };
    const lines = config.calls.map(({ scene, names }) => {
      const givens = names.map((name) => `${name}=${plainNumber(values[name], 6)}`).join(", ");
      return `draw("${scene}", ${givens}${units === "inch" ? ', units="inch"' : ""})`;
    });
    setText(code, lines.join("\n"));
  };
  return { root, update };
}
