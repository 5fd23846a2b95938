"""Whatever lies in the folder: it is marked or told, with little work, in little room, and nothing else is touched."""

import csv
import io
import json
import random
import subprocess
import sys
import tracemalloc
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.course.class_page import class_page, survey_of
from drillpoint.course.demo import demo_files, student_id
from drillpoint.course.feedback import feedback_page
from drillpoint.course.folder import File, read_folder
from drillpoint.course.gradebook import files_csv, gradebook_csv
from drillpoint.course.hand_in_file import HandInProblem, digest_of, read_hand_in
from drillpoint.course.marking import mark_class
from drillpoint.course.roster import Student

from .hostile_files import content_of, hostile_files, place_odd_entries

HERE = Path(__file__).resolve().parent
PROJECT = HERE.parents[1]
ROSTER = (Student("s01", "One"), Student("s02", "Two"))
CLASS = tuple(Student(student_id(number)) for number in range(1, 25))
# Of what reading one file may cost at most. Measured are 42 thousand calls and 3.2 MB, sixteen times what the largest
# file may hold: both for 14,000 entries of which the last is there twice.
MOST_CALLS = 60_000
MOST_ROOM = 5_000_000
MUTATED = 10_000


@pytest.fixture(scope="module")
def hostile(lips):
    return hostile_files(lips)


@pytest.fixture(scope="module")
def result(lips, hostile):
    return mark_class(lips, ROSTER, [File(name, data) for name, data in hostile.items()])


def table(data):
    return list(csv.DictReader(io.StringIO(data.decode("utf-8-sig"), newline="")))


def test_the_collection_is_large_and_holds_nothing_twice(hostile):
    assert len(set(hostile.values())) >= len(hostile) - 1 >= 60  # the archive is there under two names


def test_none_earns_a_point_and_each_is_told_in_one_line(result, hostile):
    assert [entry.total for entry in result.students] == [0, 0]
    told = [row["file"].removeprefix("'") for row in table(files_csv(result))]
    assert sorted(told) == sorted(hostile)


def test_every_refusal_is_one_short_sentence(result):
    for entry in result.unclaimed:
        assert 10 < len(entry.reason) < 250
        assert "\n" not in entry.reason
        assert "Traceback" not in entry.reason


def test_names_and_answers_are_text_on_every_page(lips, result):
    pages = [class_page(survey_of(result), "p"), *(feedback_page(lips, entry) for entry in result.students)]
    assert "alert(1)" in pages[0]
    for page in pages:
        assert "<script" not in page
        assert "<img" not in page


def test_no_cell_of_any_table_starts_a_formula(result):
    cells = [
        cell for data in (gradebook_csv(result), files_csv(result)) for row in table(data) for cell in row.values()
    ]
    assert any("HYPERLINK" in cell for cell in cells)
    assert not [cell for cell in cells if cell.startswith(("=", "+", "@", "-"))]


def test_links_pipes_and_deep_folders_are_told_and_not_followed(lips, tmp_path):
    expected = place_odd_entries(tmp_path)
    found = list(read_folder(tmp_path))
    assert len(found) == expected
    assert all(len(file.data) <= 2 for file in found)
    assert len(table(files_csv(mark_class(lips, ROSTER, found)))) == expected


MARKING = """
import argparse, os, sys
sys.path.insert(0, {project!r})
from pathlib import Path
from drillpoint.course.mark_command import mark, mark_arguments

def marked(folder, out):
    parser = argparse.ArgumentParser()
    mark_arguments(parser)
    roster = Path({project!r}) / "exercises" / "demo-class" / "roster.csv"
    words = [folder, "--set", "lips", "--roster", str(roster), "--out", out + "/grades.csv", "--release"]
    mark(parser.parse_args(words))

def marked_by_running(folder, out):
    eval("1 + 1")
    open("/etc/hostname", "rb").close()

def marked_with_a_program(folder, out):
    import subprocess
    subprocess.run([sys.executable, "-c", ""])

hostile, out = sys.argv[1:3]
exercises = str(Path({project!r}) / "exercises")
demo = Path({project!r}) / "exercises" / "demo-class" / "hand-ins"
marked(str(demo), out)  # the first time, modules, grammar and templates are loaded
seen, listening = set(), True

def listen(event, details):
    if listening:
        given = details[:2] if event == "os.rename" else details[:1]
        paths = [os.fsdecode(one) for one in given if isinstance(one, (str, bytes, os.PathLike))]
        inside = all(path.startswith((hostile, out)) for path in paths)
        own = [path for path in paths if path.startswith(exercises)]
        known = own == paths and all(path.endswith((".toml", "roster.csv", "exercises")) for path in paths)
        seen.add(event + ("" if inside or known else " outside: " + " ".join(paths)))

sys.addaudithook(listen)
{marker}(hostile, out)
listening = False
print("\\n".join(["events:", *sorted(map(ascii, seen))]))
"""


def events_while(marker, lips, tmp_path):
    """What Python's audit reports while a folder of hostile files is marked."""
    folder, out = tmp_path / "in", tmp_path / "out"
    folder.mkdir()
    out.mkdir()
    for name, data in hostile_files(lips).items():
        (folder / name).write_bytes(data)
    place_odd_entries(folder)
    program = MARKING.format(project=str(PROJECT), marker=marker)
    command = [sys.executable, "-c", program, str(folder), str(out)]
    run = subprocess.run(command, capture_output=True, text=True, check=True, cwd=PROJECT)
    return [line.strip("'") for line in run.stdout.partition("events:\n")[2].splitlines()]


def test_marking_touches_no_process_network_or_code_and_no_file_beyond_its_folders(lips, tmp_path):
    allowed = {"open", "os.scandir", "os.listdir", "os.mkdir", "os.rename", "os.remove", "glob.glob"}
    # Objects that look at themselves when a class or a template is used; nothing leaves the program.
    silent = ("object.__", "sys.", "builtins.id", "code.__new__", "array.__new__", "pathlib.Path.glob")
    events = events_while("marked", lips, tmp_path)
    assert "open" in events
    assert [event for event in events if event not in allowed and not event.startswith(silent)] == []
    assert sorted(path.name for path in (tmp_path / "out").iterdir()) == [
        *("grades-class.html", "grades-feedback", "grades-files.csv", "grades-results.json", "grades.csv")
    ]


@pytest.mark.parametrize(
    ("marker", "event"),
    [
        ("marked_by_running", "exec"),
        ("marked_by_running", "open outside: /etc/hostname"),
        ("marked_with_a_program", "subprocess.Popen"),
    ],
)
@pytest.mark.skipif(sys.platform == "win32", reason="the names of files are others there")
def test_a_marking_that_touches_something_would_be_noticed(lips, tmp_path, marker, event):
    assert any(seen.startswith(event) for seen in events_while(marker, lips, tmp_path))


def calls_while_reading(data):
    """How many calls one file costs: a measure of work that is the same on every machine."""
    calls = 0

    def count(_frame, event, _details):
        nonlocal calls
        calls += event in ("call", "c_call")

    before = sys.getprofile()
    sys.setprofile(count)
    try:
        read_hand_in(data)
    except HandInProblem:
        pass
    finally:
        sys.setprofile(before)
    return calls


def test_each_costs_little_work(hostile):
    assert {name: calls for name, data in hostile.items() if (calls := calls_while_reading(data)) > MOST_CALLS} == {}


def test_work_is_counted(lips):
    few, many = (content_of(lips, answers=[{"task": "t", "typed": "1", "time": ""}] * n) for n in (1, 400))
    assert calls_while_reading(json.dumps(few).encode()) + 400 < calls_while_reading(json.dumps(many).encode())


def test_each_takes_little_room(hostile):
    rooms = {}
    for name, data in hostile.items():
        tracemalloc.start()
        try:
            read_hand_in(data)
        except HandInProblem:
            pass
        finally:
            rooms[name] = tracemalloc.get_traced_memory()[1]
            tracemalloc.stop()
    assert {name: room for name, room in rooms.items() if room > MOST_ROOM} == {}
    assert max(rooms.values()) > 10_000  # otherwise this test says nothing


def mutated(random_, good):
    """A good hand-in with something done to it: bytes changed, left out, doubled or moved, or an entry changed."""
    data = bytearray(random_.choice(good))
    kind = random_.randrange(7)
    if kind == 0:
        for _ in range(random_.randint(1, 8)):
            data[random_.randrange(len(data))] = random_.randrange(256)
    elif kind == 1:
        del data[random_.randrange(len(data)) :]
    elif kind == 2:
        start = random_.randrange(len(data))
        del data[start : start + random_.randint(1, 60)]
    elif kind == 3:
        start = random_.randrange(len(data))
        data[start:start] = data[start : start + random_.randint(1, 200)]
    elif kind == 4:
        data[random_.randrange(len(data)) :] = random_.choice(good)[random_.randrange(200) :]
    else:
        content = json.loads(bytes(data))
        key = random_.choice(sorted(content))
        odd = random_.choice([None, True, -1, 1e300, "", "s02", [], {}, [[]], "\ud800", "9" * 500, content["answers"]])
        content[key] = odd
        if kind == 6:
            content["digest"] = digest_of(content)
        data = bytearray(json.dumps(content).encode())
    return bytes(data)


def test_ten_thousand_mutated_hand_ins_are_all_accounted_for(lips):
    """Each ends in one line of the report, and nobody gets more points than there are."""
    random_ = random.Random(1)
    files = demo_files(lips)
    good = [files[f"hand-ins/lips-s{number:02}.hand-in.json"] for number in (1, 2, 5, 6, 13, 14, 15, 16, 18)]
    found = [File(f"{number}.json", mutated(random_, good)) for number in range(MUTATED)]
    result = mark_class(lips, CLASS, found)
    rows = table(files_csv(result))
    assert sorted(row["file"] for row in rows) == sorted(file.path for file in found)
    counting = sum(row["counts"] == "yes" for row in rows)
    assert MUTATED / 20 < counting < MUTATED / 2  # some are still whole, most are not
    assert all(row["reason"] for row in rows if row["counts"] == "no")
    assert all(0 <= entry.total <= entry.out_of for entry in result.students)


ODD = st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=30)
TYPED = st.text(max_size=30) | st.sampled_from(["3 mm", "yes, 12°", "a", "D/2", "1,234", "=1+1", "−3"])
TASKS = ["point-height", "lip-length", "point-height-formula", "nothing"]


@given(
    st.lists(
        st.fixed_dictionaries(
            {
                "student": st.sampled_from(["s01", "s02", " s01 ", "s03"]) | ODD,
                "answers": st.lists(
                    st.fixed_dictionaries(
                        {"task": st.sampled_from(TASKS) | ODD, "typed": TYPED | ODD, "time": st.text(max_size=20)}
                    ),
                    max_size=4,
                ),
                "time": st.text(max_size=20) | ODD,
            }
        ),
        max_size=5,
    )
)
def test_any_folder_is_marked_the_same_in_any_order_and_under_any_names(lips, changes):
    files = [File(f"f{n}", json.dumps(content_of(lips, **c)).encode()) for n, c in enumerate(changes)]
    result = mark_class(lips, ROSTER, files)
    again = mark_class(lips, ROSTER, [File(f"g{9 - n}", file.data) for n, file in enumerate(reversed(files))])
    assert len(table(files_csv(result))) == len(files)
    for first, second in zip(result.students, again.students, strict=True):
        assert [mark.why for mark in first.marks] == [mark.why for mark in second.marks]
        assert (first.status, first.total) == (second.status, second.total)
        assert 0 <= first.total <= first.out_of
