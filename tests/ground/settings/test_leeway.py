"""How far a setting may be off: held against the wheel really set so far off."""

from __future__ import annotations

import pytest
from attrs import evolve

from drillpoint.errors import LearnerError, UnknownGiven
from drillpoint.ground.point import GroundPoint
from drillpoint.ground.settings.leeway import USUAL, leeway
from drillpoint.ground.settings.setup import Setup, measured, settings_of
from drillpoint.ground.settings.setups import conical_setup


@pytest.fixture(scope="module")
def cone() -> Setup:
    return conical_setup(
        diameter=10, web=1.5, point_angle=118, lip_relief=12, chisel_edge_angle=125, cone_half_angle=25
    )


SMALL = {"point_angle": 0.2, "lip_relief": 0.2, "chisel_edge_angle": 0.5}


def test_set_so_far_off_one_angle_is_off_by_what_is_allowed_and_none_by_more(cone: Setup) -> None:
    for room in leeway(cone, **SMALL).rows:
        name = room.setting.name
        if name == "flank_turn":  # the drill is then fed anew; `effects` is tested for that
            continue
        flank = evolve(cone.flank, **{name: settings_of(cone.flank)[name] + room.most})
        after = measured(GroundPoint(cone.flute, flank))
        used = {angle: abs(after[angle] - cone.reached[angle]) / SMALL[angle] for angle in SMALL}
        assert used[room.first] == pytest.approx(1, rel=0.05), name
        assert max(used.values()) == used[room.first], name


def test_twice_the_allowance_is_twice_the_room(cone: Setup) -> None:
    once, twice = leeway(cone), leeway(cone, **{name: 2 * value for name, value in USUAL.items()})
    for room in once.rows:
        assert twice[room.setting.name] == pytest.approx(2 * room.most)


def test_it_is_a_table_in_words_and_units(cone: Setup) -> None:
    found = leeway(cone, lip_relief=1)
    shown = found._repr_mimebundle_()
    assert "lip relief angle ±1°" in shown["text/plain"] and "chisel edge angle ±5°" in shown["text/plain"]
    assert f"±{found['skew']:.2f} mm" in shown["text/html"].replace("\N{NO-BREAK SPACE}", " ")
    assert str(found) == shown["text/plain"]


def test_what_makes_no_sense_is_refused(cone: Setup) -> None:
    with pytest.raises(UnknownGiven, match="did you mean 'lip_relief'"):
        leeway(cone, lip_releif=2)
    with pytest.raises(LearnerError, match="leaves no room"):
        leeway(cone, lip_relief=0)
