"""The book of relations as pages to read: docs/relations.md, and one page a chapter beside it.

Everything on them comes from the relation objects: equation, symbols, worked example, derivation, range, sources.
"""

from __future__ import annotations

import inspect
from importlib import import_module

from drillpoint.drawing import Picture
from drillpoint.drawing.catalogue import STATED
from drillpoint.drawing.draw import picture, scene
from drillpoint.drawing.scene import Label
from drillpoint.drawing.working import values_of
from drillpoint.quantities import Quantity, capital
from drillpoint.relation import Relation, Step
from drillpoint.relation.printing import as_latex
from drillpoint.relation.symbols import ABBREVIATIONS, latex_letter
from drillpoint.relations import CHAPTERS

_WIDTH = 120
_HEADER = "<!-- Written by `python -m drillpoint.editions` from the relations themselves. Do not edit. -->\n"


_HOW_TO_CALL = """\
Every relation is called with keywords, in degrees and millimetres, after `from drillpoint.relations import NAME`. Each
can also be solved for any of its quantities (`NAME.solve(...)`), worked out on paper (`NAME.worked(...)`), asked how
much a result changes (`NAME.sensitivity(...)`) and what reading errors are worth (`NAME.uncertainty(...)`). `NAME.help`
says what it takes.
"""


def pages() -> dict[str, str]:
    """File name under docs/ and the text it must have."""
    filled = {name: relations for name, relations in CHAPTERS.items() if relations}
    written = {f"relations/{name}.md": _chapter(name, relations) for name, relations in filled.items()}
    pictures = {f"relations/{name}.svg": _drawn(name).svg for name in STATED}
    return {"relations.md": _contents(filled), **written, **pictures}


def example(relation: Relation) -> dict[str, float]:
    """Typical givens of a relation, as its page works them out."""
    return {q.name: q.typical for q in relation.quantities[1:]}


def _contents(chapters: dict[str, tuple[Relation, ...]]) -> str:
    parts = [
        _HEADER,
        "# The book of relations\n",
        _HOW_TO_CALL,
        "What do you want to know? Find the result in the second column.\n",
        "| call | gives | from |",
        "| --- | --- | --- |",
    ]
    for name, relations in chapters.items():
        for relation in relations:
            needs = ", ".join(q.term for q in relation.quantities[1:])
            parts.append(
                f"| [`{relation.name}`](relations/{name}.md#{relation.name}) | {_result(relation)} | {needs} |"
            )
    return "\n".join(parts) + "\n"


def _result(relation: Relation) -> str:
    unit = f", {relation.result.unit}" if relation.result.unit else ""
    return f"{relation.result.term}{unit}"


def _chapter(name: str, relations: tuple[Relation, ...]) -> str:
    title = inspect.getdoc(import_module(f"drillpoint.relations.{name}")) or ""
    parts = [_HEADER, f"# {name.replace('_', ' ').capitalize()}\n", title + "\n", "[All relations](../relations.md)\n"]
    parts += [_section(relation) for relation in relations]
    return "\n".join(parts)


def _section(relation: Relation) -> str:
    givens = example(relation)
    worked = relation.worked(**givens)
    also = sorted(relation.accepts - set(relation.givens))
    instead = f"Takes as well, to work out a given: {', '.join(f'`{n}`' for n in also)}.\n" if also else ""
    where = [f"- ${a.latex}$: {a.meaning}" for a in (ABBREVIATIONS[n] for n in relation.abbreviations)]
    parts = [
        f"## {relation.name}\n",
        f"{_sentence(relation.says)}\n",
        f"$$ {worked.formula.latex} $$\n",
        "\n".join(where) + "\n" if where else "",
        "| symbol | keyword | what it is | unit | possible | usual |",
        "| --- | --- | --- | --- | --- | --- |",
        "\n".join(_row(q) for q in relation.quantities) + "\n",
        _picture(relation),
        instead,
        "For example:\n",
        f"```python\n{_call(relation.name, givens)}\n# {relation(**givens)!r}\n```\n",
        *(f"$$ {line.latex} $$\n" for line in worked.lines),
        "**How it follows**\n",
        *(_step(number, step) for number, step in enumerate(relation.derivation, start=1)),
        _list("Holds when", relation.assumptions),
        _list("At the edges", tuple(_edge(relation, i) for i in range(len(relation.limits)))),
        _list("Sources", relation.sources),
    ]
    return "\n".join(part for part in parts if part)


def _drawn(name: str) -> Picture:
    return picture(name, values_of(scene(name), scene(name).usual), "mm")


def _picture(relation: Relation) -> str:
    for name in STATED:
        if any(isinstance(shape, Label) and shape.of == relation.result.name for shape in scene(name).shapes):
            return f"![{_drawn(name).alt}]({name}.svg)\n"
    return ""


def _call(name: str, givens: dict[str, float]) -> str:
    arguments = [f"{given}={value:g}" for given, value in givens.items()]
    on_one, inside = f"{name}({', '.join(arguments)})", f"    {', '.join(arguments)}"
    if len(on_one) <= _WIDTH:
        return on_one
    if len(inside) > _WIDTH:
        inside = "".join(f"    {argument},\n" for argument in arguments).rstrip("\n")
    return f"{name}(\n{inside}\n)"


def _sentence(words: str) -> str:
    return capital(words.rstrip(".")) + "."


def _row(q: Quantity) -> str:
    cells = (f"${q.latex}$", f"`{q.name}`", f"{q.term}: {q.meaning}", q.unit or "none")
    return f"| {' | '.join(cells)} | {q.show_span(q.possible)} | {q.show_span(q.usual)} |"


def _step(number: int, step: Step) -> str:
    equation = step.equation()
    left, right = (as_latex(side, latex_letter) for side in equation.args)
    return f"{number}. {step.words}\n\n   $$ {left} = {right} $$\n"


def _edge(relation: Relation, place: int) -> str:
    import sympy

    from drillpoint.relation.symbols import symbols

    limit = relation.limits[place]
    towards, value = (as_latex(side(symbols(), sympy), latex_letter) for side in (limit.towards, limit.value))
    letter = latex_letter(limit.quantity)
    return f"${letter} \\to {towards}$ gives ${relation.result.latex} \\to {value}$: {limit.why}"


def _list(title: str, items: tuple[str, ...]) -> str:
    return f"**{title}**\n\n" + "\n".join(f"- {item}" for item in items) + "\n" if items else ""
