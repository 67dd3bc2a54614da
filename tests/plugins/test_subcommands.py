"""Commands of plugins: listed without their code, run by their name, and told with the plugin's name where they fail."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner, Result

from koirules.commands import COMMANDS, main
from koirules.hooks import Subcommand, hookimpl
from koirules.plugins import registry_with
from koirules.plugins.calling import Manager
from koirules.plugins.finding import find_given
from tests.plugins.installing import Install, installer
from tests.plugins.invented import Gives, assert_left_out, lace, only_problem

install = pytest.fixture(installer, name="install")

PLUGIN = """
from koirules.hooks import Subcommand, hookimpl

KOIRULES_API = 2


@hookimpl
def koirules_subcommands():
    return [Subcommand({name!r}, "Count the ponds of an invented farm.", {target!r})]
"""

CODE = """
import click


@click.command()
@click.argument("ponds", type=int)
def command(ponds):
    click.echo(f"{12 // ponds} fish a pond")


no_command = 1
"""


@pytest.fixture(autouse=True)
def kept(tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch) -> Path:
    folder = tmp_path_factory.mktemp("kept")
    monkeypatch.setenv("KOIRULES_CACHE", str(folder))
    return folder


def run(*words: str) -> Result:
    main.__dict__.pop("_plugged", None)
    return CliRunner().invoke(main, words)


def installed(install: Install, tmp_path: Path, name: str = "ponds", target: str = "ponds_code_plugin:command") -> Path:
    (tmp_path / "ponds_code_plugin.py").write_text(CODE, encoding="utf-8")
    return install("invented-koi", PLUGIN.format(name=name, target=target))


def test_help_lists_the_commands_of_plugins_and_imports_nothing_of_them(install: Install, tmp_path: Path) -> None:
    installed(install, tmp_path)
    shows = "import sys; from koirules.commands import main\ntry: main(['--help'])\nfinally: print(*sys.modules)"
    # Bytecode beside the plugin would be something new in a folder where Python looks for plugins.
    env = {**os.environ, "PYTHONPATH": os.pathsep.join([str(tmp_path), *sys.path]), "PYTHONDONTWRITEBYTECODE": "1"}
    told = [
        subprocess.run(
            [sys.executable, "-c", shows],
            env=env,
            capture_output=True,
            text=True,
            check=True,
        ).stdout
        for _ in range(2)
    ]
    for output in told:
        assert "ponds " in output
        assert "Count the ponds of an invented farm." in output
        assert "ponds_code_plugin" not in output.split()
    # The first time the hooks were asked; from then on it is known, and neither plugin nor vocabulary is loaded.
    assert not {"invented_koi_plugin", "koirules.builtin", "pluggy"} & set(told[1].split())


def test_a_command_of_a_plugin_runs(install: Install, tmp_path: Path) -> None:
    installed(install, tmp_path)
    told = run("ponds", "3")
    assert (told.exit_code, told.output) == (0, "4 fish a pond\n")


def test_a_plugin_that_has_changed_is_asked_again(install: Install, tmp_path: Path) -> None:
    file = installed(install, tmp_path)
    assert "ponds " in run("--help").output
    from koirules.plugins import load_registry

    load_registry.cache_clear()
    del sys.modules["invented_koi_plugin"]
    file.write_text(PLUGIN.format(name="tubs-of-spring", target="ponds_code_plugin:command"), encoding="utf-8")
    assert run("tubs-of-spring", "4").output == "3 fish a pond\n"


def test_what_was_kept_and_cannot_be_read_is_asked_again(install: Install, tmp_path: Path, kept: Path) -> None:
    installed(install, tmp_path)
    run("--help")
    (file,) = (kept / "commands").iterdir()
    file.write_bytes(file.read_bytes()[:-9])
    assert "ponds " in run("--help").output


@pytest.mark.parametrize(
    ("target", "told"),
    [
        ("ponds_code_plugin:no_command", "is of type int, and no click.Command"),
        ("ponds_code_plugin:nothing", "AttributeError"),
        ("ponds_nowhere_plugin:command", "No module named 'ponds_nowhere_plugin'"),
    ],
)
def test_a_command_that_cannot_be_fetched_is_told_with_its_plugin(
    install: Install, tmp_path: Path, target: str, told: str
) -> None:
    installed(install, tmp_path, target=target)
    result = run("ponds", "3")
    assert result.exit_code == 2
    assert "plugin lace of invented-koi 1.2" in result.stderr
    assert told in result.stderr


def test_a_command_that_raises_is_told_with_its_plugin(
    install: Install, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    installed(install, tmp_path)
    result = run("ponds", "0")
    assert result.exit_code == 2
    assert "plugin lace of invented-koi 1.2" in result.stderr
    assert "ZeroDivisionError" in result.stderr
    assert "[plugin-command-failed]" in result.stderr
    assert "KOIRULES_TRACEBACK=1" in result.stderr
    monkeypatch.setenv("KOIRULES_TRACEBACK", "1")
    assert isinstance(run("ponds", "0").exception, ZeroDivisionError)


def test_a_name_of_koirules_stays_with_koirules(install: Install, tmp_path: Path) -> None:
    installed(install, tmp_path, name="grade")
    told = run("--help").output
    assert COMMANDS["grade"] in told
    assert "Count the ponds" not in told
    assert "left out" in told
    listed = run("plugins")
    assert 'The command "grade" was left out. That name is already there, from koirules.' in listed.stderr
    assert "invented-koi" in listed.stderr


def commands(*given: Any, name: str = "invented") -> Gives:
    return Gives(lace(name=name), name=name, subcommands=given)


def test_of_two_plugins_the_first_keeps_the_name_and_the_other_all_else() -> None:
    ponds = Subcommand("ponds", "Count the ponds.", "ponds:command")
    registry = registry_with(commands(ponds, name="first"), commands(ponds, name="second"))
    assert registry.subcommands["ponds"].plugin == "first"
    assert only_problem(registry).code == "plugin-name-taken"
    assert "second" in str(only_problem(registry).site)
    assert {"first", "second"} <= {*registry.varieties}


@pytest.mark.parametrize(
    ("command", "code"),
    [
        (Subcommand("My Ponds", "Count.", "ponds:command"), "plugin-bad-command"),
        (Subcommand("ponds-", "Count.", "ponds:command"), "plugin-bad-command"),
        (Subcommand("--help", "Count.", "ponds:command"), "plugin-bad-command"),
        (Subcommand("ponds", " ", "ponds:command"), "plugin-command-help"),
        (Subcommand("ponds", "Count.\nAll.", "ponds:command"), "plugin-command-help"),
        (Subcommand("ponds", "Count.", "ponds.py"), "plugin-command-target"),
        (Subcommand("ponds", "Count.", "ponds:"), "plugin-command-target"),
        (Subcommand("ponds", None, "ponds:command"), "plugin-wrong-type"),  # type: ignore[arg-type]
        ("ponds", "plugin-wrong-type"),
    ],
)
def test_a_command_that_could_not_be_shown_or_run_takes_its_plugin_out(command: Any, code: str) -> None:
    registry = registry_with(commands(command))
    assert_left_out(registry)
    assert only_problem(registry).code == code


def test_a_hook_that_hangs_is_left_behind_and_the_next_plugin_used() -> None:
    from threading import Event

    late = Event()

    class Hangs(Gives):
        @hookimpl
        def koirules_subcommands(self) -> Sequence[Subcommand]:
            late.wait()
            return ()

    manager = Manager()
    told = manager.contributions(find_given(Hangs(lace())), patience=0.05)
    assert isinstance(told, list)
    assert [problem.code for problem in told] == ["plugin-hangs"]
    assert "within 0.05 seconds in koirules_subcommands" in told[0].cause
    assert not isinstance(manager.contributions(find_given(Gives(lace()))), list)
    late.set()
