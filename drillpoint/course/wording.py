"""A question in words: its text with the numbers put in, what to give and how exactly, and the worked solution."""

from __future__ import annotations

from collections.abc import Mapping

from drillpoint.course.computing import taken_by
from drillpoint.course.exercise import Entered, Task
from drillpoint.course.faulty import about_fault
from drillpoint.course.filling import filled
from drillpoint.course.numbers import Numbers
from drillpoint.course.planning import held_against
from drillpoint.course.reading import MM_PER_INCH, unit_and_factor, with_unit
from drillpoint.quantities import QUANTITIES, capital
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
    """The text with the numbers put in, and for a drill on the bench its readings."""
    text = filled(task.text, task, numbers.givens)
    if numbers.drill is None:
        return text
    readings = "; ".join(f"{term} {shown}" for term, shown in numbers.drill.printed)
    sound = numbers.drill.sound
    wanted = f"{sound.says}, and a point angle of {QUANTITIES['point_angle'].show(sound.point_angle)} (included)"
    return f"{text} Asked for were {wanted}. Read were: {readings}."


def asks_for(task: Task, numbers: Numbers) -> str:
    """What to give, in which unit, how exactly, and how far off still counts; empty where each box says it."""
    if task.parts or task.enters:
        return ""
    if task.kind == "choice":
        return "Give the letter of the right one."
    if task.kind == "open":
        return "Answer in a few sentences. Your instructor reads and marks them."
    if task.kind == "formula":
        meanings = "; ".join(f"{symbol} = {_meaning(meaning)}" for symbol, meaning in task.names.items())
        functions = f" The functions are {', '.join(task.functions)}." if task.functions else ""
        return f"Give the right-hand side of {task.symbol or '?'} = … in {meanings}. Angles are in degrees.{functions}"
    give = "Answer yes or no, and give" if task.kind == "judgement" else "Give"
    asks = f"{give} the {_quantity_in_digits(task.asked, task.unit, task.decimals, task.called)}. "
    return f"{asks}Up to {_tolerance(task, numbers)} off counts as right."


def asks_to_enter(entered: Entered) -> str:
    """What to enter into one box of a plan."""
    return f"Choose the {_quantity_in_digits(entered.name, entered.unit, entered.decimals)}."


def _quantity_in_digits(name: str, unit: str, decimals: int, called: str = "") -> str:
    convention = f" ({CONVENTIONS[name]})" if name in CONVENTIONS else ""
    places = f"{decimals or 'no'} decimal{'' if decimals == 1 else 's'}"
    return f"{called or QUANTITIES[name].term}{convention} in {_UNIT_WORDS.get(unit, unit)}, to {places}"


def worked_for(task: Task, numbers: Numbers) -> str:
    """The worked solution, from the relation itself."""
    if numbers.drill is not None:
        name, cure = about_fault(numbers.drill.fault)
        return f"{capital(name)}. {cure}"
    if task.enters:
        return _one_that_does(task, numbers)
    if task.kind == "open":
        return "\n".join(criterion.says for criterion in task.rubric)
    if not task.relation:
        return _decided(task, numbers)
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


def _one_that_does(task: Task, numbers: Numbers) -> str:
    """A plan that meets every requirement; others do too."""
    values = {name: given.value for name, given in numbers.givens.items()}
    example = dict(zip((entered.name for entered in task.enters), numbers.right, strict=True))
    shown = ", ".join(f"{QUANTITIES[name].term} {QUANTITIES[name].show(value)}" for name, value in example.items())
    lines = [met.line for met in held_against(task, values, example)]
    return "\n".join([f"One that does, and not the only one: {shown}.", *lines])


def _decided(task: Task, numbers: Numbers) -> str:
    """The true sentence, and the readings that make it so."""
    right = next(text for text, wrong in numbers.options if wrong is None)
    read = (f"{name.replace('_', ' ')}: {numbers.givens[name].shown}" for name in task.measures)
    return "\n".join([right, "Measured on the ground points: " + "; ".join(read) + "."])


def _tolerance(task: Task, numbers: Numbers) -> str:
    if any(given.reading_error for given in task.givens):
        factor = unit_and_factor(task.unit)[1]
        return f"±{with_unit(f'{numbers.tolerance / factor:.2g}', task.unit)} (the reading error is in it)"
    if task.tolerance.percent:
        return f"±{task.tolerance.percent:g} %"
    amount = f"{task.tolerance.last_digit * 10.0**-task.decimals:.{task.decimals + 1}f}"
    return f"±{with_unit(amount.rstrip('0').rstrip('.'), task.unit)}"
