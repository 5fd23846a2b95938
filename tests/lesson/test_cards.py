"""The cards of the lessons on paper: one for each lesson, each within its half of the sheet."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from drillpoint.__main__ import main
from drillpoint.errors import InstructorError, LearnerError
from drillpoint.lesson.cards import cards, cards_page, chosen, lessons_folder

if TYPE_CHECKING:
    from playwright.sync_api import Browser


def test_every_lesson_has_a_card() -> None:
    numbers = [int(path.name.partition("-")[0]) for path in sorted(lessons_folder().glob("*.ipynb"))]
    assert [card.number for card in cards()] == numbers
    assert all("<table>" in card.html and "page-break" not in card.html for card in cards())


def test_a_lesson_without_a_card_is_refused_and_those_with_one_are_named() -> None:
    assert [card.number for card in chosen(cards(), [3, 2])] == [3, 2]
    with pytest.raises(InstructorError, match=r"no card for lesson 77; there are cards for .*3"):
        chosen(cards(), [77])


@pytest.mark.parametrize(("paper", "height"), [("A4", 297), ("letter", 279.4)])
def test_each_card_fits_its_half_of_the_sheet(browser: Browser, tmp_path: Path, paper: str, height: float) -> None:
    page = browser.new_page()
    file = tmp_path / "cards.html"
    file.write_text(cards_page(cards(), paper=paper), encoding="utf-8")
    page.goto(file.as_uri())
    page.emulate_media(media="print")
    mm = 96 / 25.4  # pixels
    for card in page.locator(".card").all():
        box, text = card.bounding_box(), card.locator(".fits").bounding_box()
        assert box is not None and text is not None
        assert box["height"] == pytest.approx(height / 2 * mm, abs=1)
        assert text["y"] + text["height"] < box["y"] + box["height"] - 5 * mm, card.get_attribute("aria-label")
        assert card.locator(".fits").evaluate("it => it.scrollWidth <= it.clientWidth")
    page.close()


def test_another_paper_is_refused_with_the_nearest_name() -> None:
    with pytest.raises(LearnerError, match="did you mean 'Letter'"):
        cards_page((), paper="Leter")


def test_the_command_writes_the_page(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["cards", str(tmp_path / "cards.html"), "--lesson", "3"]) == 0
    assert capsys.readouterr().out.startswith("1 card is in ")
    assert "Card of lesson 3" in (tmp_path / "cards.html").read_text(encoding="utf-8")
    assert main(["cards", str(tmp_path / "cards.html"), "--lesson", "77"]) == 2
    assert "there is no card for lesson 77" in capsys.readouterr().err
