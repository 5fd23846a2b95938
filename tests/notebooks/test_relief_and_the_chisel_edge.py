"""The lesson on relief and the chisel edge: the numbers in its prose, what its words claim, the relations it derives.

Numbers: for each cell of prose the figures it must hold, in order. A figure is DERIVED (worked out here from the
relations or the ground point), CHOSEN (the drills of the lesson, or an example of how to type), or SOURCE (printed in
the source named).
"""

import numpy as np
import pytest

from drillpoint.drawing.relief import LAND_DEGREES
from drillpoint.ground import ConicalFlank, FacetedFlank, Flute, GroundPoint, PlaneFlank
from drillpoint.handbook import look_up
from drillpoint.relations import (
    axial_relief,
    chisel_edge_angle,
    chisel_edge_rake,
    feed_relief_loss,
    flank_fall,
    heel_clearance,
    lip_relief,
    relief_at_radius,
    wedge_angle,
    working_relief,
)
from tests.notebooks.prose import code, prose, unaccounted

LESSON = "03-relief-and-the-chisel-edge.ipynb"
INCH = 25.4

# CHOSEN: the drills of the lesson, and their chisel edges.
D, A, W, FEED, RELIEF, WANTED = 10, 118, 1.5, 0.2, 12, 125
U = W / D
DRILLS = {"A": 92, "B": 102, "C": WANTED}
FLATTER, UPHILL, LARGE, SIXTH = 135, -8, 1.5 * INCH, 1 / 6
PROTRACTOR = 2  # degrees that it may be out
SECOND_FACET, LAND_WIDTH = 30, 0.5

# SOURCE: 29 CFR 1910.215 for the work rest, OSHA's data sheet CH_229100 for cobalt, mg/m³ (both seen).
REST, REST_INCH, COBALT = "3", "1/8", "0.1"
# SOURCE: US Army TC 9-524 and US Navy NAVEDTRA 12204-A, both from memory; the others are common practice.
CARD_RELIEF, CARD_CHISEL = ("8", "12"), ("120", "135")
OTHERS = (CARD_RELIEF, ("10", "15"), ("12", "15"), ("7", "24"))


def square(relief: float) -> float:
    """The relief square to the lip."""
    return float(axial_relief(lip_relief=relief, point_angle=A, web_ratio=U))


def psi(relief: float, angle: float = A) -> float:
    """The chisel edge angle of one flat flank."""
    return float(chisel_edge_angle(lip_relief=relief, point_angle=angle, web_ratio=U))


def needed(chisel: float, angle: float = A) -> float:
    """The lip relief that one flat flank has with this chisel edge."""
    return float(chisel_edge_angle.solve("lip_relief", chisel_edge_angle=chisel, point_angle=angle, web_ratio=U))


def clear(relief: float) -> float:
    """The heel clearance of one flat flank."""
    return float(heel_clearance(lip_relief=relief, point_angle=A, web_ratio=U))


def taken(radius: float, feed: float = FEED) -> float:
    """What the feed takes of the relief."""
    return float(feed_relief_loss(feed=feed, radius=radius))


def n(value: float, decimals: int = 0) -> str:
    """The number as the lesson prints it, without its sign."""
    return f"{abs(value):.{decimals}f}"


def plain(value: float) -> str:
    """A chosen number as the lesson prints it."""
    return f"{value:g}"


HAS = {name: needed(chisel) for name, chisel in DRILLS.items()}
IN_TABLE = {name: round(relief, 2) for name, relief in HAS.items()}
LEVEL_ROOF = float(lip_relief(axial_relief=0, point_angle=A, web_ratio=U))
ALL_ROUND = float(lip_relief(axial_relief=RELIEF, point_angle=A, web_ratio=U))
SQUARE_PSI = float(chisel_edge_angle(point_angle=A, axial_relief=RELIEF))
PUSHED = float(chisel_edge_rake(point_angle=A, chisel_edge_angle=DRILLS["A"]))
INWARDS = float(relief_at_radius(radius=D / 10, diameter=D, web=W, point_angle=A, lip_relief=RELIEF))
STANDS_AHEAD = float(flank_fall(radius=LARGE, relief_at_radius=UPHILL, turn_share=SIXTH))
FLUTE = Flute(diameter=D, web=W)
CONE = GroundPoint(FLUTE, ConicalFlank(cone_half_angle=25, cone_tilt=34, apex_distance=9.5, skew=1.45)).inspect()
FACETS = GroundPoint(
    FLUTE,
    FacetedFlank(point_angle=A, lip_relief=RELIEF, secondary_relief=SECOND_FACET, primary_width=LAND_WIDTH),
).inspect()
ON_CARD = (92, 95, 102, 110, 120, 125)

FIGURES: dict[str, list[str]] = {
    "title": ["3", "40"],
    "cautions": [REST, REST_INCH, "29", "1910.133", "29", "1910.215", COBALT],
    "shop": ["3", n(D), n(A), plain(W), *map(str, DRILLS.values()), *CARD_RELIEF, *CARD_CHISEL],
    "relief": ["3", n(RELIEF)],
    "relief-remarks": [plain(FEED), n(taken(D / 2), 2), n(RELIEF)],
    "predict": ["5"],
    "drag": ["1", "6", "30", "2", n(RELIEF), n(FLATTER), "3", n(A), *map(str, DRILLS.values())],
    "dragged": [n(relief, 1) for relief in HAS.values()],
    "place": ["5", "328", n(RELIEF)],  # SOURCE: BS 328, the number of the standard
    "place-remarks": [
        *(n(square(RELIEF), 1), n(RELIEF - square(RELIEF)), plain(W), n(D), n(U, 2)),
        *("1/2", plain(U / 2)),
    ],
    "place-answer": [n(LEVEL_ROOF, 2), n(RELIEF), n(ALL_ROUND, 1), n(RELIEF)],
    "why": [n(RELIEF), n(psi(RELIEF), 1), n(WANTED), "5", n(RELIEF)],
    "why-steps": ["90", n(A), n(90 - A / 2), n(square(RELIEF), 1)],
    "why-chart-remarks": [
        *(n(A), n(needed(120), 1), n(FLATTER), n(needed(120, FLATTER), 1)),
        *(n(RELIEF), n(SQUARE_PSI, 1), n(A), n(WANTED)),
    ],
    "gauge": ["5"],
    "gauge-answer": [
        *(text for name, at in DRILLS.items() for text in (str(at), n(HAS[name], 1), n(square(HAS[name]), 1))),
        *(n(PROTRACTOR), n(needed(DRILLS["B"] + PROTRACTOR) - HAS["B"], 1), "130", "50", "180"),
    ],
    "gauge-rule": ["90", "100", "95", n(A), *CARD_CHISEL, n(A), n(needed(120), 1)],
    "gauge-view-remarks": [n(-2 * PUSHED), n(PUSHED)],
    "heel": ["4"],
    "heel-answer": [n(LAND_DEGREES), n(clear(IN_TABLE["A"]), 1), n(clear(IN_TABLE["B"]), 1)],
    "feed": ["4"],
    "feed-key": ["2", "2", n(taken(D / 2), 2), n(taken(1), 2), "1"],
    "feed-remarks": ["14", "1", "1"],
    "feed-least": [n(taken(D / 2), 2), "0.008", "1/4", n(taken(INCH / 4, 0.008 * INCH), 2), "6"],
    "negative": ["2", n(UPHILL)],
    "negative-remarks": [n(LARGE, 1), "1", "1/2", n(360 * SIXTH)],
    "negative-answer": [n(STANDS_AHEAD, 1), "0", n(square(0), 1), n(psi(0), 1)],
    "disagree": ["2"],
    "disagree-remarks": [
        *(figure for span in OTHERS for figure in span),
        *(n(square(RELIEF), 1), n(RELIEF), n(INWARDS, 1)),
    ],
    "both": ["3", *CARD_RELIEF, *CARD_CHISEL, n(A), n(RELIEF), n(psi(RELIEF), 1), n(WANTED), n(HAS["C"], 1)],
    "both-remarks": [
        *(n(CONE.lip_relief, 1), n(CONE.chisel_edge_angle, 1), n(RELIEF), plain(LAND_WIDTH), n(SECOND_FACET)),
        *(n(FACETS.chisel_edge_angle, 1), n(FACETS.heel_clearance or 0), "4"),
    ],
    "back": [n(HAS["A"], 1), n(HAS["C"], 1)],
    "next": ["4"],
    "card": [
        *("1", n(RELIEF), n(square(RELIEF), 1), "1", n(square(RELIEF), 1), n(RELIEF)),
        *("180", n(RELIEF), n(psi(RELIEF), 1), "180", "2", "2", n(RELIEF), n(clear(RELIEF), 1)),
        *("2", n(taken(D / 2), 2), n(D / 2), n(D), n(A), n(A / 2), plain(W), n(U, 2), plain(FEED)),
        *(n(A), n(U, 2), *map(str, ON_CARD), *(n(needed(chisel), 1) for chisel in ON_CARD)),
        *(n(RELIEF), n(WANTED), "4.0"),
    ],
}


def test_every_number_in_the_prose_is_accounted_for() -> None:
    assert unaccounted(LESSON, FIGURES) == {}


def test_the_signs_are_as_printed() -> None:
    assert PUSHED < 0 and f"−{n(PUSHED)}°" in prose(LESSON)["gauge-view-remarks"]
    assert square(0) < 0 and f"−{n(square(0), 1)}°" in prose(LESSON)["negative-answer"]
    assert STANDS_AHEAD < 0 and f"−{n(UPHILL)}°" in prose(LESSON)["negative"]


def test_the_three_drills_do_what_the_table_says() -> None:
    # A and B rub with the land as drawn, and A over most of it; C does not, not even fed.
    assert clear(HAS["A"]) < LAND_DEGREES / 2 < clear(HAS["B"]) < LAND_DEGREES < clear(HAS["C"]) - taken(D / 2)
    # Each has some relief left behind its lip.
    for relief in HAS.values():
        assert float(working_relief(lip_relief=relief, point_angle=A, web=W, diameter=D, radius=D / 2, feed=FEED)) > 0
    low, high = map(float, CARD_RELIEF)
    assert HAS["A"] < low < RELIEF <= high < HAS["C"] and HAS["B"] == pytest.approx(high, abs=0.25)
    # "The lips are thin": the wedge of drill C is the smallest.
    wedges = [
        float(wedge_angle(diameter=D, web=W, point_angle=A, helix_angle=30, radius=D / 2, axial_relief=square(relief)))
        for relief in HAS.values()
    ]
    assert wedges == sorted(wedges, reverse=True)


def test_the_card_cannot_be_met_by_one_flat_flank_but_by_others() -> None:
    (low, high), (least, most) = (tuple(map(float, span)) for span in (CARD_RELIEF, CARD_CHISEL))
    assert psi(high) < least and needed(least) > high
    assert low <= CONE.lip_relief <= high and least <= CONE.chisel_edge_angle <= most
    assert CONE.point_angle == pytest.approx(A, abs=0.5)
    assert FACETS.lip_relief == pytest.approx(RELIEF) and least <= FACETS.chisel_edge_angle <= most
    assert FACETS.heel_clearance is not None and FACETS.heel_clearance > LAND_DEGREES
    # "It is gentle at the corner, and steep near the axis."
    inner, corner = CONE.lip_at(1, radii=np.array([1.5, D / 2])).relief
    assert inner > 1.5 * corner


def test_the_ground_points_rub_as_the_lesson_says() -> None:
    def rubs(relief: float) -> float | None:
        ground = GroundPoint(FLUTE, PlaneFlank(point_angle=A, lip_relief=relief))
        return ground.inspect().first_rub(1, feed=FEED)

    behind = {name: rubs(relief) for name, relief in HAS.items()}
    # The feed brings the work up to the flank a little before it is level with the corner.
    assert behind["A"] == pytest.approx(clear(HAS["A"]), abs=1.5)
    assert behind["B"] == pytest.approx(clear(HAS["B"]), abs=1.5)
    assert behind["C"] is None
    assert rubs(UPHILL) == pytest.approx(0, abs=1)


def test_what_else_the_words_claim() -> None:
    # More relief, or a flatter point: the chisel edge swings away from square, and the heel touches later.
    reliefs = [6, 8, 12, 18, 24, 30]
    assert [psi(r) for r in reliefs] == sorted(psi(r) for r in reliefs)
    assert [clear(r) for r in reliefs] == sorted(clear(r) for r in reliefs)
    assert psi(RELIEF, FLATTER) > psi(RELIEF)
    # "Under about 95°, expect a drill that rubs": on half of the land and more.
    assert clear(needed(95)) < LAND_DEGREES / 2
    # "Below zero: the flank rubs there."
    assert float(working_relief(relief_at_radius=1, feed=FEED, radius=1)) < 0
    # "On the wrong side of square."
    assert psi(0) < 90
    # A flat flank's relief grows inwards faster than the feed takes it, out to the corner of the chisel edge and more.
    at = [
        float(working_relief(lip_relief=RELIEF, point_angle=A, web=W, diameter=D, radius=r, feed=FEED))
        for r in (1, 2, 3, 4, 5)
    ]
    assert at == sorted(at, reverse=True)


def test_the_ranges_that_disagree_stand_in_the_handbook() -> None:
    printed = {(f"{row.low:g}", f"{row.high:g}") for row in look_up("lip_relief") if row.high is not None}
    assert set(OTHERS) <= printed
    silent = [row for row in look_up("lip_relief") if row.plane == row.place == "not stated"]
    assert len(silent) > len(printed) / 2
    assert (120, 135) in {(row.low, row.high) for row in look_up("chisel_edge_angle")}


def test_it_derives_every_relation_it_rests_on() -> None:
    shown = "\n".join(code(LESSON).values())
    for name in ("axial_relief", "chisel_edge_angle", "heel_clearance", "feed_relief_loss"):
        assert f"derive({name})" in shown
