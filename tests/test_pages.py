"""Pages that stand alone: what is put in is text, what is missing is an error, and files end as a browser wants it."""

from pathlib import Path

import pytest
from jinja2 import TemplateNotFound, UndefinedError

from drillpoint.pages import template, write_page


def test_what_is_put_in_is_text_and_never_markup() -> None:
    shown = template("drillpoint.lesson", "pages", "cards.html.j2", trim_blocks=True).render(
        cards=(), paper="<b>A4</b>", width=210, height=297, margin=10, half=138
    )
    assert "&lt;b&gt;A4&lt;/b&gt;" in shown and "<b>A4" not in shown


def test_a_template_is_read_once_and_refuses_what_is_missing() -> None:
    page = template("drillpoint.lesson", "pages", "cards.html.j2", trim_blocks=True)
    assert template("drillpoint.lesson", "pages", "cards.html.j2", trim_blocks=True) is page
    with pytest.raises(UndefinedError, match="undefined"):
        page.render(paper="A4")
    with pytest.raises(TemplateNotFound):
        template("drillpoint.lesson", "pages", "none.html.j2")


@pytest.mark.parametrize(
    ("given", "written"), [("plan", "plan.html"), ("plan.HTM", "plan.HTM"), ("drill 1.5", "drill 1.5.html")]
)
def test_a_page_gets_the_ending_that_a_browser_wants(tmp_path: Path, given: str, written: str) -> None:
    assert write_page(tmp_path / given, "<p>½\n</p>") == tmp_path / written
    assert (tmp_path / written).read_bytes() == "<p>½\n</p>".encode()
