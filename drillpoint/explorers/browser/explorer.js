// The explorer as a whole.

const SAID_EVERY = 700; // ms between two announcements to a screen reader
const SYNC_AFTER = 150; // ms of rest before the kernel is told

function plainCall(config, state, units) {
  const givens = config.sliders.map(({ name }) => `${name}=${plainNumber(state[name], 6)}`).join(", ");
  return `draw("${config.scenes[0]}", ${givens}${units === "inch" ? ', units="inch"' : ""})`;
}

// start: {state, units}. told(state, units): called when the drill has come to rest.
function mount(root, config, start, told) {
  let { state, units } = start;
  const first = Object.fromEntries(config.sliders.map((slider) => [slider.name, slider.start]));
  let last = first; // the last drill that was possible
  let frame = 0;
  let sync = 0;
  let speak = 0;
  let spoken = -Infinity;
  let refusal = "";
  let trouble = "";
  let rewrite = false;

  const host = {
    state: () => state,
    units: () => units,
    move(name, value, typed = false) {
      refusal = "";
      rewrite = rewrite || typed;
      const next = { ...state, [name]: value };
      // A web is thought of as a share of the drill, so it grows with it.
      for (const slider of config.sliders) {
        if (slider.share_of === name) next[slider.name] = +((state[slider.name] / state[name]) * value).toPrecision(12);
      }
      state = next;
      changed();
    },
    refuse(problem) {
      refusal = problem;
      say(true);
    },
  };

  const controls = config.sliders.map((slider) => makeControl(slider, host));
  const drawings = config.scenes.map((name) => makeDrawing(scenes[name]));
  const [table, worked] = [makeTable(config), makeWorked(config)];
  const status = make("p", { class: "status", role: "status" });
  const mark = make("p", { class: "mark" });
  const group = `drillpoint-units-${(made += 1)}`;
  const choices = ["mm", "inch"].map((choice) => {
    const input = make("input", { type: "radio", name: group, value: choice });
    input.addEventListener("change", () => {
      units = choice;
      refusal = "";
      rewrite = true;
      changed();
    });
    return { input, root: make("label", {}, input, choice) };
  });
  const units_ = make("fieldset", { class: "units" }, make("legend", {}, "units"), ...choices.map((c) => c.root));
  const reset = make("button", { type: "button", class: "reset" }, "Reset");
  reset.addEventListener("click", () => {
    state = first;
    refusal = trouble = "";
    rewrite = true;
    changed();
  });
  const call = make("code", {});
  root.classList.add("drillpoint-explorer");
  root.setAttribute("role", "group");
  root.setAttribute("aria-label", config.title);
  root.replaceChildren(
    make("div", { class: "controls" }, ...controls.map((c) => c.root), make("div", { class: "choices" }, units_, reset)),
    status,
    make("div", { class: "scenes" }, mark, ...drawings.map((d) => make("figure", {}, d.root))),
    make("div", { class: "numbers" }, worked.root, table.root),
    make("p", { class: "call" }, "The same as a plain call: ", call),
  );
  // The notebook must not take arrow keys and letters typed here for its own shortcuts.
  for (const kind of ["keydown", "keyup", "keypress"]) root.addEventListener(kind, (event) => event.stopPropagation());

  function changed() {
    if (!frame) frame = requestAnimationFrame(draw);
    clearTimeout(sync);
    sync = setTimeout(() => told(state, units), SYNC_AFTER);
  }

  function draw() {
    frame = 0;
    const asked = work(config, state, units);
    let drawn = asked.values;
    let marked = "";
    if (asked.problem) {
      const nearest = nearestPossible(config, last, state, units);
      drawn = work(config, nearest, units).values;
      const differing = config.sliders.filter(({ name }) => Math.abs(nearest[name] - state[name]) > 1e-9);
      const named = differing.map(({ name }) => `${numbers.quantities[name].term} ${show(name, nearest[name], units)}`);
      marked = `Last possible drill: ${named.join(", ")}. `;
      problemText = `Not possible: ${asked.problem}. Nearest possible: ${named.join(", ")}; that drill is drawn.`;
    } else {
      last = state;
      problemText = "";
    }
    summary = problemText || describe(config.summary, drawn, units);
    setText(mark, marked.trim());
    root.classList.toggle("impossible", !!marked);
    for (const control of controls) control.update(rewrite);
    rewrite = false;
    for (const drawing of drawings) drawing.update(drawn, units, marked);
    table.update(drawn);
    worked.update(drawn, units);
    setText(call, plainCall(config, state, units));
    for (const { input } of choices) input.checked = input.value === units;
    say(!!problemText);
  }

  let summary = "";
  let problemText = "";

  // One line for everybody; a screen reader hears it at most every SAID_EVERY milliseconds.
  function say(atOnce) {
    const put = () => {
      speak = 0;
      spoken = performance.now();
      setText(status, trouble || refusal || summary);
      status.classList.toggle("problem", !!(trouble || refusal || problemText));
    };
    const wait = SAID_EVERY - (performance.now() - spoken);
    if (atOnce || wait <= 0) {
      clearTimeout(speak);
      put();
    } else if (!speak) speak = setTimeout(put, wait);
  }

  draw();
  return {
    adopt(newState, newUnits) {
      if (newUnits === units && config.sliders.every(({ name }) => newState[name] === state[name])) return;
      [state, units, rewrite] = [newState, newUnits, true];
      if (!frame) frame = requestAnimationFrame(draw);
    },
    showTrouble(text) {
      trouble = text;
      say(true);
    },
    close() {
      cancelAnimationFrame(frame);
      clearTimeout(sync);
      clearTimeout(speak);
      root.replaceChildren();
    },
  };
}

function render({ model, el }) {
  const root = el.appendChild(make("div"));
  const explorer = mount(root, model.get("config"), { state: model.get("state"), units: model.get("units") }, (state, units) => {
    model.set("state", state);
    model.set("units", units);
    model.save_changes();
  });
  const adopt = () => explorer.adopt(model.get("state"), model.get("units"));
  const trouble = () => explorer.showTrouble(model.get("trouble"));
  model.on("change:state change:units", adopt);
  model.on("change:trouble", trouble);
  trouble();
  return () => {
    model.off("change:state change:units", adopt);
    model.off("change:trouble", trouble);
    explorer.close();
  };
}

function startPage() {
  const config = JSON.parse(document.getElementById("drillpoint-config").textContent);
  const state = Object.fromEntries(config.sliders.map((slider) => [slider.name, slider.start]));
  mount(document.getElementById("drillpoint-explorer"), config, { state, units: config.units }, () => {});
}
