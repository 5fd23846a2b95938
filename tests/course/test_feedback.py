"""Pages for students and for the instructor."""

import re
from html.parser import HTMLParser

import pytest

from drillpoint.course.class_page import class_page, survey_of
from drillpoint.course.feedback import feedback_page, page_name
from drillpoint.course.folder import File, read_folder
from drillpoint.course.hand_in_file import AnswerRecord, hand_in_bytes
from drillpoint.course.marking import mark_class
from drillpoint.course.roster import Student, read_roster
from drillpoint.course.rules_file import read_rules

from .conftest import EXERCISES

VOID = {"meta", "br", "img", "hr", "link", "input"}


class Outline(HTMLParser):
    """Checks that a page is well nested and collects what a screen reader goes by."""

    def __init__(self, page):
        super().__init__()
        self.open, self.headings, self.cells, self.ids, self.tags = [], [], [], [], set()
        self.feed(page)
        assert self.open == []

    def handle_starttag(self, tag, attributes):
        attributes = dict(attributes)
        self.tags.add(tag)
        if tag not in VOID:
            self.open.append(tag)
        if re.fullmatch(r"h[1-6]", tag):
            self.headings.append(int(tag[1]))
        if tag == "th":
            self.cells.append(attributes.get("scope"))
        if "id" in attributes:
            self.ids.append(attributes["id"])

    def handle_startendtag(self, tag, _):
        self.tags.add(tag)

    def handle_endtag(self, tag):
        assert self.open.pop() == tag


@pytest.fixture(scope="module")
def result(lips):
    demo = EXERCISES / "demo-class"
    return mark_class(lips, read_roster(demo / "roster.csv"), read_folder(demo / "hand-ins"))


@pytest.fixture(scope="module")
def pages(lips, result):
    return {entry.student.id: feedback_page(lips, entry, release=True) for entry in result.students}


def test_pages_are_well_made(pages, result):
    for page in [*pages.values(), class_page(survey_of(result), "pages")]:
        outline = Outline(page)
        assert outline.headings[0] == 1
        assert set(outline.headings[1:]) <= {2, 3}
        assert all(scope in ("col", "row") for scope in outline.cells)
        assert len(outline.ids) == len(set(outline.ids))
        assert "script" not in outline.tags
        assert '<html lang="en">' in page
        assert "default-src 'none'" in page
        # The address of the SVG namespace is a name, not a place that anything is fetched from.
        assert "http" not in page.replace("http-equiv", "").replace("http://www.w3.org/2000/svg", "")


def test_a_page_says_how_the_answer_was_read_names_the_slip_and_shows_the_way(pages):
    page = pages["s08"]
    assert "The tangent is upside down" in page
    assert "Read as" in page
    assert "Worked solution" in page
    assert re.search(r"h = R/tan κ", page)
    page = pages["s02"]
    assert re.search(r"<dd>\d+,\d\d mm = \d+\.\d\d mm</dd>", page)


def test_every_state_stands_in_words(pages):
    assert "could not be read" in pages["s14"]
    assert "The comma can be read in two ways" in pages["s14"]
    assert "    1,234\n     ^" in pages["s14"]
    assert "not answered" in pages["s16"]
    assert "partly right" in pages["s05"]
    assert "No hand-in file was found" in pages["s20"]
    assert "please talk to your instructor" in pages["s21"]


def test_typed_html_is_text(pages):
    assert "<b>5</b>" not in pages["s13"]
    assert "&lt;b&gt;5&lt;/b&gt;" in pages["s13"]
    assert "__import__(&#39;os&#39;)" in pages["s13"]


def test_nothing_about_other_students_on_a_students_page(pages, result):
    for entry in result.students:
        page = pages[entry.student.id]
        for other in result.students:
            if other.student.id != entry.student.id:
                assert not re.search(rf"\b{other.student.id}\b", page)
                assert other.student.name not in page
        assert "right for the numbers" not in page
        assert "altered" not in page


def test_the_class_page_says_who_which_tasks_and_which_slips(result, lips):
    page = class_page(survey_of(result), "grades-feedback")
    for entry in result.students:
        assert f'href="grades-feedback/{entry.student.id}.html"' in page
    for task in lips.tasks:
        assert task.title in page
    assert "tangent upside down" in page
    assert "is right for the numbers of s01" in page
    assert "visitor.json" in page
    assert "s99" in page


def test_hostile_names_and_answers_are_text_everywhere(lips):
    name = "<script>alert(1)</script>"
    data = hand_in_bytes(lips.course, lips.id, lips.version, "s01", [AnswerRecord("point-height", name, "1")], "2")
    result = mark_class(lips, [Student("s01", name)], [File(name, b"x"), File("a", data)])
    for page in (feedback_page(lips, result.students[0]), class_page(survey_of(result), "p")):
        assert "<script" not in page
        Outline(page)


def test_page_names_stay_in_their_folder():
    assert page_name(Student("s07")) == "s07.html"


def test_the_same_class_gives_the_same_pages(result, pages, lips):
    assert class_page(survey_of(result), "p") == class_page(survey_of(result), "p")
    assert feedback_page(lips, result.students[0], release=True) == pages["s01"]


def test_until_release_a_page_gives_no_value_away(lips, result):
    """What is expected stands there in kind: quantity, unit, decimals, tolerance."""
    for entry in result.students:
        kept, released = (feedback_page(lips, entry, release=release) for release in (False, True))
        assert "Worked solution" in released
        assert "Worked solution" not in kept
        assert "The worked solutions follow when your instructor releases them." in kept
        assert "in mm, to 2 decimals. Up to ±0.02 mm off counts as right." in kept
        for mark in entry.marks:
            for line in mark.question.worked.splitlines():
                # A line with a number in it; the formula alone is no secret.
                if re.search(r"= [0-9]", line):
                    assert line.rsplit(" = ", 1)[-1] in released
            if mark.question.task.kind == "number" and mark.verdict.mark < 1 and mark.question.task.unit == "mm":
                right = f"{mark.question.numbers.right[0]:.2f}"
                assert right not in re.sub(r"<svg.*?</svg>", "", _about(kept, mark), flags=re.DOTALL)


def _about(page, mark):
    """The section of one task."""
    start = page.index(f'id="task-{mark.question.number}"')
    return page[start : page.index("</section>", start)]


def test_what_was_decided_is_told_without_the_place(lips):
    roster = read_roster(EXERCISES / "demo-class" / "roster.csv")
    rules = read_rules(EXERCISES / "demo-class" / "rules.toml", (lips,), roster)
    result = mark_class(lips, roster, read_folder(EXERCISES / "demo-class" / "hand-ins"), rules=rules)
    pages = {entry.student.id: feedback_page(lips, entry) for entry in result.students}
    assert "accepted for 50 % of the points: 1.234 was meant, as the sketch on paper shows" in pages["s14"]
    assert "1 day late, 10 % off" in pages["s17"]
    assert "3 points added: three tasks done aloud at the bench" in pages["s20"]
    assert "You are excused: this set does not count for you." in pages["s24"]
    assert "moved to another class" not in pages["s24"]
    assert not any("rules.toml" in page for page in pages.values())
