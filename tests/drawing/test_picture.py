import base64
import re
import xml.etree.ElementTree as ET
from html import escape

import pytest

from drillpoint.drawing import draw
from drillpoint.drawing.picture import side_by_side
from tests.drawing.drills import USUAL

NAMESPACE = "{http://www.w3.org/2000/svg}"


@pytest.mark.parametrize("name", ["end_view", "side_view"])
def test_a_picture_is_well_formed_and_says_what_it_shows(name):
    picture = draw(name, **USUAL)
    root = ET.fromstring(picture.svg)  # noqa: S314  (our own text)
    assert root.get("role") == "img"
    assert root.get("aria-label") == picture.alt == root.findtext(f"{NAMESPACE}desc")
    assert root.findtext(f"{NAMESPACE}title")


def test_the_text_twin_tells_the_numbers_and_their_judgement():
    alt = draw("end_view", diameter=10, point_angle=118, web=1.5, lip_relief=12).alt
    assert "101.6° (obtuse; 78.4° acute), flatter than the usual 120° to 135°" in alt
    assert "blunter than the usual 118°" in draw("side_view", **{**USUAL, "point_angle": 135}).alt


def test_a_picture_saves_as_a_file_that_stands_alone(tmp_path):
    picture = draw("end_view", **USUAL)
    written = picture.save(tmp_path / "spitze größer")
    assert written.suffix == ".svg"
    assert ET.parse(written).getroot().tag == f"{NAMESPACE}svg"  # noqa: S314  (our own text)
    assert picture.save(str(tmp_path / "b.svg")).name == "b.svg"


def test_a_notebook_gets_the_drawing_and_its_words():
    picture = draw("end_view", **USUAL)
    bundle = picture._repr_mimebundle_()
    assert bundle["image/svg+xml"] == picture.svg
    assert bundle["text/plain"] == picture.alt
    encoded = re.search(r"base64,([^\"]+)\"", bundle["text/html"])[1]
    assert base64.b64decode(encoded).decode("utf-8") == picture.svg
    assert escape(picture.alt) in bundle["text/html"]


def test_two_drawings_side_by_side_keep_both():
    both = side_by_side([draw("end_view", **USUAL), draw("side_view", **USUAL)])
    root = ET.fromstring(both.svg)  # noqa: S314  (our own text)
    left, right = root.findall(f"{NAMESPACE}svg")
    assert left.get("x") == "0"
    assert right.get("x") == left.get("width")
    assert draw("side_view", **USUAL).alt in both.alt
