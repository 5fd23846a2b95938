"""Sizes typed with their unit, in a lesson."""

from __future__ import annotations

from typing import Any

import pytest

import drillpoint.lesson
from drillpoint.errors import LearnerError
from drillpoint.lesson.sizes import taking_sizes

INCH = 25.4


def taken(**givens: Any) -> dict[str, Any]:
    found: dict[str, Any] = taking_sizes(lambda **got: got)(**givens)
    return found


def test_text_is_read_in_the_unit_of_its_quantity_and_numbers_stay() -> None:
    assert taken(diameter="3/8 in", point_angle="59° 30'", web=1.5) == pytest.approx(
        {"diameter": 3 / 8 * INCH, "point_angle": 59.5, "web": 1.5}
    )
    assert taken(feed="0.008 in/rev")["feed"] == pytest.approx(0.008 * INCH)
    assert taken(cutting_speed="80 ft/min")["cutting_speed"] == pytest.approx(80 * 0.3048)
    assert taken(diameter=["1/4 in", 8, "10"])["diameter"] == pytest.approx([INCH / 4, 8, 10])
    # A reading with its error.
    assert taken(web=("1/16 in", 0.05))["web"] == pytest.approx((INCH / 16, 0.05))


def test_what_is_no_quantity_is_left_alone() -> None:
    assert taken(name="3/8 in", units="inch") == {"name": "3/8 in", "units": "inch"}


@pytest.mark.parametrize("typed", ["1,234", "3.5.1", "10 N", "thick", ""])
def test_what_cannot_be_read_is_refused_as_an_answer_is(typed: str) -> None:
    with pytest.raises(LearnerError):
        taken(diameter=typed)


@pytest.mark.parametrize(
    ("name", "args", "in_inches", "in_mm"),
    [
        ("work_out", ("point_height",), {"diameter": "1/2 in"}, {"diameter": 12.7}),
        ("tabulate", ("point_height",), {"diameter": ["1/2 in", "1 in"]}, {"diameter": [12.7, 25.4]}),
        (
            "draw",
            ("hole",),
            {"diameter": "1/2 in", "shoulder_depth": "1 in"},
            {"diameter": 12.7, "shoulder_depth": 25.4},
        ),
        ("plan_regrind", (), {"diameter": "1/2 in", "lip_relief": 12}, {"diameter": 12.7, "lip_relief": 12}),
    ],
)
def test_the_calls_of_a_lesson_take_them(
    name: str, args: tuple[str, ...], in_inches: dict[str, Any], in_mm: dict[str, Any]
) -> None:
    call = getattr(drillpoint.lesson, name)
    assert str(call(*args, point_angle=118, **in_inches)) == str(call(*args, point_angle=118, **in_mm))
    assert call.__doc__
