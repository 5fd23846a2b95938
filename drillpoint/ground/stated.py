"""How flutes, flanks and notches are stated: keywords only, each a checked quantity of the vocabulary."""

from __future__ import annotations

import inspect
from collections.abc import Callable
from functools import wraps
from typing import Any, TypeVar

from drillpoint.errors import LearnerError, MissingGiven, UnknownGiven
from drillpoint.quantities import QUANTITIES, nearest, quantity
from drillpoint.relation.checking import read_scalar

T = TypeVar("T")


class CannotBeGround(LearnerError):
    """The sizes are possible one by one, but no wheel leaves such a point on such a drill."""


def stated(cls: type[T]) -> type[T]:
    """Make a class refuse what it does not know, with the nearest name, and check each number it is given.

    A keyword that is a quantity of the vocabulary must be within that quantity's possible range; None leaves it out.
    Raises UnknownGiven, MissingGiven or OutOfRange.
    """
    before: Callable[..., None] = cls.__init__
    known = {name: p for name, p in inspect.signature(before).parameters.items() if name != "self"}
    needed = tuple(name for name, p in known.items() if p.default is inspect.Parameter.empty)

    @wraps(before)
    def init(self: T, *values: Any, **givens: Any) -> None:
        if values:
            raise UnknownGiven(f"{cls.__name__} takes its numbers by name, for example {_example(known)}")
        for name in givens:
            if name not in known:
                raise UnknownGiven(f"{cls.__name__} has no given called {name!r}{nearest(name, tuple(known))}")
        for name in needed:
            if name not in givens:
                raise MissingGiven(f"{cls.__name__} needs {_said(name)}")
        before(self, **{name: _read(name, given) for name, given in givens.items()})

    cls.__init__ = init  # type: ignore[assignment,method-assign]
    return cls


def one_of(owner: str, **choices: float | None) -> str:
    """Which one of several ways of saying a size was used.

    Raises MissingGiven for none, UnknownGiven for more than one.
    """
    given = [name for name, value in choices.items() if value is not None]
    either = " or ".join(choices)
    if not given:
        raise MissingGiven(f"{owner} needs {either}; for example {_example(choices)}")
    if len(given) > 1:
        raise UnknownGiven(f"{owner} takes {either}, not both; leave one of them out")
    return given[0]


def _read(name: str, given: Any) -> Any:
    return read_scalar(name, given)[0] if name in QUANTITIES and given is not None else given


def _said(name: str) -> str:
    if name not in QUANTITIES:
        return name
    q = quantity(name)
    return f"{name} ({q.term}, for example {q.show(q.typical)})"


def _example(names: Any) -> str:
    name = next(name for name in names if name in QUANTITIES)
    return f"{name}={quantity(name).typical:g}"
