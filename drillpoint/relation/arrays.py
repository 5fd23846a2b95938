"""Calling a relation with arrays: the same checks, once for all entries, and block by block so that it stays quick."""

from __future__ import annotations

import math
import warnings
from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

import numpy

from drillpoint.errors import Impossible
from drillpoint.relation.calling import Plan, numbers, says
from drillpoint.relation.checking import read_array
from drillpoint.relation.condition import ANY_DRILL, Condition, Together
from drillpoint.relation.value import ReadAs

if TYPE_CHECKING:
    from numpy.typing import NDArray

    Floats = NDArray[numpy.float64]

# Blocks of this many values stay in a core's cache through all steps of a formula; measured on a million values.
_BLOCK = 16384


def call(steps: Plan, givens: Mapping[str, Any]) -> Floats:
    """The last step's result for every entry of the broadcast givens.

    Raises OutOfRange or Impossible for the first entry that is no drill; warns ReadAs where entries were read otherwise
    than written.
    """
    values: dict[str, Floats] = {}
    for name, given in givens.items():
        values[name], said = read_array(name, given)
        for note in said:
            warnings.warn(note, ReadAs, stacklevel=5)
    shape = numpy.broadcast_shapes(*(value.shape for value in values.values()))
    with numpy.errstate(all="ignore"):
        if math.prod(shape) <= _BLOCK or any(v.ndim and v.shape != shape for v in values.values()):
            return numpy.broadcast_to(_block(steps, values), shape).copy()
        flat = {name: value.ravel() if value.ndim else value for name, value in values.items()}
        result = numpy.empty(math.prod(shape))
        for start in range(0, result.size, _BLOCK):
            part = slice(start, start + _BLOCK)
            result[part] = _block(steps, {n: value[part] if value.ndim else value for n, value in flat.items()})
        return result.reshape(shape)


def _block(steps: Plan, values: dict[str, Floats]) -> Floats:
    for step in steps:
        own = [values[name] for name in step.givens]
        always = [c for c in ANY_DRILL if all(name in values for name in c.names)]
        margins = [c.margin(values) for c in always]
        margins += getattr(numbers(), f"{step.name}__margins")(numpy, *own)
        conditions: tuple[Condition | Together, ...] = (*always, *step.conditions)
        for condition, margin in zip(conditions, margins, strict=True):
            if not condition.holds(numpy.min(margin, initial=math.inf)):
                raise Impossible(says(condition.says, _first_bad(condition, margin, values)))
        values = {**values, step.result.name: getattr(numbers(), step.name)(numpy, *own)}
    return values[steps[-1].result.name]


def _first_bad(condition: Condition | Together, margin: Floats, values: Mapping[str, Floats]) -> dict[str, float]:
    shape = numpy.broadcast_shapes(numpy.shape(margin), *(numpy.shape(value) for value in values.values()))
    flat = numpy.broadcast_to(margin, shape).ravel()
    place = next(i for i, m in enumerate(flat) if not condition.holds(m))
    return {name: float(numpy.broadcast_to(value, shape).ravel()[place]) for name, value in values.items()}
