"""The class page's charts: told in a sentence, readable without colour, the same every time."""

import re
from xml.etree import ElementTree

import pytest

from drillpoint.course.class_charts import tasks_chart, totals_chart
from drillpoint.course.class_page import survey_of
from drillpoint.course.folder import read_folder
from drillpoint.course.marking import mark_class
from drillpoint.course.roster import Student, read_roster
from drillpoint.course.survey import STATES

from .conftest import EXERCISES

SVG = "{http://www.w3.org/2000/svg}"


@pytest.fixture(scope="module")
def survey(lips):
    folder = EXERCISES / "demo-class"
    return survey_of(mark_class(lips, read_roster(folder / "roster.csv"), read_folder(folder / "hand-ins")))


def parsed(chart):
    return ElementTree.fromstring(str(chart))  # noqa: S314 - made here


def test_the_sentence_tells_every_number(survey):
    words = parsed(tasks_chart(survey.tasks)).get("aria-label")
    for found in survey.tasks:
        told = ", ".join(f"{n} {state}" for n, state in zip(found.counts, STATES, strict=True) if n)
        assert f"ask {found.number}: {told}" in words


def test_bars_are_as_long_as_their_counts(survey):
    bars = [r for r in parsed(tasks_chart(survey.tasks)).iter(f"{SVG}rect") if r.get("height") == "18.0"]
    counts = [count for found in survey.tasks for count in found.counts if count]
    assert len(bars) == len(counts)
    unit = float(bars[0].get("width")) / counts[0]
    assert [float(bar.get("width")) / unit for bar in bars] == pytest.approx(counts, abs=0.02)


def test_states_are_told_apart_without_colour(survey):
    chart = parsed(tasks_chart(survey.tasks))
    legend = [r for r in chart.iter(f"{SVG}rect") if r.get("y") == "4.0"]
    looks = {(box.get("fill"), box.get("stroke-dasharray")) for box in legend}
    assert len(looks) == len(legend) == len(STATES)
    # Only greys: every colour has three equal parts.
    for colour in re.findall(r"#([0-9a-f]{6})\b", str(tasks_chart(survey.tasks)) + str(totals_chart(survey.bins))):
        assert colour[:2] == colour[2:4] == colour[4:]


def test_the_letters_fit_into_the_frame(survey):
    for chart in (parsed(tasks_chart(survey.tasks)), parsed(totals_chart(survey.bins))):
        _, _, width, height = map(float, chart.get("viewBox").split())
        for text in chart.iter(f"{SVG}text"):
            assert 0 <= float(text.get("x")) <= width
            assert 0 < float(text.get("y")) <= height


def test_the_totals_are_told_in_tenths(survey):
    words = parsed(totals_chart(survey.bins)).get("aria-label")
    assert f"{survey.bins[-1]} of them 90–100 %" in words


def test_an_empty_class_has_charts_too(lips):
    survey = survey_of(mark_class(lips, [Student("s01")], []))
    assert "nobody yet" in parsed(totals_chart(survey.bins)).get("aria-label")
    assert "task 2: nobody" in parsed(tasks_chart(survey.tasks)).get("aria-label")
