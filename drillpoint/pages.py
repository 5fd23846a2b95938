"""Pages that stand alone: their templates, and the files that a browser opens."""

from __future__ import annotations

from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from jinja2 import Template


@cache
def template(package: str, folder: str, name: str, **layout: bool) -> Template:
    """The template of this name in a folder of a package. Whatever is put into it is text, never markup.

    layout: which line ends and blanks around blocks are left out, `trim_blocks` and `lstrip_blocks`.
    """
    from jinja2 import Environment, PackageLoader, StrictUndefined

    loader = PackageLoader(package, folder)
    return Environment(loader=loader, autoescape=True, undefined=StrictUndefined, **layout).get_template(name)  # type: ignore[arg-type]


def write_page(path: str | Path, page: str) -> Path:
    """Write a page to an .html file, with that ending added where it is missing, and return the path."""
    target = Path(path)
    if target.suffix.lower() not in (".html", ".htm"):
        target = target.with_name(target.name + ".html")
    target.write_text(page, encoding="utf-8", newline="\n")
    return target
