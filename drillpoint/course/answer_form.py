"""What may be typed into the box of a task, and how it is read. Holds no key: it goes into every student's folder."""

from __future__ import annotations

import re
from functools import lru_cache

from attrs import frozen

from drillpoint.course.formula import Formula, read_formula
from drillpoint.course.formula_grammar import USUAL_FUNCTIONS
from drillpoint.course.reading import LONGEST_TEXT, Reading, ReadingError, read_number, with_unit

_YES_OR_NO = re.compile(r"\s*(yes|no|y|n)(?![^\W_])[\s,;:]*", re.IGNORECASE)
LONGEST_PROSE = 4000
_LETTER = re.compile(r"\s*\(?([A-Za-z])[).]?\s*")


@frozen
class Answer:
    """One typed answer as it was read. Only what belongs to its kind is there."""

    echo: str
    reading: Reading | None = None
    formula: Formula | None = None
    letter: str = ""
    yes: bool | None = None


@frozen
class AnswerForm:
    """The kind of answer a box takes, with the unit beside it, its names or its letters.

    The kinds: `number`, `judgement` (yes or no with a number), `formula`, `choice` (a letter) and `text` (sentences,
    which the instructor reads).
    """

    kind: str
    unit: str = ""
    names: tuple[str, ...] = ()
    symbol: str = ""
    letters: str = ""
    functions: tuple[str, ...] = ()
    """For a formula: the functions it may use, if not the usual ones."""

    @property
    def beside(self) -> str:
        """What is printed beside the box."""
        if self.kind == "formula":
            return f"a formula in {', '.join(self.names)}"
        if self.kind == "choice":
            return f"one letter, {', '.join(self.letters)}"
        if self.kind == "text":
            return "in your own words"
        unit = self.unit or "a plain number"
        return f"yes or no, then {unit}" if self.kind == "judgement" else unit

    @property
    def example(self) -> str:
        """Something this box can read. It is never in the shape of an answer."""
        if self.kind == "formula":
            return f"{(self.names * 2)[0]} + 3*{(self.names * 2)[1]}"
        if self.kind == "choice":
            return self.letters[0]
        if self.kind == "text":
            return "a few sentences"
        number = with_unit("12.3", self.unit)
        return f"yes, {number}" if self.kind == "judgement" else number

    def read(self, typed: str) -> Answer:
        """Read what was typed, or refuse it with ReadingError."""
        if self.kind == "formula":
            formula = read_formula(typed, self.names, result=self.symbol, functions=self.functions or USUAL_FUNCTIONS)
            return Answer(formula.echo, formula=formula)
        if self.kind == "choice":
            return self._letter(typed)
        if self.kind == "judgement":
            return self._yes_or_no(typed)
        if self.kind == "text":
            return _prose(typed)
        return _number(typed, self.unit)

    def _letter(self, typed: str) -> Answer:
        match = _LETTER.fullmatch(typed) if len(typed) <= LONGEST_TEXT else None
        if match is None or match.group(1).lower() not in self.letters:
            raise ReadingError(f"One letter is expected: {', '.join(self.letters)}.", typed, 0, tuple(self.letters))
        letter = match.group(1).lower()
        return Answer(letter, letter=letter)

    def _yes_or_no(self, typed: str) -> Answer:
        examples = (f"yes, {with_unit('12.3', self.unit)}", f"no; {with_unit('12,3', self.unit)}")
        match = _YES_OR_NO.match(typed)
        if match is None:
            raise ReadingError("Begin with yes or no, then give the number.", typed, 0, examples)
        try:
            number = _number(typed[match.end() :], self.unit)
        except ReadingError as error:
            raise ReadingError(error.reason, typed, match.end() + error.position, examples) from None
        yes = match.group(1).lower() in ("yes", "y")
        return Answer(f"{'yes' if yes else 'no'}; {number.echo}", number.reading, yes=yes)


def _prose(typed: str) -> Answer:
    """Take sentences as they are; only somebody who reads them can judge them."""
    if not typed.strip():
        raise ReadingError("Nothing was written.", typed, 0, ("a few sentences",))
    if len(typed) > LONGEST_PROSE:
        raise ReadingError(f"This is longer than {LONGEST_PROSE} characters.", typed, LONGEST_PROSE, ())
    words = len(typed.split())
    return Answer(f"{words} word{'' if words == 1 else 's'}")


@lru_cache(maxsize=4096)
def _number(typed: str, unit: str) -> Answer:
    """Read a number. A class types the same few thousand texts again and again."""
    reading = read_number(typed, unit)
    return Answer(reading.echo, reading)
