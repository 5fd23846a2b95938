"""Pages that show a solid, and what is seen on them."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING

import numpy as np

from drillpoint.explorers import solid_page
from tests.drawing.solid.points import points

if TYPE_CHECKING:
    from playwright.sync_api import Page

# Keeps every WebGL context that a page makes, to be counted.
COUNTING = """
window.contexts = [];
const get = HTMLCanvasElement.prototype.getContext;
HTMLCanvasElement.prototype.getContext = function (kind, ...more) {
  const made = get.call(this, kind, ...more);
  if (kind.startsWith("webgl") && made && !window.contexts.includes(made)) window.contexts.push(made);
  return made;
};
"""
MISSING = "HTMLCanvasElement.prototype.getContext = ((get) => function (kind, ...more) {\
 return kind.startsWith('webgl') ? null : get.call(this, kind, ...more); })(HTMLCanvasElement.prototype.getContext);"


@cache
def page_of(*names: str, units: str = "mm") -> str:
    """The page of a point of `points`, or of two beside one another."""
    first, *second = (points()[name] for name in names)
    return solid_page(first, beside=second[0] if second else None, names=names, units=units)


def pixels(page: Page, number: int = 0) -> list[float]:
    """What a screen shows, coarsely: grey and cover of squares of some pixels, row by row."""
    code = """(canvas) => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => {
      const small = Object.assign(document.createElement("canvas"), { width: 160, height: 120 });
      const pen = small.getContext("2d");
      pen.drawImage(canvas, 0, 0, 160, 120);
      const seen = pen.getImageData(0, 0, 160, 120).data, out = [];
      for (let i = 0; i < seen.length; i += 4) out.push((seen[i] + seen[i + 1] + seen[i + 2]) / 3, seen[i + 3]);
      done(out);
    })))"""
    return page.locator("canvas").nth(number).evaluate(code)


def apart(one: list[float], other: list[float]) -> float:
    """Mean difference of two screens, of 255."""
    return float(np.abs(np.array(one) - np.array(other)).mean())


def changed(one: list[float], other: list[float]) -> float:
    """The greatest difference of two screens in one square, of 255."""
    return float(np.abs(np.array(one) - np.array(other)).max())


def covered(seen: list[float]) -> float:
    """How much of a screen the drill covers."""
    return float((np.array(seen[1::2]) > 128).mean())


def press(page: Page, *keys: str) -> None:
    """Press keys one after another."""
    for key in keys:
        page.keyboard.press(key)
