"""Explorers: a drill under the learner's hand.

>>> from drillpoint.explorers import explore
>>> explore("lips")

`explore` makes a notebook widget, `standalone_page` the same as one page without Python. An explorer says what is
moved, worked out and drawn, as data; the parts of its script are in browser/. `look` shows a ground point as a solid,
`solid_page` the same as one page; they live in solid/.
"""

import importlib
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from drillpoint.explorers.find import explorer_names
    from drillpoint.explorers.page import standalone_page
    from drillpoint.explorers.solid.page import solid_page
    from drillpoint.explorers.solid.widget import SolidWidget, look
    from drillpoint.explorers.widget import ExplorerWidget, explore

__all__ = ["ExplorerWidget", "SolidWidget", "explore", "explorer_names", "look", "solid_page", "standalone_page"]

_HOMES = {
    "explore": "widget",
    "ExplorerWidget": "widget",
    "explorer_names": "find",
    "look": "solid.widget",
    "solid_page": "solid.page",
    "SolidWidget": "solid.widget",
    "standalone_page": "page",
}


def __getattr__(name: str) -> Any:
    # A page needs no widget library, and a widget no page template.
    if name not in _HOMES:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return getattr(importlib.import_module(f"{__name__}.{_HOMES[name]}"), name)
