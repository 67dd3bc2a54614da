"""Says what a standard names, with the way to where the page tells more about it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from decimal import Decimal
from functools import cached_property
from typing import Protocol, TypeVar

from attrs import evolve, field

from koirules.explain.pieces import Said
from koirules.explain.plain_words import PlainWords
from koirules.grading.single import Grader
from koirules.languages import Tongue
from koirules.problems import Place
from koirules.report.drawer import Drawer
from koirules.report.handbook.blocks import Line, Paragraph, Piece, Table, line
from koirules.standard.parts import Rules
from koirules.standard.rounds import Amount, Share
from koirules.standard.titles import Titled
from koirules.values import define
from koirules.vocabulary.kinds import shortest
from koirules.vocabulary.traits import Trait


class _Written(Protocol):
    """A part of a standard, which knows where it was written."""

    @property
    def place(self) -> Place:
        """Where it stands."""


_W = TypeVar("_W", bound=_Written)

_TOLD_OF = frozenset({"trait", "term", "setting", "section", "fault", "grade", "round"})


@define(slots=False, frozen=True)
class Voice:
    """The words of one page.

    drawer: draws its worked examples. remarks: those of the rule file that it shows, by the place of the statement that they are
    on. base: the standard that this one is based on, where only the differences from it are told; None where all is told.
    """

    grader: Grader
    drawer: Drawer
    remarks: Mapping[Place, tuple[str, ...]] = field(factory=dict)
    base: Rules | None = None

    @property
    def rules(self) -> Rules:
        """The standard."""
        return self.grader.rules

    def told_here(self, parts: Iterable[_W]) -> list[_W]:
        """The parts that are told: all, or those that the rule file itself says."""
        return [part for part in parts if self.base is None or part.place.file == self.rules.file]

    def explained(self, head: str) -> bool:
        """Whether the base has a fault or a lift, so that what it is has been explained there."""
        return self.base is not None and any(limit.head == head for limit in self.base.limits)

    @property
    def plain(self) -> PlainWords:
        """The words in which reasons are told."""
        return self.grader.reasoner.teller.plain

    @property
    def tongue(self) -> Tongue:
        """The language of the page."""
        return self.plain.tongue

    def say(self, text: str, /, **values: object) -> str:
        """A text of the tool, in the language of the page."""
        return self.tongue(text, **values)

    def line(self, text: str, /, **values: Line | Piece | str) -> Line:
        """The same with pieces in its braces."""
        return line(*self.tongue.pieces(text, **values))

    @property
    def a_fish(self) -> str:
        """What a record is about, with its article."""
        return self.tongue.of(self.rules.subject.with_article)

    @property
    def fish(self) -> str:
        """The noun for one."""
        return self.tongue.of(self.rules.subject.one)

    @property
    def many(self) -> str:
        """The noun for many."""
        return self.tongue.of(self.rules.subject.many)

    def points(self, hundredths: int) -> str:
        """Hundredths as people write them: `40`, `2.5`."""
        return self.tongue.figure(shortest(Decimal(hundredths).scaleb(-2)))

    def given(self, thousandths: int) -> str:
        """Points of a curve or table, from thousandths."""
        return self.tongue.figure(shortest(Decimal(thousandths).scaleb(-3)))

    def title(self, titled: Titled, to: str = "", *, strong: bool = False, named: bool = False) -> Piece:
        """A title, in the language of the page where it is given in it."""
        foreign = self.tongue.foreign or ""
        given = foreign if foreign in titled.others else ""
        return Piece(self.plain.of(titled), strong=strong, named=named, language=given, to=to)

    def trait(self, trait: Trait, *, linked: bool = True) -> Piece:
        """The title of a trait."""
        titled = Titled(trait.title, trait.titles)
        return evolve(
            self.title(titled, anchor("trait", trait.name) if linked else "", named=linked),
            text=self.plain.trait(trait),
        )

    def grade(self, place: int, *, strong: bool = False) -> Piece:
        """The title of a grade, by its place."""
        grade = self.rules.grades[place]
        return self.title(grade.title, anchor("grade", grade.name), strong=strong, named=not strong)

    def graded(self, names: tuple[str, ...]) -> Line:
        """The grades of some names, parted by `or`."""
        found: list[Piece] = []
        for place, grade in enumerate(self.rules.grades):
            if grade.name in names:
                found.extend([Piece(self.tongue.of(" or "))] if found else [])
                found.append(self.grade(place, strong=True))
        return tuple(found)

    def told(self, place: Place) -> Line:
        """What stands in the rule file at a place, in words."""
        return tuple(self._piece(said) for said in self.plain.pieces(place))

    def sentence(self, text: str) -> Piece:
        """A sentence in which titles may stand in the language of the page."""
        return Piece(text, language="" if text.isascii() else self.tongue.foreign or "")

    def amount(self, amount: Amount | Share) -> Line:
        """A number or share of fish, or the setting that holds it with its value."""
        if isinstance(amount, Share):
            if isinstance(amount.of, Decimal):
                return (Piece(f"{shortest(amount.of)} %"),)
            amount = amount.of
        if isinstance(amount, int):
            return (Piece(self.tongue.whole(amount)),)
        setting = self.plain.settings[amount]
        return (
            Piece(f"{self.plain.setting(setting)} ("),
            self.title(setting.title, anchor("setting", amount), named=True),
            Piece(")"),
        )

    def origin(self, place: Place | None) -> Line:
        """A mark on what a page says otherwise than its base, or beside it; on a page of its own, on what is from its base."""
        source = self.rules.source
        if place is None or not source.chain:
            return ()
        if place.file == self.rules.file and place in source.replaced:
            told = self.say("changed here")
        elif (place.file == self.rules.file) is self._adds_little:
            told = self.say("added here") if self._adds_little else self.say("from the base")
        else:
            return ()
        return (Piece(" "), Piece(told, mark=True))

    @cached_property
    def _adds_little(self) -> bool:
        """Whether most of a standard is from its base."""
        if self.base is not None:
            return True
        rules = self.rules
        parts = (*rules.criteria, *rules.limits, *rules.grades)
        return 2 * sum(part.place.file == rules.file for part in parts) <= len(parts)

    def remarks_on(self, place: Place) -> Iterator[Paragraph]:
        """The remarks on a statement."""
        for text in self.remarks.get(place, ()):
            yield Paragraph(line(self.tongue.of(text)), quiet=True)

    def remarked(self, table: Table, places: Sequence[Place | None]) -> Table:
        """A table with the remarks on what its rows are about."""
        told = [() if place is None else self.remarks.get(place, ()) for place in places]
        rows = [
            evolve(
                row,
                cells=(line(row.cells[0], self.origin(place)), *row.cells[1:]),
                remarks=tuple(map(self.tongue.of, texts)),
            )
            for row, texts, place in zip(table.rows, told, places, strict=True)
        ]
        return evolve(table, rows=tuple(rows))

    def _piece(self, said: Said) -> Piece:
        if said.head not in _TOLD_OF:
            return Piece(said.text)
        to = anchor(said.head, said.name)
        # Of a setting its value stands there, which is no name.
        if said.titled is None:
            return Piece(said.text, to=to)
        told = self.title(said.titled, to, named=True)
        return evolve(told, text=said.text) if said.head == "trait" else told


def anchor(head: str, name: str) -> str:
    """Under which name a part of the page can be found."""
    return f"{head}-{name}"
