"""Broken rule files, as people write them, each with the problems that its author is told.

A file of tests/cases/problems names its problems itself: `# problem: CODE COLUMN` at the end of the offending line (more
of them with commas), or `# problem LINE:COLUMN CODE` in the first lines, where a line cannot bear a comment. Beside it,
NAME.expected holds the full texts; `--refresh-cases` writes them anew.
"""

import re
import unicodedata
from pathlib import Path

import pytest

import koirules
from koirules.problems import Cell, Problem
from koirules.testing import registry_with


def words(text):
    return text.split()


CASES = Path(__file__).parents[1] / "cases" / "problems"
BOX = registry_with()  # whatever else is installed here
NAMES = sorted(path.stem for path in CASES.glob("*.koi"))


MENDED = frozenset(
    words("""
prose_line points_with_colon_only
a_renamed_grade_dropped_by_its_old_name any_variety_at_the_left_edge occasion_unknown names_of_two_words
trait_with_space names_by_their_titles
words_that_are_a_name_or_turned_round
a_broken_criterion_does_not_empty_its_section a_broken_fault_is_not_missed_elsewhere
a_broken_grade_is_not_missed_elsewhere a_broken_header_is_not_missed_elsewhere
a_broken_section_is_not_missed_elsewhere a_broken_section_leaves_the_score_open a_broken_term_is_not_missed_elsewhere
backticks base_that_is_no_rule_set better_then bonus_points_word by_missing byte_order_mark colon_missing_on_fault
colon_missing_on_points comma_for_and comma_missing_between_rows comparisons_as_people_say_them composed_letters
date_the_other_way default_grade edition_of_a_sentence edition_of_two_words edition_with_a_stroke for_instead_of_by
full_width_signs grade_colon_before_otherwise grade_from_to grade_if_better grade_in_quotes grade_misspelt_in_fault
grade_percent grade_points grade_total grade_without_if head_in_capitals head_misspelt header_at_the_left_edge
header_author header_colon header_in_capitals_and_braces header_with_a_date_and_braces header_without_its_first_line
header_word_unknown header_words_of_others is_missing is_missing_before_not is_unknown lift_cap minus_sign_typographic
negations_as_people_say_them no_and_recorded_before_a_name no_better_on_lift no_break_and_full_width_spaces
no_worse_on_fault numbers_without_a_comparison old_line_ends otherwise_misspelt penalty_negative
pick_by_an_unknown_setting question_mark quotes_of_word_processors round_misspelt say_not_indented say_unknown_name
say_without_quotes scores_as_people_say_them section_colon silence_needs_is section_unknown_in_grade section_word_missing
section_worth_number_first sentence_full_stop signs_for_comparisons single_quotes statement_at_the_left_edge
statements_in_an_outline step_misspelt_in_table tabs term_equals term_is term_misspelt_where_used
title_of_standard_without_quotes title_without_quotes_before_edition trailing_comma units_of_what_is_declared
value_after_or variety_in_quotes variety_misspelt weight_missing_word weight_times windows_line_ends
words_for_if_and_except words_twice worth_in_percent zero_width_space
""")
)
"""Cases whose edits, all carried out, leave a file that reads."""

ON_LINE = re.compile(r"# problem: (.*)$")
ABOVE = re.compile(r"^# problem ([0-9]+):([0-9]+) (\S+)$")


def text_of(name):
    data = (CASES / f"{name}.koi").read_bytes()
    text = data.decode("utf-16" if data[:2] in {b"\xff\xfe", b"\xfe\xff"} else "utf-8-sig", errors="replace")
    return unicodedata.normalize("NFC", text.replace("\r\n", "\n").replace("\r", "\n"))


def problems_of(name, monkeypatch):
    monkeypatch.chdir(CASES)
    with pytest.raises(koirules.StandardError) as found:
        koirules.load_standard(f"{name}.koi", BOX)
    return found.value.problems


def marks_of(name):
    found = []
    for number, line in enumerate(text_of(name).split("\n"), 1):
        if above := ABOVE.match(line):
            found.append((int(above[1]), int(above[2]), above[3]))
        elif on_line := ON_LINE.search(line):
            for mark in on_line[1].split(", "):
                code, column = mark.split(" ")
                found.append((number, int(column), code))
    return sorted(found)


def after_edits(text, problems):
    lines = text.split("\n")
    starts = [0]
    for line in lines:
        starts.append(starts[-1] + len(line) + 1)
    edits = [problem.edit for problem in problems if problem.edit]
    for edit in sorted(edits, key=lambda edit: (edit.place.line, edit.place.column), reverse=True):
        place = edit.place
        begin, end = starts[place.line - 1] + place.column - 1, starts[place.end_line - 1] + place.end_column - 1
        text = text[:begin] + edit.text + text[end:]
    return text


def identity(problem):
    return problem.code, problem.cause, problem.site.line, problem.site.column


def problems_of_text(text):
    try:
        koirules.read_standard(text, registry=BOX, folder=CASES)
    except koirules.StandardError as error:
        return error.problems
    return ()


@pytest.mark.parametrize("name", NAMES)
def test_a_problem_is_found_where_the_mistake_is_and_nowhere_else(name, monkeypatch):
    found = [(p.site.line, p.site.column, p.code) for p in problems_of(name, monkeypatch)]
    assert sorted(found) == marks_of(name)


@pytest.mark.parametrize("name", NAMES)
def test_its_author_is_told_what_the_case_file_says(name, monkeypatch, refresh_cases):
    told = "".join(f"{problem}\n" for problem in problems_of(name, monkeypatch))
    expected = CASES / f"{name}.expected"
    if refresh_cases:
        expected.write_text(told, encoding="utf-8")
    assert told == expected.read_text(encoding="utf-8")


@pytest.mark.parametrize("name", NAMES)
def test_an_edit_mends_the_problem_that_carries_it(name, monkeypatch):
    problems = problems_of(name, monkeypatch)
    left = {identity(problem) for problem in problems_of_text(after_edits(text_of(name), problems))}
    assert not [problem for problem in problems if problem.edit and identity(problem) in left]


def test_these_files_read_once_their_edits_are_carried_out(monkeypatch):
    mended = set()
    for name in NAMES:
        problems = problems_of(name, monkeypatch)
        edited = any(problem.edit for problem in problems)
        if edited and not problems_of_text(after_edits(text_of(name), problems)):
            mended.add(name)
    assert mended == MENDED


def test_problems_come_in_the_order_of_the_file(monkeypatch):
    for name in NAMES:
        places = [(problem.site.line, problem.site.column) for problem in problems_of(name, monkeypatch)]
        assert places == sorted(places), name


def test_no_text_shows_what_the_grammar_calls_things(monkeypatch):
    for name in NAMES:
        for problem in problems_of(name, monkeypatch):
            assert not re.search(r"anon|Token|LPAR|\$END|SUM_SIGN", problem.cause + problem.mend, re.IGNORECASE), name


def test_every_case_has_its_expected_texts():
    texts = {path.stem for path in CASES.glob("*.expected")}
    assert texts == set(NAMES)
    assert len(NAMES) >= 60


def test_no_problem_carries_a_letter_that_steers_a_terminal() -> None:
    problem = Problem("too-large", Cell("lot\x1b[31m.csv"), "\x1b[2J is no value.", "Write \u202e2.")
    assert str(problem) == r"lot\u001b[31m.csv: \u001b[2J is no value. Write \u202e2. [too-large]"
