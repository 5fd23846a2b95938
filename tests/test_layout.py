"""The plan of the house: what may import what, what the top of the repository holds, and what no module may do."""

import ast
import fnmatch
import graphlib
from collections.abc import Iterator
from pathlib import Path

import pytest

PROJECT = Path(__file__).parents[1]
PACKAGE = PROJECT / "drillpoint"

VOCABULARY = {"errors", "quantities"}
BOOK = {*VOCABULARY, "generated", "relation", "relations"}
# Room -> the rooms it may import. Everything not listed is forbidden.
MAY_IMPORT: dict[str, set[str]] = {
    "errors": set(),
    "generated": set(),
    "quantities": {"errors"},
    "handbook": set(VOCABULARY),
    "relation": {*VOCABULARY, "generated"},
    "relations": {*VOCABULARY, "generated", "relation"},
    "ground": BOOK,
    "drawing": {*BOOK, "ground", "pages"},
    "planning": {*BOOK, "ground", "pages"},
    "explorers": {*BOOK, "ground", "drawing", "pages"},
    "command": set(),
    "pages": set(),
    # A task may ask what is wrong with a drill, so the course grinds drills wrong on purpose.
    "course": {*BOOK, "handbook", "ground", "drawing", "command", "pages"},
    "lesson": {*BOOK, "handbook", "ground", "planning", "drawing", "explorers", "course", "command", "pages"},
    "editions": {*BOOK, "ground", "drawing"},
    "setup": {"command"},
    "command_line": {"command", "setup", "course", "lesson"},
    "__main__": {"command_line"},
    "__init__": set(),
}
# A relation looks up, when it is called, which others of the book can work out a given that was left out. By then the
# book is complete, so nothing is imported in a circle.
LOOKED_UP_WHEN_CALLED = {("relation", "relations")}

AT_THE_TOP = {
    *("README.md", "DEVELOPERS.md", "LICENSE", "pyproject.toml", "requirements.lock"),
    *("docs", "drillpoint", "exercises", "notebooks", "tests"),
}
LONGEST = 350
RUNS_WHAT_IT_IS_GIVEN = {"eval", "exec", "compile", "sympify", "parse_expr", "S", "literal_eval", "__import__"}


def modules() -> list[Path]:
    """Every module of the package."""
    return sorted(path for path in PACKAGE.rglob("*.py") if "_shipped" not in path.parts)


def name_of(path: Path) -> str:
    """The dotted name of a module, without the package in front: "course.reading", "course" for its __init__."""
    parts = path.relative_to(PACKAGE).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" and len(parts) > 1 else parts)


def imports(source: str, *, at_once_only: bool = False) -> Iterator[str]:
    """The drillpoint modules that a text imports, also by import_module("...").

    at_once_only: leave out what runs later (inside functions) or only for the type checker.
    """
    for node in _statements(ast.parse(source), at_once_only):
        if isinstance(node, ast.Import):
            found = [alias.name for alias in node.names]
        elif isinstance(node, ast.ImportFrom) and node.module:
            found = [f"{node.module}.{alias.name}" for alias in node.names]
        elif isinstance(node, ast.Call) and _called(node) == "import_module" and isinstance(node.args[0], ast.Constant):
            found = [str(node.args[0].value)]
        else:
            continue
        yield from (name.removeprefix("drillpoint.") for name in found if name.startswith("drillpoint."))


def _statements(node: ast.AST, at_once_only: bool) -> Iterator[ast.AST]:
    for child in ast.iter_child_nodes(node):
        later = isinstance(child, ast.FunctionDef | ast.AsyncFunctionDef | ast.Lambda)
        typing_only = isinstance(child, ast.If) and "TYPE_CHECKING" in ast.unparse(child.test)
        if at_once_only and (later or typing_only):
            continue
        yield child
        yield from _statements(child, at_once_only)


def _called(call: ast.Call) -> str:
    return (
        call.func.id
        if isinstance(call.func, ast.Name)
        else call.func.attr
        if isinstance(call.func, ast.Attribute)
        else ""
    )


def room_of(module: str) -> str:
    """The room of a module: the first part of its name."""
    return module.partition(".")[0]


def wrong_way(room: str, source: str) -> list[str]:
    """What a module in this room imports although it may not."""
    rooms = {room_of(module) for module in imports(source)} - {room, "__version__"}
    return sorted(
        other for other in rooms if other not in MAY_IMPORT[room] and (room, other) not in LOOKED_UP_WHEN_CALLED
    )


@pytest.mark.parametrize("path", modules(), ids=name_of)
def test_imports_run_one_way(path: Path) -> None:
    assert wrong_way(room_of(name_of(path)), path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize(
    ("room", "source"),
    [
        ("relations", "from drillpoint.drawing import draw"),
        ("drawing", "import drillpoint.explorers.page"),
        ("drawing", "def late():\n    from drillpoint.course import ask"),
        ("course", "from importlib import import_module\nimport_module('drillpoint.explorers')"),
        ("setup", "from drillpoint.relations import BOOK"),
    ],
)
def test_an_import_the_wrong_way_would_be_noticed(room: str, source: str) -> None:
    assert wrong_way(room, source)


def test_every_room_is_on_the_plan() -> None:
    there = {room_of(name_of(path)) for path in modules()}
    assert there <= set(MAY_IMPORT)


def test_the_plan_has_no_circle() -> None:
    graphlib.TopologicalSorter(MAY_IMPORT).prepare()


def test_a_circle_on_the_plan_would_be_noticed() -> None:
    with pytest.raises(graphlib.CycleError):
        graphlib.TopologicalSorter({**MAY_IMPORT, "quantities": {"course"}}).prepare()


def test_no_module_needs_itself_to_be_imported() -> None:
    known = {name_of(path): path for path in modules()}
    graph: dict[str, set[str]] = {}
    for name, path in known.items():
        wanted = imports(path.read_text(encoding="utf-8"), at_once_only=True)
        graph[name] = {next((n for n in (w, w.rpartition(".")[0]) if n in known), name) for w in wanted} - {name}
    graphlib.TopologicalSorter(graph).prepare()


def test_the_top_of_the_repository_holds_only_what_belongs_there() -> None:
    ignored = (PROJECT / ".gitignore").read_text(encoding="utf-8").splitlines()
    patterns = [line.strip("/") for line in ignored if line and not line.startswith("#")]
    names = {path.name for path in PROJECT.iterdir() if not path.name.startswith(".")}
    made = {name for name in names if any(fnmatch.fnmatch(name, pattern) for pattern in patterns)}
    assert names - made <= AT_THE_TOP
    assert names >= AT_THE_TOP


@pytest.mark.parametrize("path", [p for p in modules() if "generated" not in p.parts], ids=name_of)
def test_no_module_grows_too_long(path: Path) -> None:
    assert len(path.read_text(encoding="utf-8").splitlines()) <= LONGEST


def used_names(source: str) -> set[str]:
    """Every plain name that a text loads, imports or calls, and every attribute; not those of `re`."""
    names = set()
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Name):
            names.add(node.id)
        elif isinstance(node, ast.Import | ast.ImportFrom):
            names.update(alias.name.rpartition(".")[2] for alias in node.names)
        elif isinstance(node, ast.Attribute) and ast.unparse(node.value) != "re":
            names.add(node.attr)
    return names


@pytest.mark.parametrize("path", sorted((PACKAGE / "course").rglob("*.py")), ids=name_of)
def test_nothing_a_person_typed_is_ever_run(path: Path) -> None:
    assert not used_names(path.read_text(encoding="utf-8")) & RUNS_WHAT_IT_IS_GIVEN


@pytest.mark.parametrize(
    "source",
    ["eval(typed)", "import builtins\nbuiltins.exec(typed)", "from sympy import sympify", "sp.parse_expr(typed)"],
)
def test_running_what_was_typed_would_be_noticed(source: str) -> None:
    assert used_names(source) & RUNS_WHAT_IT_IS_GIVEN


@pytest.mark.parametrize("path", modules(), ids=name_of)
def test_no_module_uses_pyplot(path: Path) -> None:
    assert not uses_pyplot(path.read_text(encoding="utf-8"))


def test_pyplot_would_be_noticed() -> None:
    assert uses_pyplot("import matplotlib.pyplot as plt")
    assert uses_pyplot("from matplotlib import pyplot")
    assert not uses_pyplot('"""Never pyplot."""\nfrom matplotlib.figure import Figure')


def uses_pyplot(source: str) -> bool:
    """Whether a text imports matplotlib.pyplot."""
    return any(
        alias.name == "pyplot" or ".pyplot" in f"{getattr(node, 'module', '')}.{alias.name}"
        for node in ast.walk(ast.parse(source))
        if isinstance(node, ast.Import | ast.ImportFrom)
        for alias in node.names
    )
