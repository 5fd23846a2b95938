"""Reading one task of an exercise file, whatever its kind, and checking what concerns several of its entries."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from attrs import evolve

from drillpoint.course.computing import needed
from drillpoint.course.entries import Place, check_keys, entry, identifier, list_of_texts, one_of, texts
from drillpoint.course.exercise import Figure, Given, SlipRule, Task, Tolerance
from drillpoint.course.formula import check_names
from drillpoint.course.formula_grammar import USUAL_FUNCTIONS
from drillpoint.course.given_file import check_unit, given_from
from drillpoint.course.kind_file import (
    check_set_up,
    decided_from,
    diagnosis_from,
    drawn_with,
    entered_from,
    requirement_from,
    rubric_from,
    statement_from,
)
from drillpoint.course.measure_file import checked_formula, measures_from, with_measured
from drillpoint.course.slips import SLIPS
from drillpoint.errors import DrillpointError, InstructorError
from drillpoint.quantities import QUANTITIES
from drillpoint.relations import BOOK

KINDS = ("number", "choice", "formula", "judgement", "parts", "settings", "plan", "diagnose", "open")
PART_KINDS = ("number", "judgement")
WITH_A_RELATION = ("number", "choice", "formula", "judgement")
MOST_DECIMALS = 8

_COMMON = {"id", "kind", "title", "text", "hints", "points", "let", "givens", "drawing"}
_MEASURED = _COMMON | {"measure"}
_ONE_ANSWER = {"relation", "asked", "called", "unit", "decimals", "tolerance", "slips"}
ENTRIES: Mapping[str, set[str]] = {
    "number": _MEASURED | _ONE_ANSWER,
    "choice": _MEASURED | _ONE_ANSWER | {"statements"},
    "formula": _COMMON | _ONE_ANSWER | {"names", "symbol", "functions"},
    "judgement": _MEASURED | _ONE_ANSWER | {"at_least", "at_most"},
    "parts": _MEASURED | {"parts"},
    "settings": _MEASURED | {"enter", "requirements", "explorer"},
    "plan": _MEASURED | {"enter", "requirements", "decide"},
    "diagnose": _COMMON | {"faults", "readings", "cure", "flanks"},
    "open": _MEASURED | {"rubric"},
}
PART_ENTRIES = _ONE_ANSWER | {"id", "kind", "text", "hints", "points", "carry", "takes", "at_least", "at_most"}


def task_from(raw: Mapping[str, Any], where: Place) -> Task:
    """Read one task; InstructorError says which line is wrong and what would be right."""
    number = where.path[-1]
    named = raw.get("id", number + 1 if isinstance(number, int) else number) if isinstance(raw, Mapping) else number
    where = where.inside(what=f"task {named}")
    check_keys(raw, set().union(*ENTRIES.values()), where)
    task_id = identifier(raw, where)
    kind = one_of(KINDS, entry(raw, "kind", str, where, "number"), "kind", where)
    for key in raw:
        # What of these is misplaced is said more exactly below.
        if key not in ENTRIES[kind] | {"names", "at_least", "at_most"}:
            kinds = " or ".join(other for other in KINDS if key in ENTRIES[other])
            raise InstructorError(f"{where.at(key)}: {key} belongs to kind = {kinds!r}, and this is {kind!r}")
    givens = _givens(raw, where)
    measures = measures_from(entry(raw, "measure", dict, where, {}), givens, where)
    has_relation = kind in WITH_A_RELATION and not (kind == "choice" and measures and "relation" not in raw)
    task = Task(
        id=task_id,
        kind=kind,
        title=entry(raw, "title", str, where),
        text=entry(raw, "text", str, where).strip(),
        **(_one_answer(raw, where) if has_relation else _NO_ANSWER),
        givens=with_measured(givens, measures),
        measures=measures,
        hints=list_of_texts(raw, "hints", where),
        points=float(entry(raw, "points", (int, float), where, 1)),
        let=texts(raw, "let", where),
        names=texts(raw, "names", where),
        symbol=entry(raw, "symbol", str, where, ""),
        functions=list_of_texts(raw, "functions", where),
        figure=_figure_from(entry(raw, "drawing", dict, where, {}), where.inside("drawing", what="drawing")),
        explorer=entry(raw, "explorer", str, where, ""),
        lines=_lines(where),
    )
    _check_task(task, where)
    return _with_its_own(task, raw, where)


def _with_its_own(task: Task, raw: Mapping[str, Any], where: Place) -> Task:
    """Add what only its kind has."""
    if task.kind == "parts":
        return evolve(task, parts=_parts(task, entry(raw, "parts", list, where), where))
    if task.kind == "choice" and ("statements" in raw or not task.relation):
        statements = enumerate(entry(raw, "statements", list, where))
        return evolve(
            task, statements=tuple(statement_from(s, task, where.inside("statements", n)) for n, s in statements)
        )
    if task.kind in ("plan", "settings"):
        enter = entry(raw, "enter", dict, where).items()
        task = evolve(task, enters=tuple(entered_from(n, s, task, where.inside("enter", n)) for n, s in enter))
        for n, decided in enumerate(entry(raw, "decide", list, where, [])):
            place = where.inside("decide", n)
            task = evolve(task, parts=(*task.parts, evolve(decided_from(decided, task, place), lines=_lines(place))))
        check_set_up(task, where)
        rules = enumerate(entry(raw, "requirements", list, where))
        return evolve(
            task, requirements=tuple(requirement_from(r, task, where.inside("requirements", n)) for n, r in rules)
        )
    if task.kind == "diagnose":
        diagnosis = diagnosis_from(raw, task, where)
        return drawn_with(evolve(task, diagnosis=diagnosis))
    if task.kind == "open":
        return evolve(task, rubric=rubric_from(entry(raw, "rubric", list, where), where))
    return task


def _givens(raw: Mapping[str, Any], where: Place) -> tuple[Given, ...]:
    # A question in words needs no numbers.
    table = entry(raw, "givens", dict, where, {}) if raw.get("kind") == "open" else entry(raw, "givens", dict, where)
    givens = tuple(given_from(name, spec, where.inside("givens", name)) for name, spec in table.items())
    names = [given.name for given in givens]
    for place, given in enumerate(givens):
        if given.share_of and given.share_of not in names[:place]:
            line = where.inside("givens", given.name, what=f"given {given.name}")
            raise InstructorError(f"{line.at()}: share_of = {given.share_of!r} is not a given above it")
    return givens


_NO_ANSWER: Mapping[str, Any] = {
    "relation": "", "asked": "", "called": "", "unit": "", "decimals": 0, "tolerance": Tolerance(), "slips": (),
}  # fmt: skip


def _one_answer(raw: Mapping[str, Any], where: Place) -> Mapping[str, Any]:
    """The entries of a task, or a part, that has one answer."""
    relation = BOOK[one_of(BOOK, entry(raw, "relation", str, where), "relation", where)]
    known = sorted({relation.result.name, *relation.accepts})
    asked = one_of(known, entry(raw, "asked", str, where, relation.result.name), "asked", where)
    unit = entry(raw, "unit", str, where, QUANTITIES[asked].unit)
    check_unit(unit, asked, where)
    tolerance = entry(raw, "tolerance", dict, where, {})
    at_least = entry(raw, "at_least", (int, float, type(None)), where, None)
    at_most = entry(raw, "at_most", (int, float, type(None)), where, None)
    if (raw.get("kind") == "judgement") != ((at_least is None) != (at_most is None)):
        line = where.at("at_least" if at_least is not None else "at_most")
        raise InstructorError(f"{line}: a judgement, and only a judgement, has either at_least or at_most")
    return {
        "relation": relation.name,
        "asked": asked,
        "called": entry(raw, "called", str, where, ""),
        "unit": unit,
        "decimals": entry(raw, "decimals", int, where, QUANTITIES[asked].decimals),
        "tolerance": _tolerance_from(tolerance, where),
        "slips": tuple(_slip_from(slip, where) for slip in entry(raw, "slips", list, where, [])),
        "at_least": at_least,
        "at_most": at_most,
    }


def _parts(task: Task, raw: list[Any], where: Place) -> tuple[Task, ...]:
    parts: list[Task] = []
    for number, item in enumerate(raw):
        named = item.get("id", number + 1) if isinstance(item, dict) else number + 1
        parts.append(_part(task, parts, item, where.inside("parts", number, what=f"part {named}")))
    if len(parts) < 2:
        raise InstructorError(f"{where.at('parts')}: a task in parts has at least two [[task.parts]]")
    return tuple(parts)


def _part(task: Task, before: Iterable[Task], raw: Mapping[str, Any], where: Place) -> Task:
    check_keys(raw, PART_ENTRIES, where)
    part_id = identifier(raw, where)
    earlier = {part.id: part for part in before}
    if part_id in earlier:
        raise InstructorError(f"{where.at('id')}: part id {part_id!r} is used twice")
    kind = one_of(PART_KINDS, entry(raw, "kind", str, where, "number"), "kind", where)
    answer = _one_answer(raw, where)
    sources = [one_of(earlier, word, "carry", where) for word in list_of_texts(raw, "carry", where)]
    carries = {earlier[source].asked: source for source in sources}
    names = {given.name for given in task.givens if not given.shown_only}
    takes = tuple(one_of(names, word, "takes", where) for word in list_of_texts(raw, "takes", where))
    taken = _taken(answer, takes or tuple(sorted(names - carries.keys())), tuple(carries), where)
    givens = tuple(evolve(given, shown_only=given.name not in taken) for given in task.givens)
    if clash := carries.keys() & {given.name for given in givens}:
        raise InstructorError(f"{where.at('carry')}: {sorted(clash)[0]} is already a given of this task")
    part = Task(
        id=part_id,
        kind=kind,
        title="",
        text=entry(raw, "text", str, where).strip(),
        **answer,
        givens=(*givens, *(Given(name, ()) for name in carries)),
        hints=list_of_texts(raw, "hints", where),
        points=float(entry(raw, "points", (int, float), where, 1)),
        let=task.let,
        carries=carries,
        lines=_lines(where),
    )
    _check_task(part, where)
    return part


def _taken(answer: Mapping[str, Any], names: tuple[str, ...], carried: tuple[str, ...], where: Place) -> set[str]:
    """What the relation of a part takes, of the task's givens and of what earlier parts gave."""
    relation = BOOK[answer["relation"]]
    known = tuple(name for name in (*carried, *names) if name != answer["asked"])
    inverse = answer["asked"] != relation.result.name
    try:
        taken = set(needed(relation, (*known, *((answer["asked"],) if inverse else ())), (*carried, answer["asked"])))
    except DrillpointError as error:
        raise InstructorError(f"{where.at('relation')}: {str(error).splitlines()[0]}") from None
    if unused := set(carried) - taken:
        raise InstructorError(f"{where.at('carry')}: {relation.name} does not need {sorted(unused)[0]}")
    return (taken - {answer["asked"]}) | ({relation.result.name} if inverse else set())


def _check_task(task: Task, where: Place) -> None:
    """Check what concerns several entries at once."""
    if (task.kind == "formula") != bool(task.names):
        raise InstructorError(
            f'{where.at("names")}: a formula, and only a formula, has names, such as names = {{ D = "diameter" }}'
        )
    if not 0 <= task.decimals <= MOST_DECIMALS or task.points < 0:
        line = where.at("points" if task.points < 0 else "decimals")
        raise InstructorError(f"{line}: decimals go from 0 to {MOST_DECIMALS}, and points are not negative")
    names = [given.name for given in task.givens]
    formulas = [
        *((text, "let") for text in task.let.values()),
        *((text, "names") for text in task.names.values()),
        *((rule.formula, "slips") for rule in task.slips if rule.formula),
    ]
    try:
        check_names(task.names, task.functions or USUAL_FUNCTIONS)
    except InstructorError as error:
        raise InstructorError(f"{where.at('names')}, names: {error}") from None
    for formula, key in formulas:
        checked_formula(formula, names, where.at(key))


def _lines(where: Place) -> Mapping[str, int]:
    """The line of the task, under "", and of each entry; of a list of tables it is the first one's."""
    depth = len(where.path)
    found = {"": where.line()}
    for path, line in where.lines.items():
        if path[:depth] == where.path and len(path) > depth:
            found.setdefault(str(path[depth]), line)
    return found


def _tolerance_from(raw: Mapping[str, Any], where: Place) -> Tolerance:
    check_keys(raw, {"last_digit", "percent"}, where.inside("tolerance", what="tolerance"))
    if len(raw) > 1 or any(not isinstance(v, (int, float)) or not 0 < v <= 20 for v in raw.values()):
        raise InstructorError(
            f"{where.at('tolerance')}: tolerance is {{ last_digit = 2 }} or {{ percent = 0.5 }}, above 0 and at most 20"
        )
    return Tolerance(**raw) if raw else Tolerance()


def _slip_from(raw: Any, where: Place) -> SlipRule:
    if isinstance(raw, str):
        return SlipRule(one_of(SLIPS, raw, "slip", where, "slips"))
    where = where.inside("slips", what="slip")
    if not isinstance(raw, dict):
        raise InstructorError(f"{where}: a slip is a name, or a table with name, formula and says")
    check_keys(raw, {"name", "formula", "says"}, where)
    return SlipRule(*(entry(raw, key, str, where) for key in ("name", "formula", "says")))


def _figure_from(raw: Mapping[str, Any], where: Place) -> Figure | None:
    if not raw:
        return None
    from drillpoint.drawing.catalogue import COMPUTED, STATED

    check_keys(raw, {"view", "hide"}, where)
    return Figure(
        one_of((*STATED, *COMPUTED), entry(raw, "view", str, where), "view", where), list_of_texts(raw, "hide", where)
    )
