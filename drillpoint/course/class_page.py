"""The page for the instructor about the whole class: what to teach again, task by task, student by student."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any
from urllib.parse import quote

from drillpoint.course.class_charts import tasks_chart, totals_chart
from drillpoint.course.feedback import page_name, template, who
from drillpoint.course.judging import MISSING, PARTLY, RIGHT, UNREADABLE, WAITING, WRONG
from drillpoint.course.results import ClassResult, number_text
from drillpoint.course.survey import LISTED, STATES, Survey, TaskFound

_SIGNS = {RIGHT: "1", PARTLY: "½", WRONG: "0", UNREADABLE: "?", MISSING: "–", WAITING: "…"}
# Common practice, a rule of thumb: below a third of the points a task is hard for the class, and a task that the best
# third does no better than the weakest deserves a second look.
_HARD, _TELLS_LITTLE = 1 / 3, 0.1
_AGAIN = 3


def survey_of(result: ClassResult) -> Survey:
    """Count the results of a class that is in memory."""
    survey = Survey(result.set)
    for unclaimed in result.unclaimed:
        survey.add_unclaimed(unclaimed)
    for entry in result.students:
        survey.add(entry)
    return survey


def class_page(survey: Survey, pages: str, unused: Sequence[str] = ()) -> str:
    """The page; `pages` is the folder of the students' pages, as seen from it (empty if there are none)."""
    tasks = survey.tasks
    return template("class.html.j2").render(
        set=survey.set,
        survey=survey,
        again=_again(survey),
        slips=survey.slips,
        states=STATES,
        tasks=[_task_view(found) for found in tasks],
        matrix=_matrix(survey, tasks),
        tasks_chart=tasks_chart(tasks),
        totals_chart=totals_chart(survey.bins),
        students=[
            {
                "who": who(student),
                "page": f"{quote(pages)}/{quote(page_name(student))}" if pages else "",
                "signs": [_SIGNS.get(state, "½") for state in states],
                "total": "" if status == "excused" else number_text(total),
                "status": status,
            }
            for student, status, total, states in survey.listed
        ],
        problems=[{"who": who(student), "lines": lines} for student, lines in survey.problems],
        unused=unused,
        listed=LISTED,
    )


def _again(survey: Survey) -> list[str]:
    """The sentences an instructor reads first: the slips most people made, and the tasks most are stuck in."""
    said = []
    for slip in survey.slips[:_AGAIN]:
        if slip.people.count > 1:
            tasks = ", ".join(map(str, slip.tasks))
            said.append(f"{slip.name}: {slip.people.count} of {survey.handed_in} students, in task {tasks}")
    hard = [found for found in survey.tasks if found.reached is not None and found.reached < _HARD]
    for found in sorted(hard, key=lambda found: (found.reached or 0.0, found.number))[:_AGAIN]:
        said.append(f"task {found.number}, {found.task.title}: {found.stuck.count} of {survey.handed_in} are stuck")
    return said


def _matrix(survey: Survey, tasks: Sequence[TaskFound]) -> list[dict[str, Any]]:
    """How often each slip was made in each task."""
    by_task = [dict(found.slips) for found in tasks]
    return [{"name": slip.name, "counts": [found.get(slip.name, 0) for found in by_task]} for slip in survey.slips]


def _task_view(found: TaskFound) -> dict[str, Any]:
    return {
        "number": found.number,
        "title": found.task.title,
        "counts": found.counts,
        "reached": "–" if found.reached is None else f"{100 * found.reached:.0f} %",
        "tells_apart": "–" if found.discrimination is None else f"{found.discrimination:+.2f}",
        "look": found.discrimination is not None and found.discrimination < _TELLS_LITTLE,
        "slip": _most_frequent(found.slips),
        "stuck": str(found.stuck) or "nobody",
    }


def _most_frequent(slips: Sequence[tuple[str, int]]) -> str:
    if not slips:
        return "none"
    # The first in the alphabet among equals, so that the page is the same every time.
    name, count = slips[0]
    if count == 1 and len(slips) > 1:
        return f"{len(slips)} different, once each"
    return f"{name} ({count})"
