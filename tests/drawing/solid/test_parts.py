"""The parts of a solid are told apart without colour."""

import itertools

import pytest

from drillpoint.drawing.solid.parts import AMBIENT, LIGHT, LINES, LIT, PATTERNS, SURFACES, kind_of, term_of


@pytest.mark.parametrize(
    ("name", "kind"),
    [("lip 1", "lip"), ("notch 2 face", "notch face"), ("chisel edge", "chisel edge"), ("end", "end")],
)
def test_the_kind_is_the_name_without_its_lip(name, kind):
    assert kind_of(name) == kind


def test_faces_that_meet_differ_by_tone_or_pattern():
    met = [("flank", "flute"), ("flank", "body"), ("margin", "flute"), ("margin", "body"), ("body", "flute")]
    met += [("primary facet", "secondary facet"), ("secondary facet", "body"), ("notch face", "flute")]
    met += [("notch floor", "flute"), ("notch face", "notch floor"), ("notch face", "flank")]
    for one, other in met:
        a, b = SURFACES[one], SURFACES[other]
        assert abs(a.tone - b.tone) >= 0.1 - 1e-9 or a.pattern != b.pattern, (one, other)


def test_edges_that_cut_are_thrice_as_thick_as_others_and_the_chisel_edge_has_a_core():
    assert min(LINES[kind].width for kind in ("lip", "thinned lip", "chisel edge")) >= 3 * LINES["edge"].width
    assert [kind for kind, line in LINES.items() if line.core] == ["chisel edge"]


def test_the_light_is_a_direction_and_no_tone_runs_out_of_white():
    assert sum(share**2 for share in LIGHT) == pytest.approx(1, abs=0.001)  # DERIVED: of length one
    assert pytest.approx(1) == AMBIENT + LIT
    assert all(0 < look.tone <= 1 and look.pattern in PATTERNS for look in SURFACES.values())


def test_terms_are_the_trade_s():
    assert term_of("body 1") == "body clearance 1"
    assert term_of("end") == "end of the model"
    assert term_of("flank 2") == "flank 2"
    assert all(a != b for a, b in itertools.pairwise(map(term_of, ("body 1", "body 2", "end"))))
