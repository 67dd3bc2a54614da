"""The traits that a fish of two editions has, and where either edition turns in them."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from attrs import evolve

from koirules.analysis.diff.common_kinds import joint_kind
from koirules.analysis.diff.following import Follows
from koirules.analysis.diff.unlike import settings_of
from koirules.grading.single import Grader
from koirules.standard.cuts import Cuts, cuts_of, even_cuts
from koirules.standard.parts import Rules
from koirules.vocabulary.kinds import Kind, words_of
from koirules.vocabulary.traits import Trait


def joint_cuts(old: Grader, new: Grader) -> dict[str, Cuts]:
    """Where either edition turns, of every trait that either reads."""
    each = [cuts_of(one.rules, settings_of(one)) for one in (old, new)]
    found: dict[str, Cuts] = {}
    for name in dict.fromkeys([*each[0], *each[1]]):
        cuts = [one[name] for one in each if name in one]
        found[name] = Cuts(
            tuple(sorted({at for cut in cuts for at in cut.at})),
            any(cut.entangled for cut in cuts),
            tuple(sorted({text for cut in cuts for text in cut.texts})),
        )
    return found


def beneath(follows: Sequence[Follows], own: frozenset[str], read: Mapping[str, Cuts]) -> dict[str, Cuts]:
    """What only counts by what follows from it in the own way of each edition, with a few values to try."""
    found: dict[str, Cuts] = {}
    for one in follows:
        traits = one.grader.rules.traits
        for name in sorted(one.from_what_raw(own) - read.keys()):
            found[name] = Cuts(tuple(even_cuts(traits[name].kind)), entangled=True)
    return found


def joint_traits(old: Rules, new: Rules, names: Iterable[str]) -> tuple[dict[str, Trait], tuple[str, ...]]:
    """Traits with what both editions can read of them, and those of which that is nothing."""
    traits: dict[str, Trait] = {}
    apart: list[str] = []
    for name in names:
        one, other = old.traits.get(name), new.traits.get(name)
        trait = other if one is None else one
        if trait is None:
            raise AssertionError("a trait that is read and not known")
        if one is not None and other is not None and one.kind != other.kind:
            kind = joint_kind(one.kind, other.kind)
            if kind is None:
                apart.append(name)
            else:
                trait = evolve(trait, kind=kind)
        traits[name] = trait
    return traits, tuple(apart)


def differing(old: Rules, new: Rules, traits: Mapping[str, Trait]) -> set[str]:
    """The traits whose words are others in the two editions."""
    return {
        name
        for name in traits
        if name in old.traits
        and name in new.traits
        and words_of(old.traits[name].kind) != words_of(new.traits[name].kind)
    }


def places_in(joint: Kind, own: Kind) -> tuple[int, ...]:
    """The place of each word of a kind in that of an edition."""
    known = words_of(own)
    return tuple(known.index(word) for word in words_of(joint) if word in known)
