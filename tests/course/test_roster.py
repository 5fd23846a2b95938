"""Rosters as schools write them."""

import pytest

from drillpoint.course.roster import Student, read_roster
from drillpoint.errors import InstructorError


def roster(tmp_path, data):
    path = tmp_path / "roster.csv"
    path.write_bytes(data if isinstance(data, bytes) else data.encode("utf-8"))
    return read_roster(path)


@pytest.mark.parametrize(
    "data",
    [
        "id,name\ns01,Student 1\ns02,Student 2\n",
        "Name;ID\nStudent 1;s01\nStudent 2;s02\n",
        "STUDENT\tNAME\ns01\tStudent 1\ns02\tStudent 2",
        b"\xef\xbb\xbfStudent ID,Name\r\ns01,Student 1\r\n\r\ns02,Student 2\r\n",
        'id,name,group\n"s01","Student 1",a\n s02 , Student 2 ,b\n',
    ],
)
def test_reads(tmp_path, data):
    assert roster(tmp_path, data) == (Student("s01", "Student 1"), Student("s02", "Student 2"))


def test_names_are_not_needed(tmp_path):
    assert roster(tmp_path, "student\n001\n002\n") == (Student("001"), Student("002"))


@pytest.mark.parametrize(
    ("data", "says"),
    [
        ("", "is empty"),
        ("name,group\nA,1\n", "has no column id: its header is name, group"),
        ("s01,Student 1\ns02,Student 2\n", "has no column id"),
        ("id,name\n", "lists no student"),
        ("id,name\ns01,A\ns01,B\n", "lists the id s01 twice"),
        ("id\n1\n1\n", "lists the id 1 twice"),
        ("id,name\ns01,A\nS01,B\n", "lists the id S01 twice"),
        ("id,name\n,A\n", "line 2 has no id"),
        ("id\n../../etc\n", "holds '/'"),
        ("id\n..\n", "dot"),
        ("id\n.hidden\n", "dot"),
        ("id\nC:\\x\n", "holds ':'"),
        ("id\na\x00b\n", "holds"),
        ("id\nNUL\n", "Windows keeps"),
        ("id\ncom1.txt\n", "Windows keeps"),
        ("id\n" + "s" * 61 + "\n", "longer than 60"),
        ("id\ns\u202e01\n", "invisible"),
        ("id,name\ns01,é\n".encode("latin-1"), "CSV UTF-8"),
        ("id,name\ns01,A\n".encode("utf-16"), "CSV UTF-8"),
    ],
)
def test_says_what_is_wrong(tmp_path, data, says):
    with pytest.raises(InstructorError) as caught:
        roster(tmp_path, data)
    assert says in str(caught.value)
    assert "\n" not in str(caught.value)


def test_missing_file(tmp_path):
    with pytest.raises(InstructorError, match="there is no file"):
        read_roster(tmp_path / "nobody.csv")
    with pytest.raises(InstructorError, match="cannot be read"):
        read_roster(tmp_path)


def test_the_schools_own_id_may_stand_beside(tmp_path):
    students = roster(tmp_path, "id,school id,name\ns01,2026/17,A\ns02,,B\n")
    assert students == (Student("s01", "A", "2026/17"), Student("s02", "B"))
    # If it is the only id, it is the one that names sheets and files.
    assert roster(tmp_path, "school id,name\n17,A\n") == (Student("17", "A"),)


def test_lines_are_counted_as_an_editor_counts_them(tmp_path):
    with pytest.raises(InstructorError, match="line 5: the id"):
        roster(tmp_path, "id,name\n\ns01,A\n\na/b,B\n")
