"""The rules that exist in both languages give the same in both."""

import random
import re

import pytest

from drillpoint.course import read_number
from drillpoint.course.formula import read_formula
from drillpoint.course.reading import ReadingError
from drillpoint.drawing.draw import facts
from drillpoint.drawing.showing import bar_length, fraction, show
from drillpoint.errors import LearnerError
from drillpoint.explorers.find import EXPLORERS
from drillpoint.explorers.lips import LIPS
from drillpoint.explorers.script import page_script, script, widget_module
from drillpoint.relations import BOOK
from tests.explorers.test_labels import corners


def run(browser, expression, argument=None):
    page = browser.new_page()
    try:
        return page.evaluate(f"(argument) => {{ {script()}\n return {expression}; }}", argument)
    finally:
        page.close()


def test_the_script_asks_for_nothing_from_outside():
    for text in (widget_module("lips"), page_script("lips")):
        assert not re.search(r"\bimport\b|\bfetch\(|XMLHttpRequest|https?://(?!www\.w3\.org/2000/svg)|\beval\(", text)


def test_values_are_written_alike(browser):
    chance = random.Random(59)
    lengths = [chance.uniform(0.001, 60) for _ in range(300)]
    lengths += [i / 64 * 25.4 for i in range(1, 200)] + [0.125, 0.0625, 0.005, 0.015, 1.005, 2.5, 12.345]
    angles = [chance.uniform(0, 180) for _ in range(200)] + [0.05, 0.25, 101.65, 59.95]
    asked = [
        [name, value, units]
        for name, values in (
            ("diameter", lengths),
            ("web", lengths),
            ("point_angle", angles),
            ("feed", lengths),
            ("cutting_speed", angles),
            ("power", angles),
            ("web_ratio", [v / 100 for v in angles]),
        )
        for value in values
        for units in ("mm", "inch")
    ]
    theirs = run(browser, "argument.map(([name, value, units]) => show(name, value, units))", asked)
    assert theirs == [show(name, value, units) for name, value, units in asked]
    theirs = run(browser, "argument.map((length) => fraction(length / 25.4))", lengths)
    assert theirs == [fraction(length / 25.4) for length in lengths]
    sizes = [0.0005, 0.004, 0.03, 0.5, 1, 3.3, 10, 25.4, 40, 300]
    theirs = run(browser, "argument.flatMap((d) => [barLength(d, 'mm'), barLength(d, 'inch')])", sizes)
    own = [bar_length(d, units) for d in sizes for units in ("mm", "inch")]
    assert [length for length, _ in theirs] == pytest.approx([length for length, _ in own])
    assert [written for _, written in theirs] == [written for _, written in own]


@pytest.mark.parametrize(
    "start",
    [
        {},
        {"diameter": 9.525, "lip_relief": 26.84},
        {"point_angle": 135, "lip_relief": 19},
        {"web": 3.7, "lip_relief": 25},
    ],
)
def test_values_and_worked_lines_are_those_of_the_relations(browser, start):
    state = LIPS.state(**start)
    found = run(browser, "work(argument.config, argument.state, 'mm')", {"config": LIPS.as_data(), "state": state})
    assert found["problem"] == ""
    values = facts(**state)
    assert {name: found["values"][name] for name in values} == pytest.approx(values, abs=1e-9)
    lines = run(
        browser,
        "argument.names.map((n) => workedLine(n, argument.values, 'mm'))",
        {"names": LIPS.worked, "values": values},
    )
    assert lines == [BOOK[n].worked(**{given: values[given] for given in BOOK[n].givens}).text for n in LIPS.worked]


@pytest.mark.parametrize("explorer", EXPLORERS.values(), ids=EXPLORERS)
def test_both_languages_agree_wherever_the_sliders_stand(browser, explorer):
    states = corners(explorer)
    asked = {"config": explorer.as_data(), "states": states}
    theirs = run(browser, "argument.states.map((state) => work(argument.config, state, 'mm'))", asked)
    for state, found in zip(states, theirs, strict=True):
        try:
            values = explorer.values(state)
        except LearnerError as refused:
            # The sentence is the same; only what may have been meant is Python's alone.
            assert found["problem"]
            assert found["problem"][:20] == str(refused)[:20], state
        else:
            assert found["problem"] == "", state
            assert found["values"] == pytest.approx(values, rel=1e-9, abs=1e-9)


def test_a_worked_line_in_inches_holds_in_inches(browser):
    values = facts(**LIPS.state(diameter=25.4))
    (line,) = run(browser, "[workedLine('point_height', argument, 'inch')]", values)
    # DERIVED: (1 in / 2)/tan 59° = 0.3004 in
    assert line == "h = 0.5/tan 59° = 0.3004 in"


@pytest.mark.parametrize(
    ("name", "givens", "line"),
    [
        # DERIVED: 0.2032 mm is 0.008 in, and 0.004 in · sin 59° = 0.0034 in.
        ("chip_thickness", {"feed": 0.2032, "point_angle": 118}, "h_c = 0.008·sin(59°)/2 = 0.0034 in"),
        # DERIVED: atan(0.008/(2π·0.25)) = 0.292°.
        ("feed_relief_loss", {"feed": 0.2032, "radius": 6.35}, "η = atan(0.008/(2·π·0.25)) = 0.29°"),
        # DERIVED: 1000 stands for metres and millimetres, so 80 ft/min and 1/2 in are worked out in those.
        ("spindle_speed", {"cutting_speed": 24.384, "diameter": 12.7}, "n = 1000·24.384/(π·12.7) = 611 rev/min"),
        # DERIVED: 0.006 in a turn, 611 turns.
        ("feed_rate", {"feed": 0.1524, "spindle_speed": 611}, "v_f = 0.006·611 = 3.666 in/min"),
    ],
)
def test_feeds_and_speeds_in_a_worked_line_in_inches(browser, name, givens, line):
    values = {**givens, BOOK[name].result.name: float(BOOK[name](**givens))}
    assert run(browser, "[workedLine(argument.name, argument.values, 'inch')]", {"name": name, "values": values}) == [
        line
    ]


def test_what_holds_in_metric_units_only_ends_in_inches(browser):
    # Made up: a number in the formula that stands for a millimetre. DERIVED: 12.7 mm = 0.5 in.
    relation = "{value: ({a}) => a + 1, givens: ['a'], result: 'point_height', abbreviations: [], text: '⟦a⟧ + 1'}"
    code = f"[numbers.quantities.a = {{unit: 'mm'}}, numbers.relations.made_up = {relation}, workedLine(...argument)]"
    shown = run(browser, code, ["made_up", {"a": 11.7, "point_height": 12.7}, "inch"])
    assert shown[-1] == "h = 11.7 + 1 = 12.7 mm = 0.5 in"


@pytest.mark.parametrize("units", ["mm", "inch"])
def test_every_worked_line_comes_to_its_result(browser, units):
    asked = [
        [name, explorer.values(explorer.start), units] for explorer in EXPLORERS.values() for name in explorer.worked
    ]
    lines = run(browser, "argument.map((each) => workedLine(...each))", asked)
    assert len(lines) > len(EXPLORERS)
    for line in lines:
        _, middle, *results = line.split(" = ")
        plain = re.sub(r"(sin|cos|tan|cot) ([\d.]+)", r"\1(\2)", middle.replace("°", ""))
        plain = re.sub(r"\|(.+?)\|", r"√((\1)^2)", plain)
        said = re.match(r"-?\d+\.?(\d*)", results[-1])
        # Lengths in inches are written to four decimals, which leaves two digits of a small feed.
        printed_to = 0.6 * 10 ** -len(said[1])
        assert read_formula(plain, ())() == pytest.approx(float(said[0]), rel=0.01, abs=printed_to), line


TYPED = [
    "9.5", "9,5", ".5", ",5", "3/8 in", "3/8in", '3/8"', "1 7/8 in", "1-7/8 in", "1⅞ in", "½ in", "0,375 inch",
    "9.5 mm", "1 cm", "  12 ", "12.", "−3", "1,234", "3.5.1", "abc", "", "5 mm 3", "3/0", "12 furlongs", "1 1/2/3",
    "5 °", "2 3", "1/2 1/4", "12 in.", "7/8”", "--3", "9 . 5", "1e3 m", "0", "11/4 in", "1;2",
]  # fmt: skip


@pytest.mark.parametrize("unit", ["mm", "in"])
def test_typed_numbers_are_read_as_the_exercises_read_them(browser, unit):
    units = "mm" if unit == "mm" else "inch"
    theirs = run(
        browser, "argument.typed.map((t) => readNumber(t, 'mm', argument.units))", {"typed": TYPED, "units": units}
    )
    for typed, read in zip(TYPED, theirs, strict=True):
        try:
            expected = read_number(typed, unit).value
        except ReadingError:
            assert "You can write" in read.get("problem", ""), f"{typed!r} was read as {read}"
        else:
            assert read.get("value") == pytest.approx(expected), f"{typed!r}: {read}"


def test_an_angle_box_takes_angles_only(browser):
    read = run(browser, "['118', '118°', '118,5 deg', '3/8 in'].map((t) => readNumber(t, '°', 'mm'))")
    assert [r.get("value") for r in read] == [118, 118, 118.5, None]
    assert "for an angle" in read[3]["problem"]


@pytest.mark.parametrize(
    ("typed", "unit", "units", "value"),
    [
        ("0,2", "mm/rev", "mm", 0.2),
        ("0.2 mm/rev", "mm/rev", "inch", 0.2),
        ("0.2 mm", "mm/rev", "mm", 0.2),
        ("0.008", "mm/rev", "inch", 0.2032),
        ("0.008 in/rev", "mm/rev", "mm", 0.2032),
        ("8e-3 in", "mm/rev", "mm", 0.2032),
        ("20 m/min", "m/min", "mm", 20),
        ("100 ft/min", "m/min", "mm", 30.48),
        ("100", "m/min", "inch", 30.48),
        ("800 rpm", "rev/min", "mm", 800),
        ("1,5 kN", "N", "mm", 1500),
        ("7.8 N·m", "N·m", "mm", 7.8),
        ("7.8 Nm", "N·m", "inch", 7.8),
        ("30 s", "min", "mm", 0.5),
        ("0.15", "", "inch", 0.15),
    ],
)
def test_other_boxes_take_their_own_units(browser, typed, unit, units, value):
    read = run(browser, "readNumber(...argument)", [typed, unit, units])
    # DERIVED: 0.008 in = 0.2032 mm, 100 ft = 30.48 m
    assert read.get("value") == pytest.approx(value), read


@pytest.mark.parametrize(
    ("typed", "unit", "said"),
    [
        ("0.2 mm/rev", "mm", "for a length"),
        ("3 N", "mm/rev", "is for mm/rev"),
        ("3 mm", "", "for a plain number"),
        ("3 mm", "N·m", "is for N·m"),
    ],
)
def test_a_unit_of_something_else_is_refused(browser, typed, unit, said):
    assert said in run(browser, "readNumber(...argument)", [typed, unit, "mm"])["problem"]


def test_an_explorer_carries_only_what_it_needs():
    lips, cone = script("lips"), script("cone")
    assert "scenes.end_view" in lips
    assert "numbers.relations.lip_length" in lips
    assert "scenes.end_view" not in cone
    assert "numbers.relations.lip_length" not in cone
    assert "meaning" not in lips.split("relations: {}")[0]
