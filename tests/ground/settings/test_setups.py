"""From three wanted angles back to the wheel: what comes out when the drill is ground with the setting found."""

from __future__ import annotations

import math
from functools import cache
from typing import Any

import numpy as np
import pytest
from attrs import evolve
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from IPython.lib.pretty import pretty

from drillpoint.errors import MissingGiven, OutOfRange, UnknownGiven
from drillpoint.ground.conical import ConicalFlank
from drillpoint.ground.flute import Flute
from drillpoint.ground.point import GroundPoint
from drillpoint.ground.settings.setup import ANGLES, NoSetup, Setup, settings_of
from drillpoint.ground.settings.setup_effects import effects
from drillpoint.ground.settings.setups import conical_setup, family_of_setups, nearest_setup, plane_setup
from drillpoint.ground.settings.setups_conical import FAMILIES
from drillpoint.ground.stated import CannotBeGround
from drillpoint.relations import chisel_edge_angle

USUAL: dict[str, Any] = {
    "diameter": 10,
    "web_ratio": 0.15,
    "point_angle": 118,
    "lip_relief": 12,
    "chisel_edge_angle": 125,
}


@cache
def usual(**changed: Any) -> Setup:
    """The set-up of the usual drill, with some of its givens changed."""
    return conical_setup(**{**USUAL, "cone_half_angle": 20, **changed})


def by_hand(setup: Setup) -> dict[str, float]:
    """The three angles from heights of the flank alone, by small steps."""
    point, lip = setup.point, setup.point.lips[0]
    corner = lip.at_radius(np.array([setup.flute.radius])).point[0]
    chord = corner - point.chisel.first
    turn = math.atan2(corner[1], corner[0])
    step = 1e-5 * np.array([1.0, -1.0])
    around = lip.own.height(setup.flute.radius * np.cos(turn + step), setup.flute.radius * np.sin(turn + step))
    beside = 1e-5 * setup.flute.radius * np.array([1.0, -1.0])
    in_x, in_y = (lip.own.height(*place) for place in ((beside, 0 * beside), (0 * beside, beside)))
    edge = math.atan2(in_x[1] - in_x[0], in_y[0] - in_y[1])
    return {
        "point_angle": 2 * math.degrees(math.atan2(math.hypot(chord[0], chord[1]), -chord[2])),
        "lip_relief": math.degrees(math.atan((around[0] - around[1]) / (2e-5 * setup.flute.radius))),
        "chisel_edge_angle": 180 - math.degrees(edge - math.atan2(chord[1], chord[0])),
    }


@st.composite
def wanted(draw: st.DrawFn) -> dict[str, Any]:
    """Three angles a cone can have together: the chisel edge is turned further than one plane would turn it."""
    point_angle, relief, ratio = draw(st.floats(90, 150)), draw(st.floats(6, 20)), draw(st.floats(0.1, 0.3))
    plane = 180 - math.degrees(
        math.atan2(
            math.sqrt(1 - ratio**2) / math.tan(math.radians(point_angle / 2)),
            math.tan(math.radians(relief)) - ratio / math.tan(math.radians(point_angle / 2)),
        )
    )
    chisel = draw(st.floats(110, 135))
    assume(chisel > plane + 1)
    return {"web_ratio": ratio, "point_angle": point_angle, "lip_relief": relief, "chisel_edge_angle": chisel}


@settings(max_examples=20)
@given(wanted(), st.floats(10, 40), st.sampled_from(sorted(FAMILIES)), st.sampled_from([0.0, 30.0]))
def test_what_is_asked_is_what_an_inspector_measures(
    angles: dict[str, Any], cone: float, family: str, helix: float
) -> None:
    try:
        found = conical_setup(**{**USUAL, **angles}, cone_half_angle=cone, family=family, helix_angle=helix)
    except NoSetup as none:
        # A narrow or a steep cone has an end; what is named instead can be ground, with point angle and relief kept.
        assert none.nearest is not None
        assert none.nearest.reached["chisel_edge_angle"] < angles["chisel_edge_angle"]
        found, angles = none.nearest, {**angles, "chisel_edge_angle": none.nearest.reached["chisel_edge_angle"]}
    seen = GroundPoint(found.flute, found.flank).inspect()
    assert seen.point_angle == pytest.approx(angles["point_angle"], abs=1e-9)
    assert seen.lip_relief == pytest.approx(angles["lip_relief"], abs=1e-9)
    assert seen.chisel_edge_angle_at_axis == pytest.approx(angles["chisel_edge_angle"], abs=1e-9)
    if family == "lip_on_cone":
        assert seen.lip_bow_1 == pytest.approx(0, abs=1e-9)


@pytest.mark.parametrize("family", FAMILIES)
def test_the_angles_hold_when_taken_from_heights_alone(family: str) -> None:
    found = usual(family=family)
    for name, value in by_hand(found).items():
        assert value == pytest.approx(found.asked[name], abs=1e-6), name


# DERIVED: the four examples follow from the equation of the cone alone, worked out apart from this code, to the digits
# shown: cone half angle, apex distance and skew in half diameters; chisel edge angle and lip relief for a chord at 59°.
EXAMPLES = [(20, 2, 0.25, 121.1, 10.3), (20, 3, 0.4, 122.7, 14.6), (30, 2, 0.4, 121.0, 13.2), (30, 4, 0.4, 106.2, 10.0)]


@pytest.mark.parametrize(("cone", "apex", "skew", "chisel", "relief"), EXAMPLES)
def test_worked_examples_forward_and_back(cone: float, apex: float, skew: float, chisel: float, relief: float) -> None:
    flute = Flute(diameter=10, web_ratio=0.15)

    def ground(tilt: float) -> GroundPoint:
        flank = ConicalFlank(cone_half_angle=cone, cone_tilt=tilt, apex_distance=5 * apex, skew=5 * skew)
        return GroundPoint(flute, flank)

    low, high = 59.0 - cone - 2, 59.0 - cone + 1
    for _ in range(50):
        middle = (low + high) / 2
        low, high = (middle, high) if ground(middle).inspect().point_angle < 118 else (low, middle)
    seen = ground(low).inspect()
    assert seen.chisel_edge_angle_at_axis == pytest.approx(chisel, abs=0.05)
    assert seen.lip_relief == pytest.approx(relief, abs=0.05)
    back = usual(
        cone_half_angle=cone, lip_relief=seen.lip_relief, chisel_edge_angle=seen.chisel_edge_angle_at_axis
    ).flank
    assert isinstance(back, ConicalFlank)
    assert (back.cone_tilt, back.apex_distance, back.skew) == pytest.approx((low, 5 * apex, 5 * skew), rel=1e-6)


def test_the_usual_drill_on_a_cone_of_20_degrees() -> None:
    # DERIVED: to the digits shown, on a straight flute, by solving the equation of the cone apart from this code.
    flank = usual(helix_angle=0).flank
    assert isinstance(flank, ConicalFlank)
    assert flank.cone_tilt == pytest.approx(38.83, abs=0.005)
    assert flank.apex_distance / 5 == pytest.approx(1.979, abs=0.0005)
    assert flank.skew / 5 == pytest.approx(0.283, abs=0.0005)
    assert flank.flank_turn == 0


@pytest.mark.parametrize(("cone", "apex"), [(30, 0.4808), (20, 0.7619)])
def test_where_the_apex_lies_on_the_lip_drawn_on(cone: float, apex: float) -> None:
    # DERIVED: from the tangent planes of a cone along its straight lines, to the digits shown, in diameters.
    flank = usual(cone_half_angle=cone, family="lip_on_cone").flank
    assert isinstance(flank, ConicalFlank)
    turn = math.radians(flank.flank_turn)
    along = flank.apex_distance * math.cos(turn) + flank.skew * math.sin(turn)
    beside = flank.skew * math.cos(turn) - flank.apex_distance * math.sin(turn)
    assert along / 10 == pytest.approx(apex, abs=0.00005)
    assert beside == pytest.approx(0.75, abs=1e-12)


@pytest.mark.parametrize("family", FAMILIES)
def test_three_angles_leave_one_setting_free(family: str) -> None:
    wide = family_of_setups(cone_half_angles=range(10, 41, 5), family=family, **USUAL)
    assert [s.flank.cone_half_angle for s in wide if isinstance(s.flank, ConicalFlank)] == list(range(10, 41, 5))
    for found in wide:
        assert [found.reached[n] for n in ANGLES] == pytest.approx([118, 12, 125], abs=1e-9)
    tilts = [settings_of(s.flank)["cone_tilt"] for s in wide]
    assert sorted(tilts, reverse=True) == tilts and tilts[0] > tilts[-1] + 25


@pytest.mark.parametrize("family", FAMILIES)
def test_along_the_family_the_effects_cancel(family: str) -> None:
    here, step = usual(family=family), 1e-3
    more, less = (settings_of(usual(family=family, cone_half_angle=20 + s).flank) for s in (step, -step))
    names = list(more)
    way = np.array([(more[n] - less[n]) / (2 * step) for n in names])
    table = effects(here)
    by_setting = np.array([[table[n][a] for n in names] for a in ANGLES])
    assert by_setting @ way == pytest.approx(np.zeros(3), abs=1e-5)
    assert np.linalg.norm(by_setting[:, 0] * way[0]) > 1
    # Three angles bind three of the five settings; with the turn or the bow of the lip settled, one stays free.
    sizes = np.linalg.svd(by_setting, compute_uv=False)
    assert len(names) == 5 and sizes.min() > 0.05


@settings(max_examples=8)
@given(st.floats(0.5, 60), st.sampled_from(sorted(FAMILIES)))
def test_size_does_not_matter(diameter: float, family: str) -> None:
    one, other = settings_of(usual(family=family).flank), settings_of(usual(diameter=diameter, family=family).flank)
    for name, value in one.items():
        scale = diameter / 10 if name in ("apex_distance", "skew") else 1.0
        assert other[name] == pytest.approx(value * scale, rel=1e-8, abs=1e-9), name


@pytest.mark.parametrize("family", FAMILIES)
def test_near_the_planes_chisel_edge_the_cone_is_flat(family: str) -> None:
    plane = plane_setup(**{k: v for k, v in USUAL.items() if k != "chisel_edge_angle"})
    edge = plane.reached["chisel_edge_angle"]
    distances, gaps = [], []
    for beyond in (1.0, 0.1, 0.01):
        cone = usual(family=family, chisel_edge_angle=edge + beyond)
        distances.append(settings_of(cone.flank)["apex_distance"])
        x, y = np.array([0.0, 1.0, 3.0, 2.0]), np.array([0.75, 0.2, 0.0, -3.0])
        height, flat = (s.flank.over(s.flute, 1).height(x, y) for s in (cone, plane))
        gaps.append(float(np.abs(height - flat).max()))
    assert distances[1] / distances[0] == pytest.approx(10, rel=0.15)
    assert distances[2] / distances[1] == pytest.approx(10, rel=0.02)
    assert gaps[2] < 0.002 and gaps[1] / gaps[2] == pytest.approx(10, rel=0.2)


def test_a_web_in_mm_and_an_acute_chisel_edge_are_read_alike() -> None:
    one = usual()
    other = conical_setup(
        diameter=10, web=1.5, point_angle=118, lip_relief=12, chisel_edge_angle=55, cone_half_angle=20
    )
    assert other.flank == one.flank
    assert other.asked["chisel_edge_angle"] == 125
    assert any("read as 125°" in note for note in other.notes)


@settings(max_examples=60)
@given(st.floats(8, 45), st.floats(45, 75), st.floats(0.08, 0.3), st.floats(0.3, 20), st.floats(-0.5, 2))
def test_a_cone_turns_the_chisel_edge_further_than_a_plane(
    cone: float, half: float, ratio: float, apex: float, skew: float
) -> None:
    flank = ConicalFlank(cone_half_angle=cone, cone_tilt=half - cone, apex_distance=apex, skew=skew)
    try:
        flute = Flute(diameter=2, web_ratio=ratio, point_angle=2 * half, helix_angle=0, heel_angle=40)
        seen = GroundPoint(flute, flank).inspect()
    except CannotBeGround:
        assume(False)
    assume(seen.lip_relief > 0 and 90 <= seen.point_angle <= 150)
    square = math.tan(math.radians(seen.lip_relief)) - ratio / math.tan(math.radians(seen.point_angle / 2))
    level = math.sqrt(1 - ratio**2) / math.tan(math.radians(seen.point_angle / 2))
    assert seen.chisel_edge_angle_at_axis > 180 - math.degrees(math.atan2(level, square))


def test_less_turn_than_a_plane_gives_is_refused_with_the_plane() -> None:
    with pytest.raises(NoSetup, match=r"one plane .* already has its chisel edge at 101\.6°") as refused:
        usual(chisel_edge_angle=100)
    nearest = refused.value.nearest
    assert nearest is not None and nearest.family == "plane"
    assert nearest.reached["lip_relief"] == pytest.approx(12, abs=1e-9)
    assert nearest.reached["chisel_edge_angle"] == pytest.approx(101.645, abs=0.0005)
    assert nearest.asked["chisel_edge_angle"] == 100


def test_no_nearest_is_made_up_where_even_the_plane_cannot_be_ground() -> None:
    with pytest.raises(NoSetup, match="The plane cannot be ground either") as refused:
        usual(web_ratio=0.3, point_angle=150, lip_relief=40, chisel_edge_angle=120)
    assert refused.value.nearest is None


def test_too_much_turn_is_refused_with_the_nearest_that_can_be_had() -> None:
    with pytest.raises(NoSetup, match=r"bend away before it reaches the lip. The nearest is .* 143") as refused:
        usual(chisel_edge_angle=160)
    nearest = refused.value.nearest
    assert nearest is not None
    assert nearest.reached["point_angle"] == pytest.approx(118, abs=1e-9)
    assert nearest.reached["lip_relief"] == pytest.approx(12, abs=1e-9)
    edge = nearest.reached["chisel_edge_angle"]
    assert usual(chisel_edge_angle=edge).reached["chisel_edge_angle"] == pytest.approx(edge, abs=1e-9)
    with pytest.raises(NoSetup):
        usual(chisel_edge_angle=edge + 0.3)


def test_a_narrow_cone_says_how_far_it_reaches() -> None:
    found = usual(cone_half_angle=10)
    assert found.flute.heel_angle < 75
    assert any(f"reaches {found.flute.heel_angle:g}° round" in note for note in found.notes)
    with pytest.raises(CannotBeGround):
        GroundPoint(evolve(found.flute, heel_angle=found.flute.heel_angle + 1), found.flank)
    with pytest.raises(NoSetup, match="before the heel") as refused:
        usual(cone_half_angle=10, heel_angle=75)
    assert refused.value.nearest is not None
    assert refused.value.nearest.flute.heel_angle == 75


@pytest.mark.parametrize(
    ("changed", "error", "said"),
    [
        ({"webb": 1.5}, UnknownGiven, "did you mean 'web'"),
        ({"family": "skew"}, UnknownGiven, "did you mean 'skewed_axis'"),
        ({"point_angle": 30}, OutOfRange, "probably half"),
        ({"cone_half_angle": 85}, OutOfRange, "outside 0° to 80°"),
        ({"lip_relief": "12"}, OutOfRange, "needs a number"),
        ({"web_ratio": None}, MissingGiven, "web or web_ratio"),
    ],
)
def test_other_refusals(changed: dict[str, Any], error: type[Exception], said: str) -> None:
    with pytest.raises(error, match=said):
        usual(**changed)


def test_numbers_come_by_name_and_none_is_left_out() -> None:
    with pytest.raises(UnknownGiven, match="by name"):
        conical_setup(10)  # type: ignore[call-arg, misc]
    with pytest.raises(MissingGiven, match="cone_half_angle"):
        conical_setup(**USUAL)
    with pytest.raises(MissingGiven, match="lip_relief or chisel_edge_angle"):
        plane_setup(diameter=10, web_ratio=0.15, point_angle=118)


# DERIVED: from tan δ = cot κ / tan α_x and the tie between both reliefs, by hand, to the digits shown.
@pytest.mark.parametrize(("point_angle", "relief", "chisel"), [(118, 12, 101.64), (118, 26.84, 125), (135, 19.23, 125)])
def test_a_plane_has_one_chisel_edge_for_its_relief(point_angle: float, relief: float, chisel: float) -> None:
    drill = {"diameter": 10, "web_ratio": 0.15, "point_angle": point_angle}
    from_relief, from_edge = plane_setup(**drill, lip_relief=relief), plane_setup(**drill, chisel_edge_angle=chisel)
    assert from_relief.reached["chisel_edge_angle"] == pytest.approx(chisel, abs=0.01)
    assert from_edge.reached["lip_relief"] == pytest.approx(relief, abs=0.005)
    assert from_edge.reached["chisel_edge_angle"] == pytest.approx(chisel, abs=1e-9)
    both = plane_setup(**drill, lip_relief=relief, chisel_edge_angle=chisel)
    assert both.reached["lip_relief"] == pytest.approx(relief, abs=1e-9)


@given(st.floats(90, 150), st.floats(6, 20), st.floats(0.1, 0.3))
def test_a_plane_as_asked_is_a_plane_as_measured(point_angle: float, relief: float, ratio: float) -> None:
    edge = float(chisel_edge_angle.unchecked(point_angle=point_angle, axial_relief=relief))
    found = plane_setup(diameter=8, web_ratio=ratio, point_angle=point_angle, chisel_edge_angle=edge)
    seen = found.point.inspect()
    assert settings_of(found.flank)["axial_relief"] == pytest.approx(relief, abs=1e-9)
    assert seen.chisel_edge_angle_at_axis == pytest.approx(edge, abs=1e-9)
    again = plane_setup(diameter=8, web_ratio=ratio, point_angle=point_angle, lip_relief=found.reached["lip_relief"])
    assert settings_of(again.flank)["axial_relief"] == pytest.approx(relief, abs=1e-8)


def test_a_plane_cannot_have_both_at_will() -> None:
    with pytest.raises(NoSetup, match=r"101\.6°, not 125°, which would need a lip relief of 26\.8°") as refused:
        plane_setup(**USUAL)
    assert refused.value.nearest is not None
    assert refused.value.nearest.reached["lip_relief"] == pytest.approx(12, abs=1e-9)


def test_a_family_leaves_out_cones_that_do_not_serve_and_refuses_when_none_does() -> None:
    some = family_of_setups(cone_half_angles=[10, 20], heel_angle=75, **USUAL)
    assert [settings_of(s.flank)["cone_half_angle"] for s in some] == [20]
    with pytest.raises(NoSetup):
        family_of_setups(cone_half_angles=[20, 30], **{**USUAL, "chisel_edge_angle": 95})


def test_a_set_up_prints_what_to_set_in_words_and_units() -> None:
    text = str(usual())
    for said in ("tilt of the grinding cone: 38.83°", "apex distance: 9.9 mm", "lip relief angle 12°"):
        assert said in text


def test_the_nearest_set_up_is_the_set_up_where_there_is_one() -> None:
    assert nearest_setup(**USUAL, cone_half_angle=20) == usual()
    plain = {name: value for name, value in USUAL.items() if name != "chisel_edge_angle"}
    assert nearest_setup(**plain) == plane_setup(**plain)


@pytest.mark.parametrize(("cone", "edge"), [({}, 125), ({"cone_half_angle": 25}, 150), ({"cone_half_angle": 25}, 100)])
def test_where_there_is_none_the_nearest_one_says_so(cone: dict[str, float], edge: float) -> None:
    found = nearest_setup(**{**USUAL, "chisel_edge_angle": edge}, **cone)
    assert "cannot be had together" in found.refused or "not 125°" in found.refused
    assert found.reached["lip_relief"] == pytest.approx(12, abs=1e-9)
    assert abs(found.reached["chisel_edge_angle"] - edge) > 1
    assert found._repr_mimebundle_()["text/plain"].startswith(f"There is no such set-up: {found.refused}. ")


def test_a_family_is_a_table_in_a_notebook() -> None:
    some = family_of_setups(cone_half_angles=[20, 30], **USUAL)
    shown = some._repr_mimebundle_()
    assert "20°" in shown["text/plain"] and "28.71°" in shown["text/html"]  # REGRESSION
    assert shown["text/html"].count("<tr>") == 3
    # IPython asks for the text of a tuple in another way.
    assert pretty(some) == shown["text/plain"]
