"""A relation written out with numbers, line by line, as on a blackboard."""

from __future__ import annotations

import html
from collections.abc import Mapping

from attrs import frozen

from drillpoint.quantities import QUANTITIES, plain_number, unit_suffix

GIVEN_DECIMALS = 4


@frozen
class Line:
    """One line: what the letters stand for, then the formula with the numbers put in."""

    text: str
    latex: str


@frozen
class Worked:
    """A worked result.

    formula: the relation in letters. where: what each letter is, here. lines: the numbers put in; more than one where a
    given had to be worked out first (a web ratio from a web and a diameter, say). notes: as on the value itself.
    """

    formula: Line
    where: tuple[Line, ...]
    lines: tuple[Line, ...]
    notes: tuple[str, ...] = ()

    @property
    def text(self) -> str:
        """The lines with the numbers put in, as plain text."""
        return "\n".join(line.text for line in self.lines)

    @property
    def latex(self) -> str:
        """The lines with the numbers put in, as LaTeX (without dollar signs)."""
        if len(self.lines) == 1:
            return self.lines[0].latex
        return r"\begin{gathered}" + r" \\ ".join(line.latex for line in self.lines) + r"\end{gathered}"

    def __str__(self) -> str:
        return self.text

    def _repr_latex_(self) -> str:
        return f"$\\displaystyle {self.latex}$"

    def _repr_html_(self) -> str:
        notes = "".join(f"<p>{html.escape(note)}</p>" for note in self.notes)
        return f"<p>$\\displaystyle {self.latex}$</p>{notes}"


def shown(number: float, angle: bool) -> str:
    """A given as it stands inside a worked line: plain, with the degree sign if it is an angle."""
    return plain_number(number, GIVEN_DECIMALS) + ("°" if angle else "")


def shown_latex(number: float, angle: bool) -> str:
    """The same for LaTeX."""
    return plain_number(number, GIVEN_DECIMALS) + (r"^{\circ}" if angle else "")


def result_text(name: str, number: float) -> str:
    """The result with its unit, rounded as usual for its quantity."""
    return QUANTITIES[name].show(number)


def result_latex(name: str, number: float) -> str:
    """The same for LaTeX."""
    q = QUANTITIES[name]
    suffix = {"°": r"^{\circ}", "": ""}.get(q.unit, rf"\,\mathrm{{{unit_suffix(q.unit).strip()}}}")
    return plain_number(number, q.decimals) + suffix


def spelled(values: Mapping[str, float], angles: frozenset[str], latex: bool) -> dict[str, str]:
    """Every value spelled for filling a template."""
    spell = shown_latex if latex else shown
    return {name: spell(number, name in angles) for name, number in values.items()}
