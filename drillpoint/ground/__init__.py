"""The ground point as a solid: flutes, flanks, and what an inspector would measure.

The book of relations speaks of plainly ground points, where a formula can be had. Here is the general case: any flute,
any two flanks, also unequal ones. Readings are taken on the surfaces themselves and never by a formula of the book, so
the one proves the other.
"""

from drillpoint.ground.conical import ConicalFlank
from drillpoint.ground.diagnosis.faults import find_faults
from drillpoint.ground.diagnosis.limits import Limits
from drillpoint.ground.diagnosis.readings import Readings
from drillpoint.ground.flank import FacetedFlank, PlaneFlank
from drillpoint.ground.flute import Flute
from drillpoint.ground.notch import Notch
from drillpoint.ground.point import GroundPoint
from drillpoint.ground.settings.leeway import leeway
from drillpoint.ground.settings.setup import NoSetup, Setup
from drillpoint.ground.settings.setup_effects import effects
from drillpoint.ground.settings.setups import conical_setup, family_of_setups, nearest_setup, plane_setup
from drillpoint.ground.stated import CannotBeGround

STATED = (Flute, PlaneFlank, FacetedFlank, ConicalFlank, Notch, Readings, Limits)

__all__ = [
    "STATED",
    "CannotBeGround",
    "ConicalFlank",
    "FacetedFlank",
    "Flute",
    "GroundPoint",
    "Limits",
    "NoSetup",
    "Notch",
    "PlaneFlank",
    "Readings",
    "Setup",
    "conical_setup",
    "effects",
    "family_of_setups",
    "find_faults",
    "leeway",
    "nearest_setup",
    "plane_setup",
]
