// Written by `python -m drillpoint.editions` from the book of relations. Do not edit.
const numbers = {
quantities: {"diameter": {"symbol": "D", "term": "drill diameter", "unit": "mm", "meaning": "over the two outer corners, at the point", "usual": [1.0, 40.0], "possible": [0.1, 150.0], "decimals": 2}, "radius": {"symbol": "r", "term": "radius of a point on the lip", "unit": "mm", "meaning": "distance from the drill axis to the place on the lip that is looked at", "usual": [0.2, 20.0], "possible": [0.0, 75.0], "decimals": 2}, "web": {"symbol": "W", "term": "web thickness", "unit": "mm", "meaning": "at the point: distance between the two lips, which are parallel in the end view", "usual": [0.1, 10.0], "possible": [0.0, 75.0], "decimals": 2}, "web_ratio": {"symbol": "u", "term": "web ratio", "unit": "", "meaning": "web thickness at the point divided by the drill diameter", "usual": [0.05, 0.35], "possible": [0.0, 1.0], "decimals": 3}, "point_angle": {"symbol": "A", "term": "point angle", "unit": "°", "meaning": "included angle between the two lips, seen square to them (the whole angle, not one side)", "usual": [60.0, 150.0], "possible": [60.0, 179.0], "decimals": 1}, "chisel_edge_angle": {"symbol": "ψ", "term": "chisel edge angle", "unit": "°", "meaning": "in the end view, the obtuse angle between a lip and the chisel edge (BS 328 and the workshop's way); its supplement δ = 180° − ψ is acute", "usual": [120.0, 135.0], "possible": [90.0, 180.0], "decimals": 1}, "lip_relief": {"symbol": "α_f", "term": "lip relief angle", "unit": "°", "meaning": "at the outer corner, in the plane that touches the cylinder there", "usual": [5.0, 24.0], "possible": [-30.0, 60.0], "decimals": 1}, "axial_relief": {"symbol": "α_x", "term": "relief square to the lip", "unit": "°", "meaning": "in the plane parallel to the drill axis and square to the lip in the end view", "usual": [0.0, 28.0], "possible": [-60.0, 75.0], "decimals": 1}, "point_height": {"symbol": "h", "term": "point height", "unit": "mm", "meaning": "along the axis, from the outer corners to the tip of the sharp cone through the lips", "usual": [0.0, null], "possible": [0.0, 150.0], "decimals": 2}, "lip_length": {"symbol": "L", "term": "lip length", "unit": "mm", "meaning": "true length of one lip from the chisel edge corner to the outer corner", "usual": [0.0, null], "possible": [0.0, 150.0], "decimals": 2}, "chisel_edge_length": {"symbol": "C", "term": "chisel edge length", "unit": "mm", "meaning": "in the end view, from one chisel edge corner to the other", "usual": [0.0, null], "possible": [0.0, 150.0], "decimals": 2}, "relief_at_radius": {"symbol": "α", "term": "relief at a radius", "unit": "°", "meaning": "at a place on the lip, in the plane that touches the cylinder through that place", "usual": [0.0, 40.0], "possible": [-89.0, 89.0], "decimals": 1}, "heel_clearance": {"symbol": "q", "term": "heel clearance", "unit": "°", "meaning": "angle round the axis behind the outer corner over which one plane flank stays below the corner's height", "usual": [0.0, 180.0], "possible": [0.0, 360.0], "decimals": 1}},
letters: {"R": function R({diameter}) {
  return (1/2)*diameter;
}
, "t": function t({web}) {
  return (1/2)*web;
}
, "kappa": function kappa({point_angle}) {
  return (1/2)*point_angle;
}
, "delta": function delta({chisel_edge_angle}) {
  return (-Math.PI*chisel_edge_angle + 180*Math.PI)/Math.PI;
}
, "omega": function omega({web_ratio}) {
  return 180*Math.asin(web_ratio)/Math.PI;
}
, "delta_plane": function delta_plane({point_angle, axial_relief}) {
  return 180*Math.atan2(1/Math.tan((1/360)*Math.PI*point_angle), Math.tan((1/180)*Math.PI*axial_relief))/Math.PI;
}
},
angles: ["point_angle", "chisel_edge_angle", "lip_relief", "axial_relief", "relief_at_radius", "heel_clearance", "kappa", "delta", "omega", "delta_plane"],
relations: {"point_height": {value: function value({diameter, point_angle}) {
  return (1/2)*diameter/Math.tan((1/360)*Math.PI*point_angle);
}
, margins: function margins({diameter, point_angle}) {
  return [];
}
, ...{"result": "point_height", "givens": ["diameter", "point_angle"], "conditions": [], "formula_text": "h = R/tan κ", "formula_latex": "h = \\frac{R}{\\tan{\\left(\\kappa \\right)}}", "text": "⟦R⟧/tan ⟦kappa⟧", "latex": "\\frac{⟦R⟧}{\\tan{\\left(⟦kappa⟧ \\right)}}", "abbreviations": ["R", "kappa"], "where": [["R = D/2 = ⟦diameter⟧/2 = ⟦R⟧", "R = \\frac{D}{2} = \\frac{⟦diameter⟧}{2} = ⟦R⟧"], ["κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧", "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"]]}}, "lip_length": {value: function value({diameter, point_angle, web, chisel_edge_angle}) {
  return ((1/2)*web/Math.tan((1/180)*Math.PI*chisel_edge_angle) + Math.sqrt((1/4)*Math.pow(diameter, 2) - 1/4*Math.pow(web, 2)))/Math.sin((1/360)*Math.PI*point_angle);
}
, margins: function margins({diameter, point_angle, web, chisel_edge_angle}) {
  const v0 = -web;
  return [diameter + v0, diameter*Math.sin((1/180)*Math.PI*chisel_edge_angle) + v0];
}
, ...{"result": "lip_length", "givens": ["diameter", "point_angle", "web", "chisel_edge_angle"], "conditions": [{"says": "web {web} is not thinner than the drill, diameter {diameter}; about an eighth of the diameter is usual", "allows_zero": false}, {"says": "a chisel edge at {chisel_edge_angle} across a web of {web} would reach past the drill, diameter {diameter}: no lip is left; use a thinner web or a chisel edge angle nearer 120° to 135°", "allows_zero": false}], "formula_text": "L = (√(R² − t²) − t·cot δ)/sin κ", "formula_latex": "L = \\frac{\\sqrt{R^{2} - t^{2}} - t \\cot{\\left(\\delta \\right)}}{\\sin{\\left(\\kappa \\right)}}", "text": "(√(⟦R⟧² − ⟦t⟧²) − ⟦t⟧·cot ⟦delta⟧)/sin ⟦kappa⟧", "latex": "\\frac{\\sqrt{⟦R⟧^{2} - ⟦t⟧^{2}} - ⟦t⟧ \\cot{\\left(⟦delta⟧ \\right)}}{\\sin{\\left(⟦kappa⟧ \\right)}}", "abbreviations": ["R", "t", "kappa", "delta"], "where": [["R = D/2 = ⟦diameter⟧/2 = ⟦R⟧", "R = \\frac{D}{2} = \\frac{⟦diameter⟧}{2} = ⟦R⟧"], ["t = W/2 = ⟦web⟧/2 = ⟦t⟧", "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"], ["κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧", "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"], ["δ = 180° − ψ = 180° − ⟦chisel_edge_angle⟧ = ⟦delta⟧", "\\delta = 180^{\\circ} - \\psi = 180^{\\circ} - ⟦chisel_edge_angle⟧ = ⟦delta⟧"]]}}, "chisel_edge_length": {value: function value({web, chisel_edge_angle}) {
  return web/Math.sin((1/180)*Math.PI*chisel_edge_angle);
}
, margins: function margins({web, chisel_edge_angle}) {
  return [];
}
, ...{"result": "chisel_edge_length", "givens": ["web", "chisel_edge_angle"], "conditions": [], "formula_text": "C = W/sin ψ", "formula_latex": "C = \\frac{W}{\\sin{\\left(\\psi \\right)}}", "text": "⟦web⟧/sin ⟦chisel_edge_angle⟧", "latex": "\\frac{⟦web⟧}{\\sin{\\left(⟦chisel_edge_angle⟧ \\right)}}", "abbreviations": [], "where": []}}, "chisel_edge_angle": {value: function value({point_angle, axial_relief}) {
  return (-180*Math.atan2(1/Math.tan((1/360)*Math.PI*point_angle), Math.tan((1/180)*Math.PI*axial_relief)) + 180*Math.PI)/Math.PI;
}
, margins: function margins({point_angle, axial_relief}) {
  return [];
}
, ...{"result": "chisel_edge_angle", "givens": ["point_angle", "axial_relief"], "conditions": [], "formula_text": "ψ = 180° − atan(cot κ/tan α_x)", "formula_latex": "\\psi = 180^{\\circ} - \\arctan\\left(\\frac{\\cot{\\left(\\kappa \\right)}}{\\tan{\\left(\\alpha_x \\right)}}\\right)", "text": "180° − atan(cot ⟦kappa⟧/tan ⟦axial_relief⟧)", "latex": "180^{\\circ} - \\arctan\\left(\\frac{\\cot{\\left(⟦kappa⟧ \\right)}}{\\tan{\\left(⟦axial_relief⟧ \\right)}}\\right)", "abbreviations": ["kappa"], "where": [["κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧", "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"]]}}, "axial_relief": {value: function value({lip_relief, point_angle, web_ratio}) {
  return 180*Math.atan((-web_ratio/Math.tan((1/360)*Math.PI*point_angle) + Math.tan((1/180)*Math.PI*lip_relief))/Math.sqrt(1 - Math.pow(web_ratio, 2)))/Math.PI;
}
, margins: function margins({lip_relief, point_angle, web_ratio}) {
  return [];
}
, ...{"result": "axial_relief", "givens": ["lip_relief", "point_angle", "web_ratio"], "conditions": [], "formula_text": "α_x = atan((tan α_f − u·cot κ)/√(1 − u²))", "formula_latex": "\\alpha_x = \\arctan{\\left(\\frac{\\tan{\\left(\\alpha_f \\right)} - u \\cot{\\left(\\kappa \\right)}}{\\sqrt{1 - u^{2}}} \\right)}", "text": "atan((tan ⟦lip_relief⟧ − ⟦web_ratio⟧·cot ⟦kappa⟧)/√(1 − ⟦web_ratio⟧²))", "latex": "\\arctan{\\left(\\frac{\\tan{\\left(⟦lip_relief⟧ \\right)} - ⟦web_ratio⟧ \\cot{\\left(⟦kappa⟧ \\right)}}{\\sqrt{1 - ⟦web_ratio⟧^{2}}} \\right)}", "abbreviations": ["kappa"], "where": [["κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧", "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"]]}}, "lip_relief": {value: function value({axial_relief, point_angle, web_ratio}) {
  return 180*Math.atan(web_ratio/Math.tan((1/360)*Math.PI*point_angle) + Math.sqrt(1 - Math.pow(web_ratio, 2))*Math.tan((1/180)*Math.PI*axial_relief))/Math.PI;
}
, margins: function margins({axial_relief, point_angle, web_ratio}) {
  return [];
}
, ...{"result": "lip_relief", "givens": ["axial_relief", "point_angle", "web_ratio"], "conditions": [], "formula_text": "α_f = atan(u·cot κ + √(1 − u²)·tan α_x)", "formula_latex": "\\alpha_f = \\arctan{\\left(u \\cot{\\left(\\kappa \\right)} + \\sqrt{1 - u^{2}} \\tan{\\left(\\alpha_x \\right)} \\right)}", "text": "atan(⟦web_ratio⟧·cot ⟦kappa⟧ + √(1 − ⟦web_ratio⟧²)·tan ⟦axial_relief⟧)", "latex": "\\arctan{\\left(⟦web_ratio⟧ \\cot{\\left(⟦kappa⟧ \\right)} + \\sqrt{1 - ⟦web_ratio⟧^{2}} \\tan{\\left(⟦axial_relief⟧ \\right)} \\right)}", "abbreviations": ["kappa"], "where": [["κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧", "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"]]}}, "relief_at_radius": {value: function value({radius, web, point_angle, axial_relief}) {
  return 180*Math.atan(Math.sqrt(1 - 1/4*Math.pow(web, 2)/Math.pow(radius, 2))*Math.tan((1/180)*Math.PI*axial_relief) + (1/2)*web/(radius*Math.tan((1/360)*Math.PI*point_angle)))/Math.PI;
}
, margins: function margins({radius, web, point_angle, axial_relief}) {
  return [2*radius - web];
}
, ...{"result": "relief_at_radius", "givens": ["radius", "web", "point_angle", "axial_relief"], "conditions": [{"says": "radius {radius} lies inside the web {web}; no place on a lip is nearer to the axis than half the web", "allows_zero": true}], "formula_text": "α = atan(√(1 − t²/r²)·tan α_x + t·cot κ/r)", "formula_latex": "\\alpha = \\arctan{\\left(\\sqrt{1 - \\frac{t^{2}}{r^{2}}} \\tan{\\left(\\alpha_x \\right)} + \\frac{t \\cot{\\left(\\kappa \\right)}}{r} \\right)}", "text": "atan(√(1 − ⟦t⟧²/⟦radius⟧²)·tan ⟦axial_relief⟧ + ⟦t⟧·cot ⟦kappa⟧/⟦radius⟧)", "latex": "\\arctan{\\left(\\sqrt{1 - \\frac{⟦t⟧^{2}}{⟦radius⟧^{2}}} \\tan{\\left(⟦axial_relief⟧ \\right)} + \\frac{⟦t⟧ \\cot{\\left(⟦kappa⟧ \\right)}}{⟦radius⟧} \\right)}", "abbreviations": ["t", "kappa"], "where": [["t = W/2 = ⟦web⟧/2 = ⟦t⟧", "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"], ["κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧", "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"]]}}, "heel_clearance": {value: function value({point_angle, axial_relief, web_ratio}) {
  return (360*Math.asin(web_ratio) - 360*Math.atan2(1/Math.tan((1/360)*Math.PI*point_angle), Math.tan((1/180)*Math.PI*axial_relief)) + 180*Math.PI)/Math.PI;
}
, margins: function margins({point_angle, axial_relief, web_ratio}) {
  return [2*Math.asin(web_ratio) - 2*Math.atan2(1/Math.tan((1/360)*Math.PI*point_angle), Math.tan((1/180)*Math.PI*axial_relief)) + Math.PI];
}
, ...{"result": "heel_clearance", "givens": ["point_angle", "axial_relief", "web_ratio"], "conditions": [{"says": "with a relief of {axial_relief} square to the lip there is no relief at the outer corner: the flank rises straight behind it and nothing clears; give more lip relief", "allows_zero": true}], "formula_text": "q = 2·ω + 180° − 2·δ", "formula_latex": "q = 2 \\omega + 180^{\\circ} - 2 \\delta", "text": "2·⟦omega⟧ + 180° − 2·⟦delta_plane⟧", "latex": "2 ⟦omega⟧ + 180^{\\circ} - 2 ⟦delta_plane⟧", "abbreviations": ["omega", "kappa", "delta_plane"], "where": [["ω = asin u = asin ⟦web_ratio⟧ = ⟦omega⟧", "\\omega = \\arcsin{\\left(u \\right)} = \\arcsin{\\left(⟦web_ratio⟧ \\right)} = ⟦omega⟧"], ["κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧", "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"], ["δ = atan(cot κ/tan α_x) = atan(cot ⟦kappa⟧/tan ⟦axial_relief⟧) = ⟦delta_plane⟧", "\\delta = \\arctan\\left(\\frac{\\cot{\\left(\\kappa \\right)}}{\\tan{\\left(\\alpha_x \\right)}}\\right) = \\arctan\\left(\\frac{\\cot{\\left(⟦kappa⟧ \\right)}}{\\tan{\\left(⟦axial_relief⟧ \\right)}}\\right) = ⟦delta_plane⟧"]]}}, "web_ratio": {value: function value({web, diameter}) {
  return web/diameter;
}
, margins: function margins({web, diameter}) {
  return [diameter - web];
}
, ...{"result": "web_ratio", "givens": ["web", "diameter"], "conditions": [{"says": "web {web} is not thinner than the drill, diameter {diameter}; about an eighth of the diameter is usual", "allows_zero": false}], "formula_text": "u = W/D", "formula_latex": "u = \\frac{W}{D}", "text": "⟦web⟧/⟦diameter⟧", "latex": "\\frac{⟦web⟧}{⟦diameter⟧}", "abbreviations": [], "where": []}}, "web_from_ratio": {value: function value({web_ratio, diameter}) {
  return diameter*web_ratio;
}
, margins: function margins({web_ratio, diameter}) {
  return [];
}
, ...{"result": "web", "givens": ["web_ratio", "diameter"], "conditions": [], "formula_text": "W = D·u", "formula_latex": "W = D u", "text": "⟦diameter⟧·⟦web_ratio⟧", "latex": "⟦diameter⟧ ⟦web_ratio⟧", "abbreviations": [], "where": []}}},
};
