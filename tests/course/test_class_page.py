"""The instructor's page: from what it says, tomorrow's lesson can be planned."""

import re

import pytest

from drillpoint.course.class_page import class_page, survey_of
from drillpoint.course.folder import File, read_folder
from drillpoint.course.marking import mark_class
from drillpoint.course.roster import Student, read_roster
from drillpoint.course.survey import LISTED

from .conftest import EXERCISES


@pytest.fixture(scope="module")
def survey(lips):
    folder = EXERCISES / "demo-class"
    return survey_of(mark_class(lips, read_roster(folder / "roster.csv"), read_folder(folder / "hand-ins")))


def text_of(page):
    return " ".join(re.sub(r"<[^>]*>", " ", page).split())


def test_it_begins_with_what_to_teach_again(survey):
    slip = survey.slips[0]
    first = f"{slip.name}: {slip.people.count} of 18 students, in task {', '.join(map(str, slip.tasks))}"
    assert f"What to teach again {first}" in text_of(class_page(survey, "p"))


def test_each_task_has_its_figures_and_who_is_stuck(survey):
    text = text_of(class_page(survey, "p"))
    for found in survey.tasks:
        figures = f"{' '.join(map(str, found.counts))} {100 * found.reached:.0f} % {found.discrimination:+.2f}"
        assert f"{found.number} {found.task.title} {figures}" in text
        assert f"{found.number} {found.task.title} {found.stuck}" in text


def test_every_slip_has_a_line_with_its_count_in_each_task(survey):
    page = class_page(survey, "p")
    table = page[page.index('id="slips"') : page.index('id="students"')]
    rows = dict(re.findall(r'<tr><th scope="row">([^<]*)</th>(.*)</tr>', table))
    assert len(rows) == len(survey.slips)
    for slip in survey.slips:
        counts = [int(cell or 0) for cell in re.findall(r'<td class="n">(\d*)</td>', rows[slip.name])]
        assert sum(counts) == slip.times
        assert tuple(n for n, count in enumerate(counts, start=1) if count) == slip.tasks


def test_without_pages_for_students_there_are_no_links(survey):
    assert "<a " in class_page(survey, "p")
    assert "<a " not in class_page(survey, "")


def test_decisions_that_changed_nothing_are_told(survey):
    assert "rules.toml, line 3: x (changed nothing)" in class_page(
        survey, "p", ["rules.toml, line 3: x (changed nothing)"]
    )
    assert "changed nothing" not in class_page(survey, "p")


def test_a_large_class_gets_a_page_that_can_still_be_read(lips):
    students = [Student(f"p{n}") for n in range(3 * LISTED)]
    files = [File(f"x{n}", b"?") for n in range(2 * LISTED)]
    page = class_page(survey_of(mark_class(lips, students, files)), "p")
    assert len(page) < 400_000
    assert f"The first {LISTED} of {3 * LISTED} students; all are in the gradebook." in page
    assert f"The first {LISTED} of {2 * LISTED}; all are in the report on files." in page
