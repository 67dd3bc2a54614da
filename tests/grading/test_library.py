"""What commands do, the library does through public names."""

import json
from pathlib import Path

import pytest
from click.testing import CliRunner

import koirules
from koirules.commands import main
from koirules.records.records import read_records

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


def test_proofs_without_the_solver_say_what_to_install(standard, monkeypatch):
    monkeypatch.setattr("koirules.api.find_spec", lambda _: None)
    with pytest.raises(koirules.EngineError, match="proofs"):
        standard.prove()


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


LOT = Path(__file__).parents[2] / "examples" / "01-autumn-lot" / "records.csv"


@pytest.fixture(scope="module")
def house():
    return koirules.load_standard("tosai_kohaku")


@pytest.fixture(scope="module")
def lot(house):
    return house.grade_file(LOT)


def written_by_command(*words):
    ran = CliRunner().invoke(main, [str(word) for word in words])
    assert ran.exit_code == 0, ran.output


@pytest.mark.parametrize("name", ["results.csv", "results.json", "page.html"])
def test_results_are_those_of_grade(house, lot, tmp_path, name):
    house.write_results(tmp_path / name, lot, LOT.name)
    written_by_command("grade", "tosai_kohaku", LOT, "--out", tmp_path / f"command_{name}")
    assert (tmp_path / name).read_bytes() == (tmp_path / f"command_{name}").read_bytes()


def test_pages_for_customers_and_values_beside_results_are_those_of_grade(house, lot, tmp_path):
    reader = koirules.Audience(is_house=False, title="Autumn lot", offered=frozenset({"keep"}))
    house.write_results(tmp_path / "offer.html", lot, LOT.name, audience=reader)
    house.write_results(tmp_path / "all.csv", lot, LOT.name, with_records=True)
    asked = ("--for", "customer", "--title", "Autumn lot", "--offer", "keep", "--with-records")
    outs = ("--out", tmp_path / "c.html", "--out", tmp_path / "c.csv", "--plot", tmp_path / "c.svg")
    written_by_command("grade", "tosai_kohaku", LOT, *outs, *asked)
    assert (tmp_path / "offer.html").read_bytes() == (tmp_path / "c.html").read_bytes()
    assert (tmp_path / "all.csv").read_bytes() == (tmp_path / "c.csv").read_bytes()
    house.write_plot(tmp_path / "points.svg", lot, LOT.name)
    assert (tmp_path / "points.svg").read_bytes() == (tmp_path / "c.svg").read_bytes()


@pytest.mark.parametrize("sheet", ["certificate", "labels", "lists", "ponds"])
def test_paper_is_that_of_print(house, lot, tmp_path, sheet):
    fish = "L09" if sheet == "certificate" else ""
    house.write_paper(tmp_path / "library.html", koirules.Paper(sheet, fish=fish, by="pond"), lot, LOT.name)
    asked = ("--fish", fish) if fish else ()
    written_by_command("print", sheet, "tosai_kohaku", LOT, "--by", "pond", *asked, "--out", tmp_path / "command.html")
    assert (tmp_path / "library.html").read_bytes() == (tmp_path / "command.html").read_bytes()


def test_paper_that_cannot_be_is_refused(house, lot, tmp_path):
    for made in (lambda: koirules.Paper("poster"), lambda: koirules.Paper("labels", size="a6")):
        with pytest.raises(ValueError, match=r"poster|a6"):
            made()
    (still_open,) = [one.fish for one in lot.results if one.grade is None][:1]
    for fish in ("nobody", still_open):
        with pytest.raises(ValueError, match=fish):
            house.write_paper(tmp_path / "certificate.html", koirules.Paper("certificate", fish=fish), lot)
    assert not (tmp_path / "certificate.html").exists()


def test_verdicts_are_set_beside_the_rules_and_beside_each_other(house, lot):
    graded = {one.fish: one.grade for one in lot.results if one.grade is not None}
    verdicts = {fish: "in" if grade == "keep" else "out" for fish, grade in graded.items()}
    assert house.agreement(verdicts, lot).share == 1
    other = {**verdicts, "L09": "out"}
    assert [pair.fish for pair in house.agreement(verdicts, other).differing] == ["L09"]
    assert [pair.fish for pair in house.agreement(other, lot).differing] == ["L09"]
    with pytest.raises(ValueError, match="'lovely' of L09"):
        house.agreement({"L09": "lovely"}, lot)
    with pytest.raises(ValueError, match="no fish of the verdicts"):
        house.agreement({"X01": "in"}, lot)


def test_an_offer_of_a_grade_that_there_is_not_is_refused(house, lot, tmp_path):
    with pytest.raises(ValueError, match="kepe: there are keep"):
        house.write_results(tmp_path / "offer.html", lot, audience=koirules.Audience(offered=frozenset({"kepe"})))
    assert not list(tmp_path.iterdir())


def test_flaws_are_those_of_the_command(standard):
    flaws = standard.flaws()
    assert flaws.ideal.grade == "keep"
    assert {trait.name for trait, _, _ in flaws.worst()} == {"spine", "outline"}
    assert len(repr(flaws)) < 3_000


def test_a_file_that_cannot_be_read_is_raised_with_every_problem(house, tmp_path):
    (tmp_path / "bad.csv").write_text("fish,kiwa,spine\nA,shrap,straight\nB,sharp,bnet\n", encoding="utf-8")
    with pytest.raises(koirules.RecordError) as raised:
        house.grade_file(tmp_path / "bad.csv")
    assert [problem.site.row for problem in raised.value.problems] == [2, 3]


def test_photographs_that_are_not_there_are_raised(house, tmp_path):
    (tmp_path / "lot.csv").write_text("fish,photo\nA,a.jpg\n", encoding="utf-8")
    batch = house.grade_file(tmp_path / "lot.csv")
    with pytest.raises(koirules.RecordError, match=r"a\.jpg"):
        house.photographs_of(batch, tmp_path / "lot.csv")


NAMED = """standard "named" edition 1 variety kohaku
fault lips "red lips" if kuchibeni is yes: no better than sell
grade keep if length above 10 cm and spine is straight
grade sell otherwise
"""


@pytest.mark.parametrize(
    "headings",
    [
        ("kuchibeni", "length (mm)", "spine"),
        ("Kuchibeni", "LENGTH (mm)", "Spine"),
        ("red lips (kuchibeni)", "total length (mm)", "spine"),
    ],
)
def test_a_record_a_frame_and_a_file_read_the_same_headings(headings, tmp_path):
    import polars as pl

    standard = koirules.read_standard(NAMED)
    values = dict(zip(headings, (False, 120, "straight"), strict=True))
    assert standard.grade(values).grade == "keep"
    assert standard.grade_frame(pl.DataFrame([values]))["grade"].to_list() == ["keep"]
    file = tmp_path / "lot.csv"
    file.write_text(f"fish,{','.join(headings)}\n1,no,120,straight\n", encoding="utf-8")
    records = read_records(file, standard.traits)
    assert records.problems == ()
    assert standard.grade_record(records.records[0]).grade == "keep"


def test_two_keys_of_one_trait_are_told():
    with pytest.raises(koirules.RecordError, match="This key names length, and so does another one"):
        koirules.read_standard(NAMED).grade({"length": 12, "Length (mm)": 120})


def test_truths_of_numpy_and_what_pandas_has_for_nothing_are_read():
    import numpy as np
    import pandas as pd

    standard = koirules.read_standard(NAMED)
    whole = {"length": np.float64(12), "spine": np.str_("straight")}
    assert standard.grade({**whole, "kuchibeni": np.bool_(True)}).grade == "sell"
    assert standard.grade({**whole, "kuchibeni": np.False_}).grade == "keep"
    for nothing in (pd.NA, pd.NaT, np.nan, None):
        assert standard.grade({**whole, "length": nothing, "kuchibeni": False}).possible == ("keep", "sell")
    assert standard.grade({**whole, "fish": pd.NA, "kuchibeni": pd.NA}).possible == ("keep", "sell")
    with pytest.raises(koirules.RecordError, match="ndarray"):
        standard.grade({**whole, "kuchibeni": np.array([True, False])})


def test_shares_of_a_frame_that_may_be_parts_are_told_once():
    import polars as pl

    standard = koirules.read_standard(NAMED.replace("spine is straight", "hi_cover above 20 %"))
    with pytest.raises(koirules.RecordError) as told:
        standard.grade_frame(pl.DataFrame({"hi_cover": [0.5, 0.4, 0.3] * 100}))
    (problem,) = told.value.problems
    assert problem.cause.startswith("300 numbers of this column, which is in %, are 1 or less: rows 1, 2,")
