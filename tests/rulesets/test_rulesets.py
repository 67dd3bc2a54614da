"""The rule sets and examples that are shipped: they read without a warning, and give what stands beside them."""

from __future__ import annotations

import csv
import re
from pathlib import Path

import pytest
from click.testing import CliRunner

from koirules import Standard, load_standard, tidy
from koirules.commands import main
from koirules.grading.sample_runs import run_samples
from koirules.problems import Cell, is_refused
from koirules.records.records import Batch, read_records
from koirules.report.result_files import About, write_results
from koirules.results.result import Result
from tests.rulesets import shipped

ROOT = Path(__file__).resolve().parents[2]
RULE_FILES = sorted((*ROOT.glob("rulesets/*/*.koi"), *ROOT.glob("examples/**/*.koi")))
RULESETS = sorted(path.parent for path in ROOT.glob("rulesets/*/standard.koi"))
EXAMPLES = sorted(path.parent for path in ROOT.glob("examples/*/records.csv"))

RULESET_OF = {"01-autumn-lot": "tosai_kohaku"}
"""The rule set that an example without a rule file of its own is graded by."""


def _name(path: Path) -> str:
    return f"{path.parent.name}/{path.name}" if path.is_file() else path.name


def _standard_of(example: Path) -> Standard:
    own = example / "standard.koi"
    return load_standard(own if own.exists() else ROOT / "rulesets" / RULESET_OF[example.name] / "standard.koi")


def _batch(records: Path, standard: Standard) -> Batch:
    return read_records(records, standard.traits)


def _results(batch: Batch, standard: Standard) -> list[Result]:
    return [standard.grade_record(record) for record in batch.records]


def _rows(path: Path) -> list[dict[str, str]]:
    with path.open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def test_there_are_rule_sets_and_examples() -> None:
    assert RULESETS
    assert EXAMPLES


@pytest.mark.parametrize("path", RULE_FILES, ids=_name)
def test_a_rule_file_reads_without_problem_or_warning(path: Path) -> None:
    assert [str(problem) for problem in load_standard(path, shipped.registry()).warnings] == []


@pytest.mark.parametrize("path", RULE_FILES, ids=_name)
def test_a_rule_file_is_tidy(path: Path) -> None:
    # After a change that was meant: `koirules tidy rulesets examples`.
    text = path.read_text(encoding="utf-8")
    assert tidy(text, str(path), registry=shipped.registry(), folder=path.parent) == text


@pytest.mark.parametrize("path", RULE_FILES, ids=_name)
def test_every_sample_in_a_rule_file_holds(path: Path) -> None:
    runs = run_samples(load_standard(path, shipped.registry()).grader)
    assert {run.sample.title: run.failures for run in runs if run.failures} == {}


@pytest.mark.parametrize("folder", RULESETS, ids=_name)
def test_a_rule_set_has_samples_of_its_own(folder: Path) -> None:
    assert load_standard(folder / "standard.koi").rules.samples


@pytest.mark.parametrize("folder", RULESETS, ids=_name)
def test_the_records_of_a_rule_set_get_the_grades_beside_them(folder: Path) -> None:
    standard = load_standard(folder / "standard.koi")
    batch = _batch(folder / "records.csv", standard)
    assert batch.problems == ()
    came = {result.fish: "|".join(result.possible) for result in _results(batch, standard)}
    assert came == {row["fish"]: row["possible"] for row in _rows(folder / "expected.csv")}


@pytest.mark.parametrize("example", EXAMPLES, ids=_name)
def test_the_records_of_an_example_are_read_without_problem_or_warning(example: Path) -> None:
    assert [str(problem) for problem in _batch(example / "records.csv", _standard_of(example)).problems] == []


@pytest.mark.parametrize("example", EXAMPLES, ids=_name)
def test_the_results_of_an_example_are_the_file_beside_it(example: Path, tmp_path: Path) -> None:
    standard = _standard_of(example)
    about = About(title=standard.title, edition=standard.edition, variety=standard.variety, file="", settings={})
    written = tmp_path / "results.csv"
    assert write_results(written, _results(_batch(example / "records.csv", standard), standard), about) is None
    # After a change that was meant: `koirules grade RULES records.csv --out expected.csv`, then read what changed.
    assert written.read_text(encoding="utf-8") == (example / "expected.csv").read_text(encoding="utf-8")


@pytest.mark.parametrize("example", [e for e in EXAMPLES if (e / "spoiled.csv").exists()], ids=_name)
def test_a_spoiled_file_gives_exactly_the_problems_beside_it(example: Path) -> None:
    batch = _batch(example / "spoiled.csv", _standard_of(example))
    assert is_refused(batch.problems)
    came = [_told(problem.site, problem.code) for problem in batch.problems]
    assert came == [(row["row"], row["column"], row["code"]) for row in _rows(example / "spoiled_problems.csv")]


def test_the_shared_page_is_printed_whole_as_the_file_beside_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(ROOT)
    page = ROOT / "examples" / "03-a-shared-page"
    printed = CliRunner().invoke(main, ["tidy", "--whole", str(page / "standard.koi")])
    assert printed.exit_code == 0
    assert printed.stdout == (page / "whole.txt").read_text(encoding="utf-8")


def test_the_shared_page_shows_what_its_readme_says() -> None:
    page = ROOT / "examples" / "03-a-shared-page"
    rows = re.findall(
        r"^\| (R[^|]*) \| ([^|]*) \| ([^|]*) \|", (page / "README.md").read_text(encoding="utf-8"), re.MULTILINE
    )
    for place, file in ((1, page / "club" / "open_kohaku.koi"), (2, page / "standard.koi")):
        standard = load_standard(file)
        batch = _batch(page / "records.csv", standard)
        came = {result.fish: " or ".join(result.possible) for result in _results(batch, standard)}
        assert came == {fish: row[place] for row in rows for fish in row[0].split(", ")}


def test_the_two_editions_compare_as_the_files_beside_them(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.chdir(ROOT)
    folder = Path("examples") / "11-two-editions"
    old, new, lot = (str(folder / name) for name in ("2026.koi", "2027.koi", "lot.csv"))
    moves = tmp_path / "moves.csv"
    printed = CliRunner().invoke(main, ["compare", old, new, "--records", lot, "--out", str(moves)])
    assert printed.exit_code == 0
    # After a change that was meant: the same command with `--out moves.csv > comparison.txt`, then read what changed.
    assert printed.stdout == (folder / "comparison.txt").read_text(encoding="utf-8")
    assert moves.read_text(encoding="utf-8") == (folder / "moves.csv").read_text(encoding="utf-8")


def test_the_two_editions_move_the_fish_as_their_readme_says() -> None:
    folder = ROOT / "examples" / "11-two-editions"
    rows = re.findall(r"^\| (T[0-9]) \| ([^|]*) \| ([^|]*) \|", (folder / "README.md").read_text("utf-8"), re.MULTILINE)
    with (folder / "moves.csv").open(encoding="utf-8", newline="") as file:
        moves = {row["fish"]: (row["old_grade"], row["new_grade"]) for row in csv.DictReader(file)}
    assert {fish: (old.replace(" or ", "|"), new.replace(" or ", "|")) for fish, old, new in rows} == moves


def _told(site: object, code: str) -> tuple[str, str, str]:
    assert isinstance(site, Cell)
    return (str(site.row or ""), site.column or "", code)


def _lot() -> list[Result]:
    example = ROOT / "examples" / "01-autumn-lot"
    standard = _standard_of(example)
    return _results(_batch(example / "records.csv", standard), standard)


def test_the_autumn_lot_is_graded_as_a_lot_would_be() -> None:
    results = _lot()
    assert len(results) >= 64

    def share(*grades: str | None) -> float:
        return sum(result.grade in grades for result in results) / len(results)

    assert 0.10 <= share("keep") <= 0.15
    assert 0.17 <= share("hold") <= 0.25
    assert 0.30 <= share("sell") <= 0.45
    assert 0.15 <= share("pond", "cull") <= 0.25
    assert 0.10 <= share(None) <= 0.20


def test_the_autumn_lot_shows_what_its_readme_says() -> None:
    lot = {result.fish: result for result in _lot()}

    def states(fish: str, kind: str) -> dict[str, str]:
        found = (reason for reason in lot[fish].reasons if reason.kind == kind and reason.state is not None)
        return {reason.name: reason.state.value for reason in found if reason.state is not None}

    assert "bent_spine" in lot["L04"].faults
    assert lot["L04"].grade == "cull"
    assert lot["L04"].score_high - lot["L04"].score_low > 20
    assert states("M14", "fault")["many_specks"] == "held back"
    assert states("M26", "fault")["wide_sashi"] == "held back"
    assert states("U12", "fault")["runt"] == "held back"
    assert states("L11", "fault")["both_eyes"] == "held back"
    assert states("U05", "fault")["fin"] == "held back"
    assert (lot["M02"].grade, lot["M02"].lifts) == ("hold", ("quality",))
    assert states("M02", "grade")["hold"] == "no"
    assert (lot["U03"].grade, lot["U03"].lifts) == ("sell", ("late_line",))
    assert states("U03", "grade")["sell"] == "no"
    assert lot["M20"].grade == "hold"
    assert states("L25", "fault")["unwell"] == "open"
    assert lot["L25"].possible == ("keep", "hold")
    assert states("M22", "fault")["hikui"] == "open"
    assert lot["L10"].score is None
    assert lot["L10"].grade == "sell"
    assert lot["U17"].possible == ("hold", "sell", "pond")


def test_looking_ahead_moves_the_fish_of_the_lot_that_its_readme_names_and_says_so() -> None:
    example = ROOT / "examples" / "01-autumn-lot"
    today = load_standard(ROOT / "rulesets" / "tosai_kohaku" / "today.koi")
    now = {result.fish: result for result in _results(_batch(example / "records.csv", today), today)}
    then = {result.fish: result for result in _lot()}
    moved = {
        fish: (" or ".join(now[fish].possible), " or ".join(then[fish].possible))
        for fish in now
        if now[fish].possible != then[fish].possible
    }
    told = re.findall(
        r"^\| ([LMU]\d\d) \| ([a-z ]+) \| ([a-z ]+) \| [^|]+ \|$",
        (example / "README.md").read_text(encoding="utf-8"),
        re.MULTILINE,
    )
    assert moved == {fish: (before, after) for fish, before, after in told}
    assert len(moved) >= 3
    for fish in moved:
        steps = next(reason.words for reason in then[fish].reasons if reason.name == "steps")
        assert re.match(r"steps of the red, today \w+, when grown: .* \(grown to 60 cm, by a model\)$", steps), fish
    assert today.growth_note == ""


def test_a_fish_of_the_lot_without_a_map_is_not_said_to_be_looked_at_ahead() -> None:
    example = ROOT / "examples" / "01-autumn-lot"
    drawn = {row["fish"] for row in _rows(example / "records.csv") if row["hi_patches"]}
    assert len(drawn) == 39
    lot = _lot()
    assert {result.fish for result in lot if any("by a model" in one.words for one in result.reasons)} <= drawn
    assert sum(any("by a model" in one.words for one in result.reasons) for result in lot) >= 35


def test_looking_ahead_is_all_that_today_leaves_out() -> None:
    folder = ROOT / "rulesets" / "tosai_kohaku"
    ahead, today = (load_standard(folder / name).rules for name in ("standard.koi", "today.koi"))
    assert [part.name for part in ahead.parts] == [part.name for part in today.parts]
    assert set(ahead.settings) - set(today.settings) == {"grown_length", "growth_exponent"}
    assert set(ahead.terms) - set(today.terms) == {"drawn", "red_grown"}


def test_the_look_when_grown_changes_the_verdicts_that_its_readme_names_and_says_so() -> None:
    example = ROOT / "examples" / "04-when-grown"
    today, grown = (load_standard(example / name) for name in ("today.koi", "standard.koi"))
    now, then = (
        {result.fish: result for result in _results(_batch(example / "records.csv", standard), standard)}
        for standard in (today, grown)
    )
    changed = {
        fish: (now[fish].possible, then[fish].possible) for fish in now if now[fish].possible != then[fish].possible
    }
    assert changed == {
        "W02": (("sell",), ("keep",)),
        "W03": (("keep",), ("keep", "sell")),
        "W05": (("sell",), ("keep",)),
        "W09": (("keep",), ("sell",)),
    }
    for fish in changed:
        assert "(grown to 60 cm, by a model)" in then[fish].why
        assert "grown" not in now[fish].why
    assert "growth_exponent = 3.2;" in grown.growth_note
    assert today.growth_note == ""
