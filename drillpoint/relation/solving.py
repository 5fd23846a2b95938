"""Going backwards: the value of one given that makes a relation give a wanted result."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping
from typing import TYPE_CHECKING, Any

from drillpoint.errors import DrillpointError, Impossible, NoSolution, UnknownGiven
from drillpoint.quantities import Quantity, nearest, quantity
from drillpoint.relation.calling import call, completed, numbers, plan, read_scalars, remarks, work_through
from drillpoint.relation.condition import ANY_DRILL
from drillpoint.relation.value import Value

if TYPE_CHECKING:
    from drillpoint.relation.relation import Relation

Curve = Callable[[float], float]
"""The result as a function of the unknown; nan where the drill would be impossible."""

_GRID = 300


def solve(relation: Relation, unknown: str, knowns: Mapping[str, Any]) -> Value | tuple[Value, ...]:
    """See `Relation.solve`."""
    asked = relation.result.name
    if unknown in knowns:
        raise UnknownGiven(f"{unknown} is asked for and given as well; leave it out of the knowns")
    if unknown == asked:
        value: Value = call(relation, knowns)
        return value
    if asked not in knowns:
        raise UnknownGiven(f"{relation.name}.solve({unknown!r}) needs the wanted {asked} ({relation.result.term})")
    if unknown not in relation.accepts:
        raise UnknownGiven(
            f"{relation.name} cannot be solved for {unknown!r}{nearest(unknown, tuple(sorted(relation.accepts)))}"
        )
    others = {name: value for name, value in knowns.items() if name != asked}
    others, taken = completed(relation, {**others, unknown: None})
    del others[unknown]
    plan(relation, frozenset({*others, unknown}))
    known, notes = read_scalars(others)
    target, target_notes = read_scalars({asked: knowns[asked]})
    curve = _curve(relation, unknown, known)
    domain = _domain(quantity(unknown), known)
    # A drill may be possible only in a narrow window; before there is said to be no answer, look between the places.
    roots = _roots(curve, _grid(*domain), target[asked]) or _roots(curve, _grid(*domain, 20 * _GRID), target[asked])
    physical = tuple(root for root in roots if not _cautioned(relation, {**known, unknown: root}))
    if not physical and roots:
        reason = _cautioned(relation, {**known, unknown: roots[0]})[0]
        raise NoSolution(f"the only {unknown} for it is {quantity(unknown).show(roots[0], 4)}, but {reason}")
    if not physical:
        raise NoSolution(_none(relation, unknown, target[asked], curve, known))
    answers = tuple(Value(root, unknown, taken + notes + target_notes) for root in physical)
    return answers[0] if len(answers) == 1 else answers


def _cautioned(relation: Relation, values: dict[str, float]) -> tuple[str, ...]:
    work_through(plan(relation, frozenset(values)), values)
    own = [values[name] for name in relation.givens]
    # At a turning point an answer is known only to the square root of the last digit; it must not be lost to that.
    slack = 1e-7 * max(map(abs, own))
    margins = getattr(numbers(), f"{relation.name}__cautions")(math, *own)
    return remarks(relation, values) if any(margin < -slack for margin in margins) else ()


def _curve(relation: Relation, unknown: str, known: Mapping[str, float]) -> Curve:
    steps = plan(relation, frozenset({*known, unknown}))

    def curve(x: float) -> float:
        try:
            return work_through(steps, {**known, unknown: x})
        except (DrillpointError, ValueError, ZeroDivisionError, OverflowError):
            return math.nan

    return curve


def _domain(q: Quantity, known: Mapping[str, float]) -> tuple[float, float]:
    """Where to look: what is possible for the quantity, on a drill with what is known."""
    low, high = q.possible.low, q.possible.high
    low = math.nextafter(low, high) if q.possible.open_low else low
    high = math.nextafter(high, low) if q.possible.open_high else high
    for together in ANY_DRILL:
        others = [name for name in together.names if name != q.name]
        if q.name in together.names and all(name in known for name in others):
            # Such margins are straight lines, so two values of the margin tell where it vanishes.
            at_nothing, at_one = (together.margin({**known, q.name: x}) for x in (0.0, 1.0))
            vanishes = at_nothing / (at_nothing - at_one)
            low, high = (max(low, vanishes), high) if at_one > at_nothing else (low, min(high, vanishes))
    return (low, high) if low < high else (q.possible.low, q.possible.high)


def _grid(low: float, high: float, count: int = _GRID) -> list[float]:
    even = [low + (high - low) * i / count for i in range(count + 1)]
    # Lengths run over three decades, so a second, geometric spacing keeps small drills from falling between points.
    least = (high - low) * 1e-6
    close = [low + least * 1e6 ** (i / count) for i in range(count)]
    return sorted({*even, *(x for x in close if low <= x <= high)})


def _roots(curve: Curve, grid: list[float], target: float) -> tuple[float, ...]:
    found: list[float] = []
    for piece in _pieces(curve, grid):
        found.extend(_roots_of_piece(lambda x: curve(x) - target, _close_to_ends(piece), max(abs(target), 1.0)))
    distinct: list[float] = []
    for root in sorted(found):
        if not distinct or root - distinct[-1] > 1e-9 * max(abs(root), 1e-3):
            distinct.append(root)
    return tuple(distinct)


def _pieces(curve: Curve, grid: list[float]) -> Iterator[list[float]]:
    """Runs of grid points where the drill is possible, each run extended to the very edge of the possible."""
    run: list[float] = []
    before: float | None = None
    for x in grid:
        if math.isnan(curve(x)):
            if run:
                run.append(_edge(curve, run[-1], x))
                yield run
                run = []
        else:
            if not run and before is not None:
                run.append(_edge(curve, x, before))
            run.append(x)
        before = x
    if run:
        yield run


def _close_to_ends(points: list[float]) -> list[float]:
    """The same points and more towards both ends, where a curve can turn within one step of the grid."""
    if len(points) < 2:
        return points
    shares = [2.0**-k for k in range(1, 41)]
    first, last = points[1] - points[0], points[-1] - points[-2]
    return sorted({*points, *(points[0] + first * s for s in shares), *(points[-1] - last * s for s in shares)})


def _edge(curve: Curve, possible: float, impossible: float) -> float:
    for _ in range(200):
        middle = (possible + impossible) / 2
        if middle in (possible, impossible):
            break
        if math.isnan(curve(middle)):
            impossible = middle
        else:
            possible = middle
    return possible


def _roots_of_piece(error: Curve, points: list[float], scale: float) -> Iterator[float]:
    errors = [error(x) for x in points]
    for i, (x, e) in enumerate(zip(points, errors, strict=True)):
        if e == 0:
            yield x
        elif i and errors[i - 1] * e < 0:
            yield _bisect(error, points[i - 1], x)
        elif 0 < i < len(points) - 1 and _turns_towards_zero(errors[i - 1 : i + 2]):
            yield from _near_turning_point(error, points[i - 1], points[i + 1], scale)
    # A root at the very edge of the possible (a web of zero, say) shows as a vanishing error there, without a change of
    # sign; the size of the error decides, since the last digit of the edge is rounding.
    for x, e in ((points[0], errors[0]), (points[-1], errors[-1])):
        if 0 < abs(e) <= 4e-15 * scale:
            yield x


def _turns_towards_zero(errors: list[float]) -> bool:
    before, here, after = errors
    nearest_here = abs(here) < abs(before) and abs(here) < abs(after)
    return nearest_here and before * here > 0 and after * here > 0


def _bisect(error: Curve, low: float, high: float) -> float:
    rising = error(high) > 0
    while True:
        middle = (low + high) / 2
        if middle <= min(low, high) or middle >= max(low, high):
            return low if abs(error(low)) <= abs(error(high)) else high
        e = error(middle)
        if e == 0:
            return middle
        if (e > 0) == rising:
            high = middle
        else:
            low = middle


def _near_turning_point(error: Curve, low: float, high: float, scale: float) -> Iterator[float]:
    """Two answers closer together than the grid, or one where the curve just touches the target."""
    sign = 1.0 if error((low + high) / 2) > 0 else -1.0
    a, b = low, high
    ratio = (math.sqrt(5) - 1) / 2
    for _ in range(90):
        c, d = b - ratio * (b - a), a + ratio * (b - a)
        if sign * error(c) < sign * error(d):
            b = d
        else:
            a = c
    turn = (a + b) / 2
    if sign * error(turn) < 0:
        yield _bisect(error, low, turn)
        yield _bisect(error, turn, high)
    elif abs(error(turn)) <= 1e-13 * scale:
        yield turn


def _none(relation: Relation, unknown: str, target: float, curve: Curve, known: Mapping[str, float]) -> str:
    q, result = quantity(unknown), relation.result
    reach = [y for x in _grid(*_domain(q, known)) if not math.isnan(y := curve(x))]
    given = ", ".join(f"{name} {quantity(name).show(value, 4)}" for name, value in known.items())
    wanted = f"no {unknown} gives a {result.name} of {result.show(target, 4)}"
    if not reach:
        steps = plan(relation, frozenset({*known, unknown}))
        return f"{wanted}: {_why_never(steps, unknown, known)}"
    least, most = result.show(min(reach), 2), result.show(max(reach), 2)
    low, high = (q.show(end, 4) for end in _domain(q, known))
    return f"{wanted} with {given}; {unknown} from {low} to {high} reaches {least} to {most}"


def _why_never(steps: tuple[Relation, ...], unknown: str, known: Mapping[str, float]) -> str:
    try:
        work_through(steps, {**known, unknown: quantity(unknown).typical})
    except Impossible as reason:
        return str(reason)
    return "these givens are no drill whatever it is"
