"""The manual is current, complete, and its examples are true."""

from __future__ import annotations

from pathlib import Path

import pytest

from drillpoint.editions.all import documents
from drillpoint.editions.manual import example
from drillpoint.relations import BOOK, CHAPTERS

EVERY = pytest.mark.parametrize("name", BOOK)


def test_the_committed_pages_are_what_the_command_writes(project: Path) -> None:
    for name, text in documents().items():
        assert (project / "docs" / name).read_text(encoding="utf-8") == text, (
            f"run python -m drillpoint.editions ({name})"
        )


def test_no_page_is_left_from_a_chapter_that_went(project: Path) -> None:
    written = {path.relative_to(project / "docs").as_posix() for path in (project / "docs" / "relations").glob("*.md")}
    assert written == {name for name in documents() if name.startswith("relations/") and name.endswith(".md")}


@EVERY
def test_every_relation_has_its_section_and_a_true_example(name: str) -> None:
    chapter = next(c for c, relations in CHAPTERS.items() if BOOK[name] in relations)
    page = documents()[f"relations/{chapter}.md"]
    assert f"## {name}\n" in page
    section = page.split(f"## {name}\n")[1].split("\n## ")[0]
    for said in (*BOOK[name].assumptions, *BOOK[name].sources, *(step.words for step in BOOK[name].derivation)):
        assert said in section
    for q in BOOK[name].quantities:
        assert f"`{q.name}`" in section
    # The example is a usual drill: nothing to remark on.
    assert BOOK[name](**example(BOOK[name])).notes == ()
    assert f"# {BOOK[name](**example(BOOK[name]))!r}" in section
    assert "⟦" not in section


@EVERY
def test_the_contents_lead_to_it(name: str) -> None:
    assert f"| [`{name}`](relations/" in documents()["relations.md"]


@EVERY
def test_every_relation_has_all_its_parts(name: str) -> None:
    relation = BOOK[name]
    assert len(relation.says) > 20
    assert relation.derivation
    assert relation.assumptions
    assert relation.sources
    assert relation.limits
    assert relation.quantities[0].name == relation.result.name
