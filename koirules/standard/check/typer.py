"""What the typing of one kind of expression needs from the typing of all of them."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from typing import Protocol

from koirules.language.syntax import Expression, Word
from koirules.meaning.operators import Operation
from koirules.problems import Place, Problem
from koirules.standard.derivations import TypedMeasure
from koirules.standard.parts import Setting
from koirules.standard.tree import Node
from koirules.standard.types import Steps, Type
from koirules.vocabulary.traits import Trait


class Typing(Protocol):
    """Types expressions and gathers their problems."""

    @property
    def problems(self) -> list[Problem]:
        """The problems found so far."""

    @property
    def traits(self) -> Mapping[str, Trait]:
        """The traits that can be read, by name."""

    @property
    def measures(self) -> Sequence[TypedMeasure]:
        """How some of the traits are derived from others."""

    @property
    def silent(self) -> Collection[str]:
        """The names of the traits of which silence means something."""

    @property
    def settings(self) -> Mapping[str, Setting]:
        """The settings of the file, by name."""

    @property
    def grows_by(self) -> str:
        """The trait, a length, that growth goes by."""

    def kind_of_name(self, name: str) -> str | None:
        """What a name belongs to: trait, setting or term."""

    def unknown(self, word: Word, *, common: bool = False) -> None:
        """Report a name that nothing has. common: whether it names what fish have in common."""

    def names(self) -> list[str]:
        """Every name that an expression can read."""

    def node(self, expression: Expression, expected: Steps | None = None) -> Node | None:
        """The typed node of an expression, None where it has problems."""

    def condition(self, expression: Expression) -> Node | None:
        """The node of an expression that must be a condition."""

    def number(self, expression: Expression, word: str) -> Node | None:
        """The node of an expression that must be a number or a count."""

    def built(self, operation: Operation, nodes: Sequence[Node | None], kind: Type, place: Place) -> Node | None:
        """An operation over nodes, None where one of them is."""
