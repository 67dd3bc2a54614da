"""The answers that a trait can be given, as far as they differ for a standard."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import islice

from koirules.standard.cuts import Cuts
from koirules.values import frozen
from koirules.vocabulary.colour_readings import ColourReadings, ColourSpace
from koirules.vocabulary.kinds import Choice, Colours, Count, Label, Number, Patches, Places, Scale, YesNo, words_of
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.readings import PlaceSet, Reading, Span, words_in, write_number
from koirules.vocabulary.traits import Trait

MILLION = 1_000_000
_MOST_SETS = 16


@frozen
class Answer:
    """One answer, or a stretch of answers between which the standard sees no threshold and no knot.

    reading: any of them. words: in plain words, `at least 3 %`. share: its part of the trait's range, exactly, all together 1.
    """

    reading: Reading
    words: str
    share: Fraction


def answers_to(trait: Trait, cuts: Cuts) -> tuple[Answer, ...]:
    """The answers of a trait: steps and options, yes and no, stretches of a number, the empty and each single place."""
    kind = trait.kind
    match kind:
        case Number() | Count():
            return _stretches(kind, cuts)
        case Scale() | Choice() | YesNo():
            words = words_of(kind)
            return tuple(Answer(1 << i, word, Fraction(1, len(words))) for i, word in enumerate(words))
        case Places(places):
            # Most fish show a mark in no place or in one; all sets would be too many to try, so all places stand for them.
            share = Fraction(1, len(places) + 2)
            single = [Answer(PlaceSet(1 << i, 1 << i), place, share) for i, place in enumerate(places)]
            whole = (1 << len(places)) - 1
            several = [Answer(PlaceSet(whole, whole), "all of them", share)] if len(places) > 1 else []
            return (Answer(PlaceSet(0, 0), "none", share), *single, *several)
        case Label():
            share = Fraction(1, len(cuts.texts) + 1)
            # A text that no rule can hold, since texts of rules have no line break.
            other = Answer("\n", "anything else", share)
            return (*(Answer(text, f'"{text}"', share) for text in cuts.texts), other)
        case Patches():
            # Rules read what is measured on a map, and of the map itself only whether it was recorded.
            return (Answer(PatchMap(), "a map", Fraction(1)),)
        case Colours():
            return (Answer(ColourReadings(ColourSpace.LAB, ((50.0, 0.0, 0.0),)), "colour readings", Fraction(1)),)


def answer_words(trait: Trait, answers: Sequence[Answer]) -> str:
    """Several answers of a trait in words; stretches that lie beside each other as one."""
    kind = trait.kind
    if not isinstance(kind, Number | Count):
        return " or ".join(answer.words for answer in answers)
    low, high = _range(kind)
    step = MILLION if isinstance(kind, Count) else 1
    runs: list[list[int]] = []
    for answer in answers:
        if not isinstance(answer.reading, Span):
            raise AssertionError("a number with an answer that is none")
        begin, end = (round(edge * MILLION) for edge in answer.reading)
        if runs and runs[-1][1] + step == begin:
            runs[-1][1] = end
        else:
            runs.append([begin, end])
    return " or ".join(_words(kind, begin, end, low, high) for begin, end in runs)


def answers_left(answers: Sequence[Answer], trait: Trait, reading: Reading) -> Sequence[Answer]:
    """The answers that a reading leaves possible; of places of which none of them is left, the sets that it means."""
    left = [one for answer in answers if (one := within(answer, reading)) is not None]
    if not left and isinstance(reading, PlaceSet):
        sets = list(islice(reading.sets, _MOST_SETS))
        words = (" and ".join(words_in(trait.kind, bits)) for bits in sets)
        return [
            Answer(PlaceSet(bits, bits), each, Fraction(1, len(sets))) for bits, each in zip(sets, words, strict=True)
        ]
    return left


def within(answer: Answer, reading: Reading) -> Answer | None:
    """The part of an answer that a reading leaves possible, None where it leaves nothing; its share as it was."""
    match answer.reading, reading:
        case Span(low, high), Span(least, most):
            low, high = max(low, least), min(high, most)
            return Answer(Span(low, high), answer.words, answer.share) if low <= high else None
        case PlaceSet(), PlaceSet():
            return answer if reading.holds(answer.reading) else None
        case int(bits), int(possible):
            return answer if bits & possible else None
        case _:
            return answer if answer.reading == reading else None


def _range(kind: Number | Count) -> tuple[int, int]:
    """The range of a number or count in millionths of the held unit."""
    if isinstance(kind, Count):
        return 0, kind.high * MILLION
    return round(float(kind.held_low) * MILLION), round(float(kind.held_high) * MILLION)


def _stretches(kind: Number | Count, cuts: Cuts) -> tuple[Answer, ...]:
    step = MILLION if isinstance(kind, Count) else 1
    low, high = _range(kind)
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
            Fraction(end - begin + step, whole),
        )
        for begin, end in zip(begins, ends, strict=True)
    )


def _words(kind: Number | Count, begin: int, end: int, low: int, high: int) -> str:
    first, last = write_number(begin / MILLION, kind), write_number(end / MILLION, kind)
    if begin == end:
        return first
    if begin == low and end == high:
        return "any"
    if isinstance(kind, Count):
        return f"at least {first}" if end == high else f"at most {last}" if begin == low else f"{first} to {last}"
    # A stretch that begins a millionth after a round value begins above it; one that ends at a round value holds it.
    above, within = begin % 10 == 1, end % 10 == 0
    lower = f"above {write_number((begin - 1) / MILLION, kind)}" if above else f"at least {first}"
    upper = f"at most {last}" if within else f"below {write_number((end + 1) / MILLION, kind)}"
    if begin == low:
        return upper
    return lower if end == high else f"{lower} and {upper}"
