import errno
from pathlib import Path

import pytest

from drillpoint.setup.trouble import explain


@pytest.mark.parametrize(
    ("error", "told"),
    [
        (OSError(errno.ENOSPC, "No space left on device"), "The disk is full, so setting up stopped: free some space"),
        (OSError(errno.EDQUOT, "Disk quota exceeded"), "The disk is full"),
        (PermissionError(errno.EACCES, "Permission denied"), "Not allowed to write in there"),
        (OSError(errno.EROFS, "Read-only file system"), "Not allowed to write in there"),
        (OSError(errno.ENAMETOOLONG, "File name too long"), "too long for this system"),
        (OSError(errno.EIO, "Input/output error", "some.file"), "The system refused (some.file: Input/output error)"),
    ],
)
def test_one_sentence_with_what_to_do(error: OSError, told: str) -> None:
    sentence = str(explain(error, "setting up", Path("there")))
    assert sentence.startswith(told) or told in sentence
    assert "start again" in sentence
    assert "\n" not in sentence


@pytest.mark.parametrize(
    ("code", "told"), [(112, "disk is full"), (1260, "rules do not let programs start"), (206, "too long")]
)
def test_what_windows_says(code: int, told: str) -> None:
    error = OSError(errno.EINVAL, "refused")
    error.winerror = code  # type: ignore[attr-defined, unused-ignore]
    assert told in str(explain(error, "setting up", Path("there")))
