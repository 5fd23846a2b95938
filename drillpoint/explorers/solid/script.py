"""The script of the solid: the parts in browser/, with the few it shares with the other explorers in front."""

from __future__ import annotations

from functools import cache
from pathlib import Path

_HERE = Path(__file__).parent
_SHARED = ("values", "elements", "drawing")
_PARTS = ("turning", "shaders", "stage", "solids", "painting", "cutting", "naming", "solid")


@cache
def script() -> str:
    """Everything but the last line, which starts a widget or a page. No part imports another."""
    files = [_HERE.parent / "browser" / f"{part}.js" for part in _SHARED]
    files += [_HERE / "browser" / f"{part}.js" for part in _PARTS]
    return "\n".join(file.read_text(encoding="utf-8") for file in files)


def widget_module() -> str:
    """The module that the notebook widget loads."""
    return script() + "\nexport default { render };\n"


def page_script() -> str:
    """The script of a page that stands alone."""
    return '"use strict";\n' + script() + "\nstartPage();\n"


@cache
def style() -> str:
    """The style sheet of the solid."""
    return (_HERE / "solid.css").read_text(encoding="utf-8")
