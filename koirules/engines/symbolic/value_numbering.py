"""Numbers for expressions: two of one number are the same value for every fish, also where they stand in two standards."""

from __future__ import annotations

from collections.abc import Hashable, Mapping
from typing import assert_never

from attrs import field

from koirules.meaning.operators import Nature
from koirules.standard.parts import Setting
from koirules.standard.tree import (
    Apply,
    Constant,
    Earlier,
    FaultRead,
    Figure,
    GradeRead,
    Grown,
    Node,
    Recorded,
    ScoreRead,
    SectionRead,
    SettingRead,
    Supplied,
    TermRead,
    TraitRead,
    Written,
    operands_of,
    post_order,
)
from koirules.values import define
from koirules.vocabulary.kinds import describe_kind


@define(eq=False)
class SameValues:
    """Gives the numbers. What a standard works out of its parts (score, sections, faults) is its own: `mark` says whose.

    alike: of these what is the same in all standards: `score`, `section NAME`, `fault NAME`. It is filled in before anything
    that reads them is given a number. own: the traits that follow from others in each standard in its own way. grown: by what
    each standard works a grown trait out, by its mark and the key of the trait.
    """

    alike: set[str] = field(factory=set)
    own: frozenset[str] = frozenset()
    grown: Mapping[tuple[str, str], Hashable] = field(factory=dict)
    _numbers: dict[Hashable, int] = field(factory=dict)
    _known: dict[tuple[int, str], int] = field(factory=dict)
    _kept: list[Node] = field(factory=list)

    def number(self, root: Node, settings: Mapping[str, Setting], mark: str) -> int:
        """The number of an expression; without recursion over sums, which can be long."""

        def beneath(node: Node) -> tuple[Node, ...]:
            return (node.node,) if isinstance(node, TermRead) else operands_of(node)

        for node in post_order(root, beneath, lambda node: (id(node), mark) in self._known):
            said = self._said(node, settings, mark)
            self._kept.append(node)  # a node that is gone gives its id to another one
            self._known[id(node), mark] = said if isinstance(said, int) else self._numbered(said)
        return self._known[id(root), mark]

    def _numbered(self, said: Hashable) -> int:
        return self._numbers.setdefault(said, len(self._numbers))

    def _said(self, node: Node, settings: Mapping[str, Setting], mark: str) -> Hashable:
        """What an expression says; of one that is nothing but another one its number."""
        match node:
            case Constant(type=kind, range=value):
                return ("constant", kind, value)
            case TraitRead(trait=trait):
                return ("trait", trait.name, describe_kind(trait.kind), mark if trait.name in self.own else "")
            case SettingRead(name=name, type=kind):
                return ("setting", kind, settings[name].value)
            case TermRead(node=inner):
                return self._known[id(inner), mark]
            case Supplied(source=source, type=kind):
                if isinstance(source, Grown):
                    return ("grown", kind, self.grown[mark, node.key])
                return ("beside", kind, self._source(source, settings, mark))
            case Recorded(of=of):
                return ("recorded", self.number(of, settings, mark))
            case ScoreRead():
                return self._own("score", mark)
            case SectionRead(name=name):
                return self._own(f"section {name}", mark)
            case FaultRead(name=name):
                return self._own(f"fault {name}", mark)
            case GradeRead():
                return ("grade", mark)
            case Apply(operation=operation, type=kind):
                return ("apply", operation.name, kind, self._operands(node, mark))
            case _:
                assert_never(node)

    def _operands(self, node: Apply, mark: str) -> tuple[int, ...]:
        """The numbers of operands, in one order where their order changes nothing."""
        numbers = (self._known[id(one), mark] for one in node.operands)
        return tuple(sorted(numbers) if Nature.COMMUTES in node.operation.nature else numbers)

    def _own(self, what: str, mark: str) -> Hashable:
        return (what, "" if what in self.alike else mark)

    def _source(self, source: Figure | Earlier | Written, settings: Mapping[str, Setting], mark: str) -> Hashable:
        of = self.number(source.of, settings, mark)
        match source:
            case Figure(kind, percent, kept_by=kept_by, least=least, groups=groups):
                among = tuple(self.number(node, settings, mark) for node in groups)
                return (kind, percent, of, among, (kept_by, mark) if kept_by else "", least)
            case Earlier():
                return ("earlier", of)
            case Written():
                return ("written", of)
            case _:
                assert_never(source)
