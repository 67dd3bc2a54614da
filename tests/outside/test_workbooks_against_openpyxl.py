"""Workbooks that koirules writes, read back by another library.

Source: openpyxl (a reader and writer of its own of Office Open XML, ECMA-376), by its documented behaviour.
"""

from decimal import Decimal

import openpyxl
import pytest

import koirules
from koirules.plugins import registry_with
from koirules.records.records import read_records
from koirules.records.sheet import write_sheet
from koirules.report.result_files import About, write_results

RULES = """standard "Trial (an invented house)" edition 1 variety kohaku
fault bent if spine is bent: no better than cull
section body worth 100
points stem by tail_stem: thin gives 0, fair gives 6, strong gives 10
grade keep if score at least 50
grade cull otherwise
"""
KOHAKU = registry_with().varieties["kohaku"]


def test_results_are_numbers_and_texts_as_another_library_reads_them(tmp_path):
    standard = koirules.read_standard(RULES)
    records = [{"fish": "A", "spine": "straight", "tail_stem": "fair"}, {"fish": "B", "spine": "bent"}]
    results = [standard.grade(record) for record in records]
    path = tmp_path / "results.xlsx"
    assert write_results(path, results, About("Trial", "1", "kohaku", "r.koi")) is None
    head, first, second = openpyxl.load_workbook(path).worksheets[0].iter_rows(values_only=True)
    rows = [dict(zip(head, row, strict=True)) for row in (first, second)]
    assert [row["grade"] for row in rows] == ["keep", "cull"]
    assert [row["score"] for row in rows] == [60, None]
    assert [Decimal(str(row["score_high"])) for row in rows] == [result.score_high for result in results]
    assert rows[1]["faults"] == "bent"


def test_a_sheet_offers_what_the_vocabulary_allows_as_another_library_reads_it(tmp_path):
    path = tmp_path / "sheet.xlsx"
    assert write_sheet(path, KOHAKU, only=["tail_stem", "length", "shimi_count"]) is None
    sheet = openpyxl.load_workbook(path).worksheets[0]
    assert [cell.value for cell in sheet[1]] == ["fish", "tail_stem", "length (cm)", "shimi_count"]
    assert all(cell.comment is not None for cell in sheet[1][1:])
    by_type = {rule.type: rule for rule in sheet.data_validations.dataValidation}
    assert "thin" in by_type["list"].formula1


@pytest.mark.parametrize(("written", "low", "high"), [(14.5, 14.5, 14.5), ("14 cm to 150 mm", 14, 15)])
def test_a_sheet_filled_in_by_another_library_is_read(tmp_path, written, low, high):
    path = tmp_path / "filled.xlsx"
    book = openpyxl.Workbook()
    book.active.append(["fish", "length", "kiwa"])
    book.active.append(["A", written, "fair or sharp"])
    book.save(path)
    (record,) = read_records(path, KOHAKU.traits).records
    assert record.readings["length"] == (low, high)
    assert record.readings["kiwa"] == 0b110
