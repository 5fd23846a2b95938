"""The course: exercises with each student's own numbers, typed answers, hand-in, marking and feedback.

Everything here loads when first used, so that a lesson or a command pays only for what it needs.
"""

from __future__ import annotations

from importlib import import_module
from typing import Any

_HOMES = {
    "Formula": "formula",
    "Reading": "reading",
    "ReadingError": "reading",
    "Verdict": "judging",
    "answer": "desk",
    "ask": "practice",
    "go_on": "desk",
    "hand_in": "desk",
    "judge": "practice",
    "read_formula": "formula",
    "read_number": "reading",
    "same_formula": "formula",
    "status": "desk",
}

__all__ = sorted(_HOMES)


def __getattr__(name: str) -> Any:
    if name not in _HOMES:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return getattr(import_module(f"{__name__}.{_HOMES[name]}"), name)


def __dir__() -> list[str]:
    return [*globals(), *__all__]
