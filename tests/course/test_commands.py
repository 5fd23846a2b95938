"""The commands an instructor types, and what is said when something is wrong."""

import argparse
import subprocess
import sys
from pathlib import Path

import pytest

from drillpoint.course.commands import COMMANDS

from .conftest import EXERCISES

DEMO = EXERCISES / "demo-class"


def run(*arguments):
    parser = argparse.ArgumentParser()
    subparsers = parser.add_subparsers(dest="command")
    for command in COMMANDS:
        command.add_arguments(subparsers.add_parser(command.name, help=command.help))
    options = parser.parse_args([str(argument) for argument in arguments])
    return next(command for command in COMMANDS if command.name == options.command).run(options)


def mark(tmp_path, **changes):
    values = {
        "folder": DEMO / "hand-ins",
        "set": "lips",
        "roster": DEMO / "roster.csv",
        "out": tmp_path / "grades.csv",
    } | changes
    more = values.get("more", ())
    return run(
        "mark", values["folder"], "--set", values["set"], "--roster", values["roster"], "--out", values["out"], *more
    )


def test_names():
    assert [command.name for command in COMMANDS] == [
        *("hand-out", "mark", "check-set", "demo-class", "paper", "inspection-sheet"),
    ]


def test_hand_out(tmp_path, capsys):
    assert run("hand-out", "lips", DEMO / "roster.csv", tmp_path / "sheets") == 0
    assert len(list((tmp_path / "sheets").glob("*/lips.ipynb"))) == 24
    assert "24 sheets" in capsys.readouterr().out
    assert run("hand-out", "lips", DEMO / "roster.csv", tmp_path / "sheets") == 0
    assert "24 of them were there already" in capsys.readouterr().out


def test_mark_writes_everything_and_marks_again_the_same(tmp_path, capsys):
    assert mark(tmp_path) == 0
    said = capsys.readouterr().out
    assert "24 students" in said
    first = {p.relative_to(tmp_path): p.read_bytes() for p in tmp_path.rglob("*") if p.is_file()}
    names = {str(path) for path in first}
    assert {"grades.csv", "grades-files.csv", "grades-class.html", "grades-results.json"} < names
    assert sum(path.parts[0] == "grades-feedback" for path in first) == 24
    assert mark(tmp_path) == 0
    assert {p.relative_to(tmp_path): p.read_bytes() for p in tmp_path.rglob("*") if p.is_file()} == first


def test_decisions_survive_marking_again(tmp_path, capsys):
    rules = DEMO / "rules.toml"
    before = rules.read_bytes()
    for _ in range(2):
        assert mark(tmp_path, more=["--rules", rules]) == 0
        grades = (tmp_path / "grades.csv").read_text(encoding="utf-8-sig")
        assert "accepted for 50 % of the points: rules.toml, line 9" in grades
    assert rules.read_bytes() == before
    assert "11 of them to look at" in capsys.readouterr().out


def test_rules_that_are_wrong_stop_the_marking_with_their_line(tmp_path, capsys):
    rules = tmp_path / "rules.toml"
    rules.write_text('\n[[excuse]]\nstudent = "s77"\nreason = "ill"\n')
    assert mark(tmp_path, more=["--rules", rules]) == 2
    assert "rules.toml, line 3: student of the roster 's77' is not known" in capsys.readouterr().err
    assert not (tmp_path / "grades.csv").exists()


def test_solutions_are_on_the_pages_only_when_they_are_released(tmp_path, capsys):
    page = tmp_path / "grades-feedback" / "s08.html"
    assert mark(tmp_path) == 0
    assert "without solutions until --release" in capsys.readouterr().out
    assert "Worked solution" not in page.read_text(encoding="utf-8")
    assert mark(tmp_path, more=["--release"]) == 0
    assert "with solutions" in capsys.readouterr().out
    assert "Worked solution" in page.read_text(encoding="utf-8")


def test_pages_can_be_left_out(tmp_path, capsys):
    assert mark(tmp_path, more=["--no-pages"]) == 0
    assert not (tmp_path / "grades-feedback").exists()
    assert "Feedback" not in capsys.readouterr().out


@pytest.mark.parametrize(
    ("more", "begins"),
    [
        ([], b"\xef\xbb\xbfid,name,"),
        (["--decimal", "comma"], b"\xef\xbb\xbfid;name;"),
        (["--separator", "tab", "--no-bom"], b"id\tname\t"),
    ],
)
def test_the_gradebook_as_a_spreadsheet_or_a_school_wants_it(tmp_path, more, begins):
    assert mark(tmp_path, more=more) == 0
    data = (tmp_path / "grades.csv").read_bytes()
    assert data.startswith(begins)
    assert (b"0,5" in data) == ("comma" in more)


def test_an_older_version_kept_beside_the_set_is_marked(tmp_path, capsys):
    text = (EXERCISES / "lips.toml").read_text(encoding="utf-8")
    assert "\nversion = 2 " in text
    (tmp_path / "lips.toml").write_text(text, encoding="utf-8")
    (tmp_path / "lips.v1.toml").write_text(text.replace("\nversion = 2 ", "\nversion = 1 "), encoding="utf-8")
    assert mark(tmp_path, set=tmp_path / "lips.toml") == 0
    assert "; 8 files count for nobody" in capsys.readouterr().out  # one fewer: s21's is for version 1
    assert "answered and marked by version 1 of the set" in (tmp_path / "grades.csv").read_text(encoding="utf-8-sig")


def test_outputs_inside_the_folder_of_hand_ins_do_not_become_hand_ins(tmp_path):
    import shutil

    shutil.copytree(DEMO / "hand-ins", tmp_path / "in")
    assert mark(tmp_path, folder=tmp_path / "in", out=tmp_path / "in" / "grades.csv") == 0
    first = (tmp_path / "in" / "grades-files.csv").read_bytes()
    assert mark(tmp_path, folder=tmp_path / "in", out=tmp_path / "in" / "grades.csv") == 0
    assert (tmp_path / "in" / "grades-files.csv").read_bytes() == first


def test_check_set(capsys):
    assert run("check-set", "lips") == 0
    assert "10 tasks tried for 200 students each" in capsys.readouterr().out


def test_demo_class(tmp_path):
    assert run("demo-class", tmp_path) == 0
    assert (tmp_path / "roster.csv").read_bytes() == (DEMO / "roster.csv").read_bytes()


def test_paper(tmp_path, capsys):
    target = tmp_path / "point paper"
    assert (
        run("paper", target, "--largest", "1/2", "--units", "inch", "--sheet", "letter", "--point-angle", "135°") == 0
    )
    said = capsys.readouterr().out
    assert "drills of 1/8 in, " in said
    assert "1/2 in drill" in said
    assert "print it at 100 %" in said
    page = target.with_name("point paper.html").read_text(encoding="utf-8")
    assert "size: 215.9mm 279.4mm" in page


@pytest.mark.parametrize(
    ("changes", "says"),
    [
        (["--smallest", "ten"], "ten"),
        (["--point-angle", "200"], "200° is outside 60° to 179°"),
        (["--sheet", "A5"], "there is no sheet for paper 'A5'; did you mean 'A4'?"),
        (["--units", "feet"], "units='inch'"),
        (["--largest", "80"], "choose a smaller largest size"),
    ],
)
def test_paper_that_cannot_be(tmp_path, capsys, changes, says):
    assert run("paper", tmp_path / "p.html", *changes) == 2
    assert says in capsys.readouterr().err
    assert not (tmp_path / "p.html").exists()


def test_inspection_sheet(tmp_path, capsys):
    assert run("inspection-sheet", tmp_path / "sheet", "--sheet", "letter", "--units", "inch") == 0
    said = capsys.readouterr().out
    assert "a blank sheet for Letter paper, in inches" in said and "sheet.html" in said
    assert "size: 215.9mm 279.4mm" in (tmp_path / "sheet.html").read_text(encoding="utf-8")
    assert run("inspection-sheet", tmp_path / "no.html", "--units", "feet") == 2
    assert "units='inch'" in capsys.readouterr().err
    assert not (tmp_path / "no.html").exists()


@pytest.mark.parametrize(
    ("changes", "says"),
    [
        ({"set": "lisp"}, "set 'lisp' is not known; known here: "),
        ({"folder": "nowhere"}, "there is no folder nowhere"),
        ({"roster": "nobody.csv"}, "there is no file nobody.csv"),
        ({"out": "grades.xlsx"}, "does not end in .csv"),
    ],
)
def test_one_sentence_and_exit_code_2(tmp_path, capsys, changes, says):
    assert mark(tmp_path, **changes) == 2
    captured = capsys.readouterr()
    assert captured.err.startswith("drillpoint: ")
    assert says in captured.err
    assert captured.err.count("\n") == 1
    assert "Traceback" not in captured.err
    assert not (tmp_path / "grades.csv").exists()


def test_a_roster_whose_ids_would_lead_out_of_the_folder(tmp_path, capsys):
    roster = tmp_path / "roster.csv"
    roster.write_text("id\n../../outside\n")
    assert run("hand-out", "lips", roster, tmp_path / "sheets") == 2
    assert "holds '/'" in capsys.readouterr().err
    assert not (tmp_path / "sheets").exists()


def test_a_place_that_cannot_be_written(tmp_path, capsys):
    (tmp_path / "file").write_text("x")
    assert run("hand-out", "lips", DEMO / "roster.csv", tmp_path / "file" / "sheets") == 2
    assert "choose another place" in capsys.readouterr().err
    assert mark(tmp_path, out=tmp_path / "file" / "grades.csv") == 2
    assert "choose another place" in capsys.readouterr().err


def test_a_gradebook_that_is_open_in_a_spreadsheet(tmp_path, capsys, monkeypatch):
    real = Path.replace

    def held(source, target):
        if target.name == "grades.csv":
            raise PermissionError(13, "Permission denied", str(source), None, str(target))
        return real(source, target)

    monkeypatch.setattr(Path, "replace", held)
    monkeypatch.setattr("drillpoint.course.safe_file._PAUSE", 0)
    assert mark(tmp_path) == 2
    assert "grades.csv may not be written; close it if it is open elsewhere" in capsys.readouterr().err


def test_only_the_standard_library_until_a_command_runs():
    program = (
        "import sys; import drillpoint.course.commands; "
        "print([m for m in ('attr', 'attrs', 'jinja2', 'lark', 'numpy', 'sympy', 'ipywidgets') if m in sys.modules])"
    )
    done = subprocess.run(
        [sys.executable, "-c", program], capture_output=True, text=True, check=True, cwd=EXERCISES.parent
    )
    assert done.stdout.strip() == "[]"


def test_marking_needs_no_numpy_sympy_or_widgets(tmp_path):
    program = (
        "import sys; from drillpoint.course.commands import COMMANDS; import argparse\n"
        "parser = argparse.ArgumentParser(); mark = COMMANDS[1]; mark.add_arguments(parser)\n"
        "code = mark.run(parser.parse_args(sys.argv[1:]))\n"
        "print(code, [m for m in ('numpy', 'sympy', 'ipywidgets', 'matplotlib', 'IPython') if m in sys.modules])"
    )
    arguments = [DEMO / "hand-ins", "--set", "lips", "--roster", DEMO / "roster.csv", "--out", tmp_path / "g.csv"]
    done = subprocess.run(
        [sys.executable, "-c", program, *map(str, arguments)],
        capture_output=True,
        text=True,
        check=True,
        cwd=EXERCISES.parent,
    )
    assert done.stdout.strip().splitlines()[-1] == "0 []"
