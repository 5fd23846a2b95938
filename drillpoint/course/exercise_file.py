"""Reading a set of exercises from its TOML file, and saying exactly what is wrong with it if something is."""

from __future__ import annotations

import difflib
import re
import tomllib
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from attrs import fields

from drillpoint.course.exercise import ExerciseSet, Figure, Given, GivenValue, SlipRule, Task, Tolerance
from drillpoint.course.reading import ReadingError, read_number, unit_and_factor, with_unit
from drillpoint.course.slips import SLIPS
from drillpoint.errors import InstructorError
from drillpoint.quantities import QUANTITIES
from drillpoint.relations import BOOK

KINDS = ("number", "choice", "formula", "judgement")
MOST_VALUES = 1000
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
        raise InstructorError(
            f"{where}: id {task_id!r} may hold small letters, digits and hyphens and is not a number only"
        )
    kind = _entry(raw, "kind", str, where, "number")
    if kind not in KINDS:
        raise InstructorError(
            f"{where}: kind {kind!r} is not known; kinds are {', '.join(KINDS)}{_nearest(kind, KINDS)}"
        )
    name = _entry(raw, "relation", str, where)
    if name not in BOOK:
        raise InstructorError(
            f"{where}: relation {name!r} is not in the book{_nearest(name, BOOK)}; it has {', '.join(BOOK)}"
        )
    relation = BOOK[name]
    asked = _entry(raw, "asked", str, where, relation.result.name)
    known = {relation.result.name, *relation.accepts}
    if asked not in known:
        raise InstructorError(
            f"{where}: {name} does not know {asked!r}{_nearest(asked, known)}; it knows {', '.join(sorted(known))}"
        )
    unit = _entry(raw, "unit", str, where, QUANTITIES[asked].unit)
    if unit_and_factor(unit)[0] != QUANTITIES[asked].unit:
        raise InstructorError(
            f"{where}: unit {unit!r} does not suit {asked}, which is kept in {QUANTITIES[asked].unit or 'no unit'}"
        )
    limits = [raw.get("at_least"), raw.get("at_most")]
    if (kind == "judgement") != (sum(limit is not None for limit in limits) == 1):
        raise InstructorError(f"{where}: a judgement, and only a judgement, has either at_least or at_most")
    givens = tuple(_given_from(g, spec, where) for g, spec in _entry(raw, "givens", dict, where).items())
    names = _texts(raw, "names", where)
    if (kind == "formula") != bool(names):
        raise InstructorError(
            f'{where}: a formula, and only a formula, has names, such as names = {{ D = "diameter" }}'
        )
    return Task(
        task_id,
        kind,
        _entry(raw, "title", str, where),
        _entry(raw, "text", str, where).strip(),
        name,
        asked,
        unit,
        _entry(raw, "decimals", int, where, QUANTITIES[asked].decimals),
        _tolerance_from(_entry(raw, "tolerance", dict, where, {}), where),
        givens,
        tuple(_slip_from(slip, where) for slip in _entry(raw, "slips", list, where, [])),
        tuple(str(hint) for hint in _entry(raw, "hints", list, where, [])),
        float(_entry(raw, "points", (int, float), where, 1)),
        _texts(raw, "let", where),
        names,
        _entry(raw, "symbol", str, where, ""),
        *limits,
        _figure_from(_entry(raw, "drawing", dict, where, {}), where),
    )


def _given_from(name: str, spec: Any, where: str) -> Given:
    where = f"{where}, given {name}"
    if name not in QUANTITIES:
        raise InstructorError(
            f"{where}: no such quantity{_nearest(name, QUANTITIES)}; there are {', '.join(QUANTITIES)}"
        )
    if not isinstance(spec, dict):
        spec = {"choose": spec if isinstance(spec, list) else [spec]}
    _check_keys(spec, {"choose", "from", "to", "step", "unit", "share_of", "shown_only"}, where)
    unit = _entry(spec, "unit", str, where, QUANTITIES[name].unit)
    if unit_and_factor(unit)[0] != QUANTITIES[name].unit:
        raise InstructorError(
            f"{where}: unit {unit!r} does not suit it; it is kept in {QUANTITIES[name].unit or 'no unit'}"
        )
    share_of = _entry(spec, "share_of", str, where, "")
    if "choose" in spec:
        numbers = _entry(spec, "choose", list, where)
    else:
        numbers = _range(*(_entry(spec, key, (int, float), where) for key in ("from", "to", "step")), where)
    values = tuple(_given_value(number, "" if share_of else unit, where) for number in numbers)
    if not values:
        raise InstructorError(f"{where}: there is no value to choose from")
    step = float(_entry(spec, "step", (int, float), where, 0.1)) if share_of else 0.0
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
        raise InstructorError(f"{where}: {error.reason}\n{error.marked()}") from None
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
        if raw not in SLIPS:
            raise InstructorError(
                f"{where}: slip {raw!r} is not known{_nearest(raw, SLIPS)}; known are {', '.join(SLIPS)}"
            )
        return SlipRule(raw)
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
    table = _entry(raw, key, dict, where, {})
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
