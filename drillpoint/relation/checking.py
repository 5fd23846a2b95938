"""Reading one given: is it a number, is it possible, and what was probably meant if not."""

from __future__ import annotations

import math
from typing import Any

from drillpoint.errors import OutOfRange
from drillpoint.quantities import Quantity, quantity

LEAST_ACUTE = 5.0
INCH = 25.4


def read_scalar(name: str, given: Any) -> tuple[float, tuple[str, ...]]:
    """One given as a float in its convention, with notes on how it was read.

    A chisel edge angle under 90° is the acute one and becomes its supplement.
    Raises OutOfRange for anything that is no finite number or is impossible for the quantity.
    """
    q = quantity(name)
    value = _as_float(q, given)
    if name == "chisel_edge_angle" and LEAST_ACUTE <= value < 90:
        return 180 - value, (acute_note(q, value),)
    if value not in q.possible:
        raise OutOfRange(out_of_range(q, value))
    return value, _usual_notes(q, value)


def read_array(name: str, given: Any) -> tuple[Any, tuple[str, ...]]:
    """The same for an array; the notes speak of the array as a whole."""
    import numpy

    q = quantity(name)
    try:
        values = numpy.asarray(given, dtype=float)
    except (TypeError, ValueError):
        raise OutOfRange(f"{name} needs numbers ({q.unit or 'no unit'}); an entry of the array is not one") from None
    notes: tuple[str, ...] = ()
    if name == "chisel_edge_angle" and ((values >= LEAST_ACUTE) & (values < 90)).any():
        acute = (values >= LEAST_ACUTE) & (values < 90)
        notes = (f"{int(acute.sum())} chisel edge angles under 90° were read as acute and turned into 180° minus them",)
        values = numpy.where(acute, 180 - values, values)
    if values.size and not (values.min() in q.possible and values.max() in q.possible):
        wrong = next(v for v in values.flat if v not in q.possible)
        raise OutOfRange(out_of_range(q, float(wrong)) if math.isfinite(wrong) else _not_finite(q, float(wrong)))
    return values, notes


def acute_note(q: Quantity, value: float) -> str:
    """How an acute chisel edge angle was taken."""
    return f"{q.term} {q.show(value, 2)} is acute and was read as {q.show(180 - value, 2)} (obtuse)"


def out_of_range(q: Quantity, value: float) -> str:
    """The sentence for a value that no drill has, with what was probably meant."""
    return f"{q.name} {q.show(value, 4)} is outside {q.show_span(q.possible)}; {_probably(q, value)}"


def _as_float(q: Quantity, given: Any) -> float:
    if isinstance(given, (str, bytes, bool)) or given is None:
        raise OutOfRange(f"{q.name} needs a number{_in_unit(q)}, not {given!r}; for example {q.show(q.typical)}")
    try:
        value = float(given)
    except (TypeError, ValueError, OverflowError):
        raise OutOfRange(f"{q.name} needs a number{_in_unit(q)}; for example {q.show(q.typical)}") from None
    if not math.isfinite(value):
        raise OutOfRange(_not_finite(q, value))
    return value


def _not_finite(q: Quantity, value: float) -> str:
    return f"{q.name} is {value}, which is no size; give a number{_in_unit(q)}, for example {q.show(q.typical)}"


def _in_unit(q: Quantity) -> str:
    return {"°": " in degrees", "mm": " in mm"}.get(q.unit, "")


def _probably(q: Quantity, value: float) -> str:
    if q.is_angle and 0 < value < math.pi and math.degrees(value) in q.possible and value not in q.possible:
        return f"{value:.4g} radians is {q.show(math.degrees(value), 1)}, if that was meant; give degrees"
    if q.name == "point_angle" and 29.5 <= value < 60:
        return f"{q.show(value)} is probably half the point angle; give the whole, {q.show(2 * value)}"
    if q.name == "point_angle":
        return "a 118° point is usual"
    return f"for example {q.show(q.typical)}"


def _usual_notes(q: Quantity, value: float) -> tuple[str, ...]:
    if value in q.usual:
        return ()
    if q.is_angle and 0 < abs(value) <= 0.5:
        return (f"{q.term} {q.show(value, 3)} is hardly any; {value:.3g} radians would be {math.degrees(value):.3g}°",)
    if q.unit == "mm" and 0 < value < q.usual.low and value * INCH in q.usual:
        return (f"{q.term} {q.show(value, 4)} is small; {value:.4g} in would be {value * INCH:.4g} mm",)
    return (f"{q.term} {q.show(value, 4)} is outside {q.the_usual}",)
