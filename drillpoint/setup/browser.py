"""Finding a browser that can show the workbook."""

import contextlib
import webbrowser
from pathlib import PurePath

_TEXT_ONLY = {"www-browser", "links", "elinks", "lynx", "w3m"}


def graphical() -> webbrowser.BaseBrowser | None:
    """The user's browser; None when there is none, or only one that shows text in the terminal."""
    try:
        found = webbrowser.get()
    except webbrowser.Error:
        return None
    return None if PurePath(getattr(found, "name", "") or "").stem in _TEXT_ONLY else found


def show(address: str) -> bool:
    """Open the address; False when no browser could be started."""
    found = graphical()
    if found is not None:
        with contextlib.suppress(webbrowser.Error, OSError):
            return found.open(address)
    return False
