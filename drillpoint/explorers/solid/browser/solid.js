// The solid as a whole: screens, buttons, parts and the status line.

const TOLD_AFTER = 200, SPOKEN_AFTER = 700, ANSWERED_AFTER = 300, TURNING = 350; // ms
const MISSING = "This browser shows no solid that can be turned (WebGL is missing or switched off), so the drawing stands still. Every part is in the list.";
const HELP = "Drag or arrow keys: turn. With Shift: shift. + and −, or two fingers: zoom. Home: as at first.";

const rgb = (hex) => [1, 3, 5].map((k) => parseInt(hex.slice(k, k + 2), 16) / 255);
const matches = (query) => window.matchMedia?.(query).matches ?? false;

// start: {look, cut, names} as left before, or {}. told(state): called when the solid has come to rest.
function mountSolid(root, config, packs, start, told) {
  const home = lookFrom(config.start);
  let look = { ...home, ...start.look }, cut = start.cut ?? { kind: "none", at: 0 };
  let names = start.names ?? config.naming.on;
  let [hovered, focused, live, closed, frame, turning] = ["", "", false, false, 0, 0];
  let [tell, speak, hovering] = [0, 0, 0];
  const style = styled(config);
  const solids = packs.map((bytes, i) => prepared(bytes, config.solids[i], config));
  const radius = Math.max(...solids.map((solid) => solid.radius));
  // Two drills are drawn to one scale.
  for (const solid of solids) solid.radius = radius;

  const screens = config.solids.map((one, i) => makeScreen(one, i));
  const status = make("p", { class: "status", role: "status" });
  const views = make("div", { class: "views", role: "group", "aria-label": "look" }, ...config.views.map(viewButton),
    ...[["nearer", 1.25], ["further", 0.8]].map(([title, factor]) => button(title, () => move(zoomedBy(look, factor)))), namesButton());
  const cutting = makeCutting(radius, config.units, (next, seen) => {
    cut = next;
    if (seen) turnTo({ ...look, ...seen });
    changed();
    announce();
  });
  const parts = make("ul", { class: "parts", "aria-label": "parts" }, ...config.parts.map(partButton));
  const help = make("p", { class: "help" }, HELP);
  root.classList.add("drillpoint-solid");
  setAttribute(root, "role", "group");
  setAttribute(root, "aria-label", config.title);
  const list = make("div", { class: "list" }, make("p", { class: "caption" }, "Parts"), parts);
  root.replaceChildren(views, make("div", { class: screens.length > 1 ? "main two" : "main" },
    make("div", { class: "screens" }, ...screens.map((screen) => screen.root)), make("div", { class: "side" }, list, cutting.root)), status, help);
  for (const kind of ["keydown", "keyup", "keypress"]) root.addEventListener(kind, (event) => event.stopPropagation());

  const view = { lost: () => setTimeout(() => !closed && changed(), ANSWERED_AFTER) };
  joinStage(view);
  const resized = new ResizeObserver(() => changed());
  const appeared = new IntersectionObserver((entries) => entries.some((entry) => entry.isIntersecting) && changed());
  for (const screen of screens) {
    resized.observe(screen.frame);
    appeared.observe(screen.frame);
  }

  function button(title, act) {
    const made = make("button", { type: "button" }, title);
    made.addEventListener("click", act);
    return made;
  }

  function viewButton(one) {
    return button(one.title, () => {
      turnTo(lookFrom(one));
      announce(one.title);
    });
  }

  function namesButton() {
    const made = button("names", () => {
      names = !names;
      setAttribute(made, "aria-pressed", String(names));
      changed();
    });
    setAttribute(made, "aria-pressed", String(names));
    return made;
  }

  function partButton({ name, term }) {
    const made = button(term, () => {
      const i = solids.findIndex((solid) => solid.names.includes(name));
      const [x, y, z] = outward(solids[i], solids[i].names.indexOf(name));
      const flat = Math.hypot(x, y), tilt = (Math.atan2(z, flat) * 180) / Math.PI;
      const turn = flat > 0.1 * Math.abs(z) ? round360(-90 - (Math.atan2(y, x) * 180) / Math.PI) : look.turn;
      turnTo({ ...look, turn, tilt: within(tilt, -60, 75) });
      say(saying(name));
    });
    const mark = (on) => () => {
      focused = on ? name : "";
      if (on) say(saying(name));
      changed(false);
    };
    made.addEventListener("focus", mark(true));
    made.addEventListener("blur", mark(false));
    made.addEventListener("pointerenter", () => hover(name));
    made.addEventListener("pointerleave", () => hover(""));
    return make("li", {}, made);
  }

  function saying(name) {
    const said = config.solids.filter((one) => one.says[name]).map((one) => (one.title ? `${one.title}: ` : "") + one.says[name]);
    return said.join(" ");
  }

  function makeScreen(one, i) {
    const canvas = make("canvas", { tabindex: "0", role: "img", "aria-label": one.alt });
    const still = make("div", { class: "still" });
    still.innerHTML = one.still;
    const [tag, bar, written] = [make("span", { class: "tag" }), make("span", { class: "bar" }), make("span", {})];
    const scale = make("span", { class: "scale" }, written, bar);
    const layer = makeSvg("svg", { class: "names", "aria-hidden": "true" });
    const box = make("div", { class: "frame" }, still, canvas, layer, tag, scale);
    const figure = make("figure", {}, box, ...(one.title ? [make("figcaption", {}, one.title)] : []));
    canvas.hidden = tag.hidden = scale.hidden = true;
    const solid = solids[i];
    const screen = { root: figure, frame: box, canvas, still, layer, bar, written, scale, tag, solid, named: one.named };
    listen(canvas, {
      look: () => look,
      move,
      frame: () => framing(look, sizeOf(screen), solid),
      hover: (at) => {
        cancelAnimationFrame(hovering);
        hovering = requestAnimationFrame(() => hoverAt(screen, at));
      },
      picked: (at) => {
        const found = underneath(screen, at);
        if (found) say(found.cut ? "Cut metal." : saying(solid.names[found.part]));
      },
    });
    canvas.addEventListener("keydown", (event) => {
      if (event.ctrlKey || event.altKey || event.metaKey) return;
      const next = keyed(event, look, home, framing(look, sizeOf(screen), solid));
      if (!next) return;
      event.preventDefault();
      move(next);
      announce();
    });
    return screen;
  }

  const sizeOf = ({ frame: box }) => ({ width: box.clientWidth, height: box.clientHeight });

  function underneath(screen, at) {
    return under(at, screen.solid, facing(look), framing(look, sizeOf(screen), screen.solid), look, sizeOf(screen), cutPlane(cut, screen.solid));
  }

  function hoverAt(screen, at) {
    if (closed) return;
    const found = at && underneath(screen, at);
    const name = found ? (found.cut ? "cut metal" : screen.solid.names[found.part]) : "";
    hover(name);
    for (const one of screens) one.tag.hidden = one !== screen || !name;
    setText(screen.tag, found?.cut ? name : config.parts.find((part) => part.name === name)?.term ?? "");
    if (at) screen.tag.style.transform = `translate(${Math.round(within(at[0] + 12, 0, sizeOf(screen).width - 150))}px, ${Math.round(Math.max(0, at[1] - 30))}px)`;
  }

  function hover(name) {
    if (name === hovered) return;
    hovered = name;
    for (const item of parts.children) item.classList.toggle("marked", item.textContent === config.parts.find((part) => part.name === name)?.term);
    changed(false);
  }

  function move(next) {
    cancelAnimationFrame(turning);
    look = next;
    changed();
  }

  // Turns there the short way, so that one sees how the views hang together; at once where motion is not wanted.
  function turnTo(next) {
    cancelAnimationFrame(turning);
    const from = look, began = performance.now();
    const way = ((next.turn - from.turn + 540) % 360) - 180;
    if (matches("(prefers-reduced-motion: reduce)")) return move(next);
    const step = (now) => {
      const share = within((now - began) / TURNING, 0, 1), eased = share * share * (3 - 2 * share);
      const mix = (name) => from[name] + eased * (next[name] - from[name]);
      look = share < 1 ? { turn: round360(from.turn + eased * way), tilt: mix("tilt"), zoom: mix("zoom"), right: mix("right"), up: mix("up") } : next;
      changed();
      if (share < 1) turning = requestAnimationFrame(step);
    };
    turning = requestAnimationFrame(step);
  }

  function changed(moved = true) {
    if (closed) return;
    if (!frame) frame = requestAnimationFrame(draw);
    if (!moved) return;
    clearTimeout(tell);
    tell = setTimeout(() => told({ look, cut, names }), TOLD_AFTER);
  }

  function draw() {
    frame = 0;
    const shown = screens.filter((screen) => screen.frame.clientWidth && isNear(screen.frame));
    cutting.update(cut);
    if (!shown.length) return;
    const stage = theStage();
    setLive(!!stage);
    if (!stage) return;
    for (const screen of shown) {
      if (stage.gl.isContextLost()) return;
      drawOn(stage, screen);
    }
  }

  function drawOn(stage, { solid, canvas, frame: box, layer, bar, written, scale, named }) {
    const size = { width: box.clientWidth, height: box.clientHeight };
    const pixel = within(window.devicePixelRatio || 1, 1, 2);
    paint(stage, solid, {
      look, size, pixel, cut: cutPlane(cut, solid), marked: solid.names.indexOf(hovered || focused),
      style: { ...style, lighting: matches("(forced-colors: active), (prefers-contrast: more)") ? [0.85, 0.15] : style.lighting },
    });
    const [width, height] = [stage.canvas.width, stage.canvas.height];
    if (canvas.width !== width || canvas.height !== height) [canvas.width, canvas.height] = [width, height];
    const copy = canvas.getContext("2d");
    copy.clearRect(0, 0, width, height);
    copy.drawImage(stage.canvas, 0, 0);
    const frame = framing(look, size, solid), perMm = frame.scale;
    const plane = cutPlane(cut, solid);
    const seen = names ? namesSeen(named, solid, facing(look), frame, look, size, plane, config.naming.touching) : [];
    writeNames(layer, seen, size.width / 2 + perMm * look.right, perMm * solid.radius, size, config.naming);
    const [length, text] = barLength(110 / perMm, config.units);
    bar.style.width = `${length * perMm}px`;
    setText(written, text);
    scale.hidden = false;
  }

  function setLive(now) {
    if (now === live && root.dataset.live) return;
    live = now;
    root.dataset.live = now ? "yes" : "no";
    for (const screen of screens) {
      screen.canvas.hidden = !now;
      screen.still.hidden = now;
      screen.layer.toggleAttribute("hidden", !now);
      if (!now) screen.scale.hidden = screen.tag.hidden = true;
    }
    views.hidden = cutting.root.hidden = help.hidden = !now;
    say(now ? config.summary : MISSING);
  }

  function say(text) {
    clearTimeout(speak);
    setText(status, text);
  }

  // Where it is looked at from now, once the hand has come to rest.
  function announce(title = "") {
    clearTimeout(speak);
    speak = setTimeout(() => {
      const where = title ? `Seen ${title}.` : `Turned ${Math.round(look.turn)}°, seen ${Math.round(look.tilt)}° from square to the axis.`;
      const opened = cut.kind === "none" ? "" : ` Cut ${CUTS[cut.kind].title}, ${cutWords(cut, config.units)}.`;
      setText(status, where + opened);
    }, SPOKEN_AFTER);
  }

  say(config.summary);
  changed(false);
  return {
    close() {
      closed = true;
      for (const wait of [tell, speak]) clearTimeout(wait);
      for (const one of [frame, turning, hovering]) cancelAnimationFrame(one);
      resized.disconnect();
      appeared.disconnect();
      leaveStage(view, solids);
      root.replaceChildren();
    },
  };
}

// Whether an element is in the window or nearly so; what is far off is drawn when it comes into sight.
function isNear(element) {
  const { top, bottom } = element.getBoundingClientRect();
  return bottom > -200 && top < window.innerHeight + 200;
}

function styled({ style }) {
  return { ...style, inks: Object.fromEntries(Object.entries(style.inks).map(([name, hex]) => [name, rgb(hex)])) };
}

function render({ model, el }) {
  const root = el.appendChild(make("div"));
  const told = (state) => {
    model.set("state", state);
    model.save_changes();
  };
  const solid = mountSolid(root, model.get("config"), model.get("packs"), model.get("state"), told);
  return () => solid.close();
}

function startPage() {
  const config = JSON.parse(document.getElementById("drillpoint-config").textContent);
  const packs = config.packs.map((text) => Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)));
  mountSolid(document.getElementById("drillpoint-solid"), config, packs, {}, () => {});
}
