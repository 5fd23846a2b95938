"""scenes.py and scenes.js: every scene as data, and the function that gives its coordinates, in both languages."""

from __future__ import annotations

import json
from importlib import import_module
from typing import Any

from drillpoint.drawing.catalogue import SCENE, STATED
from drillpoint.drawing.scene import Scene
from drillpoint.editions.functions import javascript_function, python_function

_HEADER = "Written by `python -m drillpoint.editions` from the scenes in drillpoint/drawing. Do not edit."


def built() -> list[tuple[Scene, list[Any]]]:
    """Every stated scene, with the expressions of its coordinates."""
    return [import_module(f"drillpoint.drawing.{name}").build() for name in STATED]


def python_scenes() -> str:
    """The whole text of generated/scenes.py."""
    scenes = built()
    # One line a scene, so that a change shows where it belongs.
    data = "".join(f"SCENES[{scene.name!r}] = {scene.as_data()!r}\n" for scene, _ in scenes)
    functions = [python_function(scene.name, scene.arguments, expressions) for scene, expressions in scenes]
    return "# ruff: noqa\n" + "\n\n".join([f'"""{_HEADER}"""\n', f"SCENES = {{}}\n{data}", *functions])


def javascript_scenes() -> str:
    """The whole text of generated/scenes.js: an object `scenes` and no other name."""
    entries = []
    for scene, expressions in built():
        coordinates = javascript_function("coordinates", scene.arguments, expressions)
        data = json.dumps(scene.for_browser(), ensure_ascii=False)
        entries.append(f"{SCENE}{scene.name}\nscenes.{scene.name} = {{coordinates: {coordinates}, ...{data}}};\n")
    return f"// {_HEADER}\nconst scenes = {{}};\n{''.join(entries)}"
