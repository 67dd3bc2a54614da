"""Every problem code has its page, no page lacks a code, and what a page shows makes its problem."""

import ast
import re
from pathlib import Path

import pytest
from click.testing import CliRunner

import koirules
from koirules.classes.placing import check_measure
from koirules.classes.reading import read_table_text
from koirules.commands import main
from koirules.prizes.reading import read_occasion_text
from koirules.problems.pages import AREAS, pages
from koirules.records.records import read_records
from koirules.testing import registry_with
from tests.repo.snippets import whole

ROOT = Path(__file__).parents[2] / "koirules"
MAKERS = {"Problem": 0, "Misread": 0, "_left_out": 0}
SHOWN = [page for page in pages().values() if page.wrong]
BOX = registry_with()
# A standard that reads what follows from girth and length, and from a map.
READER = koirules.read_standard(
    whole("fault odd if girth_ratio below 0.3 or hi_cover below 1 %: no better than cull"), registry=BOX
)


def spelt(node):
    """The texts that the first argument of a problem can be; a text made of parts as a pattern."""
    match node:
        case ast.Constant(value=str(text)):
            return {re.escape(text)}
        case ast.IfExp(body=body, orelse=orelse):
            return spelt(body) | spelt(orelse)
        case ast.JoinedStr(values=parts):
            return {"".join(re.escape(p.value) if isinstance(p, ast.Constant) else "[a-z]+" for p in parts)}
        case _:
            return set()


def codes():
    found = set()
    for path in [*(ROOT / "problems").rglob("*.py"), *(ROOT / "vocabulary").glob("*.py")]:
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and getattr(node.func, "id", "") in MAKERS:
                first = node.args[0] if node.args else next((k.value for k in node.keywords if k.arg == "code"), None)
                found |= spelt(first)
    return found


def problems_of(page, text, folder):
    text = text.strip("\n")
    if page.area in {"rules", "sharing"}:
        path = folder / "rules.koi"
        path.write_text(text if page.whole else whole(text), encoding="utf-8")
        try:
            return koirules.load_standard(path, BOX).warnings
        except koirules.StandardError as error:
            return error.problems
    if page.area == "classes":
        table = read_table_text(text, "classes.toml")
        wrong = table if isinstance(table, tuple) else [check_measure(table, BOX.varieties["kohaku"].traits)]
        return [problem for problem in wrong if problem is not None]
    if page.area == "prizes":
        occasion = read_occasion_text(text, "day.toml")
        return occasion if isinstance(occasion, tuple) else ()
    path = folder / (page.named or "records.csv")
    path.write_text(text + "\n", encoding="utf-8")
    read = read_records(path, BOX.varieties["kohaku"].traits)
    return [*read.problems, *READER.measured(read.records, path.name).problems]


def test_every_code_has_its_page_and_no_page_lacks_a_code():
    patterns = codes()
    assert len(patterns) > 150
    missing = sorted(p for p in patterns if not any(re.fullmatch(p, code) for code in pages()))
    assert not missing, "write a page in koirules/problems/pages"
    left = sorted(code for code in pages() if not any(re.fullmatch(p, code) for p in patterns))
    assert not left


@pytest.mark.parametrize("page", pages().values(), ids=lambda page: page.code)
def test_a_page_says_what_it_means_how_it_comes_about_and_the_mend(page):
    assert page.area in AREAS
    assert page.means.endswith(".")
    assert page.mend[-1] in ".…"
    assert bool(page.wrong) == bool(page.right)
    assert bool(page.wrong) != bool(page.when)


@pytest.mark.parametrize("page", SHOWN, ids=lambda page: page.code)
def test_the_example_of_a_page_makes_its_problem(page, tmp_path):
    assert page.code in {problem.code for problem in problems_of(page, page.wrong, tmp_path)}


@pytest.mark.parametrize("page", SHOWN, ids=lambda page: page.code)
def test_the_mended_example_of_a_page_has_no_problem(page, tmp_path):
    assert {problem.code for problem in problems_of(page, page.right, tmp_path)} <= {"score-unread"}


def explained(*words):
    return CliRunner().invoke(main, ["explain", *words])


def test_explain_shows_the_page_of_a_code():
    result = explained("[sign-for-word]")
    assert result.exit_code == 0
    assert "shimi_count >= 3" in result.output
    assert "shimi_count at least 3" in result.output


def test_explain_alone_lists_every_code():
    result = explained()
    assert result.exit_code == 0
    assert set(pages()) <= set(result.output.split())


def test_a_code_that_is_nearly_one_is_answered_with_that():
    result = explained("sign-for-wrod")
    assert result.exit_code == 2
    assert 'Did you mean "sign-for-word"?' in result.stderr


def test_a_code_that_is_no_code_is_told_where_the_list_is():
    result = explained("\x1b[31mred")
    assert result.exit_code == 2
    assert "\x1b" not in result.stderr
    assert "lists every code" in result.stderr
