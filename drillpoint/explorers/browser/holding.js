// "Hold this one": another drill stays behind the live one, to compare the two.

function makeHolding(config, showing, changed) {
  let held = null;
  const hold = make("button", { type: "button", class: "hold" }, "Hold this one");
  const letGo = make("button", { type: "button", class: "let-go" }, "Let go");
  const note = make("p", { class: "held" });

  // state: the sliders; answers: what Python had said of it.
  function set(kept, units) {
    held = kept && kept.state ? { ...kept, answers: kept.answers ?? {} } : null;
    if (held) {
      held.values = { ...work(config, held.state, units).values };
      for (const { values } of Object.values(held.answers)) Object.assign(held.values, values);
    }
    letGo.hidden = !held;
    showing.hold(held);
  }
  function update(units) {
    const said = held && config.sliders.map(({ name }) => `${numbers.quantities[name].term} ${show(name, held.state[name], units)}`);
    setText(note, held ? `Held, dashed: ${said.join(", ")}. Each drill fills its frame; the scale bar is the live one’s.` : "");
  }
  hold.addEventListener("click", () => changed("hold"));
  letGo.addEventListener("click", () => {
    changed("let go");
    hold.focus(); // the button that had it is gone
  });
  letGo.hidden = true;
  return { buttons: [hold, letGo], note, set, update, values: () => held?.values ?? null, again: () => showing.hold(held) };
}
