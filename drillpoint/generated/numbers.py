# ruff: noqa
"""Written by `python -m drillpoint.editions` from the book of relations. Do not edit."""


ABBREVIATIONS = {
    "R": [
        "diameter"
    ],
    "t": [
        "web"
    ],
    "kappa": [
        "point_angle"
    ],
    "delta": [
        "chisel_edge_angle"
    ],
    "omega": [
        "web_ratio"
    ],
    "delta_plane": [
        "point_angle",
        "axial_relief"
    ]
}


TEMPLATES = {
    "point_height": {
        "formula_text": "h = R/tan κ",
        "formula_latex": "h = \\frac{R}{\\tan{\\left(\\kappa \\right)}}",
        "text": "⟦R⟧/tan ⟦kappa⟧",
        "latex": "\\frac{⟦R⟧}{\\tan{\\left(⟦kappa⟧ \\right)}}",
        "abbreviations": [
            "R",
            "kappa"
        ],
        "where": [
            [
                "R = D/2 = ⟦diameter⟧/2 = ⟦R⟧",
                "R = \\frac{D}{2} = \\frac{⟦diameter⟧}{2} = ⟦R⟧"
            ],
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ]
        ]
    },
    "lip_length": {
        "formula_text": "L = (√(R² − t²) − t·cot δ)/sin κ",
        "formula_latex": "L = \\frac{\\sqrt{R^{2} - t^{2}} - t \\cot{\\left(\\delta \\right)}}{\\sin{\\left(\\kappa \\right)}}",
        "text": "(√(⟦R⟧² − ⟦t⟧²) − ⟦t⟧·cot ⟦delta⟧)/sin ⟦kappa⟧",
        "latex": "\\frac{\\sqrt{⟦R⟧^{2} - ⟦t⟧^{2}} - ⟦t⟧ \\cot{\\left(⟦delta⟧ \\right)}}{\\sin{\\left(⟦kappa⟧ \\right)}}",
        "abbreviations": [
            "R",
            "t",
            "kappa",
            "delta"
        ],
        "where": [
            [
                "R = D/2 = ⟦diameter⟧/2 = ⟦R⟧",
                "R = \\frac{D}{2} = \\frac{⟦diameter⟧}{2} = ⟦R⟧"
            ],
            [
                "t = W/2 = ⟦web⟧/2 = ⟦t⟧",
                "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"
            ],
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ],
            [
                "δ = 180° − ψ = 180° − ⟦chisel_edge_angle⟧ = ⟦delta⟧",
                "\\delta = 180^{\\circ} - \\psi = 180^{\\circ} - ⟦chisel_edge_angle⟧ = ⟦delta⟧"
            ]
        ]
    },
    "chisel_edge_length": {
        "formula_text": "C = W/sin ψ",
        "formula_latex": "C = \\frac{W}{\\sin{\\left(\\psi \\right)}}",
        "text": "⟦web⟧/sin ⟦chisel_edge_angle⟧",
        "latex": "\\frac{⟦web⟧}{\\sin{\\left(⟦chisel_edge_angle⟧ \\right)}}",
        "abbreviations": [],
        "where": []
    },
    "chisel_edge_angle": {
        "formula_text": "ψ = 180° − atan(cot κ/tan α_x)",
        "formula_latex": "\\psi = 180^{\\circ} - \\arctan\\left(\\frac{\\cot{\\left(\\kappa \\right)}}{\\tan{\\left(\\alpha_x \\right)}}\\right)",
        "text": "180° − atan(cot ⟦kappa⟧/tan ⟦axial_relief⟧)",
        "latex": "180^{\\circ} - \\arctan\\left(\\frac{\\cot{\\left(⟦kappa⟧ \\right)}}{\\tan{\\left(⟦axial_relief⟧ \\right)}}\\right)",
        "abbreviations": [
            "kappa"
        ],
        "where": [
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ]
        ]
    },
    "axial_relief": {
        "formula_text": "α_x = atan((tan α_f − u·cot κ)/√(1 − u²))",
        "formula_latex": "\\alpha_x = \\arctan{\\left(\\frac{\\tan{\\left(\\alpha_f \\right)} - u \\cot{\\left(\\kappa \\right)}}{\\sqrt{1 - u^{2}}} \\right)}",
        "text": "atan((tan ⟦lip_relief⟧ − ⟦web_ratio⟧·cot ⟦kappa⟧)/√(1 − ⟦web_ratio⟧²))",
        "latex": "\\arctan{\\left(\\frac{\\tan{\\left(⟦lip_relief⟧ \\right)} - ⟦web_ratio⟧ \\cot{\\left(⟦kappa⟧ \\right)}}{\\sqrt{1 - ⟦web_ratio⟧^{2}}} \\right)}",
        "abbreviations": [
            "kappa"
        ],
        "where": [
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ]
        ]
    },
    "lip_relief": {
        "formula_text": "α_f = atan(u·cot κ + √(1 − u²)·tan α_x)",
        "formula_latex": "\\alpha_f = \\arctan{\\left(u \\cot{\\left(\\kappa \\right)} + \\sqrt{1 - u^{2}} \\tan{\\left(\\alpha_x \\right)} \\right)}",
        "text": "atan(⟦web_ratio⟧·cot ⟦kappa⟧ + √(1 − ⟦web_ratio⟧²)·tan ⟦axial_relief⟧)",
        "latex": "\\arctan{\\left(⟦web_ratio⟧ \\cot{\\left(⟦kappa⟧ \\right)} + \\sqrt{1 - ⟦web_ratio⟧^{2}} \\tan{\\left(⟦axial_relief⟧ \\right)} \\right)}",
        "abbreviations": [
            "kappa"
        ],
        "where": [
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ]
        ]
    },
    "relief_at_radius": {
        "formula_text": "α = atan(√(1 − t²/r²)·tan α_x + t·cot κ/r)",
        "formula_latex": "\\alpha = \\arctan{\\left(\\sqrt{1 - \\frac{t^{2}}{r^{2}}} \\tan{\\left(\\alpha_x \\right)} + \\frac{t \\cot{\\left(\\kappa \\right)}}{r} \\right)}",
        "text": "atan(√(1 − ⟦t⟧²/⟦radius⟧²)·tan ⟦axial_relief⟧ + ⟦t⟧·cot ⟦kappa⟧/⟦radius⟧)",
        "latex": "\\arctan{\\left(\\sqrt{1 - \\frac{⟦t⟧^{2}}{⟦radius⟧^{2}}} \\tan{\\left(⟦axial_relief⟧ \\right)} + \\frac{⟦t⟧ \\cot{\\left(⟦kappa⟧ \\right)}}{⟦radius⟧} \\right)}",
        "abbreviations": [
            "t",
            "kappa"
        ],
        "where": [
            [
                "t = W/2 = ⟦web⟧/2 = ⟦t⟧",
                "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"
            ],
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ]
        ]
    },
    "heel_clearance": {
        "formula_text": "q = 2·ω + 180° − 2·δ",
        "formula_latex": "q = 2 \\omega + 180^{\\circ} - 2 \\delta",
        "text": "2·⟦omega⟧ + 180° − 2·⟦delta_plane⟧",
        "latex": "2 ⟦omega⟧ + 180^{\\circ} - 2 ⟦delta_plane⟧",
        "abbreviations": [
            "omega",
            "kappa",
            "delta_plane"
        ],
        "where": [
            [
                "ω = asin u = asin ⟦web_ratio⟧ = ⟦omega⟧",
                "\\omega = \\arcsin{\\left(u \\right)} = \\arcsin{\\left(⟦web_ratio⟧ \\right)} = ⟦omega⟧"
            ],
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ],
            [
                "δ = atan(cot κ/tan α_x) = atan(cot ⟦kappa⟧/tan ⟦axial_relief⟧) = ⟦delta_plane⟧",
                "\\delta = \\arctan\\left(\\frac{\\cot{\\left(\\kappa \\right)}}{\\tan{\\left(\\alpha_x \\right)}}\\right) = \\arctan\\left(\\frac{\\cot{\\left(⟦kappa⟧ \\right)}}{\\tan{\\left(⟦axial_relief⟧ \\right)}}\\right) = ⟦delta_plane⟧"
            ]
        ]
    },
    "web_ratio": {
        "formula_text": "u = W/D",
        "formula_latex": "u = \\frac{W}{D}",
        "text": "⟦web⟧/⟦diameter⟧",
        "latex": "\\frac{⟦web⟧}{⟦diameter⟧}",
        "abbreviations": [],
        "where": []
    },
    "web_from_ratio": {
        "formula_text": "W = D·u",
        "formula_latex": "W = D u",
        "text": "⟦diameter⟧·⟦web_ratio⟧",
        "latex": "⟦diameter⟧ ⟦web_ratio⟧",
        "abbreviations": [],
        "where": []
    },
    "web_after_shortening": {
        "formula_text": "W′ = ΔL·τ + W",
        "formula_latex": "W' = \\Delta L \\tau + W",
        "text": "⟦length_removed⟧·⟦web_taper⟧ + ⟦web⟧",
        "latex": "⟦length_removed⟧ ⟦web_taper⟧ + ⟦web⟧",
        "abbreviations": [],
        "where": []
    },
    "pilot_diameter": {
        "formula_text": "d_p = W/sin ψ",
        "formula_latex": "d_p = \\frac{W}{\\sin{\\left(\\psi \\right)}}",
        "text": "⟦web⟧/sin ⟦chisel_edge_angle⟧",
        "latex": "\\frac{⟦web⟧}{\\sin{\\left(⟦chisel_edge_angle⟧ \\right)}}",
        "abbreviations": [],
        "where": []
    },
    "pilot_cover": {
        "formula_text": "k_p = d_p·sin ψ/W",
        "formula_latex": "k_p = \\frac{d_p \\sin{\\left(\\psi \\right)}}{W}",
        "text": "⟦pilot_diameter⟧·sin ⟦chisel_edge_angle⟧/⟦web⟧",
        "latex": "\\frac{⟦pilot_diameter⟧ \\sin{\\left(⟦chisel_edge_angle⟧ \\right)}}{⟦web⟧}",
        "abbreviations": [],
        "where": []
    },
    "thinning_reach": {
        "formula_text": "x_m = C_t·cos δ/2 + (t − C_t·sin δ/2)/tan ν",
        "formula_latex": "x_m = \\frac{C_t \\cos{\\left(\\delta \\right)}}{2} + \\frac{t - \\frac{C_t \\sin{\\left(\\delta \\right)}}{2}}{\\tan{\\left(\\nu \\right)}}",
        "text": "⟦thinned_chisel_length⟧·cos ⟦delta⟧/2 + (⟦t⟧ − ⟦thinned_chisel_length⟧·sin ⟦delta⟧/2)/tan ⟦thinning_angle⟧",
        "latex": "\\frac{⟦thinned_chisel_length⟧ \\cos{\\left(⟦delta⟧ \\right)}}{2} + \\frac{⟦t⟧ - \\frac{⟦thinned_chisel_length⟧ \\sin{\\left(⟦delta⟧ \\right)}}{2}}{\\tan{\\left(⟦thinning_angle⟧ \\right)}}",
        "abbreviations": [
            "t",
            "delta"
        ],
        "where": [
            [
                "t = W/2 = ⟦web⟧/2 = ⟦t⟧",
                "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"
            ],
            [
                "δ = 180° − ψ = 180° − ⟦chisel_edge_angle⟧ = ⟦delta⟧",
                "\\delta = 180^{\\circ} - \\psi = 180^{\\circ} - ⟦chisel_edge_angle⟧ = ⟦delta⟧"
            ]
        ]
    },
    "thinned_lip_in_end_view": {
        "formula_text": "p_t = (t − C_t·sin δ/2)/sin ν",
        "formula_latex": "p_t = \\frac{t - \\frac{C_t \\sin{\\left(\\delta \\right)}}{2}}{\\sin{\\left(\\nu \\right)}}",
        "text": "(⟦t⟧ − ⟦thinned_chisel_length⟧·sin ⟦delta⟧/2)/sin ⟦thinning_angle⟧",
        "latex": "\\frac{⟦t⟧ - \\frac{⟦thinned_chisel_length⟧ \\sin{\\left(⟦delta⟧ \\right)}}{2}}{\\sin{\\left(⟦thinning_angle⟧ \\right)}}",
        "abbreviations": [
            "t",
            "delta"
        ],
        "where": [
            [
                "t = W/2 = ⟦web⟧/2 = ⟦t⟧",
                "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"
            ],
            [
                "δ = 180° − ψ = 180° − ⟦chisel_edge_angle⟧ = ⟦delta⟧",
                "\\delta = 180^{\\circ} - \\psi = 180^{\\circ} - ⟦chisel_edge_angle⟧ = ⟦delta⟧"
            ]
        ]
    },
    "thinned_lip_length": {
        "formula_text": "L_t = (t − C_t·sin δ/2)·√((cos ν·cot κ − sin ν·tan α_x)² + 1)/sin ν",
        "formula_latex": "L_t = \\frac{\\left(t - \\frac{C_t \\sin{\\left(\\delta \\right)}}{2}\\right) \\sqrt{\\left(\\cos{\\left(\\nu \\right)} \\cot{\\left(\\kappa \\right)} - \\sin{\\left(\\nu \\right)} \\tan{\\left(\\alpha_x \\right)}\\right)^{2} + 1}}{\\sin{\\left(\\nu \\right)}}",
        "text": "(⟦t⟧ − ⟦thinned_chisel_length⟧·sin ⟦delta⟧/2)·√((cos ⟦thinning_angle⟧·cot ⟦kappa⟧ − sin ⟦thinning_angle⟧·tan ⟦axial_relief⟧)² + 1)/sin ⟦thinning_angle⟧",
        "latex": "\\frac{\\left(⟦t⟧ - \\frac{⟦thinned_chisel_length⟧ \\sin{\\left(⟦delta⟧ \\right)}}{2}\\right) \\sqrt{\\left(\\cos{\\left(⟦thinning_angle⟧ \\right)} \\cot{\\left(⟦kappa⟧ \\right)} - \\sin{\\left(⟦thinning_angle⟧ \\right)} \\tan{\\left(⟦axial_relief⟧ \\right)}\\right)^{2} + 1}}{\\sin{\\left(⟦thinning_angle⟧ \\right)}}",
        "abbreviations": [
            "t",
            "kappa",
            "delta"
        ],
        "where": [
            [
                "t = W/2 = ⟦web⟧/2 = ⟦t⟧",
                "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"
            ],
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ],
            [
                "δ = 180° − ψ = 180° − ⟦chisel_edge_angle⟧ = ⟦delta⟧",
                "\\delta = 180^{\\circ} - \\psi = 180^{\\circ} - ⟦chisel_edge_angle⟧ = ⟦delta⟧"
            ]
        ]
    },
    "untouched_lip_length": {
        "formula_text": "L_u = (√(R² − t²) − C_t·cos δ/2 − (t − C_t·sin δ/2)/tan ν)/sin κ",
        "formula_latex": "L_u = \\frac{\\sqrt{R^{2} - t^{2}} - \\frac{C_t \\cos{\\left(\\delta \\right)}}{2} - \\frac{t - \\frac{C_t \\sin{\\left(\\delta \\right)}}{2}}{\\tan{\\left(\\nu \\right)}}}{\\sin{\\left(\\kappa \\right)}}",
        "text": "(√(⟦R⟧² − ⟦t⟧²) − ⟦thinned_chisel_length⟧·cos ⟦delta⟧/2 − (⟦t⟧ − ⟦thinned_chisel_length⟧·sin ⟦delta⟧/2)/tan ⟦thinning_angle⟧)/sin ⟦kappa⟧",
        "latex": "\\frac{\\sqrt{⟦R⟧^{2} - ⟦t⟧^{2}} - \\frac{⟦thinned_chisel_length⟧ \\cos{\\left(⟦delta⟧ \\right)}}{2} - \\frac{⟦t⟧ - \\frac{⟦thinned_chisel_length⟧ \\sin{\\left(⟦delta⟧ \\right)}}{2}}{\\tan{\\left(⟦thinning_angle⟧ \\right)}}}{\\sin{\\left(⟦kappa⟧ \\right)}}",
        "abbreviations": [
            "R",
            "t",
            "kappa",
            "delta"
        ],
        "where": [
            [
                "R = D/2 = ⟦diameter⟧/2 = ⟦R⟧",
                "R = \\frac{D}{2} = \\frac{⟦diameter⟧}{2} = ⟦R⟧"
            ],
            [
                "t = W/2 = ⟦web⟧/2 = ⟦t⟧",
                "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"
            ],
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ],
            [
                "δ = 180° − ψ = 180° − ⟦chisel_edge_angle⟧ = ⟦delta⟧",
                "\\delta = 180^{\\circ} - \\psi = 180^{\\circ} - ⟦chisel_edge_angle⟧ = ⟦delta⟧"
            ]
        ]
    },
    "untouched_lip_share": {
        "formula_text": "s_u = (√(R² − t²) − C_t·cos δ/2 − (t − C_t·sin δ/2)/tan ν)/(√(R² − t²) − t·cot δ)",
        "formula_latex": "s_u = \\frac{\\sqrt{R^{2} - t^{2}} - \\frac{C_t \\cos{\\left(\\delta \\right)}}{2} - \\frac{t - \\frac{C_t \\sin{\\left(\\delta \\right)}}{2}}{\\tan{\\left(\\nu \\right)}}}{\\sqrt{R^{2} - t^{2}} - t \\cot{\\left(\\delta \\right)}}",
        "text": "(√(⟦R⟧² − ⟦t⟧²) − ⟦thinned_chisel_length⟧·cos ⟦delta⟧/2 − (⟦t⟧ − ⟦thinned_chisel_length⟧·sin ⟦delta⟧/2)/tan ⟦thinning_angle⟧)/(√(⟦R⟧² − ⟦t⟧²) − ⟦t⟧·cot ⟦delta⟧)",
        "latex": "\\frac{\\sqrt{⟦R⟧^{2} - ⟦t⟧^{2}} - \\frac{⟦thinned_chisel_length⟧ \\cos{\\left(⟦delta⟧ \\right)}}{2} - \\frac{⟦t⟧ - \\frac{⟦thinned_chisel_length⟧ \\sin{\\left(⟦delta⟧ \\right)}}{2}}{\\tan{\\left(⟦thinning_angle⟧ \\right)}}}{\\sqrt{⟦R⟧^{2} - ⟦t⟧^{2}} - ⟦t⟧ \\cot{\\left(⟦delta⟧ \\right)}}",
        "abbreviations": [
            "R",
            "t",
            "delta"
        ],
        "where": [
            [
                "R = D/2 = ⟦diameter⟧/2 = ⟦R⟧",
                "R = \\frac{D}{2} = \\frac{⟦diameter⟧}{2} = ⟦R⟧"
            ],
            [
                "t = W/2 = ⟦web⟧/2 = ⟦t⟧",
                "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"
            ],
            [
                "δ = 180° − ψ = 180° − ⟦chisel_edge_angle⟧ = ⟦delta⟧",
                "\\delta = 180^{\\circ} - \\psi = 180^{\\circ} - ⟦chisel_edge_angle⟧ = ⟦delta⟧"
            ]
        ]
    },
    "thinned_web": {
        "formula_text": "W_t = C_t·sin(δ − ν)",
        "formula_latex": "W_t = C_t \\sin{\\left(\\delta - \\nu \\right)}",
        "text": "⟦thinned_chisel_length⟧·sin(⟦delta⟧ − ⟦thinning_angle⟧)",
        "latex": "⟦thinned_chisel_length⟧ \\sin{\\left(⟦delta⟧ - ⟦thinning_angle⟧ \\right)}",
        "abbreviations": [
            "delta"
        ],
        "where": [
            [
                "δ = 180° − ψ = 180° − ⟦chisel_edge_angle⟧ = ⟦delta⟧",
                "\\delta = 180^{\\circ} - \\psi = 180^{\\circ} - ⟦chisel_edge_angle⟧ = ⟦delta⟧"
            ]
        ]
    },
    "chisel_ratio": {
        "formula_text": "c = C/D",
        "formula_latex": "c = \\frac{C}{D}",
        "text": "⟦chisel_edge_length⟧/⟦diameter⟧",
        "latex": "\\frac{⟦chisel_edge_length⟧}{⟦diameter⟧}",
        "abbreviations": [],
        "where": []
    },
    "torque_factor": {
        "formula_text": "A_M = 3.2·c^1.8 + (1 − c²)/(c + 1)^0.2",
        "formula_latex": "A_M = 3.2 c^{1.8} + \\frac{1 - c^{2}}{\\left(c + 1\\right)^{0.2}}",
        "text": "3.2·⟦chisel_ratio⟧^1.8 + (1 − ⟦chisel_ratio⟧²)/(⟦chisel_ratio⟧ + 1)^0.2",
        "latex": "3.2 ⟦chisel_ratio⟧^{1.8} + \\frac{1 - ⟦chisel_ratio⟧^{2}}{\\left(⟦chisel_ratio⟧ + 1\\right)^{0.2}}",
        "abbreviations": [],
        "where": []
    },
    "thrust_factor": {
        "formula_text": "B_T = 2.2·c^0.8 + (1 − c)/(c + 1)^0.2",
        "formula_latex": "B_T = 2.2 c^{0.8} + \\frac{1 - c}{\\left(c + 1\\right)^{0.2}}",
        "text": "2.2·⟦chisel_ratio⟧^0.8 + (1 − ⟦chisel_ratio⟧)/(⟦chisel_ratio⟧ + 1)^0.2",
        "latex": "2.2 ⟦chisel_ratio⟧^{0.8} + \\frac{1 - ⟦chisel_ratio⟧}{\\left(⟦chisel_ratio⟧ + 1\\right)^{0.2}}",
        "abbreviations": [],
        "where": []
    },
    "chisel_thrust_factor": {
        "formula_text": "J_T = c²",
        "formula_latex": "J_T = c^{2}",
        "text": "⟦chisel_ratio⟧²",
        "latex": "⟦chisel_ratio⟧^{2}",
        "abbreviations": [],
        "where": []
    },
    "reference_torque_factor": {
        "formula_text": "A_0 = 3.2·c_0^1.8 + (1 − c_0²)/(c_0 + 1)^0.2",
        "formula_latex": "A_0 = 3.2 c_0^{1.8} + \\frac{1 - c_0^{2}}{\\left(c_0 + 1\\right)^{0.2}}",
        "text": "3.2·⟦reference_chisel_ratio⟧^1.8 + (1 − ⟦reference_chisel_ratio⟧²)/(⟦reference_chisel_ratio⟧ + 1)^0.2",
        "latex": "3.2 ⟦reference_chisel_ratio⟧^{1.8} + \\frac{1 - ⟦reference_chisel_ratio⟧^{2}}{\\left(⟦reference_chisel_ratio⟧ + 1\\right)^{0.2}}",
        "abbreviations": [],
        "where": []
    },
    "reference_thrust_factor": {
        "formula_text": "B_0 = 2.2·c_0^0.8 + (1 − c_0)/(c_0 + 1)^0.2",
        "formula_latex": "B_0 = 2.2 c_0^{0.8} + \\frac{1 - c_0}{\\left(c_0 + 1\\right)^{0.2}}",
        "text": "2.2·⟦reference_chisel_ratio⟧^0.8 + (1 − ⟦reference_chisel_ratio⟧)/(⟦reference_chisel_ratio⟧ + 1)^0.2",
        "latex": "2.2 ⟦reference_chisel_ratio⟧^{0.8} + \\frac{1 - ⟦reference_chisel_ratio⟧}{\\left(⟦reference_chisel_ratio⟧ + 1\\right)^{0.2}}",
        "abbreviations": [],
        "where": []
    },
    "reference_chisel_thrust_factor": {
        "formula_text": "J_0 = c_0²",
        "formula_latex": "J_0 = c_0^{2}",
        "text": "⟦reference_chisel_ratio⟧²",
        "latex": "⟦reference_chisel_ratio⟧^{2}",
        "abbreviations": [],
        "where": []
    },
    "thrust": {
        "formula_text": "T = K_d·k_w·(0.0068948·J_T·D² + 0.05029·B_T·(D·f)^0.8)",
        "formula_latex": "T = K_d k_w \\left(0.0068948 J_T D^{2} + 0.05029 B_T \\left(D f\\right)^{0.8}\\right)",
        "text": "⟦material_factor⟧·⟦tool_wear_factor⟧·(0.0068948·⟦chisel_thrust_factor⟧·⟦diameter⟧² + 0.05029·⟦thrust_factor⟧·(⟦diameter⟧·⟦feed⟧)^0.8)",
        "latex": "⟦material_factor⟧ ⟦tool_wear_factor⟧ \\left(0.0068948 ⟦chisel_thrust_factor⟧ ⟦diameter⟧^{2} + 0.05029 ⟦thrust_factor⟧ \\left(⟦diameter⟧ ⟦feed⟧\\right)^{0.8}\\right)",
        "abbreviations": [],
        "where": []
    },
    "torque": {
        "formula_text": "M = 0.000025145·D^1.8·f^0.8·K_d·k_w·A_M",
        "formula_latex": "M = 0.000025145 D^{1.8} f^{0.8} K_d k_w A_M",
        "text": "0.000025145·⟦diameter⟧^1.8·⟦feed⟧^0.8·⟦material_factor⟧·⟦tool_wear_factor⟧·⟦torque_factor⟧",
        "latex": "0.000025145 ⟦diameter⟧^{1.8} ⟦feed⟧^{0.8} ⟦material_factor⟧ ⟦tool_wear_factor⟧ ⟦torque_factor⟧",
        "abbreviations": [],
        "where": []
    },
    "thrust_ratio": {
        "formula_text": "q_T = (0.0068948·J_T·D² + 0.05029·B_T·(D·f)^0.8)/(0.0068948·D²·J_0 + 0.05029·B_0·(D·f)^0.8)",
        "formula_latex": "q_T = \\frac{0.0068948 J_T D^{2} + 0.05029 B_T \\left(D f\\right)^{0.8}}{0.0068948 D^{2} J_0 + 0.05029 B_0 \\left(D f\\right)^{0.8}}",
        "text": "(0.0068948·⟦chisel_thrust_factor⟧·⟦diameter⟧² + 0.05029·⟦thrust_factor⟧·(⟦diameter⟧·⟦feed⟧)^0.8)/(0.0068948·⟦diameter⟧²·⟦reference_chisel_thrust_factor⟧ + 0.05029·⟦reference_thrust_factor⟧·(⟦diameter⟧·⟦feed⟧)^0.8)",
        "latex": "\\frac{0.0068948 ⟦chisel_thrust_factor⟧ ⟦diameter⟧^{2} + 0.05029 ⟦thrust_factor⟧ \\left(⟦diameter⟧ ⟦feed⟧\\right)^{0.8}}{0.0068948 ⟦diameter⟧^{2} ⟦reference_chisel_thrust_factor⟧ + 0.05029 ⟦reference_thrust_factor⟧ \\left(⟦diameter⟧ ⟦feed⟧\\right)^{0.8}}",
        "abbreviations": [],
        "where": []
    },
    "torque_ratio": {
        "formula_text": "q_M = A_M/A_0",
        "formula_latex": "q_M = \\frac{A_M}{A_0}",
        "text": "⟦torque_factor⟧/⟦reference_torque_factor⟧",
        "latex": "\\frac{⟦torque_factor⟧}{⟦reference_torque_factor⟧}",
        "abbreviations": [],
        "where": []
    },
    "power": {
        "formula_text": "P = π·n·M/30000",
        "formula_latex": "P = \\frac{\\pi n M}{30000}",
        "text": "π·⟦spindle_speed⟧·⟦torque⟧/30000",
        "latex": "\\frac{\\pi ⟦spindle_speed⟧ ⟦torque⟧}{30000}",
        "abbreviations": [],
        "where": []
    },
    "motor_power": {
        "formula_text": "P_m = P/e_m",
        "formula_latex": "P_m = \\frac{P}{e_m}",
        "text": "⟦power⟧/⟦efficiency⟧",
        "latex": "\\frac{⟦power⟧}{⟦efficiency⟧}",
        "abbreviations": [],
        "where": []
    },
    "chip_thickness": {
        "formula_text": "h_c = f·sin κ/2",
        "formula_latex": "h_c = \\frac{f \\sin{\\left(\\kappa \\right)}}{2}",
        "text": "⟦feed⟧·sin ⟦kappa⟧/2",
        "latex": "\\frac{⟦feed⟧ \\sin{\\left(⟦kappa⟧ \\right)}}{2}",
        "abbreviations": [
            "kappa"
        ],
        "where": [
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ]
        ]
    },
    "chip_width": {
        "formula_text": "b_c = (√(R² − t²) − t·cot δ)/sin κ",
        "formula_latex": "b_c = \\frac{\\sqrt{R^{2} - t^{2}} - t \\cot{\\left(\\delta \\right)}}{\\sin{\\left(\\kappa \\right)}}",
        "text": "(√(⟦R⟧² − ⟦t⟧²) − ⟦t⟧·cot ⟦delta⟧)/sin ⟦kappa⟧",
        "latex": "\\frac{\\sqrt{⟦R⟧^{2} - ⟦t⟧^{2}} - ⟦t⟧ \\cot{\\left(⟦delta⟧ \\right)}}{\\sin{\\left(⟦kappa⟧ \\right)}}",
        "abbreviations": [
            "R",
            "t",
            "kappa",
            "delta"
        ],
        "where": [
            [
                "R = D/2 = ⟦diameter⟧/2 = ⟦R⟧",
                "R = \\frac{D}{2} = \\frac{⟦diameter⟧}{2} = ⟦R⟧"
            ],
            [
                "t = W/2 = ⟦web⟧/2 = ⟦t⟧",
                "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"
            ],
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ],
            [
                "δ = 180° − ψ = 180° − ⟦chisel_edge_angle⟧ = ⟦delta⟧",
                "\\delta = 180^{\\circ} - \\psi = 180^{\\circ} - ⟦chisel_edge_angle⟧ = ⟦delta⟧"
            ]
        ]
    },
    "specific_cutting_force": {
        "formula_text": "k_c = k_1/h_c^m_c",
        "formula_latex": "k_c = h_c^{- m_c} k_1",
        "text": "⟦specific_force_at_1_mm⟧/⟦chip_thickness⟧^⟦chip_thickness_exponent⟧",
        "latex": "⟦chip_thickness⟧^{- ⟦chip_thickness_exponent⟧} ⟦specific_force_at_1_mm⟧",
        "abbreviations": [],
        "where": []
    },
    "torque_specific_force": {
        "formula_text": "M = 0.000125·D²·f·k_c",
        "formula_latex": "M = 0.000125 D^{2} f k_c",
        "text": "0.000125·⟦diameter⟧²·⟦feed⟧·⟦specific_cutting_force⟧",
        "latex": "0.000125 ⟦diameter⟧^{2} ⟦feed⟧ ⟦specific_cutting_force⟧",
        "abbreviations": [],
        "where": []
    }
}


def letter__R(m, diameter):
    return (1/2)*diameter


def letter__t(m, web):
    return (1/2)*web


def letter__kappa(m, point_angle):
    return (1/2)*point_angle


def letter__delta(m, chisel_edge_angle):
    return (-m.pi*chisel_edge_angle + 180*m.pi)/m.pi


def letter__omega(m, web_ratio):
    return 180*m.asin(web_ratio)/m.pi


def letter__delta_plane(m, point_angle, axial_relief):
    return 180*m.atan2(m.tan((1/360)*m.pi*point_angle)**(-1), m.tan((1/180)*m.pi*axial_relief))/m.pi


def point_height(m, diameter, point_angle):
    return (1/2)*diameter/m.tan((1/360)*m.pi*point_angle)


def point_height__margins(m, diameter, point_angle):
    return []


def point_height__cautions(m, diameter, point_angle):
    return []


def point_height__by__diameter(m, diameter, point_angle):
    return (1/2)/m.tan((1/360)*m.pi*point_angle)


def point_height__by__point_angle(m, diameter, point_angle):
    v0 = m.tan((1/360)*m.pi*point_angle)**2
    return -1/720*m.pi*diameter*(v0 + 1)/v0


def lip_length(m, diameter, point_angle, web, chisel_edge_angle):
    return ((1/2)*web/m.tan((1/180)*m.pi*chisel_edge_angle) + m.sqrt((1/4)*diameter**2 - 1/4*web**2))/m.sin((1/360)*m.pi*point_angle)


def lip_length__margins(m, diameter, point_angle, web, chisel_edge_angle):
    return [diameter*m.sin((1/180)*m.pi*chisel_edge_angle) - web]


def lip_length__cautions(m, diameter, point_angle, web, chisel_edge_angle):
    return []


def lip_length__by__diameter(m, diameter, point_angle, web, chisel_edge_angle):
    return (1/4)*diameter/(m.sqrt((1/4)*diameter**2 - 1/4*web**2)*m.sin((1/360)*m.pi*point_angle))


def lip_length__by__point_angle(m, diameter, point_angle, web, chisel_edge_angle):
    v0 = (1/360)*m.pi
    v1 = point_angle*v0
    return -v0*((1/2)*web/m.tan((1/180)*m.pi*chisel_edge_angle) + m.sqrt((1/4)*diameter**2 - 1/4*web**2))*m.cos(v1)/m.sin(v1)**2


def lip_length__by__web(m, diameter, point_angle, web, chisel_edge_angle):
    return (-1/4*web/m.sqrt((1/4)*diameter**2 - 1/4*web**2) + (1/2)/m.tan((1/180)*m.pi*chisel_edge_angle))/m.sin((1/360)*m.pi*point_angle)


def lip_length__by__chisel_edge_angle(m, diameter, point_angle, web, chisel_edge_angle):
    v0 = (1/360)*m.pi
    return v0*web*(-1 - 1/m.tan((1/180)*m.pi*chisel_edge_angle)**2)/m.sin(point_angle*v0)


def chisel_edge_length(m, web, chisel_edge_angle):
    return web/m.sin((1/180)*m.pi*chisel_edge_angle)


def chisel_edge_length__margins(m, web, chisel_edge_angle):
    return []


def chisel_edge_length__cautions(m, web, chisel_edge_angle):
    return []


def chisel_edge_length__by__web(m, web, chisel_edge_angle):
    return m.sin((1/180)*m.pi*chisel_edge_angle)**(-1)


def chisel_edge_length__by__chisel_edge_angle(m, web, chisel_edge_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    return -v0*web*m.cos(v1)/m.sin(v1)**2


def chisel_edge_angle(m, point_angle, axial_relief):
    return (-180*m.atan2(m.tan((1/360)*m.pi*point_angle)**(-1), m.tan((1/180)*m.pi*axial_relief)) + 180*m.pi)/m.pi


def chisel_edge_angle__margins(m, point_angle, axial_relief):
    return []


def chisel_edge_angle__cautions(m, point_angle, axial_relief):
    return []


def chisel_edge_angle__by__point_angle(m, point_angle, axial_relief):
    v0 = m.tan((1/180)*m.pi*axial_relief)
    v1 = m.tan((1/360)*m.pi*point_angle)**(-2)
    return -1/2*v0*(-v1 - 1)/(v0**2 + v1)


def chisel_edge_angle__by__axial_relief(m, point_angle, axial_relief):
    v0 = m.tan((1/360)*m.pi*point_angle)
    v1 = m.tan((1/180)*m.pi*axial_relief)**2
    return (v1 + 1)/(v0*(v1 + v0**(-2)))


def axial_relief(m, lip_relief, point_angle, web_ratio):
    return 180*m.atan((-web_ratio/m.tan((1/360)*m.pi*point_angle) + m.tan((1/180)*m.pi*lip_relief))/m.sqrt(1 - web_ratio**2))/m.pi


def axial_relief__margins(m, lip_relief, point_angle, web_ratio):
    return []


def axial_relief__cautions(m, lip_relief, point_angle, web_ratio):
    return []


def axial_relief__by__lip_relief(m, lip_relief, point_angle, web_ratio):
    v0 = 1 - web_ratio**2
    v1 = m.tan((1/180)*m.pi*lip_relief)
    return (v1**2 + 1)/(m.sqrt(v0)*(1 + (v1 - web_ratio/m.tan((1/360)*m.pi*point_angle))**2/v0))


def axial_relief__by__point_angle(m, lip_relief, point_angle, web_ratio):
    v0 = 1 - web_ratio**2
    v1 = m.tan((1/360)*m.pi*point_angle)
    return -1/2*web_ratio*(-1 - 1/v1**2)/(m.sqrt(v0)*(1 + (m.tan((1/180)*m.pi*lip_relief) - web_ratio/v1)**2/v0))


def axial_relief__by__web_ratio(m, lip_relief, point_angle, web_ratio):
    v0 = 1 - web_ratio**2
    v1 = m.tan((1/360)*m.pi*point_angle)**(-1)
    v2 = -v1*web_ratio + m.tan((1/180)*m.pi*lip_relief)
    return 180*(-v1/m.sqrt(v0) + v2*web_ratio/v0**(3/2))/(m.pi*(1 + v2**2/v0))


def lip_relief(m, axial_relief, point_angle, web_ratio):
    return 180*m.atan(web_ratio/m.tan((1/360)*m.pi*point_angle) + m.sqrt(1 - web_ratio**2)*m.tan((1/180)*m.pi*axial_relief))/m.pi


def lip_relief__margins(m, axial_relief, point_angle, web_ratio):
    return []


def lip_relief__cautions(m, axial_relief, point_angle, web_ratio):
    return []


def lip_relief__by__axial_relief(m, axial_relief, point_angle, web_ratio):
    v0 = m.sqrt(1 - web_ratio**2)
    v1 = m.tan((1/180)*m.pi*axial_relief)
    return v0*(v1**2 + 1)/((v0*v1 + web_ratio/m.tan((1/360)*m.pi*point_angle))**2 + 1)


def lip_relief__by__point_angle(m, axial_relief, point_angle, web_ratio):
    v0 = m.tan((1/360)*m.pi*point_angle)
    return (1/2)*web_ratio*(-1 - 1/v0**2)/((m.sqrt(1 - web_ratio**2)*m.tan((1/180)*m.pi*axial_relief) + web_ratio/v0)**2 + 1)


def lip_relief__by__web_ratio(m, axial_relief, point_angle, web_ratio):
    v0 = m.tan((1/360)*m.pi*point_angle)**(-1)
    v1 = m.tan((1/180)*m.pi*axial_relief)
    v2 = m.sqrt(1 - web_ratio**2)
    return 180*(v0 - v1*web_ratio/v2)/(m.pi*((v0*web_ratio + v1*v2)**2 + 1))


def relief_at_radius(m, radius, web, point_angle, axial_relief):
    return 180*m.atan(m.sqrt(1 - 1/4*web**2/radius**2)*m.tan((1/180)*m.pi*axial_relief) + (1/2)*web/(radius*m.tan((1/360)*m.pi*point_angle)))/m.pi


def relief_at_radius__margins(m, radius, web, point_angle, axial_relief):
    return []


def relief_at_radius__cautions(m, radius, web, point_angle, axial_relief):
    v0 = m.tan((1/360)*m.pi*point_angle)
    return [radius/(v0*m.sqrt(m.tan((1/180)*m.pi*axial_relief)**2 + v0**(-2))) - 1/2*web]


def relief_at_radius__by__radius(m, radius, web, point_angle, axial_relief):
    v0 = (1/2)*web/m.tan((1/360)*m.pi*point_angle)
    v1 = m.tan((1/180)*m.pi*axial_relief)
    v2 = radius**(-2)
    v3 = web**2
    v4 = m.sqrt(-1/4*v2*v3 + 1)
    return 180*(-v0*v2 + (1/4)*v1*v3/(radius**3*v4))/(m.pi*((v1*v4 + v0/radius)**2 + 1))


def relief_at_radius__by__web(m, radius, web, point_angle, axial_relief):
    v0 = (1/2)/(radius*m.tan((1/360)*m.pi*point_angle))
    v1 = m.tan((1/180)*m.pi*axial_relief)
    v2 = (1/4)/radius**2
    v3 = m.sqrt(-v2*web**2 + 1)
    return 180*(v0 - v1*v2*web/v3)/(m.pi*((v0*web + v1*v3)**2 + 1))


def relief_at_radius__by__point_angle(m, radius, web, point_angle, axial_relief):
    v0 = m.tan((1/360)*m.pi*point_angle)
    v1 = web/radius
    return (1/4)*v1*(-1 - 1/v0**2)/((m.sqrt(1 - 1/4*web**2/radius**2)*m.tan((1/180)*m.pi*axial_relief) + (1/2)*v1/v0)**2 + 1)


def relief_at_radius__by__axial_relief(m, radius, web, point_angle, axial_relief):
    v0 = m.tan((1/180)*m.pi*axial_relief)
    v1 = m.sqrt(1 - 1/4*web**2/radius**2)
    return v1*(v0**2 + 1)/((v0*v1 + (1/2)*web/(radius*m.tan((1/360)*m.pi*point_angle)))**2 + 1)


def heel_clearance(m, point_angle, axial_relief, web_ratio):
    return (360*m.asin(web_ratio) - 360*m.atan2(m.tan((1/360)*m.pi*point_angle)**(-1), m.tan((1/180)*m.pi*axial_relief)) + 180*m.pi)/m.pi


def heel_clearance__margins(m, point_angle, axial_relief, web_ratio):
    return [2*m.asin(web_ratio) - 2*m.atan2(m.tan((1/360)*m.pi*point_angle)**(-1), m.tan((1/180)*m.pi*axial_relief)) + m.pi]


def heel_clearance__cautions(m, point_angle, axial_relief, web_ratio):
    return []


def heel_clearance__by__point_angle(m, point_angle, axial_relief, web_ratio):
    v0 = m.tan((1/180)*m.pi*axial_relief)
    v1 = m.tan((1/360)*m.pi*point_angle)**(-2)
    return -v0*(-v1 - 1)/(v0**2 + v1)


def heel_clearance__by__axial_relief(m, point_angle, axial_relief, web_ratio):
    v0 = m.tan((1/360)*m.pi*point_angle)
    v1 = m.tan((1/180)*m.pi*axial_relief)**2
    return 2*(v1 + 1)/(v0*(v1 + v0**(-2)))


def heel_clearance__by__web_ratio(m, point_angle, axial_relief, web_ratio):
    return 360/(m.pi*m.sqrt(1 - web_ratio**2))


def web_ratio(m, web, diameter):
    return web/diameter


def web_ratio__margins(m, web, diameter):
    return []


def web_ratio__cautions(m, web, diameter):
    return []


def web_ratio__by__web(m, web, diameter):
    return diameter**(-1)


def web_ratio__by__diameter(m, web, diameter):
    return -web/diameter**2


def web_from_ratio(m, web_ratio, diameter):
    return diameter*web_ratio


def web_from_ratio__margins(m, web_ratio, diameter):
    return []


def web_from_ratio__cautions(m, web_ratio, diameter):
    return []


def web_from_ratio__by__web_ratio(m, web_ratio, diameter):
    return diameter


def web_from_ratio__by__diameter(m, web_ratio, diameter):
    return web_ratio


def web_after_shortening(m, web, web_taper, length_removed):
    return length_removed*web_taper + web


def web_after_shortening__margins(m, web, web_taper, length_removed):
    return []


def web_after_shortening__cautions(m, web, web_taper, length_removed):
    return []


def web_after_shortening__by__web(m, web, web_taper, length_removed):
    return 1


def web_after_shortening__by__web_taper(m, web, web_taper, length_removed):
    return length_removed


def web_after_shortening__by__length_removed(m, web, web_taper, length_removed):
    return web_taper


def pilot_diameter(m, web, chisel_edge_angle):
    return web/m.sin((1/180)*m.pi*chisel_edge_angle)


def pilot_diameter__margins(m, web, chisel_edge_angle):
    return []


def pilot_diameter__cautions(m, web, chisel_edge_angle):
    return []


def pilot_diameter__by__web(m, web, chisel_edge_angle):
    return m.sin((1/180)*m.pi*chisel_edge_angle)**(-1)


def pilot_diameter__by__chisel_edge_angle(m, web, chisel_edge_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    return -v0*web*m.cos(v1)/m.sin(v1)**2


def pilot_cover(m, pilot_diameter, web, chisel_edge_angle):
    return pilot_diameter*m.sin((1/180)*m.pi*chisel_edge_angle)/web


def pilot_cover__margins(m, pilot_diameter, web, chisel_edge_angle):
    return [web]


def pilot_cover__cautions(m, pilot_diameter, web, chisel_edge_angle):
    return []


def pilot_cover__by__pilot_diameter(m, pilot_diameter, web, chisel_edge_angle):
    return m.sin((1/180)*m.pi*chisel_edge_angle)/web


def pilot_cover__by__web(m, pilot_diameter, web, chisel_edge_angle):
    return -pilot_diameter*m.sin((1/180)*m.pi*chisel_edge_angle)/web**2


def pilot_cover__by__chisel_edge_angle(m, pilot_diameter, web, chisel_edge_angle):
    v0 = (1/180)*m.pi
    return pilot_diameter*v0*m.cos(chisel_edge_angle*v0)/web


def thinning_reach(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    v2 = (1/2)*thinned_chisel_length
    return -v2*m.cos(v1) + (-v2*m.sin(v1) + (1/2)*web)/m.tan(thinning_angle*v0)


def thinning_reach__margins(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    return [-thinned_chisel_length + web/m.sin(v1), -thinning_angle*v0 - v1 + m.pi]


def thinning_reach__cautions(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    return []


def thinning_reach__by__web(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    return (1/2)/m.tan((1/180)*m.pi*thinning_angle)


def thinning_reach__by__chisel_edge_angle(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    v2 = (1/360)*m.pi*thinned_chisel_length
    return v2*m.sin(v1) - v2*m.cos(v1)/m.tan(thinning_angle*v0)


def thinning_reach__by__thinned_chisel_length(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    return -1/2*m.sin(v1)/m.tan(thinning_angle*v0) - 1/2*m.cos(v1)


def thinning_reach__by__thinning_angle(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = m.tan(thinning_angle*v0)**2
    return -v0*(v1 + 1)*(-1/2*thinned_chisel_length*m.sin(chisel_edge_angle*v0) + (1/2)*web)/v1


def thinned_lip_in_end_view(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    return (-1/2*thinned_chisel_length*m.sin(chisel_edge_angle*v0) + (1/2)*web)/m.sin(thinning_angle*v0)


def thinned_lip_in_end_view__margins(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    return [-thinned_chisel_length + web/m.sin(v1), -thinning_angle*v0 - v1 + m.pi]


def thinned_lip_in_end_view__cautions(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    return []


def thinned_lip_in_end_view__by__web(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    return (1/2)/m.sin((1/180)*m.pi*thinning_angle)


def thinned_lip_in_end_view__by__chisel_edge_angle(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    return -1/360*m.pi*thinned_chisel_length*m.cos(chisel_edge_angle*v0)/m.sin(thinning_angle*v0)


def thinned_lip_in_end_view__by__thinned_chisel_length(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    return -1/2*m.sin(chisel_edge_angle*v0)/m.sin(thinning_angle*v0)


def thinned_lip_in_end_view__by__thinning_angle(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = thinning_angle*v0
    return -v0*(-1/2*thinned_chisel_length*m.sin(chisel_edge_angle*v0) + (1/2)*web)*m.cos(v1)/m.sin(v1)**2


def thinned_lip_length(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle, point_angle, axial_relief):
    v0 = (1/180)*m.pi
    v1 = thinning_angle*v0
    v2 = m.sin(v1)
    return (-1/2*thinned_chisel_length*m.sin(chisel_edge_angle*v0) + (1/2)*web)*m.sqrt((-v2*m.tan(axial_relief*v0) + m.cos(v1)/m.tan((1/360)*m.pi*point_angle))**2 + 1)/v2


def thinned_lip_length__margins(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle, point_angle, axial_relief):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    return [-thinned_chisel_length + web/m.sin(v1), -thinning_angle*v0 - v1 + m.pi]


def thinned_lip_length__cautions(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle, point_angle, axial_relief):
    return []


def thinned_lip_length__by__web(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle, point_angle, axial_relief):
    v0 = (1/180)*m.pi
    v1 = thinning_angle*v0
    v2 = m.sin(v1)
    return (1/2)*m.sqrt((-v2*m.tan(axial_relief*v0) + m.cos(v1)/m.tan((1/360)*m.pi*point_angle))**2 + 1)/v2


def thinned_lip_length__by__chisel_edge_angle(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle, point_angle, axial_relief):
    v0 = (1/180)*m.pi
    v1 = thinning_angle*v0
    v2 = m.sin(v1)
    v3 = (1/360)*m.pi
    return -thinned_chisel_length*v3*m.sqrt((-v2*m.tan(axial_relief*v0) + m.cos(v1)/m.tan(point_angle*v3))**2 + 1)*m.cos(chisel_edge_angle*v0)/v2


def thinned_lip_length__by__thinned_chisel_length(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle, point_angle, axial_relief):
    v0 = (1/180)*m.pi
    v1 = thinning_angle*v0
    v2 = m.sin(v1)
    return -1/2*m.sqrt((-v2*m.tan(axial_relief*v0) + m.cos(v1)/m.tan((1/360)*m.pi*point_angle))**2 + 1)*m.sin(chisel_edge_angle*v0)/v2


def thinned_lip_length__by__thinning_angle(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle, point_angle, axial_relief):
    v0 = (1/180)*m.pi
    v1 = thinning_angle*v0
    v2 = m.cos(v1)
    v3 = -1/2*thinned_chisel_length*m.sin(chisel_edge_angle*v0) + (1/2)*web
    v4 = m.sin(v1)
    v5 = m.tan(axial_relief*v0)
    v6 = m.tan((1/360)*m.pi*point_angle)**(-1)
    v7 = v2*v6 - v4*v5
    v8 = m.sqrt(v7**2 + 1)
    v9 = (1/90)*m.pi
    return -v0*v2*v3*v8/v4**2 + (1/2)*v3*v7*(-v2*v5*v9 - v4*v6*v9)/(v4*v8)


def thinned_lip_length__by__point_angle(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle, point_angle, axial_relief):
    v0 = (1/180)*m.pi
    v1 = thinning_angle*v0
    v2 = m.cos(v1)
    v3 = m.sin(v1)
    v4 = (1/360)*m.pi
    v5 = m.tan(point_angle*v4)
    v6 = v2/v5 - v3*m.tan(axial_relief*v0)
    return v2*v4*v6*(-1 - 1/v5**2)*(-1/2*thinned_chisel_length*m.sin(chisel_edge_angle*v0) + (1/2)*web)/(v3*m.sqrt(v6**2 + 1))


def thinned_lip_length__by__axial_relief(m, web, chisel_edge_angle, thinned_chisel_length, thinning_angle, point_angle, axial_relief):
    v0 = (1/180)*m.pi
    v1 = thinning_angle*v0
    v2 = m.tan(axial_relief*v0)
    v3 = -v2*m.sin(v1) + m.cos(v1)/m.tan((1/360)*m.pi*point_angle)
    return -v0*v3*(v2**2 + 1)*(-1/2*thinned_chisel_length*m.sin(chisel_edge_angle*v0) + (1/2)*web)/m.sqrt(v3**2 + 1)


def untouched_lip_length(m, diameter, point_angle, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    v2 = (1/2)*thinned_chisel_length
    return (v2*m.cos(v1) + m.sqrt((1/4)*diameter**2 - 1/4*web**2) - (-v2*m.sin(v1) + (1/2)*web)/m.tan(thinning_angle*v0))/m.sin((1/360)*m.pi*point_angle)


def untouched_lip_length__margins(m, diameter, point_angle, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    v2 = m.sin(v1)
    v3 = thinning_angle*v0
    v4 = (1/2)*thinned_chisel_length
    return [-thinned_chisel_length + web/v2, -v1 - v3 + m.pi, v4*m.cos(v1) + m.sqrt((1/4)*diameter**2 - 1/4*web**2) - (-v2*v4 + (1/2)*web)/m.tan(v3)]


def untouched_lip_length__cautions(m, diameter, point_angle, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    return []


def untouched_lip_length__by__diameter(m, diameter, point_angle, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    return (1/4)*diameter/(m.sqrt((1/4)*diameter**2 - 1/4*web**2)*m.sin((1/360)*m.pi*point_angle))


def untouched_lip_length__by__point_angle(m, diameter, point_angle, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/360)*m.pi
    v1 = point_angle*v0
    v2 = (1/180)*m.pi
    v3 = chisel_edge_angle*v2
    v4 = (1/2)*thinned_chisel_length
    return -v0*(v4*m.cos(v3) + m.sqrt((1/4)*diameter**2 - 1/4*web**2) - (-v4*m.sin(v3) + (1/2)*web)/m.tan(thinning_angle*v2))*m.cos(v1)/m.sin(v1)**2


def untouched_lip_length__by__web(m, diameter, point_angle, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    return (-1/4*web/m.sqrt((1/4)*diameter**2 - 1/4*web**2) - (1/2)/m.tan((1/180)*m.pi*thinning_angle))/m.sin((1/360)*m.pi*point_angle)


def untouched_lip_length__by__chisel_edge_angle(m, diameter, point_angle, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/360)*m.pi
    v1 = (1/180)*m.pi
    v2 = chisel_edge_angle*v1
    return (-thinned_chisel_length*v0*m.sin(v2) + (1/360)*m.pi*thinned_chisel_length*m.cos(v2)/m.tan(thinning_angle*v1))/m.sin(point_angle*v0)


def untouched_lip_length__by__thinned_chisel_length(m, diameter, point_angle, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    return ((1/2)*m.sin(v1)/m.tan(thinning_angle*v0) + (1/2)*m.cos(v1))/m.sin((1/360)*m.pi*point_angle)


def untouched_lip_length__by__thinning_angle(m, diameter, point_angle, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = m.tan(thinning_angle*v0)**2
    return v0*(v1 + 1)*(-1/2*thinned_chisel_length*m.sin(chisel_edge_angle*v0) + (1/2)*web)/(v1*m.sin((1/360)*m.pi*point_angle))


def untouched_lip_share(m, diameter, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    v2 = m.sqrt((1/4)*diameter**2 - 1/4*web**2)
    v3 = (1/2)*thinned_chisel_length
    return (v2 + v3*m.cos(v1) - (-v3*m.sin(v1) + (1/2)*web)/m.tan(thinning_angle*v0))/(v2 + (1/2)*web/m.tan(v1))


def untouched_lip_share__margins(m, diameter, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    v2 = m.sin(v1)
    v3 = thinning_angle*v0
    v4 = (1/2)*thinned_chisel_length
    return [-thinned_chisel_length + web/v2, -v1 - v3 + m.pi, v4*m.cos(v1) + m.sqrt((1/4)*diameter**2 - 1/4*web**2) - (-v2*v4 + (1/2)*web)/m.tan(v3)]


def untouched_lip_share__cautions(m, diameter, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    return []


def untouched_lip_share__by__diameter(m, diameter, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    v2 = m.sqrt((1/4)*diameter**2 - 1/4*web**2)
    v3 = v2 + (1/2)*web/m.tan(v1)
    v4 = (1/4)*diameter/v2
    v5 = (1/2)*thinned_chisel_length
    return v4/v3 - v4*(v2 + v5*m.cos(v1) - (-v5*m.sin(v1) + (1/2)*web)/m.tan(thinning_angle*v0))/v3**2


def untouched_lip_share__by__web(m, diameter, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = m.tan(thinning_angle*v0)**(-1)
    v2 = m.sqrt((1/4)*diameter**2 - 1/4*web**2)
    v3 = (1/4)*web/v2
    v4 = chisel_edge_angle*v0
    v5 = (1/2)/m.tan(v4)
    v6 = v2 + v5*web
    v7 = (1/2)*thinned_chisel_length
    return (-1/2*v1 - v3)/v6 + (v3 - v5)*(-v1*(-v7*m.sin(v4) + (1/2)*web) + v2 + v7*m.cos(v4))/v6**2


def untouched_lip_share__by__chisel_edge_angle(m, diameter, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    v2 = m.tan(v1)
    v3 = m.sqrt((1/4)*diameter**2 - 1/4*web**2)
    v4 = v3 + (1/2)*web/v2
    v5 = m.sin(v1)
    v6 = (1/360)*m.pi
    v7 = m.cos(v1)
    v8 = m.tan(thinning_angle*v0)**(-1)
    v9 = (1/2)*thinned_chisel_length
    return (-thinned_chisel_length*v5*v6 + (1/360)*m.pi*thinned_chisel_length*v7*v8)/v4 - v6*web*(-1 - 1/v2**2)*(v3 + v7*v9 - v8*(-v5*v9 + (1/2)*web))/v4**2


def untouched_lip_share__by__thinned_chisel_length(m, diameter, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    return ((1/2)*m.sin(v1)/m.tan(thinning_angle*v0) + (1/2)*m.cos(v1))/((1/2)*web/m.tan(v1) + m.sqrt((1/4)*diameter**2 - 1/4*web**2))


def untouched_lip_share__by__thinning_angle(m, diameter, web, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    v1 = chisel_edge_angle*v0
    v2 = m.tan(thinning_angle*v0)**2
    return v0*(v2 + 1)*(-1/2*thinned_chisel_length*m.sin(v1) + (1/2)*web)/(v2*((1/2)*web/m.tan(v1) + m.sqrt((1/4)*diameter**2 - 1/4*web**2)))


def thinned_web(m, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    return thinned_chisel_length*m.sin(chisel_edge_angle*v0 + thinning_angle*v0)


def thinned_web__margins(m, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    return [-chisel_edge_angle*v0 - thinning_angle*v0 + m.pi]


def thinned_web__cautions(m, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    return []


def thinned_web__by__chisel_edge_angle(m, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    return thinned_chisel_length*v0*m.cos(chisel_edge_angle*v0 + thinning_angle*v0)


def thinned_web__by__thinned_chisel_length(m, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    return m.sin(chisel_edge_angle*v0 + thinning_angle*v0)


def thinned_web__by__thinning_angle(m, chisel_edge_angle, thinned_chisel_length, thinning_angle):
    v0 = (1/180)*m.pi
    return thinned_chisel_length*v0*m.cos(chisel_edge_angle*v0 + thinning_angle*v0)


def chisel_ratio(m, chisel_edge_length, diameter):
    return chisel_edge_length/diameter


def chisel_ratio__margins(m, chisel_edge_length, diameter):
    return []


def chisel_ratio__cautions(m, chisel_edge_length, diameter):
    return []


def chisel_ratio__by__chisel_edge_length(m, chisel_edge_length, diameter):
    return diameter**(-1)


def chisel_ratio__by__diameter(m, chisel_edge_length, diameter):
    return -chisel_edge_length/diameter**2


def torque_factor(m, chisel_ratio):
    return (16/5)*chisel_ratio**(9/5) + (1 - chisel_ratio**2)/(chisel_ratio + 1)**(1/5)


def torque_factor__margins(m, chisel_ratio):
    return [2/5 - chisel_ratio]


def torque_factor__cautions(m, chisel_ratio):
    return []


def torque_factor__by__chisel_ratio(m, chisel_ratio):
    v0 = chisel_ratio + 1
    return (144/25)*chisel_ratio**(4/5) - 2*chisel_ratio/v0**(1/5) - 1/5*(1 - chisel_ratio**2)/v0**(6/5)


def thrust_factor(m, chisel_ratio):
    return (11/5)*chisel_ratio**(4/5) + (1 - chisel_ratio)/(chisel_ratio + 1)**(1/5)


def thrust_factor__margins(m, chisel_ratio):
    return [2/5 - chisel_ratio]


def thrust_factor__cautions(m, chisel_ratio):
    return []


def thrust_factor__by__chisel_ratio(m, chisel_ratio):
    v0 = chisel_ratio + 1
    return -1/v0**(1/5) - 1/5*(1 - chisel_ratio)/v0**(6/5) + (44/25)/chisel_ratio**(1/5)


def chisel_thrust_factor(m, chisel_ratio):
    return chisel_ratio**2


def chisel_thrust_factor__margins(m, chisel_ratio):
    return [2/5 - chisel_ratio]


def chisel_thrust_factor__cautions(m, chisel_ratio):
    return []


def chisel_thrust_factor__by__chisel_ratio(m, chisel_ratio):
    return 2*chisel_ratio


def reference_torque_factor(m, reference_chisel_ratio):
    return (16/5)*reference_chisel_ratio**(9/5) + (1 - reference_chisel_ratio**2)/(reference_chisel_ratio + 1)**(1/5)


def reference_torque_factor__margins(m, reference_chisel_ratio):
    return [2/5 - reference_chisel_ratio]


def reference_torque_factor__cautions(m, reference_chisel_ratio):
    return []


def reference_torque_factor__by__reference_chisel_ratio(m, reference_chisel_ratio):
    v0 = reference_chisel_ratio + 1
    return (144/25)*reference_chisel_ratio**(4/5) - 2*reference_chisel_ratio/v0**(1/5) - 1/5*(1 - reference_chisel_ratio**2)/v0**(6/5)


def reference_thrust_factor(m, reference_chisel_ratio):
    return (11/5)*reference_chisel_ratio**(4/5) + (1 - reference_chisel_ratio)/(reference_chisel_ratio + 1)**(1/5)


def reference_thrust_factor__margins(m, reference_chisel_ratio):
    return [2/5 - reference_chisel_ratio]


def reference_thrust_factor__cautions(m, reference_chisel_ratio):
    return []


def reference_thrust_factor__by__reference_chisel_ratio(m, reference_chisel_ratio):
    v0 = reference_chisel_ratio + 1
    return -1/v0**(1/5) - 1/5*(1 - reference_chisel_ratio)/v0**(6/5) + (44/25)/reference_chisel_ratio**(1/5)


def reference_chisel_thrust_factor(m, reference_chisel_ratio):
    return reference_chisel_ratio**2


def reference_chisel_thrust_factor__margins(m, reference_chisel_ratio):
    return [2/5 - reference_chisel_ratio]


def reference_chisel_thrust_factor__cautions(m, reference_chisel_ratio):
    return []


def reference_chisel_thrust_factor__by__reference_chisel_ratio(m, reference_chisel_ratio):
    return 2*reference_chisel_ratio


def thrust(m, diameter, feed, material_factor, tool_wear_factor, thrust_factor, chisel_thrust_factor):
    return material_factor*tool_wear_factor*((17237/2500000)*chisel_thrust_factor*diameter**2 + (5029/100000)*thrust_factor*(diameter*feed)**(4/5))


def thrust__margins(m, diameter, feed, material_factor, tool_wear_factor, thrust_factor, chisel_thrust_factor):
    return []


def thrust__cautions(m, diameter, feed, material_factor, tool_wear_factor, thrust_factor, chisel_thrust_factor):
    return []


def thrust__by__diameter(m, diameter, feed, material_factor, tool_wear_factor, thrust_factor, chisel_thrust_factor):
    return material_factor*tool_wear_factor*((17237/1250000)*chisel_thrust_factor*diameter + (5029/125000)*thrust_factor*(diameter*feed)**(4/5)/diameter)


def thrust__by__feed(m, diameter, feed, material_factor, tool_wear_factor, thrust_factor, chisel_thrust_factor):
    return (5029/125000)*material_factor*thrust_factor*tool_wear_factor*(diameter*feed)**(4/5)/feed


def thrust__by__material_factor(m, diameter, feed, material_factor, tool_wear_factor, thrust_factor, chisel_thrust_factor):
    return tool_wear_factor*((17237/2500000)*chisel_thrust_factor*diameter**2 + (5029/100000)*thrust_factor*(diameter*feed)**(4/5))


def thrust__by__tool_wear_factor(m, diameter, feed, material_factor, tool_wear_factor, thrust_factor, chisel_thrust_factor):
    return material_factor*((17237/2500000)*chisel_thrust_factor*diameter**2 + (5029/100000)*thrust_factor*(diameter*feed)**(4/5))


def thrust__by__thrust_factor(m, diameter, feed, material_factor, tool_wear_factor, thrust_factor, chisel_thrust_factor):
    return (5029/100000)*material_factor*tool_wear_factor*(diameter*feed)**(4/5)


def thrust__by__chisel_thrust_factor(m, diameter, feed, material_factor, tool_wear_factor, thrust_factor, chisel_thrust_factor):
    return (17237/2500000)*diameter**2*material_factor*tool_wear_factor


def torque(m, diameter, feed, material_factor, tool_wear_factor, torque_factor):
    return (5029/200000000)*diameter**(9/5)*feed**(4/5)*material_factor*tool_wear_factor*torque_factor


def torque__margins(m, diameter, feed, material_factor, tool_wear_factor, torque_factor):
    return []


def torque__cautions(m, diameter, feed, material_factor, tool_wear_factor, torque_factor):
    return []


def torque__by__diameter(m, diameter, feed, material_factor, tool_wear_factor, torque_factor):
    return (45261/1000000000)*diameter**(4/5)*feed**(4/5)*material_factor*tool_wear_factor*torque_factor


def torque__by__feed(m, diameter, feed, material_factor, tool_wear_factor, torque_factor):
    return (5029/250000000)*diameter**(9/5)*material_factor*tool_wear_factor*torque_factor/feed**(1/5)


def torque__by__material_factor(m, diameter, feed, material_factor, tool_wear_factor, torque_factor):
    return (5029/200000000)*diameter**(9/5)*feed**(4/5)*tool_wear_factor*torque_factor


def torque__by__tool_wear_factor(m, diameter, feed, material_factor, tool_wear_factor, torque_factor):
    return (5029/200000000)*diameter**(9/5)*feed**(4/5)*material_factor*torque_factor


def torque__by__torque_factor(m, diameter, feed, material_factor, tool_wear_factor, torque_factor):
    return (5029/200000000)*diameter**(9/5)*feed**(4/5)*material_factor*tool_wear_factor


def thrust_ratio(m, diameter, feed, thrust_factor, chisel_thrust_factor, reference_thrust_factor, reference_chisel_thrust_factor):
    v0 = (17237/2500000)*diameter**2
    v1 = (5029/100000)*(diameter*feed)**(4/5)
    return (chisel_thrust_factor*v0 + thrust_factor*v1)/(reference_chisel_thrust_factor*v0 + reference_thrust_factor*v1)


def thrust_ratio__margins(m, diameter, feed, thrust_factor, chisel_thrust_factor, reference_thrust_factor, reference_chisel_thrust_factor):
    return []


def thrust_ratio__cautions(m, diameter, feed, thrust_factor, chisel_thrust_factor, reference_thrust_factor, reference_chisel_thrust_factor):
    return []


def thrust_ratio__by__diameter(m, diameter, feed, thrust_factor, chisel_thrust_factor, reference_thrust_factor, reference_chisel_thrust_factor):
    v0 = (17237/1250000)*diameter
    v1 = (diameter*feed)**(4/5)
    v2 = (5029/125000)*v1/diameter
    v3 = (17237/2500000)*diameter**2
    v4 = (5029/100000)*v1
    v5 = reference_chisel_thrust_factor*v3 + reference_thrust_factor*v4
    return (chisel_thrust_factor*v0 + thrust_factor*v2)/v5 + (chisel_thrust_factor*v3 + thrust_factor*v4)*(-reference_chisel_thrust_factor*v0 - reference_thrust_factor*v2)/v5**2


def thrust_ratio__by__feed(m, diameter, feed, thrust_factor, chisel_thrust_factor, reference_thrust_factor, reference_chisel_thrust_factor):
    v0 = feed**(-1)
    v1 = (diameter*feed)**(4/5)
    v2 = (17237/2500000)*diameter**2
    v3 = (5029/100000)*v1
    v4 = reference_chisel_thrust_factor*v2 + reference_thrust_factor*v3
    return -5029/125000*reference_thrust_factor*v0*v1*(chisel_thrust_factor*v2 + thrust_factor*v3)/v4**2 + (5029/125000)*thrust_factor*v0*v1/v4


def thrust_ratio__by__thrust_factor(m, diameter, feed, thrust_factor, chisel_thrust_factor, reference_thrust_factor, reference_chisel_thrust_factor):
    v0 = (5029/100000)*(diameter*feed)**(4/5)
    return v0/((17237/2500000)*diameter**2*reference_chisel_thrust_factor + reference_thrust_factor*v0)


def thrust_ratio__by__chisel_thrust_factor(m, diameter, feed, thrust_factor, chisel_thrust_factor, reference_thrust_factor, reference_chisel_thrust_factor):
    v0 = (17237/2500000)*diameter**2
    return v0/(reference_chisel_thrust_factor*v0 + (5029/100000)*reference_thrust_factor*(diameter*feed)**(4/5))


def thrust_ratio__by__reference_thrust_factor(m, diameter, feed, thrust_factor, chisel_thrust_factor, reference_thrust_factor, reference_chisel_thrust_factor):
    v0 = (17237/2500000)*diameter**2
    v1 = (5029/100000)*(diameter*feed)**(4/5)
    return -v1*(chisel_thrust_factor*v0 + thrust_factor*v1)/(reference_chisel_thrust_factor*v0 + reference_thrust_factor*v1)**2


def thrust_ratio__by__reference_chisel_thrust_factor(m, diameter, feed, thrust_factor, chisel_thrust_factor, reference_thrust_factor, reference_chisel_thrust_factor):
    v0 = (17237/2500000)*diameter**2
    v1 = (5029/100000)*(diameter*feed)**(4/5)
    return -v0*(chisel_thrust_factor*v0 + thrust_factor*v1)/(reference_chisel_thrust_factor*v0 + reference_thrust_factor*v1)**2


def torque_ratio(m, torque_factor, reference_torque_factor):
    return torque_factor/reference_torque_factor


def torque_ratio__margins(m, torque_factor, reference_torque_factor):
    return []


def torque_ratio__cautions(m, torque_factor, reference_torque_factor):
    return []


def torque_ratio__by__torque_factor(m, torque_factor, reference_torque_factor):
    return reference_torque_factor**(-1)


def torque_ratio__by__reference_torque_factor(m, torque_factor, reference_torque_factor):
    return -torque_factor/reference_torque_factor**2


def power(m, torque, spindle_speed):
    return (1/30000)*m.pi*spindle_speed*torque


def power__margins(m, torque, spindle_speed):
    return []


def power__cautions(m, torque, spindle_speed):
    return []


def power__by__torque(m, torque, spindle_speed):
    return (1/30000)*m.pi*spindle_speed


def power__by__spindle_speed(m, torque, spindle_speed):
    return (1/30000)*m.pi*torque


def motor_power(m, power, efficiency):
    return power/efficiency


def motor_power__margins(m, power, efficiency):
    return []


def motor_power__cautions(m, power, efficiency):
    return []


def motor_power__by__power(m, power, efficiency):
    return efficiency**(-1)


def motor_power__by__efficiency(m, power, efficiency):
    return -power/efficiency**2


def chip_thickness(m, feed, point_angle):
    return (1/2)*feed*m.sin((1/360)*m.pi*point_angle)


def chip_thickness__margins(m, feed, point_angle):
    return []


def chip_thickness__cautions(m, feed, point_angle):
    return []


def chip_thickness__by__feed(m, feed, point_angle):
    return (1/2)*m.sin((1/360)*m.pi*point_angle)


def chip_thickness__by__point_angle(m, feed, point_angle):
    return (1/720)*m.pi*feed*m.cos((1/360)*m.pi*point_angle)


def chip_width(m, diameter, point_angle, web, chisel_edge_angle):
    return ((1/2)*web/m.tan((1/180)*m.pi*chisel_edge_angle) + m.sqrt((1/4)*diameter**2 - 1/4*web**2))/m.sin((1/360)*m.pi*point_angle)


def chip_width__margins(m, diameter, point_angle, web, chisel_edge_angle):
    return [diameter*m.sin((1/180)*m.pi*chisel_edge_angle) - web]


def chip_width__cautions(m, diameter, point_angle, web, chisel_edge_angle):
    return []


def chip_width__by__diameter(m, diameter, point_angle, web, chisel_edge_angle):
    return (1/4)*diameter/(m.sqrt((1/4)*diameter**2 - 1/4*web**2)*m.sin((1/360)*m.pi*point_angle))


def chip_width__by__point_angle(m, diameter, point_angle, web, chisel_edge_angle):
    v0 = (1/360)*m.pi
    v1 = point_angle*v0
    return -v0*((1/2)*web/m.tan((1/180)*m.pi*chisel_edge_angle) + m.sqrt((1/4)*diameter**2 - 1/4*web**2))*m.cos(v1)/m.sin(v1)**2


def chip_width__by__web(m, diameter, point_angle, web, chisel_edge_angle):
    return (-1/4*web/m.sqrt((1/4)*diameter**2 - 1/4*web**2) + (1/2)/m.tan((1/180)*m.pi*chisel_edge_angle))/m.sin((1/360)*m.pi*point_angle)


def chip_width__by__chisel_edge_angle(m, diameter, point_angle, web, chisel_edge_angle):
    v0 = (1/360)*m.pi
    return v0*web*(-1 - 1/m.tan((1/180)*m.pi*chisel_edge_angle)**2)/m.sin(point_angle*v0)


def specific_cutting_force(m, specific_force_at_1_mm, chip_thickness, chip_thickness_exponent):
    return chip_thickness**(-chip_thickness_exponent)*specific_force_at_1_mm


def specific_cutting_force__margins(m, specific_force_at_1_mm, chip_thickness, chip_thickness_exponent):
    return []


def specific_cutting_force__cautions(m, specific_force_at_1_mm, chip_thickness, chip_thickness_exponent):
    return []


def specific_cutting_force__by__specific_force_at_1_mm(m, specific_force_at_1_mm, chip_thickness, chip_thickness_exponent):
    return chip_thickness**(-chip_thickness_exponent)


def specific_cutting_force__by__chip_thickness(m, specific_force_at_1_mm, chip_thickness, chip_thickness_exponent):
    return -chip_thickness**(-chip_thickness_exponent)*chip_thickness_exponent*specific_force_at_1_mm/chip_thickness


def specific_cutting_force__by__chip_thickness_exponent(m, specific_force_at_1_mm, chip_thickness, chip_thickness_exponent):
    return -chip_thickness**(-chip_thickness_exponent)*specific_force_at_1_mm*m.log(chip_thickness)


def torque_specific_force(m, specific_cutting_force, feed, diameter):
    return (1/8000)*diameter**2*feed*specific_cutting_force


def torque_specific_force__margins(m, specific_cutting_force, feed, diameter):
    return []


def torque_specific_force__cautions(m, specific_cutting_force, feed, diameter):
    return []


def torque_specific_force__by__specific_cutting_force(m, specific_cutting_force, feed, diameter):
    return (1/8000)*diameter**2*feed


def torque_specific_force__by__feed(m, specific_cutting_force, feed, diameter):
    return (1/8000)*diameter**2*specific_cutting_force


def torque_specific_force__by__diameter(m, specific_cutting_force, feed, diameter):
    return (1/4000)*diameter*feed*specific_cutting_force
