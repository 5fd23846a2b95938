"""How the web grows: DERIVED, web and taper times what came off."""

import math

import pytest

from drillpoint.planning.shop import Shop
from tests.planning.drills import plan


def test_the_web_grows_by_its_taper() -> None:
    found = plan(web=1.6, web_taper=0.02, worn_margin=5)
    off = 5 + Shop().finish_allowance
    assert found.off.tip.value == pytest.approx(off)
    assert found.web.after.value == pytest.approx(1.6 + 0.02 * off)
    assert not found.thin
    # How much more until 0.18 of the diameter.
    assert found.web.until == pytest.approx((1.8 - 1.6 - 0.02 * off) / 0.02)
    assert found.web.chisel == pytest.approx(found.web.after.value / math.sin(math.radians(125)))


def test_it_is_thinned_once_it_reaches_the_limit() -> None:
    found = plan(web=1.78, web_taper=0.02, worn_margin=5)
    assert found.thin and found.decision == "regrind"
    assert "The web grows from" in found.reasons[-1]
    # The chisel edge that a web of an eighth would have.
    assert found.web.thinned == pytest.approx(1.25 / math.sin(math.radians(125)))
    assert 0.5 < found.web.lip_left < 1
    assert found.web.until is None
    assert not plan(web=1.6, worn_margin=5).thin


def test_the_reading_error_may_reach_across_the_limit() -> None:
    near, far = plan(web=1.82, worn_margin=1), plan(web=2.2, worn_margin=1)
    assert near.web.doubtful and "measure it again" in near.reasons[-1]
    assert not far.web.doubtful


def test_where_nothing_is_ground_the_web_stays() -> None:
    # A land too narrow to be ground asks for a stock, but nothing comes off.
    found = plan(web=1.79, wear_land=0.1, web_taper=0.1)
    assert found.decision == "leave alone"
    assert found.web.after.value == 1.79


def test_a_web_not_read_is_not_guessed_at() -> None:
    found = plan(web=None, wear_land=0.6)
    assert found.web is None and not found.thin
    assert any("web was not read" in note for note in found.notes)
