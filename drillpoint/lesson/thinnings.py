"""One point thinned in several ways, beside each other: what is left of it, and what has been added."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from attrs import evolve

from drillpoint.drawing.showing import Units, read_units, show
from drillpoint.errors import LearnerError
from drillpoint.ground import GroundPoint, Notch, Setup
from drillpoint.ground.named import points_by_name
from drillpoint.ground.record import NOT_THINNED
from drillpoint.ground.table import Table
from drillpoint.ground.thinning import ThinnedLipReadings, ThinningReadings
from drillpoint.lesson.blackboard import Board

Thinning = Notch | Sequence[Notch | None]
"""One notch for both lips, or those of lip 1 and lip 2; None leaves a lip as it is."""

_OF_THE_POINT: tuple[tuple[str, str, Callable[[ThinningReadings], float]], ...] = (
    ("chisel edge left", "thinned_chisel_length", lambda read: read.thinned_chisel_length),
    ("its middle off the axis", "point_offset", lambda read: read.point_offset),
    ("web left between the thinned lips", "thinned_web", lambda read: read.thinned_web),
    ("least metal about the axis below", "thinned_web", lambda read: read.core_thickness),
)
_OF_EACH_LIP: tuple[tuple[str, str, Callable[[ThinnedLipReadings], float]], ...] = (
    ("length of a thinned lip", "thinned_lip_length", lambda lip: lip.thinned_lip_length),
    ("its rake half way", "normal_rake", lambda lip: lip.middle_rake),
    ("untouched share of the main lip", "untouched_lip_share", lambda lip: lip.untouched_lip_share),
)


def compare_thinnings(point: GroundPoint | Setup, *, units: str = "mm", **thinnings: Thinning) -> Board:
    """A point thinned in several ways in one table, as in
    `compare_thinnings(setup, half=Notch(...), one_side=(Notch(...), None))`.

    point: a ground point, or a set-up, of which the point is taken; its own notches, if it has any, are left out.
    units: "mm" or "inch", for what is written.
    thinnings: each under a name of your own (an underscore is shown as a space): a notch for both lips, or the notches
    of lip 1 and lip 2 in brackets, where None leaves a lip as it is. Where the lips differ, both readings are told.

    Raises LearnerError for none or too many, for what is no notch, and for notches that cannot be cut.
    """
    written_in = read_units(units)
    (bare,) = points_by_name({"point": point}).values()
    ground = points_by_name({name: _thinned(bare, name, thinning) for name, thinning in thinnings.items()})
    read = [_read(name, one) for name, one in ground.items()]
    rows = [(term, *(show(like, of(one), written_in) for one in read)) for term, like, of in _OF_THE_POINT]
    rows += [(term, *(_both(like, of, one, written_in) for one in read)) for term, like, of in _OF_EACH_LIP]
    table = Table("Read on each thinned point", ("reading", *ground), tuple(rows))
    return Board(table.html, str(table))


def _thinned(point: GroundPoint, name: str, thinning: Thinning) -> GroundPoint:
    notches = (thinning, thinning) if isinstance(thinning, Notch) else thinning
    if not isinstance(notches, Sequence) or len(notches) != 2 or not all(isinstance(n, Notch | None) for n in notches):
        raise LearnerError(
            f"{name} needs a Notch, or the notches of lip 1 and lip 2 in brackets; for example "
            f"{name}=Notch(thinned_chisel_length=0.8, thinning_angle=30)"
        )
    return evolve(point, thinning_1=notches[0], thinning_2=notches[1])


def _read(name: str, point: GroundPoint) -> ThinningReadings:
    read = point.inspect().thinning
    if read is None:
        raise LearnerError(f"{name} has no notch on either lip, so there is no thinning to read")
    return read


def _both(like: str, of: Callable[[ThinnedLipReadings], float], read: ThinningReadings, units: Units) -> str:
    """A reading of both thinned lips: told once where they are alike."""
    told = [show(like, of(lip), units) if lip else NOT_THINNED for lip in read.lips]
    return ", ".join(dict.fromkeys(told))
