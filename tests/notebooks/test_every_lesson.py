"""What every lesson keeps to: its parts, plain words, short cells, lasting outputs, questions that know their slips."""

from __future__ import annotations

import json
import re
from itertools import pairwise
from pathlib import Path

import pytest

from drillpoint.course.exercise_file import load_set
from drillpoint.course.lint import lint
from drillpoint.course.practice import judge, practice_question
from drillpoint.setup.lessons import copy
from drillpoint.setup.places import Places
from tests.notebooks.lessons import IN_ORDER, asked, filled_in, number_of, questions, set_of, tasks_of, typed
from tests.notebooks.prose import (
    LESSONS,
    cells,
    code,
    hard_to_read,
    lost_without_a_kernel,
    minutes,
    not_short,
    prose,
    source,
)

EVERY = pytest.mark.parametrize("lesson", IN_ORDER)
FROM, TO = 35, 47  # minutes of a lesson
ROWS_OF_A_CARD = 32  # lines that fit half a page


def test_they_are_numbered_from_the_first_on() -> None:
    assert [number_of(lesson) for lesson in IN_ORDER] == list(range(len(IN_ORDER)))
    assert len({set_of(lesson) for lesson in IN_ORDER}) == len(IN_ORDER)


@EVERY
def test_the_title_has_the_number_of_the_file(lesson: str) -> None:
    assert re.match(rf"# {number_of(lesson)} · \S", next(iter(prose(lesson).values())))


@pytest.mark.parametrize(("lesson", "following"), list(pairwise(IN_ORDER)))
def test_each_leads_to_the_next(lesson: str, following: str) -> None:
    title = next(iter(prose(following).values())).splitlines()[0].removeprefix("# ")
    assert title in " ".join(prose(lesson)["next"].split())


@EVERY
def test_cautions_come_before_anything_else_and_defer_to_the_instructor(lesson: str) -> None:
    assert list(prose(lesson))[1] == "cautions"
    said = " ".join(prose(lesson)["cautions"].split()).casefold()
    for word in ("instructor", "local rules", "maker", "eye"):
        assert word in said


@EVERY
def test_it_ends_with_a_card_of_half_a_page_on_a_page_of_its_own(lesson: str) -> None:
    last = cells(lesson)[-1]
    assert last["id"] == "card"
    assert source(last).startswith('<div style="page-break-before:always"></div>')
    assert len([line for line in source(last).splitlines() if line.strip()]) <= ROWS_OF_A_CARD


@EVERY
def test_its_minutes_make_a_lesson(lesson: str) -> None:
    assert FROM <= minutes(lesson) <= TO


@EVERY
def test_it_reads_easily(lesson: str) -> None:
    assert hard_to_read(prose(lesson)) == []


def test_a_long_sentence_would_be_noticed() -> None:
    assert hard_to_read({"a": "Short one. " * 9 + "word " * 40 + "."})
    assert hard_to_read({"a": "This one has thirteen words and so has every other one of them. " * 3})


@EVERY
def test_its_cells_of_code_are_one_short_statement(lesson: str) -> None:
    assert {name: why for name, text in code(lesson).items() if (why := not_short(text))} == {}
    assert not_short("a = 1\nb = 2") and not_short("x" * 80)


@EVERY
def test_its_saved_outputs_need_neither_kernel_nor_trust(lesson: str) -> None:
    shown = [cell for cell in cells(lesson) if cell["cell_type"] == "code" and cell["id"] != "fetch"]
    assert {cell["id"]: lost for cell in shown if (lost := lost_without_a_kernel(cell))} == {}


def test_what_would_be_lost_is_noticed() -> None:
    bad = {"outputs": [{"data": {"text/plain": " ", "text/html": "<svg></svg><img src='x'>"}}]}
    assert len(lost_without_a_kernel(bad)) == 3
    bare = {"outputs": [{"data": {"text/plain": "Row(low=3)"}}]}
    assert lost_without_a_kernel(bare) == ["an object in place of words"]


@pytest.fixture(scope="module")
def own(project: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of a learner, as `open` makes it."""
    folder = tmp_path_factory.mktemp("own")
    copy(Places(project=project, folder=folder, installed=False))
    return folder


@EVERY
def test_its_links_lead_to_pages_in_the_project_and_in_the_folder_of_the_learner(lesson: str, own: Path) -> None:
    for folder in (LESSONS, own):
        text = (folder / lesson).read_text(encoding="utf-8")
        links = re.findall(r"\]\(([^)#]+)(?:#[^)]*)?\)", "".join(map(source, json.loads(text)["cells"])))
        assert [link for link in links if not (folder / link).is_file()] == []


@EVERY
def test_nothing_in_it_is_fetched_from_a_network(lesson: str) -> None:
    shown = "\n".join(source(cell) for cell in cells(lesson))
    for cell in cells(lesson):
        for output in cell.get("outputs", []):
            shown += "".join(output.get("data", {}).get("text/html", ""))
    assert re.findall(r"(?:src|href)=[\"']?(?:https?:)?//", shown) == []


@EVERY
def test_it_speaks_of_millimetres_and_of_inches(lesson: str) -> None:
    said = " ".join(prose(lesson).values())
    assert re.search(r"\d mm\b", said) and re.search(r"\d in\b", said)


@EVERY
def test_it_asks_every_question_of_its_practice_set(lesson: str) -> None:
    assert {task for _, task in asked(lesson)} == tasks_of(lesson)


@pytest.mark.parametrize("task", [task for _, task in questions()])
def test_its_questions_know_right_from_wrong(task: str) -> None:
    question = practice_question(task)
    if question.task.kind == "choice":
        for letter, (_, wrong) in zip(question.form.letters, question.options, strict=True):
            verdict = judge(task, letter)
            assert (verdict.state == "right") == (wrong is None)
            assert wrong is None or wrong.says in verdict.message
        return
    if question.task.enters:
        assert judge(task, filled_in(question)).state == "right"
        assert judge(task, filled_in(question, 1.5)).state in ("not right", "partly right")
        return
    assert judge(task, typed(question, question.numbers.right[0])).state == "right"
    for wrong in question.numbers.wrong:
        assert wrong.says in judge(task, typed(question, wrong.values[0], 6)).message


@EVERY
@pytest.mark.parametrize("kind", ["practice/", ""])
def test_its_sets_can_be_handed_out(lesson: str, kind: str) -> None:
    """No more is found than that some draws are left out, because a slip or a limit lies too near."""
    found = lint(load_set(f"{kind}{set_of(lesson)}"), tried=60)
    assert [line for line in found if "are not handed out" not in line] == []


@EVERY
def test_its_sheet_has_tasks_of_many_kinds(lesson: str) -> None:
    tasks = load_set(set_of(lesson)).tasks
    assert len(tasks) >= 8
    assert len({task.kind for task in tasks}) >= 5
