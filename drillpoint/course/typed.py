"""What a person typed: signs that stand for others, signs that cannot be read, and the error that shows the place."""

from __future__ import annotations

import unicodedata

from drillpoint.errors import InstructorError, LearnerError

_SHOWN = 60
# Each look-alike is one character for one character, so that a position in the text stays a position in the text.
LOOK_ALIKES = str.maketrans({"−": "-", "–": "-", "‐": "-", "‑": "-", "﹣": "-", "－": "-", "⁄": "/", "∕": "/",
                              "\u00a0": " ", "\u2009": " ", "\u202f": " ", "\u2007": " ", "\t": " "})  # fmt: skip
_WIDE = ("W", "F")


class Unreadable(Exception):
    """Raised while reading, where only the place is known; the way in turns it into a ReadingError."""

    def __init__(self, reason: str, place: int) -> None:
        self.reason = reason
        self.place = place
        super().__init__(reason)


class ReadingError(LearnerError):
    """Something typed cannot be read. A format error costs a learner nothing.

    `.reason` is one sentence, `.text` what was typed, `.position` the index in it where reading stopped, and
    `.examples` what can be typed instead. `str(error)` shows all four, with the place marked by a caret.
    """

    def __init__(self, reason: str, text: str, position: int = 0, examples: tuple[str, ...] = ()) -> None:
        self.reason = reason
        self.text = text
        self.position = max(0, min(position, len(text)))
        self.examples = examples
        super().__init__(f"{reason}\n{self.marked()}\nYou can write: {', '.join(examples)}." if examples else reason)

    def marked(self) -> str:
        """Two lines: the text as typed, and a caret under the place where reading stopped."""
        start = max(0, self.position - _SHOWN // 2)
        shown = [_visible(character) for character in self.text[start : start + _SHOWN]]
        before = shown[: self.position - start]
        # Under a sign that is two columns wide stands a space that is two columns wide.
        under = "".join("\u3000" if unicodedata.east_asian_width(c) in _WIDE else " " for c in before)
        return f"    {''.join(shown)}\n    {under}^"

    def in_file(self, where: str) -> InstructorError:
        """The same for the person who wrote an exercise file: which entry, why it cannot be read, and the place."""
        examples = f"\nIt can be written: {', '.join(self.examples)}." if self.examples else ""
        return InstructorError(f"{where}: {self.reason}\n{self.marked()}{examples}")


def _visible(character: str) -> str:
    """A sign as it can be shown in one place: what is invisible, or sits on its neighbour, gets a stand-in."""
    return character if character.isprintable() and unicodedata.category(character)[0] != "M" else "\ufffd"


def why_unreadable(character: str) -> str:
    """One sentence on a sign that is read nowhere; empty for a sign that may have its place elsewhere."""
    code = f"U+{ord(character):04X}"
    category = unicodedata.category(character)
    digit = unicodedata.decimal(character, None)
    if digit is not None and character not in "0123456789":
        return f"“{character}” ({code}) is not one of the digits 0 to 9: type it as {digit}."
    if category == "Cc" and character in "\n\r\v\f":
        return "Here a second line begins: write everything on one line."
    if category[0] == "C":
        return f"An invisible sign ({code}) stands here: delete it."
    if category[0] == "M":
        return f"A mark that sits on another sign ({code}) stands here: delete it."
    if category[0] == "Z" and character != " ":
        return f"An unusual space ({code}) stands here: type a plain one."
    alphabet = unicodedata.name(character, "").partition(" ")[0]
    if category[0] == "L" and alphabet not in ("LATIN", "GREEK", "MICRO", "OHM", "FEMININE", "MASCULINE"):
        return f"“{character}” ({code}) is a {alphabet.capitalize() or 'foreign'} letter, which is not used here."
    return ""
