"""An inspection written down says every reading, in both units, and says so when there is none."""

from __future__ import annotations

import re

from drillpoint.ground import FacetedFlank, Flute, GroundPoint, Notch, PlaneFlank
from drillpoint.ground.record import (
    NEVER,
    NOT_THINNED,
    OF_EACH_LIP,
    OF_EACH_THINNED_LIP,
    OF_THE_POINT,
    OF_THE_THINNING,
)
from drillpoint.quantities import quantity

FLUTE = Flute(diameter=10, web=1.5)
PLAIN = GroundPoint(FLUTE, PlaneFlank(point_angle=118, lip_relief=12)).inspect()


def test_every_reading_is_told_with_its_term() -> None:
    said = str(PLAIN).lower()
    for name in (*OF_THE_POINT, *OF_EACH_LIP[1:]):
        assert quantity(name).term.lower() in said
    assert "half angle" in said


def test_lengths_are_told_in_both_units() -> None:
    line = next(line for line in str(PLAIN).splitlines() if line.startswith("Lip length"))
    # DERIVED: L = (√(25 − 0.75²) − 0.75·tan α_x·tan κ)/sin κ on this drill.
    assert re.findall(r"5\.587 mm \(0\.22 in\)", line) == ["5.587 mm (0.22 in)"] * 2


def test_a_flank_that_never_comes_up_again_is_said_to_never_do_so() -> None:
    turned = GroundPoint(FLUTE, FacetedFlank(point_angle=118, lip_relief=12, secondary_relief=45)).inspect()
    assert (turned.heel_clearance is None) == (NEVER in str(turned))
    assert NEVER not in str(PLAIN)


def test_a_notebook_gets_a_table_with_headings() -> None:
    bundle = PLAIN._repr_mimebundle_()
    assert bundle["text/plain"] == str(PLAIN)
    assert bundle["text/html"].count("<tr>") == len(OF_THE_POINT) + len(OF_EACH_LIP) + 1
    assert bundle["text/html"].count('scope="row"') == len(OF_THE_POINT) + len(OF_EACH_LIP)


def test_a_thinned_point_has_its_thinning_told_and_a_side_left_alone_named() -> None:
    notch = Notch(thinned_chisel_length=0.6, thinning_angle=30)
    thinned = GroundPoint(FLUTE, PlaneFlank(point_angle=118, lip_relief=12), thinning_1=notch, thinning_2=None)
    said = str(thinned.inspect())
    for name in (*OF_THE_THINNING, *OF_EACH_THINNED_LIP):
        assert quantity(name).term in said.lower()
    assert said.count(NOT_THINNED) == len(OF_EACH_THINNED_LIP)
    assert NOT_THINNED not in str(PLAIN)
