"""Running pip: its progress in plain words, and its failures in one sentence."""

import re
import subprocess
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path
from typing import TextIO

from drillpoint.setup.console import child_environment
from drillpoint.setup.trouble import SetupError

_COLLECTING = re.compile(r"^\s*(?:Collecting|Requirement already satisfied:) ([A-Za-z0-9._-]+)")
_INSTALLING = "Installing collected packages"


@dataclass(frozen=True)
class Cause:
    """One thing that stops pip: how its own words show it, and what to tell the user."""

    signs: str
    sentence: str


# The first cause whose signs are found wins, so the causes stand before the messages that follow from them.
_CAUSES = (
    Cause(
        r"No space left on device|Errno 28|Errno 122|WinError 112|not enough space on the disk",
        "The disk is full: free about 1 GB where {folder} lies and start again.",
    ),
    Cause(
        r"Long Path support|File name too long|WinError 206",
        "The path of {folder} is too long for this system: move the drillpoint folder to a shorter path and start "
        "again.",
    ),
    Cause(
        r"WinError 1260|WinError 4551|blocked by group policy",
        "This computer's rules do not let programs start from {folder}: ask whoever looks after it to allow that.",
    ),
    Cause(
        r"Permission denied|Errno 13\b|WinError 5\b|WinError 32|Access is denied|Read-only file system",
        "Not allowed to write in {folder}: close other drillpoint windows, or copy the drillpoint folder to a place of "
        "your own and start again there.",
    ),
    Cause(
        r"DO NOT MATCH THE HASHES",
        "A package arrived damaged or altered and was not used: start again, and if it happens again ask whoever looks "
        "after the network.",
    ),
    Cause(
        r"CERTIFICATE_VERIFY_FAILED|SSLCertVerificationError|certificate verify failed",
        "The package index was reached, but its certificate is not trusted here, as happens behind some school "
        "networks: ask whoever looks after the network, or start again on another one.",
    ),
    Cause(
        r"ProxyError|Tunnel connection failed|407 Proxy|Cannot connect to proxy",
        "The network's proxy lets nothing through: ask whoever looks after the network for the proxy's address, set it "
        "as HTTPS_PROXY and start again.",
    ),
    Cause(
        r"NewConnectionError|Failed to establish|Connection ?(?:refused|reset|aborted|broken)|ConnectionResetError"
        r"|ConnectTimeout|ReadTimeout|timed out|Name or service not known|NameResolutionError|getaddrinfo failed"
        r"|Temporary failure in name resolution|Network is unreachable|IncompleteRead|Could not fetch URL|SSLError",
        "The package index cannot be reached: connect this computer to the internet and start again (only setting up "
        "needs it).",
    ),
    Cause(
        r"No matching distribution|Could not find a version|is not a supported wheel",
        "The package index has no ready-made package for this Python and system: use a 64-bit Python 3.11 to 3.14 and "
        "start again.",
    ),
)
_UNKNOWN = "Installing failed: start again, and if it fails again show the log to somebody who knows Python."


def install(python: Path, requirements: Path, log: Path, report: Callable[[int, str], None]) -> None:
    """Install what `requirements` pins into the environment of `python`, exactly, and only ready-made packages.

    `report` hears how many packages have been looked at and the name of the latest, then (with an empty name) that
    all are there and are being put in place. Pip's own words go to `log`.
    """
    command = [
        *(str(python), "-m", "pip", "--disable-pip-version-check", "--no-input"),
        *("install", "--require-hashes", "--no-deps", "--only-binary=:all:", "--progress-bar=off"),
        *("--no-warn-script-location", "--requirement", str(requirements)),
    ]
    try:
        process = subprocess.Popen(  # noqa: S603
            command,
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            env=child_environment(),
            text=True,
            encoding="utf-8",
            errors="replace",
        )
    except OSError as error:
        raise SetupError(f"The new environment's Python does not start ({error.strerror}): start again.") from error
    with process, log.open("w", encoding="utf-8") as record:
        words = _listen(process.stdout or (), record, report)
    if process.returncode:
        raise SetupError(f"{meaning(words, requirements.parent)} Details: {log}")


def meaning(words: str, folder: Path) -> str:
    """What pip's `words` on failing come to, in a sentence."""
    errors = "\n".join(line for line in words.splitlines() if line.startswith("ERROR"))
    particular = [(cause, errors) for cause in _CAUSES[:-1]]
    for cause, text in (*particular, *((cause, words) for cause in _CAUSES)):
        if re.search(cause.signs, text, re.IGNORECASE):
            return cause.sentence.format(folder=folder)
    return _UNKNOWN


def _listen(lines: Iterable[str], record: TextIO, report: Callable[[int, str], None]) -> str:
    heard = []
    count = 0
    for line in lines:
        heard.append(line)
        record.write(line)
        if found := _COLLECTING.match(line):
            count += 1
            report(count, found[1])
        elif line.startswith(_INSTALLING):
            report(count, "")
    return "".join(heard)
