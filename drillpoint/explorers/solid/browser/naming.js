// Names beside the drill, laid out as the still picture has them.

// Of all places a name may point at, the one that is seen and looks most towards the eye: [{text, above, x, y}].
function namesSeen(names, solid, rows, frame, look, size, cut, touching) {
  const spots = names.flatMap((one) => one.spots.map(([at, way, facing]) => {
    const [x, y, depth] = placed(at, rows, frame, look, size);
    const towards = dot(rows[2], way);
    const framed = x > 0 && y > 0 && x < size.width && y < size.height;
    return { one, x, y, depth, towards, seen: framed && towards > facing && !(cut && dot(cut, at) > cut[3]) };
  }));
  hide(spots.filter((spot) => spot.seen), solid, onScreen(solid, rows, frame, look, size), cut, touching * solid.radius);
  const best = new Map();
  for (const spot of spots) {
    if (spot.seen && !(best.get(spot.one)?.towards >= spot.towards)) best.set(spot.one, spot);
  }
  return [...best.values()].map(({ one, x, y }) => ({ text: one.text, above: one.above, x, y }));
}

// A spot with metal before it is not seen.
function hide(spots, solid, screen, cut, touching) {
  const t = solid.triangles;
  for (let i = 0; i < t.length; i += 3) {
    const [a, b, c] = [3 * t[i], 3 * t[i + 1], 3 * t[i + 2]];
    const [ax, ay, bx, by, cx, cy] = [screen[a], screen[a + 1], screen[b], screen[b + 1], screen[c], screen[c + 1]];
    const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    // Pixels count downwards, so what faces the eye runs the other way round; nothing else is nearest to the eye.
    if (area >= 0) continue;
    const [left, right, top, bottom] = [Math.min(ax, bx, cx), Math.max(ax, bx, cx), Math.min(ay, by, cy), Math.max(ay, by, cy)];
    for (const spot of spots) {
      if (!spot.seen || spot.x < left || spot.x > right || spot.y < top || spot.y > bottom) continue;
      const second = ((spot.x - ax) * (cy - ay) - (cx - ax) * (spot.y - ay)) / area;
      const third = ((bx - ax) * (spot.y - ay) - (by - ay) * (spot.x - ax)) / area;
      const first = 1 - second - third;
      if (first < 0 || second < 0 || third < 0) continue;
      if (cut && [t[i], t[i + 1], t[i + 2]].every((place) => dot(cut, pointOf(solid.xyz, place)) > cut[3])) continue;
      if (first * screen[a + 2] + second * screen[b + 2] + third * screen[c + 2] > spot.depth + touching) spot.seen = false;
    }
  }
}

// Heights in order, a row apart and within limits, and otherwise as wanted.
function spread(wanted, row, low, high) {
  const at = [];
  wanted.forEach((want, i) => at.push(Math.max(want, low, i ? at[i - 1] + row : low)));
  for (let i = at.length - 1; i >= 0; i--) at[i] = Math.min(at[i], i === at.length - 1 ? high : at[i + 1] - row);
  return at;
}

// seen: as from namesSeen; axis: of the drill, in pixels; aside: half its width. layer: an SVG element over the canvas.
function writeNames(layer, seen, axis, aside, size, { row, beside, letter }) {
  const written = [];
  for (const side of [-1, 1]) {
    const own = seen.filter((one) => (one.x >= axis ? 1 : -1) === side).map((one) => ({ ...one, want: one.y - (one.above ? row : 0) }));
    own.sort((one, other) => one.want - other.want);
    const heights = spread(own.map((one) => one.want), row, row, size.height - row);
    const widest = Math.max(0, ...own.map((one) => one.text.length)) * 0.56 * letter + 8;
    const x = within(axis + side * (aside + beside), side < 0 ? widest : 0, size.width - (side > 0 ? widest : 0));
    own.forEach((one, i) => written.push({ ...one, side, at: [x, heights[i]] }));
  }
  setAttribute(layer, "viewBox", `0 0 ${size.width} ${size.height}`);
  const lines = written.map(({ at, x, y }) => `M${at[0]} ${at[1]}L${x} ${y}`).join("");
  layer.replaceChildren(
    makeSvg("path", { d: lines, class: "halo" }),
    makeSvg("path", { d: lines, class: "leader" }),
    ...written.flatMap(({ text, side, at, x, y }) => {
      const word = makeSvg("text", { x: at[0] + 4 * side, y: at[1] + letter / 3, "text-anchor": side < 0 ? "end" : "start" });
      word.textContent = text;
      return [makeSvg("circle", { cx: x, cy: y, r: 3 }), word];
    }),
  );
}
