"""What holds for the lot in frames and in whole files, and what nobody understood in their results: as in a small sheet."""

import json

import polars as pl
import pytest
from click.testing import CliRunner

import koirules
from koirules.commands import main

PAGE = """standard "Tin Bucket, the lot (invented)" edition 1 variety kohaku
silence means outline is good, shiroji is white
fault bad_spine if spine is bent: no better than out
section body "body" worth 10
points frame by outline: poor gives 0, fair gives 3, good gives 6, excellent gives 10
grade keep if kiwa at least sharp and spine is straight and length above 12 cm
grade hold if kiwa at least fair
grade out otherwise
"""
STANDARD = koirules.read_standard(PAGE)
LOT = {"fish": "all fish", "spine": "straight", "length": "14 cm", "kiwa": "sharp"}
FISH = [
    {"fish": "a", "spine": None, "length": None, "kiwa": None},
    {"fish": "b", "spine": "bent", "length": "11 cm", "kiwa": None},
    {"fish": "c", "spine": "?", "length": "10 cm to 15 cm", "kiwa": "fair"},
    {"fish": "d", "spine": None, "length": "?", "kiwa": "razor"},
]
COLUMNS = ["possible", "score_low", "score_high", "assumed"]


def of_a_sheet(tmp_path):
    """What comes of a small sheet, row by row."""
    path = tmp_path / "small.csv"
    pl.DataFrame([LOT, *FISH]).write_csv(path)
    batch = [STANDARD.grade_record(record) for record in STANDARD.read_records(path)]
    return [
        ("|".join(one.possible), float(one.score_low), float(one.score_high), "|".join(one.assumed)) for one in batch
    ]


@pytest.mark.parametrize("times", [1, 100])
def test_a_frame_is_told_what_holds_for_the_lot(tmp_path, times):
    lot = {name: value for name, value in LOT.items() if name != "fish"}
    graded = STANDARD.grade_frame(pl.DataFrame(FISH * times), lot=lot)
    assert (
        graded.select(COLUMNS).with_columns(pl.col("possible").cast(pl.String)).rows() == of_a_sheet(tmp_path) * times
    )
    with pytest.raises(koirules.RecordError) as caught:
        STANDARD.grade_frame(pl.DataFrame(FISH), lot={"spin": "straight", "kiwa": "sharpish"})
    assert [problem.code for problem in caught.value.problems] == ["unknown-column", "value-unknown-word"]


@pytest.mark.parametrize("ending", ["csv", "parquet"])
def test_a_first_row_of_a_whole_file_holds_for_the_lot(tmp_path, ending):
    folder = tmp_path / "lots"
    folder.mkdir()
    rows = [LOT, *({**one, "fish": f"{one['fish']}{i}"} for i in range(200) for one in FISH)]
    frame = pl.DataFrame(rows)
    if ending == "csv":
        frame.write_csv(folder / "lot.csv")
    else:
        frame.write_parquet(folder / "lot.parquet", row_group_size=100)
    (tmp_path / "page.koi").write_text(PAGE, encoding="utf-8")
    out = tmp_path / "out.csv"
    run = CliRunner().invoke(main, ["grade", str(tmp_path / "page.koi"), str(folder), "--out", str(out)])
    assert run.exit_code == 0, run.output
    found = pl.read_csv(out, infer_schema=False)
    assert found.height == 800
    assert found["possible"].to_list() == [one[0] for one in of_a_sheet(tmp_path)] * 200


def test_remarks_that_nobody_understood_are_in_every_result(tmp_path):
    (tmp_path / "page.koi").write_text(PAGE, encoding="utf-8")
    (tmp_path / "lot.txt").write_text(
        "all: spine straight, 14 cm\n1: sharp kiwa\n2: sharp kiwa, flibbert on the gomp\n", encoding="utf-8"
    )
    for ending in ("json", "csv", "html"):
        out = tmp_path / f"out.{ending}"
        run = CliRunner().invoke(
            main, ["grade", str(tmp_path / "page.koi"), str(tmp_path / "lot.txt"), "--out", str(out)]
        )
        assert run.exit_code == 1
        assert "keep" in run.output and "2 (1 to be read again)" in run.output
    told = json.loads((tmp_path / "out.json").read_text(encoding="utf-8"))["results"]
    assert [one["unread"] for one in told] == [None, "flibbert on the gomp"]
    assert told[1]["why"].startswith("not understood: “flibbert on the gomp”; ")
    assert pl.read_csv(tmp_path / "out.csv")["why"][1].startswith("not understood: “flibbert on the gomp”; ")
    page = (tmp_path / "out.html").read_text(encoding="utf-8")
    assert "<b>flibbert on the gomp</b>" in page and "2 (1 to be read again)" in page
