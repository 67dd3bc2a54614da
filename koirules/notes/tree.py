"""The tree of the words that phrases are made of, and what ends at each of its nodes."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from types import MappingProxyType
from typing import Any

from attrs import evolve

from koirules.standard.parts import Said, Stated
from koirules.values import define, frozen
from koirules.vocabulary.kinds import Choice, Count, Kind, Label, Number, Places, Scale, YesNo
from koirules.vocabulary.readings import NO, YES, PlaceSet, Span
from koirules.vocabulary.traits import Trait


def words_of_line(text: str) -> frozenset[str]:
    """The words of a line, with spaces between them."""
    return frozenset(text.split())


SKIPPED = words_of_line(
    "a an the is are was were be been has have it its this that these those there here with of all also just very "
    "really quite rather pretty so too well oh ah hm hmm ok okay now still nice nicely lovely beautiful definitely "
    "clearly simply only real little bit slightly somewhat fish my for me and but i see got having shows show showing "
    "looks look sit sits which yes yeah deal has can covered covers by completely fully entirely visible present "
    "plainly there already again overall basically enough after though honestly frankly please far see indeed "
    "actually anyway truly absolutely certainly today she he her him his they them their we us you mind yet "
    "everything everybody everyone am beautifully wonderfully properly remarkably unusually gorgeously delightfully "
    "noticeably distinctly decidedly markedly visibly awfully dreadfully terribly extremely incredibly exceptionally "
    "unbelievably evidently obviously undeniably unmistakably seriously horribly pleasantly suspiciously worryingly "
    "unfortunately painfully hopelessly disappointingly impressively oddly strikingly amazingly astonishingly fantastically "
    "ridiculously stunningly strangely sadly annoyingly hugely immensely massively tremendously thankfully fortunately "
    "frightfully ghastly shockingly alarmingly insanely outrageously splendidly marvellously superbly"
)
"""Words that may stand inside of a phrase or beside it, and say nothing."""

INSIDE = SKIPPED - words_of_line(
    "but and all also so too then well just only me for after enough again though anyway please see today far"
)
"""Those of them that may stand inside of a phrase: `but` begins another one."""


ARTICLES = frozenset({"a", "an", "the", "is", "are", "of", "one's"})
"""Words that phrases are compared without."""

ALIKE = dict.fromkeys(("in", "at", "over", "across", "upon", "onto"), "on")
ALIKE |= {"her": "its", "his": "its", "their": "its"}
ALIKE |= {"otsutsu": "ozutsu", "odutsu": "ozutsu", "kuchi": "mouth", "uroko": "scale", "hige": "barbel", "era": "gill"}
ALIKE |= {"hara": "belly", "atama": "head", "sebire": "dorsal", "mesu": "female", "osu": "male"}
ALIKE |= {
    "aka": "hi",
    "hoho": "cheek",
    "hoppe": "cheek",
    "munabire": "pectoral",
    "te": "pectoral",
    "paddle": "pectoral",
    "obire": "tail",
}
ALIKE |= {"himself": "itself", "herself": "itself", "themselves": "itself"}
ALIKE |= {"zumi": "sumi", "ondome": "odome", "red": "hi", "beni": "hi", "reds": "hi"}
"""Words that people use for one another: of place, of whose it is, of the trade, and for the red."""


@frozen
class Means:
    """What words say. wording: as they are written where they come from. own: whether the page says so.

    denied: what `no` before them says, where that is more than the opposite of what they say. place: of a pattern, its
    place among the patterns; 0 of what is written out, which goes before them. after: traits of which the remark before has
    to speak, where there is one.
    """

    wording: str
    stated: tuple[Stated, ...]
    own: bool = False
    denied: tuple[Stated, ...] = ()
    place: int = 0
    after: tuple[str, ...] = ()


_NOTHING: Mapping[str, int] = MappingProxyType({})


_NOWHERE: dict[str, Any] = {}
"""Shared by the nodes behind which nothing comes: most of them, and each dict of its own costs the collector time."""


@define(eq=False)
class Node:
    """The words that a phrase can begin with, and what they are where they end.

    names: traits that are called so. beside: those that are where a level stands beside it. levels: what they say
    of a trait whose name stands beside them. sides: the places, as bits, of a level that leaves open which side it means.
    joins: where a pattern goes on behind a choice that ends here. praised: traits of which a level is said here by a word
    for anything, so that another trait of that name may go before them.
    """

    after: dict[str, Node] = _NOWHERE
    joins: tuple[Node, ...] = ()
    means: Means | None = None
    names: tuple[str, ...] = ()
    beside: tuple[str, ...] = ()
    levels: Mapping[str, Said] = _NOTHING
    sides: Mapping[str, int] = _NOTHING
    praised: frozenset[str] = frozenset()
    wording: str = ""
    reached: tuple[Node, ...] = ()

    def behind(self, word: str) -> Node:
        """The node behind a word, a new one where there is none yet."""
        found = self.after.get(word)
        if found is None:
            if self.after is _NOWHERE:
                self.after = {}
            self.after[word] = found = Node()
        return found

    @property
    def says(self) -> bool:
        """Whether anything ends here."""
        return self.means is not None or bool(self.names or self.beside or self.levels)

    @property
    def within(self) -> tuple[Node, ...]:
        """This one, and those where patterns go on from here; asked for at each word of each remark, so kept."""
        if not self.reached:
            found = {id(self): self} | {id(one): one for join in self.joins for one in join.within}
            self.reached = tuple(found.values())
        return self.reached


def as_one(nodes: Sequence[Node], said: Sequence[str]) -> Node | None:
    """What ends at several nodes that the same words lead to, as one; None where nothing does."""
    saying = [node for node in nodes if node.says]
    if not saying:
        return None
    if len(saying) == 1 and saying[0].wording:
        return saying[0]
    means = min((each.means for each in saying if each.means), key=lambda one: (not one.own, one.place), default=None)
    wording = next((each.wording for each in saying if each.wording), " ".join(said))
    if means is not None and means.place:
        means = evolve(means, wording=wording)
    return Node(
        means=means,
        names=tuple(dict.fromkeys(name for each in saying for name in each.names)),
        beside=tuple(dict.fromkeys(name for each in saying for name in each.beside)),
        levels={trait: level for each in reversed(saying) for trait, level in each.levels.items()},
        sides={trait: bits for each in reversed(saying) for trait, bits in each.sides.items()},
        praised=frozenset(key for each in saying for key in each.praised),
        wording=wording,
    )


def alike(token: str) -> str:
    """A token as phrases are compared: one word for those that people use for one another."""
    return ALIKE.get(token, token)


def compared(tokens: Iterable[str]) -> tuple[str, ...]:
    """Tokens as phrases are compared, without what says nothing."""
    return tuple(alike(token) for token in tokens if token not in ARTICLES)


_THE_FISH = frozenset({"it", "she", "he", "her", "him", "them", "this", "that"})


def bare(tokens: tuple[str, ...]) -> tuple[str, ...]:
    """Tokens without the fish and without words that say nothing."""
    pairs = zip(("", *tokens), tokens, strict=False)
    return tuple(
        token
        for before, token in pairs
        if token not in SKIPPED
        and token not in _THE_FISH
        and not (token in {"1", "one"} and before in {"this", "that"})
    )


APART = "#"


def trait_of(key: str) -> str:
    """The trait of a name or level: those that are said apart have a number behind it."""
    return key.partition(APART)[0]


def denied(stated: Sequence[Stated], traits: Mapping[str, Trait]) -> tuple[Stated, ...]:
    """The opposite of what goes along with a trait, where it has one."""
    opposites = ((one.trait, opposite_of(traits[one.trait].kind, one.said)) for one in stated)
    return tuple(Stated(trait, said) for trait, said in opposites if said is not None)


def opposite_of(kind: Kind, said: Said) -> Said | None:
    """What `not` before a level or a place says.

    Of the upper half of a scale, what lies below the level; of its lower half, what lies above it. None where it says nothing.
    """
    match kind, said:
        case Scale(steps), int(bits) if bits.bit_count() == 1:
            at, every = bits.bit_length() - 1, (1 << len(steps)) - 1
            return (bits - 1 if at * 2 >= len(steps) else every & ~(bits | (bits - 1))) or None
        case Choice(), int(bits):
            return None
        case YesNo(), int(bits) if bits in {NO, YES}:
            return NO + YES - bits
        case Places(), PlaceSet(sure, possible) if sure and sure != possible:
            free = possible & ~sure
            return PlaceSet(0, free, 0, free.bit_count())
        case _:
            return None


def noted_at_least(kind: Kind) -> Said | None:
    """What the name of a trait alone says of it: that there is some."""
    match kind:
        case YesNo():
            return YES
        case Count(high):
            return Span(1.0, float(high))
        case Places():
            every = PlaceSet.any_of(kind)
            return PlaceSet(0, every.possible, 1, every.most)
        case _:
            return None


def none_of(kind: Kind) -> Said | None:
    """What `no` before the name of a trait says of it."""
    match kind:
        case YesNo():
            return NO
        case Count():
            return Span(0.0, 0.0)
        case Places():
            return PlaceSet.exactly(0)
        case Scale(steps) if "none" in steps:
            return 1 << steps.index("none")
        case _:
            return None


def takes_number(kind: Kind) -> bool:
    """Whether a number can stand beside the name of a trait."""
    return isinstance(kind, Number | Count)


def is_text(kind: Kind) -> bool:
    """Whether a trait takes any text."""
    return isinstance(kind, Label)
