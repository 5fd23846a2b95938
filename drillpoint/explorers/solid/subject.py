"""What is looked at: ground points, from keywords or as they are, with everything the browser needs to know of them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from attrs import asdict, frozen

from drillpoint.drawing.draw import facts
from drillpoint.drawing.picture import Picture
from drillpoint.drawing.showing import Units
from drillpoint.drawing.solid.naming import BESIDE, ROW, SIZE, TOUCHING, Named, Spot, named
from drillpoint.drawing.solid.parts import AMBIENT, INKS, LIGHT, LINES, LIT, SURFACES, kind_of, term_of
from drillpoint.drawing.solid.picture import still
from drillpoint.drawing.solid.shown import Shown, shown, view_named
from drillpoint.drawing.solid.words import alt_text, of_names, sentences
from drillpoint.errors import LearnerError
from drillpoint.explorers.solid.packing import layout
from drillpoint.ground import Flute, GroundPoint, PlaneFlank
from drillpoint.quantities import nearest

_OF_THE_FLUTE = ("helix_angle", "hand", "web_taper", "body_diameter", "heel_angle", "margin_width", "margin_height")
_OF_THE_POINT = (
    *("diameter", "point_angle", "web", "web_ratio", "lip_relief", "axial_relief", "chisel_edge_angle"),
    *_OF_THE_FLUTE,
)
TITLE = "The point as a solid"


@frozen(eq=False)
class Subject:
    """A ground point ready to be looked at. title: what tells it from the one beside it.

    says: a sentence for each part. of_names: one for each name that no part bears.
    """

    title: str
    solid: Shown
    words: str
    says: Mapping[str, str]
    named: tuple[Named, ...]
    of_names: tuple[str, ...]


def plain_point(givens: Mapping[str, Any]) -> GroundPoint:
    """A plainly ground point: two plane flanks at the angle the flute was made for.

    Raises UnknownGiven, MissingGiven or OutOfRange for what describes no drill.
    """
    for name in givens:
        if name not in _OF_THE_POINT:
            raise LearnerError(f"look has no given called {name!r}{nearest(name, _OF_THE_POINT)}")
    values = facts(**{name: value for name, value in givens.items() if name not in _OF_THE_FLUTE})
    flute = {name: givens[name] for name in _OF_THE_FLUTE if name in givens}
    return GroundPoint(
        Flute(diameter=values["diameter"], web=values["web"], point_angle=values["point_angle"], **flute),
        PlaneFlank(point_angle=values["point_angle"], axial_relief=values["axial_relief"]),
    )


def subjects(point: Any, beside: Any, names: Sequence[str], units: Units, givens: Mapping[str, Any]) -> list[Subject]:
    """The points to look at.

    Raises LearnerError for what is no ground point.
    """
    if point is not None and givens:
        raise LearnerError(f"look takes a ground point or givens by keyword, not both: leave out {', '.join(givens)}")
    points = [plain_point(givens) if point is None else point, *([] if beside is None else [beside])]
    for one in points:
        if not isinstance(one, GroundPoint):
            raise LearnerError(f"look shows a GroundPoint, or givens by keyword; it shows no {type(one).__name__}")
    titles = names if len(points) > 1 else [""]
    if len(titles) != len(points):
        raise LearnerError(f"names {names!r} must be two, for the point and the one beside it")
    return [_subject(one, title, units) for one, title in zip(points, titles, strict=True)]


def _subject(point: GroundPoint, title: str, units: Units) -> Subject:
    inspection, solid = point.inspect(), shown(point)
    says = sentences(point, inspection, solid.parts, units)
    words = alt_text(point, inspection, units)
    return Subject(title, solid, words, says, named(solid), of_names(inspection, units))


def pictures(looked_at: Sequence[Subject], view: str, units: Units, *, labels: bool = False) -> list[Picture]:
    """The still picture of each. labels: whether the parts have their names beside them."""
    said = [f"{one.title}: {one.words}" if one.title else one.words for one in looked_at]
    return [
        still(one.solid, view_named(one.solid.views, view), words, units, labels=labels)
        for one, words in zip(looked_at, said, strict=True)
    ]


def as_data(
    looked_at: Sequence[Subject], view: str, units: Units, stills: Sequence[Picture], *, labels: bool = False
) -> dict[str, Any]:
    """Everything the browser needs but the triangles. stills: the picture of each, for while it cannot be turned."""
    views = looked_at[0].solid.views
    parts = dict.fromkeys(name for one in looked_at for name in one.solid.parts)
    return {
        "title": TITLE,
        "units": units,
        "summary": " ".join(f"{one.title}: {one.words}" if one.title else one.words for one in looked_at),
        "views": [asdict(one) for one in views],
        "start": asdict(view_named(views, view)),
        "parts": [{"name": name, "term": term_of(name)} for name in parts],
        "naming": {"on": labels, "touching": TOUCHING, "row": ROW, "beside": BESIDE, "letter": SIZE},
        "style": {
            "surfaces": {name: asdict(look) for name, look in SURFACES.items()},
            "lines": {name: asdict(look) for name, look in LINES.items()},
            "inks": INKS,
            "light": LIGHT,
            "lighting": (AMBIENT, LIT),
        },
        "solids": [
            {
                "title": one.title,
                "alt": f"{TITLE}, to be turned with the arrow keys. {one.words}",
                "names": one.solid.parts,
                "kinds": [kind_of(name) for name in one.solid.parts],
                "says": dict(one.says),
                "named": [
                    {"text": name.text, "above": name.above, "spots": [_rounded(spot) for spot in name.spots]}
                    for name in one.named
                ],
                "radius": one.solid.radius,
                "layout": layout(one.solid),
                "still": picture.html,
            }
            for one, picture in zip(looked_at, stills, strict=True)
        ],
    }


def _rounded(spot: Spot) -> tuple[list[float], list[float], float]:
    """A spot as its place, its way and how far aslant it may be seen."""
    return [round(value, 4) for value in spot.at], [round(value, 3) for value in spot.way], spot.facing
