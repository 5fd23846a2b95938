"""The solid as one page that opens from a folder or a stick, without a network, a server or Python."""

from __future__ import annotations

import base64
import hashlib
import json
from collections.abc import Sequence
from typing import Any

from markupsafe import Markup

from drillpoint.drawing.showing import read_units
from drillpoint.explorers.solid.packing import packed
from drillpoint.explorers.solid.script import page_script, style
from drillpoint.explorers.solid.subject import as_data, pictures, subjects
from drillpoint.pages import template


def solid_page(
    point: Any = None,
    *,
    beside: Any = None,
    names: Sequence[str] = ("first", "second"),
    view: str = "above",
    units: str = "mm",
    labels: bool = False,
    **givens: Any,
) -> str:
    """The whole page as HTML text: write it to a file and open it in any browser.

    What is given is that of `look`, and so are the errors. The page's own policy allows nothing from outside.
    """
    written_in = read_units(units)
    looked_at = subjects(point, beside, names, written_in, givens)
    stills = pictures(looked_at, view, written_in, labels=labels)
    data = as_data(looked_at, view, written_in, stills, labels=labels)
    data["packs"] = [base64.b64encode(packed(one.solid)).decode("ascii") for one in looked_at]
    # No tag that a name may hold must be seen by the page.
    config = json.dumps(data, ensure_ascii=False).replace("<", "\\u003c")
    code = page_script()
    return template("drillpoint.explorers.solid", "pages", "solid.html.j2").render(
        title=data["title"],
        digest=base64.b64encode(hashlib.sha256(code.encode("utf-8")).digest()).decode("ascii"),
        style=Markup(style()),  # noqa: S704  (our own file)
        script=Markup(code),  # noqa: S704  (our own files)
        config=Markup(config),  # noqa: S704  (JSON, without any "<")
        pictures=[Markup(still.html) for still in stills],  # noqa: S704  (escaped there)
    )
