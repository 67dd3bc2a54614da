"""What holds but is likely a slip is said, and the file still grades."""

import pytest

import koirules
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
