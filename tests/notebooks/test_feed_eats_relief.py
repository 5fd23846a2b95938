"""The lesson on feed and relief: the numbers in its prose, and what its words claim.

Numbers: for each cell of prose the figures it must hold, in order. A figure is DERIVED (worked out here from the
relations or the ground point), CHOSEN (the drills of the lesson), or SOURCE (printed in the source named).
"""

import math

import numpy as np
import pytest

from drillpoint.ground import ConicalFlank, Flute, GroundPoint, PlaneFlank
from drillpoint.handbook import look_up
from drillpoint.relations import (
    axial_relief,
    chip_thickness,
    chip_width,
    chisel_edge_angle,
    feed_relief_loss,
    flank_fall,
    least_lip_relief,
    relief_at_radius,
    working_relief,
)
from tests.notebooks.prose import code, prose, unaccounted

LESSON = "06-feed-eats-relief.ipynb"
INCH = 25.4

# CHOSEN: the drills of the lesson, what they are fed, and the places that are looked at.
D, A, W, FEED, RELIEF, NEW, PSI = 10, 118, 1.5, 0.2, 12, 0.3, 125
R = D / 2
SMALL, MARGIN, FIFTIETH, BEHIND = 2, 8, 0.02, 0.05
PLACES = (5, 4, 3, 2, 1.5)
WORST = 2
TELL_TALE = 95
# CHOSEN, in inches: a feed that is 0.1016 mm.
INCH_DRILL, INCH_FEED, INCH_CHIP = 0.25, 0.004, 0.008
# SOURCE: Ghosh and Mallik, Manufacturing Science (second hand): the example's feed, and the chip as printed.
PRINTED_FEED, PRINTED_CHIP = 0.23, 0.1
# SOURCE: the least and the largest of the handbook's table of lip reliefs.
PRINTED_RELIEFS = (5, 24)

FLUTE = Flute(diameter=D, web=W)
KEY_FLANK = ConicalFlank(cone_half_angle=22, cone_tilt=37, apex_distance=8, skew=0.2, flank_turn=40)
GOOD_FLANK = ConicalFlank(cone_half_angle=25, cone_tilt=34, apex_distance=9.5, skew=1.45)
BY_THE_KEY, GOOD = (GroundPoint(FLUTE, flank).inspect() for flank in (KEY_FLANK, GOOD_FLANK))
KEY_AT, GOOD_AT = (list(one.lip_at(1, radii=np.array(PLACES, float)).relief) for one in (BY_THE_KEY, GOOD))
AT_WORST = KEY_AT[PLACES.index(WORST)]


def taken(radius: float, feed: float = FEED) -> float:
    """What the feed takes of the relief."""
    return float(feed_relief_loss(feed=feed, radius=radius))


def flat(radius: float, relief: float = RELIEF) -> float:
    """The relief of a flat flank along its lip."""
    return float(relief_at_radius(radius=radius, lip_relief=relief, point_angle=A, diameter=D, web=W))


def square(relief: float) -> float:
    """The relief square to the lip."""
    return float(axial_relief(lip_relief=relief, point_angle=A, web_ratio=W / D))


def psi(relief: float) -> float:
    """The chisel edge angle of one flat flank."""
    return float(chisel_edge_angle(lip_relief=relief, point_angle=A, web_ratio=W / D))


def thick(point_angle: float = A, feed: float = FEED) -> float:
    return float(chip_thickness(feed=feed, point_angle=point_angle))


def wide(point_angle: float = A) -> float:
    return float(chip_width(diameter=D, web=W, point_angle=point_angle, chisel_edge_angle=PSI))


def gap(diameter: float) -> float:
    """How far the flank has fallen a little way behind the corner."""
    return float(flank_fall(radius=diameter / 2, relief_at_radius=RELIEF, turn_share=BEHIND))


def least(feed: float, diameter: float, margin: float = 0) -> float:
    return float(least_lip_relief(feed=feed, diameter=diameter, relief_margin=margin))


def n(value: float, decimals: int = 0) -> str:
    """The number as the lesson prints it, without its sign."""
    return f"{abs(value):.{decimals}f}"


RUBS_FROM = float(
    working_relief.solve("radius", working_relief=0, feed=FEED, lip_relief=NEW, point_angle=A, diameter=D, web=W)
)
ROWS = [
    figure
    for place, key, good in zip(PLACES, KEY_AT, GOOD_AT, strict=True)
    for figure in (f"{place:g}", n(key, 1), n(good, 1), n(taken(place), 2))
]

FIGURES: dict[str, list[str]] = {
    "title": ["6", "40"],
    "shop": ["3", n(D), n(W, 1), n(FEED, 1), n(NEW, 1), n(KEY_AT[0], 1)],
    "way": ["5"],
    "way-remarks": ["3"],
    "push": ["4"],
    "push-remarks": ["1", "2", "3"],
    "along": ["5"],
    "along-half": [n(taken(1), 2), n(taken(R), 2)],
    "along-remarks": [n(2 * FEED, 1), "1", n(taken(1, 2 * FEED), 1), n(flat(1), 1)],
    "along-new-remarks": [n(R - RUBS_FROM, 2), "4"],
    "size": ["6"],
    "size-feed": [n(SMALL), n(FEED, 1), n(taken(R, FIFTIETH * D), 2), n(FIFTIETH, 2), n(RELIEF)],
    "size-gap-remarks": [
        *(n(gap(SMALL), 2), n(SMALL), n(gap(D), 2), n(D)),
        *("1/4", n(INCH_FEED, 3), n(MARGIN)),
    ],
    "size-margin": [n(least(INCH_FEED, INCH_DRILL), 2), n(MARGIN)],
    "key": ["7", "3", "4"],
    "key-remarks": [*ROWS, n(WORST)],
    "key-rubs": [n(KEY_AT[0] - taken(R))],
    "key-chisel": [n(BY_THE_KEY.chisel_edge_angle), n(GOOD.chisel_edge_angle), n(180 - GOOD.chisel_edge_angle)],
    "new": ["3"],
    "new-remarks": ["3", "0", n(square(0), 1), n(psi(0), 1), n(TELL_TALE), n(TELL_TALE)],
    "chip": ["7"],
    "chip-area": [n(thick() * wide(), 2)],
    "chip-found": ["90", "135"],
    "chip-drag": [n(INCH_CHIP, 3), n(A), n(thick(feed=INCH_CHIP * INCH) / INCH, 4)],
    "evidence": ["3"],
    "disagree": ["2", n(PRINTED_FEED, 2), n(A), n(PRINTED_CHIP, 1)],
    "disagree-remarks": [n(thick(feed=PRINTED_FEED), 4), n(PRINTED_CHIP, 1), "3", *map(n, PRINTED_RELIEFS), "1"],
    "back": [
        *(n(NEW, 1), n(least(FEED, D), 2), n(KEY_AT[0], 1), n(AT_WORST, 1), n(WORST), n(taken(WORST), 2)),
        "2",  # η = atan(f/(2πr))
    ],
    "next": ["7"],
    "card": [
        *("2", n(taken(R), 2), n(R), n(taken(1), 2), "1", n(RELIEF), n(RELIEF - taken(R), 1)),
        *(n(MARGIN), n(least(FEED, D, MARGIN), 1), "2", n(thick(), 3), n(wide(), 2)),
        *(n(D), n(W, 1), n(A), n(A / 2), n(PSI), n(FEED, 1)),
        *(n(FEED, 1), "90", n(A), "135", *(n(thick(angle), 3) for angle in (90, A, 135))),
        *(n(TELL_TALE), "4.0"),
    ],
}


def test_every_number_in_the_prose_is_accounted_for() -> None:
    assert unaccounted(LESSON, FIGURES) == {}


def test_the_signs_are_as_printed() -> None:
    assert square(0) < 0 and f"−{n(square(0), 1)}°" in prose(LESSON)["new-remarks"]


def test_twice_the_feed_or_half_the_radius_is_twice_the_slope() -> None:
    for radius in (2, 4):
        assert taken(radius, 2 * FEED) == pytest.approx(2 * taken(radius), rel=0.005)
        assert taken(radius / 2) == pytest.approx(2 * taken(radius), rel=0.005)
    assert taken(R / 5) == pytest.approx(5 * taken(R), rel=0.005)


def test_a_feed_that_goes_with_the_size_takes_the_same_at_every_corner() -> None:
    slopes = [least(FIFTIETH * size, size) for size in (1, 2, 10, 25)]
    assert slopes == pytest.approx([math.degrees(math.atan(FIFTIETH / math.pi))] * 4)
    # "The same angle, but a gap of only": the gap goes with the size.
    assert gap(SMALL) / gap(D) == pytest.approx(SMALL / D)


def test_the_printed_feeds_go_with_the_size_as_the_lesson_says() -> None:
    rows = [row for row in look_up("feed") if row.to_diameter]
    shares = [row.high / row.to_diameter for row in rows]
    assert len(shares) > 5 and all(1 / 72 < share < 1 / 40 for share in shares)
    assert min(shares) < FIFTIETH < max(shares)


def test_a_flat_flank_gains_relief_inwards_faster_than_the_feed_takes_it() -> None:
    for feed in (FEED, 2 * FEED):
        left = [flat(radius) - taken(radius, feed) for radius in (5, 4, 3, 2, 1)]
        assert left == sorted(left)


def test_the_new_drill_rubs_at_the_corner_and_soon_behind_it_further_in() -> None:
    assert 0 < NEW < taken(R) and R - 0.1 < RUBS_FROM < R
    ground = GroundPoint(FLUTE, PlaneFlank(point_angle=A, lip_relief=NEW)).inspect()
    assert ground.first_rub(1, feed=FEED) == pytest.approx(0, abs=1e-6)
    inside = ground.first_rub(1, feed=FEED, radius=4)
    assert inside is not None and 2 < inside < 5  # "a few degrees further back"
    assert flat(4, NEW) > taken(4)


def test_the_drill_by_the_key_is_clear_at_the_rim_and_rubs_further_in() -> None:
    assert KEY_AT[:4] == sorted(KEY_AT[:4], reverse=True) and sorted(GOOD_AT) == GOOD_AT
    assert BY_THE_KEY.first_rub(1, feed=FEED, radius=WORST) == pytest.approx(0, abs=1e-6)
    assert taken(WORST) > AT_WORST
    assert all(good > taken(place) for good, place in zip(GOOD_AT, PLACES, strict=True))
    assert all(GOOD.first_rub(1, feed=FEED, radius=radius) is None for radius in (4.99, 3, 2, 1.5))
    # A point of the usual angle with straight lips, but a chisel edge past square on the wrong side.
    assert BY_THE_KEY.point_angle == pytest.approx(A, abs=1) and abs(BY_THE_KEY.lip_bow_1) < 0.1
    assert BY_THE_KEY.chisel_edge_angle < 90 < GOOD.chisel_edge_angle


def test_the_worked_line_uses_what_the_inspector_reads() -> None:
    assert f"relief_at_radius={n(AT_WORST, 2)}, feed={FEED}, radius={WORST}" in code(LESSON)["key-worked"]


def test_a_lip_of_the_good_point_ends_short_of_the_middle_and_one_by_the_key_runs_past_it() -> None:
    # How far along lip 1 the chisel edge begins, counted from the foot of the axis outwards.
    key, good = (GroundPoint(FLUTE, flank).chisel.first[0] for flank in (KEY_FLANK, GOOD_FLANK))
    assert key < 0 < good


def test_the_tell_tale_is_a_flat_flank_with_little_to_give() -> None:
    # Common practice asks for 8° or more at the corner; a chisel edge at 95° has just that.
    needed = float(chisel_edge_angle.solve("lip_relief", chisel_edge_angle=TELL_TALE, point_angle=A, web_ratio=W / D))
    assert 7.5 < needed < 8.5
    assert psi(0) < psi(NEW) < 90 < psi(RELIEF)


def test_a_flatter_point_changes_the_shape_of_the_chip_and_not_its_area() -> None:
    assert thick(90) < thick(A) < thick(135) and wide(90) > wide(A) > wide(135)
    assert thick(135) < 4 / 3 * thick(90) and thick(feed=2 * FEED) == pytest.approx(2 * thick())
    areas = [thick(angle) * wide(angle) for angle in (90, A, 135)]
    assert areas == pytest.approx([areas[0]] * 3)


def test_the_printed_chip_is_ours_rounded() -> None:
    assert round(thick(feed=PRINTED_FEED), 1) == PRINTED_CHIP


def test_the_printed_reliefs_stand_in_the_handbook() -> None:
    ranges = [row for row in look_up("lip_relief") if row.high is not None]
    assert (min(row.low for row in ranges), max(row.high for row in ranges)) == PRINTED_RELIEFS
    assert taken(R) < 1


def test_it_teaches_every_relation_allotted_to_it() -> None:
    shown = "\n".join(code(LESSON).values())
    for name in ("feed_relief_loss", "relief_at_radius", "least_lip_relief", "chip_thickness"):
        assert f"derive({name})" in shown
    assert "work_out(working_relief," in shown and "work_out(chip_width," in shown
