"""The sound points that faulty drills are made of: each meets every usual limit, at every size."""

import pytest

from drillpoint.course.sound_points import SOUND_POINTS, WEB_SHARE
from drillpoint.ground import Flute, GroundPoint, Limits, Readings, find_faults


@pytest.mark.parametrize("diameter", [3.0, 10.0, 25.0])
@pytest.mark.parametrize("name", SOUND_POINTS)
def test_it_is_sound(name: str, diameter: float) -> None:
    sound = SOUND_POINTS[name]
    flank = sound.flank(diameter, point_angle=sound.point_angle, lip_relief=sound.lip_relief, flank_height=0.0)
    drill = Flute(diameter=diameter, web=WEB_SHARE * diameter, point_angle=sound.point_angle)
    read = GroundPoint(drill, flank).inspect()
    # DERIVED: what the inspection measures on it, against what was asked for.
    assert read.point_angle == pytest.approx(sound.point_angle, abs=0.01)
    assert read.lip_relief == pytest.approx(sound.lip_relief, abs=0.01)
    report = find_faults(Readings.of(read, feed=0.02 * diameter), limits=Limits(point_angle=sound.point_angle))
    assert report.faults == () == report.undecided


def test_they_differ_in_more_than_words() -> None:
    """Facets and cones have their chisel edge where a plane of the same angle and relief could not have it."""
    assert len({type(sound.flank(10.0, 118, 12, 0.0)) for sound in SOUND_POINTS.values()}) == len(SOUND_POINTS)
    assert len({sound.says for sound in SOUND_POINTS.values()}) == len(SOUND_POINTS)
    drill = Flute(diameter=10, web=1.5)
    edges = {n: GroundPoint(drill, s.flank(10.0, 118, 12, 0.0)).inspect() for n, s in SOUND_POINTS.items()}
    # DERIVED: 101.6° is what one plane gives there.
    assert edges["plane"].chisel_edge_angle == pytest.approx(101.64, abs=0.01)
    assert all(edges[name].chisel_edge_angle > 120 for name in ("cone", "facets"))
