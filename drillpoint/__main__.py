"""The commands: `python3 -m drillpoint open`, or `drillpoint open` once installed.

This file also runs on Pythons too old for the rest, down to 3.6, so that they can say so; its grammar stays theirs.
"""

import sys

OLDEST = (3, 11)


def refusal(version: "tuple[int, int]") -> "str | None":
    """Why this version of Python will not do, in a sentence; None when it will."""
    if version >= OLDEST:
        return None
    with_it = "py -3.11" if sys.platform == "win32" else "python3.11"
    return (
        f"drillpoint: This is Python {version[0]}.{version[1]}, and drillpoint needs Python 3.11 to 3.14: "
        f"install one of those and start it with that one, as in `{with_it} -m drillpoint open`."
    )


def main(arguments: "list[str] | None" = None) -> int:
    """Run one command; return its exit code."""
    refused = refusal(sys.version_info[:2])
    if refused:
        print(refused, file=sys.stderr)
        return 1
    from drillpoint.command_line import run

    return run(sys.argv[1:] if arguments is None else arguments)


if __name__ == "__main__":
    sys.exit(main())
