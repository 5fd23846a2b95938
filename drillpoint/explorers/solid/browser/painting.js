// One solid painted on the stage.

const LIFT = 0.012, DEEP = 12; // of the radius: edges off their faces towards the eye; how deep the picture is

function upload(stage, solid) {
  const { gl } = stage;
  const buffer = (kind, data, use = gl.STATIC_DRAW) => {
    const made = gl.createBuffer();
    gl.bindBuffer(kind, made);
    gl.bufferData(kind, data, use);
    return made;
  };
  if (solid.wide) gl.getExtension("OES_element_index_uint");
  const buffers = {
    corners: buffer(gl.ARRAY_BUFFER, solid.packed),
    triangles: buffer(gl.ELEMENT_ARRAY_BUFFER, solid.triangles),
    ribbons: buffer(gl.ARRAY_BUFFER, lineRibbons(solid)),
    plane: gl.createBuffer(),
    outline: gl.createBuffer(),
  };
  stage.uploaded.set(solid, buffers);
  return buffers;
}

// scene: {look, cut ([x, y, z, beyond] or null), marked (part or -1), style, size, pixel}
function paint(stage, solid, scene) {
  const { gl, programs, canvas } = stage, { size, pixel } = scene;
  const buffers = stage.uploaded.get(solid) ?? upload(stage, solid);
  const [width, height] = [Math.round(size.width * pixel), Math.round(size.height * pixel)];
  if (canvas.width !== width || canvas.height !== height) [canvas.width, canvas.height] = [width, height];
  gl.viewport(0, 0, width, height);
  gl.clearColor(0, 0, 0, 0);
  gl.clearStencil(0);
  gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT | gl.STENCIL_BUFFER_BIT);
  gl.enable(gl.DEPTH_TEST);
  gl.depthFunc(gl.LEQUAL);
  const rows = facing(scene.look), frame = framing(scene.look, size, solid);
  const begin = ({ made, uniforms }, lift) => {
    gl.useProgram(made);
    ["rightwards", "upwards", "towards"].forEach((name, i) => gl.uniform3fv(uniforms[name], rows[i]));
    gl.uniform3fv(uniforms.middle, frame.middle);
    const deep = 1 / (DEEP * solid.radius);
    gl.uniform4f(uniforms.frame, (2 * frame.scale) / size.width, (2 * frame.scale) / size.height, deep, lift * solid.radius * deep);
    gl.uniform2f(uniforms.shift, scene.look.right, scene.look.up);
    if (uniforms.cut) gl.uniform4fv(uniforms.cut, scene.cut ?? [0, 0, 0, 1]);
    if (uniforms.pixel) gl.uniform1f(uniforms.pixel, pixel);
    return uniforms;
  };
  paintFaces(gl, programs.face, begin, buffers, solid, scene);
  if (scene.cut) paintCut(gl, programs, begin, buffers, solid, scene);
  paintEdges(gl, programs.edge, begin, buffers, solid, scene);
}

function paintFaces(gl, face, begin, buffers, solid, { size, marked, style, cut }) {
  const uniforms = begin(face, 0);
  gl.bindBuffer(gl.ARRAY_BUFFER, buffers.corners);
  const { at, normal, part } = face.attributes;
  for (const [place, count, kind, scaled, offset] of [[at, 3, gl.FLOAT, false, 0], [normal, 3, gl.BYTE, true, 12], [part, 1, gl.UNSIGNED_BYTE, false, 15]]) {
    gl.enableVertexAttribArray(place);
    gl.vertexAttribPointer(place, count, kind, scaled, 16, offset);
  }
  gl.bindBuffer(gl.ELEMENT_ARRAY_BUFFER, buffers.triangles);
  gl.uniform2fv(uniforms.looks, solid.looks);
  gl.uniform1f(uniforms.marked, marked);
  gl.uniform3fv(uniforms.light, style.light);
  gl.uniform2fv(uniforms.lighting, style.lighting);
  gl.uniform3fv(uniforms.ink, style.inks.ink);
  gl.uniform3fv(uniforms.focus, style.inks.focus);
  const draw = () => gl.drawElements(gl.TRIANGLES, solid.triangles.length, solid.wide ? gl.UNSIGNED_INT : gl.UNSIGNED_SHORT, 0);
  // The rim: what looks away, a little larger, shows as a dark line where the surface bends out of sight.
  gl.enable(gl.CULL_FACE);
  gl.cullFace(gl.FRONT);
  gl.uniform1f(uniforms.rimmed, 1);
  gl.uniform2f(uniforms.rim, 3.4 / size.width, 3.4 / size.height);
  draw();
  gl.disable(gl.CULL_FACE);
  gl.uniform1f(uniforms.rimmed, 0);
  gl.uniform2f(uniforms.rim, 0, 0);
  if (cut) {
    // Where something that looks away is nearest to the eye, the eye looks into the cut metal.
    gl.enable(gl.STENCIL_TEST);
    gl.stencilFunc(gl.ALWAYS, 1, 255);
    gl.stencilOpSeparate(gl.FRONT, gl.KEEP, gl.KEEP, gl.ZERO);
    gl.stencilOpSeparate(gl.BACK, gl.KEEP, gl.KEEP, gl.REPLACE);
  }
  draw();
  for (const place of Object.values(face.attributes)) gl.disableVertexAttribArray(place);
}

function paintCut(gl, { cut: hatched, edge }, begin, buffers, solid, scene) {
  const { style, cut } = scene;
  const uniforms = begin(hatched, 0);
  gl.uniform3fv(uniforms.ink, style.inks.ink);
  gl.uniform3fv(uniforms.paper, style.inks.paper);
  const normal = cut.slice(0, 3), far = 40 * solid.radius;
  const first = Math.abs(normal[2]) > 0.5 ? [1, 0, 0] : [0, 0, 1];
  const second = [normal[1] * first[2] - normal[2] * first[1], normal[2] * first[0] - normal[0] * first[2], normal[0] * first[1] - normal[1] * first[0]];
  const corner = (a, b) => normal.map((value, k) => value * cut[3] + a * far * first[k] + b * far * second[k]);
  gl.bindBuffer(gl.ARRAY_BUFFER, buffers.plane);
  gl.bufferData(gl.ARRAY_BUFFER, new Float32Array([corner(-1, -1), corner(1, -1), corner(-1, 1), corner(1, 1)].flat()), gl.DYNAMIC_DRAW);
  gl.enableVertexAttribArray(hatched.attributes.at);
  gl.vertexAttribPointer(hatched.attributes.at, 3, gl.FLOAT, false, 0, 0);
  gl.stencilFunc(gl.EQUAL, 1, 255);
  gl.stencilOp(gl.KEEP, gl.KEEP, gl.KEEP);
  gl.depthFunc(gl.ALWAYS);
  gl.drawArrays(gl.TRIANGLE_STRIP, 0, 4);
  gl.depthFunc(gl.LEQUAL);
  gl.disable(gl.STENCIL_TEST);
  gl.disableVertexAttribArray(hatched.attributes.at);
  const outline = cutOutline(solid, cut);
  gl.bindBuffer(gl.ARRAY_BUFFER, buffers.outline);
  gl.bufferData(gl.ARRAY_BUFFER, ribbons(outline), gl.DYNAMIC_DRAW);
  const own = begin(edge, LIFT);
  // The outline lies on the plane itself, of which rounding must not cut half away.
  gl.uniform4f(own.cut, 0, 0, 0, 1);
  paintRibbons(gl, edge, scene, 0, outline.length, style.lines.cut.width, style.inks.ink);
}

function paintEdges(gl, edge, begin, buffers, solid, scene) {
  const { style, marked } = scene;
  gl.bindBuffer(gl.ARRAY_BUFFER, buffers.ribbons);
  // What hides an edge is a face; among themselves edges lie in the order they are painted.
  gl.depthMask(false);
  for (const [part, first, count] of [...solid.runs].reverse()) {
    const line = style.lines[solid.kindOfLine[part] ?? "edge"];
    const isMarked = part === marked;
    begin(edge, isMarked ? 3 * LIFT : LIFT);
    paintRibbons(gl, edge, scene, first, count, line.width * (isMarked ? 2 : 1), isMarked ? style.inks.focus : style.inks[line.ink]);
    if (line.core || isMarked) {
      begin(edge, isMarked ? 3.2 * LIFT : 1.2 * LIFT);
      paintRibbons(gl, edge, scene, first, count, (line.width * (isMarked ? 2 : 1)) / 3, style.inks.paper);
    }
  }
  gl.depthMask(true);
}

// Segments of the bound buffer of ribbons.
function paintRibbons(gl, edge, { size }, first, count, width, ink) {
  const { at, other, side } = edge.attributes, { uniforms } = edge;
  gl.uniform2f(uniforms.width, width / size.width, width / size.height);
  gl.uniform3fv(uniforms.ink, ink);
  const numbers32 = 4;
  for (const [place, many, offset] of [[at, 3, 0], [other, 3, 3], [side, 1, 6]]) {
    gl.enableVertexAttribArray(place);
    gl.vertexAttribPointer(place, many, gl.FLOAT, false, RIBBON * numbers32, offset * numbers32);
  }
  gl.drawArrays(gl.TRIANGLES, 6 * first, 6 * count);
  for (const place of [at, other, side]) gl.disableVertexAttribArray(place);
}
