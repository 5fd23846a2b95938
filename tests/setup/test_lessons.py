import errno
import json
import re
import shutil
from pathlib import Path

import pytest

from drillpoint.setup import lessons
from drillpoint.setup.places import Places
from drillpoint.setup.trouble import SetupError


@pytest.fixture
def places(tmp_path: Path) -> Places:
    made = Places(project=tmp_path / "project", folder=tmp_path / "Übung von mir", installed=False)
    (made.lessons / "pictures").mkdir(parents=True)
    (made.lessons / "02_later.ipynb").write_text("two")
    (made.lessons / "01_lips.ipynb").write_text("one")
    (made.lessons / "pictures" / "drill.svg").write_text("<svg/>")
    (made.lessons / ".ipynb_checkpoints").mkdir()
    (made.lessons / ".ipynb_checkpoints" / "01_lips-checkpoint.ipynb").write_text("left over")
    return made


def visible(folder: Path) -> list[str]:
    return sorted(path.relative_to(folder).as_posix() for path in folder.rglob("*") if path.is_file())


def test_everything_a_lesson_needs_is_copied(places: Places) -> None:
    copied = lessons.copy(places)
    assert copied.first == "01_lips.ipynb"
    assert set(copied.fresh) == {"01_lips.ipynb", "02_later.ipynb", "pictures/drill.svg"}
    assert copied.beside == ()
    assert visible(places.folder) == [
        ".drillpoint/copies.json",
        "01_lips.ipynb",
        "02_later.ipynb",
        "pictures/drill.svg",
    ]


def test_the_book_comes_along_and_the_links_of_the_copies_lead_to_it(places: Places) -> None:
    (places.project / "docs" / "relations").mkdir(parents=True)
    for name in ("relations.md", "relations/lips.md", "relations/side_view.svg", "instructor.md"):
        (places.project / "docs" / name).write_text("a page")
    cell = {"cell_type": "markdown", "id": "a", "metadata": {}, "source": ["See [lips](../docs/relations/lips.md).\n"]}
    (places.lessons / "01_lips.ipynb").write_text(json.dumps({"cells": [cell], "nbformat": 4}))
    assert {"docs/relations.md", "docs/relations/lips.md"} < set(lessons.copy(places).fresh)
    (source,) = json.loads((places.folder / "01_lips.ipynb").read_text())["cells"][0]["source"]
    (link,) = re.findall(r"\]\(([^)]*)\)", source)
    assert (places.folder / link).read_text() == "a page"
    # The instructor's pages stay with the instructor, and a copy with its own links counts as untouched.
    assert "docs/instructor.md" not in visible(places.folder)
    assert lessons.copy(places).fresh == ()
    (places.lessons / "01_lips.ipynb").write_text("one, improved")
    assert lessons.copy(places).fresh == ("01_lips.ipynb",)


def test_again_nothing_is_written(places: Places) -> None:
    lessons.copy(places)
    again = lessons.copy(places)
    assert (again.fresh, again.beside) == ((), ())


def test_an_untouched_copy_follows_the_lesson(places: Places) -> None:
    lessons.copy(places)
    (places.lessons / "01_lips.ipynb").write_text("one, improved")
    assert lessons.copy(places).fresh == ("01_lips.ipynb",)
    assert (places.folder / "01_lips.ipynb").read_text() == "one, improved"
    assert lessons.copy(places).fresh == ()


def test_an_edited_copy_stays_and_the_new_version_is_put_beside_it_once(places: Places) -> None:
    lessons.copy(places)
    mine = places.folder / "01_lips.ipynb"
    mine.write_text("my work")
    assert lessons.copy(places).beside == ()
    (places.lessons / "01_lips.ipynb").write_text("one, improved")
    assert lessons.copy(places).beside == ("01_lips (new version).ipynb",)
    assert mine.read_text() == "my work"
    assert (places.folder / "01_lips (new version).ipynb").read_text() == "one, improved"
    (places.folder / "01_lips (new version).ipynb").unlink()
    assert lessons.copy(places).beside == ()

    (places.folder / "01_lips (new version).ipynb").write_text("my work in the newer one")
    (places.lessons / "01_lips.ipynb").write_text("one, improved again")
    assert lessons.copy(places).beside == ("01_lips (new version 2).ipynb",)
    assert (places.folder / "01_lips (new version).ipynb").read_text() == "my work in the newer one"
    assert mine.read_text() == "my work"


def notebook(source: str | list[str], indent: int | None = 1, **metadata: object) -> str:
    cell = {"cell_type": "code", "id": "a", "metadata": {}, "source": source, "outputs": [], "execution_count": None}
    return json.dumps({"cells": [cell], "metadata": metadata, "nbformat": 4, "nbformat_minor": 5}, indent=indent)


def test_opening_a_lesson_without_changing_it_is_no_edit(places: Places) -> None:
    published, mine = places.lessons / "01_lips.ipynb", places.folder / "01_lips.ipynb"
    published.write_text(notebook("one\ntwo"))
    lessons.copy(places)
    mine.write_text(notebook(["one\n", "two"], indent=None, language_info={"version": "3.13.0"}))
    published.write_text(notebook("one\ntwo\nthree"))
    assert lessons.copy(places).fresh == ("01_lips.ipynb",)

    mine.write_text(notebook("one\ntwo\nthree, and my own"))
    published.write_text(notebook("four"))
    assert lessons.copy(places).beside == ("01_lips (new version).ipynb",)
    assert "my own" in mine.read_text()


def test_a_lesson_set_back_to_what_was_copied_is_not_offered(places: Places) -> None:
    lessons.copy(places)
    (places.folder / "01_lips.ipynb").write_text("my work")
    (places.lessons / "01_lips.ipynb").write_text("one, improved")
    lessons.copy(places)
    (places.lessons / "01_lips.ipynb").write_text("one")
    assert lessons.copy(places).beside == ()


def test_a_deleted_copy_comes_back_as_published(places: Places) -> None:
    lessons.copy(places)
    (places.folder / "01_lips.ipynb").write_text("my work")
    (places.folder / "01_lips.ipynb").unlink()
    assert lessons.copy(places).fresh == ("01_lips.ipynb",)
    assert (places.folder / "01_lips.ipynb").read_text() == "one"


@pytest.mark.parametrize("memory", [None, "", "[1]", '{"01_lips.ipynb": '])
def test_without_its_memory_nothing_is_overwritten(places: Places, memory: str | None) -> None:
    lessons.copy(places)
    (places.folder / "01_lips.ipynb").write_text("my work")
    remembered = places.state / "copies.json"
    remembered.unlink() if memory is None else remembered.write_text(memory)
    assert lessons.copy(places).beside == ("01_lips (new version).ipynb",)
    assert (places.folder / "01_lips.ipynb").read_text() == "my work"


def test_a_copy_cut_short_leaves_the_old_one_whole(places: Places, monkeypatch: pytest.MonkeyPatch) -> None:
    lessons.copy(places)
    (places.lessons / "01_lips.ipynb").write_text("one, improved")

    def half(partial: Path, content: bytes) -> None:
        with partial.open("wb") as file:
            file.write(content[:8])
        raise OSError(errno.ENOSPC, "No space left on device")

    with monkeypatch.context() as patch:
        patch.setattr(Path, "write_bytes", half)
        with pytest.raises(SetupError, match="disk is full, so copying the lessons stopped"):
            lessons.copy(places)
    assert (places.folder / "01_lips.ipynb").read_text() == "one"
    assert not list(places.folder.glob(".*.part"))
    assert lessons.copy(places).fresh == ("01_lips.ipynb",)


def test_no_lessons_yet(places: Places) -> None:
    shutil.rmtree(places.lessons)
    assert lessons.copy(places).first is None


@pytest.mark.parametrize(
    ("names", "first"),
    [
        (["10_b.ipynb", "9_a.ipynb"], "9_a.ipynb"),
        (["00_start.ipynb", "01_lips.ipynb"], "00_start.ipynb"),
        (["appendix.ipynb", "03_relief.ipynb"], "03_relief.ipynb"),
        (["more/01_deeper.ipynb", "02_top.ipynb"], "02_top.ipynb"),
        (["drill.svg"], None),
    ],
)
def test_the_first_lesson_is_the_lowest_numbered(names: list[str], first: str | None) -> None:
    assert lessons.first_lesson(names) == first
