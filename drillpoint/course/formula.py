"""Reading a formula the way people type it: D/(2 tan κ), (D/2)*cot(kappa), √(D² − W²)/2.

The grammar knows numbers, the names of the task, a few functions and nothing else. Angles are in degrees, for
functions and for their inverses. Nothing typed is evaluated as code; everything is computed with floats.
What could be read in two ways (D/2 tan κ, sin 2κ, sin κ/2) is refused, with the place.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Mapping
from functools import lru_cache
from types import MappingProxyType

from attrs import field, frozen

from drillpoint.course.formula_grammar import (
    KNOWN_FUNCTIONS,
    USUAL_FUNCTIONS,
    Evaluate,
    FormulaBuilder,
    Values,
    examples_in,
    parser,
)
from drillpoint.course.formula_names import LETTER_ALIKES, NAME, check_offered, key
from drillpoint.course.typed import LOOK_ALIKES, ReadingError, why_unreadable
from drillpoint.errors import LearnerError

LONGEST_FORMULA = 200
DEEPEST_BRACKETS = 20
SAMPLES = 8
SAME_WITHIN = 1e-9

_SAME_SIGNS = {**LOOK_ALIKES, **LETTER_ALIKES, **str.maketrans({"[": "(", "]": ")"})}


@frozen
class Formula:
    """A typed formula as it was read. Call it with a value for each name; angles in degrees."""

    typed: str
    echo: str
    """The formula with every bracket and every multiplication written out."""
    names: frozenset[str]
    _evaluate: Evaluate = field(repr=False)

    def __call__(self, **values: float) -> float:
        """Work the formula out. LearnerError if a name is missing or the result is not a finite real number."""
        missing = sorted(self.names - values.keys())
        if missing:
            raise LearnerError(f"{self.echo} needs a value for {', '.join(missing)}")
        result = self.at(values)
        if not math.isfinite(result):
            given = ", ".join(f"{name} = {value:g}" for name, value in values.items())
            raise LearnerError(f"{self.echo} has no finite value for {given or 'any input'}")
        return result

    def at(self, values: Values) -> float:
        """Work the formula out; nan where it has no finite real value."""
        try:
            result = self._evaluate(values)
        except (ArithmeticError, ValueError):
            return math.nan
        return result if math.isfinite(result) else math.nan


def read_formula(
    text: str, names: Iterable[str], *, result: str = "", functions: Iterable[str] = USUAL_FUNCTIONS
) -> Formula:
    """Read a formula in `names` (kappa_1, kappa1 and κ₁ are κ_1), or refuse it with ReadingError.

    `result` is the symbol asked for; `h = ...` in front of the formula is then accepted. `functions` are those a task
    offers: sin, cos, tan, cot, asin, acos, atan, sqrt and abs, and on demand ln, log10 and exp.
    Refused: any other name or function, more than 200 characters, 20 nested brackets or 120 parts, anything with
    two readings, and a formula of numbers only that has no finite value.
    InstructorError if a name cannot be typed or already has a meaning, or a function is not known.
    """
    allowed, offered = tuple(names), tuple(functions)
    check_names(allowed, offered)
    if not isinstance(text, str):
        raise ReadingError(
            f"A formula is typed as text, not as {type(text).__name__}.", "", 0, examples_in(allowed, offered)
        )
    if len(text) > LONGEST_FORMULA:
        raise ReadingError(
            f"This is longer than {LONGEST_FORMULA} characters.", text, LONGEST_FORMULA, examples_in(allowed, offered)
        )
    return _read(text, allowed, result, offered)


def check_names(names: Iterable[str], functions: Iterable[str] = USUAL_FUNCTIONS) -> None:
    """Make sure that an exercise can offer these names and functions; InstructorError says which one it cannot."""
    check_offered(tuple(names), frozenset(functions), KNOWN_FUNCTIONS)


def same_formula(
    first: Formula | Evaluate, second: Formula | Evaluate, domain: Mapping[str, tuple[float, float]]
) -> bool:
    """Say whether two formulas agree inside `domain` (name -> lowest and highest value), by sampling."""
    points = sample_points(tuple(sorted((name, *limits) for name, limits in domain.items())))
    return same_values(values_at(first, points), values_at(second, points))


def values_at(formula: Formula | Evaluate, points: Iterable[Values]) -> tuple[float, ...]:
    """Work a formula out at each point; nan where it has no finite value."""
    evaluate = formula.at if isinstance(formula, Formula) else formula
    return tuple(evaluate(point) for point in points)


def same_values(first: tuple[float, ...], second: tuple[float, ...]) -> bool:
    """Say whether two lists of sampled values agree. Points where neither has a value say nothing."""
    compared = 0
    for a, b in zip(first, second, strict=True):
        if math.isnan(a) and math.isnan(b):
            continue
        if not math.isclose(a, b, rel_tol=SAME_WITHIN, abs_tol=1e-12):
            return False
        compared += 1
    return 2 * compared >= len(first)


@lru_cache(maxsize=256)
def sample_points(domain: tuple[tuple[str, float, float], ...]) -> tuple[Values, ...]:
    """Spread eight points through a domain, the same on every machine: multiples of square roots of primes."""
    roots = [math.sqrt(prime) for prime in (2, 3, 5, 7, 11, 13, 17, 19)]
    return tuple(
        MappingProxyType(
            {
                name: low + (high - low) * ((k * root) % 1.0)
                for (name, low, high), root in zip(domain, roots, strict=False)
            }
        )
        for k in range(1, SAMPLES + 1)
    )


# A class types the same few formulas over and over; the bound keeps memory flat.
@lru_cache(maxsize=2048)
def _read(text: str, names: tuple[str, ...], result: str, functions: tuple[str, ...]) -> Formula:
    from lark.exceptions import UnexpectedCharacters, UnexpectedInput

    examples = examples_in(names, functions)
    plain = _right_hand_side(text.translate(_SAME_SIGNS), result)
    _check_brackets(plain, text, examples)
    reader = FormulaBuilder(text, names, functions)
    try:
        tree = parser().parse(plain)
    except UnexpectedInput as error:
        end = len(plain.rstrip())
        # At the very end the parser gives no usable place.
        place = error.pos_in_stream if error.pos_in_stream is not None else end
        at_end = place >= end or getattr(getattr(error, "token", None), "type", "") == "$END"
        place = end if at_end else place
        reason = _unexpected(plain, place, isinstance(error, UnexpectedCharacters))
        raise ReadingError(reason, text, place, examples) from None
    node = reader.build(tree)
    formula = Formula(text, node.text, frozenset(reader.used), node.evaluate)
    if not reader.used and math.isnan(formula.at({})):
        raise ReadingError("This has no finite value.", text, 0, examples)
    return formula


def _right_hand_side(plain: str, result: str) -> str:
    """Blank out `h =` in front, keeping every position."""
    match = re.match(rf" *({NAME}) *=", plain)
    if result and match and key(match.group(1)) == key(result):
        return " " * match.end() + plain[match.end() :]
    return plain


def _check_brackets(plain: str, text: str, examples: tuple[str, ...]) -> None:
    opened: list[int] = []
    for place, sign in enumerate(plain):
        if sign == "(":
            opened.append(place)
            if len(opened) > DEEPEST_BRACKETS:
                raise ReadingError(f"More than {DEEPEST_BRACKETS} brackets are nested here.", text, place, examples)
        elif sign == ")":
            if not opened:
                raise ReadingError("This bracket was never opened.", text, place, examples)
            opened.pop()
    if opened:
        raise ReadingError("This bracket is never closed.", text, opened[-1], examples)


def _unexpected(plain: str, place: int, sign: bool) -> str:
    if not plain.strip():
        return "There is no formula here."
    if place >= len(plain.rstrip()):
        return "The formula ends too early."
    if plain[place] == "=":
        return "Only the right-hand side of the equation is asked for."
    if plain[place] in "°º˚":
        return "Angles are in degrees already: leave the ° out here."
    if reason := why_unreadable(plain[place]):
        return reason
    return "This sign cannot be read in a formula." if sign else "The formula cannot go on like this here."
