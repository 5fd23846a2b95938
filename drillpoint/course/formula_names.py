"""The names in a formula: how they may be spelt, and which ones an exercise may use."""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache

from drillpoint.errors import InstructorError

# One character for one character, as in every look-alike: the micro sign is a µ, and so on.
LETTER_ALIKES = str.maketrans({"µ": "μ", "ϕ": "φ", "ϵ": "ε", "ϑ": "θ", "ϰ": "κ", "∆": "Δ", "\u2126": "Ω",
                               "'": "′", "’": "′"})  # fmt: skip
NAME = r"[A-Za-zα-ωΑ-Ω_][A-Za-z0-9α-ωΑ-Ω_₀-₉]*′*"
FUNCTION = r"(arcsin|arccos|arctan|asin|acos|atan|sin|cos|tan|cot|sqrt|abs|log10|ln|exp)(?![A-Za-z_])|√"
DEGREE = r"[°º˚]|deg(rees?)?(?![A-Za-z0-9_])"
PI = "π"

_GREEK = {
    "alpha": "α", "beta": "β", "gamma": "γ", "delta": "δ", "epsilon": "ε", "zeta": "ζ", "eta": "η", "theta": "θ",
    "iota": "ι", "kappa": "κ", "lambda": "λ", "mu": "μ", "nu": "ν", "xi": "ξ", "pi": "π", "rho": "ρ",
    "sigma": "σ", "tau": "τ", "phi": "φ", "chi": "χ", "psi": "ψ", "omega": "ω",
}  # fmt: skip
# deltaL is δL, but psig is no ψg.
_WORD = re.compile(f"(?i:{'|'.join(sorted(_GREEK, key=len, reverse=True))})(?![a-z])")
_SUBSCRIPTS = str.maketrans("₀₁₂₃₄₅₆₇₈₉", "0123456789")


@lru_cache(maxsize=512)
def key(name: str) -> str:
    """What all spellings of a name have in common: kappa_1, kappa1, κ₁ and κ_1 are κ1."""
    return "".join(map(_letters, name.translate(LETTER_ALIKES).translate(_SUBSCRIPTS).split("_")))


def _letters(part: str) -> str:
    match = _WORD.match(part)
    if match is None:
        return part
    letter = _GREEK[match.group().lower()]
    return (letter.upper() if match.group()[0].isupper() else letter) + part[match.end() :]


def meant(typed: str, names: tuple[str, ...]) -> str | None:
    """Find the one name of a task that somebody meant, or π; None if there is none or more than one."""
    if typed in names:
        return typed
    for spelling in (key, lambda name: key(name).casefold()):
        alike = [name for name in names if spelling(name) == spelling(typed)]
        if alike:
            return alike[0] if len(alike) == 1 else None
    return PI if key(typed).casefold() == PI else None


@lru_cache(maxsize=512)
def check_offered(names: tuple[str, ...], functions: frozenset[str], known: frozenset[str]) -> None:
    """Refuse with InstructorError what an exercise cannot offer in a formula."""
    for name in names:
        reason = _unusable(name)
        if reason:
            raise InstructorError(f"“{name}” cannot be a name in a formula: {reason}; choose another symbol")
    if unknown := sorted(functions - known):
        raise InstructorError(f"“{unknown[0]}” is not a function that formulas know; known: {listed(sorted(known))}")


def _unusable(name: str) -> str:
    plain = name.translate(LETTER_ALIKES)
    if not re.fullmatch(NAME, plain):
        return "a name is a Latin or Greek letter, then letters, digits or _"
    if re.match(FUNCTION, plain, re.IGNORECASE):
        return "it would be read as a function"
    if re.fullmatch(DEGREE, plain) or key(plain).casefold() == PI:
        return "it already has a meaning there"
    return ""


def listed(names: Iterable[str]) -> str:
    """Names as a message lists them."""
    return ", ".join(names) or "none"
