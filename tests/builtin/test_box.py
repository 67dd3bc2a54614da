"""What ships in the box is quick to import and finds its rule sets wherever it stands."""

from __future__ import annotations

import shutil
import subprocess
import sys
from pathlib import Path

import pytest

import koirules

PACKAGE = Path(koirules.__file__).parent
HEAVY = ("lark", "click", "rich", "numpy", "polars", "python_calamine", "xlsxwriter")
LIST_RULESETS = (
    "from koirules.builtin import koirules_rulesets as f; print(*(f'{k}={v}' for k, v in f().items()), sep='\\n')"
)


def test_importing_the_box_imports_nothing_heavy() -> None:
    code = f"import sys, koirules.builtin; print(*(name for name in {HEAVY!r} if name in sys.modules))"
    assert _run(code, PACKAGE.parent) == ""


@pytest.mark.parametrize("folder", ["koirules/rulesets", "rulesets"])
def test_rule_sets_are_found_in_the_package_or_beside_it(folder: str, tmp_path: Path) -> None:
    _copy_package(tmp_path)
    file = _write_ruleset(tmp_path / folder, "plain_house")
    (tmp_path / folder / "empty").mkdir()
    assert _run(LIST_RULESETS, tmp_path) == f"plain_house={file}"


def test_rule_sets_in_the_package_win_over_those_beside_it(tmp_path: Path) -> None:
    _copy_package(tmp_path)
    file = _write_ruleset(tmp_path / "koirules/rulesets", "plain_house")
    _write_ruleset(tmp_path / "rulesets", "other_house")
    assert _run(LIST_RULESETS, tmp_path) == f"plain_house={file}"


def test_no_rule_sets_are_no_trouble(tmp_path: Path) -> None:
    _copy_package(tmp_path)
    assert _run(LIST_RULESETS, tmp_path) == ""


def _copy_package(folder: Path) -> None:
    shutil.copytree(PACKAGE, folder / "koirules", ignore=shutil.ignore_patterns("__pycache__", "rulesets"))


def _write_ruleset(folder: Path, name: str) -> Path:
    file = folder / name / "standard.koi"
    file.parent.mkdir(parents=True)
    file.write_text('standard "An invented house"\n  edition 1\n', encoding="utf-8")
    return file.resolve()


def _run(code: str, folder: Path) -> str:
    done = subprocess.run([sys.executable, "-c", code], cwd=folder, capture_output=True, text=True, check=True)
    return done.stdout.strip()
