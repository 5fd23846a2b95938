"""Scenes of what no closed form gives: a function works the numbers out each time, from a ground point above all.

They are laid on a plain `Sheet`, so the same writers and the same kind of words serve. They need Python each time.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from attrs import evolve, frozen

from drillpoint.drawing.scene import Bar, Scene
from drillpoint.drawing.sheet import Sheet
from drillpoint.errors import LearnerError


@frozen
class Drawn:
    """A finished scene with its coordinates and every value it shows."""

    scene: Scene
    coordinates: list[float]
    values: dict[str, float]


@frozen(kw_only=True)
class Computed:
    """A scene that is worked out by numbers.

    states: a scene without shapes, which says what is needed and allowed, its ranges and its words, as any scene does.
    kind: the class of what is drawn. make: makes one from values by keyword. lay: lays its shapes on a plain sheet, and
    returns the values read off it and the scale bar; both come before the values given.
    """

    states: Scene
    kind: type[Any]
    make: Callable[[Mapping[str, float]], Any]
    lay: Callable[[Sheet, Any], tuple[Mapping[str, float], Bar | None]]

    def drawn(self, subject: Any, values: Mapping[str, float]) -> Drawn:
        """The scene of a subject. values: what was given for it, if anything was.

        Raises LearnerError when it is nothing that this scene shows.
        """
        if not isinstance(subject, self.kind):
            raise LearnerError(
                f"the drawing {self.states.name!r} shows a {self.kind.__name__}, not {type(subject).__name__}; "
                f"or give {', '.join(self.states.needs)}"
            )
        sheet = Sheet(plain=True)
        found, bar = self.lay(sheet, subject)
        scene = evolve(self.states, shapes=sheet.shapes, numbers=sheet.numbers, bar=bar)
        return Drawn(scene, sheet.expressions, {**values, **found})
