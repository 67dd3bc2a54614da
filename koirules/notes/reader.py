"""Notes read whole: each fish with what was said of it, its remarks put together."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from attrs import evolve, field

from koirules.notes.found import Found
from koirules.notes.leaning import Leaning, corrected
from koirules.notes.lexicon import Lexicon
from koirules.notes.lines import ALL, Line, LineCutter
from koirules.notes.remarks import Remark, RemarkReader, Sort
from koirules.notes.subjects import goes_on, is_hedge, named_behind
from koirules.problems import Cell, Problem
from koirules.problems import noting as say
from koirules.standard.check.phrasing import meet
from koirules.standard.parts import Rules, Said, words_of_one_trait
from koirules.standard.tree import TraitRead, walk
from koirules.values import define, frozen
from koirules.vocabulary.kinds import Kind, Places
from koirules.vocabulary.nearness import traits_called
from koirules.vocabulary.phrases import spread
from koirules.vocabulary.readings import PlaceSet, Reading, Span, write_reading
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.wordings import tokens_of

UNKNOWN = "?"
"""What a cell holds of a trait that was spoken of and cannot be told."""

_MOST_REMEMBERED = 10_000
_BESIDE_A_VERDICT = frozenset({Sort.VERDICT, Sort.NOTHING, Sort.FORECAST, Sort.COMPARISON, Sort.CORRECTION})
"""What may stand between a verdict and the end of a line, which it still is last of."""


_LAST_WORDS: Mapping[str, frozenset[tuple[str, ...]]] = {
    "in": frozenset(spread("yes, yes yes, yeah, okay, ok, oh yes, yes okay, okay then")),
    "out": frozenset(
        spread(
            "no, no no, sorry no, so no, nope, oh no, nah, sorry (love|darling|girl|boy|mate|old girl|old boy|my dear|pet)"
        )
    ),
    "unsure": frozenset(spread("wait, hm, hmm, hm hm, hmm hmm, maybe maybe")),
}
_OF_BOARD_AND_SCALE = frozenset({"length", "weight"})


@frozen
class NotedFish:
    """A fish of the notes, at one look.

    said: what was said of each trait, None where it cannot be told; those of the lot are in `lot` and not here.
    unsure: traits with a hedge. details: how long or large parts are, which no trait holds. unread: remarks that were not
    understood, and pairs that contradict each other. line: where it was first named.
    """

    name: str
    look: int
    line: int
    said: Mapping[str, Said | None]
    remarks: tuple[Remark, ...]
    verdict: str
    unsure: tuple[str, ...]
    forecasts: tuple[str, ...]
    comparisons: tuple[str, ...]
    details: tuple[str, ...]
    unread: tuple[str, ...]
    phrases: Mapping[str, tuple[str, ...]]

    def __repr__(self) -> str:
        look = f", look {self.look}" if self.look else ""
        return f"NotedFish({self.name!r}{look}, {len(self.said)} traits, {self.verdict!r}, unread={len(self.unread)})"


@frozen(slots=False)
class Notes:
    """Notes as they were read.

    fish: in the order in which they were first named. lot: what holds for all. seal: of the phrases.
    """

    file: str
    fish: tuple[NotedFish, ...]
    lot: NotedFish | None
    problems: tuple[Problem, ...]
    traits: Mapping[str, Trait] = field(repr=False)
    seal: str = ""

    def __repr__(self) -> str:
        unread = sum(len(one.unread) for one in (*self.fish, *([] if self.lot is None else [self.lot])))
        return f"Notes({self.file!r}, {len(self.fish)} fish, {unread} remarks unread, {len(self.problems)} problems)"

    @property
    def records(self) -> list[dict[str, str]]:
        """A record of each fish for `Standard.grade`: `fish` with its name, then each trait that was told, as a sheet has it."""
        return [{"fish": one.name, **cells(one, self.traits, self.lot)} for one in self.fish]


@define
class _Heard:
    """What was heard of one fish so far, remark by remark."""

    name: str
    look: int
    line: int
    remarks: list[Remark] = field(factory=list)


@frozen(slots=False)
class NotesReader:
    """Reads notes by the phrases of a standard."""

    rules: Rules
    lexicon: Lexicon
    remarks: RemarkReader
    leaning: Leaning
    _lines: dict[tuple[str, ...], list[Remark]] = field(factory=dict, init=False, repr=False, eq=False)

    @classmethod
    def of(cls, rules: Rules) -> NotesReader:
        """The reader of a standard."""
        lexicon = Lexicon.of(rules)
        grades = {
            words: grade.name for grade in rules.grades for words in (grade.name.replace("_", " "), grade.title.text)
        }
        corrections = [words for phrase in rules.phrases if phrase.corrects for _, words in phrase.wordings]
        remarks = RemarkReader.of(lexicon, grades, corrections)
        return cls(rules, lexicon, remarks, Leaning(remarks, lexicon.traits))

    def read(self, text: str, file: str = "notes") -> Notes:
        """Read a text of notes. What is wrong with it is in `problems`; nothing is raised for it."""
        hearing = Hearing.of(self, file)
        for raw in text.splitlines():
            hearing.take(raw)
        return hearing.notes

    def called(self, words: str) -> list[str]:
        """The traits that people call so; of several those that the rules read, if any."""
        found = traits_called(words, self.rules.traits, self.rules.sayings)
        read = {node.trait.name for root in self.rules.roots for node in walk(root) if isinstance(node, TraitRead)}
        return [name for name in found if name in read] or found

    def cutter(self) -> LineCutter:
        """What cuts lines of notes by these phrases."""
        return LineCutter(self._counted, self._spoken)

    def _spoken(self, words: str) -> bool:
        """Whether words before a colon are said of a fish."""
        tokens = tokens_of(words)
        return any(hit.end == len(tokens) for hit in self.lexicon.hits(tokens, 0)) and not words.isdigit()

    def _counted(self, rest: str) -> bool:
        """Whether a text begins with something that is counted or measured by name."""
        tokens = tokens_of(rest.split(",", maxsplit=1)[0])
        return any(hit.names for hit in self.lexicon.hits(tokens, 0)) or bool(
            [hit for hit in self.lexicon.hits(("2", *tokens), 0) if hit.end > 1]
        )

    def read_line(self, line: Line) -> list[Remark]:
        """The remarks of a line, without what later ones take back. What was read before is remembered."""
        found = self._lines.get(line.remarks)
        if found is None:
            if len(self._lines) >= _MOST_REMEMBERED:
                self._lines.clear()
            self._lines[line.remarks] = found = corrected(self.read_each(line))
        return found

    def read_each(self, line: Line) -> list[Remark]:
        """The remarks of a line as they were said, each read with those before it."""
        found: list[Remark] = []
        for text in line.remarks:
            remark = self.leaning.read(text, found)
            if not goes_on(remark, found, self.lexicon):
                others = (each for each in self.remarks.others(text) if goes_on(each, found, self.lexicon))
                of_a_part = self.leaning.of_a_part(text, found[-1]) if found else None
                remark = (
                    next(others, None) or of_a_part or self.leaning.behind(text, found) or Remark(text, Sort.UNKNOWN)
                )
            if remark.sort is Sort.UNKNOWN:
                remark = self.leaning.along(text, found) or remark
            if (turned := named_behind(text, found, self.lexicon)) is not None:
                remark = evolve(self.remarks.read(turned), text=text)
                found[-1] = evolve(found[-1], found=(), sort=Sort.NOTHING if remark.found else Sort.UNKNOWN)
            elif remark.sort is Sort.NOTHING and found and is_hedge(text):
                found[-1] = evolve(found[-1], found=tuple(map(self.remarks.hedged, found[-1].found)))
            found.append(remark)
        if len(found) > 1 and not any(remark.verdict for remark in found):
            found[-1] = _as_last_word(found[-1])
        told = [number for number, remark in enumerate(found) if not _may_follow_a_verdict(remark)]
        for number, remark in enumerate(found):
            if remark.sort is Sort.VERDICT and told and told[0] < number < told[-1]:
                found[number] = evolve(remark, sort=Sort.UNKNOWN, verdict="")  # neither first nor last of what is told
        return found

    def cell(self, trait: Trait, text: str) -> Reading | None:
        """What a cell of a trait says in words of a phrase: `crisp`, `no tail stop`; None where it says nothing of it alone."""
        if text.rstrip().endswith(("?", "？")):
            return None  # who asks is not sure, and a cell has no place for that
        tokens = tokens_of(text)
        level = self.lexicon.level(tokens, 0, (trait.name,)) if tokens else None
        if level is not None and level.end == len(tokens) and level.means is not None:
            return level.means.stated[0].said
        remark = self.remarks.read(text)
        if remark.sort is not Sort.TRAITS or remark.verdict or any(found.hedged for found in remark.found):
            return None
        if (
            {found.trait for found in remark.found} != {trait.name}
            or len(remark.found) != 1
            or remark.found[0].said is None
        ):
            return None
        return remark.found[0].said

    def is_own(self, trait: Trait, text: str) -> bool:
        """Whether the page itself has words for a cell of a trait, and not its vocabulary alone."""
        own = words_of_one_trait(self.rules.phrases).get(trait.name, ())
        return tokens_of(text) in [tokens_of(words) for words in own]

    def _is_whole(self, trait: str) -> bool:
        """Whether places that nobody named are out: of a left and a right one, and where silence means that there are none.

        Who says `left eye red` of two red eyes would have said `both`.
        """
        silent, kind = self.rules.silence.get(trait), self.lexicon.traits[trait].kind
        pair = isinstance(kind, Places) and [place.partition("_")[0] for place in kind.places] == ["left", "right"]
        return pair or (silent is not None and silent.reading == PlaceSet(0, 0))

    def _together(self, trait: str, one: Said, other: Said) -> Said | None:
        """What two remarks on a trait come to; of several gaps the widest is meant."""
        if trait in self.lexicon.greatest and isinstance(one, Span) and isinstance(other, Span):
            return Span(max(one.low, other.low), max(one.high, other.high))
        return meet(one, other)

    def gather(self, name: str, look: int, line: int, remarks: Sequence[Remark]) -> NotedFish:
        """What the remarks on a fish come to together."""
        said: dict[str, Said | None] = {}
        by: dict[str, list[str]] = {}
        text: dict[str, str] = {}
        unsure: list[str] = []
        unread: list[str] = []
        verdict = ""
        for remark in remarks:
            if remark.sort in {Sort.UNKNOWN, Sort.NO, Sort.CORRECTION}:
                unread.append(remark.text)
            verdict = remark.verdict or verdict
            for found in remark.found:
                trait = found.trait
                unsure += [trait] if found.hedged else []
                by.setdefault(trait, []).append(found.phrase)
                if trait in said and said[trait] is not None and found.said is not None:
                    together = self._together(trait, said[trait], found.said)  # type: ignore[arg-type]
                    if together is None:
                        unread.append(f"{text[trait]} / {remark.text}")
                    said[trait] = together
                elif trait not in said:
                    said[trait] = found.said
                text[trait] = remark.text
        for trait, each in said.items():
            if (
                self._is_whole(trait)
                and isinstance(each, PlaceSet)
                and each.sure
                and not each.most < each.sure.bit_count()
            ):
                said[trait] = PlaceSet.exactly(each.sure) if each.least <= each.sure.bit_count() else each
        for remark in remarks:
            if remark.sort in {Sort.UNKNOWN, Sort.NO, Sort.CORRECTION}:
                said |= dict.fromkeys(remark.named)
        return NotedFish(
            name,
            look,
            line,
            said,
            tuple(remarks),
            verdict,
            tuple(dict.fromkeys(unsure)),
            tuple(one.text for one in remarks if Sort.FORECAST in {one.sort, one.also}),
            tuple(one.text for one in remarks if Sort.COMPARISON in {one.sort, one.also}),
            tuple(one.text for one in remarks if one.is_detail),
            tuple(dict.fromkeys(unread)),
            {trait: tuple(dict.fromkeys(phrases)) for trait, phrases in by.items()},
        )


@define
class Hearing:
    """Notes while they are taken, a line after another. told: the traits that any line told."""

    reader: NotesReader
    file: str
    cutter: LineCutter
    heard: dict[tuple[str, int], _Heard] = field(factory=dict)
    lot: _Heard | None = None
    problems: list[Problem] = field(factory=list)
    told: set[str] = field(factory=set)
    _gathered: dict[tuple[str, int], NotedFish] = field(factory=dict)

    @classmethod
    def of(cls, reader: NotesReader, file: str) -> Hearing:
        """Nothing heard yet."""
        return cls(reader, file, reader.cutter())

    def take(self, raw: str, *, whole: bool = False) -> list[Problem]:
        """Take a line; what is wrong with it. whole: whether a line with anything wrong is not taken at all."""
        before = self.cutter.copy() if whole else None
        lines = self.cutter.cut(raw)
        wrong = [problem for line in lines for problem in self._wrong(line)]
        if wrong and before is not None:
            self.cutter = before
            return wrong
        self.problems += wrong
        for line in lines:
            if line.names:
                self._take(line)
        return wrong

    def _wrong(self, line: Line) -> list[Problem]:
        site = Cell(self.file, line.number)
        if not line.names:
            return [say.nameless(site, line.remarks[0])]
        there = self.heard.get((line.names[0], line.look))
        again = there is not None and there.line != line.number and line.named and not line.again
        return [say.named_again(site, there.name, there.line)] if there and again and len(line.names) == 1 else []

    def _take(self, line: Line) -> None:
        remarks = self.with_lengths(self.reader.read_line(line))
        for name in line.names:
            if name.casefold() == ALL:
                self.lot = self.lot or _Heard(ALL, 0, line.number)
                self.lot.remarks += remarks
                continue
            key = (name, line.look)
            self._gathered.pop(key, None)
            self.heard.setdefault(key, _Heard(name, line.look, line.number)).remarks += remarks

    def with_lengths(self, remarks: Sequence[Remark]) -> list[Remark]:
        """Remarks with the lengths that are told by a bare number: who says `14 cm` or `14.2` of one fish says `15` of the next.

        On a page that tells weights too, a bare number behind a length is the weight, where it fits that length.
        """
        found: list[Remark] = []
        for remark in remarks:
            measure = None
            leaning = self.reader.leaning
            if remark.sort is Sort.UNKNOWN and ("length" in self.told or leaning.is_fine_length(remark.text)):
                measure = (leaning.weight if "weight" in self.told else leaning.length)(remark.text, found)
                if measure is None and (again := leaning.length_again(remark.text, found)) is not None:
                    measure, found[-1] = again, evolve(found[-1], found=(), sort=Sort.NOTHING)
            found.append(measure or remark)
        self.told |= {one.trait for remark in found for one in remark.found}
        return found

    @property
    def notes(self) -> Notes:
        """What the lines so far come to."""
        gather = self.reader.gather
        for key, one in self.heard.items():
            if key not in self._gathered:
                self._gathered[key] = gather(one.name, one.look, one.line, one.remarks)
        fish = tuple(self._gathered[key] for key in self.heard)
        lot = None if self.lot is None else gather(ALL, 0, self.lot.line, self.lot.remarks)
        lexicon = self.reader.lexicon
        return Notes(self.file, fish, lot, tuple(self.problems), lexicon.traits, lexicon.seal)


def cells(fish: NotedFish, traits: Mapping[str, Trait], lot: NotedFish | None = None) -> dict[str, str]:
    """What was told of a fish as cells of a sheet, by trait; what was said of the lot goes behind its own."""
    whole = {**({} if lot is None else lot.said), **fish.said}
    return {name: cell for name, said in whole.items() if (cell := cell_of(traits[name].kind, said))}


def _as_last_word(remark: Remark) -> Remark:
    """The verdict that a short word is at the end of what is told, where no other one stands: `nidan, mouth crooked, no`.

    Before something else it takes back what was said, or says nothing.
    """
    tokens = tokens_of(remark.text)
    verdict = next((verdict for verdict, words in _LAST_WORDS.items() if tokens in words), None)
    if verdict is None or remark.found:
        return remark
    return evolve(remark, sort=Sort.VERDICT, verdict=verdict)


def _may_follow_a_verdict(remark: Remark) -> bool:
    """Whether a verdict before a remark is still the last of what is told: talk, and what the board and the scale say."""
    measured = {found.trait for found in remark.found}
    return remark.sort in _BESIDE_A_VERDICT or (bool(measured) and measured <= _OF_BOARD_AND_SCALE)


def cell_of(kind: Kind, said: Said | None) -> str:
    """What was said of a trait as a cell of a sheet has it."""
    return UNKNOWN if said is None else write_reading(kind, said)


def understood(fish: Iterable[NotedFish]) -> tuple[int, int]:
    """How many remarks there are, and how many of them were understood."""
    remarks = [remark for one in fish for remark in one.remarks]
    return len(remarks), sum(remark.sort is not Sort.UNKNOWN for remark in remarks)


__all__ = ["ALL", "Found", "Hearing", "NotedFish", "Notes", "NotesReader", "cell_of", "cells", "understood"]
