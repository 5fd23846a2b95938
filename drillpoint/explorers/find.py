"""Finding an explorer by name."""

from __future__ import annotations

from drillpoint.errors import LearnerError
from drillpoint.explorers.breakthrough import BREAKTHROUGH
from drillpoint.explorers.chip import CHIP
from drillpoint.explorers.cone import CONE
from drillpoint.explorers.cone_setup import CONE_SETUP
from drillpoint.explorers.drilling import DRILLING
from drillpoint.explorers.dubbing import DUBBING
from drillpoint.explorers.explorer import Explorer
from drillpoint.explorers.hole import HOLE
from drillpoint.explorers.lips import LIPS
from drillpoint.explorers.push import PUSH
from drillpoint.explorers.rake import RAKE
from drillpoint.explorers.regrind import REGRIND
from drillpoint.explorers.relief import RELIEF
from drillpoint.explorers.rolled import ROLLED
from drillpoint.explorers.shortening import SHORTENING
from drillpoint.explorers.spot import SPOT
from drillpoint.explorers.thinning import THINNING
from drillpoint.explorers.unequal import UNEQUAL
from drillpoint.explorers.unequal_angles import UNEQUAL_ANGLES
from drillpoint.quantities import nearest

EXPLORERS = {
    explorer.name: explorer
    for explorer in (
        LIPS,
        CONE,
        CONE_SETUP,
        HOLE,
        DRILLING,
        UNEQUAL,
        THINNING,
        CHIP,
        SHORTENING,
        UNEQUAL_ANGLES,
        SPOT,
        BREAKTHROUGH,
        RELIEF,
        RAKE,
        DUBBING,
        REGRIND,
        ROLLED,
        PUSH,
    )
}


def explorer_names() -> tuple[str, ...]:
    """The explorers there are."""
    return tuple(EXPLORERS)


def find(name: str) -> Explorer:
    """The explorer of this name.

    Raises LearnerError with the nearest name when there is none.
    """
    if name not in EXPLORERS:
        raise LearnerError(f"there is no explorer {name!r}{nearest(name, tuple(EXPLORERS))}")
    return EXPLORERS[name]
