"""The lesson on helix and rake: the numbers in its prose, and what its words claim.

Numbers: for each cell of prose the figures it must hold, in order. A figure is DERIVED (worked out here from the
relations or the ground point), CHOSEN (the drills of the lesson), or SOURCE (printed in the source named).
"""

import numpy as np
import pytest

from drillpoint.ground import Flute, GroundPoint, PlaneFlank
from drillpoint.handbook import look_up
from drillpoint.relations import (
    dub_normal_rake,
    dub_set_back,
    dub_wedge_angle,
    lead,
    least_dub_width,
    lip_inclination,
    local_helix,
    normal_rake,
    normal_relief,
    orthogonal_rake,
    wedge_angle,
)
from tests.notebooks.prose import code, prose, unaccounted

LESSON = "05-helix-and-rake.ipynb"
INCH = 25.4

# CHOSEN: the drill of the lesson, its flat, and the angles a drill is ground to.
D, A, W, HELIX, RELIEF, FEED = 10, 118, 1.5, 30, 12, 0.1
R = D / 2
SLOW, FAST, LARGE = 15, 40, 0.5 * INCH
FLAT, OTHER_FLAT = 0.2, 0.3
GROUND_TO = (90, 118, 135, 150)
OTHER = 135
PLACES = (5, 4, 3, 2, 1)
ROUNDED_RAKE, ROUNDED_INCLINATION = -24.9, 40


def rake(radius: float, helix: float = HELIX, point_angle: float = A) -> float:
    return float(normal_rake(helix_angle=helix, radius=radius, diameter=D, web=W, point_angle=point_angle))


def helix_at(radius: float, helix: float = HELIX) -> float:
    return float(local_helix(helix_angle=helix, radius=radius, diameter=D))


def inclination(radius: float) -> float:
    return float(lip_inclination(radius=radius, web=W, point_angle=A))


def relief(radius: float) -> float:
    return float(normal_relief(radius=radius, diameter=D, web=W, point_angle=A, lip_relief=RELIEF))


def wedge(radius: float) -> float:
    return float(wedge_angle(normal_rake=rake(radius), normal_relief=relief(radius)))


def dubbed_rake(radius: float) -> float:
    return float(dub_normal_rake(dub_rake=0, radius=radius, web=W, point_angle=A))


def dubbed_wedge(radius: float) -> float:
    return float(dub_wedge_angle(dub_normal_rake=dubbed_rake(radius), normal_relief=relief(radius)))


def set_back(width: float) -> float:
    return float(
        dub_set_back(dub_width=width, normal_rake=rake(R), dub_normal_rake=dubbed_rake(R), wedge_angle=wedge(R))
    )


def ground(point_angle: float, diameter: float = D) -> GroundPoint:
    """A drill whose flute was made for the usual angle, ground to another with the lesson's relief."""
    flute = Flute(diameter=diameter, web_ratio=W / D, helix_angle=HELIX, point_angle=A)
    return GroundPoint(flute, PlaneFlank(point_angle=point_angle, lip_relief=RELIEF))


def n(value: float, decimals: int = 0) -> str:
    """The number as the lesson prints it, without its sign."""
    return f"{abs(value):.{decimals}f}"


NOTHING = float(normal_rake.solve("radius", normal_rake=0, helix_angle=HELIX, diameter=D, web=W, point_angle=A))
ORTHOGONAL = float(orthogonal_rake(normal_rake=ROUNDED_RAKE, lip_inclination=ROUNDED_INCLINATION))
AT_CORNER = float(orthogonal_rake(normal_rake=rake(R), lip_inclination=inclination(R)))
LEAST = float(least_dub_width(feed=FEED, point_angle=A, dub_rake=0, radius=R, web=W))
BOWS = {angle: ground(angle).inspect().lip_bow_1 for angle in GROUND_TO}
BOWS_INCH = {angle: ground(angle, LARGE).inspect().lip_bow_1 / INCH for angle in GROUND_TO}
BOWED = ground(OTHER).inspect()
FOOT = float(ground(A).feet[0].radius[0])  # where the chisel edge begins
BOW_ROWS = [
    figure
    for angle in GROUND_TO
    for figure in (n(angle), *(("0", "0") if angle == A else (n(BOWS[angle], 2), n(BOWS_INCH[angle], 3))))
]

FIGURES: dict[str, list[str]] = {
    "title": ["5", "40", n(HELIX), "1", "3"],
    "shop": ["3", n(D), n(A), n(HELIX), n(HELIX), n(HELIX), n(A), n(OTHER)],
    "rake": ["4"],
    "rake-remarks": [n(rake(R), 1), n(rake(R / 2), 1), n(FOOT, 3), n(rake(FOOT), 1)],
    "predict": ["5"],
    "drag": ["1", "0", "45", "2", n(HELIX), "3"],
    "dragged": [n(NOTHING, 2)],
    "helix": ["5"],
    "helix-inch": [
        *("1/2", n(HELIX), n(float(lead(diameter=LARGE, helix_angle=HELIX)) / INCH, 2)),
        *(n(SLOW), n(D), n(float(lead(diameter=D, helix_angle=SLOW)))),
    ],
    "helix-remarks": ["1", n(helix_at(1), 1), n(FAST), n(helix_at(1, FAST), 1)],
    "web": ["6", n(helix_at(1), 1)],
    "web-remarks": [
        *(n(rake(R), 1), n(rake(2), 1), "2", n(rake(1), 1), "1"),
        *(n(rake(R) - HELIX, 1), "2", n(HELIX - rake(2), 1), "1", n(HELIX - rake(1), 1)),
    ],
    "web-chart-remarks": ["8"],
    "slices": ["4"],
    "slices-remarks": [n(inclination(R), 1), "1.5", n(inclination(1.5), 1), "1", n(inclination(1), 1)],
    "slices-end": [n(AT_CORNER - rake(R), 1), n(ROUNDED_RAKE, 1), n(ORTHOGONAL, 1)],
    "wedge": ["4", "90"],
    "wedge-remarks": [n(relief(R), 1), n(relief(1), 1), "1", n(wedge(R), 1), n(wedge(1), 1)],
    "brass": ["7", n(rake(R), 1)],
    "brass-rake-remarks": [n(dubbed_rake(R), 1)],
    "brass-wedge-remarks": [n(dubbed_wedge(R), 1), n(wedge(R), 1), "1", "6", n(FEED, 1)],
    "brass-width-remarks": [n(LEAST, 3), n(FLAT, 1), n(FLAT / INCH, 3)],
    "brass-back-remarks": [n(set_back(FLAT), 3), n(OTHER_FLAT, 1), n(set_back(OTHER_FLAT), 3)],
    "bowed": ["4", n(A), n(A), n(OTHER)],
    "bowed-remarks": [
        *(n(BOWED.lip_bow_2, 3), n(A), n(D), "1/2", *BOW_ROWS),
        *(n(OTHER), n(BOWED.point_angle, 1)),
    ],
    "disagree": ["2", n(HELIX)],
    "disagree-remarks": ["22", "34", n(rake(R, 0), 1)],  # SOURCE: the handbook's table of helix angles, seen
    "back": [n(HELIX), n(FLAT, 1), n(rake(R), 1), n(rake(R / 2), 1), n(rake(1), 1), "1"],
    "next": ["6"],
    "card": [
        *(n(float(lead(diameter=D, helix_angle=HELIX)), 1), n(helix_at(2), 1), "2", n(inclination(R), 1)),
        *("90", n(rake(R), 1), n(wedge(R), 1), n(relief(R), 1), n(dubbed_rake(R), 1), "2", n(LEAST, 3)),
        *map(str, PLACES),
        *(n(helix_at(r), 1) for r in PLACES),
        *(n(rake(r), 1) for r in PLACES),
        *(n(wedge(r), 1) for r in PLACES),
        *(n(D), n(HELIX), n(A), n(A / 2), n(W, 1), n(W / 2, 2), n(RELIEF), n(FEED, 1), "4.0"),
    ],
}


def test_every_number_in_the_prose_is_accounted_for() -> None:
    assert unaccounted(LESSON, FIGURES) == {}


def test_the_signs_are_as_printed() -> None:
    texts = prose(LESSON)
    for value, decimals, cells in (
        (rake(FOOT), 1, ("rake-remarks",)),
        (rake(1), 1, ("web-remarks", "slices-end", "back", "card")),
        (ORTHOGONAL, 1, ("slices-end",)),
        (dubbed_rake(R), 1, ("brass-rake-remarks", "card")),
        (rake(R, 0), 1, ("disagree-remarks",)),
        (BOWS[135], 2, ("bowed-remarks",)),
        (BOWS[150], 2, ("bowed-remarks",)),
    ):
        assert value < 0
        for cell in cells:
            assert f"−{n(value, decimals)}" in texts[cell]
    assert BOWS[90] > 0 and abs(BOWS[A]) < 1e-9


def test_the_helix_rules_the_corner_and_the_web_the_middle() -> None:
    def gained(radius: float) -> float:
        return rake(radius, FAST) - rake(radius, SLOW)

    assert gained(R) > gained(R / 2) > gained(1) > 0 and gained(R) > 5 * gained(1)

    def lost(radius: float) -> float:
        thick = normal_rake(helix_angle=HELIX, radius=radius, diameter=D, web=1.2 * W, point_angle=A)
        return rake(radius) - float(thick)

    assert lost(R) < lost(R / 2) < lost(1)
    # "More than a third of the way out" is pushed away.
    assert R / 3 < NOTHING < R / 2


def test_the_rake_is_the_helix_at_the_corner_only() -> None:
    assert rake(R) == pytest.approx(HELIX, abs=1)
    assert all(abs(rake(radius) - HELIX) > 5 for radius in PLACES[1:])
    # "The point angle matters little": less than the web does, between corner and cliff.
    for radius in (2, 3, 4, 5):
        assert abs(rake(radius, point_angle=OTHER) - rake(radius)) < 3


def test_the_ground_point_has_the_same_rake_and_inclination() -> None:
    read = ground(A).inspect().lip_at(1, radii=np.array([float(r) for r in PLACES]))
    assert list(read.normal_rake) == pytest.approx([rake(r) for r in PLACES], abs=1e-6)
    assert list(read.inclination) == pytest.approx([inclination(r) for r in PLACES], abs=1e-6)


def test_along_the_movement_the_rake_is_larger_in_size() -> None:
    for radius in PLACES:
        along = float(orthogonal_rake(normal_rake=rake(radius), lip_inclination=inclination(radius)))
        assert abs(along) > abs(rake(radius)) and along * rake(radius) > 0


def test_grinding_the_flank_leaves_the_rake_alone() -> None:
    radii = np.array([2.0, 5.0])
    flute = Flute(diameter=D, web=W, helix_angle=HELIX, point_angle=A)
    more, less = (
        GroundPoint(flute, PlaneFlank(point_angle=A, lip_relief=relief_)).inspect().lip_at(1, radii=radii)
        for relief_ in (RELIEF, RELIEF - 4)
    )
    assert list(more.normal_rake) == pytest.approx(list(less.normal_rake))
    assert (more.relief > less.relief).all()


def test_the_flat_takes_the_hook_away_alike_all_along_the_lip() -> None:
    assert dubbed_rake(R) < 0 < rake(R)
    assert [dubbed_wedge(r) for r in PLACES] == pytest.approx([dubbed_wedge(R)] * len(PLACES))
    assert dubbed_wedge(R) > wedge(R)
    assert dubbed_rake(R) == pytest.approx(rake(R, 0))  # a straight flute is like a lip that was dubbed
    # "Less than a sheet of printing paper": such paper is about a tenth of a millimetre thick, common knowledge.
    assert LEAST < 0.1 and FLAT > 3 * LEAST


def test_the_lips_bow_as_the_lesson_says() -> None:
    assert BOWS[150] < BOWS[135] < 0 < BOWS[90]
    # The corner of a hollow lip runs ahead of the straight line along its inner part, and so of half a web.
    assert float(ground(OTHER).lips[0].corner.y[0]) > W / 2 > float(ground(90).lips[0].corner.y[0])


def test_the_printed_helix_angles_stand_in_the_handbook() -> None:
    rows = list(look_up("helix_angle"))
    assert min(row.low for row in rows) == 22 and max(row.high or 0 for row in rows) == 34
    lows = [row.low for row in sorted(rows, key=lambda row: row.from_diameter or 0)]
    assert lows == sorted(lows)  # "Small drills get a slower helix."


def test_it_teaches_every_relation_allotted_to_it() -> None:
    shown = "\n".join(code(LESSON).values())
    for name in ("lead", "local_helix", "lip_inclination", "normal_rake", "dub_set_back"):
        assert f"derive({name})" in shown
    for name in ("orthogonal_rake", "wedge_angle", "dub_normal_rake", "dub_wedge_angle", "least_dub_width"):
        assert f"work_out({name}," in shown
    assert "tabulate(normal_relief," in shown
