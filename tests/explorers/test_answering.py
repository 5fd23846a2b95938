"""What Python answers an explorer: a list of numbers for the newest drill, or what is wrong with it."""

import json
import math

import pytest

from drillpoint.drawing.draw import draw, drawn_from, finished, scene
from drillpoint.drawing.working import values_of
from drillpoint.explorers import answering
from drillpoint.explorers.answering import answer
from drillpoint.explorers.cone import CONE
from drillpoint.ground import GroundPoint

NAME = "ground_end_view"


def test_the_first_answer_brings_the_shapes_and_the_next_only_numbers():
    first = answer(CONE, {"asked": 1, "state": CONE.start})
    assert first["asked"] == 1
    assert first["answers"][NAME]["scene"]["shapes"]
    has = {NAME: first["answers"][NAME]["id"]}
    moved = {**CONE.start, "cone_tilt": 35.0}
    second = answer(CONE, {"asked": 2, "state": moved, "has": has})
    assert second["state"] == moved
    assert "scene" not in second["answers"][NAME]
    assert len(json.dumps(second)) < 10_000


def test_the_numbers_are_those_of_the_still_picture():
    sent = answer(CONE, {"state": CONE.start})["answers"][NAME]
    drawn = drawn_from(NAME, values_of(scene(NAME), CONE.start))
    assert sent["coordinates"] == pytest.approx(drawn.coordinates, abs=0.0051)
    assert sent["coordinates"][drawn.scene.bar.scale] == drawn.coordinates[drawn.scene.bar.scale]
    assert finished(drawn, "mm") == draw(NAME, **CONE.start)
    assert sent["values"]["chisel_edge_angle"] == drawn.values["chisel_edge_angle"]


def test_every_number_can_travel(monkeypatch):
    assert all(
        math.isfinite(value) for value in answer(CONE, {"state": CONE.start})["answers"][NAME]["values"].values()
    )
    cut = drawn_from(NAME, values_of(scene(NAME), CONE.start))
    cut.coordinates[3] = math.nan
    monkeypatch.setattr(answering, "drawings", lambda *_: {NAME: cut})
    assert "no place for one of its lines" in answer(CONE, {"state": CONE.start})["problem"]


def test_what_cannot_be_ground_is_said():
    lost = {**CONE.start, "cone_tilt": 30.0, "cone_half_angle": 22.0, "apex_distance": 1.0, "skew": 1.8}
    assert len(answer(CONE, {"asked": 3, "state": lost})["problem"]) > 20
    assert "outside" in answer(CONE, {"state": {**CONE.start, "diameter": -1.0}})["problem"]
    assert "KeyError" in answer(CONE, {"state": {}})["problem"]


def test_two_views_of_one_point_grind_it_once(monkeypatch):
    from attrs import evolve

    from drillpoint.explorers import explorer as explorers

    made = []

    def make(values):
        made.append(values)
        return real.make(values)

    real = answering.computed(NAME)
    counted = evolve(real, make=make)
    monkeypatch.setattr(answering, "computed", lambda _: counted)
    monkeypatch.setattr(explorers, "COMPUTED", (NAME, "another"))
    monkeypatch.setattr(explorers, "scene", lambda _: real.states)
    drawn = answering.drawings(evolve(CONE, scenes=(NAME, "another")), CONE.start, (NAME, "another"))
    assert set(drawn) == {NAME, "another"}
    assert len(made) == 1
    assert isinstance(real.make(made[0]), GroundPoint)
