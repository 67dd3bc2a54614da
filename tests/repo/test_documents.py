"""The documents are true: what they show is run, what there is is named."""

import ast
import re
from pathlib import Path
from types import SimpleNamespace
from typing import get_args

import pytest
from click.testing import CliRunner

import koirules
from koirules.classes.reading import read_table_text
from koirules.classes.table import ClassTable
from koirules.commands import main
from koirules.plugins.calling import HOOKS
from koirules.testing import registry_with, sample_runs
from koirules.vocabulary.kinds import Kind
from koirules.vocabulary.units import UNITS
from tests.repo.pages import DOCUMENTS, GUIDE, REFERENCE, ROOT, blocks_of
from tests.repo.snippets import whole


def blocks(kind):
    return [
        pytest.param(block.text, id=f"{path.relative_to(ROOT)}:{block.line}")
        for path in DOCUMENTS
        for block in blocks_of(path.read_text(encoding="utf-8"))
        if block.kind == kind and block.name not in MEANT_TO_BE_REFUSED
    ]


MEANT_TO_BE_REFUSED = {"slip.koi", "words.koi"}
"""Rule files of the guide that show a mistake; what is said of them stands beside them."""


@pytest.mark.parametrize("snippet", blocks("koi"))
def test_every_rule_snippet_reads_and_its_samples_hold(snippet, tmp_path):
    path = tmp_path / "snippet.koi"
    path.write_text(whole(snippet), encoding="utf-8")
    assert not [run.failures for run in sample_runs(path) if run.failures]


@pytest.mark.parametrize("snippet", blocks("python"))
def test_every_python_snippet_parses(snippet):
    ast.parse(snippet)


def test_the_plugin_of_the_guide_works():
    (guide,) = [p.values[0] for p in blocks("python") if "koirules_vocabularies" in p.values[0]]
    scope: dict[str, object] = {}
    exec(guide, scope)  # noqa: S102
    given = {name: scope[name] for name in ("KOIRULES_API", "koirules_vocabularies")}
    registry = registry_with(SimpleNamespace(**given))
    assert not registry.problems
    standard = koirules.read_standard(
        'standard "try" edition 1 variety hill_ogon\ngrade a otherwise', registry=registry
    )
    assert "metal_shine" in standard.traits
    assert "length" in standard.traits


def test_every_command_is_in_the_reference():
    reference = (REFERENCE / "commands.md").read_text(encoding="utf-8")
    listed = CliRunner().invoke(main, ["--help"]).output.split("Commands of plugins:")[0]
    commands = re.findall(r"^  ([\w-]+)  ", listed.split("Commands:")[1], re.MULTILINE)
    assert commands
    for command in commands:
        part = re.search(rf"^## koirules {command}\n(.*?)(?=^## |\Z)", reference, re.DOTALL | re.MULTILINE)
        assert part is not None, command
        helped = CliRunner().invoke(main, [command, "--help"])
        assert helped.exit_code == 0, helped.output
        for option in set(re.findall(r"--[a-z-]+", helped.output)) - {"--help"}:
            assert option in part[1], f"{command} {option}"


def test_every_public_name_is_documented_somewhere():
    text = "\n".join(path.read_text(encoding="utf-8") for path in DOCUMENTS)
    inner = {"Cell", "Place", "Problem", "KoirulesError", "Reason", "Result", "SectionResult", "State", "Standard"}
    for name in koirules.__all__:
        assert getattr(koirules, name).__doc__ or name == "hookimpl"
        assert name in text or name in inner, name


def test_every_problem_code_is_seen_in_a_test_or_a_case():
    codes = set()
    for path in (ROOT / "koirules" / "problems").glob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "Problem" and node.args:
                first = node.args[0]
                if isinstance(first, ast.Constant):
                    codes.add(first.value)
    assert len(codes) > 50
    tests = "\n".join(
        path.read_text(encoding="utf-8", errors="replace")
        for path in (ROOT / "tests").rglob("*")
        if path.suffix in {".py", ".koi", ".expected"} and path.name != Path(__file__).name
    )
    unseen = sorted(code for code in codes if code not in tests)
    assert not unseen


def test_the_table_of_classes_in_the_guide_reads():
    page = (GUIDE / "how-to" / "judge-a-show.md").read_text(encoding="utf-8")
    (example,) = [block.text for block in blocks_of(page) if block.name == "show.toml"]
    table = read_table_text(example, "show.toml")
    assert isinstance(table, ClassTable), table
    assert table.sizes.told(table.sizes.sizes[0]) == "over 5 cm up to 12 cm"


def test_every_file_that_the_page_for_developers_names_is_there():
    """Names with capitals (NAME) or `*` stand for several files."""
    page = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    there = {f"/{path.relative_to(ROOT)}{'/' if path.is_dir() else ''}" for path in files_and_folders()}
    named = set(re.findall(r"`([a-z_/]+(?:\.py|\.lark|/))`", page))
    assert len(named) > 60
    assert not sorted(name for name in named if not any(path.endswith(f"/{name}") for path in there))


def files_and_folders():
    for room in ("koirules", "plugins", "tests", "examples"):
        yield ROOT / room
        yield from (path for path in (ROOT / room).rglob("*") if "__pycache__" not in path.parts)


def test_the_page_for_developers_is_short():
    lines = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8").splitlines()
    assert len(lines) <= 350
    headings = [line for line in lines if line.startswith("## ")]
    assert headings[:2] == ["## The map", "## Recipes"]
    assert headings[-1] == "## Where the code falls short"


def test_what_can_be_plugged_in_names_every_hook_kind_and_unit():
    text = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    table = text[text.index("### What can be plugged in") : text.index("## Working on it")]
    kinds = [kind.__name__ for kind in get_args(Kind)]
    missing = [name for name in (*HOOKS, *kinds, *UNITS) if f"`{name}`" not in table]
    assert missing == []
    assert [
        path for path in re.findall(r"`((?:plugins|koirules|tests)/[^`]*)`", table) if not (ROOT / path).exists()
    ] == []
