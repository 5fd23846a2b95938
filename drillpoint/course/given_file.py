"""Reading the givens of a task: lists, ranges, shop sizes, and shares of another given."""

from __future__ import annotations

from typing import Any

from drillpoint.course.entries import Place, check_keys, entry, one_of
from drillpoint.course.exercise import Given, GivenValue
from drillpoint.course.reading import ReadingError, read_number, unit_and_factor, with_unit
from drillpoint.course.shop_sizes import SERIES, shop_sizes
from drillpoint.errors import InstructorError
from drillpoint.quantities import QUANTITIES

MOST_VALUES = 1000
_KEYS = {"choose", "from", "to", "step", "unit", "share_of", "shown_only", "shop", "reading_error"}


def given_from(name: str, spec: Any, where: Place) -> Given:
    """Read one given: `[8, 10]`, `{ from, to, step }`, `{ shop = "metric" }`, `{ share_of, choose, step }`."""
    where = where.inside(what=f"given {name}")
    one_of(QUANTITIES, name, "quantity", where)
    if not isinstance(spec, dict):
        spec = {"choose": spec if isinstance(spec, list) else [spec]}
    check_keys(spec, _KEYS, where)
    unit = entry(spec, "unit", str, where, QUANTITIES[name].unit)
    check_unit(unit, name, where)
    share_of = entry(spec, "share_of", str, where, "")
    values = _values(spec, "" if share_of else unit, where)
    if not values:
        raise InstructorError(f"{where}: there is no value to choose from")
    step = float(entry(spec, "step", (int, float), where, 0.1)) if share_of else 0.0
    if share_of and step <= 0:
        raise InstructorError(f"{where}: step = {step} is not above 0")
    error = float(entry(spec, "reading_error", (int, float), where, 0.0)) * unit_and_factor(unit)[1]
    if error < 0:
        raise InstructorError(f"{where}: reading_error is not below 0")
    return Given(name, values, share_of, step, entry(spec, "shown_only", bool, where, False), error)


def check_unit(unit: str, name: str, where: Place) -> None:
    """Refuse a unit that measures something else."""
    kept_in = QUANTITIES[name].unit
    if unit_and_factor(unit)[0] != kept_in:
        raise InstructorError(
            f"{where.at('unit')}: unit {unit!r} does not suit {name}, which is kept in {kept_in or 'no unit'}"
        )


def _values(spec: dict[str, Any], unit: str, where: Place) -> tuple[GivenValue, ...]:
    if "shop" in spec:
        series = one_of(SERIES, entry(spec, "shop", str, where), "shop", where)
        low, high = (entry(spec, key, (int, float, str), where, "") for key in ("from", "to"))
        try:
            return shop_sizes(series, low, high)
        except ReadingError as error:
            raise error.in_file(str(where)) from None
        except InstructorError as error:
            raise InstructorError(f"{where}: {error}") from None
    if "choose" in spec:
        numbers = entry(spec, "choose", list, where)
    else:
        low, high, step = (entry(spec, key, (int, float), where) for key in ("from", "to", "step"))
        numbers = _range(low, high, step, where)
    return tuple(_given_value(number, unit, where) for number in numbers)


def _range(low: float, high: float, step: float, where: Place) -> list[float]:
    if step <= 0 or high < low or (high - low) / step > MOST_VALUES:
        raise InstructorError(
            f"{where}: from {low} to {high} in steps of {step} is not a range of 1 to {MOST_VALUES} values"
        )
    return [round(low + k * step, 9) for k in range(int((high - low) / step + 1e-9) + 1)]


def _given_value(number: Any, unit: str, where: Place) -> GivenValue:
    """A given is a plain number in its unit, or text as a shop writes it ("7/8 in")."""
    if isinstance(number, bool) or not isinstance(number, (int, float, str)):
        raise InstructorError(f'{where}: {number!r} is neither a number nor text such as "7/8 in"')
    try:
        reading = read_number(number if isinstance(number, str) else f"{number:.10g}", unit)
    except ReadingError as error:
        raise error.in_file(str(where)) from None
    return GivenValue(reading.value, with_unit(reading.number, reading.typed_unit))
