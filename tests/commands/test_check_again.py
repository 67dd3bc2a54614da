"""`koirules check` of a page that was sound the last time tells the same, and looks again at anything that has changed."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from koirules import cache, read_standard
from koirules.commands import main
from koirules.grading import sample_runs

RULES = """standard "Trial (an invented house)" edition 2026-1 variety kohaku
fault bent "bent spine" if spine is bent: no better than cull
section body "body" worth 100
points stem "tail stem" by tail_stem: thin gives 0, fair gives 6, strong gives 10
grade keep if score at least 60
grade cull otherwise
sample "good" with spine straight, tail_stem strong comes out keep
"""


@pytest.fixture(autouse=True)
def farm(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv(cache.VARIABLE, str(tmp_path / "kept"))
    write(RULES)


@pytest.fixture(autouse=True)
def runs(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """The titles of the standards whose samples were run."""
    seen: list[str] = []
    real = sample_runs.run_samples

    def run_samples(grader: sample_runs.Grader) -> tuple[sample_runs.SampleRun, ...]:
        seen.append(grader.rules.title.text)
        return real(grader)

    monkeypatch.setattr(sample_runs, "run_samples", run_samples)
    return seen


def write(text: str) -> None:
    Path("rules.koi").write_text(text, encoding="utf-8")


def checked(*words: str) -> Result:
    return CliRunner().invoke(main, ["check", "rules.koi", *words])


def test_a_sound_page_is_told_again_without_running_its_samples(runs: list[str]) -> None:
    first, again = checked(), checked()
    assert (again.output, again.exit_code) == (first.output, 0)
    assert "1 sample holds" in again.output
    assert len(runs) == 1


@pytest.mark.parametrize("option", ["--reach", "--changes"])
def test_what_is_asked_for_beside_it_is_worked_out(runs: list[str], option: str) -> None:
    checked()
    assert "sample" in checked(option).output.partition("\n")[2]
    assert len(runs) >= 2


def test_a_page_that_has_changed_is_looked_at_again(runs: list[str]) -> None:
    checked()
    write(RULES.replace("comes out keep", "comes out cull"))
    assert [checked().exit_code, checked().exit_code] == [1, 1]
    assert len(runs) == 3


def test_a_page_whose_base_has_changed_is_looked_at_again(runs: list[str]) -> None:
    base = read_standard(RULES)
    Path("base.koi").write_text(RULES, encoding="utf-8")
    write(f'standard "Changed" edition 2026-2\n  based on "base.koi" edition {base.edition} seal {base.seal}\n')
    assert [checked().exit_code, checked().exit_code] == [0, 0]
    assert runs == ["Changed"]
    Path("base.koi").write_text(RULES.replace("comes out keep", "comes out cull"), encoding="utf-8")
    assert checked().exit_code == 1
    assert runs == ["Changed"] * 2


def test_samples_that_a_function_measures_are_run_each_time(runs: list[str]) -> None:
    stout = 'fault stout "stout" if girth at least 30 cm: no better than cull\nsection'
    write(RULES.replace("section", stout, 1).replace("with spine", "with depth 30 mm, width 28 mm, spine"))
    assert [checked().exit_code, checked().exit_code] == [0, 0]
    assert len(runs) == 2


def test_a_page_with_a_warning_is_looked_at_each_time(runs: list[str]) -> None:
    write(RULES.replace("grade keep", 'term unused "unused" means spine is bent\ngrade keep', 1))
    assert checked().output == checked().output
    assert "warning" in checked().output
    assert len(runs) == 3


def test_the_calendar_is_told_anew(runs: list[str]) -> None:
    write(RULES.replace("variety kohaku\n", "variety kohaku valid from 2019-01-01 until 2020-12-31\n"))
    assert date.today() > date(2020, 12, 31)
    first, again = checked(), checked()
    assert "valid only until 2020-12-31" in again.output
    assert again.output == first.output
    assert len(runs) == 1


def test_nothing_is_kept_where_the_cache_is_off(runs: list[str], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv(cache.VARIABLE, "off")
    assert checked().output == checked().output
    assert len(runs) == 2


@pytest.mark.parametrize("damage", [b"", b"{", b'{"file": 1}', b"[]"])
def test_an_entry_that_was_cut_off_is_made_again(runs: list[str], damage: bytes, tmp_path: Path) -> None:
    first = checked()
    (entry,) = (tmp_path / "kept" / "checks").iterdir()
    entry.write_bytes(damage)
    assert checked().output == first.output
    assert checked().output == first.output
    assert len(runs) == 2
