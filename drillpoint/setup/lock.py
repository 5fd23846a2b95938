"""Make the lock anew: `python -m drillpoint.setup.lock`, for contributors, with `uv` installed.

It resolves pyproject.toml for every supported Python and system at once, then asks for each of them whether every
package has a ready-made wheel, since set-up never builds one.
"""

import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

from drillpoint.setup import locked, places
from drillpoint.setup.console import complain, say
from drillpoint.setup.locked import Pin
from drillpoint.setup.trouble import SetupError

PYTHONS = ("3.11", "3.12", "3.13", "3.14")
SYSTEMS = ("windows", "x86_64-apple-darwin", "aarch64-apple-darwin", "x86_64-manylinux_2_28", "aarch64-manylinux_2_28")
# Newer ones lack a wheel for a system we support: the first has none for Intel Macs.
_HELD_BACK = ("argon2-cffi-bindings<26",)
_PREFACE = """\
# Exact versions for every supported Python and system, with hashes. Do not edit: change pyproject.toml, then run
#     python -m drillpoint.setup.lock
# The workbook needs the first section; its tests need the second on top.
"""


def main(arguments: list[str] | None = None) -> int:
    """Write the lock; with `--upgrade`, take the newest versions instead of keeping what is locked."""
    upgrade = "--upgrade" in (sys.argv[1:] if arguments is None else arguments)
    here = places.find()
    try:
        with tempfile.TemporaryDirectory() as scratch:
            write(here.project, Path(scratch), upgrade)
        missing = without_wheels(here.lock)
    except SetupError as error:
        complain(str(error))
        return 1
    for line in missing:
        complain(line)
    return 1 if missing else 0


def write(project: Path, scratch: Path, upgrade: bool) -> None:
    """Resolve both sections, the second over the first, so that they agree on every version."""
    lock = project / places.LOCK_NAME
    keep = scratch / "keep.txt"
    present = "" if upgrade or not lock.exists() else lock.read_text(encoding="utf-8")
    keep.write_text("\n".join((*_HELD_BACK, present)), encoding="utf-8")
    everything = _resolve(project, scratch / "all.txt", keep, "--extra", "test")
    needed = _resolve(project, scratch / "open.txt", scratch / "all.txt")
    sections = {"open": needed, "test": on_top(needed, everything)}
    body = "".join(
        f"\n{locked.heading(name)}\n" + "".join(pin.text for pin in sections[name]) for name in locked.SECTIONS
    )
    lock.write_text(_PREFACE + body, encoding="utf-8", newline="\n")
    say(f"{lock.name}: " + ", ".join(f"{len(pins)} for {name}" for name, pins in sections.items()))


def on_top(needed: tuple[Pin, ...], everything: tuple[Pin, ...]) -> tuple[Pin, ...]:
    """What `everything` has beyond `needed`."""
    have = {pin.text for pin in needed}
    return tuple(pin for pin in everything if pin.text not in have)


def without_wheels(lock: Path) -> list[str]:
    """Say for which supported Pythons and systems a locked package has no wheel."""
    missing = []
    for system in SYSTEMS:
        for python in PYTHONS:
            with tempfile.TemporaryDirectory() as target:
                run = _uv(
                    *("pip", "install", "--dry-run", "--require-hashes", "--only-binary", ":all:", "--target", target),
                    *("--python-platform", system, "--python-version", python, "-r", str(lock)),
                )
            if run.returncode:
                missing.append(f"{system}, Python {python}: {run.stderr.strip()}")
            say(f"{system}, Python {python}: {'some wheels missing' if run.returncode else 'every wheel there'}")
    return missing


def _resolve(project: Path, output: Path, keep: Path, *options: str) -> tuple[Pin, ...]:
    run = _uv(
        *("pip", "compile", str(project / "pyproject.toml"), *options),
        *("--universal", "--python-version", PYTHONS[0], "--fork-strategy", "fewest", "--generate-hashes"),
        *("--no-header", "--no-annotate", "--constraint", str(keep), "--output-file", str(output)),
    )
    if run.returncode:
        raise SetupError(f"The versions could not be resolved: {run.stderr.strip()}")
    return locked.parse_pins(output.read_text(encoding="utf-8").splitlines())


def _uv(*arguments: str) -> subprocess.CompletedProcess[str]:
    program = shutil.which("uv", path=str(Path(sys.executable).parent)) or shutil.which("uv")
    if program is None:
        raise SetupError("Making the lock needs uv: install it with `pip install uv` and start again.")
    return subprocess.run([program, *arguments], capture_output=True, text=True, encoding="utf-8", check=False)  # noqa: S603


if __name__ == "__main__":
    sys.exit(main())
