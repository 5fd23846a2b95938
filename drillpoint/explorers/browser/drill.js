// The drill: everything that follows from the state of the sliders.

function work(config, state, units) {
  const values = { ...config.fixed, ...state };
  const problems = [];
  const check = (name) => {
    for (const { name: of, low, high, says } of config.allowed) {
      const holds = (low ?? -Infinity) <= values[name] && values[name] <= (high ?? Infinity);
      if (of === name && !holds) problems.push(fill(says, values, units));
    }
  };
  Object.keys(values).forEach(check);
  for (const name of config.relations) {
    const relation = numbers.relations[name];
    const found = relation.margins(values);
    relation.conditions.forEach((condition, i) => {
      const holds = condition.allows_zero ? found[i] >= 0 : found[i] > 0;
      if (!holds) problems.push(fill(condition.says, values, units));
    });
    values[relation.result] = relation.value(values);
    check(relation.result);
  }
  return { values, problem: problems[0] ?? "" };
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
