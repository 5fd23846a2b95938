"""The solid in a notebook: a ground point to be turned with mouse, fingers or keys."""

from __future__ import annotations

import html
from collections.abc import Sequence
from typing import Any

import traitlets

from drillpoint.drawing import Picture
from drillpoint.drawing.picture import side_by_side
from drillpoint.drawing.showing import Units, read_units
from drillpoint.explorers.rerun import CellWidget, running_cell
from drillpoint.explorers.solid.packing import packed
from drillpoint.explorers.solid.script import style, widget_module
from drillpoint.explorers.solid.subject import Subject, as_data, pictures, subjects

_open: dict[str, SolidWidget] = {}


class SolidWidget(CellWidget):
    """What `look` returns. `.picture()` is the same as a still picture."""

    _esm = traitlets.Unicode().tag(sync=True)
    _css = traitlets.Unicode(style()).tag(sync=True)
    config = traitlets.Dict().tag(sync=True)
    packs = traitlets.List(traitlets.Bytes(), help="The triangles of each solid.").tag(sync=True)
    state = traitlets.Dict(help="From where it is looked at, and where it is cut.").tag(sync=True)

    def __init__(self, looked_at: Sequence[Subject], view: str, units: Units, *, labels: bool) -> None:
        self._looked_at, self._view, self._units, self._labels = looked_at, view, units, labels
        self._stills = pictures(looked_at, view, units, labels=labels)
        super().__init__(
            _esm=widget_module(),
            config=as_data(looked_at, view, units, self._stills, labels=labels),
            packs=[packed(one.solid) for one in looked_at],
        )

    def picture(self, view: str = "") -> Picture:
        """A still picture, from the view the widget started with or one named as for `solid_picture`."""
        again = view and pictures(self._looked_at, view, self._units, labels=self._labels)
        return side_by_side(again or self._stills)

    def _repr_mimebundle_(self, **kwargs: Any) -> Any:
        live = super()._repr_mimebundle_(**kwargs)
        if live is None:
            return None
        data, metadata = live if isinstance(live, tuple) else (live, {})
        # Where widgets are missing, and in exports, the next best of these is shown.
        return {**data, **self._still()}, metadata

    def _still(self) -> dict[str, str]:
        picture = self.picture()
        said_of = [(*one.says.values(), *(one.of_names if self._labels else ())) for one in self._looked_at]
        lines = list(dict.fromkeys(said for sentences in said_of for said in sentences))
        said = f"<ul>{''.join(f'<li>{html.escape(line)}</li>' for line in lines)}</ul>"
        if self._labels:  # the names are on the picture, so what each is may be unfolded
            said = f"<details><summary>What each part is</summary>{said}</details>"
        return {
            "text/html": f"<figure>{picture.html}</figure>{said}",
            "text/plain": "\n".join([picture.alt, *lines]),
        }


def look(
    point: Any = None,
    *,
    beside: Any = None,
    names: Sequence[str] = ("first", "second"),
    view: str = "above",
    units: str = "mm",
    labels: bool = False,
    key: str = "",
    **givens: Any,
) -> SolidWidget:
    """The ground point as a solid, to be turned with mouse, fingers or arrow keys.

    point: a ground point; or givens by keyword for a plainly ground one: diameter, point_angle, web or web_ratio, one
    of lip_relief, axial_relief and chisel_edge_angle, and what else `Flute` takes, such as helix_angle or hand="left";
    degrees and mm. beside: another ground point, drawn to the same scale and turned together with the first; names:
    what the two are called. view: where it is looked at from at first: "above", "end", "side", "along lips" or "along
    chisel edge". units: "mm" or "inch", for what is written. labels: whether the parts have their
    names beside them at first. key: tells two apart that one cell makes.
    Running the cell again shows the solid turned as it was left.
    Raises LearnerError for what is no ground point, CannotBeGround for one that makes no solid.

    >>> look(diameter=10, point_angle=118, lip_relief=12, web=1.5)
    """
    written_in = read_units(units)
    widget = SolidWidget(subjects(point, beside, names, written_in, givens), view, written_in, labels=labels)
    place = f"{running_cell()}:{key}"
    before = _open.pop(place, None)
    if before is not None:
        if before._view == view:
            widget.state = before.state
        before.close()
    _open[place] = widget
    return widget
