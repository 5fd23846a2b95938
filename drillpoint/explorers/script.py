"""The one script of every explorer: generated formulas and scenes, then the parts in browser/, read once."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from drillpoint.explorers.find import EXPLORERS
from drillpoint.relation.template import RELATION

_GENERATED = Path(__file__).parent.parent / "generated"
_BROWSER = Path(__file__).parent / "browser"
_DRAWING_STYLE = Path(__file__).parent.parent / "drawing" / "drawing.css"
_PARTS = ("values", "reading", "drill", "elements", "drawing", "control", "results", "explorer")


@cache
def script() -> str:
    """Everything but the last line, which starts a widget or a page. No part imports another."""
    files = [_GENERATED / "scenes.js", *(_BROWSER / f"{part}.js" for part in _PARTS)]
    return "\n".join([_numbers(), *(file.read_text(encoding="utf-8") for file in files)])


def _numbers() -> str:
    """The generated formulas of those relations that an explorer works with; the whole book would double the script."""
    needed = {name for explorer in EXPLORERS.values() for name in (*explorer.relations, *explorer.worked)}
    start, *relations = (_GENERATED / "numbers.js").read_text(encoding="utf-8").split(RELATION)
    return start + "".join(f"// {part}" for part in relations if part.split("\n", 1)[0] in needed)


def widget_module() -> str:
    """The module that a notebook widget loads."""
    return script() + "\nexport default { render };\n"


def page_script() -> str:
    """The script of a page that stands alone."""
    return '"use strict";\n' + script() + "\nstartPage();\n"


@cache
def style() -> str:
    """The style sheet of explorers and their drawings."""
    return "\n".join(file.read_text(encoding="utf-8") for file in (_DRAWING_STYLE, _BROWSER / "explorer.css"))
