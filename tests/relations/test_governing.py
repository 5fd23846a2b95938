"""Several faults, one pass of grinding: the one that needs most decides."""

from __future__ import annotations

import pytest

from drillpoint.errors import LearnerError, OutOfRange
from drillpoint.relations import governing_stock, stock_for_chip, stock_for_wear_land, stock_for_worn_corner


def test_the_larger_stock_governs() -> None:
    found = governing_stock(
        wear_land=stock_for_wear_land(wear_land=0.4, lip_relief=12),
        worn_corner=stock_for_worn_corner(worn_margin=0.2),
        chip=stock_for_chip(chip_depth=0.3, point_angle=118),
    )
    # DERIVED: the chip's 0.35 mm is the most.
    assert found.stock == pytest.approx(0.35, abs=5e-4)
    assert str(found) == "0.35 mm, because of the chip in the lip"
    assert governing_stock(chip=0.2, wear_land=0.2).because == "the wear land behind the lip and the chip in the lip"


def test_no_stock_governs_nothing() -> None:
    with pytest.raises(LearnerError, match="give one or more of wear_land"):
        governing_stock()
    with pytest.raises(OutOfRange, match="stock -1 mm"):
        governing_stock(chip=-1)
