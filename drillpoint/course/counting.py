"""Which of several answers to a task counts: the last, or the best, and how late it was."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from attrs import frozen

from drillpoint.course.piles import Sitting, plain

Late = Callable[[Sitting], int]


@frozen
class Candidate:
    """What was typed into the boxes of a task, by their keys, and how many days late."""

    typed: Mapping[str, str]
    days_late: int = 0


class Answers:
    """All answers of one student, over all sittings that count."""

    def __init__(self, sittings: Sequence[Sitting], late: Late) -> None:
        """Take sittings in order of time; `late` gives the days by which a sitting was late."""
        self.sittings = sittings
        self._late = [late(sitting) for sitting in sittings]
        self._any_late = any(self._late)
        # For each box: when answered, when handed in, which file, which place in it, what. Equal times are decided
        # by what is in a file, never by its name.
        self._given: dict[str, list[tuple[str, str, str, int, int, str]]] = {}
        for number, sitting in enumerate(sittings):
            for place, answer in enumerate(sitting.answers):
                entry = (answer.time, sitting.time, sitting.digest, place, number, answer.typed)
                self._given.setdefault(answer.task, []).append(entry)
        for given in self._given.values():
            if len(given) > 1:
                given.sort()

    @property
    def boxes(self) -> Sequence[str]:
        """The boxes that were answered, also such that the set does not have."""
        return tuple(self._given)

    def last(self, boxes: Sequence[str]) -> Candidate:
        """The last answer in each box. It is as late as the first sitting that holds it."""
        typed, days = {}, 0
        for box in boxes:
            given = self._given.get(box)
            if given:
                text = typed[box] = given[-1][5]
                if self._any_late:
                    days = max(days, min(self._late[entry[4]] for entry in given if entry[5] == text))
        return Candidate(typed, days)

    def all(self, boxes: Sequence[str]) -> list[Candidate]:
        """The last answer over all, then each sitting's own where it says something else; for choosing the best."""
        found = [self.last(boxes)]
        for number, late in enumerate(self._late):
            typed = {}
            for box in boxes:
                own = [entry[5] for entry in self._given.get(box, ()) if entry[4] == number]
                if own:
                    typed[box] = own[-1]
            if typed and Candidate(typed, late) not in found:
                found.append(Candidate(typed, late))
        return found

    def said_differently(self, boxes: Sequence[str], counts: Mapping[str, str]) -> str:
        """If boxes were answered in more than one way: what counts, and what was typed besides."""
        told = []
        for box in boxes:
            given = self._given.get(box, ())
            others = [text for text in dict.fromkeys(entry[5] for entry in given) if text != counts.get(box)]
            if others and box in counts:
                earlier = ", ".join(f"“{plain(text)}”" for text in others)
                told.append(f"“{plain(counts[box])}” counts, earlier {earlier}")
        return "; ".join(told)
