// Cutting the solid open: the plane, its controls, and how they say where it is.

// gone: which way the metal in front of the plane is taken away; seen: from where the cut is seen.
const CUTS = {
  none: { title: "whole" },
  lips: { title: "along the axis and the lips", gone: [0, -1, 0], seen: { turn: 0, tilt: 15 } },
  across: { title: "along the axis, square to the lips", gone: [-1, 0, 0], seen: { turn: 90, tilt: 15 } },
  axis: { title: "square to the axis", gone: [0, 0, 1], seen: { turn: 0, tilt: 70 } },
};

function lengthWritten(length, units) {
  if (units === "inch") return `${inInches(length / MM_PER_INCH)} in`;
  return `${plainNumber(length, Math.abs(length) >= 1 ? 2 : 3)} mm`;
}

// cut: {kind, at}; at: 0 through the axis, more nearer to the eye; square to the axis: how deep below the tip.
function cutPlane({ kind, at }, solid) {
  const { gone } = CUTS[kind];
  return gone ? [...gone, kind === "axis" ? solid.tip - at : at] : null;
}

function cutWords({ kind, at }, units) {
  if (kind === "none") return "";
  if (kind === "axis") return `${lengthWritten(at, units)} below the tip`;
  if (Math.abs(at) < 1e-9) return "through the axis";
  return `${lengthWritten(Math.abs(at), units)} ${at > 0 ? "before" : "behind"} the axis`;
}

function makeCutting(radius, units, changed) {
  const group = ownName("cut");
  let cut = { kind: "none", at: 0 };
  const choices = Object.entries(CUTS).map(([kind, { title }]) => {
    const input = make("input", { type: "radio", name: group, value: kind });
    input.addEventListener("change", () => changed({ kind, at: kind === "axis" ? radius : 0 }, CUTS[kind].seen));
    return { kind, input, root: make("label", {}, input, title) };
  });
  const slider = make("input", { type: "range", id: `${group}-at` });
  const said = make("span", { class: "said" });
  slider.addEventListener("input", () => changed({ ...cut, at: (+slider.value * radius) / 100 }, null));
  const place = make("div", { class: "at" }, make("label", { for: slider.id }, "where"), slider, said);
  const root = make("fieldset", { class: "cutting" }, make("legend", {}, "Cut open"), ...choices.map((c) => c.root), place);
  function update(next) {
    cut = next;
    choices.forEach(({ kind, input }) => (input.checked = kind === cut.kind));
    place.hidden = cut.kind === "none";
    // Hundredths of the radius.
    [slider.min, slider.max] = cut.kind === "axis" ? [0, 300] : [-100, 100];
    slider.step = 2;
    slider.value = Math.round((100 * cut.at) / radius);
    setText(said, cutWords(cut, units));
    setAttribute(slider, "aria-valuetext", cutWords(cut, units));
  }
  return { root, update };
}
