"""The words that a standard understands in notes: phrases of the page, phrases of the vocabulary, names of traits."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal
from hashlib import sha256

from attrs import evolve, field

from koirules.notes.building import Building, uncollected
from koirules.notes.parts import PARTS, PATCHES, past_part, past_where
from koirules.notes.tree import (
    ARTICLES,
    INSIDE,
    SKIPPED,
    Means,
    Node,
    alike,
    as_one,
    compared,
    denied,
    is_text,
    none_of,
    noted_at_least,
    opposite_of,
    trait_of,
    words_of_line,
)
from koirules.standard.parts import Rules, Said, Stated
from koirules.values import frozen
from koirules.vocabulary.kinds import Choice, Count, Kind, Places, Scale
from koirules.vocabulary.phrases import Spoken
from koirules.vocabulary.readings import PlaceSet, Span
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.wordings import tokens_of

_NICE_AND = words_of_line("nice lovely")
"""`nice and sharp` is sharp."""
_BARE = (Decimal(8), Decimal(35))
"""Lengths in cm that a number by itself may be: below them it is as often a count of scales or patches."""

_PRAISING = frozenset({"nice", "nicely", "lovely", "beautiful"})
_NEVER_PASSED = _PRAISING | {"rather", "they", "these", "those", "them"}
"""Words beside which a word is not all that is said: `they look big` is of fins or patches."""
_MERE_PRAISE = words_of_line("good great fine decent proper clear clean strong true typical simple")


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


_AT_THE_TOP = (("fin",), ("half",), ("edge",), ("of",), ("lobe",), ("end",), ("tail",), ("1",), ("patch",), ("line",))
"""Behind which `top` is a place: `the edge of the top fin`."""
_NOT = frozenset({"no", "not", "without"})
_MOST_REMEMBERED = 20_000


@frozen(slots=False)
class Lexicon:
    """The phrases of a standard. seal: SHA-256 of what they say, so that a record can name what it was read by.

    implied: what goes along with any but the lowest level of a trait. of_parts: by each trait that is said
    of a part as of the whole, the words for such parts. shortest: the length in cm below which there is hardly a
    fish, at the stage of the standard or at any. lengths: the usual ones at the stage, in cm; None where it has none. bare: what
    words say where they are all that is said. anywhere: the traits of which a fault is one wherever it is.
    greatest: those of which the greatest is meant of several numbers. subject: words for what the standard is of: its variety
    and its stage.
    """

    traits: Mapping[str, Trait]
    root: Node = field(repr=False)
    phrases: Mapping[str, Means] = field(repr=False)
    implied: Mapping[str, tuple[Stated, ...]] = field(repr=False)
    seal: str
    of_parts: Mapping[str, frozenset[str]] = field(factory=dict)
    shortest: Decimal = Decimal(0)
    lengths: tuple[Decimal, Decimal] | None = None
    bare: Mapping[tuple[str, ...], tuple[Means, ...]] = field(factory=dict, repr=False)
    anywhere: frozenset[str] = frozenset()
    greatest: frozenset[str] = frozenset()
    subject: frozenset[str] = frozenset()
    _hits: dict[tuple[tuple[str, ...], int], tuple[Hit, ...]] = field(factory=dict, init=False, repr=False, eq=False)
    _names: dict[tuple[str, ...], tuple[tuple[str, ...], ...]] = field(factory=dict, init=False, repr=False, eq=False)

    @classmethod
    def of(cls, rules: Rules) -> Lexicon:
        """The lexicon of a checked standard."""
        with uncollected():
            built = Building(rules)
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
            frozenset(one.trait for one in spoken if one.greatest),
            frozenset(tokens_of(f"{rules.variety or ''} {rules.stage or ''}")),
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

    def names_in(self, tokens: tuple[str, ...]) -> tuple[tuple[str, ...], ...]:
        """The traits that each name in a remark may stand for."""
        found = self._names.get(tokens)
        if found is None:
            if len(self._names) >= _MOST_REMEMBERED:
                self._names.clear()
            each = (hit.names for at in range(len(tokens)) for hit in self.hits(tokens, at) if hit.names)
            self._names[tokens] = found = tuple(each)
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
        kept = [hit for hit in found if hit.whole or not _leads_on(tokens, hit.end)]
        return sorted(kept, key=lambda hit: (-hit.end, self._rank(hit)))

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

    def places_of(self, tokens: Sequence[str]) -> tuple[str, ...]:
        """The traits of places that names within tokens may stand for: `red` in `red on the head`."""
        nodes = (node for at in range(len(tokens)) for _, node in self._walk(tokens, at))
        keys = dict.fromkeys(trait_of(key) for node in nodes for key in (*node.names, *node.beside))
        return tuple(key for key in keys if isinstance(self.traits[key].kind, Places))

    def is_bare(self, tokens: Sequence[str]) -> bool:
        """Whether tokens are, word for word, what says something where it is all that is said."""
        return compared(tokens) in self.bare

    def by_itself(self, tokens: Sequence[str]) -> tuple[Means, ...]:
        """What tokens say where they are all that is said: several things, where it hangs on what was spoken of before."""
        words = compared(tokens)
        bare = tuple(word for word in words if word not in SKIPPED or word in _NEVER_PASSED)
        return self.bare.get(words) or self.bare.get(bare) or ()

    def behind_a_fault(self, tokens: Sequence[str], at: int, stated: Sequence[Stated]) -> int:
        """The place behind a fault and behind the places that say no more than where it is: `a kink | near the tail`."""
        if not stated or not all(self._is_fault_anywhere(one) for one in stated):
            return at
        return past_where(tokens, at)

    def _is_fault_anywhere(self, stated: Stated) -> bool:
        """Whether a reading leaves out the best: `straight near the tail` says nothing of the rest, `bent near the tail` does."""
        kind, said = self.traits[stated.trait].kind, stated.said
        if stated.trait not in self.anywhere:
            return False
        if isinstance(kind, Count):
            return isinstance(said, Span) and said.low >= 1
        if isinstance(said, PlaceSet):
            return said.least >= 1
        return isinstance(kind, Scale) and isinstance(said, int) and not said >> (len(kind.steps) - 1)

    def is_label(self, tokens: Sequence[str], at: int) -> bool:
        """Whether the name of a trait that takes any text begins at a place: `tub`."""
        return any(len(hit.names) == 1 and is_text(self.traits[hit.names[0]].kind) for hit in self.hits(tokens, at)[:1])

    @property
    def single_words(self) -> list[str]:
        """The words that say something by themselves, or beside the name of a trait."""
        return [word for word, node in self.root.after.items() if node.says]

    def knows(self, word: str) -> bool:
        """Whether a word says or names something by itself, be it beside the name of a trait: `sharp`, `kiwa`."""
        words = (word,)
        return bool(self.hits(words, 0)) or bool(self.levels_of(words)) or words in self.bare

    def levels_of(self, tokens: Sequence[str]) -> tuple[str, ...]:
        """The traits of which the tokens are a word that needs the trait's name beside it: `sharp`."""
        ends = [node for end, node in self._walk(tokens, 0) if end == len(tokens)]
        return tuple(dict.fromkeys(trait_of(key) for node in ends for key in node.levels))

    def _walk(self, tokens: Sequence[str], start: int) -> list[tuple[int, Node]]:
        """The ends of what begins at a place, with fewest words left out first; words that say nothing may stand inside."""
        found: list[tuple[int, int, Node]] = []
        open_ones: list[tuple[Sequence[Node], int, bool, tuple[str, ...]]] = [(self.root.within, start, False, ())]
        while open_ones:
            nodes, at, skipped, said = open_ones.pop()
            if at > start and not skipped and (node := as_one(nodes, said)) is not None:
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

    def _said_twice(self, tokens: Sequence[str], end: int, level: Node) -> Iterator[tuple[int, Node]]:
        """A level with another word for it behind: `big round`, `broad and full`."""
        at = self._skip(tokens, end + (tokens[end : end + 1] == ("and",)))
        for last, other in self._walk(tokens, at) if at < len(tokens) else ():
            same = {
                key: said
                for key, said in level.levels.items()
                if isinstance(said, int) and other.levels.get(key) == said
            }
            if same:
                yield last, Node(levels=same, wording=f"{level.wording} {other.wording}")

    def _with_others(self, tokens: Sequence[str], end: int, level: Node) -> Iterator[tuple[int, Node]]:
        """A level, and the one that it makes with another one behind it: `sharp or razor`, `fair to sharp`."""
        if tokens[end - 1] == "top" and tokens[end : end + 1] in _AT_THE_TOP:
            return
        yield end, level
        if (
            end < len(tokens)
            and tokens[end] in _SUFFIXES
            and any(isinstance(said, int) for said in level.levels.values())
        ):
            yield (
                end + 1,
                Node(
                    levels={key: said for key, said in level.levels.items() if isinstance(said, int)},
                    wording=level.wording,
                ),
            )
        yield from self._said_twice(tokens, end, level)
        at = self._skip(tokens, end + 1)
        to_a_side = tokens[end : end + 1] == ("to",) and tokens[at : at + 1] in {("left",), ("right",)}
        if end < len(tokens) and tokens[end] in {"or", "to"} and not to_a_side:
            for last, other in self._walk(tokens, at):
                both = {
                    trait: said
                    for trait, one in level.levels.items()
                    if (said := _either(self.traits[trait_of(trait)].kind, one, other.levels.get(trait), tokens[end]))
                    is not None
                }
                if both:
                    yield last, Node(levels=both, wording=f"{level.wording} {tokens[end]} {other.wording}")

    def _kind(self, key: str) -> Kind:
        return self.traits[trait_of(key)].kind

    def _skip(self, tokens: Sequence[str], at: int) -> int:
        while at < len(tokens) and (tokens[at] in INSIDE or (tokens[at] == "and" and tokens[at - 1] in _NICE_AND)):
            at += 1
        return at

    def _named(self, tokens: Sequence[str], name: Node, end: int) -> Iterator[Hit]:
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

    def _may_be_of_a_part(self, name: Node) -> bool:
        return any(trait_of(key) in self.of_parts for key in (*name.names, *name.beside))

    def _denied_alone(self, level: Node, trait: str) -> Said | None:
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
            if tokens[behind] in _MOVING and not _WAYS.isdisjoint(tokens[behind + 1 : behind + 2]):
                break  # `belly going down` is not what `belly down` is
            at = behind + 1
        return behind

    def _levelled(self, tokens: Sequence[str], level: Node, end: int) -> Iterator[Hit]:
        """`sharp kiwa`, `soft in the kiwa`, `left pectoral red`, `left pectoral without red`."""
        skipped = self._skip(tokens, end)
        starts = dict.fromkeys((end, _behind_verbs(tokens, end), skipped), False)
        if skipped < len(tokens) and tokens[skipped] in _NOT:
            starts.setdefault(self._skip(tokens, skipped + 1), True)
        if tokens[skipped : skipped + 1] == ("in",):
            starts.setdefault(self._skip(tokens, skipped + 1), False)
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

    def _levelled_twice(self, tokens: Sequence[str], level: Node, begin: int) -> Iterator[Hit]:
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
        name: Node,
        level: Node,
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
            said, trait = level.levels.get(key), trait_of(key)
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
                about = tuple(dict.fromkeys(map(trait_of, (*name.names, *name.beside))))
                yield Hit(end, means, (), wording, whole=False, about=about, placed=placed)
                return


def _leads_on(tokens: Sequence[str], end: int) -> bool:
    """Whether the last word before a place is no level, but leads on: `the red sits dead | in the middle`."""
    return end < len(tokens) and tokens[end] in _LEADING_ON.get(tokens[end - 1], ())


_LEADING_ON: Mapping[str, frozenset[str]] = {
    "dead": words_of_line(
        "in on at centre centred central middle level straight even right square flat opposite behind under"
    ),
    "even": words_of_line("at when if though near by under behind past"),
    "clean": words_of_line("through off over across past into onto up"),
    "flat": words_of_line("out against"),
    "full": words_of_line("of"),
    "deep": words_of_line("into under"),
    "thick": words_of_line("with"),
    "light": words_of_line("on"),
    "heavy": words_of_line("on"),
    "short": words_of_line("of"),
    "clear": words_of_line("of across"),
    "right": words_of_line("in on at over across down up through into round behind under above along to"),
}
"""Words that are a level elsewhere and stand before these only to say how far or how exactly."""


def _behind_verbs(tokens: Sequence[str], at: int) -> int:
    """The place behind `is`: what stands there may be a filler elsewhere, and part of a level here, as in `is very sharp`."""
    while at < len(tokens) and tokens[at] in _VERBS:
        at += 1
    return at


_LINKS = words_of_line(
    "all gone going goe went turned turning turn become becoming get gets getting got getting stay stays stayed "
    "staying keep keeps kept  remain remains remained run runs wear wears feel feels"
)
_MOVING = words_of_line("going goe went get gets getting run runs turned turning turn")
_WAYS = words_of_line("down up over out through away into like round")
_SUFFIXES = frozenset({"tinge", "cast", "tint", "side", "looking", "tinged"})
_VERBS = ARTICLES | {"was", "were", "be"}


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


def _once(found: list[tuple[int, Node]]) -> list[tuple[int, Node]]:
    seen: set[tuple[int, int]] = set()
    kept = []
    for end, node in found:
        if (end, id(node)) not in seen:
            seen.add((end, id(node)))
            kept.append((end, node))
    return kept
