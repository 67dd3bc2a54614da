"""The command as its users run it: what is printed, what is written, how it ends."""

import csv
import json
from pathlib import Path

import openpyxl
import pytest
from click.testing import CliRunner

from koirules.commands import main

RULES = """standard "Trial (an invented house)" edition 2026-1 variety kohaku
setting bar = 60 from 50 to 90
fault bent "bent spine" ja "背曲がり" if spine is bent: no better than cull
section body "body" worth 100
points stem "tail stem" by tail_stem: thin gives 0, fair gives 6, strong gives 10
grade keep if score at least bar
grade cull otherwise
sample "good" with spine straight, tail_stem strong comes out keep
"""
RECORDS = """fish,spine,tail_stem,pond,colour of bucket
1,straight,strong,mill pond,red
2,bent,,mill pond,
3,,fair,,blue
4,straight,thin,,
"""


@pytest.fixture(autouse=True)
def farm(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("rules.koi").write_text(RULES, encoding="utf-8")
    Path("lot.csv").write_text(RECORDS, encoding="utf-8")


def run(*words):
    result = CliRunner().invoke(main, [str(word) for word in words])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


GRADE = ("grade", "rules.koi", "lot.csv", "--label", "colour of bucket")


def test_grade_prints_every_fish_its_reasons_and_the_totals():
    result = run(*GRADE)
    assert result.exit_code == 0
    lines = [line.split() for line in result.output.splitlines()]
    assert ["1", "keep", "100", "gained:", "tail", "stem:", "strong,", "10", "of", "10"] in lines
    assert "bent spine: no better than cull" in result.output
    assert "keep or cull" in result.output
    assert ["keep", "1"] in lines
    assert ["cull", "2"] in lines
    assert ["not", "settled", "1"] in lines
    assert "no instruction to kill: sell or rehome first" in " ".join(result.output.split())


def test_results_as_csv_hold_the_contract():
    assert run(*GRADE, "--out", "out.csv").exit_code == 0
    rows = list(csv.DictReader(Path("out.csv").read_text(encoding="utf-8-sig").splitlines()))
    head = ["fish", "grade", "possible", "score", "score_low", "score_high", "body_low", "body_high"]
    assert list(rows[0])[:12] == [*head, "faults", "lifts", "hangs_on", "why"]
    assert [row["fish"] for row in rows] == ["1", "2", "3", "4"]
    assert [row["grade"] for row in rows] == ["keep", "cull", "", "cull"]
    assert [row["possible"] for row in rows] == ["keep", "cull", "keep|cull", "cull"]
    assert rows[1]["score"] == "" and float(rows[1]["score_high"]) == 100
    assert rows[1]["faults"] == "bent"
    assert rows[0]["pond"] == "mill pond" and rows[0]["colour of bucket"] == "red"


def test_results_as_json_hold_the_contract():
    assert run(*GRADE, "--set", "bar=65", "--out", "out.json").exit_code == 0
    data = json.loads(Path("out.json").read_text(encoding="utf-8"))
    about = data["standard"]
    assert (about["title"], about["edition"], about["variety"]) == ("Trial (an invented house)", "2026-1", "kohaku")
    assert about["file"] == "rules.koi"
    assert data["settings"] == {"bar": "65"}
    by_fish = {result["fish"]: result for result in data["results"]}
    assert by_fish["1"]["grade"] == "keep" and by_fish["1"]["score"] == 100
    assert by_fish["2"]["score"] is None and by_fish["2"]["faults"] == ["bent"]
    assert by_fish["3"]["grade"] == "cull"  # 60 is below the bar of this run
    assert {reason["kind"] for reason in by_fish["1"]["reasons"]} == {"points", "fault", "grade"}


def test_results_as_xlsx_open_in_another_library():
    assert run(*GRADE, "--out", "out.xlsx").exit_code == 0
    sheet = openpyxl.load_workbook("out.xlsx").worksheets[0]
    rows = list(sheet.iter_rows(values_only=True))
    assert rows[0][:3] == ("fish", "grade", "possible")
    assert rows[1][1] == "keep"


def test_problems_in_records_end_with_2_and_nothing_is_written():
    Path("lot.csv").write_text(RECORDS.replace("strong", "stong") + "1,straight,thin,,\n", encoding="utf-8")
    result = run("grade", "rules.koi", "lot.csv", "--out", "out.csv")
    assert result.exit_code == 2
    assert not Path("out.csv").exists()
    text = result.stderr
    assert 'Did you mean "strong"' in text
    assert "[unknown-column]" in text and "[doubled-fish]" in text
    assert "nothing was written" in text


def test_problems_in_rules_show_their_line_and_end_with_2():
    Path("rules.koi").write_text(
        RULES.replace("tail_stem:", "tail_stm:").replace("is bent", "is bant"), encoding="utf-8"
    )
    result = run("grade", "rules.koi", "lot.csv")
    assert result.exit_code == 2
    assert "^^^^" in result.stderr
    assert result.stderr.count("problem:") == 2


def test_an_unknown_ending_is_answered_before_anything_is_read():
    result = run("grade", "rules.koi", "no_such.csv", "--out", "out.docx")
    assert result.exit_code == 2
    assert ".csv" in result.stderr and ".xlsx" in result.stderr


def test_why_tells_everything_about_one_fish():
    result = run("why", "rules.koi", "lot.csv", "3", "--label", "colour of bucket")
    assert result.exit_code == 0
    assert "Fish 3: keep or cull, score 60" in result.output
    assert "tail stem: fair, 6 of 10" in result.output
    assert "bent spine: perhaps no better than cull" in result.output


def test_why_of_a_fish_that_is_not_there_names_a_near_one():
    result = run("why", "rules.koi", "lot.csv", "11", "--label", "colour of bucket")
    assert result.exit_code == 2
    assert 'Did you mean "1"?' in result.stderr


def test_why_says_what_stands_in_the_way():
    result = run("why", "rules.koi", "lot.csv", "4", "--label", "colour of bucket")
    assert "score is 0, 60 short of 60" in result.output


def test_reasons_come_in_the_language_of_the_labels():
    assert "背曲がり" in run(*GRADE, "--language", "ja").output


def test_check_runs_the_samples():
    result = run("check", "rules.koi")
    assert result.exit_code == 0
    assert "1 sample holds" in result.output


def test_check_ends_with_1_where_a_sample_does_not_hold():
    Path("rules.koi").write_text(RULES.replace("comes out keep", "comes out cull"), encoding="utf-8")
    result = run("check", "rules.koi")
    assert result.exit_code == 1
    assert "should come out cull, but comes out keep" in result.stderr


def test_check_ends_with_2_where_one_of_several_files_has_problems():
    Path("bad.koi").write_text("standrd x", encoding="utf-8")
    result = run("check", "rules.koi", "bad.koi", "nowhere.koi")
    assert result.exit_code == 2
    assert "1 sample holds" in result.output
    assert "[no-such-file]" in result.stderr


def test_check_reach_lists_what_no_sample_reaches():
    assert "no sample reaches: fault bent biting" in run("check", "rules.koi", "--reach").output


def test_a_sheet_that_is_filled_in_can_be_graded():
    assert run("sheet", "kohaku", "--out", "sheet.xlsx", "--rules", "rules.koi").exit_code == 0
    book = openpyxl.load_workbook("sheet.xlsx")
    sheet = book.worksheets[0]
    heads = [cell.value for cell in sheet[1]]
    assert heads == ["fish", "tail_stem", "spine"]
    for column, value in enumerate(["A", "strong", "straight"], 1):
        sheet.cell(2, column, value)
    book.save("filled.xlsx")
    result = run("grade", "rules.koi", "filled.xlsx")
    assert result.exit_code == 0, result.stderr
    assert "keep" in result.output


MAPPED = """standard "m" edition 1 variety kohaku
grade keep if hi_cover above 20 % and spine is straight
grade sell otherwise
"""


def test_a_sheet_has_no_map_that_nobody_types_unless_asked():
    Path("mapped.koi").write_text(MAPPED, encoding="utf-8")
    told = run("sheet", "mapped.koi", "--out", "sheet.csv").output
    assert Path("sheet.csv").read_text(encoding="utf-8-sig").strip() == "fish,spine,hi_cover (%)"
    assert "Without hi_patches, which photographs give; --maps adds it." in told
    assert run("sheet", "mapped.koi", "--out", "sheet.csv", "--maps", "--replace").exit_code == 0
    assert Path("sheet.csv").read_text(encoding="utf-8-sig").strip() == "fish,spine,hi_patches,hi_cover (%)"
    assert run("sheet", "tosai_kohaku", "--out", "tosai.csv").exit_code == 0
    assert "hi_patches" not in Path("tosai.csv").read_text(encoding="utf-8-sig")


def test_a_sheet_has_the_columns_of_a_show_where_they_are_asked_for():
    Path("mapped.koi").write_text(MAPPED, encoding="utf-8")
    words = ("--with", "exhibitor", "--with", "judge", "--with", "pond")
    assert run("sheet", "mapped.koi", "--out", "sheet.csv", *words).exit_code == 0
    heads = Path("sheet.csv").read_text(encoding="utf-8-sig").strip()
    assert heads == "fish,owner,judge,pond,spine,hi_cover (%)"
    Path("sheet.csv").write_text(f"{heads}\n1,Ann,,north,straight,40\n", encoding="utf-8")
    assert run("grade", "mapped.koi", "sheet.csv", "--label", "pond").exit_code == 0
    assert "is no column to add" in run("sheet", "mapped.koi", "--out", "s.csv", "--with", "spine").stderr
    assert not Path("s.csv").exists()


def test_a_mistake_that_a_column_repeats_is_told_once_with_its_rows():
    Path("mapped.koi").write_text(MAPPED, encoding="utf-8")
    rows = [
        f"{fish},{'crooked?' if fish < 12 else 'straight'},{share}" for fish, share in enumerate([0.5] * 11 + [40], 1)
    ]
    Path("lot.csv").write_text("fish,spine,hi_cover\n" + "\n".join(rows) + "\n", encoding="utf-8")
    told = run("grade", "mapped.koi", "lot.csv").stderr
    assert told.count("[value-share-or-part]") == 1
    assert "11 numbers of this column, which is in %, are 1 or less: rows 2, 3, 4, 5, 6, 7, 8, 9 and 3 more." in told
    assert told.count('"crooked?"') == 1
    assert "2 problems" in told
    mended = "fish,spine,hi_cover\n1,straight,50\n2,straight,0.45 %\n"
    Path("lot.csv").write_text(mended, encoding="utf-8")
    assert run("grade", "mapped.koi", "lot.csv").exit_code == 0


def test_a_word_that_is_read_by_a_phrase_is_told():
    Path("mapped.koi").write_text(MAPPED, encoding="utf-8")
    Path("lot.csv").write_text("fish,spine,hi_cover\n1,ok,40\n2,straight,40\n3,ok,40\n", encoding="utf-8")
    told = run("grade", "mapped.koi", "lot.csv")
    assert told.exit_code == 0
    assert '"ok" was read as straight (2 rows: 2 and 4).' in told.stderr
    own = 'phrase "ok" means spine is straight\n'
    Path("mapped.koi").write_text(MAPPED.replace("grade keep", f"{own}grade keep"), encoding="utf-8")
    assert "read-as-said" not in run("grade", "mapped.koi", "lot.csv").stderr


@pytest.mark.parametrize("words", [(), ("--all",)])
def test_a_fish_that_a_person_decided_about_says_so_first(words):
    Path("mapped.koi").write_text(MAPPED, encoding="utf-8")
    lot = "".join(f"{fish},straight,40\n" for fish in range(1, 7))
    Path("lot.csv").write_text(f"fish,spine,hi_cover\n{lot}", encoding="utf-8")
    Path("said.csv").write_text("fish,grade,by,reason\n3,sell,committee,tired at the bowl\n", encoding="utf-8")
    told = run("grade", "mapped.koi", "lot.csv", "--decisions", "said.csv", *words).output
    (line,) = [line for line in told.splitlines() if line.split()[:2] == ["3", "sell"]]
    assert line.split(maxsplit=2)[2].startswith("decided by committee: tired at the bowl;")


def test_a_sheet_of_a_standard_without_a_variety_has_its_house_traits():
    Path("house.koi").write_text(
        'standard "h" edition 1\ntrait colour as scale pale < deep\ngrade a if colour is deep\ngrade b otherwise\n',
        encoding="utf-8",
    )
    assert run("sheet", "--rules", "house.koi", "--out", "sheet.csv").exit_code == 0
    assert Path("sheet.csv").read_text(encoding="utf-8-sig").strip() == "fish,colour"
    assert "pale < deep" in run("traits", "house.koi").output
    assert run("sheet", "--out", "sheet.csv").exit_code == 2
    assert run("sheet", "kohaku", "--rules", "house.koi", "--out", "sheet.csv").exit_code == 2


def test_records_in_place_of_rules_are_answered_in_one_line():
    result = run("grade", "lot.csv", "rules.koi")
    assert result.exit_code == 2
    assert "The rule file comes first" in result.stderr


def test_a_language_that_no_label_has_is_said_so():
    said = run(*GRADE, "--language", "DE").stderr
    assert "texts in rules.koi are not given in de; `koirules untranslated de rules.koi` lists them." in said


def test_results_never_take_the_place_of_records_or_rules():
    for given in ("lot.csv", "./lot.csv"):
        assert run(*GRADE, "--out", given).exit_code == 2
    assert Path("lot.csv").read_text(encoding="utf-8") == RECORDS


def test_a_sheet_that_may_be_filled_in_is_not_replaced_unasked():
    Path("sheet.csv").write_text("fish\n1\n", encoding="utf-8")
    assert run("sheet", "kohaku", "--out", "sheet.csv").exit_code == 2
    assert Path("sheet.csv").read_text(encoding="utf-8") == "fish\n1\n"
    assert run("sheet", "rules.koi", "--out", "sheet.csv", "--replace").exit_code == 0
    assert Path("sheet.csv").read_text(encoding="utf-8-sig").startswith("fish,tail_stem,spine")


def test_a_table_of_records_is_no_rule_file():
    result = run("check", "lot.csv")
    assert result.exit_code == 2
    assert "table of records" in result.stderr


def test_a_batch_without_fish_is_said_so():
    Path("lot.csv").write_text("fish,spine\n", encoding="utf-8")
    assert "There is no fish in lot.csv" in run("grade", "rules.koi", "lot.csv").stderr


def test_a_standard_without_sections_shows_no_score():
    Path("faults.koi").write_text(
        'standard "f" edition 1 variety kohaku\ngrade a if spine is straight\ngrade b otherwise\n', encoding="utf-8"
    )
    Path("lot.csv").write_text("fish,spine\n1,straight\n", encoding="utf-8")
    assert "score" not in run("grade", "faults.koi", "lot.csv").output


def test_a_csv_sheet_is_a_header():
    assert run("sheet", "kohaku", "--out", "sheet.csv").exit_code == 0
    lines = Path("sheet.csv").read_text(encoding="utf-8-sig").splitlines()
    assert lines[0].startswith("fish,")
    assert len(lines) == 1


def test_traits_lists_names_ranges_and_descriptions():
    result = run("traits", "kohaku")
    assert result.exit_code == 0
    assert "tail_stem" in result.output
    listed = json.loads(run("traits", "kohaku", "--json").output)
    assert {"name", "kind", "better", "growth", "describe"} <= set(listed[0])
    assert run("traits", "kohakku").exit_code == 2


def test_an_edition_outside_its_dates_is_used_with_a_warning():
    dated = RULES.replace("edition 2026-1", "edition 2026-1 valid from 2019-01-01 until 2020-12-31")
    Path("rules.koi").write_text(dated, encoding="utf-8")
    result = run(*GRADE)
    assert result.exit_code == 0
    assert "valid only until 2020-12-31" in result.stderr
    assert "[not-valid-today]" in result.stderr


def test_a_setting_that_cannot_be_changed_so_ends_with_2():
    result = run(*GRADE, "--set", "bar=95")
    assert result.exit_code == 2
    assert "[bad-setting]" in result.stderr
    assert run(*GRADE, "--set", "bar").exit_code == 2


def test_text_from_files_cannot_steer_a_terminal():
    Path("lot.csv").write_text("fish,spine\n\x1b[31mred,straight\n", encoding="utf-8")
    result = run("grade", "rules.koi", "lot.csv")
    assert "\x1b[31mred" not in result.output


def test_json_lines_are_read_too():
    Path("lot.jsonl").write_text('{"fish": "a", "spine": "straight", "tail_stem": "strong"}\n', encoding="utf-8")
    assert "keep" in run("grade", "rules.koi", "lot.jsonl").output


def test_a_rule_set_is_found_by_its_name():
    Path("lot.csv").write_text("fish,spine\n1,bent\n", encoding="utf-8")
    assert "out of the lot" in run("grade", "tosai_kohaku", "lot.csv").output


def test_odd_paths_are_answered_and_never_end_in_a_traceback():
    Path("loop.csv").symlink_to("loop.csv")
    for words in (
        ("check", "x" * 300 + ".koi"),
        ("grade", "x" * 300 + ".koi", "lot.csv"),
        ("grade", "rules.koi", "lot.csv", "--out", "loop.csv"),
        ("grade", "rules.koi", "loop.csv"),
        ("check", "nul\0.koi"),
    ):
        assert run(*words).exit_code == 2, words


def test_a_rule_file_that_is_far_too_large_is_not_read_whole():
    with Path("huge.koi").open("wb") as file:
        file.truncate(30_000_000_000)
    result = run("check", "huge.koi")
    assert result.exit_code == 2
    assert "[too-large]" in result.stderr


def test_house_traits_cannot_steer_a_terminal():
    Path("house.koi").write_text(
        'standard "h" edition 1\ntrait colour "\x1b[31mred" as scale pale < deep\n'
        "grade a if colour is deep\ngrade b otherwise\n",
        encoding="utf-8",
    )
    assert "\x1b[31m" not in run("traits", "house.koi").output
    assert "\x1b" not in run("traits", "house.koi", "--json").output


def test_results_are_written_before_anything_is_printed():
    Path("lot.jsonl").write_text('{"fish": "a\\ud800", "spine": "bent"}\n', encoding="utf-8")
    assert run("grade", "rules.koi", "lot.jsonl", "--out", "out.json").exit_code == 0
    assert Path("out.json").exists()


@pytest.mark.parametrize(
    ("words", "out"),
    [
        (("grade", "rules.koi", "lot.csv", "--out"), "out.csv"),
        (("grade", "rules.koi", "lot.csv", "--plot"), "out.svg"),
        (("grade", "rules.koi", "lot.csv", "lot.csv", "--out"), "out.csv"),
        (("sheet", "kohaku", "--out"), "out.csv"),
        (("handbook", "rules.koi", "--out"), "out.html"),
        (("compare", "rules.koi", "rules.koi", "--out"), "out.json"),
        (("classes", "lantern_bay_young", "lot.csv", "--variety", "kohaku", "--out"), "out.csv"),
    ],
    ids=lambda one: one[0] if isinstance(one, tuple) else "",
)
def test_no_command_writes_over_a_file_unless_it_is_told_to(words, out):
    Path("lot.csv").write_text("fish,length\na,14\n", encoding="utf-8")
    Path(out).write_text("of last year", encoding="utf-8")
    result = run(*words, out)
    assert result.exit_code == 2
    assert "is there already. Name another file, or add --replace. Nothing was written." in result.stderr
    assert Path(out).read_text(encoding="utf-8") == "of last year"
    assert run(*words, out, "--replace").exit_code == 0
    assert Path(out).read_bytes() != b"of last year"


def test_a_standard_without_points_gives_no_score(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("plain.koi").write_text(
        'standard "p" edition 1 variety kohaku\ngrade keep if kiwa at least sharp\ngrade sell otherwise\n',
        encoding="utf-8",
    )
    Path("lot.csv").write_text("fish,kiwa\n1,razor\n", encoding="utf-8")
    told = run("why", "plain.koi", "lot.csv", "1").output
    assert told.startswith("Fish 1: keep\n")
    assert "score" not in told
