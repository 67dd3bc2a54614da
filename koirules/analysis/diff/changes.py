"""The form of a change between two editions."""

from __future__ import annotations

from enum import Enum

from koirules.problems import Place
from koirules.values import frozen


class Kind(Enum):
    """What became of a statement."""

    ADDED = "added"
    REMOVED = "removed"
    CHANGED = "changed"
    MOVED = "moved"
    REWORDED = "written otherwise"


@frozen
class Detail:
    """One thing that a statement says, before and after; "" where it did not, or does not, say it.

    what: as the statement has it: `weight`, `if`, `no better than`, `45 % gives`.
    """

    what: str
    old: str
    new: str


@frozen
class Change:
    """One change, by statement.

    head, name: of the statement, the new ones where it has one; was: its former name, "" where it kept it. section: the one
    that a criterion stands in. counts: whether it can bear on a grade or a score; what cannot are labels, words of reasons,
    notes, samples, alerts and rounds, and other words that mean the same. old, new: the statement on one line, "" where
    there is none. old_place, new_place: where these stand.
    """

    kind: Kind
    head: str
    name: str
    counts: bool
    details: tuple[Detail, ...] = ()
    was: str = ""
    section: str = ""
    old: str = ""
    new: str = ""
    old_place: Place | None = None
    new_place: Place | None = None

    @property
    def about(self) -> str:
        """The head word and the name of the statement."""
        return self.head if self.head == "standard" else f"{self.head} {self.name}"

    @property
    def words(self) -> str:
        """The change in one line: `fault specks: no better than hold, was sell`."""
        told = [f"was {self.head} {self.was}"] if self.was else []
        told.extend(told_detail(detail) for detail in self.details)
        match self.kind:
            case Kind.ADDED | Kind.REMOVED:
                return f"{self.about}: {self.kind.value}"
            case Kind.REWORDED:
                return f"{self.about}: {self.kind.value}, means the same"
            case Kind.CHANGED | Kind.MOVED:
                return f"{self.about}: {'; '.join(told)}"


def told_detail(detail: Detail) -> str:
    """A detail in words: `weight 2, was 1`."""
    if not detail.old:
        return f"{detail.what} {detail.new} (new)"
    if not detail.new:
        return f"{detail.what} {detail.old} (gone)"
    return f"{detail.what} {detail.new}, was {detail.old}"
