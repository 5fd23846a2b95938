// The explorer as a whole.

const SAID_EVERY = 700; // ms between two announcements to a screen reader
const SYNC_AFTER = 150; // ms of rest before the kernel is told
const SILENT = "Python is busy or has stopped, so the drawing is of an earlier drill. If it stays so, run the cell again.";

// start: {state, units, held, first}. told(state, units, held): called when the drill has come to rest.
// send(question): to Python, where there is one.
function mount(root, config, start, told, send) {
  let { state, units } = start;
  let kept = start.held ?? {}; // {state, answers} of the drill that is held
  const first = Object.fromEntries(config.sliders.map((slider) => [slider.name, slider.start]));
  let last = first; // the last drill that was possible
  let [frame, sync, asked] = [0, 0, null];
  let [drawn, marked, refused] = [{}, "", ""]; // values drawn; what is said when they are not those asked for
  let pythonRefused = ""; // what Python said of the drill it was asked for
  let rewrite = false;

  const host = {
    state: () => state,
    units: () => units,
    move(name, value, typed = false) {
      const next = { ...state, [name]: value };
      // A web is thought of as a share of the drill, so it grows with it.
      for (const slider of config.sliders) {
        if (slider.share_of === name) next[slider.name] = +((state[slider.name] / state[name]) * value).toPrecision(12);
      }
      become(next, typed);
    },
    refuse: (problem) => status.say({ refusal: problem }, true),
  };
  const showing = makeShowing(config);
  const holding = makeHolding(config, showing, (what) => {
    kept = what === "hold" ? { state: drawnState(), answers: showing.answers() } : {};
    holding.set(kept, units);
    changed();
  });
  const asking = send && config.computed.length ? makeAsking(send, answered, () => status.say({ silence: SILENT }, true)) : null;
  const controls = config.sliders.map((slider) => makeControl(slider, host));
  const [table, worked, status] = [makeTable(config), makeWorked(config), makeStatus()];
  const [call, choices] = [makeCall(config, (notice) => status.say({ notice }, true)), makeUnits(() => changed(true))];
  choices.onChoice((choice) => {
    units = choice;
  });
  const mark = make("p", { class: "mark" });
  const reset = make("button", { type: "button", class: "reset" }, "Reset");
  reset.addEventListener("click", () => {
    status.say({ trouble: "" }, false);
    become(first, true);
  });
  const stuck = !send && config.computed.length;
  const still = stuck ? make("p", { class: "held" }, "Only Python can move this drawing; it stays as it was made.") : "";

  root.classList.add("drillpoint-explorer");
  root.setAttribute("role", "group");
  root.setAttribute("aria-label", config.title);
  root.replaceChildren(
    make("div", { class: "controls" }, ...controls.map((c) => c.root),
      make("div", { class: "choices" }, choices.root, reset, ...holding.buttons)),
    status.root,
    make("div", { class: "scenes" }, mark, ...showing.figures),
    holding.note, still,
    make("div", { class: "numbers" }, ...(config.worked.length ? [worked.root] : []), table.root),
    call.root,
  );
  // The notebook must not take arrow keys and letters typed here for its own shortcuts.
  for (const kind of ["keydown", "keyup", "keypress"]) root.addEventListener(kind, (event) => event.stopPropagation());

  function become(next, rewritten) {
    state = next;
    status.say({ refusal: "", notice: "" }, false);
    changed(rewritten);
  }

  function changed(rewritten = false) {
    rewrite = rewrite || rewritten;
    if (!frame) frame = requestAnimationFrame(draw);
    clearTimeout(sync);
    sync = setTimeout(() => told(state, units, kept), SYNC_AFTER);
  }

  const drawnState = () => (refused ? nearestPossible(config, last, state, units) : pythonRefused ? last : state);

  function draw() {
    frame = 0;
    try {
      const wanted = work(config, state, units);
      let possible = state;
      [drawn, marked, refused] = [wanted.values, "", wanted.problem];
      if (refused) {
        possible = nearestPossible(config, last, state, units);
        drawn = work(config, possible, units).values;
        const differing = config.sliders.filter(({ name }) => Math.abs(possible[name] - state[name]) > 1e-9);
        const named = differing.map(({ name }) => `${numbers.quantities[name].term} ${show(name, possible[name], units)}`);
        marked = `Last possible drill: ${named.join(", ")}. `;
        refused = `Not possible: ${refused}. Nearest possible: ${named.join(", ")}; that drill is drawn.`;
      } else if (!asking) last = state;
      if (asking && possible !== asked) asking.ask({ kind: "draw", state: (asked = possible), has: showing.has() });
      paint();
    } catch (error) {
      // Whatever goes wrong is said where the learner looks, and in the console for who mends it.
      status.say({ failure: `The drawing failed: ${error.message}` }, true);
      console.error(error);
    }
  }

  function answered({ problem, answers, state: about }) {
    pythonRefused = problem ? `Not possible: ${problem.replace(/\.$/, "")}. The last possible drill is drawn.` : "";
    if (!problem) {
      last = about;
      showing.take(answers);
      holding.again();
    }
    status.say({ silence: "" }, false);
    paint();
  }

  function paint() {
    const values = { ...drawn, ...showing.values() };
    const said = marked || (pythonRefused && "Last possible drill. ");
    for (const control of controls) control.update(rewrite);
    rewrite = false;
    const { own, likes } = showing.update(drawn, units, said);
    holding.update(units);
    table.update(values, units, holding.values());
    worked.update(values, units);
    call.update(state, units);
    choices.update(units);
    setText(mark, said.trim());
    root.classList.toggle("impossible", !!said);
    const problem = refused || pythonRefused;
    status.say({ problem, failure: "", summary: describe(config.summary, { ...values, ...own }, units, likes) }, !!problem);
  }

  if (stuck && config.computed.length === config.scenes.length) {
    for (const input of root.querySelectorAll(".control input, .reset, .hold")) input.disabled = true;
  }
  if (start.first) showing.take(start.first);
  holding.set(kept, units);
  draw();
  return {
    adopt(newState, newUnits) {
      if (newUnits === units && config.sliders.every(({ name }) => newState[name] === state[name])) return;
      [state, units, rewrite] = [newState, newUnits, true];
      if (!frame) frame = requestAnimationFrame(draw);
    },
    showTrouble: (text) => status.say({ trouble: text }, true),
    answer: (message) => asking?.answer(message),
    close() {
      cancelAnimationFrame(frame);
      clearTimeout(sync);
      status.close();
      asking?.close();
      root.replaceChildren();
    },
  };
}

function render({ model, el }) {
  const root = el.appendChild(make("div"));
  const told = (state, units, held) => {
    model.set("state", state);
    model.set("units", units);
    model.set("held", held);
    model.save_changes();
  };
  const start = Object.fromEntries(["state", "units", "held", "first"].map((name) => [name, model.get(name)]));
  const explorer = mount(root, model.get("config"), start, told, (question) => model.send(question));
  const adopt = () => explorer.adopt(model.get("state"), model.get("units"));
  const trouble = () => explorer.showTrouble(model.get("trouble"));
  const answer = (message) => explorer.answer(message);
  model.on("change:state change:units", adopt);
  model.on("change:trouble", trouble);
  model.on("msg:custom", answer);
  trouble();
  return () => {
    model.off("change:state change:units", adopt);
    model.off("change:trouble", trouble);
    model.off("msg:custom", answer);
    explorer.close();
  };
}

function startPage() {
  const config = JSON.parse(document.getElementById("drillpoint-config").textContent);
  const state = Object.fromEntries(config.sliders.map((slider) => [slider.name, slider.start]));
  mount(document.getElementById("drillpoint-explorer"), config, { state, units: config.units, first: config.first }, () => {});
}
