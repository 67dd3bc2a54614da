"""A rule file that names everything a variety has: each trait, each step, each place."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import assert_never

from koirules.values import frozen
from koirules.vocabulary.kinds import Choice, Colours, Count, Label, Number, Patches, Places, Scale, YesNo, shortest
from koirules.vocabulary.traits import Trait, Variety


@frozen
class WholeRules:
    """The text, and the trait that each of its lines is about, by the number of the line."""

    text: str
    lines: dict[int, str]


def whole_rules(variety: Variety) -> WholeRules:
    """A standard in which every trait counts: two grades, one section, a criterion or some bonuses for each trait."""
    written = [f'standard "everything {variety.name} has" edition 1 variety {variety.name}', "section all worth 100"]
    lines: dict[int, str] = {}
    for number, trait in enumerate(variety.traits.values()):
        for statement in _statements(trait, number):
            written.append(statement)
            lines[len(written)] = trait.name
    if any(not isinstance(trait.kind, Label) for trait in variety.traits.values()):
        written += ["grade keep if score at least 50", "grade cull otherwise"]
    else:
        # Without a criterion that gives points there is no section, and labels give none.
        written[1:] = [f"grade keep if {name} is recorded" for name in list(variety.traits)[:1]]
        written += ["grade cull otherwise"]
        lines = {}
    return WholeRules("\n".join(written) + "\n", lines)


def _statements(trait: Trait, number: int) -> Iterator[str]:
    name, kind = trait.name, trait.kind
    match kind:
        case YesNo():
            yield f"points p{number} by {name}: {_table(('no', 'yes'))}"
        case Scale(words) | Choice(words):
            yield f"points p{number} by {name}: {_table(words)}"
            yield f"bonus b{number} 1 if {name} is {words[-1]}"
        case Places(places):
            yield f"points p{number} by count of {name}: 0 gives 0, {len(places)} gives 10"
            for position, place in enumerate(places):
                yield f"penalty m{number}_{position} 0.1 if {name} includes {place}"
        case Count(high):
            yield f"points p{number} by {name}: 0 gives 0, {high} gives 10"
            yield f"fault f{number} if {name} is {high}: no better than cull"
        case Number(unit, low, high):
            behind = "" if unit is None else f" {unit.symbol}"
            yield f"points p{number} by {name}: {shortest(low)}{behind} gives 0, {shortest(high)}{behind} gives 10"
            yield f"penalty m{number} 1 if {name} below {shortest(high)}{behind}"
        case Label():
            yield f'bonus b{number} 1 if {name} is "mill pond"'
        case Patches() | Colours():
            yield f"bonus b{number} 1 if {name} is recorded"
        case _:
            assert_never(kind)


def _table(words: Sequence[str]) -> str:
    return ", ".join(f"{word} gives {position}" for position, word in enumerate(words))
