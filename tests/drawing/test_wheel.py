"""The wheel stands with its face where it is said, and its metal behind it."""

from drillpoint.drawing.sheet import Sheet
from drillpoint.drawing.wheel import THICK, wheel_face


def test_the_metal_lies_behind_the_face():
    sheet = Sheet(plain=True)
    wheel_face(sheet, (10.0, 50.0), (90.0, 50.0), (0.0, -1.0))
    numbers = {
        shape.style: [sheet.expressions[step] for step in shape.steps if isinstance(step, int)]
        for shape in sheet.shapes
    }
    assert numbers["edge"] == [10, 50, 90, 50]
    assert numbers["section_other"] == [10, 50, 90, 50, 90, 50 - THICK, 10, 50 - THICK]
