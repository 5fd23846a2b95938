"""What an explorer consists of, as plain data: sliders, the relations worked out, the drawings and the words."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

from attrs import asdict, evolve, field, frozen

from drillpoint.drawing.catalogue import COMPUTED
from drillpoint.drawing.draw import scene
from drillpoint.drawing.scene import Allowed, Sentence
from drillpoint.drawing.working import step, used, work_through
from drillpoint.errors import LearnerError, OutOfRange, UnknownGiven
from drillpoint.quantities import nearest, plain_number, quantity

CALL_DECIMALS = 6


@frozen
class Slider:
    """A quantity to move between `low` and `high`, from `start`, by `step` with one press of an arrow key.

    share_of: the limits and the step are shares of that other quantity, and the value keeps its share when the other
    moves.
    """

    name: str
    low: float
    high: float
    start: float
    step: float
    share_of: str = ""

    def limits(self, state: Mapping[str, float]) -> tuple[float, float]:
        """The limits in the quantity's own unit."""
        scale = state[self.share_of] if self.share_of else 1.0
        return self.low * scale, self.high * scale


@frozen
class Explorer:
    """An explorer. relations: worked out in this order. worked: those whose line is shown.

    summary: the status line, which may also tell the numbers that only its drawings have.

    fixed: quantities that the drawings need and that no slider moves.
    """

    name: str
    title: str
    sliders: tuple[Slider, ...]
    relations: tuple[str, ...]
    worked: tuple[str, ...]
    table: tuple[str, ...]
    scenes: tuple[str, ...]
    summary: tuple[Sentence, ...]
    fixed: Mapping[str, float] = field(factory=dict)

    @property
    def start(self) -> dict[str, float]:
        """Where the sliders stand at first and after a reset."""
        return {slider.name: slider.start for slider in self.sliders}

    @property
    def allowed(self) -> tuple[Allowed, ...]:
        """What its scenes allow."""
        return tuple(dict.fromkeys(rule for name in self.scenes for rule in scene(name).allowed))

    @property
    def computed(self) -> tuple[str, ...]:
        """Those of its scenes that only Python can work out."""
        return tuple(name for name in self.scenes if name in COMPUTED)

    def as_data(self) -> dict[str, Any]:
        """The explorer as the browser reads it."""
        said = {
            **asdict(self),
            "allowed": [asdict(rule) for rule in self.allowed],
            "computed": self.computed,
            "calls": [{"scene": name, "names": self.givens(name)} for name in self.scenes],
        }
        data: dict[str, Any] = json.loads(json.dumps(said))
        return data

    def values(self, state: Mapping[str, float]) -> dict[str, float]:
        """Every value that follows from the sliders by relations, by keyword, as the browser works it out.

        Raises Impossible when the sliders stand on a drill that cannot be.
        """
        values = {name: float(value) for name, value in {**self.fixed, **state}.items()}
        work_through(map(step, self.relations), values, self.allowed)
        return values

    def givens(self, name: str) -> tuple[str, ...]:
        """Those of its quantities that a plain call of this scene needs."""
        return used(scene(name), (*self.start, *self.fixed))

    def state(self, **givens: float) -> dict[str, float]:
        """The sliders' values with some set.

        Raises LearnerError for a quantity without a slider and for a value outside its limits.
        """
        names = tuple(slider.name for slider in self.sliders)
        for name in givens:
            if name not in names:
                raise UnknownGiven(f"the explorer {self.name!r} has no slider for {name!r}{nearest(name, names)}")
        state = {**self.start, **{name: _number(name, value) for name, value in givens.items()}}
        for slider in self.sliders:
            if slider.share_of in givens and slider.name not in givens:
                share = slider.start / self.start[slider.share_of]
                # Twelve digits, as in the browser: enough for any drill, and 1.905 stays 1.905.
                state[slider.name] = float(f"{share * state[slider.share_of]:.12g}")
        for slider in self.sliders:
            low, high = slider.limits(state)
            if not low - 1e-9 * abs(low) <= state[slider.name] <= high + 1e-9 * abs(high):
                q = quantity(slider.name)
                raise OutOfRange(
                    f"{slider.name} {q.show(state[slider.name], 4)} is outside the slider's {q.show(low, 4)} to "
                    f"{q.show(high, 4)}; for example {q.show(slider.start, 4)}"
                )
        return state

    def starting_at(self, state: Mapping[str, float]) -> Explorer:
        """The same explorer with its sliders at other values at first and after a reset."""
        return evolve(self, sliders=tuple(evolve(slider, start=state[slider.name]) for slider in self.sliders))

    def call(self, state: Mapping[str, float], units: str) -> str:
        """The plain calls that draw the same drill, a line for each scene."""
        values = {**self.fixed, **state}
        written_in = ', units="inch"' if units == "inch" else ""
        return "\n".join(f'draw("{name}", {_arguments(values, self.givens(name))}{written_in})' for name in self.scenes)


def _arguments(values: Mapping[str, float], names: tuple[str, ...]) -> str:
    return ", ".join(f"{name}={plain_number(values[name], CALL_DECIMALS)}" for name in names)


def chisel_edge_judged(end: str = "") -> Sentence:
    """A clause of the status line: the chisel edge angle, how it compares with the usual, and `end` behind that."""
    q = quantity("chisel_edge_angle")
    return Sentence(
        "Chisel edge {chisel_edge_angle} to the lips (obtuse), ",
        judged=q.name,
        low=q.usual.low,
        high=q.usual.high,
        below=f"flatter than {q.the_usual}{end}",
        within=f"within {q.the_usual}{end}",
        above=f"steeper than {q.the_usual}{end}",
    )


def _number(name: str, value: Any) -> float:
    try:
        return float(value)
    except (TypeError, ValueError):
        raise LearnerError(f"{name} needs a number, not {value!r}; for example {quantity(name).typical:g}") from None
