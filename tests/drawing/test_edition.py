"""Python and the browser draw the same picture."""

import re
import xml.etree.ElementTree as ET

import pytest

from drillpoint.drawing import draw
from drillpoint.drawing.catalogue import STATED
from drillpoint.drawing.draw import coordinates, scene
from drillpoint.drawing.svg import SECTIONS
from drillpoint.drawing.working import values_of
from drillpoint.explorers.script import script
from tests.drawing.drills import anywhere_in, corners_of

DRAW = """
({name, drills}) => {
  SCRIPT
  const drawing = makeDrawing(scenes[name]);
  return drills.map(({values, units}) => {
    drawing.update(values, units, "");
    const shapes = [...drawing.root.children].filter((e) => e.matches("path, text") && !e.matches("[display=none]"));
    return {
      coordinates: scenes[name].coordinates(values),
      alt: drawing.root.getAttribute("aria-label"),
      shapes: shapes.map((e) => {
        const attributes = [...e.attributes].map((a) => [a.name, a.value]);
        return [e.tagName, Object.fromEntries(attributes), e.textContent];
      }),
    };
  });
}
"""


@pytest.mark.parametrize("name", STATED)
def test_the_browser_draws_the_same_picture(browser, name):
    drills = corners_of(name) + anywhere_in(name, 40)
    asked = [
        {"values": values_of(scene(name), drill), "units": ("mm", "inch")[i % 2]} for i, drill in enumerate(drills)
    ]
    page = browser.new_page()
    answers = page.evaluate(DRAW.replace("SCRIPT", script()), {"name": name, "drills": asked})
    page.close()
    for drill, question, drawn in zip(drills, asked, answers, strict=True):
        assert drawn["coordinates"] == pytest.approx(coordinates(scene(name), question["values"]), abs=1e-9)
        picture = draw(name, units=question["units"], **drill)
        assert drawn["alt"] == picture.alt
        root = ET.fromstring(picture.svg)  # noqa: S314  (our own text)
        own = [(e.tag.split("}")[1], e.attrib, e.text or "") for e in root if e.tag.endswith(("path", "text"))]
        assert len(own) == len(drawn["shapes"])
        for mine, theirs in zip(own, drawn["shapes"], strict=True):
            assert_same(mine, theirs)


def assert_same(mine, theirs):
    """Same element, class, text and numbers; a coordinate on the edge of rounding may differ in its last digit."""
    assert mine[0] == theirs[0]
    assert mine[2] == theirs[2]
    assert mine[1].keys() == theirs[1].keys()
    # The pattern of cut metal has a name of its own in each place.
    assert ("style" in mine[1]) == (mine[1]["class"] in SECTIONS)
    for name, value in mine[1].items():
        if name == "style":
            continue
        other = theirs[1][name]
        if name in ("d", "x", "y"):
            assert re.sub(r"[-\d.]+", "#", value) == re.sub(r"[-\d.]+", "#", other)
            ours, its = ([float(n) for n in re.findall(r"-?[\d.]+", text)] for text in (value, other))
            assert its == pytest.approx(ours, abs=0.0101)
        else:
            assert value == other
