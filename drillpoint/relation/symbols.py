"""The letters of the formulas: one sympy symbol for each quantity, and the abbreviations built on them.

In a formula an angle is an angle (so `sin κ` means what it says); degrees appear only at the surface, where
`in_surface_units` puts them in.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cache
from types import MappingProxyType, ModuleType
from typing import Any

from attrs import frozen

from drillpoint.quantities import QUANTITIES


@frozen
class Abbreviation:
    """A letter that stands for a short expression of quantities.

    name: attribute in statements. symbol, latex: as formulas print it. meaning: in words. definition: the expression.
    """

    name: str
    symbol: str
    latex: str
    is_angle: bool
    meaning: str
    definition: Callable[[Symbols, ModuleType], Any]


@frozen
class Symbols:
    """Attribute access to the symbols: `s.diameter`, `s.t`, and `s.local("x_c")` for a letter of one derivation."""

    table: Mapping[str, Any]

    def local(self, name: str) -> Any:
        """A letter that only one derivation uses; a quantity's or abbreviation's own symbol if it has that name."""
        import sympy

        return self.table.get(name) or sympy.Symbol(name, real=True)

    def __getattr__(self, name: str) -> Any:
        try:
            return self.table[name]
        except KeyError:
            raise AttributeError(f"no quantity or abbreviation is called {name!r}") from None


ABBREVIATIONS: Mapping[str, Abbreviation] = MappingProxyType(
    {
        a.name: a
        for a in (
            Abbreviation("R", "R", "R", False, "half the diameter", lambda s, sp: s.diameter / 2),
            Abbreviation("t", "t", "t", False, "half the web", lambda s, sp: s.web / 2),
            Abbreviation("kappa", "κ", r"\kappa", True, "half the point angle", lambda s, sp: s.point_angle / 2),
            Abbreviation(
                "kappa_new",
                "κ′",
                r"\kappa'",
                True,
                "half the new point angle",
                lambda s, sp: s.new_point_angle / 2,
            ),
            Abbreviation(
                "delta",
                "δ",
                r"\delta",
                True,
                "acute angle between lip and chisel edge",
                lambda s, sp: sp.pi - s.chisel_edge_angle,
            ),
            Abbreviation(
                "omega",
                "ω",
                r"\omega",
                True,
                "angle at the axis between the lip's direction and the outer corner",
                lambda s, sp: sp.asin(s.web_ratio),
            ),
            Abbreviation(
                "omega_r",
                "ω_r",
                r"\omega_r",
                True,
                "angle at the axis between the lip's direction and the place on the lip",
                lambda s, sp: sp.asin(s.t / s.radius),
            ),
            Abbreviation(
                "rake_change",
                "ε",
                r"\varepsilon",
                True,
                "how much rake the flat takes away",
                lambda s, sp: s.normal_rake - s.dub_normal_rake,
            ),
            Abbreviation(
                "delta_plane",
                "δ",
                r"\delta",
                True,
                "acute angle between lip and chisel edge that a plane flank gives",
                lambda s, sp: sp.atan2(sp.cot(s.kappa), sp.tan(s.axial_relief)),
            ),
        )
    }
)


@cache
def symbols() -> Symbols:
    """Every quantity and abbreviation as a real sympy symbol named by its keyword."""
    import sympy

    names = [*QUANTITIES, *ABBREVIATIONS]
    return Symbols(MappingProxyType({name: sympy.Symbol(name, real=True) for name in names}))


def spelled_out(expression: Any) -> Any:
    """The expression with every abbreviation replaced by what it stands for."""
    import sympy

    s = symbols()
    while used := [a for a in ABBREVIATIONS.values() if expression.has(s.table[a.name])]:
        expression = expression.xreplace({s.table[a.name]: a.definition(s, sympy) for a in used})
    return expression


def in_surface_units(expression: Any, result_is_angle: bool) -> Any:
    """The spelled-out expression as a function of degrees and millimetres, its result in degrees if it is an angle."""
    import sympy

    s = symbols()
    degrees = {s.table[q.name]: s.table[q.name] * sympy.pi / 180 for q in QUANTITIES.values() if q.is_angle}
    converted = spelled_out(expression).xreplace(degrees)
    return converted * 180 / sympy.pi if result_is_angle else converted


def is_angle(name: str) -> bool:
    """Whether the quantity or abbreviation is an angle."""
    return QUANTITIES[name].is_angle if name in QUANTITIES else ABBREVIATIONS[name].is_angle


def letter(name: str) -> str:
    """The printed symbol of a quantity or abbreviation; a derivation's own letter is its name."""
    known = QUANTITIES.get(name) or ABBREVIATIONS.get(name)
    return known.symbol if known else name


def latex_letter(name: str) -> str:
    """The LaTeX of a quantity's or abbreviation's symbol; a derivation's own letter gets its subscript set."""
    known = QUANTITIES.get(name) or ABBREVIATIONS.get(name)
    head, _, below = name.partition("_")
    return known.latex if known else head + (f"_{{{below}}}" if below else "")
