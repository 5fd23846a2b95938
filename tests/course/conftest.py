"""What several course tests share: the graded set, and a small set that does not change when an instructor edits."""

from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import settings

from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.exercise_file import load_set
from drillpoint.course.roster import Student
from drillpoint.course.sheet import write_sheet
from drillpoint.course.variant import Variants

# A busy machine is no reason to fail: no test here is about time.
settings.register_profile("untimed", deadline=None)
settings.load_profile("untimed")

EXERCISES = Path(__file__).resolve().parents[2] / "exercises"


@pytest.fixture(scope="session")
def lips() -> ExerciseSet:
    return load_set(EXERCISES / "lips.toml")


@pytest.fixture(scope="session")
def variants(lips: ExerciseSet) -> Variants:
    return Variants(lips)


@pytest.fixture(scope="session")
def relief() -> Variants:
    return Variants(load_set(EXERCISES / "relief.toml"))


@pytest.fixture
def make_sheet(tmp_path: Path, lips: ExerciseSet, variants: Variants) -> Callable[[str], Path]:
    """Write a student's sheet and give its folder."""

    def make(student: str) -> Path:
        return write_sheet(lips, variants, Student(student, "Student"), tmp_path / "sheets").parent

    return make
