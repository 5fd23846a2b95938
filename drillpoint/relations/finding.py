"""Finding a relation by what one would say in the shop."""

from __future__ import annotations

import html
import re
from collections.abc import Mapping

from attrs import frozen

from drillpoint.errors import LearnerError
from drillpoint.quantities import Quantity
from drillpoint.relation import Relation

# What people say for what the vocabulary calls otherwise; common practice.
_ALSO_SAID: Mapping[str, str] = {
    "how long does": "time",
    "clearance": "relief",
    "tip": "point height",
    "deep": "depth",
    "tall": "height",
    "high": "height",
    "force": "thrust",
    "push": "thrust",
    "horsepower": "power",
    "hp": "power",
    "kilowatt": "power",
    "kw": "power",
    "split": "splitting",
    "rpm": "spindle speed",
    "revs": "spindle speed",
    "cutting edge": "lip",
    "centre": "web",
    "center": "web",
    "thick": "web",
    "core": "web",
    "oversize": "over size",
    "regrind": "stock",
    "grind": "stock",
    "size": "diameter",
    "tolerance": "uncertainty",
    "bigger": "oversize",
    "ribbon": "idle lip",
    "chipped": "chip stock",
    "due": "until",
    "rubs": "working relief",
    "rub": "working relief",
    "grabs": "rake",
    "grab": "rake",
}
_SMALL_WORDS = frozenset(
    re.findall(r"\w+", "a an and at by does do for from how i is it many much my of on drill the to what which with")
)


@frozen
class Found:
    """Relations that fit what was asked, the best first."""

    asked: str
    relations: tuple[Relation, ...]

    def __repr__(self) -> str:
        return "\n".join(f"{r.name}({', '.join(r.givens)})\n    {r.says}" for r in self.relations)

    def _repr_html_(self) -> str:
        rows = "".join(
            f"<tr><td style='text-align:left'><code>{r.name}({', '.join(r.givens)})</code></td>"
            f"<td style='text-align:left'>{html.escape(r.says)}</td></tr>"
            for r in self.relations
        )
        return f"<table><caption>Relations for: {html.escape(self.asked)}</caption><tbody>{rows}</tbody></table>"


def find(words: str, book: Mapping[str, Relation]) -> Found:
    """The relations of the book that speak of these words, at most six.

    Raises LearnerError when none does.
    """
    asked = _words(words)
    scores = {name: _fit(asked, relation) for name, relation in book.items()}
    best = sorted((name for name in book if scores[name] > 0), key=lambda name: -scores[name])
    if not best:
        raise LearnerError(f"no relation speaks of {words!r}; try a quantity, such as 'lip length' or 'chisel edge'")
    return Found(words, tuple(book[name] for name in best[:6]))


def _fit(asked: list[str], relation: Relation) -> float:
    term = re.findall(r"[a-z]+", relation.result.term.lower())
    # A term that says more than was asked fits less: "lip length" is the lip length before the thinned lip length.
    share = sum(any(_mentions(word, of) for word in asked) for of in term) / len(term)
    return sum(_score(word, relation) for word in asked) + 12.0 * share


def _words(said: str) -> list[str]:
    spoken = said.lower().replace("_", " ")
    for phrase, term in _ALSO_SAID.items():
        spoken = re.sub(rf"\b{phrase}\b", f"{phrase} {term}", spoken)
    spoken = re.sub(r"\blong\b", "length", spoken)
    return [word for word in re.findall(r"[a-z]+", spoken) if word not in _SMALL_WORDS]


def _score(word: str, relation: Relation) -> float:
    # What a relation gives counts most: people ask for a result.
    result = 5.0 * _mentions(word, f"{relation.name} {relation.result.name} {relation.result.term}")
    needs = 1.5 * _mentions(word, " ".join(_spoken(q) for q in relation.quantities[1:]))
    return result + needs + 1.0 * _mentions(word, relation.says) + 0.5 * _mentions(word, relation.result.meaning)


def _spoken(q: Quantity) -> str:
    return f"{q.name} {q.term}"


def _mentions(word: str, text: str) -> bool:
    stem = word[:-1] if len(word) > 4 and word.endswith("s") else word
    return re.search(rf"(?<![a-z]){re.escape(stem)}", text.lower().replace("_", " ")) is not None
