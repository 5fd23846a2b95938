"""The page about the ground point: its cells run as printed, and its definitions are those of the inspection."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from drillpoint.ground.record import OF_EACH_LIP, OF_THE_POINT
from drillpoint.quantities import QUANTITIES

PAGE = (Path(__file__).parents[2] / "docs" / "ground-point.md").read_text(encoding="utf-8")
CELLS = re.findall(r"```python\n(.*?)```", PAGE, re.DOTALL)


def test_the_cells_run_one_after_the_other(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    names: dict[str, object] = {}
    for cell in CELLS:
        exec(cell, names)  # noqa: S102 -- our own page
    said = capsys.readouterr().out
    assert "chisel edge angle 125°" in said
    assert "has its chisel edge at 101.6°, not 125°" in said
    assert "Lips of unequal length" in said
    assert "Re-point it" in said and "flank level with the corner again after" in said
    assert (tmp_path / "drill-point-10-to-1.stl").stat().st_size > 100_000


def test_every_cell_is_run_and_every_given_on_the_page_is_known() -> None:
    assert len(CELLS) == 7
    named = set(re.findall(r"`([a-z]+_[a-z_0-9]+)`", PAGE))
    known = {*QUANTITIES, *OF_THE_POINT, *OF_EACH_LIP}
    assert {"cone_half_angle", "primary_width"} <= named <= known
