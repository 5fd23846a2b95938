"""Reading a drawing back: its shapes as points in the frame, y up."""

from collections.abc import Mapping

from drillpoint.drawing.draw import coordinates, scene
from drillpoint.drawing.scene import Outline
from drillpoint.drawing.working import values_of

Points = list[tuple[float, float]]


class Reading:
    """The coordinates of a stated scene for some givens; `values` has every value that it shows."""

    def __init__(self, name: str, **givens: float) -> None:
        self.scene = scene(name)
        self.values: Mapping[str, float] = values_of(self.scene, givens)
        self.numbers = coordinates(self.scene, self.values)
        assert self.scene.bar is not None
        self.scale = self.numbers[self.scene.bar.scale]
        self.own = {number.name: self.numbers[number.place] for number in self.scene.numbers}

    def shapes(self, style: str) -> list[Points]:
        """The points of each drawn shape of a style, in mm, x right and y up."""
        return [
            self._points(s) for s in self.scene.shapes if isinstance(s, Outline) and s.style == style and self._on(s)
        ]

    def _on(self, shape: Outline) -> bool:
        return shape.when < 0 or self.numbers[shape.when] > 0

    def _points(self, shape: Outline) -> Points:
        flat = [self.numbers[step] / self.scale for step in shape.steps if isinstance(step, int)]
        return [(x, -y) for x, y in zip(flat[::2], flat[1::2], strict=True)]

    def spans(self) -> list[float]:
        """The lengths between arrow tips that stand level with, or above, one another: what dimensions span, in mm."""
        tips = [points[0] for points in self.shapes("arrow")]
        found = [abs(a[0] - b[0]) for a in tips for b in tips if abs(a[1] - b[1]) < 1e-9]
        return found + [abs(a[1] - b[1]) for a in tips for b in tips if abs(a[0] - b[0]) < 1e-9]
