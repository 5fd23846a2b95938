"""The relation object: a statement, and what can be asked of it."""

from __future__ import annotations

import inspect
from collections.abc import Callable, Mapping
from functools import cached_property
from types import ModuleType
from typing import TYPE_CHECKING, Any

from attrs import field, frozen

from drillpoint.quantities import Quantity, quantity
from drillpoint.relation import calling, solving
from drillpoint.relation.condition import Condition
from drillpoint.relation.symbols import ABBREVIATIONS, Symbols, in_surface_units, letter, spelled_out, symbols

if TYPE_CHECKING:
    from drillpoint.relation.uncertain import Uncertain
    from drillpoint.relation.value import Value
    from drillpoint.relation.worked import Worked

Statement = Callable[[Symbols, ModuleType], Any]


@frozen
class Step:
    """One step of a derivation: words, and an equation.

    kind: "let" introduces the letter on the left; "read off" is a fact seen on the drawing; "follow" must follow from
    the steps before it.
    """

    words: str
    left: Statement
    right: Statement
    kind: str

    def equation(self) -> Any:
        """The step's equation, in sympy."""
        import sympy

        s = symbols()
        return sympy.Eq(self.left(s, sympy), self.right(s, sympy), evaluate=False)


def let(name: str, words: str, right: Statement) -> Step:
    """A step that introduces the letter `name`."""
    return Step(words, lambda s, sp: s.local(name), right, "let")


def read_off(words: str, left: Statement, right: Statement) -> Step:
    """A step that states what the drawing shows."""
    return Step(words, left, right, "read off")


def follow(words: str, left: Statement, right: Statement) -> Step:
    """A step that follows from those before."""
    return Step(words, left, right, "follow")


@frozen
class Limit:
    """What the relation comes to at an edge of its range.

    quantity: the given that goes to the edge. towards: the edge, as an expression of the other givens. value: what the
    result comes to; both as in formulas, where angles are angles. from_above: whether the edge is come to from larger
    values. why: in words.
    """

    quantity: str
    towards: Statement
    value: Statement
    why: str
    from_above: bool = True


@frozen(eq=False, slots=False, kw_only=True)
class Relation:
    """A relation between quantities of the point. See `drillpoint.relation`.

    name: as in calls. result: the quantity it gives. givens: the keywords it needs; another keyword serves instead
    where the book can work out the one from the other (a web ratio from web and diameter). says: the relation in one
    sentence. formula: the result in terms of symbols. steps: the derivation. assumptions, sources: sentences.
    limits: what it comes to at the edges. conditions: what must hold between the givens. cautions: what should hold; a
    call notes it when it does not, and `solve` leaves such answers out. stands_in: whether other relations may use it
    to work out a missing given. empirical: whether it sums up measurements, so that its constants carry units.
    defaults: givens that may be left out, and what they then are. notes: what to say of a result.
    """

    name: str
    result: Quantity = field(converter=quantity)
    givens: tuple[str, ...]
    says: str
    formula: Statement = field(repr=False)
    steps: tuple[Step, ...] = field(repr=False)
    assumptions: tuple[str, ...]
    sources: tuple[str, ...]
    limits: tuple[Limit, ...] = field(repr=False)
    conditions: tuple[Condition, ...] = field(default=(), repr=False)
    cautions: tuple[Condition, ...] = field(default=(), repr=False)
    stands_in: bool = False
    empirical: bool = False
    defaults: Mapping[str, float] = field(factory=dict)
    notes: Callable[[float], tuple[str, ...]] = field(default=lambda result: (), repr=False)

    def __call__(self, **givens: Any) -> Any:
        """The result, in degrees or millimetres: a `Value` for numbers, an array where any given is an array.

        Arrays broadcast. An acute chisel edge angle is read as its obtuse supplement, and the result's notes say so.

        Raises UnknownGiven or MissingGiven (with the nearest keyword), OutOfRange, or Impossible, saying what was
        given, what is allowed and what was probably meant.
        """
        return calling.call(self, givens)

    def unchecked(self, **givens: float) -> float:
        """The bare formula for numbers, without any check of ranges; nan where it is undefined.

        For the wrong derivations that marking has to recognise. Takes exactly the relation's own givens.
        """
        return calling.unchecked(self, givens)

    def solve(self, unknown: str, **knowns: Any) -> Value | tuple[Value, ...]:
        """The value of `unknown` for which the relation gives the result in `knowns`.

        One physical answer comes as a `Value`; two come as a tuple, the smaller first.
        Raises NoSolution, with the values of the result that can be reached, when there is none.
        """
        return solving.solve(self, unknown, knowns)

    def sensitivity(self, of: str, **givens: Any) -> Any:
        """How much the result changes for one unit more of the given `of`: millimetres or degrees per unit."""
        return calling.sensitivity(self, of, givens)

    def uncertainty(self, **givens: Any) -> Uncertain:
        """The result with the ± that the ± of the givens make, each given a number or a pair (number, plus_minus).

        To first order: each ± times the sensitivity to it. Raises what a call raises; OutOfRange for a ± below zero.
        """
        from drillpoint.relation import uncertain

        return uncertain.uncertainty(self, givens)

    def worked(self, **givens: float) -> Worked:
        """The relation written out with these numbers, in text and LaTeX."""
        from drillpoint.relation import writing

        return writing.worked(self, givens)

    @property
    def quantities(self) -> tuple[Quantity, ...]:
        """The result, then the givens."""
        return (self.result, *(quantity(name) for name in self.givens))

    @property
    def accepts(self) -> frozenset[str]:
        """Every keyword a call may use, those that stand in for others included."""
        return calling.accepted(self)

    @cached_property
    def expression(self) -> Any:
        """The formula in sympy, in angles (not degrees), with its abbreviations."""
        import sympy

        return self.formula(symbols(), sympy)

    @cached_property
    def surface_expression(self) -> Any:
        """The formula in sympy as a function of degrees and millimetres, abbreviations spelled out."""
        return in_surface_units(self.expression, self.result.is_angle)

    @property
    def equation(self) -> Any:
        """The relation as a sympy equation in its printed letters; angles are angles, not degrees.

        `where` says what the letters stand for; `surface_expression` is the same in keywords and degrees.
        """
        import sympy

        printed = {s: sympy.Symbol(letter(name), real=True) for name, s in symbols().table.items()}
        return sympy.Eq(sympy.Symbol(self.result.symbol, real=True), self.expression.xreplace(printed))

    @property
    def abbreviations(self) -> tuple[str, ...]:
        """The abbreviations that the formula uses, those used by others first."""
        import sympy

        s = symbols()
        found: list[str] = []

        def collect(expression: Any) -> None:
            for name, abbreviation in ABBREVIATIONS.items():
                if expression.has(s.table[name]) and name not in found:
                    collect(abbreviation.definition(s, sympy))
                    found.append(name)

        collect(self.expression)
        return tuple(found)

    @property
    def where(self) -> Mapping[str, str]:
        """What each letter of the equation stands for."""
        said = {ABBREVIATIONS[name].symbol: ABBREVIATIONS[name].meaning for name in self.abbreviations}
        direct = self.expression.free_symbols
        said.update({q.symbol: q.term for q in self.quantities if symbols().table[q.name] in direct})
        return said

    @property
    def derivation(self) -> tuple[Step, ...]:
        """The steps from the drawing to the equation."""
        return self.steps

    @property
    def spelled_out(self) -> Any:
        """The formula in sympy in quantities only (angles, not degrees)."""
        return spelled_out(self.expression)

    @property
    def __signature__(self) -> inspect.Signature:
        """The keywords, for help and completion."""
        kind = inspect.Parameter.KEYWORD_ONLY
        return inspect.Signature([inspect.Parameter(name, kind) for name in self.givens])

    @property
    def help(self) -> str:
        """What the relation says, its givens with units and ranges, its assumptions and sources, as plain text."""
        from drillpoint.relation import writing

        return writing.help_text(self)
