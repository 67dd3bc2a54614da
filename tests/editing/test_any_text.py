"""Whatever the text and wherever the cursor, every question has an answer; and a page reads as if it were read anew."""

import random
import re
import string
from pathlib import Path
from unicodedata import normalize

import pytest
from hypothesis import given, settings
from hypothesis import strategies as some

from koirules.editing import (
    ENCODINGS,
    Desk,
    Lines,
    base_at,
    can_rename,
    folds,
    mends,
    offers_at,
    outline,
    places_of,
    renamed,
    together,
    told_at,
)
from koirules.language.diagnose.mending import edited
from koirules.language.parse.incremental import Memory
from koirules.language.parse.reader import read_text
from koirules.testing import registry_with

ROOT = Path(__file__).parents[2]
BOX = registry_with()
CASES = sorted((ROOT / "tests" / "cases" / "problems").glob("*.koi"))
RULES = [path.read_text(encoding="utf-8") for path in sorted(ROOT.glob("rulesets/*/standard.koi"))]
TEXTS = RULES + [path.read_bytes().decode("utf-8", errors="replace") for path in CASES]
BITS = [
    *(
        "fault",
        "grade",
        "points",
        "section",
        "if",
        "and",
        "is one of (",
        "by",
        ":",
        ",",
        "(",
        ")",
        '"',
        "{",
        "}",
        "#",
        "\n",
    ),
    *(
        "\n  ",
        "\r\n",
        "\t",
        "length",
        "kiwa",
        "fair",
        "3 cm",
        "%",
        "based on",
        "replace",
        "drop",
        "sample",
        "with",
        "say",
    ),
    *(
        "\x0b",
        "\x0c",
        "\x1c",
        "\x85",
        "\u2028",
        "\u0301",
        "🐟",
        "\ufeff",
        "\ud800",
        "錦",
        "“",
        "−",
        "=",
        "gives",
        "batch",
    ),
]


def asked_everything(desk: Desk, line: int, column: int) -> None:
    """Put every question about a place of a page, and about the page."""
    page = desk.pages["page"]
    offers = offers_at(desk, "page", line, column)
    assert offers.replaces < column
    told = told_at(desk, "page", line, column)
    assert told is None or told[0]
    for given_only in (True, False):
        places_of(desk, "page", line, column, given=given_only)
    base_at(desk, "page", line, column)
    can_rename(desk, "page", line, column)
    renamed(desk, "page", line, column, "another_name")
    outline(page.read)
    folds(page.read)
    look = desk.last_look("page")
    assert look is not None
    together(mends(look.checked.problems, page.file))
    desk.tidied("page")
    for encoding in ENCODINGS:
        for problem in look.checked.problems:
            if hasattr(problem.site, "line"):
                page.lines.to_editor(problem.site.line, problem.site.column, encoding)


def spoilt(text: str, rng: random.Random) -> str:
    """A text with a few bits put in, taken out or doubled."""
    for _ in range(rng.randint(1, 6)):
        at = rng.randint(0, len(text))
        end = min(len(text), at + rng.choice((0, 0, 1, 3, 12, 60)))
        put = rng.choice((rng.choice(BITS), "", text[at:end] * 2, rng.choice(string.printable)))
        text = text[:at] + put + text[end:]
    return text


@settings(max_examples=120)
@given(which=some.sampled_from(TEXTS), seed=some.integers(0, 2**32))
def test_every_question_about_a_broken_file_has_an_answer(which, seed):
    rng = random.Random(seed)
    text = which
    if len(text) > 4_000:  # a piece of it is as good and quicker
        begin = rng.randint(0, len(text) - 3_000)
        text = text[:400] + "\n" + text[begin : begin + 2_500]
    desk = Desk(BOX)
    page = desk.open("page", None, text)
    desk.look("page")
    for _ in range(2):
        text = spoilt(text, rng)
        page.put(text)
        for after_a_look in (False, True):
            if after_a_look:
                desk.look("page")
            line = rng.randint(1, len(page.lines.counted))
            asked_everything(desk, line, rng.randint(1, len(page.lines.counted[line - 1]) + 1))


@settings(max_examples=60)
@given(text=some.text(some.characters(exclude_categories=()), max_size=200))
def test_every_question_about_any_text_has_an_answer(text):
    desk = Desk(BOX)
    page = desk.open("page", None, text)
    desk.look("page")
    for line, words in enumerate(page.lines.counted, 1):
        asked_everything(desk, line, len(words) + 1)


@settings(max_examples=60)
@given(which=some.sampled_from(TEXTS), seed=some.integers(0, 2**32))
def test_a_text_that_changes_is_read_as_if_it_were_read_anew(which, seed):
    rng = random.Random(seed)
    memory, text = Memory(), which
    for _ in range(4):
        assert read_text(text, "a.koi", memory) == read_text(text, "a.koi")
        text = spoilt(text, rng)


@given(
    text=some.text(some.sampled_from("ae\u0301\u0308ñ🐟錦\u1100\u1161\u11a8 \r\n\ufeff\ud800\x0c\u2028"), max_size=40),
    encoding=some.sampled_from(ENCODINGS),
)
def test_every_place_of_ours_is_one_of_the_editor_and_back(text, encoding):
    lines = Lines(text)
    codec, width = {"utf-8": ("utf-8", 1), "utf-16": ("utf-16-le", 2), "utf-32": ("utf-32-le", 4)}[encoding]
    own = re.split("\r\n|\r|\n", text)
    for number, line in enumerate(lines.counted, 1):
        for column in range(1, len(line) + 2):
            at, units = lines.to_editor(number, column, encoding)
            assert at == number - 1
            # What stands before the place in the editor's line, by the codecs of Python, is what stands before ours.
            before = own[at].encode(codec, "surrogatepass")[: units * width].decode(codec, "surrogatepass")
            before = before.removeprefix("\ufeff") if number == 1 else before
            assert normalize("NFC", before) == line[: column - 1]
            assert lines.from_editor(at, units, encoding) == (number, column)


@pytest.mark.parametrize("path", CASES, ids=lambda path: path.stem)
def test_all_mends_that_can_be_made_together_leave_fewer_problems(path):
    data = path.read_bytes()
    is_text = b"\x00" not in data and data[:2] not in {b"\xff\xfe", b"\xfe\xff"}
    text = data.decode("utf-8", errors="replace") if is_text else ""  # what is no text has no mends
    desk = Desk(BOX)
    page = desk.open("page", None, text)
    found = mends(desk.look("page").checked.problems, page.file)
    edits = together(found)
    assert bool(edits) == bool(found)
    before = [p for p in desk.look("page").checked.problems if p.edit in edits]
    page.put(edited(page.read.rules.text, edits))
    after = desk.look("page").checked.problems
    assert not edits or [p for p in before if p not in after]
