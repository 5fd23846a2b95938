"""How sure a result is: the table tells what each reading's ± makes of it."""

import math
import re

import pytest

from drillpoint.errors import LearnerError
from drillpoint.lesson.sureness import how_sure
from drillpoint.relations import chisel_edge_length, take_off_correction, web_ratio

PSI, W = math.radians(125), 1.5


def test_it_tells_what_each_reading_makes_of_the_result() -> None:
    board = how_sure(chisel_edge_length, web=(W, 0.05), chisel_edge_angle=(125, 1))
    # DERIVED: C = W/sin ψ, by hand: dC/dW = 1/sin ψ and dC/dψ = -W·cos ψ/sin² ψ.
    by_web = 0.05 / math.sin(PSI)
    by_angle = math.radians(1) * W * abs(math.cos(PSI)) / math.sin(PSI) ** 2
    told, below = board.text.rsplit("\n", 1)
    assert told.splitlines() == [
        f"Chisel edge length: {W / math.sin(PSI):.2f} mm ± {math.hypot(by_web, by_angle):.2f} mm",
        f"web thickness 1.5 mm, ± 0.05 mm: makes {by_web:.3f} mm",
        f"chisel edge angle 125°, ± 1°: makes {by_angle:.3f} mm",
    ]
    assert f"worst way at once: ± {by_web + by_angle:.3f} mm. What matters most is the web thickness." in below


def test_the_page_says_the_same_as_the_text() -> None:
    board = how_sure("web_ratio", web=(W, 0.25), diameter=(10, 0.05))
    words = re.sub(r"<[^>]*>", " ", board.html)
    for number in re.findall(r"\d+(?:\.\d+)?", board.text):
        assert number in words


def test_a_reading_without_brackets_is_exact_and_not_told() -> None:
    board = how_sure(web_ratio, web=(W, 0.25), diameter=10)
    assert "diameter" not in board.text
    # DERIVED: 0.25 of 10, and with one doubtful reading nothing matters "most".
    assert board.text.splitlines()[1:] == [
        "web thickness 1.5 mm, ± 0.25 mm: makes 0.025",
        "If every reading is out the worst way at once: ± 0.025.",
    ]


def test_of_two_alike_none_matters_most() -> None:
    board = how_sure(take_off_correction, stock=0.5, length_before=(120.4, 0.02), length_after=(119.95, 0.02))
    assert "worst way at once: ± 0.04 mm." in board.text and "matters most" not in board.text


def test_it_refuses_readings_without_any_error() -> None:
    with pytest.raises(LearnerError, match=r"no reading has a ±; .* web=\(1.5, 0.05\)"):
        how_sure(web_ratio, web=W, diameter=10)


def test_an_unknown_relation_is_refused() -> None:
    with pytest.raises(LearnerError, match="web_ratio"):
        how_sure("web_raito", web=(W, 0.05), diameter=10)
