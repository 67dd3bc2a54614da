"""Whatever the page, tidying it changes nothing but its look: the same statements and comments, and tidy already."""

from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import HealthCheck, assume, given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.language import statements, syntax
from koirules.language.format.line_breaking import WIDTH
from koirules.language.format.sameness import is_same, unplaced
from koirules.language.format.writer import tidy, tidy_statement
from koirules.language.parse.reader import read_text
from koirules.problems import Place
from tests.judge.strategies import layouts, records, standards, to_mapping
from tests.judge.text import to_text
from tests.properties.test_reader_laws import mutated_pages

ROOT = Path(__file__).parents[2]
FILES = sorted((*ROOT.glob("rulesets/**/*.koi"), *ROOT.glob("examples/**/*.koi"), *ROOT.glob("tests/**/batch/*.koi")))
HERE = Place("page.koi", 1, 1, 1, 1)
moderate = settings(max_examples=40, deadline=None, suppress_health_check=list(HealthCheck))
thorough = settings(moderate, max_examples=400)


def holds(text):
    read = read_text(text, "page.koi")
    assert not read.problems
    written = tidy(read.rules)
    again = read_text(written, "page.koi")
    assert not again.problems
    assert is_same(read, again)
    comments = [sorted(comment.text.rstrip()[1:] for comment in one.rules.comments) for one in (read, again)]
    assert comments[0] == comments[1]
    assert tidy(again.rules) == written
    return written


@pytest.mark.parametrize("path", FILES, ids=lambda path: f"{path.parent.name}/{path.name}")
def test_the_files_of_the_repository_mean_the_same_when_tidied(path):
    holds(path.read_text(encoding="utf-8"))


@moderate
@given(st.data())
def test_a_drawn_standard_means_the_same_when_tidied(data):
    standard = data.draw(standards())
    text = to_text(standard, data.draw(layouts()))
    note(text)
    written = holds(text)
    record = to_mapping(standard, data.draw(records(standard)))
    before, after = (koirules.read_standard(one).grade(record) for one in (text, written))
    assert (before.possible, before.score_low, before.score_high) == (after.possible, after.score_low, after.score_high)


@moderate
@given(st.data())
def test_the_layout_of_the_author_is_gone(data):
    standard = data.draw(standards())
    bare = to_text(standard, None)
    spread = "\n".join(line.replace(" ", "\n  ") if '"' not in line else line for line in bare.split("\n"))
    assert holds(bare) == holds(spread)


@thorough
@given(mutated_pages())
def test_whatever_reads_means_the_same_when_tidied(text):
    read = read_text(text, "page.koi")
    headers = [one for one in read.rules.statements if isinstance(one, statements.Header)]
    assume(not read.problems and not any(header.repeated for header in headers))
    holds(text)


# ---- Any expression that the grammar can give ---------------------------------------------------------------------

WORDS = st.sampled_from(("kiwa", "a", "score_1", "白地", "mm", "highest")).map(lambda text: syntax.Word(text, HERE))
NUMBERS = st.builds(
    syntax.Quantity,
    st.sampled_from([Decimal(text) for text in ("0", "1", "2.50", "1000000", "0.000001", "-0", "-3.10")]),
    st.sampled_from((None, "cm", "%", "weeks")),
    st.just(HERE),
)
LEAVES = st.one_of(
    WORDS,
    NUMBERS,
    st.sampled_from(("yes", "no")).map(lambda text: syntax.Word(text, HERE)),
    st.sampled_from(("line A", "# no comment", "赤", "")).map(lambda text: syntax.Text(text, HERE)),
    st.just(syntax.ScoreRead(HERE)),
    st.just(syntax.GradeRead(HERE)),
    WORDS.map(lambda word: syntax.SectionRead(word, HERE)),
    WORDS.map(lambda word: syntax.FaultRead(word, HERE)),
    WORDS.map(lambda word: syntax.CountPlaces(word, HERE)),
)


def several(inner, least=1):
    return st.lists(inner, min_size=least, max_size=3).map(tuple)


def tails(inner):
    def tail(operator, operands, negated):
        return syntax.Tail(operator, negated and operator.startswith("is"), operands, HERE)

    one = st.builds(
        tail,
        st.sampled_from(("at least", "at most", "above", "below", "is", "includes")),
        several(inner).map(lambda items: items[:1]),
        st.booleans(),
    )
    two = st.builds(tail, st.just("between"), st.tuples(inner, inner), st.just(False))
    some = st.builds(tail, st.just("is one of"), several(inner), st.booleans())
    none = st.builds(tail, st.just("is recorded"), st.just(()), st.booleans())
    return st.one_of(one, two, some, none)


def built(inner):
    def signed(signs):
        return st.lists(st.tuples(st.sampled_from(signs), inner), min_size=1, max_size=3).map(tuple)

    here = st.just(HERE)
    return st.one_of(
        st.builds(syntax.AllOf, several(inner, 2), here),
        st.builds(syntax.AnyOf, several(inner, 2), here),
        st.builds(syntax.Negated, inner, here),
        st.builds(syntax.Comparison, inner, several(tails(inner)), here),
        st.builds(syntax.Arithmetic, inner, signed("+-"), here),
        st.builds(syntax.Arithmetic, inner, signed("*/"), here),
        st.builds(syntax.Negative, inner.filter(lambda one: not isinstance(one, syntax.Quantity)), here),
        st.builds(syntax.GrownTo, inner, inner, here),
        st.builds(syntax.CountConditions, several(inner), here),
        st.builds(syntax.Extreme, st.sampled_from(("lesser", "greater", "median")), several(inner), here),
        st.builds(syntax.Conditional, inner, inner, inner, here),
        st.builds(syntax.Earlier, inner, here),
        st.builds(syntax.CountPlaces, st.builds(syntax.Earlier, inner, here), here),
        st.builds(
            lambda figure, operand, same, kept, least: syntax.BatchFigure(
                figure, Decimal("12.5") if figure == "percentile" else None, operand, same, kept, least, HERE
            ),
            st.sampled_from(("median", "percentile", "standing", "share")),
            inner,
            st.just(()) | several(WORDS),
            st.none() | WORDS,
            st.sampled_from((None, 0, 30)),
        ),
    )


@thorough
@given(st.recursive(LEAVES, built, max_leaves=12), st.booleans())
def test_any_expression_reads_as_it_was_written(expression, negated):
    if negated:
        expression = syntax.Negated(expression, HERE)
    written = tidy_statement(statements.Term(syntax.Word("t", HERE), None, expression, HERE))
    note(written)
    read = read_text(written, "page.koi")
    assume(not any(problem.code == "nested-too-deep" for problem in read.problems))
    assert read.problems == ()
    (term,) = read.rules.statements
    assert unplaced(term.expression) == unplaced(expression)
    for line in written.split("\n"):
        assert len(line) <= WIDTH + 40
