// The one WebGL context of a page. Every view of every solid is drawn on it in turn and copied to a canvas of its own,
// so a page may hold as many views as it likes. It is made when the first view is drawn and given back with the last.

const STAGE = Symbol.for("drillpoint.solid.stage");
const MOST_LOSSES = 3; // after so many lost contexts a page is content with still pictures

// Widgets load this script anew each, so what they share hangs on the window.
function shared() {
  return (window[STAGE] ??= { stage: null, views: new Set(), losses: 0 });
}

function makeStage() {
  const canvas = document.createElement("canvas");
  const gl = canvas.getContext("webgl", { alpha: true, antialias: true, stencil: true, depth: true, powerPreference: "low-power" });
  if (!gl || gl.isContextLost()) return null;
  const stage = { canvas, gl, alive: true, programs: null, uploaded: new Map() };
  stage.programs = { face: program(gl, FACE), edge: program(gl, EDGE), cut: program(gl, CUT) };
  canvas.addEventListener("webglcontextlost", () => {
    if (!stage.alive) return; // given back by us
    stage.alive = false;
    const page = shared();
    page.losses += 1;
    if (page.stage === stage) page.stage = null;
    for (const view of page.views) view.lost();
  });
  return stage;
}

// The stage, or null where there is no WebGL.
function theStage() {
  const page = shared();
  if (page.stage?.alive) return page.stage;
  if (page.losses >= MOST_LOSSES) return null;
  try {
    page.stage = makeStage();
  } catch (error) {
    console.error(error);
    page.stage = null;
  }
  return page.stage;
}

function joinStage(view) {
  shared().views.add(view);
}

// What a view has put on the card goes when it closes; with the last view the context goes.
function leaveStage(view, solids) {
  const page = shared();
  page.views.delete(view);
  const stage = page.stage;
  if (!stage) return;
  for (const solid of solids) {
    const buffers = stage.uploaded.get(solid);
    if (buffers) for (const buffer of Object.values(buffers)) stage.gl.deleteBuffer(buffer);
    stage.uploaded.delete(solid);
  }
  if (page.views.size) return;
  stage.alive = false;
  page.stage = null;
  stage.gl.getExtension("WEBGL_lose_context")?.loseContext();
}
