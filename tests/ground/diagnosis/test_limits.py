"""What is let pass, who says so, and that sources are quoted as the handbook has them."""

from __future__ import annotations

import pytest
from attrs import fields

from drillpoint.errors import OutOfRange, UnknownGiven
from drillpoint.ground import Limits
from drillpoint.ground.diagnosis.limits import usual_limits
from drillpoint.handbook import library


def test_every_limit_says_whose_it_is() -> None:
    names = {a.name for a in fields(Limits)}
    assert set(usual_limits()) == names
    assert all(given.whose and given.because for given in usual_limits().values())
    assert Limits().whose("point_angle") == "common practice"
    assert Limits(point_angle=135).whose("point_angle") == "as asked for here"


@pytest.mark.parametrize("name", [name for name, given in usual_limits().items() if given.table])
def test_a_limit_from_a_source_is_that_of_the_handbook(name: str) -> None:
    # SOURCE: the handbook's tables, with page and how they were seen.
    given = usual_limits()[name]
    rows = list(library.ranges(given.table))
    assert any(given.value in (row.low, row.high) and row.source.lower() in given.whose.lower() for row in rows)


def test_limits_nothing_can_keep_are_refused() -> None:
    with pytest.raises(OutOfRange, match="nothing would pass"):
        Limits(lowest_lip_relief=20, highest_lip_relief=10)
    with pytest.raises(UnknownGiven, match="did you mean 'lowest_lip_relief'"):
        Limits(lowest_lip_releif=20)
