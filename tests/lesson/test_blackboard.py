"""The blackboard: what is shown comes from the relation, in HTML and in plain text alike."""

import html
import re

import pytest

from drillpoint.errors import LearnerError, UnknownGiven
from drillpoint.lesson.blackboard import derive, tabulate, work_out
from drillpoint.relations import BOOK, lip_length, point_height, relief_at_radius, speed_rule_ratio

LIP = {"diameter": 10, "point_angle": 118, "web": 1.5, "chisel_edge_angle": 125}


def words(shown: str) -> str:
    """The text of some HTML."""
    return html.unescape(re.sub(r"<[^>]*>", "", shown))


@pytest.mark.parametrize("name", sorted(BOOK))
def test_a_derivation_shows_every_step_assumption_and_source(name: str) -> None:
    board = derive(name)
    for step in BOOK[name].derivation:
        assert step.words in board.text
    for said in (*BOOK[name].assumptions, *BOOK[name].sources):
        assert said in board.text
        assert said in words(board.html)
    assert board.html.count("<li>") == len(BOOK[name].derivation)


def test_a_derivation_ends_in_the_formula() -> None:
    last = [line for line in derive(lip_length).text.splitlines() if line.startswith("      ")][-1]
    # SOURCE: the relation as the drawing gives it (half web beside the axis, foreshortened by the sine).
    assert last.strip() == "L = (√(R² − t²) − t·cot δ)/sin κ"


def test_work_out_shows_the_worked_line_of_the_relation() -> None:
    board = work_out(lip_length, **LIP)
    line = lip_length.worked(**LIP).text
    assert line in board.text
    assert line in words(board.html)
    assert "5.15 mm" in line  # DERIVED: (√(25 − 0.5625) − 0.75·cot 55°)/sin 59°


def test_work_out_shows_every_line_where_a_given_had_to_be_worked_out_first() -> None:
    text = work_out("chisel_edge_angle", point_angle=118, lip_relief=12, web=1.5, diameter=10).text
    assert "u = 1.5/10 = 0.15" in text
    assert "= 7.1°" in text and "= 101.6°" in text  # DERIVED: 7.0589° and 101.6448°


def test_work_out_says_how_an_acute_angle_was_read() -> None:
    board = work_out(lip_length, **{**LIP, "chisel_edge_angle": 55})
    assert "5.15 mm" in board.text
    assert "55" in board.text.splitlines()[-1] and "125" in board.text.splitlines()[-1]


def test_a_table_holds_one_row_for_each_value() -> None:
    board = tabulate(point_height, diameter=10, point_angle=[90, 118, 135])
    rows = board.text.splitlines()[2:]
    # DERIVED: 5/tan 45°, 5/tan 59°, 5/tan 67.5°.
    assert [row.split() for row in rows] == [["90°", "5", "mm"], ["118°", "3", "mm"], ["135°", "2.07", "mm"]]
    assert board.html.count("<tr>") == 4
    assert "diameter 10 mm" in board.text.splitlines()[0]


def test_a_table_of_one_given_has_a_title_that_ends_there() -> None:
    board = tabulate(speed_rule_ratio, speed_constant=[318, 320])
    assert board.text.splitlines()[0] == "Speed by the rule over exact speed"
    # DERIVED: π·318/1000, π·320/1000.
    assert [row.split()[-1] for row in board.text.splitlines()[2:]] == ["0.999", "1.0053"]


def test_a_table_takes_keywords_that_stand_in_for_others() -> None:
    board = tabulate(relief_at_radius, radius=[5, 2.5, 1], diameter=10, web=1.5, point_angle=118, lip_relief=12)
    # DERIVED: 12 at the corner by definition; 16.61 and 28.04 from the plane through the lip.
    assert [line.split()[-1] for line in board.text.splitlines()[2:]] == ["12°", "16.6°", "28°"]


@pytest.mark.parametrize("point_angle", [118, [118, 135]])
def test_a_table_wants_exactly_one_list(point_angle: object) -> None:
    diameter = 10 if point_angle == 118 else [10, 12]
    with pytest.raises(LearnerError, match=r"one given with several values.*point_angle=\[118, 135\]"):
        tabulate(point_height, diameter=diameter, point_angle=point_angle)  # type: ignore[arg-type]


def test_an_unknown_relation_is_refused_with_the_nearest_name() -> None:
    with pytest.raises(LearnerError, match=r"lip_lenght.*lip_length"):
        work_out("lip_lenght", diameter=10)


def test_what_the_relation_refuses_is_passed_on() -> None:
    with pytest.raises(UnknownGiven, match=r"diametre.*diameter"):
        work_out(point_height, diametre=10, point_angle=118)


def test_a_board_shows_itself_as_html_and_as_text() -> None:
    board = derive(point_height)
    assert set(board._repr_mimebundle_()) == {"text/html", "text/plain"}
    assert repr(board) == board.text


@pytest.mark.parametrize("name", ["lip_length", "point_height"])
def test_each_equation_but_the_last_waits_to_be_unfolded(name: str) -> None:
    steps = re.findall(r"<li>(.*?)</li>", derive(name).html)
    assert len(steps) == len(BOOK[name].derivation)
    for step in steps[:-1]:
        assert re.fullmatch(r"<details><summary>[^<].*?</summary><p .*</p></details>", step)
    assert "<details>" not in steps[-1]
