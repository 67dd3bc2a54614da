"""Whatever the text, reading it gives a standard or problems that lie inside it, and gives them soon."""

import subprocess
import sys
import unicodedata
from pathlib import Path

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

import koirules
from koirules.language.parse.reader import read_bytes
from koirules.loading.reading import load_text
from koirules.problems import is_refused
from koirules.standard.check.checker import check
from koirules.testing import registry_with

BOX = registry_with()
ROOT = Path(__file__).parents[2]
PAGE = """# Teal Yard is an invented house.
standard "Teal Yard house standard" de "Hausregel"
  edition 2026-1
  variety kohaku
  valid from 2026-01-01 until 2026-12-31
setting grown_length = 65 cm from 40 cm to 90 cm "length the fish is judged for"
trait belly_mark "mark under the belly" as scale none < faint < strong, less is better
trait place_marks as places of (back, belly)
term tail_closed "white before the tail" means odome at least 3 %
fault shimi "black specks"
  if shimi_count at least 1 and not (length below 10 cm or belly_mark is strong)
  except shimi_size below 0.5 mm and shimi_count at most 2
  : no better than sell
  say "{shimi_count} specks, the largest {shimi_size}"
section body "body" worth 40
points outline "outline" weight 2 by girth_ratio: 0.18 gives 0, 0.24 gives 10, 0.30 gives 4
points stem by tail_stem: thin gives 0, anything else gives 10
bonus lips "red lips" 2.5 if kuchibeni is yes
penalty several 3 if count of (tail_closed, count of hi_on_fins at least 1, place_marks includes back) at least 2
section look worth 60
points cover by lesser of (hi_cover + 10 %, (50 % if steps is nidan otherwise 2 * hi_cover)): 20 % gives 0, 45 % gives 10
lift quality if section body at least 36: no worse than hold
grade keep if score at least 75 and length between 1.5 * 8 cm and grown_length
grade hold if score at least 60 or fault shimi
grade sell if bloodline is one of ("line A", "line C") or weight is not recorded
grade cull otherwise
sample "clean" with length 14 cm, girth_ratio 0.24, steps nidan, hi_cover 40 % to 45 %, hi_on_fins (dorsal, tail)
  shows no fault
  scores from 0 to 100
round first "first look" keep those with grade at least hold pick 12 by highest score, then lowest length
phrase "clean face", "face free" ja "顔" means hi_cover at most 40 % and hi_on_fins includes tail and count of hi_on_fins is 2
alert many "many bent" if batch share of (fault shimi) above 33 %
"""
SIGNS = list("()<>=,:;+-*/%\"“”„「」{}[]#!?.…'`|&^~@$\\_0123456789\n\n  \t\r\ufeff\u3000\u200b％：１éі")
WORDS = sorted(
    set(PAGE.split()) | {"otherwise", "includes", "greater of", "earlier", "grown to", "batch median of", "is"}
)


@st.composite
def mutated_pages(draw):
    """The page with a few stretches taken out, doubled, moved or written over."""
    text = PAGE
    for _ in range(draw(st.integers(1, 4))):
        begin = draw(st.integers(0, len(text)))
        end = draw(st.integers(begin, min(len(text), begin + 40)))
        other = draw(st.integers(0, len(text)))
        piece = draw(st.sampled_from(["", text[begin:end] * 2, text[other : other + 20], *SIGNS, *WORDS]))
        text = text[:begin] + piece + text[end:]
    return text


pieces = st.lists(st.sampled_from(SIGNS) | st.sampled_from(WORDS) | st.text(max_size=3), max_size=60)
texts = st.text(max_size=200) | st.builds(" ".join, pieces) | st.builds("".join, pieces) | mutated_pages()


def lines_of(text):
    whole = unicodedata.normalize("NFC", text.removeprefix("\ufeff").replace("\r\n", "\n").replace("\r", "\n"))
    return whole.split("\n")


def places_of(problems):
    for problem in problems:
        yield problem.site
        if problem.edit:
            yield problem.edit.place


def assert_inside(problems, lines):
    for place in places_of(problems):
        assert 1 <= place.line <= place.end_line <= len(lines), place
        assert 1 <= place.column <= len(lines[place.line - 1]) + 1, place
        assert 1 <= place.end_column <= len(lines[place.end_line - 1]) + 1, place
        assert (place.line, place.column) <= (place.end_line, place.end_column), place


def problems_of(text):
    try:
        return koirules.read_standard(text, registry=BOX).warnings
    except koirules.StandardError as error:
        return error.problems


def test_the_page_reads():
    assert not problems_of(PAGE)


@settings(max_examples=400, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(texts)
@example('standard "x')
@example("\r\r\n\n")
@example("a\u0301" * 3 + " grade e\u0301")
def test_any_text_is_a_standard_or_has_problems_inside_it(text):
    problems = problems_of(text)
    assert_inside(problems, lines_of(text))
    places = [(problem.site.line, problem.site.column) for problem in problems]
    assert places == sorted(places)
    assert all(problem.cause and problem.mend for problem in problems)


@settings(max_examples=200, deadline=None)
@given(
    st.binary(max_size=200) | st.builds(lambda text, extra: text.encode("utf-16") + extra, texts, st.binary(max_size=3))
)
@example(b"\xff\xfe")
@example(b'standard "x"\n\xc3')
def test_any_bytes_are_rules_or_have_problems(data):
    data = data.replace(b"\r", b"\n")
    read = read_bytes(data, "x.koi")
    checked = check(read.rules, BOX.varieties, read.problems)
    assert checked.rules is not None or is_refused(checked.problems)
    lines = lines_of(data.removeprefix(b"\xef\xbb\xbf").decode("utf-8", errors="replace"))
    assert_inside(checked.problems, lines)


@settings(max_examples=100, deadline=None)
@given(mutated_pages())
def test_bytes_and_text_read_the_same(text):
    read = read_bytes(text.encode("utf-8", errors="replace"), "standard.koi")
    if "\ufeff" not in text[:1]:
        of_text = load_text(text, "standard.koi", BOX.varieties, BOX.rulesets, most_tried=0)
        assert check(read.rules, BOX.varieties, read.problems).problems == of_text.problems


HEAD = 'standard "Teal Yard" edition 1 variety kohaku\n'
GRADES = "grade keep if length above 10 cm\ngrade cull otherwise\n"


def fault(condition):
    return f"{HEAD}fault odd if {condition}: no better than cull\n{GRADES}"


def chain(first, step, most, read):
    """Terms, each of which reads the one before, and a fault that reads the last."""
    terms = "\n".join(f"term t{i} means {step.format(i - 1)}" for i in range(1, most))
    return f"{HEAD}term t0 means {first}\n{terms}\nfault odd if {read.format(most - 1)}: no better than cull\n{GRADES}"


HARD = {
    "a sum of 10,000 terms": fault(" + ".join(["length"] * 10_000) + " above 12 cm"),
    "10,000 quotients": fault("length" + " / 1.0001" * 10_000 + " above 12 cm"),
    "10,000 conditions": fault(" and ".join(["spine is bent"] * 10_000)),
    "a count of 10,000 conditions": fault(f"count of ({', '.join(['spine is bent'] * 10_000)}) at least 3"),
    "10,000 comparisons in a row": fault("length" + " above 2 cm" * 10_000),
    "10,000 knots": f"{HEAD}section all worth 100\npoints p by length: "
    + ", ".join(f"{i / 100} cm gives {i % 7}" for i in range(51, 10_000))
    + f"\n{GRADES}",
    "100,000 brackets": fault("(" * 100_000 + "spine is bent" + ")" * 100_000),
    "100,000 closing brackets": fault("spine is bent" + ")" * 100_000),
    "100,000 times not": fault("not " * 100_000 + "spine is bent"),
    "100,000 signs": fault("- " * 100_000 + "length above 2 cm"),
    "400,000 digits": fault("length above " + "9" * 400_000 + " cm"),
    "a mistake behind 40,000 conditions": fault(" and ".join(["spine is bent"] * 40_000) + " spine bent"),
    "1,900 mistakes": HEAD + "fault odd if spine bent: no better than cull\n" * 1_900 + GRADES,
    "terms 1,900 deep": chain("length", "t{0} + 0 cm", 1_900, "t{0} above 12 cm"),
    "a circle of 1,900 terms": HEAD
    + "\n".join(f"term t{i} means t{(i + 1) % 1_900}" for i in range(1_900))
    + "\n"
    + GRADES,
    "300,000 quotes": '"' * 300_001,
    "300,000 full-width letters": "ａ" * 300_000,
    "400,000 lines": "x\n" * 400_000,
}


@pytest.mark.parametrize("name", HARD)
def test_a_hard_text_ends_soon_in_problems_or_a_standard_that_grades(name):
    if not is_refused(problems_of(HARD[name])):
        assert koirules.read_standard(HARD[name], registry=BOX).grade({}).possible == ("keep", "cull")


def test_terms_that_read_one_another_twice_cost_no_more_than_their_length():
    # In a process of its own, which can be stopped.
    text = chain("spine is bent", "t{0} and not t{0}", 60, "t{0}")
    program = "import koirules, sys; print(koirules.read_standard(sys.stdin.read()).grade({}).possible)"
    found = subprocess.run(
        [sys.executable, "-c", program], input=text, cwd=ROOT, capture_output=True, text=True, check=True
    )
    assert found.stdout.strip() == "('keep', 'cull')"


def test_a_file_larger_than_a_megabyte_is_not_read():
    (problem,) = read_bytes(b"# " + b"x" * 1_000_000, "x.koi").problems
    assert problem.code == "too-large"
