"""The rule has its lines where a rule has them, and the drill reaches as far as it is thick."""

import pytest

from drillpoint.drawing import draw
from drillpoint.errors import LearnerError
from tests.drawing.drills import corners_of
from tests.drawing.shapes import Reading

INCH = 25.4


def scales(read):
    """The lines of the inch scale and of the mm scale: how far along, and how long, in mm."""
    zero = min(x for points in read.shapes("edge") for x, _ in points)
    return [
        [(a[0] - zero, abs(a[1] - b[1])) for a, b in zip(points[::2], points[1::2], strict=True)]
        for points in read.shapes("thin")[:2]
    ]


def test_the_inch_scale_has_every_sixty_fourth_and_the_mm_scale_every_half():
    inches, mm = scales(Reading("rule", diameter=10))
    # DERIVED: 1 1/4 in is 80 of the 64ths, and 32 mm is 64 halves; both fit on the rule.
    assert [x for x, _ in inches] == pytest.approx([n * INCH / 64 for n in range(1, 81)])
    assert [x for x, _ in mm] == pytest.approx([n / 2 for n in range(1, 65)])


def test_the_coarser_the_fraction_the_longer_its_line():
    inches, mm = (
        dict(enumerate((length for _, length in lines), start=1)) for lines in scales(Reading("rule", diameter=10))
    )
    by_halving = [inches[n] for n in (64, 32, 16, 8, 4, 2, 1)]
    assert by_halving == sorted(set(by_halving), reverse=True)
    assert {round(inches[n], 6) for n in range(1, 81, 2)} == {round(inches[1], 6)}
    assert mm[20] > mm[10] > mm[2] > mm[1]
    assert mm[30] == mm[10] and mm[40] == mm[20]


@pytest.mark.parametrize("drill", corners_of("rule"))
def test_the_drill_reaches_from_zero_to_its_thickness(drill):
    read = Reading("rule", **drill)
    (reading,) = read.shapes("hidden")
    near, far = read.shapes("edge")[:2]
    assert reading[0][0] - near[0][0] == pytest.approx(drill["diameter"])
    assert far[0][0] == pytest.approx(reading[0][0])


@pytest.mark.parametrize(
    ("diameter", "units", "said"),
    # DERIVED: 10 mm is 25.197 of the 64ths of 25.4 mm
    [
        (10, "mm", "25.2 of the 64ths, which is 10 mm."),
        (25 / 64 * INCH, "inch", "25 of the 64ths, which is 25/64 in."),
    ],
)
def test_the_words_tell_both_readings(diameter, units, said):
    assert said in draw("rule", diameter=diameter, units=units).alt


def test_a_hidden_reading_leaves_the_lines_to_count():
    shown = draw("rule", diameter=25 / 64 * INCH, hide=["diameter"])
    assert "25 of the 64ths; what that makes is not told" in shown.alt
    assert "9.92" not in shown.svg and "25/64" not in shown.svg


def test_a_drill_that_is_wider_than_the_rule_is_long_is_refused():
    with pytest.raises(LearnerError, match="more than this rule shows"):
        draw("rule", diameter=40)
