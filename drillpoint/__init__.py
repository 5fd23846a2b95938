"""The point of a twist drill: relations, drawings, lessons and marking.

Importing this package loads none of the numeric or notebook libraries: each public name is fetched from its own
module when it is first asked for.
"""

import importlib

__version__ = "0.1.0"

# Public name -> the module it comes from. This file must also run on Pythons too old for the rest, so that
# `python -m drillpoint` can say so.
_HOMES = {}  # type: dict[str, str]

__all__ = ["__version__", *_HOMES]


def __getattr__(name: str) -> object:
    if name not in _HOMES:
        raise AttributeError(f"module 'drillpoint' has no attribute {name!r}")
    return getattr(importlib.import_module(_HOMES[name]), name)


def __dir__() -> "list[str]":
    return sorted({*globals(), *__all__})
