"""A plan in words and tables: sections that show as text, as HTML in a notebook, and on the page to print."""

from __future__ import annotations

from collections.abc import Iterator
from html import escape

from attrs import field, frozen

from drillpoint.errors import UnknownGiven
from drillpoint.ground.table import Table
from drillpoint.planning.deciding import off_centre
from drillpoint.planning.plan import RegrindPlan
from drillpoint.planning.web_growth import WebGrowth
from drillpoint.planning.words import length
from drillpoint.quantities import capital, nearest, quantity

BLANK = "________"
_MANY = 100
"""More regrinds than this are not counted: the web is thinned, or the drill lost, long before."""
RECORD = ("wheel and setting of the fixture, as they were", "date, and who ground it")


@frozen
class Section:
    """One part of a plan: its title and sentences, then a table, or a table alone with a title of its own."""

    title: str = ""
    lines: tuple[str, ...] = ()
    table: Table | None = None

    @property
    def name(self) -> str:
        """What it is asked for by: its title, or that of its table."""
        return self.title or (self.table.title if self.table else "")


def sections(plan: RegrindPlan) -> tuple[Section, ...]:
    """The parts of a plan, in the order they are needed at the bench."""
    return tuple(_sections(plan))


def title_of(plan: RegrindPlan) -> str:
    """Name and size of the drill, and what it is kept for."""
    size = length(plan.diameter)
    kept = f", for {plan.job.drills}" if plan.job.drills else ""
    return f"Plan for {plan.name}: {size}{kept}"


def as_text(plan: RegrindPlan, titles: tuple[str, ...] = ()) -> str:
    """The plan, or some of its parts, as lines of text."""
    lines = [title_of(plan), plan.says]
    for section in _chosen(plan, titles):
        lines += ["", section.title, *(f"- {line}" for line in section.lines)] if section.title else []
        lines += ["", *str(section.table).splitlines()] if section.table else []
    return "\n".join(lines)


def as_html(plan: RegrindPlan, titles: tuple[str, ...] = ()) -> str:
    """The plan, or some of its parts, as HTML of plain tags, as a notebook keeps it."""
    parts = [f"<p><strong>{escape(title_of(plan))}</strong><br>{escape(plan.says)}</p>"]
    for section in _chosen(plan, titles):
        if section.title:
            said = "".join(f"<li>{escape(line)}</li>" for line in section.lines)
            parts.append(f"<p><strong>{escape(section.title)}</strong></p><ul>{said}</ul>")
        if section.table:
            parts.append(section.table.html)
    return "".join(parts)


@frozen
class Excerpt:
    """Some parts of a plan, by their titles; shows like the plan."""

    plan: RegrindPlan = field(repr=False)
    titles: tuple[str, ...]

    def __attrs_post_init__(self) -> None:
        known = tuple(section.name for section in sections(self.plan))
        for title in self.titles:
            if title not in known:
                raise UnknownGiven(f"this plan has no part {title!r}{nearest(title, known)}")

    def __str__(self) -> str:
        return as_text(self.plan, self.titles)

    __repr__ = __str__

    def _repr_html_(self) -> str:
        return as_html(self.plan, self.titles)


def _chosen(plan: RegrindPlan, titles: tuple[str, ...]) -> Iterator[Section]:
    return (section for section in sections(plan) if not titles or section.name in titles)


def _sections(plan: RegrindPlan) -> Iterator[Section]:
    yield Section("Why", plan.reasons)
    if plan.ground:
        yield _stock(plan)
    if plan.thin or (plan.ground and plan.web):
        yield Section("Web", tuple(_web(plan)))
    if plan.flutes and plan.decision in ("regrind", "re-point", "scrap"):
        yield Section("Flutes", (_flutes(plan),))
    if plan.wheel:
        yield _wheel(plan)
    if plan.notes:
        yield Section("To know", plan.notes)
    yield Section("Cautions", plan.cautions)
    if plan.checks:
        rows = tuple((c.what, c.allowed, c.tool, c.before, BLANK) for c in plan.checks)
        yield Section(table=_table("Inspect afterwards", ("what", "allowed", "with", "before", "after"), rows))
        yield Section(table=_table("Record", ("what", "before", "after"), tuple(_record(plan))))


def _stock(plan: RegrindPlan) -> Section:
    off = plan.off
    rows = tuple((stock.says.removeprefix("the "), length(stock.amount), stock.at) for stock in off.stocks)
    lines = [f"{capital(off.decides)} decides." if off.decides else "No fault asks for a stock of its own."]
    if off.on_top:
        lines[0] = f"At the corners {off.decides} decides. At the tip {off.on_top} comes on top."
    if off.doubtful:
        lines.append(f"Within the reading errors {' and '.join(off.doubtful)} may decide: look after the first passes.")
    own = plan.shop
    where = f"{length(off.corners)} at the corners and {length(off.tip)} at the tip"
    if off.corners == off.tip:
        where = f"{length(off.tip)}, at corners and tip alike"
    lines.append(
        f"Take off {where}. {length(own.finish_allowance)} of it is to finish ({own.whose('finish_allowance')})."
    )
    lines += plan.cures
    lines.append("Grind as little as possible, both flanks alike, and look often.")
    table = _table("Stock, fault by fault", ("fault", "stock along the axis", "off"), rows) if rows else None
    return Section("Stock", tuple(lines), table)


def _web(plan: RegrindPlan) -> Iterator[str]:
    if plan.web:
        yield from _growth(plan, plan.web)
    for fault in off_centre(plan.report) if plan.thin else ():
        yield fault.kind.cure


def _growth(plan: RegrindPlan, web: WebGrowth) -> Iterator[str]:
    """What the grind makes of the web, and what thinning would."""
    ratio, own = quantity("web_ratio").show, plan.shop
    if plan.ground:
        share = f"{ratio(web.ratio.value)} of the diameter"
        yield f"After the grind {length(web.after)}, {share}, with a chisel edge of {length(web.chisel)}."
    else:
        yield f"The chisel edge is {length(web.chisel)} long."
    if web.thinned is not None:
        yield (
            f"Thin it to a chisel edge of {length(web.thinned)}, that of a web of "
            f"{ratio(own.thinned_web_ratio)} of the diameter ({own.whose('thinned_web_ratio')})."
        )
    if web.lip_left is not None:
        angle = quantity("thinning_angle").show(own.thinning_angle)
        yield f"Thinned at {angle} to the lip, {100 * web.lip_left:.0f} % of each lip stays as it was."
    if web.until is not None:
        sure = " The reading error reaches across the limit: measure the web after the grind." if web.doubtful else ""
        yield f"It is thinned from {ratio(web.limit)} on ({web.whose}), after {length(web.until)} more.{sure}"


def _flutes(plan: RegrindPlan) -> str:
    found = plan.flutes
    if found is None:
        return ""
    count = f"{found.regrinds}" if found.regrinds <= _MANY else f"more than {_MANY}"
    many = f"{count} more such grind{'' if found.regrinds == 1 else 's'}"
    after = f"enough for {many}" if not found.short else "too short"
    return f"After the grind {length(found.left)} are left, {length(found.needed)} are needed: {after}."


def _wheel(plan: RegrindPlan) -> Section:
    wheel = plan.wheel
    angle, edge = quantity("point_angle").show, quantity("chisel_edge_angle").show
    new = plan.new
    asked = (
        f"Wanted: point angle {angle(new.point_angle)} (half angle {angle(new.point_angle / 2, 1)}), lip relief "
        f"{angle(new.lip_relief, 1)} at the corner, chisel edge angle {edge(new.chisel_edge_angle)} (obtuse)."
    )
    if wheel is None or wheel.setup is None:
        return Section("Wheel", (asked, *(wheel.notes if wheel else ())))
    kind = {"plane": "one plane behind each lip"}.get(wheel.setup.family, "part of a cone behind each lip")
    rows = tuple(
        (s.quantity.term, length(s.value) if s.quantity.unit == "mm" else s.quantity.show(s.value, 1))
        for s in wheel.setup.settings
    )
    return Section(
        "Wheel", (asked, f"Flank: {kind}.", *wheel.notes), _table("Setting of the wheel", ("setting", "value"), rows)
    )


def _record(plan: RegrindPlan) -> Iterator[tuple[str, str, str]]:
    before = plan.wear.length_before
    tip = plan.off.tip
    if before is None:
        yield ("length from a stop to the tip", BLANK, BLANK)
    else:
        aim = length(before - tip.value)
        yield (f"length from a stop to the tip (aim: {aim})", length(before), BLANK)
    if plan.ground:
        yield (f"came off the tip (asked: {length(tip)})", "", BLANK)
    for what in RECORD:
        yield (what, "", BLANK)


def _table(title: str, heads: tuple[str, ...], rows: tuple[tuple[str, ...], ...]) -> Table:
    """A table of words, so every column is set to the left."""
    return Table(title, heads, rows, frozenset(range(len(heads))))
