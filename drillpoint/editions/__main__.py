"""Write every edition: `python -m drillpoint.editions`."""

from __future__ import annotations

from pathlib import Path

from drillpoint.editions.all import editions

FOLDER = Path(__file__).parent.parent / "generated"


def main() -> int:
    """Write each edition into drillpoint/generated/ and say so."""
    for name, text in editions().items():
        (FOLDER / name).write_text(text, encoding="utf-8", newline="\n")
        print(f"wrote {name}, {len(text)} characters")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
