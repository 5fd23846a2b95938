"""`from drillpoint.lesson import *`: the names a lesson uses, fetched only when asked for."""

import subprocess
import sys

import pytest

import drillpoint.ground
import drillpoint.lesson


@pytest.mark.parametrize("name", drillpoint.lesson.__all__)
def test_every_name_is_there(name: str) -> None:
    assert getattr(drillpoint.lesson, name) is not None


def test_an_unknown_name_is_refused() -> None:
    with pytest.raises(AttributeError, match="no attribute 'drow'"):
        getattr(drillpoint.lesson, "drow")  # noqa: B009


def test_importing_it_loads_no_notebook_or_number_library() -> None:
    code = "import sys, drillpoint.lesson; print([m for m in ('numpy', 'sympy', 'ipywidgets') if m in sys.modules])"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"


def test_the_names_are_those_of_the_book_and_the_lesson_s_own() -> None:
    from drillpoint.relations import BOOK

    names: dict[str, object] = {}
    exec("from drillpoint.lesson import *", names)  # noqa: S102 - a star import cannot stand inside a function
    ground = set(drillpoint.ground.__all__) - {"STATED", "CannotBeGround", "NoSetup", "Setup"}
    assert set(BOOK) | ground | {
        "ask",
        "chart",
        "chart_points",
        "compare",
        "compare_thinnings",
        "derive",
        "draw",
        "explore",
        "find",
        "governing_stock",
        "how_sure",
        "inspection_sheet",
        "judge",
        "look",
        "look_up",
        "plan_regrind",
        "point_paper",
        "Shop",
        "tabulate",
        "work_out",
    } == {name for name in names if not name.startswith("__")}
