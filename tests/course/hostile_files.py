"""Hostile and odd files that may lie in a folder of hand-ins. None of them earns a point for anybody.

Each has a name and bytes; a few need more than bytes (links, pipes, deep folders) and are made by `place_odd_entries`.
"""

import json
import os
import zipfile
from io import BytesIO
from pathlib import Path

from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.hand_in_file import LARGEST_FILE, digest_of

HTML = "<script>alert(1)</script><img src=x onerror=alert(1)>"
FORMULA = '=HYPERLINK("http://example.invalid","x")'


def content_of(lips: ExerciseSet, **changes: object) -> dict[str, object]:
    """What a well-made hand-in of s01 holds, with entries changed, and a digest that fits."""
    content: dict[str, object] = {
        "format": "drillpoint hand-in",
        "format_version": 1,
        "course": lips.course,
        "set": lips.id,
        "version": lips.version,
        "student": "s01",
        "answers": [{"task": "point-height", "typed": "1 furlong", "time": "2026-03-12T18:00:00Z"}],
        "time": "2026-03-12T19:00:00Z",
    } | changes
    return content | {"digest": digest_of(content)}


def answered(*typed: object, task: object = "point-height", time: object = "t") -> list[dict[str, object]]:
    """Answers to one task."""
    return [{"task": task, "typed": text, "time": time} for text in typed]


def hostile_files(lips: ExerciseSet) -> dict[str, bytes]:
    """The collection, by file name."""
    return {**_not_json(), **_odd_json(lips), **_odd_entries(lips), **_odd_texts(lips)}


def _not_json() -> dict[str, bytes]:
    return {
        "empty.json": b"",
        "blank.json": b" \n\t ",
        "zeros.json": bytes(5000),
        "bad-utf8.json": b'{"format": "\xff\xfe\x80"}',
        "utf16.json": '{"format": "drillpoint hand-in"}'.encode("utf-16"),
        "latin1.json": '{"student": "é"}'.encode("latin-1"),
        "overlong-utf8.json": b'{"format": "\xc0\xaf"}',
        "huge.json": b"[" + b"1," * LARGEST_FILE + b"1]",
        "just-too-large.json": b'{"a": "' + b"x" * LARGEST_FILE + b'"}',
        "zip-bomb.zip": _bomb(),
        "zip-bomb.json": _bomb(),
        "gzip.json": b"\x1f\x8b\x08\x00" + bytes(100),
        "picture.json": b"\x89PNG\r\n\x1a\n" + bytes(200),
        "program.json": b"#!/bin/sh\ntouch /tmp/owned\n",
        "program.py": b"import os; os.system('touch /tmp/owned') # {\n",
        "pickle.json": b"\x80\x04\x95\x1c\x00\x00\x00\x00\x00\x00\x00\x8c\x05posix\x94\x8c\x06system\x94\x93\x94.",
        "page.html": b"<!doctype html><script>fetch('http://example.invalid')</script>{}",
        "half.json": b'{"format": "drillpoint hand-in", "answers": [{"task":',
        "two-documents.json": b"{}{}",
        "comment.json": b"// hello\n{}",
        "single-quotes.json": b"{'format': 'drillpoint hand-in'}",
        "trailing-comma.json": b'{"format": "drillpoint hand-in",}',
        "control-signs.json": b'{"format": "drill\x00point\x1b[2J"}',
    }


def _odd_json(lips: ExerciseSet) -> dict[str, bytes]:
    good = json.dumps(content_of(lips))
    many = ",".join(f'"k{number}": 1' for number in range(14_000)) + ',"k13999": 2'
    return {
        "deep-lists.json": b"[" * 90_000 + b"]" * 90_000,
        "deep-tables.json": b'{"a":' * 30_000 + b"1" + b"}" * 30_000,
        "deep-answers.json": good.replace('"1 furlong"', "[" * 50_000 + "]" * 50_000).encode(),
        "nan.json": good.replace(f'"version": {lips.version}', '"version": NaN').encode(),
        "infinity.json": good.replace(f'"version": {lips.version}', '"version": -Infinity').encode(),
        "big-exponent.json": good.replace(f'"version": {lips.version}', '"version": 1e999').encode(),
        "many-digits.json": good.replace(f'"version": {lips.version}', '"version": ' + "9" * 150_000).encode(),
        "million-digits.json": good.replace('"1 furlong"', "9" * 1_000_000).encode(),
        "many-decimals.json": good.replace('"1 furlong"', "0." + "3" * 150_000).encode(),
        "doubled-key.json": good.replace('"set":', '"student": "s02", "set":').encode(),
        "doubled-key-late.json": ("{" + many + "}").encode(),
        "doubled-typed.json": good.replace('"typed":', '"typed": "3", "typed":').encode(),
        "escaped-surrogate.json": good.replace("1 furlong", r"\ud800 mm").encode(),
        "a-list.json": b"[]",
        "a-text.json": b'"drillpoint hand-in"',
        "null.json": b"null",
        "a-number.json": b"5",
    }


def _odd_entries(lips: ExerciseSet) -> dict[str, bytes]:
    odd: dict[str, dict[str, object]] = {
        "version-true": {"version": True},
        "version-text": {"version": "2"},
        "version-float": {"version": 2.0},
        "version-negative": {"version": -1},
        "version-future": {"version": 10**17},
        "student-number": {"student": 1},
        "student-null": {"student": None},
        "student-list": {"student": ["s01"]},
        "student-path": {"student": "../../../../etc/passwd"},
        "student-absolute": {"student": "/etc/passwd"},
        "student-windows": {"student": "..\\..\\CON"},
        "student-long": {"student": "s" * 150_000},
        "student-html": {"student": HTML},
        "student-formula": {"student": FORMULA},
        "course-html": {"course": HTML},
        "set-path": {"set": "../lips"},
        "set-empty": {"set": ""},
        "answers-table": {"answers": {"point-height": "3 mm"}},
        "answers-null": {"answers": None},
        "answers-texts": {"answers": ["3 mm"]},
        "answers-too-many": {"answers": answered(*(str(n) for n in range(900)))},
        "typed-number": {"answers": answered(3.25)},
        "typed-null": {"answers": answered(None)},
        "typed-table": {"answers": answered({"$ne": 1})},
        "task-list": {"answers": answered("3 mm", task=["point-height"])},
        "task-path": {"answers": answered("3 mm", task="../../lips")},
        "time-number": {"time": 5},
        "time-long": {"time": "9" * 100_000},
        "extra-entry": {"__class__": "os.system"},
        "newer-format": {"format_version": 2},
        "other-format": {"format": "something else"},
        "marks-itself": {"mark": 1.0},
    }
    return {f"{name}.json": json.dumps(content_of(lips, **changes)).encode() for name, changes in odd.items()}


def _odd_texts(lips: ExerciseSet) -> dict[str, bytes]:
    """Well-made hand-ins with answers that would do harm somewhere else."""
    texts = {
        "typed-html": HTML,
        "typed-formula": FORMULA,
        "typed-dde": "=cmd|' /C calc'!A0",
        "typed-code": "__import__('os').system('touch /tmp/owned')",
        "typed-template": "{{ 7*7 }}{% for x in y %}",
        "typed-long": "9" * 150_000,
        "typed-power": "9**9**9**9",
        "typed-brackets": "(" * 50_000,
        "typed-zeros": "\x00" * 1000,
        "typed-turned-round": "\u202e3.25 mm\u202c",
        "typed-terminal": "\x1b[2J\x1b]0;owned\x07",
        "typed-breaks": "3.25\r\n=1+1\r\n",
    }
    files = {
        f"{name}.json": json.dumps(content_of(lips, answers=answered(text))).encode() for name, text in texts.items()
    }
    odd_time = content_of(lips, time=HTML, answers=answered("nothing", time=HTML))
    return files | {"time-html.json": json.dumps(odd_time).encode(), "=cmd.json": b"x", "<img src=x>.json": b"y"}


def _bomb() -> bytes:
    """A small archive that would unpack to a hundred megabytes."""
    packed = BytesIO()
    with zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("s01.json", b" " * 100_000_000)
    return packed.getvalue()


def place_odd_entries(folder: Path) -> int:
    """Make what is not a plain file: links, a pipe, a very deep folder; say how many entries must be told."""
    deep = folder / Path(*["d"] * 300)
    deep.mkdir(parents=True)
    (deep / "x.json").write_bytes(b"{}")
    if os.name == "nt":
        return 1
    (folder / "link-to-secret.json").symlink_to("/etc/passwd")
    (folder / "link-to-nothing.json").symlink_to(folder / "nowhere")
    (folder / "link-to-folder").symlink_to("/", target_is_directory=True)
    (folder / "link-to-itself").symlink_to(folder / "link-to-itself")
    os.mkfifo(folder / "pipe.json")
    (folder / os.fsdecode(b"bad-\xff-name.json")).write_bytes(b"{}")
    return 7
