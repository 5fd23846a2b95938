"""Reading the lock: exact versions and hashes, in two sections, in the format pip reads.

The file is one list for people and for pip (`pip install -r requirements.lock` installs everything). Set-up reads it by
section: `open` is what the workbook needs, `test` is what the tests need on top.
"""

import hashlib
import re
from dataclasses import dataclass
from pathlib import Path

from drillpoint.setup.trouble import SetupError

SECTIONS = ("open", "test")
_HEADING = re.compile(r"^# section: (\w+)$")
_PIN = re.compile(r"^(?P<name>[A-Za-z0-9._-]+)==(?P<version>[^\s;\\]+)(?:\s*;\s*(?P<marker>[^\\]+?))?\s*\\?$")


def heading(section: str) -> str:
    """The line that begins a section of the lock."""
    return f"# section: {section}"


@dataclass(frozen=True)
class Pin:
    """One locked package."""

    name: str
    version: str
    marker: str
    """The condition under which it is needed, in the form packaging tools use; empty for always."""
    text: str
    """Its lines in the lock, hashes included."""


@dataclass(frozen=True)
class Section:
    """One section of the lock."""

    name: str
    pins: tuple[Pin, ...]

    @property
    def text(self) -> str:
        """A requirements file of this section alone."""
        return "".join(pin.text for pin in self.pins)

    @property
    def digest(self) -> str:
        """Changes whenever anything in the section does."""
        return hashlib.sha256(self.text.encode()).hexdigest()


def read(lock: Path) -> dict[str, Section]:
    """Read the lock, section by section."""
    try:
        text = lock.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError) as error:
        raise SetupError(f"{lock} cannot be read: fetch the whole project again.") from error
    chunks: dict[str, list[str]] = {}
    current: list[str] | None = None
    for line in text.splitlines():
        if found := _HEADING.match(line):
            current = chunks.setdefault(found[1], [])
        elif line.strip() and not line.startswith("#") and current is not None:
            current.append(line)
    if set(chunks) != set(SECTIONS) or not all(chunks.values()):
        raise SetupError(f"{lock} is damaged: fetch the whole project again.")
    return {name: Section(name, parse_pins(chunks[name])) for name in SECTIONS}


def parse_pins(lines: list[str]) -> tuple[Pin, ...]:
    """Read pinned packages, each a first line followed by its indented hashes."""
    blocks: list[list[str]] = []
    for line in lines:
        if line[:1].isspace() and blocks:
            blocks[-1].append(line)
        else:
            blocks.append([line])
    pins = []
    for block in blocks:
        found = _PIN.match(block[0])
        if found is None:
            raise SetupError(f"The lock holds {block[0]!r}, which is no exact version: fetch the whole project again.")
        text = "".join(f"{line}\n" for line in block)
        pins.append(Pin(found["name"], found["version"], found["marker"] or "", text))
    return tuple(pins)
