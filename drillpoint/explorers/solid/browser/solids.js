// A solid as it comes from Python, and what is worked out of it here: ribbons for its edges, its cut, what is under a pointer.

const UNNAMED = 255;

// layout: {places, triangles, lines, wide}; the counts of each, and whether indices take four bytes.
function unpacked(bytes, layout) {
  // A view may start anywhere in a message, but numbers must start where their size divides.
  const data = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength);
  const Whole = layout.wide ? Uint32Array : Uint16Array;
  let start = 16 * layout.places;
  const take = (Kind, count) => {
    const taken = new Kind(data, start, count);
    start += Kind.BYTES_PER_ELEMENT * count;
    return taken;
  };
  const places = new Float32Array(3 * layout.places), parts = new Uint8Array(layout.places);
  const view = new DataView(data);
  for (let i = 0; i < layout.places; i++) {
    for (let k = 0; k < 3; k++) places[3 * i + k] = view.getFloat32(16 * i + 4 * k, true);
    parts[i] = view.getUint8(16 * i + 15);
  }
  const triangles = take(Whole, 3 * layout.triangles), lines = take(Whole, 2 * layout.lines);
  const ofLine = take(Uint8Array, layout.lines);
  let tip = -Infinity;
  for (let i = 2; i < places.length; i += 3) tip = Math.max(tip, places[i]);
  return { ...layout, packed: new Uint8Array(data, 0, 16 * layout.places), xyz: places, partOf: parts, triangles, lines, ofLine, tip };
}

// A solid as it is drawn: its parts under their names, and how each looks.
function prepared(bytes, one, config) {
  const solid = { ...unpacked(bytes, one.layout), names: one.names, radius: one.radius };
  solid.runs = runs(solid);
  solid.kindOfLine = Object.fromEntries(one.names.map((name, i) => [i, one.kinds[i]]).filter(([, kind]) => kind in config.style.lines));
  solid.looks = new Float32Array(2 * MOST_PARTS);
  one.kinds.forEach((kind, i) => {
    const { tone, pattern } = config.style.surfaces[kind] ?? config.style.surfaces.body;
    solid.looks.set([tone, PATTERNS.indexOf(pattern)], 2 * i);
  });
  return solid;
}

const pointOf = (xyz, i) => [xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]];

// Two triangles a segment; each corner: where it is, the segment's other end, and on which side. Seen from its other end
// a ribbon's right is its left.
const RIBBON = 7; // numbers a corner

function ribbons(segments) {
  const made = new Float32Array(segments.length * 6 * RIBBON);
  let k = 0;
  for (const [a, b] of segments) {
    for (const [at, other, side] of [[a, b, 1], [a, b, -1], [b, a, 1], [a, b, 1], [b, a, 1], [b, a, -1]]) {
      made.set(at, k);
      made.set(other, k + 3);
      made[k + 6] = side;
      k += RIBBON;
    }
  }
  return made;
}

function lineRibbons(solid) {
  const { xyz } = solid, segments = [];
  for (let i = 0; i < solid.ofLine.length; i++) segments.push([pointOf(xyz, solid.lines[2 * i]), pointOf(xyz, solid.lines[2 * i + 1])]);
  return ribbons(segments);
}

// Runs of segments of one part: [part, first segment, count]; they come sorted.
function runs(solid) {
  const found = [];
  solid.ofLine.forEach((part, i) => {
    const last = found[found.length - 1];
    if (last && last[0] === part) last[2] += 1;
    else found.push([part, i, 1]);
  });
  return found;
}

// Where the cut's plane goes through the triangles: the outline of the cut metal, as segments.
function cutOutline(solid, cut) {
  const xyz = solid.xyz, t = solid.triangles, segments = [];
  const off = new Float32Array(solid.partOf.length);
  for (let i = 0; i < off.length; i++) off[i] = cut[0] * xyz[3 * i] + cut[1] * xyz[3 * i + 1] + cut[2] * xyz[3 * i + 2] - cut[3];
  for (let i = 0; i < t.length; i += 3) {
    const ends = [];
    for (const [a, b] of [[t[i], t[i + 1]], [t[i + 1], t[i + 2]], [t[i + 2], t[i]]]) {
      if (off[a] > 0 === off[b] > 0) continue;
      const share = off[a] / (off[a] - off[b]), from = pointOf(xyz, a), to = pointOf(xyz, b);
      ends.push(from.map((value, k) => value + share * (to[k] - value)));
    }
    if (ends.length === 2) segments.push(ends);
  }
  return segments;
}

// The places of a solid on the screen: pixels across and down, mm towards the eye.
function onScreen(solid, rows, frame, look, size) {
  const count = solid.partOf.length, screen = new Float32Array(3 * count);
  for (let i = 0; i < count; i++) screen.set(placed(pointOf(solid.xyz, i), rows, frame, look, size), 3 * i);
  return screen;
}

// What is nearest to the eye under a place of the screen: {part} or {cut: true}, or null. A named edge wins over the faces
// it bounds when it is within a few pixels.
function under([x, y], solid, rows, frame, look, size, cut) {
  const xyz = solid.xyz, screen = onScreen(solid, rows, frame, look, size);
  const gone = (point) => cut && dot(cut, point) > cut[3];
  const between = (corners, shares) => [0, 1, 2].map((k) => corners.reduce((sum, i, c) => sum + shares[c] * xyz[3 * i + k], 0));
  let best = null, depth = -Infinity;
  const t = solid.triangles;
  for (let i = 0; i < t.length; i += 3) {
    const [a, b, c] = [t[i], t[i + 1], t[i + 2]];
    const [ax, ay] = [screen[3 * a], screen[3 * a + 1]];
    const [bx, by, cx, cy] = [screen[3 * b] - ax, screen[3 * b + 1] - ay, screen[3 * c] - ax, screen[3 * c + 1] - ay];
    const area = bx * cy - by * cx;
    if (!area) continue;
    const second = ((x - ax) * cy - (y - ay) * cx) / area, third = (bx * (y - ay) - by * (x - ax)) / area, first = 1 - second - third;
    if (first < 0 || second < 0 || third < 0) continue;
    const z = first * screen[3 * a + 2] + second * screen[3 * b + 2] + third * screen[3 * c + 2];
    if (z <= depth || gone(between([a, b, c], [first, second, third]))) continue;
    depth = z;
    // Pixels count downwards, so what faces the eye runs the other way round.
    best = area < 0 ? { part: solid.partOf[a] } : { cut: true };
  }
  return edgeNear([x, y], solid, screen, gone, depth) ?? best;
}

function edgeNear([x, y], solid, screen, gone, depth) {
  let found = null, nearest = 6; // pixels
  solid.ofLine.forEach((part, i) => {
    if (part === UNNAMED) return;
    const [a, b] = [solid.lines[2 * i], solid.lines[2 * i + 1]];
    const [ax, ay, dx, dy] = [screen[3 * a], screen[3 * a + 1], screen[3 * b] - screen[3 * a], screen[3 * b + 1] - screen[3 * a + 1]];
    const share = within(((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1), 0, 1);
    const far = Math.hypot(ax + share * dx - x, ay + share * dy - y);
    const z = screen[3 * a + 2] + share * (screen[3 * b + 2] - screen[3 * a + 2]);
    const hidden = z < depth - 0.12 * solid.radius;
    if (far < nearest && !hidden && !gone(pointOf(solid.xyz, a))) [found, nearest] = [{ part }, far];
  });
  return found;
}

// Which way a part looks, on the whole: the sum of its normals.
function outward(solid, part) {
  const sum = [0, 0, 0], signed = new Int8Array(solid.packed.buffer, 0, 16 * solid.partOf.length);
  const add = (place) => sum.forEach((_, k) => (sum[k] += signed[16 * place + 12 + k]));
  solid.partOf.forEach((own, place) => own === part && add(place));
  solid.ofLine.forEach((own, i) => own === part && (add(solid.lines[2 * i]), add(solid.lines[2 * i + 1])));
  return sum;
}
