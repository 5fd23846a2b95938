"""Write every edition: `python -m drillpoint.editions`."""

from __future__ import annotations

from pathlib import Path

from drillpoint.editions.all import documents, editions

PACKAGE = Path(__file__).parent.parent
GENERATED = PACKAGE / "generated"
DOCS = PACKAGE.parent / "docs"


def main() -> int:
    """Write each edition into drillpoint/generated/ and each document into docs/, and say so."""
    files = {GENERATED / name: text for name, text in editions().items()}
    files |= {DOCS / name: text for name, text in documents().items()}
    for path, text in files.items():
        path.parent.mkdir(exist_ok=True)
        path.write_text(text, encoding="utf-8", newline="\n")
        print(f"wrote {path.relative_to(PACKAGE.parent).as_posix()}, {len(text)} characters")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
