"""Agreement of verdicts: against statsmodels and scikit-learn, against published examples, and as the command tells it."""

import json
from math import isclose

import pytest
from click.testing import CliRunner
from hypothesis import given
from hypothesis import strategies as st
from sklearn.metrics import cohen_kappa_score
from statsmodels.stats.inter_rater import cohens_kappa
from statsmodels.stats.proportion import proportion_confint

from koirules.analysis.agreement import Agreement, Pair, kappa, wilson
from koirules.commands import main

# The first: worked example of an encyclopaedia's article on Cohen's kappa. The second: Cohen 1960 and 1968, n = 200 (data from
# memory, recomputed with scikit-learn). The third: four grades, keep, hold, sell, not kept (own data, by scikit-learn).
EXAMPLES = [
    ([[20, 5], [10, 15]], 0.70, 0.4),
    ([[88, 14, 18], [10, 40, 10], [2, 6, 12]], 0.70, 0.4915254237288136),
    ([[18, 4, 1, 0], [5, 22, 6, 1], [1, 7, 19, 3], [0, 1, 4, 8]], 0.67, 0.5439469320066335),
]


def agreement(table):
    names = tuple("abcdefgh"[: len(table)])
    pairs = [
        Pair(f"{i} {j} {n}", names[i], names[j])
        for i, row in enumerate(table)
        for j, times in enumerate(row)
        for n in range(times)
    ]
    return Agreement(names, tuple(pairs))


@pytest.mark.parametrize(("table", "share", "expected"), EXAMPLES)
def test_kappa_of_published_tables(table, share, expected):
    made = agreement(table)
    assert made.table == tuple(map(tuple, table))
    assert isclose(made.share, share)
    assert isclose(made.kappa, expected, abs_tol=1e-14)


@given(
    st.integers(2, 4).flatmap(
        lambda n: st.lists(st.lists(st.integers(0, 9), min_size=n, max_size=n), min_size=n, max_size=n)
    )
)
def test_kappa_is_that_of_two_libraries(table):
    found = kappa(table)
    pairs = agreement(table).pairs
    if not pairs or found is None:
        return
    # Its standard error, which we do not give, is not defined where one of the two knows one word only.
    assert isclose(found, cohens_kappa(table, return_results=False), abs_tol=1e-12)
    firsts, seconds = [pair.first for pair in pairs], [pair.second for pair in pairs]
    assert isclose(found, cohen_kappa_score(firsts, seconds), abs_tol=1e-12)


@given(st.integers(1, 500).flatmap(lambda n: st.tuples(st.integers(0, n), st.just(n))))
def test_the_interval_is_the_one_of_statsmodels(counts):
    agreed, number = counts
    low, high = proportion_confint(agreed, number, alpha=0.05, method="wilson")
    found = wilson(agreed, number)
    assert isclose(found[0], low, abs_tol=1e-12)
    assert isclose(found[1], high, abs_tol=1e-12)


def test_kappa_of_one_word_is_not_defined():
    assert kappa([[5, 0], [0, 0]]) is None
    assert wilson(0, 0) == (0.0, 1.0)


PAGE = """standard "Stillwater (invented)" edition 1 variety kohaku
grade keep "kept" if outline at least good
grade hold if outline at least fair
grade cull otherwise
"""
LOT = "fish,look,outline,verdict\n1,1,good,in\n2,1,fair,in\n3,1,poor,out\n4,1,,unsure\n"
LOT += "5,1,good,out\n6,1,good,\n1,2,,out\n2,2,,in\n"


@pytest.fixture
def tub(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "page.koi").write_text(PAGE, encoding="utf-8")
    (tmp_path / "lot.csv").write_text(LOT, encoding="utf-8")
    (tmp_path / "other.csv").write_text("fish,verdict\n1,Kept\n2,hold\n3,cull\n9,keep\n", encoding="utf-8")
    (tmp_path / "graded.csv").write_text(
        "fish,outline,verdict\n1,good,keep\n2,fair,keep\n3,poor,cull\n", encoding="utf-8"
    )
    return tmp_path


def run(*arguments):
    return CliRunner().invoke(main, ["agree", "page.koi", *arguments])


def as_data(*arguments):
    return json.loads(run(*arguments, "--json").output)


@pytest.mark.usefixtures("tub")
def test_a_sorter_beside_the_rules():
    told = run("lot.csv")
    assert told.exit_code == 1
    assert "2 of 5 fish agree: 40.0 %" in told.output
    assert "1: out, not in: kept: yes" in told.output
    found = as_data("lot.csv")
    assert found["categories"] == ["in", "not settled", "out"]
    assert found["table"] == [[0, 0, 1], [0, 1, 0], [2, 0, 1]]
    assert [one["fish"] for one in found["differing"]] == ["1", "2", "5"]
    # Where hold counts as in too, the second fish agrees.
    assert [one["fish"] for one in as_data("lot.csv", "--in", "keep", "--in", "hold")["differing"]] == ["1", "5"]


@pytest.mark.usefixtures("tub")
def test_verdicts_that_name_grades_are_compared_grade_by_grade():
    found = as_data("graded.csv")
    assert found["categories"] == ["keep", "hold", "cull", "not settled"]
    assert [(one["fish"], one["first"], one["second"]) for one in found["differing"]] == [("2", "keep", "hold")]


@pytest.mark.usefixtures("tub")
def test_two_sorters_and_two_looks():
    two = as_data("lot.csv", "--with", "other.csv")
    assert two["judgements"] == ["lot.csv", "other.csv"]
    assert [(one["fish"], one["first"], one["second"]) for one in two["differing"]] == [
        ("1", "out", "in"),
        ("2", "in", "out"),
    ]
    looks = as_data("lot.csv", "--looks")
    assert (looks["fish"], looks["agreed"]) == (2, 1)
    assert looks["differing"][0]["fish"] == "1"


@pytest.mark.parametrize(
    ("content", "arguments", "code"),
    [
        ("fish,outline\n1,good\n", [], "no-verdicts"),
        ("fish,verdict\n1,nice\n2,in\n", [], "unknown-verdict"),
        ("fish,verdict\n1,in\n2,in\n", ["--looks"], "no-two-verdicts"),
        ("fish,verdict\n1,in\n", ["--in", "kept"], "no-such-grade"),
    ],
)
def test_what_cannot_be_compared(tub, content, arguments, code):
    (tub / "some.csv").write_text(content, encoding="utf-8")
    told = run("some.csv", *arguments)
    assert told.exit_code == 2
    assert f"[{code}]" in told.output
