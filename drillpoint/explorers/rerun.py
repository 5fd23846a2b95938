"""Widgets whose cell runs again: which cell that is, and how the widget it made before is taken away."""

from __future__ import annotations

import anywidget


class CellWidget(anywidget.AnyWidget):
    """A widget that leaves nothing behind."""

    def close(self) -> None:
        """Take the widget away, and with it its layout, which the notebook would keep for ever."""
        layout = self.layout
        super().close()
        layout.close()


def running_cell() -> str:
    """The notebook cell that is running, as far as the front end tells."""
    try:
        from IPython.core.getipython import get_ipython

        parent = get_ipython().get_parent()  # type: ignore[union-attr]
        return str(parent.get("metadata", {}).get("cellId", ""))
    except (ImportError, AttributeError):
        return ""
