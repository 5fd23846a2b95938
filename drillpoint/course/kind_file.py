"""Reading what only some kinds of task have: statements, what a plan decides, enters and requires, faults, a rubric."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from attrs import evolve

from drillpoint.course.entries import Place, check_keys, entry, identifier, list_of_texts, one_of
from drillpoint.course.exercise import Criterion, Diagnosis, Entered, Given, GivenValue, Requirement, Statement, Task
from drillpoint.course.faulty import AMOUNT, FAULT, FLANK, KNOWN_FAULTS, readable
from drillpoint.course.given_file import check_unit
from drillpoint.course.grinding import CONE, WANTED
from drillpoint.course.measure_file import checked_formula, measure_from
from drillpoint.course.planning import taken_by_rule
from drillpoint.course.sound_points import SOUND_POINTS
from drillpoint.errors import DrillpointError, InstructorError
from drillpoint.quantities import QUANTITIES
from drillpoint.relations import BOOK

_MOST_OPTIONS = 8
_AMOUNTS = 6


def statement_from(raw: Any, task: Task, where: Place) -> Statement:
    """One sentence to choose, with the formula that decides whether it is true; `answer` is the relation's value."""
    where = where.inside(what="statement")
    check_keys(raw, {"name", "text", "holds", "says"}, where)
    statement = Statement(*(entry(raw, key, str, where) for key in ("name", "text", "holds", "says")))
    checked_formula(statement.holds, (*_names(task), *(("answer",) if task.relation else ())), where)
    return statement


def decided_from(raw: Any, task: Task, where: Place) -> Task:
    """What a plan decides by a letter, as a choice; its points are the share that it has beside the requirements."""
    where = where.inside(what=f"decide {raw['id']}" if isinstance(raw, Mapping) and "id" in raw else "decide")
    check_keys(raw, {"id", "text", "share", "statements"}, where)
    name = identifier(raw, where)
    if name in boxes_of(task):
        raise InstructorError(f"{where.at('id')}: id {name!r} is used twice; every box of a plan needs its own")
    listed = entry(raw, "statements", list, where)
    if not 2 <= len(listed) <= _MOST_OPTIONS:
        raise InstructorError(f"{where.at('statements')}: a decision has 2 to {_MOST_OPTIONS} statements")
    share = float(entry(raw, "share", (int, float), where, 1))
    if share <= 0:
        raise InstructorError(f"{where.at('share')}: share is above 0")
    text = entry(raw, "text", str, where).strip()
    asked = evolve(task, id=name, kind="choice", title="", text=text, hints=(), enters=(), parts=(), points=share)
    said = (statement_from(s, asked, where.inside("statements", n)) for n, s in enumerate(listed))
    return evolve(asked, statements=tuple(said))


def boxes_of(task: Task) -> tuple[str, ...]:
    """What the boxes of a plan are called: those for a letter first, then those for a number."""
    return (*(part.id for part in task.parts), *(entered.box for entered in task.enters))


def entered_from(name: str, raw: Any, task: Task, where: Place) -> Entered:
    """One quantity that the student chooses."""
    where = where.inside(what=f"enter {name}")
    one_of(QUANTITIES, name, "quantity", where)
    check_keys(raw, {"unit", "decimals", "example"}, where)
    if name in _names(task):
        raise InstructorError(f"{where}: {name} is already a given; a plan enters something else")
    unit = entry(raw, "unit", str, where, QUANTITIES[name].unit)
    check_unit(unit, name, where)
    decimals = entry(raw, "decimals", int, where, QUANTITIES[name].decimals)
    if "example" not in raw and name in CONE[1:]:
        return Entered(name, unit, decimals, "")
    example = str(entry(raw, "example", (str, int, float), where))
    checked_formula(example, _names(task), where)
    return Entered(name, unit, decimals, example)


def check_set_up(task: Task, where: Place) -> None:
    """Where the program works an example out, the angles that are wanted must be there."""
    known = {*_names(task), *(entered.name for entered in task.enters)}
    lacking = [name for name in WANTED if name not in known]
    left_out = [entered.name for entered in task.enters if not entered.example]
    if left_out and lacking:
        raise InstructorError(
            f"{where.inside('enter', left_out[0]).at()}: {left_out[0]} has no example, so the set-up of the cone is "
            f"worked out; that needs {' and '.join(lacking)} as a given"
        )


def requirement_from(raw: Any, task: Task, where: Place) -> Requirement:
    """One thing that a plan has to meet."""
    where = where.inside(what="requirement")
    check_keys(raw, {"says", "relation", "formula", "ground", "at_least", "at_most", "share", "source"}, where)
    at_least, at_most = (str(entry(raw, key, (str, int, float), where, "")) for key in ("at_least", "at_most"))
    rule = Requirement(
        entry(raw, "says", str, where).strip().rstrip("."),
        entry(raw, "relation", str, where, ""),
        entry(raw, "formula", str, where, ""),
        at_least,
        at_most,
        float(entry(raw, "share", (int, float), where, 1)),
        entry(raw, "source", str, where, ""),
    )
    if [bool(rule.relation), bool(rule.formula), "ground" in raw].count(True) != 1:
        raise InstructorError(f"{where}: a requirement has either a relation, or a formula, or ground")
    if not (at_least or at_most) or rule.share <= 0:
        raise InstructorError(f"{where}: a requirement has at_least or at_most or both, and its share is above 0")
    names = (*_names(task), *(entered.name for entered in task.enters))
    for formula in (rule.formula, at_least, at_most):
        if formula:
            checked_formula(formula, names, where)
    own = tuple(given.name for given in task.givens if not given.shown_only)
    if "ground" in raw:
        ground_from = (*own, *(entered.name for entered in task.enters))
        return evolve(rule, ground=measure_from(raw["ground"], ground_from, names, where.inside("ground")))
    if rule.relation:
        one_of(BOOK, rule.relation, "relation", where)
        try:
            taken_by_rule(task, rule, own)
        except DrillpointError as error:
            raise InstructorError(f"{where.at('relation')}: {str(error).splitlines()[0]}") from None
    return rule


def diagnosis_from(raw: Mapping[str, Any], task: Task, where: Place) -> Diagnosis:
    """Which faults a drill may have, which readings are printed, and whether the cure is asked for too."""
    faults, readings = list_of_texts(raw, "faults", where), list_of_texts(raw, "readings", where)
    for fault in faults:
        one_of(KNOWN_FAULTS, fault, "fault", where, "faults")
    for reading in readings:
        one_of(readable(), reading, "reading", where, "readings")
    if not 3 <= len(set(faults)) == len(faults) <= _MOST_OPTIONS:
        raise InstructorError(f"{where.at('faults')}: faults lists 3 to {_MOST_OPTIONS} different ones")
    if not readings:
        raise InstructorError(f'{where}: readings is missing; it lists what is printed, such as "lip_length_1"')
    if _names(task) != ("diameter",):
        raise InstructorError(f"{where.at('givens')}: a drill to diagnose has one given, diameter")
    flanks = list_of_texts(raw, "flanks", where) or tuple(SOUND_POINTS)
    for flank in flanks:
        one_of(SOUND_POINTS, flank, "flank", where, "flanks")
    asks_cure = entry(raw, "cure", bool, where, False)
    return Diagnosis(faults, tuple(r for r in readings if r != "diameter"), asks_cure, tuple(dict.fromkeys(flanks)))


def drawn_with(task: Task) -> Task:
    """The same task with what is drawn beside its givens (fault, how far it goes, flanks) and with its questions."""
    if task.diagnosis is None:
        return task
    faults = tuple(GivenValue(float(n), fault) for n, fault in enumerate(task.diagnosis.faults))
    amounts = tuple(GivenValue(n / (_AMOUNTS - 1), "") for n in range(_AMOUNTS))
    flanks = tuple(GivenValue(float(n), flank) for n, flank in enumerate(task.diagnosis.flanks))
    named = ((FAULT, faults), (AMOUNT, amounts), (FLANK, flanks))
    drawn = tuple(Given(name, values, shown_only=True) for name, values in named)
    fault = evolve(task, id=FAULT, kind="choice", title="", text="What is wrong with this drill?", hints=())
    cure = evolve(fault, id="cure", text="What do you grind?")
    asked = [fault, cure] if task.diagnosis.cure else [fault]
    parts = tuple(evolve(part, points=task.points / len(asked), diagnosis=None) for part in asked)
    return evolve(task, givens=(*task.givens, *drawn), parts=parts)


def rubric_from(raw: list[Any], where: Place) -> tuple[Criterion, ...]:
    """What an open answer is marked by: sentences, or tables with says and share."""
    found = []
    for item in raw:
        if isinstance(item, str):
            found.append(Criterion(item))
            continue
        place = where.inside("rubric", what="rubric")
        check_keys(item, {"says", "share"}, place)
        found.append(Criterion(entry(item, "says", str, place), float(entry(item, "share", (int, float), place, 1))))
    if not found or any(criterion.share <= 0 for criterion in found):
        raise InstructorError(f"{where.at('rubric')}: a rubric has at least one point, and shares above 0")
    return tuple(found)


def _names(task: Task) -> tuple[str, ...]:
    return tuple(given.name for given in task.givens)
