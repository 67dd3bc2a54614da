"""Values, names and pieces of a rule file as a person reads them."""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterator, Mapping
from functools import cached_property

from attrs import frozen

from koirules.meaning.operators import LIMIT
from koirules.problems import Place
from koirules.results.parts_read import is_assumed
from koirules.standard.parts import Rules, Setting
from koirules.standard.reading_nodes import trait_of, unit_shown
from koirules.standard.titles import Titled
from koirules.standard.tree import Apply, GradeRead, Node, walk
from koirules.standard.types import Numeric, Steps, Truth
from koirules.standard.wording import number_words, told_number
from koirules.vocabulary.kinds import Label, Places
from koirules.vocabulary.readings import PlaceSet, Reading, show_reading
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import Unit

# Sections, faults and rounds have names of their own, and what stands behind a number is its unit.
_TOKEN = re.compile(r'"[^"]*"|(?:section|fault|kept by)\s+\w+|[0-9.]+\s*(?:[^\W\d]\w*|%)|[^\W\d]\w*')


@frozen
class Said:
    """A piece of what a rule says.

    head: the head word of the statement whose title or value it is (`trait`, `term`, `setting`, `section`, `fault`, `round`,
    `grade`), "" for the words between; name: its name; titled: its title, which the text is except of rounds and grades, where
    it is the name.
    """

    text: str
    head: str = ""
    name: str = ""
    titled: Titled | None = None


@frozen
class PlainWords:
    """Says values and names of a standard in words, in one language where its labels carry it.

    exact: whether numbers keep all of their digits.
    """

    rules: Rules
    settings: Mapping[str, Setting]
    language: str | None = None
    exact: bool = False

    def number(self, value: float, kind: Numeric, unit: Unit | None = None, line: float | None = None) -> str:
        """A held number with its unit, rounded for people unless all is said exactly.

        line: the number that it is compared with, which it must not be mistaken for.
        """
        if self.exact:
            return number_words(value, kind, unit)
        return told_number(value, kind, unit, line)

    def of(self, titled: Titled) -> str:
        """A title."""
        return titled.within(self.language)

    def trait(self, trait: Trait) -> str:
        """The title of a trait."""
        return trait.within(self.language)

    def recorded(self, trait: Trait, record: Mapping[str, Reading]) -> str:
        """What was recorded of a trait: `14.5 cm`, `fair or sharp`, `fair (not mentioned)`, `not recorded`."""
        reading = record.get(trait.name)
        if reading is None:
            return "not recorded"
        silent = " (not mentioned)" if is_assumed(self.rules, trait.name, record) else ""
        return self.as_read(trait, record) + silent

    def as_read(self, trait: Trait, record: Mapping[str, Reading]) -> str:
        """The reading of a trait that a record has: `14.5 cm`, `fair or sharp`."""
        reading = record[trait.name]
        written = show_reading(trait.kind, reading, exact=self.exact)
        if isinstance(trait.kind, Places):
            listed = written if "perhaps" in written else written.replace(" ", ", ")
            return listed.replace("_", " ")
        return written if isinstance(trait.kind, Label) else written.replace("_", " ")

    def setting(self, setting: Setting) -> str:
        """The value of a setting in this run, with its unit."""
        kind = Numeric(None if setting.unit is None else setting.unit.dimension)
        return number_words(float(setting.value), kind, setting.unit)

    def value(self, node: Node, first: object, second: object) -> str:
        """What was worked out of an expression, from both ends of it."""
        match node.type, first, second:
            case Numeric() as kind, int() | float() as low, int() | float() as high:
                if (low, high) == (-LIMIT, LIMIT):
                    return "any number"
                unit = unit_shown(node)
                lowest, highest = self.number(low, kind, unit), self.number(high, kind, unit)
                if low < high and lowest == highest:
                    lowest, highest = number_words(low, kind, unit), number_words(high, kind, unit)
                return lowest if low == high else f"{lowest} to {highest}"
            case Truth(), surely, possibly:
                return "yes" if surely else "yes or no" if possibly else "no"
            case Steps(words), int(bits), _:
                return " or ".join(word for i, word in enumerate(words) if bits >> i & 1).replace("_", " ")
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
        if head == "section" and (head, name) in self._titles:
            title = self._titles[head, name]
            yield Said(self.of(title), head, name, title)
        elif head == "fault" and (head, name) in self._titles:
            title = self._titles[head, name]
            yield Said("“")
            yield Said(self.of(title), head, name, title)
            yield Said("”")
        elif head == "kept by" and ("round", name) in self._titles:
            yield Said("kept by ")
            yield Said(name.replace("_", " "), "round", name, self._titles["round", name])
        elif ("grade", word) in self._titles and any(_within(at, place) for place in self._about_grades):
            yield Said(word.replace("_", " "), "grade", word, self._titles["grade", word])
        elif word in self.settings:
            yield Said(self.setting(self.settings[word]), "setting", word)
        elif word in self.rules.terms:
            title = self.rules.terms[word].title
            yield Said(self.of(title), "term", word, title)
        elif word in self.rules.traits:
            trait = self.rules.traits[word]
            yield Said(self.trait(trait), "trait", word, Titled(trait.title, trait.titles))
        else:
            yield Said(word if word.startswith('"') else word.replace("_", " "))


def _within(at: Place, place: Place) -> bool:
    return (
        at.file == place.file
        and (place.line, place.column) <= (at.line, at.column)
        and (at.line, at.column) < (place.end_line, place.end_column)
    )
