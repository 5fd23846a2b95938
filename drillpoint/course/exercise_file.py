"""Reading a set of exercises from its TOML file, and saying exactly what is wrong with it if something is."""

from __future__ import annotations

import difflib
import re
import tomllib
from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import Any

from attrs import fields

from drillpoint.course.exercise import ExerciseSet, Figure, Given, GivenValue, SlipRule, Task, Tolerance
from drillpoint.course.formula import check_names, read_formula
from drillpoint.course.reading import ReadingError, read_number, unit_and_factor, with_unit
from drillpoint.course.slips import SLIPS
from drillpoint.errors import InstructorError
from drillpoint.quantities import QUANTITIES
from drillpoint.relations import BOOK

KINDS = ("number", "choice", "formula", "judgement")
MOST_VALUES = 1000
MOST_DECIMALS = 8
IDENTIFIER = re.compile(r"[a-z0-9][a-z0-9-]{0,39}")


def exercise_folders() -> list[Path]:
    """Where sets are looked for: an `exercises` folder here, beside the package, or inside it."""
    package = Path(__file__).resolve().parents[1]
    candidates = [Path.cwd() / "exercises", package.parent / "exercises", package / "_shipped" / "exercises"]
    return [folder for folder in dict.fromkeys(candidates) if folder.is_dir()]


def find_set(name: str) -> Path:
    """Find the file of a set by its name (`lips`, `practice/lips`) or by the path of its TOML file."""
    if name.endswith(".toml"):
        if Path(name).is_file():
            return Path(name)
        raise InstructorError(
            f"there is no file {name}; give the name of a set ({_known_sets()}) or the path of its file"
        )
    if all(IDENTIFIER.fullmatch(part) for part in name.split("/")):
        for folder in exercise_folders():
            if (path := folder / f"{name}.toml").is_file():
                return path
    raise InstructorError(f"set {name!r} is not known; known here: {_known_sets()}")


def _known_sets() -> str:
    return ", ".join(sorted({path.stem for folder in exercise_folders() for path in folder.glob("*.toml")})) or "none"


def load_set(name: str | Path) -> ExerciseSet:
    """Read a set by name or path and check everything in it that can be checked without drawing numbers."""
    path = name if isinstance(name, Path) else find_set(name)
    try:
        raw = tomllib.loads(path.read_text(encoding="utf-8-sig"))
    except OSError as error:
        raise InstructorError(
            f"{path} cannot be read: {error.strerror}; check the name and that it may be opened"
        ) from None
    except UnicodeDecodeError:
        raise InstructorError(f"{path} is not UTF-8 text; save it as UTF-8") from None
    except tomllib.TOMLDecodeError as error:
        raise InstructorError(f"{path} is not valid TOML: {error}; look at quotes and brackets in that line") from None
    return _set_from(raw, str(path))


def _set_from(raw: Mapping[str, Any], where: str) -> ExerciseSet:
    _check_keys(raw, {"set", "title", "course", "version", "about", "task"}, where)
    tasks = _entry(raw, "task", list, where)
    set_id = _entry(raw, "set", str, where)
    if not IDENTIFIER.fullmatch(set_id):
        raise InstructorError(f"{where}: set = {set_id!r} may hold small letters, digits and hyphens, 40 at most")
    exercise_set = ExerciseSet(
        set_id,
        _entry(raw, "title", str, where),
        _entry(raw, "course", str, where),
        _entry(raw, "version", int, where),
        tuple(
            _task_from(task, f"{where}, task {task.get('id', number)}") for number, task in enumerate(tasks, start=1)
        ),
        _entry(raw, "about", str, where, ""),
    )
    ids = [task.id for task in exercise_set.tasks]
    if doubled := sorted({i for i in ids if ids.count(i) > 1}):
        raise InstructorError(f"{where}: task id {doubled[0]!r} is used twice; every task needs its own")
    return exercise_set


def _task_from(raw: Mapping[str, Any], where: str) -> Task:
    _check_keys(raw, {f.name for f in fields(Task)} - {"figure"} | {"drawing"}, where)
    task_id = _entry(raw, "id", str, where)
    if not IDENTIFIER.fullmatch(task_id) or task_id.isdigit():
        raise InstructorError(f"{where}: id {task_id!r} may hold small letters, digits and hyphens, not digits only")
    kind = _one_of(KINDS, _entry(raw, "kind", str, where, "number"), "kind", where)
    relation = BOOK[_one_of(BOOK, _entry(raw, "relation", str, where), "relation", where)]
    known = sorted({relation.result.name, *relation.accepts})
    asked = _one_of(known, _entry(raw, "asked", str, where, relation.result.name), "asked", where)
    unit = _entry(raw, "unit", str, where, QUANTITIES[asked].unit)
    _check_unit(unit, asked, where)
    task = Task(
        id=task_id,
        kind=kind,
        title=_entry(raw, "title", str, where),
        text=_entry(raw, "text", str, where).strip(),
        relation=relation.name,
        asked=asked,
        unit=unit,
        decimals=_entry(raw, "decimals", int, where, QUANTITIES[asked].decimals),
        tolerance=_tolerance_from(_entry(raw, "tolerance", dict, where, {}), where),
        givens=tuple(_given_from(g, spec, where) for g, spec in _entry(raw, "givens", dict, where).items()),
        slips=tuple(_slip_from(slip, where) for slip in _entry(raw, "slips", list, where, [])),
        hints=tuple(str(hint) for hint in _entry(raw, "hints", list, where, [])),
        points=float(_entry(raw, "points", (int, float), where, 1)),
        let=_texts(raw, "let", where),
        names=_texts(raw, "names", where),
        symbol=_entry(raw, "symbol", str, where, ""),
        at_least=_entry(raw, "at_least", (int, float, type(None)), where, None),
        at_most=_entry(raw, "at_most", (int, float, type(None)), where, None),
        figure=_figure_from(_entry(raw, "drawing", dict, where, {}), where),
    )
    _check_task(task, where)
    return task


def _check_task(task: Task, where: str) -> None:
    """Check what concerns several entries at once."""
    if (task.kind == "judgement") != ((task.at_least is None) != (task.at_most is None)):
        raise InstructorError(f"{where}: a judgement, and only a judgement, has either at_least or at_most")
    if (task.kind == "formula") != bool(task.names):
        raise InstructorError(
            f'{where}: a formula, and only a formula, has names, such as names = {{ D = "diameter" }}'
        )
    if not 0 <= task.decimals <= MOST_DECIMALS or task.points < 0:
        raise InstructorError(f"{where}: decimals go from 0 to {MOST_DECIMALS}, and points are not negative")
    names = [given.name for given in task.givens]
    for place, given in enumerate(task.givens):
        if given.share_of and given.share_of not in names[:place]:
            raise InstructorError(f"{where}, given {given.name}: share_of = {given.share_of!r} is not a given above it")
    formulas = [*task.let.values(), *task.names.values(), *(rule.formula for rule in task.slips if rule.formula)]
    try:
        check_names(task.names)
    except InstructorError as error:
        raise InstructorError(f"{where}, names: {error}") from None
    for formula in formulas:
        try:
            read_formula(formula, names)
        except ReadingError as error:
            raise error.in_file(f"{where}, formula {formula!r}") from None


def _one_of(known: Iterable[str], word: str, what: str, where: str) -> str:
    known = list(known)
    if word in known:
        return word
    raise InstructorError(f"{where}: {what} {word!r} is not known{_nearest(word, known)}; known are {', '.join(known)}")


def _check_unit(unit: str, name: str, where: str) -> None:
    kept_in = QUANTITIES[name].unit
    if unit_and_factor(unit)[0] != kept_in:
        raise InstructorError(f"{where}: unit {unit!r} does not suit {name}, which is kept in {kept_in or 'no unit'}")


def _given_from(name: str, spec: Any, where: str) -> Given:
    where = f"{where}, given {name}"
    _one_of(QUANTITIES, name, "quantity", where)
    if not isinstance(spec, dict):
        spec = {"choose": spec if isinstance(spec, list) else [spec]}
    _check_keys(spec, {"choose", "from", "to", "step", "unit", "share_of", "shown_only"}, where)
    unit = _entry(spec, "unit", str, where, QUANTITIES[name].unit)
    _check_unit(unit, name, where)
    share_of = _entry(spec, "share_of", str, where, "")
    if "choose" in spec:
        numbers = _entry(spec, "choose", list, where)
    else:
        low, high, step = (_entry(spec, key, (int, float), where) for key in ("from", "to", "step"))
        numbers = _range(low, high, step, where)
    values = tuple(_given_value(number, "" if share_of else unit, where) for number in numbers)
    if not values:
        raise InstructorError(f"{where}: there is no value to choose from")
    step = float(_entry(spec, "step", (int, float), where, 0.1)) if share_of else 0.0
    if share_of and step <= 0:
        raise InstructorError(f"{where}: step = {step} is not above 0")
    return Given(name, values, share_of, step, _entry(spec, "shown_only", bool, where, False))


def _range(low: float, high: float, step: float, where: str) -> list[float]:
    if step <= 0 or high < low or (high - low) / step > MOST_VALUES:
        raise InstructorError(
            f"{where}: from {low} to {high} in steps of {step} is not a range of 1 to {MOST_VALUES} values"
        )
    return [round(low + k * step, 9) for k in range(int((high - low) / step + 1e-9) + 1)]


def _given_value(number: Any, unit: str, where: str) -> GivenValue:
    """A given is a plain number in its unit, or text as a shop writes it ("7/8 in")."""
    if isinstance(number, bool) or not isinstance(number, (int, float, str)):
        raise InstructorError(f'{where}: {number!r} is neither a number nor text such as "7/8 in"')
    try:
        reading = read_number(number if isinstance(number, str) else f"{number:.10g}", unit)
    except ReadingError as error:
        raise error.in_file(where) from None
    return GivenValue(reading.value, with_unit(reading.number, reading.typed_unit))


def _tolerance_from(raw: Mapping[str, Any], where: str) -> Tolerance:
    _check_keys(raw, {"last_digit", "percent"}, f"{where}, tolerance")
    if len(raw) > 1 or any(not isinstance(v, (int, float)) or not 0 < v <= 20 for v in raw.values()):
        raise InstructorError(
            f"{where}: tolerance is {{ last_digit = 2 }} or {{ percent = 0.5 }}, above 0 and at most 20"
        )
    return Tolerance(**raw) if raw else Tolerance()


def _slip_from(raw: Any, where: str) -> SlipRule:
    if isinstance(raw, str):
        return SlipRule(_one_of(SLIPS, raw, "slip", where))
    if not isinstance(raw, dict):
        raise InstructorError(f"{where}: a slip is a name, or a table with name, formula and says")
    _check_keys(raw, {"name", "formula", "says"}, f"{where}, slip")
    return SlipRule(*(_entry(raw, key, str, f"{where}, slip") for key in ("name", "formula", "says")))


def _figure_from(raw: Mapping[str, Any], where: str) -> Figure | None:
    if not raw:
        return None
    _check_keys(raw, {"view", "hide"}, f"{where}, drawing")
    return Figure(_entry(raw, "view", str, where), tuple(_entry(raw, "hide", list, where, [])))


def _texts(raw: Mapping[str, Any], key: str, where: str) -> Mapping[str, str]:
    table: dict[str, str] = _entry(raw, key, dict, where, {})
    if any(not isinstance(text, str) for text in table.values()):
        raise InstructorError(f"{where}: every entry of {key} is text in quotes")
    return table


_MISSING = object()
_TYPE_WORDS = {
    bool: "true or false",
    str: "text in quotes",
    int: "a whole number",
    list: "a list in [ ]",
    dict: "a table in { }",
}


def _entry(raw: Mapping[str, Any], key: str, kind: Any, where: str, default: Any = _MISSING) -> Any:
    value = raw.get(key, default)
    if value is _MISSING:
        raise InstructorError(f"{where}: {key} is missing")
    if not isinstance(value, kind) or (isinstance(value, bool) and kind is not bool):
        raise InstructorError(f"{where}: {key} = {value!r} is not {_TYPE_WORDS.get(kind, 'a number')}")
    return value


def _check_keys(raw: Any, allowed: set[str], where: str) -> None:
    if not isinstance(raw, Mapping):
        raise InstructorError(f"{where}: a table is expected here, not {raw!r}")
    for key in raw:
        if key not in allowed:
            raise InstructorError(
                f"{where}: {key!r} is not known here{_nearest(key, allowed)}; known: {', '.join(sorted(allowed))}"
            )


def _nearest(word: str, known: Any) -> str:
    close = difflib.get_close_matches(word, list(known), 1, 0.6)
    return f" (did you mean {close[0]!r}?)" if close else ""
