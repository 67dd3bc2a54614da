"""Values, names and pieces of a rule file as a person reads them."""

from __future__ import annotations

import re
from collections.abc import Mapping

from attrs import frozen

from koirules.problems import Place
from koirules.standard.operations import LIMIT
from koirules.standard.parts import Rules, Setting
from koirules.standard.reading_nodes import trait_of, unit_shown
from koirules.standard.titles import Titled
from koirules.standard.tree import Node
from koirules.standard.types import Numeric, Steps, Truth
from koirules.standard.wording import number_words
from koirules.vocabulary.kinds import Label, Places
from koirules.vocabulary.readings import PlaceSet, Reading, show_reading
from koirules.vocabulary.traits import Trait

# Sections and faults have names of their own, and what stands behind a number is its unit.
_TOKEN = re.compile(r'"[^"]*"|(?:section|fault)\s+\w+|[0-9.]+\s*(?:[^\W\d]\w*|%)|[^\W\d]\w*')


@frozen
class PlainWords:
    """Says values and names of a standard in words, in one language where its labels carry it."""

    rules: Rules
    settings: Mapping[str, Setting]
    language: str | None = None

    def of(self, titled: Titled) -> str:
        """A title."""
        return titled.within(self.language)

    def trait(self, trait: Trait) -> str:
        """The title of a trait."""
        return trait.within(self.language)

    def recorded(self, trait: Trait, record: Mapping[str, Reading]) -> str:
        """What was recorded of a trait: `14.5 cm`, `fair or sharp`, `not recorded`."""
        reading = record.get(trait.name)
        if reading is None:
            return "not recorded"
        written = show_reading(trait.kind, reading)
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
                lowest = number_words(low, kind, unit)
                return lowest if low == high else f"{lowest} to {number_words(high, kind, unit)}"
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
        first, second = value if isinstance(value, tuple) else (value, None)
        return self.value(node, first, second) or str(value)

    def told(self, place: Place) -> str:
        """What stands in the rule file at a place, with titles for names and values for settings."""
        return _TOKEN.sub(lambda found: self._name(found.group()), self.rules.words_at(place))

    def _name(self, word: str) -> str:
        head, _, name = word.partition(" ")
        if head == "section":
            titles = {section.name: self.of(section.title) for section in self.rules.sections}
            return titles.get(name.strip(), name)
        if head == "fault":
            titles = {limit.name: self.of(limit.title) for limit in self.rules.limits if limit.head == "fault"}
            return f"“{titles.get(name.strip(), name)}”"
        if word in self.settings:
            return self.setting(self.settings[word])
        if word in self.rules.terms:
            return self.of(self.rules.terms[word].title)
        if word in self.rules.traits:
            return self.trait(self.rules.traits[word])
        return word if word.startswith('"') else word.replace("_", " ")
