"""The varieties that are there, and the skins that lie over them: ginrin over showa, doitsu over kohaku."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from attrs import field

from koirules.values import frozen
from koirules.vocabulary.joining import steps_like_traits
from koirules.vocabulary.measures import outputs_of
from koirules.vocabulary.subject import ITEM
from koirules.vocabulary.traits import Variety


@frozen
class Varieties(Mapping[str, Variety]):
    """The varieties by the word after `variety`, and the skins by the word after `with`.

    shared: what `any variety` has: the traits that are no one variety's own. None where there are none.
    """

    plain: Mapping[str, Variety] = field(hash=False)
    skins: Mapping[str, Variety] = field(factory=dict, hash=False)
    shared: Variety | None = field(default=None, hash=False)

    def __getitem__(self, name: str) -> Variety:
        return self.plain[name]

    def __iter__(self) -> Iterator[str]:
        return iter(self.plain)

    def __len__(self) -> int:
        return len(self.plain)


ANY_VARIETY = "any variety"
"""How a header says that a standard is for all varieties."""


def name_with(variety: str, skins: Sequence[str]) -> str:
    """A variety with its skins as a header has it: `showa with ginrin`, `showa with (ginrin, doitsu)`."""
    return f"{variety} with {names_together(skins)}" if skins else variety


def names_together(names: Sequence[str]) -> str:
    """Names as a header has them: one alone, several in a bracket."""
    return names[0] if len(names) == 1 else f"({', '.join(names)})"


def lay_over(under: Variety, skin: Variety, name: str) -> Variety:
    """A variety with a skin over it; what both have alike is there once.

    A doitsu kohaku is still a kohaku: the traits of the variety come first. Ask `clashes` before.
    """
    traits = {**under.traits, **skin.traits}
    measures = tuple(dict.fromkeys((*under.measures, *skin.measures)))
    constants = tuple(dict.fromkeys((*under.constants, *skin.constants)))
    title, describe = f"{under.title}, {skin.title}", under.describe or skin.describe
    phrases = {**skin.phrases, **under.phrases}
    sayings = tuple(dict.fromkeys((*under.sayings, *skin.sayings)))
    subject = skin.subject if under.subject == ITEM else under.subject
    return Variety(
        name, title, traits, describe, measures, constants, phrases=phrases, sayings=sayings, subject=subject
    )


def clashes(under: Variety, skin: Variety) -> Iterator[str]:
    """What keeps a skin from lying over a variety, each as the end of a sentence.

    A trait that comes from a vocabulary that both include is the same trait and no clash.
    """
    for trait in skin.traits.values():
        if trait.name in under.traits and under.traits[trait.name] != trait:
            yield f'both have a trait "{trait.name}", each with a meaning of its own'
    given = {name: measure for measure in under.measures for name in outputs_of(measure)}
    for measure in skin.measures:
        for name in outputs_of(measure):
            if given.get(name, measure) != measure:
                yield f'both measure "{name}", each in a way of its own'
    constants = {constant.name: constant for constant in under.constants}
    for constant in skin.constants:
        if constants.get(constant.name, constant) != constant:
            yield f'both have a constant "{constant.name}", each with a value of its own'
    together = Variety("", "", {**under.traits, **skin.traits})
    apart = {(trait.name, word) for one in (under, skin) for trait, word in steps_like_traits(one)}
    for trait, word in steps_like_traits(together):
        if (trait.name, word) not in apart:
            yield f'"{word}" is a word of the trait "{trait.name}" of one and the name of a trait of the other'
