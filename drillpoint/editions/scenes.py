"""scenes.py and scenes.js: every scene as data, and the function that gives its coordinates, in both languages."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any

from drillpoint.drawing import end_view, side_view
from drillpoint.drawing.scene import Scene
from drillpoint.editions.functions import javascript_function, python_function

_HEADER = "Written by `python -m drillpoint.editions` from the scenes in drillpoint/drawing. Do not edit."

BUILDERS: tuple[Callable[[], tuple[Scene, list[Any]]], ...] = (end_view.build, side_view.build)


def python_scenes() -> str:
    """The whole text of generated/scenes.py."""
    built = [build() for build in BUILDERS]
    data = {scene.name: scene.as_data() for scene, _ in built}
    functions = [python_function(scene.name, scene.givens, expressions) for scene, expressions in built]
    return "# ruff: noqa\n" + "\n\n".join(
        [f'"""{_HEADER}"""\n', f"SCENES = {json.dumps(data, ensure_ascii=False)}\n", *functions]
    )


def javascript_scenes() -> str:
    """The whole text of generated/scenes.js: an object `scenes` and no other name."""
    entries = []
    for scene, expressions in (build() for build in BUILDERS):
        coordinates = javascript_function("coordinates", scene.givens, expressions)
        data = json.dumps(scene.as_data(), ensure_ascii=False)
        entries.append(f"{json.dumps(scene.name)}: {{coordinates: {coordinates}, ...{data}}}")
    return f"// {_HEADER}\nconst scenes = {{{', '.join(entries)}}};\n"
