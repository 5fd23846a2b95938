"""How the cards and the words stand on the sheet."""

from __future__ import annotations

from collections.abc import Sequence

from drillpoint.drawing.paper.cards import chisel_card, notch_strip, relief_wedges, wide_notch
from drillpoint.drawing.paper.format import MARGIN, Format
from drillpoint.drawing.paper.marks import LINE_SPACING, Card, Mark, Words, paragraph, segment
from drillpoint.errors import LearnerError
from drillpoint.quantities import QUANTITIES

GAP, WIDEST_GAP = 4.5, 8.0
BETWEEN_CARDS = 7.0
BAR_COLUMN = 12.0  # at the right, for the upright check bar
LEAST_BESIDE = 66.0
TEXT, NOTE, TITLE = 3.0, 2.8, 5.0
LETTER = 0.56  # of its size, the average width of a letter in a broad plain font

CAUTION = (
    "Take the drill out of the machine before you hold paper to it. Lips and margins are sharp: hold the drill by its "
    "shank. At the wheel wear eye protection, and do as your instructor and the maker of the machine say."
)
ONLY_PAPER = (
    "This is paper and no inspection gauge. It shows what to look for; your shop's own gauges decide. Ask your "
    "instructor before you grind."
)
PRINT = (
    "1. Print at 100 %. Measure both check bars with a steel rule: each is {bar}. If one is off, throw the sheet away."
)
CUT = "2. Stick the sheet on thin card. Cut along the middle of the wide lines."
HOLD = (
    "3. Lay the point into the notch of its size and turn the drill until both lips lie level with the paper; a drill "
    "that is rolled looks sharper than it is. Hold it against the light. No light along the lips: the angle is right. "
    "Light towards the tip: the point is too blunt. Light at the corners: too sharp. A speck under the chisel edge is "
    "always there."
)
READ = "4. Read both outer corners on the lip scale. Both lips must read equal."
ABOUT_WIDE = "Wide notch: for any size between. Sight the drill along the centre line."
ABOUT_WEDGES = (
    "Relief wedges, right-hand drill: hold it tip up before a wedge, the outer corner of a lip at the sharp corner, "
    "and look straight at the land behind the lip. Near the corner it should fall away like the edge."
)
ABOUT_CHISEL = (
    "Chisel edge card: cut out the circle of your drill, push the point through from below and bring the lips along "
    "the lip line. The chisel edge, made longer by eye, should point between the outer rays."
)


def title_of(sheet: Format) -> str:
    """What stands at the top."""
    angle = QUANTITIES["point_angle"].show(sheet.point_angle)
    return f"Point paper for a {angle} point, drills {sheet.size(sheet.sizes[0])} to {sheet.size(sheet.largest)}"


def laid_out(sheet: Format) -> tuple[Mark, ...]:
    """Every mark of the sheet.

    Raises LearnerError when it does not fit on the paper.
    """
    wide, tall = sheet.width - 2 * MARGIN, sheet.height - 2 * MARGIN
    blocks = _blocks(sheet, wide)
    spare = tall - sum(block.height for block in blocks)
    gap = min(WIDEST_GAP, spare / (len(blocks) - 1))
    if gap < GAP:
        raise LearnerError(
            f"a {QUANTITIES['point_angle'].show(sheet.point_angle)} sheet for drills up to {sheet.size(sheet.largest)} "
            f"does not fit on {sheet.paper} paper; choose a smaller largest size"
        )
    return tuple(_column(blocks, gap).placed(MARGIN, MARGIN))


def _blocks(sheet: Format, wide: float) -> list[Card]:
    steps = (PRINT.format(bar=sheet.check[2]), CUT, HOLD, READ)
    return [
        _title(sheet, wide),
        _column([_said((CAUTION,), wide, TEXT, bold=True), _said((ONLY_PAPER,), wide, TEXT)], 0.8),
        _level_bar(sheet, wide),
        _said(steps, wide, TEXT),
        notch_strip(sheet, wide),
        _lower_half(sheet, wide),
    ]


def _lower_half(sheet: Format, wide: float) -> Card:
    """The chisel edge card, beside it the wide notch over the wedges, and the upright bar at the right."""
    chisel = chisel_card(sheet)
    beside = wide - BAR_COLUMN - chisel.width - BETWEEN_CARDS
    if beside < LEAST_BESIDE:
        raise LearnerError(
            f"drills up to {sheet.size(sheet.largest)} are too large for {sheet.paper} paper; "
            "choose a smaller largest size"
        )
    left = _column([chisel, _said((ABOUT_CHISEL,), chisel.width, NOTE)], 2.5)
    notch = _column([wide_notch(sheet, beside), _said((ABOUT_WIDE,), beside, NOTE)], 2.5)
    wedges = _column([relief_wedges(sheet, beside), _said((ABOUT_WEDGES,), beside, NOTE)], 2.5)
    return _row([left, _column([notch, wedges], 5.0), _upright_bar(sheet)], BETWEEN_CARDS, wide)


def _column(blocks: Sequence[Card], gap: float) -> Card:
    marks: list[Mark] = []
    top = 0.0
    for block in blocks:
        marks += block.placed(0.0, top)
        top += block.height + gap
    return Card("", max(block.width for block in blocks), top - gap, tuple(marks))


def _row(blocks: Sequence[Card], gap: float, wide: float) -> Card:
    """Cards side by side, the last one at the right edge."""
    marks: list[Mark] = []
    left = 0.0
    for block in blocks[:-1]:
        marks += block.placed(left, 0.0)
        left += block.width + gap
    marks += blocks[-1].placed(wide - blocks[-1].width, 0.0)
    return Card("", wide, max(block.height for block in blocks), tuple(marks))


def _said(texts: Sequence[str], wide: float, size: float, *, bold: bool = False) -> Card:
    """Paragraphs over this width."""
    letters = int(wide / (size * LETTER * (1.06 if bold else 1.0)))
    marks: list[Mark] = []
    base = size
    for text in texts:
        lines = paragraph(text, (0.0, base), letters, size, bold=bold)
        marks += lines
        base = lines[-1].at[1] + size * LINE_SPACING + 0.8
    return Card("", wide, base - size * LINE_SPACING - 0.8 + 0.3 * size, tuple(marks))


def _title(sheet: Format, wide: float) -> Card:
    return Card("", wide, TITLE, (Words(title_of(sheet), (0.0, TITLE), TITLE, bold=True),))


def _level_bar(sheet: Format, wide: float) -> Card:
    length, parts, called = sheet.check
    marks: list[Mark] = [segment("bar", (0.0, 3.0), (length, 3.0))]
    for i in range(parts + 1):
        at = i * length / parts
        marks.append(segment("bar", (at, 0.4 if i in (0, parts) else 1.7), (at, 3.0)))
    marks.append(Words(f"level check bar: exactly {called}", (length + 4.0, 3.0), TEXT, bold=True))
    return Card("level check bar", wide, 3.2, tuple(marks))


def _upright_bar(sheet: Format) -> Card:
    length, parts, called = sheet.check
    right = BAR_COLUMN - 4.0
    marks: list[Mark] = [segment("bar", (right, 0.0), (right, length))]
    for i in range(parts + 1):
        at = i * length / parts
        marks.append(segment("bar", (right - (2.6 if i in (0, parts) else 1.3), at), (right, at)))
    said = f"upright check bar: exactly {called}"
    marks.append(Words(said, (right - 4.2, length / 2), TEXT, "middle", bold=True, turned=-90))
    return Card("upright check bar", right, length, tuple(marks))
