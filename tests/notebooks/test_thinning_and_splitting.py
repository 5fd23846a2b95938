"""The lesson on thinning and splitting: the numbers in its prose, and what its words claim.

Numbers: for each cell of prose the figures it must hold, in order. A figure is DERIVED (worked out here from the
relations or the ground point), CHOSEN (the drills of the lesson), or SOURCE (printed in the source named).
"""

from functools import cache

import pytest

from drillpoint.errors import LearnerError
from drillpoint.ground import ConicalFlank, Flute, GroundPoint, Notch, conical_setup
from drillpoint.ground.thinning import ThinningReadings
from drillpoint.handbook import chisel_factors, look_up
from drillpoint.relations import (
    axial_relief,
    chisel_edge_angle,
    chisel_edge_length,
    length_until_thinning,
    oversize,
    thinned_lip_in_end_view,
    thinned_web,
    thinning_reach,
    thrust_ratio,
    torque_ratio,
    untouched_lip_share,
    web_after_shortening,
)
from tests.notebooks.prose import code, prose, unaccounted

LESSON = "08-thinning-and-splitting.ipynb"
INCH = 25.4

# CHOSEN: the drills of the lesson, how they were thinned, and the limit of an example.
D, A, PSI, NEW_WEB, TAPER, GONE, FEED = 20, 118, 125, 3, 0.02, 40, 0.3
DELTA = 180 - PSI
HALF, SPLIT, NU = 2.3, 0.6, 30
STEEP, FLAT, FLATTEST, LEANING = 50, 18, 15, 15
TO_FIND, FOUND, KEPT, HELD = 2, 33, 0.88, 0.7
SIZES = {"1/4": 0.25, "1/2": 0.5, "7/8": 0.875, "1 1/2": 1.5}  # in
INCH_FEED, LIMIT = 0.008, 0.18
# SOURCE: Machinery's Handbook 31, pp. 1152-1153 (seen): a standard point and a split one, over the diameter.
STANDARD, SPLIT_POINT = 0.18, 0.03
# SOURCE of the claim: a page in the story, made up after what is read here and there.
CLAIM, FALLS_TO = 150, 40


def n(value: float, decimals: int = 0) -> str:
    """The number as the lesson prints it, without its sign."""
    return f"{abs(value):.{decimals}f}"


def plain(value: float) -> str:
    """A chosen number as the lesson prints it."""
    return f"{value:g}"


WEB = float(web_after_shortening(web=NEW_WEB, web_taper=TAPER, length_removed=GONE))
CHISEL_NEW, CHISEL = (float(chisel_edge_length(web=web, chisel_edge_angle=PSI)) for web in (NEW_WEB, WEB))


def share(left: float, angle: float = NU) -> float:
    """What is left of the main lip."""
    return float(
        untouched_lip_share(
            diameter=D, web=WEB, chisel_edge_angle=PSI, thinned_chisel_length=left, thinning_angle=angle
        )
    )


def web_left(left: float, angle: float = NU) -> float:
    """What is left of the web."""
    return float(thinned_web(chisel_edge_angle=PSI, thinned_chisel_length=left, thinning_angle=angle))


def by_table(inches: float) -> float:
    """Thrust of a split point over a standard one, with the factors that the handbook prints."""
    split, standard = chisel_factors(chisel_ratio=SPLIT_POINT), chisel_factors(chisel_ratio=STANDARD)
    return float(
        thrust_ratio(
            diameter=inches * INCH,
            feed=INCH_FEED * INCH,
            thrust_factor=split.thrust_factor,
            chisel_thrust_factor=split.chisel_thrust_factor,
            reference_thrust_factor=standard.thrust_factor,
            reference_chisel_thrust_factor=standard.chisel_thrust_factor,
        )
    )


def by_curve(inches: float, ratio: float) -> float:
    """Thrust with this chisel edge ratio over that of a standard point, with the smooth curve."""
    return float(
        thrust_ratio(diameter=inches * INCH, feed=INCH_FEED * INCH, chisel_ratio=ratio, reference_chisel_ratio=STANDARD)
    )


@cache
def ground(first: Notch, second: Notch | None) -> ThinningReadings:
    """What is read on the drill of the lesson, thinned by these notches."""
    found = GroundPoint(POINT.flute, POINT.flank_1, thinning_1=first, thinning_2=second).inspect().thinning
    assert found is not None
    return found


SETUP = conical_setup(diameter=D, web=WEB, point_angle=A, lip_relief=12, chisel_edge_angle=PSI, cone_half_angle=30)
POINT = SETUP.point
TO_HALF, TO_SPLIT = (Notch(thinned_chisel_length=left, thinning_angle=NU) for left in (HALF, SPLIT))
LEANS = Notch(thinned_chisel_length=HALF, thinning_angle=NU, notch_rake=-LEANING)
PUSHES = POINT.inspect().chisel_edge_rake
LOPSIDED, ONE_SIDE = ground(TO_HALF, TO_SPLIT), ground(TO_HALF, None)
BY_TABLE = {name: by_table(inches) for name, inches in SIZES.items()}
BY_HALF = {name: by_curve(inches, STANDARD / 2) for name, inches in SIZES.items()}
TORQUE = float(torque_ratio(torque_factor=1, reference_torque_factor=1.085))
THINNED_BACK = float(thrust_ratio(diameter=D, feed=FEED, chisel_ratio=HALF / D, reference_chisel_ratio=CHISEL / D))
SQUARE = 22.8  # CHOSEN: what a plane flank has, rounded, with this point angle and chisel edge; tested below

FIGURES: dict[str, list[str]] = {
    "title": ["8", "40", "7"],
    "shop": ["3", n(D), n(A), "1", n(GONE), "2", "3", n(CLAIM)],
    "grown": ["3", n(NEW_WEB), plain(TAPER)],
    "grown-answer": [n(CHISEL_NEW, 2), n(CHISEL, 2), n(CHISEL / D, 3), n(CHISEL_NEW / D, 3), plain(FEED)],
    "what": ["4"],
    "what-remarks": [plain(HALF), n(CHISEL, 2)],
    "what-rake": [n(PUSHES), n(ground(TO_HALF, TO_HALF).mean("middle_rake"))],
    "predict": ["6"],
    "drag": ["1", plain(SPLIT), "2", plain(HALF), "20", "45", "3", n(TO_FIND), plain(KEPT), plain(HELD)],
    "dragged": [n(FOUND)],
    "reach": ["5"],
    "reach-length": [plain(SQUARE), n(PSI), "3", n(ground(TO_HALF, TO_HALF).mean("thinned_lip_length"), 2)],
    "left": ["4"],
    "left-remarks": [
        *(n(NU), n(share(HALF), 3), n(FLATTEST), n(100 * (1 - share(SPLIT, FLATTEST)))),
        *("1", plain(WEB / D), plain(HALF / D)),
    ],
    "far": ["6"],
    "far-steep": [plain(WEB), n(web_left(HALF), 2), n(web_left(SPLIT), 2), n(DELTA), n(DELTA)],
    "far-nothing": [plain(SPLIT), n(STEEP), n(web_left(SPLIT, STEEP), 2)],
    "far-remarks": [n(LEANING), n(ground(LEANS, LEANS).mean("middle_rake"))],
    "thrust": ["5", plain(STANDARD), plain(SPLIT_POINT), "7/8", plain(INCH_FEED)],
    "thrust-remarks": [n(BY_TABLE["7/8"], 3), n(TORQUE, 3)],
    "thrust-rule": ["1/4", "1", "1/2"],
    "thrust-half-remarks": ["0.5", n(BY_HALF["1/4"], 3), n(BY_HALF["1 1/2"], 3)],
    "percent": [n(CLAIM), "3"],
    "percent-answer": [
        *("100", n(CLAIM), "100", "100", n(FALLS_TO), n(100 - FALLS_TO), n(100 * (100 / FALLS_TO - 1))),
    ],
    "percent-remarks": ["30", "60"],
    "both": ["3", "1", "2"],
    "both-remarks": [n(LOPSIDED.point_offset, 2), n(ONE_SIDE.point_offset, 2)],
    "both-guided": [n(float(oversize(point_offset=LOPSIDED.point_offset)), 2)],
    "when": ["2"],
    "when-remarks": [n(web_left(CHISEL_NEW), 2), plain(LIMIT)],
    "back": [plain(WEB), n(CHISEL, 2), n(CHISEL_NEW, 2), n(THINNED_BACK, 3)],
    "next": ["9"],
    "card": [
        *(n(CHISEL, 2), "2", "2", "2"),
        n(
            float(thinning_reach(web=WEB, chisel_edge_angle=PSI, thinned_chisel_length=HALF, thinning_angle=NU)),
            2,
        ),
        *("2", "2"),
        n(
            float(
                thinned_lip_in_end_view(web=WEB, chisel_edge_angle=PSI, thinned_chisel_length=HALF, thinning_angle=NU)
            ),
            2,
        ),
        *(n(web_left(HALF), 2), n(share(HALF), 3)),
        *(n(D), plain(WEB), n(PSI), n(DELTA), plain(HALF), n(NU), plain(INCH_FEED)),
        *(part for name in SIZES for part in name.split()),
        *(n(ratio, 3) for ratio in BY_TABLE.values()),
        *(n(TORQUE, 3) for _ in SIZES),
        *("100", "4.0"),
    ],
}


def test_every_number_in_the_prose_is_accounted_for() -> None:
    assert unaccounted(LESSON, FIGURES) == {}


def test_the_signs_and_fractions_in_words_are_right() -> None:
    assert PUSHES < 0 and f"−{n(PUSHES)}°" in prose(LESSON)["what-rake"]
    assert ground(LEANS, LEANS).mean("middle_rake") < ground(TO_HALF, TO_HALF).mean("middle_rake") < 0
    # "About half", "about a ninth", "more than half of its lip", "half gone", "a twentieth", "a few hundredths".
    assert pytest.approx(0.5, abs=0.01) == HALF / CHISEL
    assert 1 - share(HALF) == pytest.approx(1 / 9, abs=0.01)
    assert share(SPLIT, FLATTEST) < 0.5 and share(SPLIT, FLAT) == pytest.approx(0.5, abs=0.05)
    assert 1 - share(CHISEL_NEW) == pytest.approx(1 / 20, abs=0.005)
    assert all(abs(by_curve(inches, SPLIT_POINT) - by_table(inches)) < 0.02 for inches in SIZES.values())


def test_the_web_of_the_old_drill_grew_as_webs_do() -> None:
    (row,) = look_up("web_taper")
    assert row.high is not None and row.low <= TAPER <= row.high
    # It needs more push than when it was new, and half of its chisel edge brings it below that.
    grown = float(thrust_ratio(diameter=D, feed=FEED, chisel_ratio=CHISEL / D, reference_chisel_ratio=CHISEL_NEW / D))
    assert grown > 1 > grown * THINNED_BACK
    # "How much may be ground off before that?": less than the old drill has lost.
    due = float(length_until_thinning(web_ratio_limit=LIMIT, diameter=D, web=NEW_WEB, web_taper=TAPER))
    assert 0 < due < GONE


def test_thinning_is_a_bargain() -> None:
    angles = [15, 20, 30, 40, 50]
    assert [share(HALF, angle) for angle in angles] == sorted(share(HALF, angle) for angle in angles)
    assert [web_left(HALF, angle) for angle in angles] == sorted(
        (web_left(HALF, angle) for angle in angles), reverse=True
    )
    # Further in: less of the lip, and less web.
    assert share(SPLIT) < share(HALF) and web_left(SPLIT) < web_left(HALF)
    # The answer to the third task, which its neighbours do not both meet.
    assert share(TO_FIND, FOUND) >= KEPT and web_left(TO_FIND, FOUND) > HELD
    assert share(TO_FIND, 30) < KEPT and web_left(TO_FIND, 36) < HELD


def test_thinned_along_the_chisel_edge_nothing_is_left() -> None:
    assert web_left(SPLIT, DELTA - 1e-6) == pytest.approx(0, abs=1e-6)
    with pytest.raises(LearnerError, match="no web is left"):
        web_left(SPLIT, DELTA)


def test_the_solid_of_the_lesson_is_the_drill_of_the_lesson() -> None:
    cone = ConicalFlank(cone_half_angle=30, cone_tilt=28.81, apex_distance=14.57, skew=3.31)
    shown = GroundPoint(Flute(diameter=D, web=WEB), cone).inspect()
    assert (shown.point_angle, shown.lip_relief) == pytest.approx((A, 12), abs=0.1)
    assert shown.chisel_edge_angle_at_axis == pytest.approx(PSI, abs=0.1)


def test_the_formulas_hold_for_the_ground_point_as_well_as_the_lesson_says() -> None:
    read = ground(TO_HALF, TO_HALF)
    # The flank is curved, the formulas' is plane near the chisel edge: they differ by little.
    assert read.thinned_web == pytest.approx(web_left(HALF), abs=0.02)
    assert read.mean("untouched_lip_share") == pytest.approx(share(HALF), abs=0.01)
    # 22.8° square to the lip is what a plane flank has with a chisel edge at 125°.
    square = float(chisel_edge_angle.solve("axial_relief", chisel_edge_angle=PSI, point_angle=A))
    assert square == pytest.approx(SQUARE, abs=0.05)
    # So near the axis; at the corner this drill has far less.
    assert float(axial_relief(lip_relief=12, point_angle=A, web_ratio=WEB / D)) < SQUARE / 2


def test_unequal_thinning_puts_the_chisel_edge_off_the_axis_and_equal_does_not() -> None:
    assert ground(TO_HALF, TO_HALF).point_offset == pytest.approx(0, abs=1e-9)
    assert 0.1 < LOPSIDED.point_offset < ONE_SIDE.point_offset
    first, second = LOPSIDED.lips
    assert first is not None and second is not None
    # "One thinned lip is too short": that of the side that was thinned less.
    assert first.thinned_lip_length < second.thinned_lip_length


def test_what_thinning_saves() -> None:
    ratios = list(BY_TABLE.values())
    assert ratios == sorted(ratios, reverse=True)  # "The larger the drill, the more a split point saves."
    assert all(0.5 < ratio < 1 for ratio in BY_HALF.values())  # "Half away, half the push": never.
    assert all(ratio < TORQUE for ratio in ratios)
    # No less than nothing is left, even of a point without any chisel edge.
    assert all(0 < by_curve(inches, 1e-9) < 1 for inches in SIZES.values())
    assert f"{CLAIM} percent *more*" in " ".join(prose(LESSON)["percent-answer"].split())


def test_the_band_of_the_chisel_edge_s_share_stands_in_the_handbook() -> None:
    rows = look_up("chisel_share")
    assert min(row.low for row in rows) == 30
    assert max(row.high for row in rows if row.high is not None) == 60


def test_it_teaches_every_relation_it_rests_on() -> None:
    shown = "\n".join(code(LESSON).values())
    for name in ("thinning_reach", "untouched_lip_share", "thinned_web", "thrust_ratio"):
        assert f"derive({name})" in shown
    for name in ("thinned_lip_in_end_view", "thinned_lip_length", "untouched_lip_length", "torque_ratio"):
        assert f"work_out({name}" in shown
