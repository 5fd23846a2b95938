"""No label leaves the frame or touches another one, anywhere in the ranges."""

import pytest

from drillpoint.drawing.draw import facts
from drillpoint.explorers.script import script, style
from tests.drawing.drills import corners

MEASURE = """
({name, drills, font}) => {
  SCRIPT
  const sheet = document.body.appendChild(document.createElement("style"));
  sheet.textContent = STYLE + (font ? `.drillpoint-drawing text { font-family: ${font} !important; }` : "");
  const drawing = makeDrawing(scenes[name]);
  drawing.root.setAttribute("width", scenes[name].width);
  document.body.append(drawing.root);
  const faults = [];
  let measured = 0;
  for (const values of drills) for (const units of ["mm", "inch"]) {
    drawing.update(values, units, "");
    const boxes = [...drawing.root.querySelectorAll("text")].map((text) => [text.textContent, text.getBBox()]);
    boxes.forEach(([text, box], i) => {
      measured += box.width > 0;
      const inside = box.x >= 4 && box.y >= 4 && box.x + box.width <= scenes[name].width - 4
        && box.y + box.height <= scenes[name].height - 4;
      if (!inside) faults.push(`${text} leaves the frame: ${JSON.stringify(values)} ${units}`);
      for (const [other, b] of boxes.slice(i + 1)) {
        // A text box holds the line's full height; a pixel and a half of it is air at either end.
        const apart = box.x + box.width <= b.x || b.x + b.width <= box.x
          || box.y + box.height - 3 <= b.y || b.y + b.height - 3 <= box.y;
        if (!apart) faults.push(`${text} touches ${other}: ${JSON.stringify(values)} ${units}`);
      }
    });
  }
  return {measured, faults};
}
"""


@pytest.mark.parametrize("name", ["end_view", "side_view"])
@pytest.mark.parametrize("font", ["", "Verdana, 'DejaVu Sans', sans-serif"], ids=["own font", "wide font"])
def test_labels_keep_apart_and_inside(browser, name, font):
    page = browser.new_page()
    drills = [facts(**drill) for drill in corners()]
    function = MEASURE.replace("SCRIPT", script()).replace("STYLE", "`" + style() + "`")
    result = page.evaluate(function, {"name": name, "drills": drills, "font": font})
    page.close()
    assert result["measured"] >= 8 * len(drills)
    assert result["faults"] == []
