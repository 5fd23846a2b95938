// Written by `python -m drillpoint.editions` from the book of relations. Do not edit.
const numbers = {
quantities: {"diameter": {"symbol": "D", "term": "drill diameter", "unit": "mm", "meaning": "over the two outer corners, at the point", "usual": [1.0, 40.0], "possible": [0.1, 150.0], "decimals": 2}, "radius": {"symbol": "r", "term": "radius of a point on the lip", "unit": "mm", "meaning": "distance from the drill axis to the place on the lip that is looked at", "usual": [0.2, 20.0], "possible": [0.0, 75.0], "decimals": 2}, "web": {"symbol": "W", "term": "web thickness", "unit": "mm", "meaning": "at the point: distance between the two lips, which are parallel in the end view", "usual": [0.1, 10.0], "possible": [0.0, 75.0], "decimals": 2}, "web_ratio": {"symbol": "u", "term": "web ratio", "unit": "", "meaning": "web thickness at the point divided by the drill diameter", "usual": [0.05, 0.35], "possible": [0.0, 1.0], "decimals": 3}, "point_angle": {"symbol": "A", "term": "point angle", "unit": "°", "meaning": "included angle between the two lips, seen square to them (the whole angle, not one side)", "usual": [60.0, 150.0], "possible": [60.0, 179.0], "decimals": 1}, "chisel_edge_angle": {"symbol": "ψ", "term": "chisel edge angle", "unit": "°", "meaning": "in the end view, the obtuse angle between a lip and the chisel edge (BS 328 and the workshop's way); its supplement δ = 180° − ψ is acute", "usual": [120.0, 135.0], "possible": [90.0, 180.0], "decimals": 1}, "lip_relief": {"symbol": "α_f", "term": "lip relief angle", "unit": "°", "meaning": "at the outer corner, in the plane that touches the cylinder there", "usual": [5.0, 24.0], "possible": [-30.0, 60.0], "decimals": 1}, "axial_relief": {"symbol": "α_x", "term": "relief square to the lip", "unit": "°", "meaning": "in the plane parallel to the drill axis and square to the lip in the end view", "usual": [0.0, 28.0], "possible": [-60.0, 75.0], "decimals": 1}, "point_height": {"symbol": "h", "term": "point height", "unit": "mm", "meaning": "along the axis, from the outer corners to the tip of the sharp cone through the lips", "usual": [0.0, null], "possible": [0.0, 150.0], "decimals": 2}, "lip_length": {"symbol": "L", "term": "lip length", "unit": "mm", "meaning": "true length of one lip from the chisel edge corner to the outer corner", "usual": [0.0, null], "possible": [0.0, 150.0], "decimals": 2}, "chisel_edge_length": {"symbol": "C", "term": "chisel edge length", "unit": "mm", "meaning": "in the end view, from one chisel edge corner to the other", "usual": [0.0, null], "possible": [0.0, 150.0], "decimals": 2}, "relief_at_radius": {"symbol": "α", "term": "relief at a radius", "unit": "°", "meaning": "at a place on the lip, in the plane that touches the cylinder through that place", "usual": [0.0, 40.0], "possible": [-89.0, 89.0], "decimals": 1}, "heel_clearance": {"symbol": "q", "term": "heel clearance", "unit": "°", "meaning": "angle round the axis behind the outer corner over which one plane flank stays below the corner's height", "usual": [0.0, 180.0], "possible": [0.0, 360.0], "decimals": 1}, "web_taper": {"symbol": "τ", "term": "web taper", "unit": "mm/mm", "meaning": "how much thicker the web gets for each millimetre further up the flute", "usual": [0.01, 0.03], "possible": [0.0, 0.2], "decimals": 4}, "length_removed": {"symbol": "ΔL", "term": "length removed", "unit": "mm", "meaning": "along the axis: how much shorter the drill has become through grinding since its web was measured", "usual": [0.0, 100.0], "possible": [0.0, 300.0], "decimals": 2}, "web_after_shortening": {"symbol": "W′", "term": "web after shortening", "unit": "mm", "meaning": "web thickness at the new point, before any thinning", "usual": [0.1, 10.0], "possible": [0.0, 75.0], "decimals": 2}, "pilot_diameter": {"symbol": "d_p", "term": "pilot diameter", "unit": "mm", "meaning": "diameter of the hole drilled first, on the same axis", "usual": [0.5, 20.0], "possible": [0.0, 150.0], "decimals": 2}, "pilot_cover": {"symbol": "k_p", "term": "pilot cover", "unit": "", "meaning": "pilot diameter divided by the length of the chisel edge; from 1 up the chisel edge cuts nothing", "usual": [1.0, 4.0], "possible": [0.0, 1000.0], "decimals": 2}, "thinned_chisel_length": {"symbol": "C_t", "term": "thinned chisel edge length", "unit": "mm", "meaning": "in the end view, what thinning leaves of the chisel edge, from one end to the other", "usual": [0.1, 10.0], "possible": [0.0, 150.0], "decimals": 2}, "thinning_angle": {"symbol": "ν", "term": "thinning angle", "unit": "°", "meaning": "in the end view, the angle between the thinned lip and the main lip", "usual": [10.0, 50.0], "possible": [0.0, 90.0], "decimals": 1}, "thinning_reach": {"symbol": "x_m", "term": "reach of the thinning", "unit": "mm", "meaning": "in the end view, along the main lip from the foot of the axis to where the thinned lip meets it", "usual": [0.0, null], "possible": [0.0, 75.0], "decimals": 2}, "thinned_lip_in_end_view": {"symbol": "p_t", "term": "thinned lip in the end view", "unit": "mm", "meaning": "length of one thinned lip as it is seen from the tip", "usual": [0.0, null], "possible": [0.0, 150.0], "decimals": 2}, "thinned_lip_length": {"symbol": "L_t", "term": "thinned lip length", "unit": "mm", "meaning": "true length of one thinned lip, from the end of the chisel edge to the main lip", "usual": [0.0, null], "possible": [0.0, 200.0], "decimals": 2}, "untouched_lip_length": {"symbol": "L_u", "term": "untouched lip length", "unit": "mm", "meaning": "true length of what thinning leaves of one main lip", "usual": [0.0, null], "possible": [0.0, 150.0], "decimals": 2}, "untouched_lip_share": {"symbol": "s_u", "term": "untouched share of the lip", "unit": "", "meaning": "what thinning leaves of the main lip, divided by the whole main lip before it", "usual": [0.4, 1.0], "possible": [0.0, 1.0], "decimals": 3}, "thinned_web": {"symbol": "W_t", "term": "web left by thinning", "unit": "mm", "meaning": "in the end view, distance between the two thinned lips: what holds the tip together", "usual": [0.1, 10.0], "possible": [0.0, 75.0], "decimals": 2}},
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
angles: ["point_angle", "chisel_edge_angle", "lip_relief", "axial_relief", "relief_at_radius", "heel_clearance", "thinning_angle", "kappa", "delta", "omega", "delta_plane"],
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
, ...{"result": "web", "givens": ["web_ratio", "diameter"], "conditions": [], "formula_text": "W = D·u", "formula_latex": "W = D u", "text": "⟦diameter⟧·⟦web_ratio⟧", "latex": "⟦diameter⟧ ⟦web_ratio⟧", "abbreviations": [], "where": []}}, "web_after_shortening": {value: function value({web, web_taper, length_removed}) {
  return length_removed*web_taper + web;
}
, margins: function margins({web, web_taper, length_removed}) {
  return [];
}
, ...{"result": "web_after_shortening", "givens": ["web", "web_taper", "length_removed"], "conditions": [], "formula_text": "W′ = ΔL·τ + W", "formula_latex": "W' = \\Delta L \\tau + W", "text": "⟦length_removed⟧·⟦web_taper⟧ + ⟦web⟧", "latex": "⟦length_removed⟧ ⟦web_taper⟧ + ⟦web⟧", "abbreviations": [], "where": []}}, "pilot_diameter": {value: function value({web, chisel_edge_angle}) {
  return web/Math.sin((1/180)*Math.PI*chisel_edge_angle);
}
, margins: function margins({web, chisel_edge_angle}) {
  return [];
}
, ...{"result": "pilot_diameter", "givens": ["web", "chisel_edge_angle"], "conditions": [], "formula_text": "d_p = W/sin ψ", "formula_latex": "d_p = \\frac{W}{\\sin{\\left(\\psi \\right)}}", "text": "⟦web⟧/sin ⟦chisel_edge_angle⟧", "latex": "\\frac{⟦web⟧}{\\sin{\\left(⟦chisel_edge_angle⟧ \\right)}}", "abbreviations": [], "where": []}}, "pilot_cover": {value: function value({pilot_diameter, web, chisel_edge_angle}) {
  return pilot_diameter*Math.sin((1/180)*Math.PI*chisel_edge_angle)/web;
}
, margins: function margins({pilot_diameter, web, chisel_edge_angle}) {
  return [web];
}
, ...{"result": "pilot_cover", "givens": ["pilot_diameter", "web", "chisel_edge_angle"], "conditions": [{"says": "without a web, {web}, there is no chisel edge to cover; an eighth of the diameter is a usual web", "allows_zero": false}], "formula_text": "k_p = d_p·sin ψ/W", "formula_latex": "k_p = \\frac{d_p \\sin{\\left(\\psi \\right)}}{W}", "text": "⟦pilot_diameter⟧·sin ⟦chisel_edge_angle⟧/⟦web⟧", "latex": "\\frac{⟦pilot_diameter⟧ \\sin{\\left(⟦chisel_edge_angle⟧ \\right)}}{⟦web⟧}", "abbreviations": [], "where": []}}, "thinning_reach": {value: function value({web, chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
  const v0 = (1/180)*Math.PI;
  const v1 = chisel_edge_angle*v0;
  const v2 = (1/2)*thinned_chisel_length;
  return -v2*Math.cos(v1) + (-v2*Math.sin(v1) + (1/2)*web)/Math.tan(thinning_angle*v0);
}
, margins: function margins({web, chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
  const v0 = (1/180)*Math.PI;
  const v1 = chisel_edge_angle*v0;
  return [-thinned_chisel_length + web/Math.sin(v1), -thinning_angle*v0 - v1 + Math.PI];
}
, ...{"result": "thinning_reach", "givens": ["web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle"], "conditions": [{"says": "a chisel edge of {thinned_chisel_length} is no shorter than the web of {web} gives at {chisel_edge_angle} without thinning; thinning makes it shorter, often to half", "allows_zero": true}, {"says": "thinned at {thinning_angle}, the two thinned lips would pass the axis on the wrong sides: no web is left to hold the tip together. Use a thinning angle smaller than the acute angle between lip and chisel edge, 180° less {chisel_edge_angle}", "allows_zero": false}], "formula_text": "x_m = C_t·cos δ/2 + (t − C_t·sin δ/2)/tan ν", "formula_latex": "x_m = \\frac{C_t \\cos{\\left(\\delta \\right)}}{2} + \\frac{t - \\frac{C_t \\sin{\\left(\\delta \\right)}}{2}}{\\tan{\\left(\\nu \\right)}}", "text": "⟦thinned_chisel_length⟧·cos ⟦delta⟧/2 + (⟦t⟧ − ⟦thinned_chisel_length⟧·sin ⟦delta⟧/2)/tan ⟦thinning_angle⟧", "latex": "\\frac{⟦thinned_chisel_length⟧ \\cos{\\left(⟦delta⟧ \\right)}}{2} + \\frac{⟦t⟧ - \\frac{⟦thinned_chisel_length⟧ \\sin{\\left(⟦delta⟧ \\right)}}{2}}{\\tan{\\left(⟦thinning_angle⟧ \\right)}}", "abbreviations": ["t", "delta"], "where": [["t = W/2 = ⟦web⟧/2 = ⟦t⟧", "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"], ["δ = 180° − ψ = 180° − ⟦chisel_edge_angle⟧ = ⟦delta⟧", "\\delta = 180^{\\circ} - \\psi = 180^{\\circ} - ⟦chisel_edge_angle⟧ = ⟦delta⟧"]]}}, "thinned_lip_in_end_view": {value: function value({web, chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
  const v0 = (1/180)*Math.PI;
  return (-1/2*thinned_chisel_length*Math.sin(chisel_edge_angle*v0) + (1/2)*web)/Math.sin(thinning_angle*v0);
}
, margins: function margins({web, chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
  const v0 = (1/180)*Math.PI;
  const v1 = chisel_edge_angle*v0;
  return [-thinned_chisel_length + web/Math.sin(v1), -thinning_angle*v0 - v1 + Math.PI];
}
, ...{"result": "thinned_lip_in_end_view", "givens": ["web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle"], "conditions": [{"says": "a chisel edge of {thinned_chisel_length} is no shorter than the web of {web} gives at {chisel_edge_angle} without thinning; thinning makes it shorter, often to half", "allows_zero": true}, {"says": "thinned at {thinning_angle}, the two thinned lips would pass the axis on the wrong sides: no web is left to hold the tip together. Use a thinning angle smaller than the acute angle between lip and chisel edge, 180° less {chisel_edge_angle}", "allows_zero": false}], "formula_text": "p_t = (t − C_t·sin δ/2)/sin ν", "formula_latex": "p_t = \\frac{t - \\frac{C_t \\sin{\\left(\\delta \\right)}}{2}}{\\sin{\\left(\\nu \\right)}}", "text": "(⟦t⟧ − ⟦thinned_chisel_length⟧·sin ⟦delta⟧/2)/sin ⟦thinning_angle⟧", "latex": "\\frac{⟦t⟧ - \\frac{⟦thinned_chisel_length⟧ \\sin{\\left(⟦delta⟧ \\right)}}{2}}{\\sin{\\left(⟦thinning_angle⟧ \\right)}}", "abbreviations": ["t", "delta"], "where": [["t = W/2 = ⟦web⟧/2 = ⟦t⟧", "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"], ["δ = 180° − ψ = 180° − ⟦chisel_edge_angle⟧ = ⟦delta⟧", "\\delta = 180^{\\circ} - \\psi = 180^{\\circ} - ⟦chisel_edge_angle⟧ = ⟦delta⟧"]]}}, "thinned_lip_length": {value: function value({web, chisel_edge_angle, thinned_chisel_length, thinning_angle, point_angle, axial_relief}) {
  const v0 = (1/180)*Math.PI;
  const v1 = thinning_angle*v0;
  const v2 = Math.sin(v1);
  return (-1/2*thinned_chisel_length*Math.sin(chisel_edge_angle*v0) + (1/2)*web)*Math.sqrt(Math.pow(-v2*Math.tan(axial_relief*v0) + Math.cos(v1)/Math.tan((1/360)*Math.PI*point_angle), 2) + 1)/v2;
}
, margins: function margins({web, chisel_edge_angle, thinned_chisel_length, thinning_angle, point_angle, axial_relief}) {
  const v0 = (1/180)*Math.PI;
  const v1 = chisel_edge_angle*v0;
  return [-thinned_chisel_length + web/Math.sin(v1), -thinning_angle*v0 - v1 + Math.PI];
}
, ...{"result": "thinned_lip_length", "givens": ["web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle", "point_angle", "axial_relief"], "conditions": [{"says": "a chisel edge of {thinned_chisel_length} is no shorter than the web of {web} gives at {chisel_edge_angle} without thinning; thinning makes it shorter, often to half", "allows_zero": true}, {"says": "thinned at {thinning_angle}, the two thinned lips would pass the axis on the wrong sides: no web is left to hold the tip together. Use a thinning angle smaller than the acute angle between lip and chisel edge, 180° less {chisel_edge_angle}", "allows_zero": false}], "formula_text": "L_t = (t − C_t·sin δ/2)·√((cos ν·cot κ − sin ν·tan α_x)² + 1)/sin ν", "formula_latex": "L_t = \\frac{\\left(t - \\frac{C_t \\sin{\\left(\\delta \\right)}}{2}\\right) \\sqrt{\\left(\\cos{\\left(\\nu \\right)} \\cot{\\left(\\kappa \\right)} - \\sin{\\left(\\nu \\right)} \\tan{\\left(\\alpha_x \\right)}\\right)^{2} + 1}}{\\sin{\\left(\\nu \\right)}}", "text": "(⟦t⟧ − ⟦thinned_chisel_length⟧·sin ⟦delta⟧/2)·√((cos ⟦thinning_angle⟧·cot ⟦kappa⟧ − sin ⟦thinning_angle⟧·tan ⟦axial_relief⟧)² + 1)/sin ⟦thinning_angle⟧", "latex": "\\frac{\\left(⟦t⟧ - \\frac{⟦thinned_chisel_length⟧ \\sin{\\left(⟦delta⟧ \\right)}}{2}\\right) \\sqrt{\\left(\\cos{\\left(⟦thinning_angle⟧ \\right)} \\cot{\\left(⟦kappa⟧ \\right)} - \\sin{\\left(⟦thinning_angle⟧ \\right)} \\tan{\\left(⟦axial_relief⟧ \\right)}\\right)^{2} + 1}}{\\sin{\\left(⟦thinning_angle⟧ \\right)}}", "abbreviations": ["t", "kappa", "delta"], "where": [["t = W/2 = ⟦web⟧/2 = ⟦t⟧", "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"], ["κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧", "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"], ["δ = 180° − ψ = 180° − ⟦chisel_edge_angle⟧ = ⟦delta⟧", "\\delta = 180^{\\circ} - \\psi = 180^{\\circ} - ⟦chisel_edge_angle⟧ = ⟦delta⟧"]]}}, "untouched_lip_length": {value: function value({diameter, point_angle, web, chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
  const v0 = (1/180)*Math.PI;
  const v1 = chisel_edge_angle*v0;
  const v2 = (1/2)*thinned_chisel_length;
  return (v2*Math.cos(v1) + Math.sqrt((1/4)*Math.pow(diameter, 2) - 1/4*Math.pow(web, 2)) - (-v2*Math.sin(v1) + (1/2)*web)/Math.tan(thinning_angle*v0))/Math.sin((1/360)*Math.PI*point_angle);
}
, margins: function margins({diameter, point_angle, web, chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
  const v0 = (1/180)*Math.PI;
  const v1 = chisel_edge_angle*v0;
  const v2 = Math.sin(v1);
  const v3 = thinning_angle*v0;
  const v4 = (1/2)*thinned_chisel_length;
  return [diameter - web, -thinned_chisel_length + web/v2, -v1 - v3 + Math.PI, v4*Math.cos(v1) + Math.sqrt((1/4)*Math.pow(diameter, 2) - 1/4*Math.pow(web, 2)) - (-v2*v4 + (1/2)*web)/Math.tan(v3)];
}
, ...{"result": "untouched_lip_length", "givens": ["diameter", "point_angle", "web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle"], "conditions": [{"says": "web {web} is not thinner than the drill, diameter {diameter}; about an eighth of the diameter is usual", "allows_zero": false}, {"says": "a chisel edge of {thinned_chisel_length} is no shorter than the web of {web} gives at {chisel_edge_angle} without thinning; thinning makes it shorter, often to half", "allows_zero": true}, {"says": "thinned at {thinning_angle}, the two thinned lips would pass the axis on the wrong sides: no web is left to hold the tip together. Use a thinning angle smaller than the acute angle between lip and chisel edge, 180° less {chisel_edge_angle}", "allows_zero": false}, {"says": "thinned from a chisel edge of {thinned_chisel_length} at {thinning_angle}, the thinned lip would reach the outer corner, diameter {diameter}: no main lip is left and the point angle is lost; thin at a larger angle, or less", "allows_zero": false}], "formula_text": "L_u = (√(R² − t²) − C_t·cos δ/2 − (t − C_t·sin δ/2)/tan ν)/sin κ", "formula_latex": "L_u = \\frac{\\sqrt{R^{2} - t^{2}} - \\frac{C_t \\cos{\\left(\\delta \\right)}}{2} - \\frac{t - \\frac{C_t \\sin{\\left(\\delta \\right)}}{2}}{\\tan{\\left(\\nu \\right)}}}{\\sin{\\left(\\kappa \\right)}}", "text": "(√(⟦R⟧² − ⟦t⟧²) − ⟦thinned_chisel_length⟧·cos ⟦delta⟧/2 − (⟦t⟧ − ⟦thinned_chisel_length⟧·sin ⟦delta⟧/2)/tan ⟦thinning_angle⟧)/sin ⟦kappa⟧", "latex": "\\frac{\\sqrt{⟦R⟧^{2} - ⟦t⟧^{2}} - \\frac{⟦thinned_chisel_length⟧ \\cos{\\left(⟦delta⟧ \\right)}}{2} - \\frac{⟦t⟧ - \\frac{⟦thinned_chisel_length⟧ \\sin{\\left(⟦delta⟧ \\right)}}{2}}{\\tan{\\left(⟦thinning_angle⟧ \\right)}}}{\\sin{\\left(⟦kappa⟧ \\right)}}", "abbreviations": ["R", "t", "kappa", "delta"], "where": [["R = D/2 = ⟦diameter⟧/2 = ⟦R⟧", "R = \\frac{D}{2} = \\frac{⟦diameter⟧}{2} = ⟦R⟧"], ["t = W/2 = ⟦web⟧/2 = ⟦t⟧", "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"], ["κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧", "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"], ["δ = 180° − ψ = 180° − ⟦chisel_edge_angle⟧ = ⟦delta⟧", "\\delta = 180^{\\circ} - \\psi = 180^{\\circ} - ⟦chisel_edge_angle⟧ = ⟦delta⟧"]]}}, "untouched_lip_share": {value: function value({diameter, web, chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
  const v0 = (1/180)*Math.PI;
  const v1 = chisel_edge_angle*v0;
  const v2 = Math.sqrt((1/4)*Math.pow(diameter, 2) - 1/4*Math.pow(web, 2));
  const v3 = (1/2)*thinned_chisel_length;
  return (v2 + v3*Math.cos(v1) - (-v3*Math.sin(v1) + (1/2)*web)/Math.tan(thinning_angle*v0))/(v2 + (1/2)*web/Math.tan(v1));
}
, margins: function margins({diameter, web, chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
  const v0 = (1/180)*Math.PI;
  const v1 = chisel_edge_angle*v0;
  const v2 = Math.sin(v1);
  const v3 = thinning_angle*v0;
  const v4 = (1/2)*thinned_chisel_length;
  return [diameter - web, -thinned_chisel_length + web/v2, -v1 - v3 + Math.PI, v4*Math.cos(v1) + Math.sqrt((1/4)*Math.pow(diameter, 2) - 1/4*Math.pow(web, 2)) - (-v2*v4 + (1/2)*web)/Math.tan(v3)];
}
, ...{"result": "untouched_lip_share", "givens": ["diameter", "web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle"], "conditions": [{"says": "web {web} is not thinner than the drill, diameter {diameter}; about an eighth of the diameter is usual", "allows_zero": false}, {"says": "a chisel edge of {thinned_chisel_length} is no shorter than the web of {web} gives at {chisel_edge_angle} without thinning; thinning makes it shorter, often to half", "allows_zero": true}, {"says": "thinned at {thinning_angle}, the two thinned lips would pass the axis on the wrong sides: no web is left to hold the tip together. Use a thinning angle smaller than the acute angle between lip and chisel edge, 180° less {chisel_edge_angle}", "allows_zero": false}, {"says": "thinned from a chisel edge of {thinned_chisel_length} at {thinning_angle}, the thinned lip would reach the outer corner, diameter {diameter}: no main lip is left and the point angle is lost; thin at a larger angle, or less", "allows_zero": false}], "formula_text": "s_u = (√(R² − t²) − C_t·cos δ/2 − (t − C_t·sin δ/2)/tan ν)/(√(R² − t²) − t·cot δ)", "formula_latex": "s_u = \\frac{\\sqrt{R^{2} - t^{2}} - \\frac{C_t \\cos{\\left(\\delta \\right)}}{2} - \\frac{t - \\frac{C_t \\sin{\\left(\\delta \\right)}}{2}}{\\tan{\\left(\\nu \\right)}}}{\\sqrt{R^{2} - t^{2}} - t \\cot{\\left(\\delta \\right)}}", "text": "(√(⟦R⟧² − ⟦t⟧²) − ⟦thinned_chisel_length⟧·cos ⟦delta⟧/2 − (⟦t⟧ − ⟦thinned_chisel_length⟧·sin ⟦delta⟧/2)/tan ⟦thinning_angle⟧)/(√(⟦R⟧² − ⟦t⟧²) − ⟦t⟧·cot ⟦delta⟧)", "latex": "\\frac{\\sqrt{⟦R⟧^{2} - ⟦t⟧^{2}} - \\frac{⟦thinned_chisel_length⟧ \\cos{\\left(⟦delta⟧ \\right)}}{2} - \\frac{⟦t⟧ - \\frac{⟦thinned_chisel_length⟧ \\sin{\\left(⟦delta⟧ \\right)}}{2}}{\\tan{\\left(⟦thinning_angle⟧ \\right)}}}{\\sqrt{⟦R⟧^{2} - ⟦t⟧^{2}} - ⟦t⟧ \\cot{\\left(⟦delta⟧ \\right)}}", "abbreviations": ["R", "t", "delta"], "where": [["R = D/2 = ⟦diameter⟧/2 = ⟦R⟧", "R = \\frac{D}{2} = \\frac{⟦diameter⟧}{2} = ⟦R⟧"], ["t = W/2 = ⟦web⟧/2 = ⟦t⟧", "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"], ["δ = 180° − ψ = 180° − ⟦chisel_edge_angle⟧ = ⟦delta⟧", "\\delta = 180^{\\circ} - \\psi = 180^{\\circ} - ⟦chisel_edge_angle⟧ = ⟦delta⟧"]]}}, "thinned_web": {value: function value({chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
  const v0 = (1/180)*Math.PI;
  return thinned_chisel_length*Math.sin(chisel_edge_angle*v0 + thinning_angle*v0);
}
, margins: function margins({chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
  const v0 = (1/180)*Math.PI;
  return [-chisel_edge_angle*v0 - thinning_angle*v0 + Math.PI];
}
, ...{"result": "thinned_web", "givens": ["chisel_edge_angle", "thinned_chisel_length", "thinning_angle"], "conditions": [{"says": "thinned at {thinning_angle}, the two thinned lips would pass the axis on the wrong sides: no web is left to hold the tip together. Use a thinning angle smaller than the acute angle between lip and chisel edge, 180° less {chisel_edge_angle}", "allows_zero": false}], "formula_text": "W_t = C_t·sin(δ − ν)", "formula_latex": "W_t = C_t \\sin{\\left(\\delta - \\nu \\right)}", "text": "⟦thinned_chisel_length⟧·sin(⟦delta⟧ − ⟦thinning_angle⟧)", "latex": "⟦thinned_chisel_length⟧ \\sin{\\left(⟦delta⟧ - ⟦thinning_angle⟧ \\right)}", "abbreviations": ["delta"], "where": [["δ = 180° − ψ = 180° − ⟦chisel_edge_angle⟧ = ⟦delta⟧", "\\delta = 180^{\\circ} - \\psi = 180^{\\circ} - ⟦chisel_edge_angle⟧ = ⟦delta⟧"]]}}},
};
