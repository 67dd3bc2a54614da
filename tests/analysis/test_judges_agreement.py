"""Agreement of several judges: published worked examples, reference libraries, and as the command tells it."""

import csv
import json
from math import isclose, nan
from pathlib import Path

import krippendorff
import numpy as np
import pytest
from click.testing import CliRunner
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import friedmanchisquare, spearmanr
from statsmodels.stats.inter_rater import fleiss_kappa

from koirules.analysis.judges import _counted, _domain, alpha, alpha_interval, alpha_of, concordance, fleiss, rho
from koirules.commands import main

# ---- Krippendorff's alpha ----------------------------------------------------------------------------------------

# Krippendorff 2011 for the method, the data from memory, recomputed with the library krippendorff 0.9: four observers of 12
# units; two observers of 10 (yes or no) and of 12 (letters); three coders of 15 units. A star was not said.
FOUR = ("1 2 3 3 2 1 4 1 2 * * *", "1 2 3 3 2 2 4 1 2 5 * 3", "* 3 3 3 2 3 4 2 2 5 1 *", "1 2 3 3 2 4 4 1 2 5 1 *")
YES_NO = ("0 1 0 0 0 0 0 0 1 0", "1 1 1 0 0 1 0 0 0 0")
LETTERS = ("1 1 2 2 4 3 3 3 5 4 4 1", "2 1 2 2 2 3 3 3 5 4 4 4")
THREE = (
    "* * * * * 3 4 1 2 1 1 3 3 * 3",
    "1 * 2 1 3 3 4 3 * * * * * * *",
    "* * 2 1 3 4 4 * 2 1 1 3 3 * 4",
)
ALPHAS = [
    (FOUR, "nominal", 0.743421052631579),
    (FOUR, "ordinal", 0.8153875037548814),
    (FOUR, "interval", 0.8491071428571428),
    (YES_NO, "nominal", 0.09523809523809534),
    (LETTERS, "nominal", 0.6919642857142858),
    (THREE, "nominal", 0.691358024691358),
    (THREE, "ordinal", 0.8067214199413153),
    (THREE, "interval", 0.8108448928121059),
]


def said(rows):
    """What judges said, by unit and judge."""
    told = [row.split() for row in rows]
    return {
        f"F{unit}": {f"J{judge}": float(row[unit]) for judge, row in enumerate(told) if row[unit] != "*"}
        for unit in range(len(told[0]))
    }


@pytest.mark.parametrize(("rows", "level", "expected"), ALPHAS)
def test_alpha_of_published_examples(rows, level, expected):
    assert isclose(alpha(said(rows), level), expected, abs_tol=1e-12)


@given(
    st.lists(st.lists(st.integers(1, 5) | st.none(), min_size=3, max_size=3), min_size=2, max_size=9),
    st.sampled_from(["nominal", "ordinal", "interval"]),
)
def test_alpha_of_drawn_fish_is_that_of_the_library(units, level):
    data = np.array([[nan if one is None else one for one in unit] for unit in units]).T
    values = {n: {f"J{j}": float(one) for j, one in enumerate(unit) if one is not None} for n, unit in enumerate(units)}
    found = alpha(values, level)
    if found is None:
        return
    expected = krippendorff.alpha(reliability_data=data, level_of_measurement=level)
    assert isclose(found, expected, abs_tol=1e-9)
    once = alpha_of([(1, row) for _, row in _counted(values)], _domain(values), level)
    assert isclose(once, expected, abs_tol=1e-9)


@pytest.mark.parametrize("level", ["nominal", "ordinal", "interval"])
def test_alpha_of_fish_drawn_anew_is_that_of_the_library(level):
    values = said(THREE)
    rows, domain = [row for _, row in _counted(values)], _domain(values)
    for weights in np.random.default_rng(7).multinomial(len(rows), [1 / len(rows)] * len(rows), size=20):
        again = np.repeat([[row[value] for value in domain] for row in rows], weights, axis=0)
        kept = again.sum(axis=0) > 0
        expected = krippendorff.alpha(
            value_counts=again[:, kept], value_domain=np.array(domain)[kept], level_of_measurement=level
        )
        found = alpha_of(list(zip(map(int, weights), rows, strict=True)), domain, level)
        assert isclose(found, expected, abs_tol=1e-9)


def test_the_interval_holds_alpha_and_is_the_same_in_each_run():
    values = said(FOUR)
    low, high = alpha_interval(values, "ordinal")
    assert low < alpha(values, "ordinal") < high
    assert alpha_interval(values, "ordinal") == (low, high)


def test_alpha_is_not_defined_where_all_say_the_same():
    assert alpha({"F1": {"A": 1.0, "B": 1.0}, "F2": {"A": 1.0, "B": 1.0}}, "nominal") is None
    assert alpha({"F1": {"A": 1.0}}, "nominal") is None


# ---- Fleiss, Kendall, Spearman -----------------------------------------------------------------------------------

# The table of an encyclopaedia's article on Fleiss' kappa (data from memory): 10 subjects, 14 raters, 5 classes.
ARTICLE = "0 0 0 0 14 / 0 2 6 4 2 / 0 0 3 5 6 / 0 3 9 2 0 / 2 2 8 1 1 / 7 7 0 0 0 / 3 2 6 3 0 / 2 5 3 2 2 / 6 5 2 1 0 / 0 2 2 3 7"
# Fleiss 1971, diagnoses of 30 subjects by 6 raters in 5 classes (counts from the tests of statsmodels).
DIAGNOSES = (
    "0 0 0 6 0 / 0 3 0 0 3 / 0 1 4 0 1 / 0 0 0 0 6 / 0 3 0 3 0 / 2 0 4 0 0 / 0 0 4 0 2 / 2 0 3 1 0 / 2 0 0 4 0 / 0 0 0 0 6 / "
    "1 0 0 5 0 / 1 1 0 4 0 / 0 3 3 0 0 / 1 0 0 5 0 / 0 2 0 3 1 / 0 0 5 0 1 / 3 0 0 1 2 / 5 1 0 0 0 / 0 2 0 4 0 / 1 0 2 0 3 / "
    "0 0 0 0 6 / 0 1 0 5 0 / 0 2 0 1 3 / 2 0 0 4 0 / 1 0 0 4 1 / 0 5 0 1 0 / 4 0 0 0 2 / 0 2 0 4 0 / 1 0 5 0 0 / 0 0 0 0 6"
)


@pytest.mark.parametrize(("text", "expected"), [(ARTICLE, 0.20993070442195522), (DIAGNOSES, 0.43024452006014074)])
def test_fleiss_of_published_tables(text, expected):
    table = [[int(times) for times in row.split()] for row in text.split("/")]
    assert isclose(fleiss(table), expected, abs_tol=1e-12)
    assert isclose(fleiss(table), fleiss_kappa(np.array(table)), abs_tol=1e-12)


# Textbook example (data from memory), and 20 subjects with ties of the tests of statsmodels.
PLAIN = ("1 6 3 2 5 4", "1 5 6 4 2 3", "6 3 2 5 4 1")
TIED = (
    "3 3 3 4 5 5 2 3 5 2 2 6 1 5 2 2 1 2 4 3",
    "3 6 4 6 2 4 2 4 3 3 2 3 3 3 2 2 1 3 3 4",
    "2 1 4 4 3 2 1 6 1 1 1 2 3 3 1 1 3 3 2 2",
)


@pytest.mark.parametrize(("rows", "expected"), [(PLAIN, 0.16190476190476205), (TIED, 0.5396568759543695)])
def test_concordance_of_published_examples(rows, expected):
    scores = [[float(one) for one in row.split()] for row in rows]
    assert isclose(concordance(scores), expected, abs_tol=1e-12)
    by_library = friedmanchisquare(*np.array(scores).T).statistic / (len(scores) * (len(scores[0]) - 1))
    assert isclose(concordance(scores), by_library, abs_tol=1e-12)


@pytest.mark.parametrize(
    ("one", "other", "expected"),
    [
        # -29/165 (data from memory); ties on one side (documentation of SciPy); ties on both sides (own data, by SciPy).
        ([86, 97, 99, 100, 101, 103, 106, 110, 112, 113], [2, 20, 28, 27, 50, 29, 7, 17, 6, 12], -29 / 165),
        ([1, 2, 3, 4, 5], [5, 6, 7, 8, 7], 0.8207826816681233),
        ([1, 2, 2, 4, 5, 6], [2, 1, 3, 3, 5, 4], 0.8088235294117647),
    ],
)
def test_rho_of_published_examples(one, other, expected):
    assert isclose(rho(one, other), expected, abs_tol=1e-12)
    assert isclose(rho(one, other), spearmanr(one, other).statistic, abs_tol=1e-12)


def test_who_tells_nothing_apart_has_no_order():
    assert rho([1, 1, 1], [1, 2, 3]) is None
    assert concordance([[1, 1], [2, 2]]) is None
    assert fleiss([[3, 0], [3, 0]]) is None


# ---- The command -------------------------------------------------------------------------------------------------

RULES = """standard "Thornwick Open"
  edition 2026-1
  variety kohaku
section body "body" worth 100
points outline "outline" by outline: poor gives 0, fair gives 5, good gives 8, excellent gives 10
grade first if score at least 60
grade out otherwise
"""


@pytest.fixture
def agree(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("open.koi").write_text(RULES, encoding="utf-8")

    def run(*words):
        return CliRunner().invoke(main, ["agree", "open.koi", *words])

    return run


def write(name, *rows):
    Path(name).write_text("\n".join(rows) + "\n", encoding="utf-8")


def test_a_judge_who_stands_apart_and_what_is_read_differently_are_named(agree):
    rows = ["fish,judge,outline,verdict"]
    for fish in range(12):
        good = "good" if fish % 2 else "fair"
        rows += [f"{fish},{judge},{good},{'in' if fish % 2 else 'out'}" for judge in "ABC"]
        rows.append(f"{fish},D,{'fair' if fish % 3 else 'good'},out")
    write("judged.csv", *rows)
    done = agree("judged.csv", "--out", "table.csv")
    assert done.exit_code == 1, done.output
    assert "4 judges, 12 fish that two or more of them judged" in done.output
    assert "D stands apart: without this judge alpha of the score is 1.00" in done.output
    assert "fair against good on 6 fish; read by points outline" in done.output
    told = json.loads(agree("judged.csv", "--json").output)
    assert [one["what"] for one in told["whole"]] == ["score", "grade", "verdict"]
    assert told["apart"][3]["judge"] == "D"
    with Path("table.csv").open(encoding="utf-8", newline="") as file:
        assert [row["name"] for row in csv.DictReader(file)] == ["score", "grade", "verdict", "outline"]
    assert agree("judged.csv", "--out", "table.csv").exit_code == 2


def test_judges_who_say_the_same_agree(agree):
    write("judged.csv", "fish,judge,outline", "1,A,good", "1,B,good", "2,A,fair", "2,B,fair")
    done = agree("judged.csv")
    assert done.exit_code == 0, done.output
    assert "stands apart" not in done.output
    assert "They part" not in done.output


def test_several_files_are_compared_as_several_sorters(agree):
    write("anna.csv", "fish,outline,verdict", "1,good,in", "2,fair,out")
    write("ben.csv", "fish,outline,verdict", "1,good,in", "2,good,in")
    write("cleo.csv", "fish,outline,verdict", "1,good,in", "2,fair,out")
    done = agree("anna.csv", "--with", "ben.csv", "--with", "cleo.csv", "--json")
    assert done.exit_code == 1
    told = json.loads(done.output)
    assert told["judges"] == ["anna.csv", "ben.csv", "cleo.csv"]
    assert next(one for one in told["whole"] if one["what"] == "verdict")["parted"] == 1


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("judged.csv", "--looks"), "are compared by themselves"),
        (("judged.csv", "--with", "anna.csv"), "are compared by themselves"),
        (("anna.csv", "--with", "judged.csv", "--with", "anna.csv"), "names judges"),
        (("anna.csv", "--out", "x.csv"), "--out is for several judges"),
        (("judged.csv", "--out", "x.txt"), "unknown-ending"),
        (("apart.csv",), "nothing-in-common"),
        (("wrong.csv",), "unknown-verdict"),
    ],
)
def test_what_cannot_be_compared_is_refused(agree, words, told):
    write("judged.csv", "fish,judge,outline", "1,A,good", "1,B,good")
    write("anna.csv", "fish,outline,verdict", "1,good,in")
    write("apart.csv", "fish,judge,outline", "1,A,good", "2,B,good")
    write("wrong.csv", "fish,judge,outline,verdict", "1,A,good,perhaps", "1,B,good,in")
    done = agree(*words)
    assert done.exit_code == 2, done.output
    assert told in done.output
    assert not Path("x.csv").exists()


def test_judges_of_one_order_and_other_levels_are_told_so(tmp_path):
    page = tmp_path / "page.koi"
    page.write_text(
        'standard "Duck Pond (invented)" edition 1 variety kohaku\npanel judges by mean of score\nsection body worth 100\n'
        "points outline by outline: poor gives 0, fair gives 3, good gives 6, excellent gives 10\n"
        "points kiwa by kiwa: blurred gives 0, fair gives 3, sharp gives 6, razor gives 10\n"
        "grade in_ if score at least 50\ngrade out otherwise\n",
        encoding="utf-8",
    )
    levels = {"A": ("poor,blurred", "poor,fair", "fair,fair"), "B": ("good,sharp", "good,razor", "excellent,razor")}
    rows = [f"{fish},{judge},{seen}" for judge, every in levels.items() for fish, seen in enumerate(every, 1)]
    records = tmp_path / "judged.csv"
    records.write_text("fish,judge,outline,kiwa\n" + "\n".join(rows) + "\n", encoding="utf-8")
    told = CliRunner().invoke(main, ["agree", str(page), str(records)]).output
    assert "Kendall's W: 1.00" in told, told
    assert "The judges order the fish alike, but give them different points" in told
    same = [f"{fish},{judge},{seen}" for judge in "AB" for fish, seen in enumerate(levels["A"], 1)]
    other = "fish,judge,outline,kiwa\n" + "\n".join(same) + "\n"
    records.write_text(other, encoding="utf-8")
    assert "give them different points" not in CliRunner().invoke(main, ["agree", str(page), str(records)]).output
