"""The repository holds itself to its own rules: fixed top level, layers, sizes, no drawers, one test command."""

import ast
import re
import subprocess
import tomllib
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
PYTHON = sorted((ROOT / "koirules").rglob("*.py"))
OF_PLUGINS = sorted(ROOT.glob("plugins/*/*/**/*.py"))
PUBLIC = {"koirules", "koirules.hooks", "koirules.testing", "koirules.editing"}
FIXED = {"README.md", "DEVELOPERS.md", "pyproject.toml", "koirules", "rulesets", "plugins", "tests", "examples"}
DRAWERS = {"utils", "util", "helpers", "helper", "common", "misc", "base", "core"}


def tracked() -> list[str]:
    try:
        listed = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=True)
    except (OSError, subprocess.CalledProcessError):
        return []
    return listed.stdout.splitlines()


def layers() -> list[str]:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    (contract,) = (one for one in project["tool"]["importlinter"]["contracts"] if one["type"] == "layers")
    return list(contract["layers"])


def room_of(path: Path) -> str:
    return path.relative_to(ROOT / "koirules").parts[0].removesuffix(".py")


def imported_rooms(path: Path) -> set[str]:
    rooms = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.ImportFrom) and node.module and node.module.startswith("koirules."):
            rooms.add(node.module.split(".")[1])
        elif isinstance(node, ast.ImportFrom) and node.module == "koirules":
            rooms.update(name.name for name in node.names)
        elif isinstance(node, ast.Import):
            rooms.update(name.name.split(".")[1] for name in node.names if name.name.startswith("koirules."))
    return rooms


def test_the_top_level_is_fixed():
    top = {name.split("/")[0] for name in tracked()}
    assert {name for name in top if not name.startswith(".")} <= FIXED


def test_every_room_has_its_layer():
    assert {room_of(path) for path in PYTHON} - {"__init__"} == set(layers())


@pytest.mark.parametrize("path", PYTHON, ids=lambda path: str(path.relative_to(ROOT)))
def test_a_room_imports_only_what_is_below_it(path):
    order = layers()
    room = room_of(path)
    if room == "__init__":
        return  # the front door names what it shows
    above = set(order[: order.index(room)])
    assert not imported_rooms(path) & above


def test_the_rooms_of_analysis_do_not_import_each_other():
    for path in (ROOT / "koirules" / "analysis").glob("*.py"):
        assert "koirules.analysis." not in path.read_text(encoding="utf-8")


@pytest.mark.parametrize("path", OF_PLUGINS, ids=lambda path: str(path.relative_to(ROOT)))
def test_a_plugin_imports_what_is_public_and_itself(path):
    own = path.relative_to(ROOT / "plugins").parts[1] if "tests" not in path.parts else None
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        names = [node.module or ""] if isinstance(node, ast.ImportFrom) else []
        names += [name.name for name in node.names] if isinstance(node, ast.Import) else []
        for name in names:
            if name.split(".")[0] == "koirules":
                assert name in PUBLIC or name.startswith(("koirules.vocabulary.", "koirules.measures.")), (
                    f"{name} in {path}"
                )
            elif name.startswith("koirules_") and own is not None:
                assert name.split(".")[0] == own, f"{name} in {path}"


@pytest.mark.parametrize("path", [*PYTHON, *OF_PLUGINS], ids=lambda path: str(path.relative_to(ROOT)))
def test_files_are_at_most_800_lines_and_no_drawers(path):
    assert len(path.read_text(encoding="utf-8").splitlines()) <= 800
    assert path.stem not in DRAWERS


@pytest.mark.parametrize("path", PYTHON, ids=lambda path: str(path.relative_to(ROOT)))
def test_third_party_names_stay_in_their_room(path):
    homes = {"lark": {"language"}, "click": {"commands"}, "rich": {"commands"}, "pluggy": {"plugins", "hooks"}}
    homes |= {"xlsxwriter": {"records"}, "python_calamine": {"records"}, "shapely": {"measures"}, "numpy": {"measures"}}
    homes |= {"coloraide": {"measures"}, "PIL": {"report"}}
    homes |= {"z3": {"engines", "analysis"}}
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        names = [node.module or ""] if isinstance(node, ast.ImportFrom) else []
        names += [name.name for name in node.names] if isinstance(node, ast.Import) else []
        for name in names:
            home = homes.get(name.split(".")[0])
            assert home is None or room_of(path) in home, f"{name} in {path}"


def test_the_readme_and_ci_run_the_same_test_command():
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    install_and_run, install_and_test = re.findall(r"```sh\n(.+?)\n```", readme, re.DOTALL)[:2]
    ci = (ROOT / ".ci" / "run").read_text(encoding="utf-8")
    assert install_and_run in ci
    assert install_and_test in ci


def test_no_file_names_a_machine_path_or_a_registry():
    words = re.compile("/" + "work/|/" + "root/|files" + r"\.python|deb" + r"\.debian|registry" + r"\.npmjs")
    for name in tracked():
        path = ROOT / name
        if path.is_file():
            assert not words.search(path.read_bytes().decode("utf-8", errors="replace")), name
