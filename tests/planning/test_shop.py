"""A shop's choices: whose they are, and which ones make no shop."""

import inspect

import pytest

from drillpoint.errors import OutOfRange, UnknownGiven
from drillpoint.ground.diagnosis.readings import usual_errors
from drillpoint.planning.shop import Shop, usual_choices, usual_points, wear_errors
from drillpoint.quantities import QUANTITIES


def test_every_choice_says_whose_it_is_and_why() -> None:
    for chosen in usual_choices().values():
        assert chosen.whose in ("common practice", "this workbook's own") or chosen.whose.startswith(
            "a secondary source"
        )
        assert len(chosen.because) > 20
    assert all(point.whose.startswith("common practice") for point in usual_points())


def test_every_choice_is_a_keyword_and_a_quantity() -> None:
    keywords = set(inspect.signature(Shop).parameters) - {"self", "flank", "grinds"}
    # The web taper is read off a drill; the shop only knows the usual one.
    assert set(usual_choices()) - {"web_taper"} == keywords
    assert set(usual_choices()) <= set(QUANTITIES)
    for name, chosen in usual_choices().items():
        assert chosen.value in QUANTITIES[name].usual


def test_a_choice_of_ones_own_is_named_so() -> None:
    assert Shop().whose("wear_share") == "this workbook's own"
    assert Shop(wear_share=0.03).whose("wear_share") == "as asked for here"


def test_readings_of_wear_are_none_of_the_point() -> None:
    assert not set(wear_errors()) & set(usual_errors())
    assert all(error > 0 for error in wear_errors().values())


@pytest.mark.parametrize(
    ("given", "error", "says"),
    [
        ({"wear_shore": 0.1}, UnknownGiven, "did you mean 'wear_share'"),
        ({"wear_share": 2}, OutOfRange, "wear_share 2 is outside 0 to 0.5"),
        ({"smallest_diameter": 20}, OutOfRange, "smallest_diameter 20 mm is above largest_diameter 16 mm"),
        ({"sharpest_point": 160}, OutOfRange, "sharpest_point 160° is above flattest_point 150°"),
        ({"flank": "round"}, UnknownGiven, "flank is 'round'; a shop grinds a 'cone' or a 'plane'"),
        ({"grinds": ("cobalt",)}, UnknownGiven, "no drill material 'cobalt'; did you mean 'cobalt steel'"),
    ],
)
def test_what_makes_no_shop_is_refused(given: dict, error: type[Exception], says: str) -> None:
    with pytest.raises(error, match=says.replace("(", r"\(")):
        Shop(**given)
