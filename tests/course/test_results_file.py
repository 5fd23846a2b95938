"""Results as JSON: complete, and each mark explained."""

import io
import json

import pytest

from drillpoint.course.folder import read_folder
from drillpoint.course.marking import mark_class
from drillpoint.course.results_file import ResultsFile
from drillpoint.course.roster import Student, read_roster
from drillpoint.course.rules_file import read_rules

from .conftest import EXERCISES

DEMO = EXERCISES / "demo-class"


def written(result):
    file = io.BytesIO()
    results = ResultsFile(file, result.set)
    for entry in result.unclaimed:
        results.add_unclaimed(entry)
    results.begin_students()
    for entry in result.students:
        results.add(entry)
    results.close(result.unused)
    return json.loads(file.getvalue())


@pytest.fixture(scope="module")
def result(lips):
    roster = read_roster(DEMO / "roster.csv")
    rules = read_rules(DEMO / "rules.toml", (lips,), roster)
    return mark_class(lips, roster, read_folder(DEMO / "hand-ins"), rules=rules)


def test_everything_is_there(result, lips):
    content = written(result)
    assert (content["format"], content["set"], content["version"]) == ("drillpoint results", lips.id, lips.version)
    assert [task["id"] for task in content["tasks"]] == [task.id for task in lips.tasks]
    assert len(content["files_that_count_for_nobody"]) == len(result.unclaimed)
    for student, entry in zip(content["students"], result.students, strict=True):
        assert student["id"] == entry.student.id
        assert student["total"] == (None if entry.excused else pytest.approx(entry.total))
        assert [mark["points"] for mark in student["marks"]] == pytest.approx([mark.points for mark in entry.marks])


def test_every_mark_has_lines_that_explain_it(result):
    by_id = {student["id"]: student for student in written(result)["students"]}
    assert by_id["s14"]["marks"][0]["why"][-2:] == [
        "accepted for 50 % of the points: rules.toml, line 9: 1.234 was meant, as the sketch on paper shows",
        "0.5 of 1",
    ]
    assert by_id["s17"]["marks"][0]["why"][1:] == ["1 day late, 10 % off", "0.9 of 1"]
    assert by_id["s08"]["marks"][0]["slips"] == {"point-height": "tangent upside down"}
    assert by_id["s08"]["marks"][0]["why"][0].endswith(": not right: tangent upside down")
    assert all(mark["why"] for student in by_id.values() for mark in student["marks"])


def test_a_class_of_nobody_is_still_json(lips):
    content = written(mark_class(lips, [Student("s01")], []))
    assert content["files_that_count_for_nobody"] == []
    assert content["students"][0]["status"] == "no hand-in"
