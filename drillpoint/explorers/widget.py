"""An explorer in a notebook: sliders and drawings that answer without asking the kernel."""

from __future__ import annotations

import html
from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any

import traitlets

from drillpoint.drawing import Picture
from drillpoint.drawing.draw import finished
from drillpoint.drawing.picture import side_by_side
from drillpoint.drawing.showing import read_units, show
from drillpoint.errors import LearnerError
from drillpoint.explorers.answering import answer, drawings
from drillpoint.explorers.explorer import Explorer
from drillpoint.explorers.find import find
from drillpoint.explorers.rerun import CellWidget, running_cell
from drillpoint.explorers.script import style, widget_module
from drillpoint.quantities import QUANTITIES, nearest
from drillpoint.relations import BOOK

NOTHING_HELD: Mapping[str, Any] = MappingProxyType({})

_open: dict[str, ExplorerWidget] = {}


class ExplorerWidget(CellWidget):
    """What `explore` returns. Move the sliders; read `.state`, `.facts` or `.call` in the next cell."""

    _esm = traitlets.Unicode().tag(sync=True)
    _css = traitlets.Unicode(style()).tag(sync=True)
    config = traitlets.Dict().tag(sync=True)
    state = traitlets.Dict(help="Slider values by keyword: degrees and mm.").tag(sync=True)
    units = traitlets.Unicode("mm").tag(sync=True)
    held = traitlets.Dict(help="The drill that is held for comparison: its state, and its computed drawings.").tag(
        sync=True
    )
    first = traitlets.Dict(help="Computed drawings of the first state, to show before Python answers.").tag(sync=True)
    trouble = traitlets.Unicode("").tag(sync=True)

    def __init__(
        self, explorer: Explorer, state: Mapping[str, float], units: str, held: Mapping[str, Any] = NOTHING_HELD
    ) -> None:
        self._explorer = explorer
        self._started_from = (explorer.start, units)
        first = answer(explorer, {"state": dict(state)}).get("answers", {}) if explorer.computed else {}
        super().__init__(
            _esm=widget_module(explorer.name),
            config=explorer.as_data(),
            state=dict(state),
            units=units,
            held=dict(held),
            first=first,
        )
        self.on_msg(self._asked)

    def _asked(self, _widget: Any, question: Any, _buffers: Any) -> None:
        # Only one question is ever on its way, and it is for the newest drill; see asking.js.
        if isinstance(question, dict) and question.get("kind") == "draw":
            self.send(answer(self._explorer, question))

    @property
    def facts(self) -> dict[str, float]:
        """Every value of the drill on the sliders, by keyword: degrees and mm.

        Raises LearnerError when the sliders stand on a drill that cannot be.
        """
        values = self._explorer.values(self.state)
        for drawn in drawings(self._explorer, self.state, self._explorer.computed).values():
            values |= drawn.values
        return values

    @property
    def call(self) -> str:
        """The plain call that draws the same drill without any widget."""
        return self._explorer.call(self.state, self.units)

    def picture(self, scene: str = "") -> Picture:
        """The drill on the sliders as a still picture: one scene by its name, or all of them side by side."""
        scenes = self._explorer.scenes
        if scene and scene not in scenes:
            raise LearnerError(f"the explorer {self._explorer.name!r} draws no {scene!r}{nearest(scene, scenes)}")
        drawn = drawings(self._explorer, self.state, (scene,) if scene else scenes)
        return side_by_side([finished(one, read_units(self.units)) for one in drawn.values()])

    def on_move(self, callback: Callable[[dict[str, float]], object]) -> None:
        """Call back with `.facts` whenever a slider has come to rest; what goes wrong is shown under the sliders."""

        def moved(_: Any) -> None:
            try:
                callback(self.facts)
                self.trouble = ""
            except LearnerError as problem:
                self.trouble = str(problem)
            except Exception as problem:  # without this line the notebook would swallow it
                self.trouble = f"{type(problem).__name__}: {problem}"

        self.observe(moved, names=["state"])

    def _repr_mimebundle_(self, **kwargs: Any) -> Any:
        live = super()._repr_mimebundle_(**kwargs)
        if live is None:
            return None
        data, metadata = live if isinstance(live, tuple) else (live, {})
        # Where widgets are missing, and in exports, the next best of these is shown.
        return {**data, **self._still()}, metadata

    def _still(self) -> dict[str, str]:
        try:
            still, values = self.picture(), self.facts
        except LearnerError as problem:
            return {"text/html": f"<p>{html.escape(str(problem))}</p>", "text/plain": str(problem)}
        lines = [
            BOOK[name].worked(**{given: values[given] for given in BOOK[name].givens}).text
            for name in self._explorer.worked
        ]
        # What is measured on a ground point has no line to work out; its readings stand in place of one.
        units = read_units(self.units)
        read = (name for name in self._explorer.table if name in values)
        lines = lines or [f"{QUANTITIES[name].term}: {show(name, values[name], units)}" for name in read]
        worked = "".join(f"<li>{html.escape(line)}</li>" for line in lines)
        return {
            "text/html": f"<figure>{still.html}</figure><ul>{worked}</ul>",
            "text/plain": "\n".join([still.alt, *lines]),
        }


def explore(name: str, *, units: str = "mm", key: str = "", **start: float) -> ExplorerWidget:
    """An explorer to move with mouse, keyboard or typed numbers.

    name: one of `explorer_names()`, such as "lips" (lips and chisel edge of a plainly ground point). units: "mm" or
    "inch". start: where sliders stand at first, such as diameter=12.5; degrees, mm and mm/rev.
    Running the cell again shows the drill as it was left, and the one that was held, unless the start was changed.
    key: tells two explorers apart that one cell makes.
    Raises LearnerError for an unknown explorer, slider or value.

    >>> explore("lips")
    """
    explorer = find(name)
    begin: tuple[dict[str, float], str] = (explorer.state(**start), read_units(units))
    place = f"{name}:{running_cell()}:{key}"
    before = _open.pop(place, None)
    state, shown = begin
    held: dict[str, Any] = {}
    if before is not None:
        if before._started_from == begin:
            state, shown, held = before.state, before.units, before.held
        before.close()
    widget = ExplorerWidget(explorer.starting_at(begin[0]), state, shown, held)
    widget._started_from = begin
    _open[place] = widget
    return widget
