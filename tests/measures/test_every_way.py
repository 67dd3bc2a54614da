"""However records come in, derived traits are the same: one by one, from files, in frames, in whole files."""

from __future__ import annotations

import csv
import random
import warnings
from pathlib import Path
from typing import Any

import polars as pl
import pytest

import koirules
from koirules.grading.frames import matched
from koirules.plugins import registry_with
from koirules.problems import RecordError, RecordWarning
from koirules.records.records import read_records
from koirules.runs.run import here, run_files
from koirules.runs.work import Job

RULES = """standard "Tin Bucket trial" edition 1 variety kohaku
setting splash = 2 % from 1 % to 3 %
fault close "red into the tail" if odome below 3 %: no better than b
fault eye "red eye" if hi_on_eyes includes left_eye: no better than b
fault mapped "no map" if hi_patches is not recorded: no better than b
fault ratio "no ratio" if girth_ratio is not recorded: no better than b
fault forward "far forward" if head_hi_front at least nose: no better than b
fault holed "window" if windows at least 1: no better than b
section body worth 60
points stout by girth_ratio: 0.3 gives 0, 0.5 gives 10, 0.8 gives 2
points fed by condition: 1 gives 0, 2 gives 10
points stem by stem_ratio: 0.1 gives 0, 0.5 gives 10
section pattern worth 40
points cover by hi_cover: 20 % gives 0, 50 % gives 10, 90 % gives 2
points even by balance_left_right: 0 gives 0, 1 gives 10
points steps by steps: nidan gives 10, sandan gives 9, anything else gives 2
points gap by odome_gap: 0 cm gives 0, 3 cm gives 10
bonus lips 2 if kuchibeni
grade a if score at least 60
grade b if score at least 30
grade c otherwise
"""
STANDARD = koirules.read_standard(RULES, registry=registry_with())
NUMBERS = {
    "length": (8, 100),
    "standard_length": (7, 60),
    "girth": (3, 60),
    "depth": (2, 20),
    "width": (1, 15),
    "gill_width": (1, 15),
    "stem_width": (0.3, 6),
    "weight": (5, 3000),
}
WRITTEN = {
    "girth_ratio": ("0.5", "0.4 to 0.6"),
    "hi_cover": ("40 %", "30 % to 50 %"),
    "steps": ("nidan", "nidan or sandan"),
    "hi_on_eyes": ("none", "left eye"),
    "odome": ("5",),
    "windows": ("0", "1 to 2"),
}


def pattern(draw: random.Random) -> str:
    patches, u = [], draw.uniform(0, 15)
    while u < 85 and draw.random() < 0.85:
        end = min(u + draw.uniform(1, 25), 100)
        if draw.random() < 0.3:
            patches.append(f"POLYGON (({u:.1f} -50, {end:.1f} -30, {end:.1f} 60, {u:.1f} 20, {u:.1f} -50))")
        else:
            patches.append(f"{u:.1f} to {end:.1f} left {draw.randint(1, 190)} right {draw.randint(1, 120)}")
        u = end + draw.choice((0, 0, 2.5, 8))
    return "; ".join(patches) or "none"


def records(count: int, seed: int) -> list[dict[str, Any]]:
    """Invented records with holes and values that are not sure."""
    draw = random.Random(seed)
    made: list[dict[str, Any]] = []
    for number in range(count):
        row: dict[str, Any] = {"fish": f"K{number}"}
        for name, (low, high) in NUMBERS.items():
            one = round(draw.uniform(low, high), draw.choice((0, 1, 2)))
            unsure = f"{one} to {round(one + draw.uniform(0, 3), 1)}"
            row[name] = draw.choice((None, str(max(one, low)), str(max(one, low)), unsure if one > low else None))
        row["hi_patches"] = draw.choice((None, pattern(draw), pattern(draw), pattern(draw)))
        for name, values in WRITTEN.items():
            row[name] = draw.choice((None, None, None, *values))
        made.append(row)
    return made


def told(result: Any) -> tuple[str, float, float]:
    return "|".join(result.possible), float(result.score_low), float(result.score_high)


def frame_rows(frame: pl.DataFrame) -> list[tuple[str, float, float]]:
    return list(zip(frame["possible"].cast(pl.String), frame["score_low"], frame["score_high"], strict=True))


@pytest.mark.parametrize("seed", range(2))
def test_every_way_gives_the_same(seed: int, tmp_path: Path) -> None:
    rows = records(60, seed)
    single = [told(STANDARD.grade(row)) for row in rows]
    # As a frame, row by row and as whole columns.
    frame = pl.DataFrame(rows, infer_schema_length=None)
    batch = STANDARD.batch()
    read = batch.reader(matched(frame.columns, batch)).read(frame)
    assert not read.wrong
    assert frame_rows(batch.by_row(read, len(rows))) == single
    assert frame_rows(batch.by_column(read, len(rows))) == single
    # From a file, one after another, and measured together.
    path = tmp_path / "tub.csv"
    with path.open("w", newline="", encoding="utf-8") as file:
        writer = csv.DictWriter(file, list(rows[0]))
        writer.writeheader()
        writer.writerows(rows)
    listed = read_records(path, STANDARD.traits)
    assert all(problem.warning for problem in listed.problems)
    assert [told(STANDARD.grade_record(record)) for record in listed.records] == single
    measured = STANDARD.measured(listed.records, "tub.csv")
    assert [told(STANDARD.grade_record(record)) for record in measured.records] == single
    # As a whole file, with the same warnings in the same cells.
    out = tmp_path / "graded.csv"
    finished = run_files(Job(RULES, "try.koi"), [str(path)], here(), str(out))
    assert not finished.failed
    graded = pl.read_csv(out, schema_overrides={"possible": pl.String})
    assert frame_rows(graded) == single
    site = {str(problem.site).replace(str(path), "tub.csv") for problem in finished.problems if problem.warning}
    assert {str(problem.site) for problem in measured.problems} <= site
    assert {problem.code for problem in measured.problems} <= {"derived-differs", "derived-outside"}
    assert measured.problems


def test_the_warnings_are_the_same_one_by_one_and_together() -> None:
    rows = records(80, 9)
    batch = STANDARD.batch()
    frame = pl.DataFrame(rows, infer_schema_length=None)
    read = batch.reader(matched(frame.columns, batch)).read(frame)
    by_frame = {(doubt.fish, doubt.trait, doubt.written, doubt.derived) for doubt in read.doubts}
    by_fish = set()
    for i, row in enumerate(rows):
        record: Any = STANDARD.reader.read(row, "")
        derived = STANDARD.grader.measurer.derive({name: [one] for name, one in record.readings.items()}, 1)
        by_fish |= {(i, doubt.trait, doubt.written, doubt.derived) for doubt in derived.doubts}
    assert by_frame == by_fish


def test_a_frame_warns_of_each_trait_once() -> None:
    frame = pl.DataFrame({"girth": [12.0, 12.0, 12.0], "length": [24.0, 24.0, 24.0], "girth_ratio": [0.7, 0.5, 0.7]})
    with pytest.warns(RecordWarning) as found:
        STANDARD.grade_frame(frame)
    (warning,) = found
    assert 'frame, row 1, column "girth_ratio"' in str(warning.message)
    assert "(1 more of girth_ratio)" in str(warning.message)
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        STANDARD.grade_frame(frame.with_columns(girth_ratio=pl.lit(0.5)))


def test_a_map_that_cannot_be_measured_is_told_with_its_cell(tmp_path: Path) -> None:
    crossed = "POLYGON ((30 0, 40 0, 32 20, 35 -10, 30 0))"
    frame = pl.DataFrame({"fish": ["A", "B"], "hi_patches": ["none", crossed]})
    with pytest.raises(RecordError, match='frame, row 2, column "hi_patches": Patch 1 is no patch'):
        STANDARD.grade_frame(frame)
    path = tmp_path / "tub.csv"
    frame.write_csv(path)
    finished = run_files(Job(RULES, "try.koi"), [str(path)], here())
    assert [(problem.code, str(problem.site)) for problem in finished.problems] == [
        ("value-map-crossed", f'{path}, row 3, column "hi_patches"')
    ]


def test_samples_of_a_rule_file_derive_too() -> None:
    text = RULES + '\nsample "stout" with length 20 cm, girth 10 cm, width 4 cm, stem_width 2 cm, weight 160 g'
    standard = koirules.read_standard(text + "\n  scores from 60 to 100\n", registry=registry_with())
    from koirules.grading.sample_runs import run_samples

    (run,) = run_samples(standard.grader)
    assert not run.failures


def test_questions_ask_for_nothing_that_follows() -> None:
    record = {"length": 20, "girth": 10, "weight": 160, "width": 4, "stem_width": 2}
    asked = {question.trait.name for question in STANDARD.questions(record)}
    assert asked
    assert not asked & {"girth_ratio", "condition", "stem_ratio"}
