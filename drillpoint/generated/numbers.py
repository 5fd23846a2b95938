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
