import re
import subprocess
import sys
import xml.etree.ElementTree as ET

import pytest

from drillpoint.drawing import chart, chart_names
from drillpoint.drawing.charts.ready import READY
from drillpoint.errors import LearnerError, MissingGiven, OutOfRange, UnknownGiven
from drillpoint.quantities import QUANTITIES
from drillpoint.relations import (
    BOOK,
    chisel_edge_angle,
    chisel_edge_length,
    lip_length,
    thrust_factor,
    web_after_shortening,
    working_relief,
)

NAMESPACE = "{http://www.w3.org/2000/svg}"
FAMILY = {"against": "lip_relief", "web_ratio": 0.15, "point_angle": [90, 118, 135]}


def test_each_curve_is_the_relation():
    drawn = chart("lip_length", against="web", diameter=10, chisel_edge_angle=125, point_angle=[90, 118])
    for curve, angle in zip(drawn.curves, (90, 118), strict=True):
        for x, y in list(zip(curve.x, curve.y, strict=True))[::40]:
            # DERIVED: by the relation itself
            assert y == float(lip_length(diameter=10, chisel_edge_angle=125, point_angle=angle, web=x))


def test_the_words_tell_where_a_limit_is_passed():
    drawn = chart("chisel_edge_angle", **FAMILY)
    # DERIVED: solved the other way round
    relief = chisel_edge_angle.solve("lip_relief", chisel_edge_angle=120, point_angle=118, web_ratio=0.15)
    assert (
        "Point angle 118°: from 90° at 5.2° to 120.9° at 24°; nothing is possible below 5.2°; "
        f"passes usual 120° at {relief:.1f}°." in drawn.alt
    )
    assert "Point angle 90°: from 90° at 8.5° to 106.6° at 24°; nothing is possible below 8.5°." in drawn.alt
    assert drawn.alt.endswith("Hatched: usual, 120° to 135°.")


def test_a_relief_that_the_feed_uses_up_passes_zero():
    drill = {"diameter": 10, "web": 1.5, "point_angle": 118, "lip_relief": 4, "feed": 2.5}
    drawn = chart("working_relief", against="radius", **drill)
    assert drawn.curves[0].y[-1] < 0 < drawn.curves[0].y[0]
    (place,) = drawn.curves[0].crossings(0)
    assert float(working_relief(radius=place, **drill)) == pytest.approx(0, abs=1e-9)  # DERIVED
    assert f"passes zero at {QUANTITIES['radius'].show(place, 2)}" in drawn.alt


def test_several_results_share_an_axis_and_take_what_they_need():
    drawn = chart("relief_along_lip", feed=0.3)
    at_rest, at_work = drawn.curves
    assert at_rest.label == "relief at a radius"
    assert all(below < above for below, above in zip(at_work.y[1:], at_rest.y[1:], strict=True))
    assert (at_rest.x[0], at_rest.x[-1]) == pytest.approx((0.75, 5), abs=1e-9)  # DERIVED: half the web, half the drill
    assert "feed 0.3 mm/rev" in drawn.alt


def test_a_given_may_go_through_another_relation():
    (curve,) = chart("thrust_factor", against="web", diameter=10, chisel_edge_angle=125).curves
    length = float(chisel_edge_length(web=curve.x[7], chisel_edge_angle=125))
    assert curve.y[7] == float(thrust_factor(chisel_edge_length=length, diameter=10))  # DERIVED
    both = chart("thrust_factor", against="web_ratio", diameter=10, chisel_edge_angle=125, between=(0.1, 0.2))
    assert "0.1 to 0.2" in both.alt


def test_the_shortened_drill_has_the_chisel_edge_of_its_thicker_web():
    web, chisel = chart("shortening").curves
    now = float(web_after_shortening(web=1.5, web_taper=0.014, length_removed=web.x[50]))
    assert web.y[50] == now  # DERIVED
    assert chisel.y[50] == float(chisel_edge_length(web=now, chisel_edge_angle=QUANTITIES["chisel_edge_angle"].typical))


@pytest.mark.parametrize("name", chart_names())
def test_every_ready_made_chart_draws_and_describes_itself(name):
    assert name not in BOOK
    assert set(READY[name].results) <= set(BOOK)
    drawn = chart(name)
    root = ET.fromstring(drawn.svg)  # noqa: S314  (our own text)
    assert root.get("role") == "img"
    assert root.get("aria-label") == drawn.alt == root.findtext(f"{NAMESPACE}desc")
    assert root.findtext(f"{NAMESPACE}title")
    assert all(str(curve.label) in drawn.alt or curve.label.capitalize() in drawn.alt for curve in drawn.curves)


def test_a_curve_that_runs_off_is_cut_and_that_is_said():
    drawn = chart("sheet_cover", against="point_height", sheet_thickness=6)
    assert max(drawn.curves[0].y) > 1000  # the share of next to no point height
    # DERIVED: the curve is cut half of what lies between its inner ends above the upper one; those, a twentieth inside
    # its ends, are 6 over 0.3 and 6 over 5.7, so that is at 20 + (20 - 1.05) / 2, to the places worked out
    reaches = re.search(r"The chart reaches from 1 to ([\d.]+)\.", drawn.alt)
    assert float(reaches[1]) == pytest.approx(29.5, abs=0.5)
    assert "Nothing is possible" not in drawn.alt
    assert "The chart reaches" not in chart("rake_along_lip").alt


def test_inches_are_written_and_nothing_else_changes():
    metric, inch = chart("lip_length_by_web"), chart("lip_length_by_web", units="inch")
    assert [c.y for c in metric.curves] == [c.y for c in inch.curves]
    assert "0.5 mm to 3.5 mm" in metric.alt
    assert "0.0197 in to 0.1378 in" in inch.alt  # DERIVED: over 25.4
    assert " mm" not in inch.alt


def test_the_usual_drill_makes_room_for_what_is_given():
    assert "web ratio 0.2" in chart("relief_along_lip", web_ratio=0.2).alt
    assert "point angle 135°" in chart("rake_along_lip", point_angle=135).alt


def test_a_family_without_values_takes_usual_ones():
    labels = [
        c.label
        for c in chart("lip_length", against="web", family="point_angle", diameter=10, chisel_edge_angle=125).curves
    ]
    assert labels == ["60°", "118°", "150°"]


def test_bands_from_elsewhere_are_hatched_and_told():
    drawn = chart("lip_relief", against="axial_relief", point_angle=118, web_ratio=0.15, bands=[("shop rule", 8, 12)])
    assert "Hatched: shop rule, 8° to 12°." in drawn.alt
    assert "passes shop rule 8° at" in drawn.alt


@pytest.mark.parametrize(
    ("call", "error", "says"),
    [
        (("lip_lenth", {"against": "web"}), LearnerError, "did you mean 'lip_length'"),
        (("relief_along_lips", {}), LearnerError, "did you mean 'relief_along_lip'"),
        (("lip_length", {}), MissingGiven, "needs against=..., the given that goes to the right"),
        (("lip_length", {"against": "wed"}), UnknownGiven, "did you mean 'web'"),
        (("lip_length", {"against": "feed", "diameter": 10}), UnknownGiven, "feed"),
        (("point_height", {"against": "diameter"}), MissingGiven, "point_height needs point_angle"),
        (("point_height", {"against": "diameter", "point_angle": 200}), OutOfRange, "200° is outside 60° to 179°"),
        (("point_height", {"against": "diameter", "diameter": 5, "point_angle": 118}), LearnerError, "leave it out"),
        (("point_height", {"against": "diameter", "point_angle": 118, "between": (5, 1)}), LearnerError, "backwards"),
        (("point_height", {"against": "diameter", "point_angle": 118, "between": (5, 999)}), LearnerError, "can be"),
        (("point_height", {"against": "diameter", "point_angle": 118, "between": 5}), LearnerError, "no range"),
        (("point_height", {"against": "diameter", "point_angle": list(range(90, 98))}), LearnerError, "8 values"),
        (("lip_length", {"against": "web", "diameter": [5, 6], "point_angle": [90, 118]}), LearnerError, "one family"),
        ((["lip_length", "normal_rake"], {"against": "web"}), LearnerError, "do not share an axis"),
        ((["lip_inclination", "normal_rake"], {"against": "radius", "family": "point_angle"}), LearnerError, "many"),
        (([], {"against": "web"}), LearnerError, "needs a result"),
        (("relief_along_lip", {"stock": 3}), UnknownGiven, "goes by stock"),
        (("shortening", {"bands": [("x", 2, 1)]}), LearnerError, "runs backwards"),
        (("shortening", {"bands": [3]}), LearnerError, "is no band"),
        (("shortening", {"units": "feet"}), LearnerError, "units='inch'"),
    ],
)  # fmt: skip
def test_what_cannot_be_charted_is_refused_with_a_way_out(call, error, says):
    result, keywords = call
    with pytest.raises(error, match=says):
        chart(result, **keywords)


def test_it_shows_saves_and_reads_like_any_picture(tmp_path):
    drawn = chart("shortening")
    bundle = drawn._repr_mimebundle_()
    assert bundle["text/plain"] == drawn.alt
    assert re.search(r'<img src="data:image/svg\+xml;base64,[^"]+" alt="Chart of web', bundle["text/html"])
    assert ET.parse(drawn.save(tmp_path / "shortening")).getroot().tag == f"{NAMESPACE}svg"  # noqa: S314
    assert len(drawn.svg) < 100_000


def test_the_drawing_library_loads_with_the_first_chart_and_never_its_global_half():
    code = (
        "import sys; from drillpoint.drawing import chart; assert 'matplotlib' not in sys.modules;"
        "chart('shortening'); assert 'matplotlib' in sys.modules; assert 'matplotlib.pyplot' not in sys.modules"
    )
    subprocess.run([sys.executable, "-c", code], check=True)
