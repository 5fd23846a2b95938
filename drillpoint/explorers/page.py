"""An explorer as one page that opens from a folder or a stick, without a network, a server or Python."""

from __future__ import annotations

import base64
import hashlib
import json

from markupsafe import Markup

from drillpoint.drawing.draw import finished
from drillpoint.drawing.showing import read_units
from drillpoint.explorers.answering import answer, drawings
from drillpoint.explorers.find import find
from drillpoint.explorers.script import page_script, style
from drillpoint.pages import template


def standalone_page(name: str, units: str = "mm", **start: float) -> str:
    """The whole page as HTML text: write it to a file and open it in any browser.

    name: an explorer, such as "lips". units: "mm" or "inch". start: where sliders stand at first.
    The page's own policy allows nothing from outside, so it shows the same in a room without a network.
    Raises LearnerError for an unknown explorer, slider or value.
    """
    explorer = find(name)
    state = explorer.state(**start)
    data = explorer.starting_at(state).as_data()
    code = page_script(name)
    digest = base64.b64encode(hashlib.sha256(code.encode("utf-8")).digest()).decode("ascii")
    answers = answer(explorer, {"state": state}).get("answers", {}) if explorer.computed else {}
    # Inside a script element only "</" could end it early.
    config = json.dumps({**data, "units": read_units(units), "first": answers}, ensure_ascii=False)
    config = config.replace("</", "<\\/")
    drawn = drawings(explorer, state, explorer.scenes)
    pictures = [finished(one, read_units(units)) for one in drawn.values()]
    return template("drillpoint.explorers", "pages", "page.html.j2").render(
        title=explorer.title,
        digest=digest,
        style=Markup(style()),  # noqa: S704  (our own file)
        script=Markup(code),  # noqa: S704  (our own files)
        config=Markup(config),  # noqa: S704  (JSON, with the only dangerous sequence taken apart)
        pictures=[Markup(still.svg) for still in pictures],  # noqa: S704  (escaped by its writer)
    )
