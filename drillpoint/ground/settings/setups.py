"""From three wanted angles back to the wheel: how a cone or a plane must be set so that a drill comes out as asked.

A conical flank has five settings: half angle, tilt, apex distance and skew of the cone, and how far the drill is turned
about its axis. Three wanted angles leave two of them free. Two conditions are well known that take up one, and each
leaves the half angle of the cone to choose:

- "skewed_axis": the cone's axis lies in a plane parallel to the lip and the drill axis, a skew beside it. Its lip is a
  little curved; the point angle is that of the lip's chord. The drill is not turned.
- "lip_on_cone": the lip is a straight line of the cone, as in E. J. A. Armarego and A. Rotenberg, Int. J. Mach. Tool
  Des. Res. 13 (1973) 155 (abstract seen). The drill is then turned ahead about its axis before grinding.

A plane flank has two settings for three angles: its relief and its chisel edge angle are tied.
"""

from __future__ import annotations

from collections.abc import Iterable
from contextlib import suppress
from typing import Any

from attrs import evolve

from drillpoint.errors import MissingGiven, NoSolution, UnknownGiven
from drillpoint.ground.flute import Flute
from drillpoint.ground.settings.setup import NoSetup, Setup, say, show
from drillpoint.ground.settings.setup_tables import family_table
from drillpoint.ground.settings.setups_conical import FAMILIES, no_cone, solved
from drillpoint.ground.settings.setups_plane import as_plane, plane_relief
from drillpoint.ground.stated import CannotBeGround, by_name
from drillpoint.ground.table import bundle
from drillpoint.quantities import nearest
from drillpoint.relation.checking import read_scalar

# A plane's chisel edge counts as the one asked for when the two print alike.
MATCH = 0.05


@by_name
def conical_setup(
    *,
    diameter: float,
    point_angle: float,
    lip_relief: float,
    chisel_edge_angle: float,
    cone_half_angle: float,
    web: float | None = None,
    web_ratio: float | None = None,
    family: str = "skewed_axis",
    helix_angle: float = 30.0,
    heel_angle: float | None = None,
) -> Setup:
    """The setting of a grinding cone for three wanted angles.

    diameter: mm. web (mm) or web_ratio. point_angle: whole, degrees. lip_relief: at the outer corner, in the plane that
    touches the cylinder there. chisel_edge_angle: where the edge crosses the drill axis; obtuse, or acute (under 90°)
    and read as its supplement. cone_half_angle: free to choose; 10° to 40° is usual. family: "skewed_axis" or
    "lip_on_cone", see above. helix_angle: of a flute made for this point angle. heel_angle: the land to be ground,
    round the drill from the corner to the heel; left out, the usual one, or as much as the cone reaches, with a note.

    The angles measured on the ground point are those asked to 1e-9 degrees.

    Raises NoSetup, with the nearest set-up, when no cone of this half angle does it; OutOfRange, UnknownGiven or
    MissingGiven for numbers that are no drill's.
    """
    asked, notes = _read(
        point_angle=point_angle,
        lip_relief=lip_relief,
        chisel_edge_angle=chisel_edge_angle,
        cone_half_angle=cone_half_angle,
    )
    theta = asked.pop("cone_half_angle")
    if family not in FAMILIES:
        raise UnknownGiven(f"there is no family of set-ups {family!r}{nearest(str(family), tuple(FAMILIES))}")
    flute = _flute(diameter, web, web_ratio, asked["point_angle"], helix_angle, heel_angle)
    try:
        return solved(family, theta, flute, asked, notes, fixed_land=heel_angle is not None)
    except CannotBeGround as reason:
        raise no_cone(family, theta, flute, asked, notes, heel_angle is not None, str(reason)) from None


@by_name
def plane_setup(
    *,
    diameter: float,
    point_angle: float,
    lip_relief: float | None = None,
    chisel_edge_angle: float | None = None,
    web: float | None = None,
    web_ratio: float | None = None,
    helix_angle: float = 30.0,
) -> Setup:
    """The setting of a plane flank for a point angle and either a lip relief or a chisel edge angle.

    Keywords as for `conical_setup`. On one plane each of the two follows from the other. Both may be given when they
    go together to 0.05°.

    Raises NoSetup when they do not; its nearest keeps the point angle and the relief.
    """
    asked, notes = _read(point_angle=point_angle, lip_relief=lip_relief, chisel_edge_angle=chisel_edge_angle)
    flute = _flute(diameter, web, web_ratio, asked["point_angle"], helix_angle, None)
    relief = asked.get("lip_relief")
    if relief is None:
        if "chisel_edge_angle" not in asked:
            raise MissingGiven("plane_setup needs lip_relief or chisel_edge_angle; for example lip_relief=12")
        relief = plane_relief(flute, asked["chisel_edge_angle"])
    found = as_plane(flute, relief, asked, notes)
    wanted = asked.get("chisel_edge_angle", found.reached["chisel_edge_angle"])
    if abs(wanted - found.reached["chisel_edge_angle"]) <= MATCH:
        return found
    other = ""
    with suppress(NoSolution):
        other = f", which would need a lip relief of {show('lip_relief', plane_relief(flute, wanted))}"
    raise NoSetup(
        f"one plane at {say(asked, 'point_angle', 'lip_relief')} has its chisel edge at "
        f"{show('chisel_edge_angle', found.reached['chisel_edge_angle'])}, not {show('chisel_edge_angle', wanted)}"
        f"{other}; leave one of the two free, or grind a conical flank",
        found,
    )


def nearest_setup(*, cone_half_angle: float | None = None, **wanted: Any) -> Setup:
    """The set-up for three wanted angles, or where there is none the nearest one, which says why.

    cone_half_angle: of the grinding cone; left out, one plane is meant. wanted: as for `conical_setup`, and for a plane
    as for `plane_setup`.

    Raises NoSetup when there is no nearest one either.
    """
    try:
        return (
            plane_setup(**wanted)
            if cone_half_angle is None
            else conical_setup(cone_half_angle=cone_half_angle, **wanted)
        )
    except NoSetup as none:
        if none.nearest is None:
            raise
        return evolve(none.nearest, refused=str(none))


class Family(tuple[Setup, ...]):
    """Set-ups that give the same angles. In a notebook it is a table."""

    __slots__ = ()

    def _repr_mimebundle_(self, **_: object) -> dict[str, str]:
        return bundle([family_table(self)])

    def _repr_pretty_(self, printer: Any, _cycle: bool) -> None:
        # IPython writes every tuple in its own way as text, unless it is told here.
        printer.text(str(family_table(self)))


def family_of_setups(*, cone_half_angles: Iterable[float], **wanted: Any) -> Family:
    """The set-ups of several cones for the same three angles: wanted angles leave one setting free.

    cone_half_angles: degrees; those for which there is no set-up are left out. wanted: as for `conical_setup`.

    Raises NoSetup, that of the last cone, when there is none at all.
    """
    if "cone_half_angle" in wanted:
        raise UnknownGiven("family_of_setups takes cone_half_angles, several of them; for example [10, 20, 30, 40]")
    found, last = [], None
    for theta in cone_half_angles:
        try:
            found.append(conical_setup(cone_half_angle=theta, **wanted))
        except NoSetup as error:
            last = error
    if last is not None and not found:
        raise last
    return Family(found)


def _read(**givens: float | None) -> tuple[dict[str, float], tuple[str, ...]]:
    values: dict[str, float] = {}
    notes: tuple[str, ...] = ()
    for name, given in givens.items():
        if given is not None:
            values[name], said = read_scalar(name, given)
            notes = (*notes, *said)
    return values, notes


def _flute(
    diameter: float, web: float | None, web_ratio: float | None, point_angle: float, helix: float, heel: float | None
) -> Flute:
    flute = Flute(diameter=diameter, web=web, web_ratio=web_ratio, point_angle=point_angle, helix_angle=helix)
    return flute if heel is None else evolve(flute, heel_angle=heel)
