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
    "kappa_new": [
        "new_point_angle"
    ],
    "delta": [
        "chisel_edge_angle"
    ],
    "omega": [
        "web_ratio"
    ],
    "omega_r": [
        "radius",
        "web"
    ],
    "rake_change": [
        "normal_rake",
        "dub_normal_rake"
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
        "latex": "\\frac{\\sqrt{⟦R⟧^{2} - ⟦t⟧^{2}} - ⟦t⟧ \\cdot \\cot{\\left(⟦delta⟧ \\right)}}{\\sin{\\left(⟦kappa⟧ \\right)}}",
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
    "corner_radius": {
        "formula_text": "r = D/2",
        "formula_latex": "r = \\frac{D}{2}",
        "text": "⟦diameter⟧/2",
        "latex": "\\frac{⟦diameter⟧}{2}",
        "abbreviations": [],
        "where": []
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
    "chisel_edge_rake": {
        "formula_text": "γ_c = -atan(sin ψ·tan κ)",
        "formula_latex": "\\gamma_c = - \\arctan{\\left(\\sin{\\left(\\psi \\right)} \\tan{\\left(\\kappa \\right)} \\right)}",
        "text": "-atan(sin ⟦chisel_edge_angle⟧·tan ⟦kappa⟧)",
        "latex": "- \\arctan{\\left(\\sin{\\left(⟦chisel_edge_angle⟧ \\right)} \\cdot \\tan{\\left(⟦kappa⟧ \\right)} \\right)}",
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
        "latex": "\\arctan{\\left(\\frac{\\tan{\\left(⟦lip_relief⟧ \\right)} - ⟦web_ratio⟧ \\cdot \\cot{\\left(⟦kappa⟧ \\right)}}{\\sqrt{1 - ⟦web_ratio⟧^{2}}} \\right)}",
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
        "latex": "\\arctan{\\left(⟦web_ratio⟧ \\cdot \\cot{\\left(⟦kappa⟧ \\right)} + \\sqrt{1 - ⟦web_ratio⟧^{2}} \\cdot \\tan{\\left(⟦axial_relief⟧ \\right)} \\right)}",
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
        "latex": "\\arctan{\\left(\\sqrt{1 - \\frac{⟦t⟧^{2}}{⟦radius⟧^{2}}} \\cdot \\tan{\\left(⟦axial_relief⟧ \\right)} + \\frac{⟦t⟧ \\cdot \\cot{\\left(⟦kappa⟧ \\right)}}{⟦radius⟧} \\right)}",
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
        "latex": "2 \\cdot ⟦omega⟧ + 180^{\\circ} - 2 \\cdot ⟦delta_plane⟧",
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
    "flank_fall": {
        "formula_text": "z_f = 2·π·r·n_t·tan α",
        "formula_latex": "z_f = 2 \\pi r n_t \\tan{\\left(\\alpha \\right)}",
        "text": "2·π·⟦radius⟧·⟦turn_share⟧·tan ⟦relief_at_radius⟧",
        "latex": "2 \\cdot \\pi \\cdot ⟦radius⟧ \\cdot ⟦turn_share⟧ \\cdot \\tan{\\left(⟦relief_at_radius⟧ \\right)}",
        "abbreviations": [],
        "where": []
    },
    "feed_relief_loss": {
        "formula_text": "η = atan(f/(2·π·r))",
        "formula_latex": "\\eta = \\arctan{\\left(\\frac{f}{2 \\pi r} \\right)}",
        "text": "atan(⟦feed⟧/(2·π·⟦radius⟧))",
        "latex": "\\arctan{\\left(\\frac{⟦feed⟧}{2 \\cdot \\pi \\cdot ⟦radius⟧} \\right)}",
        "abbreviations": [],
        "where": []
    },
    "working_relief": {
        "formula_text": "α_w = α − η",
        "formula_latex": "\\alpha_w = \\alpha - \\eta",
        "text": "⟦relief_at_radius⟧ − ⟦feed_relief_loss⟧",
        "latex": "⟦relief_at_radius⟧ - ⟦feed_relief_loss⟧",
        "abbreviations": [],
        "where": []
    },
    "least_lip_relief": {
        "formula_text": "α_l = α_m + atan(f/(π·D))",
        "formula_latex": "\\alpha_l = \\alpha_m + \\arctan{\\left(\\frac{f}{\\pi D} \\right)}",
        "text": "⟦relief_margin⟧ + atan(⟦feed⟧/(π·⟦diameter⟧))",
        "latex": "⟦relief_margin⟧ + \\arctan{\\left(\\frac{⟦feed⟧}{\\pi \\cdot ⟦diameter⟧} \\right)}",
        "abbreviations": [],
        "where": []
    },
    "lead": {
        "formula_text": "P_h = π·D/tan β",
        "formula_latex": "P_h = \\frac{\\pi D}{\\tan{\\left(\\beta \\right)}}",
        "text": "π·⟦diameter⟧/tan ⟦helix_angle⟧",
        "latex": "\\frac{\\pi \\cdot ⟦diameter⟧}{\\tan{\\left(⟦helix_angle⟧ \\right)}}",
        "abbreviations": [],
        "where": []
    },
    "local_helix": {
        "formula_text": "β_r = atan(r·tan β/R)",
        "formula_latex": "\\beta_r = \\arctan{\\left(\\frac{r \\tan{\\left(\\beta \\right)}}{R} \\right)}",
        "text": "atan(⟦radius⟧·tan ⟦helix_angle⟧/⟦R⟧)",
        "latex": "\\arctan{\\left(\\frac{⟦radius⟧ \\cdot \\tan{\\left(⟦helix_angle⟧ \\right)}}{⟦R⟧} \\right)}",
        "abbreviations": [
            "R"
        ],
        "where": [
            [
                "R = D/2 = ⟦diameter⟧/2 = ⟦R⟧",
                "R = \\frac{D}{2} = \\frac{⟦diameter⟧}{2} = ⟦R⟧"
            ]
        ]
    },
    "lip_inclination": {
        "formula_text": "λ = asin(t·sin κ/r)",
        "formula_latex": "\\lambda = \\arcsin{\\left(\\frac{t \\sin{\\left(\\kappa \\right)}}{r} \\right)}",
        "text": "asin(⟦t⟧·sin ⟦kappa⟧/⟦radius⟧)",
        "latex": "\\arcsin{\\left(\\frac{⟦t⟧ \\cdot \\sin{\\left(⟦kappa⟧ \\right)}}{⟦radius⟧} \\right)}",
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
    "normal_rake": {
        "formula_text": "γ_n = atan(cos ω_r·tan β_r/(sin κ − sin ω_r·cos κ·tan β_r)) − atan(cos κ·tan ω_r)",
        "formula_latex": "\\gamma_n = \\arctan{\\left(\\frac{\\cos{\\left(\\omega_r \\right)} \\tan{\\left(\\beta_r \\right)}}{\\sin{\\left(\\kappa \\right)} - \\sin{\\left(\\omega_r \\right)} \\cos{\\left(\\kappa \\right)} \\tan{\\left(\\beta_r \\right)}} \\right)} - \\arctan{\\left(\\cos{\\left(\\kappa \\right)} \\tan{\\left(\\omega_r \\right)} \\right)}",
        "text": "atan(cos ⟦omega_r⟧·tan ⟦local_helix⟧/(sin ⟦kappa⟧ − sin ⟦omega_r⟧·cos ⟦kappa⟧·tan ⟦local_helix⟧)) − atan(cos ⟦kappa⟧·tan ⟦omega_r⟧)",
        "latex": "\\arctan{\\left(\\frac{\\cos{\\left(⟦omega_r⟧ \\right)} \\cdot \\tan{\\left(⟦local_helix⟧ \\right)}}{\\sin{\\left(⟦kappa⟧ \\right)} - \\sin{\\left(⟦omega_r⟧ \\right)} \\cdot \\cos{\\left(⟦kappa⟧ \\right)} \\cdot \\tan{\\left(⟦local_helix⟧ \\right)}} \\right)} - \\arctan{\\left(\\cos{\\left(⟦kappa⟧ \\right)} \\cdot \\tan{\\left(⟦omega_r⟧ \\right)} \\right)}",
        "abbreviations": [
            "kappa",
            "t",
            "omega_r"
        ],
        "where": [
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ],
            [
                "t = W/2 = ⟦web⟧/2 = ⟦t⟧",
                "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"
            ],
            [
                "ω_r = asin(t/r) = asin(⟦t⟧/⟦radius⟧) = ⟦omega_r⟧",
                "\\omega_r = \\arcsin{\\left(\\frac{t}{r} \\right)} = \\arcsin{\\left(\\frac{⟦t⟧}{⟦radius⟧} \\right)} = ⟦omega_r⟧"
            ]
        ]
    },
    "orthogonal_rake": {
        "formula_text": "γ_o = atan(tan γ_n/cos λ)",
        "formula_latex": "\\gamma_o = \\arctan{\\left(\\frac{\\tan{\\left(\\gamma_n \\right)}}{\\cos{\\left(\\lambda \\right)}} \\right)}",
        "text": "atan(tan ⟦normal_rake⟧/cos ⟦lip_inclination⟧)",
        "latex": "\\arctan{\\left(\\frac{\\tan{\\left(⟦normal_rake⟧ \\right)}}{\\cos{\\left(⟦lip_inclination⟧ \\right)}} \\right)}",
        "abbreviations": [],
        "where": []
    },
    "normal_relief": {
        "formula_text": "α_n = atan(sin κ·tan α_x) + atan(cos κ·tan ω_r)",
        "formula_latex": "\\alpha_n = \\arctan{\\left(\\sin{\\left(\\kappa \\right)} \\tan{\\left(\\alpha_x \\right)} \\right)} + \\arctan{\\left(\\cos{\\left(\\kappa \\right)} \\tan{\\left(\\omega_r \\right)} \\right)}",
        "text": "atan(sin ⟦kappa⟧·tan ⟦axial_relief⟧) + atan(cos ⟦kappa⟧·tan ⟦omega_r⟧)",
        "latex": "\\arctan{\\left(\\sin{\\left(⟦kappa⟧ \\right)} \\cdot \\tan{\\left(⟦axial_relief⟧ \\right)} \\right)} + \\arctan{\\left(\\cos{\\left(⟦kappa⟧ \\right)} \\cdot \\tan{\\left(⟦omega_r⟧ \\right)} \\right)}",
        "abbreviations": [
            "kappa",
            "t",
            "omega_r"
        ],
        "where": [
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ],
            [
                "t = W/2 = ⟦web⟧/2 = ⟦t⟧",
                "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"
            ],
            [
                "ω_r = asin(t/r) = asin(⟦t⟧/⟦radius⟧) = ⟦omega_r⟧",
                "\\omega_r = \\arcsin{\\left(\\frac{t}{r} \\right)} = \\arcsin{\\left(\\frac{⟦t⟧}{⟦radius⟧} \\right)} = ⟦omega_r⟧"
            ]
        ]
    },
    "wedge_angle": {
        "formula_text": "θ_w = 90° − γ_n − α_n",
        "formula_latex": "\\theta_w = 90^{\\circ} - \\gamma_n - \\alpha_n",
        "text": "90° − ⟦normal_rake⟧ − ⟦normal_relief⟧",
        "latex": "90^{\\circ} - ⟦normal_rake⟧ - ⟦normal_relief⟧",
        "abbreviations": [],
        "where": []
    },
    "dub_normal_rake": {
        "formula_text": "γ_d = atan(tan γ_x/sin κ) − atan(cos κ·tan ω_r)",
        "formula_latex": "\\gamma_d = \\arctan{\\left(\\frac{\\tan{\\left(\\gamma_x \\right)}}{\\sin{\\left(\\kappa \\right)}} \\right)} - \\arctan{\\left(\\cos{\\left(\\kappa \\right)} \\tan{\\left(\\omega_r \\right)} \\right)}",
        "text": "atan(tan ⟦dub_rake⟧/sin ⟦kappa⟧) − atan(cos ⟦kappa⟧·tan ⟦omega_r⟧)",
        "latex": "\\arctan{\\left(\\frac{\\tan{\\left(⟦dub_rake⟧ \\right)}}{\\sin{\\left(⟦kappa⟧ \\right)}} \\right)} - \\arctan{\\left(\\cos{\\left(⟦kappa⟧ \\right)} \\cdot \\tan{\\left(⟦omega_r⟧ \\right)} \\right)}",
        "abbreviations": [
            "kappa",
            "t",
            "omega_r"
        ],
        "where": [
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ],
            [
                "t = W/2 = ⟦web⟧/2 = ⟦t⟧",
                "t = \\frac{W}{2} = \\frac{⟦web⟧}{2} = ⟦t⟧"
            ],
            [
                "ω_r = asin(t/r) = asin(⟦t⟧/⟦radius⟧) = ⟦omega_r⟧",
                "\\omega_r = \\arcsin{\\left(\\frac{t}{r} \\right)} = \\arcsin{\\left(\\frac{⟦t⟧}{⟦radius⟧} \\right)} = ⟦omega_r⟧"
            ]
        ]
    },
    "dub_wedge_angle": {
        "formula_text": "θ_d = 90° − γ_d − α_n",
        "formula_latex": "\\theta_d = 90^{\\circ} - \\gamma_d - \\alpha_n",
        "text": "90° − ⟦dub_normal_rake⟧ − ⟦normal_relief⟧",
        "latex": "90^{\\circ} - ⟦dub_normal_rake⟧ - ⟦normal_relief⟧",
        "abbreviations": [],
        "where": []
    },
    "least_dub_width": {
        "formula_text": "w_l = h_c/cos γ_d",
        "formula_latex": "w_l = \\frac{h_c}{\\cos{\\left(\\gamma_d \\right)}}",
        "text": "⟦chip_thickness⟧/cos ⟦dub_normal_rake⟧",
        "latex": "\\frac{⟦chip_thickness⟧}{\\cos{\\left(⟦dub_normal_rake⟧ \\right)}}",
        "abbreviations": [],
        "where": []
    },
    "dub_set_back": {
        "formula_text": "a_d = w_d·sin ε/sin θ_w",
        "formula_latex": "a_d = \\frac{w_d \\sin{\\left(\\varepsilon \\right)}}{\\sin{\\left(\\theta_w \\right)}}",
        "text": "⟦dub_width⟧·sin ⟦rake_change⟧/sin ⟦wedge_angle⟧",
        "latex": "\\frac{⟦dub_width⟧ \\cdot \\sin{\\left(⟦rake_change⟧ \\right)}}{\\sin{\\left(⟦wedge_angle⟧ \\right)}}",
        "abbreviations": [
            "rake_change"
        ],
        "where": [
            [
                "ε = γ_n − γ_d = ⟦normal_rake⟧ − ⟦dub_normal_rake⟧ = ⟦rake_change⟧",
                "\\varepsilon = \\gamma_n - \\gamma_d = ⟦normal_rake⟧ - ⟦dub_normal_rake⟧ = ⟦rake_change⟧"
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
        "latex": "⟦diameter⟧ \\cdot ⟦web_ratio⟧",
        "abbreviations": [],
        "where": []
    },
    "web_after_shortening": {
        "formula_text": "W′ = ΔL·τ + W",
        "formula_latex": "W' = \\Delta L \\tau + W",
        "text": "⟦length_removed⟧·⟦web_taper⟧ + ⟦web⟧",
        "latex": "⟦length_removed⟧ \\cdot ⟦web_taper⟧ + ⟦web⟧",
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
        "latex": "\\frac{⟦pilot_diameter⟧ \\cdot \\sin{\\left(⟦chisel_edge_angle⟧ \\right)}}{⟦web⟧}",
        "abbreviations": [],
        "where": []
    },
    "thinning_reach": {
        "formula_text": "x_m = C_t·cos(δ)/2 + (t − C_t·sin(δ)/2)/tan ν",
        "formula_latex": "x_m = \\frac{C_t \\cos{\\left(\\delta \\right)}}{2} + \\frac{t - \\frac{C_t \\sin{\\left(\\delta \\right)}}{2}}{\\tan{\\left(\\nu \\right)}}",
        "text": "⟦thinned_chisel_length⟧·cos(⟦delta⟧)/2 + (⟦t⟧ − ⟦thinned_chisel_length⟧·sin(⟦delta⟧)/2)/tan ⟦thinning_angle⟧",
        "latex": "\\frac{⟦thinned_chisel_length⟧ \\cdot \\cos{\\left(⟦delta⟧ \\right)}}{2} + \\frac{⟦t⟧ - \\frac{⟦thinned_chisel_length⟧ \\cdot \\sin{\\left(⟦delta⟧ \\right)}}{2}}{\\tan{\\left(⟦thinning_angle⟧ \\right)}}",
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
        "formula_text": "p_t = (t − C_t·sin(δ)/2)/sin ν",
        "formula_latex": "p_t = \\frac{t - \\frac{C_t \\sin{\\left(\\delta \\right)}}{2}}{\\sin{\\left(\\nu \\right)}}",
        "text": "(⟦t⟧ − ⟦thinned_chisel_length⟧·sin(⟦delta⟧)/2)/sin ⟦thinning_angle⟧",
        "latex": "\\frac{⟦t⟧ - \\frac{⟦thinned_chisel_length⟧ \\cdot \\sin{\\left(⟦delta⟧ \\right)}}{2}}{\\sin{\\left(⟦thinning_angle⟧ \\right)}}",
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
        "formula_text": "L_t = (t − C_t·sin(δ)/2)·√((cos ν·cot κ − sin ν·tan α_x)² + 1)/sin ν",
        "formula_latex": "L_t = \\frac{\\left(t - \\frac{C_t \\sin{\\left(\\delta \\right)}}{2}\\right) \\sqrt{\\left(\\cos{\\left(\\nu \\right)} \\cot{\\left(\\kappa \\right)} - \\sin{\\left(\\nu \\right)} \\tan{\\left(\\alpha_x \\right)}\\right)^{2} + 1}}{\\sin{\\left(\\nu \\right)}}",
        "text": "(⟦t⟧ − ⟦thinned_chisel_length⟧·sin(⟦delta⟧)/2)·√((cos ⟦thinning_angle⟧·cot ⟦kappa⟧ − sin ⟦thinning_angle⟧·tan ⟦axial_relief⟧)² + 1)/sin ⟦thinning_angle⟧",
        "latex": "\\frac{\\left(⟦t⟧ - \\frac{⟦thinned_chisel_length⟧ \\cdot \\sin{\\left(⟦delta⟧ \\right)}}{2}\\right) \\cdot \\sqrt{\\left(\\cos{\\left(⟦thinning_angle⟧ \\right)} \\cdot \\cot{\\left(⟦kappa⟧ \\right)} - \\sin{\\left(⟦thinning_angle⟧ \\right)} \\cdot \\tan{\\left(⟦axial_relief⟧ \\right)}\\right)^{2} + 1}}{\\sin{\\left(⟦thinning_angle⟧ \\right)}}",
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
        "formula_text": "L_u = (√(R² − t²) − C_t·cos(δ)/2 − (t − C_t·sin(δ)/2)/tan ν)/sin κ",
        "formula_latex": "L_u = \\frac{\\sqrt{R^{2} - t^{2}} - \\frac{C_t \\cos{\\left(\\delta \\right)}}{2} - \\frac{t - \\frac{C_t \\sin{\\left(\\delta \\right)}}{2}}{\\tan{\\left(\\nu \\right)}}}{\\sin{\\left(\\kappa \\right)}}",
        "text": "(√(⟦R⟧² − ⟦t⟧²) − ⟦thinned_chisel_length⟧·cos(⟦delta⟧)/2 − (⟦t⟧ − ⟦thinned_chisel_length⟧·sin(⟦delta⟧)/2)/tan ⟦thinning_angle⟧)/sin ⟦kappa⟧",
        "latex": "\\frac{\\sqrt{⟦R⟧^{2} - ⟦t⟧^{2}} - \\frac{⟦thinned_chisel_length⟧ \\cdot \\cos{\\left(⟦delta⟧ \\right)}}{2} - \\frac{⟦t⟧ - \\frac{⟦thinned_chisel_length⟧ \\cdot \\sin{\\left(⟦delta⟧ \\right)}}{2}}{\\tan{\\left(⟦thinning_angle⟧ \\right)}}}{\\sin{\\left(⟦kappa⟧ \\right)}}",
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
        "formula_text": "s_u = (√(R² − t²) − C_t·cos(δ)/2 − (t − C_t·sin(δ)/2)/tan ν)/(√(R² − t²) − t·cot δ)",
        "formula_latex": "s_u = \\frac{\\sqrt{R^{2} - t^{2}} - \\frac{C_t \\cos{\\left(\\delta \\right)}}{2} - \\frac{t - \\frac{C_t \\sin{\\left(\\delta \\right)}}{2}}{\\tan{\\left(\\nu \\right)}}}{\\sqrt{R^{2} - t^{2}} - t \\cot{\\left(\\delta \\right)}}",
        "text": "(√(⟦R⟧² − ⟦t⟧²) − ⟦thinned_chisel_length⟧·cos(⟦delta⟧)/2 − (⟦t⟧ − ⟦thinned_chisel_length⟧·sin(⟦delta⟧)/2)/tan ⟦thinning_angle⟧)/(√(⟦R⟧² − ⟦t⟧²) − ⟦t⟧·cot ⟦delta⟧)",
        "latex": "\\frac{\\sqrt{⟦R⟧^{2} - ⟦t⟧^{2}} - \\frac{⟦thinned_chisel_length⟧ \\cdot \\cos{\\left(⟦delta⟧ \\right)}}{2} - \\frac{⟦t⟧ - \\frac{⟦thinned_chisel_length⟧ \\cdot \\sin{\\left(⟦delta⟧ \\right)}}{2}}{\\tan{\\left(⟦thinning_angle⟧ \\right)}}}{\\sqrt{⟦R⟧^{2} - ⟦t⟧^{2}} - ⟦t⟧ \\cdot \\cot{\\left(⟦delta⟧ \\right)}}",
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
        "latex": "⟦thinned_chisel_length⟧ \\cdot \\sin{\\left(⟦delta⟧ - ⟦thinning_angle⟧ \\right)}",
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
    "full_diameter_depth": {
        "formula_text": "d_t = h + d_s",
        "formula_latex": "d_t = h + d_s",
        "text": "⟦point_height⟧ + ⟦shoulder_depth⟧",
        "latex": "⟦point_height⟧ + ⟦shoulder_depth⟧",
        "abbreviations": [],
        "where": []
    },
    "shoulder_depth": {
        "formula_text": "d_s = d_t − h",
        "formula_latex": "d_s = d_t - h",
        "text": "⟦depth_to_point⟧ − ⟦point_height⟧",
        "latex": "⟦depth_to_point⟧ - ⟦point_height⟧",
        "abbreviations": [],
        "where": []
    },
    "tap_drill_depth": {
        "formula_text": "d_t = h + a_g + d_g",
        "formula_latex": "d_t = h + a_g + d_g",
        "text": "⟦point_height⟧ + ⟦thread_allowance⟧ + ⟦thread_depth⟧",
        "latex": "⟦point_height⟧ + ⟦thread_allowance⟧ + ⟦thread_depth⟧",
        "abbreviations": [],
        "where": []
    },
    "breakthrough": {
        "formula_text": "d_b = h + b_s",
        "formula_latex": "d_b = h + b_s",
        "text": "⟦point_height⟧ + ⟦sheet_thickness⟧",
        "latex": "⟦point_height⟧ + ⟦sheet_thickness⟧",
        "abbreviations": [],
        "where": []
    },
    "sheet_cover": {
        "formula_text": "k_b = b_s/h",
        "formula_latex": "k_b = \\frac{b_s}{h}",
        "text": "⟦sheet_thickness⟧/⟦point_height⟧",
        "latex": "\\frac{⟦sheet_thickness⟧}{⟦point_height⟧}",
        "abbreviations": [],
        "where": []
    },
    "countersink_angle": {
        "formula_text": "A_k = A",
        "formula_latex": "A_k = A",
        "text": "⟦point_angle⟧",
        "latex": "⟦point_angle⟧",
        "abbreviations": [],
        "where": []
    },
    "spot_depth": {
        "formula_text": "d_c = D_m/(2·tan(A_k/2))",
        "formula_latex": "d_c = \\frac{D_m}{2 \\tan{\\left(\\frac{A_k}{2} \\right)}}",
        "text": "⟦mouth_diameter⟧/(2·tan(⟦countersink_angle⟧/2))",
        "latex": "\\frac{⟦mouth_diameter⟧}{2 \\cdot \\tan{\\left(\\frac{⟦countersink_angle⟧}{2} \\right)}}",
        "abbreviations": [],
        "where": []
    },
    "countersink_depth": {
        "formula_text": "d_k = (D_m/2 − D_f/2)/tan(A_k/2)",
        "formula_latex": "d_k = \\frac{\\frac{D_m}{2} - \\frac{D_f}{2}}{\\tan{\\left(\\frac{A_k}{2} \\right)}}",
        "text": "(⟦mouth_diameter⟧/2 − ⟦flat_diameter⟧/2)/tan(⟦countersink_angle⟧/2)",
        "latex": "\\frac{\\frac{⟦mouth_diameter⟧}{2} - \\frac{⟦flat_diameter⟧}{2}}{\\tan{\\left(\\frac{⟦countersink_angle⟧}{2} \\right)}}",
        "abbreviations": [],
        "where": []
    },
    "spindle_speed": {
        "formula_text": "n = 1000·v/(π·D)",
        "formula_latex": "n = \\frac{1000 v}{\\pi D}",
        "text": "1000·⟦cutting_speed⟧/(π·⟦diameter⟧)",
        "latex": "\\frac{1000 \\cdot ⟦cutting_speed⟧}{\\pi \\cdot ⟦diameter⟧}",
        "abbreviations": [],
        "where": []
    },
    "spindle_speed_by_rule": {
        "formula_text": "n = v·k_n/D",
        "formula_latex": "n = \\frac{v k_n}{D}",
        "text": "⟦cutting_speed⟧·⟦speed_constant⟧/⟦diameter⟧",
        "latex": "\\frac{⟦cutting_speed⟧ \\cdot ⟦speed_constant⟧}{⟦diameter⟧}",
        "abbreviations": [],
        "where": []
    },
    "speed_rule_ratio": {
        "formula_text": "k_v = 0.001·π·k_n",
        "formula_latex": "k_v = 0.001 \\pi k_n",
        "text": "0.001·π·⟦speed_constant⟧",
        "latex": "0.001 \\cdot \\pi \\cdot ⟦speed_constant⟧",
        "abbreviations": [],
        "where": []
    },
    "feed_rate": {
        "formula_text": "v_f = f·n",
        "formula_latex": "v_f = f n",
        "text": "⟦feed⟧·⟦spindle_speed⟧",
        "latex": "⟦feed⟧ \\cdot ⟦spindle_speed⟧",
        "abbreviations": [],
        "where": []
    },
    "drilling_time": {
        "formula_text": "t_c = (a_1 + a_2 + h + d_s)/(f·n)",
        "formula_latex": "t_c = \\frac{a_1 + a_2 + h + d_s}{f n}",
        "text": "(⟦approach⟧ + ⟦overrun⟧ + ⟦point_height⟧ + ⟦shoulder_depth⟧)/(⟦feed⟧·⟦spindle_speed⟧)",
        "latex": "\\frac{⟦approach⟧ + ⟦overrun⟧ + ⟦point_height⟧ + ⟦shoulder_depth⟧}{⟦feed⟧ \\cdot ⟦spindle_speed⟧}",
        "abbreviations": [],
        "where": []
    },
    "lip_height_difference": {
        "formula_text": "h_Δ = L_Δ·cos κ",
        "formula_latex": "h_{\\Delta} = L_{\\Delta} \\cos{\\left(\\kappa \\right)}",
        "text": "⟦lip_length_difference⟧·cos ⟦kappa⟧",
        "latex": "⟦lip_length_difference⟧ \\cdot \\cos{\\left(⟦kappa⟧ \\right)}",
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
    "point_offset": {
        "formula_text": "e = h_Δ·tan(κ)/2",
        "formula_latex": "e = \\frac{h_{\\Delta} \\tan{\\left(\\kappa \\right)}}{2}",
        "text": "⟦lip_height_difference⟧·tan(⟦kappa⟧)/2",
        "latex": "\\frac{⟦lip_height_difference⟧ \\cdot \\tan{\\left(⟦kappa⟧ \\right)}}{2}",
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
    "offset_from_run_out": {
        "formula_text": "e = s_r/2",
        "formula_latex": "e = \\frac{s_r}{2}",
        "text": "⟦run_out⟧/2",
        "latex": "\\frac{⟦run_out⟧}{2}",
        "abbreviations": [],
        "where": []
    },
    "oversize": {
        "formula_text": "D_Δ = 2·e",
        "formula_latex": "D_{\\Delta} = 2 e",
        "text": "2·⟦point_offset⟧",
        "latex": "2 \\cdot ⟦point_offset⟧",
        "abbreviations": [],
        "where": []
    },
    "largest_hole": {
        "formula_text": "D_h = D + D_Δ",
        "formula_latex": "D_h = D + D_{\\Delta}",
        "text": "⟦diameter⟧ + ⟦oversize⟧",
        "latex": "⟦diameter⟧ + ⟦oversize⟧",
        "abbreviations": [],
        "where": []
    },
    "lip_height_from_angles": {
        "formula_text": "h_Δ = r·|cot κ_1 − cot κ_2|",
        "formula_latex": "h_{\\Delta} = r \\left|{\\cot{\\left(\\kappa_1 \\right)} - \\cot{\\left(\\kappa_2 \\right)}}\\right|",
        "text": "⟦radius⟧·|cot ⟦half_angle_1⟧ − cot ⟦half_angle_2⟧|",
        "latex": "⟦radius⟧ \\cdot \\left|{\\cot{\\left(⟦half_angle_1⟧ \\right)} - \\cot{\\left(⟦half_angle_2⟧ \\right)}}\\right|",
        "abbreviations": [],
        "where": []
    },
    "idle_radius": {
        "formula_text": "r_i = f/(2·|cot κ_1 − cot κ_2|)",
        "formula_latex": "r_i = \\frac{f}{2 \\left|{\\cot{\\left(\\kappa_1 \\right)} - \\cot{\\left(\\kappa_2 \\right)}}\\right|}",
        "text": "⟦feed⟧/(2·|cot ⟦half_angle_1⟧ − cot ⟦half_angle_2⟧|)",
        "latex": "\\frac{⟦feed⟧}{2 \\cdot \\left|{\\cot{\\left(⟦half_angle_1⟧ \\right)} - \\cot{\\left(⟦half_angle_2⟧ \\right)}}\\right|}",
        "abbreviations": [],
        "where": []
    },
    "rolled_reading": {
        "formula_text": "A_ρ = 2·atan(cos ρ·tan κ)",
        "formula_latex": "A_{\\rho} = 2 \\arctan{\\left(\\cos{\\left(\\rho \\right)} \\tan{\\left(\\kappa \\right)} \\right)}",
        "text": "2·atan(cos ⟦roll_angle⟧·tan ⟦kappa⟧)",
        "latex": "2 \\cdot \\arctan{\\left(\\cos{\\left(⟦roll_angle⟧ \\right)} \\cdot \\tan{\\left(⟦kappa⟧ \\right)} \\right)}",
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
        "latex": "3.2 \\cdot ⟦chisel_ratio⟧^{1.8} + \\frac{1 - ⟦chisel_ratio⟧^{2}}{\\left(⟦chisel_ratio⟧ + 1\\right)^{0.2}}",
        "abbreviations": [],
        "where": []
    },
    "thrust_factor": {
        "formula_text": "B_T = 2.2·c^0.8 + (1 − c)/(c + 1)^0.2",
        "formula_latex": "B_T = 2.2 c^{0.8} + \\frac{1 - c}{\\left(c + 1\\right)^{0.2}}",
        "text": "2.2·⟦chisel_ratio⟧^0.8 + (1 − ⟦chisel_ratio⟧)/(⟦chisel_ratio⟧ + 1)^0.2",
        "latex": "2.2 \\cdot ⟦chisel_ratio⟧^{0.8} + \\frac{1 - ⟦chisel_ratio⟧}{\\left(⟦chisel_ratio⟧ + 1\\right)^{0.2}}",
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
        "latex": "3.2 \\cdot ⟦reference_chisel_ratio⟧^{1.8} + \\frac{1 - ⟦reference_chisel_ratio⟧^{2}}{\\left(⟦reference_chisel_ratio⟧ + 1\\right)^{0.2}}",
        "abbreviations": [],
        "where": []
    },
    "reference_thrust_factor": {
        "formula_text": "B_0 = 2.2·c_0^0.8 + (1 − c_0)/(c_0 + 1)^0.2",
        "formula_latex": "B_0 = 2.2 c_0^{0.8} + \\frac{1 - c_0}{\\left(c_0 + 1\\right)^{0.2}}",
        "text": "2.2·⟦reference_chisel_ratio⟧^0.8 + (1 − ⟦reference_chisel_ratio⟧)/(⟦reference_chisel_ratio⟧ + 1)^0.2",
        "latex": "2.2 \\cdot ⟦reference_chisel_ratio⟧^{0.8} + \\frac{1 - ⟦reference_chisel_ratio⟧}{\\left(⟦reference_chisel_ratio⟧ + 1\\right)^{0.2}}",
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
        "latex": "⟦material_factor⟧ \\cdot ⟦tool_wear_factor⟧ \\cdot \\left(0.0068948 \\cdot ⟦chisel_thrust_factor⟧ \\cdot ⟦diameter⟧^{2} + 0.05029 \\cdot ⟦thrust_factor⟧ \\cdot \\left(⟦diameter⟧ \\cdot ⟦feed⟧\\right)^{0.8}\\right)",
        "abbreviations": [],
        "where": []
    },
    "torque": {
        "formula_text": "M = 0.000025145·D^1.8·f^0.8·K_d·k_w·A_M",
        "formula_latex": "M = 0.000025145 D^{1.8} f^{0.8} K_d k_w A_M",
        "text": "0.000025145·⟦diameter⟧^1.8·⟦feed⟧^0.8·⟦material_factor⟧·⟦tool_wear_factor⟧·⟦torque_factor⟧",
        "latex": "0.000025145 \\cdot ⟦diameter⟧^{1.8} \\cdot ⟦feed⟧^{0.8} \\cdot ⟦material_factor⟧ \\cdot ⟦tool_wear_factor⟧ \\cdot ⟦torque_factor⟧",
        "abbreviations": [],
        "where": []
    },
    "thrust_ratio": {
        "formula_text": "q_T = (0.0068948·J_T·D² + 0.05029·B_T·(D·f)^0.8)/(0.0068948·D²·J_0 + 0.05029·B_0·(D·f)^0.8)",
        "formula_latex": "q_T = \\frac{0.0068948 J_T D^{2} + 0.05029 B_T \\left(D f\\right)^{0.8}}{0.0068948 D^{2} J_0 + 0.05029 B_0 \\left(D f\\right)^{0.8}}",
        "text": "(0.0068948·⟦chisel_thrust_factor⟧·⟦diameter⟧² + 0.05029·⟦thrust_factor⟧·(⟦diameter⟧·⟦feed⟧)^0.8)/(0.0068948·⟦diameter⟧²·⟦reference_chisel_thrust_factor⟧ + 0.05029·⟦reference_thrust_factor⟧·(⟦diameter⟧·⟦feed⟧)^0.8)",
        "latex": "\\frac{0.0068948 \\cdot ⟦chisel_thrust_factor⟧ \\cdot ⟦diameter⟧^{2} + 0.05029 \\cdot ⟦thrust_factor⟧ \\cdot \\left(⟦diameter⟧ \\cdot ⟦feed⟧\\right)^{0.8}}{0.0068948 \\cdot ⟦diameter⟧^{2} \\cdot ⟦reference_chisel_thrust_factor⟧ + 0.05029 \\cdot ⟦reference_thrust_factor⟧ \\cdot \\left(⟦diameter⟧ \\cdot ⟦feed⟧\\right)^{0.8}}",
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
        "latex": "\\frac{\\pi \\cdot ⟦spindle_speed⟧ \\cdot ⟦torque⟧}{30000}",
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
        "formula_text": "h_c = f·sin(κ)/2",
        "formula_latex": "h_c = \\frac{f \\sin{\\left(\\kappa \\right)}}{2}",
        "text": "⟦feed⟧·sin(⟦kappa⟧)/2",
        "latex": "\\frac{⟦feed⟧ \\cdot \\sin{\\left(⟦kappa⟧ \\right)}}{2}",
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
        "latex": "\\frac{\\sqrt{⟦R⟧^{2} - ⟦t⟧^{2}} - ⟦t⟧ \\cdot \\cot{\\left(⟦delta⟧ \\right)}}{\\sin{\\left(⟦kappa⟧ \\right)}}",
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
        "latex": "⟦chip_thickness⟧^{- ⟦chip_thickness_exponent⟧} \\cdot ⟦specific_force_at_1_mm⟧",
        "abbreviations": [],
        "where": []
    },
    "torque_specific_force": {
        "formula_text": "M = 0.000125·D²·f·k_c",
        "formula_latex": "M = 0.000125 D^{2} f k_c",
        "text": "0.000125·⟦diameter⟧²·⟦feed⟧·⟦specific_cutting_force⟧",
        "latex": "0.000125 \\cdot ⟦diameter⟧^{2} \\cdot ⟦feed⟧ \\cdot ⟦specific_cutting_force⟧",
        "abbreviations": [],
        "where": []
    },
    "stock_for_angle_change": {
        "formula_text": "Δ = R·|cot κ − cot κ′|",
        "formula_latex": "\\Delta = R \\left|{\\cot{\\left(\\kappa \\right)} - \\cot{\\left(\\kappa' \\right)}}\\right|",
        "text": "⟦R⟧·|cot ⟦kappa⟧ − cot ⟦kappa_new⟧|",
        "latex": "⟦R⟧ \\cdot \\left|{\\cot{\\left(⟦kappa⟧ \\right)} - \\cot{\\left(⟦kappa_new⟧ \\right)}}\\right|",
        "abbreviations": [
            "R",
            "kappa",
            "kappa_new"
        ],
        "where": [
            [
                "R = D/2 = ⟦diameter⟧/2 = ⟦R⟧",
                "R = \\frac{D}{2} = \\frac{⟦diameter⟧}{2} = ⟦R⟧"
            ],
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ],
            [
                "κ′ = A′/2 = ⟦new_point_angle⟧/2 = ⟦kappa_new⟧",
                "\\kappa' = \\frac{A'}{2} = \\frac{⟦new_point_angle⟧}{2} = ⟦kappa_new⟧"
            ]
        ]
    },
    "stock_for_wear_land": {
        "formula_text": "Δ = b·tan α_f",
        "formula_latex": "\\Delta = b \\tan{\\left(\\alpha_f \\right)}",
        "text": "⟦wear_land⟧·tan ⟦lip_relief⟧",
        "latex": "⟦wear_land⟧ \\cdot \\tan{\\left(⟦lip_relief⟧ \\right)}",
        "abbreviations": [],
        "where": []
    },
    "stock_for_worn_corner": {
        "formula_text": "Δ = m",
        "formula_latex": "\\Delta = m",
        "text": "⟦worn_margin⟧",
        "latex": "⟦worn_margin⟧",
        "abbreviations": [],
        "where": []
    },
    "stock_for_chip": {
        "formula_text": "Δ = c_l/sin κ",
        "formula_latex": "\\Delta = \\frac{c_l}{\\sin{\\left(\\kappa \\right)}}",
        "text": "⟦chip_depth⟧/sin ⟦kappa⟧",
        "latex": "\\frac{⟦chip_depth⟧}{\\sin{\\left(⟦kappa⟧ \\right)}}",
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
    "tip_stock": {
        "formula_text": "Δ_t = R·(cot κ − cot κ′) + Δ_c",
        "formula_latex": "\\Delta_t = R \\left(\\cot{\\left(\\kappa \\right)} - \\cot{\\left(\\kappa' \\right)}\\right) + \\Delta_c",
        "text": "⟦R⟧·(cot ⟦kappa⟧ − cot ⟦kappa_new⟧) + ⟦corner_stock⟧",
        "latex": "⟦R⟧ \\cdot \\left(\\cot{\\left(⟦kappa⟧ \\right)} - \\cot{\\left(⟦kappa_new⟧ \\right)}\\right) + ⟦corner_stock⟧",
        "abbreviations": [
            "R",
            "kappa",
            "kappa_new"
        ],
        "where": [
            [
                "R = D/2 = ⟦diameter⟧/2 = ⟦R⟧",
                "R = \\frac{D}{2} = \\frac{⟦diameter⟧}{2} = ⟦R⟧"
            ],
            [
                "κ = A/2 = ⟦point_angle⟧/2 = ⟦kappa⟧",
                "\\kappa = \\frac{A}{2} = \\frac{⟦point_angle⟧}{2} = ⟦kappa⟧"
            ],
            [
                "κ′ = A′/2 = ⟦new_point_angle⟧/2 = ⟦kappa_new⟧",
                "\\kappa' = \\frac{A'}{2} = \\frac{⟦new_point_angle⟧}{2} = ⟦kappa_new⟧"
            ]
        ]
    },
    "regrinds_left": {
        "formula_text": "N = l_u/Δ",
        "formula_latex": "N = \\frac{l_u}{\\Delta}",
        "text": "⟦usable_length⟧/⟦stock⟧",
        "latex": "\\frac{⟦usable_length⟧}{⟦stock⟧}",
        "abbreviations": [],
        "where": []
    },
    "length_removed_by_regrinds": {
        "formula_text": "ΔL = i·Δ",
        "formula_latex": "\\Delta L = i \\Delta",
        "text": "⟦regrinds⟧·⟦stock⟧",
        "latex": "⟦regrinds⟧ \\cdot ⟦stock⟧",
        "abbreviations": [],
        "where": []
    },
    "length_until_thinning": {
        "formula_text": "ΔL = (D·u_m − W)/τ",
        "formula_latex": "\\Delta L = \\frac{D u_m - W}{\\tau}",
        "text": "(⟦diameter⟧·⟦web_ratio_limit⟧ − ⟦web⟧)/⟦web_taper⟧",
        "latex": "\\frac{⟦diameter⟧ \\cdot ⟦web_ratio_limit⟧ - ⟦web⟧}{⟦web_taper⟧}",
        "abbreviations": [],
        "where": []
    },
    "take_off_correction": {
        "formula_text": "Δ_k = l_2 + Δ − l_1",
        "formula_latex": "\\Delta_k = l_2 + \\Delta - l_1",
        "text": "⟦length_after⟧ + ⟦stock⟧ − ⟦length_before⟧",
        "latex": "⟦length_after⟧ + ⟦stock⟧ - ⟦length_before⟧",
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


def letter__kappa_new(m, new_point_angle):
    return (1/2)*new_point_angle


def letter__delta(m, chisel_edge_angle):
    return (-m.pi*chisel_edge_angle + 180*m.pi)/m.pi


def letter__omega(m, web_ratio):
    return 180*m.asin(web_ratio)/m.pi


def letter__omega_r(m, radius, web):
    return 180*m.asin((1/2)*web/radius)/m.pi


def letter__rake_change(m, normal_rake, dub_normal_rake):
    return (-m.pi*dub_normal_rake + m.pi*normal_rake)/m.pi


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


def corner_radius(m, diameter):
    return (1/2)*diameter


def corner_radius__margins(m, diameter):
    return []


def corner_radius__cautions(m, diameter):
    return []


def corner_radius__by__diameter(m, diameter):
    return 1/2


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


def chisel_edge_rake(m, point_angle, chisel_edge_angle):
    return -180*m.atan(m.sin((1/180)*m.pi*chisel_edge_angle)*m.tan((1/360)*m.pi*point_angle))/m.pi


def chisel_edge_rake__margins(m, point_angle, chisel_edge_angle):
    return []


def chisel_edge_rake__cautions(m, point_angle, chisel_edge_angle):
    return []


def chisel_edge_rake__by__point_angle(m, point_angle, chisel_edge_angle):
    v0 = m.sin((1/180)*m.pi*chisel_edge_angle)
    v1 = m.tan((1/360)*m.pi*point_angle)**2
    return -1/2*v0*(v1 + 1)/(v0**2*v1 + 1)


def chisel_edge_rake__by__chisel_edge_angle(m, point_angle, chisel_edge_angle):
    v0 = (1/180)*m.pi*chisel_edge_angle
    v1 = m.tan((1/360)*m.pi*point_angle)
    return -v1*m.cos(v0)/(v1**2*m.sin(v0)**2 + 1)


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


def flank_fall(m, radius, relief_at_radius, turn_share):
    return 2*m.pi*radius*turn_share*m.tan((1/180)*m.pi*relief_at_radius)


def flank_fall__margins(m, radius, relief_at_radius, turn_share):
    return []


def flank_fall__cautions(m, radius, relief_at_radius, turn_share):
    return []


def flank_fall__by__radius(m, radius, relief_at_radius, turn_share):
    return 2*m.pi*turn_share*m.tan((1/180)*m.pi*relief_at_radius)


def flank_fall__by__relief_at_radius(m, radius, relief_at_radius, turn_share):
    return (1/90)*m.pi**2*radius*turn_share*(m.tan((1/180)*m.pi*relief_at_radius)**2 + 1)


def flank_fall__by__turn_share(m, radius, relief_at_radius, turn_share):
    return 2*m.pi*radius*m.tan((1/180)*m.pi*relief_at_radius)


def feed_relief_loss(m, feed, radius):
    v0 = m.pi**(-1)
    return 180*v0*m.atan((1/2)*feed*v0/radius)


def feed_relief_loss__margins(m, feed, radius):
    return []


def feed_relief_loss__cautions(m, feed, radius):
    return []


def feed_relief_loss__by__feed(m, feed, radius):
    v0 = m.pi**(-2)
    return 90*v0/(radius*((1/4)*feed**2*v0/radius**2 + 1))


def feed_relief_loss__by__radius(m, feed, radius):
    v0 = 1/(m.pi**2*radius**2)
    return -90*feed*v0/((1/4)*feed**2*v0 + 1)


def working_relief(m, relief_at_radius, feed_relief_loss):
    return (-m.pi*feed_relief_loss + m.pi*relief_at_radius)/m.pi


def working_relief__margins(m, relief_at_radius, feed_relief_loss):
    return []


def working_relief__cautions(m, relief_at_radius, feed_relief_loss):
    return []


def working_relief__by__relief_at_radius(m, relief_at_radius, feed_relief_loss):
    return 1


def working_relief__by__feed_relief_loss(m, relief_at_radius, feed_relief_loss):
    return -1


def least_lip_relief(m, feed, diameter, relief_margin):
    v0 = m.pi**(-1)
    return v0*(m.pi*relief_margin + 180*m.atan(feed*v0/diameter))


def least_lip_relief__margins(m, feed, diameter, relief_margin):
    return []


def least_lip_relief__cautions(m, feed, diameter, relief_margin):
    return []


def least_lip_relief__by__feed(m, feed, diameter, relief_margin):
    v0 = m.pi**(-2)
    return 180*v0/(diameter*(1 + feed**2*v0/diameter**2))


def least_lip_relief__by__diameter(m, feed, diameter, relief_margin):
    v0 = 1/(m.pi**2*diameter**2)
    return -180*feed*v0/(feed**2*v0 + 1)


def least_lip_relief__by__relief_margin(m, feed, diameter, relief_margin):
    return 1


def lead(m, diameter, helix_angle):
    return m.pi*diameter/m.tan((1/180)*m.pi*helix_angle)


def lead__margins(m, diameter, helix_angle):
    return [(1/180)*m.pi*helix_angle]


def lead__cautions(m, diameter, helix_angle):
    return []


def lead__by__diameter(m, diameter, helix_angle):
    return m.pi/m.tan((1/180)*m.pi*helix_angle)


def lead__by__helix_angle(m, diameter, helix_angle):
    v0 = m.tan((1/180)*m.pi*helix_angle)**2
    return -1/180*m.pi**2*diameter*(v0 + 1)/v0


def local_helix(m, helix_angle, radius, diameter):
    return 180*m.atan(2*radius*m.tan((1/180)*m.pi*helix_angle)/diameter)/m.pi


def local_helix__margins(m, helix_angle, radius, diameter):
    return []


def local_helix__cautions(m, helix_angle, radius, diameter):
    return []


def local_helix__by__helix_angle(m, helix_angle, radius, diameter):
    v0 = m.tan((1/180)*m.pi*helix_angle)**2
    return 2*radius*(v0 + 1)/(diameter*(1 + 4*radius**2*v0/diameter**2))


def local_helix__by__radius(m, helix_angle, radius, diameter):
    v0 = m.tan((1/180)*m.pi*helix_angle)
    return 360*v0/(m.pi*diameter*(1 + 4*radius**2*v0**2/diameter**2))


def local_helix__by__diameter(m, helix_angle, radius, diameter):
    v0 = diameter**(-2)
    v1 = m.tan((1/180)*m.pi*helix_angle)
    return -360*radius*v0*v1/(m.pi*(4*radius**2*v0*v1**2 + 1))


def lip_inclination(m, radius, web, point_angle):
    return 180*m.asin((1/2)*web*m.sin((1/360)*m.pi*point_angle)/radius)/m.pi


def lip_inclination__margins(m, radius, web, point_angle):
    return []


def lip_inclination__cautions(m, radius, web, point_angle):
    return []


def lip_inclination__by__radius(m, radius, web, point_angle):
    v0 = radius**(-2)
    v1 = m.sin((1/360)*m.pi*point_angle)
    return -90*v0*v1*web/(m.pi*m.sqrt(-1/4*v0*v1**2*web**2 + 1))


def lip_inclination__by__web(m, radius, web, point_angle):
    v0 = m.sin((1/360)*m.pi*point_angle)
    return 90*v0/(m.pi*radius*m.sqrt(1 - 1/4*v0**2*web**2/radius**2))


def lip_inclination__by__point_angle(m, radius, web, point_angle):
    v0 = (1/360)*m.pi*point_angle
    return (1/4)*web*m.cos(v0)/(radius*m.sqrt(1 - 1/4*web**2*m.sin(v0)**2/radius**2))


def normal_rake(m, local_helix, radius, web, point_angle):
    v0 = m.sqrt(1 - 1/4*web**2/radius**2)
    v1 = (1/360)*m.pi*point_angle
    v2 = (1/2)*web*m.cos(v1)/radius
    v3 = m.tan((1/180)*m.pi*local_helix)
    return (-180*m.atan(v2/v0) + 180*m.atan(v0*v3/(-v2*v3 + m.sin(v1))))/m.pi


def normal_rake__margins(m, local_helix, radius, web, point_angle):
    v0 = (1/360)*m.pi*point_angle
    return [m.sin(v0) - 1/2*web*m.cos(v0)*m.tan((1/180)*m.pi*local_helix)/radius]


def normal_rake__cautions(m, local_helix, radius, web, point_angle):
    return []


def normal_rake__by__local_helix(m, local_helix, radius, web, point_angle):
    v0 = (1/180)*m.pi
    v1 = m.tan(local_helix*v0)
    v2 = v1**2
    v3 = 1 - 1/4*web**2/radius**2
    v4 = (1/360)*m.pi
    v5 = point_angle*v4
    v6 = v1*web*m.cos(v5)/radius
    v7 = -1/2*v6 + m.sin(v5)
    v8 = v7**(-2)
    v9 = m.sqrt(v3)*(v2 + 1)
    return 180*(v0*v9/v7 + v4*v6*v8*v9)/(m.pi*(v2*v3*v8 + 1))


def normal_rake__by__radius(m, local_helix, radius, web, point_angle):
    v0 = radius**(-2)
    v1 = web**2
    v2 = (1/4)*v0*v1
    v3 = 1 - v2
    v4 = (1/360)*m.pi*point_angle
    v5 = m.cos(v4)
    v6 = m.sqrt(v3)
    v7 = v6**(-1)
    v8 = (1/2)*v5*web
    v9 = v0*v8
    v10 = m.tan((1/180)*m.pi*local_helix)
    v11 = m.sin(v4) - v10*v8/radius
    v12 = v10**2/v11**2
    return (-180*(-v7*v9 - 1/8*v5*web**3/(radius**4*v3**(3/2)))/(v2*v5**2/v3 + 1) + 180*(-v12*v6*v9 + (1/4)*v1*v10*v7/(radius**3*v11))/(v12*v3 + 1))/m.pi


def normal_rake__by__web(m, local_helix, radius, web, point_angle):
    v0 = web**2
    v1 = (1/4)/radius**2
    v2 = v0*v1
    v3 = 1 - v2
    v4 = (1/360)*m.pi*point_angle
    v5 = m.cos(v4)
    v6 = m.sqrt(v3)
    v7 = v6**(-1)
    v8 = (1/2)*v5/radius
    v9 = m.tan((1/180)*m.pi*local_helix)
    v10 = v9*web
    v11 = -v10*v8 + m.sin(v4)
    v12 = v9**2/v11**2
    return (-180*(v7*v8 + (1/8)*v0*v5/(radius**3*v3**(3/2)))/(v2*v5**2/v3 + 1) + 180*(-v1*v10*v7/v11 + v12*v6*v8)/(v12*v3 + 1))/m.pi


def normal_rake__by__point_angle(m, local_helix, radius, web, point_angle):
    v0 = (1/4)*web**2/radius**2
    v1 = 1 - v0
    v2 = m.sqrt(v1)
    v3 = (1/360)*m.pi
    v4 = point_angle*v3
    v5 = m.cos(v4)
    v6 = web/radius
    v7 = m.sin(v4)
    v8 = m.pi*v7
    v9 = m.tan((1/180)*m.pi*local_helix)
    v10 = v6*v9
    v11 = (-1/2*v10*v5 + v7)**(-2)
    return (180*v11*v2*v9*(-1/720*v10*v8 - v3*v5)/(v1*v11*v9**2 + 1) + (1/4)*v6*v8/(v2*(v0*v5**2/v1 + 1)))/m.pi


def orthogonal_rake(m, normal_rake, lip_inclination):
    v0 = (1/180)*m.pi
    return 180*m.atan(m.tan(normal_rake*v0)/m.cos(lip_inclination*v0))/m.pi


def orthogonal_rake__margins(m, normal_rake, lip_inclination):
    return []


def orthogonal_rake__cautions(m, normal_rake, lip_inclination):
    return []


def orthogonal_rake__by__normal_rake(m, normal_rake, lip_inclination):
    v0 = (1/180)*m.pi
    v1 = m.cos(lip_inclination*v0)
    v2 = m.tan(normal_rake*v0)**2
    return (v2 + 1)/(v1*(1 + v2/v1**2))


def orthogonal_rake__by__lip_inclination(m, normal_rake, lip_inclination):
    v0 = (1/180)*m.pi
    v1 = lip_inclination*v0
    v2 = m.tan(normal_rake*v0)
    v3 = m.cos(v1)**(-2)
    return v2*v3*m.sin(v1)/(v2**2*v3 + 1)


def normal_relief(m, radius, web, point_angle, axial_relief):
    v0 = (1/360)*m.pi*point_angle
    return (180*m.atan(m.sin(v0)*m.tan((1/180)*m.pi*axial_relief)) + 180*m.atan((1/2)*web*m.cos(v0)/(radius*m.sqrt(1 - 1/4*web**2/radius**2))))/m.pi


def normal_relief__margins(m, radius, web, point_angle, axial_relief):
    return []


def normal_relief__cautions(m, radius, web, point_angle, axial_relief):
    return []


def normal_relief__by__radius(m, radius, web, point_angle, axial_relief):
    v0 = radius**(-2)
    v1 = (1/4)*v0*web**2
    v2 = 1 - v1
    v3 = m.cos((1/360)*m.pi*point_angle)
    return 180*(-1/2*v0*v3*web/m.sqrt(v2) - 1/8*v3*web**3/(radius**4*v2**(3/2)))/(m.pi*(v1*v3**2/v2 + 1))


def normal_relief__by__web(m, radius, web, point_angle, axial_relief):
    v0 = web**2
    v1 = (1/4)*v0/radius**2
    v2 = 1 - v1
    v3 = m.cos((1/360)*m.pi*point_angle)
    return 180*((1/2)*v3/(radius*m.sqrt(v2)) + (1/8)*v0*v3/(radius**3*v2**(3/2)))/(m.pi*(v1*v3**2/v2 + 1))


def normal_relief__by__point_angle(m, radius, web, point_angle, axial_relief):
    v0 = (1/360)*m.pi*point_angle
    v1 = m.cos(v0)
    v2 = m.tan((1/180)*m.pi*axial_relief)
    v3 = m.sin(v0)
    v4 = (1/4)*web**2/radius**2
    v5 = 1 - v4
    return ((1/2)*m.pi*v1*v2/(v2**2*v3**2 + 1) - 1/4*m.pi*v3*web/(radius*m.sqrt(v5)*(v1**2*v4/v5 + 1)))/m.pi


def normal_relief__by__axial_relief(m, radius, web, point_angle, axial_relief):
    v0 = m.sin((1/360)*m.pi*point_angle)
    v1 = m.tan((1/180)*m.pi*axial_relief)**2
    return v0*(v1 + 1)/(v0**2*v1 + 1)


def wedge_angle(m, normal_rake, normal_relief):
    return (-m.pi*normal_rake - m.pi*normal_relief + 90*m.pi)/m.pi


def wedge_angle__margins(m, normal_rake, normal_relief):
    v0 = (1/180)*m.pi
    return [-normal_rake*v0 - normal_relief*v0 + (1/2)*m.pi]


def wedge_angle__cautions(m, normal_rake, normal_relief):
    return []


def wedge_angle__by__normal_rake(m, normal_rake, normal_relief):
    return -1


def wedge_angle__by__normal_relief(m, normal_rake, normal_relief):
    return -1


def dub_normal_rake(m, dub_rake, radius, web, point_angle):
    v0 = (1/360)*m.pi*point_angle
    return (180*m.atan(m.tan((1/180)*m.pi*dub_rake)/m.sin(v0)) - 180*m.atan((1/2)*web*m.cos(v0)/(radius*m.sqrt(1 - 1/4*web**2/radius**2))))/m.pi


def dub_normal_rake__margins(m, dub_rake, radius, web, point_angle):
    v0 = (1/360)*m.pi*point_angle
    return [m.atan(m.tan((1/180)*m.pi*dub_rake)/m.sin(v0)) - m.atan((1/2)*web*m.cos(v0)/(radius*m.sqrt(1 - 1/4*web**2/radius**2))) + (1/2)*m.pi]


def dub_normal_rake__cautions(m, dub_rake, radius, web, point_angle):
    return []


def dub_normal_rake__by__dub_rake(m, dub_rake, radius, web, point_angle):
    v0 = m.sin((1/360)*m.pi*point_angle)
    v1 = m.tan((1/180)*m.pi*dub_rake)**2
    return (v1 + 1)/(v0*(1 + v1/v0**2))


def dub_normal_rake__by__radius(m, dub_rake, radius, web, point_angle):
    v0 = radius**(-2)
    v1 = (1/4)*v0*web**2
    v2 = 1 - v1
    v3 = m.cos((1/360)*m.pi*point_angle)
    return -180*(-1/2*v0*v3*web/m.sqrt(v2) - 1/8*v3*web**3/(radius**4*v2**(3/2)))/(m.pi*(v1*v3**2/v2 + 1))


def dub_normal_rake__by__web(m, dub_rake, radius, web, point_angle):
    v0 = web**2
    v1 = (1/4)*v0/radius**2
    v2 = 1 - v1
    v3 = m.cos((1/360)*m.pi*point_angle)
    return -180*((1/2)*v3/(radius*m.sqrt(v2)) + (1/8)*v0*v3/(radius**3*v2**(3/2)))/(m.pi*(v1*v3**2/v2 + 1))


def dub_normal_rake__by__point_angle(m, dub_rake, radius, web, point_angle):
    v0 = (1/360)*m.pi*point_angle
    v1 = m.cos(v0)
    v2 = m.tan((1/180)*m.pi*dub_rake)
    v3 = m.sin(v0)
    v4 = v3**(-2)
    v5 = (1/4)*web**2/radius**2
    v6 = 1 - v5
    return (-1/2*m.pi*v1*v2*v4/(v2**2*v4 + 1) + (1/4)*m.pi*v3*web/(radius*m.sqrt(v6)*(v1**2*v5/v6 + 1)))/m.pi


def dub_wedge_angle(m, dub_normal_rake, normal_relief):
    return (-m.pi*dub_normal_rake - m.pi*normal_relief + 90*m.pi)/m.pi


def dub_wedge_angle__margins(m, dub_normal_rake, normal_relief):
    v0 = (1/180)*m.pi
    return [-dub_normal_rake*v0 - normal_relief*v0 + (1/2)*m.pi]


def dub_wedge_angle__cautions(m, dub_normal_rake, normal_relief):
    return []


def dub_wedge_angle__by__dub_normal_rake(m, dub_normal_rake, normal_relief):
    return -1


def dub_wedge_angle__by__normal_relief(m, dub_normal_rake, normal_relief):
    return -1


def least_dub_width(m, chip_thickness, dub_normal_rake):
    return chip_thickness/m.cos((1/180)*m.pi*dub_normal_rake)


def least_dub_width__margins(m, chip_thickness, dub_normal_rake):
    return [m.cos((1/180)*m.pi*dub_normal_rake)]


def least_dub_width__cautions(m, chip_thickness, dub_normal_rake):
    return []


def least_dub_width__by__chip_thickness(m, chip_thickness, dub_normal_rake):
    return m.cos((1/180)*m.pi*dub_normal_rake)**(-1)


def least_dub_width__by__dub_normal_rake(m, chip_thickness, dub_normal_rake):
    v0 = (1/180)*m.pi
    v1 = dub_normal_rake*v0
    return chip_thickness*v0*m.sin(v1)/m.cos(v1)**2


def dub_set_back(m, dub_width, normal_rake, dub_normal_rake, wedge_angle):
    v0 = (1/180)*m.pi
    return -dub_width*m.sin(dub_normal_rake*v0 - normal_rake*v0)/m.sin(v0*wedge_angle)


def dub_set_back__margins(m, dub_width, normal_rake, dub_normal_rake, wedge_angle):
    return [-1/180*m.pi*dub_normal_rake + (1/180)*m.pi*normal_rake]


def dub_set_back__cautions(m, dub_width, normal_rake, dub_normal_rake, wedge_angle):
    return []


def dub_set_back__by__dub_width(m, dub_width, normal_rake, dub_normal_rake, wedge_angle):
    v0 = (1/180)*m.pi
    return -m.sin(dub_normal_rake*v0 - normal_rake*v0)/m.sin(v0*wedge_angle)


def dub_set_back__by__normal_rake(m, dub_width, normal_rake, dub_normal_rake, wedge_angle):
    v0 = (1/180)*m.pi
    return dub_width*v0*m.cos(dub_normal_rake*v0 - normal_rake*v0)/m.sin(v0*wedge_angle)


def dub_set_back__by__dub_normal_rake(m, dub_width, normal_rake, dub_normal_rake, wedge_angle):
    v0 = (1/180)*m.pi
    return -dub_width*v0*m.cos(dub_normal_rake*v0 - normal_rake*v0)/m.sin(v0*wedge_angle)


def dub_set_back__by__wedge_angle(m, dub_width, normal_rake, dub_normal_rake, wedge_angle):
    v0 = (1/180)*m.pi
    v1 = v0*wedge_angle
    return dub_width*v0*m.sin(dub_normal_rake*v0 - normal_rake*v0)*m.cos(v1)/m.sin(v1)**2


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


def full_diameter_depth(m, shoulder_depth, point_height):
    return point_height + shoulder_depth


def full_diameter_depth__margins(m, shoulder_depth, point_height):
    return []


def full_diameter_depth__cautions(m, shoulder_depth, point_height):
    return []


def full_diameter_depth__by__shoulder_depth(m, shoulder_depth, point_height):
    return 1


def full_diameter_depth__by__point_height(m, shoulder_depth, point_height):
    return 1


def shoulder_depth(m, depth_to_point, point_height):
    return depth_to_point - point_height


def shoulder_depth__margins(m, depth_to_point, point_height):
    return [depth_to_point - point_height]


def shoulder_depth__cautions(m, depth_to_point, point_height):
    return []


def shoulder_depth__by__depth_to_point(m, depth_to_point, point_height):
    return 1


def shoulder_depth__by__point_height(m, depth_to_point, point_height):
    return -1


def tap_drill_depth(m, thread_depth, thread_allowance, point_height):
    return point_height + thread_allowance + thread_depth


def tap_drill_depth__margins(m, thread_depth, thread_allowance, point_height):
    return []


def tap_drill_depth__cautions(m, thread_depth, thread_allowance, point_height):
    return []


def tap_drill_depth__by__thread_depth(m, thread_depth, thread_allowance, point_height):
    return 1


def tap_drill_depth__by__thread_allowance(m, thread_depth, thread_allowance, point_height):
    return 1


def tap_drill_depth__by__point_height(m, thread_depth, thread_allowance, point_height):
    return 1


def breakthrough(m, sheet_thickness, point_height):
    return point_height + sheet_thickness


def breakthrough__margins(m, sheet_thickness, point_height):
    return []


def breakthrough__cautions(m, sheet_thickness, point_height):
    return []


def breakthrough__by__sheet_thickness(m, sheet_thickness, point_height):
    return 1


def breakthrough__by__point_height(m, sheet_thickness, point_height):
    return 1


def sheet_cover(m, sheet_thickness, point_height):
    return sheet_thickness/point_height


def sheet_cover__margins(m, sheet_thickness, point_height):
    return []


def sheet_cover__cautions(m, sheet_thickness, point_height):
    return []


def sheet_cover__by__sheet_thickness(m, sheet_thickness, point_height):
    return point_height**(-1)


def sheet_cover__by__point_height(m, sheet_thickness, point_height):
    return -sheet_thickness/point_height**2


def countersink_angle(m, point_angle):
    return point_angle


def countersink_angle__margins(m, point_angle):
    return []


def countersink_angle__cautions(m, point_angle):
    return []


def countersink_angle__by__point_angle(m, point_angle):
    return 1


def spot_depth(m, mouth_diameter, countersink_angle):
    return (1/2)*mouth_diameter/m.tan((1/360)*m.pi*countersink_angle)


def spot_depth__margins(m, mouth_diameter, countersink_angle):
    return []


def spot_depth__cautions(m, mouth_diameter, countersink_angle):
    return []


def spot_depth__by__mouth_diameter(m, mouth_diameter, countersink_angle):
    return (1/2)/m.tan((1/360)*m.pi*countersink_angle)


def spot_depth__by__countersink_angle(m, mouth_diameter, countersink_angle):
    v0 = m.tan((1/360)*m.pi*countersink_angle)**2
    return -1/720*m.pi*mouth_diameter*(v0 + 1)/v0


def countersink_depth(m, mouth_diameter, flat_diameter, countersink_angle):
    return (-1/2*flat_diameter + (1/2)*mouth_diameter)/m.tan((1/360)*m.pi*countersink_angle)


def countersink_depth__margins(m, mouth_diameter, flat_diameter, countersink_angle):
    return [-flat_diameter + mouth_diameter]


def countersink_depth__cautions(m, mouth_diameter, flat_diameter, countersink_angle):
    return []


def countersink_depth__by__mouth_diameter(m, mouth_diameter, flat_diameter, countersink_angle):
    return (1/2)/m.tan((1/360)*m.pi*countersink_angle)


def countersink_depth__by__flat_diameter(m, mouth_diameter, flat_diameter, countersink_angle):
    return -(1/2)/m.tan((1/360)*m.pi*countersink_angle)


def countersink_depth__by__countersink_angle(m, mouth_diameter, flat_diameter, countersink_angle):
    v0 = (1/360)*m.pi
    v1 = m.tan(countersink_angle*v0)**2
    return -v0*(-1/2*flat_diameter + (1/2)*mouth_diameter)*(v1 + 1)/v1


def spindle_speed(m, cutting_speed, diameter):
    return 1000*cutting_speed/(m.pi*diameter)


def spindle_speed__margins(m, cutting_speed, diameter):
    return []


def spindle_speed__cautions(m, cutting_speed, diameter):
    return []


def spindle_speed__by__cutting_speed(m, cutting_speed, diameter):
    return 1000/(m.pi*diameter)


def spindle_speed__by__diameter(m, cutting_speed, diameter):
    return -1000*cutting_speed/(m.pi*diameter**2)


def spindle_speed_by_rule(m, speed_constant, cutting_speed, diameter):
    return cutting_speed*speed_constant/diameter


def spindle_speed_by_rule__margins(m, speed_constant, cutting_speed, diameter):
    return []


def spindle_speed_by_rule__cautions(m, speed_constant, cutting_speed, diameter):
    return []


def spindle_speed_by_rule__by__speed_constant(m, speed_constant, cutting_speed, diameter):
    return cutting_speed/diameter


def spindle_speed_by_rule__by__cutting_speed(m, speed_constant, cutting_speed, diameter):
    return speed_constant/diameter


def spindle_speed_by_rule__by__diameter(m, speed_constant, cutting_speed, diameter):
    return -cutting_speed*speed_constant/diameter**2


def speed_rule_ratio(m, speed_constant):
    return (1/1000)*m.pi*speed_constant


def speed_rule_ratio__margins(m, speed_constant):
    return []


def speed_rule_ratio__cautions(m, speed_constant):
    return []


def speed_rule_ratio__by__speed_constant(m, speed_constant):
    return (1/1000)*m.pi


def feed_rate(m, feed, spindle_speed):
    return feed*spindle_speed


def feed_rate__margins(m, feed, spindle_speed):
    return []


def feed_rate__cautions(m, feed, spindle_speed):
    return []


def feed_rate__by__feed(m, feed, spindle_speed):
    return spindle_speed


def feed_rate__by__spindle_speed(m, feed, spindle_speed):
    return feed


def drilling_time(m, shoulder_depth, point_height, approach, overrun, feed, spindle_speed):
    return (approach + overrun + point_height + shoulder_depth)/(feed*spindle_speed)


def drilling_time__margins(m, shoulder_depth, point_height, approach, overrun, feed, spindle_speed):
    return []


def drilling_time__cautions(m, shoulder_depth, point_height, approach, overrun, feed, spindle_speed):
    return []


def drilling_time__by__shoulder_depth(m, shoulder_depth, point_height, approach, overrun, feed, spindle_speed):
    return 1/(feed*spindle_speed)


def drilling_time__by__point_height(m, shoulder_depth, point_height, approach, overrun, feed, spindle_speed):
    return 1/(feed*spindle_speed)


def drilling_time__by__approach(m, shoulder_depth, point_height, approach, overrun, feed, spindle_speed):
    return 1/(feed*spindle_speed)


def drilling_time__by__overrun(m, shoulder_depth, point_height, approach, overrun, feed, spindle_speed):
    return 1/(feed*spindle_speed)


def drilling_time__by__feed(m, shoulder_depth, point_height, approach, overrun, feed, spindle_speed):
    return -(approach + overrun + point_height + shoulder_depth)/(feed**2*spindle_speed)


def drilling_time__by__spindle_speed(m, shoulder_depth, point_height, approach, overrun, feed, spindle_speed):
    return -(approach + overrun + point_height + shoulder_depth)/(feed*spindle_speed**2)


def lip_height_difference(m, lip_length_difference, point_angle):
    return lip_length_difference*m.cos((1/360)*m.pi*point_angle)


def lip_height_difference__margins(m, lip_length_difference, point_angle):
    return []


def lip_height_difference__cautions(m, lip_length_difference, point_angle):
    return []


def lip_height_difference__by__lip_length_difference(m, lip_length_difference, point_angle):
    return m.cos((1/360)*m.pi*point_angle)


def lip_height_difference__by__point_angle(m, lip_length_difference, point_angle):
    v0 = (1/360)*m.pi
    return -lip_length_difference*v0*m.sin(point_angle*v0)


def point_offset(m, lip_height_difference, point_angle):
    return (1/2)*lip_height_difference*m.tan((1/360)*m.pi*point_angle)


def point_offset__margins(m, lip_height_difference, point_angle):
    return []


def point_offset__cautions(m, lip_height_difference, point_angle):
    return []


def point_offset__by__lip_height_difference(m, lip_height_difference, point_angle):
    return (1/2)*m.tan((1/360)*m.pi*point_angle)


def point_offset__by__point_angle(m, lip_height_difference, point_angle):
    return (1/720)*m.pi*lip_height_difference*(m.tan((1/360)*m.pi*point_angle)**2 + 1)


def offset_from_run_out(m, run_out):
    return (1/2)*run_out


def offset_from_run_out__margins(m, run_out):
    return []


def offset_from_run_out__cautions(m, run_out):
    return []


def offset_from_run_out__by__run_out(m, run_out):
    return 1/2


def oversize(m, point_offset):
    return 2*point_offset


def oversize__margins(m, point_offset):
    return []


def oversize__cautions(m, point_offset):
    return []


def oversize__by__point_offset(m, point_offset):
    return 2


def largest_hole(m, diameter, oversize):
    return diameter + oversize


def largest_hole__margins(m, diameter, oversize):
    return [diameter - oversize]


def largest_hole__cautions(m, diameter, oversize):
    return []


def largest_hole__by__diameter(m, diameter, oversize):
    return 1


def largest_hole__by__oversize(m, diameter, oversize):
    return 1


def lip_height_from_angles(m, radius, half_angle_1, half_angle_2):
    v0 = (1/180)*m.pi
    return radius*m.fabs(m.tan(half_angle_2*v0)**(-1) - 1/m.tan(half_angle_1*v0))


def lip_height_from_angles__margins(m, radius, half_angle_1, half_angle_2):
    return []


def lip_height_from_angles__cautions(m, radius, half_angle_1, half_angle_2):
    return []


def lip_height_from_angles__by__radius(m, radius, half_angle_1, half_angle_2):
    v0 = (1/180)*m.pi
    return m.fabs(m.tan(half_angle_2*v0)**(-1) - 1/m.tan(half_angle_1*v0))


def lip_height_from_angles__by__half_angle_1(m, radius, half_angle_1, half_angle_2):
    v0 = (1/180)*m.pi
    v1 = m.tan(half_angle_1*v0)
    return radius*v0*(-1 - 1/v1**2)*m.copysign(1.0, -1/m.tan(half_angle_2*v0) + v1**(-1))


def lip_height_from_angles__by__half_angle_2(m, radius, half_angle_1, half_angle_2):
    v0 = (1/180)*m.pi
    v1 = m.tan(half_angle_2*v0)
    return -radius*v0*(-1 - 1/v1**2)*m.copysign(1.0, m.tan(half_angle_1*v0)**(-1) - 1/v1)


def idle_radius(m, feed, half_angle_1, half_angle_2):
    v0 = (1/180)*m.pi
    return (1/2)*feed/m.fabs(m.tan(half_angle_2*v0)**(-1) - 1/m.tan(half_angle_1*v0))


def idle_radius__margins(m, feed, half_angle_1, half_angle_2):
    v0 = (1/180)*m.pi
    return [(half_angle_1*v0 - half_angle_2*v0)**2]


def idle_radius__cautions(m, feed, half_angle_1, half_angle_2):
    return []


def idle_radius__by__feed(m, feed, half_angle_1, half_angle_2):
    v0 = (1/180)*m.pi
    return (1/2)/m.fabs(m.tan(half_angle_2*v0)**(-1) - 1/m.tan(half_angle_1*v0))


def idle_radius__by__half_angle_1(m, feed, half_angle_1, half_angle_2):
    v0 = (1/180)*m.pi
    v1 = m.tan(half_angle_1*v0)
    v2 = -1/m.tan(half_angle_2*v0) + v1**(-1)
    return -1/360*m.pi*feed*(-1 - 1/v1**2)*m.copysign(1.0, v2)/v2**2


def idle_radius__by__half_angle_2(m, feed, half_angle_1, half_angle_2):
    v0 = (1/180)*m.pi
    v1 = m.tan(half_angle_2*v0)
    v2 = m.tan(half_angle_1*v0)**(-1) - 1/v1
    return (1/360)*m.pi*feed*(-1 - 1/v1**2)*m.copysign(1.0, v2)/v2**2


def rolled_reading(m, point_angle, roll_angle):
    return 360*m.atan(m.cos((1/180)*m.pi*roll_angle)*m.tan((1/360)*m.pi*point_angle))/m.pi


def rolled_reading__margins(m, point_angle, roll_angle):
    return []


def rolled_reading__cautions(m, point_angle, roll_angle):
    return []


def rolled_reading__by__point_angle(m, point_angle, roll_angle):
    v0 = m.cos((1/180)*m.pi*roll_angle)
    v1 = m.tan((1/360)*m.pi*point_angle)**2
    return v0*(v1 + 1)/(v0**2*v1 + 1)


def rolled_reading__by__roll_angle(m, point_angle, roll_angle):
    v0 = (1/180)*m.pi*roll_angle
    v1 = m.tan((1/360)*m.pi*point_angle)
    return -2*v1*m.sin(v0)/(v1**2*m.cos(v0)**2 + 1)


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


def stock_for_angle_change(m, diameter, point_angle, new_point_angle):
    v0 = (1/360)*m.pi
    return (1/2)*diameter*m.fabs(m.tan(point_angle*v0)**(-1) - 1/m.tan(new_point_angle*v0))


def stock_for_angle_change__margins(m, diameter, point_angle, new_point_angle):
    return []


def stock_for_angle_change__cautions(m, diameter, point_angle, new_point_angle):
    return []


def stock_for_angle_change__by__diameter(m, diameter, point_angle, new_point_angle):
    v0 = (1/360)*m.pi
    return (1/2)*m.fabs(m.tan(point_angle*v0)**(-1) - 1/m.tan(new_point_angle*v0))


def stock_for_angle_change__by__point_angle(m, diameter, point_angle, new_point_angle):
    v0 = (1/360)*m.pi
    v1 = m.tan(point_angle*v0)
    return -1/720*m.pi*diameter*(-1 - 1/v1**2)*m.copysign(1.0, m.tan(new_point_angle*v0)**(-1) - 1/v1)


def stock_for_angle_change__by__new_point_angle(m, diameter, point_angle, new_point_angle):
    v0 = (1/360)*m.pi
    v1 = m.tan(new_point_angle*v0)
    return (1/720)*m.pi*diameter*(-1 - 1/v1**2)*m.copysign(1.0, -1/m.tan(point_angle*v0) + v1**(-1))


def stock_for_wear_land(m, wear_land, lip_relief):
    return wear_land*m.tan((1/180)*m.pi*lip_relief)


def stock_for_wear_land__margins(m, wear_land, lip_relief):
    return []


def stock_for_wear_land__cautions(m, wear_land, lip_relief):
    return []


def stock_for_wear_land__by__wear_land(m, wear_land, lip_relief):
    return m.tan((1/180)*m.pi*lip_relief)


def stock_for_wear_land__by__lip_relief(m, wear_land, lip_relief):
    v0 = (1/180)*m.pi
    return v0*wear_land*(m.tan(lip_relief*v0)**2 + 1)


def stock_for_worn_corner(m, worn_margin):
    return worn_margin


def stock_for_worn_corner__margins(m, worn_margin):
    return []


def stock_for_worn_corner__cautions(m, worn_margin):
    return []


def stock_for_worn_corner__by__worn_margin(m, worn_margin):
    return 1


def stock_for_chip(m, chip_depth, point_angle):
    return chip_depth/m.sin((1/360)*m.pi*point_angle)


def stock_for_chip__margins(m, chip_depth, point_angle):
    return []


def stock_for_chip__cautions(m, chip_depth, point_angle):
    return []


def stock_for_chip__by__chip_depth(m, chip_depth, point_angle):
    return m.sin((1/360)*m.pi*point_angle)**(-1)


def stock_for_chip__by__point_angle(m, chip_depth, point_angle):
    v0 = (1/360)*m.pi
    v1 = point_angle*v0
    return -chip_depth*v0*m.cos(v1)/m.sin(v1)**2


def tip_stock(m, corner_stock, diameter, point_angle, new_point_angle):
    v0 = (1/360)*m.pi
    return corner_stock + (1/2)*diameter*(m.tan(point_angle*v0)**(-1) - 1/m.tan(new_point_angle*v0))


def tip_stock__margins(m, corner_stock, diameter, point_angle, new_point_angle):
    v0 = (1/360)*m.pi
    return [corner_stock + (1/2)*diameter*(m.tan(point_angle*v0)**(-1) - 1/m.tan(new_point_angle*v0))]


def tip_stock__cautions(m, corner_stock, diameter, point_angle, new_point_angle):
    return []


def tip_stock__by__corner_stock(m, corner_stock, diameter, point_angle, new_point_angle):
    return 1


def tip_stock__by__diameter(m, corner_stock, diameter, point_angle, new_point_angle):
    v0 = (1/360)*m.pi
    return (1/2)/m.tan(point_angle*v0) - (1/2)/m.tan(new_point_angle*v0)


def tip_stock__by__point_angle(m, corner_stock, diameter, point_angle, new_point_angle):
    return (1/720)*m.pi*diameter*(-1 - 1/m.tan((1/360)*m.pi*point_angle)**2)


def tip_stock__by__new_point_angle(m, corner_stock, diameter, point_angle, new_point_angle):
    return -1/720*m.pi*diameter*(-1 - 1/m.tan((1/360)*m.pi*new_point_angle)**2)


def regrinds_left(m, usable_length, stock):
    return usable_length/stock


def regrinds_left__margins(m, usable_length, stock):
    return [stock]


def regrinds_left__cautions(m, usable_length, stock):
    return []


def regrinds_left__by__usable_length(m, usable_length, stock):
    return stock**(-1)


def regrinds_left__by__stock(m, usable_length, stock):
    return -usable_length/stock**2


def length_removed_by_regrinds(m, regrinds, stock):
    return regrinds*stock


def length_removed_by_regrinds__margins(m, regrinds, stock):
    return []


def length_removed_by_regrinds__cautions(m, regrinds, stock):
    return []


def length_removed_by_regrinds__by__regrinds(m, regrinds, stock):
    return stock


def length_removed_by_regrinds__by__stock(m, regrinds, stock):
    return regrinds


def length_until_thinning(m, web_ratio_limit, diameter, web, web_taper):
    return (diameter*web_ratio_limit - web)/web_taper


def length_until_thinning__margins(m, web_ratio_limit, diameter, web, web_taper):
    return [diameter*web_ratio_limit - web, web_taper]


def length_until_thinning__cautions(m, web_ratio_limit, diameter, web, web_taper):
    return []


def length_until_thinning__by__web_ratio_limit(m, web_ratio_limit, diameter, web, web_taper):
    return diameter/web_taper


def length_until_thinning__by__diameter(m, web_ratio_limit, diameter, web, web_taper):
    return web_ratio_limit/web_taper


def length_until_thinning__by__web(m, web_ratio_limit, diameter, web, web_taper):
    return -1/web_taper


def length_until_thinning__by__web_taper(m, web_ratio_limit, diameter, web, web_taper):
    return -(diameter*web_ratio_limit - web)/web_taper**2


def take_off_correction(m, stock, length_before, length_after):
    return length_after - length_before + stock


def take_off_correction__margins(m, stock, length_before, length_after):
    return [-length_after + length_before]


def take_off_correction__cautions(m, stock, length_before, length_after):
    return []


def take_off_correction__by__stock(m, stock, length_before, length_after):
    return 1


def take_off_correction__by__length_before(m, stock, length_before, length_after):
    return -1


def take_off_correction__by__length_after(m, stock, length_before, length_after):
    return 1
