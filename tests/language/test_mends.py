"""Every mend that is printed is carried out: its problem goes, and no more problems stand than before.

The whole trial is `tests/benchmarks/mends.py`; these are the broken files of tests/cases and a small draw of slips.
"""

import re

import pytest

import koirules
from koirules.language.diagnose.hints import WHOLE
from koirules.language.diagnose.mending import edited
from koirules.plugins import registry_with
from koirules.vocabulary.traits import Vocabulary
from tests.language.mending import Broken, cases, mutations, problems_of, trials_of, whole_files
from tests.plugins.invented import Gives

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
    text = f"{HEAD}This page is ours.\nThe judges come on Sunday.\nOur owner decides.\n{TAIL}"
    first, *rest = problems_of(text, tmp_path)
    assert "section, points" in first.mend
    assert "`koirules new`" in first.mend
    assert [one.site.line for one in rest] == [3, 4]
    assert all("named above" in one.mend for one in rest)
    mended = "".join(f"# {line}\n" if line[0] in "TO" else f"{line}\n" for line in text.splitlines())
    assert problems_of(mended, tmp_path) == ()


@pytest.mark.parametrize(
    ("sentence", "rule"),
    [
        ("no bent fish", 'fault bent "no bent fish" if spine is bent: no better than cull'),
        (
            "The red must be sharp.",
            'fault not_red_sharp "The red must be sharp" if kiwa at most fair: no better than cull',
        ),
        (
            "No red over the eyes.",
            'fault red_over_eyes "No red over the eyes" if count of hi_on_eyes at least 1: no better than cull',
        ),
        (
            "We cull fish without head red",
            'fault not_head_red "We cull fish without head red" if head_hi is none: no better than cull',
        ),
        (
            "Fish must be longer than 12 cm",
            'fault not_longer_than_12 "Fish must be longer than 12 cm" if length at most 12 cm: no better than cull',
        ),
        ("Pick the best three fish.", 'round best "the best 3" keep those with grade is keep pick 3 by highest score'),
        ("keep those best 3", 'round best "the best 3" keep those with grade is keep pick 3 by highest score'),
        ("keep those with grade keep", 'round kept "kept" keep those with grade is keep'),
        ("cull the rest", ""),
    ],
)
def test_a_plain_sentence_is_offered_as_a_rule_that_reads(sentence, rule, tmp_path):
    text = f"{HEAD}{TAIL}{sentence}\n"
    (problem,) = problems_of(text, tmp_path)
    assert problem.code == "unknown-head"
    assert edited(text, [problem.edit]) == f"{HEAD}{TAIL}{rule}\n"
    assert problems_of(f"{HEAD}{TAIL}{rule}\n", tmp_path) == ()


def test_a_letter_of_plain_sentences_is_answered_all_at_once(tmp_path):
    # No header, no grades: every mend that is told, carried out in one go, makes a page that reads.
    text = "No bent fish.\nThe skin must be white.\nKeep the best 3.\nSell the rest.\n"
    problems = problems_of(text, tmp_path)
    (header,) = [one for one in problems if one.code == "header-first"]
    mended = edited(text, [one.edit for one in problems if one.code == "unknown-head"])
    assert '`standard "title" edition 2026-1 variety kohaku`' in header.mend
    assert problems_of(f'standard "title" edition 2026-1 variety kohaku\n{mended}', tmp_path) == ()


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("body is bent", "spine is bent"),
        ("fish is bent", "spine is bent"),
        ("red is over eyes", "count of hi_on_eyes at least 1"),
        ("mouth is crooked", "mouth is malformed"),
        ("head is white", "head_hi is none"),
    ],
)
def test_a_condition_in_words_of_every_day_is_offered_as_the_language_has_it(said, meant, tmp_path):
    text = f"{HEAD}fault flaw if length below 8 cm or {said}: no better than cull\n{TAIL}"
    (problem,) = problems_of(text, tmp_path)
    assert edited(text, [problem.edit]) == text.replace(said, meant)
    assert problems_of(text.replace(said, meant), tmp_path) == ()


def test_a_part_of_the_fish_names_the_traits_that_speak_of_it(tmp_path):
    (problem,) = problems_of(f"{HEAD}fault flaw if eyes is bad: no better than cull\n{TAIL}", tmp_path)
    assert "`hi_on_eyes` (red over the eyes)" in problem.mend


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("keep those best 3", "pick 3 by highest score"),
        ("pick best 3", "pick 3 by highest score"),
        ("keep those with grade keep", "keep those with grade is keep"),
    ],
)
def test_parts_of_a_round_as_people_say_them(said, meant, tmp_path):
    text = f'{HEAD}{TAIL}round best "best" {said}\n'
    (problem,) = problems_of(text, tmp_path)
    assert edited(text, [problem.edit]) == text.replace(said, meant)
    assert problems_of(text.replace(said, meant), tmp_path) == ()


@pytest.mark.parametrize("head", sorted(WHOLE))
def test_a_head_word_alone_is_answered_with_a_statement_that_reads(head, tmp_path):
    problem = next(one for one in problems_of(f"{HEAD}{TAIL}{head}\n", tmp_path) if one.code == "ends-too-early")
    assert WHOLE[head] in problem.mend
    lines = re.findall("`([^`]+)`", problem.mend)
    if head in {"section", "bonus", "penalty"}:
        lines += re.findall("`([^`]+)`", f"`{WHOLE['points']}`")
    lines = sorted({*lines}, key=lambda line: not line.startswith("section"))
    lines.sort(key=lambda line: line.endswith("otherwise"))
    grades = "" if head == "grade" else "grade sell if length at least 8 cm\ngrade cull otherwise\n"
    assert problems_of(HEAD + "\n".join(lines) + "\n" + grades, tmp_path) == ()


def test_a_variety_in_the_words_of_every_day_is_offered_by_its_name():
    def problem_of(variety):
        with pytest.raises(koirules.StandardError) as told:
            koirules.read_standard(HEAD.replace("kohaku", variety) + TAIL, registry=hills)
        (problem,) = told.value.problems
        return problem

    hills = registry_with(Gives(Vocabulary("hill_koi", "Hill Koi (invented)", (), ("shared",))))
    problem = problem_of("Hill Koi")
    text = edited(HEAD.replace("kohaku", "Hill Koi") + TAIL, [problem.edit])
    assert text == HEAD.replace("kohaku", "hill_koi") + TAIL
    assert koirules.read_standard(text, registry=hills).variety == "hill_koi"
    assert problem_of("Dragon fish").edit is None


def test_a_page_of_a_beginner_is_answered_whole_in_one_go(tmp_path):
    text = (
        'standard "Our farm" edition 1 variety kohaku\n'
        "Fish with a bent back go out.\n"
        'section colour "colour" worth 60\n'
        "points white: snow 10, white 7, cream 3, yellow 0\n"
        "Grade keep if score at least 30\n"
        "Grade out otherwise\n"
        "Take the best 20 fish for the pond\n"
    )
    problems = problems_of(text, tmp_path)
    assert [one.site.line for one in problems] == [2, 4, 5, 6, 7]
    mended = edited(text, [one.edit for one in problems])
    assert 'points white "white" by shiroji: snow gives 10, white gives 7' in mended
    assert problems_of(mended, tmp_path) == ()


def test_a_number_is_no_name(tmp_path):
    text = f"{HEAD}grade 1 if length at least 9 cm\ngrade cull otherwise\n"
    (problem,) = problems_of(text, tmp_path)
    assert problems_of(edited(text, [problem.edit]), tmp_path) == ()
