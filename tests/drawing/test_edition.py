"""Python and the browser draw the same picture."""

import random
import re
import xml.etree.ElementTree as ET

import pytest

from drillpoint.drawing import draw
from drillpoint.drawing.draw import coordinates, facts, scene
from drillpoint.explorers.script import script
from tests.drawing.drills import corners

DRAW = """
({name, values, units}) => {
  SCRIPT
  const drawing = makeDrawing(scenes[name]);
  drawing.update(values, units, "");
  const shapes = [...drawing.root.children].filter((e) => e.matches("path, text"));
  return {
    coordinates: scenes[name].coordinates(values),
    alt: drawing.root.getAttribute("aria-label"),
    shapes: shapes.map((e) => {
      const attributes = [...e.attributes].map((a) => [a.name, a.value]);
      return [e.tagName, Object.fromEntries(attributes), e.textContent];
    }),
  };
}
"""


def drills():
    """Corners and a hundred drills from anywhere inside the ranges."""
    chance = random.Random(118)
    anywhere = [
        {
            "diameter": chance.uniform(1, 40),
            "point_angle": chance.uniform(60, 150),
            "web_ratio": chance.uniform(0.05, 0.4),
            "chisel_edge_angle": chance.uniform(90.1, 150),
        }
        for _ in range(100)
    ]
    return corners() + anywhere


@pytest.mark.parametrize("name", ["end_view", "side_view"])
def test_the_browser_draws_the_same_picture(browser, name):
    page = browser.new_page()
    function = DRAW.replace("SCRIPT", script())
    for i, drill in enumerate(drills()):
        values, units = facts(**drill), ("mm", "inch")[i % 2]
        drawn = page.evaluate(function, {"name": name, "values": values, "units": units})
        assert drawn["coordinates"] == pytest.approx(coordinates(scene(name), values), abs=1e-9)
        picture = draw(name, units=units, **drill)
        assert drawn["alt"] == picture.alt
        root = ET.fromstring(picture.svg)  # noqa: S314  (our own text)
        own = [(e.tag.split("}")[1], e.attrib, e.text or "") for e in root if e.tag.endswith(("path", "text"))]
        assert len(own) == len(drawn["shapes"])
        for mine, theirs in zip(own, drawn["shapes"], strict=True):
            assert_same(mine, theirs)
    page.close()


def assert_same(mine, theirs):
    """Same element, class, text and numbers; a coordinate on the edge of rounding may differ in its last digit."""
    assert mine[0] == theirs[0]
    assert mine[2] == theirs[2]
    assert mine[1].keys() == theirs[1].keys()
    for name, value in mine[1].items():
        other = theirs[1][name]
        if name in ("d", "x", "y"):
            assert re.sub(r"[-\d.]+", "#", value) == re.sub(r"[-\d.]+", "#", other)
            ours, its = ([float(n) for n in re.findall(r"-?[\d.]+", text)] for text in (value, other))
            assert its == pytest.approx(ours, abs=0.0101)
        else:
            assert value == other
