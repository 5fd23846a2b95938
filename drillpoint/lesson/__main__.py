"""Run every lesson and save it with its outputs: `python -m drillpoint.lesson`, or name the notebooks to run."""

import sys
from pathlib import Path

from drillpoint.errors import InstructorError
from drillpoint.lesson.saving import run_and_save


def main(arguments: list[str]) -> int:
    """Save the named notebooks, or every lesson in notebooks/; return the exit code."""
    paths = [Path(name) for name in arguments] or sorted(Path("notebooks").glob("*.ipynb"))
    if not paths:
        print("There are no lessons here; run this in the project's folder, or name a notebook.", file=sys.stderr)
        return 2
    for path in paths:
        try:
            run_and_save(path)
        except InstructorError as error:
            print(error, file=sys.stderr)
            return 1
        print(f"Saved {path} with its outputs.")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
