"""The script of an explorer: generated formulas and scenes, as far as it needs them, then the parts in browser/."""

from __future__ import annotations

import json
from collections.abc import Iterable
from functools import cache
from pathlib import Path
from typing import Any

from drillpoint.drawing.catalogue import SCENE, STATED
from drillpoint.explorers.find import EXPLORERS
from drillpoint.relation.template import RELATION

_GENERATED = Path(__file__).parent.parent / "generated"
_BROWSER = Path(__file__).parent / "browser"
_DRAWING_STYLE = Path(__file__).parent.parent / "drawing" / "drawing.css"
_PARTS = (
    *("values", "reading", "drill", "elements", "drawing", "control", "results"),
    *("asking", "showing", "holding", "saying", "explorer"),
)
_QUANTITIES = "quantities: "
_READ_OF_A_QUANTITY = ("symbol", "term", "unit", "decimals")


@cache
def script(name: str = "") -> str:
    """Everything of one explorer but the last line, which starts a widget or a page. No part imports another.

    Without a name: what all explorers and all stated scenes need.
    """
    explorers = [EXPLORERS[name]] if name else list(EXPLORERS.values())
    relations = {one for explorer in explorers for one in (*explorer.relations, *explorer.worked)}
    drawn = {one for explorer in explorers for one in explorer.scenes} if name else {*STATED}
    parts = [(_BROWSER / f"{part}.js").read_text(encoding="utf-8") for part in _PARTS]
    return "\n".join([_numbers(relations), _only("scenes.js", SCENE, drawn), *parts])


def _numbers(relations: Iterable[str]) -> str:
    """The generated formulas of these relations; the whole book would be most of the script."""
    return "".join(map(_shortened, _only("numbers.js", RELATION, relations).splitlines(keepends=True)))


def _only(file: str, mark: str, wanted: Iterable[str]) -> str:
    """A generated file with only those of its marked parts that are wanted."""
    names = set(wanted)
    start, *parts = (_GENERATED / file).read_text(encoding="utf-8").split(mark)
    return start + "".join(f"// {part}" for part in parts if part.split("\n", 1)[0] in names)


def _shortened(line: str) -> str:
    """The line of the quantities, with only what the browser reads of each."""
    if not line.startswith(_QUANTITIES):
        return line
    quantities: dict[str, dict[str, Any]] = json.loads(line.removeprefix(_QUANTITIES).rstrip().rstrip(","))
    read = {name: {key: q[key] for key in _READ_OF_A_QUANTITY} for name, q in quantities.items()}
    return f"{_QUANTITIES}{json.dumps(read, ensure_ascii=False)},\n"


def widget_module(name: str) -> str:
    """The module that the notebook widget of an explorer loads."""
    return script(name) + "\nexport default { render };\n"


def page_script(name: str) -> str:
    """The script of an explorer's page that stands alone."""
    return '"use strict";\n' + script(name) + "\nstartPage();\n"


@cache
def style() -> str:
    """The style sheet of explorers and their drawings."""
    return "\n".join(file.read_text(encoding="utf-8") for file in (_DRAWING_STYLE, _BROWSER / "explorer.css"))
