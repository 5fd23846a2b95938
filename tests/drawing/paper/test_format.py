import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.drawing.paper.format import MOST_SIZES, Format, size_steps
from drillpoint.drawing.paper.point_paper import point_paper
from drillpoint.errors import LearnerError


@pytest.mark.parametrize(
    ("smallest", "largest", "units", "sizes"),
    [
        # DERIVED: whole multiples of the finest round step that leaves at most eight sizes
        (3, 13, "mm", (3, 4, 6, 8, 10, 12, 13)),
        (1, 3, "mm", (1, 1.5, 2, 2.5, 3)),
        (5, 5, "mm", (5,)),
        (25.4 / 8, 12.7, "inch", tuple(25.4 / 16 * i for i in range(2, 9))),
    ],
)
def test_sizes_go_in_round_steps(smallest, largest, units, sizes):
    assert size_steps(smallest, largest, units, 186) == pytest.approx(sizes)


@given(st.floats(0.5, 20), st.floats(0, 25), st.sampled_from(["mm", "inch"]))
def test_sizes_rise_from_end_to_end_and_go_on_the_strip(smallest, more, units):
    sizes = size_steps(smallest, smallest + more, units, 186)
    assert list(sizes) == sorted(set(sizes))
    assert (sizes[0], sizes[-1]) == (smallest, smallest + more)
    assert len(sizes) <= MOST_SIZES
    assert sum(Format.room(size) for size in sizes) <= 186


@pytest.mark.parametrize(
    ("changes", "says"),
    [
        ({"smallest": 8, "largest": 5}, "run backwards"),
        ({"largest": 60}, "smaller largest size"),
        ({"point_angle": 59}, "whole, 118°"),
        ({"paper": "A5"}, "did you mean 'A4'"),
        ({"units": "cm"}, "units='mm'"),
        ({"reliefs": ()}, "one to three"),
        ({"reliefs": (8, 9, 10, 11)}, "one to three"),
        ({"reliefs": (0,)}, "one to three"),
        ({"reliefs": (30,)}, "one to three"),
        ({"web_ratio": 2}, "web_ratio"),
    ],
)
def test_what_makes_no_sheet_is_refused(changes, says):
    with pytest.raises(LearnerError, match=says):
        point_paper(**changes)
