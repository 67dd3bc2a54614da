"""Results as files: what stands in each column, and that no text in them ever acts."""

import csv
import json
import re
from datetime import date
from decimal import Decimal

import openpyxl
import pytest
from attrs import evolve
from hypothesis import given
from hypothesis import strategies as st

import koirules
from koirules.builtin.koi import KOI
from koirules.records.safe_text import for_csv
from koirules.report.result_files import WRITERS, About, check_result_path, write_results
from koirules.results.reason import Given, Grounds, Reason, State, Told
from koirules.results.result import Result, SectionResult

ABOUT = About(
    title="Lantern Bay house standard",
    edition="2026-1",
    variety="kohaku",
    file="lantern_bay.koi",
    settings={"grown_length": "70 cm"},
    stage="tosai",
    cautions=("Handle each fish briefly.",),
    seal="1-0f3a",
    subject=KOI,
)
HEADINGS = [
    "fish",
    "grade",
    "possible",
    "score",
    "score_low",
    "score_high",
    "body_low",
    "body_high",
    "pattern_low",
    "pattern_high",
    "faults",
    "lifts",
    "hangs_on",
    "why",
]


def section(name, low, high):
    return SectionResult(name, name, Decimal(50), Decimal(low), Decimal(high))


class Tale:
    def __init__(self, words):
        self._words = words

    def words(self, about, state):
        return self._words

    def read(self, about):
        return "spine bent"


def reason(words="a bent spine"):
    about = Told("fault", "bent_spine", "bent spine", "", "cull", 17)
    return Reason((Given(about, State.YES), Tale(words)))


class Behind:
    def __init__(self, *reasons):
        self._reasons = reasons

    def reasons(self):
        return self._reasons

    def grounds(self, reasons):
        return Grounds(others=tuple(reasons))

    def contributions(self, result):
        return ()


def result(fish="K01", **changes):
    parts = {
        "possible": ("hold",),
        "score_low": Decimal("71.50"),
        "score_high": Decimal("71.50"),
        "sections": {"body": section("body", "30.00", "30.00"), "pattern": section("pattern", "41.50", "41.50")},
        "faults": ("bent_spine", "shimi"),
        "lifts": ("quality",),
        "labels": {"pond": "3"},
        "behind": Behind(reason(changes.pop("words", "a bent spine"))),
    }
    return Result(fish, **(parts | changes))


SETTLED = result()
OPEN = result(
    "K02",
    possible=("keep", "hold"),
    score_high=Decimal("80.00"),
    faults=(),
    lifts=(),
    labels={},
)


def read_csv(path):
    with path.open(encoding="utf-8", newline="") as file:
        return list(csv.reader(file))


def test_a_csv_file_has_one_row_a_fish_and_blanks_for_what_is_not_settled(tmp_path):
    path = tmp_path / "results.csv"
    assert write_results(path, [SETTLED, OPEN], ABOUT) is None
    headings, settled, still_open = read_csv(path)
    assert headings == [*HEADINGS, "pond"]
    assert settled == [
        *("K01", "hold", "hold", "71.50", "71.50", "71.50", "30.00", "30.00", "41.50", "41.50"),
        *("bent_spine;shimi", "quality", "", "a bent spine", "3"),
    ]
    assert still_open == [
        *("K02", "", "keep|hold", "", "71.50", "80.00", "30.00", "30.00", "41.50", "41.50"),
        *("", "", "", "a bent spine", ""),
    ]


def test_a_label_called_like_a_column_of_ours_says_that_it_is_a_label(tmp_path):
    path = tmp_path / "results.csv"
    write_results(path, [result(labels={"grade": "A"})], ABOUT)
    assert read_csv(path)[0] == [*HEADINGS, "grade (label)"]


def test_a_json_file_holds_the_same_with_numbers_lists_and_reasons(tmp_path):
    path = tmp_path / "results.json"
    assert write_results(path, [SETTLED, OPEN], ABOUT) is None
    whole = json.loads(path.read_text(encoding="utf-8"))
    assert whole["standard"] == {
        "title": "Lantern Bay house standard",
        "edition": "2026-1",
        "seal": "1-0f3a",
        "variety": "kohaku",
        "file": "lantern_bay.koi",
    }
    assert whole["stage"] == "tosai"
    assert whole["settings"] == {"grown_length": "70 cm"}
    assert whole["cautions"] == ["Handle each fish briefly."]
    settled, still_open = whole["results"]
    of_the_batch = [
        "decided",
        "forgiven",
        "losses",
        "gains",
        "outside",
        "unread",
        "look_again",
        "decision",
        "by_rules",
        "kept_by",
        "left_in",
        "tied_in",
        "open_in",
        "sent_to",
        "next_look",
        "course",
    ]
    assert list(settled) == [*HEADINGS, *of_the_batch, "labels", "reasons"]
    assert settled["score"] == settled["score_low"] == 71.5
    assert (settled["possible"], settled["faults"], settled["lifts"]) == (
        ["hold"],
        ["bent_spine", "shimi"],
        ["quality"],
    )
    assert settled["labels"] == {"pond": "3"}
    (told,) = settled["reasons"]
    assert (told["kind"], told["name"], told["state"], told["outcome"]) == ("fault", "bent_spine", "yes", "cull")
    assert (told["words"], told["read"], told["line"], told["points_low"]) == ("a bent spine", "spine bent", 17, None)
    assert (still_open["grade"], still_open["score"], still_open["score_high"]) == (None, None, 80.0)
    assert (still_open["possible"], still_open["hangs_on"]) == (["keep", "hold"], [])


def test_a_workbook_has_the_columns_of_the_csv_file(tmp_path):
    csv_path, path = tmp_path / "results.csv", tmp_path / "results.xlsx"
    for one in (csv_path, path):
        assert write_results(one, [SETTLED, OPEN], ABOUT) is None
    # Read back with openpyxl, which shares no code with the library that writes the file.
    book = openpyxl.load_workbook(path)
    sheet = book["results"]
    shown = [["" if cell is None else cell for cell in row] for row in sheet.iter_rows(values_only=True)]
    expected = [
        [float(cell) if re.fullmatch(r"\d+\.\d\d", cell) else cell for cell in row] for row in read_csv(csv_path)
    ]
    assert shown == expected
    assert sheet.freeze_panes == "B2"
    assert sheet.auto_filter.ref == "A1:O3"
    assert sheet["D2"].number_format == "0.00"
    assert sheet["A1"].font.bold
    assert sheet.column_dimensions["N"].width > sheet.column_dimensions["A"].width - 1


def test_a_workbook_says_which_standard_it_comes_from(tmp_path):
    path = tmp_path / "results.xlsx"
    write_results(path, [SETTLED], ABOUT)
    lines = dict(openpyxl.load_workbook(path)["standard"].iter_rows(values_only=True))
    assert lines == {
        "title": "Lantern Bay house standard",
        "edition": "2026-1",
        "seal": "1-0f3a",
        "variety": "kohaku",
        "stage": "tosai",
        "file": "lantern_bay.koi",
        "setting grown_length": "70 cm",
        "caution": "Handle each fish briefly.",
    }


@pytest.mark.parametrize("ending", WRITERS)
def test_a_batch_without_fish_can_be_written(tmp_path, ending):
    assert write_results(tmp_path / f"results{ending}", [], ABOUT) is None


ACTING = [
    "=1+1",
    "+1",
    "-1",
    "@SUM(A1)",
    "\t=1",
    "\r=1",
    "\n=1",
    "＝1+1",
    '=HYPERLINK("http://x","y")',
    "x;=1+1",
    'x;"=1+1"',
    "\x1b[2J=1",
]


@pytest.mark.parametrize("text", ACTING)
def test_no_text_becomes_a_formula_or_steers_a_terminal_in_csv(tmp_path, text):
    path = tmp_path / "results.csv"
    write_results(path, [result(text, words=text, labels={text: text})], ABOUT)
    # A program that parts cells at semicolons or tabs must find no formula either.
    for delimiter in ",;\t":
        with path.open(encoding="utf-8", newline="") as file:
            for row in csv.reader(file, delimiter=delimiter):
                for cell in row:
                    assert not cell.lstrip(' "').startswith(("=", "+", "-", "@", "＝"))
    assert "\x1b" not in path.read_text(encoding="utf-8")


@pytest.mark.parametrize("text", ACTING)
def test_no_text_becomes_a_formula_or_link_in_a_workbook(tmp_path, text):
    path = tmp_path / "results.xlsx"
    write_results(path, [result(text, words=text, labels={text: text})], About(text, text, text, text, {text: text}))
    # Read back with openpyxl: "f" would be a formula, "s" and "inlineStr" are texts.
    book = openpyxl.load_workbook(path)
    kinds = {cell.data_type for sheet in book for row in sheet.iter_rows() for cell in row if cell.value is not None}
    assert kinds <= {"s", "inlineStr", "n"}
    texts = [cell.value for row in book["results"].iter_rows() for cell in row if isinstance(cell.value, str)]
    assert not any("\x1b" in cell for cell in texts)
    assert all(cell.hyperlink is None for sheet in book for row in sheet.iter_rows() for cell in row)


def test_json_keeps_every_text_as_it_was_and_escapes_what_could_act(tmp_path):
    path = tmp_path / "results.json"
    text = "=1\x1b[2J\x9b\x7f\ud800松"
    write_results(path, [result(text)], ABOUT)
    content = path.read_text(encoding="utf-8")
    assert json.loads(content)["results"][0]["fish"] == text
    assert all(letter.isprintable() or letter == "\n" for letter in content)
    assert "松" in content


@given(st.text())
def test_no_text_in_csv_begins_like_a_formula(text):
    assert not for_csv(text).startswith(("=", "+", "-", "@", "\t", "\r", "\n"))


def test_a_text_longer_than_a_cell_is_cut_and_says_so(tmp_path):
    path = tmp_path / "results.xlsx"
    write_results(path, [result(words="x" * 40_000)], ABOUT)
    why = openpyxl.load_workbook(path)["results"]["N2"].value
    assert (len(why), why[-1]) == (32_767, "…")


@pytest.mark.parametrize("name", ["results.pdf", "results", "results.xls"])
def test_another_ending_is_answered_with_those_that_can_be_written(tmp_path, name):
    problem = write_results(tmp_path / name, [SETTLED], ABOUT)
    assert problem == check_result_path(tmp_path / name)
    assert problem.code == "unknown-ending"
    assert all(ending in problem.mend for ending in (".csv", ".xlsx", ".json", ".html"))
    assert list(tmp_path.iterdir()) == []


def test_what_rounds_and_persons_made_of_a_batch_stands_in_every_format(tmp_path):
    standard = koirules.read_standard("""standard "Tin Bucket, places" edition 1 variety kohaku
grade keep if kiwa at least sharp
grade sell otherwise
alert soft "half have a soft edge" if batch share of (kiwa is fair) at least 50 %
round house "the house" pick 1 by highest kiwa send to "house" again in 2 weeks rescues 1
""")
    fish = [{"fish": "a", "kiwa": "razor"}, {"fish": "b", "kiwa": "fair"}, {"fish": "c", "kiwa": "fair"}]
    decisions = [
        koirules.Decision("b", "", "house", "=Y.", "the owner likes it"),
        koirules.Decision("c", "keep", "", "Y.", "firm"),
    ]
    batch = standard.grade_batch(fish, decisions, date(2026, 11, 25))
    about = evolve(ABOUT, alerts=batch.alerts, rounds=batch.rounds)
    for ending in (".csv", ".json", ".xlsx"):
        assert write_results(tmp_path / f"results{ending}", batch.results, about) is None
    heading, *rows = read_csv(tmp_path / "results.csv")
    cells = [dict(zip(heading, row, strict=True)) for row in rows]
    assert [cell["kept_by"] for cell in cells] == ["house", "house", ""]
    assert [cell["left_in"] for cell in cells] == ["", "", "house"]
    assert (cells[0]["sent_to"], cells[0]["next_look"]) == ("house", "2026-12-09")
    assert (cells[2]["by_rules"], cells[2]["grade"], cells[2]["decision_reason"]) == ("sell", "keep", "firm")
    whole = json.loads((tmp_path / "results.json").read_text(encoding="utf-8"))
    assert whole["alerts"] == [{"name": "soft", "words": "half have a soft edge", "surely": True, "so_far": True}]
    (house,) = whole["rounds"]
    assert (house["kept"], house["left"], house["places"]) == (["a", "b"], ["c"], 1)
    assert house["by_hand"][0]["reason"] == "the owner likes it"
    assert whole["results"][2]["course"][0]["above"] == ["a"]
    book = openpyxl.load_workbook(tmp_path / "results.xlsx")
    assert book.sheetnames == ["results", "rounds", "standard"]
    assert [[cell.value for cell in row][:3] for row in book["rounds"].iter_rows(min_row=2)] == [
        ["the house", "a", "kept"],
        ["the house", "b", "kept"],
        ["the house", "c", "left"],
    ]
    assert all(cell.data_type != "f" for sheet in book for row in sheet.iter_rows() for cell in row)
