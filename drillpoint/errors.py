"""The two audiences of an error: somebody learning, and somebody teaching.

Every message is one or two sentences: what was given, what is allowed, what to do.
"""


class DrillpointError(ValueError):
    """Anything drillpoint refuses. Never raised itself; catch it to catch both audiences."""

    def _render_traceback_(self) -> list[str]:
        """In a notebook the sentence stands alone: a traceback through the library says nothing to a learner."""
        return [str(self)]


class LearnerError(DrillpointError):
    """Said to the person who typed a number or called a relation."""


class InstructorError(DrillpointError):
    """Said to the person who runs the course: rosters, exercise files, folders."""


class OutOfRange(LearnerError):
    """One value is outside what is possible for its quantity."""


class Impossible(LearnerError):
    """The values are possible one by one, but no drill has all of them at once."""


class UnknownGiven(LearnerError, TypeError):
    """A keyword that the relation does not take; a TypeError too, as for any Python call."""


class MissingGiven(LearnerError, TypeError):
    """A keyword that the relation needs was left out; a TypeError too, as for any Python call."""


class NoSolution(Impossible):
    """No physical value of the unknown fits the values given."""
