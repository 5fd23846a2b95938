"""The explorer for rake: from the outer corner in to the chisel edge."""

import re

import pytest
from playwright.sync_api import expect

from drillpoint.drawing.showing import show
from drillpoint.explorers.rake import RAKE
from drillpoint.relations import local_helix, normal_rake


def test_rake_falls_as_the_place_moves_inwards(open_explorer):
    page = open_explorer({"radius": 4.8}, explorer="rake")
    expect(page.get_by_role("status")).to_contain_text("so the face leans back")
    slider = page.get_by_role("slider", name=re.compile("radius of a point"))
    slider.focus()
    page.keyboard.press("Home")
    expect(page.get_by_role("status")).to_contain_text("At radius 2 mm")
    rake = RAKE.values(RAKE.state(radius=2.0))["normal_rake"]
    expect(page.get_by_role("status")).to_contain_text(f"the rake {show('normal_rake', rake, 'mm')}")


def test_its_numbers_are_those_of_the_book():
    known = RAKE.values(RAKE.state(helix_angle=20, radius=3.0))
    helix = float(local_helix(helix_angle=20, radius=3, diameter=10))
    assert known["local_helix"] == pytest.approx(helix)
    rake = normal_rake(local_helix=helix, radius=3, web=1.5, point_angle=118)
    assert known["normal_rake"] == pytest.approx(float(rake))
    assert known["normal_rake"] + known["wedge_angle"] + known["normal_relief"] == pytest.approx(90)
