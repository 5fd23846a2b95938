"""The explorer for drilling through."""

from drillpoint.drawing.showing import describe
from drillpoint.explorers.breakthrough import BREAKTHROUGH


def said(**givens):
    return describe(BREAKTHROUGH.summary, BREAKTHROUGH.values(BREAKTHROUGH.state(**givens)), "mm", frozenset())


def test_thin_work_is_warned_of():
    # DERIVED: 1.5 + 5/tan 59° = 4.504
    assert "clamp the work on a backing piece. From first touch the drill goes 4.5 mm" in said(sheet_thickness=1.5)


def test_thick_work_guides_the_corners():
    assert said(sheet_thickness=6).startswith("The corners are in before the tip is out.")
    # A blunter point is in sooner: 2.07 mm high at 135°, 3 mm at 118°.
    assert said(sheet_thickness=2.5).startswith("The tip is out")
    assert said(sheet_thickness=2.5, point_angle=135).startswith("The corners are in")
