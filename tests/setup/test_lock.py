"""The lock that ships, against pyproject.toml."""

import re
import tomllib
from pathlib import Path

import pytest
from packaging.markers import Marker
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

from drillpoint.setup import lock, locked
from drillpoint.setup.locked import Pin, Section

# The systems that are promised, as markers see them: sys_platform, os_name, platform_system, platform_machine.
SYSTEMS = {
    "Linux": ("linux", "posix", "Linux", "x86_64"),
    "macOS": ("darwin", "posix", "Darwin", "arm64"),
    "Windows": ("win32", "nt", "Windows", "AMD64"),
}


@pytest.fixture(scope="module")
def metadata(project: Path) -> dict:
    return tomllib.loads((project / "pyproject.toml").read_text(encoding="utf-8"))["project"]


@pytest.fixture(scope="module")
def sections(project: Path) -> dict[str, Section]:
    return locked.read(project / "requirements.lock")


def surroundings(system: str, python: str) -> dict[str, str]:
    sys_platform, os_name, platform_system, machine = SYSTEMS[system]
    return {
        "sys_platform": sys_platform,
        "os_name": os_name,
        "platform_system": platform_system,
        "platform_machine": machine,
        "platform_python_implementation": "CPython",
        "implementation_name": "cpython",
        "python_version": python,
        "python_full_version": f"{python}.0",
        "extra": "",
    }


def needed(pins: tuple[Pin, ...], where: dict[str, str]) -> dict[str, str]:
    """The versions that pip would install there; fail if a package is pinned twice for one place."""
    chosen: dict[str, str] = {}
    for pin in pins:
        if not pin.marker or Marker(pin.marker).evaluate(where):
            assert chosen.setdefault(canonicalize_name(pin.name), pin.version) == pin.version, pin.name
    return chosen


@pytest.mark.parametrize("python", lock.PYTHONS)
@pytest.mark.parametrize("system", SYSTEMS)
def test_every_requirement_is_locked_in_its_range_everywhere(
    metadata: dict, sections: dict[str, Section], system: str, python: str
) -> None:
    where = surroundings(system, python)
    workbook = needed(sections["open"].pins, where)
    everything = needed(sections["open"].pins + sections["test"].pins, where)
    for wanted, versions in (
        (metadata["dependencies"], workbook),
        (metadata["optional-dependencies"]["test"], everything),
    ):
        for text in wanted:
            requirement = Requirement(text)
            version = versions[canonicalize_name(requirement.name)]
            assert requirement.specifier.contains(version), f"{text} is locked at {version}"


def test_the_sections_share_no_package(sections: dict[str, Section]) -> None:
    workbook, tests = ({canonicalize_name(pin.name) for pin in sections[name].pins} for name in locked.SECTIONS)
    assert workbook & tests == set()


def test_every_package_has_hashes_and_nothing_but_packages_is_listed(
    project: Path, sections: dict[str, Section]
) -> None:
    for section in sections.values():
        for pin in section.pins:
            assert re.search(r"--hash=sha256:[0-9a-f]{64}\b", pin.text), pin.name
    lines = (project / "requirements.lock").read_text(encoding="utf-8").splitlines()
    rest = [line for line in lines if line.strip() and not re.match(r"#|\S+==|    --hash=sha256:[0-9a-f]{64}", line)]
    assert rest == []
    assert not any("://" in line for line in lines)


def test_the_supported_pythons_are_those_that_are_declared(metadata: dict) -> None:
    prefix = "Programming Language :: Python :: 3."
    declared = [name.removeprefix(prefix) for name in metadata["classifiers"] if name.startswith(prefix)]
    assert [f"3.{minor}" for minor in declared] == list(lock.PYTHONS)
    assert metadata["requires-python"] == f">={lock.PYTHONS[0]}"


def test_on_top_is_what_the_first_lacks() -> None:
    one, two, other = (Pin(name, "1", "", f"{name}==1\n") for name in ("one", "two", "other"))
    assert lock.on_top((one, other), (one, two, other)) == (two,)


def test_making_the_lock_needs_uv_and_says_so(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture) -> None:
    monkeypatch.setattr(lock.shutil, "which", lambda *_, **__: None)
    assert lock.main([]) == 1
    assert "pip install uv" in capsys.readouterr().err
