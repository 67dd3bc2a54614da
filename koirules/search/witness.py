"""One way in which what is open about a fish could be, for which a goal is surely met.

With holes in a record, a stretch of values never surely reaches a grade, since the holes leave others possible too. But if the
grade is reached throughout with the holes filled in one way, then it is possible throughout while they are open (the language,
section 5, Sound). This finds such a way, trait by trait, or does without: what is told then is less, and never wrong.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping

from koirules.candidates.places_to_move import every_telling_value
from koirules.search.best_first import Reach
from koirules.standard.cuts import Cuts
from koirules.vocabulary.readings import Reading, anything, is_sure
from koirules.vocabulary.traits import Trait


def witness(
    record: Mapping[str, Reading],
    traits: Mapping[str, Trait],
    cuts: Mapping[str, Cuts],
    asked: Collection[str],
    possible: Callable[[Mapping[str, Reading | None]], int],
    goal: Reach,
) -> Mapping[str, Reading]:
    """The record with what is open filled in, as far as a goal that it can reach is kept in reach."""
    filled = dict(record)
    for name, cut in cuts.items():
        if goal.must(possible(filled)):
            break
        trait = traits[name]
        if (name in asked and name not in record) or (name in record and is_sure(trait.kind, record[name])):
            continue
        reading = record.get(name, anything(trait.kind))
        tried = ({**filled, name: value} for value in every_telling_value(trait, reading, cut))
        filled = next((one for one in tried if goal.met(possible(one))), filled)
    return filled
