"""The words that a standard understands in notes: phrases of the page, phrases of the vocabulary, names of traits."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from functools import lru_cache
from hashlib import sha256

from attrs import define, field, frozen

from koirules.language import statements as st
from koirules.language.parse.reader import read_text
from koirules.problems import Problem
from koirules.standard.check.phrasing import check_stated
from koirules.standard.parts import Rules, Said, Stated
from koirules.vocabulary.kinds import Choice, Colours, Count, Kind, Label, Number, Patches, Places, Scale, YesNo, words_of
from koirules.vocabulary.phrases import Spoken, SpokenTogether, wordings_in
from koirules.vocabulary.readings import NO, YES, Span
from koirules.vocabulary.said_places import SaidPlaces
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.wordings import tokens_of

SKIPPED = frozenset(
    "a an the is are was were be been has have had it its this that these those there here with of all also just very "
    "really quite rather pretty so too well oh ah hm hmm ok okay now still nice nicely lovely beautiful definitely clearly "
    "simply only real little bit slightly somewhat fish my for me and but i see got having shows show showing looks look "
    "sits lies which".split()
)
"""Words that may stand inside of a phrase or beside it, and say nothing."""

ARTICLES = frozenset({"a", "an", "the", "is", "are", "of", "one's"})
"""Words that phrases are compared without."""

_ALIKE = {word: "on" for word in ("in", "at", "over", "across", "upon", "above", "along", "onto", "into", "around")}
"""Words of place that people use for one another."""


@frozen
class Means:
    """What a phrase says. wording: as it is written where it comes from. own: whether the page says it."""

    wording: str
    stated: tuple[Stated, ...]
    own: bool = False


@frozen
class Names:
    """What a trait is called. traits: all that are called so; a number beside it settles which."""

    wording: str
    traits: tuple[str, ...]


@define
class _Node:
    """The phrases that begin with some words."""

    after: dict[str, _Node] = field(factory=dict)
    means: Means | None = None
    names: tuple[str, ...] = ()
    wording: str = ""


@frozen
class Hit:
    """A phrase or name at a place of a remark. end: the place behind it."""

    end: int
    means: Means | None
    names: tuple[str, ...]
    wording: str


def alike(token: str) -> str:
    """A token as phrases are compared: one word for all that say where something lies."""
    return _ALIKE.get(token, token)


@frozen(slots=False)
class Lexicon:
    """The phrases of a standard. seal: SHA-256 of what they say, so that a record can name what it was read by."""

    traits: Mapping[str, Trait]
    root: _Node = field(repr=False)
    phrases: Mapping[str, Means] = field(repr=False)
    seal: str

    @classmethod
    def of(cls, rules: Rules) -> Lexicon:
        """The lexicon of a checked standard."""
        built = _Building(rules)
        text = "\n".join(sorted(f"{wording}={means.stated}" for wording, means in built.phrases.items()))
        return cls(rules.traits, built.root, built.phrases, sha256(text.encode()).hexdigest())

    def hits(self, tokens: Sequence[str], start: int) -> list[Hit]:
        """The phrases and names that begin at a place, the longest first, those of the page before others of their length."""
        found: list[Hit] = []
        seen: set[tuple[int, int]] = set()
        open_ones = [(self.root, start)]
        while open_ones:
            node, at = open_ones.pop()
            if (id(node), at) in seen:
                continue
            seen.add((id(node), at))
            if at > start and (node.means is not None or node.names):
                found.append(Hit(at, node.means, node.names, node.wording))
            if at >= len(tokens):
                continue
            token = tokens[at]
            after = node.after.get(alike(token))
            if after is not None:
                open_ones.append((after, at + 1))
            if at > start and token in SKIPPED:
                open_ones.append((node, at + 1))
        # A skipped word at the end belongs to no phrase.
        return sorted(found, key=lambda hit: (-hit.end, hit.means is None))


class _Building:
    """Puts the phrases of a standard together, what is nearer to the page first."""

    def __init__(self, rules: Rules) -> None:
        self.rules = rules
        self.root = _Node()
        self.phrases: dict[str, Means] = {}
        self.nouns: dict[str, list[str]] = {}
        for phrase in rules.phrases:
            for _, wording in phrase.wordings:
                self.add(wording, phrase.stated, own=True)
        spoken: dict[str, list[Spoken]] = {}
        for saying in rules.sayings:
            if isinstance(saying, Spoken):
                spoken.setdefault(saying.trait, []).append(saying)
            else:
                self._together(saying)
        for trait in rules.traits.values():
            self._alone(trait, spoken.get(trait.name, ()))
        for trait in rules.traits.values():
            self._of_trait(trait, spoken.get(trait.name, ()))

    def add(self, wording: str, stated: tuple[Stated, ...], *, own: bool = False) -> None:
        """Give a wording a meaning, unless it has one already."""
        node = self._node(wording)
        if node is not None and node.means is None:
            node.means, node.wording = Means(wording, stated, own), wording
            self.phrases.setdefault(wording, node.means)

    def _node(self, wording: str) -> _Node | None:
        tokens = tokens_of(wording)
        node = self.root
        for token in [token for token in tokens if token not in ARTICLES] or tokens:
            node = node.after.setdefault(alike(token), _Node())
        return node if tokens else None

    def _name(self, noun: str, trait: str) -> None:
        node = self._node(noun)
        if node is not None and trait not in node.names:
            node.names = (*node.names, trait)
            node.wording = node.wording or noun

    def _together(self, saying: SpokenTogether) -> None:
        stated = read_means(saying.means, self.rules.traits)
        if stated is not None:
            for wording in wordings_in(saying.wordings):
                self.add(wording, stated)

    def _alone(self, trait: Trait, spoken: Iterable[Spoken]) -> None:
        for one in spoken:
            for reading, wordings in one.alone.items():
                counts = reading.startswith("count ")
                text = f"count of {trait.name} {reading[6:]}" if counts else f"{trait.name} {reading}"
                stated = read_means(text, self.rules.traits)
                for wording in wordings_in(wordings):
                    if stated is not None:
                        self.add(wording, stated)

    def _of_trait(self, trait: Trait, spoken: Sequence[Spoken]) -> None:
        kind = trait.kind
        if isinstance(kind, Patches | Colours):
            return
        nouns = [*_nouns_of(trait), *(noun for one in spoken for noun in wordings_in(one.nouns))]
        nouns = list(dict.fromkeys(nouns))
        for noun in nouns:
            self._name(noun, trait.name)
        levels = _levels(kind, spoken)
        match kind:
            case Scale() | Choice():
                for bits, words in levels:
                    for noun in nouns:
                        self._beside(noun, words, trait.name, bits)
                if isinstance(kind, Scale):
                    self._negated(nouns, levels, trait)
            case YesNo():
                self._of_yes_or_no(nouns, trait.name)
            case Places():
                self._of_places(nouns, levels, trait.name, kind)
            case _:
                pass

    def _beside(self, noun: str, words: Iterable[str], trait: str, said: Said) -> None:
        for word in words:
            self.add(f"{noun} {word}", (Stated(trait, said),))
            self.add(f"{word} {noun}", (Stated(trait, said),))

    def _negated(self, nouns: Sequence[str], levels: Sequence[tuple[int, tuple[str, ...]]], trait: Trait) -> None:
        """`kiwa not sharp`: of a scale, what lies below the level; of its lower half, what lies above it."""
        size = len(levels)
        for at, (bit, words) in enumerate(levels):
            below, above = bit - 1, ((1 << size) - 1) & ~(bit | (bit - 1))
            said = below if at * 2 >= size else above
            if said:
                for noun in nouns:
                    for word in words:
                        self.add(f"{noun} not {word}", (Stated(trait.name, said),))

    def _of_yes_or_no(self, nouns: Sequence[str], trait: str) -> None:
        for noun in nouns:
            self.add(f"{noun} yes", (Stated(trait, YES),))
            self.add(f"{noun} no", (Stated(trait, NO),))

    def _of_places(
        self, nouns: Sequence[str], levels: Sequence[tuple[int, tuple[str, ...]]], trait: str, kind: Places
    ) -> None:
        everything = SaidPlaces.any_of(kind)
        for bits, words in (*levels, *_pairs(kind, levels)):
            said = SaidPlaces(bits, everything.possible, bits.bit_count(), everything.most)
            free = everything.possible & ~bits
            without = SaidPlaces(0, free, 0, free.bit_count())
            for noun in nouns:
                for word in words:
                    for wording in (f"{noun} on {word}", f"{noun} {word}", f"{word} {noun}", f"{word} with {noun}"):
                        self.add(wording, (Stated(trait, said),))
                    for wording in (f"no {noun} on {word}", f"{word} no {noun}", f"{word} without {noun}"):
                        self.add(wording, (Stated(trait, without),))
        for bits, words in _sides(levels, kind):
            # Of eyes or cheeks `one` leaves the other free; of fins there are more. Without `one` it may be both.
            most = 1 if bits == everything.possible else everything.most
            for noun in nouns:
                for word in words:
                    for one, said in (("1 ", SaidPlaces(0, everything.possible, 1, most)), ("", _some(everything))):
                        if not one or word.isascii():
                            self.add(f"{noun} on {one}{word}", (Stated(trait, said),))
                            self.add(f"{one}{word} {noun}", (Stated(trait, said),))


def _some(everything: SaidPlaces) -> SaidPlaces:
    return SaidPlaces(0, everything.possible, 1, everything.most)


def _nouns_of(trait: Trait) -> Iterator[str]:
    """What a trait is called by its name and its title: `kiwa`, `rear edge of the red`, `キワ`."""
    yield trait.name.replace("_", " ")
    for title in (trait.title, *trait.titles.values()):
        plain, _, inside = title.partition("(")
        plain = plain.split(",")[0]
        if plain.strip() and not plain.strip().startswith(("where ", "how ")):
            yield plain.strip()


def _levels(kind: Kind, spoken: Iterable[Spoken]) -> list[tuple[int, tuple[str, ...]]]:
    """The words of a kind, each by its bit, with all that is said for it."""
    found: list[tuple[int, tuple[str, ...]]] = []
    for i, word in enumerate(words_of(kind)):
        said = [word.replace("_", " "), *_places_said(word, kind)]
        said += [each for one in spoken for each in wordings_in(one.levels.get(word, ""))]
        found.append((1 << i, tuple(dict.fromkeys(said))))
    return found


_SAID_OF_PLACES = {
    "pectoral": "pectoral, pectoral fin, pec, pec fin, breast fin, 胸鰭",
    "eye": "eye, 目",
    "cheek": "cheek, 頬",
    "gill": "gill, gill cover, gill plate, 鰓",
    "flank": "flank, side, body side",
    "dorsal": "dorsal, dorsal fin, back fin, top fin, 背鰭",
    "pelvic": "pelvic, pelvic fin, pelvics, ventral fin, ventral, belly fin, 腹鰭",
    "anal": "anal fin, anal, 尻鰭",
    "tail": "tail, tail fin, caudal fin, caudal, 尾鰭",
    "nose": "nose, snout, 鼻",
    "lips": "lips, mouth, 唇",
    "crown": "crown, head, top of the head, forehead, 頭",
    "nape": "nape, neck, behind the head",
    "shoulder": "shoulder, 肩",
    "front_back": "front of the back, front back, behind the shoulder",
    "middle_back": "middle of the back, middle back, mid back, middle, back, 背",
    "rear_back": "rear of the back, rear back, behind the dorsal, rear",
    "belly": "belly, 腹",
    "stem": "tail stem, stem, near the tail, before the tail, peduncle, tail base, tail root, ozutsu, 尾筒",
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


def _sides(levels: Sequence[tuple[int, tuple[str, ...]]], kind: Places) -> Iterator[tuple[int, tuple[str, ...]]]:
    """What has a left and a right, both bits together, with what one of them is called."""
    for i, word in enumerate(kind.places):
        rest = word.removeprefix("left_")
        if rest != word and f"right_{rest}" in kind.places:
            other = kind.places.index(f"right_{rest}")
            said = wordings_in(_SAID_OF_PLACES.get(rest, rest.replace("_", " ")))
            yield levels[i][0] | 1 << other, said


def _pairs(kind: Places, levels: Sequence[tuple[int, tuple[str, ...]]]) -> Iterator[tuple[int, tuple[str, ...]]]:
    for bits, said in _sides(levels, kind):
        both = [f"both {word}" for word in said if word.isascii()]
        yield bits, (*both, *(f"両{word}" for word in said if not word.isascii()), *(f"left and right {w}" for w in said))


@lru_cache(maxsize=4096)
def _parsed(means: str) -> tuple[st.Stated, ...] | None:
    read = read_text(f'phrase "x" means {means}\n', "")
    statement = read.rules.statements[0] if read.rules.statements else None
    return statement.stated if isinstance(statement, st.Phrase) and not read.problems else None


def read_means(means: str, traits: Mapping[str, Trait]) -> tuple[Stated, ...] | None:
    """What the words behind `means` say of traits; None where a trait is not among these."""
    parsed = _parsed(means)
    if parsed is None:
        raise ValueError(f"no meaning: {means}")
    problems: list[Problem] = []
    stated = check_stated(parsed, traits, True, problems, means)
    if stated is None and not all(problem.code == "unknown-name" for problem in problems):
        raise ValueError("\n".join(str(problem) for problem in problems))
    return stated


def noted_at_least(kind: Kind) -> Said | None:
    """What the name of a trait alone says of it: that there is some."""
    match kind:
        case YesNo():
            return YES
        case Count(high):
            return Span(1.0, float(high))
        case Places():
            every = SaidPlaces.any_of(kind)
            return SaidPlaces(0, every.possible, 1, every.most)
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
            return SaidPlaces.exactly(0)
        case Scale(steps) if steps[0] == "none":
            return 1
        case _:
            return None


def takes_number(kind: Kind) -> bool:
    """Whether a number can stand beside the name of a trait."""
    return isinstance(kind, Number | Count)


def is_text(kind: Kind) -> bool:
    """Whether a trait takes any text."""
    return isinstance(kind, Label)
