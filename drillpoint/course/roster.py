"""The roster: who is in the class. A CSV file as a school's system or a spreadsheet writes it."""

from __future__ import annotations

import csv
import io
import re
from pathlib import Path

from attrs import frozen

from drillpoint.errors import InstructorError

LARGEST_FILE = 5_000_000
LONGEST_ID = 60
_ID_HEADERS = ("id", "student", "student id", "student_id", "student-id", "number", "school id")
_SCHOOL_ID_HEADERS = ("school id", "school_id", "school-id", "number")
_NAME_HEADERS = ("name", "student name", "full name")
_NOT_IN_FILE_NAMES = re.compile(r'[<>:"/\\|?*\x00-\x1f\x7f]')
# Names that Windows keeps for devices, with or without an ending.
_RESERVED = re.compile(r"(con|prn|aux|nul|com[0-9]|lpt[0-9])(\..*)?", re.IGNORECASE)


@frozen
class Student:
    """One line of the roster."""

    id: str
    name: str = ""
    school_id: str = ""
    """The school's own id, where it is not the one that names sheets and files."""


def read_roster(path: Path) -> tuple[Student, ...]:
    """Read a roster with a header line; comma, semicolon or tab between columns.

    One column holds the ids (id, student, student id or number), one may hold the names (name), one the school's own
    ids (school id) for the gradebook. Ids become names of folders and files, so they hold no sign that a file name
    cannot hold. InstructorError says what is wrong.
    """
    text = _text_of(path)
    first = next((line for line in text.splitlines() if line.strip()), "")
    if not first:
        raise InstructorError(f"{path} is empty; a roster has a header line such as id,name and one line per student")
    separator = max(",;\t", key=first.count)
    try:
        reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator)
        rows = [(reader.line_num, row) for row in reader if any(cell.strip() for cell in row)]
    except csv.Error as error:
        raise InstructorError(f"{path} is not a readable CSV file: {error}") from None
    header = [cell.strip().casefold() for cell in rows[0][1]]
    id_column = next((header.index(h) for h in _ID_HEADERS if h in header), None)
    if id_column is None:
        found = ", ".join(cell.strip() or "(empty)" for cell in rows[0][1][:8])
        raise InstructorError(
            f"{path} has no column id: its header is {found}; name the column with the school's ids id or student"
        )
    name_column, school_column = (
        next((header.index(h) for h in headers if h in header and header.index(h) != id_column), None)
        for headers in (_NAME_HEADERS, _SCHOOL_ID_HEADERS)
    )
    students = tuple(_student(row, id_column, name_column, school_column, f"{path}, line {n}") for n, row in rows[1:])
    if not students:
        raise InstructorError(f"{path} lists no student below its header line")
    _check_doubles(students, path)
    return students


def _text_of(path: Path) -> str:
    try:
        if path.stat().st_size > LARGEST_FILE:
            raise InstructorError(f"{path} is larger than {LARGEST_FILE // 1_000_000} MB, too large for a roster")
        data = path.read_bytes()
    except FileNotFoundError:
        raise InstructorError(f"there is no file {path}; give the roster's CSV file") from None
    except OSError as error:
        raise InstructorError(f"{path} cannot be read ({error.strerror}); give the roster's CSV file") from None
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError:
        pass
    raise InstructorError(f"{path} is not UTF-8 text; in the spreadsheet choose “Save as”, then “CSV UTF-8”")


def _student(row: list[str], id_column: int, name_column: int | None, school_column: int | None, where: str) -> Student:
    def cell(column: int | None) -> str:
        return row[column].strip() if column is not None and column < len(row) else ""

    student_id = cell(id_column)
    if not student_id:
        raise InstructorError(f"{where} has no id; every student needs one")
    if reason := why_not_a_file_name(student_id):
        raise InstructorError(
            f"{where}: the id {student_id[:80]!r} {reason}; ids become names of folders, so change it in the roster"
        )
    return Student(student_id, cell(name_column), cell(school_column))


def why_not_a_file_name(student_id: str) -> str:
    """Say why an id cannot be the name of a folder on every system; empty if it can."""
    if len(student_id) > LONGEST_ID:
        return f"is longer than {LONGEST_ID} characters"
    if bad := _NOT_IN_FILE_NAMES.search(student_id):
        return f"holds {bad.group()!r}"
    if not student_id.isprintable():
        return "holds an invisible sign"
    if student_id.startswith(".") or student_id.endswith((".", " ")):
        return "begins or ends with a dot or a space"
    if _RESERVED.fullmatch(student_id):
        return "is a name that Windows keeps for itself"
    return ""


def _check_doubles(students: tuple[Student, ...], path: Path) -> None:
    seen: set[str] = set()
    for student in students:
        # Folders of ids that differ only in capitals would be the same folder on Windows and macOS.
        if student.id.casefold() in seen:
            raise InstructorError(f"{path} lists the id {student.id} twice; every student needs an id of their own")
        seen.add(student.id.casefold())
