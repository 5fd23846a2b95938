"""Whether a wrong answer would be right for somebody else's numbers. A hint for the instructor, never a proof."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Iterable
from operator import itemgetter

from drillpoint.course.judging import Verdict
from drillpoint.course.variant import Question

# In a large class numbers repeat so often that a longer list would say nothing.
_NAMED_AT_MOST = 50


class Others:
    """The right values of a class: each with its tolerance and the first students who have it."""

    def __init__(self, classmates: Iterable[tuple[str, Iterable[Question]]]) -> None:
        """Take each student's id and questions."""
        found: dict[str, dict[tuple[float, float], list[str]]] = {}
        for student, questions in classmates:
            for question in questions:
                for box, right in question.right_values.items():
                    students = found.setdefault(box, {}).setdefault(right, [])
                    if len(students) < _NAMED_AT_MOST:
                        students.append(student)
        self._right = {
            box: sorted((right, tolerance, students) for (right, tolerance), students in values.items())
            for box, values in found.items()
        }
        self._reach = {box: max(entry[1] for entry in entries) for box, entries in self._right.items()}

    def right_for(self, question: Question, verdict: Verdict) -> tuple[str, ...]:
        """Name them, unless the answer is right, unreadable or explained by a slip."""
        values = {box: part.value for box, part in verdict.parts.items()} or {question.task.id: verdict.value}
        found: set[str] = set()
        for box, value in values.items():
            if value is None or box not in self._right:
                continue
            known, reach = self._right[box], self._reach[box] * (1 + 1e-9)
            first = bisect_left(known, value - reach, key=itemgetter(0))
            last = bisect_right(known, value + reach, key=itemgetter(0))
            for right, tolerance, students in known[first : min(last, first + _NAMED_AT_MOST)]:
                if abs(right - value) <= tolerance * (1 + 1e-9):
                    found.update(students)
        return tuple(sorted(found)[:_NAMED_AT_MOST])
