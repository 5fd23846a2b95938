"""Browsers that keep nothing, or something that is none of ours."""

import pytest
from playwright.sync_api import expect

from drillpoint.course.hand_in_file import read_hand_in

from .filling import box, saved_file, state

NO_STORE = (
    "Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('no', 'SecurityError'); } });"
)
FORGETFUL = "Storage.prototype.setItem = () => {};"


@pytest.mark.parametrize("script", [NO_STORE, FORGETFUL], ids=["refused", "takes and keeps nothing"])
def test_where_the_browser_keeps_nothing_the_page_says_so_and_the_file_still_works(desk_of, script):
    with desk_of(script=script) as page:
        expect(state(page)).to_contain_text(
            "Save the file before you close the page: this browser does not keep your answers."
        )
        box(page, 1).fill("3")
        expect(state(page)).to_contain_text(
            "1 of 10 answers given. Not saved: this browser keeps nothing for this page."
        )
        assert [a.typed for a in read_hand_in(saved_file(page)).answers] == ["3"]
        expect(state(page)).to_contain_text("Saved as a file, not yet handed in")


def test_what_something_else_left_in_the_store_does_no_harm(desk_of):
    with desk_of(
        script="localStorage.setItem('drillpoint|Footbridge evening class|lips|2|s07', '{\"records\": [5]}')"
    ) as page:
        expect(state(page)).to_have_text("0 of 10 answers given.")
        box(page, 1).fill("3")
        expect(state(page)).to_contain_text("1 of 10")
