"""`hi on one eye`: places of which only the number is known, in every format and every engine, and in notes and phrases."""

import json
from itertools import product

import polars as pl
import pytest

import koirules
from koirules.vocabulary.cells import read_cell
from koirules.vocabulary.kinds import Places
from koirules.vocabulary.readings import PlaceSet, write_reading

PAGE = """standard "Tin Bucket, one eye (invented)" edition 1 variety kohaku
fault one_eye if count of hi_on_eyes is 1: no better than hold
fault left if hi_on_eyes includes left_eye: no better than out
fault fins if count of hi_on_fins at least 2: no better than hold
grade keep if kiwa at least sharp
grade hold if kiwa is fair
grade out otherwise
phrase "a patch over an eye" means count of hi_on_eyes is 1
"""
STANDARD = koirules.read_standard(PAGE)
EYES = STANDARD.traits["hi_on_eyes"].kind
ROWS = [
    {"fish": "1", "kiwa": "sharp", "hi_on_eyes": "1 of them", "hi_on_fins": "none"},
    {
        "fish": "2",
        "kiwa": "sharp",
        "hi_on_eyes": "at least 1 of them",
        "hi_on_fins": "tail, at least 1 of (dorsal, anal)",
    },
    {"fish": "3", "kiwa": "sharp", "hi_on_eyes": "none", "hi_on_fins": "tail, perhaps dorsal"},
]


def outcome(result):
    return result.faults, result.possible


WANTED = [
    (("one_eye",), ("hold", "out")),
    (("fins",), ("hold", "out")),
    ((), ("keep", "hold")),
]


def test_a_number_of_places_is_graded_exactly():
    assert [outcome(STANDARD.grade(row)) for row in ROWS] == WANTED


@pytest.mark.parametrize(
    ("written", "cell"),
    [
        ("1 of them", "1 of them"),
        ("at least 1", "at least 1 of them"),
        ("at most 1 of them", "at most 1 of them"),
        ("1 to 3 of (tail, dorsal, anal)", "1 to 3 of (tail, dorsal, anal)"),
        ("2 of (tail, dorsal)", "tail dorsal"),
        ("0 of them", "none"),
        ("(tail, at least 1 of (dorsal, anal))", "tail, at least 1 of (dorsal, anal)"),
        ("(tail, dorsal, 1 of them)", "tail dorsal, 1 of (left_pectoral, right_pectoral, pelvic, anal)"),
        ("(tail, at most 1 of (dorsal))", "tail, perhaps dorsal"),
    ],
)
def test_samples_and_phrases_say_so_many_places_as_records_do(written, cell):
    page = (
        f'{PAGE}phrase "some fins" means hi_on_fins is {written}\nsample "some" with hi_on_fins {written}, kiwa sharp\n'
    )
    text = f"{page}  shows no fault\n"
    standard = koirules.read_standard(text)
    kind = standard.traits["hi_on_fins"].kind
    (sample,) = standard.rules.samples
    assert sample.record["hi_on_fins"] == read_cell(kind, cell)
    tidy = koirules.tidy(text)
    assert koirules.tidy(tidy) == tidy
    assert koirules.read_standard(tidy).rules.samples[0].record == sample.record
    noted = standard.read_notes("A: some fins").records[0]
    assert read_cell(kind, noted["hi_on_fins"]) == sample.record["hi_on_fins"]


def test_a_sample_of_so_many_places_is_graded_as_its_record():
    sample = 'sample "one eye" with hi_on_eyes 1 of them, kiwa sharp\n  shows fault one_eye stays open\n'
    wrong = 'sample "an eye at least" with hi_on_eyes at least 1, kiwa sharp\n  shows fault one_eye\n'
    runs = koirules.read_standard(PAGE + sample + wrong).sample_runs()
    assert [bool(run.failures) for run in runs] == [False, True]


@pytest.mark.parametrize("ending", ["csv", "xlsx", "jsonl"])
def test_it_goes_through_every_format(tmp_path, ending):
    from koirules.records.records import read_records

    path = tmp_path / f"lot.{ending}"
    if ending == "csv":
        pl.DataFrame(ROWS).write_csv(path)
    elif ending == "xlsx":
        pl.DataFrame(ROWS).write_excel(path)
    else:
        path.write_text("\n".join(map(json.dumps, ROWS)), encoding="utf-8")
    found = read_records(path, STANDARD.rules.traits)
    for record, row in zip(found.records, ROWS, strict=True):
        assert write_reading(EYES, record.readings["hi_on_eyes"]) == row["hi_on_eyes"]
        assert write_reading(STANDARD.traits["hi_on_fins"].kind, record.readings["hi_on_fins"]) == row["hi_on_fins"]


@pytest.mark.parametrize(("times", "engine"), [(1, None), (200, "columnar"), (200, "compiled")])
def test_frames_and_parquet_grade_it_row_by_row_by_columns_and_compiled(times, engine, tmp_path):
    if engine == "compiled":
        pytest.importorskip("llvmlite")
    pl.DataFrame(ROWS * times).with_columns(fish=pl.int_range(3 * times).cast(pl.String)).write_parquet(
        tmp_path / "lot.parquet"
    )
    graded = STANDARD.grade_frame(pl.read_parquet(tmp_path / "lot.parquet"), engine=engine)
    assert graded["hi_on_eyes"].to_list() == [row["hi_on_eyes"] for row in ROWS] * times
    assert graded["possible"].to_list() == ["|".join(wanted[1]) for wanted in WANTED] * times


def test_notes_and_phrases_say_it():
    notes = STANDARD.read_notes("1: hi on one eye\n2: a patch over an eye\n3: hi on left eye")
    assert [record["hi_on_eyes"] for record in notes.records] == [
        "1 of them",
        "1 of them",
        "left_eye",
    ]
    assert outcome(STANDARD.grade({"kiwa": "sharp", **notes.records[0]})) == WANTED[0]


def test_every_set_of_sets_is_written_as_it_is_read():
    kind = Places(("nose", "tail", "left_eye", "right_eye"))
    every = {
        found
        for sure, possible, least, most in product(range(16), range(16), range(5), range(5))
        if (found := PlaceSet(sure, possible, least, most).narrowed()) is not None
    }
    assert len(every) > 200
    for places in every:
        assert read_cell(kind, write_reading(kind, places)) == places
        assert all(places.least <= bits.bit_count() <= places.most for bits in places.sets)


def test_the_earlier_look_keeps_the_number():
    page = PAGE.replace(
        "fault left if hi_on_eyes includes left_eye", "fault left if count of (earlier hi_on_eyes) is 1"
    )
    standard = koirules.read_standard(page)
    rows = [
        {"fish": "1", "date": "2026-01-01", "kiwa": "sharp", "hi_on_eyes": "1 of them", "hi_on_fins": "none"},
        {"fish": "1", "date": "2026-03-01", "kiwa": "sharp", "hi_on_eyes": "none", "hi_on_fins": "none"},
    ]
    (result,) = standard.grade_batch(rows).results
    assert result.faults == ("left",)
    many = [{**row, "fish": str(i)} for i in range(400) for row in rows]
    graded = standard.grade_frame(pl.DataFrame(many)).filter(pl.col("date") == "2026-03-01")
    assert set(graded["grade"]) == {"out"}
