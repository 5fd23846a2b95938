"""The command that marks a class. Only the standard library is imported until it runs."""

from __future__ import annotations

import argparse
from contextlib import ExitStack
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from drillpoint.course.progress import counted, progress_line

if TYPE_CHECKING:
    from drillpoint.course.gradebook import Layout
    from drillpoint.course.marking import Marking
    from drillpoint.course.survey import Survey


def mark_arguments(parser: argparse.ArgumentParser) -> None:
    """State what the command takes."""
    parser.add_argument(
        "folder", metavar="FOLDER", type=Path, help="the hand-in files, in any folders and under any names"
    )
    parser.add_argument("--set", metavar="SET", required=True, help="name of the set, or the path of its file")
    parser.add_argument(
        "--roster", metavar="ROSTER.csv", type=Path, required=True, help="the class: a CSV file with a column id"
    )
    parser.add_argument("--out", metavar="GRADES.csv", type=Path, required=True, help="the gradebook to write")
    parser.add_argument(
        "--rules", metavar="RULES.toml", type=Path, help="deadline, resubmission, and your decisions about answers"
    )
    parser.add_argument(
        "--release", action="store_true", help="put worked solutions with their own numbers on the students' pages"
    )
    parser.add_argument("--no-pages", action="store_true", help="write no pages for students")
    parser.add_argument("--decimal", choices=("point", "comma"), default="point", help="decimal sign in the CSV files")
    parser.add_argument(
        "--separator", choices=("comma", "semicolon", "tab"),
        help="between the cells of the CSV files (comma; semicolon with --decimal comma)",
    )  # fmt: skip
    parser.add_argument(
        "--no-bom",
        action="store_true",
        help="leave out the mark by which spreadsheets know UTF-8",
    )


def mark(options: argparse.Namespace) -> int:
    """Mark a folder and write everything beside the gradebook."""
    from drillpoint.course.exercise_file import find_set, load_set
    from drillpoint.course.folder import read_folder
    from drillpoint.course.marking import Marking
    from drillpoint.course.roster import read_roster
    from drillpoint.course.rules import NO_RULES
    from drillpoint.course.rules_file import read_rules
    from drillpoint.course.versions import older_versions

    outputs = _Outputs.beside(options.out)
    set_file = find_set(options.set)
    exercise_set, roster = load_set(set_file), read_roster(options.roster)
    older = older_versions(exercise_set, set_file)
    rules = read_rules(options.rules, (exercise_set, *older), roster) if options.rules else NO_RULES
    leave_out = [*outputs.all(), options.roster, set_file, *([options.rules] if options.rules else [])]
    files = read_folder(options.folder, leave_out)
    outputs.make(with_pages=not options.no_pages)
    with Marking(exercise_set, roster, rules=rules, older=older, room=options.out.parent) as marking:
        for file in counted(files, "files read"):
            marking.sort_in(file)
        survey = _write(marking, outputs, options)
    _report(survey, outputs, options)
    return 0


@dataclass(frozen=True)
class _Outputs:
    gradebook: Path
    files: Path
    results: Path
    class_page: Path
    pages: Path

    @classmethod
    def beside(cls, gradebook: Path) -> _Outputs:
        from drillpoint.errors import InstructorError

        if gradebook.suffix.lower() != ".csv":
            raise InstructorError(f"--out {gradebook} does not end in .csv; name the gradebook as in --out grades.csv")
        ends = ("files.csv", "results.json", "class.html", "feedback")
        return cls(gradebook, *(gradebook.with_name(f"{gradebook.stem}-{end}") for end in ends))

    def all(self) -> tuple[Path, ...]:
        return self.gradebook, self.files, self.results, self.class_page, self.pages

    def make(self, *, with_pages: bool) -> None:
        self.gradebook.parent.mkdir(parents=True, exist_ok=True)
        if with_pages:
            self.pages.mkdir(exist_ok=True)


def _layout(options: argparse.Namespace) -> Layout:
    from drillpoint.course.gradebook import DECIMALS, SEPARATORS, Layout

    separator = options.separator or ("semicolon" if options.decimal == "comma" else "comma")
    return Layout(SEPARATORS[separator], DECIMALS[options.decimal], not options.no_bom)


def _write(marking: Marking, outputs: _Outputs, options: argparse.Namespace) -> Survey:
    """Write the results as they come, so that no more than one student's are in memory."""
    from drillpoint.course.class_page import class_page
    from drillpoint.course.feedback import feedback_page, page_name
    from drillpoint.course.gradebook import FileReport, Gradebook
    from drillpoint.course.results_file import ResultsFile
    from drillpoint.course.safe_file import write_safely, writing_safely
    from drillpoint.course.survey import Survey

    layout, survey, progress = _layout(options), Survey(marking.set), progress_line("students marked")
    with ExitStack() as open_files:
        parts = [open_files.enter_context(writing_safely(path)) for path in outputs.all()[:3]]
        book = Gradebook(parts[0], marking.set, marking.roster, layout)
        report, results = FileReport(parts[1], layout), ResultsFile(parts[2], marking.set)
        for unclaimed in marking.unclaimed():
            for unclaimed_to in (report, results, survey):
                unclaimed_to.add_unclaimed(unclaimed)
        results.begin_students()
        for count, entry in enumerate(marking.results(), start=1):
            for to in (book, report, results, survey):
                to.add(entry)
            if not options.no_pages:
                page = feedback_page(marking.set, entry, release=options.release)
                write_safely(outputs.pages / page_name(entry.student), page.encode("utf-8", "replace"), lasting=False)
            progress(count, len(marking.roster))
        results.close(marking.unused)
        book.close()
        report.close()
    page = class_page(survey, "" if options.no_pages else outputs.pages.name, marking.unused)
    write_safely(outputs.class_page, page.encode("utf-8", "replace"))
    return survey


def _report(survey: Survey, outputs: _Outputs, options: argparse.Namespace) -> None:
    print(f"Gradebook:      {outputs.gradebook}")
    print(f"Class page:     {outputs.class_page}")
    if not options.no_pages:
        about = "with solutions" if options.release else "without solutions until --release"
        print(f"Feedback pages: {outputs.pages} (one for each student, {about})")
    print(
        f"{survey.students} students, {survey.problem_count} of them to look at; "
        f"{survey.unclaimed_count} files count for nobody ({outputs.files.name})."
    )
