"""The lesson on lips and chisel edge: every number in its prose, its reading level, its cells and its saved outputs.

Numbers: for each cell of prose the figures it must hold, in order. A figure is DERIVED (worked out here from the
relations), CHOSEN (the drill of the lesson, or an example of how to type), or SOURCE (printed in the source named).
"""

import ast
import json
import math
import re
import statistics
from pathlib import Path
from typing import Any

import pytest

from drillpoint.relations import (
    axial_relief,
    chisel_edge_angle,
    chisel_edge_length,
    heel_clearance,
    lip_length,
    point_height,
    relief_at_radius,
)

LESSON = Path(__file__).parents[2] / "notebooks" / "01-lips-and-chisel-edge.ipynb"
NUMBER = re.compile(r"\d+(?:[.,]\d+)*(?:/\d+)?")
INCH = 25.4

# CHOSEN: the drill of the lesson.
D, A, W, PSI, RELIEF = 10, 118, 1.5, 125, 12
U = W / D
HALF = A / 2
PLANE_PSI = float(chisel_edge_angle(point_angle=A, lip_relief=RELIEF, web_ratio=U))

# SOURCE: US Army TC 9-524 and US Navy NAVEDTRA 12204-A, both from memory, as the lesson says.
ARMY_RELIEF, ARMY_CHISEL = ("8", "12"), ("120", "135")
NAVY_RELIEF, NAVY_CHISEL = ("12", "15"), ("125", "135")
# Common practice: what other pages and worksheets ask for.
OTHERS_RELIEF = ("10", "15")


def lip(psi: float, angle: float = A, web: float = W) -> float:
    """The lip length of the lesson's drill with another chisel edge, angle or web."""
    return float(lip_length(diameter=D, point_angle=angle, web=web, chisel_edge_angle=psi))


def height(diameter: float = D, angle: float = A) -> float:
    """The point height of the lesson's drill."""
    return float(point_height(diameter=diameter, point_angle=angle))


def relief_at(radius: float) -> float:
    """The relief of the lesson's drill at a radius."""
    return float(relief_at_radius(radius=radius, diameter=D, web=W, point_angle=A, lip_relief=RELIEF))


WALL_SUM = D / 2 / math.sin(math.radians(HALF))
WEB_OFF = (D - W) / (2 * math.sin(math.radians(HALF)))
UPSIDE_DOWN = D / 2 * math.tan(math.radians(HALF))
NEEDED = float(chisel_edge_angle.solve("lip_relief", chisel_edge_angle=PSI, point_angle=A, web_ratio=U))
CLEAR = float(heel_clearance(point_angle=A, lip_relief=RELIEF, web_ratio=U))
SQUARE = float(axial_relief(lip_relief=RELIEF, point_angle=A, web_ratio=U))
CHISEL = float(chisel_edge_length(web=W, chisel_edge_angle=PSI))


def n(value: float, decimals: int = 0) -> str:
    """The number as the lesson prints it."""
    return f"{value:.{decimals}f}"


def plain(value: float) -> str:
    """A chosen number as the lesson prints it."""
    return f"{value:g}"


MINUTES = {
    "shop": 3,
    "drawing": 5,
    "predict": 6,
    "height": 4,
    "lip": 6,
    "chisel": 3,
    "plane": 5,
    "relief": 3,
    "heel": 3,
}
EACH_QUESTION = 2

FIGURES: dict[str, list[str]] = {
    "title": ["1", "40"],
    "cautions": ["29", "1910.133", "29", "1910.215"],  # SOURCE: the numbers of two rules in the US code
    "shop": ["3", n(D), n(A), plain(W), n(RELIEF), "1", n(WALL_SUM, 2), "2", *ARMY_CHISEL, "3"],
    "drawing": ["5"],
    "pairs": [n(A), n(HALF), n(PSI), n(180 - PSI), "180"],
    "predict": ["6", "1", "2", "3"],
    "predicted": [n(PSI)],
    "height": ["4"],
    "height-remarks": [
        *("0.3", n(A), n(height(), 2), "135", n(height(angle=135), 2), n(UPSIDE_DOWN, 2)),
        *("7/8", n(A), n(height(7 / 8 * INCH) / INCH, 4), n(height(7 / 8 * INCH), 3), plain(INCH)),
    ],
    "lip": ["6", n(HALF), n(WALL_SUM, 2), n(WEB_OFF, 2), n(PSI)],
    "lip-answer": [n(PLANE_PSI, 1), n(lip(PLANE_PSI), 2)],
    "chisel": ["3", plain(W), plain(W)],
    "chisel-remarks": [n(CHISEL, 2)],
    "plane": ["5"],
    "plane-steps": [plain(W), n(D), n(U, 2)],
    "plane-question": [n(PSI)],
    "plane-answer": [n(RELIEF), n(PLANE_PSI, 1), n(PSI), n(NEEDED, 1), n(A), n(RELIEF)],
    "relief": ["3", n(RELIEF)],
    "relief-remarks": [n(relief_at(D / 4), 1), n(relief_at(D / 10), 1)],
    "heel": ["3"],
    "heel-answer": [n(CLEAR, 1)],
    "back": [n(RELIEF), n(RELIEF)],
    "disagree": [
        *("9", "524", *ARMY_RELIEF, *ARMY_CHISEL),
        *("12204", *NAVY_RELIEF, *NAVY_CHISEL),
        *OTHERS_RELIEF,
    ],
    "try": [n(EACH_QUESTION), "3.5", "3,5", "7/8", "3.5"],
    "card": [
        *("2", n(A), n(HALF), "180", n(PSI), n(180 - PSI)),
        *("2", n(height(), 2), "2", "2", "2", n(lip(PSI), 2), n(CHISEL, 2)),
        *("1", n(RELIEF), n(SQUARE, 1), n(RELIEF), n(PLANE_PSI, 1)),
        *(n(D), n(A), plain(W), n(U, 2), n(PSI), "4.0"),
    ],
}


def cells() -> list[dict[str, Any]]:
    """The cells of the lesson."""
    return json.loads(LESSON.read_text(encoding="utf-8"))["cells"]


def prose() -> dict[str, str]:
    """The text of each cell of prose, without HTML tags and superscript signs."""
    found = {cell["id"]: "".join(cell["source"]) for cell in cells() if cell["cell_type"] == "markdown"}
    return {name: re.sub(r"<[^>]*>", "", text) for name, text in found.items()}


def numbers(text: str) -> list[str]:
    """Every number in a text, in order."""
    return NUMBER.findall(text)


@pytest.mark.parametrize("name", sorted(prose()))
def test_every_number_in_the_prose_is_accounted_for(name: str) -> None:
    assert numbers(prose()[name]) == FIGURES.get(name, [])


def test_a_wrong_or_new_number_would_be_noticed() -> None:
    text = prose()["heel-answer"]
    assert numbers(text.replace("40.5", "40.6")) != FIGURES["heel-answer"]
    assert numbers(text + " About 7.") != FIGURES["heel-answer"]


def test_no_figures_are_kept_for_cells_that_are_gone() -> None:
    assert set(FIGURES) <= set(prose())


def test_the_minutes_add_up() -> None:
    questions = [cell for cell in cells() if "".join(cell["source"]).startswith("ask(")]
    total = sum(MINUTES.values()) + EACH_QUESTION * len(questions)
    for name, minutes in MINUTES.items():
        assert f"({minutes} minutes)" in prose()[name]
    # The title rounds to ten minutes.
    assert 35 <= total <= 45


def test_what_the_words_claim() -> None:
    # "about a quarter of a millimetre less", "almost square", "almost as high as the drill is thick".
    assert WALL_SUM - lip(PLANE_PSI) == pytest.approx(0.25, abs=0.01)
    assert 90 < PLANE_PSI < 105
    assert 0.8 * D < UPSIDE_DOWN < D
    # "8° to 12° ... as the manual asks".
    assert int(ARMY_RELIEF[0]) <= RELIEF <= int(ARMY_RELIEF[1])
    # "The shop rule ... at 135° a long way out".
    assert abs(0.3 * D - height()) < 0.01 and 0.3 * D / height(angle=135) > 1.4
    # "too long", "too short".
    assert WEB_OFF < lip(PSI) < WALL_SUM
    # One flat flank cannot give both: within the manuals' relief the chisel edge stays short of what they ask for.
    most = float(chisel_edge_angle(point_angle=A, lip_relief=float(NAVY_RELIEF[1]), web_ratio=U))
    assert most < float(ARMY_CHISEL[0])


def test_the_predictions_hold_on_the_sliders() -> None:
    def psi(relief: float, angle: float = A, web: float = W) -> float:
        return float(chisel_edge_angle(point_angle=angle, lip_relief=relief, web_ratio=web / D))

    lengths = [lip(psi(RELIEF, angle=a), angle=a) for a in range(90, 151, 5)]
    assert lengths == sorted(lengths, reverse=True)
    thicker = [lip(psi(RELIEF, web=w), web=w) for w in (1.0, 1.5, 2.0, 2.5)]
    assert thicker == sorted(thicker, reverse=True)
    swings = [psi(r) for r in range(8, 33, 2)]
    assert swings == sorted(swings)


def test_the_lesson_reads_easily() -> None:
    """Plain words: short sentences on average, and none that is long."""
    lengths = [len(words) for text in prose().values() for words in sentences(text)]
    assert statistics.mean(lengths) < 12
    assert max(lengths) <= 26


def sentences(text: str) -> list[list[str]]:
    """The sentences of a cell as lists of words; table rows and headings are left out."""
    lines = [line for line in text.splitlines() if not line.startswith(("|", "#"))]
    flat = re.sub(r"`[^`]*`|[*_]", "", "\n".join(re.sub(r"^(- |\d\. )", ". ", line) for line in lines))
    found = [re.findall(r"[^\W\d_][\w'’-]*", part) for part in re.split(r"[.!?:](?:\s|$)|\n\n", flat)]
    return [words for words in found if words]


def test_a_long_sentence_would_be_noticed() -> None:
    assert max(len(words) for words in sentences("word " * 40 + ".")) == 40


def test_code_cells_are_one_short_statement() -> None:
    for cell in cells():
        if cell["cell_type"] == "code":
            source = "".join(cell["source"])
            assert len(ast.parse(source).body) == 1
            assert max(len(line) for line in source.splitlines()) <= 72, source


def test_saved_outputs_need_neither_kernel_nor_trust() -> None:
    """Outputs have a text twin and show in a notebook that is not trusted: no SVG, MathML, script, live widget."""
    for cell in cells():
        if cell["cell_type"] != "code" or cell["id"] == "fetch":
            continue
        (output,) = cell["outputs"]
        data = {kind: "".join(shown) for kind, shown in output["data"].items()}
        assert data["text/plain"].strip()
        assert not [kind for kind in data if "widget" in kind]
        if "text/html" in data:
            assert not re.search(r"<(svg|math|script|style)\b", data["text/html"])
            assert re.search(r'<img [^>]*alt="[^"]{20}', data["text/html"]) or "<img" not in data["text/html"]


def test_the_lesson_covers_every_relation_of_its_topic() -> None:
    code = "\n".join("".join(cell["source"]) for cell in cells() if cell["cell_type"] == "code")
    for name in (
        "point_height",
        "lip_length",
        "chisel_edge_length",
        "chisel_edge_angle",
        "relief_at_radius",
        "heel_clearance",
    ):
        assert f"derive({name})" in code
