"""Every distribution under plugins/ builds, installs away from the checkout, passes its own tests and grades its examples.

All of them go into one new environment, with koirules itself, each as a wheel. What koirules needs is lent to it by the
environment that runs this test, so nothing is fetched.
"""

from __future__ import annotations

import csv
import os
import subprocess
import sys
import sysconfig
import tomllib
import venv
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).resolve().parents[2]
DISTRIBUTIONS = sorted(path.parent for path in ROOT.glob("plugins/*/pyproject.toml"))
RULESETS = sorted(path.parent for path in ROOT.glob("plugins/*/*/rulesets/*/standard.koi"))

GROUPS = {
    *("kohaku", "taisho_sanke", "showa", "bekko", "utsurimono", "asagi", "shusui", "koromo", "goshiki", "tancho"),
    *("hikari_muji", "hikari_moyo", "hikari_utsuri", "kawarimono", "ginrin", "doitsu"),
}
"""The sixteen groups that shows tell apart: common practice, no source; lists differ from place to place."""

BESIDE = {"ranchu"}
"""What is no koi."""


def _run(*command: str | Path, cwd: Path) -> str:
    clean = {name: value for name, value in os.environ.items() if name not in {"PYTHONPATH", "PYTEST_ADDOPTS"}}
    done = subprocess.run(
        [str(part) for part in command], cwd=cwd, env=clean, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, f"{command}\n{done.stdout}\n{done.stderr}"
    return done.stdout


@pytest.fixture(scope="session")
def elsewhere(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of a new environment with the wheels of koirules and of every plugin, and nothing of the checkout."""
    folder = tmp_path_factory.mktemp("elsewhere")
    pip = (sys.executable, "-m", "pip", "--disable-pip-version-check")
    wheels = folder / "wheels"
    built = ("--no-deps", "--no-build-isolation", "--no-index", "--wheel-dir", wheels)
    _run(*pip, "wheel", "-q", *built, ROOT, *DISTRIBUTIONS, cwd=folder)
    venv.create(folder / "env", symlinks=os.name != "nt")
    python = _python(folder)
    _run(*pip, "--python", python, "install", "-q", "--no-deps", "--no-index", *wheels.glob("*.whl"), cwd=folder)
    lent = Path(sysconfig.get_path("purelib"))
    packages = _run(python, "-c", "import sysconfig; print(sysconfig.get_path('purelib'))", cwd=folder).strip()
    # Stands behind the environment's own packages, so koirules itself comes from its wheel.
    Path(packages, "lent.pth").write_text(f"{lent}\n", encoding="utf-8")
    return folder


def _python(folder: Path) -> Path:
    return folder / "env" / ("Scripts/python.exe" if os.name == "nt" else "bin/python")


def _koirules(elsewhere: Path, *arguments: str | Path) -> str:
    return _run(_python(elsewhere), "-m", "koirules", *arguments, cwd=elsewhere)


def test_there_are_distributions() -> None:
    assert DISTRIBUTIONS
    plugins = {path for path in DISTRIBUTIONS if _is_plugin(_project(path))}
    assert {path.parents[1].parent for path in RULESETS} <= plugins


def test_koirules_itself_comes_from_its_wheel(elsewhere: Path) -> None:
    where = _run(_python(elsewhere), "-c", "import koirules; print(koirules.__file__)", cwd=elsewhere)
    assert Path(where.strip()).is_relative_to(elsewhere / "env")


def test_the_wheel_holds_the_tables_of_the_grammar_and_they_fit(elsewhere: Path) -> None:
    code = (
        "from koirules.language.parse import tables\n"
        "tables._built = tables._kept = None\n"
        "print(tables.TABLES.is_file(), type(tables.grammar()).__name__)\n"
    )
    assert _run(_python(elsewhere), "-c", code, cwd=elsewhere).split() == ["True", "Lark"]


def test_all_plugins_are_there_together_and_nothing_is_wrong_with_them(elsewhere: Path) -> None:
    code = "from koirules.plugins import load_registry; print(*map(str, load_registry().problems), sep='\\n')"
    assert _run(_python(elsewhere), "-c", code, cwd=elsewhere).strip() == ""
    code = "from importlib.metadata import entry_points as e; print(*(p.dist.name for p in e(group='koirules')))"
    assert set(_run(_python(elsewhere), "-c", code, cwd=elsewhere).split()) == {
        "koirules",
        *(project["name"] for project in map(_project, DISTRIBUTIONS) if _is_plugin(project)),
    }


def test_every_group_has_its_variety_or_skin_and_every_skin_lies_over_every_variety(elsewhere: Path) -> None:
    code = (
        "from koirules.plugins import load_registry\n"
        "from koirules.vocabulary.skins import clashes\n"
        "varieties = load_registry().varieties\n"
        "print(*varieties, *varieties.skins)\n"
        "print(*(c for v in varieties.values() for s in varieties.skins.values() for c in clashes(v, s)))\n"
    )
    groups, clashes = _run(_python(elsewhere), "-c", code, cwd=elsewhere).split("\n")[:2]
    assert set(groups.split()) == GROUPS | BESIDE
    assert clashes == ""


def _project(distribution: Path) -> dict[str, Any]:
    return dict(tomllib.loads((distribution / "pyproject.toml").read_text(encoding="utf-8"))["project"])


def _is_plugin(project: dict[str, Any]) -> bool:
    """Whether koirules asks it for something; the editor asks koirules."""
    return "koirules" in project.get("entry-points", {})


@pytest.mark.parametrize("distribution", DISTRIBUTIONS, ids=lambda path: path.name)
def test_the_tests_of_a_distribution_pass(distribution: Path, elsewhere: Path) -> None:
    told = _run(_python(elsewhere), "-m", "pytest", "-q", "-p", "no:cacheprovider", distribution, cwd=elsewhere)
    assert " passed" in told
    assert "skipped" not in told


def test_every_rule_set_is_checked_by_its_name(elsewhere: Path) -> None:
    told = _koirules(elsewhere, "check", *(folder.name for folder in RULESETS)).splitlines()
    assert [line.split(":")[0] for line in told] == [folder.name for folder in RULESETS]


@pytest.mark.parametrize("folder", RULESETS, ids=lambda path: path.name)
def test_the_examples_of_a_rule_set_are_graded_by_its_name(folder: Path, elsewhere: Path) -> None:
    out = elsewhere / f"{folder.name}.csv"
    _koirules(elsewhere, "grade", folder.name, folder / "records.csv", "--out", out)
    assert _column(out, "possible") == _column(folder / "expected.csv", "possible")


def _column(path: Path, name: str) -> dict[str, str]:
    with path.open(encoding="utf-8-sig", newline="") as file:
        return {row["fish"]: row[name] for row in csv.DictReader(line for line in file if not line.startswith("#"))}
