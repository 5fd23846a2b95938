"""Whether the readings of one drill agree with each other."""

from __future__ import annotations

import operator
from collections.abc import Iterator

from drillpoint.errors import DrillpointError
from drillpoint.ground.diagnosis.case import Case
from drillpoint.ground.diagnosis.readings import Measured
from drillpoint.ground.diagnosis.spoken import said_of
from drillpoint.quantities import quantity
from drillpoint.relations import chisel_edge_angle

# The relations between the lips leave the web out; so much of a height is left to it.
_WEB_SHARE = 0.2
_LEAST_HEIGHT = 0.02
_LEAST_ANGLE = 1.0


def agreements(case: Case) -> Iterator[str]:
    """Sentences on readings that agree or do not, where two of them speak of the same thing."""
    yield from _lips(case)
    yield from _angles(case)
    yield from _relief_and_edge(case)
    yield from _hole(case)


def _lips(case: Case) -> Iterator[str]:
    lengths, heights = case.height_from_lengths, case.height
    if not lengths or not heights:
        return
    signed = case.readings.higher_lip is not None
    opposed = signed and lengths.value * heights.value < 0
    if opposed and abs(lengths.value) > lengths.plus_minus and abs(heights.value) > heights.plus_minus:
        yield (
            "The longer lip also stands ahead of the other. With equal half angles the longer one lies behind: read "
            "the half angles, or look whether the lips were taken for each other."
        )
        return
    one = Measured(abs(lengths.value), lengths.plus_minus)
    other = Measured(abs(heights.value), heights.plus_minus)
    agree = _near(one, other, max(_LEAST_HEIGHT, _WEB_SHARE * max(one.value, other.value)))
    says = f"The lip lengths ask for a height difference of {one.show('lip_height_difference')}; measured was "
    says += f"{other.show('lip_height_difference')}."
    if agree:
        yield f"{says} They agree."
    elif case.half_angles:
        yield f"{says} They do not agree: the half angles differ, the web is off centre, or one reading is wrong."
    else:
        yield f"{says} They do not agree: read both half angles, they are probably unequal."


def _angles(case: Case) -> Iterator[str]:
    whole, both = case.readings.read("point_angle"), case.readings.of_both_half_angles(operator.add)
    if not whole or not both:
        return
    says = f"The half angles add up to {both.show('point_angle')}; the point angle reads {whole.show('point_angle')}."
    agree = _near(both, whole, 0.0)
    yield f"{says} They agree." if agree else f"{says} They do not agree: read them again, with the lips held square."


def _relief_and_edge(case: Case) -> Iterator[str]:
    r, edge = case.readings, case.readings.edge
    if not edge or not r.reliefs or not r.web or not r.diameter:
        return
    reliefs = [m for _, m in r.reliefs]
    mean = sum(m.value for m in reliefs) / len(reliefs)
    error = max(m.plus_minus for m in reliefs)
    try:
        low, plane, high = (
            float(chisel_edge_angle(point_angle=case.angle.value, lip_relief=relief, web_ratio=r.web / r.diameter))
            for relief in (mean - error, mean, mean + error)
        )
    except DrillpointError:
        return
    expected = Measured(plane, max(high - plane, plane - low))
    says = (
        f"On a plane flank a relief of {quantity('lip_relief').show(mean)} at the corner goes with a chisel edge angle "
        f"of {expected.show('chisel_edge_angle')}; read was {edge.show('chisel_edge_angle')}."
    )
    if _near(expected, edge, _LEAST_ANGLE):
        yield f"{says} They agree with one plane flank."
    elif edge.value > plane:
        yield f"{says} So the flank is curved or has a second facet, or one reading is wrong."
    else:
        yield f"{says} So the drill was turned when it was ground, or one reading is wrong."


def _hole(case: Case) -> Iterator[str]:
    hole, diameter = case.readings.read("hole_diameter"), case.readings.read("diameter")
    most = case.most_by_lips
    if not hole or not diameter or most is None:
        return
    wider = hole.value - diameter.value
    error = hole.plus_minus + diameter.plus_minus
    shown = Measured(wider, error).show("oversize")
    if wider - error > most:
        yield (
            f"The hole is {shown} wider than the drill; the lips explain at most {said_of(most)} of that. "
            "Look for run-out, a bent drill or loose work as well."
        )
    else:
        yield f"The hole is {shown} wider than the drill; the lips can explain up to {said_of(most)}."


def _near(one: Measured, other: Measured, slack: float) -> bool:
    return abs(one.value - other.value) <= one.plus_minus + other.plus_minus + slack + 1e-9
