// Where a solid is looked at from, and how hands move it.
// look: {turn, tilt (degrees), zoom, right, up (mm, how far the drill is shifted)}. Tilt 90 looks onto the tip, 0 square to the axis.

const FARTHEST = 0.5, NEAREST = 24; // zoom
const LENGTH_SHOWN = 1.5; // diameters from the tip down, at zoom 1

function facing({ turn, tilt }) {
  const [a, b] = [(turn * Math.PI) / 180, (tilt * Math.PI) / 180];
  const [c, s, low, high] = [Math.cos(a), Math.sin(a), Math.cos(b), Math.sin(b)];
  // Rows: to the right, up, towards the eye.
  return [[c, -s, 0], [s * high, c * high, low], [-s * low, -c * low, high]];
}

const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

// Pixels of the screen to one mm, and the place of the drill in the middle of it.
function framing(look, size, solid) {
  const scale = (look.zoom * 0.9 * Math.min(size.width, size.height)) / (2 * solid.radius * LENGTH_SHOWN);
  // The tip stands near the upper end; close up it comes to the middle.
  const share = 1 / Math.max(1, look.zoom);
  return { scale, middle: [0, 0, solid.tip - 0.9 * LENGTH_SHOWN * solid.radius * share] };
}

// The place of a point of the drill: pixels from the upper left, and mm towards the eye.
function placed(point, rows, frame, look, size) {
  const from = [point[0] - frame.middle[0], point[1] - frame.middle[1], point[2] - frame.middle[2]];
  return [
    size.width / 2 + frame.scale * (dot(rows[0], from) + look.right),
    size.height / 2 - frame.scale * (dot(rows[1], from) + look.up),
    dot(rows[2], from),
  ];
}

const within = (value, low, high) => Math.min(high, Math.max(low, value));
const round360 = (angle) => ((angle % 360) + 360) % 360;

function turnedBy(look, right, up) {
  return { ...look, turn: round360(look.turn + right), tilt: within(look.tilt + up, -90, 90) };
}

const zoomedBy = (look, factor) => ({ ...look, zoom: within(look.zoom * factor, FARTHEST, NEAREST) });
const shiftedBy = (look, right, up) => ({ ...look, right: look.right + right, up: look.up + up });
const lookFrom = ({ turn, tilt }) => ({ turn, tilt, zoom: 1, right: 0, up: 0 });

// Keys: what each does to the look; null for the rest.
function keyed(event, look, home, frame) {
  const far = event.shiftKey;
  const step = 5;
  const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
  if (arrows[event.key]) {
    const [x, y] = arrows[event.key];
    return far ? shiftedBy(look, (20 * x) / frame.scale, (20 * y) / frame.scale) : turnedBy(look, step * x, -step * y);
  }
  if (event.key === "+" || event.key === "=") return zoomedBy(look, 1.25);
  if (event.key === "-" || event.key === "_") return zoomedBy(look, 1 / 1.25);
  return event.key === "Home" ? home : null;
}

// Mouse, pen and fingers on an element. One turns; one with Shift, or two, shift; two spread zoom; the wheel zooms when
// the element has the focus, so that a page still scrolls past it.
function listen(element, { look, move, frame, hover, picked }) {
  const down = new Map();
  let travelled = 0;
  const at = (event) => [event.offsetX, event.offsetY];
  element.addEventListener("pointerdown", (event) => {
    element.setPointerCapture(event.pointerId);
    if (!down.size) travelled = 0;
    down.set(event.pointerId, at(event));
  });
  element.addEventListener("pointermove", (event) => {
    const before = down.get(event.pointerId), now = at(event);
    if (!before) {
      hover(now);
      return;
    }
    const [x, y] = [now[0] - before[0], now[1] - before[1]];
    travelled += Math.hypot(x, y);
    const others = [...down.entries()].filter(([id]) => id !== event.pointerId).map(([, place]) => place);
    down.set(event.pointerId, now);
    if (others.length) {
      const apart = (place) => Math.hypot(place[0] - others[0][0], place[1] - others[0][1]) || 1;
      move(shiftedBy(zoomedBy(look(), apart(now) / apart(before)), x / 2 / frame().scale, -y / 2 / frame().scale));
    } else if (event.shiftKey) move(shiftedBy(look(), x / frame().scale, -y / frame().scale));
    else move(turnedBy(look(), 0.5 * x, 0.5 * y));
  });
  const lift = (event) => {
    if (down.delete(event.pointerId) && !down.size && travelled < 4 && event.type === "pointerup") picked(at(event));
  };
  element.addEventListener("pointerup", lift);
  element.addEventListener("pointercancel", lift);
  element.addEventListener("pointerleave", () => hover(null));
  element.addEventListener("wheel", (event) => {
    if (document.activeElement !== element && element.getRootNode().activeElement !== element) return;
    event.preventDefault();
    move(zoomedBy(look(), Math.exp(-0.0015 * event.deltaY)));
  }, { passive: false });
}
