"""Draws whole batches: fish that share values, looks before, and what a person decided."""

from __future__ import annotations

from random import Random

from attrs import frozen
from hypothesis import strategies as st

from tests.judge import model as m
from tests.judge.batch import Looked
from tests.judge.drawn_records import drawn_record
from tests.judge.scope import Draw


@frozen
class Batch:
    """Fish in the order of the latest look at each; grades and rounds by hand, by their places."""

    fish: tuple[Looked, ...]
    grades_by_hand: dict[int, str]
    kept_by_hand: dict[str, frozenset[int]]


@st.composite
def drawn_batch(draw: Draw, standard: m.Standard, most: int = 9) -> Batch:
    models = [draw(drawn_record(standard)) for _ in range(draw(st.integers(1, 4)))]
    count = draw(st.sampled_from([*range(most, -1, -1)]))
    holes = draw(st.sampled_from((50, 25, 80) if standard.silence else (5, 0, 25)))
    chance = Random(draw(st.integers(0, 2**32)))
    fish = tuple(mixed_looks(chance, standard, models, holes) for _ in range(count))
    return Batch(fish, *decided(chance, standard, count)) if draw(st.booleans()) else Batch(fish, {}, {})


def mixed_looks(chance: Random, standard: m.Standard, models: list[dict[str, object]], holes: int) -> Looked:
    before = mixed(chance, standard, models, holes) if chance.random() < 0.6 else None
    return Looked(mixed(chance, standard, models, holes), before)


def mixed(chance: Random, standard: m.Standard, models: list[dict[str, object]], holes: int) -> dict[str, object]:
    """A fish that has each value from one of the models, so that many fish have much in common."""
    if chance.random() < 0.2:
        return chance.choice(models)
    record: dict[str, object] = {}
    for trait in standard.traits:
        model = chance.choice(models)
        if trait.name in model and chance.randrange(100) >= holes:
            record[trait.name] = model[trait.name]
    return record


def decided(chance: Random, standard: m.Standard, count: int) -> tuple[dict[int, str], dict[str, frozenset[int]]]:
    names = [each.name for each in standard.grades]
    grades = {fish: chance.choice(names) for fish in range(count) if chance.random() < 0.15}
    kept = {}
    for each in standard.rounds:
        # As many as may be rescued, and as many more as may take places of a tie.
        some = chance.sample(range(count), min(count, chance.randint(0, each.rescues + 2 * bool(each.keys))))
        if some:
            kept[each.name] = frozenset(some)
    return grades, kept
