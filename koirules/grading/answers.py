"""The answers that a trait can be given, as far as they differ for a standard."""

from __future__ import annotations

from attrs import frozen

from koirules.standard.cuts import Cuts
from koirules.vocabulary.kinds import Choice, Count, Label, Number, Places, Scale, YesNo, words_of
from koirules.vocabulary.readings import PlaceSet, Reading, Span, write_number
from koirules.vocabulary.traits import Trait

MILLION = 1_000_000


@frozen
class Answer:
    """One answer, or a stretch of answers between which the standard sees no threshold and no knot.

    reading: any of them. words: in plain words, `at least 3 %`. share: its part of the trait's range, all together 1.
    """

    reading: Reading
    words: str
    share: float


def answers_to(trait: Trait, cuts: Cuts) -> tuple[Answer, ...]:
    """The answers of a trait: steps and options, yes and no, stretches of a number, the empty and each single place."""
    kind = trait.kind
    match kind:
        case Number() | Count():
            return _stretches(kind, cuts)
        case Scale() | Choice() | YesNo():
            words = words_of(kind)
            return tuple(Answer(1 << i, word, 1 / len(words)) for i, word in enumerate(words))
        case Places(places):
            # Most fish show a mark in no place or in one; all sets would be too many to try.
            share = 1 / (len(places) + 1)
            none = Answer(PlaceSet(0, 0), "none", share)
            return (none, *(Answer(PlaceSet(1 << i, 1 << i), place, share) for i, place in enumerate(places)))
        case Label():
            share = 1 / (len(cuts.texts) + 1)
            # A text that no rule can hold, since texts of rules have no line break.
            other = Answer("\n", "anything else", share)
            return (*(Answer(text, f'"{text}"', share) for text in cuts.texts), other)


def _stretches(kind: Number | Count, cuts: Cuts) -> tuple[Answer, ...]:
    step = MILLION if isinstance(kind, Count) else 1
    low, high = (
        (round(float(kind.held_low) * MILLION), round(float(kind.held_high) * MILLION))
        if isinstance(kind, Number)
        else (0, kind.high * MILLION)
    )
    begins = [low]
    for cut in cuts.at:
        # The first whole count, or the first millionth, that is not below the cut.
        first = -(-cut // step) * step
        if begins[-1] < first <= high:
            begins.append(first)
    ends = [begin - step for begin in begins[1:]] + [high]
    whole = high - low + step
    return tuple(
        Answer(
            Span(begin / MILLION, end / MILLION),
            _words(kind, begin, end, low, high),
            (end - begin + step) / whole,
        )
        for begin, end in zip(begins, ends, strict=True)
    )


def _words(kind: Number | Count, begin: int, end: int, low: int, high: int) -> str:
    first, last = write_number(begin / MILLION, kind), write_number(end / MILLION, kind)
    if begin == end:
        return first
    if isinstance(kind, Count):
        return f"at least {first}" if end == high and begin > low else f"{first} to {last}"
    after = write_number((end + 1) / MILLION, kind)
    if begin == low:
        return "any" if end == high else f"below {after}"
    return f"at least {first}" if end == high else f"{first} up to {after}"
