"""The one error that set-up raises, and what the system's own errors mean in plain words."""

import errno
from pathlib import Path

NO_SPACE_ON_WINDOWS = {39, 112}
BLOCKED_BY_POLICY_ON_WINDOWS = {1260, 4551}


class SetupError(Exception):
    """Something outside the program stops it. The text says what happened and what to do, in one sentence."""


def explain(error: OSError, doing: str, folder: Path) -> SetupError:
    """Put an operating system error that came up while `doing` something in `folder` into one sentence."""
    code = getattr(error, "winerror", None)
    if error.errno in (errno.ENOSPC, errno.EDQUOT) or code in NO_SPACE_ON_WINDOWS:
        return SetupError(f"The disk is full, so {doing} stopped: free some space where {folder} lies and start again.")
    if code in BLOCKED_BY_POLICY_ON_WINDOWS:
        return SetupError(
            f"This computer's rules do not let programs start from {folder}, so {doing} stopped: "
            "ask whoever looks after the computer to allow it, or use another folder."
        )
    if error.errno in (errno.EACCES, errno.EPERM, errno.EROFS):
        return SetupError(
            f"Not allowed to write in {folder}, so {doing} stopped: close other drillpoint windows, "
            "or copy the drillpoint folder to a place of your own (Documents, say) and start again there."
        )
    if error.errno == errno.ENAMETOOLONG or code == 206:
        return SetupError(
            f"The path of {folder} is too long for this system, so {doing} stopped: "
            "move the drillpoint folder to a shorter path and start again."
        )
    reason = ": ".join(str(part) for part in (error.filename, error.strerror or error) if part)
    return SetupError(f"The system refused ({reason}), so {doing} in {folder} stopped: mend that and start again.")
