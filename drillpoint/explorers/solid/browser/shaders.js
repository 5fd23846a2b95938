// What the graphics card runs: shaded faces with their patterns, a dark rim, edges as ribbons, and the cut.

const MOST_PARTS = 40;
const PATTERNS = ["", "dots", "lines"];

// What every shader knows of the look and the cut. Places come in mm of the drill.
const LOOK = `
precision highp float;
uniform vec3 rightwards, upwards, towards, middle;
uniform vec4 frame; // mm to clip space across, up, deep; and the shift towards the eye
uniform vec2 shift; // mm
vec4 seen(vec3 at) {
  vec3 from = at - middle;
  return vec4((dot(rightwards, from) + shift.x) * frame.x, (dot(upwards, from) + shift.y) * frame.y,
    -dot(towards, from) * frame.z - frame.w, 1.0);
}`;

const FACE = {
  vertex: `${LOOK}
attribute vec3 at, normal;
attribute float part;
uniform vec2 looks[${MOST_PARTS}]; // tone and pattern of each part
uniform float marked;
uniform vec2 rim; // clip space, how far the rim stands out
varying vec3 place, facing;
varying vec3 look;
void main() {
  facing = vec3(dot(rightwards, normal), dot(upwards, normal), dot(towards, normal));
  gl_Position = seen(at);
  if (rim.x > 0.0) {
    gl_Position.xy += rim * facing.xy / max(length(facing.xy), 1e-3);
    gl_Position.z += 0.002;
  }
  place = at;
  look = vec3(looks[int(part)], abs(part - marked) < 0.5 ? 1.0 : 0.0);
}`,
  fragment: `precision highp float;
uniform vec4 cut; // what lies on the side of cut.xyz beyond cut.w is gone; all zero: nothing is
uniform vec3 light, ink, focus;
uniform vec2 lighting;
uniform float pixel, rimmed;
varying vec3 place, facing;
varying vec3 look;
void main() {
  if (dot(cut.xyz, place) > cut.w) discard;
  if (rimmed > 0.5) { gl_FragColor = vec4(ink, 1.0); return; }
  float tone = look.x * (lighting.x + lighting.y * max(0.0, dot(normalize(facing), light)));
  vec2 at = gl_FragCoord.xy / pixel;
  if (look.y > 1.5) { if (mod(at.x - at.y, 6.0) < 1.3) tone -= 0.34; }
  else if (look.y > 0.5) {
    vec2 cell = mod(vec2(at.x, at.y + 2.5 * mod(floor(at.x / 5.0), 2.0)), 5.0) - 2.5;
    if (length(cell) < 1.1) tone -= 0.34;
  }
  vec3 colour = vec3(tone);
  if (look.z > 0.5) colour = mod(at.x + at.y, 10.0) < 4.0 ? focus : mix(colour, vec3(1.0), 0.5);
  gl_FragColor = vec4(colour, 1.0);
}`,
};

const EDGE = {
  vertex: `${LOOK}
attribute vec3 at, other;
attribute float side; // -1 or 1
uniform vec2 width; // clip space to one pixel, times half the width
varying vec3 place;
void main() {
  vec4 here = seen(at), there = seen(other);
  vec2 along = (there.xy - here.xy) / width;
  along = length(along) > 1e-4 ? normalize(along) : vec2(1.0, 0.0);
  gl_Position = here;
  gl_Position.xy += (vec2(-along.y, along.x) * side - along * 0.7) * width;
  place = at;
}`,
  fragment: `precision highp float;
uniform vec4 cut;
uniform vec3 ink;
varying vec3 place;
void main() {
  if (dot(cut.xyz, place) > cut.w) discard;
  gl_FragColor = vec4(ink, 1.0);
}`,
};

// Cut metal: thin lines at 45 degrees, as a drawing office hatches it.
const CUT = {
  vertex: `${LOOK}
attribute vec3 at;
void main() { gl_Position = seen(at); }`,
  fragment: `precision highp float;
uniform vec3 ink, paper;
uniform float pixel;
void main() {
  vec2 at = gl_FragCoord.xy / pixel;
  gl_FragColor = vec4(mod(at.x - at.y, 9.0) < 1.5 ? ink : paper, 1.0);
}`,
};

function program(gl, { vertex, fragment }) {
  const made = gl.createProgram();
  for (const [kind, text] of [[gl.VERTEX_SHADER, vertex], [gl.FRAGMENT_SHADER, fragment]]) {
    const shader = gl.createShader(kind);
    gl.shaderSource(shader, text);
    gl.compileShader(shader);
    gl.attachShader(made, shader);
    gl.deleteShader(shader);
  }
  gl.linkProgram(made);
  if (!gl.getProgramParameter(made, gl.LINK_STATUS)) throw new Error(`shader: ${gl.getProgramInfoLog(made)}`);
  const names = (count, get) => Array.from({ length: gl.getProgramParameter(made, count) }, (_, i) => gl[get](made, i).name.replace("[0]", ""));
  const uniforms = Object.fromEntries(names(gl.ACTIVE_UNIFORMS, "getActiveUniform").map((n) => [n, gl.getUniformLocation(made, n)]));
  const attributes = Object.fromEntries(names(gl.ACTIVE_ATTRIBUTES, "getActiveAttrib").map((n) => [n, gl.getAttribLocation(made, n)]));
  return { made, uniforms, attributes };
}
