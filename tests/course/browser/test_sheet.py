"""The sheet as a page: opened from a folder, filled in, kept."""

import re
from pathlib import Path

from attrs import evolve
from playwright.sync_api import expect

from drillpoint.course.answer_form import AnswerForm
from drillpoint.course.hand_in_file import read_hand_in
from drillpoint.course.html_sheet import html_sheet
from drillpoint.course.roster import Student
from drillpoint.course.sheet import sheet_description
from drillpoint.course.variant import Question

from .filling import box, open_file, said, saved_file, state, violations


def test_what_is_typed_is_read_at_once_and_kept_when_the_page_is_opened_again(desk_of):
    with desk_of() as page:
        expect(state(page)).to_have_text("0 of 10 answers given.")
        box(page, 1).fill("1 7/8 in")
        expect(said(page, 1)).to_have_text("Read as 1 7/8 in = 1.875 in = 47.625 mm.")
        box(page, 2).fill("1,234")
        expect(said(page, 2)).to_contain_text("cannot be read yet. The comma can be read in two ways")
        expect(box(page, 2)).to_have_attribute("aria-invalid", "true")
        box(page, 4).fill("h = D/2/tan κ")
        expect(said(page, 4)).to_contain_text("worked out when it is marked")
        page.get_by_role("radio", name=re.compile("^b")).check()
        expect(state(page)).to_have_text("4 of 10 answers given. Saved in this browser, not yet handed in.")
        page.reload()
        expect(box(page, 1)).to_have_value("1 7/8 in")
        expect(said(page, 1)).to_contain_text("47.625 mm")
        expect(page.get_by_role("radio", name=re.compile("^b"))).to_be_checked()
        expect(state(page)).to_contain_text("4 of 10")


def test_what_the_boxes_show_is_what_is_handed_in(desk_of):
    """Also after changes, an answer taken back, and another order than that of the tasks."""
    with desk_of() as page:
        for number, typed in ((3, "5"), (1, "3,00 mm"), (3, "5.15"), (2, "7/8"), (2, ""), (6, "  "), (10, "=1+1")):
            box(page, number).fill(typed)
        shown = page.evaluate(
            "[...document.querySelectorAll('input[type=text]')].map((e) => e.value).filter((v) => v.trim())"
        )
        found = read_hand_in(saved_file(page))
        assert [a.typed for a in found.answers] == shown == ["3,00 mm", "5.15", "=1+1"]
        assert found.intact


def wait_until_heard(speaker, listener):
    """Two pages of one browser are connected a moment after they have loaded; a person is never that quick."""
    listener.evaluate("addEventListener('storage', (event) => { window.heard ||= event.key === 'probe'; })")
    for attempt in range(100):
        speaker.evaluate("text => localStorage.setItem('probe', text)", str(attempt))
        listener.wait_for_timeout(100)
        if listener.evaluate("window.heard"):
            return
    raise AssertionError("the two pages do not hear of each other")


def test_the_same_sheet_open_twice_loses_nothing(desk_of):
    with desk_of() as one, desk_of(one.context) as other:
        wait_until_heard(one, other)
        wait_until_heard(other, one)
        box(one, 1).fill("3")
        expect(box(other, 1)).to_have_value("3")
        box(other, 2).fill("7/8")
        expect(box(one, 2)).to_have_value("7/8")
        assert len(read_hand_in(saved_file(one)).answers) == 2


def test_answers_are_removed_from_a_shared_computer_only_when_that_is_confirmed(desk_of):
    with desk_of() as page:
        box(page, 1).fill("3")
        page.once("dialog", lambda dialog: dialog.dismiss())
        page.get_by_role("button", name="Remove the answers").click()
        expect(box(page, 1)).to_have_value("3")
        page.once("dialog", lambda dialog: dialog.accept())
        page.get_by_role("button", name="Remove the answers").click()
        expect(box(page, 1)).to_have_value("")
        page.reload()
        expect(state(page)).to_have_text("0 of 10 answers given.")


def test_nothing_from_outside_is_allowed_or_asked_for(browser, page_file):
    text = page_file.read_text(encoding="utf-8")
    assert "default-src 'none'; script-src 'sha256-" in text
    page = browser.new_page()
    asked = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(page_file.as_uri())
    expect(state(page)).to_contain_text("0 of 10")
    assert asked == [page_file.as_uri()]
    refused = page.evaluate(
        "new Promise((done) => { "
        "document.addEventListener('securitypolicyviolation', (e) => done(e.violatedDirective));"
        " const s = document.createElement('script'); s.textContent = '1'; document.body.append(s); })"
    )
    assert refused.startswith("script-src")
    page.close()


def test_the_whole_sheet_by_keyboard_alone(desk_of):
    with desk_of() as page:
        reached = []
        for _ in range(60):
            page.keyboard.press("Tab")
            here = page.evaluate("document.activeElement.id || document.activeElement.tagName")
            if here == "box-1":
                page.keyboard.type("3,25")
            if here == "box-4":
                page.keyboard.type("D/2")
            if page.evaluate("document.activeElement.name") == "box-5":
                page.keyboard.press("ArrowDown")
                expect(page.locator("input[name=box-5]:checked")).not_to_have_value("")
            reached.append(here)
            if here == "save":
                break
        assert [name for name in reached if name.startswith("box-")] == [
            f"box-{n}" for n in (1, 2, 3, 4, 6, 7, 8, 9, 10)
        ]
        expect(state(page)).to_contain_text("3 of 10")
        with page.expect_download() as download:
            page.keyboard.press("Enter")
        assert len(read_hand_in(Path(download.value.path()).read_bytes()).answers) == 3


def test_axe_finds_nothing_before_and_after_filling_in(desk_of):
    with desk_of() as page:
        assert violations(page) == []
        box(page, 1).fill("nonsense")
        expect(said(page, 1)).to_contain_text("cannot be read")
        saved_file(page)
        open_file(page, b"")
        page.locator("summary").first.click()
        page.get_by_text("No file appeared?").click()
        assert violations(page) == []
        page.evaluate("document.querySelector('label').remove()")
        assert violations(page) != [], "the search would find a box without a name"


def test_every_drawing_has_words_in_its_place_and_what_changes_is_announced(desk_of):
    with desk_of() as page:
        drawings = page.locator("figure svg")
        assert drawings.count() >= 1
        for drawing in drawings.all():
            assert drawing.get_attribute("role") == "img"
            assert re.search(r"\d", drawing.get_attribute("aria-label"))
        assert page.get_by_role("status").count() == 10 + 3


def test_without_scripts_the_page_says_so_and_can_still_be_printed(browser, page_file):
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(page_file.as_uri())
    expect(page.get_by_text("so answers typed here are not kept")).to_be_visible()
    expect(page.get_by_role("heading", name=re.compile("^Task 10"))).to_be_visible()
    assert page.locator("figure svg").count() >= 1
    expect(page.get_by_role("button", name="Save the file")).to_have_count(0)
    context.close()


def test_a_kind_the_page_does_not_know_gets_a_box_to_type_into(browser, lips, variants, monkeypatch, tmp_path):

    question = variants.question("point-height", "s07")
    first = question.boxes[0]
    parts = (
        evolve(first, key="point-height.web", label="web", text="First the web.", form=AnswerForm("sketch", unit="mm")),
        evolve(first, key="point-height.why", label="why", text="Then say why.", form=AnswerForm("text")),
    )
    monkeypatch.setattr(Question, "boxes", property(lambda self: parts))
    file = tmp_path / "page.html"
    file.write_text(html_sheet(lips, Student("s07"), [question]), encoding="utf-8")
    page = browser.new_page()
    page.goto(file.as_uri())
    box(page, r"1\.web").fill("anything")
    box(page, r"1\.why").fill("One line.\nAnother line.")
    expect(said(page, 1)).to_contain_text("worked out when it is marked")
    expect(said(page, 2)).to_have_text("Saved: 4 words.")
    found = read_hand_in(saved_file(page)).answers
    assert [(a.task, a.typed) for a in found] == [
        ("point-height.web", "anything"), ("point-height.why", "One line.\nAnother line."),
    ]  # fmt: skip
    described = sheet_description(lips, Student("s07"), [question])["tasks"]
    assert [(t["id"], t["number"]) for t in described] == [("point-height.web", "1.web"), ("point-height.why", "1.why")]
    page.close()
