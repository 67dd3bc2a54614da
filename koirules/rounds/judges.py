"""What several judges recorded of one fish, put together trait by trait: what the panel says, and what it could still say."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from typing import TypeVar, assert_never

from koirules.meaning.panels import in_the_middle, majority, most_named, steps_in_the_middle
from koirules.standard.parts import Panel, Rules
from koirules.standard.reading_nodes import written_key
from koirules.vocabulary.kinds import (
    Choice,
    Colours,
    Count,
    Kind,
    Label,
    Number,
    Patches,
    Places,
    Scale,
    YesNo,
    words_of,
)
from koirules.vocabulary.readings import PlaceSet, Reading, Span, anything

_R = TypeVar("_R", PlaceSet, Span, int)


def readings_together(rules: Rules, panel: Panel, seats: Sequence[Mapping[str, Reading]]) -> dict[str, Reading]:
    """What a panel says of each trait, and of what was written of those that silence means something of."""
    keys = {key: None for readings in seats for key in readings}
    traits = {name: name for name in rules.traits} | {written_key(name): name for name in rules.silence}
    found: dict[str, Reading] = {}
    for key in keys:
        if key not in traits:
            continue
        said = [readings.get(key) for readings in seats]
        reading = reading_together(rules.traits[traits[key]].kind, said, panel)
        if reading is not None:
            found[key] = reading
    return found


def reading_together(kind: Kind, said: Sequence[Reading | None], panel: Panel) -> Reading | None:
    """What a panel says of a trait. said: the reading of each judge, None where there is none, which could be anything.

    None for a text, a map or colours of which nothing is sure.
    """
    whole = anything(kind)
    found: Reading | None
    match kind:
        case Number() | Count():
            ends = [one if isinstance(one, Span) else Span(*_any(whole, Span)) for one in said]
            found = Span(*in_the_middle(ends, panel.middle, halfway=isinstance(kind, Number)))
        case Scale():
            steps = [one if isinstance(one, int) else _any(whole, int) for one in said]
            found = steps_in_the_middle(steps, len(words_of(kind)), panel.middle)
        case Choice() | YesNo():
            found = most_named([one if isinstance(one, int) else _any(whole, int) for one in said], len(words_of(kind)))
        case Places(places):
            sets = [one if isinstance(one, PlaceSet) else _any(whole, PlaceSet) for one in said]
            found = _places(sets, len(places), panel.named_by)
        case Label():
            found = _text(said)
        case Patches() | Colours():
            found = said[0] if all(one == said[0] for one in said) else None
        case _:
            assert_never(kind)
    return found


def _any(whole: object, kind: type[_R]) -> _R:
    if not isinstance(whole, kind):
        raise AssertionError("a reading of another kind")
    return whole


def _places(said: Sequence[PlaceSet], places: int, named_by: int | None) -> PlaceSet:
    if len(said) == 1:
        return said[0]
    sure = possible = 0
    for place in range(places):
        bit = 1 << place
        surely, possibly = majority([(bool(one.sure & bit), bool(one.possible & bit)) for one in said], named_by)
        sure |= bit * surely
        possible |= bit * possibly
    return PlaceSet(sure, possible)


def _text(said: Sequence[Reading | None]) -> str | None:
    """The text that is surely written most often, whatever a judge who wrote none would write."""
    counted = Counter(one for one in said if isinstance(one, str)).most_common(2)
    if not counted:
        return None
    silent = sum(not isinstance(one, str) for one in said)
    others = counted[1][1] if len(counted) > 1 else 0
    text, times = counted[0]
    return text if times > others + silent else None
