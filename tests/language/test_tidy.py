"""The tidy writer: one layout, the same statements, every comment kept."""

from pathlib import Path

import pytest

from koirules.language.format.writer import tidy
from koirules.language.parse.reader import read_text

WHOLE = Path(__file__).parents[1] / "cases" / "tidy"


def tidied(text):
    read = read_text(text, "page.koi")
    assert read.problems == ()
    written = tidy(read.rules)
    again = read_text(written, "page.koi")
    assert again.problems == ()
    assert tidy(again.rules) == written
    return written


@pytest.mark.parametrize("path", sorted(WHOLE.glob("*.koi")), ids=lambda path: path.stem)
def test_a_page_is_laid_out_as_the_one_beside_it(path, refresh_cases):
    written = tidied(path.read_text(encoding="utf-8"))
    beside = path.with_suffix(".tidy")
    if refresh_cases:
        beside.write_text(written, encoding="utf-8")
    assert written == beside.read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("written", "tidy_one"),
    [
        ("(((a)))", "a"),
        ("a or (b and c)", "a or (b and c)"),
        ("a or b and c", "a or (b and c)"),
        ("(a or b) and c", "(a or b) and c"),
        ("a or (b or c)", "a or (b or c)"),
        ("not (a is b)", "not a is b"),
        ("not (a and b)", "not (a and b)"),
        ("a - (b - c) above 0", "a - (b - c) above 0"),
        ("(a - b) - c above 0", "(a - b) - c above 0"),
        ("(2*a) + b above -(c)", "2 * a + b above -c"),
        ("-(a+b) above - - 5", "-(a + b) above 5"),
        ("+a above -0.50 cm", "a above -0.5 cm"),
        ("a above .5mm", "a above 0.5 mm"),
        ("a above 12.000 cm", "a above 12 cm"),
        ("a is not one of(b,(c))", "a is not one of (b, c)"),
        ("count of ((a))at least 1", "count of (a) at least 1"),
        ("count of (earlier (a)) is 0", "count of (earlier a) is 0"),
        ("count of earlier a is 0", "count of earlier a is 0"),
        ("(a if (b) otherwise (c if d otherwise e))", "(a if b otherwise (c if d otherwise e))"),
        ("earlier (((a if b otherwise c))) above 1", "earlier (a if b otherwise c) above 1"),
        ("(-5 cm) grown to(5cm) above 1", "(-5 cm) grown to 5 cm above 1"),
        ("a grown to (-5 cm) above 1", "a grown to (-5 cm) above 1"),
        (
            "batch share of (fault a) among the same (b) above 1 %",
            "batch share of (fault a) among the same b above 1 %",
        ),
        (
            "batch percentile 10.0 of (a) among the same (b,c) among those kept by d with 30 or more recorded above 1",
            "batch percentile 10 of a among the same (b, c) among those kept by d with 30 or more recorded above 1",
        ),
        ("(a is yes) is (no)", "(a is yes) is no"),
        ("earlier (yes)", "earlier (yes)"),
        ("lesser of((a),b)above score", "lesser of (a, b) above score"),
    ],
)
def test_an_expression_is_written_with_the_brackets_that_it_needs(written, tidy_one):
    lines = tidied(f'standard "x" edition 1\nterm t means {written}').split("\n")
    assert " ".join(line.strip() for line in lines[2:-1]) == f"term t means {tidy_one}"


def test_brackets_for_the_readers_sake_stay_out_where_they_would_be_too_many():
    deep = "a"
    for _ in range(32):
        deep = f"b and (c or {deep})"
    assert "or b and" in tidied(f'standard "x" edition 1\nterm t means {deep}')


def test_a_windows_file_becomes_a_plain_one():
    assert tidied('\ufeffstandard "x"\r\n edition 1\r\n\r\n\r\n\r\n# é\r\ngrade a otherwise') == (
        'standard "x"\n  edition 1\n\n# é\ngrade a otherwise\n'
    )
