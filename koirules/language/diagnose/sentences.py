"""Slips of people who write a rule as they would say it: where a word stands that the language puts elsewhere."""

from __future__ import annotations

import re

from koirules.language.diagnose.hint_words import FILLERS, wants_value
from koirules.language.diagnose.spots import WHOLE, Spot
from koirules.meaning.aggregates import AGGREGATES, Gives
from koirules.meaning.expressions import FIRST_WORDS
from koirules.problems import Problem, misfits
from koirules.problems import sentences as say
from koirules.vocabulary.nearness import near
from koirules.vocabulary.units import UNITS
from koirules.vocabulary.words import HEAD_WORDS, OPERATOR_WORDS

_NAME = r"[^\W\d]\w*"
_WORDS = rf"{_NAME}(?:[ \-]+\w+)*"
_DOES_NOT = re.compile(
    rf"(?<!\w)({_NAME})\s+((?:do(?:es)?(?:\s+not|n't)|has\s+not|not)\s+(?:includes?|contains?|have|has|show))(?!\w)"
)
_OUTCOME = r"(?:comes|stays|scores|section|shows|kept|leaves)(?!\w)"
_COMMA_BEFORE_OUTCOME = re.compile(rf",(?=\s*{_OUTCOME}(?:\s+\w+)?\s*\Z)")
_RUN = re.compile(rf"{_NAME}(?:\s+(?:and\s+)?(?!{_OUTCOME}){_NAME})+(?=\s*(?:,|\Z|\s{_OUTCOME}))")
_HEADER = r"(?:edition|variety|any\s+variety|stage|for|valid|based|note)"
_HEADER_WORDS = ("edition", "variety", "any", "stage", "for", "valid", "based", "note")
_TITLE_ENDS = {"standard": rf"\s+{_HEADER}\s", "sample": r"\s+with\s"}
_OPENS = {"if", "and", "or", "not", "except", "means", "by", "("}
_COMPARES = {*FIRST_WORDS}
_ROW = rf"({_NAME}(?:(?:\s*,\s*|\s+(?:and|or|with)\s+|\s+)(?!with\s)(?!{_HEADER}\s){_NAME})+)"
_SKINS = re.compile(rf"(?<!\w)with\s+{_ROW}")
_VARIETIES = re.compile(rf"(?<!\w)variety\s+{_ROW}".replace("and|or|with", "and|or"))
_PER = re.compile(r"(?<!\w)pick\s+(?:\w+|[0-9.]+\s*%?)\s+(per(?:\s+each)?|(?:in|of|from)\s+each|each)(?=\s)")
_EACH = re.compile(rf"(?<!\w)each\s+({_NAME}(?:\s*(?:,|and)\s*{_NAME})+)(?=\s+by(?!\w))")
_EDITION = re.compile(rf"(?<!\w)edition[ \t]+((?!{_HEADER}\s)[^\s\"]+(?:[ \t]+(?!(?:{_HEADER}|seal)(?!\w))[^\s\"]+)*)")
_OF_SEVERAL = re.compile(r"(?<!\w)(mean|average|sum|total|min|max)\s+of\s*\(([^()\"]*)\)")
_FIGURES = "|".join(
    rf"{one.name}\s+[0-9]+" if one.percent else one.name
    for one in AGGREGATES.values()
    # `highest` and `lowest` begin an order as well.
    if one.gives is not Gives.ONE_VALUE
)
_FIGURE = re.compile(rf"(?<!batch )(?<!\w)(?:{_FIGURES})\s+of(?=\s+[^\W\d])")
_OUTCOME_SAID = re.compile(
    r"(?:(?:at\s+most|at\s+best|at\s+least|maximum|minimum|max|min|not\s+(?:better|worse)\s+than|then|grade|is|becomes)\s+)?"
    r"([^\W\d]\w*)(?=\s*(?:\Z|\n|say\s))"
)
_FOR_THE_REST = re.compile(
    r"(?<!\w)(?:if\s+)?(?:(?:nothing|none|anything|everything|something)\s+(?:else|of\s+(?:these|those|them|the\s+above))"
    r"|all\s+(?:others?|the\s+rest)|the\s+rest|all\s+else)(?!\w)"
)
_BEST = re.compile(r"(?<!\w)(?:keep|pick)\s+(?:(?:those|the)\s+)*(?:best|top)\s+([0-9]+)(?!\s*%|\s+by(?!\w))")
_GRADE = re.compile(r"(?<!\w)grade\s+(?!(?:is|at|above|below|between|better|worse)(?!\w))([^\W\d]\w*)")
_PLAIN_NUMBERS = {"worth": "a worth is a plain number", "weight": "a weight is a plain number"}
_PLAIN_NUMBERS |= {"gives": "a plain number follows `gives`"}
_NO_UNITS = {"points", "point", "percent"}


def negation_slip(spot: Spot, head: str) -> Problem | None:
    """`not` inside of a comparison that it stands before: `P does not include tail`."""
    if head in {"trait", "sample", "standard", "setting"}:
        return None
    for found in _DOES_NOT.finditer(spot.text, max(0, spot.at - 60), spot.at + 60):
        if found.start(2) <= spot.at < found.end() and found.group(1) not in OPERATOR_WORDS:
            return say.not_inside(spot.span(found.start(), found.end()), found.group(2), found.group(1))
    return None


def no_slip(spot: Spot, head: str) -> Problem | None:  # noqa: ARG001
    """`no kuchibeni` and `not recorded length`, as a sentence says them."""
    if "IS" not in spot.accepts or not spot.word.isidentifier() or spot.word in OPERATOR_WORDS:
        return None
    if spot.last == "no" and spot.word_before(2) in _OPENS:
        return say.no_before_name(spot.before_place.to(spot.place), spot.word)
    before = spot.word_before(2)
    if spot.last != "recorded" or before == "is" or (before == "not" and spot.word_before(3) == "is"):
        return None
    found = re.search(r"(?:not\s+)?recorded\s+\Z", spot.text[: spot.at])
    if found is None:
        return None
    place = spot.span(found.start(), spot.at + len(spot.word))
    return say.recorded_first(place, spot.word, negated=before == "not")


def name_slip(spot: Spot, head: str) -> Problem | None:
    """A name of several words before a title."""
    if head in {"standard", "sample", "replace", "drop", "rename"} or spot.word_before(2) != head:
        return None
    found = re.compile(rf'({_WORDS})\s*"').match(spot.text, spot.at)
    if found is None or not spot.last.isidentifier():
        return None
    if {*found.group(1).split()} & (OPERATOR_WORDS | HEAD_WORDS | {*UNITS} | {"from"}):
        return None  # no name: something is missing before these words
    words = f"{spot.last} {' '.join(found.group(1).split())}"
    place = spot.before_place.to(spot.span(spot.at, found.end(1)))
    return say.name_of_words(place, words, re.sub(r"[ \-]+", "_", words))


def names_slip(spot: Spot, head: str) -> Problem | None:  # noqa: ARG001
    """A name of two words in an expression."""
    if "IS" not in spot.accepts or wants_value(spot.accepts) or not spot.last.isidentifier():
        return None
    following = spot.following()[:1]
    if following[:1] == ["of"] or not spot.word.isidentifier() or spot.last in OPERATOR_WORDS:
        return None
    place = spot.before_place.to(spot.place)
    if spot.word == "count":
        return say.name_of_words(place, f"{spot.last} count", f"{spot.last}_count")
    begins = spot.word_before(2) in _OPENS and spot.last not in FILLERS
    if begins and following and following[0] in _COMPARES and spot.word not in OPERATOR_WORDS | HEAD_WORDS | FILLERS:
        return say.name_or_two(place, spot.last, spot.word)
    return None


def comma_slip(spot: Spot, head: str) -> Problem | None:
    """A comma before what must come of a sample, and a colon or comma before a word that could stand here."""
    if head == "sample":
        found = _COMMA_BEFORE_OUTCOME.search(spot.text, 0, spot.at)
        if found is None:
            return None
        instead = "" if spot.text[found.end()].isspace() else " "
        return say.comma_before_outcome(spot.span(found.start(), found.end()), instead)
    following = spot.following()
    if spot.word in {":", ","} and following and spot.takes(following[0]) and spot.reach(drop=True) == WHOLE:
        return misfits.not_needed(spot.place, spot.word)
    return None


def places_slip(spot: Spot, head: str) -> Problem | None:
    """Several places of a sample without their bracket: `hi_on_fins tail dorsal`."""
    if head != "sample" or not spot.last.isidentifier() or spot.last in {"yes", "no"}:
        return None
    if spot.word_before(3) not in {",", "with"} or not spot.word_before(2).isidentifier():
        return None
    start = spot.text.rfind(spot.last, 0, spot.at)
    found = _RUN.match(spot.text, start)
    words = [] if found is None else [word for word in found.group().split() if word != "and"]
    if found is None or len(words) % 2:
        return None  # as many words as facts of two words each have, if a comma is missing
    return say.places_without_bracket(spot.span(start, found.end()), words)


def row_slip(spot: Spot, head: str) -> Problem | None:
    """Several skins or varieties without their bracket: `variety kohaku with ginrin and doitsu`, `variety kohaku, showa`."""
    if head != "standard" or spot.word not in {",", "and", "or", "with"}:
        return None
    for pattern, what in ((_SKINS, "skins"), (_VARIETIES, "varieties")):
        for found in pattern.finditer(spot.text):
            if found.start() < spot.at < found.end():
                names = [name for name in re.findall(_NAME, found.group(1)) if name not in {"and", "or", "with"}]
                return say.names_without_bracket(spot.span(found.start(1), found.end(1)), names, what)
    return None


def each_slip(spot: Spot, head: str) -> Problem | None:
    """`pick 3 per spawning`, and several names of `for each` without their bracket."""
    if head != "round":
        return None
    for found in _PER.finditer(spot.text):
        if found.start(1) == spot.at:
            return say.in_other_words(spot.span(found.start(1), found.end(1)), found.group(1), "for each")
    for found in _EACH.finditer(spot.text):
        if found.start() < spot.at < found.end():
            names = [name for name in re.findall(_NAME, found.group(1)) if name != "and"]
            return say.names_without_bracket(spot.span(found.start(1), found.end(1)), names, "names")
    if spot.last == "by" and spot.word_before(2) == "each":
        return misfits.value_missing(spot.before_place, "for each")
    return None


def number_word_slip(spot: Spot, head: str) -> Problem | None:
    """A unit behind a plain number, and a weight behind what it weighs."""
    plain = _PLAIN_NUMBERS.get(spot.word_before(2))
    if plain is None and head in {"bonus", "penalty"} and "IF" in spot.accepts and spot.last != head:
        plain = f"a {head} is a plain number"
    if plain is not None and spot.last[:1].isdigit() and (spot.word in _NO_UNITS or spot.word in UNITS):
        return say.no_unit_here(spot.place, spot.word, plain)
    following = spot.following()[:1]
    weighs = head == "points" and spot.word in {"times", "x", "×"} and "COLON" in spot.accepts
    if weighs and following and following[0][:1].isdigit():
        end = spot.text.index(following[0], spot.at) + len(following[0])
        return say.weight_behind(spot.span(spot.at, end), f"{spot.word} {following[0]}", following[0])
    return None


def title_slip(spot: Spot, head: str) -> Problem | None:
    """A title without quotes, up to the word that follows it."""
    ends = _TITLE_ENDS.get(head)
    if ends is None or spot.last != head or spot.accepts != {"STRING"} or not spot.word[:1].isalnum():
        return None
    found = re.compile(rf"[^\n]+?(?={ends}|\s*$)", re.MULTILINE).match(spot.text, spot.at)
    if found is None:
        return None
    return misfits.text_without_quotes(spot.span(spot.at, found.end()), found.group())


def left_side_slip(spot: Spot, head: str) -> Problem | None:  # noqa: ARG001
    """`if is bent`, where `is` was read as a name."""
    if spot.last == "is" and spot.word_before(2) in _OPENS and "IS" in spot.accepts:
        return misfits.left_side_missing(spot.before_place, "is")
    return None


def edition_slip(spot: Spot, head: str) -> Problem | None:
    """An edition of several words, or with other signs than an edition has: `1/2026`, `spring 2027`."""
    if head != "standard":
        return None
    if spot.last == "edition" and spot.word_before(2) == "edition":
        return say.stands_twice(spot.before_place, "edition")
    for found in _EDITION.finditer(spot.text, 0, spot.at + len(spot.word) + 60):
        words = re.findall(r"[\w.]+", found.group(1))
        if found.start(1) <= spot.at <= found.end() and words and not near(spot.word, _HEADER_WORDS):
            return say.edition_of_words(spot.span(found.start(1), found.end(1)), "-".join(words))
    return None


def about_slip(spot: Spot, head: str) -> Problem | None:  # noqa: ARG001
    """`is about 50 %`: a rule needs two ends."""
    if spot.last in {"about", "around", "roughly", "nearly", "approximately"} and spot.word[:1].isdigit():
        return say.about_a_number(spot.before_place.to(spot.place), spot.last, spot.word)
    return None


def score_unit_slip(spot: Spot, head: str) -> Problem | None:  # noqa: ARG001
    """`score at least 88 points`."""
    if spot.word in {"points", "point", "pts", "marks"} and spot.last[:1].isdigit() and "UNIT" in spot.accepts:
        return misfits.not_needed(spot.place, spot.word)
    return None


def of_several_slip(spot: Spot, head: str) -> Problem | None:  # noqa: ARG001
    """`mean of (a, b)` and `sum of (a, b)`, which are written as sums."""
    for found in _OF_SEVERAL.finditer(spot.text, max(0, spot.at - 60)):
        if not found.start() <= spot.at < found.end():
            continue
        place = spot.span(found.start(), found.end())
        parts = [part.strip() for part in found.group(2).split(",")]
        instead = {"min": f"lesser of ({', '.join(parts)})", "max": f"greater of ({', '.join(parts)})"}
        instead |= dict.fromkeys(("sum", "total"), f"({' + '.join(parts)})")
        instead |= dict.fromkeys(("mean", "average"), f"(({' + '.join(parts)}) / {len(parts)})")
        return say.figure_of_several(place, found.group(1), instead[found.group(1)])
    return None


def batch_slip(spot: Spot, head: str) -> Problem | None:  # noqa: ARG001
    """`median of length` without the word `batch`."""
    found = _FIGURE.search(spot.text, max(0, spot.at - 20), spot.at + 30)
    if found is None or not found.start() <= spot.at <= found.end():
        return None
    figure = " ".join(found.group().split())
    return say.in_other_words(spot.span(found.start(), found.end()), figure, f"batch {figure}")


def limit_slip(spot: Spot, head: str) -> Problem | None:
    """A fault whose outcome is a bare grade, `: cull`, or is said in other words."""
    words = {"fault": "no better than", "lift": "no worse than"}.get(head)
    if words is None or spot.last != ":" or not spot.accepts <= {"NO", "LOWERS"}:
        return None
    found = _OUTCOME_SAID.match(spot.text, spot.at)
    if found is None:
        return None
    return say.in_other_words(spot.span(spot.at, found.end()), found.group(), f"{words} {found.group(1)}")


def otherwise_slip(spot: Spot, head: str) -> Problem | None:
    """`grade cull if nothing else`, as a sentence says `otherwise`."""
    if head != "grade":
        return None
    for found in _FOR_THE_REST.finditer(spot.text):
        if found.start() <= spot.at <= found.end():
            place = spot.span(found.start(), found.end())
            return say.in_other_words(place, found.group(), "otherwise")
    return None


def doubled_slip(spot: Spot, head: str) -> Problem | None:  # noqa: ARG001
    """A word or sign that stands twice in a row, and a sign that nobody needs."""
    if spot.word and spot.word == spot.last and spot.word not in {"(", ")"} and spot.reach(drop=True) > 1:
        return say.stands_twice(spot.place, spot.word)
    if spot.word in set("=.;!?,:-+&'") and spot.reach(drop=True) == WHOLE and spot.last != ",":
        following = spot.following()[:1]
        if not following or not following[0][0].isdigit() or spot.word not in "-+=":
            return misfits.not_needed(spot.place, spot.word)
    return None


def listed_texts_slip(spot: Spot, head: str) -> Problem | None:  # noqa: ARG001
    """Words without quotes in a list of texts: `is one of (old line, "mill line")`."""
    begin = spot.text.rfind("(", 0, spot.at)
    end = spot.text.find(")", spot.at)
    if begin < 0 or end < 0 or not re.search(r"one\s+of\s*\Z", spot.text[:begin]):
        return None
    inner = spot.text[begin + 1 : end]
    if '"' not in inner:
        return None
    for found in re.finditer(r'"[^"\n]*"|[^,"\s][^,"\n]*[^,"\s]', inner):
        start = begin + 1 + found.start()
        if start <= spot.at < start + len(found.group()) and found.group()[0] != '"':
            return misfits.text_without_quotes(spot.span(start, start + len(found.group())), found.group())
    return None


def best_slip(spot: Spot, head: str) -> Problem | None:
    """`keep those best 3` and `pick best 3` in a round."""
    found = _BEST.search(spot.text, max(0, spot.at - 40)) if head == "round" else None
    if found is None or not found.start() <= spot.at <= found.end():
        return None
    return say.in_other_words(
        spot.span(found.start(), found.end()),
        " ".join(found.group().split()),
        f"pick {found.group(1)} by highest score",
    )


def grade_slip(spot: Spot, head: str) -> Problem | None:
    """`with grade keep` in a round, without `is`."""
    found = _GRADE.search(spot.text, max(0, spot.at - 20)) if head == "round" else None
    if found is None or not found.start() <= spot.at <= found.end():
        return None
    name = found.group(1)
    return say.in_other_words(spot.span(found.start(), found.end()), f"grade {name}", f"grade is {name}")


RULES = (
    doubled_slip,
    each_slip,
    edition_slip,
    score_unit_slip,
    of_several_slip,
    batch_slip,
    limit_slip,
    otherwise_slip,
    listed_texts_slip,
    about_slip,
    negation_slip,
    no_slip,
    left_side_slip,
    name_slip,
    title_slip,
    comma_slip,
    places_slip,
    row_slip,
    number_word_slip,
)
"""The rules of this file, in the order in which they are asked."""
