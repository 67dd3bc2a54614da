"""What the names of a rule file mean, as far as the last look at it could tell."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from functools import cached_property
from typing import TypeVar

from attrs import field

from koirules.language import statements as st
from koirules.language.parse.reader import Read
from koirules.standard.checked import Checked, Known
from koirules.standard.inherit.merging import head_of, name_of
from koirules.standard.parts import Rules, Setting
from koirules.standard.tree import Node
from koirules.standard.types import Numeric, Steps, Type, type_of_kind
from koirules.values import frozen
from koirules.vocabulary.skins import Varieties
from koirules.vocabulary.traits import Trait

_S = TypeVar("_S")


def part_of(statement: st.Statement) -> st.Part | None:
    """The part of a standard that a statement is, or puts in place of another; None for a header and for `drop`."""
    inner = statement.statement if isinstance(statement, st.Replace) else statement
    return None if isinstance(inner, st.Header | st.Drop | st.Replace | st.Rename) else inner


@frozen(slots=False)
class Meaning:
    """What the names of a file mean. read, checked: of one text. known: of that text, or of the last that could be told."""

    varieties: Varieties = field(repr=False)
    read: Read = field(repr=False)
    checked: Checked = field(repr=False)
    known: Known | None = field(repr=False)

    @property
    def rules(self) -> Rules | None:
        """The checked rules, None where the file is refused."""
        return self.checked.rules

    @property
    def traits(self) -> Mapping[str, Trait]:
        """Every trait by name."""
        return {} if self.known is None else self.known.traits

    @property
    def settings(self) -> Mapping[str, Setting]:
        """Every setting by name."""
        return {} if self.known is None else self.known.settings

    @cached_property
    def terms(self) -> Mapping[str, Node | None]:
        """What every term stands for, by name; None for one that has problems."""
        terms = {} if self.known is None else self.known.terms
        return {name: None if term is None else term.node for name, term in list(terms.items())}

    @cached_property
    def statements(self) -> tuple[st.Statement, ...]:
        """The statements of the file, and of its bases where they could be read."""
        return self.read.rules.statements if self.known is None else self.known.source.statements

    @cached_property
    def parts(self) -> tuple[st.Part, ...]:
        """The parts of the standard, those of its bases too."""
        return tuple(part for part in map(part_of, self.statements) if part is not None)

    @cached_property
    def _by_head(self) -> dict[str, dict[str, st.Part | None]]:
        found: dict[str, dict[str, st.Part | None]] = {}
        for part in self.parts:
            found.setdefault(head_of(part), {})[name_of(part)] = part
        for head, name in self.read.rules.unread:
            if name:
                found.setdefault(head, {}).setdefault(name, None)
        return found

    @property
    def header(self) -> st.Header | None:
        """The file's own header."""
        return next(self.own(st.Header), None)

    def own(self, kind: type[_S]) -> Iterator[_S]:
        """The statements of a kind that stand in the file itself."""
        return (statement for statement in self.read.rules.statements if isinstance(statement, kind))

    def named(self, *heads: str) -> dict[str, st.Part | None]:
        """What has a name and is of one of these heads, by name; None for what cannot be read yet."""
        found = [self._by_head.get(head, {}) for head in heads]
        return found[0] if len(found) == 1 else {name: part for each in found for name, part in each.items()}

    def of_base(self, head: str) -> dict[str, st.Part]:
        """What the bases have of a head, by name."""
        file = self.read.rules.file
        return {name_of(part): part for part in self.parts if head_of(part) == head and part.place.file != file}

    @cached_property
    def grades(self) -> tuple[str, ...]:
        """The grades, best first."""
        return tuple(self.named("grade"))

    def type_of(self, name: str) -> Type | None:
        """The type of what a trait, term or setting stands for; None where it is not known."""
        if name in self.traits:
            return type_of_kind(self.traits[name].kind)
        if name in self.settings:
            setting = self.settings[name]
            return Numeric(None if setting.unit is None else setting.unit.dimension, setting.whole)
        node = self.terms.get(name)
        return None if node is None else node.type

    @property
    def grade_type(self) -> Type:
        """The type of `grade`."""
        return Steps(tuple(reversed(self.grades)), ordered=True)

    @property
    def values(self) -> list[str]:
        """Every name that an expression can read."""
        return list(dict.fromkeys([*self.traits, *self.named("trait", "setting", "term")]))
