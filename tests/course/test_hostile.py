"""Whatever is typed into any box: it is read or refused, with little work, in little room, and nothing is touched."""

import gc
import importlib.util
import subprocess
import sys
import tracemalloc
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from drillpoint.course.answer_form import AnswerForm
from drillpoint.course.reading import ReadingError, read_number

from .hostile import HOSTILE_STRINGS
from .reading_laws import BOXES, NAMES, formula_is_read_or_refused, number_is_read_or_refused

HERE = Path(__file__).resolve().parent
FORMS = (
    *(AnswerForm("number", unit) for unit in BOXES),
    AnswerForm("formula", names=NAMES, symbol="h"),
    AnswerForm("judgement", "°"),
    AnswerForm("choice", letters="abcd"),
)
# Of what one text may cost at most: calls of functions, of Python and of C, and bytes held at one time. Measured are
# 24 thousand calls (for a sum of a hundred terms, about 2 ms) and 165 kB.
MOST_CALLS = 40_000
MOST_ROOM = 400_000


def read_all() -> None:
    for form in FORMS:
        for typed in HOSTILE_STRINGS:
            with suppress(ReadingError):
                form.read(typed)


@pytest.fixture(scope="module", autouse=True)
def _grammar_is_loaded() -> None:
    """The first reading loads the grammar and the tables of units; only what comes after it is measured."""
    read_all()


def test_the_collection_is_large_and_holds_nothing_twice() -> None:
    assert len(set(HOSTILE_STRINGS)) == len(HOSTILE_STRINGS) >= 200


@pytest.mark.parametrize("unit", BOXES)
def test_no_box_for_a_number_reads_any_of_them(unit: str) -> None:
    assert [typed[:40] for typed in HOSTILE_STRINGS if number_is_read_or_refused(typed, unit)] == []


def test_a_box_for_a_formula_reads_the_harmless_ones_only() -> None:
    read = {typed for typed in HOSTILE_STRINGS if formula_is_read_or_refused(typed)}
    assert read >= {"+1+1", "--5", "7.5/8", "tan(90)"}
    assert all(set(typed) <= set("0123456789 +-−*/^·×²⁻⁹.,()[]tan") for typed in read)


READING = """
import sys
sys.path.insert(0, {project!r})
from tests.course.test_hostile import read_all

def read_by_running():
    for typed in ("1 + 1", "open('nowhere')"):
        try:
            eval(typed)
        except OSError:
            pass

def read_with_a_program():
    import subprocess
    subprocess.run([sys.executable, "-c", ""])

read_all()  # the first time, the grammar is loaded
seen, listening = [], True
sys.addaudithook(lambda event, details: seen.append(event) if listening else None)
{reader}()
listening = False
print(sorted(set(seen)))
"""


def events_while(reader: str) -> list[str]:
    """What Python's audit reports while a reader reads: files, modules, code that is run, sockets, processes."""
    program = READING.format(project=str(HERE.parents[1]), reader=reader)
    run = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True)
    return [word.strip("[]' ") for word in run.stdout.strip().split(",") if word.strip("[]' ")]


def test_reading_them_touches_no_file_process_network_or_code() -> None:
    assert events_while("read_all") == []


@pytest.mark.parametrize(("reader", "event"), [("read_by_running", "exec"), ("read_by_running", "open"),
                                               ("read_with_a_program", "subprocess.Popen")])  # fmt: skip
def test_a_reader_that_touches_something_would_be_noticed(reader: str, event: str) -> None:
    assert event in events_while(reader)


def calls_while_reading(form: AnswerForm, typed: str) -> int:
    """How many calls one text costs: a measure of work that is the same on every machine."""
    calls = 0

    def count(_frame: object, event: str, _details: object) -> None:
        nonlocal calls
        calls += event in ("call", "c_call")

    before = sys.getprofile()
    sys.setprofile(count)
    try:
        form.read(typed)
    except ReadingError:
        pass
    finally:
        sys.setprofile(before)
    return calls


@pytest.mark.parametrize("form", FORMS, ids=lambda form: f"{form.kind} {form.unit}")
def test_each_costs_little_work(form: AnswerForm) -> None:
    costly = {
        typed[:40]: calls for typed in HOSTILE_STRINGS if (calls := calls_while_reading(form, typed)) > MOST_CALLS
    }
    assert costly == {}


def test_work_is_counted() -> None:
    few, many = (calls_while_reading(FORMS[-3], "+".join("9" * n)) for n in (2, 60))
    assert 100 < few < many


def test_a_long_text_costs_no_more_than_a_short_one() -> None:
    for form in FORMS[:-1]:
        assert calls_while_reading(form, "9" * 1_000_000) <= calls_while_reading(form, "9" * 1_000) + 5


def test_reading_them_again_and_again_takes_no_room() -> None:
    tracemalloc.start()
    try:
        read_all()
        gc.collect()
        first, _ = tracemalloc.get_traced_memory()
        tracemalloc.reset_peak()
        read_all()
        read_all()
        _, peak = tracemalloc.get_traced_memory()
        gc.collect()
        after, _ = tracemalloc.get_traced_memory()
    finally:
        tracemalloc.stop()
    assert after - first < 50_000
    assert peak < MOST_ROOM


TEXTS = st.text(max_size=80)
LIKE_NUMBERS = st.text(alphabet="0123456789.,/- +eE×·^⁻³mincdftNbrevhpW%°′″'\"⅞", max_size=24)
LIKE_FORMULAS = st.text(alphabet="DWκψsincota()+-*/^²⁻√ 0123456789.,e°", max_size=40)


@given(TEXTS | LIKE_NUMBERS, st.sampled_from(BOXES))
@example("59° 30′ 15″", "°")
@example("5'-3 1/2\"", "mm")
def test_any_number_is_read_or_refused(typed: str, unit: str) -> None:
    number_is_read_or_refused(typed, unit)


@given(TEXTS | LIKE_FORMULAS)
@example("2^-(3)")
@example("D⁻² cos²κ")
def test_any_formula_is_read_or_refused(typed: str) -> None:
    formula_is_read_or_refused(typed)


@given(st.text(max_size=80), st.sampled_from(FORMS))
def test_any_answer_is_read_or_refused(typed: str, form: AnswerForm) -> None:
    try:
        assert form.read(typed).echo
    except ReadingError as error:
        assert 0 <= error.position <= len(typed)


def broken() -> Iterator[tuple[str, str]]:
    """Texts that can be read, each with one sign put in, left out or put in another place."""
    for typed, unit in (
        ("1 7/8 in", "mm"),
        ("59° 30′", "°"),
        ("4,5 N·m", "N·m"),
        ("1.5e-3 mm", "mm"),
        ("80 sfm", "m/min"),
    ):
        for place in range(len(typed)):
            yield typed[:place] + typed[place + 1 :], unit
            for sign in ("\u200b", "\x00", "７", "x", ";", "'", "°", "\u202e", "е"):
                yield typed[:place] + sign + typed[place:], unit


def test_one_sign_too_many_or_too_few_is_noticed_or_changes_what_is_echoed() -> None:
    for typed, unit in broken():
        if number_is_read_or_refused(typed, unit):
            reading = read_number(typed, unit)
            digits = [sign for sign in typed if sign.isdigit()]
            assert [sign for sign in reading.echo.split(" = ")[0].split(" ≈ ")[0] if sign.isdigit()] == digits


@pytest.mark.skipif(
    importlib.util.find_spec("atheris") is None, reason="atheris, for Linux on x86-64, is not installed"
)
def test_a_fuzzer_led_by_coverage_finds_nothing(tmp_path: Path) -> None:
    start = tmp_path / "texts"
    start.mkdir()
    for number, typed in enumerate(("1 7/8 in", "59° 30′", "1,5e-3 mm", "4.5 N·m", "D/(2 tan κ)", "√(D² − W²)/2")):
        for box in (0, 1, 4, len(BOXES)):
            (start / f"{number}-{box}").write_bytes(typed.encode() + bytes([box]))
    arguments = ["-runs=8000", "-seed=1", "-max_len=160", f"-artifact_prefix={tmp_path}/", str(start)]
    command = [sys.executable, str(HERE / "fuzz_readers.py"), *arguments]
    run = subprocess.run(command, capture_output=True, text=True, cwd=tmp_path, check=False)
    assert run.returncode == 0, run.stdout[-2000:] + run.stderr[-2000:]
    assert "DONE" in run.stderr
