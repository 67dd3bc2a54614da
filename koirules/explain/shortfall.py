"""What is missing for a condition to hold: its parts that do not, with how far each number is from it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

from koirules.explain.plain_words import PlainWords
from koirules.languages import to_say
from koirules.meaning import operators as ops
from koirules.meaning.operators import Nature
from koirules.standard.reading_nodes import trait_of, unit_shown, unrounded
from koirules.standard.tree import Apply, Constant, GradeRead, Node, ScoreRead, SettingRead, walk
from koirules.standard.types import Numeric, Steps, Truth
from koirules.values import frozen

_ORDERED = Nature.COMPARES_NUMBERS | Nature.ORDERS


@frozen
class Shortfall:
    """A part of a condition that does not surely hold. words: what it asks for, or what is missing. told: as a reason."""

    words: str
    told: str


def shortfalls(condition: Node, plain: PlainWords, value_of: Callable[[Node], Any]) -> Iterator[Shortfall]:
    """Each part of a condition joined by `and` that does not surely hold, in words: `body is 15.71, 0.29 short of 16`.

    plain: says the words of the rule file and the numbers. value_of: what a node comes to for the fish, both ends.
    """
    for part in _joined(condition):
        surely, possibly = value_of(part)
        if surely:
            continue
        words = plain.told(part.place)
        if possibly:
            yield Shortfall(words, plain.tongue("{words} (not settled)", words=words))
        else:
            told = _gap(part, plain, value_of) or _other_word(part, plain, value_of)
            told = told or plain.tongue("not met: {words}", words=words)
            yield Shortfall(told, told)


def fails_on_score(condition: Node, value_of: Callable[[Node], Any]) -> bool:
    """Whether a part of a condition that reads the score itself is among those that do not surely hold."""
    return any(
        isinstance(node, ScoreRead) for part in _joined(condition) if not value_of(part)[0] for node in walk(part)
    )


def _joined(node: Node) -> Iterator[Node]:
    if isinstance(node, Apply) and node.operation is ops.ALL_OF:
        for operand in node.operands:
            yield from _joined(operand)
    else:
        yield node


def _gap(node: Node, plain: PlainWords, value_of: Callable[[Node], Any]) -> str | None:
    """How much is missing, or too much, in a comparison of a number with a known one: `the score is 67.54, 8.46 below 76`."""
    if not isinstance(node, Apply) or _ORDERED not in node.operation.nature:
        return None
    left, right = (unrounded(operand) for operand in node.operands)
    # `at most` and `below` are `at least` and `above` with their sides turned round.
    turned = isinstance(left, Constant | SettingRead)
    if turned == isinstance(right, Constant | SettingRead):
        return None
    read = right if turned else left
    kind = read.type
    if not isinstance(kind, Numeric):
        return None
    low, high = value_of(read)
    ends = [value_of(operand) for operand in node.operands]
    distance = abs(ends[1][0] - ends[0][1]) / 1_000_000
    unit = unit_shown(read)
    nearest = low if turned else high
    known = value_of(left if turned else right)[0]
    line, nearest_told = plain.exactly(known, kind, unit), plain.number(nearest, kind, unit, known)
    if low != high:
        nearest_told = plain.tongue(
            to_say("at least {value}") if turned else to_say("at most {value}"), value=nearest_told
        )
    has = plain.tongue("{title} is {value}", title=plain.told(read.place), value=nearest_told)
    if distance == 0:
        must = to_say("{has}, and must be below it") if turned else to_say("{has}, and must be above it")
        return plain.tongue(must, has=has)
    far = to_say("{has}, {distance} over {line}") if turned else to_say("{has}, {distance} short of {line}")
    return plain.tongue(far, has=has, distance=plain.number(distance, kind, unit), line=line)


def _other_word(node: Node, plain: PlainWords, value_of: Callable[[Node], Any]) -> str | None:
    """What a scale, choice or yes-or-no is that should be another: `spine is slight, not straight`."""
    if not isinstance(node, Apply) or not node.operands:
        return None
    read = next((one for one in node.operands if trait_of(one) or isinstance(one, GradeRead)), None)
    name, words = ("", "") if read is None else (plain.told(read.place), plain.told(node.place))
    if read is None or not isinstance(read.type, Steps | Truth) or not name:
        return None
    if plain.language is not None:
        has = plain.tongue("{title} is {value}", title=name, value=plain.both_ends(read, value_of(read)))
        return plain.tongue("{has}; asked for: {words}", has=has, words=words)
    if not words.startswith(f"{name} "):
        return None
    asked = words.removeprefix(f"{name} ").removeprefix("is ").removeprefix("one of ")
    return f"{name} is {plain.both_ends(read, value_of(read))}, not {asked}".replace(
        ", not not ", ", which it must not be: "
    )
