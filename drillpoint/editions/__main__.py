"""Write every edition: `python -m drillpoint.editions`."""

from __future__ import annotations

import sys
from collections.abc import Mapping
from pathlib import Path

from drillpoint.editions.all import documents, editions
from drillpoint.relation import calling

PACKAGE = Path(__file__).parent.parent
GENERATED = PACKAGE / "generated"
DOCS = PACKAGE.parent / "docs"


def main() -> int:
    """Write each edition into drillpoint/generated/, then each document into docs/, and say so."""
    _write(GENERATED, editions())
    # The documents work examples out with the numbers just written.
    calling.numbers.cache_clear()
    sys.modules.pop("drillpoint.generated.numbers", None)
    _write(DOCS, documents())
    return 0


def _write(folder: Path, files: Mapping[str, str]) -> None:
    for name, text in files.items():
        path = folder / name
        path.parent.mkdir(exist_ok=True)
        path.write_text(text, encoding="utf-8", newline="\n")
        print(f"wrote {path.relative_to(PACKAGE.parent).as_posix()}, {len(text)} characters")


if __name__ == "__main__":
    raise SystemExit(main())
