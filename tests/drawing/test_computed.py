"""A scene of plain numbers, worked out by a function."""

import pytest
from attrs import frozen

from drillpoint.drawing.computed import Computed
from drillpoint.drawing.draw import finished
from drillpoint.drawing.scene import Range, Scene, Sentence
from drillpoint.drawing.working import values_of
from drillpoint.errors import LearnerError


@frozen
class Disc:
    """What is drawn: a disc of so many millimetres."""

    diameter: float


def _lay(sheet, disc):
    scale = 200 / disc.diameter
    sheet.circle("edge", (200, 200), scale * disc.diameter / 2)
    sheet.named((320, 200), "start", "diameter", "Ø{diameter}", "diameter")
    sheet.number("half", disc.diameter / 2, like="radius")
    return {"web": disc.diameter / 8}, sheet.bar((20, 380), 100, scale)


DISC = Computed(
    states=Scene(
        name="disc",
        title="A disc",
        width=400,
        height=400,
        needs=("diameter",),
        ranges=(Range("diameter", 1, 40, 10),),
        words=(Sentence("A disc of {diameter}, {half} from the middle, web {web}."),),
    ),
    kind=Disc,
    make=lambda values: Disc(values["diameter"]),
    lay=_lay,
)


def test_it_is_drawn_from_keywords():
    values = values_of(DISC.states, {"diameter": 12})
    picture = finished(DISC.drawn(DISC.make(values), values), "mm")
    assert picture.alt == "A disc of 12 mm, 6 mm from the middle, web 1.5 mm."
    assert 'd="M 100 200 A 100 100 0 0 1 300 200' in picture.svg
    assert ">5 mm<" in picture.svg  # the scale bar: 83.3 of the frame's 100


def test_it_is_drawn_from_what_was_made_already():
    drawn = DISC.drawn(Disc(16.0), {})
    assert drawn.values == {"web": 2.0}
    assert "web 2 mm" in finished(evolved(drawn), "mm").alt


def evolved(drawn):
    from attrs import evolve

    return evolve(drawn, values={**drawn.values, "diameter": 16.0})


def test_something_else_is_refused():
    with pytest.raises(LearnerError, match="shows a Disc, not float; or give diameter"):
        DISC.drawn(3.0, {})


def test_the_places_stay_the_same_whatever_the_numbers_are():
    first, second = (DISC.drawn(Disc(d), {}).scene.shapes for d in (5.0, 10.0))
    assert first == second
