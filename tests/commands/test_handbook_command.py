"""`koirules handbook`."""

from pathlib import Path

import pytest
from click.testing import CliRunner

from koirules.commands import main

RULES = """standard "Tin Bucket (invented)" edition 1 variety kohaku
fault bent "bent spine" ja "背曲がり" if spine is bent: no better than cull
section body "body" worth 100
points stem "tail stem" by tail_stem: thin gives 0, fair gives 6, strong gives 10
grade keep if score at least 75
grade cull otherwise
sample "a strong one" with spine straight, tail_stem strong
  comes out keep
"""


@pytest.fixture(autouse=True)
def bucket(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("house.koi").write_text(RULES, encoding="utf-8")


def run(*words):
    result = CliRunner().invoke(main, list(words))
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


@pytest.mark.parametrize("ending", ["html", "md"])
def test_it_writes_the_page_with_the_cautions(ending):
    result = run("handbook", "house.koi", "--out", f"page.{ending}")
    assert (result.exit_code, result.stderr) == (0, "")
    assert result.stdout == f"Wrote page.{ending}: 1 section, 1 criterion, 1 fault, 2 grades, 1 example.\n"
    text = Path(f"page.{ending}").read_text(encoding="utf-8")
    assert "not an instruction to kill" in text
    assert "with wet hands" in text


def test_it_takes_the_language_of_titles():
    assert run("handbook", "house.koi", "--out", "page.md", "--language", "JA").exit_code == 0
    assert "背曲がり" in Path("page.md").read_text(encoding="utf-8")
    result = run("handbook", "house.koi", "--out", "page.md", "--language", "fr", "--replace")
    assert 'No title in house.koi is given in the language "fr"' in result.stderr
    assert "bent spine" in Path("page.md").read_text(encoding="utf-8")


def test_a_sample_that_comes_out_otherwise_is_told_on_the_page_and_in_the_exit_status():
    Path("house.koi").write_text(RULES.replace("comes out keep", "comes out cull"), encoding="utf-8")
    result = run("handbook", "house.koi", "--out", "page.md")
    assert result.exit_code == 1
    assert 'sample "a strong one" should come out cull, but comes out keep' in result.stderr
    page = Path("page.md").read_text(encoding="utf-8")
    assert "**Not as the standard says: **should come out cull" in page.replace(":** ", ": **")


def test_nothing_is_written_where_something_is_wrong():
    assert "unknown-ending" in run("handbook", "house.koi", "--out", "page.pdf").stderr
    assert "no-such-folder" in run("handbook", "house.koi", "--out", "no/page.md").stderr
    Path("house.koi").write_text(RULES.replace("is bent", "is bentt"), encoding="utf-8")
    result = run("handbook", "house.koi", "--out", "page.md")
    assert result.exit_code == 2
    assert "bentt" in result.stderr
    assert [path.name for path in Path().iterdir()] == ["house.koi"]


def test_remarks_are_shown_on_demand():
    Path("house.koi").write_text(RULES.replace("fault bent", "# It never mends.\nfault bent"), encoding="utf-8")
    run("handbook", "house.koi", "--out", "plain.md")
    run("handbook", "house.koi", "--out", "remarks.md", "--remarks")
    assert "It never mends." not in Path("plain.md").read_text(encoding="utf-8")
    assert "remark: It never mends." in Path("remarks.md").read_text(encoding="utf-8")
