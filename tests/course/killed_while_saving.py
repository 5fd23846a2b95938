"""Kills processes while they save answers, and counts what was lost: `killed_while_saving.py FOLDER COUNT`.

Each process answers one task after the other with a running number, and tells each number through a pipe once it is
saved. After the kill, every number told must be on the disk. Prints how many were killed, how many answers were lost,
and how many were met half-way, with a part of a file beside the saved one.
"""

import os
import random
import signal
import sys
import time
from pathlib import Path

from drillpoint.course.desk import open_desk

LONGEST = 0.006


def save_for_ever(folder: Path, told: int, start: int) -> None:
    desk = open_desk("lips", folder)
    number = start
    while True:
        number += 1
        desk.give("1" if number % 2 else "2", str(number))
        os.write(told, number.to_bytes(8, "big"))


def kill_one(folder: Path, start: int, chance: random.Random) -> int:
    """Kill one process that saves; the last number it told."""
    reading, told = os.pipe()
    child = os.fork()
    if child == 0:
        os.close(reading)
        try:
            save_for_ever(folder, told, start)
        finally:
            os._exit(1)
    os.close(told)
    last = int.from_bytes(os.read(reading, 8), "big")
    time.sleep(chance.random() * LONGEST)
    os.kill(child, signal.SIGKILL)
    os.waitpid(child, 0)
    while more := os.read(reading, 8):
        last = int.from_bytes(more, "big")
    os.close(reading)
    return last


def main(folder: Path, count: int) -> None:
    chance, last, lost, halfway = random.Random(7), 0, 0, 0
    for task, number in (("1", "-1"), ("2", "0")):
        open_desk("lips", folder).give(task, number)
    for _ in range(count):
        last = kill_one(folder, last, chance)
        saved = {int(record.typed) for record in open_desk("lips", folder).answers().values()}
        # The one before is the other task's answer. A save may have ended that was not told any more.
        lost += not {last, last - 1} <= saved and not {last, last + 1} <= saved
        last = max(saved)
        parts = list(folder.glob(".*.part"))
        halfway += bool(parts)
        for part in parts:
            part.unlink()
    print(count, lost, halfway)


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]))
