"""Whole files give what their fish give one by one, however they are parted; nothing half-written stays."""

from __future__ import annotations

import csv
import signal
import subprocess
import sys
import time
from pathlib import Path

import numpy as np
import polars as pl
import pytest
from attrs import evolve
from click.testing import CliRunner
from hypothesis import given
from hypothesis import strategies as st

import koirules
from koirules.commands import main
from koirules.runs.pieces import files_of, pieces_of
from koirules.runs.run import Finished, here, run_files
from koirules.runs.totals import Top, Totals, merge
from koirules.runs.work import Job

RULES = """standard "Lantern Bay trial" edition 1
trait length "length" as number in cm from 0 to 90
trait specks "specks" as count up to 9
trait edge "edge" as scale blurred < fair < sharp
trait lips "lips" as yes or no
fault specked "specked" if specks at least 3: no better than sell
lift lipped "lipped" if lips is yes and edge is sharp: no worse than keep
section body worth 100
points long weight 2 by length: 10 cm gives 0, 20 cm gives 10
points clean by edge: blurred gives 0, fair gives 5, sharp gives 10
grade keep if score at least 50
grade sell otherwise
"""
STANDARD = koirules.read_standard(RULES)
JOB = Job(RULES, "trial.koi", top=5)


def made(rows: int, begin: int = 0) -> pl.DataFrame:
    """Invented records, with holes."""
    numbers = range(begin, begin + rows)
    return pl.DataFrame(
        {
            "fish": [f"F{i}" for i in numbers],
            "length": [i * 7 % 901 / 10 if i % 11 else None for i in numbers],
            "specks": [i % 5 for i in numbers],
            "edge": [("blurred", "fair", "sharp", None)[i % 4] for i in numbers],
            "lips": [i % 3 == 0 for i in numbers],
        }
    )


def one_by_one(frame: pl.DataFrame) -> list[koirules.Result]:
    return [
        STANDARD.grade({name: value for name, value in row.items() if value is not None})
        for row in frame.iter_rows(named=True)
    ]


def run(given: list[Path], out: Path | None = None, **how: bool) -> Finished:
    return run_files(JOB, [str(path) for path in given], here(), "" if out is None else str(out), **how)


def left_in(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())


def test_the_totals_and_the_file_are_those_of_single_fish(tmp_path: Path) -> None:
    frame = made(700)
    frame.write_parquet(tmp_path / "a.parquet", row_group_size=100)
    finished = run([tmp_path / "a.parquet"], tmp_path / "out.csv")
    results = one_by_one(frame)
    assert finished.problems == ()
    assert finished.totals.fish == 700
    assert sum(finished.totals.possible.values()) == 700
    for possible, count in finished.totals.possible.items():
        assert sum("|".join(each.possible) == possible for each in results) == count
    assert finished.totals.faults == {"specked": sum("specked" in each.faults for each in results)}
    assert finished.totals.low == sum(int(each.score_low * 100) for each in results)
    with (tmp_path / "out.csv").open(encoding="utf-8") as file:
        rows = list(csv.DictReader(file))
    for row, result in zip(rows, results, strict=True):
        assert row["fish"] == result.fish
        assert row["possible"] == "|".join(result.possible)
        assert row["score_low"] == f"{result.score_low:.2f}"
        assert row["body_high"] == f"{result.sections['body'].high:.2f}"
        assert row["faults"] == ";".join(result.faults)
        assert row["lifts"] == ";".join(result.lifts)
    ranks = {"keep": 0, "sell": 1}
    best = sorted(
        results, key=lambda each: (ranks[each.possible[0]], len(each.possible) > 1, -each.score_low, -each.score_high)
    )
    assert [each.fish for each in finished.totals.best] == [each.fish for each in best[:5]]


def test_a_text_file_gives_what_parquet_gives(tmp_path: Path) -> None:
    frame = made(300)
    frame.write_parquet(tmp_path / "a.parquet")
    with (tmp_path / "b.csv").open("w", encoding="utf-8") as file:
        file.write("# weighed by the pond\n\nfish;length (mm);specks;edge;lips\n")
        for name, length, specks, edge, lips in frame.iter_rows():
            cells = ("" if length is None else f"{length * 10:g}", str(specks), edge or "", "yes" if lips else "No")
            file.write(";".join((name, *cells)) + "\n")
    one, other = run([tmp_path / "a.parquet"]).totals, run([tmp_path / "b.csv"]).totals
    assert [(each.fish, each.low) for each in one.best] == [(each.fish, each.low) for each in other.best]
    assert evolve(one, best=()) == evolve(other, best=())


def test_parts_and_whole_give_the_same(tmp_path: Path) -> None:
    frame = made(1_000)
    whole, parted = tmp_path / "whole", tmp_path / "parted"
    whole.mkdir()
    parted.mkdir()
    frame.write_parquet(whole / "all.parquet", row_group_size=150)
    for number, begin in enumerate(range(0, 1_000, 130)):
        frame[begin : begin + 130].write_parquet(parted / f"{number}.parquet")
    one, many = run([whole]).totals, run([parted]).totals
    assert (one.fish, one.possible, one.scores, one.low, one.high, one.faults) == (
        many.fish,
        many.possible,
        many.scores,
        many.low,
        many.high,
        many.faults,
    )
    assert [each.fish for each in one.best] == [each.fish for each in many.best]
    pieces, _ = pieces_of([str(whole / "all.parquet")], most_rows=300)
    assert [piece.rows for piece in pieces] == [300, 300, 300, 100]
    assert merge(outcome.totals for outcome in reversed(list(here()(JOB, pieces)))).scores == one.scores
    run([parted], tmp_path / "joined.parquet")
    run([whole], tmp_path / "single.parquet")
    assert pl.read_parquet(tmp_path / "joined.parquet").equals(pl.read_parquet(tmp_path / "single.parquet"))
    run([parted], tmp_path / "folder")
    assert left_in(tmp_path / "folder") == [f"part-{number:06}.parquet" for number in range(8)]
    assert left_in(tmp_path) == ["folder", "joined.parquet", "parted", "single.parquet", "whole"]


def test_a_broken_file_is_named_and_nothing_is_written_unless_it_is_to_be_left_out(tmp_path: Path) -> None:
    made(50).write_parquet(tmp_path / "a.parquet")
    made(50, 50).write_parquet(tmp_path / "b.parquet")
    made(50, 100).write_parquet(tmp_path / "c.parquet", row_group_size=10)
    whole = (tmp_path / "c.parquet").read_bytes()
    middle = len(whole) // 3
    (tmp_path / "b.parquet").write_bytes((tmp_path / "b.parquet").read_bytes()[:200])
    (tmp_path / "c.parquet").write_bytes(whole[:middle] + bytes(200) + whole[middle + 200 :])
    given = [tmp_path / f"{name}.parquet" for name in "abc"]
    failed = run(given, tmp_path / "out.csv")
    assert failed.failed
    assert "b.parquet" in str(failed.problems[0].site)
    assert left_in(tmp_path) == ["a.parquet", "b.parquet", "c.parquet"]
    rest = run(given, tmp_path / "out.csv", leave_out=True)
    assert not rest.failed
    assert rest.totals.fish == 50
    assert [Path(file).name for file in rest.left_out] == ["b.parquet", "c.parquet"]
    assert pl.read_csv(tmp_path / "out.csv").height == 50


def test_wrong_cells_are_told_with_the_row_of_the_file(tmp_path: Path) -> None:
    text = 'fish,length,edge\nF1,12,sharp\n,13,fair\n\nF3,200,fair\n# a note\nF4,14,blunt\n"F\n5",14,fair\nF1,14,fair\n'
    (tmp_path / "a.csv").write_text(text, encoding="utf-8")
    problems = run([tmp_path / "a.csv"], tmp_path / "out.csv").problems
    assert {(problem.site.row, problem.code) for problem in problems} == {
        (3, "unnamed-fish"),
        (5, "value-out-of-range"),
        (7, "value-unknown-word"),
        (9, "doubled-fish"),
    }
    assert left_in(tmp_path) == ["a.csv"]


def test_texts_of_records_never_become_formulas(tmp_path: Path) -> None:
    (tmp_path / "a.csv").write_text("fish,length,note\n=1+1,12,@x\nF2,13,a;=b\n", encoding="utf-8")
    job = Job(RULES, "trial.koi", labels=("note",))
    run_files(job, [str(tmp_path / "a.csv")], here(), str(tmp_path / "out.csv"))
    with (tmp_path / "out.csv").open(encoding="utf-8") as file:
        rows = list(csv.DictReader(file))
    assert [row["fish"] for row in rows] == ["'=1+1", "F2"]
    assert [row["note"] for row in rows] == ["'@x", "a;'=b"]


def test_files_folders_and_patterns_are_found_in_order(tmp_path: Path) -> None:
    for name in ("b.csv", "a.parquet", "notes.txt", ".hidden.csv"):
        (tmp_path / name).write_text("fish\n", encoding="utf-8")
    assert [Path(file).name for file in files_of([str(tmp_path)])[0]] == ["a.parquet", "b.csv"]
    assert [Path(file).name for file in files_of([str(tmp_path / "*.csv")])[0]] == ["b.csv"]
    files, problems = files_of([str(tmp_path / "x.csv"), str(tmp_path / "*.parquett"), str(tmp_path / "notes.txt")])
    assert files == ()
    assert [problem.code for problem in problems] == ["no-such-file", "no-record-files", "one-file-alone"]
    (tmp_path / "empty").mkdir()
    assert [problem.code for problem in files_of([str(tmp_path / "empty")])[1]] == ["no-record-files"]


def test_a_folder_that_is_there_is_never_written_into(tmp_path: Path) -> None:
    made(5).write_parquet(tmp_path / "a.parquet")
    (tmp_path / "out").mkdir()
    assert [problem.code for problem in run([tmp_path / "a.parquet"], tmp_path / "out").problems] == ["unwritable"]
    assert left_in(tmp_path / "out") == []


def test_the_command_takes_whole_files_and_one_file_of_results(tmp_path: Path) -> None:
    rules = tmp_path / "trial.koi"
    rules.write_text(RULES, encoding="utf-8")
    for number in range(2):
        made(300, number * 300).write_parquet(tmp_path / f"{number}.parquet")
    words = ["grade", str(rules), str(tmp_path / "*.parquet"), "--top", "2"]
    done = CliRunner().invoke(main, [*words, "--out", str(tmp_path / "out.parquet")])
    assert done.exit_code == 0, done.output
    assert "600 items by Lantern Bay trial" in done.output
    assert pl.read_parquet(tmp_path / "out.parquet").height == 600
    best = run([tmp_path / "0.parquet", tmp_path / "1.parquet"]).totals.best
    assert best[0].fish in done.output
    assert best[2].fish not in done.output
    twice = CliRunner().invoke(main, [*words, "--out", str(tmp_path / "a.csv"), "--out", str(tmp_path / "b.csv")])
    assert twice.exit_code == 2
    assert "[one-result-file]" in twice.output
    for name, code in (
        ("a.docx", "unknown-ending"),
        ("a.xlsx", "not-of-whole-files"),
        ("a.html", "not-of-whole-files"),
    ):
        wrong = CliRunner().invoke(main, [*words, "--out", str(tmp_path / name)])
        assert wrong.exit_code == 2
        assert f"[{code}]" in wrong.output


def test_results_never_take_the_place_of_records_or_stand_among_them(tmp_path: Path) -> None:
    made(5).write_parquet(tmp_path / "a.parquet")
    for records in (tmp_path / "*.parquet", tmp_path):
        failed = run([records], tmp_path / "a.parquet")
        assert [problem.code for problem in failed.problems] == ["results-among-records"]
    assert pl.read_parquet(tmp_path / "a.parquet").height == 5


def test_labels_stand_under_their_own_names_in_whatever_order_files_have_them(tmp_path: Path) -> None:
    records = tmp_path / "records"
    records.mkdir()
    (records / "a.csv").write_text("fish,length,pond,line\nF1,12,P1,L1\n", encoding="utf-8")
    (records / "b.csv").write_text("fish,line,length,pond\nF2,L2,13,P2\n", encoding="utf-8")
    (records / "c.csv").write_text("fish,length\n", encoding="utf-8")
    for ending in ("csv", "parquet"):
        out = tmp_path / f"out.{ending}"
        job = Job(RULES, "trial.koi", labels=())
        assert run_files(job, [str(records)], here(), str(out)).problems != ()
        job = Job(LABELLED, "trial.koi")
        assert run_files(job, [str(records)], here(), str(out)).problems == ()
        frame = pl.read_csv(out) if ending == "csv" else pl.read_parquet(out)
        assert frame.select("fish", "pond", "line").rows() == [("F1", "P1", "L1"), ("F2", "P2", "L2")]


LABELLED = RULES.replace("fault specked", 'trait pond "pond" as label\ntrait line "line" as label\nfault specked', 1)


def test_a_file_without_fish_gives_a_file_of_results_with_headings_alone(tmp_path: Path) -> None:
    (tmp_path / "a.csv").write_text("fish,length\n", encoding="utf-8")
    finished = run([tmp_path / "a.csv"], tmp_path / "out.parquet")
    assert finished.problems == ()
    assert pl.read_parquet(tmp_path / "out.parquet").columns[:2] == ["fish", "grade"]


def test_where_every_file_is_broken_nothing_is_written(tmp_path: Path) -> None:
    (tmp_path / "a.parquet").write_bytes(b"PAR1")
    failed = run([tmp_path / "a.parquet"], tmp_path / "out.csv", leave_out=True)
    assert failed.failed
    assert "nothing-graded" in {problem.code for problem in failed.problems}
    assert left_in(tmp_path) == ["a.parquet"]


@pytest.mark.parametrize(
    ("content", "code"),
    [
        (b"fish,length\rF1,12\r", "unreadable-file"),
        (b"fish,length\nF\0,12\n", "zero-bytes"),
        ("fish,length\nFü,12\n".encode("cp1252"), "not-utf8"),
        (b"fish,length\nF1,12,,,\nF2,13,,14\n", "row-too-long"),
        (b"fish,length\nF1,12" + b"," * 40 + b"7\n", "row-too-long"),
        (b"fish,length\nF1,12" + b"," * 40 + b"\n", "row-too-long"),
        (b'fish,length\nF1,12\nF2,"13" cm\n', "unreadable-file"),
        (b'fish,length\nF1,12\n"F2,13\nF3,14\n', "unreadable-file"),
    ],
)
def test_text_that_is_none_is_told_as_in_small_files(tmp_path: Path, content: bytes, code: str) -> None:
    (tmp_path / "a.csv").write_bytes(content)
    assert [problem.code for problem in run([tmp_path / "a.csv"]).problems] == [code]


def test_a_quotation_mark_inside_of_a_cell_is_told_with_its_row(tmp_path: Path) -> None:
    (tmp_path / "a.csv").write_bytes(b'fish,length\nF1,12\nF2,"13" cm\n')
    (problem,) = run([tmp_path / "a.csv"]).problems
    assert "a cell of row 3 has a quotation mark inside" in problem.cause


@pytest.mark.parametrize("error", [pl.exceptions.ColumnNotFoundError, pl.exceptions.ComputeError, TypeError])
def test_what_goes_wrong_with_a_sound_text_is_no_mistake_in_it(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, error: type[Exception]
) -> None:
    from koirules.records import large_csv

    def fails(*_args: object, **_options: object) -> None:
        raise error("a mistake of ours")

    (tmp_path / "a.csv").write_text("fish,length\nF1,12\n", encoding="utf-8")
    _, _, frames = large_csv.open_csv(tmp_path / "a.csv")
    monkeypatch.setattr(pl, "read_csv", fails)
    with pytest.raises(error, match="a mistake of ours"):
        list(frames(None, None))


def test_a_run_that_is_ended_from_outside_leaves_nothing_behind(tmp_path: Path) -> None:
    rules = tmp_path / "trial.koi"
    rules.write_text(RULES, encoding="utf-8")
    for number in range(30):
        made(20_000).write_parquet(tmp_path / f"{number:02}.parquet")
    before = left_in(tmp_path)
    words = ["-m", "koirules", "grade", str(rules), str(tmp_path / "*.parquet"), "--out", str(tmp_path / "out.csv")]
    running = subprocess.Popen([sys.executable, *words], cwd=Path(__file__).parents[2], stdout=subprocess.DEVNULL)
    until = time.monotonic() + 60
    while running.poll() is None and left_in(tmp_path) == before:
        assert time.monotonic() < until
        time.sleep(0.01)
    running.send_signal(signal.SIGTERM)
    assert running.wait(60) == 128 + signal.SIGTERM
    assert left_in(tmp_path) == before


# ---- Totals ------------------------------------------------------------------------------------------------------

counts = st.dictionaries(st.sampled_from(["keep", "sell", "keep|sell"]), st.integers(1, 50), max_size=3)
tops = st.builds(
    Top,
    st.integers(0, 3),
    st.booleans(),
    st.integers(-900, 0),
    st.integers(-900, 0),
    st.integers(0, 9),
    st.integers(0, 99),
    st.text(max_size=2),
    st.just("keep"),
)
totals = st.builds(
    Totals,
    st.integers(0, 99),
    counts,
    st.dictionaries(st.integers(0, 900), st.integers(1, 9)),
    st.integers(0, 999),
    st.integers(0, 999),
    counts,
    st.lists(tops, max_size=4, unique=True).map(lambda best: tuple(sorted(best)[:4])),
    st.just(4),
)


@given(totals, totals, totals)
def test_totals_merge_in_any_order(one: Totals, two: Totals, three: Totals) -> None:
    assert one.merged(two).merged(three) == one.merged(two.merged(three)) == three.merged(one).merged(two)
    assert merge([one]) == one


@given(st.dictionaries(st.integers(0, 1_000), st.integers(1, 9), min_size=1), st.integers(0, 100))
def test_percentiles_of_counts_are_those_of_numpy(scores: dict[int, int], percent: int) -> None:
    # numpy.percentile, method "linear": type 7 of Hyndman and Fan.
    each = [score / 100 for score, count in scores.items() for _ in range(count)]
    found = Totals(scores=scores).percentile(percent)
    assert found is not None
    assert float(found) == pytest.approx(np.percentile(each, percent), abs=1e-9)
