"""The hole: how deep to drill, how long it takes, and how large the hole gets when the point is not true."""

from drillpoint.relation import Condition, Limit, Relation, follow, let, read_off
from drillpoint.relations import drilling, hole_size

_DRAWING = ("Follows from the drawing alone.",)
_SHARP = "The bottom of the hole is taken as the drill's sharp cone; the chisel edge leaves it a little blunt."

full_diameter_depth = Relation(
    name="full_diameter_depth",
    result="depth_to_point",
    givens=("shoulder_depth", "point_height"),
    says="for a hole with this depth at full diameter, the tip goes deeper by the height of the point",
    formula=lambda s, sp: s.shoulder_depth + s.point_height,
    steps=(
        read_off(
            "Cut the hole open along its axis. From the face to the shoulder it is as wide as the drill; below that is "
            "a cone as tall as the point. Take the shoulder's depth from the whole, and the point is left.",
            lambda s, sp: s.depth_to_point - s.shoulder_depth,
            lambda s, sp: s.point_height,
        ),
        follow(
            "Add the depth of the shoulder on both sides.",
            lambda s, sp: s.depth_to_point,
            lambda s, sp: s.shoulder_depth + s.point_height,
        ),
    ),
    assumptions=(_SHARP, "The face of the work is square to the axis."),
    sources=_DRAWING,
    limits=(
        Limit(
            "shoulder_depth",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.point_height,
            "with the corners at the face, the hole is as deep as the point is tall",
        ),
    ),
)

shoulder_depth = Relation(
    name="shoulder_depth",
    result="shoulder_depth",
    givens=("depth_to_point", "point_height"),
    says="the full diameter ends above the tip, by the height of the point",
    formula=lambda s, sp: s.depth_to_point - s.point_height,
    steps=(
        read_off(
            "Cut the hole open along its axis. The cone at the bottom is as tall as the point; with the part at full "
            "diameter it makes up the depth to the point.",
            lambda s, sp: s.shoulder_depth + s.point_height,
            lambda s, sp: s.depth_to_point,
        ),
        follow(
            "Take the height of the point away on both sides.",
            lambda s, sp: s.shoulder_depth,
            lambda s, sp: s.depth_to_point - s.point_height,
        ),
    ),
    assumptions=(_SHARP, "The face of the work is square to the axis."),
    sources=_DRAWING,
    limits=(
        Limit(
            "depth_to_point",
            lambda s, sp: s.point_height,
            lambda s, sp: sp.Integer(0),
            "where the hole is only as deep as the point is tall, nothing has the full diameter",
        ),
    ),
    conditions=(
        Condition(
            lambda s, sp: s.depth_to_point - s.point_height,
            "{depth_to_point} to the point is less than the point is tall, {point_height}: no part of the hole has the "
            "full diameter yet; drill deeper, or check which depth is meant",
            allows_zero=True,
        ),
    ),
)

tap_drill_depth = Relation(
    name="tap_drill_depth",
    result="depth_to_point",
    givens=("thread_depth", "thread_allowance", "point_height"),
    says="a blind hole to be tapped needs room for the thread, the tap's chamfer, the chips and the drill's point",
    formula=lambda s, sp: s.thread_depth + s.thread_allowance + s.point_height,
    steps=(
        let(
            "s",
            "The tap can cut only where the hole has its full diameter. So the shoulder lies below the last full "
            "thread, by the room that the tap's chamfer and the chips need.",
            lambda s, sp: s.thread_depth + s.thread_allowance,
        ),
        read_off(
            "Below the shoulder is the cone of the drill's point.",
            lambda s, sp: s.depth_to_point - s.local("s"),
            lambda s, sp: s.point_height,
        ),
        follow(
            "Put in the depth of the shoulder and add it on both sides.",
            lambda s, sp: s.depth_to_point,
            lambda s, sp: s.thread_depth + s.thread_allowance + s.point_height,
        ),
    ),
    assumptions=(_SHARP, "The point height is that of the tap drill, not of the tap."),
    sources=(
        *_DRAWING,
        "Common practice: 0.3 of the tap drill's diameter for a 118° point, 0.2 for 135° (exactly 0.3004 and 0.2071).",
        "The room below the thread depends on the tap: take it from its maker or from your instructor.",
    ),
    limits=(
        Limit(
            "thread_allowance",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.thread_depth + s.point_height,
            "without room below the thread, the shoulder is where the thread ends",
        ),
    ),
)

breakthrough = Relation(
    name="breakthrough",
    result="travel_through",
    givens=("sheet_thickness", "point_height"),
    says="a hole is through only when the corners leave the far face, one point height after the tip",
    formula=lambda s, sp: s.sheet_thickness + s.point_height,
    steps=(
        let(
            "x",
            "From the tip's first touch, the tip leaves the far face after the thickness of the work.",
            lambda s, sp: s.sheet_thickness,
        ),
        read_off(
            "The corners follow the tip, one point height behind it. They still have that far to go.",
            lambda s, sp: s.travel_through - s.local("x"),
            lambda s, sp: s.point_height,
        ),
        follow(
            "Put in the thickness and add it on both sides. It does not matter whether the work is thicker or thinner "
            "than the point is tall.",
            lambda s, sp: s.travel_through,
            lambda s, sp: s.sheet_thickness + s.point_height,
        ),
    ),
    assumptions=("Both faces are square to the axis.", "The corners just pass the far face; add a little to be sure."),
    sources=_DRAWING,
    limits=(
        Limit(
            "sheet_thickness",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.point_height,
            "through a foil only the point has to pass",
        ),
    ),
)


def _loose(cover: float) -> tuple[str, ...]:
    if cover >= 1:
        return ()
    return (
        (
            "under 1 the tip is through before the corners are in, so nothing guides the drill and it can grab: clamp "
            "the work on a backing piece, or use a flatter point"
        ),
    )


sheet_cover = Relation(
    name="sheet_cover",
    result="sheet_cover",
    givens=("sheet_thickness", "point_height"),
    says="whether the work is thicker than the point is tall: only then are the corners in before the tip is out",
    formula=lambda s, sp: s.sheet_thickness / s.point_height,
    steps=(
        read_off(
            "The cover is the thickness of the work over the height of the point.",
            lambda s, sp: s.sheet_cover * s.point_height,
            lambda s, sp: s.sheet_thickness,
        ),
        follow(
            "Divide by the height of the point.",
            lambda s, sp: s.sheet_cover,
            lambda s, sp: s.sheet_thickness / s.point_height,
        ),
    ),
    assumptions=("Both faces are square to the axis.",),
    sources=("A definition.", "Common practice: clamp thin work on a backing piece."),
    limits=(
        Limit("sheet_thickness", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "a foil covers nothing"),
    ),
    notes=_loose,
)

countersink_angle = Relation(
    name="countersink_angle",
    result="countersink_angle",
    givens=("point_angle",),
    says="a spot made with a drill has the angle of the drill's point",
    formula=lambda s, sp: s.point_angle,
    steps=(
        read_off(
            "The drill leaves the shape of its point in the work, seen from the side.",
            lambda s, sp: s.countersink_angle,
            lambda s, sp: s.point_angle,
        ),
    ),
    assumptions=("The spotting drill runs true and is not bell-mouthing the hole.",),
    sources=_DRAWING,
    limits=(Limit("point_angle", lambda s, sp: sp.pi / 2, lambda s, sp: sp.pi / 2, "a 90° point makes a 90° spot"),),
    stands_in=True,
)

spot_depth = Relation(
    name="spot_depth",
    result="spot_depth",
    givens=("mouth_diameter", "countersink_angle"),
    says="a cone of this angle with this mouth is so deep: half the mouth over the tangent of half the angle",
    formula=lambda s, sp: s.mouth_diameter / 2 / sp.tan(s.countersink_angle / 2),
    steps=(
        read_off(
            "Cut the cone open along its axis. Half of it is a right-angled triangle: half the mouth across, the depth "
            "along the axis, half the included angle at the tip.",
            lambda s, sp: sp.tan(s.countersink_angle / 2),
            lambda s, sp: s.mouth_diameter / 2 / s.spot_depth,
        ),
        follow(
            "Multiply by the depth and divide by the tangent.",
            lambda s, sp: s.spot_depth,
            lambda s, sp: s.mouth_diameter / 2 / sp.tan(s.countersink_angle / 2),
        ),
    ),
    assumptions=("The tool is sharp to its tip; with a flat end take `countersink_depth`.",),
    sources=(
        *_DRAWING,
        "Common practice, to hold against it: depth is half the mouth. That is right only at 90°.",
    ),
    limits=(
        Limit(
            "countersink_angle",
            lambda s, sp: sp.pi / 2,
            lambda s, sp: s.mouth_diameter / 2,
            "at 90° the cone is half as deep as it is wide",
        ),
        Limit("mouth_diameter", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "no mouth, no depth"),
    ),
)

countersink_depth = Relation(
    name="countersink_depth",
    result="countersink_depth",
    givens=("mouth_diameter", "flat_diameter", "countersink_angle"),
    says="a countersink that ends at a hole, or has a flat end, is less deep than a whole cone with the same mouth",
    formula=lambda s, sp: (s.mouth_diameter - s.flat_diameter) / 2 / sp.tan(s.countersink_angle / 2),
    steps=(
        let(
            "x",
            "Cut it open along the axis. On each side the slope goes in by half the difference of the two diameters.",
            lambda s, sp: (s.mouth_diameter - s.flat_diameter) / 2,
        ),
        read_off(
            "The slope stands at half the included angle to the axis.",
            lambda s, sp: s.countersink_depth * sp.tan(s.countersink_angle / 2),
            lambda s, sp: s.local("x"),
        ),
        follow(
            "Put in the difference and divide by the tangent.",
            lambda s, sp: s.countersink_depth,
            lambda s, sp: (s.mouth_diameter - s.flat_diameter) / 2 / sp.tan(s.countersink_angle / 2),
        ),
    ),
    assumptions=(
        (
            "In a drilled hole this is the travel of the tool after it first touches the rim, and the depth of the "
            "cone's foot below the face."
        ),
        "The hole, the cone and the tool have one axis.",
    ),
    sources=_DRAWING,
    limits=(
        Limit(
            "flat_diameter",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.mouth_diameter / 2 / sp.tan(s.countersink_angle / 2),
            "without a hole or a flat it is a whole cone",
        ),
        Limit(
            "flat_diameter",
            lambda s, sp: s.mouth_diameter,
            lambda s, sp: sp.Integer(0),
            "a mouth no wider than the hole needs no depth",
            False,
        ),
    ),
    conditions=(
        Condition(
            lambda s, sp: s.mouth_diameter - s.flat_diameter,
            "the mouth, {mouth_diameter}, is narrower than the foot, {flat_diameter}; the mouth is the wider one",
            allows_zero=True,
        ),
    ),
)

CHAPTER: tuple[Relation, ...] = (
    full_diameter_depth,
    shoulder_depth,
    tap_drill_depth,
    breakthrough,
    sheet_cover,
    countersink_angle,
    spot_depth,
    countersink_depth,
    *drilling.RELATIONS,
    *hole_size.RELATIONS,
)
