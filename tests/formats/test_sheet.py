"""Blank record sheets, read back with openpyxl, which shares no code with the library that writes them."""

import openpyxl
import pytest

import koirules
from koirules.records.records import read_records
from koirules.records.sheet import write_sheet
from koirules.vocabulary.kinds import Choice, Places
from koirules.vocabulary.readings import PlaceSet, Span
from koirules.vocabulary.traits import Trait, Variety

HEADINGS = [
    "fish",
    "length (cm)",
    "weight (g)",
    "age (days)",
    "girth_ratio",
    "hi_cover (%)",
    "kiwa",
    "steps",
    "kuchibeni",
    "shimi_count",
    "hi_on_fins",
    "bloodline",
]


@pytest.fixture
def path(tmp_path):
    return tmp_path / "sheet.xlsx"


def checks(sheet):
    return {str(check.sqref): check for check in sheet.data_validations.dataValidation}


def test_a_sheet_has_a_column_a_trait_with_its_unit(path, variety):
    assert write_sheet(path, variety) is None
    book = openpyxl.load_workbook(path)
    assert book.sheetnames == ["records", "traits"]
    assert [cell.value for cell in book["records"][1]] == HEADINGS
    assert book["records"].freeze_panes == "B2"


def test_scales_and_choices_have_drop_downs_and_numbers_have_checks(path, variety):
    write_sheet(path, variety, fish=50)
    found = checks(openpyxl.load_workbook(path)["records"])
    assert found["G2:G51"].formula1 == '"blurred,fair,sharp,razor"'
    assert found["H2:H51"].formula1 == '"ippon,nidan,sandan"'
    assert found["I2:I51"].formula1 == '"yes,no"'
    assert (found["B2:B51"].type, found["B2:B51"].formula1, found["B2:B51"].formula2) == ("decimal", "0.0", "90.0")
    assert (found["J2:J51"].type, found["J2:J51"].formula1, found["J2:J51"].formula2) == ("whole", "0", "50")
    # What is not sure must be possible to write, so the program may ask but not refuse.
    assert {check.errorStyle for check in found.values()} == {"warning"}
    assert not found["K2:K51"].showErrorMessage
    assert "L2:L51" not in found


def test_every_header_carries_what_the_trait_means(path, variety):
    write_sheet(path, variety)
    sheet = openpyxl.load_workbook(path)["records"]
    assert all(cell.comment for cell in sheet[1])
    assert "Share of the back under hi." in sheet["F1"].comment.text
    assert '"40 % to 50 %"' in sheet["F1"].comment.text


def test_a_second_sheet_explains_each_trait(path, variety):
    write_sheet(path, variety)
    rows = list(openpyxl.load_workbook(path)["traits"].iter_rows(values_only=True))
    assert len(rows) == 2 + len(variety.traits)
    assert rows[7][:4] == ("kiwa", "edge of the hi", "scale blurred < fair < sharp < razor", "more is better")


def test_a_drop_down_that_is_too_long_for_a_cell_reads_a_hidden_sheet(path):
    words = tuple(f"option_number_{i}" for i in range(30))
    write_sheet(path, Variety("v", "v", {"long": Trait("long", "long", Choice(words))}))
    book = openpyxl.load_workbook(path)
    assert book["lists"].sheet_state == "hidden"
    assert checks(book["records"])["B2:B201"].formula1 == "lists!$B$1:$B$30"
    assert [row[1] for row in book["lists"].iter_rows(values_only=True)] == list(words)


def test_a_sheet_that_was_filled_in_is_read_back(path, variety):
    write_sheet(path, variety)
    book = openpyxl.load_workbook(path)
    rows = [
        ["007", 14.5, 52, 150, 0.24, 45, "fair", "nidan", "yes", 2, "left_pectoral tail", "line A"],
        [
            "K02",
            "14 to 15",
            "0.05 kg",
            "5 months",
            None,
            "40 % to 50 %",
            "fair or sharp",
            None,
            None,
            None,
            "none",
            None,
        ],
    ]
    for number, row in enumerate(rows, 2):
        for column, value in enumerate(row, 1):
            book["records"].cell(number, column, value)
    book.save(path)
    batch = read_records(path, variety.traits)
    assert batch.problems == ()
    one, other = batch.records
    assert (one.fish, one.labels) == ("007", {"bloodline": "line A"})
    assert one.readings == {
        "length": Span(14.5, 14.5),
        "weight": Span(52, 52),
        "age": Span(150, 150),
        "girth_ratio": Span(0.24, 0.24),
        "hi_cover": Span(45, 45),
        "kiwa": 0b10,
        "steps": 0b10,
        "kuchibeni": 2,
        "shimi_count": Span(2, 2),
        "hi_on_fins": PlaceSet(0b1001, 0b1001),
        "bloodline": "line A",
    }
    assert other.readings == {
        "length": Span(14, 15),
        "weight": Span(50, 50),
        "age": Span(152.1875, 152.1875),
        "hi_cover": Span(40, 50),
        "kiwa": 0b110,
        "hi_on_fins": PlaceSet(0, 0),
    }


def test_a_blank_sheet_is_a_batch_without_fish(path, variety):
    write_sheet(path, variety)
    batch = read_records(path, variety.traits)
    assert (batch.records, batch.problems) == ((), ())


def test_a_csv_sheet_is_its_header_and_reads_as_one(tmp_path, variety):
    path = tmp_path / "sheet.csv"
    assert write_sheet(path, variety) is None
    assert path.read_text(encoding="utf-8") == ",".join(HEADINGS) + "\n"
    assert read_records(path, variety.traits).problems == ()


def test_only_the_traits_asked_for_have_columns(tmp_path, variety):
    path = tmp_path / "sheet.csv"
    assert write_sheet(path, variety, only=["kiwa", "length", "kiwa"]) is None
    assert path.read_text(encoding="utf-8") == "fish,kiwa,length (cm)\n"


def test_a_trait_that_is_not_there_is_answered_with_one_that_is_near(path, variety):
    problem = write_sheet(path, variety, only=["kiva"])
    assert (problem.code, "kiwa" in problem.mend, path.exists()) == ("no-such-trait", True, False)


@pytest.mark.parametrize(("name", "code"), [("sheet.ods", "unknown-ending"), ("none/sheet.xlsx", "no-such-folder")])
def test_a_sheet_that_cannot_be_written_is_a_problem(tmp_path, variety, name, code):
    assert write_sheet(tmp_path / name, variety).code == code


def test_more_rows_than_a_sheet_holds_is_a_problem(path, variety):
    assert write_sheet(path, variety, fish=1_048_576).code == "too-many-rows"


def test_what_a_vocabulary_says_never_becomes_a_formula(path):
    trait = Trait("fins", "=1+1", Places(("dorsal",)), describe="=1+1")
    write_sheet(path, Variety("v", "=1+1", {"fins": trait}))
    book = openpyxl.load_workbook(path)
    assert {cell.data_type for row in book["traits"].iter_rows() for cell in row if cell.value} == {"s"}


def test_the_drop_down_offers_the_words_of_the_page(tmp_path):
    page = """standard "x" edition 1 variety kohaku
phrase "crisp as paper" means kiwa is razor
phrase "runs out" means odome below 1 %
phrase "stocky" means build is heavy and outline at most fair
grade keep if kiwa at least sharp and odome at least 1 % and outline at least fair
grade out otherwise
"""
    standard = koirules.read_standard(page)
    standard.write_sheet(tmp_path / "lot.xlsx")
    sheet = openpyxl.load_workbook(tmp_path / "lot.xlsx")["records"]
    columns = {cell.value.split(" (")[0]: cell for cell in sheet[1]}
    lists = {str(one.sqref).split(":")[0]: one.formula1 for one in sheet.data_validations.dataValidation}
    assert lists[f"{columns['kiwa'].column_letter}2"] == '"blurred,fair,sharp,razor,crisp as paper"'
    assert "runs out" in columns["odome"].comment.text
    assert "stocky" not in columns["outline"].comment.text
    sheet.append(["1", *[{"kiwa": "crisp as paper", "odome": "runs out"}.get(name) for name in list(columns)[1:]]])
    sheet.parent.save(tmp_path / "lot.xlsx")
    (record,) = standard.read_records(tmp_path / "lot.xlsx")
    assert record.readings["kiwa"] == 8
    assert record.readings["odome"].high < 1
