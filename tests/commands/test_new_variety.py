"""A new plugin is laid down whole, and works at once: built, installed in a fresh environment, its own tests run there."""

import csv
import importlib
import os
import re
import subprocess
import sys
from pathlib import Path

import pytest
from click.testing import CliRunner

from koirules.commands import inputs, main
from koirules.testing import registry_with

ROOT = Path(__file__).parents[2]


def run(*words):
    result = CliRunner().invoke(main, [str(word) for word in words])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


def files(folder):
    return {str(path.relative_to(folder)) for path in folder.rglob("*") if path.is_file()}


def test_all_files_of_a_plugin_are_laid_down_and_nothing_else(tmp_path):
    result = run("new-variety", "hill_ogon", "--into", tmp_path)
    assert result.exit_code == 0
    assert [path.name for path in tmp_path.iterdir()] == ["hill_ogon"]
    assert files(tmp_path / "hill_ogon") == {
        "README.md",
        "pyproject.toml",
        "koirules_hill_ogon/__init__.py",
        "koirules_hill_ogon/traits.py",
        "koirules_hill_ogon/rulesets/tosai_hill_ogon/standard.koi",
        "tests/expected.csv",
        "tests/records.csv",
        "tests/test_hill_ogon.py",
    }
    assert not [
        path for path in (tmp_path / "hill_ogon").rglob("*") if path.is_file() and "$" in path.read_text("utf-8")
    ]


@pytest.mark.parametrize(
    ("name", "told"),
    [
        ("Hill Ogon", 'such as "hill_ogon"'),
        ("9ogon", "a letter first"),
        ("grade", "a word of the rule language"),
        ("kohaku", 'a vocabulary "kohaku" already'),
        ("../ogon", 'such as "ogon"'),
    ],
)
def test_a_name_that_cannot_be_is_answered(tmp_path, name, told):
    result = run("new-variety", name, "--into", tmp_path)
    assert result.exit_code == 2
    assert told in result.output
    assert list(tmp_path.iterdir()) == []


def test_nothing_that_is_there_is_written_over(tmp_path):
    (tmp_path / "ogon").mkdir()
    result = run("new-variety", "ogon", "--into", tmp_path)
    assert result.exit_code == 2
    assert list((tmp_path / "ogon").iterdir()) == []
    assert run("new-variety", "ogon", "--into", tmp_path / "nowhere").exit_code == 2


def call(*words, cwd):
    path = {name: value for name, value in os.environ.items() if name not in {"PYTHONPATH", "PYTEST_ADDOPTS"}}
    done = subprocess.run([str(word) for word in words], cwd=cwd, capture_output=True, text=True, check=False, env=path)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


def test_new_plugins_pass_their_own_tests_in_a_fresh_environment(tmp_path):
    call(sys.executable, "-m", "venv", "--without-pip", "new", cwd=tmp_path)
    python = tmp_path / "new" / "bin" / "python"
    pip = (sys.executable, "-m", "pip", "--disable-pip-version-check", "--python", python)
    install = (*pip, "install", "-q", "--no-compile")
    call(*pip, "wheel", "-q", "--no-deps", "--wheel-dir", "wheels", ROOT, cwd=tmp_path)
    call(*install, *(tmp_path / "wheels").glob("*.whl"), cwd=tmp_path)
    koirules = tmp_path / "new" / "bin" / "koirules"
    for name, *option in (("hill_ogon",), ("glitter", "--skin")):
        call(koirules, "new-variety", name, *option, cwd=tmp_path)
        folder = tmp_path / name
        call(*pip, "wheel", "-q", "--no-deps", "--wheel-dir", "built", folder, cwd=tmp_path)
        call(*install, *(tmp_path / "built").glob(f"koirules_{name}-*.whl"), cwd=tmp_path)
        call(*install, "--group", "test", cwd=folder)
        assert " passed" in call(python, "-m", "pytest", "-q", "-W", "error", cwd=folder)
    listed = call(koirules, "plugins", cwd=tmp_path)
    assert "koirules-hill-ogon 0.1.0" in listed
    assert "koirules-glitter 0.1.0" in listed
    assert "10 fish by Lantern Bay" in call(
        koirules, "grade", "tosai_glitter", "glitter/tests/records.csv", cwd=tmp_path
    )


def test_a_name_that_no_file_can_have_is_refused(tmp_path):
    result = CliRunner().invoke(main, ["new-variety", "x" * 300, "--into", str(tmp_path)])
    assert result.exit_code == 2
    assert "The name has 300 letters." in result.stderr
    assert not list(tmp_path.iterdir())


def test_the_answers_are_written_down_again_as_the_readme_says(tmp_path, monkeypatch):
    run("new-variety", "slope_ogon", "--into", tmp_path)
    folder = tmp_path / "slope_ogon"
    monkeypatch.syspath_prepend(str(folder))
    monkeypatch.chdir(folder)
    registry = registry_with(importlib.import_module("koirules_slope_ogon"))
    monkeypatch.setattr(inputs, "load_registry", lambda: registry)
    answers = folder / "tests" / "expected.csv"
    before = list(csv.DictReader(answers.read_text("utf-8").splitlines()))
    readme = (folder / "README.md").read_text("utf-8").replace("\n", " ")
    (words,) = re.findall(r"`\.venv/bin/koirules (grade [^`]*--out[^`]*)`", readme)
    result = run(*words.split())
    assert result.exit_code == 0, result.output
    after = list(csv.DictReader(answers.read_text("utf-8-sig").splitlines()))
    assert [(row["fish"], row["possible"]) for row in after] == [(row["fish"], row["possible"]) for row in before]
