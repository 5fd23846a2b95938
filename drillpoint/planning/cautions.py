"""What to mind before a drill is ground. Every plan carries these; they defer to those who know the shop."""

from __future__ import annotations

from collections.abc import Iterator

from drillpoint.planning.deciding import GROUND, Decision
from drillpoint.planning.shop import Steel

FIRST = (
    "Local rules, the maker's instructions for machine and wheel, and a qualified instructor come first. This plan is "
    "geometry."
)
_AT_THE_WHEEL = (
    "Eyes: eye protection with side protection, also behind the shield of the wheel.",
    "Wheel: ring-tested by somebody trained, marked for the spindle's speed, guards on. Stand aside at the start.",
    "Work rest: within 3 mm (1/8 in) of the wheel; set it only while the wheel stands still.",
    "Hands: no gloves, no rings, no loose sleeves or hair, at the wheel and at a turning drill.",
    "Heat: a ground edge burns skin and does not show it. Grind in short touches; never shock-cool a hot edge.",
    "Measure with the wheel stopped and the drill cool.",
)
_DUST = "Dust: extraction on; grinding dust is not blown about and not swept dry."
_COBALT = "Dust of cobalt steel harms the lungs: extraction on, a mask as your rules say; do not sweep it dry."
_CARBIDE = "Dust of carbide and its cobalt harms the lungs; it takes a wheel of its own kind, never the one for steel."
_KEPT = ("Lips cut, also in the tray. At the machine: eye protection, and no gloves at a turning drill.",)
_SCRAP = "Mark it so that nobody takes it again. A cracked drill is not ground and not bent: its pieces fly."


def cautions(decision: Decision, steel: Steel, *, thin: bool) -> tuple[str, ...]:
    """The cautions for what is done with a drill of this material."""
    return (FIRST, *_cautions(decision, steel, thin))


def _cautions(decision: Decision, steel: Steel, thin: bool) -> Iterator[str]:
    if decision == "scrap":
        yield _SCRAP
    if decision in GROUND or decision == "thin":
        yield from _AT_THE_WHEEL
        yield {"cobalt steel": _COBALT, "carbide": _CARBIDE}.get(steel, _DUST)
    else:
        yield from _KEPT
    if thin:
        yield "Thin both sides alike, and little at a time: a web thinned too far, or on one side, splits at work."
    if decision in GROUND and steel == "carbide":
        yield "A ground edge on carbide is usually honed; on high-speed steel and cobalt steel it is not."
