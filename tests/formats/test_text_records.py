"""Records from CSV and JSON files that are in order, in the many ways that programs write them."""

import json
import os

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import koirules
from koirules.plugins import registry_with
from koirules.records.records import READERS, Batch, read_records
from koirules.runs.pieces import files_of
from koirules.vocabulary.readings import PlaceSet, Span

KOHAKU = registry_with().varieties["kohaku"].traits


@pytest.fixture
def read(tmp_path, traits):
    def read_content(content, name="records.csv", labels=()):
        path = tmp_path / name
        path.write_bytes(content if isinstance(content, bytes) else content.encode())
        return read_records(path, traits, labels)

    return read_content


def lengths(batch):
    assert batch.problems == ()
    return {record.fish: record.readings.get("length") for record in batch.records}


TWO = {"K01": Span(12.5, 12.5), "K02": None}


@pytest.mark.parametrize(
    "content",
    [
        "fish,length (cm)\nK01,12.5\nK02,\n",
        "fish;length (cm)\nK01;12,5\nK02\n",
        "fish\tlength (cm)\nK01\t12.5\nK02\t\n",
        "\ufefffish,length (cm)\r\nK01,12.5\r\nK02,\r\n",
        "fish,length (cm)\rK01,12.5\rK02,\r",
        'sep=;\nfish;length (cm)\nK01;"12,5"\nK02;\n',
        '"fish","length (cm)"\n"K01","12.5"\n"K02",""\n',
        "Fish,Length [mm]\nK01,125\nK02,\n",
        "fish,length from nose to tail\nK01,12.5\nK02,\n",
        "fish,Length from nose to tail (mm)\nK01,125\nK02,\n",
        "fish,全長（ｍｍ）\nK01,125\nK02,\n",
        "# one row a fish, cold day\n\nfish,length\nK01,12.5\n# these were seen later\n,\nK02,\n",
        "length,fish,,\n12.5,K01,,\n,K02,,\n",
        "fish,length\nK01,125 mm\nK02,  \n",
    ],
)
def test_a_csv_file_is_read_however_a_program_wrote_it(read, content):
    assert lengths(read(content)) == TWO


def test_rows_are_counted_as_a_spreadsheet_does(read):
    batch = read('fish,bloodline\nK01,"line A\nand B"\n\nK02,x\n')
    assert [record.row for record in batch.records] == [2, 4]
    assert batch.records[0].labels == {"bloodline": "line A\nand B"}


def test_the_first_line_that_names_the_delimiter_is_no_row(read):
    assert [record.row for record in read("sep=,\nfish\nK01\n").records] == [2]


def test_a_declared_column_is_carried_along_and_a_label_trait_is_both(read):
    batch = read("Pond No,fish,bloodline\n 7 ,K01,=1+1\n", labels=["pond_no"])
    (record,) = batch.records
    assert batch.label_columns == ("pond_no", "bloodline")
    assert record.labels == {"pond_no": "7", "bloodline": "=1+1"}
    assert record.readings == {"bloodline": "=1+1"}


def test_a_trait_can_be_carried_along_as_it_was_written(read):
    (record,) = read("fish,length\nK01,125 mm\n", labels=["length"]).records
    assert record.labels == {"length": "125 mm"}
    assert record.readings == {"length": Span(12.5, 12.5)}


def test_a_declared_column_that_is_not_there_is_a_warning(read):
    batch = read("fish,pond\nK01,3\n", labels=["pond", "spawning"])
    (problem,) = batch.problems
    assert (problem.code, problem.warning) == ("missing-label", True)
    assert len(batch.records) == 1


def test_a_row_with_a_problem_becomes_no_record(read):
    batch = read("fish,kiwa\nK01,fair\nK02,fare\n")
    assert [record.fish for record in batch.records] == ["K01"]
    assert [problem.code for problem in batch.problems] == ["value-unknown-word"]


def test_a_column_in_an_unknown_unit_is_told_once_and_nothing_is_taken_from_it(read):
    batch = read("fish,length (ell),kiwa\nK01,5 1/2,fair\nK02,6,fare\nK03,,fair\n")
    assert [problem.code for problem in batch.problems] == ["unknown-column-unit", "value-unknown-word"]
    assert [record.fish for record in batch.records] == ["K03"]


def test_parts_of_one_are_seen_in_rows_with_other_problems_too(read):
    batch = read("fish,hi_cover (%),kiwa\nK01,0.4,fare\nK02,0.5,fare\nK03,0.6,fare\n,-,\n")
    assert batch.problems[0].code == "fractions-for-percent"
    assert not read("fish,hi_cover (%)\nK01,0.4\nK02,0.5\nK03,0.6\nK03,60\n").problems[0].warning


def test_a_fish_may_be_called_by_a_number_sign(read):
    assert [record.fish for record in read("fish,kiwa\n#12,\n#13,fair\n").records] == ["#12", "#13"]


def test_the_same_name_in_two_unicode_forms_is_the_same_fish(read):
    (problem,) = read("fish\nKo\u0308\nK\u00f6\n").problems
    assert problem.code == "doubled-fish"


def test_lines_of_json_are_read_with_their_line_numbers(read):
    text = """{"fish": "K01", "length (mm)": 125, "hi_on_fins": ["tail"]}

    {"fish": 7, "Hi cover": "40 % to 50 %", "kuchibeni": true, "weight": null, "shimi_count": NaN}
    """
    batch = read(text, "records.jsonl")
    assert batch.problems == ()
    one, other = batch.records
    assert (one.fish, one.row, one.readings) == ("K01", 1, {"length": Span(12.5, 12.5), "hi_on_fins": PlaceSet(8, 8)})
    assert (other.fish, other.row, other.readings) == ("7", 3, {"hi_cover": Span(40, 50), "kuchibeni": 2})


def test_a_list_of_objects_is_read_as_json(read):
    batch = read(json.dumps([{"fish": "K01", "length": "12.5 cm"}, {"fish": "K02", "length": None}]), "records.json")
    assert lengths(batch) == TWO
    assert [record.row for record in batch.records] == [1, 2]


def test_a_decimal_of_json_is_exact(read):
    (record,) = read('{"fish": "K01", "length (mm)": 3.0}', "r.ndjson").records
    assert record.readings["length"] == Span(0.3, 0.3)


def test_a_missing_file_is_answered_with_the_name_that_is_near(read, tmp_path, traits):
    read("fish\n", "autumn.csv")
    (problem,) = read_records(tmp_path / "autum.csv", traits).problems
    assert (problem.code, "autumn.csv" in problem.mend) == ("no-such-file", True)


def test_a_folder_is_told_as_one(tmp_path, traits):
    (problem,) = read_records(tmp_path, traits).problems
    assert (problem.code, "folder" in problem.cause) == ("unreadable-file", True)


@pytest.mark.parametrize(
    "content", [b"[" * 100_000, b'[{"fish": ' + b"9" * 100_000 + b"}]", b'[{"fish": 1e999999999}]']
)
def test_json_that_would_break_a_reader_is_only_a_problem(read, content):
    assert isinstance(read(content, "records.json"), Batch)


CONTENT = st.one_of(
    st.binary(max_size=200),
    st.text(max_size=100).map(lambda text: text.encode("utf-8", "surrogatepass")),
    st.text('fish,;\t"\n\rlength()kiwa#= 1"{}[]:', max_size=100).map(
        lambda text: b"fish,length,kiwa\n" + text.encode()
    ),
    st.text('"fish":,{}[]1.5\n\\u0d8tnul-', max_size=100).map(lambda text: b'{"fish": "A"}\n' + text.encode()),
)


@settings(deadline=None)
@given(content=CONTENT, ending=st.sampled_from([*READERS, ".txt"]))
def test_no_bytes_make_reading_raise(tmp_path_factory, traits, content, ending):
    path = tmp_path_factory.getbasetemp() / f"drawn{ending}"
    path.write_bytes(content)
    for problem in read_records(path, traits).problems:
        assert str(problem).isprintable()


@pytest.mark.parametrize(
    ("text", "column"),
    [
        ("fish;hi_patches;note\nA1;8 to 26 left 60 right 55; 34 to 52 left 95 right 40\n", "note"),
        ("fish,hi_patches,pond,note\nA1,8 to 26 both 60, 34 to 52 both 40,\n", "pond"),
    ],
)
def test_half_a_map_in_the_next_column_is_told(tmp_path, text, column):
    (tmp_path / "lot.csv").write_text(text, encoding="utf-8")
    batch = read_records(tmp_path / "lot.csv", KOHAKU)
    assert [(problem.code, problem.site.column) for problem in batch.problems] == [("patch-astray", column)]
    assert not batch.records


def test_a_map_in_quotes_is_whole_and_words_of_a_note_are_a_note(tmp_path):
    text = 'fish;hi_patches;note\nA1;"8 to 26 both 60; 34 to 52 both 40";moved 3 to 5 left\n'
    (tmp_path / "lot.csv").write_text(text, encoding="utf-8")
    (record,) = read_records(tmp_path / "lot.csv", KOHAKU).records
    assert len(record.readings["hi_patches"].patches) == 2


def test_more_columns_than_a_sheet_has_are_refused_at_once(read):
    (problem,) = read("fish," + ",".join(f"kiwa{n}" for n in range(20_000)) + "\na\n").problems
    assert problem.code == "too-many-columns"


def test_what_is_no_ordinary_file_is_not_waited_for(tmp_path):
    os.mkfifo(tmp_path / "pipe.csv")
    (problem,) = read_records(tmp_path / "pipe.csv", {}).problems
    assert problem.code == "unreadable-file"
    assert files_of([str(tmp_path)])[0] == ()


def test_a_heading_in_the_words_of_a_sorter_is_told_by_the_trait_that_they_mean(tmp_path):
    standard = koirules.read_standard('standard "t" edition 1 variety kohaku\ngrade a otherwise')
    path = tmp_path / "lot.csv"
    path.write_text("fish,White,edge,Tail\n1,snow,sharp,thin\n", encoding="utf-8")
    problems = read_records(path, standard.traits, (), lambda: standard.notes_reader).problems
    assert [one.mend.split("?")[0] for one in problems] == [
        'Did you mean "shiroji"',
        'Did you mean "kiwa" or "kiwa_style"',
        'Did you mean "tail_stem" or "stem_ratio"',
    ]
