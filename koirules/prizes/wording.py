"""What is said of places and prizes, in a language and by titles."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from decimal import Decimal
from typing import TYPE_CHECKING

from attrs import field

from koirules.classes.placing import GROUP, SIZE
from koirules.classes.table import ClassTable
from koirules.languages import ENGLISH, Tongue
from koirules.prizes.occasion import VOTES, Prize, section_of
from koirules.values import frozen

if TYPE_CHECKING:
    from koirules.prizes.awarding import Ruling


@frozen
class PrizeWords:
    """Says the parts of prizes. sections: the title of each section by its name, "" for those without one."""

    table: ClassTable | None = None
    tongue: Tongue = ENGLISH
    sections: Mapping[str, str] = field(factory=dict, hash=False)

    @property
    def titles(self) -> Mapping[str, Mapping[str, str]]:
        """The title of each group and size by its name."""
        groups = () if self.table is None else self.table.groups
        sizes = () if self.table is None or self.table.sizes is None else self.table.sizes.sizes
        return {GROUP: {one.name: one.title for one in groups}, SIZE: {one.name: one.title for one in sizes}}

    def part(self, prize: Prize, names: Sequence[str]) -> str:
        """The names of a part as people read them: groups and sizes by their titles in the class table."""
        titles, labels = self.titles, prize.for_each
        shown = [
            self.tongue.of(titles.get(label, {}).get(name, name)) for label, name in zip(labels, names, strict=True)
        ]
        if labels == (GROUP, SIZE):
            return self.tongue("{group}, size {size}", group=shown[0], size=shown[1])
        return self.tongue.joined(map(self._named, labels, shown), " ")

    def _named(self, label: str, name: str) -> str:
        if label == GROUP:
            return name
        if label == SIZE:
            return self.tongue("size {size}", size=name)
        return self.tongue("{label} {name}", label=self.tongue.of(label.replace("_", " ")), name=name)

    def prize(self, prize: Prize, names: Sequence[str]) -> str:
        """A prize, or a part of one."""
        title, part = self.tongue.of(prize.title), self.part(prize, names)
        return self.tongue("{prize}, {part}", prize=title, part=part) if part else title

    def key(self, key: str) -> str:
        """What fish are put in order by."""
        section = section_of(key)
        return (self.sections.get(section) or section) if section else self.tongue.of(key)

    def standing(self, prize: Prize, values: Sequence[tuple[Decimal, Decimal]]) -> tuple[str, ...]:
        """The value of each key in words: `score 88.50`, `2 votes`, `body 38.25`."""
        told: list[str] = []
        for key, (low, high) in zip(prize.by, values, strict=True):
            if key == VOTES:
                told.append(self.tongue.plural("{number} vote", "{number} votes", int(low)))
            else:
                ends = [self.tongue.figure(f"{end:.2f}") for end in (low, high)]
                points = ends[0] if low == high else self.tongue.stretch(*ends)
                told.append(self.tongue("{title} {value}", title=self.key(key), value=points))
        return tuple(told)

    def ruled(self, fish: str, ruling: Ruling) -> str:
        """Who decided a place, and why; where it follows from what was decided about another fish, about which."""
        by, reason, other = ruling.by, ruling.reason, ruling.fish
        if fish != other and reason:
            return self.tongue("decided by {judge} with {fish}: {reason}", judge=by, fish=other, reason=reason)
        if fish != other:
            return self.tongue("decided by {judge} with {fish}", judge=by, fish=other)
        if reason:
            return self.tongue("decided by {judge}: {reason}", judge=by, reason=reason)
        return self.tongue("decided by {judge}", judge=by)

    def decided_by(self, prize: Prize) -> str:
        """All that decides, in its order."""
        return self.tongue.joined(map(self.key, prize.by), ", then ")
