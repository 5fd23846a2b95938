// Written by `python -m drillpoint.editions` from the scenes in drillpoint/drawing. Do not edit.
const scenes = {};
// scene end_view
scenes.end_view = {coordinates: function coordinates({diameter, web_ratio, chisel_edge_angle}) {
  const v0 = Math.pow(web_ratio, 2);
  const v1 = 142*Math.sqrt(1 - v0);
  const v2 = v1 + 282;
  const v3 = 142*web_ratio;
  const v4 = v3 - 236;
  const v5 = Math.sqrt(5);
  const v6 = 1/4 - 1/4*v5;
  const v7 = (1/4)*Math.sqrt(2);
  const v8 = Math.sqrt(v7 + 1/2);
  const v9 = Math.sqrt(1/2 - v7);
  const v10 = Math.sqrt((1/8)*v5 + 5/8);
  const v11 = (4/3)/(v10*v9 + v6*v8);
  const v12 = v11*(v10*v8 - v6*v9) - v11;
  const v13 = v12*v3;
  const v14 = v1*v12;
  const v15 = Math.asin(web_ratio);
  const v16 = v15 + (9/20)*Math.PI;
  const v17 = Math.cos(v16);
  const v18 = 142*v17;
  const v19 = v12*v18;
  const v20 = Math.sin(v16);
  const v21 = 142*v20;
  const v22 = v21 + 282;
  const v23 = v12*v21;
  const v24 = v18 + 236;
  const v25 = 138.024*v20;
  const v26 = v25 + 282;
  const v27 = 138.024*v17;
  const v28 = v27 + 236;
  const v29 = 184.032*Math.tan((23/480)*Math.PI);
  const v30 = v17*v29;
  const v31 = v20*v29;
  const v32 = v15 + (31/120)*Math.PI;
  const v33 = Math.cos(v32);
  const v34 = v29*v33;
  const v35 = Math.sin(v32);
  const v36 = 138.024*v35;
  const v37 = v36 + 282;
  const v38 = v29*v35;
  const v39 = 138.024*v33;
  const v40 = v39 + 236;
  const v41 = v15 + (1/15)*Math.PI;
  const v42 = Math.cos(v41);
  const v43 = v29*v42;
  const v44 = Math.sin(v41);
  const v45 = 138.024*v44;
  const v46 = v45 + 282;
  const v47 = v29*v44;
  const v48 = 138.024*v42;
  const v49 = v48 + 236;
  const v50 = 65.32*Math.sqrt(1 - web_ratio);
  const v51 = v3 + 236;
  const v52 = Math.PI*chisel_edge_angle;
  const v53 = (1/180)*v52;
  const v54 = Math.tan(v53);
  const v55 = 1/v54;
  const v56 = v3*v55;
  const v57 = v56 + 282;
  const v58 = v56 - 282;
  const v59 = v18 - 236;
  const v60 = v27 - 236;
  const v61 = v36 - 282;
  const v62 = v39 - 236;
  const v63 = v45 - 282;
  const v64 = Math.sin(v53);
  const v65 = 4.0*v64;
  const v66 = Math.cos(v53);
  const v67 = 4.0*v66;
  const v68 = 31.0*v64;
  const v69 = 31.0*v66;
  const v70 = 236 - v3;
  const v71 = 80656*v0;
  const v72 = web_ratio/Math.sqrt(v71 + v71/Math.pow(v54, 2));
  const v73 = 5680.0*v72;
  const v74 = v55*v73;
  const v75 = 26.0*v64;
  const v76 = v57 - v75;
  const v77 = 26.0*v66;
  const v78 = v51 + v77;
  const v79 = v58 + v75;
  const v80 = v4 - 26.0*v66;
  const v81 = 738.4*v72;
  const v82 = 3124.0*v72;
  const v83 = v55*v82;
  const v84 = v76 + v83;
  const v85 = v55*v81;
  const v86 = v78 + v82;
  const v87 = -v81;
  const v88 = v70 + v77;
  const v89 = v79 + v83;
  const v90 = 284*web_ratio/v64;
  const v91 = 282 - v56;
  const v92 = Math.max(65.0, v90);
  const v93 = 60.0*v66 + v91;
  const v94 = 60.0*v64 + v70;
  const v95 = v53 - 0.0916666666666667;
  const v96 = Math.cos(v95);
  const v97 = 2.6*v96;
  const v98 = Math.sin(v95);
  const v99 = v93 + 11.0*v98;
  const v100 = 11.0*v96;
  const v101 = 2.6*v98;
  const v102 = (1/360)*v52;
  return [140, 236, 142, 424, v2, -v4, -v13 + v2, -v14 - v4, -v19 + v22, v23 + v24, v22, v24, v26, v28, v26 - v30, v28 + v31, v34 + v37, -v38 + v40, v37, v40, -v34 + v37, v38 + v40, v43 + v46, -v47 + v49, v46, v49, v45 + 306.14, v48 + 176.36, v50 + 282, v51, 282, v57, -v58, 282 - v1, -v1 + v13 + 282, v14 + v51, v19 - v21 + 282, -v23 - v59, 282 - v21, -v59, 282 - v25, -v60, -v25 + v30 + 282, -v31 - v60, -v34 - v61, v38 - v39 + 236, -v61, -v62, v34 - v36 + 282, -v38 - v62, -v43 - v63, v47 - v48 + 236, -v63, 236 - v48, 257.86 - v45, 295.64 - v48, 282 - v50, 128, 436, 82, 390, 278.000000000000, 94, 71.0000000000000, 378, 76, 223, 249, 78.6000000000000, 105.000000000000, 73.4000000000000, 367.000000000000, 242, v1 + 287, 463.000000000000, v56 + 287, 458, 198.0 - v3, v3 + 256.0, 455.400000000000, 225.0 - v3, 460.600000000000, v3 + 247.0, 467, 209 - v3, 228 - v3, v57 - v65, v51 + v67, v57 - v68, v51 + v69, -v58 - v65, v67 + v70, -v58 - v68, v69 + v70, v74 + v76, v73 + v78, -v74 - v79, -v73 - v80, v76, v78, v81 + v84, -v85 + v86, v84 + v87, v85 + v86, -v79, v88, -v81 - v89, -v82 + v85 + v88, -v87 - v89, -v80 - v82 - v85, -20.0*v66 - v79, -20.0*v64 - v80, 388.000000000000, 54.0000000000000, 403.000000000000, 410.000000000000, 42.0000000000000, 61.0000000000000, v66*v90 + v91, v66*v92 + v91, v64*v92 + v70, v91 + Math.max(65.0, v1 + v56), 342.0 - v56, 60.0000000000000, v93, v94, 343.582162242784 - v56, 247.191816771084 - v3, 338.403994171178 - v56, 246.71581737802 - v3, -v97 + v99, -v100 - v101 - v4 + 60.0*v64, v97 + v99, -v100 + v101 + v94, v91 + 60.0*Math.cos(v102), v70 + 60.0*Math.sin(v102), 415.000000000000, 400.000000000000, 421.000000000000, 440.000000000000, 180 - chisel_edge_angle, 284/diameter];
}
, ...{"name": "end_view", "title": "End view of a twist drill, seen from the tip", "width": 580, "height": 480, "allowed": [{"name": "web", "says": "web {web} leaves no chisel edge to draw; give a web above 0, for example 1.5", "low": 1e-06}, {"name": "chisel_edge_angle", "says": "with so little relief the flank would stand above its lip at the centre, rub, and never cut; give more relief", "low": 90.0}], "bar": {"x": 24.0, "y": 452.0, "longest": 127.8, "scale": 141}, "shapes": [{"style": "flute", "steps": ["M", 0, 1, "A", 2, 2, "0 0 1", 3, 1, "A", 2, 2, "0 0 1", 0, 1, "Z"]}, {"style": "swept", "steps": ["M", 0, 1, "A", 2, 2, "0 0 1", 3, 1, "A", 2, 2, "0 0 1", 0, 1, "Z"]}, {"style": "flank", "steps": ["M", 4, 5, "C", 6, 7, 8, 9, 10, 11, "L", 12, 13, "C", 14, 15, 16, 17, 18, 19, "C", 20, 21, 22, 23, 24, 25, "C", 26, 27, 28, 29, 30, 29, "L", 31, 29, "L", 32, 5, "L", 4, 5, "Z"]}, {"style": "edge", "steps": ["M", 4, 5, "C", 6, 7, 8, 9, 10, 11, "L", 12, 13, "C", 14, 15, 16, 17, 18, 19, "C", 20, 21, 22, 23, 24, 25, "C", 26, 27, 28, 29, 30, 29, "L", 31, 29]}, {"style": "flank", "steps": ["M", 33, 29, "C", 34, 35, 36, 37, 38, 39, "L", 40, 41, "C", 42, 43, 44, 45, 46, 47, "C", 48, 49, 50, 51, 52, 53, "C", 54, 55, 56, 5, 30, 5, "L", 32, 5, "L", 31, 29, "L", 33, 29, "Z"]}, {"style": "edge", "steps": ["M", 33, 29, "C", 34, 35, 36, 37, 38, 39, "L", 40, 41, "C", 42, 43, 44, 45, 46, 47, "C", 48, 49, 50, 51, 52, 53, "C", 54, 55, 56, 5, 30, 5, "L", 32, 5]}, {"style": "lip", "steps": ["M", 32, 5, "L", 4, 5]}, {"style": "lip", "steps": ["M", 31, 29, "L", 33, 29]}, {"style": "chisel", "steps": ["M", 32, 5, "L", 31, 29]}, {"style": "centre", "steps": ["M", 57, 1, "L", 58, 1]}, {"style": "centre", "steps": ["M", 30, 59, "L", 30, 60]}, {"style": "thin", "steps": ["M", 61, 62, "L", 63, 62]}, {"style": "thin", "steps": ["M", 61, 64, "L", 63, 64]}, {"style": "thin", "steps": ["M", 65, 62, "L", 65, 66]}, {"style": "thin", "steps": ["M", 65, 67, "L", 65, 64]}, {"style": "arrow", "steps": ["M", 65, 62, "L", 68, 69, 70, 69, "Z"]}, {"style": "arrow", "steps": ["M", 65, 64, "L", 70, 71, 68, 71, "Z"]}, {"style": "value", "x": 65, "y": 72, "anchor": "middle", "parts": "Ø{diameter}", "of": "diameter", "hidden": "Ø ?"}, {"style": "thin", "steps": ["M", 73, 5, "L", 74, 5]}, {"style": "thin", "steps": ["M", 75, 29, "L", 74, 29]}, {"style": "thin", "steps": ["M", 76, 77, "L", 76, 78]}, {"style": "arrow", "steps": ["M", 76, 5, "L", 79, 80, 81, 80, "Z"]}, {"style": "arrow", "steps": ["M", 76, 29, "L", 81, 82, 79, 82, "Z"]}, {"style": "term", "x": 83, "y": 84, "anchor": "start", "parts": "web"}, {"style": "value", "x": 83, "y": 85, "anchor": "start", "parts": "{web}", "of": "web", "hidden": "?"}, {"style": "thin", "steps": ["M", 86, 87, "L", 88, 89]}, {"style": "thin", "steps": ["M", 90, 91, "L", 92, 93]}, {"style": "thin", "steps": ["M", 94, 95, "L", 96, 97]}, {"style": "arrow", "steps": ["M", 98, 99, "L", 100, 101, 102, 103, "Z"]}, {"style": "arrow", "steps": ["M", 104, 105, "L", 106, 107, 108, 109, "Z"]}, {"style": "thin", "steps": ["M", 110, 111, "L", 112, 113, 114, 113]}, {"style": "term", "x": 115, "y": 116, "anchor": "start", "parts": "chisel edge"}, {"style": "value", "x": 115, "y": 117, "anchor": "start", "parts": "{chisel_edge_length}", "of": "chisel_edge_length", "hidden": "?"}, {"style": "thin", "steps": ["M", 118, 29, "L", 119, 120]}, {"style": "thin", "steps": ["M", 4, 5, "L", 121, 5]}, {"style": "thin", "steps": ["M", 122, 5, "A", 123, 123, "0 0 1", 124, 125]}, {"style": "arrow", "steps": ["M", 122, 5, "L", 126, 127, 128, 129, "Z"]}, {"style": "arrow", "steps": ["M", 124, 125, "L", 130, 131, 132, 133, "Z"]}, {"style": "thin", "steps": ["M", 134, 135, "L", 112, 136, 114, 136]}, {"style": "term", "x": 115, "y": 137, "anchor": "start", "parts": "chisel edge angle"}, {"style": "value", "x": 115, "y": 138, "anchor": "start", "parts": "{chisel_edge_angle}", "of": "chisel_edge_angle", "hidden": "?"}, {"style": "term", "x": 115, "y": 139, "anchor": "start", "parts": "(obtuse; {acute} acute)", "of": "chisel_edge_angle", "hidden": "(obtuse)"}], "words": [{"parts": "End view of a two-flute twist drill, seen from the tip. "}, {"parts": "Diameter {diameter}", "of": "diameter", "hidden": "Diameter not told"}, {"parts": ", web {web}", "of": "web", "hidden": ", web not told", "judged": "web_ratio", "low": 0.05, "high": 0.35, "below": ", a thin web for this diameter", "within": ", {web_ratio} of the diameter", "above": ", a thick web for this diameter"}, {"parts": ". The chisel edge is {chisel_edge_length} long", "of": "chisel_edge_length", "hidden": ". The chisel edge length is not told"}, {"parts": "; its angle to the lips is {chisel_edge_angle} (obtuse; {acute} acute), ", "of": "chisel_edge_angle", "hidden": "; its angle to the lips is not told.", "judged": "chisel_edge_angle", "low": 120.0, "high": 135.0, "below": "flatter than the usual 120° to 135°.", "within": "within the usual 120° to 135°.", "above": "steeper than the usual 120° to 135°."}], "numbers": [{"name": "acute", "place": 140, "like": "chisel_edge_angle"}]}};
// scene side_view
scenes.side_view = {coordinates: function coordinates({diameter, web_ratio, point_angle, chisel_edge_angle}) {
  const v0 = 1/Math.tan((1/180)*Math.PI*chisel_edge_angle);
  const v1 = v0*web_ratio;
  const v2 = 116*v1;
  const v3 = (1/360)*Math.PI*point_angle;
  const v4 = 1/Math.tan(v3);
  const v5 = 116*v4;
  const v6 = v1*v5;
  const v7 = v6 - 122;
  const v8 = Math.sqrt(1 - Math.pow(web_ratio, 2));
  const v9 = 116*v8;
  const v10 = v9 + 296;
  const v11 = v4*v9;
  const v12 = v11 + 122;
  const v13 = Math.asin(web_ratio);
  const v14 = Math.tan((1/4)*v13);
  const v15 = (464/3)*v14;
  const v16 = v15*web_ratio;
  const v17 = v4*v8;
  const v18 = v0*v5;
  const v19 = v5 + 122;
  const v20 = -v6;
  const v21 = Math.sqrt(3);
  const v22 = v13*v21;
  const v23 = 116*v22;
  const v24 = v12 + v23;
  const v25 = (1/3)*v21;
  const v26 = v25*(-v17 - v22 + 285/116);
  const v27 = (1/15)*Math.PI;
  const v28 = v13 + v27;
  const v29 = Math.sin(v28);
  const v30 = 0.972*v29;
  const v31 = Math.cos(v28);
  const v32 = 0.972*v31 + web_ratio;
  const v33 = -v32;
  const v34 = v0*v4;
  const v35 = v30*v4 + v33*v34;
  const v36 = v25*(-v17 + v35) + v27;
  const v37 = Math.max(0, Math.min(v26, Math.atan2(0.972*Math.sin(v36) + 1, 0.972*Math.cos(v36))));
  const v38 = (58/3)*v37;
  const v39 = (1/2)*v37;
  const v40 = v38*Math.sin(v39);
  const v41 = 116*Math.cos(v39);
  const v42 = v41 + 296;
  const v43 = v21*v37;
  const v44 = v38*Math.sin(v37);
  const v45 = 116*Math.cos(v37);
  const v46 = v45 + 296;
  const v47 = v24 + 116*v43;
  const v48 = -v37;
  const v49 = v36 + v48;
  const v50 = 112.752*Math.sin(v49);
  const v51 = Math.max(0, v26);
  const v52 = (1/2)*v51;
  const v53 = -v39;
  const v54 = v52 + v53;
  const v55 = 37.584*v54;
  const v56 = v55*Math.cos(v49);
  const v57 = (116/3)*v21;
  const v58 = -v54*v57;
  const v59 = v47 - v58;
  const v60 = v36 - v52 + v53;
  const v61 = v55*Math.cos(v60);
  const v62 = 112.752*Math.sin(v60);
  const v63 = v62 - 296;
  const v64 = 116*v21;
  const v65 = v54*v64;
  const v66 = v47 + v65;
  const v67 = v36 - v51;
  const v68 = v55*Math.cos(v67);
  const v69 = 112.752*Math.sin(v67);
  const v70 = v69 - 296;
  const v71 = v47 + v64*(v48 + v51);
  const v72 = v69 + 296;
  const v73 = v62 + 296;
  const v74 = v45 - 296;
  const v75 = v41 - 296;
  const v76 = v9 - 296;
  const v77 = Math.max(0, v25*(285/116 - v35));
  const v78 = -v13;
  const v79 = v78 + (13/30)*Math.PI;
  const v80 = v77 + v79;
  const v81 = 112.752*Math.cos(v80) + 296;
  const v82 = 112.752*v29;
  const v83 = v18*v33 + v4*v82 + 122;
  const v84 = 9.396*v77;
  const v85 = v21*v77;
  const v86 = (3/4)*v77 + v79;
  const v87 = v84*Math.sin(v86);
  const v88 = 112.752*Math.cos(v86) + 296;
  const v89 = (1/2)*v77 + v79;
  const v90 = v84*Math.sin(v89);
  const v91 = 112.752*Math.cos(v89) + 296;
  const v92 = (1/4)*v77 + v79;
  const v93 = v84*Math.sin(v92);
  const v94 = 112.752*Math.cos(v92) + 296;
  const v95 = v82 + 296;
  const v96 = 53.36*Math.sqrt(1 - web_ratio);
  const v97 = 232*v1*v4;
  const v98 = (29/3)*v51;
  const v99 = (1/4)*v51;
  const v100 = v98*Math.sin(v99);
  const v101 = 116*Math.cos(v99) + 296;
  const v102 = v21*v51;
  const v103 = v98*Math.sin(v52);
  const v104 = 116*Math.cos(v52) + 296;
  const v105 = (3/4)*v51;
  const v106 = v98*Math.sin(v105);
  const v107 = 116*Math.cos(v105) + 296;
  const v108 = 116*Math.cos(v51) + 296;
  const v109 = Math.sqrt(5);
  const v110 = 1/4 - 1/4*v109;
  const v111 = (1/4)*Math.sqrt(2);
  const v112 = Math.sqrt(v111 + 1/2);
  const v113 = Math.sqrt(1/2 - v111);
  const v114 = Math.sqrt((1/8)*v109 + 5/8);
  const v115 = (4/3)/(v110*v112 + v113*v114);
  const v116 = v115*(-v110*v113 + v112*v114) - v115;
  const v117 = v116*web_ratio;
  const v118 = v13 + (9/20)*Math.PI;
  const v119 = Math.cos(v118);
  const v120 = v116*v119;
  const v121 = Math.sin(v118);
  const v122 = 116*v121 + 296;
  const v123 = v119 + web_ratio;
  const v124 = -v123;
  const v125 = v121*v5 + v124*v18 + 122;
  const v126 = 112.752*v121;
  const v127 = v126 + 296;
  const v128 = 0.972*v119 + web_ratio;
  const v129 = Math.tan((23/480)*Math.PI);
  const v130 = v119*v129;
  const v131 = 1.296*v129;
  const v132 = v13 + (31/120)*Math.PI;
  const v133 = Math.cos(v132);
  const v134 = 150.336*v129;
  const v135 = v133*v134;
  const v136 = Math.sin(v132);
  const v137 = 112.752*v136;
  const v138 = v137 + 296;
  const v139 = 0.972*v136;
  const v140 = v131*v133;
  const v141 = v131*v136;
  const v142 = 0.972*v133 + web_ratio;
  const v143 = (1/20)*Math.PI;
  const v144 = Math.max(0, v13 - v143);
  const v145 = v143 + v144 + v78;
  const v146 = 116*Math.cos(v145) + 296;
  const v147 = v144*v21;
  const v148 = v125 + 116*v147;
  const v149 = Math.max(0, v25*(-v121*v4 - v124*v34 - v147 + 285/116));
  const v150 = (29/3)*v149;
  const v151 = v145 + (1/4)*v149;
  const v152 = v150*Math.sin(v151);
  const v153 = 116*Math.cos(v151) + 296;
  const v154 = v149*v21;
  const v155 = v145 + (1/2)*v149;
  const v156 = v150*Math.sin(v155);
  const v157 = 116*Math.cos(v155) + 296;
  const v158 = v145 + (3/4)*v149;
  const v159 = v150*Math.sin(v158);
  const v160 = 116*Math.cos(v158) + 296;
  const v161 = v145 + v149;
  const v162 = 116*Math.cos(v161) + 296;
  const v163 = (3/116)*v21;
  const v164 = Math.max(Math.cos(Math.max(0, -v163 + v26)), -0.972*Math.sin(v163 - v26 + v36));
  const v165 = 116*v164;
  const v166 = (232/3)*v164;
  const v167 = (116/3)*v164;
  const v168 = Math.sin(v3);
  const v169 = 4.0*v168;
  const v170 = Math.cos(v3);
  const v171 = 4.0*v170;
  const v172 = 71.0*v168;
  const v173 = 66.0*v168;
  const v174 = v173 - 296;
  const v175 = 66.0*v170 - 122;
  const v176 = v173 + 296;
  const v177 = v3 - 0.0833333333333333;
  const v178 = Math.sin(v177);
  const v179 = 2.6*v178;
  const v180 = Math.cos(v177);
  const v181 = 11.0*v180;
  const v182 = -v181;
  const v183 = v179 + v182;
  const v184 = 2.6*v180;
  const v185 = v175 + 11.0*v178;
  const v186 = 296 - v2;
  const v187 = 53.0*v170;
  const v188 = 53.0*v168;
  const v189 = v2 + v9;
  const v190 = v11 + v6;
  const v191 = Math.sqrt(Math.pow(v189, 2) + Math.pow(v190, 2));
  const v192 = 1/v191;
  const v193 = ((v191 > 34.0) ? (
   1
)
: (
   -1
));
  const v194 = 10.0*v193 - 10.0;
  const v195 = 48.0*v170;
  const v196 = v186 + v195;
  const v197 = 48.0*v168;
  const v198 = v197 + v7;
  const v199 = -v192*v194;
  const v200 = v10 + v195;
  const v201 = -v197;
  const v202 = v12 + v201;
  const v203 = v192*v193;
  const v204 = 2.6*v203;
  const v205 = v190*v204;
  const v206 = 11.0*v203;
  const v207 = v189*v206;
  const v208 = v196 + v207;
  const v209 = v189*v204;
  const v210 = v190*v206;
  const v211 = v209 - v210;
  const v212 = -v205;
  const v213 = v209 + v210;
  const v214 = v200 - v207;
  const v215 = 58*v4;
  const v216 = v1*v215 + 58.0*v168 - 58*v4*v8;
  return [v2 + 296, -v7, 296 - v2, v10, v12, v10 + v16, -v0*v15*v17 + v5*((4/3)*v14*web_ratio + v8) + 122, 412, v18*((4/3)*v14 - web_ratio) + v19, v19 + v20, v24, v21*v38 + v24, v40 + v42, v24 + (116/3)*v43, v42, v24 + 58*v43, -v40 + v42, v24 + (232/3)*v43, v44 + v46, v24 + (290/3)*v43, v46, v47, -v50 + v56 + 296, v59, -v61 - v63, v58 + v66, -v63, v66, v61 - v62 + 296, v59 + v65, -v68 - v70, v58 + v71, -v70, v71, v72, v68 + v72, -v61 + v73, v73, v61 + v73, v50 - v56 + 296, -v74, -v44 - v74, v40 - v41 + 296, -v75, -v40 - v75, 180, -v16 - v76, -v76, -116/3*v13*web_ratio - v76, v12 + (116/3)*v22, v12 + (232/3)*v22, v81, v64*v77 + v83, v81 + v84*Math.sin(v80), v83 + (319/3)*v85, -v87 + v88, v83 + (290/3)*v85, v88, v83 + 87*v85, v87 + v88, v83 + (232/3)*v85, -v90 + v91, v83 + (203/3)*v85, v91, v83 + 58*v85, v90 + v91, v83 + (145/3)*v85, -v93 + v94, v57*v77 + v83, v94, v83 + 29*v85, v93 + v94, v83 + (58/3)*v85, -v31*v84 + v95, v83 + (29/3)*v85, v95, v83, v82 + 315.72, v18*(0.42 - v32) + v5*(v30 + 0.17) + 122, v96 + 296, v4*v96 - v97 + 122, 296, 122 - v97, v21*v98 + v24, v100 + v101, (58/3)*v102 + v24, v101, 29*v102 + v24, -v100 + v101, v24 + v51*v57, v103 + v104, (145/3)*v102 + v24, v104, 58*v102 + v24, -v103 + v104, (203/3)*v102 + v24, v106 + v107, (232/3)*v102 + v24, v107, 87*v102 + v24, -v106 + v107, (290/3)*v102 + v24, v108 + v98*Math.sin(v51), (319/3)*v102 + v24, v108, v24 + v51*v64, 296 - v50, v10 - 116*v117, v0*v11*v116 + v5*(-v117 + v8) + 122, -116*v120 + v122, v18*(-v116*v121 - v123) + v5*(-v120 + v121) + 122, v122, v125, v127, v126*v4 - v128*v18 + 122, v127 - 150.336*v130, v18*(-v121*v131 - v128) + v5*(0.972*v121 - 1.296*v130) + 122, v135 + v138, v18*(v141 - v142) + v5*(v139 + v140) + 122, v138, v137*v4 - v142*v18 + 122, -v135 + v138, v18*(-v141 - v142) + v5*(v139 - v140) + 122, v134*v31 + v95, v18*(1.296*v129*v29 - v32) + v5*(v131*v31 + v30) + 122, v146, v148, v146 - v150*Math.sin(v145), v148 + v150*v21, v152 + v153, v148 + (58/3)*v154, v153, v148 + 29*v154, -v152 + v153, v148 + v149*v57, v156 + v157, v148 + (145/3)*v154, v157, v148 + 58*v154, -v156 + v157, v148 + (203/3)*v154, v159 + v160, v148 + (232/3)*v154, v160, v148 + 87*v154, -v159 + v160, v148 + (290/3)*v154, v150*Math.sin(v161) + v162, v148 + (319/3)*v154, v162, v148 + v149*v64, 296 - v165, 398, 296 - v166, 407, 296 - v167, v167 + 296, 389, v166 + 296, v165 + 296, 415, 480, 177, 122, 98, 296 - v169, 122 - v171, 296 - v172, 122 - 71.0*v170, v169 + 296, v172 + 296, -v174, -v175, 66.0000000000000, v176, -v174 - v183, -v184 - v185, -v173 + v179 + v181 + 296, v184 - v185, v176 - v179 + v182, v176 + v183, 27.0000000000000, 47.0000000000000, v171 + v186, -v169 - v7, v186 + v187, -v188 - v7, v10 + v171, v12 - v169, v10 + v187, v12 - v188, v189*v192*v194 + v196, v190*v192*v194 - v198, v189*v199 + v200, v190*v199 + v202, v196, -v198, v205 + v208, -v198 - v211, v208 + v212, v20 + v201 + v213 + 122, v200, v202, v212 + v214, v202 + v211, v205 + v214, -v197 - v213 + 116*v4*v8 + 122, -58*v1 + 58.0*v170 + 58*v8 + 300, 104 - v216, 123 - v216, 292.000000000000, 137.000000000000, 176.000000000000, v19, 142, 144.600000000000, 133.000000000000, 139.400000000000, v5 + 111.0, 133, v215 + 118, v215 + 137, v11 + v23 + 126.0, 451.000000000000, 446, 191.000000000000, 443.400000000000, 448.600000000000, 401.000000000000, 439, (1/2)*point_angle, 232/diameter];
}
, ...{"name": "side_view", "title": "Side view of a twist drill, square to the lips, tip upwards", "width": 580, "height": 480, "allowed": [{"name": "web", "says": "web {web} leaves no chisel edge to draw; give a web above 0, for example 1.5", "low": 1e-06}, {"name": "chisel_edge_angle", "says": "with so little relief the flank would stand above its lip at the centre, rub, and never cut; give more relief", "low": 90.0}], "bar": {"x": 24.0, "y": 452.0, "longest": 104.4, "scale": 231}, "shapes": [{"style": "land", "steps": ["M", 0, 1, "L", 2, 1, "L", 3, 4, "C", 5, 6, 7, 8, 7, 9, "L", 7, 10, "C", 7, 11, 12, 13, 14, 15, "C", 16, 17, 18, 19, 20, 21, "C", 22, 23, 24, 25, 26, 27, "C", 28, 29, 30, 31, 32, 33, "L", 34, 33, "C", 35, 31, 36, 29, 37, 27, "C", 38, 25, 39, 23, 40, 21, "C", 41, 19, 42, 17, 43, 15, "C", 44, 13, 45, 11, 45, 10, "L", 45, 9, "C", 45, 8, 46, 6, 47, 4, "Z"]}, {"style": "flute", "steps": ["M", 0, 1, "L", 47, 4, "C", 48, 49, 45, 50, 45, 10, "C", 45, 11, 44, 13, 43, 15, "C", 42, 17, 41, 19, 40, 21, "C", 39, 23, 38, 25, 37, 27, "C", 36, 29, 35, 31, 34, 33, "L", 51, 52, "C", 53, 54, 55, 56, 57, 58, "C", 59, 60, 61, 62, 63, 64, "C", 65, 66, 67, 68, 69, 70, "C", 71, 72, 73, 74, 75, 76, "C", 77, 78, 79, 80, 81, 82, "L", 0, 1, "Z"]}, {"style": "flute", "steps": ["M", 7, 10, "C", 7, 83, 84, 85, 86, 87, "C", 88, 89, 90, 91, 92, 93, "C", 94, 95, 96, 97, 98, 99, "C", 100, 101, 102, 103, 104, 105, "L", 32, 33, "C", 30, 31, 28, 29, 26, 27, "C", 24, 25, 22, 23, 106, 21, "C", 18, 19, 16, 17, 14, 15, "C", 12, 13, 7, 11, 7, 10, "Z"]}, {"style": "flank", "steps": ["M", 3, 4, "C", 107, 108, 109, 110, 111, 112, "L", 113, 114, "C", 115, 116, 117, 118, 119, 120, "C", 121, 122, 123, 124, 75, 76, "C", 77, 78, 79, 80, 81, 82, "L", 0, 1, "L", 2, 1, "Z"]}, {"style": "edge", "steps": ["M", 3, 4, "C", 107, 108, 109, 110, 111, 112, "L", 113, 114, "C", 115, 116, 117, 118, 119, 120, "C", 121, 122, 123, 124, 75, 76, "C", 77, 78, 79, 80, 81, 82, "L", 0, 1]}, {"style": "edge", "steps": ["M", 3, 4, "C", 5, 6, 7, 8, 7, 9, "L", 7, 10, "C", 7, 11, 12, 13, 14, 15, "C", 16, 17, 18, 19, 20, 21, "C", 22, 23, 24, 25, 26, 27, "C", 28, 29, 30, 31, 32, 33]}, {"style": "edge", "steps": ["M", 47, 4, "C", 46, 6, 45, 8, 45, 9, "L", 45, 10, "C", 45, 11, 44, 13, 43, 15, "C", 42, 17, 41, 19, 40, 21, "C", 39, 23, 38, 25, 37, 27, "C", 36, 29, 35, 31, 34, 33]}, {"style": "edge", "steps": ["M", 7, 10, "C", 7, 83, 84, 85, 86, 87, "C", 88, 89, 90, 91, 92, 93, "C", 94, 95, 96, 97, 98, 99, "C", 100, 101, 102, 103, 104, 105]}, {"style": "edge", "steps": ["M", 75, 76, "C", 73, 74, 71, 72, 69, 70, "C", 67, 68, 65, 66, 63, 64, "C", 61, 62, 59, 60, 57, 58, "C", 55, 56, 53, 54, 51, 52]}, {"style": "fine", "steps": ["M", 125, 126, "C", 127, 128, 129, 130, 131, 132, "C", 133, 134, 135, 136, 137, 138, "C", 139, 140, 141, 142, 143, 144, "C", 145, 146, 147, 148, 149, 150]}, {"style": "edge", "steps": ["M", 47, 4, "C", 48, 49, 45, 50, 45, 10]}, {"style": "cut", "steps": ["M", 151, 152, "C", 153, 154, 155, 154, 81, 152, "C", 156, 157, 158, 157, 159, 152, "L", 160, 152, 160, 161, 162, 161, 162, 152, "Z"]}, {"style": "fine", "steps": ["M", 151, 152, "C", 153, 154, 155, 154, 81, 152, "C", 156, 157, 158, 157, 159, 152]}, {"style": "thin", "steps": ["M", 2, 1, "L", 81, 163]}, {"style": "thin", "steps": ["M", 0, 1, "L", 81, 163]}, {"style": "lip", "steps": ["M", 2, 1, "L", 3, 4]}, {"style": "lip", "steps": ["M", 0, 1, "L", 47, 4]}, {"style": "chisel", "steps": ["M", 0, 1, "L", 2, 1]}, {"style": "centre", "steps": ["M", 81, 164, "L", 81, 7]}, {"style": "thin", "steps": ["M", 165, 166, "L", 167, 168]}, {"style": "thin", "steps": ["M", 169, 166, "L", 170, 168]}, {"style": "thin", "steps": ["M", 171, 172, "A", 173, 173, "0 0 1", 174, 172]}, {"style": "arrow", "steps": ["M", 171, 172, "L", 175, 176, 177, 178, "Z"]}, {"style": "arrow", "steps": ["M", 174, 172, "L", 179, 178, 180, 176, "Z"]}, {"style": "term", "x": 81, "y": 181, "anchor": "middle", "parts": "point angle"}, {"style": "value", "x": 81, "y": 182, "anchor": "middle", "parts": "{point_angle} (2 × {half_point_angle})", "of": "point_angle", "hidden": "?"}, {"style": "thin", "steps": ["M", 183, 184, "L", 185, 186]}, {"style": "thin", "steps": ["M", 187, 188, "L", 189, 190]}, {"style": "thin", "steps": ["M", 191, 192, "L", 193, 194]}, {"style": "arrow", "steps": ["M", 195, 196, "L", 197, 198, 199, 200, "Z"]}, {"style": "arrow", "steps": ["M", 201, 202, "L", 203, 204, 205, 206, "Z"]}, {"style": "term", "x": 207, "y": 208, "anchor": "start", "parts": "lip length"}, {"style": "value", "x": 207, "y": 209, "anchor": "start", "parts": "{lip_length}", "of": "lip_length", "hidden": "?"}, {"style": "thin", "steps": ["M", 210, 163, "L", 211, 163]}, {"style": "thin", "steps": ["M", 212, 213, "L", 211, 213]}, {"style": "thin", "steps": ["M", 214, 163, "L", 214, 213]}, {"style": "arrow", "steps": ["M", 214, 163, "L", 215, 216, 217, 216, "Z"]}, {"style": "arrow", "steps": ["M", 214, 213, "L", 217, 218, 215, 218, "Z"]}, {"style": "term", "x": 219, "y": 220, "anchor": "end", "parts": "point height"}, {"style": "value", "x": 219, "y": 221, "anchor": "end", "parts": "{point_height}", "of": "point_height", "hidden": "?"}, {"style": "thin", "steps": ["M", 45, 222, "L", 45, 223]}, {"style": "arrow", "steps": ["M", 45, 224, "L", 225, 226, 225, 227, "Z"]}, {"style": "thin", "steps": ["M", 7, 222, "L", 7, 223]}, {"style": "arrow", "steps": ["M", 7, 224, "L", 228, 227, 228, 226, "Z"]}, {"style": "thin", "steps": ["M", 45, 224, "L", 7, 224]}, {"style": "value", "x": 81, "y": 229, "anchor": "middle", "parts": "Ø{diameter}", "of": "diameter", "hidden": "Ø ?"}], "words": [{"parts": "Side view of a two-flute twist drill, square to the lips, tip upwards. "}, {"parts": "Diameter {diameter}", "of": "diameter", "hidden": "Diameter not told"}, {"parts": ", point angle {point_angle} ({half_point_angle} each side), ", "of": "point_angle", "hidden": ", point angle not told", "judged": "point_angle", "low": 117.5, "high": 118.5, "below": "sharper than the usual 118°", "within": "the usual point", "above": "blunter than the usual 118°"}, {"parts": ". Each lip is {lip_length} long", "of": "lip_length", "hidden": ". The lip length is not told"}, {"parts": "; the point is {point_height} high.", "of": "point_height", "hidden": "; the point height is not told."}], "numbers": [{"name": "half_point_angle", "place": 230, "like": "point_angle"}]}};
// scene hole
scenes.hole = {coordinates: function coordinates({diameter, point_angle, shoulder_depth, depth_to_point}) {
  const v0 = 1/diameter;
  const v1 = Math.min(124*v0, 244/depth_to_point);
  const v2 = diameter*v1;
  const v3 = (1/2)*v2;
  const v4 = v3 - 264;
  const v5 = shoulder_depth*v1;
  const v6 = v5 + 106;
  const v7 = depth_to_point*v1;
  const v8 = v7 + 106;
  const v9 = v3 + 304;
  const v10 = v3 + 344;
  const v11 = v7 + 22;
  const v12 = 5.0*v11/Math.sqrt(Math.pow(v11, 2));
  const v13 = (1/2)*v7;
  const v14 = 0.833333333333333*v7;
  const v15 = v7 + 128;
  const v16 = 0.333333333333333*v2;
  const v17 = -v2 - 80;
  const v18 = 5.0*v17/Math.sqrt(Math.pow(v17, 2));
  const v19 = -v11;
  const v20 = 5.0*v19/Math.sqrt(Math.pow(v19, 2));
  const v21 = -v3;
  const v22 = ((v2 - 34.0 > 0) ? (
   1
)
: (
   -1
));
  const v23 = 10.0*v22;
  const v24 = 11.0*v22;
  const v25 = v21 + 304;
  const v26 = 2.6*v22;
  const v27 = ((v2 < v2 - 168) ? (
   1
)
: (
   -1
));
  const v28 = v21 + 220;
  const v29 = v3 - 220;
  const v30 = ((v5 > 34.0) ? (
   1
)
: (
   -1
));
  const v31 = 10.0*v30;
  const v32 = 2.6*v30;
  const v33 = 11.0*v30;
  const v34 = ((v2 < v2 - 116) ? (
   1
)
: (
   -1
));
  const v35 = v21 + 246;
  const v36 = ((v2 < -116) ? (
   1
)
: (
   -1
));
  const v37 = v3 - 246;
  const v38 = ((v5 - v7 < -34.0) ? (
   1
)
: (
   -1
));
  const v39 = 10.0*v38;
  const v40 = v7 + 116.0;
  const v41 = 2.6*v38;
  const v42 = 11.0*v38;
  const v43 = (1/2)*v5;
  const v44 = v43 + 106;
  const v45 = v13 + v44;
  const v46 = Math.max(v45, v43 + 152.0);
  const v47 = ((v2 < v2 + 120) ? (
   1
)
: (
   -1
));
  const v48 = v3 + 364;
  const v49 = ((v2 > -120) ? (
   1
)
: (
   -1
));
  const v50 = ((v7 > 34.0) ? (
   1
)
: (
   -1
));
  const v51 = 10.0*v50;
  const v52 = 2.6*v50;
  const v53 = 11.0*v50;
  const v54 = (1/360)*Math.PI*point_angle;
  const v55 = Math.sin(v54);
  const v56 = 4.0*v55;
  const v57 = Math.cos(v54);
  const v58 = 57.0*v55;
  const v59 = 52.0*v55;
  const v60 = v59 + 304;
  const v61 = 52.0*v57 + v8;
  const v62 = v59 - 304;
  const v63 = v54 - 0.105769230769231;
  const v64 = Math.sin(v63);
  const v65 = 2.6*v64;
  const v66 = Math.cos(v63);
  const v67 = 11.0*v66;
  const v68 = -v67;
  const v69 = v60 + v68;
  const v70 = 2.6*v66;
  const v71 = v61 + 11.0*v64;
  return [-v4, 106, 304 - v3, v6, 304, v8, v9, v10, v10 - v12, 0.166666666666667*v7 + 109.666666666667, 0.333333333333333*v7 + 113.333333333333, v13 + 117, v10 + v12, 0.666666666666667*v7 + 120.666666666667, v14 + 124.333333333333, v15, v16 + 330.666666666667, v15 + v18, 0.166666666666667*v2 + 317.333333333333, 290.666666666667 - 0.166666666666667*v2, v15 - v18, 277.333333333333 - v16, -v20 - v4, v14 + 124.333333333333, 0.666666666666667*v7 + 120.666666666667, v20 + v21 + 264, 0.333333333333333*v7 + 113.333333333333, 0.166666666666667*v7 + 109.666666666667, 104, 50, 46, v7 + 122, 31.0000000000000, v21 + v23 + 294.0, 36, -v23 + v3 + 314.0, v24 + v25, 36.0 - v26, v26 + 36.0, -v24 + v9, 27, v25 + 4*v27, 5.0*v27 + v28, -v29, v31 + 96.0, -v31 + v5 + 116.0, v28 + v32, v33 + 106, -v29 - v32, -v33 + v6, v25 + 4*v34, 5.0*v34 + v35, 4*v36 + 304, v35 + 5.0*v36, -v37, v39 + v5 + 96.0, -v39 + v40, v35 + v41, v42 + v6, -v37 - v41, -v42 + v8, v44, 207.0 - v3, 192.0 - v3, 185.0 - v3, v43 + 94, v43 + 113, v45, 233.0 - v3, v46, 218.0 - v3, 211.0 - v3, v46 - 12, v46 + 7, 4*v47 + v9, 5.0*v47 + v48, 4*v49 + 304, v48 + 5.0*v49, v48, v51 + 96.0, v40 - v51, v48 + v52, v53 + 106, v48 - v52, -v53 + v8, v13 + 106, v3 + 377.0, v3 + 392.0, v3 + 399.0, v13 + 94, v13 + 113, 304 - v56, 4.0*v57 + v8, 304 - v58, 57.0*v57 + v8, v56 + 304, v58 + 304, v60, v61, 52.0000000000000, -v62, v65 + v69, v70 + v71, -v65 + v69, -v70 + v71, -v59 + v65 + v67 + 304, -v62 - v65 - v68, v7 + 177.0, v7 + 197.0, (1/2)*point_angle, shoulder_depth*v0, v1];
}
, ...{"name": "hole", "title": "A blind hole, cut open along its axis", "width": 580, "height": 480, "allowed": [{"name": "shoulder_depth", "says": "at full diameter the hole is {shoulder_depth} deep: only the point is in the work; draw that as a spot, or give a deeper hole, for example 25", "low": 0.001}], "bar": {"x": 24.0, "y": 456.0, "longest": 110.0, "scale": 111}, "shapes": [{"style": "section", "steps": ["M", 0, 1, "L", 2, 1, 2, 3, 4, 5, 6, 3, 6, 1, 7, 1, "C", 8, 9, 8, 10, 7, 11, "C", 12, 13, 12, 14, 7, 15, "C", 16, 17, 18, 17, 4, 15, "C", 19, 20, 21, 20, 0, 15, "C", 22, 23, 22, 24, 0, 11, "C", 25, 26, 25, 27, 0, 1, "Z"]}, {"style": "fine", "steps": ["M", 7, 1, "C", 8, 9, 8, 10, 7, 11, "C", 12, 13, 12, 14, 7, 15, "C", 16, 17, 18, 17, 4, 15, "C", 19, 20, 21, 20, 0, 15, "C", 22, 23, 22, 24, 0, 11, "C", 25, 26, 25, 27, 0, 1]}, {"style": "edge", "steps": ["M", 0, 1, "L", 2, 1, 2, 3, 4, 5, 6, 3, 6, 1, 7, 1]}, {"style": "edge", "steps": ["M", 2, 1, "L", 6, 1]}, {"style": "edge", "steps": ["M", 2, 3, "L", 6, 3]}, {"style": "swept", "steps": ["M", 2, 28, "L", 2, 29]}, {"style": "swept", "steps": ["M", 6, 28, "L", 6, 29]}, {"style": "centre", "steps": ["M", 4, 30, "L", 4, 31]}, {"style": "thin", "steps": ["M", 2, 30, "L", 2, 32]}, {"style": "thin", "steps": ["M", 6, 30, "L", 6, 32]}, {"style": "thin", "steps": ["M", 33, 34, "L", 35, 34]}, {"style": "arrow", "steps": ["M", 2, 34, "L", 36, 37, 36, 38, "Z"]}, {"style": "arrow", "steps": ["M", 6, 34, "L", 39, 38, 39, 37, "Z"]}, {"style": "value", "x": 4, "y": 40, "anchor": "middle", "parts": "Ø{diameter}", "of": "diameter", "hidden": "Ø ?"}, {"style": "thin", "steps": ["M", 41, 1, "L", 42, 1]}, {"style": "thin", "steps": ["M", 41, 3, "L", 42, 3]}, {"style": "thin", "steps": ["M", 43, 44, "L", 43, 45]}, {"style": "arrow", "steps": ["M", 43, 1, "L", 46, 47, 48, 47, "Z"]}, {"style": "arrow", "steps": ["M", 43, 3, "L", 48, 49, 46, 49, "Z"]}, {"style": "thin", "steps": ["M", 50, 3, "L", 51, 3]}, {"style": "thin", "steps": ["M", 52, 5, "L", 53, 5]}, {"style": "thin", "steps": ["M", 54, 55, "L", 54, 56]}, {"style": "arrow", "steps": ["M", 54, 3, "L", 57, 58, 59, 58, "Z"]}, {"style": "arrow", "steps": ["M", 54, 5, "L", 59, 60, 57, 60, "Z"]}, {"style": "thin", "steps": ["M", 43, 61, "L", 62, 61, 63, 61]}, {"style": "term", "x": 64, "y": 65, "anchor": "end", "parts": "full diameter"}, {"style": "value", "x": 64, "y": 66, "anchor": "end", "parts": "{shoulder_depth}", "of": "shoulder_depth", "hidden": "?"}, {"style": "thin", "steps": ["M", 54, 67, "L", 68, 69, 70, 69]}, {"style": "term", "x": 71, "y": 72, "anchor": "end", "parts": "point height"}, {"style": "value", "x": 71, "y": 73, "anchor": "end", "parts": "{point_height}", "of": "point_height", "hidden": "?"}, {"style": "thin", "steps": ["M", 74, 1, "L", 75, 1]}, {"style": "thin", "steps": ["M", 76, 5, "L", 77, 5]}, {"style": "thin", "steps": ["M", 78, 79, "L", 78, 80]}, {"style": "arrow", "steps": ["M", 78, 1, "L", 81, 82, 83, 82, "Z"]}, {"style": "arrow", "steps": ["M", 78, 5, "L", 83, 84, 81, 84, "Z"]}, {"style": "thin", "steps": ["M", 78, 85, "L", 86, 85, 87, 85]}, {"style": "term", "x": 88, "y": 89, "anchor": "start", "parts": "to the point"}, {"style": "value", "x": 88, "y": 90, "anchor": "start", "parts": "{depth_to_point}", "of": "depth_to_point", "hidden": "?"}, {"style": "thin", "steps": ["M", 91, 92, "L", 93, 94]}, {"style": "thin", "steps": ["M", 95, 92, "L", 96, 94]}, {"style": "thin", "steps": ["M", 97, 98, "A", 99, 99, "0 0 1", 100, 98]}, {"style": "arrow", "steps": ["M", 97, 98, "L", 101, 102, 103, 104, "Z"]}, {"style": "arrow", "steps": ["M", 100, 98, "L", 105, 104, 106, 102, "Z"]}, {"style": "term", "x": 4, "y": 107, "anchor": "middle", "parts": "point angle"}, {"style": "value", "x": 4, "y": 108, "anchor": "middle", "parts": "{point_angle} (2 × {half_point_angle})", "of": "point_angle", "hidden": "?"}], "words": [{"parts": "A blind hole, cut open along its axis. "}, {"parts": "Drill diameter {diameter}", "of": "diameter", "hidden": "Drill diameter not told"}, {"parts": ", point angle {point_angle}, ", "of": "point_angle", "hidden": ", point angle not told", "judged": "point_angle", "low": 117.5, "high": 118.5, "below": "sharper than the usual 118°", "within": "the usual point", "above": "blunter than the usual 118°"}, {"parts": ". The full diameter goes {shoulder_depth} deep, to the shoulder: ", "of": "shoulder_depth", "hidden": ". The full-diameter depth is not told", "judged": "diameters_deep", "high": 4.0, "within": "{diameters_deep} times the diameter", "above": "{diameters_deep} times the diameter, so deep that the chips have to be cleared on the way"}, {"parts": "; the point takes {point_height} more", "of": "point_height", "hidden": "; the point height is not told"}, {"parts": ", so the tip stands {depth_to_point} below the face.", "of": "depth_to_point", "hidden": ". How deep the tip stands is not told."}], "numbers": [{"name": "half_point_angle", "place": 109, "like": "point_angle"}, {"name": "diameters_deep", "place": 110, "like": "sheet_cover"}]}};
// scene spot
scenes.spot = {coordinates: function coordinates({mouth_diameter, countersink_angle, spot_depth}) {
  const v0 = Math.min(230/mouth_diameter, 226/spot_depth);
  const v1 = mouth_diameter*v0;
  const v2 = (1/2)*v1;
  const v3 = v2 - 206;
  const v4 = v2 - 252;
  const v5 = spot_depth*v0;
  const v6 = v5 + 112;
  const v7 = v2 + 252;
  const v8 = v2 + 298;
  const v9 = v5 + 24;
  const v10 = 5.0*v9/Math.sqrt(Math.pow(v9, 2));
  const v11 = (1/2)*v5;
  const v12 = v5 + 136;
  const v13 = 0.333333333333333*v1;
  const v14 = -v1 - 92;
  const v15 = 5.0*v14/Math.sqrt(Math.pow(v14, 2));
  const v16 = -v9;
  const v17 = 5.0*v16/Math.sqrt(Math.pow(v16, 2));
  const v18 = -v2;
  const v19 = (1/360)*Math.PI*countersink_angle;
  const v20 = Math.sin(v19);
  const v21 = 34.0*v20;
  const v22 = Math.cos(v19);
  const v23 = ((v1 - 34.0 > 0) ? (
   1
)
: (
   -1
));
  const v24 = 10.0*v23;
  const v25 = 11.0*v23;
  const v26 = 2.6*v23;
  const v27 = ((v1 < v1 + 132) ? (
   1
)
: (
   -1
));
  const v28 = v2 + 318;
  const v29 = ((v1 > -132) ? (
   1
)
: (
   -1
));
  const v30 = ((v5 > 34.0) ? (
   1
)
: (
   -1
));
  const v31 = 10.0*v30;
  const v32 = 2.6*v30;
  const v33 = 11.0*v30;
  const v34 = 4.0*v20;
  const v35 = 59.0*v20;
  const v36 = 54.0*v20;
  const v37 = v36 + 252;
  const v38 = 54.0*v22 + v6;
  const v39 = v36 - 252;
  const v40 = v19 - 0.101851851851852;
  const v41 = Math.sin(v40);
  const v42 = 2.6*v41;
  const v43 = Math.cos(v40);
  const v44 = 11.0*v43;
  const v45 = -v44;
  const v46 = v37 + v45;
  const v47 = 2.6*v43;
  const v48 = v38 + 11.0*v41;
  return [-v3, 112, -v4, 252, v6, v7, v8, -v10 + v8, 0.166666666666667*v5 + 116.0, 0.333333333333333*v5 + 120.0, v11 + 124, v10 + v8, 0.666666666666667*v5 + 128.0, 0.833333333333333*v5 + 132.0, v12, v13 + 282.666666666667, v12 + v15, 0.166666666666667*v1 + 267.333333333333, 236.666666666667 - 0.166666666666667*v1, v12 - v15, 221.333333333333 - v13, -v17 - v3, 0.666666666666667*v5 + 128.0, v17 + v18 + 206, 0.333333333333333*v5 + 120.0, 0.166666666666667*v5 + 116.0, -v21 - v4, 112 - 34.0*v22, v21 + v7, 62, v5 + 130, 108, 41.0000000000000, v18 + v24 + 242.0, 46, v2 - v24 + 262.0, v18 + v25 + 252, 46.0 - v26, v26 + 46.0, -v25 + v7, 19, 38, 4*v27 + v7, 5.0*v27 + v28, 4*v29 + 252, v28 + 5.0*v29, v28, v31 + 102.0, -v31 + v5 + 122.0, v28 + v32, v33 + 112, v28 - v32, -v33 + v6, v11 + 112, v2 + 331.0, v2 + 346.0, v2 + 353.0, v11 + 100, v11 + 119, 252 - v34, 4.0*v22 + v6, 252 - v35, 59.0*v22 + v6, v34 + 252, v35 + 252, v37, v38, 54.0000000000000, -v39, v42 + v46, v47 + v48, -v42 + v46, -v47 + v48, -v36 + v42 + v44 + 252, -v39 - v42 - v45, v5 + 185.0, v5 + 205.0, (1/2)*countersink_angle, (1/2)*mouth_diameter, v0];
}
, ...{"name": "spot", "title": "A spot or countersink, cut open along its axis", "width": 580, "height": 480, "allowed": [{"name": "mouth_diameter", "says": "a mouth of {mouth_diameter} is nothing to draw; for example 11", "low": 0.001}], "bar": {"x": 24.0, "y": 456.0, "longest": 110.0, "scale": 79}, "shapes": [{"style": "section", "steps": ["M", 0, 1, "L", 2, 1, 3, 4, 5, 1, 6, 1, "C", 7, 8, 7, 9, 6, 10, "C", 11, 12, 11, 13, 6, 14, "C", 15, 16, 17, 16, 3, 14, "C", 18, 19, 20, 19, 0, 14, "C", 21, 13, 21, 22, 0, 10, "C", 23, 24, 23, 25, 0, 1, "Z"]}, {"style": "fine", "steps": ["M", 6, 1, "C", 7, 8, 7, 9, 6, 10, "C", 11, 12, 11, 13, 6, 14, "C", 15, 16, 17, 16, 3, 14, "C", 18, 19, 20, 19, 0, 14, "C", 21, 13, 21, 22, 0, 10, "C", 23, 24, 23, 25, 0, 1]}, {"style": "edge", "steps": ["M", 0, 1, "L", 2, 1, 3, 4, 5, 1, 6, 1]}, {"style": "edge", "steps": ["M", 2, 1, "L", 5, 1]}, {"style": "swept", "steps": ["M", 2, 1, "L", 26, 27]}, {"style": "swept", "steps": ["M", 5, 1, "L", 28, 27]}, {"style": "centre", "steps": ["M", 3, 29, "L", 3, 30]}, {"style": "thin", "steps": ["M", 2, 31, "L", 2, 32]}, {"style": "thin", "steps": ["M", 5, 31, "L", 5, 32]}, {"style": "thin", "steps": ["M", 33, 34, "L", 35, 34]}, {"style": "arrow", "steps": ["M", 2, 34, "L", 36, 37, 36, 38, "Z"]}, {"style": "arrow", "steps": ["M", 5, 34, "L", 39, 38, 39, 37, "Z"]}, {"style": "term", "x": 3, "y": 40, "anchor": "middle", "parts": "mouth"}, {"style": "value", "x": 3, "y": 41, "anchor": "middle", "parts": "Ø{mouth_diameter}", "of": "mouth_diameter", "hidden": "Ø ?"}, {"style": "thin", "steps": ["M", 42, 1, "L", 43, 1]}, {"style": "thin", "steps": ["M", 44, 4, "L", 45, 4]}, {"style": "thin", "steps": ["M", 46, 47, "L", 46, 48]}, {"style": "arrow", "steps": ["M", 46, 1, "L", 49, 50, 51, 50, "Z"]}, {"style": "arrow", "steps": ["M", 46, 4, "L", 51, 52, 49, 52, "Z"]}, {"style": "thin", "steps": ["M", 46, 53, "L", 54, 53, 55, 53]}, {"style": "term", "x": 56, "y": 57, "anchor": "start", "parts": "depth"}, {"style": "value", "x": 56, "y": 58, "anchor": "start", "parts": "{spot_depth}", "of": "spot_depth", "hidden": "?"}, {"style": "thin", "steps": ["M", 59, 60, "L", 61, 62]}, {"style": "thin", "steps": ["M", 63, 60, "L", 64, 62]}, {"style": "thin", "steps": ["M", 65, 66, "A", 67, 67, "0 0 1", 68, 66]}, {"style": "arrow", "steps": ["M", 65, 66, "L", 69, 70, 71, 72, "Z"]}, {"style": "arrow", "steps": ["M", 68, 66, "L", 73, 72, 74, 70, "Z"]}, {"style": "term", "x": 3, "y": 75, "anchor": "middle", "parts": "included angle"}, {"style": "value", "x": 3, "y": 76, "anchor": "middle", "parts": "{countersink_angle} (2 × {half_angle})", "of": "countersink_angle", "hidden": "?"}], "words": [{"parts": "A spot or countersink, cut open along its axis. "}, {"parts": "Its mouth is {mouth_diameter} across", "of": "mouth_diameter", "hidden": "Its mouth is not told"}, {"parts": ", its included angle {countersink_angle}", "of": "countersink_angle", "hidden": ", nor its included angle"}, {"parts": ". The tip stands {spot_depth} below the face: ", "of": "spot_depth", "hidden": ". How deep the tip stands is not told.", "judged": "countersink_angle", "low": 89.95, "high": 90.05, "below": "the rule “half the mouth” ({half_mouth}) holds only at 90° and would be too little.", "within": "half the mouth, which holds only at 90°.", "above": "the rule “half the mouth” ({half_mouth}) holds only at 90° and would be too much."}], "numbers": [{"name": "half_angle", "place": 77, "like": "countersink_angle"}, {"name": "half_mouth", "place": 78, "like": "spot_depth"}]}};
// scene breakthrough
scenes.breakthrough = {coordinates: function coordinates({diameter, point_angle, sheet_thickness}) {
  const v0 = 1/diameter;
  const v1 = Math.tan((1/360)*Math.PI*point_angle);
  const v2 = 1/v1;
  const v3 = (1/2)*v2;
  const v4 = diameter*v3;
  const v5 = Math.min(124*v0, 244/(v4 + Math.max(sheet_thickness, v4)));
  const v6 = diameter*v5;
  const v7 = (1/2)*v6;
  const v8 = v7 - 252;
  const v9 = sheet_thickness*v5;
  const v10 = v3*v6;
  const v11 = v10 - 388;
  const v12 = v11 + v9;
  const v13 = -v12;
  const v14 = v7*Math.min(1, 2*sheet_thickness*v0*v1);
  const v15 = v2*v6;
  const v16 = 388 - v15;
  const v17 = Math.pow(Math.pow(v5, 2), -1/2);
  const v18 = v17*v9*Math.min(5.0, (1/5)*v9)/Math.abs(sheet_thickness);
  const v19 = -v7;
  const v20 = v19 + 252;
  const v21 = (1/2)*v9;
  const v22 = v7 + 344;
  const v23 = 0.333333333333333*v6;
  const v24 = 5.0*v17*v6/Math.abs(diameter);
  const v25 = v7 + 298;
  const v26 = ((v6 - 34.0 > 0) ? (
   1
)
: (
   -1
));
  const v27 = 10.0*v26;
  const v28 = 11.0*v26;
  const v29 = v19 + 298;
  const v30 = 2.6*v26;
  const v31 = ((v6 < v6 - 84) ? (
   1
)
: (
   -1
));
  const v32 = v19 + 210;
  const v33 = v7 - 210;
  const v34 = ((v9 > 34.0) ? (
   1
)
: (
   -1
));
  const v35 = 10.0*v34;
  const v36 = v10 + v9;
  const v37 = v36 - 378.0;
  const v38 = 2.6*v34;
  const v39 = 11.0*v34;
  const v40 = ((v6 < v6 - 124) ? (
   1
)
: (
   -1
));
  const v41 = v19 + 236;
  const v42 = ((v6 < -124) ? (
   1
)
: (
   -1
));
  const v43 = v7 - 236;
  const v44 = -v10;
  const v45 = ((v15 > 68.0) ? (
   1
)
: (
   -1
));
  const v46 = 10.0*v45;
  const v47 = 2.6*v45;
  const v48 = 11.0*v45;
  const v49 = v10 + v21;
  const v50 = (1/4)*v15;
  const v51 = v50 - 388;
  const v52 = -v51;
  const v53 = Math.max(v52, 434.0 - v49);
  const v54 = ((v6 < v6 + 40) ? (
   1
)
: (
   -1
));
  const v55 = v7 + 364;
  const v56 = ((v6 > -132) ? (
   1
)
: (
   -1
));
  const v57 = ((v36 > 34.0) ? (
   1
)
: (
   -1
));
  const v58 = 10.0*v57;
  const v59 = 2.6*v57;
  const v60 = 11.0*v57;
  const v61 = v21 + v50;
  return [-v8, v13, 298 - v14, Math.max(v13, v16), 298, -v11, v18 + v20, -v11 - 0.166666666666667*v9, -v11 - 0.333333333333333*v9, -v11 - v21, -v18 - v8, -v11 - 0.666666666666667*v9, -v11 - 0.833333333333333*v9, v22, v14 + 298, -v18 + v22, v18 + v22, 298 - v7, 62, 298 - v23, v24 + 62, 298 - 0.166666666666667*v6, 0.166666666666667*v6 + 298, 62 - v24, v23 + 298, v25, v16, 388, 52, 402, v7 + 320, 96.5000000000000, 102, v7 + 317.4, 91.0000000000000, v7 + 322.6, 58, 31.0000000000000, v19 + v27 + 288.0, 36, -v27 + v7 + 308.0, v28 + v29, 36.0 - v30, v30 + 36.0, v25 - v28, 27, v20 + 4*v31, 5.0*v31 + v32, -v33, v35 - v37, -v10 - v35 + 398.0, v32 + v38, -v12 + v39, -v33 - v38, -v11 - v39, v29 + 4*v40, 5.0*v40 + v41, 4*v42 + 298, v41 + 5.0*v42, -v43, v44 + v46 + 378.0, 398.0 - v46, v41 + v47, v44 + v48 + 388, -v43 - v47, 388 - v48, 197.0 - v7, 182.0 - v7, 175.0 - v7, 376 - v49, 395 - v49, v52, 223.0 - v7, v53, 208.0 - v7, 201.0 - v7, v53 - 12, v53 + 7, v22 + 4*v54, 5.0*v54 + v55, 4*v56 + 298, v55 + 5.0*v56, v55, -v37 + v58, 398.0 - v58, v55 + v59, -v12 + v60, v55 - v59, 388 - v60, -v21 - v51, v7 + 377.0, v7 + 392.0, v7 + 399.0, 376 - v61, 395 - v61, v5];
}
, ...{"name": "breakthrough", "title": "A drill coming through a plate, cut open along its axis", "width": 580, "height": 480, "bar": {"x": 24.0, "y": 456.0, "longest": 110.0, "scale": 95}, "shapes": [{"style": "section", "steps": ["M", 0, 1, "L", 2, 1, 2, 3, 4, 5, 0, 5, "C", 6, 7, 6, 8, 0, 9, "C", 10, 11, 10, 12, 0, 1, "Z"]}, {"style": "fine", "steps": ["M", 0, 5, "C", 6, 7, 6, 8, 0, 9, "C", 10, 11, 10, 12, 0, 1]}, {"style": "edge", "steps": ["M", 0, 1, "L", 2, 1, 2, 3, 4, 5, 0, 5]}, {"style": "section", "steps": ["M", 13, 1, "L", 14, 1, 14, 3, 4, 5, 13, 5, "C", 15, 7, 15, 8, 13, 9, "C", 16, 11, 16, 12, 13, 1, "Z"]}, {"style": "fine", "steps": ["M", 13, 5, "C", 15, 7, 15, 8, 13, 9, "C", 16, 11, 16, 12, 13, 1]}, {"style": "edge", "steps": ["M", 13, 1, "L", 14, 1, 14, 3, 4, 5, 13, 5]}, {"style": "land", "steps": ["M", 17, 18, "C", 19, 20, 21, 20, 4, 18, "C", 22, 23, 24, 23, 25, 18, "L", 25, 26, 4, 5, 17, 26, "Z"]}, {"style": "fine", "steps": ["M", 17, 18, "C", 19, 20, 21, 20, 4, 18, "C", 22, 23, 24, 23, 25, 18]}, {"style": "edge", "steps": ["M", 25, 18, "L", 25, 26]}, {"style": "edge", "steps": ["M", 17, 18, "L", 17, 26]}, {"style": "edge", "steps": ["M", 17, 26, "L", 25, 26]}, {"style": "lip", "steps": ["M", 25, 26, "L", 4, 5, 17, 26]}, {"style": "swept", "steps": ["M", 17, 3, "L", 17, 5, 4, 27, 25, 5, 25, 3]}, {"style": "swept", "steps": ["M", 17, 5, "L", 25, 5]}, {"style": "centre", "steps": ["M", 4, 28, "L", 4, 29]}, {"style": "motion", "steps": ["M", 30, 18, "L", 30, 31]}, {"style": "arrow", "steps": ["M", 30, 32, "L", 33, 34, 35, 34, "Z"]}, {"style": "thin", "steps": ["M", 17, 36, "L", 17, 37]}, {"style": "thin", "steps": ["M", 25, 36, "L", 25, 37]}, {"style": "thin", "steps": ["M", 38, 39, "L", 40, 39]}, {"style": "arrow", "steps": ["M", 17, 39, "L", 41, 42, 41, 43, "Z"]}, {"style": "arrow", "steps": ["M", 25, 39, "L", 44, 43, 44, 42, "Z"]}, {"style": "value", "x": 4, "y": 45, "anchor": "middle", "parts": "Ø{diameter}", "of": "diameter", "hidden": "Ø ?"}, {"style": "thin", "steps": ["M", 46, 1, "L", 47, 1]}, {"style": "thin", "steps": ["M", 46, 5, "L", 47, 5]}, {"style": "thin", "steps": ["M", 48, 49, "L", 48, 50]}, {"style": "arrow", "steps": ["M", 48, 1, "L", 51, 52, 53, 52, "Z"]}, {"style": "arrow", "steps": ["M", 48, 5, "L", 53, 54, 51, 54, "Z"]}, {"style": "thin", "steps": ["M", 55, 5, "L", 56, 5]}, {"style": "thin", "steps": ["M", 57, 27, "L", 58, 27]}, {"style": "thin", "steps": ["M", 59, 60, "L", 59, 61]}, {"style": "arrow", "steps": ["M", 59, 5, "L", 62, 63, 64, 63, "Z"]}, {"style": "arrow", "steps": ["M", 59, 27, "L", 64, 65, 62, 65, "Z"]}, {"style": "thin", "steps": ["M", 48, 9, "L", 66, 9, 67, 9]}, {"style": "term", "x": 68, "y": 69, "anchor": "end", "parts": "thickness"}, {"style": "value", "x": 68, "y": 70, "anchor": "end", "parts": "{sheet_thickness}", "of": "sheet_thickness", "hidden": "?"}, {"style": "thin", "steps": ["M", 59, 71, "L", 72, 73, 74, 73]}, {"style": "term", "x": 75, "y": 76, "anchor": "end", "parts": "point height"}, {"style": "value", "x": 75, "y": 77, "anchor": "end", "parts": "{point_height}", "of": "point_height", "hidden": "?"}, {"style": "thin", "steps": ["M", 78, 1, "L", 79, 1]}, {"style": "thin", "steps": ["M", 80, 27, "L", 81, 27]}, {"style": "thin", "steps": ["M", 82, 83, "L", 82, 84]}, {"style": "arrow", "steps": ["M", 82, 1, "L", 85, 86, 87, 86, "Z"]}, {"style": "arrow", "steps": ["M", 82, 27, "L", 87, 88, 85, 88, "Z"]}, {"style": "thin", "steps": ["M", 82, 89, "L", 90, 89, 91, 89]}, {"style": "term", "x": 92, "y": 93, "anchor": "start", "parts": "travel until out"}, {"style": "value", "x": 92, "y": 94, "anchor": "start", "parts": "{travel_through}", "of": "travel_through", "hidden": "?"}], "words": [{"parts": "A drill coming through a plate, cut open along its axis, as the tip comes out. "}, {"parts": "Drill diameter {diameter}", "of": "diameter", "hidden": "Drill diameter not told"}, {"parts": ", point angle {point_angle}", "of": "point_angle", "hidden": ", point angle not told"}, {"parts": ". The plate is {sheet_thickness} thick", "of": "sheet_thickness", "hidden": ". The thickness is not told"}, {"parts": ", the point {point_height} high", "of": "point_height", "hidden": ", nor the point height"}, {"parts": ": thickness over point height {sheet_cover}, ", "of": "sheet_cover", "judged": "sheet_cover", "low": 1.0, "high": 1000000000.0, "below": "so the tip is out before the corners are in, and nothing guides the drill: it may grab; clamp the work on a backing piece", "within": "so the corners are in before the tip comes out"}, {"parts": ". From first touch the drill goes {travel_through} until its corners are out (double chain line).", "of": "travel_through", "hidden": ". How far the drill goes until its corners are out is not told."}]}};
// scene unequal_lips
scenes.unequal_lips = {coordinates: function coordinates({diameter, point_angle, lip_height_difference, point_offset, oversize}) {
  const v0 = (1/2)*diameter;
  const v1 = point_offset + v0;
  const v2 = (1/360)*Math.PI*point_angle;
  const v3 = Math.tan(v2);
  const v4 = Math.min(176*v3/v1, 176/(diameter + 2*point_offset));
  const v5 = v1*v4;
  const v6 = v5 - 260;
  const v7 = 1/v3;
  const v8 = v5*v7;
  const v9 = v5 + 294;
  const v10 = v5 + 328;
  const v11 = v8 + 68;
  const v12 = 5.0*v11/Math.sqrt(Math.pow(v11, 2));
  const v13 = (1/2)*v8;
  const v14 = 0.666666666666667*v5;
  const v15 = 2*v5;
  const v16 = -v15 - 68;
  const v17 = 5.0*v16/Math.sqrt(Math.pow(v16, 2));
  const v18 = -v11;
  const v19 = 5.0*v18/Math.sqrt(Math.pow(v18, 2));
  const v20 = -v5;
  const v21 = -point_offset + v0;
  const v22 = v21*v4;
  const v23 = v22 + v5;
  const v24 = 5.0*v23/Math.sqrt(Math.pow(v23, 2));
  const v25 = (1/2)*v22;
  const v26 = -v25;
  const v27 = (1/2)*v5;
  const v28 = v27 + 294;
  const v29 = v22*v7;
  const v30 = v29 - 338;
  const v31 = point_offset*v4;
  const v32 = v31 + 294;
  const v33 = -v22;
  const v34 = ((v23 - 34.0 > 0) ? (
   1
)
: (
   -1
));
  const v35 = 10.0*v34;
  const v36 = v5 + 304.0;
  const v37 = 11.0*v34;
  const v38 = v33 + 294;
  const v39 = 2.6*v34;
  const v40 = ((v31 - 34.0 > 0) ? (
   1
)
: (
   -1
));
  const v41 = 10.0*v40;
  const v42 = 11.0*v40;
  const v43 = 2.6*v40;
  const v44 = ((v8 > -86) ? (
   1
)
: (
   -1
));
  const v45 = -v8;
  const v46 = v45 + 338;
  const v47 = ((v15 - 34.0 > 0) ? (
   1
)
: (
   -1
));
  const v48 = 10.0*v47;
  const v49 = 11.0*v47;
  const v50 = 2.6*v47;
  const v51 = v5 + 58;
  const v52 = ((v5 < -v51) ? (
   1
)
: (
   -1
));
  const v53 = v20 + 236;
  const v54 = ((v5 < v22 - 58) ? (
   1
)
: (
   -1
));
  const v55 = v5 - 236;
  const v56 = ((v29 + v45 < -34.0) ? (
   1
)
: (
   -1
));
  const v57 = 10.0*v56;
  const v58 = 2.6*v56;
  const v59 = 11.0*v56;
  const v60 = v25*v7;
  const v61 = v13 - 338;
  const v62 = v13 + v60;
  const v63 = -v27 - 46;
  const v64 = v63/Math.sqrt(Math.pow(v63, 2));
  const v65 = 2.6*v64;
  const v66 = v25 - 294;
  const v67 = v60 - 338;
  const v68 = -v67;
  const v69 = Math.max(v68, 367.0 - v62);
  const v70 = v26 + v51;
  const v71 = -v67 - v69;
  const v72 = Math.pow(Math.pow(v70, 2) + Math.pow(v71, 2), -1/2);
  const v73 = v71*v72;
  const v74 = 2.6*v73;
  const v75 = v70*v72;
  const v76 = v66 + 11.0*v75;
  const v77 = 2.6*v75;
  const v78 = v67 + 11.0*v73;
  const v79 = 1/Math.sin(v2);
  const v80 = 2*lip_height_difference;
  return [-v6, 292 - v8, 294 - v5, 338 - v8, 294, 338, v9, v10, v10 - v12, 303.333333333333 - 0.833333333333333*v8, 314.666666666667 - 0.666666666666667*v8, 326 - v13, v10 + v12, 337.333333333333 - 0.333333333333333*v8, 348.666666666667 - 0.166666666666667*v8, 360, v14 + 316.666666666667, v17 + 360, 0.333333333333333*v5 + 305.333333333333, 282.666666666667 - 0.333333333333333*v5, 360 - v17, 271.333333333333 - v14, -v19 - v6, 348.666666666667 - 0.166666666666667*v8, 337.333333333333 - 0.333333333333333*v8, v19 + v20 + 260, 314.666666666667 - 0.666666666666667*v8, 294 - v22, 62, -0.833333333333333*v22 + 0.166666666666667*v5 + 294, v24 + 62, -0.666666666666667*v22 + 0.333333333333333*v5 + 294, v26 + v28, -0.333333333333333*v22 + 0.666666666666667*v5 + 294, 62 - v24, -0.166666666666667*v22 + 0.833333333333333*v5 + 294, -v30, 54, 394, v32, 58, 33.0000000000000, v33 + v35 + 284.0, 38, -v35 + v36, v37 + v38, 38.0 - v39, v39 + 38.0, -v37 + v9, 29, 372, 391.000000000000, v41 + 284.0, 386, v31 - v41 + 304.0, v42 + 294, 386.0 - v43, v43 + 386.0, v32 - v42, v5 + 307.0, v5 + 322.0, v5 + 329.0, 374, 393, 4*v44 + v46, 5.0*v44 + 424, v20 + v48 + 284.0, 424, v36 - v48, v20 + v49 + 294, 424.0 - v50, v50 + 424.0, -v49 + v9, 444, 463, 4*v52 + v9, 5.0*v52 + v53, v38 + 4*v54, v53 + 5.0*v54, -v55, v45 + v57 + 328.0, -v29 - v57 + 348.0, v53 + v58, v46 + v59, -v55 - v58, -v30 - v59, -v60 - v61, 223.0 - v5, 315.0 - v62, 208.0 - v5, 201.0 - v5, 303.0 - v62, 322.0 - v62, v28, -v61, v5 + 340, v5 + 355.0, v28 - 11.0*v64, -v13 + v65 + 338, -v61 - v65, v5 + 362.0, 345 - v13, -v66, v68, v69, 221.0 - v5, -v74 - v76, v77 - v78, v74 - v76, -v77 - v78, 214.0 - v5, v69 - 12, v69 + 7, 84, 274 - v5, 259.0 - v5, 252.0 - v5, 72, v5 + 314, v5 + 336.0, v1*v79, v21*v79, lip_height_difference/diameter, v80, -oversize + v80, v4];
}
, ...{"name": "unequal_lips", "title": "A drill with lips of unequal height in its hole, square to the lips", "width": 580, "height": 480, "bar": {"x": 24.0, "y": 456.0, "longest": 90.0, "scale": 125}, "shapes": [{"style": "section", "steps": ["M", 0, 1, "L", 2, 1, 2, 3, 4, 5, 6, 3, 6, 1, 7, 1, "C", 8, 9, 8, 10, 7, 11, "C", 12, 13, 12, 14, 7, 15, "C", 16, 17, 18, 17, 4, 15, "C", 19, 20, 21, 20, 0, 15, "C", 22, 23, 22, 24, 0, 11, "C", 25, 26, 25, 9, 0, 1, "Z"]}, {"style": "fine", "steps": ["M", 7, 1, "C", 8, 9, 8, 10, 7, 11, "C", 12, 13, 12, 14, 7, 15, "C", 16, 17, 18, 17, 4, 15, "C", 19, 20, 21, 20, 0, 15, "C", 22, 23, 22, 24, 0, 11, "C", 25, 26, 25, 9, 0, 1]}, {"style": "edge", "steps": ["M", 0, 1, "L", 2, 1, 2, 3, 4, 5, 6, 3, 6, 1, 7, 1]}, {"style": "edge", "steps": ["M", 2, 1, "L", 6, 1]}, {"style": "edge", "steps": ["M", 2, 3, "L", 6, 3]}, {"style": "land", "steps": ["M", 27, 28, "C", 29, 30, 31, 30, 32, 28, "C", 33, 34, 35, 34, 6, 28, "L", 6, 3, 4, 5, 27, 36, "Z"]}, {"style": "fine", "steps": ["M", 27, 28, "C", 29, 30, 31, 30, 32, 28, "C", 33, 34, 35, 34, 6, 28]}, {"style": "edge", "steps": ["M", 6, 28, "L", 6, 3]}, {"style": "edge", "steps": ["M", 27, 28, "L", 27, 36]}, {"style": "lip", "steps": ["M", 4, 5, "L", 6, 3]}, {"style": "lip", "steps": ["M", 4, 5, "L", 27, 36]}, {"style": "centre", "steps": ["M", 4, 37, "L", 4, 38]}, {"style": "centre", "steps": ["M", 39, 37, "L", 39, 38]}, {"style": "thin", "steps": ["M", 27, 40, "L", 27, 41]}, {"style": "thin", "steps": ["M", 6, 40, "L", 6, 41]}, {"style": "thin", "steps": ["M", 42, 43, "L", 44, 43]}, {"style": "arrow", "steps": ["M", 27, 43, "L", 45, 46, 45, 47, "Z"]}, {"style": "arrow", "steps": ["M", 6, 43, "L", 48, 47, 48, 46, "Z"]}, {"style": "value", "x": 39, "y": 49, "anchor": "middle", "parts": "drill Ø{diameter}", "of": "diameter", "hidden": "drill Ø ?"}, {"style": "thin", "steps": ["M", 4, 50, "L", 4, 51]}, {"style": "thin", "steps": ["M", 39, 50, "L", 39, 51]}, {"style": "thin", "steps": ["M", 52, 53, "L", 54, 53]}, {"style": "arrow", "steps": ["M", 4, 53, "L", 55, 56, 55, 57, "Z"]}, {"style": "arrow", "steps": ["M", 39, 53, "L", 58, 57, 58, 56, "Z"]}, {"style": "thin", "steps": ["M", 6, 53, "L", 59, 53, 60, 53]}, {"style": "term", "x": 61, "y": 62, "anchor": "start", "parts": "tip off the axis"}, {"style": "value", "x": 61, "y": 63, "anchor": "start", "parts": "{point_offset}", "of": "point_offset", "hidden": "?"}, {"style": "thin", "steps": ["M", 39, 53, "L", 6, 53]}, {"style": "thin", "steps": ["M", 2, 64, "L", 2, 65]}, {"style": "thin", "steps": ["M", 6, 64, "L", 6, 65]}, {"style": "thin", "steps": ["M", 66, 67, "L", 68, 67]}, {"style": "arrow", "steps": ["M", 2, 67, "L", 69, 70, 69, 71, "Z"]}, {"style": "arrow", "steps": ["M", 6, 67, "L", 72, 71, 72, 70, "Z"]}, {"style": "value", "x": 4, "y": 73, "anchor": "middle", "parts": "hole at most Ø{largest_hole}", "of": "largest_hole", "hidden": "hole Ø ?"}, {"style": "term", "x": 4, "y": 74, "anchor": "middle", "parts": "at most {oversize} wider", "of": "oversize", "hidden": "how much wider?"}, {"style": "thin", "steps": ["M", 75, 3, "L", 76, 3]}, {"style": "thin", "steps": ["M", 77, 36, "L", 78, 36]}, {"style": "thin", "steps": ["M", 79, 80, "L", 79, 81]}, {"style": "arrow", "steps": ["M", 79, 3, "L", 82, 83, 84, 83, "Z"]}, {"style": "arrow", "steps": ["M", 79, 36, "L", 84, 85, 82, 85, "Z"]}, {"style": "thin", "steps": ["M", 79, 86, "L", 87, 88, 89, 88]}, {"style": "term", "x": 90, "y": 91, "anchor": "end", "parts": "lips differ by"}, {"style": "value", "x": 90, "y": 92, "anchor": "end", "parts": "{lip_height_difference}", "of": "lip_height_difference", "hidden": "?"}, {"style": "thin", "steps": ["M", 93, 94, "L", 95, 94, 96, 94]}, {"style": "arrow", "steps": ["M", 93, 94, "L", 97, 98, 97, 99, "Z"]}, {"style": "term", "x": 100, "y": 11, "anchor": "start", "parts": "longer lip"}, {"style": "value", "x": 100, "y": 101, "anchor": "start", "parts": "{longer_lip}", "of": "point_offset", "hidden": "?"}, {"style": "thin", "steps": ["M", 102, 103, "L", 79, 104, 105, 104]}, {"style": "arrow", "steps": ["M", 102, 103, "L", 106, 107, 108, 109, "Z"]}, {"style": "term", "x": 110, "y": 111, "anchor": "end", "parts": "shorter lip"}, {"style": "value", "x": 110, "y": 112, "anchor": "end", "parts": "{shorter_lip}", "of": "point_offset", "hidden": "?"}, {"style": "thin", "steps": ["M", 4, 113, "L", 114, 113, 115, 113]}, {"style": "term", "x": 116, "y": 117, "anchor": "end", "parts": "axis of the hole"}, {"style": "thin", "steps": ["M", 39, 113, "L", 118, 113, 61, 113]}, {"style": "term", "x": 119, "y": 117, "anchor": "start", "parts": "axis of the drill"}], "words": [{"parts": "A drill with lips of unequal height in its hole, square to the lips, in true proportions. "}, {"parts": "Drill diameter {diameter}", "of": "diameter", "hidden": "Drill diameter not told"}, {"parts": ", point angle {point_angle}", "of": "point_angle", "hidden": ", point angle not told"}, {"parts": ". One lip stands {lip_height_difference} ahead of the other", "of": "lip_height_difference", "hidden": ". The difference of the lip heights is not told", "judged": "difference_share", "low": 0.015, "high": 1000000000.0, "below": " (too little to see well here; give a larger one to see what it does)"}, {"parts": ". So the tip lies {point_offset} beside the drill axis; the lips are {longer_lip} and {shorter_lip} long", "of": "point_offset", "hidden": ". How far the tip lies beside the drill axis is not told"}, {"parts": ". Turning about its tip, the drill makes a hole of at most {largest_hole}", "of": "largest_hole", "hidden": ". How wide the hole gets is not told"}, {"parts": ", {oversize} wider than itself", "of": "oversize", "judged": "rule_error", "low": -1e-06, "high": 1e-06, "below": "; the rule “twice the height difference” would say {by_the_rule}, too little", "above": "; the rule “twice the height difference” would say {by_the_rule}, too much"}, {"parts": ". Guided by its margins or a bush it cuts less."}], "numbers": [{"name": "longer_lip", "place": 120, "like": "lip_length"}, {"name": "shorter_lip", "place": 121, "like": "lip_length"}, {"name": "difference_share", "place": 122, "like": "web_ratio"}, {"name": "by_the_rule", "place": 123, "like": "oversize"}, {"name": "rule_error", "place": 124, "like": "oversize"}]}};
// scene thinning
scenes.thinning = {coordinates: function coordinates({diameter, web, web_ratio, chisel_edge_angle, chisel_edge_length, thinned_chisel_length, thinning_angle, thinned_web}) {
  const v0 = (1/180)*Math.PI;
  const v1 = chisel_edge_angle*v0;
  const v2 = Math.sin(v1);
  const v3 = Math.pow(web, 2);
  const v4 = Math.cos(v1);
  const v5 = (1/2)*thinned_chisel_length;
  const v6 = thinning_angle*v0;
  const v7 = v4*v5 - (-v2*v5 + (1/2)*web)/Math.tan(v6);
  const v8 = -v7;
  const v9 = Math.max((1/2)*web/v2, Math.sqrt((1/4)*v3 + Math.pow(v8, 2)));
  const v10 = 1/v9;
  const v11 = 52*v10;
  const v12 = diameter*v11;
  const v13 = Math.min(148, v12);
  const v14 = Math.sqrt(1 - Math.pow(web_ratio, 2));
  const v15 = v12*v14;
  const v16 = v12*web_ratio;
  const v17 = Math.sqrt(5);
  const v18 = 1/4 - 1/4*v17;
  const v19 = (1/4)*Math.sqrt(2);
  const v20 = Math.sqrt(v19 + 1/2);
  const v21 = Math.sqrt(1/2 - v19);
  const v22 = Math.sqrt((1/8)*v17 + 5/8);
  const v23 = (4/3)/(v18*v20 + v21*v22);
  const v24 = v23*(-v18*v21 + v20*v22) - v23;
  const v25 = -v14 + v24*web_ratio;
  const v26 = v14*v24 + web_ratio;
  const v27 = Math.asin(web_ratio);
  const v28 = v27 + (9/20)*Math.PI;
  const v29 = Math.sin(v28);
  const v30 = Math.cos(v28);
  const v31 = -v24*v30 + v29;
  const v32 = v24*v29 + v30;
  const v33 = v12*v29;
  const v34 = v12*v30;
  const v35 = diameter*v10;
  const v36 = 50.544*v35;
  const v37 = v29*v36;
  const v38 = v30*v36;
  const v39 = 1.296*Math.tan((23/480)*Math.PI);
  const v40 = 0.972*v29 - v30*v39;
  const v41 = v29*v39 + 0.972*v30;
  const v42 = v27 + (31/120)*Math.PI;
  const v43 = Math.sin(v42);
  const v44 = 0.972*v43;
  const v45 = Math.cos(v42);
  const v46 = v39*v45;
  const v47 = v44 + v46;
  const v48 = 0.972*v45;
  const v49 = v39*v43;
  const v50 = -v48 + v49;
  const v51 = v36*v43;
  const v52 = v36*v45;
  const v53 = v44 - v46;
  const v54 = v48 + v49;
  const v55 = v27 + (1/15)*Math.PI;
  const v56 = Math.sin(v55);
  const v57 = 0.972*v56;
  const v58 = Math.cos(v55);
  const v59 = v39*v58 + v57;
  const v60 = 0.972*v58;
  const v61 = v39*v56 - v60;
  const v62 = v36*v56;
  const v63 = v36*v58;
  const v64 = v57 + 0.17;
  const v65 = v60 - 0.42;
  const v66 = 23.92*v35*Math.sqrt(1 - web_ratio);
  const v67 = Math.tan(v1);
  const v68 = 1/v67;
  const v69 = v16*v68;
  const v70 = thinned_chisel_length*v11;
  const v71 = v4*v70;
  const v72 = v71 - 272;
  const v73 = v2*v70;
  const v74 = v73 - 240;
  const v75 = v11*web;
  const v76 = v75 - 240;
  const v77 = 104*v10;
  const v78 = v77*v8;
  const v79 = v78 + 272;
  const v80 = v68*v75;
  const v81 = v80 - 272;
  const v82 = v71 + 272;
  const v83 = v73 + 240;
  const v84 = v75 + 240;
  const v85 = v7*v77 + 272;
  const v86 = v80 + 272;
  const v87 = Math.pow(v9, -2);
  const v88 = v3*v87;
  const v89 = Math.sqrt(Math.pow(v13, 2) - 2704*v88);
  const v90 = 4.0*v2;
  const v91 = 4.0*v4;
  const v92 = 31.0*v2;
  const v93 = 31.0*v4;
  const v94 = 240 - v75;
  const v95 = 2080.0*v10;
  const v96 = 10816*v88;
  const v97 = web/Math.sqrt(v96 + v96/Math.pow(v67, 2));
  const v98 = v95*v97;
  const v99 = v68*v98;
  const v100 = 26.0*v2;
  const v101 = -v100;
  const v102 = v101 + v86;
  const v103 = 26.0*v4;
  const v104 = v103 + v84;
  const v105 = v100 + v81;
  const v106 = -v103;
  const v107 = v106 + v76;
  const v108 = v10*v97;
  const v109 = 270.4*v108;
  const v110 = 1144.0*v108;
  const v111 = v110*v68;
  const v112 = v102 + v111;
  const v113 = v109*v68;
  const v114 = v104 + v110;
  const v115 = -v109;
  const v116 = v103 + v94;
  const v117 = v105 + v111;
  const v118 = 20.0*v4;
  const v119 = 20.0*v2;
  const v120 = 272 - v71;
  const v121 = 10816*Math.pow(thinned_chisel_length, 2)*v87;
  const v122 = thinned_chisel_length/Math.sqrt(v121*Math.pow(v2, 2) + v121*Math.pow(v4, 2));
  const v123 = v122*v95;
  const v124 = v123*v4;
  const v125 = v100 + v82;
  const v126 = v123*v2;
  const v127 = v106 + v83;
  const v128 = v101 + v72;
  const v129 = v103 + v74;
  const v130 = v10*v122;
  const v131 = 270.4*v130;
  const v132 = v131*v2;
  const v133 = 1144.0*v130;
  const v134 = v133*v4;
  const v135 = v125 + v134;
  const v136 = v131*v4;
  const v137 = -v136;
  const v138 = v133*v2;
  const v139 = v127 + v138;
  const v140 = v100 + v120;
  const v141 = v129 + v138;
  const v142 = Math.cos(v6);
  const v143 = 4.0*v142;
  const v144 = Math.sin(v6);
  const v145 = 4.0*v144;
  const v146 = 31.0*v142;
  const v147 = thinned_web*v77;
  const v148 = -104*v10*v7 + v144*v147 - 272;
  const v149 = -v142*v147;
  const v150 = 31.0*v144 + v84;
  const v151 = 20.0*v144;
  const v152 = 26.0*v142;
  const v153 = v148 + v152;
  const v154 = 20.0*v142;
  const v155 = 26.0*v144 + v84;
  const v156 = v149 + v155;
  const v157 = -v152 + v85;
  const v158 = 28.6*v142;
  const v159 = 11.0*v144;
  const v160 = v148 + v159;
  const v161 = 28.6*v144;
  const v162 = 11.0*v142;
  const v163 = v149 - v162 + v84;
  const v164 = 23.4*v142;
  const v165 = 23.4*v144;
  const v166 = v159 + v85;
  const v167 = v162 + v84;
  const v168 = v6 + 0.32258064516129;
  const v169 = 62.0*v142 + v79;
  const v170 = 62.0*v144 + v76;
  const v171 = v6 + 0.0887096774193548;
  const v172 = Math.cos(v171);
  const v173 = 2.6*v172;
  const v174 = Math.sin(v171);
  const v175 = v169 - 11.0*v174;
  const v176 = 2.6*v174;
  const v177 = v170 + 11.0*v172;
  return [272 - v13, 240, v13, v13 + 272, v15 + 272, 240 - v16, -v12*v25 + 272, -v12*v26 + 240, v12*v31 + 272, v12*v32 + 240, v33 + 272, v34 + 240, v37 + 272, v38 + 240, v12*v40 + 272, v12*v41 + 240, v12*v47 + 272, -v12*v50 + 240, v51 + 272, v52 + 240, v12*v53 + 272, v12*v54 + 240, v12*v59 + 272, -v12*v61 + 240, v62 + 272, v63 + 240, v12*v64 + 272, v12*v65 + 240, v66 + 272, v16 + 240, 272, v69 + 272, 272 - v69, 272 - v15, v12*v25 + 272, v12*v26 + 240, -v12*v31 + 272, -v12*v32 + 240, 272 - v33, 240 - v34, 272 - v37, 240 - v38, -v12*v40 + 272, -v12*v41 + 240, -v12*v47 + 272, v12*v50 + 240, 272 - v51, 240 - v52, -v12*v53 + 272, -v12*v54 + 240, -v12*v59 + 272, v12*v61 + 240, 272 - v62, 240 - v63, -v12*v64 + 272, -v12*v65 + 240, 272 - v66, 0, 580, 480, v12 - 148, 148.000000001 - v12, 112, 432, 80, 400, -v72, -v74, -v76, v79, -v81, v82, v83, v84, v85, v86, v89 + 276.0, 451.000000000000, 446, 220.0 - v75, v75 + 260.0, 443.400000000000, 229.0 - v75, 448.600000000000, v75 + 251.0, 452, 384, 467.000000000000, 474.000000000000, 372, 391, 236.0 - v75, 53.0000000000000, 252.000000000000, 58, v78 + 292.0, 261.000000000000, 60.6000000000000, 55.4000000000000, v78 + 283.0, 412, 427.000000000000, 434.000000000000, 46, 65, v86 - v90, v84 + v91, v86 - v92, v84 + v93, -v81 - v90, v91 + v94, -v81 - v92, v93 + v94, v102 + v99, v104 + v98, -v105 - v99, -v107 - v98, v102, v104, v109 + v112, -v113 + v114, v112 + v115, v113 + v114, -v105, v116, -v109 - v117, -v110 + v113 + v116, -v115 - v117, -v107 - v110 - v113, -v105 - v118, -v107 - v119, 176, 48, 161.000000000000, 154.000000000000, 36, 55, v82 + v90, v83 - v91, v82 + v92, v83 - v93, v120 + v90, -v74 - v91, v120 + v92, -v74 - v93, v124 + v125, v126 + v127, -v124 - v128, -v126 - v129, v125, v127, v132 + v135, v137 + v139, -v132 + v135, v136 + v139, v140, -v129, -v128 - v132 - v134, -v137 - v141, v132 - v134 + v140, -v136 - v141, v118 + v125, v119 + v127, 330, 440, 345.000000000000, 352.000000000000, 428, 447, -v143 - v72, v145 - v73 + 240, -v146 - v148, v149 + v150, -v143 + v85, v145 + v84, -v146 + v85, v150, -v151 - v153, -v154 + v156, v151 + v157, v154 + v155, -v153, v156, -v158 - v160, v161 + v163, -v160 - v164, v163 + v165, v157, v155, -v164 + v166, v165 + v167, -v158 + v166, v161 + v167, 140, 408, 125.000000000000, 118.000000000000, 396, 415, 67.0*v142 + v79, -67.0*v144 - v76, v78 + 339.0, v79 + 62.0*Math.cos(v168), -v76 - 62.0*Math.sin(v168), 62.0000000000000, v78 + 330.802069356203, 259.654939313777 - v75, v169, -v170, -v173 + v175, v176 - v177, v173 + v175, -v176 - v177, v78 + 334.0, v78 + 335.615249359368, 251.187089411776 - v75, v78 + 330.435696403104, 250.726403864723 - v75, 438, 100, 453.000000000000, 460.000000000000, 88, 107, v89 + 272, 272 - v89, thinned_chisel_length/chisel_edge_length, v77];
}
, ...{"name": "thinning", "title": "The middle of the point before and after thinning, seen from the tip", "width": 580, "height": 480, "bar": {"x": 24.0, "y": 460.0, "longest": 100.0, "scale": 227}, "shapes": [{"style": "flute", "steps": ["M", 0, 1, "A", 2, 2, "0 0 1", 3, 1, "A", 2, 2, "0 0 1", 0, 1, "Z"]}, {"style": "flank", "steps": ["M", 4, 5, "C", 6, 7, 8, 9, 10, 11, "L", 12, 13, "C", 14, 15, 16, 17, 18, 19, "C", 20, 21, 22, 23, 24, 25, "C", 26, 27, 28, 29, 30, 29, "L", 31, 29, "L", 32, 5, "L", 4, 5, "Z"]}, {"style": "edge", "steps": ["M", 4, 5, "C", 6, 7, 8, 9, 10, 11, "L", 12, 13, "C", 14, 15, 16, 17, 18, 19, "C", 20, 21, 22, 23, 24, 25, "C", 26, 27, 28, 29, 30, 29]}, {"style": "flank", "steps": ["M", 33, 29, "C", 34, 35, 36, 37, 38, 39, "L", 40, 41, "C", 42, 43, 44, 45, 46, 47, "C", 48, 49, 50, 51, 52, 53, "C", 54, 55, 56, 5, 30, 5, "L", 32, 5, "L", 31, 29, "L", 33, 29, "Z"]}, {"style": "edge", "steps": ["M", 33, 29, "C", 34, 35, 36, 37, 38, 39, "L", 40, 41, "C", 42, 43, 44, 45, 46, 47, "C", 48, 49, 50, 51, 52, 53, "C", 54, 55, 56, 5, 30, 5]}, {"style": "cut", "steps": ["M", 57, 57, "L", 58, 57, 58, 59, 57, 59, "Z", "M", 0, 1, "A", 2, 2, "0 0 0", 3, 1, "A", 2, 2, "0 0 0", 0, 1, "Z"]}, {"style": "fine", "steps": ["M", 0, 1, "A", 2, 2, "0 0 1", 3, 1, "A", 2, 2, "0 0 1", 0, 1, "Z"], "when": 60}, {"style": "swept", "steps": ["M", 0, 1, "A", 2, 2, "0 0 1", 3, 1, "A", 2, 2, "0 0 1", 0, 1, "Z"], "when": 61}, {"style": "centre", "steps": ["M", 62, 1, "L", 63, 1]}, {"style": "centre", "steps": ["M", 30, 64, "L", 30, 65]}, {"style": "flute", "steps": ["M", 66, 67, "L", 66, 68, 69, 68, "Z"]}, {"style": "edge", "steps": ["M", 30, 68, "L", 66, 68, 66, 67]}, {"style": "hidden", "steps": ["M", 66, 67, "L", 70, 68]}, {"style": "hidden", "steps": ["M", 66, 68, "L", 69, 68]}, {"style": "flute", "steps": ["M", 71, 72, "L", 71, 73, 74, 73, "Z"]}, {"style": "edge", "steps": ["M", 30, 73, "L", 71, 73, 71, 72]}, {"style": "hidden", "steps": ["M", 71, 72, "L", 75, 73]}, {"style": "hidden", "steps": ["M", 71, 73, "L", 74, 73]}, {"style": "thin", "steps": ["M", 76, 68, "L", 77, 68]}, {"style": "thin", "steps": ["M", 76, 73, "L", 77, 73]}, {"style": "thin", "steps": ["M", 78, 79, "L", 78, 80]}, {"style": "arrow", "steps": ["M", 78, 68, "L", 81, 82, 83, 82, "Z"]}, {"style": "arrow", "steps": ["M", 78, 73, "L", 83, 84, 81, 84, "Z"]}, {"style": "thin", "steps": ["M", 78, 80, "L", 85, 86, 87, 86]}, {"style": "term", "x": 88, "y": 89, "anchor": "start", "parts": "web"}, {"style": "value", "x": 88, "y": 90, "anchor": "start", "parts": "{web}", "of": "web", "hidden": "?"}, {"style": "thin", "steps": ["M", 69, 91, "L", 69, 92]}, {"style": "thin", "steps": ["M", 30, 64, "L", 30, 92]}, {"style": "thin", "steps": ["M", 93, 94, "L", 95, 94]}, {"style": "arrow", "steps": ["M", 30, 94, "L", 96, 97, 96, 98, "Z"]}, {"style": "arrow", "steps": ["M", 69, 94, "L", 99, 98, 99, 97, "Z"]}, {"style": "thin", "steps": ["M", 95, 94, "L", 100, 94, 101, 94]}, {"style": "term", "x": 102, "y": 103, "anchor": "start", "parts": "reach"}, {"style": "value", "x": 102, "y": 104, "anchor": "start", "parts": "{thinning_reach}", "of": "thinning_reach", "hidden": "?"}, {"style": "thin", "steps": ["M", 105, 106, "L", 107, 108]}, {"style": "thin", "steps": ["M", 109, 110, "L", 111, 112]}, {"style": "thin", "steps": ["M", 113, 114, "L", 115, 116]}, {"style": "arrow", "steps": ["M", 117, 118, "L", 119, 120, 121, 122, "Z"]}, {"style": "arrow", "steps": ["M", 123, 124, "L", 125, 126, 127, 128, "Z"]}, {"style": "thin", "steps": ["M", 129, 130, "L", 131, 132, 133, 132]}, {"style": "term", "x": 134, "y": 135, "anchor": "end", "parts": "chisel edge before"}, {"style": "value", "x": 134, "y": 136, "anchor": "end", "parts": "{chisel_edge_length}", "of": "chisel_edge_length", "hidden": "?"}, {"style": "thin", "steps": ["M", 137, 138, "L", 139, 140]}, {"style": "thin", "steps": ["M", 141, 142, "L", 143, 144]}, {"style": "thin", "steps": ["M", 145, 146, "L", 147, 148]}, {"style": "arrow", "steps": ["M", 149, 150, "L", 151, 152, 153, 154, "Z"]}, {"style": "arrow", "steps": ["M", 155, 156, "L", 157, 158, 159, 160, "Z"]}, {"style": "thin", "steps": ["M", 161, 162, "L", 163, 164, 165, 164]}, {"style": "term", "x": 166, "y": 167, "anchor": "start", "parts": "chisel edge left"}, {"style": "value", "x": 166, "y": 168, "anchor": "start", "parts": "{thinned_chisel_length}", "of": "thinned_chisel_length", "hidden": "?"}, {"style": "thin", "steps": ["M", 169, 170, "L", 171, 172]}, {"style": "thin", "steps": ["M", 173, 174, "L", 175, 176]}, {"style": "thin", "steps": ["M", 177, 178, "L", 179, 180]}, {"style": "arrow", "steps": ["M", 181, 182, "L", 183, 184, 185, 186, "Z"]}, {"style": "arrow", "steps": ["M", 187, 188, "L", 189, 190, 191, 192, "Z"]}, {"style": "thin", "steps": ["M", 179, 180, "L", 193, 194, 195, 194]}, {"style": "term", "x": 196, "y": 197, "anchor": "end", "parts": "web left"}, {"style": "value", "x": 196, "y": 198, "anchor": "end", "parts": "{thinned_web}", "of": "thinned_web", "hidden": "?"}, {"style": "thin", "steps": ["M", 69, 68, "L", 199, 200]}, {"style": "thin", "steps": ["M", 69, 68, "L", 201, 68]}, {"style": "thin", "steps": ["M", 202, 203, "A", 204, 204, "0 0 1", 205, 206]}, {"style": "arrow", "steps": ["M", 207, 208, "L", 209, 210, 211, 212, "Z"]}, {"style": "arrow", "steps": ["M", 213, 68, "L", 214, 215, 216, 217, "Z"]}, {"style": "thin", "steps": ["M", 202, 203, "L", 218, 219, 220, 219]}, {"style": "term", "x": 221, "y": 222, "anchor": "start", "parts": "thinning angle"}, {"style": "value", "x": 221, "y": 223, "anchor": "start", "parts": "{thinning_angle}", "of": "thinning_angle", "hidden": "?"}, {"style": "lip", "steps": ["M", 66, 67, "L", 69, 68]}, {"style": "lip", "steps": ["M", 69, 68, "L", 224, 68]}, {"style": "lip", "steps": ["M", 71, 72, "L", 74, 73]}, {"style": "lip", "steps": ["M", 74, 73, "L", 225, 73]}, {"style": "chisel", "steps": ["M", 71, 72, "L", 66, 67]}], "words": [{"parts": "The middle of the point of a drill, seen from the tip and enlarged, before and after thinning. "}, {"parts": "Diameter {diameter}", "of": "diameter", "hidden": "Diameter not told"}, {"parts": ", web {web}", "of": "web", "hidden": ", web not told"}, {"parts": ". Of a chisel edge of {chisel_edge_length}", "of": "chisel_edge_length", "hidden": ". Of a chisel edge whose length is not told"}, {"parts": " thinning leaves {thinned_chisel_length}: ", "of": "thinned_chisel_length", "hidden": " thinning leaves some. ", "judged": "left_share", "low": 0.4, "high": 0.6, "below": "{left_share} of it, less than the common half, and the tip gets weak. ", "within": "{left_share} of it, about the common half. ", "above": "{left_share} of it, more than the common half, so it still pushes. "}, {"parts": "The thinned lips stand at {thinning_angle} to the main lips", "of": "thinning_angle", "hidden": "The thinning angle is not told"}, {"parts": " and meet them {thinning_reach} along", "of": "thinning_reach", "hidden": "; where they meet the main lips is not told"}, {"parts": ", so {untouched_lip_share} of each main lip stays", "of": "untouched_lip_share"}, {"parts": ". Between the thinned lips a web of {thinned_web} is left.", "of": "thinned_web", "hidden": ". The web that is left is not told."}], "numbers": [{"name": "left_share", "place": 226, "like": "untouched_lip_share"}]}};
// scene chip
scenes.chip = {coordinates: function coordinates({diameter, web, web_ratio, point_angle, chisel_edge_angle, feed}) {
  const v0 = Math.PI*point_angle;
  const v1 = (1/360)*v0;
  const v2 = Math.tan(v1);
  const v3 = Math.min(190, 190*v2);
  const v4 = 1/Math.tan((1/180)*Math.PI*chisel_edge_angle);
  const v5 = v4*web_ratio;
  const v6 = v3*v5;
  const v7 = v6 - 48;
  const v8 = Math.sqrt(1 - Math.pow(web_ratio, 2));
  const v9 = v3*v8;
  const v10 = v9 + 48;
  const v11 = v5 + v8;
  const v12 = v11*v3/v2;
  const v13 = v12 - 372;
  const v14 = v9 + 84;
  const v15 = v12 + 98;
  const v16 = 5.0*v15/Math.sqrt(Math.pow(v15, 2));
  const v17 = (1/2)*v12;
  const v18 = -v9 - 36;
  const v19 = 5.0*v18/Math.sqrt(Math.pow(v18, 2));
  const v20 = (1/2)*v9;
  const v21 = v3/diameter;
  const v22 = feed*v21;
  const v23 = Math.max(9, (43/33)*v22);
  const v24 = (1/2)*v6;
  const v25 = v24 - 1/2*v3*v8 - 48;
  const v26 = (1/2)*feed;
  const v27 = v17 + v21*v26;
  const v28 = v20 + v23 - v24;
  const v29 = Math.cos(v1);
  const v30 = 4.0*v29;
  const v31 = Math.sin(v1);
  const v32 = 4.0*v31;
  const v33 = v22 + 35.0;
  const v34 = v29*v33;
  const v35 = v31*v33;
  const v36 = v6 + v9;
  const v37 = Math.sqrt(Math.pow(v11, 2)*Math.pow(v3, 2)/Math.pow(v2, 2) + Math.pow(v36, 2));
  const v38 = 1/v37;
  const v39 = ((v37 > 34.0) ? (
   1
)
: (
   -1
));
  const v40 = 10.0*v39 - 10.0;
  const v41 = v22 + 30.0;
  const v42 = v29*v41;
  const v43 = v42 + v7;
  const v44 = v12*v38;
  const v45 = v31*v41;
  const v46 = v45 - 372;
  const v47 = -v40;
  const v48 = v36*v38;
  const v49 = -v42;
  const v50 = v10 + v49;
  const v51 = v13 + v45;
  const v52 = v39*v48;
  const v53 = 11.0*v52;
  const v54 = v39*v44;
  const v55 = 2.6*v54;
  const v56 = -v53 + v55;
  const v57 = 2.6*v52;
  const v58 = 11.0*v54;
  const v59 = v46 + v58;
  const v60 = v53 + v55;
  const v61 = Math.pow(v31, 2);
  const v62 = Math.sqrt(7396 - 1089*v61);
  const v63 = v31*v62;
  const v64 = 33*v29*v31;
  const v65 = v64 + 410;
  const v66 = v29*v62;
  const v67 = 33*v61;
  const v68 = v67 + 204;
  const v69 = v64 - 410;
  const v70 = -v67;
  const v71 = v70 + 204;
  const v72 = 46*v31;
  const v73 = 46*v29;
  const v74 = v73 + 204;
  const v75 = v72 - 410;
  const v76 = 48.6*v31;
  const v77 = -11.0*v29;
  const v78 = v65 + v77;
  const v79 = 48.6*v29;
  const v80 = 11.0*v31;
  const v81 = v68 - v80;
  const v82 = 43.4*v31;
  const v83 = 43.4*v29;
  const v84 = v69 + v77;
  const v85 = v71 + v80;
  const v86 = 40.0*v31 + 410;
  const v87 = 40.0*v29 - 171;
  const v88 = v1 - 0.1375;
  const v89 = Math.sin(v88);
  const v90 = 2.6*v89;
  const v91 = Math.cos(v88);
  const v92 = v86 - 11.0*v91;
  const v93 = 2.6*v91;
  const v94 = v87 + 11.0*v89;
  const v95 = (1/720)*v0;
  const v96 = Math.sin((59/180)*Math.PI);
  const v97 = (1/2)*v4*web + Math.sqrt((1/4)*Math.pow(diameter, 2) - 1/4*Math.pow(web, 2));
  const v98 = Math.sqrt((1/4)*Math.sqrt(2) + 1/2);
  return [48, 372, -v7, v10, -v13, 308 - v12, v9 + 54.0, 313.0 - v12, v9 + 60.0, v9 + 66, v9 + 72.0, 303.0 - v12, v9 + 78.0, v14, v14 - v16, 324.333333333333 - 0.833333333333333*v12, 340.666666666667 - 0.666666666666667*v12, 357 - v17, v14 + v16, 373.333333333333 - 0.333333333333333*v12, 389.666666666667 - 0.166666666666667*v12, 406, 0.833333333333333*v9 + 78.0, v19 + 406, 0.666666666666667*v9 + 72.0, v20 + 66, 0.333333333333333*v9 + 60.0, 406 - v19, 0.166666666666667*v9 + 54.0, -v13 - v22, 372 - v22, 96.0000000000000, 418, -v23 - v25, 372 - v27, v23, v28 + 48, v28 + 50, v23 - v27 + 388, -v30 - v7, 372 - v32, -v34 - v7, 372 - v35, v10 - v30, -v13 - v32, v10 - v34, -v13 - v35, v36*v38*v40 - v43, -v40*v44 - v46, v47*v48 + v50, -v44*v47 - v51, -v43, -v46, -v43 - v56, -v57 - v59, v49 - v6 + v60 + 48, v57 - v59, v50, -v51, v50 + v56, -v12 - v45 + v57 + v58 + 372, -v42 - v60 + v9 + 48, -v51 - v57 + v58, -v25 - v42, -v17 - v46, 74, 72, 26, 45, 64, v63 + v65, -v66 + v68, 86, -v63 + v65, v66 + v68, -v63 - v69, v66 + v71, v63 - v64 + 410, -v66 - v67 + 204, 324, 204, 496, 410, 34.0000000000000, 106, 237, 171, 412.600000000000, 182.000000000000, 407.400000000000, 226.000000000000, 82, 101, v65 - v72, v67 + v74, -v64 - v75, v70 + v74, -v76 + v78, v79 + v81, v78 - v82, v81 + v83, -v82 - v84, v83 + v85, -v76 - v84, v79 + v85, -v75, v74, 356.000000000000, 336.000000000000, 371.000000000000, 378.000000000000, 324.000000000000, 343.000000000000, 131.000000000000, 40.0000000000000, v86, -v87, 421.252553918354, 129.932277978812, 420.539804784320, 135.083199126717, -v90 + v92, v93 - v94, v90 + v92, -v93 - v94, 4*v31 + 410, 171 - 4*v29, v72 + 410, 171 - v73, 40.0*Math.sin(v95) + 410, 171 - 40.0*Math.cos(v95), 479.000000000000, 112.000000000000, 484.000000000000, 115.000000000000, v26, (1/2)*point_angle, 66*diameter/(feed*v3), v26*v96, v97/v96, v26*v98, v97/v98, 2*v21];
}
, ...{"name": "chip", "title": "The layer that one lip takes, seen square to the lip", "width": 580, "height": 480, "allowed": [{"name": "web", "says": "web {web} leaves no chisel edge to draw; give a web above 0, for example 1.5", "low": 1e-06}, {"name": "chisel_edge_angle", "says": "with so little relief the flank would stand above its lip at the centre, rub, and never cut; give more relief", "low": 90.0}], "bar": {"x": 24.0, "y": 456.0, "longest": 100.0, "scale": 142}, "shapes": [{"style": "section", "steps": ["M", 0, 1, "L", 2, 1, 3, 4, 3, 5, "C", 6, 7, 8, 7, 9, 5, "C", 10, 11, 12, 11, 13, 5, "C", 14, 15, 14, 16, 13, 17, "C", 18, 19, 18, 20, 13, 21, "C", 22, 23, 24, 23, 25, 21, "C", 26, 27, 28, 27, 0, 21, "Z"]}, {"style": "fine", "steps": ["M", 3, 5, "C", 6, 7, 8, 7, 9, 5, "C", 10, 11, 12, 11, 13, 5, "C", 14, 15, 14, 16, 13, 17, "C", 18, 19, 18, 20, 13, 21, "C", 22, 23, 24, 23, 25, 21, "C", 26, 27, 28, 27, 0, 21]}, {"style": "section_other", "steps": ["M", 2, 1, "L", 3, 4, 3, 29, 2, 30, "Z"]}, {"style": "edge", "steps": ["M", 3, 29, "L", 2, 30, 2, 1]}, {"style": "edge", "steps": ["M", 3, 4, "L", 3, 5]}, {"style": "chisel", "steps": ["M", 0, 1, "L", 2, 1]}, {"style": "lip", "steps": ["M", 2, 1, "L", 3, 4]}, {"style": "centre", "steps": ["M", 0, 31, "L", 0, 32]}, {"style": "thin", "steps": ["M", 33, 34, "A", 35, 35, "0 0 1", 36, 34, "A", 35, 35, "0 0 1", 33, 34, "Z"]}, {"style": "value", "x": 37, "y": 38, "anchor": "start", "parts": "A"}, {"style": "thin", "steps": ["M", 39, 40, "L", 41, 42]}, {"style": "thin", "steps": ["M", 43, 44, "L", 45, 46]}, {"style": "thin", "steps": ["M", 47, 48, "L", 49, 50]}, {"style": "arrow", "steps": ["M", 51, 52, "L", 53, 54, 55, 56, "Z"]}, {"style": "arrow", "steps": ["M", 57, 58, "L", 59, 60, 61, 62, "Z"]}, {"style": "thin", "steps": ["M", 63, 64, "L", 65, 66]}, {"style": "term", "x": 67, "y": 68, "anchor": "start", "parts": "chip width, lip length"}, {"style": "value", "x": 67, "y": 69, "anchor": "start", "parts": "{chip_width}", "of": "chip_width", "hidden": "?"}, {"style": "section", "steps": ["M", 70, 71, "A", 72, 72, "0 0 1", 73, 74, "Z"]}, {"style": "section_other", "steps": ["M", 70, 71, "L", 73, 74, "A", 72, 72, "0 0 1", 75, 76, "L", 77, 78, "A", 72, 72, "0 0 1", 70, 71, "Z"]}, {"style": "thin", "steps": ["M", 79, 80, "A", 72, 72, "0 0 1", 81, 80, "A", 72, 72, "0 0 1", 79, 80, "Z"]}, {"style": "edge", "steps": ["M", 75, 76, "L", 77, 78]}, {"style": "lip", "steps": ["M", 73, 74, "L", 70, 71]}, {"style": "value", "x": 82, "y": 83, "anchor": "middle", "parts": "A, about {enlarged} times as large"}, {"style": "thin", "steps": ["M", 82, 84, "L", 82, 85]}, {"style": "arrow", "steps": ["M", 82, 86, "L", 87, 88, 89, 88, "Z"]}, {"style": "arrow", "steps": ["M", 82, 85, "L", 89, 90, 87, 90, "Z"]}, {"style": "term", "x": 82, "y": 91, "anchor": "middle", "parts": "half the feed"}, {"style": "value", "x": 82, "y": 92, "anchor": "middle", "parts": "{half_feed}", "of": "feed", "hidden": "?"}, {"style": "thin", "steps": ["M", 93, 94, "L", 95, 96]}, {"style": "arrow", "steps": ["M", 93, 94, "L", 97, 98, 99, 100, "Z"]}, {"style": "arrow", "steps": ["M", 95, 96, "L", 101, 102, 103, 104, "Z"]}, {"style": "thin", "steps": ["M", 105, 106, "L", 107, 108, 109, 108]}, {"style": "term", "x": 110, "y": 111, "anchor": "start", "parts": "chip thickness"}, {"style": "value", "x": 110, "y": 112, "anchor": "start", "parts": "{chip_thickness}", "of": "chip_thickness", "hidden": "?"}, {"style": "thin", "steps": ["M", 82, 113, "A", 114, 114, "0 0 1", 115, 116]}, {"style": "arrow", "steps": ["M", 82, 113, "L", 117, 118, 119, 120, "Z"]}, {"style": "arrow", "steps": ["M", 115, 116, "L", 121, 122, 123, 124, "Z"]}, {"style": "thin", "steps": ["M", 125, 126, "L", 127, 128]}, {"style": "thin", "steps": ["M", 129, 130, "L", 131, 132]}, {"style": "term", "x": 133, "y": 31, "anchor": "start", "parts": "half angle"}, {"style": "value", "x": 133, "y": 134, "anchor": "start", "parts": "{half_point_angle}", "of": "point_angle", "hidden": "?"}], "words": [{"parts": "The layer that one lip takes in half a turn, seen square to the lip"}, {"parts": "; the piece A about {enlarged} times as large. "}, {"parts": "Drill diameter {diameter}", "of": "diameter", "hidden": "Drill diameter not told"}, {"parts": ", web {web}", "of": "web", "hidden": ", web not told"}, {"parts": ", point angle {point_angle}", "of": "point_angle", "hidden": ", point angle not told"}, {"parts": ". Of the feed, {feed}, each lip takes half: {half_feed}", "of": "feed", "hidden": ". The feed is not told"}, {"parts": ". Square to the lip the chip is {chip_thickness} thick", "of": "chip_thickness", "hidden": ". The chip thickness is not told.", "judged": "point_angle", "low": 117.5, "high": 118.5, "below": ", thinner than with 118° ({thickness_118}).", "within": ".", "above": ", thicker than with 118° ({thickness_118})."}, {"parts": " It is {chip_width} wide, as the lip is long.", "of": "chip_width", "hidden": " The chip width is not told.", "judged": "point_angle", "low": 134.5, "high": 135.5, "below": " A point of 135° would make it {thickness_135} thick and {width_135} wide; its area stays the same.", "within": " A point of 118° would make it {thickness_118} thick and {width_118} wide; its area stays the same.", "above": " A point of 118° would make it {thickness_118} thick and {width_118} wide; its area stays the same."}], "numbers": [{"name": "half_feed", "place": 135, "like": "chip_thickness"}, {"name": "half_point_angle", "place": 136, "like": "point_angle"}, {"name": "enlarged", "place": 137, "like": "material_factor"}, {"name": "thickness_118", "place": 138, "like": "chip_thickness"}, {"name": "width_118", "place": 139, "like": "chip_width"}, {"name": "thickness_135", "place": 140, "like": "chip_thickness"}, {"name": "width_135", "place": 141, "like": "chip_width"}]}};
// scene web_along_flute
scenes.web_along_flute = {coordinates: function coordinates({diameter, web, web_ratio, point_angle, chisel_edge_angle, web_taper, length_removed, web_after_shortening, web_ratio_limit}) {
  const v0 = 1/diameter;
  const v1 = Math.min(60*v0, 384/(2*diameter + (7/5)*length_removed));
  const v2 = length_removed*v1;
  const v3 = v2 + 40;
  const v4 = Math.tan((1/360)*Math.PI*point_angle);
  const v5 = diameter*v1;
  const v6 = (1/2)*v5;
  const v7 = v6/v4;
  const v8 = 6.0*v5/(Math.sqrt(Math.pow(v1, 2))*Math.abs(diameter));
  const v9 = 0.333333333333333*v5;
  const v10 = v6 + 100;
  const v11 = (1/2)*web_taper;
  const v12 = 1/(-v11 + v4);
  const v13 = (1/2)*web_after_shortening;
  const v14 = length_removed + v12*v13;
  const v15 = (1/4)*v12*web_taper;
  const v16 = v13 + v15*web_after_shortening;
  const v17 = (1/2)*web;
  const v18 = v17 + 192*web_taper/v1;
  const v19 = v15*web + v17;
  const v20 = v11*v14 + v17;
  const v21 = -v6;
  const v22 = ((v5 > 34.0) ? (
   1
)
: (
   -1
));
  const v23 = 10.0*v22;
  const v24 = 2.6*v22;
  const v25 = 11.0*v22;
  const v26 = ((v2 - 34.0 > 0) ? (
   1
)
: (
   -1
));
  const v27 = 10.0*v26;
  const v28 = 11.0*v26;
  const v29 = 2.6*v26;
  const v30 = diameter*web_ratio_limit;
  const v31 = (v30 - web)/web_taper;
  const v32 = 1.0e-9*diameter + v31;
  const v33 = v1*v31;
  const v34 = 68*Math.sqrt(1 - Math.pow(web_ratio, 2));
  const v35 = v34 + 142;
  const v36 = 68*web_ratio;
  const v37 = v36 - 306;
  const v38 = Math.sqrt(5);
  const v39 = 1/4 - 1/4*v38;
  const v40 = (1/4)*Math.sqrt(2);
  const v41 = Math.sqrt(v40 + 1/2);
  const v42 = Math.sqrt(1/2 - v40);
  const v43 = Math.sqrt((1/8)*v38 + 5/8);
  const v44 = (4/3)/(v39*v41 + v42*v43);
  const v45 = v44*(-v39*v42 + v41*v43) - v44;
  const v46 = v36*v45;
  const v47 = v34*v45;
  const v48 = Math.asin(web_ratio);
  const v49 = (9/20)*Math.PI;
  const v50 = v48 + v49;
  const v51 = Math.cos(v50);
  const v52 = 68*v51;
  const v53 = v45*v52;
  const v54 = Math.sin(v50);
  const v55 = 68*v54;
  const v56 = v55 + 142;
  const v57 = v45*v55;
  const v58 = v52 + 306;
  const v59 = 66.096*v54;
  const v60 = v59 + 142;
  const v61 = 66.096*v51;
  const v62 = v61 + 306;
  const v63 = 88.128*Math.tan((23/480)*Math.PI);
  const v64 = v51*v63;
  const v65 = v54*v63;
  const v66 = (31/120)*Math.PI;
  const v67 = v48 + v66;
  const v68 = Math.cos(v67);
  const v69 = v63*v68;
  const v70 = Math.sin(v67);
  const v71 = 66.096*v70;
  const v72 = v71 + 142;
  const v73 = v63*v70;
  const v74 = 66.096*v68;
  const v75 = v74 + 306;
  const v76 = (1/15)*Math.PI;
  const v77 = v48 + v76;
  const v78 = Math.cos(v77);
  const v79 = v63*v78;
  const v80 = Math.sin(v77);
  const v81 = 66.096*v80;
  const v82 = v81 + 142;
  const v83 = v63*v80;
  const v84 = 66.096*v78;
  const v85 = v84 + 306;
  const v86 = 31.28*Math.sqrt(1 - web_ratio);
  const v87 = v36 + 306;
  const v88 = (1/180)*Math.PI*chisel_edge_angle;
  const v89 = 1/Math.tan(v88);
  const v90 = v36*v89;
  const v91 = v52 - 306;
  const v92 = v61 - 306;
  const v93 = v71 - 142;
  const v94 = v74 - 306;
  const v95 = v81 - 142;
  const v96 = 68*Math.sqrt(1 - Math.pow(web_after_shortening, 2)/Math.pow(diameter, 2));
  const v97 = v96 + 420;
  const v98 = v0*web_after_shortening;
  const v99 = 68*v98;
  const v100 = -v99;
  const v101 = v45*v99;
  const v102 = v45*v96;
  const v103 = Math.asin(v98);
  const v104 = v103 + v49;
  const v105 = Math.cos(v104);
  const v106 = 68*v105;
  const v107 = v106*v45;
  const v108 = Math.sin(v104);
  const v109 = 68*v108;
  const v110 = v109 + 420;
  const v111 = v109*v45;
  const v112 = v106 + 306;
  const v113 = 66.096*v108;
  const v114 = v113 + 420;
  const v115 = 66.096*v105;
  const v116 = v115 + 306;
  const v117 = v105*v63;
  const v118 = v108*v63;
  const v119 = v103 + v66;
  const v120 = Math.cos(v119);
  const v121 = v120*v63;
  const v122 = Math.sin(v119);
  const v123 = 66.096*v122;
  const v124 = v123 + 420;
  const v125 = v122*v63;
  const v126 = 66.096*v120;
  const v127 = v126 + 306;
  const v128 = v103 + v76;
  const v129 = Math.cos(v128);
  const v130 = v129*v63;
  const v131 = Math.sin(v128);
  const v132 = 66.096*v131;
  const v133 = v132 + 420;
  const v134 = v131*v63;
  const v135 = 66.096*v129;
  const v136 = v135 + 306;
  const v137 = 31.28*Math.sqrt(1 - v98);
  const v138 = v99 + 306;
  const v139 = v89*v99;
  const v140 = v106 - 306;
  const v141 = v115 - 306;
  const v142 = v123 - 420;
  const v143 = v126 - 306;
  const v144 = v132 - 420;
  return [v3, 100, v3 + v7, 100 - v6, 424, 424 - v8, 100 - v9, 100 - 0.166666666666667*v5, v8 + 424, 0.166666666666667*v5 + 100, v9 + 100, v10, v1*v14 + 40, -v1*v16 + 100, -v1*v18 + 100, v1*v18 + 100, v1*v16 + 100, 40, v7 + 40, v1*v12*v17 + 40, -v1*v19 + 100, -v1*v20 + 100, v1*v19 + 100, v1*v20 + 100, 26, 436, 428, 455.000000000000, 450, v21 + v23 + 90.0, -v23 + v6 + 110.0, v24 + 450.0, v21 + v25 + 100, 450.0 - v24, v10 - v25, 459, 106, 92.0000000000000, 43.0000000000000, v27 + 30.0, 48, v2 - v27 + 50.0, v28 + 40, 48.0 - v29, v29 + 48.0, -v28 + v3, 430, 445.000000000000, 452.000000000000, 36, 55, 104.000000000000, 163.000000000000, Math.min(v32, 370.0 - v33), v33 + 40, 90 - v6, 20.0000000000000, 158, 29.0000000000000, 160.600000000000, 155.400000000000, v33 + 51.0, 452, 154, v32, 173, -v32, 74, 306, 68, 210, v35, -v37, v35 - v46, -v37 - v47, -v53 + v56, v57 + v58, v56, v58, v60, v62, v60 - v64, v62 + v65, v69 + v72, -v73 + v75, v72, v75, -v69 + v72, v73 + v75, v79 + v82, -v83 + v85, v82, v85, v81 + 153.56, v84 + 277.44, v86 + 142, v87, 142, v90 + 142, 142 - v90, 142 - v34, -v34 + v46 + 142, v47 + v87, v53 - v55 + 142, -v57 - v91, 142 - v55, -v91, 142 - v59, -v92, -v59 + v64 + 142, -v65 - v92, -v69 - v93, v73 - v74 + 306, -v93, -v94, v69 - v71 + 142, -v73 - v94, -v79 - v95, v83 - v84 + 306, -v95, 306 - v84, 130.44 - v81, 334.56 - v84, 142 - v86, 64, 220, 228, 384, 216, v34 + 146.0, 235.000000000000, v90 + 146.0, 230, 286.0 - v36, v36 + 326.0, 218, 394, 227.400000000000, 295.0 - v36, 232.600000000000, v36 + 317.0, 412, 431, 80, 352, 488, v97, v100 + 306, -v101 + v97, -v102 - v99 + 306, -v107 + v110, v111 + v112, v110, v112, v114, v116, v114 - v117, v116 + v118, v121 + v124, -v125 + v127, v124, v127, -v121 + v124, v125 + v127, v130 + v133, -v134 + v136, v133, v136, v132 + 431.56, v135 + 277.44, v137 + 420, v138, 420, v139 + 420, 420 - v139, 420 - v96, v101 - v96 + 420, v102 + v138, v107 - v109 + 420, -v111 - v140, 420 - v109, -v140, 420 - v113, -v141, -v113 + v117 + 420, -v118 - v141, -v121 - v142, v125 - v126 + 306, -v142, -v143, v121 - v123 + 420, -v125 - v143, -v130 - v144, v134 - v135 + 306, -v144, 306 - v135, 408.44 - v132, 334.56 - v135, 420 - v137, 342, 498, v96 + 424.0, 513.000000000000, v139 + 424.0, 508, v100 + 286.0, v99 + 326.0, 496, 505.400000000000, v100 + 295.0, 510.600000000000, v99 + 317.0, 358, 176, 466, v31, -v30 + web_after_shortening, web_after_shortening/Math.sin(v88), v98, 136*v0];
}
, ...{"name": "web_along_flute", "title": "The web along the flute, and the point at first and after grinding off", "width": 580, "height": 480, "allowed": [{"name": "web", "says": "web {web} leaves no chisel edge to draw; give a web above 0, for example 1.5", "low": 1e-06}, {"name": "web_taper", "says": "a web with a taper of {web_taper} never thickens; 0.014 mm for each mm is usual", "low": 0.0001}, {"name": "chisel_edge_angle", "says": "give the obtuse angle, 90° or more; 125° is usual", "low": 90.0}], "bar": {"x": 24.0, "y": 462.0, "longest": 70.0, "scale": 219}, "shapes": [{"style": "flute", "steps": ["M", 0, 1, "L", 2, 3, 4, 3, "C", 5, 6, 5, 7, 4, 1, "C", 8, 9, 8, 10, 4, 11, "L", 2, 11, "Z"]}, {"style": "section", "steps": ["M", 0, 1, "L", 12, 13, 4, 14, 4, 15, 12, 16, "Z"]}, {"style": "edge", "steps": ["M", 12, 13, "L", 4, 14]}, {"style": "edge", "steps": ["M", 12, 16, "L", 4, 15]}, {"style": "edge", "steps": ["M", 4, 3, "L", 2, 3, 0, 1, 2, 11, 4, 11]}, {"style": "fine", "steps": ["M", 4, 3, "C", 5, 6, 5, 7, 4, 1, "C", 8, 9, 8, 10, 4, 11]}, {"style": "swept", "steps": ["M", 17, 1, "L", 18, 3, 2, 3]}, {"style": "hidden", "steps": ["M", 19, 20, "L", 12, 21]}, {"style": "swept", "steps": ["M", 17, 1, "L", 18, 11, 2, 11]}, {"style": "hidden", "steps": ["M", 19, 22, "L", 12, 23]}, {"style": "centre", "steps": ["M", 24, 1, "L", 25, 1]}, {"style": "thin", "steps": ["M", 26, 3, "L", 27, 3]}, {"style": "thin", "steps": ["M", 26, 11, "L", 27, 11]}, {"style": "thin", "steps": ["M", 28, 29, "L", 28, 30]}, {"style": "arrow", "steps": ["M", 28, 3, "L", 31, 32, 33, 32, "Z"]}, {"style": "arrow", "steps": ["M", 28, 11, "L", 33, 34, 31, 34, "Z"]}, {"style": "value", "x": 35, "y": 36, "anchor": "start", "parts": "Ø{diameter}", "of": "diameter", "hidden": "Ø ?"}, {"style": "thin", "steps": ["M", 17, 37, "L", 17, 38]}, {"style": "thin", "steps": ["M", 0, 37, "L", 0, 38]}, {"style": "thin", "steps": ["M", 39, 40, "L", 41, 40]}, {"style": "arrow", "steps": ["M", 17, 40, "L", 42, 43, 42, 44, "Z"]}, {"style": "arrow", "steps": ["M", 0, 40, "L", 45, 44, 45, 43, "Z"]}, {"style": "thin", "steps": ["M", 0, 40, "L", 46, 40, 47, 40]}, {"style": "term", "x": 48, "y": 49, "anchor": "start", "parts": "ground off"}, {"style": "value", "x": 48, "y": 50, "anchor": "start", "parts": "{length_removed}", "of": "length_removed", "hidden": "?"}, {"style": "thin", "steps": ["M", 17, 51, "L", 17, 52], "when": 53}, {"style": "thin", "steps": ["M", 54, 55, "L", 54, 52], "when": 53}, {"style": "thin", "steps": ["M", 56, 57, "L", 46, 57], "when": 53}, {"style": "arrow", "steps": ["M", 17, 57, "L", 58, 59, 58, 60, "Z"], "when": 53}, {"style": "arrow", "steps": ["M", 54, 57, "L", 61, 60, 61, 59, "Z"], "when": 53}, {"style": "term", "x": 62, "y": 63, "anchor": "start", "parts": "thinning due", "when": 64}, {"style": "value", "x": 62, "y": 65, "anchor": "start", "parts": "{due}", "of": "length_removed", "hidden": "?", "when": 64}, {"style": "term", "x": 62, "y": 63, "anchor": "start", "parts": "thinning due", "when": 66}, {"style": "value", "x": 62, "y": 65, "anchor": "start", "parts": "at first", "when": 66}, {"style": "flute", "steps": ["M", 67, 68, "A", 69, 69, "0 0 1", 70, 68, "A", 69, 69, "0 0 1", 67, 68, "Z"]}, {"style": "swept", "steps": ["M", 67, 68, "A", 69, 69, "0 0 1", 70, 68, "A", 69, 69, "0 0 1", 67, 68, "Z"]}, {"style": "flank", "steps": ["M", 71, 72, "C", 73, 74, 75, 76, 77, 78, "L", 79, 80, "C", 81, 82, 83, 84, 85, 86, "C", 87, 88, 89, 90, 91, 92, "C", 93, 94, 95, 96, 97, 96, "L", 98, 96, "L", 99, 72, "L", 71, 72, "Z"]}, {"style": "edge", "steps": ["M", 71, 72, "C", 73, 74, 75, 76, 77, 78, "L", 79, 80, "C", 81, 82, 83, 84, 85, 86, "C", 87, 88, 89, 90, 91, 92, "C", 93, 94, 95, 96, 97, 96, "L", 98, 96]}, {"style": "flank", "steps": ["M", 100, 96, "C", 101, 102, 103, 104, 105, 106, "L", 107, 108, "C", 109, 110, 111, 112, 113, 114, "C", 115, 116, 117, 118, 119, 120, "C", 121, 122, 123, 72, 97, 72, "L", 99, 72, "L", 98, 96, "L", 100, 96, "Z"]}, {"style": "edge", "steps": ["M", 100, 96, "C", 101, 102, 103, 104, 105, 106, "L", 107, 108, "C", 109, 110, 111, 112, 113, 114, "C", 115, 116, 117, 118, 119, 120, "C", 121, 122, 123, 72, 97, 72, "L", 99, 72]}, {"style": "centre", "steps": ["M", 124, 68, "L", 125, 68]}, {"style": "centre", "steps": ["M", 97, 126, "L", 97, 127]}, {"style": "lip", "steps": ["M", 99, 72, "L", 71, 72]}, {"style": "lip", "steps": ["M", 98, 96, "L", 100, 96]}, {"style": "chisel", "steps": ["M", 98, 96, "L", 99, 72]}, {"style": "term", "x": 97, "y": 128, "anchor": "middle", "parts": "point at first"}, {"style": "thin", "steps": ["M", 129, 72, "L", 130, 72]}, {"style": "thin", "steps": ["M", 131, 96, "L", 130, 96]}, {"style": "thin", "steps": ["M", 132, 133, "L", 132, 134, 135, 136]}, {"style": "arrow", "steps": ["M", 132, 72, "L", 137, 138, 139, 138, "Z"]}, {"style": "arrow", "steps": ["M", 132, 96, "L", 139, 140, 137, 140, "Z"]}, {"style": "term", "x": 135, "y": 141, "anchor": "middle", "parts": "web"}, {"style": "value", "x": 135, "y": 142, "anchor": "middle", "parts": "{web}", "of": "web", "hidden": "?"}, {"style": "thin", "steps": ["M", 98, 96, "L", 143, 136]}, {"style": "term", "x": 143, "y": 141, "anchor": "middle", "parts": "chisel edge"}, {"style": "value", "x": 143, "y": 142, "anchor": "middle", "parts": "{chisel_edge_length}", "of": "chisel_edge_length", "hidden": "?"}, {"style": "flute", "steps": ["M", 144, 68, "A", 69, 69, "0 0 1", 145, 68, "A", 69, 69, "0 0 1", 144, 68, "Z"]}, {"style": "swept", "steps": ["M", 144, 68, "A", 69, 69, "0 0 1", 145, 68, "A", 69, 69, "0 0 1", 144, 68, "Z"]}, {"style": "flank", "steps": ["M", 146, 147, "C", 148, 149, 150, 151, 152, 153, "L", 154, 155, "C", 156, 157, 158, 159, 160, 161, "C", 162, 163, 164, 165, 166, 167, "C", 168, 169, 170, 171, 172, 171, "L", 173, 171, "L", 174, 147, "L", 146, 147, "Z"]}, {"style": "edge", "steps": ["M", 146, 147, "C", 148, 149, 150, 151, 152, 153, "L", 154, 155, "C", 156, 157, 158, 159, 160, 161, "C", 162, 163, 164, 165, 166, 167, "C", 168, 169, 170, 171, 172, 171, "L", 173, 171]}, {"style": "flank", "steps": ["M", 175, 171, "C", 176, 177, 178, 179, 180, 181, "L", 182, 183, "C", 184, 185, 186, 187, 188, 189, "C", 190, 191, 192, 193, 194, 195, "C", 196, 197, 198, 147, 172, 147, "L", 174, 147, "L", 173, 171, "L", 175, 171, "Z"]}, {"style": "edge", "steps": ["M", 175, 171, "C", 176, 177, 178, 179, 180, 181, "L", 182, 183, "C", 184, 185, 186, 187, 188, 189, "C", 190, 191, 192, 193, 194, 195, "C", 196, 197, 198, 147, 172, 147, "L", 174, 147]}, {"style": "centre", "steps": ["M", 199, 68, "L", 200, 68]}, {"style": "centre", "steps": ["M", 172, 126, "L", 172, 127]}, {"style": "lip", "steps": ["M", 174, 147, "L", 146, 147]}, {"style": "lip", "steps": ["M", 173, 171, "L", 175, 171]}, {"style": "chisel", "steps": ["M", 173, 171, "L", 174, 147]}, {"style": "term", "x": 172, "y": 128, "anchor": "middle", "parts": "point now"}, {"style": "thin", "steps": ["M", 201, 147, "L", 202, 147]}, {"style": "thin", "steps": ["M", 203, 171, "L", 202, 171]}, {"style": "thin", "steps": ["M", 204, 205, "L", 204, 206, 207, 136]}, {"style": "arrow", "steps": ["M", 204, 147, "L", 208, 209, 210, 209, "Z"]}, {"style": "arrow", "steps": ["M", 204, 171, "L", 210, 211, 208, 211, "Z"]}, {"style": "term", "x": 207, "y": 141, "anchor": "middle", "parts": "web"}, {"style": "value", "x": 207, "y": 142, "anchor": "middle", "parts": "{web_after_shortening}", "of": "web_after_shortening", "hidden": "?"}, {"style": "thin", "steps": ["M", 173, 171, "L", 212, 136]}, {"style": "term", "x": 212, "y": 141, "anchor": "middle", "parts": "chisel edge"}, {"style": "value", "x": 212, "y": 142, "anchor": "middle", "parts": "{chisel_edge_now}", "of": "chisel_edge_length", "hidden": "?"}, {"style": "term", "x": 213, "y": 214, "anchor": "start", "parts": "scale of both end views"}], "words": [{"parts": "A drill cut open along its flutes, its length to scale, and its point at first and now. "}, {"parts": "Diameter {diameter}", "of": "diameter", "hidden": "Diameter not told"}, {"parts": ". The web was {web} at the point", "of": "web", "hidden": ". The web at first is not told"}, {"parts": " and thickens by {web_taper} towards the shank", "of": "web_taper", "hidden": "; its taper is not told"}, {"parts": ". With {length_removed} ground off", "of": "length_removed", "hidden": ". With some length ground off"}, {"parts": " it is {web_after_shortening}, {ratio_now} of the diameter", "of": "web_after_shortening", "hidden": " it is thicker; how thick is not told"}, {"parts": ", and the chisel edge has grown from {chisel_edge_length} to {chisel_edge_now}", "of": "chisel_edge_length", "hidden": ", and the chisel edge has grown"}, {"parts": ". ", "judged": "over_the_limit", "low": -1000000000.0, "high": -1e-09, "within": "Under the shop's limit of {web_ratio_limit} of the diameter: no thinning yet; it is due with {due} ground off in all.", "above": "Over the shop's limit of {web_ratio_limit} of the diameter: thinning is due."}], "numbers": [{"name": "due", "place": 215, "like": "length_removed"}, {"name": "over_the_limit", "place": 216, "like": "web"}, {"name": "chisel_edge_now", "place": 217, "like": "chisel_edge_length"}, {"name": "ratio_now", "place": 218, "like": "web_ratio"}]}};
// scene unequal_angles
scenes.unequal_angles = {coordinates: function coordinates({diameter, feed, lip_height_difference, half_angle_1, half_angle_2, idle_radius}) {
  const v0 = 1/diameter;
  const v1 = (1/180)*Math.PI;
  const v2 = half_angle_1*v1;
  const v3 = 1/Math.tan(v2);
  const v4 = half_angle_2*v1;
  const v5 = 1/Math.tan(v4);
  const v6 = Math.max(v3, v5);
  const v7 = (1/2)*diameter;
  const v8 = Math.min(200*v0, 220/(feed + v6*v7));
  const v9 = diameter*v8;
  const v10 = (1/2)*v9;
  const v11 = v10 - 270;
  const v12 = feed*v8;
  const v13 = v10*v6;
  const v14 = v12 + v13;
  const v15 = 300 - v10;
  const v16 = v10*v5;
  const v17 = (1/2)*v12;
  const v18 = v10*v3;
  const v19 = v17 + v18;
  const v20 = Math.min(v10, idle_radius*v8);
  const v21 = v20*v5;
  const v22 = v20*v3;
  const v23 = v17 + v22;
  const v24 = v17 + v21;
  const v25 = v10 + 300;
  const v26 = v16 + v17;
  const v27 = v10 + 330;
  const v28 = v14 + 50;
  const v29 = 5.0*v28/Math.sqrt(Math.pow(v28, 2));
  const v30 = v6*v9;
  const v31 = 0.333333333333333*v9;
  const v32 = (1/4)*v9;
  const v33 = v32*v6;
  const v34 = 0.166666666666667*v9;
  const v35 = -v9 - 60;
  const v36 = 5.0*v35/Math.sqrt(Math.pow(v35, 2));
  const v37 = -v28;
  const v38 = 5.0*v37/Math.sqrt(Math.pow(v37, 2));
  const v39 = -v10;
  const v40 = ((v9 - 34.0 > 0) ? (
   1
)
: (
   -1
));
  const v41 = 10.0*v40;
  const v42 = 11.0*v40;
  const v43 = 2.6*v40;
  const v44 = v2 - v4;
  const v45 = v44 < 0;
  const v46 = v9 + 96;
  const v47 = v9 < -v46;
  const v48 = v9 > v46;
  const v49 = (((v45 || v48) && (v47 || !v45)) ? (
   1
)
: (
   -1
));
  const v50 = v39 + 252;
  const v51 = (((v45 || v47) && (v48 || !v45)) ? (
   1
)
: (
   -1
));
  const v52 = Math.min(v3, v5);
  const v53 = v10*v52;
  const v54 = v53 - 340;
  const v55 = v10 - 252;
  const v56 = -v13;
  const v57 = ((v13 - v53 > 34.0) ? (
   1
)
: (
   -1
));
  const v58 = 10.0*v57;
  const v59 = 2.6*v57;
  const v60 = 11.0*v57;
  const v61 = v32*v52 + v33;
  const v62 = 84.0*Math.sin(v2) + 300;
  const v63 = 84.0*Math.cos(v2) - 340;
  const v64 = v2 - 0.0654761904761905;
  const v65 = Math.sin(v64);
  const v66 = 2.6*v65;
  const v67 = Math.cos(v64);
  const v68 = v62 - 11.0*v67;
  const v69 = 2.6*v67;
  const v70 = v63 + 11.0*v65;
  const v71 = -v44;
  const v72 = 84.0*Math.sin(v4);
  const v73 = v72 - 300;
  const v74 = 84.0*Math.cos(v4) - 340;
  const v75 = v4 - 0.0654761904761905;
  const v76 = Math.sin(v75);
  const v77 = 2.6*v76;
  const v78 = Math.cos(v75);
  const v79 = 2.6*v78;
  const v80 = v74 + 11.0*v76;
  const v81 = Math.sign(v71);
  const v82 = v20*v81 + 300;
  const v83 = -idle_radius + v7;
  const v84 = 26*v81;
  const v85 = 11.0*v81;
  const v86 = 2.6*v81;
  return [-v11, 314 - v14, v15, 340 - Math.min(v16, v19), 300 - v20, 340 - Math.min(v21, v23), 300, 340, v20 + 300, 340 - Math.min(v22, v24), v25, 340 - Math.min(v18, v26), v27, v27 - v29, -0.833333333333333*v12 - 0.416666666666667*v30 + 322.333333333333, -0.666666666666667*v12 - v31*v6 + 330.666666666667, -v17 - v33 + 339, v27 + v29, -0.333333333333333*v12 - v34*v6 + 347.333333333333, -0.166666666666667*v12 - 0.0833333333333333*v30 + 355.666666666667, 364, v31 + 320.0, v36 + 364, v34 + 310.0, 290.0 - 0.166666666666667*v9, 364 - v36, 280.0 - v31, -v11 - v38, -0.166666666666667*v12 - 0.0833333333333333*v30 + 355.666666666667, -0.333333333333333*v12 - 0.166666666666667*v30 + 347.333333333333, v38 + v39 + 270, -0.666666666666667*v12 - 0.333333333333333*v30 + 330.666666666667, 340 - v18, 340 - Math.max(v18, Math.min(v26, v12 + v18)), 340 - Math.max(v22, Math.min(v24, v12 + v22)), 340 - Math.max(0, Math.min(v12, v17)), 66, 340 - v16, 340 - Math.max(v16, Math.min(v19, v12 + v16)), 340 - Math.max(v21, Math.min(v23, v12 + v21)), 58, 398, 62, 35.0000000000000, v39 + v41 + 290.0, 40, v10 - v41 + 310.0, v39 + v42 + 300, 40.0 - v43, v43 + 40.0, v25 - v42, 31, 4*v49 + ((v45) ? (
   v25
)
: (
   v15
)), 340 - v13, 5.0*v49 + v50, 4*v51 + ((v45) ? (
   v15
)
: (
   v25
)), -v54, v50 + 5.0*v51, -v55, v56 + v58 + 330.0, -v53 - v58 + 350.0, v50 + v59, v56 + v60 + 340, -v55 - v59, -v54 - v60, 340 - v61, 239.0 - v10, 224.0 - v10, 217.0 - v10, 328 - v61, 347 - v61, v10 + 318, 102.500000000000, 108, v10 + 315.4, 97.0000000000000, v10 + 320.6, v10 + 328, 82, 102, 256.000000000000, 84.0000000000000, v62, -v63, 311.146545681835, 254.125294859781, 310.806312716917, 259.314152299486, -v66 + v68, v69 - v70, v66 + v68, -v69 - v70, 354, 223.000000000000, 243.000000000000, v32 + 300, -v3*v32 + 340, v10 + 340, 370, v10 + 352, v32 + 297.8, 2.20000000000000, v32 + 302.2, v10 + 358, 375, v44, v71, -v73, -v74, -v73 - v77 + 11.0*v78, -v79 - v80, -v72 + v77 + 11.0*v78 + 300, v79 - v80, 289.193687283083, 288.853454318165, 246, 300 - v32, -v32*v5 + 340, 260 - v10, 248 - v10, 297.8 - v32, 302.2 - v32, 242 - v10, v82, -v20*v6 + 344, 397.000000000000, v83, 300 - v84, 392, v82 + v84, 300 - v85, v86 + 392.0, 392.0 - v86, v82 + v85, 414, 434, -v83, lip_height_difference*v0, half_angle_1 + half_angle_2, half_angle_1 - half_angle_2, 2*idle_radius*v0, v8];
}
, ...{"name": "unequal_angles", "title": "A drill with lips at different angles in its hole, square to the lips", "width": 580, "height": 480, "bar": {"x": 24.0, "y": 456.0, "longest": 90.0, "scale": 141}, "shapes": [{"style": "section", "steps": ["M", 0, 1, "L", 2, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 10, 1, 12, 1, "C", 13, 14, 13, 15, 12, 16, "C", 17, 18, 17, 19, 12, 20, "C", 21, 22, 23, 22, 6, 20, "C", 24, 25, 26, 25, 0, 20, "C", 27, 28, 27, 29, 0, 16, "C", 30, 31, 30, 14, 0, 1, "Z"]}, {"style": "fine", "steps": ["M", 12, 1, "C", 13, 14, 13, 15, 12, 16, "C", 17, 18, 17, 19, 12, 20, "C", 21, 22, 23, 22, 6, 20, "C", 24, 25, 26, 25, 0, 20, "C", 27, 28, 27, 29, 0, 16, "C", 30, 31, 30, 14, 0, 1]}, {"style": "edge", "steps": ["M", 0, 1, "L", 2, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 10, 1, 12, 1]}, {"style": "section_other", "steps": ["M", 6, 7, "L", 10, 32, 10, 33, 8, 34, 6, 35, "Z"]}, {"style": "fine", "steps": ["M", 10, 33, "L", 8, 34, 6, 35]}, {"style": "swept", "steps": ["M", 10, 36, "L", 10, 32]}, {"style": "lip", "steps": ["M", 6, 7, "L", 10, 32]}, {"style": "section_other", "steps": ["M", 6, 7, "L", 2, 37, 2, 38, 4, 39, 6, 35, "Z"]}, {"style": "fine", "steps": ["M", 2, 38, "L", 4, 39, 6, 35]}, {"style": "swept", "steps": ["M", 2, 36, "L", 2, 37]}, {"style": "lip", "steps": ["M", 6, 7, "L", 2, 37]}, {"style": "centre", "steps": ["M", 6, 40, "L", 6, 41]}, {"style": "thin", "steps": ["M", 2, 42, "L", 2, 43]}, {"style": "thin", "steps": ["M", 10, 42, "L", 10, 43]}, {"style": "thin", "steps": ["M", 44, 45, "L", 46, 45]}, {"style": "arrow", "steps": ["M", 2, 45, "L", 47, 48, 47, 49, "Z"]}, {"style": "arrow", "steps": ["M", 10, 45, "L", 50, 49, 50, 48, "Z"]}, {"style": "value", "x": 6, "y": 51, "anchor": "middle", "parts": "Ø{diameter}", "of": "diameter", "hidden": "Ø ?"}, {"style": "thin", "steps": ["M", 52, 53, "L", 54, 53]}, {"style": "thin", "steps": ["M", 55, 56, "L", 57, 56]}, {"style": "thin", "steps": ["M", 58, 59, "L", 58, 60]}, {"style": "arrow", "steps": ["M", 58, 53, "L", 61, 62, 63, 62, "Z"]}, {"style": "arrow", "steps": ["M", 58, 56, "L", 63, 64, 61, 64, "Z"]}, {"style": "thin", "steps": ["M", 58, 65, "L", 66, 65, 67, 65]}, {"style": "term", "x": 68, "y": 69, "anchor": "end", "parts": "corners differ"}, {"style": "value", "x": 68, "y": 70, "anchor": "end", "parts": "{lip_height_difference}", "of": "lip_height_difference", "hidden": "?"}, {"style": "motion", "steps": ["M", 71, 36, "L", 71, 72]}, {"style": "arrow", "steps": ["M", 71, 73, "L", 74, 75, 76, 75, "Z"]}, {"style": "term", "x": 77, "y": 78, "anchor": "start", "parts": "feed"}, {"style": "value", "x": 77, "y": 79, "anchor": "start", "parts": "{feed}", "of": "feed", "hidden": "?"}, {"style": "thin", "steps": ["M", 6, 80, "A", 81, 81, "0 0 1", 82, 83]}, {"style": "arrow", "steps": ["M", 6, 80, "L", 84, 85, 86, 87, "Z"]}, {"style": "arrow", "steps": ["M", 82, 83, "L", 88, 89, 90, 91, "Z"]}, {"style": "term", "x": 92, "y": 93, "anchor": "middle", "parts": "lip 1"}, {"style": "value", "x": 92, "y": 94, "anchor": "middle", "parts": "{half_angle_1}", "of": "half_angle_1", "hidden": "?"}, {"style": "thin", "steps": ["M", 95, 96, "L", 97, 98, 99, 98]}, {"style": "arrow", "steps": ["M", 100, 96, "A", 101, 101, "0 0 1", 102, 96, "A", 101, 101, "0 0 1", 100, 96, "Z"]}, {"style": "term", "x": 103, "y": 104, "anchor": "start", "parts": "lip 1 leads", "when": 105}, {"style": "term", "x": 103, "y": 104, "anchor": "start", "parts": "lip 1 lags", "when": 106}, {"style": "thin", "steps": ["M", 107, 108, "A", 81, 81, "0 0 1", 6, 80]}, {"style": "arrow", "steps": ["M", 107, 108, "L", 109, 110, 111, 112, "Z"]}, {"style": "arrow", "steps": ["M", 6, 80, "L", 113, 87, 114, 85, "Z"]}, {"style": "term", "x": 115, "y": 93, "anchor": "middle", "parts": "lip 2"}, {"style": "value", "x": 115, "y": 94, "anchor": "middle", "parts": "{half_angle_2}", "of": "half_angle_2", "hidden": "?"}, {"style": "thin", "steps": ["M", 116, 117, "L", 118, 98, 119, 98]}, {"style": "arrow", "steps": ["M", 120, 117, "A", 101, 101, "0 0 1", 121, 117, "A", 101, 101, "0 0 1", 120, 117, "Z"]}, {"style": "term", "x": 122, "y": 104, "anchor": "end", "parts": "lip 2 leads", "when": 106}, {"style": "term", "x": 122, "y": 104, "anchor": "end", "parts": "lip 2 lags", "when": 105}, {"style": "thin", "steps": ["M", 123, 124, "L", 123, 125], "when": 126}, {"style": "thin", "steps": ["M", 127, 128, "L", 129, 128], "when": 126}, {"style": "arrow", "steps": ["M", 6, 128, "L", 130, 131, 130, 132, "Z"], "when": 126}, {"style": "arrow", "steps": ["M", 123, 128, "L", 133, 132, 133, 131, "Z"], "when": 126}, {"style": "term", "x": 6, "y": 134, "anchor": "middle", "parts": "the lagging lip cuts out to", "when": 126}, {"style": "value", "x": 6, "y": 135, "anchor": "middle", "parts": "{idle_radius}", "of": "idle_radius", "hidden": "?", "when": 126}, {"style": "term", "x": 6, "y": 134, "anchor": "middle", "parts": "both lips cut all along", "when": 136}], "words": [{"parts": "A drill with lips at different angles in its hole, square to the lips, in true proportions. "}, {"parts": "Drill diameter {diameter}", "of": "diameter", "hidden": "Drill diameter not told"}, {"parts": "; half angle of lip 1 {half_angle_1}", "of": "half_angle_1", "hidden": "; half angle of lip 1 not told"}, {"parts": ", of lip 2 {half_angle_2}", "of": "half_angle_2", "hidden": ", of lip 2 not told"}, {"parts": ", {included} together; ", "of": "half_angle_1", "hidden": "; "}, {"parts": "lip ", "judged": "lip_1_ahead", "low": -1e-09, "high": 1e-09, "below": "2", "above": "1"}, {"parts": ", the flatter one, leads"}, {"parts": " by {lip_height_difference} at the corner", "of": "lip_height_difference", "judged": "difference_share", "low": 0.015, "high": 1000000000.0, "below": " (too little to see well here; give half angles further apart)"}, {"parts": ". With a feed of {feed} ", "of": "feed", "hidden": ". ", "judged": "cutting_share", "low": 1.0, "high": 1000000000.0, "below": "the lagging lip cuts only out to a radius of {idle_radius}; outside it the leading lip takes the whole feed: one broad chip, and one narrow one.", "within": "both lips cut all along, the leading one more."}], "numbers": [{"name": "difference_share", "place": 137, "like": "web_ratio"}, {"name": "included", "place": 138, "like": "point_angle"}, {"name": "lip_1_ahead", "place": 139, "like": "half_angle_1"}, {"name": "cutting_share", "place": 140, "like": "web_ratio"}]}};
// scene relief
scenes.relief = {coordinates: function coordinates({diameter, radius, web, point_angle, axial_relief, relief_at_radius, feed_relief_loss}) {
  const v0 = 1/radius;
  const w0 = Math.asin((1/2)*v0*web);
  const v1 = Math.cos(w0);
  const v2 = (1/180)*Math.PI;
  const v3 = Math.tan(axial_relief*v2);
  const v4 = Math.sin(w0);
  const v5 = 1/Math.tan((1/360)*Math.PI*point_angle);
  const w1 = v1*v3 + v4*v5;
  const w5 = feed_relief_loss*v2;
  const w6 = Math.tan(w5);
  const v6 = w1 - w6;
  const v7 = -w1;
  const w2 = v1*v5 - v3*v4;
  const w7 = Math.min(2.4, Math.max(1.0e-6, 2*Math.atan2(v6, w2)));
  const v8 = (1/2)*w7;
  const v9 = Math.sin(w7);
  const v10 = (1/2)*w2;
  const w8 = Math.min(2.4, Math.max(1.0e-6, w7 - (-v7 - w2*Math.tan(v8) - w6*w7/v9)/(-v10/Math.pow(Math.cos(v8), 2) - w6*(v9 - w7*Math.cos(w7))/Math.pow(v9, 2))));
  const v11 = (1/2)*w8;
  const v12 = Math.sin(w8);
  const w9 = Math.min(2.4, Math.max(1.0e-6, w8 - (-v7 - w2*Math.tan(v11) - w6*w8/v12)/(-v10/Math.pow(Math.cos(v11), 2) - w6*(v12 - w8*Math.cos(w8))/Math.pow(v12, 2))));
  const v13 = (1/2)*w9;
  const v14 = Math.sin(w9);
  const v15 = (13/30)*Math.PI;
  const w14 = Math.sqrt(Math.pow(w1, 2) + Math.pow(w2, 2));
  const v16 = 1/w14;
  const v17 = w2 + 56/115;
  const w18 = relief_at_radius*v2;
  const v18 = Math.sin(w18);
  const v19 = 1/Math.abs(v18);
  const v20 = 180/Math.PI;
  const w3 = Math.atan2(w1, w2);
  const w15 = ((v17 < w14) ? (
   w3 - Math.acos(Math.min(1, v16*v17))
)
: (
   v15
));
  const w16 = w3 + Math.acos(Math.max(-1, v16*(w2 - 39/115)));
  const w17 = Math.min(v15, w15, w16);
  const v21 = (1/48)*w17;
  const v22 = 230*w1;
  const v23 = 230*w2;
  const v24 = (1/24)*w17;
  const v25 = (1/16)*w17;
  const v26 = (115/6)*w17 + 72;
  const v27 = (1/12)*w17;
  const v28 = (5/48)*w17;
  const v29 = (1/8)*w17;
  const v30 = (7/48)*w17;
  const v31 = (115/3)*w17 + 72;
  const v32 = (1/6)*w17;
  const v33 = (3/16)*w17;
  const v34 = (5/24)*w17;
  const v35 = (11/48)*w17;
  const v36 = (115/2)*w17 + 72;
  const v37 = (1/4)*w17;
  const v38 = (13/48)*w17;
  const v39 = (7/24)*w17;
  const v40 = (5/16)*w17;
  const v41 = (230/3)*w17 + 72;
  const v42 = (1/3)*w17;
  const v43 = (17/48)*w17;
  const v44 = (3/8)*w17;
  const v45 = (19/48)*w17;
  const v46 = (575/6)*w17 + 72;
  const v47 = (5/12)*w17;
  const v48 = (7/16)*w17;
  const v49 = (11/24)*w17;
  const v50 = (23/48)*w17;
  const v51 = 115*w17;
  const v52 = v51 + 72;
  const v53 = (1/2)*w17;
  const v54 = (25/48)*w17;
  const v55 = (13/24)*w17;
  const v56 = (9/16)*w17;
  const v57 = (805/6)*w17 + 72;
  const v58 = (7/12)*w17;
  const v59 = (29/48)*w17;
  const v60 = (5/8)*w17;
  const v61 = (31/48)*w17;
  const v62 = (460/3)*w17 + 72;
  const v63 = (2/3)*w17;
  const v64 = (11/16)*w17;
  const v65 = (17/24)*w17;
  const v66 = (35/48)*w17;
  const v67 = (345/2)*w17 + 72;
  const v68 = (3/4)*w17;
  const v69 = (37/48)*w17;
  const v70 = (19/24)*w17;
  const v71 = (13/16)*w17;
  const v72 = (575/3)*w17 + 72;
  const v73 = (5/6)*w17;
  const v74 = (41/48)*w17;
  const v75 = (7/8)*w17;
  const v76 = (43/48)*w17;
  const v77 = (1265/6)*w17 + 72;
  const v78 = (11/12)*w17;
  const v79 = (15/16)*w17;
  const v80 = (23/24)*w17;
  const v81 = (47/48)*w17;
  const v82 = 230*w17;
  const v83 = v82 + 72;
  const v84 = Math.sin(w17);
  const v85 = v22*v84;
  const v86 = 1 - Math.cos(w17);
  const v87 = v23*v86 - v85;
  const v88 = v87 + 222;
  const v89 = Math.sqrt(3);
  const v90 = (1/3)*v89;
  const v91 = 230*Math.PI*w6;
  const w10 = Math.min(2.4, Math.max(1.0e-6, w9 - (-v7 - w2*Math.tan(v13) - w6*w9/v14)/(-v10/Math.pow(Math.cos(v13), 2) - w6*(v14 - w9*Math.cos(w9))/Math.pow(v14, 2))));
  const w11 = ((w1 > w6) ? (
   w10
)
: (
   0
));
  const v92 = 230*w11;
  const v93 = v92 + 72;
  const v94 = Math.max(w11, w17);
  const v95 = (1/48)*v94 + (47/48)*w11;
  const v96 = (1/24)*v94 + (23/24)*w11;
  const v97 = (1/16)*v94 + (15/16)*w11;
  const v98 = (1/12)*v94 + (11/12)*w11;
  const v99 = (5/48)*v94 + (43/48)*w11;
  const v100 = (1/8)*v94 + (7/8)*w11;
  const v101 = (7/48)*v94 + (41/48)*w11;
  const v102 = (1/6)*v94 + (5/6)*w11;
  const v103 = (3/16)*v94 + (13/16)*w11;
  const v104 = (5/24)*v94 + (19/24)*w11;
  const v105 = (11/48)*v94 + (37/48)*w11;
  const v106 = (1/4)*v94 + (3/4)*w11;
  const v107 = (13/48)*v94 + (35/48)*w11;
  const v108 = (7/24)*v94 + (17/24)*w11;
  const v109 = (5/16)*v94 + (11/16)*w11;
  const v110 = (1/3)*v94 + (2/3)*w11;
  const v111 = (17/48)*v94 + (31/48)*w11;
  const v112 = (3/8)*v94 + (5/8)*w11;
  const v113 = (19/48)*v94 + (29/48)*w11;
  const v114 = (5/12)*v94 + (7/12)*w11;
  const v115 = (7/16)*v94 + (9/16)*w11;
  const v116 = (11/24)*v94 + (13/24)*w11;
  const v117 = (23/48)*v94 + (25/48)*w11;
  const v118 = (1/2)*v94 + (1/2)*w11;
  const v119 = (25/48)*v94 + (23/48)*w11;
  const v120 = (13/24)*v94 + (11/24)*w11;
  const v121 = (9/16)*v94 + (7/16)*w11;
  const v122 = (7/12)*v94 + (5/12)*w11;
  const v123 = (29/48)*v94 + (19/48)*w11;
  const v124 = (5/8)*v94 + (3/8)*w11;
  const v125 = (31/48)*v94 + (17/48)*w11;
  const v126 = (2/3)*v94 + (1/3)*w11;
  const v127 = (11/16)*v94 + (5/16)*w11;
  const v128 = (17/24)*v94 + (7/24)*w11;
  const v129 = (35/48)*v94 + (13/48)*w11;
  const v130 = (3/4)*v94 + (1/4)*w11;
  const v131 = (37/48)*v94 + (11/48)*w11;
  const v132 = (19/24)*v94 + (5/24)*w11;
  const v133 = (13/16)*v94 + (3/16)*w11;
  const v134 = (5/6)*v94 + (1/6)*w11;
  const v135 = (41/48)*v94 + (7/48)*w11;
  const v136 = (7/8)*v94 + (1/8)*w11;
  const v137 = (43/48)*v94 + (5/48)*w11;
  const v138 = (11/12)*v94 + (1/12)*w11;
  const v139 = (15/16)*v94 + (1/16)*w11;
  const v140 = (23/24)*v94 + (1/24)*w11;
  const v141 = (47/48)*v94 + (1/48)*w11;
  const v142 = (-w6*(v82 + v88*v90) + 222)/(-v90*w6 + 1);
  const v143 = w11 - w17;
  const v144 = -v143 - 1.0e-9;
  const v145 = v7 + w6 + 1.0e-9;
  const w12 = -0.499999999*diameter + radius;
  const v146 = Math.max(v145, w12);
  const v147 = v87 + 130;
  const v148 = v147*v89;
  const v149 = -v15;
  const v150 = v149 + w17 + 1.0e-9;
  const v151 = Math.min(v150, w12);
  const w4 = Math.max(0, 2*w3);
  const v152 = Math.min(w4, (28/45)*Math.PI);
  const v153 = (1/12)*v152 + v78;
  const v154 = (1/6)*v152 + v73;
  const v155 = (1/4)*v152 + v68;
  const v156 = (1/3)*v152 + v63;
  const v157 = (5/12)*v152 + v58;
  const v158 = (1/2)*v152 + v53;
  const v159 = (7/12)*v152 + v47;
  const v160 = (2/3)*v152 + v42;
  const v161 = (3/4)*v152 + v37;
  const v162 = (5/6)*v152 + v32;
  const v163 = (11/12)*v152 + v27;
  const w19 = Math.min(190, 112*v19);
  const v164 = w19 + 14;
  const w20 = Math.min(104, 78*v19);
  const v165 = 1/w20;
  const v166 = 20.0*v165;
  const w21 = -Math.max(w18, w5);
  const v167 = -v166 + w21;
  const w22 = Math.abs(w18 - w5);
  const v168 = w21 + w22;
  const v169 = v166 + v168;
  const v170 = w20*Math.cos(w21) + 72;
  const v171 = w20*Math.sin(w21) + 222;
  const v172 = 5.5*v165;
  const v173 = -v172 + w21;
  const v174 = Math.cos(v173);
  const v175 = 2.6*v174;
  const v176 = Math.sin(v173);
  const v177 = v170 + 11.0*v176;
  const v178 = 2.6*v176;
  const v179 = v171 - 11.0*v174;
  const v180 = w20*Math.cos(v168) + 72;
  const v181 = w20*Math.sin(v168) + 222;
  const v182 = v168 + v172;
  const v183 = Math.cos(v182);
  const v184 = 2.6*v183;
  const v185 = Math.sin(v182);
  const v186 = v180 - 11.0*v185;
  const v187 = 2.6*v185;
  const v188 = v181 + 11.0*v183;
  const v189 = 1/w19;
  const v190 = 20.0*v189;
  const w23 = -Math.max(0, w18);
  const v191 = -v190 + w23;
  const w24 = Math.abs(w18);
  const v192 = w23 + w24;
  const v193 = v190 + v192;
  const v194 = w19*Math.cos(w23) + 72;
  const v195 = w19*Math.sin(w23) + 222;
  const v196 = 5.5*v189;
  const v197 = -v196 + w23;
  const v198 = Math.cos(v197);
  const v199 = 2.6*v198;
  const v200 = Math.sin(v197);
  const v201 = v194 + 11.0*v200;
  const v202 = 2.6*v200;
  const v203 = v195 - 11.0*v198;
  const v204 = w19*Math.cos(v192) + 72;
  const v205 = w19*Math.sin(v192) + 222;
  const v206 = v192 + v196;
  const v207 = Math.cos(v206);
  const v208 = 2.6*v207;
  const v209 = Math.sin(v206);
  const v210 = v204 - 11.0*v209;
  const v211 = 2.6*v209;
  const v212 = v205 + 11.0*v207;
  const w25 = -Math.max(0, w5);
  const v213 = w25 - 0.072463768115942;
  const w26 = Math.abs(w5);
  const v214 = w25 + w26;
  const v215 = v214 + 0.072463768115942;
  const v216 = 276*Math.cos(w25) + 72;
  const v217 = 276*Math.sin(w25) + 222;
  const v218 = w25 - 0.0199275362318841;
  const v219 = Math.cos(v218);
  const v220 = 2.6*v219;
  const v221 = Math.sin(v218);
  const v222 = v216 + 11.0*v221;
  const v223 = 2.6*v221;
  const v224 = v217 - 11.0*v219;
  const v225 = Math.cos(v214);
  const v226 = 276*v225 + 72;
  const v227 = 276*Math.sin(v214) + 222;
  const v228 = v214 + 0.0199275362318841;
  const v229 = Math.cos(v228);
  const v230 = 2.6*v229;
  const v231 = Math.sin(v228);
  const v232 = 11.0*v231;
  const v233 = 2.6*v231;
  const v234 = v227 + 11.0*v229;
  const v235 = v92*w6;
  const v236 = v149 + w11;
  const v237 = -v236;
  const v238 = ((w11 > 0.147826086956522) ? (
   1
)
: (
   -1
));
  const v239 = 10.0*v238;
  const v240 = 11.0*v238;
  const v241 = 2.6*v238;
  const v242 = 230*w4;
  const v243 = v242 + 72;
  const v244 = ((w4 > 0.147826086956522) ? (
   1
)
: (
   -1
));
  const v245 = 10.0*v244;
  const v246 = 11.0*v244;
  const v247 = 2.6*v244;
  const v248 = (299/3)*Math.PI;
  const w13 = ((v15 > w11) ? (
   1
)
: (
   0
));
  return [v20*w4, radius*w4, v20*w11, radius*w11, 78.0000000000000, radius*v15, ((w1 <= w6) ? (
   3
)
: ((w12 > 0) ? (
   w13
)
: (
   2
))), 72, 222, (115/24)*w17 + 72, -v22*Math.sin(v21) + v23*(1 - Math.cos(v21)) + 222, (115/12)*w17 + 72, -v22*Math.sin(v24) + v23*(1 - Math.cos(v24)) + 222, (115/8)*w17 + 72, -v22*Math.sin(v25) + v23*(1 - Math.cos(v25)) + 222, v26, -v22*Math.sin(v27) + v23*(1 - Math.cos(v27)) + 222, (575/24)*w17 + 72, -v22*Math.sin(v28) + v23*(1 - Math.cos(v28)) + 222, (115/4)*w17 + 72, -v22*Math.sin(v29) + v23*(1 - Math.cos(v29)) + 222, (805/24)*w17 + 72, -v22*Math.sin(v30) + v23*(1 - Math.cos(v30)) + 222, v31, -v22*Math.sin(v32) + v23*(1 - Math.cos(v32)) + 222, (345/8)*w17 + 72, -v22*Math.sin(v33) + v23*(1 - Math.cos(v33)) + 222, (575/12)*w17 + 72, -v22*Math.sin(v34) + v23*(1 - Math.cos(v34)) + 222, (1265/24)*w17 + 72, -v22*Math.sin(v35) + v23*(1 - Math.cos(v35)) + 222, v36, -v22*Math.sin(v37) + v23*(1 - Math.cos(v37)) + 222, (1495/24)*w17 + 72, -v22*Math.sin(v38) + v23*(1 - Math.cos(v38)) + 222, (805/12)*w17 + 72, -v22*Math.sin(v39) + v23*(1 - Math.cos(v39)) + 222, (575/8)*w17 + 72, -v22*Math.sin(v40) + v23*(1 - Math.cos(v40)) + 222, v41, -v22*Math.sin(v42) + v23*(1 - Math.cos(v42)) + 222, (1955/24)*w17 + 72, -v22*Math.sin(v43) + v23*(1 - Math.cos(v43)) + 222, (345/4)*w17 + 72, -v22*Math.sin(v44) + v23*(1 - Math.cos(v44)) + 222, (2185/24)*w17 + 72, -v22*Math.sin(v45) + v23*(1 - Math.cos(v45)) + 222, v46, -v22*Math.sin(v47) + v23*(1 - Math.cos(v47)) + 222, (805/8)*w17 + 72, -v22*Math.sin(v48) + v23*(1 - Math.cos(v48)) + 222, (1265/12)*w17 + 72, -v22*Math.sin(v49) + v23*(1 - Math.cos(v49)) + 222, (2645/24)*w17 + 72, -v22*Math.sin(v50) + v23*(1 - Math.cos(v50)) + 222, v52, -v22*Math.sin(v53) + v23*(1 - Math.cos(v53)) + 222, (2875/24)*w17 + 72, -v22*Math.sin(v54) + v23*(1 - Math.cos(v54)) + 222, (1495/12)*w17 + 72, -v22*Math.sin(v55) + v23*(1 - Math.cos(v55)) + 222, (1035/8)*w17 + 72, -v22*Math.sin(v56) + v23*(1 - Math.cos(v56)) + 222, v57, -v22*Math.sin(v58) + v23*(1 - Math.cos(v58)) + 222, (3335/24)*w17 + 72, -v22*Math.sin(v59) + v23*(1 - Math.cos(v59)) + 222, (575/4)*w17 + 72, -v22*Math.sin(v60) + v23*(1 - Math.cos(v60)) + 222, (3565/24)*w17 + 72, -v22*Math.sin(v61) + v23*(1 - Math.cos(v61)) + 222, v62, -v22*Math.sin(v63) + v23*(1 - Math.cos(v63)) + 222, (1265/8)*w17 + 72, -v22*Math.sin(v64) + v23*(1 - Math.cos(v64)) + 222, (1955/12)*w17 + 72, -v22*Math.sin(v65) + v23*(1 - Math.cos(v65)) + 222, (4025/24)*w17 + 72, -v22*Math.sin(v66) + v23*(1 - Math.cos(v66)) + 222, v67, -v22*Math.sin(v68) + v23*(1 - Math.cos(v68)) + 222, (4255/24)*w17 + 72, -v22*Math.sin(v69) + v23*(1 - Math.cos(v69)) + 222, (2185/12)*w17 + 72, -v22*Math.sin(v70) + v23*(1 - Math.cos(v70)) + 222, (1495/8)*w17 + 72, -v22*Math.sin(v71) + v23*(1 - Math.cos(v71)) + 222, v72, -v22*Math.sin(v73) + v23*(1 - Math.cos(v73)) + 222, (4715/24)*w17 + 72, -v22*Math.sin(v74) + v23*(1 - Math.cos(v74)) + 222, (805/4)*w17 + 72, -v22*Math.sin(v75) + v23*(1 - Math.cos(v75)) + 222, (4945/24)*w17 + 72, -v22*Math.sin(v76) + v23*(1 - Math.cos(v76)) + 222, v77, -v22*Math.sin(v78) + v23*(1 - Math.cos(v78)) + 222, (1725/8)*w17 + 72, -v22*Math.sin(v79) + v23*(1 - Math.cos(v79)) + 222, (2645/12)*w17 + 72, -v22*Math.sin(v80) + v23*(1 - Math.cos(v80)) + 222, (5405/24)*w17 + 72, -v22*Math.sin(v81) + v23*(1 - Math.cos(v81)) + 222, v83, v88, v83 + v90*(v87 + 138), 84, 46*v89 + 72, 20, -v91 + 52*w6 + 222, 222 - v91, 564, 222 - 492*w6, 312, 110.666666666667, 317.000000000000, 201.333333333333, 292, 382.666666666667, 307.000000000000, 473.333333333333, v93, -v22*Math.sin(w11) + v23*(1 - Math.cos(w11)) + 222, (115/24)*v94 + (5405/24)*w11 + 72, -v22*Math.sin(v95) + v23*(1 - Math.cos(v95)) + 222, (115/12)*v94 + (2645/12)*w11 + 72, -v22*Math.sin(v96) + v23*(1 - Math.cos(v96)) + 222, (115/8)*v94 + (1725/8)*w11 + 72, -v22*Math.sin(v97) + v23*(1 - Math.cos(v97)) + 222, (115/6)*v94 + (1265/6)*w11 + 72, -v22*Math.sin(v98) + v23*(1 - Math.cos(v98)) + 222, (575/24)*v94 + (4945/24)*w11 + 72, -v22*Math.sin(v99) + v23*(1 - Math.cos(v99)) + 222, (115/4)*v94 + (805/4)*w11 + 72, -v22*Math.sin(v100) + v23*(1 - Math.cos(v100)) + 222, (805/24)*v94 + (4715/24)*w11 + 72, -v22*Math.sin(v101) + v23*(1 - Math.cos(v101)) + 222, (115/3)*v94 + (575/3)*w11 + 72, -v22*Math.sin(v102) + v23*(1 - Math.cos(v102)) + 222, (345/8)*v94 + (1495/8)*w11 + 72, -v22*Math.sin(v103) + v23*(1 - Math.cos(v103)) + 222, (575/12)*v94 + (2185/12)*w11 + 72, -v22*Math.sin(v104) + v23*(1 - Math.cos(v104)) + 222, (1265/24)*v94 + (4255/24)*w11 + 72, -v22*Math.sin(v105) + v23*(1 - Math.cos(v105)) + 222, (115/2)*v94 + (345/2)*w11 + 72, -v22*Math.sin(v106) + v23*(1 - Math.cos(v106)) + 222, (1495/24)*v94 + (4025/24)*w11 + 72, -v22*Math.sin(v107) + v23*(1 - Math.cos(v107)) + 222, (805/12)*v94 + (1955/12)*w11 + 72, -v22*Math.sin(v108) + v23*(1 - Math.cos(v108)) + 222, (575/8)*v94 + (1265/8)*w11 + 72, -v22*Math.sin(v109) + v23*(1 - Math.cos(v109)) + 222, (230/3)*v94 + (460/3)*w11 + 72, -v22*Math.sin(v110) + v23*(1 - Math.cos(v110)) + 222, (1955/24)*v94 + (3565/24)*w11 + 72, -v22*Math.sin(v111) + v23*(1 - Math.cos(v111)) + 222, (345/4)*v94 + (575/4)*w11 + 72, -v22*Math.sin(v112) + v23*(1 - Math.cos(v112)) + 222, (2185/24)*v94 + (3335/24)*w11 + 72, -v22*Math.sin(v113) + v23*(1 - Math.cos(v113)) + 222, (575/6)*v94 + (805/6)*w11 + 72, -v22*Math.sin(v114) + v23*(1 - Math.cos(v114)) + 222, (805/8)*v94 + (1035/8)*w11 + 72, -v22*Math.sin(v115) + v23*(1 - Math.cos(v115)) + 222, (1265/12)*v94 + (1495/12)*w11 + 72, -v22*Math.sin(v116) + v23*(1 - Math.cos(v116)) + 222, (2645/24)*v94 + (2875/24)*w11 + 72, -v22*Math.sin(v117) + v23*(1 - Math.cos(v117)) + 222, 115*v94 + 115*w11 + 72, -v22*Math.sin(v118) + v23*(1 - Math.cos(v118)) + 222, (2875/24)*v94 + (2645/24)*w11 + 72, -v22*Math.sin(v119) + v23*(1 - Math.cos(v119)) + 222, (1495/12)*v94 + (1265/12)*w11 + 72, -v22*Math.sin(v120) + v23*(1 - Math.cos(v120)) + 222, (1035/8)*v94 + (805/8)*w11 + 72, -v22*Math.sin(v121) + v23*(1 - Math.cos(v121)) + 222, (805/6)*v94 + (575/6)*w11 + 72, -v22*Math.sin(v122) + v23*(1 - Math.cos(v122)) + 222, (3335/24)*v94 + (2185/24)*w11 + 72, -v22*Math.sin(v123) + v23*(1 - Math.cos(v123)) + 222, (575/4)*v94 + (345/4)*w11 + 72, -v22*Math.sin(v124) + v23*(1 - Math.cos(v124)) + 222, (3565/24)*v94 + (1955/24)*w11 + 72, -v22*Math.sin(v125) + v23*(1 - Math.cos(v125)) + 222, (460/3)*v94 + (230/3)*w11 + 72, -v22*Math.sin(v126) + v23*(1 - Math.cos(v126)) + 222, (1265/8)*v94 + (575/8)*w11 + 72, -v22*Math.sin(v127) + v23*(1 - Math.cos(v127)) + 222, (1955/12)*v94 + (805/12)*w11 + 72, -v22*Math.sin(v128) + v23*(1 - Math.cos(v128)) + 222, (4025/24)*v94 + (1495/24)*w11 + 72, -v22*Math.sin(v129) + v23*(1 - Math.cos(v129)) + 222, (345/2)*v94 + (115/2)*w11 + 72, -v22*Math.sin(v130) + v23*(1 - Math.cos(v130)) + 222, (4255/24)*v94 + (1265/24)*w11 + 72, -v22*Math.sin(v131) + v23*(1 - Math.cos(v131)) + 222, (2185/12)*v94 + (575/12)*w11 + 72, -v22*Math.sin(v132) + v23*(1 - Math.cos(v132)) + 222, (1495/8)*v94 + (345/8)*w11 + 72, -v22*Math.sin(v133) + v23*(1 - Math.cos(v133)) + 222, (575/3)*v94 + (115/3)*w11 + 72, -v22*Math.sin(v134) + v23*(1 - Math.cos(v134)) + 222, (4715/24)*v94 + (805/24)*w11 + 72, -v22*Math.sin(v135) + v23*(1 - Math.cos(v135)) + 222, (805/4)*v94 + (115/4)*w11 + 72, -v22*Math.sin(v136) + v23*(1 - Math.cos(v136)) + 222, (4945/24)*v94 + (575/24)*w11 + 72, -v22*Math.sin(v137) + v23*(1 - Math.cos(v137)) + 222, (1265/6)*v94 + (115/6)*w11 + 72, -v22*Math.sin(v138) + v23*(1 - Math.cos(v138)) + 222, (1725/8)*v94 + (115/8)*w11 + 72, -v22*Math.sin(v139) + v23*(1 - Math.cos(v139)) + 222, (2645/12)*v94 + (115/12)*w11 + 72, -v22*Math.sin(v140) + v23*(1 - Math.cos(v140)) + 222, (5405/24)*v94 + (115/24)*w11 + 72, -v22*Math.sin(v141) + v23*(1 - Math.cos(v141)) + 222, 230*v94 + 72, -v22*Math.sin(v94) + v23*(1 - Math.cos(v94)) + 222, v83 + v90*(-v142 - v85 + 230*v86*w2 + 222), v142, v144, -v51*w6 - 115*v84*w1 + 115*v86*w2 + 222, 474, 188, 484, v82 + 69.8, 2.20000000000000, v82 + 74.2, 490, 193, Math.min(v144, v146), Math.min(v144, -v146), (130/3)*v89 + 72, 92, (1/9)*v148 + v41 + (260/9)*v89, 99, (2/9)*v148 + v62 + (130/9)*v89, 85, v147*v90 + v83, 0, v151, -v151, (115/6)*v152 + v77, -v22*Math.sin(v153) + v23*(1 - Math.cos(v153)) + 222, (115/3)*v152 + v72, -v22*Math.sin(v154) + v23*(1 - Math.cos(v154)) + 222, (115/2)*v152 + v67, -v22*Math.sin(v155) + v23*(1 - Math.cos(v155)) + 222, (230/3)*v152 + v62, -v22*Math.sin(v156) + v23*(1 - Math.cos(v156)) + 222, (575/6)*v152 + v57, -v22*Math.sin(v157) + v23*(1 - Math.cos(v157)) + 222, 115*v152 + v52, -v22*Math.sin(v158) + v23*(1 - Math.cos(v158)) + 222, (805/6)*v152 + v46, -v22*Math.sin(v159) + v23*(1 - Math.cos(v159)) + 222, (460/3)*v152 + v41, -v22*Math.sin(v160) + v23*(1 - Math.cos(v160)) + 222, (345/2)*v152 + v36, -v22*Math.sin(v161) + v23*(1 - Math.cos(v161)) + 222, (575/3)*v152 + v31, -v22*Math.sin(v162) + v23*(1 - Math.cos(v162)) + 222, (1265/6)*v152 + v26, -v22*Math.sin(v163) + v23*(1 - Math.cos(v163)) + 222, 230*v152 + 72, -v22*Math.sin(v152) + v23*(1 - Math.cos(v152)) + 222, Math.min(v150, w12, v152 - w17), 70.4000000000000, 1.60000000000000, 73.6000000000000, 88, 150, 41.5000000000000, 36, 47.0000000000000, 147.400000000000, 152.600000000000, 138, 204, 116, 556, 298, 372, v164*Math.cos(w18) + 72, -v164*v18 + 222, w20*Math.cos(v167) + 72, w20*Math.sin(v167) + 222, w20, w20*Math.cos(v169) + 72, w20*Math.sin(v169) + 222, v170, v171, -v175 + v177, -v178 + v179, v175 + v177, v178 + v179, v180, v181, v184 + v186, v187 + v188, -v184 + v186, -v187 + v188, 68, w19*Math.cos(v191) + 72, w19*Math.sin(v191) + 222, w19, w19*Math.cos(v193) + 72, w19*Math.sin(v193) + 222, v194, v195, -v199 + v201, -v202 + v203, v199 + v201, v202 + v203, v204, v205, v208 + v210, v211 + v212, -v208 + v210, -v211 + v212, 250, 276*Math.cos(v213) + 72, 276*Math.sin(v213) + 222, 276, 276*Math.cos(v215) + 72, 276*Math.sin(v215) + 222, v216, v217, -v220 + v222, -v223 + v224, v220 + v222, v223 + v224, v226, v227, v226 + v230 - v232, v233 + v234, 276*v225 - v230 - v232 + 72, -v233 + v234, 440, 42, 61, w12, -w12, 227, 403.000000000000, 227 - v235, 335.000000000000, Math.min(v237, v6), v239 + 62.0, 330, -v239 + v92 + 82.0, v240 + 72, 330 - v241, v241 + 330, -v240 + v93, v92 + 69.0, 222 - v235, 3.00000000000000, v92 + 75.0, Math.min(v237, v6, -v143), 80, 348, Math.min(v6, v236 + 1.0e-9), v145, v243, 369.000000000000, Math.min(w1, -w4 + (28/45)*Math.PI), v245 + 62.0, 364, v242 - v245 + 82.0, v246 + 72, 364 - v247, v247 + 364, v243 - v246, 382, w1, 1.0e-9 - w1, v248 + 72, 316, 398, 83.0000000000000, 395.400000000000, 400.600000000000, v248 + 61.0, 416, 230*v0];
}
, ...{"name": "relief", "title": "The relief behind a place on the lip, unrolled, tip down", "width": 580, "height": 480, "allowed": [{"name": "lip_relief", "says": "a lip relief of {lip_relief} is more than can be drawn; 5° to 24° is usual", "high": 45.0}, {"name": "lip_relief", "says": "a lip relief of {lip_relief} is less than can be drawn; 5° to 24° is usual", "low": -15.0}], "bar": {"x": 24.0, "y": 462.0, "longest": 207.0, "scale": 386}, "shapes": [{"style": "land", "steps": ["M", 7, 8, "L", 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 31, 32, 33, 34, 35, 36, 37, 38, 39, 40, 41, 42, 43, 44, 45, 46, 47, 48, 49, 50, 51, 52, 53, 54, 55, 56, 57, 58, 59, 60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70, 71, 72, 73, 74, 75, 76, 77, 78, 79, 80, 81, 82, 83, 84, 85, 86, 87, 88, 89, 90, 91, 92, 93, 94, 95, 96, 97, 98, 99, 100, 101, 102, 103, 104, 105, 106, 107, 106, "Z"]}, {"style": "section", "steps": ["M", 108, 109, "L", 7, 110, 7, 8, 111, 112, 111, 113, 108, 113, "Z"]}, {"style": "edge", "steps": ["M", 108, 109, "L", 7, 110, 7, 8, 111, 112]}, {"style": "fine", "steps": ["M", 108, 113, "C", 114, 115, 116, 115, 117, 113, "C", 118, 119, 120, 119, 111, 113]}, {"style": "section_other", "steps": ["M", 121, 122, "L", 123, 124, 125, 126, 127, 128, 129, 130, 131, 132, 133, 134, 135, 136, 137, 138, 139, 140, 141, 142, 143, 144, 145, 146, 147, 148, 149, 150, 151, 152, 153, 154, 155, 156, 157, 158, 159, 160, 161, 162, 163, 164, 165, 166, 167, 168, 169, 170, 171, 172, 173, 174, 175, 176, 177, 178, 179, 180, 181, 182, 183, 184, 185, 186, 187, 188, 189, 190, 191, 192, 193, 194, 195, 196, 197, 198, 199, 200, 201, 202, 203, 204, 205, 206, 207, 208, 209, 210, 211, 212, 213, 214, 215, 216, 217, 218, 219, 220, "Z"], "when": 221}, {"style": "thin", "steps": ["M", 103, 222, "L", 223, 224, 225, 224], "when": 221}, {"style": "arrow", "steps": ["M", 226, 222, "A", 227, 227, "0 0 1", 228, 222, "A", 227, 227, "0 0 1", 226, 222, "Z"], "when": 221}, {"style": "term", "x": 229, "y": 230, "anchor": "start", "parts": "rubs here", "when": 231}, {"style": "term", "x": 229, "y": 230, "anchor": "start", "parts": "would rub", "when": 232}, {"style": "cut", "steps": ["M", 233, 234, "C", 235, 236, 237, 238, 239, 234, "L", 111, 234, 111, 240, 240, 240, 240, 234, "Z"]}, {"style": "fine", "steps": ["M", 233, 234, "C", 235, 236, 237, 238, 239, 234]}, {"style": "edge", "steps": ["M", 103, 104, "L", 239, 234], "when": 241}, {"style": "fine", "steps": ["M", 103, 104, "L", 239, 234], "when": 242}, {"style": "edge", "steps": ["M", 7, 8, "L", 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 31, 32, 33, 34, 35, 36, 37, 38, 39, 40, 41, 42, 43, 44, 45, 46, 47, 48, 49, 50, 51, 52, 53, 54, 55, 56, 57, 58, 59, 60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70, 71, 72, 73, 74, 75, 76, 77, 78, 79, 80, 81, 82, 83, 84, 85, 86, 87, 88, 89, 90, 91, 92, 93, 94, 95, 96, 97, 98, 99, 100, 101, 102, 103, 104]}, {"style": "hidden", "steps": ["M", 103, 104, "L", 243, 244, 245, 246, 247, 248, 249, 250, 251, 252, 253, 254, 255, 256, 257, 258, 259, 260, 261, 262, 263, 264, 265, 266], "when": 267}, {"style": "edge", "steps": ["M", 7, 8, "L", 233, 234]}, {"style": "lip", "steps": ["M", 268, 8, "A", 269, 269, "0 0 1", 270, 8, "A", 269, 269, "0 0 1", 268, 8, "Z"]}, {"style": "motion", "steps": ["M", 271, 272, "L", 273, 272]}, {"style": "arrow", "steps": ["M", 274, 272, "L", 275, 276, 275, 277, "Z"]}, {"style": "term", "x": 274, "y": 278, "anchor": "start", "parts": "turning"}, {"style": "term", "x": 279, "y": 280, "anchor": "middle", "parts": "land"}, {"style": "term", "x": 281, "y": 282, "anchor": "end", "parts": "work"}, {"style": "thin", "steps": ["M", 7, 8, "L", 283, 8]}, {"style": "thin", "steps": ["M", 7, 8, "L", 284, 285]}, {"style": "thin", "steps": ["M", 286, 287, "A", 288, 288, "0 0 1", 289, 290]}, {"style": "arrow", "steps": ["M", 291, 292, "L", 293, 294, 295, 296, "Z"]}, {"style": "arrow", "steps": ["M", 297, 298, "L", 299, 300, 301, 302, "Z"]}, {"style": "thin", "steps": ["M", 286, 287, "L", 234, 303]}, {"style": "thin", "steps": ["M", 304, 305, "A", 306, 306, "0 0 1", 307, 308]}, {"style": "arrow", "steps": ["M", 309, 310, "L", 311, 312, 313, 314, "Z"]}, {"style": "arrow", "steps": ["M", 315, 316, "L", 317, 318, 319, 320, "Z"]}, {"style": "thin", "steps": ["M", 304, 305, "L", 321, 303]}, {"style": "thin", "steps": ["M", 322, 323, "A", 324, 324, "0 0 1", 325, 326]}, {"style": "arrow", "steps": ["M", 327, 328, "L", 329, 330, 331, 332, "Z"]}, {"style": "arrow", "steps": ["M", 333, 334, "L", 335, 336, 337, 338, "Z"]}, {"style": "thin", "steps": ["M", 322, 323, "L", 339, 303]}, {"style": "term", "x": 234, "y": 340, "anchor": "middle", "parts": "working relief"}, {"style": "value", "x": 234, "y": 341, "anchor": "middle", "parts": "{working_relief}", "of": "working_relief", "hidden": "?"}, {"style": "term", "x": 321, "y": 340, "anchor": "middle", "parts": "lip relief", "when": 342}, {"style": "value", "x": 321, "y": 341, "anchor": "middle", "parts": "{lip_relief}", "of": "lip_relief", "hidden": "?", "when": 342}, {"style": "term", "x": 321, "y": 340, "anchor": "middle", "parts": "relief here", "when": 343}, {"style": "value", "x": 321, "y": 341, "anchor": "middle", "parts": "{relief_at_radius}", "of": "relief_at_radius", "hidden": "?", "when": 343}, {"style": "term", "x": 339, "y": 340, "anchor": "middle", "parts": "taken by the feed of {feed}", "of": "feed", "hidden": "taken by the feed"}, {"style": "value", "x": 339, "y": 341, "anchor": "middle", "parts": "{feed_relief_loss}", "of": "feed_relief_loss", "hidden": "?"}, {"style": "thin", "steps": ["M", 7, 344, "L", 7, 345]}, {"style": "thin", "steps": ["M", 121, 346, "L", 121, 347], "when": 348}, {"style": "thin", "steps": ["M", 349, 350, "L", 351, 350], "when": 348}, {"style": "arrow", "steps": ["M", 7, 350, "L", 352, 353, 352, 354, "Z"], "when": 348}, {"style": "arrow", "steps": ["M", 121, 350, "L", 355, 354, 355, 353, "Z"], "when": 348}, {"style": "arrow", "steps": ["M", 356, 357, "A", 358, 358, "0 0 1", 359, 357, "A", 358, 358, "0 0 1", 356, 357, "Z"], "when": 360}, {"style": "term", "x": 361, "y": 362, "anchor": "start", "parts": "touches the work {touching} behind the lip ({touching_way})", "of": "touching", "hidden": "touches the work ?", "when": 348}, {"style": "term", "x": 361, "y": 362, "anchor": "start", "parts": "clear of the work for {land} behind the lip", "of": "touching", "hidden": "touches the work ?", "when": 363}, {"style": "term", "x": 361, "y": 362, "anchor": "start", "parts": "no relief left at work: rubs from the lip on", "of": "touching", "hidden": "touches the work ?", "when": 364}, {"style": "thin", "steps": ["M", 365, 344, "L", 365, 366], "when": 367}, {"style": "thin", "steps": ["M", 368, 369, "L", 370, 369], "when": 367}, {"style": "arrow", "steps": ["M", 7, 369, "L", 371, 372, 371, 373, "Z"], "when": 367}, {"style": "arrow", "steps": ["M", 365, 369, "L", 374, 373, 374, 372, "Z"], "when": 367}, {"style": "term", "x": 361, "y": 375, "anchor": "start", "parts": "level with the lip again {level} behind it ({level_way})", "of": "level", "hidden": "level again ?", "when": 376}, {"style": "term", "x": 361, "y": 375, "anchor": "start", "parts": "the flank stands ahead of the lip at once", "of": "level", "hidden": "level again ?", "when": 377}, {"style": "thin", "steps": ["M", 378, 379, "L", 378, 345], "when": 342}, {"style": "thin", "steps": ["M", 7, 380, "L", 378, 380], "when": 342}, {"style": "arrow", "steps": ["M", 7, 380, "L", 381, 382, 381, 383, "Z"], "when": 342}, {"style": "arrow", "steps": ["M", 378, 380, "L", 384, 383, 384, 382, "Z"], "when": 342}, {"style": "term", "x": 361, "y": 385, "anchor": "start", "parts": "land of {land} to the heel ({land_way})", "when": 342}, {"style": "term", "x": 361, "y": 385, "anchor": "start", "parts": "at radius {radius}; where the land ends here is not drawn", "of": "radius", "hidden": "nearer to the axis; where the land ends here is not drawn", "when": 343}], "words": [{"parts": "The cylinder through a place on the lip rolled out flat, tip down, the work under it. "}, {"parts": "The place is {radius} from the axis", "of": "radius", "hidden": "The radius is not told"}, {"parts": "; the lip relief at the corner is {lip_relief}, ", "of": "lip_relief", "hidden": "; the lip relief is not told", "judged": "lip_relief", "low": 5.0, "high": 24.0, "below": "less than the usual 5° to 24°", "within": "within the usual 5° to 24°", "above": "more than the usual 5° to 24°"}, {"parts": ". Here the relief is {relief_at_radius}", "of": "relief_at_radius", "hidden": ". The relief here is not told"}, {"parts": "; the feed of {feed} takes {feed_relief_loss} of it", "of": "feed_relief_loss", "hidden": "; what the feed takes of it is not told"}, {"parts": " and leaves {working_relief}: ", "of": "working_relief", "hidden": "; what it leaves is not told.", "judged": "working_relief", "low": 1e-09, "high": 2.0, "below": "the flank rubs straight behind the lip.", "within": "hardly enough.", "above": "the lip can go in."}, {"parts": "", "of": "touching", "judged": "verdict", "low": 0.5, "high": 1.5, "below": " The flank keeps clear of the work over the whole land, {land} to the heel.", "within": " It touches the work {touching} behind the lip, before the heel at {land}: a single plane flank so wide rubs."}, {"parts": "", "of": "touching", "judged": "verdict", "low": 1.5, "high": 2.5, "within": " Carried on, it would touch the work {touching} behind the lip."}, {"parts": "", "of": "level", "judged": "level", "low": 1e-09, "high": 360.0, "below": " The flank stands ahead of the lip at once.", "within": " It is level with the lip again {level} behind it."}], "numbers": [{"name": "level", "place": 0, "like": "heel_clearance"}, {"name": "level_way", "place": 1, "like": "lip_length"}, {"name": "touching", "place": 2, "like": "heel_clearance"}, {"name": "touching_way", "place": 3, "like": "lip_length"}, {"name": "land", "place": 4, "like": "heel_clearance"}, {"name": "land_way", "place": 5, "like": "lip_length"}, {"name": "verdict", "place": 6, "like": "turn_share"}]}};
// scene rake_along_lip
scenes.rake_along_lip = {coordinates: function coordinates({diameter, radius, web, web_ratio, point_angle, chisel_edge_angle, axial_relief, helix_angle, normal_rake, normal_relief, wedge_angle}) {
  const v0 = (1/2)*diameter;
  const v1 = (1/180)*Math.PI;
  const v2 = 2*Math.tan(helix_angle*v1)/diameter;
  const v3 = 1/Math.PI;
  const v4 = 180*v3;
  const v5 = Math.pow(web, 2);
  const v6 = (1/4)*v5;
  const w0 = v0;
  const v7 = Math.sqrt(-v6/Math.pow(w0, 2) + 1);
  const v8 = (1/360)*Math.PI;
  const v9 = point_angle*v8;
  const v10 = (1/2)*web;
  const v11 = v10*Math.cos(v9);
  const v12 = v11/w0;
  const v13 = 180*Math.atan(v12/v7);
  const w1 = v4*Math.atan(v2*w0);
  const v14 = Math.tan(v1*w1);
  const v15 = Math.sin(v9);
  const v16 = (1/2)*Math.PI;
  const v17 = -v16;
  const v18 = 180*Math.atan(v15*Math.tan(axial_relief*v1));
  const v19 = chisel_edge_angle*v1;
  const v20 = Math.sin(v19);
  const v21 = v10/v20;
  const w20 = v21;
  const v22 = Math.sqrt(-v6/Math.pow(w20, 2) + 1);
  const v23 = v11/w20;
  const v24 = 180*Math.atan(v23/v22);
  const w21 = v4*Math.atan(v2*w20);
  const v25 = Math.tan(v1*w21);
  const w2 = v3*(-v13 + 180*Math.atan(v14*v7/(-v12*v14 + v15)));
  const w3 = v1*w2 + v17;
  const w4 = v3*(v13 + v18);
  const w5 = -v1*w4;
  const v26 = (1/2)*w3 + (1/2)*w5;
  const v27 = Math.cos(v26);
  const v28 = Math.sin(v26);
  const w6 = -Math.max(v16, -w3);
  const w7 = Math.max(v17, w3);
  const v29 = (1/2)*w6 + (1/2)*w7;
  const w8 = -Math.max(0, -w5);
  const w9 = Math.max(0, w5);
  const v30 = (1/2)*w8 + (1/2)*w9;
  const w10 = -w2 - w4 + 90;
  const v31 = Math.max(34.0, Math.min(68.0, 11/Math.sin(v8*w10)));
  const w11 = normal_rake;
  const w12 = v1*w11 + v17;
  const w13 = normal_relief;
  const w14 = -v1*w13;
  const v32 = (1/2)*w12 + (1/2)*w14;
  const v33 = Math.cos(v32);
  const v34 = Math.sin(v32);
  const w15 = -Math.max(v16, -w12);
  const w16 = Math.max(v17, w12);
  const v35 = (1/2)*w15 + (1/2)*w16;
  const w17 = -Math.max(0, -w14);
  const w18 = Math.max(0, w14);
  const v36 = (1/2)*w17 + (1/2)*w18;
  const w19 = wedge_angle;
  const v37 = Math.max(34.0, Math.min(68.0, 11/Math.sin(v8*w19)));
  const v38 = radius - v21;
  const v39 = v38 + 1.0e-9;
  const w22 = v3*(-v24 + 180*Math.atan(v22*v25/(v15 - v23*v25)));
  const w23 = v1*w22 + v17;
  const w24 = v3*(v18 + v24);
  const w25 = -v1*w24;
  const v40 = (1/2)*w23 + (1/2)*w25;
  const v41 = Math.cos(v40);
  const v42 = Math.sin(v40);
  const w26 = -Math.max(v16, -w23);
  const w27 = Math.max(v17, w23);
  const v43 = (1/2)*w26 + (1/2)*w27;
  const w28 = -Math.max(0, -w25);
  const w29 = Math.max(0, w25);
  const v44 = (1/2)*w28 + (1/2)*w29;
  const w30 = -w22 - w24 + 90;
  const v45 = Math.max(34.0, Math.min(68.0, 11/Math.sin(v8*w30)));
  const v46 = 56*web_ratio;
  const v47 = v46/Math.tan(v19);
  const v48 = Math.pow(web_ratio, 2);
  const v49 = 56*Math.sqrt(1 - v48);
  const v50 = Math.pow(diameter, -2);
  const v51 = 56*Math.sqrt(4*Math.pow(radius, 2)*v50 - v48);
  const v52 = 56*Math.sqrt(-v48 + v5*v50/Math.pow(v20, 2));
  return [97, 262, 84.0*Math.cos(w3) + 97, 84.0*Math.sin(w3) + 262, 94.08*v27 + 97, 94.08*v28 + 262, 84.0*Math.cos(w5) + 97, 84.0*Math.sin(w5) + 262, 258, 97.0000000000000, 166.000000000000, 13, 189.000000000000, 262.000000000000, 95.4000000000000, 1.60000000000000, 98.6000000000000, 57, 20.5000000000000, 15, 26.0000000000000, 259.400000000000, 264.600000000000, 280, 60.0*Math.cos(w6) + 97, 60.0*Math.sin(w6) + 262, 60.0000000000000, 60.0*Math.cos(w7) + 97, 60.0*Math.sin(w7) + 262, 95.0*Math.cos(v29) + 97, 95.0*Math.sin(v29) + 267, 60.0*Math.cos(w8) + 97, 60.0*Math.sin(w8) + 262, 60.0*Math.cos(w9) + 97, 60.0*Math.sin(w9) + 262, 95.0*Math.cos(v30) + 97, 95.0*Math.sin(v30) + 267, v27*v31 + 97, v28*v31 + 267, v0, w2, w10, w4, 322, 350, 374, 398, 422, 286, 84.0*Math.cos(w12) + 286, 84.0*Math.sin(w12) + 262, 94.08*v33 + 286, 94.08*v34 + 262, 84.0*Math.cos(w14) + 286, 84.0*Math.sin(w14) + 262, 286.000000000000, 202, 378.000000000000, 284.400000000000, 287.600000000000, 246, 209.500000000000, 204, 215.000000000000, 60.0*Math.cos(w15) + 286, 60.0*Math.sin(w15) + 262, 60.0*Math.cos(w16) + 286, 60.0*Math.sin(w16) + 262, 95.0*Math.cos(v35) + 286, 95.0*Math.sin(v35) + 267, 60.0*Math.cos(w17) + 286, 60.0*Math.sin(w17) + 262, 60.0*Math.cos(w18) + 286, 60.0*Math.sin(w18) + 262, 95.0*Math.cos(v36) + 286, 95.0*Math.sin(v36) + 267, v33*v37 + 286, v34*v37 + 267, v39, -v39, 473, 84.0*Math.cos(w23) + 473, 84.0*Math.sin(w23) + 262, 94.08*v41 + 473, 94.08*v42 + 262, 84.0*Math.cos(w25) + 473, 84.0*Math.sin(w25) + 262, 473.000000000000, 389, 565.000000000000, 471.400000000000, 474.600000000000, 433, 396.500000000000, 391, 402.000000000000, 60.0*Math.cos(w26) + 473, 60.0*Math.sin(w26) + 262, 60.0*Math.cos(w27) + 473, 60.0*Math.sin(w27) + 262, 95.0*Math.cos(v43) + 473, 95.0*Math.sin(v43) + 267, 60.0*Math.cos(w28) + 473, 60.0*Math.sin(w28) + 262, 60.0*Math.cos(w29) + 473, 60.0*Math.sin(w29) + 262, 95.0*Math.cos(v44) + 473, 95.0*Math.sin(v44) + 267, v41*v45 + 473, v42*v45 + 267, v21, w22, w30, w24, 220, 78, 352, 12, 144, 230, 56, 342, 286 - v47, 78 - v46, v49 + 286, v47 + 286, v46 + 78, 286 - v49, 282.6 - v49, 3.40000000000000, 289.4 - v49, 138, 282.6 - v51, 289.4 - v51, 286 - v51, 282.6 - v52, 289.4 - v52, 286 - v52, v38];
}
, ...{"name": "rake_along_lip", "title": "The wedge cut square to the lip at three places on it", "width": 580, "height": 480, "allowed": [{"name": "web", "says": "web {web} leaves no chisel edge to draw; give a web above 0, for example 1.5", "low": 1e-06}], "shapes": [{"style": "section", "steps": ["M", 0, 1, "L", 2, 3, "Q", 4, 5, 6, 7, "Z"]}, {"style": "fine", "steps": ["M", 2, 3, "Q", 4, 5, 6, 7]}, {"style": "edge", "steps": ["M", 2, 3, "L", 0, 1, 6, 7]}, {"style": "thin", "steps": ["M", 0, 8, "L", 9, 10]}, {"style": "thin", "steps": ["M", 11, 1, "L", 12, 13]}, {"style": "lip", "steps": ["M", 14, 1, "A", 15, 15, "0 0 1", 16, 1, "A", 15, 15, "0 0 1", 14, 1, "Z"]}, {"style": "motion", "steps": ["M", 17, 1, "L", 18, 1]}, {"style": "arrow", "steps": ["M", 19, 1, "L", 20, 21, 20, 22, "Z"]}, {"style": "term", "x": 19, "y": 23, "anchor": "start", "parts": "moves"}, {"style": "thin", "steps": ["M", 24, 25, "A", 26, 26, "0 0 1", 27, 28]}, {"style": "term", "x": 29, "y": 30, "anchor": "middle", "parts": "γ"}, {"style": "thin", "steps": ["M", 31, 32, "A", 26, 26, "0 0 1", 33, 34]}, {"style": "term", "x": 35, "y": 36, "anchor": "middle", "parts": "α"}, {"style": "term", "x": 37, "y": 38, "anchor": "middle", "parts": "θ"}, {"style": "term", "x": 0, "y": 43, "anchor": "middle", "parts": "at the outer corner"}, {"style": "term", "x": 0, "y": 44, "anchor": "middle", "parts": "r = {corner_radius}", "of": "corner_radius", "hidden": "r = ?"}, {"style": "value", "x": 0, "y": 45, "anchor": "middle", "parts": "rake γ {corner_normal_rake}", "of": "corner_normal_rake", "hidden": "rake γ ?"}, {"style": "term", "x": 0, "y": 46, "anchor": "middle", "parts": "wedge θ {corner_wedge_angle}", "of": "corner_wedge_angle", "hidden": "wedge θ ?"}, {"style": "term", "x": 0, "y": 47, "anchor": "middle", "parts": "relief α {corner_normal_relief}", "of": "corner_normal_relief", "hidden": "relief α ?"}, {"style": "section", "steps": ["M", 48, 1, "L", 49, 50, "Q", 51, 52, 53, 54, "Z"]}, {"style": "fine", "steps": ["M", 49, 50, "Q", 51, 52, 53, 54]}, {"style": "edge", "steps": ["M", 49, 50, "L", 48, 1, 53, 54]}, {"style": "thin", "steps": ["M", 48, 8, "L", 55, 10]}, {"style": "thin", "steps": ["M", 56, 1, "L", 57, 13]}, {"style": "lip", "steps": ["M", 58, 1, "A", 15, 15, "0 0 1", 59, 1, "A", 15, 15, "0 0 1", 58, 1, "Z"]}, {"style": "motion", "steps": ["M", 60, 1, "L", 61, 1]}, {"style": "arrow", "steps": ["M", 62, 1, "L", 63, 21, 63, 22, "Z"]}, {"style": "term", "x": 62, "y": 23, "anchor": "start", "parts": "moves"}, {"style": "thin", "steps": ["M", 64, 65, "A", 26, 26, "0 0 1", 66, 67]}, {"style": "term", "x": 68, "y": 69, "anchor": "middle", "parts": "γ"}, {"style": "thin", "steps": ["M", 70, 71, "A", 26, 26, "0 0 1", 72, 73]}, {"style": "term", "x": 74, "y": 75, "anchor": "middle", "parts": "α"}, {"style": "term", "x": 76, "y": 77, "anchor": "middle", "parts": "θ"}, {"style": "term", "x": 48, "y": 43, "anchor": "middle", "parts": "between", "when": 78}, {"style": "term", "x": 48, "y": 43, "anchor": "middle", "parts": "inside: no lip here", "when": 79}, {"style": "term", "x": 48, "y": 44, "anchor": "middle", "parts": "r = {radius}", "of": "radius", "hidden": "r = ?"}, {"style": "value", "x": 48, "y": 45, "anchor": "middle", "parts": "rake γ {normal_rake}", "of": "normal_rake", "hidden": "rake γ ?"}, {"style": "term", "x": 48, "y": 46, "anchor": "middle", "parts": "wedge θ {wedge_angle}", "of": "wedge_angle", "hidden": "wedge θ ?"}, {"style": "term", "x": 48, "y": 47, "anchor": "middle", "parts": "relief α {normal_relief}", "of": "normal_relief", "hidden": "relief α ?"}, {"style": "section", "steps": ["M", 80, 1, "L", 81, 82, "Q", 83, 84, 85, 86, "Z"]}, {"style": "fine", "steps": ["M", 81, 82, "Q", 83, 84, 85, 86]}, {"style": "edge", "steps": ["M", 81, 82, "L", 80, 1, 85, 86]}, {"style": "thin", "steps": ["M", 80, 8, "L", 87, 10]}, {"style": "thin", "steps": ["M", 88, 1, "L", 89, 13]}, {"style": "lip", "steps": ["M", 90, 1, "A", 15, 15, "0 0 1", 91, 1, "A", 15, 15, "0 0 1", 90, 1, "Z"]}, {"style": "motion", "steps": ["M", 92, 1, "L", 93, 1]}, {"style": "arrow", "steps": ["M", 94, 1, "L", 95, 21, 95, 22, "Z"]}, {"style": "term", "x": 94, "y": 23, "anchor": "start", "parts": "moves"}, {"style": "thin", "steps": ["M", 96, 97, "A", 26, 26, "0 0 1", 98, 99]}, {"style": "term", "x": 100, "y": 101, "anchor": "middle", "parts": "γ"}, {"style": "thin", "steps": ["M", 102, 103, "A", 26, 26, "0 0 1", 104, 105]}, {"style": "term", "x": 106, "y": 107, "anchor": "middle", "parts": "α"}, {"style": "term", "x": 108, "y": 109, "anchor": "middle", "parts": "θ"}, {"style": "term", "x": 80, "y": 43, "anchor": "middle", "parts": "at the chisel edge"}, {"style": "term", "x": 80, "y": 44, "anchor": "middle", "parts": "r = {inner_radius}", "of": "inner_radius", "hidden": "r = ?"}, {"style": "value", "x": 80, "y": 45, "anchor": "middle", "parts": "rake γ {inner_normal_rake}", "of": "inner_normal_rake", "hidden": "rake γ ?"}, {"style": "term", "x": 80, "y": 46, "anchor": "middle", "parts": "wedge θ {inner_wedge_angle}", "of": "inner_wedge_angle", "hidden": "wedge θ ?"}, {"style": "term", "x": 80, "y": 47, "anchor": "middle", "parts": "relief α {inner_normal_relief}", "of": "inner_normal_relief", "hidden": "relief α ?"}, {"style": "centre", "steps": ["M", 114, 115, "L", 116, 115]}, {"style": "centre", "steps": ["M", 48, 117, "L", 48, 118]}, {"style": "swept", "steps": ["M", 119, 115, "A", 120, 120, "0 0 1", 121, 115, "A", 120, 120, "0 0 1", 119, 115, "Z"]}, {"style": "lip", "steps": ["M", 122, 123, "L", 124, 123]}, {"style": "lip", "steps": ["M", 125, 126, "L", 127, 126]}, {"style": "chisel", "steps": ["M", 122, 123, "L", 125, 126]}, {"style": "arrow", "steps": ["M", 128, 126, "A", 129, 129, "0 0 1", 130, 126, "A", 129, 129, "0 0 1", 128, 126, "Z"]}, {"style": "thin", "steps": ["M", 127, 126, "L", 0, 131]}, {"style": "arrow", "steps": ["M", 132, 126, "A", 129, 129, "0 0 1", 133, 126, "A", 129, 129, "0 0 1", 132, 126, "Z"]}, {"style": "thin", "steps": ["M", 134, 126, "L", 48, 131]}, {"style": "arrow", "steps": ["M", 135, 126, "A", 129, 129, "0 0 1", 136, 126, "A", 129, 129, "0 0 1", 135, 126, "Z"]}, {"style": "thin", "steps": ["M", 137, 126, "L", 80, 131]}], "words": [{"parts": "The wedge of metal at the lip, cut square to the lip at three places, moving to the left. "}, {"parts": "At the outer corner the rake is {corner_normal_rake}, the wedge {corner_wedge_angle}, the relief {corner_normal_relief}", "of": "corner_normal_rake", "hidden": "The rake at the outer corner is not told"}, {"parts": "; at radius {radius} the rake is {normal_rake}, ", "of": "normal_rake", "hidden": "; at radius {radius} it is not told", "judged": "normal_rake", "low": -1e-09, "high": 1e-09, "below": "below zero: the face leans ahead", "within": "square to the movement", "above": "the face leans back"}, {"parts": ", the wedge {wedge_angle}", "of": "wedge_angle", "judged": "wedge_angle", "low": 30.0, "high": 100.0, "below": ", thin and weak", "above": ", thick and blunt"}, {"parts": "", "judged": "outside_chisel_edge", "low": -1e-09, "high": 1000000.0, "below": " (but the chisel edge already takes this place)"}, {"parts": "; where the chisel edge begins, at {inner_radius}, the rake is {inner_normal_rake}, ", "of": "inner_normal_rake", "hidden": ".", "judged": "inner_normal_rake", "low": -1e-09, "high": 1e-09, "below": "below zero: it pushes more than it cuts.", "within": "square to the movement.", "above": "still above zero."}], "numbers": [{"name": "corner_radius", "place": 39, "like": "radius"}, {"name": "corner_normal_rake", "place": 40, "like": "normal_rake"}, {"name": "corner_wedge_angle", "place": 41, "like": "wedge_angle"}, {"name": "corner_normal_relief", "place": 42, "like": "normal_relief"}, {"name": "inner_radius", "place": 110, "like": "radius"}, {"name": "inner_normal_rake", "place": 111, "like": "normal_rake"}, {"name": "inner_wedge_angle", "place": 112, "like": "wedge_angle"}, {"name": "inner_normal_relief", "place": 113, "like": "normal_relief"}, {"name": "outside_chisel_edge", "place": 138, "like": "lip_length"}]}};
// scene dubbed_lip
scenes.dubbed_lip = {coordinates: function coordinates({normal_rake, normal_relief, dub_normal_rake, dub_width, least_dub_width, dub_set_back, chip_thickness}) {
  const v0 = (1/180)*Math.PI;
  const v1 = normal_rake*v0;
  const v2 = dub_normal_rake*v0;
  const v3 = Math.cos(v2);
  const w0 = Math.min(120/dub_width, 100/(chip_thickness + 1.0e-9), 120/(dub_set_back + 1.0e-9));
  const v4 = dub_width*w0;
  const v5 = v3*v4;
  const w2 = v1 - 1/2*Math.PI;
  const v6 = Math.cos(w2);
  const w1 = chip_thickness*w0;
  const w3 = v5;
  const v7 = Math.min(w1, w3);
  const v8 = Math.sin(v2);
  const v9 = 270 + v7*v8/v3;
  const v10 = Math.sin(w2);
  const v11 = w1 + 110;
  const v12 = -6.0*v11/Math.abs(v11);
  const v13 = v4*v8;
  const v14 = v13 + 270;
  const w4 = Math.max(0, w1 - w3)/Math.cos(v1);
  const v15 = Math.max(56, w4 + 20);
  const v16 = v15*v6;
  const v17 = normal_relief*v0;
  const v18 = Math.cos(v17);
  const v19 = (1/2)*v13;
  const v20 = Math.sin(v17);
  const v21 = (1/2)*v5;
  const v22 = dub_set_back*w0;
  const v23 = v18*v22;
  const v24 = v20*v22;
  return [40, 290 - w1, v6*w4 + v9, v10*w4 - v7 + 290, v9, 290 - v7, 270, 290, 440, 434.000000000000, 308.333333333333, 326.666666666667, 345, 446.000000000000, 363.333333333333, 381.666666666667, 400, 373.333333333333, 394.000000000000, 306.666666666667, 240, 173.333333333333, 406.000000000000, 106.666666666667, 40 - v12, 381.666666666667 - 0.166666666666667*w1, 363.333333333333 - 0.333333333333333*w1, 345 - 1/2*w1, v12 + 40, 326.666666666667 - 0.666666666666667*w1, 308.333333333333 - 0.833333333333333*w1, v14, 290 - v5, v14 + v16, v10*v15 - v5 + 290, (1/2)*v16 + 66*v18 + v19 + 1454/5, (1/2)*v10*v15 - 66*v20 - v21 + 1372/5, 132*v18 + 270, 290 - 132*v20, 270 - v23, v24 + 290, 268.400000000000, 1.60000000000000, 271.600000000000, 70, 270.0 - w1, 310.000000000000, 67.4000000000000, 279.0 - w1, 72.6000000000000, 301.000000000000, 65.0000000000000, 166, 24, 137, 156, v19 + 270, 290 - v21, 196, 92, 181.000000000000, 174.000000000000, 80, 99, 270 - 1/2*v23, (1/2)*v24 + 290, 444, 211.000000000000, 218.000000000000, 432, 451, 100, 34, 45.5000000000000, 51.0000000000000, 31.4000000000000, 36.6000000000000, 110, 39, 284, 140, 60, 116, 136, 192, dub_width - least_dub_width, w0];
}
, ...{"name": "dubbed_lip", "title": "A lip with a flat, cut square to the lip, and the layer being cut", "width": 580, "height": 480, "allowed": [{"name": "dub_width", "says": "a flat of {dub_width} is none; give a width above 0, for example 0.2", "low": 0.0001}, {"name": "chip_thickness", "says": "without a layer to cut there is nothing to draw; 0.05 mm is usual", "low": 0.0001}], "bar": {"x": 24.0, "y": 456.0, "longest": 90.0, "scale": 86}, "shapes": [{"style": "section_other", "steps": ["M", 0, 1, "L", 2, 3, 4, 5, 6, 7, 8, 7, "C", 9, 10, 9, 11, 8, 12, "C", 13, 14, 13, 15, 8, 16, "C", 17, 18, 19, 18, 20, 16, "C", 21, 22, 23, 22, 0, 16, "C", 24, 25, 24, 26, 0, 27, "C", 28, 29, 28, 30, 0, 1]}, {"style": "edge", "steps": ["M", 0, 1, "L", 2, 3]}, {"style": "edge", "steps": ["M", 6, 7, "L", 8, 7]}, {"style": "section", "steps": ["M", 6, 7, "L", 31, 32, 33, 34, "Q", 35, 36, 37, 38, "Z"]}, {"style": "fine", "steps": ["M", 33, 34, "Q", 35, 36, 37, 38]}, {"style": "edge", "steps": ["M", 31, 32, "L", 33, 34]}, {"style": "edge", "steps": ["M", 6, 7, "L", 37, 38]}, {"style": "swept", "steps": ["M", 31, 32, "L", 39, 40, 6, 7]}, {"style": "chisel", "steps": ["M", 6, 7, "L", 31, 32]}, {"style": "lip", "steps": ["M", 41, 7, "A", 42, 42, "0 0 1", 43, 7, "A", 42, 42, "0 0 1", 41, 7, "Z"]}, {"style": "thin", "steps": ["M", 44, 45, "L", 44, 46]}, {"style": "arrow", "steps": ["M", 44, 1, "L", 47, 48, 49, 48, "Z"]}, {"style": "arrow", "steps": ["M", 44, 7, "L", 49, 50, 47, 50, "Z"]}, {"style": "thin", "steps": ["M", 51, 7, "L", 6, 7]}, {"style": "thin", "steps": ["M", 44, 45, "L", 44, 52]}, {"style": "term", "x": 53, "y": 54, "anchor": "start", "parts": "layer being cut"}, {"style": "value", "x": 53, "y": 55, "anchor": "start", "parts": "{chip_thickness}", "of": "chip_thickness", "hidden": "?"}, {"style": "thin", "steps": ["M", 56, 57, "L", 58, 59, 60, 59]}, {"style": "term", "x": 61, "y": 62, "anchor": "end", "parts": "width of the flat"}, {"style": "value", "x": 61, "y": 63, "anchor": "end", "parts": "{dub_width}", "of": "dub_width", "hidden": "?"}, {"style": "thin", "steps": ["M", 64, 65, "L", 58, 66, 67, 66]}, {"style": "term", "x": 68, "y": 69, "anchor": "start", "parts": "set back by"}, {"style": "value", "x": 68, "y": 70, "anchor": "start", "parts": "{dub_set_back}", "of": "dub_set_back", "hidden": "?"}, {"style": "motion", "steps": ["M", 71, 72, "L", 73, 72]}, {"style": "arrow", "steps": ["M", 0, 72, "L", 74, 75, 74, 76, "Z"]}, {"style": "term", "x": 77, "y": 78, "anchor": "start", "parts": "moves"}, {"style": "thin", "steps": ["M", 6, 79, "L", 6, 80]}, {"style": "value", "x": 69, "y": 0, "anchor": "start", "parts": "before"}, {"style": "term", "x": 69, "y": 81, "anchor": "start", "parts": "rake γ {normal_rake}", "of": "normal_rake", "hidden": "rake γ ?"}, {"style": "term", "x": 69, "y": 62, "anchor": "start", "parts": "wedge θ {wedge_angle}", "of": "wedge_angle", "hidden": "wedge θ ?"}, {"style": "value", "x": 69, "y": 82, "anchor": "start", "parts": "with the flat"}, {"style": "term", "x": 69, "y": 83, "anchor": "start", "parts": "rake γ {dub_normal_rake}", "of": "dub_normal_rake", "hidden": "rake γ ?"}, {"style": "term", "x": 69, "y": 55, "anchor": "start", "parts": "wedge θ {dub_wedge_angle}", "of": "dub_wedge_angle", "hidden": "wedge θ ?"}, {"style": "term", "x": 69, "y": 84, "anchor": "start", "parts": "relief α {normal_relief}", "of": "normal_relief", "hidden": "relief α ?"}], "words": [{"parts": "A lip cut square to it, moving to the left, before and with a flat ground on its face. "}, {"parts": "Before, the rake is {normal_rake}", "of": "normal_rake", "hidden": "The rake before is not told"}, {"parts": " and the wedge {wedge_angle}. ", "of": "wedge_angle", "hidden": ". "}, {"parts": "On the flat the rake is {dub_normal_rake}", "of": "dub_normal_rake", "hidden": "The rake on the flat is not told"}, {"parts": " and the wedge {dub_wedge_angle}", "of": "dub_wedge_angle"}, {"parts": "; the relief stays {normal_relief}. ", "of": "normal_relief", "hidden": "; the relief stays. "}, {"parts": "The flat is {dub_width} wide. ", "of": "dub_width", "hidden": "The width of the flat is not told. "}, {"parts": "The layer being cut is {chip_thickness} thick, ", "of": "chip_thickness", "hidden": "The layer is not told, "}, {"parts": "", "of": "least_dub_width", "hidden": "and so not the least width. ", "judged": "to_spare", "high": 1000000000.0, "below": "so the flat is too narrow: a part still meets the flute's own face; {least_dub_width} is the least. ", "within": "so the flat is wide enough: {least_dub_width} is the least. "}, {"parts": "It sets the lip back along the flank by {dub_set_back}.", "of": "dub_set_back", "hidden": "How far it sets the lip back is not told."}], "numbers": [{"name": "to_spare", "place": 85, "like": "least_dub_width"}]}};
// scene chisel_view
scenes.chisel_view = {coordinates: function coordinates({point_angle, chisel_edge_angle, chisel_edge_length, chisel_edge_rake}) {
  const v0 = (1/180)*Math.PI;
  const w0 = -chisel_edge_rake*v0;
  const v1 = Math.sin(w0);
  const v2 = 34*v1;
  const v3 = Math.cos(w0);
  const v4 = 34*v3;
  const v5 = 150*v1;
  const v6 = 150*v3;
  const v7 = 50*v1;
  const v8 = 96*v1;
  const v9 = v8 - 196;
  const v10 = 96*v3;
  const v11 = v10 - 292;
  const v12 = w0 - 0.0572916666666667;
  const v13 = Math.sin(v12);
  const v14 = 2.6*v13;
  const v15 = Math.cos(v12);
  const v16 = 2.6*v15;
  const v17 = v11 + 11.0*v13;
  const v18 = (1/2)*w0;
  const v19 = Math.sin(v18);
  const v20 = Math.cos(v18);
  const v21 = 64*v1;
  const v22 = v21 - 196;
  const v23 = 64*v3 - 292;
  const v24 = v21 + 196;
  const v25 = w0 - 0.0859375;
  const v26 = Math.sin(v25);
  const v27 = 2.6*v26;
  const v28 = Math.cos(v25);
  const v29 = 11.0*v28;
  const v30 = -v29;
  const v31 = v27 + v30;
  const v32 = 2.6*v28;
  const v33 = v23 + 11.0*v26;
  const v34 = v8 + 196;
  const v35 = w0 + 0.0572916666666667;
  const v36 = Math.sin(v35);
  const v37 = 2.6*v36;
  const v38 = Math.cos(v35);
  const v39 = v34 + 11.0*v38;
  const v40 = 2.6*v38;
  const v41 = -v10 + 11.0*v36 + 292;
  const v42 = v18 + (1/4)*Math.PI;
  const w1 = -Math.cos(chisel_edge_angle*v0);
  const w2 = 1/Math.tan((1/360)*Math.PI*point_angle);
  const v43 = Math.min(32, 96*w1/w2);
  const v44 = -v43*w2/w1;
  const v45 = (1/3)*v43;
  return [-2*chisel_edge_rake, chisel_edge_rake + 90, 362, 292, 196, 196 - v2, 292 - v4, 182 - v2, 284 - v4, 170 - v2, 280, 144 - v2, 20, 372, 77.0000000000000, 377.000000000000, 134.000000000000, 191, 248.000000000000, 367.000000000000, 305.000000000000, 196 - v5, 292 - v6, v5 + 196, 196 - v7, 301 - v6, v7 + 196, 283 - v6, 194.000000000000, 2.00000000000000, 198.000000000000, 92, 398, 35.5000000000000, 30, 41.0000000000000, 395.400000000000, 400.600000000000, 422, 354, 358, 318, 128, 200, 356, -v9, -v11, 96, -v14 + 11.0*v15 - v9, -v16 - v17, v14 + 11.0*v15 - v8 + 196, v16 - v17, 185.166924763645, 199.225597762193, 184.869171047287, 194.034129499322, 196 - 96*v19, 292 - 96*v20, 78, -v22, -v23, 64, v24, -v22 - v31, -v32 - v33, -v21 + v27 + v29 + 196, v32 - v33, v24 - v27 + v30, v24 + v31, 64*v19 + 196, 292 - 64*v20, 210, v34, v37 + v39, -v40 + v41, -v37 + v39, v40 + v41, 288.774402237807, 281.166924763645, 293.965870500678, 280.869171047286, 96*Math.sin(v42) + 196, 292 - 96*Math.cos(v42), 328, 66, 85, 28, 422 - v43, v44 + 292, 1370/3 - v45, v44 + 298, v45 + 1474/3, v44 + 286, v43 + 526, 526, 474, 310, 142, 296.000000000000, 331.000000000000, 326, 433.000000000000, 323.400000000000, 328.600000000000, 515.000000000000, 350, 369, 104/chisel_edge_length];
}
, ...{"name": "chisel_view", "title": "The chisel edge, seen along it and square to it, tip down", "width": 580, "height": 480, "allowed": [{"name": "web", "says": "web {web} leaves no chisel edge to draw; give a web above 0, for example 1.5", "low": 1e-06}, {"name": "chisel_edge_angle", "says": "with so little relief the flank would stand above its lip at the centre, rub, and never cut; give more relief", "low": 90.0}], "bar": {"x": 24.0, "y": 456.0, "longest": 100.0, "scale": 107}, "shapes": [{"style": "section", "steps": ["M", 2, 3, "L", 4, 3, 5, 6, "C", 7, 8, 9, 10, 11, 10, "L", 12, 10, 12, 13, 2, 13, "Z"]}, {"style": "edge", "steps": ["M", 2, 3, "L", 4, 3, 5, 6, "C", 7, 8, 9, 10, 11, 10, "L", 12, 10]}, {"style": "fine", "steps": ["M", 12, 13, "C", 14, 15, 16, 15, 17, 13, "C", 18, 19, 20, 19, 2, 13]}, {"style": "flank", "steps": ["M", 21, 22, "L", 4, 3, 23, 22, "Z"]}, {"style": "edge", "steps": ["M", 21, 22, "L", 4, 3, 23, 22]}, {"style": "fine", "steps": ["M", 21, 22, "C", 24, 25, 26, 27, 23, 22]}, {"style": "chisel", "steps": ["M", 28, 3, "A", 29, 29, "0 0 1", 30, 3, "A", 29, 29, "0 0 1", 28, 3, "Z"]}, {"style": "motion", "steps": ["M", 31, 32, "L", 33, 32]}, {"style": "arrow", "steps": ["M", 34, 32, "L", 35, 36, 35, 37, "Z"]}, {"style": "term", "x": 34, "y": 38, "anchor": "start", "parts": "the near end of the edge moves"}, {"style": "term", "x": 39, "y": 40, "anchor": "end", "parts": "work"}, {"style": "centre", "steps": ["M", 4, 41, "L", 4, 42]}, {"style": "thin", "steps": ["M", 43, 3, "L", 44, 3]}, {"style": "thin", "steps": ["M", 45, 46, "A", 47, 47, "0 0 1", 4, 4]}, {"style": "arrow", "steps": ["M", 45, 46, "L", 48, 49, 50, 51, "Z"]}, {"style": "arrow", "steps": ["M", 4, 4, "L", 52, 53, 54, 55, "Z"]}, {"style": "thin", "steps": ["M", 56, 57, "L", 58, 31]}, {"style": "thin", "steps": ["M", 59, 60, "A", 61, 61, "0 0 1", 62, 60]}, {"style": "arrow", "steps": ["M", 59, 60, "L", 63, 64, 65, 66, "Z"]}, {"style": "arrow", "steps": ["M", 62, 60, "L", 67, 66, 68, 64, "Z"]}, {"style": "thin", "steps": ["M", 69, 70, "L", 71, 31]}, {"style": "thin", "steps": ["M", 72, 46, "A", 47, 47, "0 0 1", 3, 3]}, {"style": "arrow", "steps": ["M", 72, 46, "L", 73, 74, 75, 76, "Z"]}, {"style": "arrow", "steps": ["M", 3, 3, "L", 77, 78, 79, 80, "Z"]}, {"style": "thin", "steps": ["M", 81, 82, "L", 83, 31]}, {"style": "term", "x": 58, "y": 84, "anchor": "middle", "parts": "rake"}, {"style": "value", "x": 58, "y": 85, "anchor": "middle", "parts": "{chisel_edge_rake}", "of": "chisel_edge_rake", "hidden": "?"}, {"style": "term", "x": 71, "y": 84, "anchor": "middle", "parts": "wedge"}, {"style": "value", "x": 71, "y": 85, "anchor": "middle", "parts": "{edge_wedge}", "of": "chisel_edge_rake", "hidden": "?"}, {"style": "term", "x": 83, "y": 84, "anchor": "middle", "parts": "relief"}, {"style": "value", "x": 83, "y": 85, "anchor": "middle", "parts": "{edge_relief}", "of": "chisel_edge_rake", "hidden": "?"}, {"style": "term", "x": 4, "y": 86, "anchor": "middle", "parts": "along the chisel edge"}, {"style": "flank", "steps": ["M", 87, 88, "C", 89, 90, 91, 92, 93, 88, "L", 94, 3, 38, 3, "Z"]}, {"style": "fine", "steps": ["M", 87, 88, "C", 89, 90, 91, 92, 93, 88]}, {"style": "lip", "steps": ["M", 38, 3, "L", 87, 88]}, {"style": "lip", "steps": ["M", 94, 3, "L", 93, 88]}, {"style": "chisel", "steps": ["M", 38, 3, "L", 94, 3]}, {"style": "centre", "steps": ["M", 95, 96, "L", 95, 97]}, {"style": "thin", "steps": ["M", 38, 98, "L", 38, 99]}, {"style": "thin", "steps": ["M", 94, 98, "L", 94, 99]}, {"style": "thin", "steps": ["M", 38, 100, "L", 94, 100]}, {"style": "arrow", "steps": ["M", 38, 100, "L", 101, 102, 101, 103, "Z"]}, {"style": "arrow", "steps": ["M", 94, 100, "L", 104, 103, 104, 102, "Z"]}, {"style": "term", "x": 95, "y": 105, "anchor": "middle", "parts": "chisel edge"}, {"style": "value", "x": 95, "y": 106, "anchor": "middle", "parts": "{chisel_edge_length}", "of": "chisel_edge_length", "hidden": "?"}, {"style": "term", "x": 95, "y": 86, "anchor": "middle", "parts": "square to it"}], "words": [{"parts": "The chisel edge of a two-flute twist drill, seen along it and square to it, tip down. "}, {"parts": "It is {chisel_edge_length} long", "of": "chisel_edge_length", "hidden": "Its length is not told"}, {"parts": ". Seen along it the two flanks make a wedge of {edge_wedge}; the one that leads has a rake of {chisel_edge_rake}, ", "of": "chisel_edge_rake", "hidden": ". The rake is not told.", "judged": "chisel_edge_rake", "low": -65.0, "high": -45.0, "below": "even flatter on the work than the usual -65° to -45°: it pushes and hardly cuts.", "within": "within the usual -65° to -45°: it pushes more than it cuts.", "above": "sharper than the usual -65° to -45°, and still it pushes."}, {"parts": " Behind it the relief is {edge_relief}. The chisel edge angle is {chisel_edge_angle}.", "of": "chisel_edge_rake"}], "numbers": [{"name": "edge_wedge", "place": 0, "like": "wedge_angle"}, {"name": "edge_relief", "place": 1, "like": "wedge_angle"}]}};
// scene regrind
scenes.regrind = {coordinates: function coordinates({diameter, point_angle, lip_relief, new_point_angle, wear_land, chip_depth}) {
  const v0 = (1/360)*Math.PI;
  const v1 = new_point_angle*v0;
  const v2 = 1/Math.tan(v1);
  const v3 = (1/2)*diameter;
  const v4 = point_angle*v0;
  const v5 = 1/Math.tan(v4);
  const v6 = v3*v5;
  const v7 = Math.min(210/diameter, 118/Math.max(v6, v2*v3));
  const v8 = -v2 + v5;
  const v9 = diameter*v8;
  const v10 = (1/2)*v9;
  const v11 = (1/180)*Math.PI*lip_relief;
  const v12 = Math.tan(v11);
  const v13 = v12*wear_land;
  const v14 = Math.sin(v1);
  const v15 = chip_depth*Math.cos(v1 - v4)/v14;
  const v16 = v15 - 1/4*v9;
  const v17 = Math.max(0, v13, v16, -v10);
  const v18 = v10 + v17;
  const v19 = v18*v7;
  const v20 = v19 + 130;
  const v21 = diameter*v7;
  const v22 = (1/2)*v21;
  const v23 = v22 + 270;
  const v24 = v7*(v17 + v6);
  const v25 = v24 + 130;
  const v26 = 0.333333333333333*v21;
  const v27 = 8.0*v21/(Math.sqrt(Math.pow(v7, 2))*Math.abs(diameter));
  const v28 = v22*v5;
  const v29 = v28 + 130;
  const v30 = (11/40)*v21;
  const v31 = Math.sin(v4);
  const v32 = chip_depth*v7;
  const v33 = v31*v32;
  const v34 = (1/4)*v21;
  const v35 = 270 - v34;
  const v36 = Math.cos(v4);
  const v37 = v32*v36;
  const v38 = v34*v5 + 130;
  const v39 = 4.0*v31;
  const v40 = 45.0*v31;
  const v41 = 40.0*v31;
  const v42 = v41 - 270;
  const v43 = 40.0*v36 - 130;
  const v44 = v41 + 270;
  const v45 = v4 - 0.1375;
  const v46 = Math.sin(v45);
  const v47 = 2.6*v46;
  const v48 = Math.cos(v45);
  const v49 = 11.0*v48;
  const v50 = -v49;
  const v51 = v47 + v50;
  const v52 = 2.6*v48;
  const v53 = v43 + 11.0*v46;
  const v54 = 48.0*v14;
  const v55 = v54 + 270;
  const v56 = v20 + 48.0*Math.cos(v1);
  const v57 = v54 - 270;
  const v58 = v1 - 0.114583333333333;
  const v59 = Math.sin(v58);
  const v60 = 2.6*v59;
  const v61 = Math.cos(v58);
  const v62 = 11.0*v61;
  const v63 = -v62;
  const v64 = v55 + v63;
  const v65 = 2.6*v61;
  const v66 = v56 + 11.0*v59;
  const v67 = ((v19 > 34.0) ? (
   1
)
: (
   -1
));
  const v68 = 10.0*v67;
  const v69 = 2.6*v67;
  const v70 = 11.0*v67;
  const v71 = (1/2)*v19;
  const v72 = ((v21 < 252) ? (
   1
)
: (
   -1
));
  const v73 = ((v24 - v28 > 34.0) ? (
   1
)
: (
   -1
));
  const v74 = 10.0*v73;
  const v75 = 2.6*v73;
  const v76 = 11.0*v73;
  const v77 = 1.0e-9*diameter;
  const v78 = -diameter*v8;
  const v79 = v15 + (1/4)*v78;
  const v80 = ((v17 <= v77) ? (
   0
)
: ((v9 <= -2*Math.max(v13, v16)) ? (
   3
)
: ((v13 >= v16) ? (
   1
)
: (
   2
))));
  const v81 = 4*v7;
  const v82 = v13*v81;
  const v83 = v82 + 324;
  const v84 = 114*v12;
  const v85 = v81*wear_land;
  const v86 = v85 + 466;
  const v87 = ((v85 - 34.0 > 0) ? (
   1
)
: (
   -1
));
  const v88 = 10.0*v87;
  const v89 = 11.0*v87;
  const v90 = 2.6*v87;
  const v91 = v11 + 0.185185185185185;
  const v92 = Math.cos(v11);
  const v93 = 108*v92 + 466;
  const v94 = 108*Math.sin(v11) + 324;
  const v95 = v11 + 0.0509259259259259;
  const v96 = Math.cos(v95);
  const v97 = 2.6*v96;
  const v98 = Math.sin(v95);
  const v99 = 11.0*v98;
  const v100 = 2.6*v98;
  const v101 = v94 + 11.0*v96;
  const v102 = v13*v7;
  const v103 = ((v102 > 8.5) ? (
   1
)
: (
   -1
));
  const v104 = 10.0*v103;
  const v105 = 2.6*v103;
  const v106 = 11.0*v103;
  return [270, v20, v23, v25, 400, v26 + 270, 400 - v27, 0.166666666666667*v21 + 270, 270 - 0.166666666666667*v21, v27 + 400, 270 - v26, 270 - v22, 130, v29, 110, 416, v30 + 270, v30*v5 + 130, v7*(v13 + v6) + 130, wear_land, v33 + v35, -v37 + v38, v35 + v37, v33 + v38, -v33 - v34 + 270, v37 + v38, chip_depth, 140.000000000000, 352, 125.000000000000, 118, 340, 359, 270 - v39, 130 - 4.0*v36, 270 - v40, 130 - 45.0*v36, v39 + 270, v40 + 270, -v42, -v43, 40.0000000000000, v44, -v42 - v51, -v52 - v53, -v41 + v47 + v49 + 270, v52 - v53, v44 - v47 + v50, v44 + v51, 62.0000000000000, 81.0000000000000, v55, v56, 48.0000000000000, -v57, v60 + v64, v65 + v66, -v60 + v64, -v65 + v66, -v54 + v60 + v62 + 270, -v57 - v60 - v63, v19 + 212.0, v19 + 232.0, 266, 135.000000000000, 140, v68 + 120.0, v19 - v68 + 140.0, v69 + 140.0, v70 + 130, 140.0 - v69, v20 - v70, v71 + 130, 127.000000000000, 112.000000000000, 105.000000000000, v71 + 118, v71 + 137, v23 + 4*v72, 5.0*v72 + 396, 396, v28 + v74 + 120.0, v24 - v74 + 140.0, v75 + 396.0, v29 + v76, 396.0 - v75, v25 - v76, (1/2)*v24 + v38, 409.000000000000, 136, 424.000000000000, 431.000000000000, 124, 143, 162, 0.5 - ((v77 >= Math.max(0, v13, v79, (1/2)*v78)) ? (
   0
)
: ((v78 >= 2*Math.max(v13, v79)) ? (
   3
)
: ((v13 >= v79) ? (
   1
)
: (
   2
)))), 0.5 - Math.abs(v80 - 1), 0.5 - Math.abs(v80 - 2), 0.5 - Math.abs(v80 - 3), 466, v83, 580, v83 + v84, v82 + v84 + 336, 324, v84 + 324, v86, 320, 299.000000000000, v88 + 456.0, 304, v85 - v88 + 476.0, v89 + 466, 304.0 - v90, v90 + 304.0, v86 - v89, 289, v85 + 470.0, 585.000000000000, 572.153434317163, 304.114115994713, 108, 108*Math.cos(v91) + 466, 108*Math.sin(v91) + 324, 574, 570.843427675116, 313.146611074979, 576.036686162464, 312.881910709316, v93, v94, v93 + v97 - v99, v100 + v101, 108*v92 - v97 - v99 + 466, -v100 + v101, 576.153434317163, 290, 556, 462, 439.000000000000, 444, v104 + 314.0, -v104 + v82 + 334.0, v105 + 444.0, v106 + 324, 444.0 - v105, -v106 + v83, 2*v102 + 324, 457.000000000000, 472.000000000000, 479.000000000000, 432, 451, 436, 226, 244, v17, v18, v13, v80, new_point_angle - point_angle, v7];
}
, ...{"name": "regrind", "title": "The tip before and after a regrind, square to the lips", "width": 640, "height": 480, "allowed": [{"name": "lip_relief", "says": "a lip relief of {lip_relief} leaves the flank no slope to wear a land on; 12° is usual", "low": 0.5}], "bar": {"x": 24.0, "y": 460.0, "longest": 90.0, "scale": 161}, "shapes": [{"style": "land", "steps": ["M", 0, 1, "L", 2, 3, 2, 4, "C", 5, 6, 7, 6, 0, 4, "C", 8, 9, 10, 9, 11, 4, "L", 11, 3, "Z"]}, {"style": "flute", "steps": ["M", 0, 12, "L", 2, 13, 2, 3, 0, 1, 11, 3, 11, 13, "Z"]}, {"style": "swept", "steps": ["M", 0, 12, "L", 2, 13, 2, 3]}, {"style": "edge", "steps": ["M", 2, 3, "L", 2, 4]}, {"style": "swept", "steps": ["M", 0, 12, "L", 11, 13, 11, 3]}, {"style": "edge", "steps": ["M", 11, 3, "L", 11, 4]}, {"style": "fine", "steps": ["M", 2, 4, "C", 5, 6, 7, 6, 0, 4, "C", 8, 9, 10, 9, 11, 4]}, {"style": "centre", "steps": ["M", 0, 14, "L", 0, 15]}, {"style": "fine", "steps": ["M", 16, 17, "L", 2, 18], "when": 19}, {"style": "paper", "steps": ["M", 20, 21, "L", 22, 23, 24, 25, "Z"], "when": 26}, {"style": "fine", "steps": ["M", 20, 21, "L", 22, 23, 24, 25], "when": 26}, {"style": "lip", "steps": ["M", 0, 1, "L", 2, 3]}, {"style": "lip", "steps": ["M", 0, 1, "L", 11, 3]}, {"style": "thin", "steps": ["M", 22, 23, "L", 27, 28, 29, 28], "when": 26}, {"style": "term", "x": 30, "y": 31, "anchor": "end", "parts": "chip", "when": 26}, {"style": "value", "x": 30, "y": 32, "anchor": "end", "parts": "{chip_depth}", "of": "chip_depth", "hidden": "?", "when": 26}, {"style": "thin", "steps": ["M", 33, 34, "L", 35, 36]}, {"style": "thin", "steps": ["M", 37, 34, "L", 38, 36]}, {"style": "thin", "steps": ["M", 39, 40, "A", 41, 41, "0 0 1", 42, 40]}, {"style": "arrow", "steps": ["M", 39, 40, "L", 43, 44, 45, 46, "Z"]}, {"style": "arrow", "steps": ["M", 42, 40, "L", 47, 46, 48, 44, "Z"]}, {"style": "term", "x": 0, "y": 49, "anchor": "middle", "parts": "point angle before"}, {"style": "value", "x": 0, "y": 50, "anchor": "middle", "parts": "{point_angle}", "of": "point_angle", "hidden": "?"}, {"style": "thin", "steps": ["M", 51, 52, "A", 53, 53, "0 0 1", 54, 52]}, {"style": "arrow", "steps": ["M", 51, 52, "L", 55, 56, 57, 58, "Z"]}, {"style": "arrow", "steps": ["M", 54, 52, "L", 59, 58, 60, 56, "Z"]}, {"style": "term", "x": 0, "y": 61, "anchor": "middle", "parts": "point angle after"}, {"style": "value", "x": 0, "y": 62, "anchor": "middle", "parts": "{new_point_angle}", "of": "new_point_angle", "hidden": "?"}, {"style": "thin", "steps": ["M", 63, 12, "L", 64, 12]}, {"style": "thin", "steps": ["M", 63, 1, "L", 64, 1]}, {"style": "thin", "steps": ["M", 65, 66, "L", 65, 67]}, {"style": "arrow", "steps": ["M", 65, 12, "L", 68, 69, 70, 69, "Z"]}, {"style": "arrow", "steps": ["M", 65, 1, "L", 70, 71, 68, 71, "Z"]}, {"style": "thin", "steps": ["M", 65, 72, "L", 73, 72, 74, 72]}, {"style": "term", "x": 75, "y": 76, "anchor": "end", "parts": "off the tip"}, {"style": "value", "x": 75, "y": 77, "anchor": "end", "parts": "{at_tip}", "of": "at_tip", "hidden": "?"}, {"style": "thin", "steps": ["M", 78, 13, "L", 79, 13]}, {"style": "thin", "steps": ["M", 78, 3, "L", 79, 3]}, {"style": "thin", "steps": ["M", 80, 81, "L", 80, 82]}, {"style": "arrow", "steps": ["M", 80, 13, "L", 83, 84, 85, 84, "Z"]}, {"style": "arrow", "steps": ["M", 80, 3, "L", 85, 86, 83, 86, "Z"]}, {"style": "thin", "steps": ["M", 80, 87, "L", 88, 89, 90, 89]}, {"style": "term", "x": 91, "y": 92, "anchor": "start", "parts": "off the corners"}, {"style": "value", "x": 91, "y": 93, "anchor": "start", "parts": "{at_corner}", "of": "at_corner", "hidden": "?"}, {"style": "term", "x": 91, "y": 94, "anchor": "start", "parts": "they need nothing", "when": 95}, {"style": "term", "x": 91, "y": 94, "anchor": "start", "parts": "for the wear land", "when": 96}, {"style": "term", "x": 91, "y": 94, "anchor": "start", "parts": "for the chip", "when": 97}, {"style": "term", "x": 91, "y": 94, "anchor": "start", "parts": "for the sharper point", "when": 98}, {"style": "land", "steps": ["M", 99, 100, "L", 101, 102, 101, 103, 99, 103, "Z"]}, {"style": "flute", "steps": ["M", 99, 104, "L", 101, 105, 101, 102, 99, 100, "Z"]}, {"style": "paper", "steps": ["M", 99, 104, "L", 106, 100, 99, 100, "Z"]}, {"style": "swept", "steps": ["M", 99, 100, "L", 99, 104, 106, 100]}, {"style": "fine", "steps": ["M", 99, 100, "L", 106, 100, 101, 105]}, {"style": "edge", "steps": ["M", 99, 103, "L", 99, 100, 101, 102]}, {"style": "thin", "steps": ["M", 99, 107, "L", 99, 108]}, {"style": "thin", "steps": ["M", 106, 107, "L", 106, 108]}, {"style": "thin", "steps": ["M", 109, 110, "L", 111, 110]}, {"style": "arrow", "steps": ["M", 99, 110, "L", 112, 113, 112, 114, "Z"]}, {"style": "arrow", "steps": ["M", 106, 110, "L", 115, 114, 115, 113, "Z"]}, {"style": "term", "x": 99, "y": 0, "anchor": "start", "parts": "wear land"}, {"style": "value", "x": 99, "y": 116, "anchor": "start", "parts": "{wear_land}", "of": "wear_land", "hidden": "?"}, {"style": "thin", "steps": ["M", 117, 104, "L", 118, 104]}, {"style": "thin", "steps": ["M", 119, 120, "A", 121, 121, "0 0 1", 122, 123]}, {"style": "arrow", "steps": ["M", 124, 104, "L", 125, 126, 127, 128, "Z"]}, {"style": "arrow", "steps": ["M", 129, 130, "L", 131, 132, 133, 134, "Z"]}, {"style": "thin", "steps": ["M", 119, 120, "L", 135, 136]}, {"style": "term", "x": 137, "y": 0, "anchor": "start", "parts": "lip relief"}, {"style": "value", "x": 137, "y": 116, "anchor": "start", "parts": "{lip_relief}", "of": "lip_relief", "hidden": "?"}, {"style": "thin", "steps": ["M", 138, 104, "L", 139, 104]}, {"style": "thin", "steps": ["M", 138, 100, "L", 139, 100]}, {"style": "thin", "steps": ["M", 140, 141, "L", 140, 142]}, {"style": "arrow", "steps": ["M", 140, 104, "L", 143, 144, 145, 144, "Z"]}, {"style": "arrow", "steps": ["M", 140, 100, "L", 145, 146, 143, 146, "Z"]}, {"style": "thin", "steps": ["M", 140, 147, "L", 148, 140, 149, 140]}, {"style": "term", "x": 150, "y": 151, "anchor": "start", "parts": "stock for the land"}, {"style": "value", "x": 150, "y": 152, "anchor": "start", "parts": "{for_wear}", "of": "for_wear", "hidden": "?"}, {"style": "term", "x": 153, "y": 154, "anchor": "start", "parts": "right corner seen along"}, {"style": "term", "x": 153, "y": 155, "anchor": "start", "parts": "the radius, 4 times larger"}], "words": [{"parts": "The tip of a drill, square to the lips, before a regrind (double chain line) and after it. "}, {"parts": "Diameter {diameter}", "of": "diameter", "hidden": "Diameter not told"}, {"parts": ", point angle {point_angle} before", "of": "point_angle", "hidden": ", point angle before not told"}, {"parts": " and {new_point_angle} after, ", "of": "new_point_angle", "hidden": ", and after not told", "judged": "blunter", "low": -0.05, "high": 0.05, "below": "a sharper point", "within": "the angle kept", "above": "a blunter point"}, {"parts": ". The lip relief is {lip_relief}", "of": "lip_relief", "hidden": ". The lip relief is not told"}, {"parts": "", "of": "wear_land", "hidden": ". The wear land is not told", "judged": "wear_land", "low": 1e-09, "high": 1000000000.0, "below": ". There is no wear land", "within": ". The wear land is {wear_land} wide"}, {"parts": "", "of": "for_wear", "judged": "wear_land", "low": 1e-09, "high": 1000000000.0, "within": ", so {for_wear} must come off the corners for it"}, {"parts": "", "of": "chip_depth", "hidden": "; the depth of the chip is not told", "judged": "chip_depth", "low": 1e-09, "high": 1000000000.0, "below": "; no chip", "within": "; a chip halfway along the lip is {chip_depth} deep"}, {"parts": ". Off the corners come {at_corner}: ", "of": "at_corner", "hidden": ". How much comes off the corners is not told: "}, {"parts": "", "judged": "cause", "low": 0.5, "high": 1.5, "below": "nothing asks for more", "within": "the wear land decides"}, {"parts": "", "judged": "cause", "low": 1.5, "high": 2.5, "within": "the chip decides", "above": "the sharper point decides"}, {"parts": ". Off the tip come {at_tip}, ", "of": "at_tip", "hidden": ". How much comes off the tip is not told: "}, {"parts": "", "judged": "blunter", "low": -0.05, "high": 0.05, "below": "less than off the corners.", "within": "the same.", "above": "more than off the corners: a blunter tip stands lower."}], "numbers": [{"name": "at_corner", "place": 156, "like": "corner_stock"}, {"name": "at_tip", "place": 157, "like": "tip_stock"}, {"name": "for_wear", "place": 158, "like": "corner_stock"}, {"name": "cause", "place": 159, "like": "regrinds"}, {"name": "blunter", "place": 160, "like": "point_angle"}]}};
// scene plane_setup
scenes.plane_setup = {coordinates: function coordinates({diameter, web_ratio, point_angle, chisel_edge_angle, axial_relief}) {
  const v0 = Math.pow(web_ratio, 2);
  const v1 = Math.sqrt(1 - v0);
  const v2 = 66*v1;
  const v3 = v2 + 150;
  const v4 = Math.PI*point_angle;
  const v5 = (1/360)*v4;
  const v6 = Math.tan(v5);
  const v7 = 1/v6;
  const v8 = v2*v7 + 186;
  const v9 = 44.0*v1;
  const v10 = 792.0*v1/Math.sqrt(17424 - 17424*v0);
  const v11 = 22.0*v1;
  const v12 = (1/180)*Math.PI;
  const v13 = chisel_edge_angle*v12;
  const v14 = 66*web_ratio;
  const v15 = v14/Math.tan(v13);
  const v16 = Math.sin(v5);
  const v17 = 16*v16;
  const v18 = Math.cos(v5);
  const v19 = 16*v18 - 186;
  const v20 = 30*v16 + v3;
  const v21 = 30*v18 + v8;
  const v22 = 18.0*v18;
  const v23 = 18.0*v16;
  const v24 = 64.0*v16;
  const v25 = v24 - 150;
  const v26 = 64.0*v18 - 186;
  const v27 = v5 - 0.0859375;
  const v28 = Math.sin(v27);
  const v29 = 2.6*v28;
  const v30 = Math.cos(v27);
  const v31 = 2.6*v30;
  const v32 = v26 + 11.0*v28;
  const v33 = (1/720)*v4;
  const v34 = 10*v16 + 9.0*v18;
  const v35 = v2 + v34;
  const v36 = v14 + 428;
  const v37 = Math.sqrt(3);
  const v38 = v14 + (103/6)*v37;
  const v39 = -4.0*v38/Math.abs(v38);
  const v40 = 33*v37;
  const v41 = axial_relief*v12;
  const v42 = (v14 + v40)*Math.tan(v41) + 196;
  const v43 = Math.cos(v41);
  const v44 = v40 + 14*v43 - 428;
  const v45 = Math.sin(v41);
  const v46 = v42 + 14*v45;
  const v47 = v36 + 36*v43;
  const v48 = 36*v45 - 196;
  const v49 = 18.0*v45;
  const v50 = 18.0*v43;
  const v51 = v41 + 0.238095238095238;
  const v52 = v36 + 84.0*v43;
  const v53 = 84.0*v45 - 196;
  const v54 = v41 + 0.0654761904761905;
  const v55 = Math.cos(v54);
  const v56 = 2.6*v55;
  const v57 = Math.sin(v54);
  const v58 = v52 - 11.0*v57;
  const v59 = 2.6*v57;
  const v60 = v53 + 11.0*v55;
  return [v3, v8, 386, v9 + 150, 386 - v10, v11 + 150, 150, 150 - v11, v10 + 386, 150 - v9, 150 - v2, v15 + 150, -v15*v7 + 186, 150 - v15, 150 - v17, -v19, v20, v21, v20 + v22, v21 - v23, -v17 + v22 + 150, -v19 - v23, 106.000000000000, 400, 150 - 69.0*v16, 186 - 69.0*v18, -v25, -v26, 64.0000000000000, 122.000000000000, -v25 - v29 + 11.0*v30, -v31 - v32, -v24 + v29 + 11.0*v30 + 150, v31 - v32, 139.263756481992, 125.534554444627, 138.817431326472, 120.353744290264, 150 - 64.0*Math.sin(v33), 186 - 64.0*Math.cos(v33), 96, 74, 46, 66, v3 + v34, -9.0*v16 + 10*v18 + v8, 248, 128, 263.000000000000, v35 + 147.8, 2.20000000000000, v35 + 152.2, 270.000000000000, 116, 418, v36, 196, v36 - 95/6*v37, -18.6944444444444*v37 + 55.0*web_ratio + 428, v39 + 386, -21.5555555555556*v37 + 44.0*web_ratio + 428, -293/12*v37 + 33*web_ratio + 428, -27.2777777777778*v37 + 22.0*web_ratio + 428, 386 - v39, -30.1388888888889*v37 + 11.0*web_ratio + 428, 428 - v40, v42, -v44, v46, v47, -v48, v47 - v49, -v48 - v50, -v44 - v49, v46 - v50, 428, 124, v14 + 426, 2, v14 + 430, v14 + 432.0, v14 + 517.0, v36 + 89.0*v43, 196 - 89.0*v45, v36 + 84.0*Math.cos(v51), 196 - 84.0*Math.sin(v51), 84.0000000000000, v14 + 509.63027427144, 215.811570416538, v52, -v53, -v56 + v58, v59 - v60, v56 + v58, -v59 - v60, v14 + 512.0, v14 + 513.874705140219, 207.146545681835, v14 + 508.685847700514, 206.806312716917, 496, 508, 262, 523.000000000000, 530.000000000000, 250, (1/2)*point_angle, 180*Math.atan(v6*Math.sin(v13))/Math.PI, 214, 447, 467, 132/diameter];
}
, ...{"name": "plane_setup", "title": "How a plane face stands to the drill that it grinds", "width": 580, "height": 480, "allowed": [{"name": "web", "says": "web {web} leaves no chisel edge to draw; give a web above 0, for example 1.5", "low": 1e-06}, {"name": "chisel_edge_angle", "says": "with so little relief the flank would stand above its lip at the centre, rub, and never cut; give more relief", "low": 90.0}], "bar": {"x": 24.0, "y": 464.0, "longest": 110.0, "scale": 111}, "shapes": [{"style": "land", "steps": ["M", 0, 1, "L", 0, 2, "C", 3, 4, 5, 4, 6, 2, "C", 7, 8, 9, 8, 10, 2, "L", 10, 1, 11, 12, 13, 12, "Z"]}, {"style": "edge", "steps": ["M", 0, 1, "L", 0, 2]}, {"style": "edge", "steps": ["M", 10, 1, "L", 10, 2]}, {"style": "fine", "steps": ["M", 0, 2, "C", 3, 4, 5, 4, 6, 2, "C", 7, 8, 9, 8, 10, 2]}, {"style": "section_other", "steps": ["M", 14, 15, "L", 16, 17, 18, 19, 20, 21, "Z"]}, {"style": "fine", "steps": ["M", 14, 15, "L", 20, 21]}, {"style": "fine", "steps": ["M", 16, 17, "L", 18, 19]}, {"style": "edge", "steps": ["M", 14, 15, "L", 16, 17]}, {"style": "lip", "steps": ["M", 13, 12, "L", 0, 1]}, {"style": "lip", "steps": ["M", 11, 12, "L", 10, 1]}, {"style": "chisel", "steps": ["M", 11, 12, "L", 13, 12]}, {"style": "centre", "steps": ["M", 6, 22, "L", 6, 23]}, {"style": "thin", "steps": ["M", 14, 15, "L", 24, 25]}, {"style": "thin", "steps": ["M", 26, 27, "A", 28, 28, "0 0 1", 6, 29]}, {"style": "arrow", "steps": ["M", 26, 27, "L", 30, 31, 32, 33, "Z"]}, {"style": "arrow", "steps": ["M", 6, 29, "L", 34, 35, 36, 37, "Z"]}, {"style": "thin", "steps": ["M", 38, 39, "L", 40, 41]}, {"style": "term", "x": 40, "y": 42, "anchor": "middle", "parts": "half point angle"}, {"style": "value", "x": 40, "y": 43, "anchor": "middle", "parts": "{half_angle}", "of": "point_angle", "hidden": "?"}, {"style": "thin", "steps": ["M", 44, 45, "L", 46, 47, 48, 47]}, {"style": "arrow", "steps": ["M", 49, 45, "A", 50, 50, "0 0 1", 51, 45, "A", 50, 50, "0 0 1", 49, 45, "Z"]}, {"style": "term", "x": 52, "y": 53, "anchor": "start", "parts": "wheel"}, {"style": "term", "x": 6, "y": 54, "anchor": "middle", "parts": "cut through the lip"}, {"style": "section", "steps": ["M", 55, 56, "L", 57, 2, "C", 58, 59, 60, 59, 61, 2, "C", 62, 63, 64, 63, 65, 2, "L", 65, 66, "Z"]}, {"style": "edge", "steps": ["M", 55, 56, "L", 57, 2]}, {"style": "edge", "steps": ["M", 65, 66, "L", 65, 2]}, {"style": "fine", "steps": ["M", 57, 2, "C", 58, 59, 60, 59, 61, 2, "C", 62, 63, 64, 63, 65, 2]}, {"style": "section_other", "steps": ["M", 67, 68, "L", 69, 70, 71, 72, 73, 74, "Z"]}, {"style": "fine", "steps": ["M", 67, 68, "L", 73, 74]}, {"style": "fine", "steps": ["M", 69, 70, "L", 71, 72]}, {"style": "edge", "steps": ["M", 67, 68, "L", 69, 70]}, {"style": "centre", "steps": ["M", 75, 76, "L", 75, 23]}, {"style": "lip", "steps": ["M", 77, 56, "A", 78, 78, "0 0 1", 79, 56, "A", 78, 78, "0 0 1", 77, 56, "Z"]}, {"style": "thin", "steps": ["M", 80, 56, "L", 81, 56]}, {"style": "thin", "steps": ["M", 69, 70, "L", 82, 83]}, {"style": "thin", "steps": ["M", 84, 85, "A", 86, 86, "0 0 1", 87, 88]}, {"style": "arrow", "steps": ["M", 89, 90, "L", 91, 92, 93, 94, "Z"]}, {"style": "arrow", "steps": ["M", 95, 56, "L", 96, 97, 98, 99, "Z"]}, {"style": "thin", "steps": ["M", 84, 85, "L", 100, 41]}, {"style": "term", "x": 100, "y": 42, "anchor": "middle", "parts": "relief square to lip"}, {"style": "value", "x": 100, "y": 43, "anchor": "middle", "parts": "{axial_relief}", "of": "axial_relief", "hidden": "?"}, {"style": "thin", "steps": ["M", 55, 56, "L", 101, 102, 103, 102]}, {"style": "term", "x": 104, "y": 105, "anchor": "start", "parts": "lip"}, {"style": "term", "x": 75, "y": 54, "anchor": "middle", "parts": "cut square to the lip, halfway along"}, {"style": "term", "x": 108, "y": 109, "anchor": "start", "parts": "axis to the face, chisel edge parallel to it"}, {"style": "value", "x": 108, "y": 110, "anchor": "start", "parts": "{axis_to_face}", "of": "point_angle", "hidden": "?"}], "words": [{"parts": "A plane face and the drill that it grinds, in two cuts; no machine is drawn. "}, {"parts": "Diameter {diameter}", "of": "diameter", "hidden": "Diameter not told"}, {"parts": ", web {web}", "of": "web", "hidden": ", web not told"}, {"parts": ". Cut through the lip, the face stands at {half_angle} to the axis, half the point angle", "of": "point_angle", "hidden": ". The point angle is not told"}, {"parts": "; cut square to the lip it falls away at {axial_relief}", "of": "axial_relief", "hidden": "; how it falls away square to the lip is not told"}, {"parts": ", which gives a lip relief of {lip_relief} at the corner", "of": "lip_relief"}, {"parts": " and a chisel edge angle of {chisel_edge_angle} (obtuse), ", "of": "chisel_edge_angle", "judged": "chisel_edge_angle", "low": 120.0, "high": 135.0, "below": "flatter than the usual 120° to 135°", "within": "within the usual 120° to 135°", "above": "steeper than the usual 120° to 135°"}, {"parts": ". With the drill turned until its chisel edge is parallel to the face, its axis stands at {axis_to_face} to the face.", "of": "point_angle", "hidden": "."}], "numbers": [{"name": "half_angle", "place": 106, "like": "point_angle"}, {"name": "axis_to_face", "place": 107, "like": "point_angle"}]}};
// scene rolled_view
scenes.rolled_view = {coordinates: function coordinates({point_angle, roll_angle, rolled_reading}) {
  const v0 = (1/360)*Math.PI;
  const v1 = point_angle*v0;
  const v2 = (1/180)*Math.PI*roll_angle;
  const v3 = Math.cos(v2);
  const v4 = 120*v3;
  const v5 = rolled_reading*v0;
  const v6 = 84.0*Math.sin(v5);
  const v7 = v6 + 176;
  const v8 = 84.0*Math.cos(v5) + 70;
  const v9 = v6 - 176;
  const v10 = v5 - 0.0654761904761905;
  const v11 = Math.sin(v10);
  const v12 = 2.6*v11;
  const v13 = Math.cos(v10);
  const v14 = 11.0*v13;
  const v15 = -v14;
  const v16 = v15 + v7;
  const v17 = 2.6*v13;
  const v18 = 11.0*v11 + v8;
  const v19 = Math.cos(v1);
  const v20 = 1/Math.sin(v1);
  const v21 = 72*v19*v20;
  const v22 = v21 + 70;
  const v23 = v21 + 8;
  const v24 = Math.pow(Math.pow(v23, 2) + 4356, -1/2);
  const v25 = v23*v24;
  const v26 = 2.6*v25;
  const v27 = 726.0*v24 + 248;
  const v28 = 171.6*v24;
  const v29 = 11.0*v25;
  const v30 = Math.sin(v2);
  const v31 = 62*v3;
  const v32 = 62*v30;
  const v33 = v2 + 0.24390243902439;
  const v34 = 82*v3 + 444;
  const v35 = 82*v30 - 292;
  const v36 = v2 + 0.0670731707317073;
  const v37 = Math.sin(v36);
  const v38 = 11.0*v37;
  const v39 = Math.cos(v36);
  const v40 = 2.6*v39;
  const v41 = 2.6*v37;
  const v42 = v35 + 11.0*v39;
  return [56, 70 + 120/Math.tan(v1), 296, 372, 176, 70, 96.0000000000000, 381, 136.000000000000, 216.000000000000, 363, 256.000000000000, 50, 392, 176 - v4, v4 + 176, v7, v8, 84.0000000000000, -v9, v12 + v16, v17 + v18, -v12 + v16, -v17 + v18, v12 + v14 - v6 + 176, -v12 - v15 - v9, 174.000000000000, 194.000000000000, 248, v22, 314, 62, 329.000000000000, -v26 + v27, 72*v19*v20 - v28 - v29 + 70, v26 + v27, v22 + v28 - v29, 336.000000000000, 69, 382, 292, 506, 516, 444, 220, 364, 510, 531.000000000000, 66*v3 + 444, 292 - 66*v30, 87.0*v3 + 444, 292 - 87.0*v30, v31 + 444, 292 - v32, 444 - v31, v32 + 292, 82*Math.cos(v33) + 444, 292 - 82*Math.sin(v33), 82, 523.573042797290, 311.802294311031, v34, -v35, 82*v3 - v38 - v40 + 444, v41 - v42, v34 - v38 + v40, -v41 - v42, 526, 527.856901943841, 303.149525333886, 522.668594465922, 302.801006303466, 488, 186, 503.000000000000, 510.000000000000, 174, 193, 416, 375.500000000000, 370, 446.600000000000, 381.000000000000, 441.400000000000, 456, 412, 362, 212, point_angle - rolled_reading];
}
, ...{"name": "rolled_view", "title": "A rolled drill: what is seen between its lips", "width": 580, "height": 440, "allowed": [{"name": "roll_angle", "says": "rolled by {roll_angle} the lips are hardly seen apart; draw it for 60° or less", "high": 60.0}], "shapes": [{"style": "land", "steps": ["M", 0, 1, "L", 2, 1, 2, 3, 0, 3, "Z"]}, {"style": "flank", "steps": ["M", 4, 5, "L", 2, 1, 0, 1, "Z"]}, {"style": "edge", "steps": ["M", 0, 1, "L", 0, 3]}, {"style": "edge", "steps": ["M", 2, 1, "L", 2, 3]}, {"style": "fine", "steps": ["M", 0, 1, "L", 2, 1]}, {"style": "fine", "steps": ["M", 0, 3, "C", 6, 7, 8, 7, 4, 3, "C", 9, 10, 11, 10, 2, 3]}, {"style": "centre", "steps": ["M", 4, 12, "L", 4, 13]}, {"style": "swept", "steps": ["M", 4, 5, "L", 0, 1]}, {"style": "lip", "steps": ["M", 4, 5, "L", 14, 1]}, {"style": "swept", "steps": ["M", 4, 5, "L", 2, 1]}, {"style": "lip", "steps": ["M", 4, 5, "L", 15, 1]}, {"style": "thin", "steps": ["M", 16, 17, "A", 18, 18, "0 0 1", 19, 17]}, {"style": "arrow", "steps": ["M", 16, 17, "L", 20, 21, 22, 23, "Z"]}, {"style": "arrow", "steps": ["M", 19, 17, "L", 24, 23, 25, 21, "Z"]}, {"style": "term", "x": 4, "y": 26, "anchor": "middle", "parts": "as read"}, {"style": "value", "x": 4, "y": 27, "anchor": "middle", "parts": "{rolled_reading}", "of": "rolled_reading", "hidden": "?"}, {"style": "thin", "steps": ["M", 28, 29, "L", 30, 31, 32, 31]}, {"style": "arrow", "steps": ["M", 28, 29, "L", 33, 34, 35, 36, "Z"]}, {"style": "term", "x": 37, "y": 12, "anchor": "start", "parts": "point angle, as swept"}, {"style": "value", "x": 37, "y": 38, "anchor": "start", "parts": "{point_angle}", "of": "point_angle", "hidden": "?"}, {"style": "flank", "steps": ["M", 39, 40, "A", 31, 31, "0 0 1", 41, 40, "A", 31, 31, "0 0 1", 39, 40, "Z"]}, {"style": "edge", "steps": ["M", 39, 40, "A", 31, 31, "0 0 1", 41, 40, "A", 31, 31, "0 0 1", 39, 40, "Z"]}, {"style": "centre", "steps": ["M", 3, 40, "L", 42, 40]}, {"style": "centre", "steps": ["M", 43, 44, "L", 43, 45]}, {"style": "thin", "steps": ["M", 46, 40, "L", 47, 40]}, {"style": "thin", "steps": ["M", 48, 49, "L", 50, 51]}, {"style": "lip", "steps": ["M", 52, 53, "L", 54, 55]}, {"style": "thin", "steps": ["M", 56, 57, "A", 58, 58, "0 0 1", 59, 60]}, {"style": "arrow", "steps": ["M", 61, 62, "L", 63, 64, 65, 66, "Z"]}, {"style": "arrow", "steps": ["M", 67, 40, "L", 68, 69, 70, 71, "Z"]}, {"style": "thin", "steps": ["M", 56, 57, "L", 72, 73, 74, 73]}, {"style": "term", "x": 75, "y": 76, "anchor": "start", "parts": "rolled by"}, {"style": "value", "x": 75, "y": 77, "anchor": "start", "parts": "{roll_angle}", "of": "roll_angle", "hidden": "?"}, {"style": "motion", "steps": ["M", 43, 78, "L", 43, 79]}, {"style": "arrow", "steps": ["M", 43, 80, "L", 81, 82, 83, 82, "Z"]}, {"style": "term", "x": 84, "y": 85, "anchor": "start", "parts": "line of sight"}, {"style": "term", "x": 86, "y": 87, "anchor": "middle", "parts": "end view"}], "words": [{"parts": "A drill seen from the side under a gauge, and from its tip. "}, {"parts": "Its point angle is {point_angle}", "of": "point_angle", "hidden": "Its point angle is not told"}, {"parts": ". It is rolled by {roll_angle} from square", "of": "roll_angle", "hidden": ". How far it is rolled is not told"}, {"parts": ". Between the lips the eye sees {rolled_reading}", "of": "rolled_reading", "hidden": ". What the eye sees between the lips is not told.", "judged": "roll_angle", "low": -0.05, "high": 0.05, "within": ": the true angle.", "above": ": {low_by} too little."}], "numbers": [{"name": "low_by", "place": 88, "like": "rolled_reading"}]}};
// scene rule
scenes.rule = {coordinates: function coordinates({diameter}) {
  const v0 = 5.0*diameter/Math.abs(diameter);
  return [30, 200, 96, 2.58333333333333*diameter + 30, v0 + 96, 5.16666666666667*diameter + 30, (31/4)*diameter + 30, 10.3333333333333*diameter + 30, 96 - v0, 12.9166666666667*diameter + 30, (31/2)*diameter + 30, 80, 196, 548.000000000000, 330, 23137/640, 210, 13537/320, 216, 31011/640, 8737/160, 222, 7777/128, 21411/320, 46759/640, 6337/80, 228, 54633/640, 5857/64, 62507/640, 16611/160, 70381/640, 37159/320, 15651/128, 5137/40, 234, 86129/640, 45033/320, 94003/640, 4897/32, 101877/640, 52907/320, 109751/640, 14211/80, 23525/128, 60781/320, 125499/640, 32359/160, 133373/640, 13731/64, 141247/640, 4537/20, 240, 149121/640, 76529/320, 31399/128, 40233/160, 164869/640, 84403/320, 172743/640, 4417/16, 180617/640, 92277/320, 188491/640, 48107/160, 39273/128, 100151/320, 204239/640, 13011/40, 212113/640, 21605/64, 219987/640, 55981/160, 227861/640, 115899/320, 47147/128, 29959/80, 243609/640, 123773/320, 251483/640, 12771/32, 259357/640, 131647/320, 267231/640, 4237/10, 246, 55021/128, 139521/320, 282979/640, 71729/160, 290853/640, 29479/64, 298727/640, 37833/80, 306601/640, 155269/320, 62895/128, 79603/160, 322349/640, 163143/320, 330223/640, 4177/8, 151/4, 321, 91/2, 315, 213/4, 61, 275/4, 153/2, 337/4, 92, 399/4, 215/2, 306, 461/4, 123, 523/4, 277/2, 585/4, 154, 647/4, 339/2, 709/4, 185, 298, 771/4, 401/2, 833/4, 895/4, 463/2, 957/4, 247, 1019/4, 525/2, 1081/4, 278, 1143/4, 587/2, 1205/4, 309, 1267/4, 649/2, 1329/4, 340, 1391/4, 711/2, 1453/4, 371, 1515/4, 773/2, 1577/4, 402, 1639/4, 835/2, 1701/4, 433, 1763/4, 897/2, 1825/4, 464, 1887/4, 959/2, 1949/4, 495, 2011/4, 1021/2, 2073/4, 526, 261, 294, 35, 34, 51, (320/127)*diameter, 31/2];
}
, ...{"name": "rule", "title": "A drill across a steel rule", "width": 580, "height": 400, "allowed": [{"name": "diameter", "says": "{diameter} is more than this rule shows; 32 mm (1 1/4 in) at most", "high": 32.0}], "bar": {"x": 30, "y": 386.0, "longest": 155.0, "scale": 175}, "shapes": [{"style": "land", "steps": ["M", 0, 1, "L", 0, 2, "C", 3, 4, 5, 4, 6, 2, "C", 7, 8, 9, 8, 10, 2, "L", 10, 1, "Z"]}, {"style": "fine", "steps": ["M", 0, 2, "C", 3, 4, 5, 4, 6, 2, "C", 7, 8, 9, 8, 10, 2]}, {"style": "edge", "steps": ["M", 0, 2, "L", 0, 1]}, {"style": "edge", "steps": ["M", 10, 2, "L", 10, 1]}, {"style": "centre", "steps": ["M", 6, 11, "L", 6, 12]}, {"style": "flute", "steps": ["M", 0, 1, "L", 13, 1, 13, 14, 0, 14, "Z"]}, {"style": "edge", "steps": ["M", 0, 1, "L", 13, 1, 13, 14, 0, 14, "Z"]}, {"style": "thin", "steps": ["M", 15, 1, "L", 15, 16, "M", 17, 1, "L", 17, 18, "M", 19, 1, "L", 19, 16, "M", 20, 1, "L", 20, 21, "M", 22, 1, "L", 22, 16, "M", 23, 1, "L", 23, 18, "M", 24, 1, "L", 24, 16, "M", 25, 1, "L", 25, 26, "M", 27, 1, "L", 27, 16, "M", 28, 1, "L", 28, 18, "M", 29, 1, "L", 29, 16, "M", 30, 1, "L", 30, 21, "M", 31, 1, "L", 31, 16, "M", 32, 1, "L", 32, 18, "M", 33, 1, "L", 33, 16, "M", 34, 1, "L", 34, 35, "M", 36, 1, "L", 36, 16, "M", 37, 1, "L", 37, 18, "M", 38, 1, "L", 38, 16, "M", 39, 1, "L", 39, 21, "M", 40, 1, "L", 40, 16, "M", 41, 1, "L", 41, 18, "M", 42, 1, "L", 42, 16, "M", 43, 1, "L", 43, 26, "M", 44, 1, "L", 44, 16, "M", 45, 1, "L", 45, 18, "M", 46, 1, "L", 46, 16, "M", 47, 1, "L", 47, 21, "M", 48, 1, "L", 48, 16, "M", 49, 1, "L", 49, 18, "M", 50, 1, "L", 50, 16, "M", 51, 1, "L", 51, 52, "M", 53, 1, "L", 53, 16, "M", 54, 1, "L", 54, 18, "M", 55, 1, "L", 55, 16, "M", 56, 1, "L", 56, 21, "M", 57, 1, "L", 57, 16, "M", 58, 1, "L", 58, 18, "M", 59, 1, "L", 59, 16, "M", 60, 1, "L", 60, 26, "M", 61, 1, "L", 61, 16, "M", 62, 1, "L", 62, 18, "M", 63, 1, "L", 63, 16, "M", 64, 1, "L", 64, 21, "M", 65, 1, "L", 65, 16, "M", 66, 1, "L", 66, 18, "M", 67, 1, "L", 67, 16, "M", 68, 1, "L", 68, 35, "M", 69, 1, "L", 69, 16, "M", 70, 1, "L", 70, 18, "M", 71, 1, "L", 71, 16, "M", 72, 1, "L", 72, 21, "M", 73, 1, "L", 73, 16, "M", 74, 1, "L", 74, 18, "M", 75, 1, "L", 75, 16, "M", 76, 1, "L", 76, 26, "M", 77, 1, "L", 77, 16, "M", 78, 1, "L", 78, 18, "M", 79, 1, "L", 79, 16, "M", 80, 1, "L", 80, 21, "M", 81, 1, "L", 81, 16, "M", 82, 1, "L", 82, 18, "M", 83, 1, "L", 83, 16, "M", 84, 1, "L", 84, 85, "M", 86, 1, "L", 86, 16, "M", 87, 1, "L", 87, 18, "M", 88, 1, "L", 88, 16, "M", 89, 1, "L", 89, 21, "M", 90, 1, "L", 90, 16, "M", 91, 1, "L", 91, 18, "M", 92, 1, "L", 92, 16, "M", 93, 1, "L", 93, 26, "M", 94, 1, "L", 94, 16, "M", 95, 1, "L", 95, 18, "M", 96, 1, "L", 96, 16, "M", 97, 1, "L", 97, 21, "M", 98, 1, "L", 98, 16, "M", 99, 1, "L", 99, 18, "M", 100, 1, "L", 100, 16, "M", 101, 1, "L", 101, 35]}, {"style": "thin", "steps": ["M", 102, 14, "L", 102, 103, "M", 104, 14, "L", 104, 105, "M", 106, 14, "L", 106, 103, "M", 107, 14, "L", 107, 105, "M", 108, 14, "L", 108, 103, "M", 109, 14, "L", 109, 105, "M", 110, 14, "L", 110, 103, "M", 111, 14, "L", 111, 105, "M", 112, 14, "L", 112, 103, "M", 113, 14, "L", 113, 114, "M", 115, 14, "L", 115, 103, "M", 116, 14, "L", 116, 105, "M", 117, 14, "L", 117, 103, "M", 118, 14, "L", 118, 105, "M", 119, 14, "L", 119, 103, "M", 120, 14, "L", 120, 105, "M", 121, 14, "L", 121, 103, "M", 122, 14, "L", 122, 105, "M", 123, 14, "L", 123, 103, "M", 124, 14, "L", 124, 125, "M", 126, 14, "L", 126, 103, "M", 127, 14, "L", 127, 105, "M", 128, 14, "L", 128, 103, "M", 18, 14, "L", 18, 105, "M", 129, 14, "L", 129, 103, "M", 130, 14, "L", 130, 105, "M", 131, 14, "L", 131, 103, "M", 132, 14, "L", 132, 105, "M", 133, 14, "L", 133, 103, "M", 134, 14, "L", 134, 114, "M", 135, 14, "L", 135, 103, "M", 136, 14, "L", 136, 105, "M", 137, 14, "L", 137, 103, "M", 138, 14, "L", 138, 105, "M", 139, 14, "L", 139, 103, "M", 140, 14, "L", 140, 105, "M", 141, 14, "L", 141, 103, "M", 142, 14, "L", 142, 105, "M", 143, 14, "L", 143, 103, "M", 144, 14, "L", 144, 125, "M", 145, 14, "L", 145, 103, "M", 146, 14, "L", 146, 105, "M", 147, 14, "L", 147, 103, "M", 148, 14, "L", 148, 105, "M", 149, 14, "L", 149, 103, "M", 150, 14, "L", 150, 105, "M", 151, 14, "L", 151, 103, "M", 152, 14, "L", 152, 105, "M", 153, 14, "L", 153, 103, "M", 154, 14, "L", 154, 114, "M", 155, 14, "L", 155, 103, "M", 156, 14, "L", 156, 105, "M", 157, 14, "L", 157, 103, "M", 158, 14, "L", 158, 105, "M", 159, 14, "L", 159, 103, "M", 160, 14, "L", 160, 105, "M", 161, 14, "L", 161, 103, "M", 162, 14, "L", 162, 105, "M", 163, 14, "L", 163, 103, "M", 164, 14, "L", 164, 125, "M", 165, 14, "L", 165, 103, "M", 166, 14, "L", 166, 105, "M", 167, 14, "L", 167, 103, "M", 168, 14, "L", 168, 105]}, {"style": "term", "x": 34, "y": 169, "anchor": "middle", "parts": "1/4"}, {"style": "term", "x": 51, "y": 169, "anchor": "middle", "parts": "1/2"}, {"style": "term", "x": 68, "y": 169, "anchor": "middle", "parts": "3/4"}, {"style": "term", "x": 84, "y": 169, "anchor": "middle", "parts": "1"}, {"style": "term", "x": 101, "y": 169, "anchor": "middle", "parts": "1 1/4"}, {"style": "term", "x": 124, "y": 170, "anchor": "middle", "parts": "10"}, {"style": "term", "x": 144, "y": 170, "anchor": "middle", "parts": "20"}, {"style": "term", "x": 164, "y": 170, "anchor": "middle", "parts": "30"}, {"style": "term", "x": 171, "y": 169, "anchor": "start", "parts": "in, 64ths"}, {"style": "term", "x": 171, "y": 170, "anchor": "start", "parts": "mm"}, {"style": "hidden", "steps": ["M", 10, 1, "L", 10, 14]}, {"style": "term", "x": 172, "y": 0, "anchor": "start", "parts": "thickness of the drill"}, {"style": "value", "x": 172, "y": 173, "anchor": "start", "parts": "{diameter}; {parts} of the 64ths", "of": "diameter", "hidden": "?"}], "words": [{"parts": "A drill lies across a steel rule, which has 64ths of an inch (25.4 mm to the inch) above and half millimetres below. One side of the drill is at the zero. "}, {"parts": "The other stands at {parts} of the 64ths"}, {"parts": ", which is {diameter}.", "of": "diameter", "hidden": "; what that makes is not told."}], "numbers": [{"name": "parts", "place": 174, "like": "regrinds_left"}]}};
// scene push
scenes.push = {coordinates: function coordinates({diameter, web_ratio, chisel_edge_angle, pilot_diameter, feed, material_factor, tool_wear_factor, thrust}) {
  const v0 = 136*Math.sqrt(1 - Math.pow(web_ratio, 2));
  const v1 = v0 + 206;
  const v2 = 136*web_ratio;
  const v3 = v2 - 178;
  const v4 = Math.sqrt(5);
  const v5 = 1/4 - 1/4*v4;
  const v6 = Math.sqrt(2);
  const v7 = (1/4)*v6;
  const v8 = Math.sqrt(v7 + 1/2);
  const v9 = Math.sqrt(1/2 - v7);
  const v10 = Math.sqrt((1/8)*v4 + 5/8);
  const v11 = (4/3)/(v10*v9 + v5*v8);
  const v12 = v11*(v10*v8 - v5*v9) - v11;
  const v13 = v12*v2;
  const v14 = v0*v12;
  const v15 = Math.asin(web_ratio);
  const v16 = v15 + (9/20)*Math.PI;
  const v17 = Math.cos(v16);
  const v18 = 136*v17;
  const v19 = v12*v18;
  const v20 = Math.sin(v16);
  const v21 = 136*v20;
  const v22 = v21 + 206;
  const v23 = v12*v21;
  const v24 = v18 + 178;
  const v25 = 132.192*v20;
  const v26 = v25 + 206;
  const v27 = 132.192*v17;
  const v28 = v27 + 178;
  const v29 = 176.256*Math.tan((23/480)*Math.PI);
  const v30 = v17*v29;
  const v31 = v20*v29;
  const v32 = v15 + (31/120)*Math.PI;
  const v33 = Math.cos(v32);
  const v34 = v29*v33;
  const v35 = Math.sin(v32);
  const v36 = 132.192*v35;
  const v37 = v36 + 206;
  const v38 = v29*v35;
  const v39 = 132.192*v33;
  const v40 = v39 + 178;
  const v41 = v15 + (1/15)*Math.PI;
  const v42 = Math.cos(v41);
  const v43 = v29*v42;
  const v44 = Math.sin(v41);
  const v45 = 132.192*v44;
  const v46 = v45 + 206;
  const v47 = v29*v44;
  const v48 = 132.192*v42;
  const v49 = v48 + 178;
  const v50 = 62.56*Math.sqrt(1 - web_ratio);
  const v51 = v2 + 178;
  const v52 = v2/Math.tan((1/180)*Math.PI*chisel_edge_angle);
  const v53 = v18 - 178;
  const v54 = v27 - 178;
  const v55 = v36 - 206;
  const v56 = v39 - 178;
  const v57 = v45 - 206;
  const v58 = 1/diameter;
  const v59 = pilot_diameter*v58;
  const v60 = 136*v59;
  const v61 = 68*v59*v6;
  const v62 = material_factor*tool_wear_factor*Math.pow(diameter*feed, 4/5);
  const v63 = (10058/625)*v62/thrust;
  return [70, 178, 136, 342, v1, -v3, v1 - v13, -v14 - v3, -v19 + v22, v23 + v24, v22, v24, v26, v28, v26 - v30, v28 + v31, v34 + v37, -v38 + v40, v37, v40, -v34 + v37, v38 + v40, v43 + v46, -v47 + v49, v46, v49, v45 + 229.12, v48 + 120.88, v50 + 206, v51, 206, v52 + 206, 206 - v52, 206 - v0, -v0 + v13 + 206, v14 + v51, v19 - v21 + 206, -v23 - v53, 206 - v21, -v53, 206 - v25, -v54, -v25 + v30 + 206, -v31 - v54, -v34 - v55, v38 - v39 + 178, -v55, -v56, v34 - v36 + 206, -v38 - v56, -v43 - v57, v47 - v48 + 178, -v57, 178 - v48, 182.88 - v45, 235.12 - v48, 206 - v50, 206 - v60, v60, v60 + 206, 58, 354, 30, 326, v0 + 211, 375.000000000000, v52 + 211, 370, 158.0 - v2, v2 + 198.0, 367.400000000000, 167.0 - v2, 372.600000000000, v2 + 189.0, 404, 236, 419.000000000000, 426.000000000000, 224, 243, 40, 28, 47, v61 + 206, v61 + 178, 300, 288, 307, 150, 372, 382, v63 + 150, 408, 470, 424, 450, 140, 400, 442, 480, 401, v63 + 160, 443, (5029/100000)*v62, 272*v58];
}
, ...{"name": "push", "title": "The push on a drill, and what its chisel edge has to do with it", "width": 580, "height": 480, "allowed": [{"name": "web", "says": "web {web} leaves no chisel edge to draw; give a web above 0, for example 1.5", "low": 1e-06}], "bar": {"x": 24.0, "y": 342.0, "longest": 100.0, "scale": 104}, "shapes": [{"style": "flute", "steps": ["M", 0, 1, "A", 2, 2, "0 0 1", 3, 1, "A", 2, 2, "0 0 1", 0, 1, "Z"]}, {"style": "swept", "steps": ["M", 0, 1, "A", 2, 2, "0 0 1", 3, 1, "A", 2, 2, "0 0 1", 0, 1, "Z"]}, {"style": "flank", "steps": ["M", 4, 5, "C", 6, 7, 8, 9, 10, 11, "L", 12, 13, "C", 14, 15, 16, 17, 18, 19, "C", 20, 21, 22, 23, 24, 25, "C", 26, 27, 28, 29, 30, 29, "L", 31, 29, "L", 32, 5, "L", 4, 5, "Z"]}, {"style": "edge", "steps": ["M", 4, 5, "C", 6, 7, 8, 9, 10, 11, "L", 12, 13, "C", 14, 15, 16, 17, 18, 19, "C", 20, 21, 22, 23, 24, 25, "C", 26, 27, 28, 29, 30, 29, "L", 31, 29]}, {"style": "flank", "steps": ["M", 33, 29, "C", 34, 35, 36, 37, 38, 39, "L", 40, 41, "C", 42, 43, 44, 45, 46, 47, "C", 48, 49, 50, 51, 52, 53, "C", 54, 55, 56, 5, 30, 5, "L", 32, 5, "L", 31, 29, "L", 33, 29, "Z"]}, {"style": "edge", "steps": ["M", 33, 29, "C", 34, 35, 36, 37, 38, 39, "L", 40, 41, "C", 42, 43, 44, 45, 46, 47, "C", 48, 49, 50, 51, 52, 53, "C", 54, 55, 56, 5, 30, 5, "L", 32, 5]}, {"style": "lip", "steps": ["M", 32, 5, "L", 4, 5]}, {"style": "lip", "steps": ["M", 31, 29, "L", 33, 29]}, {"style": "chisel", "steps": ["M", 32, 5, "L", 31, 29]}, {"style": "hidden", "steps": ["M", 57, 1, "A", 58, 58, "0 0 1", 59, 1, "A", 58, 58, "0 0 1", 57, 1, "Z"]}, {"style": "centre", "steps": ["M", 60, 1, "L", 61, 1]}, {"style": "centre", "steps": ["M", 30, 62, "L", 30, 63]}, {"style": "thin", "steps": ["M", 64, 5, "L", 65, 5]}, {"style": "thin", "steps": ["M", 66, 29, "L", 65, 29]}, {"style": "thin", "steps": ["M", 67, 68, "L", 67, 69]}, {"style": "arrow", "steps": ["M", 67, 5, "L", 70, 71, 72, 71, "Z"]}, {"style": "arrow", "steps": ["M", 67, 29, "L", 72, 73, 70, 73, "Z"]}, {"style": "thin", "steps": ["M", 67, 69, "L", 74, 75, 76, 75]}, {"style": "term", "x": 77, "y": 78, "anchor": "start", "parts": "web"}, {"style": "value", "x": 77, "y": 79, "anchor": "start", "parts": "{web}", "of": "web", "hidden": "?"}, {"style": "thin", "steps": ["M", 32, 5, "L", 74, 80, 76, 80]}, {"style": "term", "x": 77, "y": 81, "anchor": "start", "parts": "chisel edge"}, {"style": "value", "x": 77, "y": 82, "anchor": "start", "parts": "{chisel_edge_length}", "of": "chisel_edge_length", "hidden": "?"}, {"style": "thin", "steps": ["M", 83, 84, "L", 74, 85, 76, 85]}, {"style": "term", "x": 77, "y": 86, "anchor": "start", "parts": "pilot hole"}, {"style": "value", "x": 77, "y": 87, "anchor": "start", "parts": "Ø{pilot_diameter}", "of": "pilot_diameter", "hidden": "?"}, {"style": "term", "x": 88, "y": 89, "anchor": "start", "parts": "push; hatched: what the chisel edge adds"}, {"style": "flank", "steps": ["M", 88, 90, "L", 91, 90, 91, 92, 88, 92, "Z"]}, {"style": "edge", "steps": ["M", 88, 90, "L", 91, 90, 91, 92, 88, 92, 88, 90]}, {"style": "section", "steps": ["M", 91, 90, "L", 93, 90, 93, 92, 91, 92, "Z"]}, {"style": "edge", "steps": ["M", 91, 90, "L", 93, 90, 93, 92, 91, 92, 91, 90]}, {"style": "flank", "steps": ["M", 88, 94, "L", 91, 94, 91, 95, 88, 95, "Z"]}, {"style": "edge", "steps": ["M", 88, 94, "L", 91, 94, 91, 95, 88, 95, 88, 94]}, {"style": "term", "x": 96, "y": 97, "anchor": "end", "parts": "in the solid"}, {"style": "term", "x": 96, "y": 98, "anchor": "end", "parts": "no chisel edge"}, {"style": "value", "x": 99, "y": 100, "anchor": "start", "parts": "{thrust}", "of": "thrust", "hidden": "?"}, {"style": "value", "x": 101, "y": 102, "anchor": "start", "parts": "{without_chisel_edge}", "of": "without_chisel_edge", "hidden": "?"}], "words": [{"parts": "A drill seen from the tip, with a pilot hole, and its push as bars. "}, {"parts": "Diameter {diameter}", "of": "diameter", "hidden": "Diameter not told"}, {"parts": ", web {web}", "of": "web", "hidden": ", web not told"}, {"parts": ". The chisel edge is {chisel_edge_length} long", "of": "chisel_edge_length", "hidden": ". How long the chisel edge is is not told"}, {"parts": ". A pilot hole of {pilot_diameter} ", "of": "pilot_diameter", "hidden": ". A pilot hole ", "judged": "pilot_cover", "low": 1.0, "high": 1000000000.0, "below": "leaves the ends of the chisel edge in the metal. ", "within": "takes all the metal from under the chisel edge. ", "above": "takes all the metal from under the chisel edge. "}, {"parts": "In the solid, at a feed of {feed}, the push is {thrust}", "of": "thrust", "hidden": "The push in the solid is not told"}, {"parts": "; without any chisel edge it would be {without_chisel_edge}.", "of": "without_chisel_edge", "hidden": "; nor the push without a chisel edge."}, {"parts": " Both are estimates by the handbook's formula."}], "numbers": [{"name": "without_chisel_edge", "place": 103, "like": "thrust"}]}};
