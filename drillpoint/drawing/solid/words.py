"""What a solid says: its text twin with the numbers of its inspection, and a sentence for each part."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from drillpoint.drawing.showing import Units, show
from drillpoint.drawing.solid.parts import kind_of, term_of
from drillpoint.quantities import QUANTITIES, capital

if TYPE_CHECKING:
    from drillpoint.ground.inspection import Inspection
    from drillpoint.ground.point import GroundPoint

_SAME = 0.005  # mm or degrees; what differs by less is said to be equal
_ON_CENTRE = 0.0005  # mm


def alt_text(point: GroundPoint, inspection: Inspection, units: Units) -> str:
    """The point in a few sentences, with its numbers and how they compare with what is usual."""
    read = inspection
    flute = point.flute
    sentences = [
        f"Diameter {show('diameter', read.diameter, units)}, web {show('web', read.web, units)}, {flute.hand}-hand.",
        f"Point angle {show('point_angle', read.point_angle, units)}.",
        f"Lip relief {show('lip_relief', read.lip_relief, units)} at the corner.",
        _chisel(read, units),
        *_thinning(read, units),
        *_unequal(read, units),
    ]
    return " ".join(sentences)


def sentences(point: GroundPoint, inspection: Inspection, parts: tuple[str, ...], units: Units) -> dict[str, str]:
    """For each part what it is and, where something of it is measured, how much."""
    return {name: _sentence(name, point, inspection, units) for name in parts}


def of_names(inspection: Inspection, units: Units) -> tuple[str, ...]:
    """A sentence for each name that stands beside the drill and is no single part of it."""
    web = show("web", inspection.web, units)
    return (
        "Outer corner: where a lip ends at the outside; it cuts the wall of the hole.",
        "Land: the rib between two flutes, with the margin at its leading edge.",
        f"Web: the metal between the two flutes, {web} thick at the point.",
    )


def _chisel(read: Inspection, units: Units) -> str:
    psi = read.thinning.chisel_edge_angle if read.thinning else read.chisel_edge_angle
    q = QUANTITIES["chisel_edge_angle"]
    words = "flatter than" if psi < q.usual.low else "steeper than" if psi > q.usual.high else "within"
    length = read.thinning.thinned_chisel_length if read.thinning else read.chisel_edge_length
    return (
        f"The chisel edge is {show('chisel_edge_length', length, units)} long; its angle to the lips is "
        f"{show('chisel_edge_angle', psi, units)} (obtuse), {words} {q.the_usual}."
    )


def _thinning(read: Inspection, units: Units) -> list[str]:
    if not read.thinning:
        return []
    thinned = [f"lip {number}" for number, lip in enumerate(read.thinning.lips, 1) if lip]
    before = show("chisel_edge_length", read.chisel_edge_length, units)
    return [f"The web is thinned at {' and '.join(thinned)}; the chisel edge was {before} long before."]


def _unequal(read: Inspection, units: Units) -> list[str]:
    said = []
    if abs(read.lip_height_difference) > _SAME:
        higher, lower = (1, 2) if read.lip_height_difference > 0 else (2, 1)
        size = show("lip_height_difference", abs(read.lip_height_difference), units)
        said.append(f"Lip {higher} is {size} nearer to the tip than lip {lower}.")
    for name, words in (("half_angle", "Half angles"), ("lip_length", "Lip lengths"), ("lip_relief", "Lip reliefs")):
        first, second = getattr(read, f"{name}_1"), getattr(read, f"{name}_2")
        if abs(first - second) > _SAME:
            quantity = "point_angle" if name == "half_angle" else name
            said.append(f"{words} {show(quantity, first, units)} and {show(quantity, second, units)}.")
    off = read.point_offset
    if off > _ON_CENTRE:
        said.append(f"The point is {show('point_offset', off, units)} off centre.")
    return said


def _sentence(name: str, point: GroundPoint, read: Inspection, units: Units) -> str:
    term, kind = term_of(name), kind_of(name)
    number = next((int(letter) for letter in name if letter.isdigit()), 0)
    measured = _MEASURED[kind](number, read, units) if kind in _MEASURED else _WORDS.get(kind, "a face of this drill")
    helix = show("helix_angle", point.flute.helix_angle, units)
    return f"{capital(term)}: {measured.format(lip=number, helix=helix)}."


def _of_lip(name: str, lip: int, read: Inspection, units: Units) -> str:
    return show("point_angle" if name == "half_angle" else name, getattr(read, f"{name}_{lip}"), units)


def _lip(lip: int, read: Inspection, units: Units) -> str:
    left = read.thinning.lips[lip - 1] if read.thinning else None
    length = show("lip_length", left.untouched_lip_length if left else getattr(read, f"lip_length_{lip}"), units)
    size = f"{length} long{' after thinning' if left else ''}"
    return f"the cutting edge between flute and flank, {size}, {_of_lip('half_angle', lip, read, units)} to the axis"


def _thinned_lip(lip: int, read: Inspection, units: Units) -> str:
    left = read.thinning.lips[lip - 1] if read.thinning else None
    length = f", {show('thinned_lip_length', left.thinned_lip_length, units)} long" if left else ""
    return f"the short cutting edge that the notch adds near the axis{length}"


def _flank(lip: int, read: Inspection, units: Units) -> str:
    return f"the ground face behind lip {lip}, with a relief of {_of_lip('lip_relief', lip, read, units)} at the corner"


def _heel(lip: int, read: Inspection, _units: Units) -> str:
    turn = getattr(read, f"heel_clearance_{lip}")
    level = (
        "never comes up to the height of the corner again"
        if turn is None
        else (f"has come up to the height of the corner {turn:.1f}° behind it")
    )
    return f"where the land ends at the flute behind it; the flank, carried on, {level}"


_MEASURED: Mapping[str, Callable[[int, Inspection, Units], str]] = {
    "lip": _lip,
    "thinned lip": _thinned_lip,
    "chisel edge": lambda _lip, read, units: (
        "where the flanks meet across the web. " + _chisel(read, units).rstrip(".")
    ),
    "flank": _flank,
    "primary facet": _flank,
    "heel": _heel,
}
_CUT = ", cut by the thinning wheel"
_WORDS = {
    "secondary facet": "the second ground face behind lip {lip}, steeper than the first",
    "leading edge": "the edge between flute and margin, running back from the outer corner of lip {lip}",
    "flute": "the groove ahead of lip {lip} that carries the chips away, helix angle {helix}",
    "margin": "the narrow strip at full diameter that guides the drill in its hole",
    "body": "the land behind the margin, set back from the diameter so that it does not rub in the hole",
    "notch face": "the wall below the thinned lip" + _CUT,
    "notch corner": "the rounding between the notch's face and floor" + _CUT,
    "notch floor": "the wall that runs out into the flute" + _CUT,
    "end": "where this model of the drill is cut off; the real one goes on",
}
