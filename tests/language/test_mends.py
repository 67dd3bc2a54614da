"""Every mend that is printed is carried out: its problem goes, and no more problems stand than before.

The whole trial is `tests/benchmarks/mends.py`; these are the broken files of tests/cases and a small draw of slips.
"""

import pytest

from koirules.language.diagnose.mending import edited
from tests.language.mending import Broken, cases, mutations, problems_of, trials_of, whole_files

SLIPS = 150


@pytest.fixture(scope="module")
def trials():
    broken = [*cases(), *mutations(whole_files(60), SLIPS)]
    return [trial for each in broken for trial in trials_of(each)]


def test_a_mend_mends_what_it_stands_beside(trials):
    assert [f"{trial.broken.name}: {trial.problem}" for trial in trials if not trial.holds] == []
    assert len(trials) > 300


def test_no_mend_leaves_more_problems_than_there_were(trials):
    assert [f"{trial.broken.name}: {trial.problem}" for trial in trials if trial.harms] == []


def test_the_trial_tells_a_mend_that_does_not_hold_and_one_that_harms(tmp_path):
    # The trial itself can fail: a mend that changes nothing does not hold, one that breaks the next line harms.
    from koirules.problems import Edit, Place
    from tests.language import mending

    text = 'standard "Made up" edition 1 variety kohaku\ngrade keep if kiwa is shap\ngrade cull otherwise\n'
    (problem,) = problems_of(text, tmp_path)
    broken = Broken("made up", text, tmp_path)
    for words, place, holds, harms in (
        ("shap", problem.site, False, False),
        ("sharp\ngrade sell ifif kiwa is shapp\nfault x if kiwa is rasor", problem.site, True, True),
    ):
        assert isinstance(place, Place)
        (trial,) = [mending.tried(broken, problem, Edit(place, words), 1)]
        assert (trial.holds, trial.harms) == (holds, harms)


HEAD = 'standard "Made up" edition 1 variety kohaku\n'
TAIL = "grade keep if length at least 9 cm\ngrade cull otherwise\n"


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("hi_on_eyes is yes", "count of hi_on_eyes at least 1"),
        ("hi_on_eyes is not yes", "count of hi_on_eyes is 0"),
        ("hi_on_eyes is no", "count of hi_on_eyes is 0"),
        ("hi_on_eyes is not none", "count of hi_on_eyes at least 1"),
        ("outline is bent", "spine is bent"),
        ("count of red_over_eyes at least 1", "count of hi_on_eyes at least 1"),
    ],
)
def test_what_a_sorter_writes_of_a_trait_is_offered_as_the_language_has_it(said, meant, tmp_path):
    text = f"{HEAD}fault flaw if {said}: no better than cull\n{TAIL}"
    (problem,) = problems_of(text, tmp_path)
    assert edited(text, [problem.edit]) == text.replace(said, meant)
    assert problems_of(text.replace(said, meant), tmp_path) == ()


def test_a_column_that_fish_have_in_common_is_offered_as_a_label(tmp_path):
    text = f"{HEAD}{TAIL}round best keep those with grade is keep pick 3 for each tub by highest length\n"
    (problem,) = problems_of(text, tmp_path)
    assert "`trait tub as label`" in problem.mend
    assert problems_of(text.replace(HEAD, f"{HEAD}trait tub as label\n"), tmp_path) == ()


def test_the_words_that_begin_a_statement_are_listed_once(tmp_path):
    text = f"{HEAD}My fish must be straight.\nThe red must be even.\nI want long fish.\n{TAIL}"
    first, *rest = problems_of(text, tmp_path)
    assert "section, points" in first.mend
    assert "`koirules new`" in first.mend
    assert [one.site.line for one in rest] == [3, 4]
    assert all("named above" in one.mend for one in rest)
    mended = "".join(f"# {line}\n" if line[0] in "MTI" else f"{line}\n" for line in text.splitlines())
    assert problems_of(mended, tmp_path) == ()
