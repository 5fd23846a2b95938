"""The hand-in: one small JSON file of data, never code. Written by a student's notebook or page, read by the marking.

    {"format": "drillpoint hand-in", "format_version": 1, "course": "...", "set": "lips", "version": 2,
     "student": "s07", "answers": [{"task": "lip-length", "typed": "5.15 mm", "time": "..."}], "time": "...",
     "digest": "SHA-256 of all the rest"}

A task has more than one answer where two sittings were put together: the last one counts, the others are there to be
reported. The digest shows that a file was altered after it was made, by hand or by a bad transfer. It is not a secret
signature: someone who sets out to forge a file can compute it too. `docs/hand-in.schema.json` states the format.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Mapping, Sequence
from typing import Any

from attrs import evolve, frozen

from drillpoint.errors import InstructorError

FORMAT = "drillpoint hand-in"
FORMAT_VERSION = 1
LARGEST_FILE = 200_000
MOST_ANSWERS = 500
LONGEST_TYPED = 4000
LONGEST_NAME = 200
KEPT_EARLIER = 3
"""Answers of earlier sittings that are kept beside the one that counts, for each task."""
_KEYS = frozenset({"format", "format_version", "course", "set", "version", "student", "answers", "time", "digest"})
_ANSWER_KEYS = frozenset({"task", "typed", "time"})


class HandInProblem(InstructorError):
    """A file is not a hand-in that can be marked; the message says in what way."""


@frozen
class AnswerRecord:
    """One answer as it was given: the id of its task, what was typed, and when (UTC)."""

    task: str
    typed: str
    time: str


@frozen
class HandIn:
    """What one hand-in file says. `intact` is False if it was altered after it was made."""

    course: str
    set: str
    version: int
    student: str
    answers: tuple[AnswerRecord, ...]
    time: str
    digest: str
    intact: bool = True


@frozen
class Difference:
    """Two sittings answered the same task differently: the answer that counts, and the one that does not."""

    task: str
    counts: str
    earlier: str


def put_answer(records: Sequence[AnswerRecord], new: AnswerRecord) -> tuple[AnswerRecord, ...]:
    """Put a new answer in the place of the one that counted so far; what earlier sittings left stays."""
    before = last_answers(records).get(new.task)
    if before is not None and before.time > new.time:
        # A clock that was set back must not let an older answer count.
        new = evolve(new, time=before.time)
    return (*(record for record in records if record is not before), new)


def last_answers(records: Sequence[AnswerRecord]) -> dict[str, AnswerRecord]:
    """The answer to each task that counts: the last one."""
    return {record.task: record for record in records}


def put_together(
    here: Sequence[AnswerRecord], there: Sequence[AnswerRecord]
) -> tuple[tuple[AnswerRecord, ...], tuple[Difference, ...]]:
    """Put two sittings together, in the order of time, and say where they differ. Nothing is thrown away in silence."""
    latest: dict[tuple[str, str], AnswerRecord] = {}
    for record in (*there, *here):
        known = latest.get((record.task, record.typed))
        if known is None or record.time > known.time:
            latest[record.task, record.typed] = record
    own, theirs = last_answers(here), last_answers(there)

    def order(record: AnswerRecord) -> tuple[str, bool, str]:
        # Of two answers given in the same second, the one on this machine counts.
        is_own = record.task in own and own[record.task].typed == record.typed
        return record.time, is_own, record.typed

    records = sorted(latest.values(), key=order)
    counting = last_answers(records)
    differences = []
    for task, record in own.items():
        if task in theirs and theirs[task].typed != record.typed:
            counts = counting[task].typed
            earlier = theirs[task].typed if record.typed == counts else record.typed
            differences.append(Difference(task, counts, earlier))
    return _few(records), tuple(differences)


def _few(records: Sequence[AnswerRecord]) -> tuple[AnswerRecord, ...]:
    """The answers that count, and the last few before each of them, so that a file never grows without bounds."""
    left = {record.task: KEPT_EARLIER + 1 for record in records}
    kept = []
    for record in reversed(records):
        left[record.task] -= 1
        if left[record.task] >= 0:
            kept.append(record)
    return tuple(reversed(kept))


def receipt_of(data: bytes, boxes: int) -> str:
    """The receipt for a hand-in that was written: how many answers, when, and a short code for its content."""
    content = json.loads(data)
    count = len({answer["task"] for answer in content["answers"]})
    return f"{count} of {boxes} answers, {content['time']}, code {short_digest(content['digest'])}"


def digest_of(content: Mapping[str, Any]) -> str:
    """The SHA-256 of a hand-in's content without its own digest, whatever the order of the keys."""
    rest = {key: value for key, value in content.items() if key != "digest"}
    text = json.dumps(rest, sort_keys=True, ensure_ascii=True, separators=(",", ":"))
    return hashlib.sha256(text.encode("ascii")).hexdigest()


def short_digest(digest: str) -> str:
    """The part of a digest that is printed on a receipt: `3F7A-92C1`."""
    return f"{digest[:4]}-{digest[4:8]}".upper()


def hand_in_bytes(
    course: str, set_id: str, version: int, student: str, answers: Sequence[AnswerRecord], time: str
) -> bytes:
    """Write a hand-in. The same content gives the same bytes."""
    content: dict[str, Any] = {
        "format": FORMAT,
        "format_version": FORMAT_VERSION,
        "course": course,
        "set": set_id,
        "version": version,
        "student": student,
        "answers": [{"task": a.task, "typed": a.typed, "time": a.time} for a in answers],
        "time": time,
    }
    content["digest"] = digest_of(content)
    return json.dumps(content, indent=1, ensure_ascii=True).encode("ascii") + b"\n"


def read_hand_in(data: bytes) -> HandIn:
    """Read a hand-in, or say in one sentence why it is none (HandInProblem). Nothing in it is trusted."""
    content = read_json(data)
    if not isinstance(content, dict) or content.get("format") != FORMAT:
        raise HandInProblem(_what_else(content))
    version = content.get("format_version")
    if type(version) is not int or version < 1:
        raise HandInProblem("its format_version is not a whole number")
    if version > FORMAT_VERSION:
        raise HandInProblem(
            f"it was written by a newer version (format {version}; this one reads {FORMAT_VERSION}): update drillpoint"
        )
    if missing := _KEYS - content.keys():
        raise HandInProblem(f"it lacks {', '.join(sorted(missing))}")
    if extra := content.keys() - _KEYS:
        raise HandInProblem(f"it holds something unknown: {_short(sorted(extra)[0])}")
    for key in ("course", "set", "student", "time", "digest"):
        _require_text(content[key], key, LONGEST_NAME)
    if type(content["version"]) is not int:
        raise HandInProblem("its version is not a whole number")
    answers = _answers(content["answers"])
    return HandIn(
        content["course"],
        content["set"],
        content["version"],
        content["student"],
        answers,
        content["time"],
        content["digest"],
        content["digest"] == digest_of(content),
    )


def read_json(data: bytes) -> Any:
    """Read JSON that a stranger may have written: bounded, strict, no doubled keys, no NaN, no endless numbers."""
    if len(data) > LARGEST_FILE:
        raise HandInProblem(f"it is larger than {LARGEST_FILE // 1000} kB")
    if not data.strip():
        raise HandInProblem("it is empty")
    if data[:2] == b"PK":
        raise HandInProblem("it is a zip archive: unpack it first")
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError:
        raise HandInProblem("it is not UTF-8 text") from None
    try:
        return json.loads(text, parse_constant=_no_constant, parse_int=_small_integer, object_pairs_hook=_no_doubles)
    except HandInProblem:
        raise
    except RecursionError:
        raise HandInProblem("it is nested too deeply") from None
    except ValueError as error:
        raise HandInProblem(f"it is broken: {str(error)[:80]}") from None


def _answers(raw: Any) -> tuple[AnswerRecord, ...]:
    if not isinstance(raw, list):
        raise HandInProblem("its answers are not a list")
    if len(raw) > MOST_ANSWERS:
        raise HandInProblem(f"it holds more than {MOST_ANSWERS} answers")
    answers = []
    for number, item in enumerate(raw, start=1):
        if not isinstance(item, dict) or item.keys() != _ANSWER_KEYS:
            raise HandInProblem(f"its answer {number} does not consist of task, typed and time")
        _require_text(item["task"], f"answer {number}, task,", LONGEST_NAME)
        _require_text(item["typed"], f"answer {number}", LARGEST_FILE)
        _require_text(item["time"], f"answer {number}, time,", LONGEST_NAME)
        answers.append(AnswerRecord(item["task"], item["typed"], item["time"]))
    return tuple(answers)


def _require_text(value: Any, what: str, longest: int) -> None:
    if not isinstance(value, str):
        raise HandInProblem(f"its {what} is not text")
    if len(value) > longest:
        raise HandInProblem(f"its {what} is longer than {longest} characters")


def _what_else(content: Any) -> str:
    if isinstance(content, dict):
        if content.get("format") == "drillpoint answers":
            return "it holds saved answers that were not handed in: ask for the file that hand_in() writes"
        if content.get("format") == "drillpoint sheet":
            return "it is the description of a sheet, not a hand-in: ask for the file that hand_in() writes"
        if "cells" in content and "nbformat" in content:
            return "it is a notebook, not a hand-in: ask for the file that hand_in() writes"
    return "it is not a hand-in"


def _no_constant(name: str) -> Any:
    raise HandInProblem(f"it holds {name}, which is not a number")


def _small_integer(digits: str) -> int:
    if len(digits) > 18:
        raise HandInProblem("it holds a number of more than 18 digits")
    return int(digits)


def _no_doubles(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    content = dict(pairs)
    if len(content) != len(pairs):
        seen: set[str] = set()
        doubled = next(key for key, _ in pairs if key in seen or seen.add(key))  # type: ignore[func-returns-value]
        raise HandInProblem(f"it holds the entry {_short(doubled)} twice")
    return content


def _short(text: str) -> str:
    shown = "".join(c if c.isprintable() else "\ufffd" for c in text[:40])
    return f"“{shown}”"
