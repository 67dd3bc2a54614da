"""A rule file as read, whole."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

from attrs import field

from koirules.later import known_of, may_come_later
from koirules.problems import Place
from koirules.values import frozen

if TYPE_CHECKING:
    from koirules.language.statements import Statement
    from koirules.language.syntax import Title


@frozen
class Comment:
    """A comment, from its `#` to the end of the line."""

    text: str
    place: Place


@frozen
class Base:
    """A standard that a file is based on. named: as the file names it, relative to itself. seal: "" where none is asked for."""

    named: str
    title: Title
    edition: str
    seal: str


@frozen
class RuleFile:
    """A rule file as read: the statements that could be read, in their order, and the comments.

    unread: head word and name ("" where there is none) of each statement that could not be read. bases: where the
    statements of bases are among these, the text of each base by its file. replaced: where a statement stands in place of
    one of a base, the place of that one, by its own. respelt: words of bases that are other names now, by their places.
    chain: the bases, the one that this file names first. remarks: those on each statement that holds, by its place
    (remarks.py), once the file has been put together with its bases. unsaid: by the file of a base the traits that it reads
    and of which silence means nothing there.
    """

    file: str
    text: str
    statements: tuple[Statement, ...]
    comments: tuple[Comment, ...]
    unread: tuple[tuple[str, str], ...] = ()
    bases: Mapping[str, str] = field(factory=dict, hash=False)
    replaced: Mapping[Place, Place] = field(factory=dict, hash=False)
    respelt: Mapping[Place, str] = field(factory=dict, hash=False)
    chain: tuple[Base, ...] = ()
    remarks: Mapping[Place, tuple[str, ...]] = field(factory=dict, hash=False)
    unsaid: Mapping[str, frozenset[str]] = field(factory=dict, hash=False)

    @property
    def places(self) -> tuple[Place, ...]:
        """Where each of the statements stands."""
        known: tuple[Place, ...] | None = known_of(self, "statements")
        return tuple(one.place for one in self.statements) if known is None else known


may_come_later(RuleFile, "statements", "comments", "chain")
