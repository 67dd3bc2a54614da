"""Batches whose fish are compared: record by record, as whole columns and one by one through the library, all the same."""

import random

import narwhals.stable.v2 as nw
import polars as pl
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

import koirules
from koirules.grading import frames

RULES = """standard "Tin Bucket, everything at once" edition 1
  variety kohaku
setting places = 4 from 0 to 20
term stout means girth / length
section body worth 60
points stem by tail_stem: thin gives 0, fair gives 6, strong gives 10
points stout by batch standing of stout among the same (pond): 0 % gives 0, 100 % gives 10
penalty slim 2 if length below batch percentile 12.5 of length
bonus grew 3 if length - earlier length at least 2 cm and earlier length is recorded
section skin worth 40
points edge by kiwa: blurred gives 0, fair gives 4, sharp gives 8, razor gives 10
fault small if length below batch mean of length among the same (pond, spawning) with 3 or more recorded - 2 cm
  : no better than hold
fault odd if batch share of (fault small) above 20 % and kiwa is blurred: no better than sell
fault worse if kiwa below earlier kiwa except earlier kuchibeni is yes: no better than hold
fault spread if count of earlier hi_on_fins above count of hi_on_fins: no better than hold
fault moved if earlier bloodline is "A": no better than hold
lift good if batch standing of score at least 80 %: no worse than hold
grade keep if score at least 70
grade hold if score at least batch median of score - 5
grade sell otherwise
round first keep those possibly with grade at least hold and length at least batch lowest of length + 1 cm
round last
  pick places by highest score, then lowest kiwa, then those with kuchibeni
  no more than 2 with kiwa is razor
  no more than 3 of the same (pond, steps)
  send to "pond 2" again in 8 weeks
round next from those passed over by last
  keep those with length at least batch median of length among those kept by last - 2 cm
    and batch standing of length among the same (pond) among those kept by first above 10 %
  send to "sale"
round alike from those kept by first
  keep those with batch share of (kuchibeni) among the same (length, girth, hi_on_fins) among those kept by next above 40 %
    or batch standing of girth among the same (length, bloodline) at least 50 %
  pick 6 by lowest girth
  no more than 1 of the same (length)
  no more than 2 of the same (hi_on_fins, girth)
round again from all
  keep those with batch share of (grade is keep) above 10 %
  pick 3 by lowest batch standing of length, then highest grade
  ties all in
round final from those kept by first
  pick all by highest length
  no more than 2 of the same (steps)
  ties by first recorded
"""
STANDARD = koirules.read_standard(RULES)
SCHEMA = {
    "fish": pl.String,
    "date": pl.String,
    "length": pl.Float64,
    "girth": pl.Float64,
    "kuchibeni": pl.Boolean,
    **dict.fromkeys(("tail_stem", "pond", "spawning", "kiwa", "steps", "hi_on_fins", "bloodline"), pl.String),
}


def drawn(chance, fish):
    def told(value):
        return value if chance.random() < 0.9 else None

    return {
        "fish": fish,
        "date": chance.choice(["2026-10-01", "2026-11-01"]),
        "length": told(chance.randint(8, 16) + chance.choice([0, 0.5])),
        "girth": told(float(chance.randint(4, 9))),
        "kuchibeni": told(chance.choice([True, False])),
        "tail_stem": told(chance.choice(["thin", "fair", "strong"])),
        "pond": told(str(chance.randint(1, 3))),
        "spawning": told(str(chance.randint(1, 2))),
        "kiwa": told(chance.choice(["blurred", "fair", "sharp", "razor", "fair or sharp"])),
        "steps": told(chance.choice(["ippon", "nidan", "sandan"])),
        "hi_on_fins": told(chance.choice(["none", "tail", "tail dorsal"])),
        "bloodline": told(chance.choice(["A", "B"])),
    }


def batch_of(seed, size):
    """Records with ties, holes, and here and there a second look at a fish."""
    chance = random.Random(seed)
    records = [drawn(chance, f"F{number}") for number in range(size)]
    for number in range(0, size, 3):
        if chance.random() < 0.5:
            records.insert(chance.randint(0, len(records)), drawn(chance, f"F{number}") | {"date": "2026-12-01"})
    return records


def by_row_and_by_column(records):
    batch = STANDARD.batch(faults=True)
    frame = pl.DataFrame(records, schema=SCHEMA)
    sources = frames.matched(frame.columns, batch)
    read = batch.reader(sources).read(frame.select([source.column for source in sources.values()]))
    looks = frames._looks(nw.from_native(frame), batch)
    return batch.by_row(read, frame.height, looks), batch.by_column(read, frame.height, looks)


def told(result):
    return (
        "|".join(result.possible),
        float(result.score_low),
        float(result.score_high),
        "|".join(result.kept_by) or None,
        result.left_in,
        result.tied_in,
        "|".join(result.open_in) or None,
        result.sent_to or None,
    )


COLUMNS = ("possible", "score_low", "score_high", "kept_by", "left_in", "tied_in", "open_in", "sent_to")


def blanks_as_none(row):
    return tuple(None if value == "" else value for value in row)


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(st.integers(0, 10**9), st.sampled_from([0, 1, 2, 5, 12, 30]))
def test_rows_columns_and_the_library_agree_on_every_fish(seed, size):
    records = batch_of(seed, size)
    rows, columns = by_row_and_by_column(records)
    assert rows.equals(columns, null_equal=True)
    results = {result.fish: told(result) for result in STANDARD.grade_batch(records).results}
    found = [blanks_as_none(row) for row in columns.select(COLUMNS).iter_rows()]
    latest = {record["fish"]: row for record, row in zip(records, found, strict=True) if row[0] is not None}
    assert latest == results


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(st.integers(0, 10**9), st.randoms(use_true_random=False))
def test_the_order_of_the_records_changes_nothing_but_what_asks_for_it(seed, chance):
    records = batch_of(seed, 20)
    shuffled = records.copy()
    chance.shuffle(shuffled)
    one, other = (
        {result.fish: told(result) for result in STANDARD.grade_batch(given).results} for given in (records, shuffled)
    )
    without_final = {fish: row[:3] for fish, row in one.items()}
    assert without_final == {fish: row[:3] for fish, row in other.items()}
    steps = [
        {result.fish: [step.fate for step in result.course if step.round != "final"] for result in batch.results}
        for batch in (STANDARD.grade_batch(records), STANDARD.grade_batch(shuffled))
    ]
    assert steps[0] == steps[1]


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(st.integers(0, 10**9), st.integers(2, 6))
def test_equal_fish_have_equal_fates(seed, copies):
    records = batch_of(seed, 12)
    (model,) = (record for record in records if record["fish"] == "F1")
    records += [model | {"fish": f"copy {number}"} for number in range(copies)]
    results = {result.fish: result for result in STANDARD.grade_batch(records).results}
    alike = [results[name] for name in ("F1", *(f"copy {number}" for number in range(copies)))]
    # Only the last round asks who was recorded first.
    assert len({tuple(step.fate for step in result.course if step.round != "final") for result in alike}) == 1


@pytest.mark.parametrize("size", [3_000])
def test_a_large_frame_goes_by_columns_and_still_agrees(size):
    rows, columns = by_row_and_by_column(batch_of(7, size))
    assert rows.equals(columns, null_equal=True)
