"""Parts of a fish and of its pattern, as they are named behind what is said of them: `on the last patch`, `all round`."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from koirules.vocabulary.phrases import wordings_in
from koirules.vocabulary.wordings import tokens_of

_LEADING = frozenset({"right", "down", "up", "mostly", "mainly", "especially", "particularly", "even", "just"})
_BEFORE = frozenset(
    tokens_of(
        "on at in over across of to for by near round around along behind before towards toward from under through beside above "
        "below"
    )
)
_WHICH = frozenset(
    tokens_of(
        "the a an each every all both it its his her that this those these one either other two only very far "
        "first second third fourth fifth last next front rear back middle hind main big small long upper lower top bottom "
        "left right head tail shoulder body neck end"
    )
)
_PARTS = frozenset(
    tokens_of(
        "patch step dan plate red hi beni side edge half end bit part quarter one "
        "shoulder head nape neck back body tail flank belly rear front middle dorsal stem peduncle joint saddle island white "
        "fish first second third fourth last left right everything it these them line her him this that"
    )
)
BODY = _PARTS | frozenset(
    tokens_of(
        "cheek nose mouth face stomach vent root tube base fin pectoral pec pelvic ventral anal gill cover plate eye line row "
        "lateral side"
    )
)
"""Where anything can be on a body, beside those of a pattern."""

_THROUGHOUT = sorted(
    map(
        tokens_of,
        wordings_in(
            "all round, all around, all over, all along, all the way, all the way round, all the way down, "
            "all the way along, all the way through, all the way back, all through, throughout, everywhere, "
            "front and back, front and rear, front to back, left and right, head to tail, nose to tail, "
            "top to bottom, right through, right round, both sides, both ends, either side, each side, "
            "the whole way, the whole length, along its whole length, along the whole length, one side, anywhere"
        ),
    ),
    key=len,
    reverse=True,
)


def past_part(tokens: Sequence[str], start: int, fillers: Collection[str] = (), parts: Collection[str] = _PARTS) -> int:
    """The place behind a part that is named at a place, or behind fillers there; the place itself where none is."""
    at = start
    while at < len(tokens) and (end := _one_part(tokens, at, parts)) == at and tokens[at] in fillers:
        at += 1
    if at == len(tokens) or end == at:
        return start
    while end > at:
        at, end = end, _one_part(tokens, end, parts)
    return at


def _one_part(tokens: Sequence[str], start: int, parts: Collection[str]) -> int:
    for words in _THROUGHOUT:
        if tuple(tokens[start : start + len(words)]) == words:
            return start + len(words)
    at = start
    while at < len(tokens) and tokens[at] in _LEADING:
        at += 1
    before = at
    while at < len(tokens) and tokens[at] in _BEFORE:
        at += 1
    if at == before:
        return start
    end = start
    while at < len(tokens) and (tokens[at] in _WHICH or tokens[at] in parts):
        at += 1
        if tokens[at - 1] in parts:
            end = at
    return end
