"""The learner's own copies of the lessons: brought up to date, and never overwritten once edited.

A small file beside the copies remembers the digest of what was copied. A copy that still has it is untouched and
follows the lesson; any other copy is the learner's work, and a newer lesson is put beside it, once. Deleting a copy
brings the lesson back as published.

The book of relations and the page on the ground point come along, laid out as in the project, so that the links of the
lessons lead somewhere: only the learner's folder is served.
"""

import contextlib
import hashlib
import json
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path, PurePosixPath
from typing import Any

from drillpoint.setup.places import Places
from drillpoint.setup.trouble import explain

_IGNORED = {".ipynb_checkpoints", "__pycache__"}
_REMEMBERED = "copies.json"
_BOOK = ("docs/relations.md", "docs/relations/*", "docs/ground-point.md")
_LINK, _LINK_IN_COPY = b"](../docs/", b"](docs/"


@dataclass(frozen=True)
class Copied:
    """What was done to the learner's folder, as paths inside it."""

    fresh: tuple[str, ...]
    """Copied now, or brought up to date."""
    beside: tuple[str, ...]
    """Newer versions put beside copies that the learner has edited."""
    first: str | None
    """The first lesson in teaching order; None when there is none."""


def copy(places: Places) -> Copied:
    """Bring the learner's copies up to date."""
    try:
        places.state.mkdir(parents=True, exist_ok=True)
        remembered = _recall(places.state / _REMEMBERED)
        fresh, beside, names = [], [], []
        for source, name in _files(places):
            names.append(name)
            written = _follow(source, places.folder, name, remembered)
            if written == name:
                fresh.append(name)
            elif written is not None:
                beside.append(written)
            _remember(places.state / _REMEMBERED, remembered)
    except OSError as error:
        raise explain(error, "copying the lessons", places.folder) from error
    return Copied(tuple(fresh), tuple(beside), first_lesson(names))


def first_lesson(names: list[str]) -> str | None:
    """The lowest-numbered notebook at the top of the lessons."""
    notebooks = [name for name in names if name.endswith(".ipynb") and "/" not in name]
    return min(notebooks, key=_teaching_order, default=None)


def _teaching_order(name: str) -> tuple[int, str]:
    digits = name[: len(name) - len(name.lstrip("0123456789"))]
    return (int(digits) if digits else 10**9, name)


def _files(places: Places) -> Iterator[tuple[Path, str]]:
    """What is copied, and where to: the lessons to the top of the folder, the book as it lies in the project."""
    for path in sorted(places.lessons.rglob("*")):
        name = path.relative_to(places.lessons)
        if path.is_file() and not _IGNORED & set(name.parts):
            yield path, name.as_posix()
    for path in sorted(path for pages in _BOOK for path in places.project.glob(pages)):
        yield path, path.relative_to(places.project).as_posix()


def _follow(source: Path, folder: Path, name: str, remembered: dict[str, dict[str, str]]) -> str | None:
    """Treat one file; return the name of what was written, or None."""
    target = folder / name
    published = _digest(source)
    known = remembered.setdefault(name, {})
    present = _digest(target) if target.exists() else None
    if present == published:
        known["copied"] = published
        return None
    if present is None or present == known.get("copied"):
        _put(source, target)
        known["copied"] = published
        return name
    if published in (known.get("copied"), known.get("offered")):
        return None
    beside = _free_name(folder, name)
    _put(source, folder / beside)
    known["offered"] = published
    return beside


def _free_name(folder: Path, name: str) -> str:
    path = PurePosixPath(name)
    count = 1
    while True:
        label = "new version" if count == 1 else f"new version {count}"
        candidate = path.with_name(f"{path.stem} ({label}){path.suffix}")
        if not (folder / candidate).exists():
            return candidate.as_posix()
        count += 1


def _put(source: Path, target: Path) -> None:
    """Copy so that the target is either the old file or the new one, never a part."""
    target.parent.mkdir(parents=True, exist_ok=True)
    partial = target.with_name(f".{target.name}.part")
    try:
        partial.write_bytes(_as_copied(source))
        partial.replace(target)
    finally:
        partial.unlink(missing_ok=True)


def _as_copied(path: Path) -> bytes:
    """The file with its links to the book leading from the learner's folder; a copy is left as it is."""
    content = path.read_bytes()
    return content.replace(_LINK, _LINK_IN_COPY) if path.suffix == ".ipynb" else content


def _digest(path: Path) -> str:
    """Stands for what a learner would see: for a notebook its cells, however the file is written down.

    Merely opening a lesson lets JupyterLab save it again in its own layout and with notes of its own about the kernel;
    that is no edit.
    """
    content = _as_copied(path)
    if path.suffix == ".ipynb":
        with contextlib.suppress(ValueError, KeyError, TypeError):
            content = json.dumps(_joined(json.loads(content)["cells"]), sort_keys=True).encode()
    return hashlib.sha256(content).hexdigest()


def _joined(value: Any) -> Any:
    """The same value with texts that are kept line by line put together, as notebooks may hold them either way."""
    if isinstance(value, dict):
        return {key: _joined(part) for key, part in value.items()}
    if isinstance(value, list):
        if value and all(isinstance(part, str) for part in value):
            return "".join(value)
        return [_joined(part) for part in value]
    return value


def _recall(path: Path) -> dict[str, dict[str, str]]:
    try:
        content = json.loads(path.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return {}
    return {name: dict(known) for name, known in content.items()} if isinstance(content, dict) else {}


def _remember(path: Path, remembered: dict[str, dict[str, str]]) -> None:
    fresh = path.with_suffix(".new")
    fresh.write_text(json.dumps(remembered, indent=1, sort_keys=True), encoding="utf-8")
    fresh.replace(path)
