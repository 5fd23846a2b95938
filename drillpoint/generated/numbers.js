// Written by `python -m drillpoint.editions` from the book of relations. Do not edit.
const numbers = {
quantities: {"diameter": {"symbol": "D", "term": "drill diameter", "unit": "mm", "meaning": "over the two outer corners, at the point", "usual": [1.0, 40.0], "possible": [0.1, 150.0], "decimals": 2}, "radius": {"symbol": "r", "term": "radius of a point on the lip", "unit": "mm", "meaning": "distance from the drill axis to the place on the lip that is looked at", "usual": [0.2, 20.0], "possible": [0.0, 75.0], "decimals": 2}, "web": {"symbol": "W", "term": "web thickness", "unit": "mm", "meaning": "at the point: distance between the two lips, which are parallel in the end view", "usual": [0.1, 10.0], "possible": [0.0, 75.0], "decimals": 2}, "web_ratio": {"symbol": "u", "term": "web ratio", "unit": "", "meaning": "web thickness at the point divided by the drill diameter", "usual": [0.05, 0.35], "possible": [0.0, 1.0], "decimals": 3}, "point_angle": {"symbol": "A", "term": "point angle", "unit": "°", "meaning": "included angle between the two lips, seen square to them (the whole angle, not one side)", "usual": [60.0, 150.0], "possible": [60.0, 179.0], "decimals": 1}, "chisel_edge_angle": {"symbol": "ψ", "term": "chisel edge angle", "unit": "°", "meaning": "in the end view, the obtuse angle between a lip and the chisel edge (BS 328 and the workshop's way); its supplement δ = 180° − ψ is acute", "usual": [120.0, 135.0], "possible": [90.0, 180.0], "decimals": 1}, "lip_relief": {"symbol": "α_f", "term": "lip relief angle", "unit": "°", "meaning": "at the outer corner, in the plane that touches the cylinder there", "usual": [5.0, 24.0], "possible": [-30.0, 60.0], "decimals": 1}, "axial_relief": {"symbol": "α_x", "term": "relief square to the lip", "unit": "°", "meaning": "in the plane parallel to the drill axis and square to the lip in the end view", "usual": [0.0, 28.0], "possible": [-60.0, 75.0], "decimals": 1}, "point_height": {"symbol": "h", "term": "point height", "unit": "mm", "meaning": "along the axis, from the outer corners to the tip of the sharp cone through the lips", "usual": [0.0, null], "possible": [0.0, 150.0], "decimals": 2}, "lip_length": {"symbol": "L", "term": "lip length", "unit": "mm", "meaning": "true length of one lip from the chisel edge corner to the outer corner", "usual": [0.0, null], "possible": [0.0, 150.0], "decimals": 2}, "chisel_edge_length": {"symbol": "C", "term": "chisel edge length", "unit": "mm", "meaning": "in the end view, from one chisel edge corner to the other", "usual": [0.0, null], "possible": [0.0, 150.0], "decimals": 2}, "relief_at_radius": {"symbol": "α", "term": "relief at a radius", "unit": "°", "meaning": "at a place on the lip, in the plane that touches the cylinder through that place", "usual": [0.0, 40.0], "possible": [-89.0, 89.0], "decimals": 1}, "heel_clearance": {"symbol": "q", "term": "heel clearance", "unit": "°", "meaning": "angle round the axis behind the outer corner over which one plane flank stays below the corner's height", "usual": [0.0, 180.0], "possible": [0.0, 360.0], "decimals": 1}, "web_taper": {"symbol": "τ", "term": "web taper", "unit": "mm/mm", "meaning": "how much thicker the web gets for each millimetre further up the flute", "usual": [0.01, 0.03], "possible": [0.0, 0.2], "decimals": 4}, "length_removed": {"symbol": "ΔL", "term": "length removed", "unit": "mm", "meaning": "along the axis: how much shorter the drill has become through grinding since its web was measured", "usual": [0.0, 100.0], "possible": [0.0, 300.0], "decimals": 2}, "web_after_shortening": {"symbol": "W′", "term": "web after shortening", "unit": "mm", "meaning": "web thickness at the new point, before any thinning", "usual": [0.1, 10.0], "possible": [0.0, 75.0], "decimals": 2}, "pilot_diameter": {"symbol": "d_p", "term": "pilot diameter", "unit": "mm", "meaning": "diameter of the hole drilled first, on the same axis", "usual": [0.5, 20.0], "possible": [0.0, 150.0], "decimals": 2}, "pilot_cover": {"symbol": "k_p", "term": "pilot cover", "unit": "", "meaning": "pilot diameter divided by the length of the chisel edge; from 1 up the chisel edge cuts nothing", "usual": [1.0, 4.0], "possible": [0.0, 1000.0], "decimals": 2}, "thinned_chisel_length": {"symbol": "C_t", "term": "thinned chisel edge length", "unit": "mm", "meaning": "in the end view, what thinning leaves of the chisel edge, from one end to the other", "usual": [0.1, 10.0], "possible": [0.0, 150.0], "decimals": 2}, "thinning_angle": {"symbol": "ν", "term": "thinning angle", "unit": "°", "meaning": "in the end view, the angle between the thinned lip and the main lip", "usual": [10.0, 50.0], "possible": [0.0, 90.0], "decimals": 1}, "thinning_reach": {"symbol": "x_m", "term": "reach of the thinning", "unit": "mm", "meaning": "in the end view, along the main lip from the foot of the axis to where the thinned lip meets it", "usual": [0.0, null], "possible": [0.0, 75.0], "decimals": 2}, "thinned_lip_in_end_view": {"symbol": "p_t", "term": "thinned lip in the end view", "unit": "mm", "meaning": "length of one thinned lip as it is seen from the tip", "usual": [0.0, null], "possible": [0.0, 150.0], "decimals": 2}, "thinned_lip_length": {"symbol": "L_t", "term": "thinned lip length", "unit": "mm", "meaning": "true length of one thinned lip, from the end of the chisel edge to the main lip", "usual": [0.0, null], "possible": [0.0, 200.0], "decimals": 2}, "untouched_lip_length": {"symbol": "L_u", "term": "untouched lip length", "unit": "mm", "meaning": "true length of what thinning leaves of one main lip", "usual": [0.0, null], "possible": [0.0, 150.0], "decimals": 2}, "untouched_lip_share": {"symbol": "s_u", "term": "untouched share of the lip", "unit": "", "meaning": "what thinning leaves of the main lip, divided by the whole main lip before it", "usual": [0.4, 1.0], "possible": [0.0, 1.0], "decimals": 3}, "thinned_web": {"symbol": "W_t", "term": "web left by thinning", "unit": "mm", "meaning": "in the end view, distance between the two thinned lips: what holds the tip together", "usual": [0.1, 10.0], "possible": [0.0, 75.0], "decimals": 2}, "helix_angle": {"symbol": "β", "term": "helix angle", "unit": "°", "meaning": "at the outside diameter: between the flute's edge and the drill axis; 0 on a straight flute (a left-hand drill is the mirror image)", "usual": [10.0, 45.0], "possible": [0.0, 75.0], "decimals": 1}, "lead": {"symbol": "P_h", "term": "lead of the flute", "unit": "mm", "meaning": "along the axis: the length over which the flute goes once round the drill", "usual": [0.0, null], "possible": [0.0, Infinity], "decimals": 1}, "local_helix": {"symbol": "β_r", "term": "local helix angle", "unit": "°", "meaning": "between the flute's face and the drill axis, in the plane that touches the cylinder through the place on the lip", "usual": [0.0, 45.0], "possible": [0.0, 75.0], "decimals": 1}, "lip_inclination": {"symbol": "λ", "term": "lip inclination", "unit": "°", "meaning": "between the lip and the plane square to the way the place on it moves round the axis; its size, without sign", "usual": [0.0, 60.0], "possible": [0.0, 90.0], "decimals": 1}, "normal_rake": {"symbol": "γ_n", "term": "normal rake", "unit": "°", "meaning": "rake of the flute's face at a place on the lip, in the plane square to the lip; the feed left out", "usual": [-30.0, 40.0], "possible": [-90.0, 90.0], "decimals": 1}, "orthogonal_rake": {"symbol": "γ_o", "term": "orthogonal rake", "unit": "°", "meaning": "rake at a place on the lip, in the plane that holds the way the place moves and is square to the lip as seen along that way", "usual": [-60.0, 40.0], "possible": [-90.0, 90.0], "decimals": 1}, "normal_relief": {"symbol": "α_n", "term": "normal relief", "unit": "°", "meaning": "relief of the flank at a place on the lip, in the plane square to the lip; the feed left out", "usual": [0.0, 40.0], "possible": [-89.0, 89.0], "decimals": 1}, "wedge_angle": {"symbol": "θ_w", "term": "wedge angle", "unit": "°", "meaning": "angle of the metal left between the flute's face and the flank, in the plane square to the lip", "usual": [30.0, 100.0], "possible": [0.0, 180.0], "decimals": 1}, "dub_rake": {"symbol": "γ_x", "term": "rake of the dubbed flat", "unit": "°", "meaning": "of a narrow flat ground on the flute's face along the lip: its lean from the axis, in the plane parallel to the axis and square to the lip in the end view; 0 is parallel to the axis", "usual": [-5.0, 10.0], "possible": [-45.0, 60.0], "decimals": 1}, "dub_normal_rake": {"symbol": "γ_d", "term": "normal rake on the dubbed flat", "unit": "°", "meaning": "rake of the flat at a place on the lip, in the plane square to the lip; the feed left out", "usual": [-30.0, 10.0], "possible": [-90.0, 90.0], "decimals": 1}, "dub_wedge_angle": {"symbol": "θ_d", "term": "wedge angle at the dubbed flat", "unit": "°", "meaning": "angle of the metal left between the flat and the flank, in the plane square to the lip", "usual": [60.0, 100.0], "possible": [0.0, 180.0], "decimals": 1}, "dub_width": {"symbol": "w_d", "term": "width of the dubbed flat", "unit": "mm", "meaning": "on the flat, square to the lip: from the lip to where the flute's own face begins", "usual": [0.05, 1.0], "possible": [0.0, 20.0], "decimals": 2}, "least_dub_width": {"symbol": "w_l", "term": "least width of a dubbed flat", "unit": "mm", "meaning": "the width from which the whole layer cut off meets the flat and none of it the flute's own face", "usual": [0.005, 0.5], "possible": [0.0, 20.0], "decimals": 3}, "dub_set_back": {"symbol": "a_d", "term": "set-back of the lip by dubbing", "unit": "mm", "meaning": "along the flank, square to the lip: how far the flat moves the lip back", "usual": [0.0, 1.0], "possible": [0.0, 40.0], "decimals": 3}, "chisel_edge_rake": {"symbol": "γ_c", "term": "rake of the chisel edge", "unit": "°", "meaning": "of the flank that leads at the chisel edge, in the plane square to the chisel edge; always far below zero", "usual": [-65.0, -45.0], "possible": [-90.0, 0.0], "decimals": 1}, "feed_relief_loss": {"symbol": "η", "term": "relief taken by the feed", "unit": "°", "meaning": "at a radius: slope of the screw on which a place of the lip goes into the work", "usual": [0.0, 10.0], "possible": [0.0, 90.0], "decimals": 2}, "working_relief": {"symbol": "α_w", "term": "working relief", "unit": "°", "meaning": "at a place on the lip, in the plane that touches the cylinder through it: what the feed leaves of the relief there", "usual": [2.0, 40.0], "possible": [-179.0, 89.0], "decimals": 2}, "relief_margin": {"symbol": "α_m", "term": "relief margin", "unit": "°", "meaning": "working relief that is to be left at the outer corner", "usual": [2.0, 15.0], "possible": [0.0, 45.0], "decimals": 1}, "least_lip_relief": {"symbol": "α_l", "term": "least lip relief", "unit": "°", "meaning": "at the outer corner, in the plane that touches the cylinder there: the lip relief that leaves the wanted margin at this feed", "usual": [2.0, 20.0], "possible": [0.0, 135.0], "decimals": 2}, "turn_share": {"symbol": "n_t", "term": "share of a turn", "unit": "", "meaning": "how far round the axis behind the lip, as a part of one whole turn: 60° is 1/6", "usual": [0.0, 0.5], "possible": [0.0, 1.0], "decimals": 4}, "flank_fall": {"symbol": "z_f", "term": "fall of the flank", "unit": "mm", "meaning": "along the axis: how far the flank lies back from the lip's height at a place behind it; below zero it stands ahead of the lip", "usual": [0.0, 10.0], "possible": [-2000.0, 2000.0], "decimals": 2}, "feed": {"symbol": "f", "term": "feed", "unit": "mm/rev", "meaning": "how far the drill goes forward in one turn (both lips together)", "usual": [0.02, 0.6], "possible": [0.0, 5.0], "decimals": 3}, "chip_thickness": {"symbol": "h_c", "term": "chip thickness", "unit": "mm", "meaning": "of the uncut chip, square to the lip", "usual": [0.005, 0.3], "possible": [0.0, 2.5], "decimals": 3}, "chip_width": {"symbol": "b_c", "term": "chip width", "unit": "mm", "meaning": "of the uncut chip, along the lip", "usual": [0.0, null], "possible": [0.0, 150.0], "decimals": 2}, "chisel_ratio": {"symbol": "c", "term": "chisel edge ratio", "unit": "", "meaning": "length of the chisel edge, thinned or not, divided by the drill diameter", "usual": [0.03, 0.25], "possible": [0.0, 1.0], "decimals": 3}, "torque_factor": {"symbol": "A_M", "term": "chisel edge factor of the torque", "unit": "", "meaning": "by how much the chisel edge raises the torque", "usual": [1.0, 1.4], "possible": [0.9, 2.0], "decimals": 3}, "thrust_factor": {"symbol": "B_T", "term": "chisel edge factor of the thrust", "unit": "", "meaning": "by how much the chisel edge raises the part of the thrust that goes with the feed", "usual": [1.0, 1.62], "possible": [0.9, 3.0], "decimals": 3}, "chisel_thrust_factor": {"symbol": "J_T", "term": "chisel edge factor of the indenting thrust", "unit": "", "meaning": "share of the drill's square that the chisel edge presses in, whatever the feed", "usual": [0.0, 0.16], "possible": [0.0, 1.0], "decimals": 3}, "material_factor": {"symbol": "K_d", "term": "work material factor", "unit": "", "meaning": "how hard the work is to drill, from a table (24000 for a steel of 200 HB); the same number in inch and metric", "usual": [1000.0, 50000.0], "possible": [1.0, 200000.0], "decimals": 0}, "tool_wear_factor": {"symbol": "k_w", "term": "tool wear factor", "unit": "", "meaning": "1 for a sharp drill, more for a worn one", "usual": [1.0, 2.0], "possible": [0.5, 5.0], "decimals": 2}, "thrust": {"symbol": "T", "term": "thrust", "unit": "N", "meaning": "force along the axis that pushes the drill into the work", "usual": [0.0, null], "possible": [0.0, 10000000.0], "decimals": 0}, "torque": {"symbol": "M", "term": "torque", "unit": "N·m", "meaning": "turning moment on the drill", "usual": [0.0, null], "possible": [0.0, 1000000.0], "decimals": 2}, "power": {"symbol": "P", "term": "drilling power", "unit": "kW", "meaning": "power that the drill itself uses", "usual": [0.0, null], "possible": [0.0, 1000000.0], "decimals": 2}, "efficiency": {"symbol": "e_m", "term": "efficiency of the machine", "unit": "", "meaning": "power at the drill divided by power of the motor", "usual": [0.6, 0.95], "possible": [0.0, 1.0], "decimals": 2}, "motor_power": {"symbol": "P_m", "term": "motor power", "unit": "kW", "meaning": "power that the motor must give", "usual": [0.0, null], "possible": [0.0, 1000000.0], "decimals": 2}, "reference_chisel_ratio": {"symbol": "c_0", "term": "chisel edge ratio to compare with", "unit": "", "meaning": "chisel edge ratio of the point that is compared with; 0.18 is the handbook's standard drill", "usual": [0.03, 0.25], "possible": [0.0, 1.0], "decimals": 3}, "reference_torque_factor": {"symbol": "A_0", "term": "factor of the torque to compare with", "unit": "", "meaning": "chisel edge factor of the torque for the point that is compared with", "usual": [1.0, 1.4], "possible": [0.9, 2.0], "decimals": 3}, "reference_thrust_factor": {"symbol": "B_0", "term": "factor of the thrust to compare with", "unit": "", "meaning": "chisel edge factor of the thrust for the point that is compared with", "usual": [1.0, 1.62], "possible": [0.9, 3.0], "decimals": 3}, "reference_chisel_thrust_factor": {"symbol": "J_0", "term": "factor of the indenting thrust to compare with", "unit": "", "meaning": "chisel edge factor of the indenting thrust for the point that is compared with", "usual": [0.0, 0.16], "possible": [0.0, 1.0], "decimals": 3}, "thrust_ratio": {"symbol": "q_T", "term": "thrust ratio", "unit": "", "meaning": "thrust divided by the thrust of the point that is compared with, same drill size, feed, work and wear", "usual": [0.3, 2.0], "possible": [0.0, 100.0], "decimals": 3}, "torque_ratio": {"symbol": "q_M", "term": "torque ratio", "unit": "", "meaning": "torque divided by the torque of the point that is compared with, same drill size, feed, work and wear", "usual": [0.6, 1.5], "possible": [0.0, 100.0], "decimals": 3}, "specific_force_at_1_mm": {"symbol": "k_1", "term": "specific cutting force at 1 mm", "unit": "N/mm²", "meaning": "cutting force per area of a chip 1 mm thick and 1 mm wide, from a table for the work", "usual": [300.0, 4000.0], "possible": [1.0, 20000.0], "decimals": 0}, "chip_thickness_exponent": {"symbol": "m_c", "term": "chip thickness exponent", "unit": "", "meaning": "how quickly thinner chips cost more force for their area, from a table for the work", "usual": [0.1, 0.4], "possible": [0.0, 0.9], "decimals": 2}, "specific_cutting_force": {"symbol": "k_c", "term": "specific cutting force", "unit": "N/mm²", "meaning": "cutting force divided by the area of the uncut chip", "usual": [500.0, 10000.0], "possible": [1.0, 1000000.0], "decimals": 0}, "shoulder_depth": {"symbol": "d_s", "term": "full-diameter depth", "unit": "mm", "meaning": "from the face of the work to the shoulder, where the hole stops being as wide as the drill", "usual": [0.5, 200.0], "possible": [0.0, 3000.0], "decimals": 2}, "depth_to_point": {"symbol": "d_t", "term": "depth to the point", "unit": "mm", "meaning": "from the face of the work to the very tip of the hole", "usual": [0.5, 250.0], "possible": [0.0, 3500.0], "decimals": 2}, "thread_depth": {"symbol": "d_g", "term": "full-thread depth", "unit": "mm", "meaning": "from the face of the work to the end of the last full thread", "usual": [1.0, 100.0], "possible": [0.0, 1000.0], "decimals": 2}, "thread_allowance": {"symbol": "a_g", "term": "room below the thread", "unit": "mm", "meaning": "along the axis below the last full thread: for the tap's chamfer and for chips", "usual": [0.0, 30.0], "possible": [0.0, 300.0], "decimals": 2}, "sheet_thickness": {"symbol": "b_s", "term": "thickness of the work", "unit": "mm", "meaning": "between the two faces that the drill goes through", "usual": [0.5, 100.0], "possible": [0.0, 1000.0], "decimals": 2}, "travel_through": {"symbol": "d_b", "term": "travel until through", "unit": "mm", "meaning": "how far the drill goes from the tip's first touch until its corners have left the far face", "usual": [0.5, 120.0], "possible": [0.0, 1500.0], "decimals": 2}, "sheet_cover": {"symbol": "k_b", "term": "thickness over point height", "unit": "", "meaning": "thickness of the work divided by the height of the point; under 1 the tip is out before the corners are in", "usual": [1.0, 50.0], "possible": [0.0, 1000000.0], "decimals": 2}, "mouth_diameter": {"symbol": "D_m", "term": "mouth diameter", "unit": "mm", "meaning": "diameter of the cone where it meets the face of the work", "usual": [1.0, 60.0], "possible": [0.0, 200.0], "decimals": 2}, "countersink_angle": {"symbol": "A_k", "term": "countersink angle", "unit": "°", "meaning": "included angle of the cone that a spotting drill or countersink makes", "usual": [60.0, 150.0], "possible": [20.0, 178.0], "decimals": 0}, "spot_depth": {"symbol": "d_c", "term": "spot depth", "unit": "mm", "meaning": "from the face of the work to the tip of the cone", "usual": [0.2, 40.0], "possible": [0.0, 600.0], "decimals": 2}, "flat_diameter": {"symbol": "D_f", "term": "diameter at the foot of the countersink", "unit": "mm", "meaning": "diameter where the cone ends: the hole already there, or the flat end of the tool", "usual": [0.0, 40.0], "possible": [0.0, 200.0], "decimals": 2}, "countersink_depth": {"symbol": "d_k", "term": "countersink depth", "unit": "mm", "meaning": "along the axis, from the face of the work to the foot of the cone", "usual": [0.0, 30.0], "possible": [0.0, 600.0], "decimals": 2}, "cutting_speed": {"symbol": "v", "term": "cutting speed", "unit": "m/min", "meaning": "speed of the outer corner round the axis", "usual": [3.0, 150.0], "possible": [0.0, 1000.0], "decimals": 1}, "spindle_speed": {"symbol": "n", "term": "spindle speed", "unit": "rev/min", "meaning": "turns of the drill in a minute", "usual": [30.0, 6000.0], "possible": [0.0, 1000000.0], "decimals": 0}, "speed_constant": {"symbol": "k_n", "term": "constant of the speed rule", "unit": "", "meaning": "the number in n = number × v / D, with v in m/min and D in mm; exactly 1000/π = 318.31", "usual": [300.0, 340.0], "possible": [100.0, 1000.0], "decimals": 2}, "speed_rule_ratio": {"symbol": "k_v", "term": "speed by the rule over exact speed", "unit": "", "meaning": "how many times the exact spindle speed the shop's rule gives; above 1 the drill turns too fast", "usual": [0.94, 1.07], "possible": [0.3, 3.2], "decimals": 4}, "feed_rate": {"symbol": "v_f", "term": "feed rate", "unit": "mm/min", "meaning": "how far the drill goes in one minute", "usual": [5.0, 1500.0], "possible": [0.0, 1000000.0], "decimals": 1}, "approach": {"symbol": "a_1", "term": "approach", "unit": "mm", "meaning": "travel at drilling feed before the tip touches the work", "usual": [0.0, 20.0], "possible": [0.0, 500.0], "decimals": 2}, "overrun": {"symbol": "a_2", "term": "overrun", "unit": "mm", "meaning": "travel at drilling feed beyond the full diameter: past the far face, or into the bottom of the hole", "usual": [0.0, 20.0], "possible": [0.0, 500.0], "decimals": 2}, "drilling_time": {"symbol": "t_c", "term": "drilling time", "unit": "min", "meaning": "time at drilling feed, without setting, retracting or clearing chips", "usual": [0.0, 30.0], "possible": [0.0, 1000000.0], "decimals": 3}, "lip_length_difference": {"symbol": "L_Δ", "term": "difference of the lip lengths", "unit": "mm", "meaning": "how much longer one lip is than the other, both measured along the lip", "usual": [0.0, 2.0], "possible": [0.0, 75.0], "decimals": 3}, "lip_height_difference": {"symbol": "h_Δ", "term": "difference of the lip heights", "unit": "mm", "meaning": "along the axis: how much one lip stands ahead of the other at the same radius", "usual": [0.0, 1.0], "possible": [0.0, 75.0], "decimals": 3}, "point_offset": {"symbol": "e", "term": "offset of the point", "unit": "mm", "meaning": "distance of the tip from the axis of the drill", "usual": [0.0, 1.0], "possible": [0.0, 75.0], "decimals": 3}, "oversize": {"symbol": "D_Δ", "term": "most oversize", "unit": "mm", "meaning": "the most by which the hole can be wider than the drill for this fault", "usual": [0.0, 2.0], "possible": [0.0, 150.0], "decimals": 3}, "largest_hole": {"symbol": "D_h", "term": "largest hole", "unit": "mm", "meaning": "the widest hole the drill can make with this fault", "usual": [1.0, 42.0], "possible": [0.1, 300.0], "decimals": 3}, "half_angle_1": {"symbol": "κ_1", "term": "half angle of lip 1", "unit": "°", "meaning": "between lip 1 and the axis, looking square to the lips", "usual": [45.0, 75.0], "possible": [20.0, 89.5], "decimals": 1}, "half_angle_2": {"symbol": "κ_2", "term": "half angle of lip 2", "unit": "°", "meaning": "between lip 2 and the axis, looking square to the lips", "usual": [45.0, 75.0], "possible": [20.0, 89.5], "decimals": 1}, "idle_radius": {"symbol": "r_i", "term": "radius where the lagging lip stops cutting", "unit": "mm", "meaning": "outside this radius only the leading lip cuts; beyond the drill's own radius it means that both lips cut all along", "usual": [0.0, 100.0], "possible": [0.0, Infinity], "decimals": 2}, "run_out": {"symbol": "s_r", "term": "run-out", "unit": "mm", "meaning": "full swing of an indicator against the drill near the point, over one turn of the spindle", "usual": [0.0, 0.5], "possible": [0.0, 50.0], "decimals": 3}, "roll_angle": {"symbol": "ρ", "term": "roll", "unit": "°", "meaning": "how far the drill is turned about its axis from where both lips are seen square", "usual": [0.0, 45.0], "possible": [0.0, 90.0], "decimals": 1}, "rolled_reading": {"symbol": "A_ρ", "term": "point angle as read on a rolled drill", "unit": "°", "meaning": "included angle that a gauge or eye sees between the two lips of a rolled drill", "usual": [60.0, 150.0], "possible": [0.0, 180.0], "decimals": 1}, "new_point_angle": {"symbol": "A′", "term": "new point angle", "unit": "°", "meaning": "included angle between the two lips after the regrind", "usual": [90.0, 150.0], "possible": [60.0, 179.0], "decimals": 1}, "stock": {"symbol": "Δ", "term": "stock to grind off", "unit": "mm", "meaning": "along the axis: how much has to come off in one regrind, at the place the relation names", "usual": [0.0, 5.0], "possible": [0.0, 150.0], "decimals": 3}, "corner_stock": {"symbol": "Δ_c", "term": "stock at the corners", "unit": "mm", "meaning": "along the axis: how much has to come off at the outer corners", "usual": [0.0, 5.0], "possible": [0.0, 150.0], "decimals": 3}, "tip_stock": {"symbol": "Δ_t", "term": "stock at the tip", "unit": "mm", "meaning": "along the axis: how much comes off at the tip, which is what shortens the drill", "usual": [0.0, 10.0], "possible": [0.0, 300.0], "decimals": 3}, "wear_land": {"symbol": "b", "term": "wear land", "unit": "mm", "meaning": "width of the flat rubbed on the flank behind the outer corner, along the direction of cutting", "usual": [0.05, 1.5], "possible": [0.0, 20.0], "decimals": 2}, "worn_margin": {"symbol": "m", "term": "worn or burnt length of the margin", "unit": "mm", "meaning": "along the axis, from the outer corner to the end of the damage on the margin", "usual": [0.0, 5.0], "possible": [0.0, 100.0], "decimals": 2}, "chip_depth": {"symbol": "c_l", "term": "depth of a chip in the lip", "unit": "mm", "meaning": "looking square to the lips: from the line of the lip to the bottom of the chip, square to the lip", "usual": [0.0, 2.0], "possible": [0.0, 50.0], "decimals": 2}, "usable_length": {"symbol": "l_u", "term": "usable flute length", "unit": "mm", "meaning": "along the axis: how much may still be ground off before the flutes are too short for the work", "usual": [1.0, 200.0], "possible": [0.0, 1000.0], "decimals": 1}, "regrinds_left": {"symbol": "N", "term": "regrinds left", "unit": "", "meaning": "usable flute length divided by the stock of one regrind; whole ones count", "usual": [1.0, 200.0], "possible": [0.0, Infinity], "decimals": 1}, "regrinds": {"symbol": "i", "term": "number of regrinds", "unit": "", "meaning": "how many times the drill has been ground since its web was measured", "usual": [0.0, 100.0], "possible": [0.0, 1000.0], "decimals": 0}, "web_ratio_limit": {"symbol": "u_m", "term": "largest web ratio allowed", "unit": "", "meaning": "web over diameter at which the shop thins the web", "usual": [0.12, 0.35], "possible": [0.0, 1.0], "decimals": 3}, "length_before": {"symbol": "l_1", "term": "length before", "unit": "mm", "meaning": "length of the drill from a fixed stop to the tip, before grinding", "usual": [20.0, 500.0], "possible": [0.0, 2000.0], "decimals": 3}, "length_after": {"symbol": "l_2", "term": "length after", "unit": "mm", "meaning": "length of the drill from the same stop to the tip, after grinding", "usual": [20.0, 500.0], "possible": [0.0, 2000.0], "decimals": 3}, "take_off_correction": {"symbol": "Δ_k", "term": "correction of the take-off", "unit": "mm", "meaning": "what to add to the take-off setting; below zero, too much came off and the setting goes back", "usual": [-1.0, 1.0], "possible": [-1000.0, 1000.0], "decimals": 3}, "web_offset": {"symbol": "e_W", "term": "web offset", "unit": "mm", "meaning": "how far the middle of the web lies off the drill axis, towards lip 1", "usual": [-0.1, 0.1], "possible": [-20.0, 20.0], "decimals": 3}, "body_diameter": {"symbol": "D_b", "term": "body diameter", "unit": "mm", "meaning": "over the margins behind the point; other than the drill diameter on a stepped or worn drill", "usual": [1.0, 40.0], "possible": [0.1, 150.0], "decimals": 2}, "heel_angle": {"symbol": "θ_h", "term": "heel angle", "unit": "°", "meaning": "of the land in a section square to the axis, from its leading edge back to the heel", "usual": [60.0, 90.0], "possible": [30.0, 110.0], "decimals": 0}, "margin_width": {"symbol": "b_m", "term": "margin width", "unit": "mm", "meaning": "of the narrow strip behind the outer corner that has the full diameter", "usual": [0.2, 3.0], "possible": [0.0, 30.0], "decimals": 2}, "margin_height": {"symbol": "h_m", "term": "margin height", "unit": "mm", "meaning": "how far the body behind the margin is set back from the full diameter", "usual": [0.0, 1.0], "possible": [0.0, 10.0], "decimals": 2}, "flank_height": {"symbol": "z_g", "term": "flank height", "unit": "mm", "meaning": "along the axis, how much higher this flank was ground than the design lip's line", "usual": [-1.0, 1.0], "possible": [-300.0, 300.0], "decimals": 3}, "flank_turn": {"symbol": "τ_f", "term": "flank turn", "unit": "°", "meaning": "how far the drill was turned ahead about its axis before grinding, so that the flank leads its lip", "usual": [-10.0, 10.0], "possible": [-60.0, 60.0], "decimals": 1}, "secondary_relief": {"symbol": "α_2", "term": "secondary relief", "unit": "°", "meaning": "of the second plane behind the lip, in the plane parallel to the axis and square to the lip in the end view", "usual": [15.0, 35.0], "possible": [0.0, 60.0], "decimals": 1}, "primary_width": {"symbol": "b_1", "term": "primary facet width", "unit": "mm", "meaning": "of the plane next to the lip, square to the lip in the end view", "usual": [0.2, 5.0], "possible": [0.0, 75.0], "decimals": 2}, "cone_half_angle": {"symbol": "θ", "term": "half angle of the grinding cone", "unit": "°", "meaning": "between the axis and the side of the cone of which the flank is a part", "usual": [10.0, 40.0], "possible": [0.0, 80.0], "decimals": 2}, "cone_tilt": {"symbol": "φ", "term": "tilt of the grinding cone", "unit": "°", "meaning": "between the axis of the grinding cone and the drill axis", "usual": [10.0, 60.0], "possible": [-60.0, 90.0], "decimals": 2}, "apex_distance": {"symbol": "X", "term": "apex distance", "unit": "mm", "meaning": "in the end view along the lip: how far the apex of the grinding cone lies beyond the drill axis, away from the outer corner", "usual": [2.0, 100.0], "possible": [0.0, 1000000000.0], "decimals": 2}, "skew": {"symbol": "S", "term": "skew of the grinding cone", "unit": "mm", "meaning": "in the end view square to the lip: how far the axis of the grinding cone passes beside the drill axis, on the flute's side", "usual": [0.1, 10.0], "possible": [-1000000000.0, 1000000000.0], "decimals": 2}, "face_distance": {"symbol": "e_n", "term": "distance of the notch's face", "unit": "mm", "meaning": "in the end view, from the drill axis to the line of the notch's face through the chisel edge's new end; negative past the axis", "usual": [0.02, 2.0], "possible": [-75.0, 75.0], "decimals": 3}, "notch_depth": {"symbol": "a_n", "term": "notch depth", "unit": "mm", "meaning": "along the axis, how far below the chisel edge's new end the corner line of the notch passes", "usual": [0.0, 2.0], "possible": [0.0, 100.0], "decimals": 2}, "notch_rake": {"symbol": "γ_t", "term": "notch rake", "unit": "°", "meaning": "how far the notch's face leans back from the drill axis below the thinned lip, in the plane square to that lip in the end view", "usual": [-10.0, 15.0], "possible": [-45.0, 45.0], "decimals": 1}, "corner_radius": {"symbol": "r_n", "term": "corner radius of the notch", "unit": "mm", "meaning": "of the rounding between face and floor of the notch, square to its corner line", "usual": [0.0, 1.0], "possible": [0.0, 50.0], "decimals": 2}, "notch_slope": {"symbol": "ε", "term": "notch slope", "unit": "°", "meaning": "how steeply the corner line of the notch falls from square to the axis, on its way out along the thinned lip, seen square to that lip", "usual": [30.0, 65.0], "possible": [0.0, 85.0], "decimals": 1}, "notch_angle": {"symbol": "χ", "term": "notch angle", "unit": "°", "meaning": "between face and floor of the notch, square to its corner line", "usual": [85.0, 120.0], "possible": [45.0, 150.0], "decimals": 1}, "lip_length_1": {"symbol": "L_1", "term": "length of lip 1", "unit": "mm", "meaning": "along lip 1, from the end of the chisel edge to the outer corner", "usual": [0.5, 25.0], "possible": [0.0, 150.0], "decimals": 2}, "lip_length_2": {"symbol": "L_2", "term": "length of lip 2", "unit": "mm", "meaning": "along lip 2, from the end of the chisel edge to the outer corner", "usual": [0.5, 25.0], "possible": [0.0, 150.0], "decimals": 2}, "lip_relief_1": {"symbol": "α_f1", "term": "lip relief of lip 1", "unit": "°", "meaning": "at the outer corner of lip 1, in the plane that touches the cylinder there; below zero the heel stands ahead of the lip", "usual": [5.0, 24.0], "possible": [-30.0, 60.0], "decimals": 1}, "lip_relief_2": {"symbol": "α_f2", "term": "lip relief of lip 2", "unit": "°", "meaning": "at the outer corner of lip 2, in the plane that touches the cylinder there; below zero the heel stands ahead of the lip", "usual": [5.0, 24.0], "possible": [-30.0, 60.0], "decimals": 1}, "heel_height": {"symbol": "z_h", "term": "height of the heel", "unit": "mm", "meaning": "along the axis: how far the heel at the outside stands nearer to the tip than its outer corner; below zero it is clear", "usual": [-10.0, 0.0], "possible": [-150.0, 150.0], "decimals": 2}, "hole_diameter": {"symbol": "d_h", "term": "diameter of the hole", "unit": "mm", "meaning": "of the hole that the drill made, measured where it is widest", "usual": [1.0, 42.0], "possible": [0.1, 300.0], "decimals": 3}, "half_angle_difference": {"symbol": "κ_Δ", "term": "difference of the half angles", "unit": "°", "meaning": "between the half angles of lip 1 and lip 2, whichever is larger", "usual": [0.0, 5.0], "possible": [0.0, 60.0], "decimals": 2}, "point_angle_tolerance": {"symbol": "A_t", "term": "tolerance of the point angle", "unit": "°", "meaning": "how far the included angle may lie to either side of the one that is wanted", "usual": [0.5, 5.0], "possible": [0.0, 60.0], "decimals": 1}, "relief_difference": {"symbol": "α_Δ", "term": "difference of the lip reliefs", "unit": "°", "meaning": "between the reliefs at both outer corners, whichever is larger", "usual": [0.0, 5.0], "possible": [0.0, 60.0], "decimals": 1}, "lowest_lip_relief": {"symbol": "α_a", "term": "lowest lip relief", "unit": "°", "meaning": "the smallest relief at an outer corner that is accepted, in the plane that touches the cylinder there", "usual": [5.0, 15.0], "possible": [0.0, 45.0], "decimals": 1}, "highest_lip_relief": {"symbol": "α_b", "term": "highest lip relief", "unit": "°", "meaning": "the largest relief at an outer corner that is accepted, in the plane that touches the cylinder there", "usual": [10.0, 25.0], "possible": [0.0, 60.0], "decimals": 1}, "lowest_chisel_edge_angle": {"symbol": "ψ_a", "term": "lowest chisel edge angle", "unit": "°", "meaning": "the smallest chisel edge angle (obtuse, in the end view) that is accepted", "usual": [110.0, 130.0], "possible": [90.0, 180.0], "decimals": 1}, "highest_chisel_edge_angle": {"symbol": "ψ_b", "term": "highest chisel edge angle", "unit": "°", "meaning": "the largest chisel edge angle (obtuse, in the end view) that is accepted", "usual": [125.0, 145.0], "possible": [90.0, 180.0], "decimals": 1}, "turn_tolerance": {"symbol": "τ_t", "term": "tolerance of the turn", "unit": "°", "meaning": "how far the drill may be turned about its axis from where it should be held for grinding", "usual": [0.5, 5.0], "possible": [0.0, 60.0], "decimals": 1}, "body_difference": {"symbol": "D_p", "term": "difference of body and point", "unit": "mm", "meaning": "between the diameter over the margins behind the point and the diameter over the outer corners, whichever is larger", "usual": [0.0, 0.5], "possible": [0.0, 150.0], "decimals": 3}, "tip_height": {"symbol": "h_t", "term": "height of the ground tip", "unit": "mm", "meaning": "along the axis, from the outer corners to the highest place of the chisel edge; less than the sharp cone's point height", "usual": [0.2, 12.0], "possible": [0.0, 150.0], "decimals": 3}, "chisel_edge_rise": {"symbol": "h_e", "term": "rise of the chisel edge", "unit": "mm", "meaning": "along the axis, how far the highest place of the chisel edge stands above its ends; 0 between plane flanks", "usual": [0.0, 1.0], "possible": [0.0, 50.0], "decimals": 3}, "chisel_edge_offset": {"symbol": "e_c", "term": "chisel edge off the axis", "unit": "mm", "meaning": "in the end view, the nearest the chisel edge or its prolongation comes to the drill axis", "usual": [0.0, 0.1], "possible": [0.0, 75.0], "decimals": 3}, "chisel_edge_angle_at_axis": {"symbol": "ψ_0", "term": "chisel edge angle at the axis", "unit": "°", "meaning": "in the end view, the obtuse angle between a lip and the chisel edge where it passes the axis; on plane flanks the same as from end to end", "usual": [120.0, 135.0], "possible": [0.0, 180.0], "decimals": 1}, "lip_bow": {"symbol": "b_b", "term": "bow of the lip", "unit": "mm", "meaning": "in the end view half way along, how far a lip stands out from the straight line between its ends: bulging ahead is positive, hollow negative", "usual": [-0.1, 0.1], "possible": [-50.0, 50.0], "decimals": 3}, "flute_length": {"symbol": "l_f", "term": "flute length left", "unit": "mm", "meaning": "along the axis, from the outer corners to where the flutes begin to run out", "usual": [10.0, 300.0], "possible": [0.0, 1000.0], "decimals": 1}, "deepest_hole": {"symbol": "l_d", "term": "deepest hole to drill", "unit": "mm", "meaning": "along the axis: full-diameter depth of the deepest hole that the drill is kept for", "usual": [2.0, 200.0], "possible": [0.0, 1000.0], "decimals": 1}, "new_lip_relief": {"symbol": "α_f′", "term": "new lip relief angle", "unit": "°", "meaning": "to be ground at the outer corner, in the plane that touches the cylinder there", "usual": [6.0, 18.0], "possible": [0.0, 45.0], "decimals": 1}, "new_chisel_edge_angle": {"symbol": "ψ′", "term": "new chisel edge angle", "unit": "°", "meaning": "to come out of the regrind: in the end view, where the edge crosses the drill axis; obtuse, or acute and read as its supplement", "usual": [120.0, 135.0], "possible": [5.0, 180.0], "decimals": 1}, "wear_share": {"symbol": "b_r", "term": "wear land that is ground, over the diameter", "unit": "", "meaning": "a drill goes to the wheel once its wear land is wider than this share of the diameter", "usual": [0.01, 0.05], "possible": [0.0, 0.5], "decimals": 3}, "flute_reserve": {"symbol": "r_f", "term": "flute kept for the chips, over the diameter", "unit": "", "meaning": "how much longer than the deepest hole the flutes must stay, as a share of the diameter", "usual": [0.5, 3.0], "possible": [0.0, 20.0], "decimals": 2}, "finish_allowance": {"symbol": "Δ_a", "term": "finishing allowance", "unit": "mm", "meaning": "along the axis: how much more than the stock is ground off, so that no trace of the damage is left", "usual": [0.02, 0.2], "possible": [0.0, 5.0], "decimals": 3}, "thinned_web_ratio": {"symbol": "u_t", "term": "web ratio to thin back to", "unit": "", "meaning": "a web that is thinned gets the chisel edge that a web of this share of the diameter would have", "usual": [0.1, 0.16], "possible": [0.0, 0.5], "decimals": 3}, "repoint_from": {"symbol": "A_r", "term": "change of angle that is called re-pointing", "unit": "°", "meaning": "a drill whose point angle is changed by more than this is re-pointed; less is a correction", "usual": [2.0, 15.0], "possible": [0.0, 90.0], "decimals": 1}, "smallest_diameter": {"symbol": "D_a", "term": "smallest drill ground here", "unit": "mm", "meaning": "diameter of the smallest drill that the shop can hold and grind", "usual": [1.0, 6.0], "possible": [0.0, 150.0], "decimals": 2}, "largest_diameter": {"symbol": "D_z", "term": "largest drill ground here", "unit": "mm", "meaning": "diameter of the largest drill that the shop can hold and grind", "usual": [10.0, 40.0], "possible": [0.0, 150.0], "decimals": 2}, "sharpest_point": {"symbol": "A_a", "term": "sharpest point ground here", "unit": "°", "meaning": "smallest included angle that the shop can grind", "usual": [60.0, 120.0], "possible": [40.0, 179.0], "decimals": 0}, "flattest_point": {"symbol": "A_z", "term": "flattest point ground here", "unit": "°", "meaning": "largest included angle that the shop can grind", "usual": [130.0, 160.0], "possible": [60.0, 179.0], "decimals": 0}},
letters: {"R": function R({diameter}) {
  return (1/2)*diameter;
}
, "t": function t({web}) {
  return (1/2)*web;
}
, "kappa": function kappa({point_angle}) {
  return (1/2)*point_angle;
}
, "kappa_new": function kappa_new({new_point_angle}) {
  return (1/2)*new_point_angle;
}
, "delta": function delta({chisel_edge_angle}) {
  return (-Math.PI*chisel_edge_angle + 180*Math.PI)/Math.PI;
}
, "omega": function omega({web_ratio}) {
  return 180*Math.asin(web_ratio)/Math.PI;
}
, "omega_r": function omega_r({radius, web}) {
  return 180*Math.asin((1/2)*web/radius)/Math.PI;
}
, "rake_change": function rake_change({normal_rake, dub_normal_rake}) {
  return (-Math.PI*dub_normal_rake + Math.PI*normal_rake)/Math.PI;
}
, "delta_plane": function delta_plane({point_angle, axial_relief}) {
  return 180*Math.atan2(1/Math.tan((1/360)*Math.PI*point_angle), Math.tan((1/180)*Math.PI*axial_relief))/Math.PI;
}
},
angles: ["point_angle", "chisel_edge_angle", "lip_relief", "axial_relief", "relief_at_radius", "heel_clearance", "thinning_angle", "helix_angle", "local_helix", "lip_inclination", "normal_rake", "orthogonal_rake", "normal_relief", "wedge_angle", "dub_rake", "dub_normal_rake", "dub_wedge_angle", "chisel_edge_rake", "feed_relief_loss", "working_relief", "relief_margin", "least_lip_relief", "countersink_angle", "half_angle_1", "half_angle_2", "roll_angle", "rolled_reading", "new_point_angle", "heel_angle", "flank_turn", "secondary_relief", "cone_half_angle", "cone_tilt", "notch_rake", "notch_slope", "notch_angle", "lip_relief_1", "lip_relief_2", "half_angle_difference", "point_angle_tolerance", "relief_difference", "lowest_lip_relief", "highest_lip_relief", "lowest_chisel_edge_angle", "highest_chisel_edge_angle", "turn_tolerance", "chisel_edge_angle_at_axis", "new_lip_relief", "new_chisel_edge_angle", "repoint_from", "sharpest_point", "flattest_point", "kappa", "kappa_new", "delta", "omega", "omega_r", "rake_change", "delta_plane"],
relations: {},
};
// relation point_height
numbers.relations.point_height = {value: function value({diameter, point_angle}) {
  return (1/2)*diameter/Math.tan((1/360)*Math.PI*point_angle);
}
, margins: function margins({diameter, point_angle}) {
  return [];
}
, ...{"result": "point_height", "givens": ["diameter", "point_angle"], "conditions": [], "formula_text": "h = R/tan κ", "text": "⟦R⟧/tan ⟦kappa⟧", "abbreviations": ["R", "kappa"]}};
// relation lip_length
numbers.relations.lip_length = {value: function value({diameter, point_angle, web, chisel_edge_angle}) {
  return ((1/2)*web/Math.tan((1/180)*Math.PI*chisel_edge_angle) + Math.sqrt((1/4)*Math.pow(diameter, 2) - 1/4*Math.pow(web, 2)))/Math.sin((1/360)*Math.PI*point_angle);
}
, margins: function margins({diameter, point_angle, web, chisel_edge_angle}) {
  const v0 = -web;
  return [diameter + v0, diameter*Math.sin((1/180)*Math.PI*chisel_edge_angle) + v0];
}
, ...{"result": "lip_length", "givens": ["diameter", "point_angle", "web", "chisel_edge_angle"], "conditions": [{"says": "web {web} is not thinner than the drill, diameter {diameter}; about an eighth of the diameter is usual", "allows_zero": false}, {"says": "a chisel edge at {chisel_edge_angle} across a web of {web} would reach past the drill, diameter {diameter}: no lip is left; use a thinner web or a chisel edge angle nearer 120° to 135°", "allows_zero": false}], "formula_text": "L = (√(R² − t²) − t·cot δ)/sin κ", "text": "(√(⟦R⟧² − ⟦t⟧²) − ⟦t⟧·cot ⟦delta⟧)/sin ⟦kappa⟧", "abbreviations": ["R", "t", "kappa", "delta"]}};
// relation corner_radius
numbers.relations.corner_radius = {value: function value({diameter}) {
  return (1/2)*diameter;
}
, margins: function margins({diameter}) {
  return [];
}
, ...{"result": "radius", "givens": ["diameter"], "conditions": [], "formula_text": "r = D/2", "text": "⟦diameter⟧/2", "abbreviations": []}};
// relation chisel_edge_length
numbers.relations.chisel_edge_length = {value: function value({web, chisel_edge_angle}) {
  return web/Math.sin((1/180)*Math.PI*chisel_edge_angle);
}
, margins: function margins({web, chisel_edge_angle}) {
  return [];
}
, ...{"result": "chisel_edge_length", "givens": ["web", "chisel_edge_angle"], "conditions": [], "formula_text": "C = W/sin ψ", "text": "⟦web⟧/sin ⟦chisel_edge_angle⟧", "abbreviations": []}};
// relation chisel_edge_angle
numbers.relations.chisel_edge_angle = {value: function value({point_angle, axial_relief}) {
  return (-180*Math.atan2(1/Math.tan((1/360)*Math.PI*point_angle), Math.tan((1/180)*Math.PI*axial_relief)) + 180*Math.PI)/Math.PI;
}
, margins: function margins({point_angle, axial_relief}) {
  return [];
}
, ...{"result": "chisel_edge_angle", "givens": ["point_angle", "axial_relief"], "conditions": [], "formula_text": "ψ = 180° − atan(cot κ/tan α_x)", "text": "180° − atan(cot ⟦kappa⟧/tan ⟦axial_relief⟧)", "abbreviations": ["kappa"]}};
// relation chisel_edge_rake
numbers.relations.chisel_edge_rake = {value: function value({point_angle, chisel_edge_angle}) {
  return -180*Math.atan(Math.sin((1/180)*Math.PI*chisel_edge_angle)*Math.tan((1/360)*Math.PI*point_angle))/Math.PI;
}
, margins: function margins({point_angle, chisel_edge_angle}) {
  return [];
}
, ...{"result": "chisel_edge_rake", "givens": ["point_angle", "chisel_edge_angle"], "conditions": [], "formula_text": "γ_c = -atan(sin ψ·tan κ)", "text": "-atan(sin ⟦chisel_edge_angle⟧·tan ⟦kappa⟧)", "abbreviations": ["kappa"]}};
// relation axial_relief
numbers.relations.axial_relief = {value: function value({lip_relief, point_angle, web_ratio}) {
  return 180*Math.atan((-web_ratio/Math.tan((1/360)*Math.PI*point_angle) + Math.tan((1/180)*Math.PI*lip_relief))/Math.sqrt(1 - Math.pow(web_ratio, 2)))/Math.PI;
}
, margins: function margins({lip_relief, point_angle, web_ratio}) {
  return [];
}
, ...{"result": "axial_relief", "givens": ["lip_relief", "point_angle", "web_ratio"], "conditions": [], "formula_text": "α_x = atan((tan α_f − u·cot κ)/√(1 − u²))", "text": "atan((tan ⟦lip_relief⟧ − ⟦web_ratio⟧·cot ⟦kappa⟧)/√(1 − ⟦web_ratio⟧²))", "abbreviations": ["kappa"]}};
// relation lip_relief
numbers.relations.lip_relief = {value: function value({axial_relief, point_angle, web_ratio}) {
  return 180*Math.atan(web_ratio/Math.tan((1/360)*Math.PI*point_angle) + Math.sqrt(1 - Math.pow(web_ratio, 2))*Math.tan((1/180)*Math.PI*axial_relief))/Math.PI;
}
, margins: function margins({axial_relief, point_angle, web_ratio}) {
  return [];
}
, ...{"result": "lip_relief", "givens": ["axial_relief", "point_angle", "web_ratio"], "conditions": [], "formula_text": "α_f = atan(u·cot κ + √(1 − u²)·tan α_x)", "text": "atan(⟦web_ratio⟧·cot ⟦kappa⟧ + √(1 − ⟦web_ratio⟧²)·tan ⟦axial_relief⟧)", "abbreviations": ["kappa"]}};
// relation relief_at_radius
numbers.relations.relief_at_radius = {value: function value({radius, web, point_angle, axial_relief}) {
  return 180*Math.atan(Math.sqrt(1 - 1/4*Math.pow(web, 2)/Math.pow(radius, 2))*Math.tan((1/180)*Math.PI*axial_relief) + (1/2)*web/(radius*Math.tan((1/360)*Math.PI*point_angle)))/Math.PI;
}
, margins: function margins({radius, web, point_angle, axial_relief}) {
  return [2*radius - web];
}
, ...{"result": "relief_at_radius", "givens": ["radius", "web", "point_angle", "axial_relief"], "conditions": [{"says": "radius {radius} lies inside the web {web}; no place on a lip is nearer to the axis than half the web", "allows_zero": true}], "formula_text": "α = atan(√(1 − t²/r²)·tan α_x + t·cot κ/r)", "text": "atan(√(1 − ⟦t⟧²/⟦radius⟧²)·tan ⟦axial_relief⟧ + ⟦t⟧·cot ⟦kappa⟧/⟦radius⟧)", "abbreviations": ["t", "kappa"]}};
// relation heel_clearance
numbers.relations.heel_clearance = {value: function value({point_angle, axial_relief, web_ratio}) {
  return (360*Math.asin(web_ratio) - 360*Math.atan2(1/Math.tan((1/360)*Math.PI*point_angle), Math.tan((1/180)*Math.PI*axial_relief)) + 180*Math.PI)/Math.PI;
}
, margins: function margins({point_angle, axial_relief, web_ratio}) {
  return [2*Math.asin(web_ratio) - 2*Math.atan2(1/Math.tan((1/360)*Math.PI*point_angle), Math.tan((1/180)*Math.PI*axial_relief)) + Math.PI];
}
, ...{"result": "heel_clearance", "givens": ["point_angle", "axial_relief", "web_ratio"], "conditions": [{"says": "with a relief of {axial_relief} square to the lip there is no relief at the outer corner: the flank rises straight behind it and nothing clears; give more lip relief", "allows_zero": true}], "formula_text": "q = 2·ω + 180° − 2·δ", "text": "2·⟦omega⟧ + 180° − 2·⟦delta_plane⟧", "abbreviations": ["omega", "kappa", "delta_plane"]}};
// relation flank_fall
numbers.relations.flank_fall = {value: function value({radius, relief_at_radius, turn_share}) {
  return 2*Math.PI*radius*turn_share*Math.tan((1/180)*Math.PI*relief_at_radius);
}
, margins: function margins({radius, relief_at_radius, turn_share}) {
  return [];
}
, ...{"result": "flank_fall", "givens": ["radius", "relief_at_radius", "turn_share"], "conditions": [], "formula_text": "z_f = 2·π·r·n_t·tan α", "text": "2·π·⟦radius⟧·⟦turn_share⟧·tan ⟦relief_at_radius⟧", "abbreviations": []}};
// relation feed_relief_loss
numbers.relations.feed_relief_loss = {value: function value({feed, radius}) {
  const v0 = 1/Math.PI;
  return 180*v0*Math.atan((1/2)*feed*v0/radius);
}
, margins: function margins({feed, radius}) {
  return [];
}
, ...{"result": "feed_relief_loss", "givens": ["feed", "radius"], "conditions": [], "formula_text": "η = atan(f/(2·π·r))", "text": "atan(⟦feed⟧/(2·π·⟦radius⟧))", "abbreviations": []}};
// relation working_relief
numbers.relations.working_relief = {value: function value({relief_at_radius, feed_relief_loss}) {
  return (-Math.PI*feed_relief_loss + Math.PI*relief_at_radius)/Math.PI;
}
, margins: function margins({relief_at_radius, feed_relief_loss}) {
  return [];
}
, ...{"result": "working_relief", "givens": ["relief_at_radius", "feed_relief_loss"], "conditions": [], "formula_text": "α_w = α − η", "text": "⟦relief_at_radius⟧ − ⟦feed_relief_loss⟧", "abbreviations": []}};
// relation least_lip_relief
numbers.relations.least_lip_relief = {value: function value({feed, diameter, relief_margin}) {
  const v0 = 1/Math.PI;
  return v0*(Math.PI*relief_margin + 180*Math.atan(feed*v0/diameter));
}
, margins: function margins({feed, diameter, relief_margin}) {
  return [];
}
, ...{"result": "least_lip_relief", "givens": ["feed", "diameter", "relief_margin"], "conditions": [], "formula_text": "α_l = α_m + atan(f/(π·D))", "text": "⟦relief_margin⟧ + atan(⟦feed⟧/(π·⟦diameter⟧))", "abbreviations": []}};
// relation lead
numbers.relations.lead = {value: function value({diameter, helix_angle}) {
  return Math.PI*diameter/Math.tan((1/180)*Math.PI*helix_angle);
}
, margins: function margins({diameter, helix_angle}) {
  return [(1/180)*Math.PI*helix_angle];
}
, ...{"result": "lead", "givens": ["diameter", "helix_angle"], "conditions": [{"says": "with a helix angle of {helix_angle} the flute is straight and has no lead; give more than 0°", "allows_zero": false}], "formula_text": "P_h = π·D/tan β", "text": "π·⟦diameter⟧/tan ⟦helix_angle⟧", "abbreviations": []}};
// relation local_helix
numbers.relations.local_helix = {value: function value({helix_angle, radius, diameter}) {
  return 180*Math.atan(2*radius*Math.tan((1/180)*Math.PI*helix_angle)/diameter)/Math.PI;
}
, margins: function margins({helix_angle, radius, diameter}) {
  return [diameter - 2*radius];
}
, ...{"result": "local_helix", "givens": ["helix_angle", "radius", "diameter"], "conditions": [{"says": "radius {radius} lies outside the drill, diameter {diameter}; the outer corner is at half the diameter", "allows_zero": true}], "formula_text": "β_r = atan(r·tan β/R)", "text": "atan(⟦radius⟧·tan ⟦helix_angle⟧/⟦R⟧)", "abbreviations": ["R"]}};
// relation lip_inclination
numbers.relations.lip_inclination = {value: function value({radius, web, point_angle}) {
  return 180*Math.asin((1/2)*web*Math.sin((1/360)*Math.PI*point_angle)/radius)/Math.PI;
}
, margins: function margins({radius, web, point_angle}) {
  return [2*radius - web];
}
, ...{"result": "lip_inclination", "givens": ["radius", "web", "point_angle"], "conditions": [{"says": "radius {radius} lies inside the web {web}; no place on a lip is nearer to the axis than half the web", "allows_zero": true}], "formula_text": "λ = asin(t·sin κ/r)", "text": "asin(⟦t⟧·sin ⟦kappa⟧/⟦radius⟧)", "abbreviations": ["t", "kappa"]}};
// relation normal_rake
numbers.relations.normal_rake = {value: function value({local_helix, radius, web, point_angle}) {
  const v0 = Math.sqrt(1 - 1/4*Math.pow(web, 2)/Math.pow(radius, 2));
  const v1 = (1/360)*Math.PI*point_angle;
  const v2 = (1/2)*web*Math.cos(v1)/radius;
  const v3 = Math.tan((1/180)*Math.PI*local_helix);
  return (-180*Math.atan(v2/v0) + 180*Math.atan(v0*v3/(-v2*v3 + Math.sin(v1))))/Math.PI;
}
, margins: function margins({local_helix, radius, web, point_angle}) {
  const v0 = (1/360)*Math.PI*point_angle;
  return [2*radius - web, Math.sin(v0) - 1/2*web*Math.cos(v0)*Math.tan((1/180)*Math.PI*local_helix)/radius];
}
, ...{"result": "normal_rake", "givens": ["local_helix", "radius", "web", "point_angle"], "conditions": [{"says": "radius {radius} lies inside the web {web}; no place on a lip is nearer to the axis than half the web", "allows_zero": true}, {"says": "with a local helix angle of {local_helix} at radius {radius} the flute would run along the lip and leave no metal behind it; a helix angle up to 45° and a web up to a third of the diameter are usual", "allows_zero": false}], "formula_text": "γ_n = atan(cos ω_r·tan β_r/(sin κ − sin ω_r·cos κ·tan β_r)) − atan(cos κ·tan ω_r)", "text": "atan(cos ⟦omega_r⟧·tan ⟦local_helix⟧/(sin ⟦kappa⟧ − sin ⟦omega_r⟧·cos ⟦kappa⟧·tan ⟦local_helix⟧)) − atan(cos ⟦kappa⟧·tan ⟦omega_r⟧)", "abbreviations": ["kappa", "t", "omega_r"]}};
// relation orthogonal_rake
numbers.relations.orthogonal_rake = {value: function value({normal_rake, lip_inclination}) {
  const v0 = (1/180)*Math.PI;
  return 180*Math.atan(Math.tan(normal_rake*v0)/Math.cos(lip_inclination*v0))/Math.PI;
}
, margins: function margins({normal_rake, lip_inclination}) {
  return [];
}
, ...{"result": "orthogonal_rake", "givens": ["normal_rake", "lip_inclination"], "conditions": [], "formula_text": "γ_o = atan(tan γ_n/cos λ)", "text": "atan(tan ⟦normal_rake⟧/cos ⟦lip_inclination⟧)", "abbreviations": []}};
// relation normal_relief
numbers.relations.normal_relief = {value: function value({radius, web, point_angle, axial_relief}) {
  const v0 = (1/360)*Math.PI*point_angle;
  return (180*Math.atan(Math.sin(v0)*Math.tan((1/180)*Math.PI*axial_relief)) + 180*Math.atan((1/2)*web*Math.cos(v0)/(radius*Math.sqrt(1 - 1/4*Math.pow(web, 2)/Math.pow(radius, 2)))))/Math.PI;
}
, margins: function margins({radius, web, point_angle, axial_relief}) {
  return [2*radius - web];
}
, ...{"result": "normal_relief", "givens": ["radius", "web", "point_angle", "axial_relief"], "conditions": [{"says": "radius {radius} lies inside the web {web}; no place on a lip is nearer to the axis than half the web", "allows_zero": true}], "formula_text": "α_n = atan(sin κ·tan α_x) + atan(cos κ·tan ω_r)", "text": "atan(sin ⟦kappa⟧·tan ⟦axial_relief⟧) + atan(cos ⟦kappa⟧·tan ⟦omega_r⟧)", "abbreviations": ["kappa", "t", "omega_r"]}};
// relation wedge_angle
numbers.relations.wedge_angle = {value: function value({normal_rake, normal_relief}) {
  return (-Math.PI*normal_rake - Math.PI*normal_relief + 90*Math.PI)/Math.PI;
}
, margins: function margins({normal_rake, normal_relief}) {
  const v0 = (1/180)*Math.PI;
  return [-normal_rake*v0 - normal_relief*v0 + (1/2)*Math.PI];
}
, ...{"result": "wedge_angle", "givens": ["normal_rake", "normal_relief"], "conditions": [{"says": "normal rake {normal_rake} and normal relief {normal_relief} together leave no metal; they must be less than 90° together", "allows_zero": false}], "formula_text": "θ_w = 90° − γ_n − α_n", "text": "90° − ⟦normal_rake⟧ − ⟦normal_relief⟧", "abbreviations": []}};
// relation dub_normal_rake
numbers.relations.dub_normal_rake = {value: function value({dub_rake, radius, web, point_angle}) {
  const v0 = (1/360)*Math.PI*point_angle;
  return (180*Math.atan(Math.tan((1/180)*Math.PI*dub_rake)/Math.sin(v0)) - 180*Math.atan((1/2)*web*Math.cos(v0)/(radius*Math.sqrt(1 - 1/4*Math.pow(web, 2)/Math.pow(radius, 2)))))/Math.PI;
}
, margins: function margins({dub_rake, radius, web, point_angle}) {
  const v0 = (1/360)*Math.PI*point_angle;
  return [2*radius - web, Math.atan(Math.tan((1/180)*Math.PI*dub_rake)/Math.sin(v0)) - Math.atan((1/2)*web*Math.cos(v0)/(radius*Math.sqrt(1 - 1/4*Math.pow(web, 2)/Math.pow(radius, 2)))) + (1/2)*Math.PI];
}
, ...{"result": "dub_normal_rake", "givens": ["dub_rake", "radius", "web", "point_angle"], "conditions": [{"says": "radius {radius} lies inside the web {web}; no place on a lip is nearer to the axis than half the web", "allows_zero": true}, {"says": "a flat that leans {dub_rake} would lie ahead of the lip at radius {radius} and leave no edge; 0° is usual for brass", "allows_zero": false}], "formula_text": "γ_d = atan(tan γ_x/sin κ) − atan(cos κ·tan ω_r)", "text": "atan(tan ⟦dub_rake⟧/sin ⟦kappa⟧) − atan(cos ⟦kappa⟧·tan ⟦omega_r⟧)", "abbreviations": ["kappa", "t", "omega_r"]}};
// relation dub_wedge_angle
numbers.relations.dub_wedge_angle = {value: function value({dub_normal_rake, normal_relief}) {
  return (-Math.PI*dub_normal_rake - Math.PI*normal_relief + 90*Math.PI)/Math.PI;
}
, margins: function margins({dub_normal_rake, normal_relief}) {
  const v0 = (1/180)*Math.PI;
  return [-dub_normal_rake*v0 - normal_relief*v0 + (1/2)*Math.PI];
}
, ...{"result": "dub_wedge_angle", "givens": ["dub_normal_rake", "normal_relief"], "conditions": [{"says": "rake {dub_normal_rake} on the flat and normal relief {normal_relief} together leave no metal; they must be less than 90° together", "allows_zero": false}], "formula_text": "θ_d = 90° − γ_d − α_n", "text": "90° − ⟦dub_normal_rake⟧ − ⟦normal_relief⟧", "abbreviations": []}};
// relation least_dub_width
numbers.relations.least_dub_width = {value: function value({chip_thickness, dub_normal_rake}) {
  return chip_thickness/Math.cos((1/180)*Math.PI*dub_normal_rake);
}
, margins: function margins({chip_thickness, dub_normal_rake}) {
  return [Math.cos((1/180)*Math.PI*dub_normal_rake)];
}
, ...{"result": "least_dub_width", "givens": ["chip_thickness", "dub_normal_rake"], "conditions": [{"says": "with a rake of {dub_normal_rake} the flat lies flat on the work; it must be between -90° and 90°", "allows_zero": false}], "formula_text": "w_l = h_c/cos γ_d", "text": "⟦chip_thickness⟧/cos ⟦dub_normal_rake⟧", "abbreviations": []}};
// relation dub_set_back
numbers.relations.dub_set_back = {value: function value({dub_width, normal_rake, dub_normal_rake, wedge_angle}) {
  const v0 = (1/180)*Math.PI;
  return -dub_width*Math.sin(dub_normal_rake*v0 - normal_rake*v0)/Math.sin(v0*wedge_angle);
}
, margins: function margins({dub_width, normal_rake, dub_normal_rake, wedge_angle}) {
  return [-1/180*Math.PI*dub_normal_rake + (1/180)*Math.PI*normal_rake];
}
, ...{"result": "dub_set_back", "givens": ["dub_width", "normal_rake", "dub_normal_rake", "wedge_angle"], "conditions": [{"says": "the flat's rake {dub_normal_rake} is not less than the flute's own {normal_rake} here: there is nothing to take off; give a flat with less rake", "allows_zero": true}], "formula_text": "a_d = w_d·sin ε/sin θ_w", "text": "⟦dub_width⟧·sin ⟦rake_change⟧/sin ⟦wedge_angle⟧", "abbreviations": ["rake_change"]}};
// relation web_ratio
numbers.relations.web_ratio = {value: function value({web, diameter}) {
  return web/diameter;
}
, margins: function margins({web, diameter}) {
  return [diameter - web];
}
, ...{"result": "web_ratio", "givens": ["web", "diameter"], "conditions": [{"says": "web {web} is not thinner than the drill, diameter {diameter}; about an eighth of the diameter is usual", "allows_zero": false}], "formula_text": "u = W/D", "text": "⟦web⟧/⟦diameter⟧", "abbreviations": []}};
// relation web_from_ratio
numbers.relations.web_from_ratio = {value: function value({web_ratio, diameter}) {
  return diameter*web_ratio;
}
, margins: function margins({web_ratio, diameter}) {
  return [];
}
, ...{"result": "web", "givens": ["web_ratio", "diameter"], "conditions": [], "formula_text": "W = D·u", "text": "⟦diameter⟧·⟦web_ratio⟧", "abbreviations": []}};
// relation web_after_shortening
numbers.relations.web_after_shortening = {value: function value({web, web_taper, length_removed}) {
  return length_removed*web_taper + web;
}
, margins: function margins({web, web_taper, length_removed}) {
  return [];
}
, ...{"result": "web_after_shortening", "givens": ["web", "web_taper", "length_removed"], "conditions": [], "formula_text": "W′ = ΔL·τ + W", "text": "⟦length_removed⟧·⟦web_taper⟧ + ⟦web⟧", "abbreviations": []}};
// relation pilot_diameter
numbers.relations.pilot_diameter = {value: function value({web, chisel_edge_angle}) {
  return web/Math.sin((1/180)*Math.PI*chisel_edge_angle);
}
, margins: function margins({web, chisel_edge_angle}) {
  return [];
}
, ...{"result": "pilot_diameter", "givens": ["web", "chisel_edge_angle"], "conditions": [], "formula_text": "d_p = W/sin ψ", "text": "⟦web⟧/sin ⟦chisel_edge_angle⟧", "abbreviations": []}};
// relation pilot_cover
numbers.relations.pilot_cover = {value: function value({pilot_diameter, web, chisel_edge_angle}) {
  return pilot_diameter*Math.sin((1/180)*Math.PI*chisel_edge_angle)/web;
}
, margins: function margins({pilot_diameter, web, chisel_edge_angle}) {
  return [web];
}
, ...{"result": "pilot_cover", "givens": ["pilot_diameter", "web", "chisel_edge_angle"], "conditions": [{"says": "without a web, {web}, there is no chisel edge to cover; an eighth of the diameter is a usual web", "allows_zero": false}], "formula_text": "k_p = d_p·sin ψ/W", "text": "⟦pilot_diameter⟧·sin ⟦chisel_edge_angle⟧/⟦web⟧", "abbreviations": []}};
// relation thinning_reach
numbers.relations.thinning_reach = {value: function value({web, chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
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
, ...{"result": "thinning_reach", "givens": ["web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle"], "conditions": [{"says": "a chisel edge of {thinned_chisel_length} is no shorter than the web of {web} gives at {chisel_edge_angle} without thinning; thinning makes it shorter, often to half", "allows_zero": true}, {"says": "thinned at {thinning_angle}, the two thinned lips would pass the axis on the wrong sides: no web is left to hold the tip together. Use a thinning angle smaller than the acute angle between lip and chisel edge, 180° less {chisel_edge_angle}", "allows_zero": false}], "formula_text": "x_m = C_t·cos(δ)/2 + (t − C_t·sin(δ)/2)/tan ν", "text": "⟦thinned_chisel_length⟧·cos(⟦delta⟧)/2 + (⟦t⟧ − ⟦thinned_chisel_length⟧·sin(⟦delta⟧)/2)/tan ⟦thinning_angle⟧", "abbreviations": ["t", "delta"]}};
// relation thinned_lip_in_end_view
numbers.relations.thinned_lip_in_end_view = {value: function value({web, chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
  const v0 = (1/180)*Math.PI;
  return (-1/2*thinned_chisel_length*Math.sin(chisel_edge_angle*v0) + (1/2)*web)/Math.sin(thinning_angle*v0);
}
, margins: function margins({web, chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
  const v0 = (1/180)*Math.PI;
  const v1 = chisel_edge_angle*v0;
  return [-thinned_chisel_length + web/Math.sin(v1), -thinning_angle*v0 - v1 + Math.PI];
}
, ...{"result": "thinned_lip_in_end_view", "givens": ["web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle"], "conditions": [{"says": "a chisel edge of {thinned_chisel_length} is no shorter than the web of {web} gives at {chisel_edge_angle} without thinning; thinning makes it shorter, often to half", "allows_zero": true}, {"says": "thinned at {thinning_angle}, the two thinned lips would pass the axis on the wrong sides: no web is left to hold the tip together. Use a thinning angle smaller than the acute angle between lip and chisel edge, 180° less {chisel_edge_angle}", "allows_zero": false}], "formula_text": "p_t = (t − C_t·sin(δ)/2)/sin ν", "text": "(⟦t⟧ − ⟦thinned_chisel_length⟧·sin(⟦delta⟧)/2)/sin ⟦thinning_angle⟧", "abbreviations": ["t", "delta"]}};
// relation thinned_lip_length
numbers.relations.thinned_lip_length = {value: function value({web, chisel_edge_angle, thinned_chisel_length, thinning_angle, point_angle, axial_relief}) {
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
, ...{"result": "thinned_lip_length", "givens": ["web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle", "point_angle", "axial_relief"], "conditions": [{"says": "a chisel edge of {thinned_chisel_length} is no shorter than the web of {web} gives at {chisel_edge_angle} without thinning; thinning makes it shorter, often to half", "allows_zero": true}, {"says": "thinned at {thinning_angle}, the two thinned lips would pass the axis on the wrong sides: no web is left to hold the tip together. Use a thinning angle smaller than the acute angle between lip and chisel edge, 180° less {chisel_edge_angle}", "allows_zero": false}], "formula_text": "L_t = (t − C_t·sin(δ)/2)·√((cos ν·cot κ − sin ν·tan α_x)² + 1)/sin ν", "text": "(⟦t⟧ − ⟦thinned_chisel_length⟧·sin(⟦delta⟧)/2)·√((cos ⟦thinning_angle⟧·cot ⟦kappa⟧ − sin ⟦thinning_angle⟧·tan ⟦axial_relief⟧)² + 1)/sin ⟦thinning_angle⟧", "abbreviations": ["t", "kappa", "delta"]}};
// relation untouched_lip_length
numbers.relations.untouched_lip_length = {value: function value({diameter, point_angle, web, chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
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
, ...{"result": "untouched_lip_length", "givens": ["diameter", "point_angle", "web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle"], "conditions": [{"says": "web {web} is not thinner than the drill, diameter {diameter}; about an eighth of the diameter is usual", "allows_zero": false}, {"says": "a chisel edge of {thinned_chisel_length} is no shorter than the web of {web} gives at {chisel_edge_angle} without thinning; thinning makes it shorter, often to half", "allows_zero": true}, {"says": "thinned at {thinning_angle}, the two thinned lips would pass the axis on the wrong sides: no web is left to hold the tip together. Use a thinning angle smaller than the acute angle between lip and chisel edge, 180° less {chisel_edge_angle}", "allows_zero": false}, {"says": "thinned from a chisel edge of {thinned_chisel_length} at {thinning_angle}, the thinned lip would reach the outer corner, diameter {diameter}: no main lip is left and the point angle is lost; thin at a larger angle, or less", "allows_zero": false}], "formula_text": "L_u = (√(R² − t²) − C_t·cos(δ)/2 − (t − C_t·sin(δ)/2)/tan ν)/sin κ", "text": "(√(⟦R⟧² − ⟦t⟧²) − ⟦thinned_chisel_length⟧·cos(⟦delta⟧)/2 − (⟦t⟧ − ⟦thinned_chisel_length⟧·sin(⟦delta⟧)/2)/tan ⟦thinning_angle⟧)/sin ⟦kappa⟧", "abbreviations": ["R", "t", "kappa", "delta"]}};
// relation untouched_lip_share
numbers.relations.untouched_lip_share = {value: function value({diameter, web, chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
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
, ...{"result": "untouched_lip_share", "givens": ["diameter", "web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle"], "conditions": [{"says": "web {web} is not thinner than the drill, diameter {diameter}; about an eighth of the diameter is usual", "allows_zero": false}, {"says": "a chisel edge of {thinned_chisel_length} is no shorter than the web of {web} gives at {chisel_edge_angle} without thinning; thinning makes it shorter, often to half", "allows_zero": true}, {"says": "thinned at {thinning_angle}, the two thinned lips would pass the axis on the wrong sides: no web is left to hold the tip together. Use a thinning angle smaller than the acute angle between lip and chisel edge, 180° less {chisel_edge_angle}", "allows_zero": false}, {"says": "thinned from a chisel edge of {thinned_chisel_length} at {thinning_angle}, the thinned lip would reach the outer corner, diameter {diameter}: no main lip is left and the point angle is lost; thin at a larger angle, or less", "allows_zero": false}], "formula_text": "s_u = (√(R² − t²) − C_t·cos(δ)/2 − (t − C_t·sin(δ)/2)/tan ν)/(√(R² − t²) − t·cot δ)", "text": "(√(⟦R⟧² − ⟦t⟧²) − ⟦thinned_chisel_length⟧·cos(⟦delta⟧)/2 − (⟦t⟧ − ⟦thinned_chisel_length⟧·sin(⟦delta⟧)/2)/tan ⟦thinning_angle⟧)/(√(⟦R⟧² − ⟦t⟧²) − ⟦t⟧·cot ⟦delta⟧)", "abbreviations": ["R", "t", "delta"]}};
// relation thinned_web
numbers.relations.thinned_web = {value: function value({chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
  const v0 = (1/180)*Math.PI;
  return thinned_chisel_length*Math.sin(chisel_edge_angle*v0 + thinning_angle*v0);
}
, margins: function margins({chisel_edge_angle, thinned_chisel_length, thinning_angle}) {
  const v0 = (1/180)*Math.PI;
  return [-chisel_edge_angle*v0 - thinning_angle*v0 + Math.PI];
}
, ...{"result": "thinned_web", "givens": ["chisel_edge_angle", "thinned_chisel_length", "thinning_angle"], "conditions": [{"says": "thinned at {thinning_angle}, the two thinned lips would pass the axis on the wrong sides: no web is left to hold the tip together. Use a thinning angle smaller than the acute angle between lip and chisel edge, 180° less {chisel_edge_angle}", "allows_zero": false}], "formula_text": "W_t = C_t·sin(δ − ν)", "text": "⟦thinned_chisel_length⟧·sin(⟦delta⟧ − ⟦thinning_angle⟧)", "abbreviations": ["delta"]}};
// relation full_diameter_depth
numbers.relations.full_diameter_depth = {value: function value({shoulder_depth, point_height}) {
  return point_height + shoulder_depth;
}
, margins: function margins({shoulder_depth, point_height}) {
  return [];
}
, ...{"result": "depth_to_point", "givens": ["shoulder_depth", "point_height"], "conditions": [], "formula_text": "d_t = h + d_s", "text": "⟦point_height⟧ + ⟦shoulder_depth⟧", "abbreviations": []}};
// relation shoulder_depth
numbers.relations.shoulder_depth = {value: function value({depth_to_point, point_height}) {
  return depth_to_point - point_height;
}
, margins: function margins({depth_to_point, point_height}) {
  return [depth_to_point - point_height];
}
, ...{"result": "shoulder_depth", "givens": ["depth_to_point", "point_height"], "conditions": [{"says": "{depth_to_point} to the point is less than the point is tall, {point_height}: no part of the hole has the full diameter yet; drill deeper, or check which depth is meant", "allows_zero": true}], "formula_text": "d_s = d_t − h", "text": "⟦depth_to_point⟧ − ⟦point_height⟧", "abbreviations": []}};
// relation tap_drill_depth
numbers.relations.tap_drill_depth = {value: function value({thread_depth, thread_allowance, point_height}) {
  return point_height + thread_allowance + thread_depth;
}
, margins: function margins({thread_depth, thread_allowance, point_height}) {
  return [];
}
, ...{"result": "depth_to_point", "givens": ["thread_depth", "thread_allowance", "point_height"], "conditions": [], "formula_text": "d_t = h + a_g + d_g", "text": "⟦point_height⟧ + ⟦thread_allowance⟧ + ⟦thread_depth⟧", "abbreviations": []}};
// relation breakthrough
numbers.relations.breakthrough = {value: function value({sheet_thickness, point_height}) {
  return point_height + sheet_thickness;
}
, margins: function margins({sheet_thickness, point_height}) {
  return [];
}
, ...{"result": "travel_through", "givens": ["sheet_thickness", "point_height"], "conditions": [], "formula_text": "d_b = h + b_s", "text": "⟦point_height⟧ + ⟦sheet_thickness⟧", "abbreviations": []}};
// relation sheet_cover
numbers.relations.sheet_cover = {value: function value({sheet_thickness, point_height}) {
  return sheet_thickness/point_height;
}
, margins: function margins({sheet_thickness, point_height}) {
  return [];
}
, ...{"result": "sheet_cover", "givens": ["sheet_thickness", "point_height"], "conditions": [], "formula_text": "k_b = b_s/h", "text": "⟦sheet_thickness⟧/⟦point_height⟧", "abbreviations": []}};
// relation countersink_angle
numbers.relations.countersink_angle = {value: function value({point_angle}) {
  return point_angle;
}
, margins: function margins({point_angle}) {
  return [];
}
, ...{"result": "countersink_angle", "givens": ["point_angle"], "conditions": [], "formula_text": "A_k = A", "text": "⟦point_angle⟧", "abbreviations": []}};
// relation spot_depth
numbers.relations.spot_depth = {value: function value({mouth_diameter, countersink_angle}) {
  return (1/2)*mouth_diameter/Math.tan((1/360)*Math.PI*countersink_angle);
}
, margins: function margins({mouth_diameter, countersink_angle}) {
  return [];
}
, ...{"result": "spot_depth", "givens": ["mouth_diameter", "countersink_angle"], "conditions": [], "formula_text": "d_c = D_m/(2·tan(A_k/2))", "text": "⟦mouth_diameter⟧/(2·tan(⟦countersink_angle⟧/2))", "abbreviations": []}};
// relation countersink_depth
numbers.relations.countersink_depth = {value: function value({mouth_diameter, flat_diameter, countersink_angle}) {
  return (-1/2*flat_diameter + (1/2)*mouth_diameter)/Math.tan((1/360)*Math.PI*countersink_angle);
}
, margins: function margins({mouth_diameter, flat_diameter, countersink_angle}) {
  return [-flat_diameter + mouth_diameter];
}
, ...{"result": "countersink_depth", "givens": ["mouth_diameter", "flat_diameter", "countersink_angle"], "conditions": [{"says": "the mouth, {mouth_diameter}, is narrower than the foot, {flat_diameter}; the mouth is the wider one", "allows_zero": true}], "formula_text": "d_k = (D_m/2 − D_f/2)/tan(A_k/2)", "text": "(⟦mouth_diameter⟧/2 − ⟦flat_diameter⟧/2)/tan(⟦countersink_angle⟧/2)", "abbreviations": []}};
// relation spindle_speed
numbers.relations.spindle_speed = {value: function value({cutting_speed, diameter}) {
  return 1000*cutting_speed/(Math.PI*diameter);
}
, margins: function margins({cutting_speed, diameter}) {
  return [];
}
, ...{"result": "spindle_speed", "givens": ["cutting_speed", "diameter"], "conditions": [], "formula_text": "n = 1000·v/(π·D)", "text": "1000·⟦cutting_speed⟧/(π·⟦diameter⟧)", "abbreviations": []}};
// relation spindle_speed_by_rule
numbers.relations.spindle_speed_by_rule = {value: function value({speed_constant, cutting_speed, diameter}) {
  return cutting_speed*speed_constant/diameter;
}
, margins: function margins({speed_constant, cutting_speed, diameter}) {
  return [];
}
, ...{"result": "spindle_speed", "givens": ["speed_constant", "cutting_speed", "diameter"], "conditions": [], "formula_text": "n = v·k_n/D", "text": "⟦cutting_speed⟧·⟦speed_constant⟧/⟦diameter⟧", "abbreviations": []}};
// relation speed_rule_ratio
numbers.relations.speed_rule_ratio = {value: function value({speed_constant}) {
  return (1/1000)*Math.PI*speed_constant;
}
, margins: function margins({speed_constant}) {
  return [];
}
, ...{"result": "speed_rule_ratio", "givens": ["speed_constant"], "conditions": [], "formula_text": "k_v = 0.001·π·k_n", "text": "0.001·π·⟦speed_constant⟧", "abbreviations": []}};
// relation feed_rate
numbers.relations.feed_rate = {value: function value({feed, spindle_speed}) {
  return feed*spindle_speed;
}
, margins: function margins({feed, spindle_speed}) {
  return [];
}
, ...{"result": "feed_rate", "givens": ["feed", "spindle_speed"], "conditions": [], "formula_text": "v_f = f·n", "text": "⟦feed⟧·⟦spindle_speed⟧", "abbreviations": []}};
// relation drilling_time
numbers.relations.drilling_time = {value: function value({shoulder_depth, point_height, approach, overrun, feed, spindle_speed}) {
  return (approach + overrun + point_height + shoulder_depth)/(feed*spindle_speed);
}
, margins: function margins({shoulder_depth, point_height, approach, overrun, feed, spindle_speed}) {
  return [];
}
, ...{"result": "drilling_time", "givens": ["shoulder_depth", "point_height", "approach", "overrun", "feed", "spindle_speed"], "conditions": [], "formula_text": "t_c = (a_1 + a_2 + h + d_s)/(f·n)", "text": "(⟦approach⟧ + ⟦overrun⟧ + ⟦point_height⟧ + ⟦shoulder_depth⟧)/(⟦feed⟧·⟦spindle_speed⟧)", "abbreviations": []}};
// relation lip_height_difference
numbers.relations.lip_height_difference = {value: function value({lip_length_difference, point_angle}) {
  return lip_length_difference*Math.cos((1/360)*Math.PI*point_angle);
}
, margins: function margins({lip_length_difference, point_angle}) {
  return [];
}
, ...{"result": "lip_height_difference", "givens": ["lip_length_difference", "point_angle"], "conditions": [], "formula_text": "h_Δ = L_Δ·cos κ", "text": "⟦lip_length_difference⟧·cos ⟦kappa⟧", "abbreviations": ["kappa"]}};
// relation point_offset
numbers.relations.point_offset = {value: function value({lip_height_difference, point_angle}) {
  return (1/2)*lip_height_difference*Math.tan((1/360)*Math.PI*point_angle);
}
, margins: function margins({lip_height_difference, point_angle}) {
  return [];
}
, ...{"result": "point_offset", "givens": ["lip_height_difference", "point_angle"], "conditions": [], "formula_text": "e = h_Δ·tan(κ)/2", "text": "⟦lip_height_difference⟧·tan(⟦kappa⟧)/2", "abbreviations": ["kappa"]}};
// relation offset_from_run_out
numbers.relations.offset_from_run_out = {value: function value({run_out}) {
  return (1/2)*run_out;
}
, margins: function margins({run_out}) {
  return [];
}
, ...{"result": "point_offset", "givens": ["run_out"], "conditions": [], "formula_text": "e = s_r/2", "text": "⟦run_out⟧/2", "abbreviations": []}};
// relation oversize
numbers.relations.oversize = {value: function value({point_offset}) {
  return 2*point_offset;
}
, margins: function margins({point_offset}) {
  return [];
}
, ...{"result": "oversize", "givens": ["point_offset"], "conditions": [], "formula_text": "D_Δ = 2·e", "text": "2·⟦point_offset⟧", "abbreviations": []}};
// relation largest_hole
numbers.relations.largest_hole = {value: function value({diameter, oversize}) {
  return diameter + oversize;
}
, margins: function margins({diameter, oversize}) {
  return [diameter - oversize];
}
, ...{"result": "largest_hole", "givens": ["diameter", "oversize"], "conditions": [{"says": "a hole {oversize} wider than the drill, {diameter}, needs a tip outside the drill; check the reading of the lip heights, or of the run-out", "allows_zero": false}], "formula_text": "D_h = D + D_Δ", "text": "⟦diameter⟧ + ⟦oversize⟧", "abbreviations": []}};
// relation lip_height_from_angles
numbers.relations.lip_height_from_angles = {value: function value({radius, half_angle_1, half_angle_2}) {
  const v0 = (1/180)*Math.PI;
  return radius*Math.abs(1/Math.tan(half_angle_2*v0) - 1/Math.tan(half_angle_1*v0));
}
, margins: function margins({radius, half_angle_1, half_angle_2}) {
  return [];
}
, ...{"result": "lip_height_difference", "givens": ["radius", "half_angle_1", "half_angle_2"], "conditions": [], "formula_text": "h_Δ = r·|cot κ_1 − cot κ_2|", "text": "⟦radius⟧·|cot ⟦half_angle_1⟧ − cot ⟦half_angle_2⟧|", "abbreviations": []}};
// relation idle_radius
numbers.relations.idle_radius = {value: function value({feed, half_angle_1, half_angle_2}) {
  const v0 = (1/180)*Math.PI;
  return (1/2)*feed/Math.abs(1/Math.tan(half_angle_2*v0) - 1/Math.tan(half_angle_1*v0));
}
, margins: function margins({feed, half_angle_1, half_angle_2}) {
  const v0 = (1/180)*Math.PI;
  return [Math.pow(half_angle_1*v0 - half_angle_2*v0, 2)];
}
, ...{"result": "idle_radius", "givens": ["feed", "half_angle_1", "half_angle_2"], "conditions": [{"says": "both half angles are {half_angle_1}: both lips cut at every radius, so there is no place where one stops", "allows_zero": false}], "formula_text": "r_i = f/(2·|cot κ_1 − cot κ_2|)", "text": "⟦feed⟧/(2·|cot ⟦half_angle_1⟧ − cot ⟦half_angle_2⟧|)", "abbreviations": []}};
// relation rolled_reading
numbers.relations.rolled_reading = {value: function value({point_angle, roll_angle}) {
  return 360*Math.atan(Math.cos((1/180)*Math.PI*roll_angle)*Math.tan((1/360)*Math.PI*point_angle))/Math.PI;
}
, margins: function margins({point_angle, roll_angle}) {
  return [];
}
, ...{"result": "rolled_reading", "givens": ["point_angle", "roll_angle"], "conditions": [], "formula_text": "A_ρ = 2·atan(cos ρ·tan κ)", "text": "2·atan(cos ⟦roll_angle⟧·tan ⟦kappa⟧)", "abbreviations": ["kappa"]}};
// relation chisel_ratio
numbers.relations.chisel_ratio = {value: function value({chisel_edge_length, diameter}) {
  return chisel_edge_length/diameter;
}
, margins: function margins({chisel_edge_length, diameter}) {
  return [];
}
, ...{"result": "chisel_ratio", "givens": ["chisel_edge_length", "diameter"], "conditions": [], "formula_text": "c = C/D", "text": "⟦chisel_edge_length⟧/⟦diameter⟧", "abbreviations": []}};
// relation torque_factor
numbers.relations.torque_factor = {value: function value({chisel_ratio}) {
  return (16/5)*Math.pow(chisel_ratio, 9/5) + (1 - Math.pow(chisel_ratio, 2))/Math.pow(chisel_ratio + 1, 1/5);
}
, margins: function margins({chisel_ratio}) {
  return [2/5 - chisel_ratio];
}
, ...{"result": "torque_factor", "givens": ["chisel_ratio"], "conditions": [{"says": "a chisel edge of {chisel_ratio} of the diameter is longer than any in the handbook's table, which ends at 0.4; a standard drill has 0.18, a split point 0.03", "allows_zero": true}], "formula_text": "A_M = 3.2·c^1.8 + (1 − c²)/(c + 1)^0.2", "text": "3.2·⟦chisel_ratio⟧^1.8 + (1 − ⟦chisel_ratio⟧²)/(⟦chisel_ratio⟧ + 1)^0.2", "abbreviations": []}};
// relation thrust_factor
numbers.relations.thrust_factor = {value: function value({chisel_ratio}) {
  return (11/5)*Math.pow(chisel_ratio, 4/5) + (1 - chisel_ratio)/Math.pow(chisel_ratio + 1, 1/5);
}
, margins: function margins({chisel_ratio}) {
  return [2/5 - chisel_ratio];
}
, ...{"result": "thrust_factor", "givens": ["chisel_ratio"], "conditions": [{"says": "a chisel edge of {chisel_ratio} of the diameter is longer than any in the handbook's table, which ends at 0.4; a standard drill has 0.18, a split point 0.03", "allows_zero": true}], "formula_text": "B_T = 2.2·c^0.8 + (1 − c)/(c + 1)^0.2", "text": "2.2·⟦chisel_ratio⟧^0.8 + (1 − ⟦chisel_ratio⟧)/(⟦chisel_ratio⟧ + 1)^0.2", "abbreviations": []}};
// relation chisel_thrust_factor
numbers.relations.chisel_thrust_factor = {value: function value({chisel_ratio}) {
  return Math.pow(chisel_ratio, 2);
}
, margins: function margins({chisel_ratio}) {
  return [2/5 - chisel_ratio];
}
, ...{"result": "chisel_thrust_factor", "givens": ["chisel_ratio"], "conditions": [{"says": "a chisel edge of {chisel_ratio} of the diameter is longer than any in the handbook's table, which ends at 0.4; a standard drill has 0.18, a split point 0.03", "allows_zero": true}], "formula_text": "J_T = c²", "text": "⟦chisel_ratio⟧²", "abbreviations": []}};
// relation reference_torque_factor
numbers.relations.reference_torque_factor = {value: function value({reference_chisel_ratio}) {
  return (16/5)*Math.pow(reference_chisel_ratio, 9/5) + (1 - Math.pow(reference_chisel_ratio, 2))/Math.pow(reference_chisel_ratio + 1, 1/5);
}
, margins: function margins({reference_chisel_ratio}) {
  return [2/5 - reference_chisel_ratio];
}
, ...{"result": "reference_torque_factor", "givens": ["reference_chisel_ratio"], "conditions": [{"says": "a chisel edge of {reference_chisel_ratio} of the diameter is longer than any in the handbook's table, which ends at 0.4; a standard drill has 0.18, a split point 0.03", "allows_zero": true}], "formula_text": "A_0 = 3.2·c_0^1.8 + (1 − c_0²)/(c_0 + 1)^0.2", "text": "3.2·⟦reference_chisel_ratio⟧^1.8 + (1 − ⟦reference_chisel_ratio⟧²)/(⟦reference_chisel_ratio⟧ + 1)^0.2", "abbreviations": []}};
// relation reference_thrust_factor
numbers.relations.reference_thrust_factor = {value: function value({reference_chisel_ratio}) {
  return (11/5)*Math.pow(reference_chisel_ratio, 4/5) + (1 - reference_chisel_ratio)/Math.pow(reference_chisel_ratio + 1, 1/5);
}
, margins: function margins({reference_chisel_ratio}) {
  return [2/5 - reference_chisel_ratio];
}
, ...{"result": "reference_thrust_factor", "givens": ["reference_chisel_ratio"], "conditions": [{"says": "a chisel edge of {reference_chisel_ratio} of the diameter is longer than any in the handbook's table, which ends at 0.4; a standard drill has 0.18, a split point 0.03", "allows_zero": true}], "formula_text": "B_0 = 2.2·c_0^0.8 + (1 − c_0)/(c_0 + 1)^0.2", "text": "2.2·⟦reference_chisel_ratio⟧^0.8 + (1 − ⟦reference_chisel_ratio⟧)/(⟦reference_chisel_ratio⟧ + 1)^0.2", "abbreviations": []}};
// relation reference_chisel_thrust_factor
numbers.relations.reference_chisel_thrust_factor = {value: function value({reference_chisel_ratio}) {
  return Math.pow(reference_chisel_ratio, 2);
}
, margins: function margins({reference_chisel_ratio}) {
  return [2/5 - reference_chisel_ratio];
}
, ...{"result": "reference_chisel_thrust_factor", "givens": ["reference_chisel_ratio"], "conditions": [{"says": "a chisel edge of {reference_chisel_ratio} of the diameter is longer than any in the handbook's table, which ends at 0.4; a standard drill has 0.18, a split point 0.03", "allows_zero": true}], "formula_text": "J_0 = c_0²", "text": "⟦reference_chisel_ratio⟧²", "abbreviations": []}};
// relation thrust
numbers.relations.thrust = {value: function value({diameter, feed, material_factor, tool_wear_factor, thrust_factor, chisel_thrust_factor}) {
  return material_factor*tool_wear_factor*((17237/2500000)*chisel_thrust_factor*Math.pow(diameter, 2) + (5029/100000)*thrust_factor*Math.pow(diameter*feed, 4/5));
}
, margins: function margins({diameter, feed, material_factor, tool_wear_factor, thrust_factor, chisel_thrust_factor}) {
  return [];
}
, ...{"result": "thrust", "givens": ["diameter", "feed", "material_factor", "tool_wear_factor", "thrust_factor", "chisel_thrust_factor"], "conditions": [], "formula_text": "T = K_d·k_w·(0.0068948·J_T·D² + 0.05029·B_T·(D·f)^0.8)", "text": "⟦material_factor⟧·⟦tool_wear_factor⟧·(0.0068948·⟦chisel_thrust_factor⟧·⟦diameter⟧² + 0.05029·⟦thrust_factor⟧·(⟦diameter⟧·⟦feed⟧)^0.8)", "abbreviations": []}};
// relation torque
numbers.relations.torque = {value: function value({diameter, feed, material_factor, tool_wear_factor, torque_factor}) {
  return (5029/200000000)*Math.pow(diameter, 9/5)*Math.pow(feed, 4/5)*material_factor*tool_wear_factor*torque_factor;
}
, margins: function margins({diameter, feed, material_factor, tool_wear_factor, torque_factor}) {
  return [];
}
, ...{"result": "torque", "givens": ["diameter", "feed", "material_factor", "tool_wear_factor", "torque_factor"], "conditions": [], "formula_text": "M = 0.000025145·D^1.8·f^0.8·K_d·k_w·A_M", "text": "0.000025145·⟦diameter⟧^1.8·⟦feed⟧^0.8·⟦material_factor⟧·⟦tool_wear_factor⟧·⟦torque_factor⟧", "abbreviations": []}};
// relation thrust_ratio
numbers.relations.thrust_ratio = {value: function value({diameter, feed, thrust_factor, chisel_thrust_factor, reference_thrust_factor, reference_chisel_thrust_factor}) {
  const v0 = (17237/2500000)*Math.pow(diameter, 2);
  const v1 = (5029/100000)*Math.pow(diameter*feed, 4/5);
  return (chisel_thrust_factor*v0 + thrust_factor*v1)/(reference_chisel_thrust_factor*v0 + reference_thrust_factor*v1);
}
, margins: function margins({diameter, feed, thrust_factor, chisel_thrust_factor, reference_thrust_factor, reference_chisel_thrust_factor}) {
  return [];
}
, ...{"result": "thrust_ratio", "givens": ["diameter", "feed", "thrust_factor", "chisel_thrust_factor", "reference_thrust_factor", "reference_chisel_thrust_factor"], "conditions": [], "formula_text": "q_T = (0.0068948·J_T·D² + 0.05029·B_T·(D·f)^0.8)/(0.0068948·D²·J_0 + 0.05029·B_0·(D·f)^0.8)", "text": "(0.0068948·⟦chisel_thrust_factor⟧·⟦diameter⟧² + 0.05029·⟦thrust_factor⟧·(⟦diameter⟧·⟦feed⟧)^0.8)/(0.0068948·⟦diameter⟧²·⟦reference_chisel_thrust_factor⟧ + 0.05029·⟦reference_thrust_factor⟧·(⟦diameter⟧·⟦feed⟧)^0.8)", "abbreviations": []}};
// relation torque_ratio
numbers.relations.torque_ratio = {value: function value({torque_factor, reference_torque_factor}) {
  return torque_factor/reference_torque_factor;
}
, margins: function margins({torque_factor, reference_torque_factor}) {
  return [];
}
, ...{"result": "torque_ratio", "givens": ["torque_factor", "reference_torque_factor"], "conditions": [], "formula_text": "q_M = A_M/A_0", "text": "⟦torque_factor⟧/⟦reference_torque_factor⟧", "abbreviations": []}};
// relation power
numbers.relations.power = {value: function value({torque, spindle_speed}) {
  return (1/30000)*Math.PI*spindle_speed*torque;
}
, margins: function margins({torque, spindle_speed}) {
  return [];
}
, ...{"result": "power", "givens": ["torque", "spindle_speed"], "conditions": [], "formula_text": "P = π·n·M/30000", "text": "π·⟦spindle_speed⟧·⟦torque⟧/30000", "abbreviations": []}};
// relation motor_power
numbers.relations.motor_power = {value: function value({power, efficiency}) {
  return power/efficiency;
}
, margins: function margins({power, efficiency}) {
  return [];
}
, ...{"result": "motor_power", "givens": ["power", "efficiency"], "conditions": [], "formula_text": "P_m = P/e_m", "text": "⟦power⟧/⟦efficiency⟧", "abbreviations": []}};
// relation chip_thickness
numbers.relations.chip_thickness = {value: function value({feed, point_angle}) {
  return (1/2)*feed*Math.sin((1/360)*Math.PI*point_angle);
}
, margins: function margins({feed, point_angle}) {
  return [];
}
, ...{"result": "chip_thickness", "givens": ["feed", "point_angle"], "conditions": [], "formula_text": "h_c = f·sin(κ)/2", "text": "⟦feed⟧·sin(⟦kappa⟧)/2", "abbreviations": ["kappa"]}};
// relation chip_width
numbers.relations.chip_width = {value: function value({diameter, point_angle, web, chisel_edge_angle}) {
  return ((1/2)*web/Math.tan((1/180)*Math.PI*chisel_edge_angle) + Math.sqrt((1/4)*Math.pow(diameter, 2) - 1/4*Math.pow(web, 2)))/Math.sin((1/360)*Math.PI*point_angle);
}
, margins: function margins({diameter, point_angle, web, chisel_edge_angle}) {
  const v0 = -web;
  return [diameter + v0, diameter*Math.sin((1/180)*Math.PI*chisel_edge_angle) + v0];
}
, ...{"result": "chip_width", "givens": ["diameter", "point_angle", "web", "chisel_edge_angle"], "conditions": [{"says": "web {web} is not thinner than the drill, diameter {diameter}; about an eighth of the diameter is usual", "allows_zero": false}, {"says": "a chisel edge at {chisel_edge_angle} across a web of {web} would reach past the drill, diameter {diameter}: no lip is left; use a thinner web or a chisel edge angle nearer 120° to 135°", "allows_zero": false}], "formula_text": "b_c = (√(R² − t²) − t·cot δ)/sin κ", "text": "(√(⟦R⟧² − ⟦t⟧²) − ⟦t⟧·cot ⟦delta⟧)/sin ⟦kappa⟧", "abbreviations": ["R", "t", "kappa", "delta"]}};
// relation specific_cutting_force
numbers.relations.specific_cutting_force = {value: function value({specific_force_at_1_mm, chip_thickness, chip_thickness_exponent}) {
  return Math.pow(chip_thickness, -chip_thickness_exponent)*specific_force_at_1_mm;
}
, margins: function margins({specific_force_at_1_mm, chip_thickness, chip_thickness_exponent}) {
  return [];
}
, ...{"result": "specific_cutting_force", "givens": ["specific_force_at_1_mm", "chip_thickness", "chip_thickness_exponent"], "conditions": [], "formula_text": "k_c = k_1/h_c^m_c", "text": "⟦specific_force_at_1_mm⟧/⟦chip_thickness⟧^⟦chip_thickness_exponent⟧", "abbreviations": []}};
// relation torque_specific_force
numbers.relations.torque_specific_force = {value: function value({specific_cutting_force, feed, diameter}) {
  return (1/8000)*Math.pow(diameter, 2)*feed*specific_cutting_force;
}
, margins: function margins({specific_cutting_force, feed, diameter}) {
  return [];
}
, ...{"result": "torque", "givens": ["specific_cutting_force", "feed", "diameter"], "conditions": [], "formula_text": "M = 0.000125·D²·f·k_c", "text": "0.000125·⟦diameter⟧²·⟦feed⟧·⟦specific_cutting_force⟧", "abbreviations": []}};
// relation stock_for_angle_change
numbers.relations.stock_for_angle_change = {value: function value({diameter, point_angle, new_point_angle}) {
  const v0 = (1/360)*Math.PI;
  return (1/2)*diameter*Math.abs(1/Math.tan(point_angle*v0) - 1/Math.tan(new_point_angle*v0));
}
, margins: function margins({diameter, point_angle, new_point_angle}) {
  return [];
}
, ...{"result": "stock", "givens": ["diameter", "point_angle", "new_point_angle"], "conditions": [], "formula_text": "Δ = R·|cot κ − cot κ′|", "text": "⟦R⟧·|cot ⟦kappa⟧ − cot ⟦kappa_new⟧|", "abbreviations": ["R", "kappa", "kappa_new"]}};
// relation stock_for_wear_land
numbers.relations.stock_for_wear_land = {value: function value({wear_land, lip_relief}) {
  return wear_land*Math.tan((1/180)*Math.PI*lip_relief);
}
, margins: function margins({wear_land, lip_relief}) {
  return [];
}
, ...{"result": "stock", "givens": ["wear_land", "lip_relief"], "conditions": [], "formula_text": "Δ = b·tan α_f", "text": "⟦wear_land⟧·tan ⟦lip_relief⟧", "abbreviations": []}};
// relation stock_for_worn_corner
numbers.relations.stock_for_worn_corner = {value: function value({worn_margin}) {
  return worn_margin;
}
, margins: function margins({worn_margin}) {
  return [];
}
, ...{"result": "stock", "givens": ["worn_margin"], "conditions": [], "formula_text": "Δ = m", "text": "⟦worn_margin⟧", "abbreviations": []}};
// relation stock_for_chip
numbers.relations.stock_for_chip = {value: function value({chip_depth, point_angle}) {
  return chip_depth/Math.sin((1/360)*Math.PI*point_angle);
}
, margins: function margins({chip_depth, point_angle}) {
  return [];
}
, ...{"result": "stock", "givens": ["chip_depth", "point_angle"], "conditions": [], "formula_text": "Δ = c_l/sin κ", "text": "⟦chip_depth⟧/sin ⟦kappa⟧", "abbreviations": ["kappa"]}};
// relation tip_stock
numbers.relations.tip_stock = {value: function value({corner_stock, diameter, point_angle, new_point_angle}) {
  const v0 = (1/360)*Math.PI;
  return corner_stock + (1/2)*diameter*(1/Math.tan(point_angle*v0) - 1/Math.tan(new_point_angle*v0));
}
, margins: function margins({corner_stock, diameter, point_angle, new_point_angle}) {
  const v0 = (1/360)*Math.PI;
  return [corner_stock + (1/2)*diameter*(1/Math.tan(point_angle*v0) - 1/Math.tan(new_point_angle*v0))];
}
, ...{"result": "tip_stock", "givens": ["corner_stock", "diameter", "point_angle", "new_point_angle"], "conditions": [{"says": "a sharper point of {new_point_angle} already takes more than {corner_stock} off the corners while the tip stays; nothing more has to come off the tip", "allows_zero": true}], "formula_text": "Δ_t = R·(cot κ − cot κ′) + Δ_c", "text": "⟦R⟧·(cot ⟦kappa⟧ − cot ⟦kappa_new⟧) + ⟦corner_stock⟧", "abbreviations": ["R", "kappa", "kappa_new"]}};
// relation regrinds_left
numbers.relations.regrinds_left = {value: function value({usable_length, stock}) {
  return usable_length/stock;
}
, margins: function margins({usable_length, stock}) {
  return [stock];
}
, ...{"result": "regrinds_left", "givens": ["usable_length", "stock"], "conditions": [{"says": "with a stock of {stock} nothing is ground off, so the drill would last for ever; give the stock of one regrind", "allows_zero": false}], "formula_text": "N = l_u/Δ", "text": "⟦usable_length⟧/⟦stock⟧", "abbreviations": []}};
// relation length_removed_by_regrinds
numbers.relations.length_removed_by_regrinds = {value: function value({regrinds, stock}) {
  return regrinds*stock;
}
, margins: function margins({regrinds, stock}) {
  return [];
}
, ...{"result": "length_removed", "givens": ["regrinds", "stock"], "conditions": [], "formula_text": "ΔL = i·Δ", "text": "⟦regrinds⟧·⟦stock⟧", "abbreviations": []}};
// relation length_until_thinning
numbers.relations.length_until_thinning = {value: function value({web_ratio_limit, diameter, web, web_taper}) {
  return (diameter*web_ratio_limit - web)/web_taper;
}
, margins: function margins({web_ratio_limit, diameter, web, web_taper}) {
  const v0 = -web;
  return [diameter + v0, diameter*web_ratio_limit + v0, web_taper];
}
, ...{"result": "length_removed", "givens": ["web_ratio_limit", "diameter", "web", "web_taper"], "conditions": [{"says": "web {web} is not thinner than the drill, diameter {diameter}; about an eighth of the diameter is usual", "allows_zero": false}, {"says": "the web, {web}, is already thicker than {web_ratio_limit} of the diameter, {diameter}: thin it now", "allows_zero": true}, {"says": "a web without taper, {web_taper}, never thickens; 0.014 mm for each millimetre is usual", "allows_zero": false}], "formula_text": "ΔL = (D·u_m − W)/τ", "text": "(⟦diameter⟧·⟦web_ratio_limit⟧ − ⟦web⟧)/⟦web_taper⟧", "abbreviations": []}};
// relation take_off_correction
numbers.relations.take_off_correction = {value: function value({stock, length_before, length_after}) {
  return length_after - length_before + stock;
}
, margins: function margins({stock, length_before, length_after}) {
  return [-length_after + length_before];
}
, ...{"result": "take_off_correction", "givens": ["stock", "length_before", "length_after"], "conditions": [{"says": "the drill is longer after grinding, {length_after}, than before, {length_before}; the two lengths are probably the wrong way round", "allows_zero": true}], "formula_text": "Δ_k = l_2 + Δ − l_1", "text": "⟦length_after⟧ + ⟦stock⟧ − ⟦length_before⟧", "abbreviations": []}};
