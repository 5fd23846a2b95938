"""The commands of the course. Only the standard library is imported until one of them runs."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable
from pathlib import Path

from drillpoint.command import Command
from drillpoint.course.mark_command import mark, mark_arguments
from drillpoint.course.progress import progress_line

REFUSED = 2


def _hand_out_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("set", metavar="SET", help="name of a set in exercises/, such as lips, or the path of its file")
    parser.add_argument("roster", metavar="ROSTER.csv", type=Path, help="the class: a CSV file with a column id")
    parser.add_argument("folder", metavar="FOLDER", type=Path, help="where each student's folder is made")
    parser.add_argument(
        "--sheets",
        choices=("both", "page", "notebook"),
        default="both",
        help="a page that opens in any browser without Python, a notebook, or both (both)",
    )
    parser.add_argument(
        "--key", metavar="FOLDER", type=Path, help="write the key to each sheet, for you only, into this other folder"
    )


def _hand_out(options: argparse.Namespace) -> int:
    from drillpoint.course.exercise_file import load_set
    from drillpoint.course.html_sheet import write_page
    from drillpoint.course.key_page import refuse_beside_sheets, write_key
    from drillpoint.course.roster import read_roster
    from drillpoint.course.sheet import write_sheet
    from drillpoint.course.variant import Variants

    if options.key:
        refuse_beside_sheets(options.key, options.folder)
    exercise_set, roster = load_set(options.set), read_roster(options.roster)
    variants, folder = Variants(exercise_set), options.folder
    progress = progress_line("sheets")
    kept = 0
    for count, student in enumerate(roster, start=1):
        if options.sheets != "page":
            kept += (folder / student.id / f"{exercise_set.id}.ipynb").exists()
            write_sheet(exercise_set, variants, student, folder)
        if options.sheets != "notebook":
            write_page(exercise_set, variants, student, folder)
        if options.key:
            write_key(exercise_set, variants, student, options.key)
        progress(count, len(roster))
    print(
        f"{len(roster)} sheets of {exercise_set.title} are in {folder}, one folder for each student; no key is in them."
    )
    if kept:
        print(f"{kept} of them were there already and were left as they are.")
    if options.key:
        print(f"The keys are in {options.key}. They are for you only: never copy that folder to a student.")
    return 0


def _check_set_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("set", metavar="SET", help="name of a set in exercises/, such as lips, or the path of its file")


def _check_set(options: argparse.Namespace) -> int:
    from drillpoint.course.exercise_file import load_set
    from drillpoint.course.lint import TRIED, lint

    exercise_set = load_set(options.set)
    found = lint(exercise_set)
    for line in found:
        print(line)
    print(
        f"{exercise_set.title}: {len(exercise_set.tasks)} tasks tried for {TRIED} students each; "
        f"{len(found) or 'no'} remarks."
    )
    return 0


def _demo_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("folder", metavar="FOLDER", type=Path, help="where the invented class is written")


def _demo(options: argparse.Namespace) -> int:
    from drillpoint.course.demo import write_demo_class

    count = write_demo_class(options.folder)
    print(f"The invented class is in {options.folder}: roster.csv and {count} hand-in files.")
    return 0


def _paper_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("file", metavar="FILE.html", type=Path, help="the page to write; print it from a browser")
    parser.add_argument("--point-angle", metavar="ANGLE", default="118", help="whole point angle of the notches (118)")
    parser.add_argument("--smallest", metavar="SIZE", help="smallest drill, such as 3 or 1/8 in")
    parser.add_argument("--largest", metavar="SIZE", help="largest drill, such as 13 or 1/2 in")
    parser.add_argument("--sheet", metavar="PAPER", default="A4", help="A4 or Letter (A4)")
    parser.add_argument("--units", metavar="UNITS", default="mm", help="mm or inch: scales, words and bare sizes (mm)")


def _paper(options: argparse.Namespace) -> int:
    from drillpoint.course.reading import read_number
    from drillpoint.drawing import point_paper
    from drillpoint.drawing.showing import read_units

    bare = "mm" if read_units(options.units) == "mm" else "in"
    paper = point_paper(
        point_angle=read_number(options.point_angle, "°").value,
        smallest=None if options.smallest is None else read_number(options.smallest, bare).value,
        largest=None if options.largest is None else read_number(options.largest, bare).value,
        paper=options.sheet,
        units=options.units,
    )
    written = paper.save(options.file)
    print(paper.alt)
    print(f"The sheet is in {written}. Open it in a browser, print it at 100 %, and measure both check bars.")
    return 0


def _inspection_sheet_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("file", metavar="FILE.html", type=Path, help="the page to write; print it from a browser")
    parser.add_argument("--sheet", metavar="PAPER", default="A4", help="A4 or Letter (A4)")
    parser.add_argument("--units", metavar="UNITS", default="mm", help="mm or inch (mm)")


def _inspection_sheet(options: argparse.Namespace) -> int:
    from drillpoint.drawing import inspection_sheet

    sheet = inspection_sheet(paper=options.sheet, units=options.units)
    written = sheet.save(options.file)
    print(sheet.alt)
    print(f"The sheet is in {written}. Open it in a browser and print it; it is one page.")
    return 0


def politely(run: Callable[[argparse.Namespace], int]) -> Callable[[argparse.Namespace], int]:
    """Turn what an instructor can mend into one sentence and exit code 2."""

    def politely(options: argparse.Namespace) -> int:
        from drillpoint.errors import DrillpointError

        try:
            return run(options)
        except DrillpointError as error:
            print(f"drillpoint: {error}", file=sys.stderr)
        except PermissionError as error:
            print(
                f"drillpoint: {error.filename} may not be written; "
                "close it if it is open elsewhere, or choose another place",
                file=sys.stderr,
            )
        except OSError as error:
            print(
                f"drillpoint: {error.filename or 'a file'} could not be written ({error.strerror}); "
                "choose another place",
                file=sys.stderr,
            )
        return REFUSED

    return politely


COMMANDS: tuple[Command, ...] = (
    Command(
        "hand-out",
        "write each student's own sheet",
        _hand_out_arguments,
        politely(_hand_out),
        "lips exercises/demo-class/roster.csv sheets",
    ),
    Command(
        "mark",
        "mark a folder of hand-ins: gradebook, feedback pages, class page",
        mark_arguments,
        politely(mark),
        "exercises/demo-class/hand-ins --set lips --roster exercises/demo-class/roster.csv --out grades.csv",
    ),
    Command(
        "check-set",
        "try a set of exercises out before it is handed out",
        _check_set_arguments,
        politely(_check_set),
        "lips",
    ),
    Command(
        "demo-class",
        "write the invented class with its hand-ins, to try marking on",
        _demo_arguments,
        politely(_demo),
        "demo-class",
    ),
    Command(
        "paper",
        "write a sheet with notches, scales and cards at true scale, to print and hold drill points against",
        _paper_arguments,
        politely(_paper),
        "point-paper.html --point-angle 118 --smallest 3 --largest 13",
    ),
    Command(
        "inspection-sheet",
        "write a blank inspection sheet to print: readings with their limits, faults, decision, signatures",
        _inspection_sheet_arguments,
        politely(_inspection_sheet),
        "inspection-sheet.html --sheet Letter --units inch",
    ),
)
