"""The twenty decisions of the examples: each reads, its samples hold, and its batch comes out as stands beside it."""

import csv
from pathlib import Path

import pytest

from koirules import load_standard
from koirules.grading.sample_runs import run_samples
from koirules.records.decision_files import read_decisions
from koirules.records.records import read_records
from koirules.report.result_files import About, write_results
from koirules.rounds.decision_checks import check_decisions

FOLDER = Path(__file__).resolve().parents[2] / "examples" / "10-twenty-decisions"
DECISIONS = sorted(path.parent for path in FOLDER.glob("*/standard.koi"))


def graded(folder):
    standard = load_standard(folder / "standard.koi")
    batch = read_records(folder / "records.csv", standard.traits)
    assert batch.problems == ()
    decided = ()
    if (folder / "decisions.csv").exists():
        decided, problems = read_decisions(folder / "decisions.csv")
        fish = [record.fish for record in batch.records]
        assert not [*problems, *check_decisions(standard.rules, decided, fish)]
    return standard.grade_records(batch.records, decided)


def test_there_are_twenty_and_the_page_tells_of_each():
    assert [int(folder.name[:2]) for folder in DECISIONS] == list(range(1, 21))
    page = (FOLDER / "README.md").read_text(encoding="utf-8")
    assert all(f"\n| {number} | " in page for number in range(1, 21))


@pytest.mark.parametrize("folder", DECISIONS, ids=lambda folder: folder.name)
def test_it_reads_without_a_warning_and_its_samples_hold(folder):
    standard = load_standard(folder / "standard.koi")
    assert not standard.warnings
    assert not [run.failures for run in run_samples(standard.grader) if run.failures]


@pytest.mark.parametrize("folder", DECISIONS, ids=lambda folder: folder.name)
def test_its_batch_comes_out_as_stands_beside_it(folder, tmp_path):
    path = tmp_path / "results.csv"
    assert write_results(path, graded(folder).results, About("", "", None, "")) is None
    expected = folder / "expected.csv"
    assert path.read_text(encoding="utf-8") == expected.read_text(encoding="utf-8")


def rows(folder):
    with (folder / "expected.csv").open(encoding="utf-8", newline="") as file:
        return {row["fish"]: row for row in csv.DictReader(file)}


@pytest.mark.parametrize(
    ("number", "column", "expected"),
    [
        (1, "grade", {"B01": "keep", "B02": "sell", "B07": "sell"}),
        (2, "grade", {"H2": "keep", "H3": "hold", "H4": "sell", "H5": "cull", "H6": "hold"}),
        (4, "sent_to", {"NEW1": "pond 1", "OLD4": "pond 2", "NEW2": "pond 2", "OLD2": "pond 1"}),
        (6, "next_look", {"K1": "2026-10-27", "K3": ""}),
        (7, "grade", {"D1": "keep", "D2": "sell", "D3": "hold", "D5": "keep"}),
        (8, "grade", {"A1": "keep", "A2": "sell", "A3": "sell", "A4": "keep"}),
        (9, "kept_by", {"Y1": "places", "Y2": "", "Y3": "places", "Y5": "", "Y6": "places"}),
        (10, "grade", {"Z1": "keep", "Z2": "hold", "Z3": "third_look", "Z5": "third_look", "Z6": "cull"}),
        (11, "kept_by", {"G1": "spring|summer|autumn", "G2": "spring|summer", "G4": "spring", "G5": ""}),
        (12, "kept_by", {"F1": "pond", "M2": "show", "M1": "pond|show", "F3": ""}),
        (16, "sent_to", {"J3": "pond", "J4": "hand-pick tank", "J5": "", "J7": "hand-pick tank", "J8": ""}),
        (17, "left_in", {"C3": "", "C4": "variety", "C5": ""}),
        (18, "left_in", {"O02": "order", "O05": "order", "O01": ""}),
        (19, "by_rules", {"N7": "sell", "N1": ""}),
        (20, "kept_by", {"V1": "places", "V2": "places", "V5": "", "V8": ""}),
    ],
)
def test_the_fish_that_the_decision_is_about(number, column, expected):
    (folder,) = FOLDER.glob(f"{number:02}-*")
    found = rows(folder)
    assert {fish: found[fish][column] for fish in expected} == expected


def test_forty_places_are_not_filled_with_fish_that_fail():
    kept = [row for row in rows(DECISIONS[2]).values() if row["kept_by"]]
    assert 30 <= len(kept) <= 40
    assert {row["grade"] for row in kept} == {"fit"}


def test_siblings_count_only_where_thirty_were_measured():
    why = {fish: row["why"] for fish, row in rows(DECISIONS[4]).items()}
    assert any("quarter of its siblings" in text for fish, text in why.items() if fish.startswith("S"))
    assert not any("siblings: +" in text or "siblings: -" in text for fish, text in why.items() if fish.startswith("T"))


def test_a_third_that_fails_is_told_first_and_exactly_a_third_is_not():
    alerts = graded(DECISIONS[14]).alerts
    assert [alert.name for alert in alerts] == ["odome"]
