"""The page's reader of answers: it reads what Python reads, in the same words, and refuses what Python refuses."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.course.answer_form import AnswerForm
from drillpoint.course.hand_in_file import LONGEST_TYPED
from drillpoint.course.html_sheet import parts_script
from drillpoint.course.reading import ReadingError, read_number
from drillpoint.course.reading_table import javascript_pattern, reading_table
from drillpoint.course.units import UNITS, spellings

from .hostile import HOSTILE_STRINGS

NUMBERS = (
    *("5.15", "5,15", ".5", "5.", "7/8", "1 7/8", "1-7/8", "1⅞", "⅞", "1 ⅞", "-3.2", "−3.2", "+4", "- 5", "1e-3"),
    *("1×10^-3", "1·10⁻³", "2*10**4", "1 x 10^2", "0", "-0", "1,234", "12,345", "0,125", "1234,5", "3.5.1", "1,2,3"),
    *("1 8/7", "3/8/2", "5e999", "1e-400", "123456789012345678901", "100000.5", "1000015", "1e22"),
    *("0.00001234565", "100000.25"),
    *("1.5E+3", "1/0", "12345675"),
)  # fmt: skip
UNIT_WORDS = ["", *dict.fromkeys(word for _, word in spellings()), "°", "mm", "in."]
ODD = (
    *("59° 30′", "59° 30′ 15″", "59d 30'", "59° 60′", "5 ft 3 1/2 in", "5'-3 1/2\"", "5' 13\"", "1 min 30 s"),
    *("12 mm 3", "12 mm in", "5 5", "", " ", "mm", "+", "5 kg", "5 MM", "5 Μm", "5 µm", "5 K", "５", "5\u2007mm"),
    *("yes, 12.3°", "Yes 12", "no; 12,3", "n 5", "y: 1/2", "yess 5", "maybe 5", "yes", "YES,,; 5", "yes\u00a05"),
    *("a", "(b)", "C.", "d)", "e", "ab", "1", " a ", "a few words about the web", "5\nmm", "5\x0bmm", "x" * 61),
    *("1.5 ft 3 in", "5\u3000mm", "yes 5 mm", "5\u0301"),
)  # fmt: skip
FORMS = [
    *(AnswerForm("number", unit) for unit in ("mm", "in", "°", "", "rev/min", "mm/rev", "N·m", "min", "N/mm²", "mm/m")),
    AnswerForm("judgement", "°"),
    AnswerForm("choice", letters="abcd"),
    AnswerForm("text"),
]


@pytest.fixture(scope="module")
def read_in_browser(browser):
    """Reads [typed, form] pairs with the page's own script."""
    page = browser.new_page()
    page.add_script_tag(content=parts_script())
    page.evaluate("(table) => { window.read = answerReader(table); }", reading_table())
    # As JSON text, so that a lone surrogate arrives as it is.
    yield lambda pairs: page.evaluate("(text) => JSON.parse(text).map(([t, f]) => read(t, f))", json.dumps(pairs))
    page.close()


def in_python(typed, form):
    try:
        return form.read(typed)
    except ReadingError:
        return None


def disagreements(read_in_browser, pairs):
    """Where the page says something that marking will not find; "later" is allowed and counted."""
    plain = [(typed, {"kind": f.kind, "unit": f.unit, "letters": f.letters}) for typed, f in pairs]
    wrong, later = [], 0
    for (typed, form), said in zip(pairs, read_in_browser(plain), strict=True):
        marked = in_python(typed, form)
        if said.get("later"):
            later += 1
        elif marked is None:
            wrong += [] if "refused" in said else [(typed, form.kind, form.unit, said, "refused")]
        elif said.get("echo") != marked.echo or (marked.reading and float(said["value"]) != marked.reading.value):
            wrong.append((typed, form.kind, form.unit, said, marked.echo))
        elif form.kind == "judgement" and said["yes"] != marked.yes:
            wrong.append((typed, form.kind, form.unit, said, marked.yes))
    return wrong, later


def test_numbers_with_every_unit_in_every_spelling_are_read_alike(read_in_browser):
    units = [f for f in FORMS if f.kind == "number"]
    by_kind = {UNITS[f.unit].kind: f for f in units}
    spelt = dict(spellings())
    pairs = [
        (f"{n}{gap}{word}", units[i % len(units)])
        for i, n in enumerate(NUMBERS)
        for gap in ("", " ")
        for word in UNIT_WORDS
    ]
    pairs += [
        (f"2.5 {word.upper()}", by_kind[kind]) for unit, word in spellings() if (kind := UNITS[unit].kind) in by_kind
    ]
    assert len(spelt) > 30
    wrong, later = disagreements(read_in_browser, pairs)
    assert wrong == []
    assert later < len(pairs) / 100


def test_odd_and_hostile_texts_are_read_or_refused_alike(read_in_browser):
    # A box takes no more than that; one more, to see that the end is seen.
    texts = dict.fromkeys(typed[: LONGEST_TYPED + 1] for typed in (*NUMBERS, *ODD, *HOSTILE_STRINGS))
    pairs = [(typed, form) for typed in texts for form in FORMS]
    wrong, later = disagreements(read_in_browser, pairs)
    assert wrong == []
    assert 0 < later < len(pairs) / 4


SIGNS = "0123456789" * 3 + ".,/ -+°′″'\"emiftn×^·½⅞yo;%" + "\u00a0\u2007µ"


@given(st.lists(st.text(SIGNS, max_size=14), min_size=40, max_size=40))
def test_made_up_texts_are_read_alike(read_in_browser, texts):
    pairs = [(typed, FORMS[place % len(FORMS)]) for place, typed in enumerate(texts)]
    assert disagreements(read_in_browser, pairs)[0] == []


@given(st.lists(st.floats(-1e9, 1e9) | st.floats(-1e-3, 1e-3), min_size=30, max_size=30))
def test_six_digits_are_written_as_python_writes_them(read_in_browser, values):
    texts = [f"{value!r} in" for value in values]
    assert disagreements(read_in_browser, [(typed, AnswerForm("number", "mm")) for typed in texts])[0] == []


def test_a_formula_and_a_kind_it_does_not_know_are_left_to_the_marking(read_in_browser):
    assert read_in_browser([("D/2", {"kind": "formula"}), ("5", {"kind": "sketch"})]) == [
        {"later": True},
        {"later": True},
    ]


def test_the_comparison_would_see_another_reading():
    assert disagreements(lambda _: [{"echo": "5 mm", "value": 5.0}], [("5.1", FORMS[0])])[0]
    assert disagreements(lambda _: [{"refused": "no"}], [("5.1", FORMS[0])])[0]


def test_patterns_are_written_for_the_other_language():
    assert javascript_pattern(r"(?P<a>[ -]\ x) | \-\. # y") == r"(?<a>[ -] x)|-\.#y"
    assert javascript_pattern("mm", any_case=True) == "[mM][mM]"
    assert read_number("5 mm").echo == "5 mm"
