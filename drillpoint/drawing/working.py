"""Every value that a drawing shows, worked out from what is given, by relations of the book."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from attrs import frozen

from drillpoint.drawing.scene import Allowed, Scene, Working
from drillpoint.drawing.showing import fill
from drillpoint.errors import Impossible, MissingGiven, UnknownGiven
from drillpoint.quantities import nearest, plain_number, quantity
from drillpoint.relation import Relation
from drillpoint.relation.calling import read_scalars, work_out
from drillpoint.relations import BOOK


@frozen
class Step:
    """One value to work out: by a relation, or by solving the relation for it."""

    relation: Relation
    result: str

    @property
    def givens(self) -> tuple[str, ...]:
        """What must be known before."""
        if self.result == self.relation.result.name:
            return self.relation.givens
        return tuple(q.name for q in self.relation.quantities if q.name != self.result)

    def work_out(self, values: Mapping[str, float]) -> float:
        """The value, from checked numbers.

        Raises Impossible with the relation's own sentence.
        """
        if self.result == self.relation.result.name:
            return work_out(self.relation, values)
        found = self.relation.solve(self.result, **{name: values[name] for name in self.givens})
        # Of two answers the one with the usual value is meant.
        several = found if isinstance(found, tuple) else (found,)
        return float(min(several, key=lambda value: abs(value - quantity(self.result).typical)))


def step(working: Working) -> Step:
    """The step of a relation's name, or of (relation, unknown)."""
    if isinstance(working, str):
        return Step(BOOK[working], BOOK[working].result.name)
    return Step(BOOK[working[0]], working[1])


def values_of(scene: Scene, givens: Mapping[str, float]) -> dict[str, float]:
    """Every value that the scene shows, by keyword: degrees, mm and mm/rev.

    Raises LearnerError when something is unknown, missing, given twice, or impossible.
    """
    completed = {**{n: v for n, v in scene.defaults.items() if n not in givens}, **givens}
    steps = _plan(scene, tuple(givens), tuple(completed))
    values, _ = read_scalars(completed)
    work_through([*steps, *map(step, scene.relations)], values, scene.allowed)
    return values


def work_through(steps: Iterable[Step], values: dict[str, float], allowed: Sequence[Allowed]) -> None:
    """Put into `values` what each step gives, but for those that are known already.

    Raises Impossible when the values do not go together.
    """
    _check(allowed, values, tuple(values))
    for one in steps:
        if one.result not in values:
            values[one.result] = one.work_out(values)
            _check(allowed, values, (one.result,))


def accepted(scene: Scene) -> tuple[str, ...]:
    """Every keyword that may be given for the scene."""
    return tuple(dict.fromkeys(name for need in scene.needs for name in _leading_to(scene, need)))


def used(scene: Scene, names: Iterable[str]) -> tuple[str, ...]:
    """Those of the names that the scene makes use of, when all of them are known."""
    known = tuple(names)
    return tuple(name for name in known if name in _resolved(scene, known)[1])


def _ways(scene: Scene, name: str) -> list[Step]:
    """How a need may be worked out: what the scene says, then whatever of the book stands in."""
    own = [way for way in map(step, scene.also) if way.result == name]
    return own + [Step(r, name) for r in BOOK.values() if r.stands_in and r.result.name == name]


def _plan(scene: Scene, given: tuple[str, ...], names: tuple[str, ...]) -> list[Step]:
    takes = accepted(scene)
    for name in given:
        if name not in takes:
            raise UnknownGiven(f"the drawing {scene.name!r} takes no {name!r}{nearest(name, takes)}")
    steps, needed = _resolved(scene, names)
    if spare := [name for name in given if name not in needed]:
        instead = [name for name in given if name in needed and name in _instead_of(scene, spare[0])]
        others = " and ".join(instead or [name for name in given if name in needed])
        raise UnknownGiven(
            f"the drawing {scene.name!r} does not need {spare[0]} beside {others}; leave one of them out, "
            f"for example {example(scene)}"
        )
    return steps


def _leading_to(scene: Scene, need: str) -> list[str]:
    """The need, and every keyword that helps to work it out."""
    found = [need]
    for name in found:  # grows while it is walked
        for way in _ways(scene, name):
            found += [given for given in way.givens if given not in found]
    return found


def _own_ways(scene: Scene, need: str) -> list[str]:
    """The need, and the keywords that lead to it and are not, or do not serve directly, another need."""
    others = {other for other in scene.needs if other != need}
    direct = {given for other in others for way in _ways(scene, other) for given in way.givens}
    return [name for name in _leading_to(scene, need) if name == need or name not in others | direct]


def _instead_of(scene: Scene, spare: str) -> list[str]:
    """The keywords that say the same as the spare one."""
    return next((own for own in (_own_ways(scene, need) for need in scene.needs) if spare in own), [])


def _resolved(scene: Scene, names: tuple[str, ...]) -> tuple[list[Step], set[str]]:
    steps: list[Step] = []
    needed: set[str] = set()
    for need in scene.needs:
        found = _resolve(scene, need, names, frozenset())
        if found is None:
            raise MissingGiven(_missing(scene, need))
        steps += [one for one in found[0] if one not in steps]
        needed |= found[1]
    return steps, needed


def _resolve(
    scene: Scene, need: str, names: tuple[str, ...], asked: frozenset[str]
) -> tuple[list[Step], set[str]] | None:
    if need in names:
        return [], {need}
    for way in _ways(scene, need):
        if asked.union({need}).intersection(way.givens):
            continue
        before = [_resolve(scene, given, names, asked | {need}) for given in way.givens]
        if all(found is not None for found in before):
            steps = [one for found in before if found for one in found[0]]
            return [*steps, way], {name for found in before if found for name in found[1]}
    return None


def _missing(scene: Scene, need: str) -> str:
    q = quantity(need)
    others = _own_ways(scene, need)[1:]
    instead = f", or {' or '.join(others)} to work it out" if others else ""
    said = f"the drawing {scene.name!r} needs {need} ({q.term}, for example {q.show(q.typical)}){instead}"
    return f"{said}; for example {example(scene)}"


def example(scene: Scene) -> str:
    """A call that draws a usual drill."""
    givens = ", ".join(f"{name}={plain_number(value, 4)}" for name, value in scene.usual.items())
    return f"draw({scene.name!r}, {givens})".replace("'", '"')


def _check(allowed: Sequence[Allowed], values: Mapping[str, float], names: Iterable[str]) -> None:
    for name in names:
        for rule in allowed:
            if rule.name == name and not rule.holds(values[name]):
                raise Impossible(fill(rule.says, values, "mm"))
