"""Speed, feed rate and time: part of the chapter on the hole."""

from drillpoint.relation import Limit, Relation, follow, let, read_off

spindle_speed = Relation(
    name="spindle_speed",
    result="spindle_speed",
    givens=("cutting_speed", "diameter"),
    says="the spindle turns as often as the corner's way round fits into the cutting speed",
    formula=lambda s, sp: 1000 * s.cutting_speed / (sp.pi * s.diameter),
    steps=(
        let(
            "c", "In one turn the outer corner goes once round: π times the diameter.", lambda s, sp: sp.pi * s.diameter
        ),
        read_off(
            "In a minute it goes round n times. That way, in millimetres, is a thousand times the cutting speed, which "
            "is in metres.",
            lambda s, sp: s.spindle_speed * s.local("c"),
            lambda s, sp: 1000 * s.cutting_speed,
        ),
        follow(
            "Put in the way round and divide by it.",
            lambda s, sp: s.spindle_speed,
            lambda s, sp: 1000 * s.cutting_speed / (sp.pi * s.diameter),
        ),
    ),
    assumptions=(
        "The cutting speed is that of the outer corner, the fastest place of the lip.",
        "A machine with fixed steps is set to the next lower one.",
    ),
    sources=(
        "Follows from what speed is.",
        "Cutting speeds themselves come from handbooks and drill makers.",
    ),
    limits=(Limit("cutting_speed", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "no speed, no turning"),),
    stands_in=True,
)

spindle_speed_by_rule = Relation(
    name="spindle_speed_by_rule",
    result="spindle_speed",
    givens=("speed_constant", "cutting_speed", "diameter"),
    says="the shop's rule: a handy number times the cutting speed over the diameter",
    formula=lambda s, sp: s.speed_constant * s.cutting_speed / s.diameter,
    steps=(
        read_off(
            "The rule puts one handy number in the place of 1000/π.",
            lambda s, sp: s.spindle_speed * s.diameter,
            lambda s, sp: s.speed_constant * s.cutting_speed,
        ),
        follow(
            "Divide by the diameter.",
            lambda s, sp: s.spindle_speed,
            lambda s, sp: s.speed_constant * s.cutting_speed / s.diameter,
        ),
    ),
    assumptions=("The rule is as good as its number; `speed_rule_ratio` says how good.",),
    sources=(
        "Common practice: 318 or 320 with m/min and mm. Exactly it is 1000/π = 318.31.",
        (
            "Common practice in inches: 4 × ft/min over inches, or 3.82 × ft/min over inches. In m/min and mm these "
            "are 333.33 and 318.33 (25.4/0.3048 = 83.33 times the inch number)."
        ),
    ),
    limits=(
        Limit(
            "speed_constant",
            lambda s, sp: 1000 / sp.pi,
            lambda s, sp: 1000 * s.cutting_speed / (sp.pi * s.diameter),
            "with 1000/π for its number, the rule is exact",
        ),
    ),
)

speed_rule_ratio = Relation(
    name="speed_rule_ratio",
    result="speed_rule_ratio",
    givens=("speed_constant",),
    says="how many times the exact spindle speed a shop's rule gives",
    formula=lambda s, sp: sp.pi * s.speed_constant / 1000,
    steps=(
        let(
            "n_1",
            "Exactly, a cutting speed of 1 m/min on a diameter of 1 mm takes so many turns a minute.",
            lambda s, sp: 1000 / sp.pi,
        ),
        read_off(
            "The rule gives its own number instead.",
            lambda s, sp: s.speed_rule_ratio * s.local("n_1"),
            lambda s, sp: s.speed_constant,
        ),
        follow(
            "Put in the exact one and divide by it. Size and speed have dropped out.",
            lambda s, sp: s.speed_rule_ratio,
            lambda s, sp: sp.pi * s.speed_constant / 1000,
        ),
    ),
    assumptions=("The rule has the form number × speed / diameter, with m/min and mm.",),
    sources=(
        "Follows from the exact relation.",
        (
            "Common practice: 320 turns a drill 0.53 % too fast, 318 0.10 % too slow, and the inch rule with "
            "4 turns it 4.72 % too fast."
        ),
    ),
    limits=(
        Limit("speed_constant", lambda s, sp: 1000 / sp.pi, lambda s, sp: sp.Integer(1), "1000/π is the exact number"),
    ),
)

feed_rate = Relation(
    name="feed_rate",
    result="feed_rate",
    givens=("feed", "spindle_speed"),
    says="in a minute the drill goes forward by the feed, as often as it turns",
    formula=lambda s, sp: s.feed * s.spindle_speed,
    steps=(
        read_off(
            "The way of one turn is the way of one minute, shared among its turns.",
            lambda s, sp: s.feed_rate / s.spindle_speed,
            lambda s, sp: s.feed,
        ),
        follow(
            "Multiply by the turns in a minute.",
            lambda s, sp: s.feed_rate,
            lambda s, sp: s.feed * s.spindle_speed,
        ),
    ),
    assumptions=("The feed is steady.",),
    sources=("Follows from what feed is.",),
    limits=(Limit("feed", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "no feed, no way forward"),),
)

drilling_time = Relation(
    name="drilling_time",
    result="drilling_time",
    givens=("shoulder_depth", "point_height", "approach", "overrun", "feed", "spindle_speed"),
    defaults={"approach": 0.0, "overrun": 0.0},
    says="the whole way at drilling feed, the point and the ways before and after included, over the feed rate",
    formula=lambda s, sp: (s.shoulder_depth + s.point_height + s.approach + s.overrun) / (s.feed * s.spindle_speed),
    steps=(
        let(
            "w",
            "The tip starts a little above the work, and stops when the corners have reached the full depth and the "
            "overrun. Add up the ways. The point counts: the tip is that far ahead of the corners.",
            lambda s, sp: s.approach + s.shoulder_depth + s.point_height + s.overrun,
        ),
        let("v_f", "In a minute the drill goes forward by feed times turns.", lambda s, sp: s.feed * s.spindle_speed),
        read_off(
            "Way is rate times time.",
            lambda s, sp: s.local("v_f") * s.drilling_time,
            lambda s, sp: s.local("w"),
        ),
        follow(
            "Put in the way and the rate, and divide by the rate.",
            lambda s, sp: s.drilling_time,
            lambda s, sp: (s.shoulder_depth + s.point_height + s.approach + s.overrun) / (s.feed * s.spindle_speed),
        ),
    ),
    assumptions=(
        "One feed from start to end, without lifting to clear chips.",
        "For a through hole the depth is the thickness of the work.",
        "Setting up, retracting and changing drills are not in it.",
    ),
    sources=(
        "Follows from what feed and speed are.",
        "Common practice: approach and overrun of 1 mm to 3 mm; put 0 for either where there is none.",
    ),
    limits=(
        Limit(
            "shoulder_depth",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: (s.point_height + s.approach + s.overrun) / (s.feed * s.spindle_speed),
            "even without any depth, the point and the ways before and after take their time",
        ),
    ),
)

RELATIONS: tuple[Relation, ...] = (spindle_speed, spindle_speed_by_rule, speed_rule_ratio, feed_rate, drilling_time)
