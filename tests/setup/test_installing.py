"""Pip's failures in plain words. The samples are cut from what pip prints, REGRESSION."""

import io
import re
import sys
from pathlib import Path

import pytest

from drillpoint.setup import installing
from drillpoint.setup.trouble import SetupError

RETRYING = "WARNING: Retrying (Retry(total=0, connect=None, read=None)) after connection broken by "
NONE_FOUND = (
    "ERROR: Could not find a version that satisfies the requirement anyio==4.16.0 (from versions: none)\n"
    "ERROR: No matching distribution found for anyio==4.16.0\n"
)


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (
            RETRYING + "'NewConnectionError('<pip._vendor...>: Failed to establish a new connection: [Errno 111] "
            "Connection refused')': /simple/anyio/\n" + NONE_FOUND,
            "cannot be reached: connect this computer to the internet",
        ),
        (
            RETRYING + "'NameResolutionError(\"Failed to resolve 'index.invalid' ([Errno -2] Name or service not "
            "known)\")': /simple/anyio/\n" + NONE_FOUND,
            "cannot be reached: connect this computer to the internet",
        ),
        (
            RETRYING + "'ReadTimeoutError(\"Read timed out. (read timeout=15)\")': /x\n" + NONE_FOUND,
            "cannot be reached",
        ),
        (
            RETRYING + "'ProxyError('Cannot connect to proxy.', NewConnectionError('Failed to establish a new "
            "connection: [Errno 111] Connection refused'))': /simple/anyio/\n" + NONE_FOUND,
            "proxy lets nothing through",
        ),
        (
            RETRYING + "'SSLError(SSLCertVerificationError(1, '[SSL: CERTIFICATE_VERIFY_FAILED] certificate verify "
            "failed: self-signed certificate in certificate chain (_ssl.c:1006)'))': /simple/anyio/\n" + NONE_FOUND,
            "certificate is not trusted",
        ),
        (NONE_FOUND, "no ready-made package for this Python"),
        ("ERROR: Could not install packages due to an OSError: [Errno 28] No space left on device\n", "disk is full"),
        (
            RETRYING + "'NewConnectionError'\nERROR: Could not install packages due to an OSError: [Errno 28] No space "
            "left on device\n",
            "disk is full",
        ),
        (
            "ERROR: Could not install packages due to an OSError: [WinError 5] Access is denied: 'C:\\\\x'\n",
            "Not allowed to write",
        ),
        (
            "ERROR: [Errno 2] No such file\nHINT: this system does not have Windows Long Path support enabled.\n",
            "path of .* is too long",
        ),
        ("ERROR: THESE PACKAGES DO NOT MATCH THE HASHES FROM THE REQUIREMENTS FILE.\n", "damaged or altered"),
        ("ERROR: Exception:\nTraceback (most recent call last):\nKeyError: 'x'\n", "show the log"),
    ],
)
def test_what_stopped_pip_is_told_in_a_sentence(words: str, told: str) -> None:
    sentence = installing.meaning(words, Path("folder"))
    assert re.search(told, sentence)
    assert "\n" not in sentence
    assert sentence.endswith(".")


def test_every_cause_has_a_cure() -> None:
    for cause in installing._CAUSES:
        assert ": " in cause.sentence or "start again" in cause.sentence


def test_progress_is_heard_from_pips_words() -> None:
    heard: list[tuple[int, str]] = []
    words = [
        "Looking in links: /opt\n",
        "Collecting anyio==4.16.0 (from -r requirements.txt (line 1))\n",
        "  Using cached anyio-4.16.0-py3-none-any.whl (115 kB)\n",
        "Requirement already satisfied: attrs==26.1.0 in /x (from -r requirements.txt (line 4)) (26.1.0)\n",
        "Installing collected packages: anyio\n",
        "Successfully installed anyio-4.16.0\n",
    ]
    record = io.StringIO()
    assert installing._listen(words, record, lambda count, name: heard.append((count, name))) == "".join(words)
    assert record.getvalue() == "".join(words)
    assert heard == [(1, "anyio"), (2, "attrs"), (2, "")]


def test_an_interpreter_that_does_not_start(tmp_path: Path) -> None:
    with pytest.raises(SetupError, match="does not start"):
        installing.install(tmp_path / "no-python", tmp_path / "r.txt", tmp_path / "log", lambda *_: None)


def test_only_exact_ready_made_packages_are_asked_for(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    asked: list[list[str]] = []

    class Process(installing.subprocess.Popen):  # type: ignore[type-arg]
        def __init__(self, command: list[str], **options: object) -> None:
            asked.append(command)
            super().__init__([sys.executable, "-c", ""], **options)  # type: ignore[call-overload]

    monkeypatch.setattr(installing.subprocess, "Popen", Process)
    installing.install(Path("python"), tmp_path / "r.txt", tmp_path / "log", lambda *_: None)
    assert {"--require-hashes", "--only-binary=:all:", "--no-deps"} <= set(asked[0])
