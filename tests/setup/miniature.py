"""A project folder in miniature, and an index in a folder: setting up for real, offline and in seconds."""

import base64
import hashlib
import zipfile
from dataclasses import dataclass
from pathlib import Path

from drillpoint.setup import locked
from drillpoint.setup.environment import Environment
from drillpoint.setup.places import Places


def make_wheel(folder: Path, name: str) -> str:
    """Write a wheel with one module of its name into a folder, always the same; return its lines for a lock."""
    record = f"{name}-1.0.dist-info/RECORD"
    files = {
        f"{name}.py": f"NAME = {name!r}\n",
        f"{name}-1.0.dist-info/METADATA": f"Metadata-Version: 2.1\nName: {name}\nVersion: 1.0\n",
        f"{name}-1.0.dist-info/WHEEL": "Wheel-Version: 1.0\nRoot-Is-Purelib: true\nTag: py3-none-any\n",
    }
    rows = []
    for path, text in files.items():
        digest = base64.urlsafe_b64encode(hashlib.sha256(text.encode()).digest()).rstrip(b"=").decode()
        rows.append(f"{path},sha256={digest},{len(text.encode())}\n")
    files[record] = "".join(rows) + f"{record},,\n"
    wheel = folder / f"{name}-1.0-py3-none-any.whl"
    with zipfile.ZipFile(wheel, "w") as archive:
        for path, text in files.items():
            archive.writestr(zipfile.ZipInfo(path), text)
    return f"{name}==1.0 \\\n    --hash=sha256:{hashlib.sha256(wheel.read_bytes()).hexdigest()}\n"


@dataclass(frozen=True)
class Miniature:
    """A small project folder and the index that has its packages."""

    places: Places
    index: Path

    @property
    def environment(self) -> Environment:
        """Its environment, read afresh."""
        return Environment.of(self.places)

    def lock(self, **sections: str) -> None:
        """Write its lock."""
        text = "".join(f"{locked.heading(name)}\n{lines}" for name, lines in sections.items())
        self.places.lock.write_text(text, encoding="utf-8")


def lay_out(folder: Path) -> Miniature:
    """Write a project that needs one package for the workbook and one for its tests.

    There is a space and letters beyond ASCII in the name of its folder.
    """
    index = folder / "index"
    project = folder / "Werkstück Ø 10 – копия"
    (project / "drillpoint").mkdir(parents=True)
    (project / "drillpoint" / "__init__.py").touch()
    (project / "pyproject.toml").touch()
    index.mkdir()
    made = Miniature(Places(project=project, folder=project / "drillpoint-work", installed=False), index)
    made.lock(open=make_wheel(index, "drill_one"), test=make_wheel(index, "drill_two"))
    return made
