"""What commands do, the library does through public names."""

import json

import pytest

import koirules

RULES = """
standard "library" edition 1 variety kohaku
fault bent "bent spine" if spine is bent: no better than sell
section body worth 100
points outline by outline: poor gives 0, fair gives 4, good gives 8, excellent gives 10
grade keep if score at least 60
grade sell otherwise
sample "good" with outline good, spine straight shows no fault
"""


@pytest.fixture(scope="module")
def standard():
    return koirules.read_standard(RULES)


def test_samples_and_what_they_do_not_reach(standard):
    (run,) = standard.sample_runs()
    assert (run.result.grade, run.failures) == ("keep", ())
    assert any("sell" in words for words in standard.unreached())
    tried = []
    assert standard.unnoticed_changes(tried.append)
    assert tried


def test_proofs(standard):
    pytest.importorskip("z3")
    asked = []
    found = standard.prove(progress=asked.append)
    assert found.statements
    assert found.unreached == ()
    assert asked


def test_sheets_handbooks_and_results_are_those_of_the_commands(standard, tmp_path):
    standard.write_sheet(tmp_path / "sheet.csv")
    assert (tmp_path / "sheet.csv").read_text(encoding="utf-8-sig").startswith("fish")
    standard.write_handbook(tmp_path / "handbook.html")
    assert "bent spine" in (tmp_path / "handbook.html").read_text(encoding="utf-8")
    batch = standard.grade_batch(
        [{"fish": "A", "outline": "good", "spine": "straight"}, {"fish": "B", "spine": "bent"}]
    )
    standard.write_results(tmp_path / "page.html", batch)
    assert "library" in (tmp_path / "page.html").read_text(encoding="utf-8")
    standard.write_results(tmp_path / "data.json", batch)
    assert [fish["fish"] for fish in json.loads((tmp_path / "data.json").read_text(encoding="utf-8"))["results"]] == [
        "A",
        "B",
    ]


@pytest.mark.parametrize("name", ["sheet.txt", "no/such/sheet.csv"])
def test_what_cannot_be_written_is_raised_as_a_problem(standard, tmp_path, name):
    with pytest.raises(koirules.KoirulesError):
        standard.write_sheet(tmp_path / name)
    with pytest.raises(koirules.KoirulesError):
        standard.write_handbook(tmp_path / name)
    with pytest.raises(koirules.KoirulesError):
        standard.write_results(tmp_path / name, standard.grade_batch([{"fish": "A"}]))
