"""Parts of a fish and of its pattern, as they are named behind what is said of them: `on the last patch`, `all round`."""

from __future__ import annotations

import re
from collections.abc import Collection, Sequence

from koirules.notes.numbers import number_at
from koirules.vocabulary.phrases import wordings_in
from koirules.vocabulary.wordings import tokens_of

_LEADING = frozenset({"right", "down", "up", "all", "mostly", "mainly", "especially", "particularly", "even", "just"})
_BEFORE = frozenset(
    tokens_of(
        "on at in over across of for by near round around along behind after before towards toward from under above below "
        "through beside between down inside within"
    )
)
_WHICH = frozenset(
    tokens_of(
        "the a an each every all both it its his her that this those these one either other two only very far "
        "first second third fourth fifth last next front rear back middle hind main big small long upper lower top bottom "
        "left right head tail shoulder body neck end outer inner trailing hind"
    )
)
PARTS = frozenset(
    tokens_of(
        "patch field step dan plate red hi beni side edge half end bit part quarter one place places "
        "shoulder head nape neck back body tail flank belly rear front middle dorsal stem peduncle joint saddle island white "
        "gap fish first second third fourth last left right everything it these them line her him this that "
        "pattern colour skin three four bend curve toe prong notch bay corner outside spine ridge"
    )
) | {"1", "one", "hi"}
"""Words for parts of a fish."""
PATCHES = PARTS - frozenset(
    tokens_of("head nape neck body tail belly stem peduncle joint fish white gap line her him this that")
)
"""Words for parts of what has red."""
BODY = (
    PARTS - frozenset(tokens_of("patch field step dan plate red hi beni edge saddle island white gap pattern colour"))
) | frozenset(
    tokens_of(
        "cheek nose mouth face stomach vent root tube base fin pectoral pec pelvic ventral anal gill cover plate eye line row "
        "lateral side"
    )
)
"""Where anything can be on a body, without the parts of its pattern."""
_OF_RED = frozenset(
    tokens_of(
        "patch field step dan plate red beni saddle island one first second third fourth last white everything it these them"
    )
) | {"1", "hi"}
"""What an edge is of: one of the dorsal is of a fin."""
_NEXT_TO = frozenset(tokens_of("above below under behind after near by beside between before around round towards"))
_ASIDE = (("in", "front", "of"), ("left", "of"), ("right", "of"), ("next", "to"))
"""The same in several words."""
_BESIDE = frozenset(
    tokens_of("fin gill cover plate pectoral pec eye cheek nose mouth lip nostril lateral tail belly side line")
)
"""What a part is beside; on a fin is no part of the body."""
_NUMBERED = frozenset({"step", "patch", "plate"})
_STEP_NUMBERS = frozenset("12345")
_COUNTED = frozenset({"scale", "row", "mm", "cm", "%", "g", "kg", "to", "or"})
_ORDINALS = frozenset({"first", "second", "third", "fourth", "fifth", "last"})
"""`kiwa soft second step`, as those who say little say it."""
_TO = (("the",), ("every",), ("each",), ("all",))
_HAS = frozenset({"has", "have", "got", "with", "show", "shows", "is", "are", "a"})
_THROUGHOUT = sorted(
    map(
        tokens_of,
        wordings_in(
            "all round, all around, all over, all along, all the way, all the way round, all the way down, "
            "all the way along, all the way through, all the way back, all through, throughout, everywhere, "
            "left to right, right to left, front and back, front and rear, front to back, left and right, head to tail, "
            "nose to tail, "
            "top to bottom, right through, right round, both sides, both ends, both shoulders, both flanks, either side, "
            "each side, "
            "the whole way, the whole way round, the whole way down, "
            "the whole length, along its whole length, along the whole length, one side, anywhere, "
            "right to the end, to the end, to the very end, right to the tail, all the way to the tail, all the way to the end, "
            "right down to the tail, right down to the fins, down to the fins, from head to peduncle, from nose to peduncle, "
            "from head to stem, from nose to stem, all the way down to the tail, from gill to tail, from the gills back, "
            "through and through, inside and out, up top, on top, "
            "up front, behind, further back, further along, further down, lower down, low down, "
            "going back, as you go back, as it goes back, down the back, "
            "here and there, in places, from head to tail, from nose to tail, from front to back, from end to end"
        ),
    ),
    key=len,
    reverse=True,
)


def past_part(tokens: Sequence[str], start: int, fillers: Collection[str] = (), parts: Collection[str] = PARTS) -> int:
    """The place behind a part that is named at a place, or behind fillers there; the place itself where none is."""
    at = start
    while at < len(tokens) and (end := _one_part(tokens, at, parts)) == at and tokens[at] in fillers:
        at += 1
    if at == len(tokens) or end == at:
        return start
    while end > at:
        at, end = end, _one_part(tokens, end, parts)
    return at


_OF_A_FAULT = BODY | frozenset(tokens_of("edge tip top bottom middle rim corner centre front rear base scale row ray"))
_HOW_FAR = frozenset(tokens_of("off in deep long wide across high big each out apart inside"))
_ROUGHLY = frozenset(tokens_of("about by for some only around roughly maybe another good"))
_SMALL = frozenset({"mm", "cm"})
_AT_TIMES = tuple(map(tokens_of, ("sometimes", "now and then", "at times", "all the time", "every time")))
"""A fault that shows at times is one."""
_WHICH_RAY = frozenset(
    tokens_of("first second third fourth fifth front rear last upper lower top bottom outer inner leading")
)
_RAYS = (("ray",), ("edge",), ("tip",), ("half",), ("lobe",), ("corner",), ("end",))
"""`a notch third ray`."""
_LITTLE = frozenset(tokens_of("hair touch fraction shade whisker bit little tad fingernail finger scale lot good"))
"""`short by a hair`."""


def past_where(tokens: Sequence[str], start: int) -> int:
    """The place behind what tells where a fault is and how large: `on the right side`, `left flank`, `2 mm deep`."""
    at, end = -1, start
    while end > at:
        at = end
        end = past_part(tokens, at, parts=_OF_A_FAULT)
        if end == at and tokens[at : at + 1] in {("left",), ("right",)}:
            end = past_part(tokens, at + 1, parts=_OF_A_FAULT)
            if tokens[at + 1 : at + 2] and tokens[at + 1] in BODY and end == at + 1:
                end = at + 2
            elif end == at + 1 and end < len(tokens):
                end = at
        if end == at:
            end = _past_measure(tokens, at)
        if end == at and tokens[at : at + 1] and tokens[at] in _WHICH_RAY and tokens[at + 1 : at + 2] in _RAYS:
            end = at + 2
        if end == at:
            end += max((len(words) for words in _AT_TIMES if tuple(tokens[at : at + len(words)]) == words), default=0)
        if end == at and at > start and tokens[at : at + 1] == ("only",):
            end = at + 1
    return end


def _past_measure(tokens: Sequence[str], start: int) -> int:
    at = start
    while at < len(tokens) and tokens[at] in _ROUGHLY:
        at += 1
    number = number_at(tokens, at)
    if number is not None and number.unit is None and tokens[number.end : number.end + 1] == ("ray",):
        end = number.end + 1
        return end + 3 if tuple(tokens[end : end + 2]) == ("from", "the") and len(tokens) > end + 2 else end
    if number is None or number.unit is None or number.unit.symbol not in _SMALL:
        by_little = tokens[start : start + 1] == ("by",) and len(tokens) > start + 2 and tokens[start + 2] in _LITTLE
        return start + 3 if by_little else start
    end = number.end
    return end + (end < len(tokens) and tokens[end] in _HOW_FAR)


_OF_PLACES = (_OF_A_FAULT | _BEFORE | _LEADING) - frozenset(
    tokens_of(
        "of for it these them him this that pattern colour red hi beni white gap fish three four patch step dan field plate"
    )
) | frozenset(
    tokens_of(
        "the a most mostly worst also only on exactly nearly to left right front rear upper lower top bottom far very bit little "
        "first second third last hand half both half way halfway and of one line lateral off centre"
    )
)
_NOT_OF_THE_BODY = frozenset(tokens_of("eye fin pectoral pec pelvic cheek lip mouth nose face gill cover anal ventral"))
"""Where red is a trait of its own: without a word of place before it, `left eye` is as likely said of that."""
_FROM = _BEFORE | {"to", "left", "right", "just", "mostly", "especially", "particularly"}


def is_place(tokens: Sequence[str]) -> bool:
    """Whether tokens are nothing but a place on the body: `mostly on the shoulder`, `right above the side line`, `upper half`."""
    if not tokens or not all(token in _OF_PLACES for token in tokens):
        return False
    if _NOT_OF_THE_BODY.isdisjoint(tokens):
        return not _PLACE_NAMES.isdisjoint(tokens)
    return any(token in _BEFORE for token in tokens[:3])


WITHIN_A_FIN = frozenset(
    tokens_of("upper lower top bottom half end edge tip middle centre front rear lobe third one ray the only outer")
)
"""Words for a part of one fin or the like: `upper half` behind a torn tail fin names no other fin."""
_PLACE_NAMES = (_OF_A_FAULT & _OF_PLACES) | {"upper", "lower", "top", "bottom", "front", "rear", "left", "right"}

_OBJECT = (
    r"(?:scale|pea|coin|lentil|pin|pinhead|thumbnail|fingernail|finger|thumb|fist|seed|rice|penny|button|poppy\sseed|"
    r"sesame\sseed|peppercorn|grain\sof\s(?:rice|sand)|match\shead|pin\shead)"
)
SIZE = re.compile(
    rf"""
    (?:(?:about|around|some|roughly|almost|just|only|over|under|up\sto|at\smost|no\smore\sthan|less\sthan|more\sthan|not\seven|
      all|both|each|they\sare|it\sis|is|are|by)\s)*
    (?:
      (?:\d+(?:\.\d+)?|half|a|half\sa|several|a\sfew)(?:\s(?:to|or)\s\d+(?:\.\d+)?)?
      \s(?:mm|scale|row|ray|finger|thumb|fingernail|thumbnail|eye(?=\swidth)|hand|(?<![1-9]\d\s)cm)(?:\sand\sa\shalf)?
      (?:\s(?:width|or\sso|wide|long|across|big|deep|high|in|each|in\sall|large|tall|at\smost|thick|if\sthat|round|each\sway|
        missing|at\sthe\swidest|both|all|ish|gone|off))*
    | {_OBJECT}\s(?:size|sized)(?:\sboth|\seach)?
    | (?:small|smaller|big|bigger|large|larger|(?:no|not)\sbigger|wide|wider|long|longer|tiny|as\s(?:big|large|wide|long|small))
      \s(?:than|as|like)\s(?:a\s|my\s|an\s|half\sa\s|1\s)?{_OBJECT}
    )
    """,
    re.VERBOSE,
)
"""How large something is, by a measure or by what it is like."""


def past_owner(tokens: Sequence[str], start: int) -> int:
    """The place behind a part of the red and the word that it has something: `the second patch has`, `last patch's`."""
    at = start
    while at < len(tokens) and tokens[at] in _WHICH:
        at += 1
    if at == len(tokens) or at == start or tokens[at] not in _OF_RED or tokens[at] == "it":
        return start
    at = past_part(tokens, at + 1)
    return at + (tokens[at] in _HAS) if at < len(tokens) else start


def _one_part(tokens: Sequence[str], start: int, parts: Collection[str]) -> int:
    everywhere = next((words for words in _THROUGHOUT if tuple(tokens[start : start + len(words)]) == words), ())
    end = start + len(everywhere)
    at = start
    while at < len(tokens) and tokens[at] in _LEADING:
        at += 1
    if at > start and tokens[at - 1] in _BEFORE and not (at < len(tokens) and tokens[at] in _BEFORE):
        at -= 1  # `down the left side`
    before = at
    ahead = tuple(tokens[at : at + 3]) == ("in", "front", "of")
    at += 2 * ahead
    while at < len(tokens) and (
        tokens[at] in _BEFORE or (tokens[at] == "to" and tuple(tokens[at + 1 : at + 2]) in _TO)
    ):
        at += 1
    aside = max((len(words) for words in _ASIDE if tuple(tokens[before : before + len(words)]) == words), default=0)
    at = max(at, before + aside)
    step = at + 1 < len(tokens) and tokens[at] in _ORDINALS and tokens[at + 1] in _NUMBERED
    if at == before and not step:
        return end
    if parts is _OF_A_FAULT:
        named: Collection[str] = parts
    elif ahead or aside or tokens[at - 1] in _NEXT_TO:
        named = {*parts, *_BESIDE}
    else:
        named = _OF_RED if tokens[at - 1] in {"of", "to"} else parts
    joins = {"and"} if tokens[at - 1] == "between" else frozenset()
    while at < len(tokens) and (
        tokens[at] in _WHICH or tokens[at] in PARTS or tokens[at] in named or tokens[at] in joins
    ):
        at += 1
        if tokens[at - 1] in named:
            at += tokens[at - 1] in _NUMBERED and _is_its_number(tokens, at)
            end = max(at, end)
    return end


def _is_its_number(tokens: Sequence[str], at: int) -> bool:
    """Whether the number of a step stands here, and no number of scales: `on step | 2`."""
    if at == len(tokens) or tokens[at] not in _STEP_NUMBERS:
        return False
    return at + 1 == len(tokens) or tokens[at + 1] not in _COUNTED


def past_everywhere(tokens: Sequence[str], start: int) -> int:
    """The place behind words that leave out no part; the place itself where there are none."""
    return start + max(
        (len(words) for words in _THROUGHOUT if tuple(tokens[start : start + len(words)]) == words), default=0
    )
