"""`koirules tidy` as its users run it."""

from pathlib import Path

import pytest
from click.testing import CliRunner

import koirules
from koirules.commands import main

UNTIDY = 'standard "Lantern Bay (invented)" edition 1\n\n\ngrade a if (yes is yes) # always\ngrade b otherwise'
SPREAD = 'standard "Lantern Bay (invented)" edition 1 variety kohaku\ngrade a if kiwa  at least sharp # keen\ngrade b otherwise'
TIDY = """standard "Lantern Bay (invented)"
  edition 1
  variety kohaku
grade a if kiwa at least sharp  # keen
grade b otherwise
"""


@pytest.fixture(autouse=True)
def farm(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("page.koi").write_text(SPREAD, encoding="utf-8")


def run(*words):
    result = CliRunner().invoke(main, ["tidy", *words])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


def test_a_page_is_laid_out_and_then_left_alone():
    first = run("page.koi")
    assert (first.exit_code, first.output) == (0, "Tidied page.koi.\n")
    assert Path("page.koi").read_bytes() == TIDY.encode()
    again = run("page.koi")
    assert (again.exit_code, again.output) == (0, "1 file: tidy already.\n")


def test_check_writes_nothing_and_tells_by_its_status():
    result = run("--check", "page.koi")
    assert (result.exit_code, result.output) == (
        1,
        "page.koi is not tidy.\n1 file would be laid out anew; 0 tidy already.\n",
    )
    assert Path("page.koi").read_text(encoding="utf-8") == SPREAD
    Path("page.koi").write_text(TIDY, encoding="utf-8")
    assert run("--check", "page.koi").exit_code == 0


def test_a_page_with_problems_is_left_as_it_is_and_the_others_are_tidied():
    for name, text in (("broken.koi", SPREAD.replace("sharp", "sharpp")), ("odd.koi", 'standard "x" edition 1\nfish')):
        Path(name).write_text(text, encoding="utf-8")
    Path("latin.koi").write_bytes(SPREAD.replace("keen", "\xe9").encode("latin-1"))
    before = {path: path.read_bytes() for path in Path().iterdir() if path.name != "page.koi"}
    result = run("broken.koi", "odd.koi", "latin.koi", "none.koi", "page.koi")
    assert result.exit_code == 2
    for code in ("unknown-step", "unknown-head", "not-utf8", "unreadable-file"):
        assert f"[{code}]" in result.output
    assert {path: path.read_bytes() for path in before} == before
    assert Path("page.koi").read_bytes() == TIDY.encode()


def test_signs_become_words_where_nothing_else_is_wrong():
    signs = SPREAD.replace("at least", ">=").replace("sharp #", "sharp and spine == straight #").replace('"', "“", 1)
    Path("page.koi").write_text(signs.replace('ed)"', "ed)”"), encoding="utf-8")
    assert run("page.koi").output == "Tidied page.koi (3 signs mended).\n"
    assert Path("page.koi").read_text(encoding="utf-8") == TIDY.replace("sharp ", "sharp and spine is straight ", 1)


def test_signs_stay_where_something_else_is_wrong():
    signs = SPREAD.replace("at least sharp", ">= 3")
    Path("page.koi").write_text(signs, encoding="utf-8")
    result = run("page.koi")
    assert result.exit_code == 2
    assert "[sign-for-word]" in result.output
    assert Path("page.koi").read_text(encoding="utf-8") == signs


def test_a_folder_stands_for_the_rule_files_in_it_but_not_in_hidden_ones():
    for folder in ("inner", ".hidden"):
        Path(folder).mkdir()
        Path(folder, "more.koi").write_text(SPREAD, encoding="utf-8")
    assert run(".", "page.koi").output == "Tidied inner/more.koi.\nTidied page.koi.\n"
    assert Path(".hidden/more.koi").read_text(encoding="utf-8") == SPREAD
    Path("empty").mkdir()
    assert run("empty").output == "There is no rule file in empty.\n"


def test_what_this_version_cannot_work_out_is_laid_out_too():
    Path("page.koi").write_text(SPREAD + "\nround first keep those with  grade at least a\n", encoding="utf-8")
    assert run("page.koi").exit_code == 0
    assert "round first keep those with grade at least a\n" in Path("page.koi").read_text(encoding="utf-8")


def test_the_library_tidies_a_text_or_says_why_not():
    assert koirules.tidy(SPREAD) == TIDY
    with pytest.raises(koirules.StandardError) as found:
        koirules.tidy(UNTIDY.replace("grade b otherwise", "grade b"))
    assert "ends-too-early" in {problem.code for problem in found.value.problems}
