"""Reading a set of exercises from its TOML file, and saying exactly what is wrong with it if something is."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from drillpoint.course.entries import IDENTIFIER, Place, check_keys, entry
from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.task_file import task_from
from drillpoint.course.toml_lines import lines_of
from drillpoint.errors import InstructorError


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
    stems = {path.stem for folder in exercise_folders() for path in folder.glob("*.toml")}
    # Older versions, such as lips.v1, are kept for marking only.
    return ", ".join(sorted(stem for stem in stems if IDENTIFIER.fullmatch(stem))) or "none"


def load_set(name: str | Path) -> ExerciseSet:
    """Read a set by name or path and check everything in it that can be checked without drawing numbers."""
    path = name if isinstance(name, Path) else find_set(name)
    try:
        text = path.read_text(encoding="utf-8-sig")
        raw = tomllib.loads(text)
    except OSError as error:
        raise InstructorError(
            f"{path} cannot be read: {error.strerror}; check the name and that it may be opened"
        ) from None
    except UnicodeDecodeError:
        raise InstructorError(f"{path} is not UTF-8 text; save it as UTF-8") from None
    except tomllib.TOMLDecodeError as error:
        raise InstructorError(f"{path} is not valid TOML: {error}; look at quotes and brackets in that line") from None
    return _set_from(raw, Place(str(path), lines=lines_of(text.replace("\r\n", "\n"))))


def _set_from(raw: Mapping[str, Any], where: Place) -> ExerciseSet:
    check_keys(raw, {"set", "title", "course", "version", "about", "task"}, where)
    tasks = entry(raw, "task", list, where)
    set_id = entry(raw, "set", str, where)
    if not IDENTIFIER.fullmatch(set_id):
        raise InstructorError(
            f"{where.at('set')}: set = {set_id!r} may hold small letters, digits and hyphens, 40 at most"
        )
    exercise_set = ExerciseSet(
        set_id,
        entry(raw, "title", str, where),
        entry(raw, "course", str, where),
        entry(raw, "version", int, where),
        tuple(task_from(task, where.inside("task", n)) for n, task in enumerate(tasks)),
        entry(raw, "about", str, where, ""),
    )
    ids = [task.id for task in exercise_set.tasks]
    for number, task_id in enumerate(ids):
        if task_id in ids[:number]:
            line = where.at("task", number, "id")
            raise InstructorError(f"{line}: task id {task_id!r} is used twice; every task needs its own")
    return exercise_set
