"""A fuzzer for the readers, led by which lines of them were reached: `python tests/course/fuzz_readers.py`.

It runs until it finds something or is stopped; `-runs=100000` ends it. It needs atheris, which there is for Linux on
x86-64. What it finds, it writes to a file whose name begins with `crash-`.
"""

import sys
from pathlib import Path

import atheris

sys.path[:0] = [str(Path(__file__).resolve().parents[2]), str(Path(__file__).resolve().parent)]

with atheris.instrument_imports(include=["drillpoint.course"]):
    import reading_laws


def one_text(data: bytes) -> None:
    """Give what the fuzzer made to a reader; anything but a reading or a refusal ends the run."""
    provider = atheris.FuzzedDataProvider(data)
    box = provider.ConsumeIntInRange(0, len(reading_laws.BOXES))
    typed = provider.ConsumeUnicode(provider.remaining_bytes())
    if box < len(reading_laws.BOXES):
        reading_laws.number_is_read_or_refused(typed, reading_laws.BOXES[box])
    else:
        reading_laws.formula_is_read_or_refused(typed)


if __name__ == "__main__":
    atheris.Setup(sys.argv, one_text)
    atheris.Fuzz()
