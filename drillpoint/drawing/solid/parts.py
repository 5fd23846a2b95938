"""The parts of a solid: what each is called, and by what it is told from the others without colour."""

from __future__ import annotations

import re

from attrs import frozen


@frozen
class Surface:
    """How a kind of face looks. tone: its grey, 0 to 1. pattern: "", or "dots" or "lines" for what a wheel cut away."""

    tone: float
    pattern: str = ""


@frozen
class Line:
    """How a kind of edge looks. width: pixels at the usual size. ink: which colour. core: a light core runs in it."""

    width: float
    ink: str = "ink"
    core: bool = False


PATTERNS = ("", "dots", "lines")

# Our choice: what cuts is light, what carries chips is dark, and neighbours differ by a tenth of white or more.
SURFACES = {
    "flank": Surface(0.97),
    "primary facet": Surface(0.97),
    "secondary facet": Surface(0.86),
    "margin": Surface(1.0),
    "body": Surface(0.74),
    "flute": Surface(0.6),
    "notch face": Surface(0.84, "dots"),
    "notch corner": Surface(0.84, "dots"),
    "notch floor": Surface(0.9, "lines"),
    "end": Surface(0.64, "lines"),
}
LINES = {
    "edge": Line(1.3),
    "cut": Line(2.0),
    "leading edge": Line(1.8),
    "heel": Line(1.8),
    "lip": Line(4.2, "lip"),
    "thinned lip": Line(4.2, "lip"),
    "chisel edge": Line(4.6, "chisel", core=True),
}
INKS = {"ink": "#1c2733", "lip": "#b5331b", "chisel": "#1b5fa8", "focus": "#1b5fa8", "paper": "#ffffff"}
"""Metal is light in light and dark themes, so its inks stay; lip and chisel edge are those of the flat drawings."""
AMBIENT, LIT = 0.66, 0.34
LIGHT = (-0.36, 0.48, 0.8)
"""Light falls from the upper left over the looker's shoulder: to the right, up, towards the eye."""


def kind_of(name: str) -> str:
    """The kind of a part: its name without the number of its lip."""
    return " ".join(re.sub(r"\d", "", name).split())


_CALLED = {"end": "end of the model"}


def term_of(name: str) -> str:
    """How a part is called to a learner: the trade's word for it."""
    if name.startswith("body "):
        return name.replace("body", "body clearance")
    return _CALLED.get(name, name)
