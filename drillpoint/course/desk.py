"""The student's desk: answers typed into a sheet, saved at once, and the file that is handed in.

Every answer goes to the disk when it is given, so neither the order of the cells nor a dead kernel matters. Nothing is
judged here and nothing here knows an answer.
"""

from __future__ import annotations

import html
import json
import threading
from collections.abc import Sequence
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from attrs import frozen

from drillpoint.course.answer_form import AnswerForm
from drillpoint.course.hand_in_file import (
    LONGEST_TYPED,
    AnswerRecord,
    Difference,
    HandIn,
    HandInProblem,
    hand_in_bytes,
    last_answers,
    put_answer,
    put_together,
    read_hand_in,
    read_json,
    receipt_of,
)
from drillpoint.course.reading import ReadingError
from drillpoint.course.safe_file import write_safely
from drillpoint.errors import DrillpointError, LearnerError

FORMAT = "drillpoint answers"
NOT_HANDED_IN = "Saved on this machine, not yet handed in."
# Widgets call back from another thread than the cells run in.
_lock = threading.RLock()


@frozen
class SheetTask:
    """One box of the sheet as the student's machine knows it: its key in a hand-in, and its number on the sheet."""

    id: str
    number: str
    title: str
    form: AnswerForm


class Desk:
    """One sheet in one folder: `lips.sheet.json` describes it, `lips.answers.json` holds what was answered so far."""

    def __init__(self, description: Path) -> None:
        self.folder = description.parent
        sheet = _read(description, "drillpoint sheet")
        self.course, self.set, self.title = str(sheet["course"]), str(sheet["set"]), str(sheet["title"])
        self.version, self.student = int(sheet["version"]), str(sheet["student"])
        self.tasks = tuple(
            SheetTask(
                t["id"],
                str(t["number"]),
                t["title"],
                AnswerForm(
                    t["kind"],
                    t["unit"],
                    tuple(t["names"]),
                    t["symbol"],
                    t["letters"],
                    tuple(t.get("functions", ())),  # sheets that are already out have none
                ),
            )
            for t in sheet["tasks"]
        )
        self.answers_file = self.folder / f"{self.set}.answers.json"
        self.hand_in_file = self.folder / f"{self.set}-{self.student}.hand-in.json"

    def task(self, name: str) -> SheetTask:
        """Give a box by its number on the sheet or its key."""
        for task in self.tasks:
            if name in (task.number, task.id):
                return task
        parts = [task.number for task in self.tasks if task.number.startswith(f"{name}.")]
        if parts:
            raise LearnerError(
                f'task {name} has {len(parts)} parts: {", ".join(parts)}; name the part, as in answer("{parts[0]}")'
            )
        raise LearnerError(
            f"there is no task {name!r} on this sheet; "
            f'its tasks are {self.tasks[0].number} to {self.tasks[-1].number}, as in answer("{self.tasks[0].number}")'
        )

    def answers(self) -> dict[str, AnswerRecord]:
        """Read what is saved: the last answer to each box; one that was taken back is not there."""
        return {task: record for task, record in last_answers(self._records()).items() if record.typed}

    def _records(self) -> tuple[AnswerRecord, ...]:
        if not self.answers_file.exists():
            return ()
        try:
            saved = _read(self.answers_file, FORMAT)
            return tuple(AnswerRecord(str(a["task"]), str(a["typed"]), str(a["time"])) for a in saved["answers"])
        except (DrillpointError, KeyError, TypeError) as error:
            raise LearnerError(
                f"{self.answers_file.name} was changed by something else and cannot be read ({error}); "
                "rename it and answer again, and show the renamed file to your instructor"
            ) from None

    def give(self, name: str, typed: str, now: datetime | None = None) -> tuple[str, ReadingError | None]:
        """Save an answer as it was given, and say how it was read, or why it cannot be read; it is saved either way.

        An empty answer takes the one before back: the box counts as not answered, as it looks.
        """
        task = self.task(name)
        if len(typed) > LONGEST_TYPED:
            raise LearnerError(
                f"this answer is longer than {LONGEST_TYPED} characters and was not saved; "
                f"answer with {task.form.beside}"
            )
        typed = typed if typed.strip() else ""
        with _lock:
            records = self._records()
            before = last_answers(records).get(task.id)
            if typed != ("" if before is None else before.typed):
                self._save(put_answer(records, AnswerRecord(task.id, typed, _timestamp(now))))
        if not typed:
            return "", None
        try:
            return task.form.read(typed).echo, None
        except ReadingError as error:
            return "", error

    def _save(self, records: Sequence[AnswerRecord]) -> None:
        entries = [{"task": a.task, "typed": a.typed, "time": a.time} for a in records]
        content = {
            "format": FORMAT,
            "set": self.set,
            "version": self.version,
            "student": self.student,
            "answers": entries,
        }
        try:
            write_safely(self.answers_file, json.dumps(content, indent=1, ensure_ascii=True).encode("ascii") + b"\n")
        except OSError as error:
            raise LearnerError(
                f"the answer could not be saved in {self.answers_file} ({error.strerror}): "
                "check that the disk is not full and the folder may be written to, then run the cell again"
            ) from None

    def go_on(self, file: Path) -> str:
        """Take up the answers of another sitting from a hand-in file, and say what came of it."""
        try:
            found = read_hand_in(file.read_bytes())
        except HandInProblem as error:
            raise LearnerError(f"{file.name} cannot be taken up: {error}") from None
        except OSError as error:
            raise LearnerError(f"{file.name} cannot be read ({error.strerror})") from None
        if reason := self._not_of_this_sheet(found):
            raise LearnerError(f"{file.name} was not taken up: {reason}")
        boxes = {task.id: task for task in self.tasks}
        with _lock:
            before = self.answers()
            there = [record for record in found.answers if record.task in boxes]
            records, differences = put_together(self._records(), there)
            self._save(records)
            new = [task.number for task in self.tasks if task.id in self.answers() and task.id not in before]
        lines = [f"Taken up from {file.name}: {'answers ' + ', '.join(new) if new else 'no new answer'}."]
        if not found.intact:
            lines.append("The file was altered after it was made; your instructor will see that.")
        lines += [_said(boxes[one.task].number, one) for one in differences]
        return "\n".join([*lines, self.status()])

    def _not_of_this_sheet(self, found: HandIn) -> str:
        if found.student != self.student:
            return f"it is the file of {found.student}, and this is the sheet of {self.student}"
        if (found.course, found.set) != (self.course, self.set):
            return f"it belongs to the set {found.set} of {found.course}"
        if found.version != self.version:
            return f"it answers version {found.version} of the set, and this sheet is version {self.version}"
        return ""

    def hand_in(self, now: datetime | None = None) -> str:
        """Write the file to hand in, and give its receipt."""
        answers = self.answers()
        if not answers:
            raise LearnerError("there is nothing to hand in yet: no answer is saved on this machine")
        order = {task.id: place for place, task in enumerate(self.tasks)}
        given = [record for record in self._records() if record.typed and record.task in answers.keys() & order.keys()]
        given.sort(key=lambda record: order[record.task])
        data = hand_in_bytes(self.course, self.set, self.version, self.student, given, _timestamp(now))
        try:
            write_safely(self.hand_in_file, data)
        except OSError as error:
            raise LearnerError(
                f"{self.hand_in_file} could not be written ({error.strerror}); your answers are still saved"
            ) from None
        left = [task.number for task in self.tasks if task.id not in answers]
        lines = [
            f"Receipt for {self.student}, {self.title}: {receipt_of(data, len(self.tasks))}.",
            f"Saved as a file, not yet handed in. Give this file to your instructor: {self.hand_in_file}",
        ]
        if left:
            lines.insert(1, f"Not answered: task {', '.join(left)}. You can still answer and run this cell again.")
        return "\n".join(lines)

    def status(self) -> str:
        """Say what is answered, what is saved and whether it was handed in."""
        answers = self.answers()
        done = [task for task in self.tasks if task.id in answers]
        line = f"{len(done)} of {len(self.tasks)} answers given."
        if not answers:
            return line
        if not self.hand_in_file.exists():
            return f"{line} {NOT_HANDED_IN}"
        try:
            handed = last_answers(read_hand_in(self.hand_in_file.read_bytes()).answers)
        except (HandInProblem, OSError):
            return f"{line} {self.hand_in_file.name} cannot be read any more: run the last cell again."
        if {a.task: a.typed for a in handed.values()} == {a.task: a.typed for a in answers.values()}:
            return f"{line} All are in the hand-in file {self.hand_in_file.name}: give it to your instructor."
        return f"{line} Changed since the hand-in file was written: run the last cell again."


def answer(name: str, typed: str | float | None = None, *, folder: str | Path = ".") -> Any:
    """Answer a task: `answer("3", "5.15 mm")`, or `answer("3")` for a box to type into.

    With several sheets in one folder put the set in front: `answer("lips/3", ...)`. The answer is saved as given.
    """
    set_name, _, task_name = name.rpartition("/")
    desk = open_desk(set_name, folder)
    task = desk.task(task_name)
    if typed is None:
        from drillpoint.course.answer_box import answer_box

        return answer_box(desk, task)
    print(give_and_say(desk, task, str(typed)))
    return None


def status(set_name: str = "", *, folder: str | Path = ".") -> None:
    """Print what is answered so far and whether it was handed in."""
    print(open_desk(set_name, folder).status())


def hand_in(set_name: str = "", *, folder: str | Path = ".") -> None:
    """Write the file to hand in, beside the notebook, and print a receipt."""
    print(open_desk(set_name, folder).hand_in())


def go_on(file: str | Path, set_name: str = "", *, folder: str | Path = ".") -> None:
    """Take up answers from a file that was saved elsewhere: from the page, or on another machine.

    The last answer to each task counts; where two sittings differ, both are printed, and both go into the hand-in.
    """
    print(open_desk(set_name, folder).go_on(Path(folder) / file))


def give_and_say(desk: Desk, task: SheetTask, typed: str) -> str:
    """Save an answer and put into words what happened to it."""
    echo, error = desk.give(task.id, typed)
    if not typed.strip():
        return f"Task {task.number}: an empty box is no answer. It counts as not answered."
    if error is None:
        return f"Task {task.number}: read as {echo}. {NOT_HANDED_IN}"
    return f"Task {task.number}: saved as typed, but it cannot be read yet. {error}"


def open_desk(set_name: str, folder: str | Path = ".") -> Desk:
    """Open the sheet of a set in a folder; the name may be left out if there is only one."""
    here = Path(folder).resolve()
    found = {path.name.removesuffix(".sheet.json"): path for path in sorted(here.glob("*.sheet.json"))}
    if not found:
        raise LearnerError(f"there is no sheet in {here}; open the notebook from the folder your instructor gave you")
    if set_name in found:
        return Desk(found[set_name])
    names = ", ".join(found)
    if set_name:
        raise LearnerError(f"there is no sheet {set_name!r} in this folder; here is {names}")
    if len(found) == 1:
        return Desk(next(iter(found.values())))
    raise LearnerError(f'which sheet? Here are {names}; put the name in front, as in answer("{next(iter(found))}/1")')


def _said(number: str, difference: Difference) -> str:
    counts, earlier = (f"“{text}”" if text else "the empty box" for text in (difference.counts, difference.earlier))
    return f"Task {number} was answered twice: {counts} is the later one and counts, earlier {earlier}."


def escape(text: str) -> str:
    """Make text safe to show in a widget."""
    return html.escape(text, quote=True)


def _read(path: Path, format_name: str) -> dict[str, Any]:
    try:
        content = read_json(path.read_bytes())
    except OSError as error:
        raise LearnerError(f"{path.name} cannot be read ({error.strerror})") from None
    if not isinstance(content, dict) or content.get("format") != format_name:
        raise LearnerError(f"{path.name} is not the file it should be; ask your instructor for a new copy of it")
    return content


def _timestamp(now: datetime | None) -> str:
    return (now or datetime.now(UTC)).strftime("%Y-%m-%dT%H:%M:%SZ")
