"""Values, names and pieces of a rule file as a person reads them."""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterator, Mapping
from functools import cached_property
from typing import TYPE_CHECKING

from koirules.explain.pieces import Said
from koirules.languages import ENGLISH, Tongue, beside, tongue_of
from koirules.meaning.operators import LIMIT
from koirules.problems import Place
from koirules.results.parts_read import is_assumed
from koirules.standard.parts import Rules, Setting
from koirules.standard.reading_nodes import trait_of, unit_shown
from koirules.standard.titles import Titled
from koirules.standard.tree import Apply, GradeRead, Node, walk
from koirules.standard.types import Numeric, Steps, Truth
from koirules.standard.wording import number_words, told_number
from koirules.values import define
from koirules.vocabulary.kinds import Choice, Count, Kind, Label, Number, Places, Scale, YesNo, words_of
from koirules.vocabulary.readings import PlaceSet, Reading, Span, show_number, show_reading, words_in, write_number
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import Unit

if TYPE_CHECKING:
    from koirules.explain.retold import Retold

# Sections, faults and rounds have names of their own, and what stands behind a number is its unit.
_TOKEN = re.compile(r'"[^"]*"|(?:section|fault|kept by)\s+\w+|[0-9.]+\s*(?:[^\W\d]\w*|%)|[^\W\d]\w*')


def tongue_for(rules: Rules, language: str | None) -> Tongue:
    """The language to tell a standard in, with the catalogues beside its rule file and those of its bases."""
    if language is None:
        return ENGLISH
    files = dict.fromkeys([*(one.place.file for one in rules.source.statements), rules.file])
    tongue = tongue_of(language).also(beside(files, language))
    # What a title says in a language, the same words say wherever else they stand.
    return tongue.knowing({one.text: one.others[language] for one in rules.titled if language in one.others})


@define(slots=False, frozen=True)
class PlainWords:
    """Says values and names of a standard in words, in one language as far as its labels and the catalogues carry it.

    exact: whether numbers keep all of their digits.
    """

    rules: Rules
    settings: Mapping[str, Setting]
    language: str | None = None
    exact: bool = False

    @cached_property
    def tongue(self) -> Tongue:
        """The language that it speaks."""
        return tongue_for(self.rules, self.language)

    @cached_property
    def _retold(self) -> Retold:
        from koirules.explain.retold import Retold

        return Retold(self)

    def number(self, value: float, kind: Numeric, unit: Unit | None = None, line: float | None = None) -> str:
        """A held number with its unit, rounded for people unless all is said exactly.

        line: the number that it is compared with, which it must not be mistaken for.
        """
        if self.exact:
            return self.exactly(value, kind, unit)
        return self.tongue.quantity(told_number(value, kind, unit, line))

    def exactly(self, value: float, kind: Numeric, unit: Unit | None = None) -> str:
        """A held number with its unit and all of its digits."""
        return self.tongue.quantity(number_words(value, kind, unit))

    def lowering(self, by: int) -> str:
        """What a fault does that lowers by so many grades."""
        return self.tongue.plural("lowers by {number} grade", "lowers by {number} grades", by)

    def of(self, titled: Titled) -> str:
        """A title."""
        if self.language is None or self.language in titled.others:
            return titled.within(self.language)
        return self.tongue.of(titled.text)

    def trait(self, trait: Trait) -> str:
        """The title of a trait."""
        if self.language is None or self.language in trait.titles:
            return trait.within(self.language)
        return self.tongue.of(trait.title, trait.name)

    def word(self, word: str, of: str = "") -> str:
        """A step, an option or a place. of: the name of its trait."""
        return self.tongue.of(word.replace("_", " "), of)

    def recorded(self, trait: Trait, record: Mapping[str, Reading]) -> str:
        """What was recorded of a trait: `14.5 cm`, `fair or sharp`, `fair (not mentioned)`, `not recorded`."""
        reading = record.get(trait.name)
        if reading is None:
            return self.tongue("not recorded")
        if is_assumed(self.rules, trait.name, record):
            return self.tongue("{value} (not mentioned)", value=self.as_read(trait, record))
        return self.as_read(trait, record)

    def as_read(self, trait: Trait, record: Mapping[str, Reading]) -> str:
        """The reading of a trait that a record has: `14.5 cm`, `fair or sharp`."""
        reading, kind = record[trait.name], trait.kind
        if self.language is not None:
            return self._translated(kind, reading, trait.name)
        written = show_reading(kind, reading, exact=self.exact)
        if isinstance(kind, Places):
            listed = written if "perhaps" in written else written.replace(" ", ", ")
            return listed.replace("_", " ")
        return written if isinstance(kind, Label) else written.replace("_", " ")

    def _translated(self, kind: Kind, reading: Reading, name: str) -> str:
        """A reading in another language, word by word."""
        tongue = self.tongue
        match kind, reading:
            case (Scale() | Choice() | YesNo(), int(bits)):
                return tongue.joined((self.word(word, name) for word in words_in(kind, bits)), " or ")
            case (Places() as kind, PlaceSet() as reading):
                return self._places(kind, reading, name)
            case (Number() | Count(), Span(low, high)):
                write = write_number if self.exact else show_number
                ends = [tongue.quantity(write(end, kind)) for end in (low, high)]
                if low != high and ends[0] == ends[1]:
                    ends = [tongue.quantity(write_number(end, kind)) for end in (low, high)]
                return ends[0] if low == high else tongue.stretch(*ends)
            case (Label(), str(text)):
                return tongue.of(text)
            case _:
                return show_reading(kind, reading, exact=self.exact)

    def _places(self, kind: Places, reading: PlaceSet, name: str) -> str:
        """Places in another language: those that are sure, then those that may be, with how many where that is known."""
        tongue = self.tongue
        surely = tongue.joined(self.word(word, name) for word in words_in(kind, reading.sure))
        free = words_in(kind, reading.possible & ~reading.sure)
        if not free:
            return surely or self.word("none", name)
        places = tongue.joined(self.word(word, name) for word in free)
        least, most = (count - reading.sure.bit_count() for count in (reading.least, reading.most))
        if not reading.is_counted:
            told = tongue("perhaps {places}", places=places)
        elif least == most:
            told = tongue("{number} of ({places})", number=least, places=places)
        elif most == len(free):
            told = tongue("at least {number} of ({places})", number=least, places=places)
        elif least == 0:
            told = tongue("at most {number} of ({places})", number=most, places=places)
        else:
            told = tongue("{range} of ({places})", range=tongue.stretch(str(least), str(most)), places=places)
        return tongue.joined(filter(None, (surely, told)))

    def setting(self, setting: Setting) -> str:
        """The value of a setting in this run, with its unit."""
        kind = Numeric(None if setting.unit is None else setting.unit.dimension)
        return self.exactly(float(setting.value), kind, setting.unit)

    def value(self, node: Node, first: object, second: object) -> str:
        """What was worked out of an expression, from both ends of it."""
        match node.type, first, second:
            case Numeric() as kind, int() | float() as low, int() | float() as high:
                if (low, high) == (-LIMIT, LIMIT):
                    return self.tongue("any number")
                unit = unit_shown(node)
                lowest, highest = self.number(low, kind, unit), self.number(high, kind, unit)
                if low < high and lowest == highest:
                    lowest, highest = self.exactly(low, kind, unit), self.exactly(high, kind, unit)
                return lowest if low == high else self.tongue.stretch(lowest, highest)
            case Truth(), surely, possibly:
                trait = trait_of(node)
                either = [self.word(word, "" if trait is None else trait.name) for word in ("yes", "no")]
                return either[0] if surely else self.tongue.listed(either, " or ") if possibly else either[1]
            case Steps(words), int(bits), _ if isinstance(node, GradeRead):
                titles = (
                    self.of(self._titles["grade", name]).replace("_", " ")
                    for i, name in enumerate(words)
                    if bits >> i & 1
                )
                return self.tongue.joined(titles, " or ")
            case Steps(words), int(bits), _:
                trait = trait_of(node)
                name = "" if trait is None else trait.name
                return self.tongue.joined((self.word(w, name) for i, w in enumerate(words) if bits >> i & 1), " or ")
            case _:
                trait = trait_of(node)
                if trait is None:
                    return ""
                record: dict[str, Reading] = {}
                if isinstance(first, int) and isinstance(second, int):
                    record[trait.name] = PlaceSet(first, second)
                elif isinstance(first, str):
                    record[trait.name] = first
                return self.recorded(trait, record)

    def both_ends(self, node: Node, value: object) -> str:
        """The same, from a value as a node has it: both ends in one, or one alone."""
        first, second, *_ = value if isinstance(value, tuple) else (value, None)
        return self.value(node, first, second) or str(value)

    def told(self, place: Place) -> str:
        """What stands in the rule file at a place, with titles for names and values for settings."""
        return "".join(piece.text for piece in self.pieces(place))

    def pieces(self, place: Place) -> tuple[Said, ...]:
        """The same in pieces, so that each name can be told from the words between."""
        if self.language is not None:
            retold = self._retold.pieces(place)
            if retold is not None:
                return retold
        words = self.rules.placed_words(place)
        text = " ".join(word for word, _, _ in words)
        starts = [0]
        for word, _, _ in words:
            starts.append(starts[-1] + len(word) + 1)
        found: list[Said] = []
        done = 0
        for token in _TOKEN.finditer(text):
            if token.start() > done:
                found.append(Said(text[done : token.start()]))
            i = bisect_right(starts, token.start()) - 1
            column = words[i][2] + token.start() - starts[i]
            found.extend(self._named(token.group(), Place(place.file, words[i][1], column, words[i][1], column)))
            done = token.end()
        return (*found, *([Said(text[done:])] if done < len(text) else []))

    @cached_property
    def _about_grades(self) -> tuple[Place, ...]:
        """Where a comparison with `grade` stands, in which names are those of grades."""
        roots = (*self.rules.roots, *(term.node for term in self.rules.terms.values()))
        nodes = (node for root in roots for node in walk(root, into_terms=False, into_sources=True))
        return tuple(
            node.place
            for node in nodes
            if isinstance(node, Apply) and any(isinstance(operand, GradeRead) for operand in node.operands)
        )

    @cached_property
    def _titles(self) -> Mapping[tuple[str, str], Titled]:
        """The title of what has names of its own, by head word and name."""
        rules = self.rules
        return {
            **{("section", section.name): section.title for section in rules.sections},
            **{("fault", limit.name): limit.title for limit in rules.limits if limit.head == "fault"},
            **{("grade", grade.name): grade.title for grade in rules.grades},
            **{("round", one.name): one.title for one in rules.rounds},
        }

    def _named(self, word: str, at: Place) -> Iterator[Said]:
        head, _, rest = word.rpartition(" ")
        name = rest.strip()
        if (head == "section" and (head, name) in self._titles) or (head == "fault" and (head, name) in self._titles):
            yield from self.named(head, name)
        elif head == "kept by" and ("round", name) in self._titles:
            yield Said("kept by ")
            yield from self.named("round", name)
        elif ("grade", word) in self._titles and any(_within(at, place) for place in self._about_grades):
            yield from self.named("grade", word)
        elif self.is_named(word):
            yield from self.named("", word)
        else:
            yield Said(word if word.startswith('"') else self.word(word))

    def is_named(self, word: str) -> bool:
        """Whether a word is the name of a setting, a term or a trait."""
        return word in self.settings or word in self.rules.terms or word in self.rules.traits

    def words_of(self, trait: Trait) -> tuple[str, ...]:
        """The words that a trait can be."""
        return words_of(trait.kind)

    def named(self, head: str, name: str) -> Iterator[Said]:
        """What a name stands for. head: `section`, `fault`, `grade` or `round`; "" for a setting, a term or a trait."""
        title = self._titles.get((head, name))
        if title is not None:
            found = Said(self.of(title).replace("_", " "), head, name, title)
            yield from (Said("“"), found, Said("”")) if head == "fault" else (found,)
        elif name in self.settings:
            yield Said(self.setting(self.settings[name]), "setting", name)
        elif name in self.rules.terms:
            title = self.rules.terms[name].title
            yield Said(self.of(title), "term", name, title)
        else:
            trait = self.rules.traits[name]
            yield Said(self.trait(trait), "trait", name, Titled(trait.title, trait.titles))


def _within(at: Place, place: Place) -> bool:
    return (
        at.file == place.file
        and (place.line, place.column) <= (at.line, at.column)
        and (at.line, at.column) < (place.end_line, place.end_column)
    )
