import math
import re
import xml.etree.ElementTree as ET

import pytest

from drillpoint.drawing import point_paper
from drillpoint.drawing.paper.format import PAPERS
from drillpoint.relations import point_height
from tests.drawing.paper.printed import pages, paths

NAMESPACE = "{http://www.w3.org/2000/svg}"
EDITIONS = {
    "A4 mm": {},
    "Letter inch": {"paper": "Letter", "units": "inch", "point_angle": 135},
    "A4 steep": {"point_angle": 60, "smallest": 2, "largest": 40},
    "Letter steep inch": {"point_angle": 60, "smallest": 2, "largest": 42, "paper": "Letter", "units": "inch"},
    "A4 flat small": {"point_angle": 179, "smallest": 0.5, "largest": 1, "reliefs": (1,)},
    "A4 inch many": {"smallest": 3.175, "largest": 25.4, "units": "inch"},
}


def printed(browser, paper, folder):
    page = browser.new_page()
    page.goto(paper.save(folder / "paper").as_uri())
    pdf = page.pdf(prefer_css_page_size=True)
    page.close()
    return pdf


@pytest.mark.parametrize("edition", ["A4 mm", "Letter inch"])
def test_what_is_printed_is_true_to_size(browser, tmp_path, edition):
    asked = EDITIONS[edition]
    paper = point_paper(**asked)
    pdf = printed(browser, paper, tmp_path)
    wide, tall = PAPERS[asked.get("paper", "A4")]
    # Chromium rounds the paper to whole points; nothing on it moves by that.
    assert pages(pdf) == [pytest.approx((wide, tall), abs=0.36)]
    drawn = paths(pdf)
    bar = 101.6 if asked.get("units") == "inch" else 100.0  # DERIVED: 4 × 25.4, and 100
    bars = [p for p in drawn if len(p) == 2 and abs(math.dist(*p) - bar) < 0.02]
    level = [p for p in bars if abs(p[0][1] - p[1][1]) < 0.01]
    upright = [p for p in bars if abs(p[0][0] - p[1][0]) < 0.01]
    assert (len(level), len(upright)) == (1, 1)
    angle, largest = asked.get("point_angle", 118), 12.7 if "units" in asked else 13.0
    height = float(point_height(diameter=largest, point_angle=angle))
    strip = max(drawn, key=len)
    tips = [i for i in range(1, len(strip) - 1) if strip[i][1] < min(strip[i - 1][1], strip[i + 1][1]) - 0.2]
    assert len(tips) == 7
    left, tip, right = strip[tips[-1] - 1], strip[tips[-1]], strip[tips[-1] + 1]
    assert abs(right[0] - left[0]) == pytest.approx(largest, abs=0.02)
    assert left[1] - tip[1] == pytest.approx(height, abs=0.02)
    included = 2 * math.degrees(math.atan2(abs(right[0] - left[0]) / 2, (left[1] + right[1]) / 2 - tip[1]))
    assert included == pytest.approx(angle, abs=0.1)


BOXES = """(font) => {
  if (font) document.querySelectorAll("svg text").forEach(t => t.style.fontFamily = font);
  const svg = document.querySelector("svg"), scale = svg.viewBox.baseVal.width / svg.getBoundingClientRect().width;
  return [...svg.querySelectorAll("text")].map(t => {
    const b = t.getBoundingClientRect(), s = svg.getBoundingClientRect(), o = parseFloat(t.getAttribute("font-size"));
    return [t.textContent, (b.left - s.left) * scale, (b.top - s.top) * scale,
      (b.right - s.left) * scale, (b.bottom - s.top) * scale, o];
  });
}"""


@pytest.mark.parametrize("font", ["", "Verdana, 'DejaVu Sans', sans-serif"], ids=["own font", "wide font"])
@pytest.mark.parametrize("edition", EDITIONS)
def test_words_keep_apart_and_on_the_printable_paper(browser, tmp_path, edition, font):
    paper = point_paper(**EDITIONS[edition])
    page = browser.new_page()
    page.goto(paper.save(tmp_path / "paper").as_uri())
    boxes = page.evaluate(BOXES, font)
    page.close()
    wide, tall = PAPERS[EDITIONS[edition].get("paper", "A4")]
    assert len(boxes) > 25
    assert faults(boxes, wide, tall) == []


def test_words_that_touch_or_leave_would_be_noticed():
    boxes = [["a", 20, 20, 40, 24, 3], ["b", 39, 21, 60, 25, 3], ["c", 190, 40, 206, 44, 3]]
    assert len(faults(boxes, 210, 297)) == 2


def faults(boxes, wide, tall):
    """What touches or comes nearer than 6 mm to the edge of the paper."""
    found = [t for t, x0, y0, x1, y1, _ in boxes if x0 < 6 or y0 < 6 or x1 > wide - 6 or y1 > tall - 6]
    for i, (text, x0, y0, x1, y1, size) in enumerate(boxes):
        for other, a0, b0, a1, b1, _ in boxes[i + 1 :]:
            # A line's box is taller than its letters by about a third of their size.
            if min(x1, a1) - max(x0, a0) > 0 and min(y1, b1) - max(y0, b0) > 0.4 * size:
                found.append((text, other))
    return found


def test_it_is_a_page_of_its_own_with_a_text_twin(tmp_path):
    paper = point_paper()
    page = paper.save(tmp_path / "sheet").read_text(encoding="utf-8")
    assert re.search(r"(?:src|href)=", page) is None
    root = ET.fromstring(paper.svg)  # noqa: S314  (our own text)
    assert root.get("role") == "img"
    assert root.get("aria-label") == paper.alt == root.findtext(f"{NAMESPACE}desc")
    assert root.findtext(f"{NAMESPACE}title") == "Point paper for a 118° point, drills 3 mm to 13 mm"
    assert (root.get("width"), root.get("height")) == ("210mm", "297mm")
    for said in ("118°", "3 mm, 4 mm", "120° to 135° (obtuse)", "8°, 12° and 15°", "each 100 mm"):
        assert said in paper.alt
    assert "<img src=" in paper._repr_mimebundle_()["text/html"]
    assert paper.save(tmp_path / "sheet.svg").read_text(encoding="utf-8").startswith("<?xml")


def test_it_warns():
    words = " ".join(re.findall(r">([^<>]+)</text>", point_paper().svg))
    for said in ("out of the machine", "sharp", "eye protection", "no inspection gauge", "instructor", "100 %"):
        assert said in words


def test_it_is_the_same_each_time():
    assert point_paper(units="inch").page == point_paper(units="inch").page
