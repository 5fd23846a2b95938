"""A student's sheet: readable, labelled, the same every time, and without a key."""

import base64
import json
import re

import nbformat
import pytest

from drillpoint.course.judging import RIGHT, judge_answer
from drillpoint.course.reading import unit_and_factor
from drillpoint.course.roster import Student
from drillpoint.course.sheet import escape_markdown, question_figure, question_markdown, write_sheet

STUDENTS = ["s01", "s07", "s24"]


@pytest.fixture(params=STUDENTS)
def folder(request, make_sheet):
    return make_sheet(request.param)


def test_it_is_a_valid_notebook(folder):
    notebook = nbformat.read(folder / "lips.ipynb", as_version=4)
    nbformat.validate(notebook)
    assert [cell.cell_type for cell in notebook.cells[:2]] == ["markdown", "code"]
    assert len({cell.id for cell in notebook.cells}) == len(notebook.cells)
    for cell in notebook.cells:
        if cell.cell_type == "code":
            compile(cell.source, cell.id, "exec")
            assert cell.outputs == []


def test_every_task_has_its_question_unit_tolerance_box_and_line_for_paper(folder, variants):
    student = folder.name
    cells = {cell.id: cell.source for cell in nbformat.read(folder / "lips.ipynb", as_version=4).cells}
    for question in variants.questions(student):
        text = cells[f"task-{question.number}"]
        assert f"## Task {question.number}" in text
        assert f'answer("lips/{question.number}")' in cells[f"answer-{question.number}"]
        assert "Answer " in text
        assert escape_markdown(question.form.beside) in text
        for name, given in question.numbers.givens.items():
            if "{" + name + "}" in question.task.text:
                assert given.shown in text
    assert 'hand_in("lips")' in cells["hand-in-cell"]


def everything_in(folder):
    """All text of a student's folder, with embedded drawings decoded and reduced to what they say."""
    texts = {}
    for path in folder.rglob("*"):
        if path.is_file():
            text = path.read_text(encoding="utf-8")
            for encoded in re.findall(r"base64,([A-Za-z0-9+/=]+)", text):
                svg = base64.b64decode(encoded).decode("utf-8")
                said = re.findall(
                    r">([^<]+)<|aria-label=\"([^\"]*)\"", svg.split("</style>")[-1] + svg.split("<style>")[0]
                )
                text = text.replace(encoded, " ".join(" ".join(a or b for a, b in said).split()))
            texts[path.name] = text
    return texts


def test_the_pack_holds_no_key(folder, lips, variants):
    """Neither an expected value, to any useful number of digits, nor a slip, nor anything that judges."""
    texts = everything_in(folder)
    assert sorted(texts) == ["lips.ipynb", "lips.sheet.json"]
    cells = {cell["id"]: "".join(cell["source"]) for cell in json.loads(texts["lips.ipynb"])["cells"]}
    for question in variants.questions(folder.name):
        own = cells[f"task-{question.number}"] + cells[f"answer-{question.number}"] + texts["lips.sheet.json"]
        if question.task.kind in ("number", "judgement"):
            factor = unit_and_factor(question.task.unit)[1]
            for decimals in range(max(question.task.decimals - 1, 1), 8):
                value = f"{question.numbers.right[0] / factor:.{decimals}f}"
                assert not re.search(rf"(?<![\d.]){re.escape(value)}", own), (question.task.id, value)
        if question.task.kind == "formula":
            assert "tan" not in own.replace("tangent", "")
        for wrong in question.numbers.wrong:
            assert wrong.says not in own
    everything = " ".join(texts.values()).lower()
    for word in (
        "slip",
        "expected",
        "tangent upside",
        "unchecked",
        "seed",
        "digest",
        *(task.relation for task in lips.tasks),
    ):
        assert word not in everything, word
    sheet = json.loads(texts["lips.sheet.json"])
    assert set(sheet) == {"format", "format_version", "course", "set", "title", "version", "student", "tasks"}
    for task in sheet["tasks"]:
        assert set(task) == {"id", "number", "title", "kind", "unit", "names", "symbol", "letters", "functions"}


def test_the_search_for_keys_would_find_one(folder, variants):
    """The test above cannot pass by searching badly: a value put into the pack is found."""
    question = variants.question("lip-length", folder.name)
    planted = folder / "planted.txt"
    planted.write_text(f"x = {question.numbers.right[0]:.2f}", encoding="utf-8")
    assert re.search(
        rf"(?<![\d.]){re.escape(f'{question.numbers.right[0]:.2f}')}", everything_in(folder)["planted.txt"]
    )


def test_a_sheet_in_use_is_left_alone(make_sheet, lips, variants):
    folder = make_sheet("s07")
    notebook = folder / "lips.ipynb"
    notebook.write_text("edited", encoding="utf-8")
    write_sheet(lips, variants, Student("s07"), folder.parent)
    assert notebook.read_text(encoding="utf-8") == "edited"


def test_the_same_sheet_every_time(tmp_path, lips, variants):
    first = write_sheet(lips, variants, Student("s07", "Seven"), tmp_path / "a")
    second = write_sheet(lips, variants, Student("s07", "Seven"), tmp_path / "b")
    assert first.read_bytes() == second.read_bytes()


def test_names_cannot_become_markup(tmp_path, lips, variants):
    name = "<script>alert(1)</script> *x* [l](javascript:1)"
    text = write_sheet(lips, variants, Student("s07", name), tmp_path).read_text(encoding="utf-8")
    head = "".join(json.loads(text)["cells"][0]["source"])
    assert "<script>" not in head
    assert "[l](" not in head
    assert "\\*x\\*" in head


def test_what_a_student_reads_off_the_drawing_is_enough_to_answer(variants):
    question = variants.question("chisel-edge-from-drawing", "s07")
    svg, alt = question_figure(question)
    for name in ("web", "chisel_edge_angle"):
        assert question.numbers.givens[name].shown in svg
        assert question.numbers.givens[name].shown in alt
        assert question.numbers.givens[name].shown not in question.text
    assert f"![{escape_markdown(alt)}](data:image/svg+xml;base64," in question_markdown(question)
    import math

    web, angle = question.numbers.givens["web"].value, question.numbers.givens["chisel_edge_angle"].value
    assert judge_answer(question, f"{web / math.sin(math.radians(angle)):.2f}").state == RIGHT


def test_the_example_beside_a_box_can_be_read_and_is_wrong(variants):
    for question in variants.questions("s07"):
        if question.task.kind != "choice":
            assert judge_answer(question, question.form.example).mark <= 0.5
            assert judge_answer(question, question.form.example).echo
