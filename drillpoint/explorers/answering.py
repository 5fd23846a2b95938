"""What Python answers an explorer that asks for a drawing no formula gives."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from typing import Any

from drillpoint.drawing.computed import Drawn
from drillpoint.drawing.draw import computed, drawn_from
from drillpoint.drawing.working import values_of
from drillpoint.errors import LearnerError
from drillpoint.explorers.explorer import Explorer

PIXEL_DECIMALS = 2


def answer(explorer: Explorer, question: Mapping[str, Any]) -> dict[str, Any]:
    """The answer to {asked, state, has}: every computed scene for that state, or the problem with it in a sentence.

    has: for each scene the name of the shapes that the browser holds; shapes that it holds are not sent again, so that
    a step of a slider costs a list of numbers.
    """
    state = question["state"]
    reply = {"asked": question.get("asked", ""), "state": state}
    try:
        has = question.get("has", {})
        drawn = drawings(explorer, state, explorer.computed)
        return {**reply, "answers": {name: _as_sent(one, has.get(name)) for name, one in drawn.items()}}
    except LearnerError as problem:
        return {**reply, "problem": str(problem)}
    except Exception as problem:  # without this the notebook would swallow it
        return {**reply, "problem": f"{type(problem).__name__}: {problem}"}


def drawings(explorer: Explorer, state: Mapping[str, float], names: Iterable[str]) -> dict[str, Drawn]:
    """These scenes of the explorer for a state of its sliders, by name.

    Raises LearnerError when the sliders stand on a drill that cannot be.
    """
    values = explorer.values(state)
    # Two views of one point grind it once.
    made: dict[Any, Any] = {}
    found = {}
    for name in names:
        if name not in explorer.computed:
            found[name] = drawn_from(name, values)
            continue
        drawing = computed(name)
        own = values_of(drawing.states, {given: values[given] for given in explorer.givens(name)})
        key = (drawing.make, frozenset(own.items()))
        if key not in made:
            made[key] = drawing.make(own)
        found[name] = drawing.drawn(made[key], {**values, **own})
    return found


def _as_sent(drawn: Drawn, held: str | None) -> dict[str, Any]:
    scene = drawn.scene
    exact = {number.place for number in scene.numbers} | ({scene.bar.scale} if scene.bar else set())
    if not all(map(math.isfinite, drawn.coordinates)):
        raise LearnerError(f"the drawing {scene.name!r} finds no place for one of its lines on this drill")
    shapes = str(hash((scene.shapes, scene.numbers, scene.bar)))
    return {
        "id": shapes,
        "coordinates": [n if i in exact else round(n, PIXEL_DECIMALS) for i, n in enumerate(drawn.coordinates)],
        "values": {name: value for name, value in drawn.values.items() if math.isfinite(value)},
        **({} if held == shapes else {"scene": scene.for_browser()}),
    }
