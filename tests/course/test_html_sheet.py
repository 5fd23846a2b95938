"""The page of a sheet as text: the same numbers as in the notebook, and nothing a name could break."""

import json
import re

from attrs import evolve

from drillpoint.course.html_sheet import html_sheet
from drillpoint.course.roster import Student
from drillpoint.course.sheet import write_sheet


def test_same_numbers_in_notebook_page_and_description(tmp_path, lips, variants):
    """Every number that a student sees, in every question, for the whole class."""
    for student in ("s01", "s07", "s24"):
        folder = write_sheet(lips, variants, Student(student), tmp_path).parent
        questions = list(variants.questions(student))
        page = html_sheet(lips, Student(student), questions)
        notebook = json.loads((folder / "lips.ipynb").read_text(encoding="utf-8"))
        cells = {cell["id"]: "".join(cell["source"]) for cell in notebook["cells"]}
        sections = re.findall(r'<section class="task".*?</section>', page, re.DOTALL)
        assert len(sections) == len(questions)
        for question, section in zip(questions, sections, strict=True):
            texts = [
                question.text,
                *(b.asks for b in question.boxes),
                *(shown for b in question.boxes for _, shown in b.choices),
            ]
            wanted = [number for text in texts for number in re.findall(r"\d[\d./]*", text)]
            for where in (section, cells[f"task-{question.number}"]):
                plain = re.sub(r"<svg.*?</svg>|\(data:[^)]*\)|<style.*?</style>", "", where, flags=re.DOTALL)
                found = re.findall(r"\d[\d./]*", plain)
                assert [number for number in wanted if number not in found] == []


def test_names_and_texts_cannot_become_markup(lips, variants):

    name = "</script><script>alert(1)</script><img src=x onerror=alert(1)>"
    odd = evolve(lips, title='"}</style><b>', course="</script><!--<script>")
    text = html_sheet(odd, Student("s07", name), list(variants.questions("s07")))
    assert text.count("<script") == 2
    assert "<img" not in text
    assert "<b>" not in text.replace("<b></b>", "").replace("<b>&lt;", "").replace("<b>s07", "")
