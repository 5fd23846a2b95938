"""What reading costs: usual answers, hostile ones, and the slowest of them, in one run.

Read the ratios, not the times: `python -m pytest tests/benchmarks/test_reading.py -s`; the slowest text is in the extra
information of the benchmark (`--benchmark-json`), and `-s` prints it.
"""

from __future__ import annotations

import time
from typing import Any

import pytest

from drillpoint.course.answer_form import AnswerForm
from drillpoint.course.reading import ReadingError
from tests.course.hostile import HOSTILE_STRINGS

LENGTH = AnswerForm("number", "mm")
ANGLE = AnswerForm("number", "°")
FORMULA = AnswerForm("formula", names=("D", "W", "κ", "ψ"), symbol="h")
USUAL = (
    *((LENGTH, typed) for typed in ("5.15", "5,15 mm", "7/8 in", "1 7/8 in", '1-7/8"', "-0.530", "5'-3 1/2\"")),
    *((ANGLE, typed) for typed in ("118", "59°", "59° 30′", "1.03 rad")),
)
FORMULAS = ("D/(2 tan κ)", "(D/2)*cot(kappa)", "√(D² − W²)/2", "W/sin psi")


def read(form: AnswerForm, typed: str) -> bool:
    """Read or refuse one text."""
    try:
        form.read(typed)
    except ReadingError:
        return False
    return True


@pytest.mark.benchmark(group="reading one answer")
def test_usual_numbers(benchmark: Any) -> None:
    read_ones = benchmark(lambda: [read(form, typed) for form, typed in USUAL])
    benchmark.extra_info["texts"] = len(USUAL)
    assert all(read_ones)


@pytest.mark.benchmark(group="reading one answer")
def test_usual_formulas_that_nobody_typed_before(benchmark: Any) -> None:
    turn = iter(range(10**9))

    def each() -> list[bool]:
        number = next(turn)
        return [read(FORMULA, f"{typed} + {number}") for typed in FORMULAS]

    assert all(benchmark(each))
    benchmark.extra_info["texts"] = len(FORMULAS)


@pytest.mark.benchmark(group="reading hostile texts")
@pytest.mark.parametrize("form", [LENGTH, ANGLE, FORMULA], ids=["length", "angle", "formula"])
def test_hostile_texts(benchmark: Any, form: AnswerForm) -> None:
    benchmark(lambda: [read(form, typed) for typed in HOSTILE_STRINGS])
    milliseconds, slowest = max((best_of(3, form, typed) * 1000, typed) for typed in HOSTILE_STRINGS)
    benchmark.extra_info |= {"texts": len(HOSTILE_STRINGS), "slowest_ms": milliseconds, "slowest": slowest[:40]}
    print(f"\nslowest of {len(HOSTILE_STRINGS)}: {milliseconds:.2f} ms for {slowest[:40]!r}")
    assert not read(form, "")


def best_of(times: int, form: AnswerForm, typed: str) -> float:
    """The least time that one text took, in seconds: what else the machine does is not part of it."""
    taken = []
    for _ in range(times):
        start = time.perf_counter()
        read(form, typed)
        taken.append(time.perf_counter() - start)
    return min(taken)
