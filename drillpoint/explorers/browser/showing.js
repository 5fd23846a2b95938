// The drawings of an explorer: stated ones work their coordinates out here, computed ones get them from Python.

function makeShowing(config) {
  const places = config.scenes.map((name) => {
    const figure = make("figure");
    const place = { name, figure, drawing: null, structure: null, answer: null };
    if (name in scenes) build(place, scenes[name]);
    return place;
  });

  function build(place, scene) {
    place.drawing = makeDrawing(scene);
    place.structure = scene;
    place.figure.replaceChildren(place.drawing.root);
  }

  // What Python answered for the computed scenes; a scene comes along only where it is not the one shown already.
  function take(answers) {
    for (const place of places) {
      const answer = answers[place.name];
      if (!answer || !(answer.scene || place.structure)) continue;
      if (answer.scene) build(place, answer.scene);
      place.answer = { ...answer, scene: place.structure };
    }
  }

  // Returns the numbers that only the drawings have, and what each is written like.
  function update(values, units, mark) {
    const found = { own: {}, likes: {} };
    for (const { drawing, answer } of places) {
      if (!drawing) continue;
      const known = answer ? { ...values, ...answer.values } : values;
      const shown = drawing.update(known, units, mark, answer?.coordinates);
      Object.assign(found.own, shown.own);
      Object.assign(found.likes, shown.likes);
    }
    return found;
  }

  // held: null, or {values, answers} of another drill.
  function hold(held) {
    for (const { name, drawing } of places) {
      if (!drawing) continue;
      const answer = held?.answers[name];
      if (!held || (!answer && !(name in scenes))) drawing.hold(null);
      else if (answer) drawing.hold({ coordinates: answer.coordinates, shapes: answer.scene.shapes });
      else drawing.hold({ coordinates: scenes[name].coordinates(held.values), shapes: scenes[name].shapes });
    }
  }

  const answers = () => Object.fromEntries(places.filter((p) => p.answer).map((p) => [p.name, p.answer]));
  return {
    figures: places.map(({ figure }) => figure),
    take, update, hold, answers,
    has: () => Object.fromEntries(places.filter((p) => p.answer).map((p) => [p.name, p.answer.id])),
    values: () => Object.assign({}, ...places.map((p) => p.answer?.values ?? {})),
  };
}
