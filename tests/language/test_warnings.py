"""What holds but is likely a slip is said, and the file still grades."""

import pytest

import koirules
from koirules.language.diagnose.mending import edited
from koirules.language.parse.reader import MOST_STATEMENTS, read_text

HEAD = 'standard "Teal Yard house standard" edition 2026-1 variety kohaku\n'
BODY = "section body worth 100\npoints stem by tail_stem: thin gives 0, fair gives 6, strong gives 10\n"
GRADES = "grade keep if score at least 60\ngrade cull otherwise\n"

SLIPS = {
    "unused": (
        f"{HEAD}setting small = 12 cm\ntrait mark as yes or no\nterm bent_fish means spine is bent\n{BODY}{GRADES}",
        [(2, 'setting "small"'), (3, 'house trait "mark"'), (4, 'term "bent_fish"')],
    ),
    "score-unread": (
        f"{HEAD}{BODY}grade keep if length above 10 cm\ngrade cull otherwise\n",
        [(2, "score or a section")],
    ),
    "worths-not-100": (f"{HEAD}{BODY.replace('100', '90')}{GRADES}", [(2, "90")]),
    "knot-outside": (
        f"{HEAD}{BODY}points size by length: 5 cm gives 0, 2 m gives 10\n{GRADES}",
        [(4, "2 m")],
    ),
    "flat": (
        f"{HEAD}{BODY}points size by length: 5 cm gives 3, 20 cm gives 3\n{GRADES}",
        [(4, '"size"')],
    ),
    "steps-left-out": (
        f"""{HEAD}trait wear as scale none < slight < heavy, less is better
{BODY}fault slight_wear if wear is slight and length above 9 cm: no better than cull
lift kept if shiroji is white: no worse than keep
grade keep if score at least 60 and (kiwa is fair or length above 12 cm)
grade cull otherwise
""",
        [(5, "worse: heavy"), (6, "better: snow"), (7, "better: sharp and razor")],
    ),
    "picks-the-faulty": (
        f"""{HEAD}{BODY}fault bent if spine is bent: no better than cull
{GRADES}round longest "the longest of each tail"
  pick 2 for each tail_stem by highest length
round first pick 1 by highest score
round rest
  from those passed over by longest
  pick 1 by highest length
""",
        [(8, '"bent" puts to cull'), (12, '"bent" puts to cull')],
    ),
}


@pytest.mark.parametrize("code", SLIPS)
def test_a_likely_slip_is_a_warning_on_its_line(code):
    text, said = SLIPS[code]
    standard = koirules.read_standard(text)
    assert [warning.code.startswith(code) for warning in standard.warnings] == [True] * len(said)
    for warning, (line, words) in zip(standard.warnings, said, strict=True):
        assert warning.warning
        assert warning.site.line == line
        assert words in warning.cause
    assert standard.grade({}).possible == ("keep", "cull")


def test_a_page_without_slips_has_no_warnings():
    assert koirules.read_standard(HEAD + BODY + GRADES).warnings == ()


def test_of_more_statements_than_a_rule_file_may_have_the_first_too_many_is_named():
    read = read_text(HEAD + "fault bent if spine is bent: no better than cull\n" * MOST_STATEMENTS, "long.koi")
    (problem,) = read.problems
    assert (problem.code, problem.site.line) == ("too-many-statements", MOST_STATEMENTS + 1)


def test_is_with_the_step_that_leaves_nothing_out_or_with_the_others_seen_to_is_no_slip():
    for rules in (
        "grade keep if kiwa is razor",
        "grade keep if not kiwa is fair",
        "grade best if kiwa is razor\ngrade keep if kiwa is sharp",
        "grade keep if kiwa is sharp or kiwa is razor",
        "grade keep if kiwa is one of (fair, sharp)",
        "grade keep if steps is nidan",
        "fault a if kiwa is blurred: no better than cull\nfault b if kiwa is fair: no better than keep\ngrade keep if tobi",
    ):
        assert koirules.read_standard(f"{HEAD}{rules}\ngrade cull otherwise\n").warnings == (), rules


def test_the_mend_of_a_step_that_leaves_others_out_takes_them_in():
    text, _ = SLIPS["steps-left-out"]
    standard = koirules.read_standard(text)
    mended = koirules.read_standard(edited(text, [warning.edit for warning in standard.warnings]))
    assert mended.warnings == ()
    record = {"length": "10 cm", "kiwa": "razor", "shiroji": "yellow", "tail_stem": "strong", "wear": "none"}
    assert (standard.grade(record).grade, mended.grade(record).grade) == ("cull", "keep")
    assert mended.grade({**record, "wear": "heavy"}).grade == "cull"


def test_the_mend_of_a_pick_among_all_leaves_the_fish_with_faults_out():
    text, _ = SLIPS["picks-the-faulty"]
    mended = edited(text, [warning.edit for warning in koirules.read_standard(text).warnings])
    fish = [{"fish": "bent", "length": 20, "spine": "bent", "tail_stem": "strong"}] + [
        {"fish": name, "length": 10, "spine": "straight", "tail_stem": "strong"} for name in ("a", "b")
    ]

    def kept(rules):
        return koirules.read_standard(rules).grade_batch(fish).rounds[0].kept

    assert "bent" in kept(text)
    assert kept(mended) == ("a", "b")
    assert koirules.read_standard(mended).warnings == ()


@pytest.mark.parametrize(
    "rules",
    [
        "round best keep those with length above 9 cm pick 1 by highest length",
        "round best pick 1 by those with not fault bent, then highest length",
        "round best pick 1 by highest grade, then highest length",
        "round best pick all by highest length",
        "round all_fish keep those with grade is keep\nround best pick 1 by highest length",
    ],
)
def test_a_pick_that_asks_for_the_grade_or_picks_no_number_is_no_slip(rules):
    fault = "fault bent if spine is bent: no better than cull"
    assert koirules.read_standard(f"{HEAD}{BODY}{fault}\n{GRADES}{rules}\n").warnings == ()


def test_a_pick_is_no_slip_where_no_fault_puts_to_the_last_grade():
    rules = (
        f"{HEAD}{BODY}fault bent if spine is bent: no better than keep\n{GRADES}round best pick 1 by highest score\n"
    )
    assert koirules.read_standard(rules).warnings == ()
