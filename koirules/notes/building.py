"""Puts the phrases of a standard together as a tree of words, what is nearer to the page first."""

from __future__ import annotations

import gc
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from functools import lru_cache

from koirules.notes.tree import APART, ARTICLES, Means, Node, alike, compared, denied
from koirules.notes.wishes import COMPARATIVES, FALLING_SHORT
from koirules.standard.check.phrasing import read_alone, read_means
from koirules.standard.parts import Rules, Said, Stated
from koirules.vocabulary.kinds import Colours, Kind, Patches, Places, Scale, words_of
from koirules.vocabulary.phrases import Choices, Sequel, Spoken, SpokenTogether, examples_of, sequel_of, wordings_in
from koirules.vocabulary.praise import as_praised
from koirules.vocabulary.readings import PlaceSet
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.wordings import tokens_of


@contextmanager
def uncollected() -> Iterator[None]:
    """Without the collector of garbage: it would go through tens of thousands of nodes again and again, and all of them stay."""
    on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if on:
            gc.enable()


@lru_cache(maxsize=32_768)
def _without_articles(words: str) -> tuple[str, ...]:
    return tuple(token for token in tokens_of(words) if token not in ARTICLES)


class Building:
    """Puts the phrases of a standard together, what is nearer to the page first."""

    def __init__(self, rules: Rules) -> None:
        self.rules = rules
        self.root = Node()
        self.phrases: dict[str, Means] = {}
        self.implied: dict[str, tuple[Stated, ...]] = {}
        self.said: list[str] = []
        self.bare: dict[tuple[str, ...], tuple[Means, ...]] = {}
        self.patterns = 0
        self.joins: dict[tuple[int, Choices], Node] = {}
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

    def _nodes(self, wording: str, *, pattern: bool | None = None) -> list[Node]:
        """Where a wording ends: at several places where a pattern may leave out what it begins with."""
        if pattern is False or (pattern is None and "(" not in wording):
            tokens = tokens_of(wording)
            if not tokens:
                return []
            node = self._along(self.root, [token for token in tokens if token not in ARTICLES] or tokens)
            node.wording = node.wording or wording
            return [node]
        return [self._follow(self.root, sequel) for sequel in _begun(sequel_of(wording))]

    def _along(self, node: Node, tokens: Iterable[str]) -> Node:
        for token in tokens:
            node = node.behind(alike(token))
        return node

    def _follow(self, node: Node, sequel: Sequel) -> Node:
        """The end of what follows a node; what may stand at one place leads on to one node."""
        for part in sequel:
            if isinstance(part, str):
                node = self._along(node, _without_articles(part))
                continue
            join = self.joins.get((id(node), part))
            if join is None:
                join = self.joins[id(node), part] = Node()
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
                if stated is None:
                    continue
                for pattern in wordings_in(wordings):
                    for wording in examples_of(sequel_of(pattern)):
                        words = compared(tokens_of(wording))
                        there = self.bare.get(words, ())
                        if all(each.after != one.after for each in there):
                            self.bare[words] = (*there, Means(wording, stated, after=one.after))
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
            self._level(trait.name, _short_of(kind, levels))
        for number, one in enumerate(each for each in spoken if each.apart):
            key = f"{trait.name}{APART}{number}"
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


def _short_of(kind: Scale, levels: Iterable[tuple[str, Said, int]]) -> Iterator[tuple[str, Said, int]]:
    """What is said of a trait that falls short of a level in the upper half: `could be wider`, where `wide` is good."""
    for word, said, _ in levels:
        if (
            word in COMPARATIVES
            and isinstance(said, int)
            and said.bit_count() == 1
            and said >= 1 << (len(kind.steps) + 1) // 2
        ):
            yield f"{FALLING_SHORT} {COMPARATIVES[word]}", said - 1, 0
            yield f"not (exactly|quite|really|) {COMPARATIVES[word][:-1]}st", said - 1, 0  # `not the broadest head`


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
    "pectoral": "pectoral, paddle, mune bire, munabire, pectoral fin, pec, pec fin, breast fin, chest fin, front fin, "
    "side fin, 胸鰭",
    "eye": "eye, 目",
    "cheek": "cheek, 頬",
    "gill": "gill, gill cover, gill plate, 鰓",
    "flank": "flank, side, body side",
    "dorsal": "dorsal, dorsal fin, back fin, top fin, fin on top, se bire, 背鰭",
    "pelvic": "(|left|right|both) (pelvic|pelvic fin|ventral fin|ventral|belly fin), hara bire, harabire, 腹鰭",
    "anal": "anal fin, anal, shiri bire, shiribire, 尻鰭",
    "tail": "tail, o bire, obire, tail fin, caudal fin, caudal, "
    "(upper|lower|top|bottom) (tail lobe|lobe of the tail), 尾鰭",
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
