"""Every mend that is printed is carried out: its problem goes, and no more problems stand than before.

The whole trial is `tests/benchmarks/mends.py`; these are the broken files of tests/cases and a small draw of slips.
"""

import pytest

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
