"""The one script of every explorer: generated formulas and scenes, then the parts in browser/, read once."""

from __future__ import annotations

from functools import cache
from pathlib import Path

_GENERATED = Path(__file__).parent.parent / "generated"
_BROWSER = Path(__file__).parent / "browser"
_DRAWING_STYLE = Path(__file__).parent.parent / "drawing" / "drawing.css"
_PARTS = ("values", "reading", "drill", "elements", "drawing", "control", "results", "explorer")


@cache
def script() -> str:
    """Everything but the last line, which starts a widget or a page. No part imports another."""
    files = [_GENERATED / "numbers.js", _GENERATED / "scenes.js", *(_BROWSER / f"{part}.js" for part in _PARTS)]
    return "\n".join(file.read_text(encoding="utf-8") for file in files)


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
