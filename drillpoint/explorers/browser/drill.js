// The drill: everything that follows from the state of the sliders.

function work(config, state, units) {
  const values = { ...state };
  const margins = [];
  for (const name of config.relations) {
    const relation = numbers.relations[name];
    const found = relation.margins(values);
    relation.conditions.forEach((condition, i) => {
      const holds = condition.allows_zero ? found[i] >= 0 : found[i] > 0;
      if (!holds) margins.push(fill(condition.says, values, units));
    });
    values[relation.result] = relation.value(values);
  }
  for (const { name, least, says } of config.at_least) {
    if (!(values[name] >= least)) margins.push(says);
  }
  values.acute = 180 - values.chisel_edge_angle;
  values.half_point_angle = values.point_angle / 2;
  return { values, problem: margins[0] ?? "" };
}

const between = (from, to, share) =>
  Object.fromEntries(Object.keys(to).map((name) => [name, from[name] + share * (to[name] - from[name])]));

// The possible drill nearest to the one asked for, on the way there from the last possible one.
function nearestPossible(config, last, asked, units) {
  let [good, bad] = [0, 1];
  for (let i = 0; i < 40; i++) {
    const middle = (good + bad) / 2;
    if (work(config, between(last, asked, middle), units).problem) bad = middle;
    else good = middle;
  }
  const exact = between(last, asked, good);
  const rounded = { ...exact };
  for (const name of Object.keys(exact)) {
    const scale = unitOf(name) === "°" ? 10 : 100;
    const round = last[name] > asked[name] ? Math.ceil : Math.floor;
    if (last[name] !== asked[name]) rounded[name] = round(exact[name] * scale) / scale;
  }
  return work(config, rounded, units).problem ? exact : rounded;
}
