"""The documents: their commands run as printed, their links and file names lead somewhere, their pictures are shown."""

import csv
import json
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

PROJECT = Path(__file__).parents[1]
README = PROJECT / "README.md"
DOCUMENTS = sorted([README, PROJECT / "DEVELOPERS.md", *(PROJECT / "docs").rglob("*.md")])
BLOCK = re.compile(r"```(\w+)\n(.*?)```", re.DOTALL)
LINK = re.compile(r"\]\(([^)#]+)(?:#[^)]*)?\)")
# Commands that start or test the whole workbook; tests/test_fresh_clone.py runs those.
NOT_RUN_HERE = {"python3 -m drillpoint open", "python3 -m drillpoint test"}


def walk() -> list[tuple[str, str, str]]:
    """Each block of README.md with its kind, and the block of printed text right behind it ("" without one)."""
    blocks = BLOCK.findall(README.read_text(encoding="utf-8"))
    following = [*blocks[1:], ("", "")]
    pairs = zip(blocks, following, strict=True)
    return [
        (kind, text.strip(), after if then == "text" else "") for (kind, text), (then, after) in pairs if kind != "text"
    ]


@pytest.fixture(scope="module")
def walked(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, dict[str, str]]:
    """README's walk, done in an empty folder that has only the exercises: the folder, and what each block printed."""
    here = tmp_path_factory.mktemp("walk with a space and ü")
    shutil.copytree(PROJECT / "exercises", here / "exercises")
    (here / "drillpoint-work").mkdir()
    printed = {}
    for kind, text, _ in walk():
        if text not in NOT_RUN_HERE:
            printed[text] = run_block(kind, text, here)
    return here, printed


def run_block(kind: str, text: str, here: Path) -> str:
    """What a block prints: a command in the project's folder, or a cell in the sheet of the first student."""
    if kind == "sh":
        words = text.split()
        assert words[:3] == ["python3", "-m", "drillpoint"]
        command, folder = [sys.executable, *words[1:]], here
    else:
        command = [sys.executable, "-c", "from drillpoint.course import answer, hand_in\n" + text]
        folder = here / "drillpoint-work" / "sheets" / "s01"
    surroundings = {**os.environ, "PYTHONPATH": str(PROJECT), "PYTHONUTF8": "1"}
    done = subprocess.run(command, cwd=folder, env=surroundings, capture_output=True, encoding="utf-8", check=False)
    assert done.returncode == 0, done.stderr
    return done.stdout.replace("\\", "/")


def test_the_walk_prints_what_the_readme_says(walked: tuple[Path, dict[str, str]]) -> None:
    _, printed = walked
    said = {text: after for _, text, after in walk() if text not in NOT_RUN_HERE}
    assert len(said) == 3
    assert printed == said


def test_the_gradebook_says_what_the_readme_says(walked: tuple[Path, dict[str, str]]) -> None:
    here, _ = walked
    with (here / "drillpoint-work" / "grades.csv").open(encoding="utf-8-sig", newline="") as file:
        students = {row["id"]: row for row in csv.DictReader(file)}
    rows = re.findall(
        r"^\| (s\d\d) \| (\S+) \| ([^|]+) \| ([^|]*)\|$", README.read_text(encoding="utf-8"), re.MULTILINE
    )
    assert len(rows) == 8
    for student, total, status, comment in rows:
        row = students[student]
        assert (row["total"], row["status"]) == (total, status)
        assert comment.strip() in row["comments"] if comment.strip() else row["comments"] == ""


def test_the_files_the_readme_names_appear(walked: tuple[Path, dict[str, str]]) -> None:
    here, _ = walked
    work = here / "drillpoint-work"
    run_block("python", 'hand_in("lips")', here)
    for name in ("sheets/s01/lips.ipynb", "sheets/s01/lips-s01.hand-in.json", "grades-class.html", "grades-files.csv"):
        assert (work / name).is_file()
        assert Path(name).name in README.read_text(encoding="utf-8")
    assert (work / "grades-feedback" / "s01.html").is_file()


def test_every_lesson_stands_in_the_table_of_the_readme_with_its_set() -> None:
    rows = re.findall(r"^\| (\d+ · [^|]+) \| `([\w-]+)` \|", README.read_text(encoding="utf-8"), re.MULTILINE)
    assert [title.partition(" ")[0] for title, _ in rows] == [str(number) for number in range(len(rows))]
    lessons = sorted((PROJECT / "notebooks").glob("*.ipynb"))
    assert {first_line(path) for path in lessons} == set(dict(rows))
    assert [name for _, name in rows if not (PROJECT / "exercises" / f"{name}.toml").is_file()] == []


def first_line(lesson: Path) -> str:
    """The title of a lesson."""
    return json.loads(lesson.read_text(encoding="utf-8"))["cells"][0]["source"][0].strip().removeprefix("# ")


@pytest.mark.parametrize("path", DOCUMENTS, ids=lambda path: path.name)
def test_links_lead_to_files_that_are_there(path: Path) -> None:
    assert broken_links(path.read_text(encoding="utf-8"), path.parent) == []


def broken_links(text: str, folder: Path) -> list[str]:
    """The links to files that are not there."""
    files = [target for target in LINK.findall(text) if not target.startswith("http")]
    return [target for target in files if not (folder / target).exists()]


def test_a_broken_link_would_be_noticed() -> None:
    assert broken_links("[here](README.md), [there](docs/no-such-page.md)", PROJECT) == ["docs/no-such-page.md"]


@pytest.mark.parametrize(
    "path", [README, PROJECT / "DEVELOPERS.md", *sorted((PROJECT / "docs").glob("*.md"))], ids=lambda p: p.name
)
def test_files_named_in_the_documents_exist(path: Path) -> None:
    assert missing_files(path.read_text(encoding="utf-8")) == []


def missing_files(text: str) -> list[str]:
    """Files of the project named in backquotes that are not there; placeholders in capitals do not count."""
    named = re.findall(r"`((?:drillpoint|docs|tests|exercises|notebooks|\.ci)/[^`\s*]*)`", text)
    return [name for name in named if not (PROJECT / name).exists() and name.upper() != name and "NAME" not in name]


def test_a_missing_file_would_be_noticed() -> None:
    assert missing_files("see `drillpoint/relations/` and `drillpoint/nowhere.py`") == ["drillpoint/nowhere.py"]


@pytest.mark.parametrize("picture", sorted((PROJECT / "docs" / "pictures").iterdir()), ids=lambda path: path.name)
def test_pictures_are_small_and_shown_with_words(picture: Path) -> None:
    assert picture.stat().st_size < 150_000
    shown = re.search(rf"!\[([^\]]*)\]\(docs/pictures/{re.escape(picture.name)}\)", README.read_text(encoding="utf-8"))
    assert shown is not None
    assert len(shown[1]) > 40
