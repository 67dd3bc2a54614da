"""Every value that a message about a cell offers can be read in that cell."""

import random
import re

from koirules.testing import registry_with
from koirules.vocabulary.cells import read_value
from koirules.vocabulary.kinds import Colours, Patches
from koirules.vocabulary.misreads import Misread

SEED = 20261130
DRAWN = 6_000
PIECES = [
    "14",
    "3",
    "45",
    "0.5",
    "1,5",
    "1,250",
    "12.5",
    "-1",
    "200",
    "1e9",
    "cm",
    "mm",
    "%",
    "kg",
    "g",
    "inch",
    '"',
    "in",
    "and",
    "or",
    "to",
    "-",
    "/",
    "&",
    "about",
    "ca.",
    "~",
    "over",
    "<",
    ">",
    "?",
    "n/a",
    "none",
    "x",
    "yes",
    "no",
    "y",
    "ja",
    "left",
    "right",
    "fair",
    "shap",
    "sharp",
    "white",
    "blured",
    "nidan",
    "tail",
    "dorsal",
    "eye",
    "left_eye",
    "3-Apr",
    "2026-01-02",
    "TRUE",
    "+",
    "...",
    "(",
    ")",
    "unknown",
    ".",
    "wahr",
    "nein",
    "03.11.2026",
    "at",
    "least",
    "under",
    "fourty",
    "1.2.3",
    "7-8",
    "5–6",
    "3x",
]
QUOTED = re.compile(r'"([^"]+)"')
# What is quoted and no value of the cell: a format of spreadsheet programs, a word to leave out, an example for counts.
NO_VALUES = ("If you looked", 'Set the cell to the format "Text"', "such as")


def offered(misread):
    words = misread.mend
    for part in NO_VALUES:
        words = words.partition(part)[0]
    words = re.sub(r'Leave out "[^"]*"', "", words)
    return QUOTED.findall(words)


def test_what_a_message_offers_can_be_read_where_it_would_stand():
    draw = random.Random(SEED)
    traits = [trait for variety in registry_with().varieties.values() for trait in variety.traits.values()]
    traits = [trait for trait in traits if not isinstance(trait.kind, Patches | Colours)]
    tried, wrong = 0, []
    for _ in range(DRAWN):
        trait = draw.choice(traits)
        raw = draw.choice((" ", "")).join(draw.choice(PIECES) for _ in range(draw.choice((1, 1, 2, 2, 3))))
        found = read_value(trait.kind, raw)
        if isinstance(found, Misread):
            for text in offered(found):
                tried += 1
                if isinstance(read_value(trait.kind, text), Misread):
                    wrong.append(f"{trait.name} {raw!r}: {found.mend}")
    assert wrong == []
    assert tried > 1_000
