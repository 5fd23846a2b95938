"""A lesson as its tests see it: cells, the numbers in the prose, sentences, and what every lesson must keep to."""

from __future__ import annotations

import ast
import json
import re
import statistics
from collections.abc import Mapping
from pathlib import Path
from typing import Any

LESSONS = Path(__file__).parents[2] / "notebooks"
NUMBER = re.compile(r"\d+(?:[.,]\d+)*(?:/\d+)?")
LONGEST_LINE = 72
LONGEST_SENTENCE, USUAL_SENTENCE = 26, 12

Cell = dict[str, Any]


def cells(lesson: str) -> list[Cell]:
    """The cells of a lesson, by the name of its file."""
    found: list[Cell] = json.loads((LESSONS / lesson).read_text(encoding="utf-8"))["cells"]
    return found


def source(cell: Cell) -> str:
    """What stands in a cell."""
    return "".join(cell["source"])


def prose(lesson: str) -> dict[str, str]:
    """The text of each cell of prose by the cell's id, without HTML tags and without where links lead."""
    found = {cell["id"]: source(cell) for cell in cells(lesson) if cell["cell_type"] == "markdown"}
    return {name: re.sub(r"<[^>]*>|(?<=\])\([^)]*\)", "", text) for name, text in found.items()}


def code(lesson: str) -> dict[str, str]:
    """The text of each cell of code by the cell's id."""
    return {cell["id"]: source(cell) for cell in cells(lesson) if cell["cell_type"] == "code"}


def numbers(text: str) -> list[str]:
    """Every number in a text, in order."""
    return NUMBER.findall(text)


def sentences(text: str) -> list[list[str]]:
    """The sentences of a cell as lists of words; table rows and headings are left out."""
    lines = [line for line in text.splitlines() if not line.startswith(("|", "#"))]
    flat = re.sub(r"`[^`]*`|[*_]", "", "\n".join(re.sub(r"^(- |\d\. )", ". ", line) for line in lines))
    found = [re.findall(r"[^\W\d_][\w'’-]*", part) for part in re.split(r"[.!?:](?:\s|$)|\n\n", flat)]
    return [words for words in found if words]


def hard_to_read(texts: Mapping[str, str]) -> list[str]:
    """Sentences that are too long for plain words; also a lesson whose sentences are long on average."""
    found = [words for text in texts.values() for words in sentences(text)]
    long = [" ".join(words) for words in found if len(words) > LONGEST_SENTENCE]
    average = statistics.mean(len(words) for words in found)
    return long if average < USUAL_SENTENCE else [*long, f"{average:.1f} words in a sentence"]


def not_short(cell_of_code: str) -> str:
    """Why a cell of code would frighten somebody who does not program; empty when it is one short call."""
    if len(ast.parse(cell_of_code).body) != 1:
        return "more than one statement"
    return "a long line" if max(len(line) for line in cell_of_code.splitlines()) > LONGEST_LINE else ""


def lost_without_a_kernel(cell: Cell) -> list[str]:
    """What of a saved output would be missing in a notebook that is not trusted, or to a screen reader."""
    (output,) = cell["outputs"]
    data = {kind: "".join(shown) for kind, shown in output["data"].items()}
    found = [kind for kind in data if "widget" in kind]
    found += re.findall(r"<(?:svg|math|script|style)\b", data.get("text/html", ""))
    if not data["text/plain"].strip():
        found.append("no text")
    if re.match(r"\(?\w+\(\w+=", data["text/plain"]):
        found.append("an object in place of words")
    if "<img" in data.get("text/html", "") and not re.search(r'<img [^>]*alt="[^"]{20}', data["text/html"]):
        found.append("a picture without words")
    return found


def minutes(lesson: str) -> int:
    """How long a lesson takes, by the minutes in its headings."""
    found = re.findall(r"^##+ .*\((\d+) minutes?\)", "\n".join(prose(lesson).values()), re.MULTILINE)
    return sum(map(int, found))


def unaccounted(lesson: str, figures: Mapping[str, list[str]]) -> dict[str, tuple[list[str], list[str]]]:
    """Cells of prose whose numbers are not the expected ones, in order: what stands there, and what should."""
    texts = prose(lesson)
    names = [*texts, *(name for name in figures if name not in texts)]
    found = {name: (numbers(texts.get(name, "")), figures.get(name, [])) for name in names}
    return {name: pair for name, pair in found.items() if pair[0] != pair[1] or name not in texts}
