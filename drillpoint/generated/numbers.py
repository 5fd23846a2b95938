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
