"""A question in words: its text with the numbers put in, what to give and how exactly, and the worked solution."""

from __future__ import annotations

import re
from collections.abc import Mapping

from drillpoint.course.computing import taken_by
from drillpoint.course.exercise import Task
from drillpoint.course.formula import read_formula
from drillpoint.course.numbers import Numbers
from drillpoint.course.reading import MM_PER_INCH, with_unit
from drillpoint.errors import InstructorError
from drillpoint.quantities import QUANTITIES
from drillpoint.relation import Worked
from drillpoint.relations import BOOK

CONVENTIONS: Mapping[str, str] = {
    "point_angle": "the whole, included angle",
    "chisel_edge_angle": "the obtuse angle, over 90°",
    "lip_relief": "at the outer corner, in the plane that touches the cylinder there",
    "axial_relief": "square to the lip, in a plane parallel to the axis",
}
_UNIT_WORDS = {"in": "inches", "°": "degrees", "": "a plain number", "%": "per cent"}


def text_of(task: Task, numbers: Numbers) -> str:
    """The text with the numbers put in; a placeholder is the name of a given or of a `let` entry."""
    shown = {name: given.shown for name, given in numbers.givens.items()}
    values = {name: given.value for name, given in numbers.givens.items()}
    for name, formula in task.let.items():
        shown[name] = f"{read_formula(formula, tuple(values)).at(values):.6g}"

    def put(match: re.Match[str]) -> str:
        if match.group(1) not in shown:
            known = ", ".join(shown) or "none"
            raise InstructorError(f"task {task.id}: {match.group()} is not a given; known: {known}")
        return shown[match.group(1)]

    return " ".join(re.sub(r"\{([^{}]*)\}", put, task.text).split())


def asks_for(task: Task) -> str:
    """What to give, in which unit, how exactly, and how far off still counts."""
    if task.kind == "choice":
        return "Give the letter of the right one."
    if task.kind == "formula":
        meanings = "; ".join(f"{symbol} = {_meaning(meaning)}" for symbol, meaning in task.names.items())
        return f"Give the right-hand side of {task.symbol or '?'} = … in {meanings}. Angles are in degrees."
    convention = f" ({CONVENTIONS[task.asked]})" if task.asked in CONVENTIONS else ""
    places = f"{task.decimals or 'no'} decimal{'' if task.decimals == 1 else 's'}"
    give = "Answer yes or no, and give" if task.kind == "judgement" else "Give"
    unit = _UNIT_WORDS.get(task.unit, task.unit)
    return (
        f"{give} the {QUANTITIES[task.asked].term}{convention} in {unit}, to {places}. "
        f"Up to {_tolerance(task)} off counts as right."
    )


def worked_for(task: Task, numbers: Numbers) -> str:
    """The worked solution, from the relation itself."""
    relation = BOOK[task.relation]
    if task.kind == "formula":
        middle = {given.name: given.values[len(given.values) // 2].value for given in task.givens}
        return f"{_in_full(relation.worked(**middle), numbers=False)}\nAny formula that gives the same values is right."
    right = numbers.right[0]
    values = taken_by(task, {name: given.value for name, given in numbers.givens.items()})
    if task.asked == relation.result.name:
        worked = _in_full(relation.worked(**values))
        if task.unit != "in":
            return worked
        return f"{worked}\n{QUANTITIES[task.asked].show(right, 4)} = {right / MM_PER_INCH:.{task.decimals + 1}f} in"
    known = QUANTITIES[relation.result.name]
    given = known.show(values.pop(known.name), 4)
    answer = QUANTITIES[task.asked].show(right, task.decimals)
    check = _in_full(relation.worked(**values, **{task.asked: right}))
    return f"{QUANTITIES[task.asked].term} = {answer}: it gives the {known.term} of {given} in the question.\n{check}"


def _in_full(worked: Worked, *, numbers: bool = True) -> str:
    """The formula, what its letters stand for here, and the lines with the numbers put in."""
    if not numbers:
        letters = [line.text.rsplit(" = ", 2)[0] for line in worked.where]
        return worked.formula.text + (f" with {', '.join(letters)}" if letters else "")
    # Hard spaces, so that a narrow page breaks the line between two letters and not inside an equation.
    letters = [line.text.replace(" ", "\u00a0") for line in worked.where]
    where = f"\nwith {', '.join(letters)}" if letters else ""
    return f"{worked.formula.text}{where}\n{worked.text}"


def _meaning(meaning: str) -> str:
    words = meaning.replace("_", " ")
    if meaning in CONVENTIONS:
        return f"the {words} ({CONVENTIONS[meaning]})"
    return f"half the {words.removesuffix('/2')}" if words.endswith("/2") else f"the {words}"


def _tolerance(task: Task) -> str:
    if task.tolerance.percent:
        return f"±{task.tolerance.percent:g} %"
    amount = f"{task.tolerance.last_digit * 10.0**-task.decimals:.{task.decimals + 1}f}"
    return f"±{with_unit(amount.rstrip('0').rstrip('.'), task.unit)}"
