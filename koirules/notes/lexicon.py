"""The words that a standard understands in notes: phrases of the page, phrases of the vocabulary, names of traits."""

from __future__ import annotations

import gc
from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from decimal import Decimal
from functools import lru_cache
from hashlib import sha256
from types import MappingProxyType
from typing import Any

from attrs import define, evolve, field, frozen

from koirules.notes.parts import BODY, PARTS, PATCHES, past_part
from koirules.standard.check.phrasing import read_alone, read_means
from koirules.standard.parts import Rules, Said, Stated
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
from koirules.vocabulary.phrases import Choices, Sequel, Spoken, SpokenTogether, examples_of, sequel_of, wordings_in
from koirules.vocabulary.praise import as_praised
from koirules.vocabulary.readings import NO, YES, PlaceSet, Span
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.wordings import tokens_of


def _words(text: str) -> frozenset[str]:
    return frozenset(text.split())


SKIPPED = _words(
    "a an the is are was were be been has have it its this that these those there here with of all also just very "
    "really quite rather pretty so too well oh ah hm hmm ok okay now still nice nicely lovely beautiful definitely clearly "
    "simply only real little bit slightly somewhat fish my for me and but i see got having shows show showing looks look "
    "sit sits which yes yeah deal has can covered covers by completely fully entirely visible present plainly "
    "there already again overall basically enough after though honestly frankly please far see indeed actually anyway truly "
    "absolutely certainly today she he her him his they them their we us you mind yet everything everybody everyone am"
)
"""Words that may stand inside of a phrase or beside it, and say nothing."""

INSIDE = SKIPPED - _words(
    "but and all also so too then well just only me for after enough again though anyway please see today far"
)
"""Those of them that may stand inside of a phrase: `but` begins another one."""

_NICE_AND = _words("nice lovely")
"""`nice and sharp` is sharp."""

_BARE = (Decimal(8), Decimal(35))
"""Lengths in cm that a number by itself may be: below them it is as often a count of scales or patches."""

ARTICLES = frozenset({"a", "an", "the", "is", "are", "of", "one's"})
"""Words that phrases are compared without."""

_ALIKE = dict.fromkeys(("in", "at", "over", "across", "upon", "onto"), "on")
_ALIKE |= {"zumi": "sumi", "ondome": "odome", "red": "hi", "beni": "hi", "reds": "hi"}
"""Words that people use for one another: of place, and for the red."""


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


_PRAISING = frozenset({"nice", "nicely", "lovely", "beautiful"})
_MERE_PRAISE = _words("good great fine decent proper clear clean strong true typical simple")
_NOTHING: Mapping[str, int] = MappingProxyType({})


_NOWHERE: dict[str, Any] = {}
"""Shared by the nodes behind which nothing comes: most of them, and each dict of its own costs the collector time."""


@define(eq=False)
class _Node:
    """The words that a phrase can begin with, and what they are where they end.

    names: traits that are called so. beside: those that are where a level stands beside it. levels: what they say
    of a trait whose name stands beside them. sides: the places, as bits, of a level that leaves open which side it means.
    joins: where a pattern goes on behind a choice that ends here. praised: traits of which a level is said here by a word
    for anything, so that another trait of that name may go before them.
    """

    after: dict[str, _Node] = _NOWHERE
    joins: tuple[_Node, ...] = ()
    means: Means | None = None
    names: tuple[str, ...] = ()
    beside: tuple[str, ...] = ()
    levels: Mapping[str, Said] = _NOTHING
    sides: Mapping[str, int] = _NOTHING
    praised: frozenset[str] = frozenset()
    wording: str = ""
    reached: tuple[_Node, ...] = ()

    @property
    def says(self) -> bool:
        """Whether anything ends here."""
        return self.means is not None or bool(self.names or self.beside or self.levels)

    @property
    def within(self) -> tuple[_Node, ...]:
        """This one, and those where patterns go on from here; asked for at each word of each remark, so kept."""
        if not self.reached:
            found = {id(self): self} | {id(one): one for join in self.joins for one in join.within}
            self.reached = tuple(found.values())
        return self.reached


def _one(nodes: Sequence[_Node], said: Sequence[str]) -> _Node | None:
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
    return _Node(
        means=means,
        names=tuple(dict.fromkeys(name for each in saying for name in each.names)),
        beside=tuple(dict.fromkeys(name for each in saying for name in each.beside)),
        levels={trait: level for each in reversed(saying) for trait, level in each.levels.items()},
        sides={trait: bits for each in reversed(saying) for trait, bits in each.sides.items()},
        praised=frozenset(key for each in saying for key in each.praised),
        wording=wording,
    )


@frozen
class Hit:
    """A phrase or the name of traits at a place of a remark.

    end: the place behind it. whole: whether the phrase is one by itself. about: the traits that its name may stand
    for, where it is put together of a name and a level. placed: whether the name of a part stands between the two.
    """

    end: int
    means: Means | None
    names: tuple[str, ...]
    wording: str
    whole: bool = True
    about: tuple[str, ...] = ()
    placed: bool = False


def alike(token: str) -> str:
    """A token as phrases are compared: one word for those that people use for one another."""
    return _ALIKE.get(token, token)


def compared(tokens: Iterable[str]) -> tuple[str, ...]:
    """Tokens as phrases are compared, without what says nothing."""
    return tuple(alike(token) for token in tokens if token not in ARTICLES)


_NOT = frozenset({"no", "not", "without"})
_MOST_REMEMBERED = 2_000


@frozen(slots=False)
class Lexicon:
    """The phrases of a standard. seal: SHA-256 of what they say, so that a record can name what it was read by.

    implied: what goes along with any but the lowest level of a trait. of_parts: by each trait that is said
    of a part as of the whole, the words for such parts. shortest: the length in cm below which there is hardly a
    fish, at the stage of the standard or at any. lengths: the usual ones at the stage, in cm; None where it has none. bare: what
    words say where they are all that is said. anywhere: the traits of which a fault is one wherever it is.
    """

    traits: Mapping[str, Trait]
    root: _Node = field(repr=False)
    phrases: Mapping[str, Means] = field(repr=False)
    implied: Mapping[str, tuple[Stated, ...]] = field(repr=False)
    seal: str
    of_parts: Mapping[str, frozenset[str]] = field(factory=dict)
    shortest: Decimal = Decimal(0)
    lengths: tuple[Decimal, Decimal] | None = None
    bare: Mapping[tuple[str, ...], Means] = field(factory=dict, repr=False)
    anywhere: frozenset[str] = frozenset()
    _hits: dict[tuple[tuple[str, ...], int], tuple[Hit, ...]] = field(factory=dict, init=False, repr=False, eq=False)

    @classmethod
    def of(cls, rules: Rules) -> Lexicon:
        """The lexicon of a checked standard."""
        with _uncollected():
            built = _Building(rules)
        digest = sha256("\n".join(sorted(built.said)).encode()).hexdigest()
        length = rules.traits.get("length")
        usual = [] if length is None else [length.usual_at(stage) for stage in (None, rules.stage)]
        shortest = min((ends[0] for ends in usual if ends is not None), default=Decimal(0))
        known = usual[1] if usual and rules.stage else None
        lengths = None if not usual else _BARE if known is None else (max(known[0], _BARE[0]), known[1])
        spoken = [one for one in rules.sayings if isinstance(one, Spoken)]
        parts = {one.trait: PARTS if one.of_parts == "all" else PATCHES for one in spoken if one.of_parts}
        anywhere = frozenset(one.trait for one in spoken if one.anywhere)
        return cls(
            rules.traits,
            built.root,
            built.phrases,
            built.implied,
            digest,
            parts,
            shortest,
            lengths,
            built.bare,
            anywhere,
        )

    def hits(self, tokens: Sequence[str], start: int) -> Sequence[Hit]:
        """The phrases and names that begin at a place: the longest first, of equals those of the page, then names last."""
        key = (tuple(tokens), start)
        found = self._hits.get(key)
        if found is None:
            if len(self._hits) >= _MOST_REMEMBERED:
                self._hits.clear()
            self._hits[key] = found = tuple(self._hits_anew(tokens, start))
        return found

    def _hits_anew(self, tokens: Sequence[str], start: int) -> list[Hit]:
        while start < len(tokens) and tokens[start] in ARTICLES:
            start += 1
        found: list[Hit] = []
        for end, node in self._walk(tokens, start):
            if node.means is not None:
                found.append(Hit(end, node.means, (), node.means.wording))
            if node.names:
                found.append(Hit(end, None, node.names, node.wording))
            if node.names or node.beside:
                found += self._named(tokens, node, end)
            if node.levels:
                for last, level in self._with_others(tokens, end, node):
                    found += self._levelled(tokens, level, last)
        return sorted(found, key=lambda hit: (-hit.end, self._rank(hit)))

    def _rank(self, hit: Hit) -> int:
        """Of phrases of one length: the page's, one of its own, a name that says something, one put together, a mere name."""
        if hit.means is not None:
            return 0 if hit.means.own else 1 if hit.whole else 5 if hit.placed else 3
        return 2 if any(noted_at_least(self.traits[name].kind) is not None for name in hit.names) else 4

    def level(self, tokens: Sequence[str], start: int, about: Sequence[str]) -> Hit | None:
        """A level by itself, of a trait whose name was said before: `sashi deep but even`."""
        best: Hit | None = None
        for end, node in self._walk(tokens, start):
            for trait in about:
                said = node.levels.get(trait)
                if said is not None and (best is None or end > best.end):
                    best = Hit(end, Means(node.wording, (Stated(trait, said),)), (), node.wording, about=tuple(about))
                    break
        return best

    def by_itself(self, tokens: Sequence[str]) -> Means | None:
        """What tokens say where they are all that is said."""
        words = compared(tokens)
        bare = tuple(word for word in words if word not in SKIPPED or word in _PRAISING)
        return self.bare.get(words) or self.bare.get(bare)

    def behind_a_fault(self, tokens: Sequence[str], at: int, stated: Sequence[Stated]) -> int:
        """The place behind a fault and behind the places that say no more than where it is: `a kink | near the tail`."""
        if not stated or not all(self._is_fault_anywhere(one) for one in stated):
            return at
        return past_part(tokens, at + (tokens[at : at + 1] in {("left",), ("right",)}), parts=BODY)

    def _is_fault_anywhere(self, stated: Stated) -> bool:
        """Whether a reading leaves out the best: `straight near the tail` says nothing of the rest, `bent near the tail` does."""
        kind, said = self.traits[stated.trait].kind, stated.said
        if stated.trait not in self.anywhere:
            return False
        if isinstance(kind, Count):
            return isinstance(said, Span) and said.low >= 1
        return isinstance(kind, Scale) and isinstance(said, int) and not said >> (len(kind.steps) - 1)

    def is_label(self, tokens: Sequence[str], at: int) -> bool:
        """Whether the name of a trait that takes any text begins at a place: `tub`."""
        return any(len(hit.names) == 1 and is_text(self.traits[hit.names[0]].kind) for hit in self.hits(tokens, at)[:1])

    def levels_of(self, tokens: Sequence[str]) -> tuple[str, ...]:
        """The traits of which the tokens are a word that needs the trait's name beside it: `sharp`."""
        ends = [node for end, node in self._walk(tokens, 0) if end == len(tokens)]
        return tuple(dict.fromkeys(_trait_of(key) for node in ends for key in node.levels))

    def _walk(self, tokens: Sequence[str], start: int) -> list[tuple[int, _Node]]:
        """The ends of what begins at a place, with fewest words left out first; words that say nothing may stand inside."""
        found: list[tuple[int, int, _Node]] = []
        open_ones: list[tuple[Sequence[_Node], int, bool, tuple[str, ...]]] = [(self.root.within, start, False, ())]
        while open_ones:
            nodes, at, skipped, said = open_ones.pop()
            if at > start and not skipped and (node := _one(nodes, said)) is not None:
                found.append((at - start - len(said), at, node))
            if at < len(tokens):
                word = alike(tokens[at])
                after = [one for node in nodes if word in node.after for one in node.after[word].within]
                if at > start and tokens[at] in INSIDE and any(node.after for node in nodes):
                    open_ones.append((nodes, at + 1, True, said))
                if after:
                    open_ones.append((after, at + 1, False, (*said, tokens[at])))
        if len(found) < 2:
            return [(at, node) for _, at, node in found]
        found.sort(key=lambda each: each[0])
        return _once([(at, node) for _, at, node in found])

    def _with_others(self, tokens: Sequence[str], end: int, level: _Node) -> Iterator[tuple[int, _Node]]:
        """A level, and the one that it makes with another one behind it: `sharp or razor`, `fair to sharp`."""
        yield end, level
        if (
            end < len(tokens)
            and tokens[end] in _SUFFIXES
            and any(isinstance(said, int) for said in level.levels.values())
        ):
            yield (
                end + 1,
                _Node(
                    levels={key: said for key, said in level.levels.items() if isinstance(said, int)},
                    wording=level.wording,
                ),
            )
        at = self._skip(tokens, end + 1)
        to_a_side = tokens[end : end + 1] == ("to",) and tokens[at : at + 1] in {("left",), ("right",)}
        if end < len(tokens) and tokens[end] in {"or", "to"} and not to_a_side:
            for last, other in self._walk(tokens, at):
                both = {
                    trait: said
                    for trait, one in level.levels.items()
                    if (said := _either(self.traits[_trait_of(trait)].kind, one, other.levels.get(trait), tokens[end]))
                    is not None
                }
                if both:
                    yield last, _Node(levels=both, wording=f"{level.wording} {tokens[end]} {other.wording}")

    def _kind(self, key: str) -> Kind:
        return self.traits[_trait_of(key)].kind

    def _skip(self, tokens: Sequence[str], at: int) -> int:
        while at < len(tokens) and (tokens[at] in INSIDE or (tokens[at] == "and" and tokens[at - 1] in _NICE_AND)):
            at += 1
        return at

    def _named(self, tokens: Sequence[str], name: _Node, end: int) -> Iterator[Hit]:
        """`kiwa sharp`, `kiwa is not sharp`, `red on the left pectoral`."""
        skipped = self._skip(tokens, end)
        # By where a level may begin: whether it is denied, and whether the name of a part stands before it.
        starts = dict.fromkeys(
            (end, _behind_verbs(tokens, end), skipped, self._behind_links(tokens, end)), (False, False)
        )
        if skipped < len(tokens):
            if alike(tokens[skipped]) == "on":
                place = self._skip(tokens, skipped + 1)
                starts.setdefault(place, (False, False))
                if place < len(tokens) and tokens[place] in {"no", "neither"}:
                    starts.setdefault(self._skip(tokens, place + 1), (True, False))
            elif tokens[skipped] == "not":
                starts.setdefault(self._skip(tokens, skipped + 1), (True, False))
        if self._may_be_of_a_part(name) and (part := past_part(tokens, end, INSIDE, PARTS)) > end:
            part = self._skip(tokens, part)
            starts.setdefault(part, (False, True))
            if part < len(tokens) and tokens[part] == "not":
                starts.setdefault(self._skip(tokens, part + 1), (True, True))
        for begin, (negated, placed) in starts.items():
            for end_of_one, one in self._walk(tokens, begin):
                for last, level in self._with_others(tokens, end_of_one, one):
                    yield from self._together(
                        name, level, last, negated=negated, placed=placed, first=name.wording, second=level.wording
                    )

    def _may_be_of_a_part(self, name: _Node) -> bool:
        return any(_trait_of(key) in self.of_parts for key in (*name.names, *name.beside))

    def _denied_alone(self, level: _Node, trait: str) -> Said | None:
        """What `not` before a level says where the trait is not named: `spine not bent` is what `not bent` is."""
        alone = self._one_thing(f"not {level.wording}")
        return alone.said if alone is not None and alone.trait == trait else None

    def _one_thing(self, wording: str) -> Stated | None:
        """What a wording says that is a phrase as a whole, of one trait alone."""
        tokens = tokens_of(wording)
        whole = (node.means for end, node in self._walk(tokens, 0) if end == len(tokens) and node.means is not None)
        return next((means.stated[0] for means in whole if len(means.stated) == 1), None)

    def _behind_links(self, tokens: Sequence[str], at: int) -> int:
        """The place behind what links a name and a level: `the white has gone | yellow`."""
        while (behind := self._skip(tokens, at)) < len(tokens) and tokens[behind] in _LINKS:
            at = behind + 1
        return behind

    def _levelled(self, tokens: Sequence[str], level: _Node, end: int) -> Iterator[Hit]:
        """`sharp kiwa`, `left pectoral red`, `left pectoral without red`."""
        skipped = self._skip(tokens, end)
        starts = dict.fromkeys((end, _behind_verbs(tokens, end), skipped), False)
        if skipped < len(tokens) and tokens[skipped] in _NOT:
            starts.setdefault(self._skip(tokens, skipped + 1), True)
        for begin, negated in starts.items():
            for last, name in self._walk(tokens, begin):
                if name.names or name.beside:
                    for hit in self._together(
                        name, level, last, negated=negated, first=level.wording, second=name.wording
                    ):
                        # `left pectoral without red` denies the place; `cream not white` does not deny the cream.
                        if hit.means is not None and not (negated and isinstance(hit.means.stated[0].said, int)):
                            yield hit
            if not negated:
                yield from self._levelled_twice(tokens, level, begin)

    def _levelled_twice(self, tokens: Sequence[str], level: _Node, begin: int) -> Iterator[Hit]:
        """`thick even red`: two levels of two traits before the name of both; praise before another level is no level."""
        if level.wording in _PRAISING or level.wording in _MERE_PRAISE:
            return
        for middle, other in self._walk(tokens, begin):
            if not other.levels:
                continue
            for last, name in self._walk(tokens, self._skip(tokens, middle)):
                for one in self._together(name, level, last, negated=False, first=level.wording, second=name.wording):
                    for two in self._together(
                        name, other, last, negated=False, first=other.wording, second=name.wording
                    ):
                        if one.means and two.means and one.means.stated[0].trait != two.means.stated[0].trait:
                            wording = f"{level.wording} {two.wording}"
                            stated = (*one.means.stated, *two.means.stated)
                            yield evolve(one, means=Means(wording, stated), wording=wording)

    def _together(
        self,
        name: _Node,
        level: _Node,
        end: int,
        *,
        negated: bool,
        first: str,
        second: str,
        placed: bool = False,
    ) -> Iterator[Hit]:
        # `hi not bad` is of the trait that `hi bad` is of.
        as_one = self._one_thing(f"{name.wording} {level.wording}") if negated else None
        for key in sorted((*name.names, *name.beside), key=level.praised.__contains__):
            said, trait = level.levels.get(key), _trait_of(key)
            if as_one is not None and as_one.trait != trait:
                continue
            if said is None or (placed and (trait not in self.of_parts or isinstance(said, PlaceSet))):
                continue
            outside = _without(said, level.sides[key]) if key in level.sides else None
            if negated:
                said = outside or self._denied_alone(level, trait) or opposite_of(self.traits[trait].kind, said)
            if said is not None:
                wording = f"{first} {'not ' if negated else ''}{second}"
                along = self.implied.get(trait, ())
                none = none_of(self.traits[trait].kind)
                if said == none:
                    along = denied(along, self.traits)
                elif isinstance(said, int) and isinstance(none, int) and said & none:
                    along = ()
                stated = (Stated(trait, said), *(() if negated else along))
                means = Means(wording, stated, denied=(Stated(trait, outside),) if outside and not negated else ())
                about = tuple(dict.fromkeys(map(_trait_of, (*name.names, *name.beside))))
                yield Hit(end, means, (), wording, whole=False, about=about, placed=placed)
                return


def _behind_verbs(tokens: Sequence[str], at: int) -> int:
    """The place behind `is`: what stands there may be a filler elsewhere, and part of a level here, as in `is very sharp`."""
    while at < len(tokens) and tokens[at] in _VERBS:
        at += 1
    return at


_LINKS = _words(
    "gone going goe went turned turning turn become becoming get gets getting got getting stay stays staying run runs wear wears "
    "feel feels"
)
_SUFFIXES = frozenset({"tinge", "cast", "tint", "side", "looking", "tinged"})
_VERBS = ARTICLES | {"was", "were", "be"}
_APART = "#"


def _trait_of(key: str) -> str:
    """The trait of a name or level: those that are said apart have a number behind it."""
    return key.partition(_APART)[0]


def _either(kind: Kind, one: Said, other: Said | None, joined: str) -> Said | None:
    """What one level or another says, or all from one to the other. None where that is no level of a scale or choice."""
    if not isinstance(one, int) or not isinstance(other, int) or not isinstance(kind, Scale | Choice):
        return None
    if joined == "or":
        return one | other
    return (1 << other.bit_length()) - (one & -one) if isinstance(kind, Scale) and one < other else None


def _without(said: Said, places: int) -> PlaceSet | None:
    """What `no` before a side that is left open says: none of these places, the others perhaps."""
    if not isinstance(said, PlaceSet):
        return None
    free = said.possible & ~places
    return PlaceSet(0, free, 0, free.bit_count())


def denied(stated: Sequence[Stated], traits: Mapping[str, Trait]) -> tuple[Stated, ...]:
    """The opposite of what goes along with a trait, where it has one."""
    opposites = ((one.trait, opposite_of(traits[one.trait].kind, one.said)) for one in stated)
    return tuple(Stated(trait, said) for trait, said in opposites if said is not None)


def _once(found: list[tuple[int, _Node]]) -> list[tuple[int, _Node]]:
    seen: set[tuple[int, int]] = set()
    kept = []
    for end, node in found:
        if (end, id(node)) not in seen:
            seen.add((end, id(node)))
            kept.append((end, node))
    return kept


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


@contextmanager
def _uncollected() -> Iterator[None]:
    """Without the collector of garbage: it would go through tens of thousands of nodes again and again, and all of them stay."""
    on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if on:
            gc.enable()


@lru_cache(maxsize=8192)
def _without_articles(words: str) -> tuple[str, ...]:
    return tuple(token for token in tokens_of(words) if token not in ARTICLES)


class _Building:
    """Puts the phrases of a standard together, what is nearer to the page first."""

    def __init__(self, rules: Rules) -> None:
        self.rules = rules
        self.root = _Node()
        self.phrases: dict[str, Means] = {}
        self.implied: dict[str, tuple[Stated, ...]] = {}
        self.said: list[str] = []
        self.bare: dict[tuple[str, ...], Means] = {}
        self.patterns = 0
        self.joins: dict[tuple[int, Choices], _Node] = {}
        for phrase in rules.phrases:
            for _, wording in phrase.wordings:
                if phrase.corrects:
                    self.said.append(f"{wording}=correction")
                else:
                    self.add(wording, phrase.stated, own=True)
        spoken: dict[str, list[Spoken]] = {}
        for saying in rules.sayings:
            if isinstance(saying, Spoken):
                spoken.setdefault(saying.trait, []).append(saying)
            else:
                self._together(saying)
        for trait in rules.traits.values():
            self._alone(trait, spoken.get(trait.name, ()))
            self._bare(trait, spoken.get(trait.name, ()))
        for trait in rules.traits.values():
            self._of_trait(trait, spoken.get(trait.name, ()))

    def add(self, wording: str, stated: tuple[Stated, ...], *, own: bool = False, after: tuple[str, ...] = ()) -> None:
        """Give a wording a meaning, unless it has one already."""
        pattern = "(" in wording and not own
        self.patterns += pattern
        for node in self._nodes(wording, pattern=pattern):
            if node.means is None:
                shown = next(examples_of(sequel_of(wording))) if pattern else wording
                node.means = Means(shown, stated, own, place=self.patterns if pattern else 0, after=after)
                self.phrases.setdefault(shown, node.means)
                self.said.append(f"{wording}={stated}")

    def _nodes(self, wording: str, *, pattern: bool | None = None) -> list[_Node]:
        """Where a wording ends: at several places where a pattern may leave out what it begins with."""
        if pattern is False or (pattern is None and "(" not in wording):
            tokens = tokens_of(wording)
            if not tokens:
                return []
            node = self._along(self.root, [token for token in tokens if token not in ARTICLES] or tokens)
            node.wording = node.wording or wording
            return [node]
        return [self._follow(self.root, sequel) for sequel in _begun(sequel_of(wording))]

    def _along(self, node: _Node, tokens: Iterable[str]) -> _Node:
        for token in tokens:
            word = _ALIKE.get(token, token)
            after = node.after.get(word)
            if after is None:
                if node.after is _NOWHERE:
                    node.after = {}
                node.after[word] = after = _Node()
            node = after
        return node

    def _follow(self, node: _Node, sequel: Sequel) -> _Node:
        """The end of what follows a node; what may stand at one place leads on to one node."""
        for part in sequel:
            if isinstance(part, str):
                node = self._along(node, _without_articles(part))
                continue
            join = self.joins.get((id(node), part))
            if join is None:
                join = self.joins[id(node), part] = _Node()
                for end in [self._follow(node, each) for each in part.each]:
                    if join not in end.joins:
                        end.joins = (*end.joins, join)
            node = join
        return node

    def _together(self, saying: SpokenTogether) -> None:
        stated = read_means(saying.means, self.rules.traits)
        if stated is not None:
            for wording in wordings_in(saying.wordings):
                self.add(wording, stated)

    def _alone(self, trait: Trait, spoken: Iterable[Spoken]) -> None:
        for one in spoken:
            implied = read_means(one.implies, self.rules.traits) if one.implies else None
            if implied:
                self.implied[trait.name] = implied
            for reading, wordings in one.alone.items():
                stated = read_alone(trait.name, reading, self.rules.traits)
                for wording in wordings_in(wordings):
                    if stated is not None:
                        along = implied or ()
                        along = denied(along, self.rules.traits) if reading == "is none" else along
                        self.add(wording, (*stated, *along), after=one.after)

    def _bare(self, trait: Trait, spoken: Iterable[Spoken]) -> None:
        for one in spoken:
            for reading, wordings in one.bare.items():
                stated = read_alone(trait.name, reading, self.rules.traits)
                for wording in wordings_in(wordings):
                    if stated is not None:
                        self.bare.setdefault(compared(tokens_of(wording)), Means(wording, stated, after=one.after))
                        self.said.append(f"{wording}.={stated}")

    def _of_trait(self, trait: Trait, spoken: Sequence[Spoken]) -> None:
        kind = trait.kind
        if isinstance(kind, Patches | Colours):
            return
        together = [one for one in spoken if not one.apart]
        self._name(trait.name, [*_nouns_of(trait), *(noun for one in together for noun in wordings_in(one.nouns))])
        self._name(trait.name, [noun for one in together for noun in wordings_in(one.beside)], beside=True)
        levels = [*self._readings(trait, together), *_levels(kind, together)]
        self._level(trait.name, levels)
        if isinstance(kind, Scale):
            self._level(trait.name, _praised(levels), praised=True)
        for number, one in enumerate(each for each in spoken if each.apart):
            key = f"{trait.name}{_APART}{number}"
            self._name(key, wordings_in(one.nouns), beside=True)
            self._level(key, self._readings(trait, [one], words_too=True))

    def _name(self, key: str, nouns: Iterable[str], *, beside: bool = False) -> None:
        for noun in dict.fromkeys(nouns):
            for node in self._nodes(noun):
                if key in node.names or key in node.beside:
                    continue
                if beside:
                    node.beside = (*node.beside, key)
                else:
                    node.names = (*node.names, key)
                self.said.append(f"{noun}:{':' if beside else ''}{key}")

    def _level(self, key: str, levels: Iterable[tuple[str, Said, int]], *, praised: bool = False) -> None:
        for word, said, sides in levels:
            for node in self._nodes(word):
                if key not in node.levels:
                    node.levels = {**node.levels, key: said}
                    node.sides = {**node.sides, key: sides} if sides else node.sides
                    node.praised |= {key} if praised else frozenset()
                self.said.append(f"{word}:{key}={said}")

    def _readings(
        self, trait: Trait, spoken: Sequence[Spoken], *, words_too: bool = False
    ) -> Iterator[tuple[str, Said, int]]:
        """What is said for a reading that is no word of the trait: `at most fair`. words_too: also for its words."""
        words = words_of(trait.kind)
        for one in spoken:
            for reading, wordings in one.levels.items():
                if reading in words and not words_too:
                    continue
                stated = read_alone(trait.name, f"is {reading}" if reading in words else reading, self.rules.traits)
                if stated is not None:
                    yield from ((wording, stated[0].said, 0) for wording in wordings_in(wordings))


def _begun(sequel: Sequel) -> Iterator[Sequel]:
    """A pattern as patterns that each begin with a word: so that none has to be looked for at every word of a remark."""
    if not sequel or isinstance(sequel[0], str):
        yield sequel
        return
    first, rest = sequel[0], sequel[1:]
    words = tuple(each for each in first.each if each)
    if words:
        yield (Choices(words), *rest)
    if len(words) < len(first.each):
        yield from _begun(rest)


def _nouns_of(trait: Trait) -> Iterator[str]:
    """What a trait is called by its name and its title: `kiwa`, `rear edge of the red`, `キワ`."""
    yield trait.name.replace("_", " ")
    for title in (trait.title, *trait.titles.values()):
        plain = title.partition("(")[0].split(",")[0].strip()
        if plain and not plain.startswith(("where ", "how ")):
            yield plain


def _levels(kind: Kind, spoken: Sequence[Spoken]) -> Iterator[tuple[str, Said, int]]:
    """What is said for each word of a kind, beside the name of its trait; of sides that are left open, their places as bits."""
    words = words_of(kind)
    everything = PlaceSet.any_of(kind) if isinstance(kind, Places) else None
    for i, word in enumerate(words):
        said: Said = 1 << i if everything is None else PlaceSet(1 << i, everything.possible, 1, everything.most)
        heard = [word.replace("_", " "), *_places_said(word, kind)]
        heard += [each for one in spoken for each in wordings_in(one.levels.get(word, ""))]
        for each in dict.fromkeys(heard):
            yield each, said, 0
    if isinstance(kind, Places) and everything is not None:
        yield from _of_both_sides(kind, everything)


def _praised(levels: Iterable[tuple[str, Said, int]]) -> Iterator[tuple[str, Said, int]]:
    """What people say of anything that is as good or bad as a level: `decent`, where that is `good`."""
    words: dict[Said, set[str]] = {}
    for word, said, _ in levels:
        words.setdefault(said, set()).add(word)
    for said, wordings in words.items():
        yield from ((word, said, 0) for word in as_praised(frozenset(wordings)))


def _of_both_sides(kind: Places, everything: PlaceSet) -> Iterator[tuple[str, Said, int]]:
    """`both eyes`, `one eye`, and `eye` alone, which may be one or both."""
    for i, word in enumerate(kind.places):
        rest = word.removeprefix("left_")
        if rest == word or f"right_{rest}" not in kind.places:
            continue
        bits = 1 << i | 1 << kind.places.index(f"right_{rest}")
        # Of eyes or cheeks `one` leaves the other free; of fins there are more.
        one = 1 if bits == everything.possible else everything.most
        for said in wordings_in(_SAID_OF_PLACES.get(rest, rest.replace("_", " "))):
            both = PlaceSet(bits, everything.possible, 2, everything.most)
            if said.isascii():
                yield f"both {said}", both, 0
                yield f"left and right {said}", both, 0
                yield f"1 {said}", PlaceSet(0, everything.possible, 1, one), 0
            else:
                yield f"両{said}", both, 0
            yield said, PlaceSet(0, everything.possible, 1, everything.most), bits


_SAID_OF_PLACES = {
    "pectoral": "pectoral, pectoral fin, pec, pec fin, breast fin, chest fin, front fin, side fin, 胸鰭",
    "eye": "eye, 目",
    "cheek": "cheek, 頬",
    "gill": "gill, gill cover, gill plate, 鰓",
    "flank": "flank, side, body side",
    "dorsal": "dorsal, dorsal fin, back fin, top fin, 背鰭",
    "pelvic": "(|left|right|both) (pelvic|pelvic fin|ventral fin|ventral|belly fin), 腹鰭",
    "anal": "anal fin, anal, 尻鰭",
    "tail": "tail, tail fin, caudal fin, caudal, (upper|lower|top|bottom) (tail lobe|lobe of the tail), 尾鰭",
    "nose": "nose, snout, 鼻",
    "lips": "lips, mouth, 唇",
    "crown": "crown, head, top of the head, forehead, 頭",
    "nape": "nape, neck, behind the head",
    "shoulder": "shoulder, 肩",
    "front_back": "front of the back, front back, behind the shoulder, in front of the (dorsal|dorsal fin|back fin), "
    "ahead of the dorsal",
    "middle_back": "(by|beside|next to|close to|alongside|level with) the (dorsal|dorsal fin|back fin), "
    "middle of the back, middle back, mid back, middle, back, 背",
    "rear_back": "behind the (dorsal fin|back fin), rear of the back, rear back, behind the dorsal, rear",
    "belly": "belly, 腹",
    "stem": "tail stem, stem, near the tail, by the tail, close to the tail, next to the tail, tail tube, "
    "towards the tail, near the tail fin, before the tail fin, before the tail, peduncle, tail base, tail root, ozutsu, 尾筒",
}
"""How places of the body are spoken of; `left` and `right` stand before each that has a side."""


def _places_said(word: str, kind: Kind) -> Iterator[str]:
    if not isinstance(kind, Places):
        return
    side, _, rest = word.partition("_")
    sided = side in {"left", "right"} and rest in _SAID_OF_PLACES
    for said in wordings_in(_SAID_OF_PLACES.get(rest if sided else word, "")):
        if not sided:
            yield said
        elif said.isascii():
            yield f"{side} {said}"
            yield f"{said} {side}"
            yield f"{said} on the {side}"
        else:
            yield f"{'左' if side == 'left' else '右'}{said}"


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
