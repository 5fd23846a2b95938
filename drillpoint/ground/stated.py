"""How flutes, flanks and notches are stated: keywords only, each a checked quantity of the vocabulary."""

from __future__ import annotations

import inspect
from collections.abc import Callable, Mapping
from functools import wraps
from typing import Any, ParamSpec, TypeVar

from drillpoint.errors import LearnerError, MissingGiven, UnknownGiven
from drillpoint.quantities import QUANTITIES, nearest, quantity
from drillpoint.relation.checking import read_scalar

P = ParamSpec("P")
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

    @wraps(before)
    def init(self: T, *values: Any, **givens: Any) -> None:
        _check_names(cls.__name__, known, values, givens)
        before(self, **{name: _read(name, given) for name, given in givens.items()})

    cls.__init__ = init  # type: ignore[assignment,method-assign]
    return cls


def by_name(function: Callable[P, T]) -> Callable[P, T]:
    """Make a function refuse what it does not know, with the nearest name; it reads its numbers itself.

    Raises UnknownGiven or MissingGiven.
    """
    known = dict(inspect.signature(function).parameters)

    @wraps(function)
    def called(*values: P.args, **givens: P.kwargs) -> T:
        _check_names(function.__name__, known, values, givens)
        return function(**givens)  # type: ignore[call-arg]

    return called


def _check_names(
    owner: str, known: Mapping[str, inspect.Parameter], values: tuple[Any, ...], givens: Mapping[str, Any]
) -> None:
    if values:
        raise UnknownGiven(f"{owner} takes its numbers by name, for example {_example(known)}")
    for name in givens:
        if name not in known:
            raise UnknownGiven(f"{owner} has no given called {name!r}{nearest(name, tuple(known))}")
    for name, parameter in known.items():
        if parameter.default is inspect.Parameter.empty and name not in givens:
            raise MissingGiven(f"{owner} needs {_said(name)}")


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
