"""Whole files whose fish are compared: figures and rounds over all of them, whatever the files and whoever does them."""

from __future__ import annotations

import random
import shutil
from functools import partial
from pathlib import Path

import polars as pl
import pytest

import koirules
from koirules.problems import is_refused
from koirules.runs import on_dask, on_spark
from koirules.runs.run import here, run_files
from koirules.runs.work import Job

RULES = """standard "Tin Bucket, whole files" edition 1 variety kohaku
setting places = 40 from 1 to 100
section body worth 60
points stem by tail_stem: thin gives 0, fair gives 6, strong gives 10
points size by batch standing of length among the same (pond): 0 % gives 0, 100 % gives 10
section skin worth 40
points edge by kiwa: blurred gives 0, fair gives 4, sharp gives 8, razor gives 10
fault odd if batch share of (fault small) above 5 % and kiwa is blurred: no better than sell
fault small if length below batch mean of length among the same (pond) - 3 cm: no better than hold
grade keep if score at least 70
grade hold if score at least batch median of score - 5
grade sell otherwise
alert few "hardly any is kept" if batch share of (grade is keep) below 90 %
alert none "nobody is kept" if batch share of (grade is keep) below 0.1 %
round first keep those possibly with grade at least hold
round last
  pick places by highest score, then highest batch standing of length
  no more than 15 of the same (pond)
  send to "pond 2"
round each from all
  pick 4 % for each (pond, kiwa) by highest score, then highest length
  no more than 3 with tail_stem is strong
"""
ROUNDS = ("kept_by", "left_in", "tied_in", "open_in", "sent_to")


def fish(count: int) -> pl.DataFrame:
    chance = random.Random(11)

    def told(values: list[object]) -> list[object]:
        return [chance.choice(values) if chance.random() < 0.95 else None for _ in range(count)]

    return pl.DataFrame(
        {
            "fish": [f"F{number}" for number in range(count)],
            "length": told([8 + step / 20 for step in range(160)]),
            "tail_stem": told(["thin", "fair", "strong"]),
            "pond": told(["1", "2", "3"]),
            "kiwa": told(["blurred", "fair", "sharp", "razor", "fair or sharp"]),
        }
    )


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A batch in three files: CSV, Parquet of several row groups, and CSV in millimetres."""
    records = fish(3_000)
    made = tmp_path / "records"
    made.mkdir()
    records.slice(0, 900).write_csv(made / "a.csv")
    records.slice(900, 1_500).write_parquet(made / "b.parquet", row_group_size=400)
    in_mm = records.slice(2_400).with_columns(pl.col("length") * 10).rename({"length": "length (mm)"})
    in_mm.write_csv(made / "c.csv")
    return made


def texts(column: pl.Series) -> list[str | None]:
    return [text or None for text in column.cast(pl.String).to_list()]


@pytest.mark.parametrize("out", ["results.csv", "results.parquet", "results"])
def test_files_are_compared_as_one_batch(folder: Path, tmp_path: Path, out: str) -> None:
    whole = koirules.read_standard(RULES).grade_frame(fish(3_000))
    finished = run_files(Job(RULES, "trial.koi"), [str(folder)], here(), str(tmp_path / out))
    assert not is_refused(finished.problems)
    target = tmp_path / out
    written = pl.read_csv(target) if target.suffix == ".csv" else pl.read_parquet(target)
    for name in ("possible", *ROUNDS):
        assert texts(written[name]) == texts(whole[name]), name
    for name in ("score_low", "score_high", "body_low", "skin_high"):
        assert written[name].to_list() == whole[name].to_list(), name
    assert [alert.words for alert in finished.alerts] == ["hardly any is kept"]
    first, last, each = finished.rounds
    assert first.looked_at == 3_000
    assert last.looked_at == first.kept
    assert last.kept + last.tied >= 40 or last.kept == last.looked_at
    assert each.looked_at == each.kept + each.left + each.tied == 3_000 - last.tied
    assert each.kept >= 15
    assert set(last.named) == set(whole.filter(pl.col("kept_by").str.contains("last"))["fish"])


@pytest.mark.parametrize("shown", [0.6, 0.95])
def test_alerts_over_files_are_as_open_as_those_over_one_batch(tmp_path: Path, shown: float) -> None:
    records = fish(400).with_columns(seen=pl.int_range(400) < 400 * shown)
    blank = [
        pl.when("seen").then(pl.col(name)).otherwise(None).alias(name)
        for name in ("length", "tail_stem", "kiwa", "pond")
    ]
    records = records.with_columns(blank).drop("seen")
    folder = tmp_path / "records"
    folder.mkdir()
    records.slice(0, 150).write_csv(folder / "a.csv")
    records.slice(150).write_csv(folder / "b.csv")
    # Without rounds, which stand behind the alerts on a page.
    rules = RULES[: RULES.index("round first")] + (
        "alert long if batch mean of length above 12 cm\n"
        "alert short if batch share of (fault small) above 20 %\n"
        "alert lower if batch lowest of length below 8 cm\n"
    )
    rows = [{name: value for name, value in row.items() if value is not None} for row in records.iter_rows(named=True)]
    one_by_one = koirules.read_standard(rules).grade_batch(rows).alerts
    finished = run_files(Job(rules, "trial.koi"), [str(folder)], here())
    assert not is_refused(finished.problems)
    assert finished.alerts == one_by_one
    assert {one.surely for one in one_by_one} >= ({False} if shown < 0.9 else {True, False})


@pytest.mark.parametrize("run", [on_dask.run, on_spark.run], ids=["dask", "spark"])
def test_a_cluster_compares_the_same(run, folder: Path, tmp_path: Path) -> None:
    if run is on_spark.run and shutil.which("java") is None:
        pytest.skip("Spark needs Java")
    files = [tmp_path / f"{name}.parquet" for name in ("alone", "together")]
    alone = run_files(Job(RULES, "trial.koi"), [str(folder)], here(), str(files[0]))
    together = run_files(Job(RULES, "trial.koi"), [str(folder)], partial(run, workers=2), str(files[1]), parted=True)
    assert (together.totals, together.alerts, together.rounds) == (alone.totals, alone.alerts, alone.rounds)
    assert pl.read_parquet(files[1]).equals(pl.read_parquet(files[0]))


def test_a_broken_file_is_counted_in_no_figure_when_it_is_left_out(folder: Path, tmp_path: Path) -> None:
    (folder / "b.parquet").rename(tmp_path / "kept_away.parquet")
    without = run_files(Job(RULES, "trial.koi"), [str(folder)], here())
    (folder / "bad.csv").write_text("fish,length\nX,long\n", encoding="utf-8")
    beside = run_files(Job(RULES, "trial.koi"), [str(folder)], here(), leave_out=True)
    for name in ("fish", "possible", "scores", "low", "high", "faults"):
        assert getattr(beside.totals, name) == getattr(without.totals, name)
    assert beside.rounds == without.rounds
    assert [Path(file).name for file in beside.left_out] == ["bad.csv"]
    assert run_files(Job(RULES, "trial.koi"), [str(folder)], here()).failed


def test_the_look_before_is_not_asked_of_whole_files(folder: Path) -> None:
    rules = RULES.replace("fault odd if ", "fault odd if length below earlier length and ")
    finished = run_files(Job(rules, "trial.koi"), [str(folder)], here())
    assert [problem.code for problem in finished.problems] == ["no-earlier-looks"]
