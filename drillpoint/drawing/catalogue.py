"""The scenes there are, by name. A scene lives in the module of its name in this folder."""

from __future__ import annotations

STATED: tuple[str, ...] = (
    "end_view",
    "side_view",
    "hole",
    "spot",
    "breakthrough",
    "unequal_lips",
    "thinning",
    "chip",
    "web_along_flute",
    "unequal_angles",
    "relief",
    "rake_along_lip",
    "dubbed_lip",
    "chisel_view",
    "regrind",
    "plane_setup",
    "rolled_view",
    "rule",
    "push",
)
"""Scenes stated in symbols: `build()` gives the scene and the expressions of its coordinates."""

COMPUTED: tuple[str, ...] = (
    "ground_end_view",
    "conical_setup",
)
"""Scenes worked out by numbers: `SCENE` is a `Computed`."""

SCENE = "// scene "
"""Starts the part of scenes.js that belongs to one scene, so that a page can carry only what it needs."""
