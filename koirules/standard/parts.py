"""The parts of a checked standard."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING

from attrs import field

from koirules.later import may_come_later
from koirules.meaning.curves import Shape
from koirules.meaning.grades import Turn
from koirules.meaning.panels import PanelWay
from koirules.problems import Place
from koirules.standard.derivations import TypedMeasure
from koirules.standard.rounds import Round
from koirules.standard.saying import names_in
from koirules.standard.titles import Titled
from koirules.standard.tree import Node
from koirules.values import frozen
from koirules.vocabulary.kinds import shortest
from koirules.vocabulary.measures import Constant
from koirules.vocabulary.phrases import Saying
from koirules.vocabulary.readings import Reading
from koirules.vocabulary.subject import ITEM, Subject
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import Unit

if TYPE_CHECKING:
    from koirules.language.rule_file import RuleFile
    from koirules.language.statements import Outcome

_WORD = re.compile(r"\S+")


@frozen
class Setting:
    """A number that a run may change within its range: value, low and high are in the held unit, exactly.

    whole: whether it holds a number of fish.
    """

    name: str
    title: Titled
    unit: Unit | None
    value: Decimal
    low: Decimal
    high: Decimal
    changeable: bool
    place: Place
    whole: bool = False

    @property
    def words(self) -> str:
        """The value with its unit."""
        value = self.value if self.unit is None else self.unit.from_held(self.value)
        return shortest(value) if self.unit is None else f"{shortest(value)} {self.unit.symbol}"


@frozen
class Term:
    """A name for an expression."""

    name: str
    title: Titled
    node: Node
    place: Place


@frozen
class Points:
    """A criterion with a curve or table; weight in hundredths."""

    name: str
    title: Titled
    weight: int
    by: Node
    reads: Node
    shape: Shape
    say: Titled | None
    place: Place

    @property
    def head(self) -> str:
        """The statement's head word."""
        return "points"

    @property
    def roots(self) -> tuple[Node, ...]:
        """The expressions that it reads."""
        return (self.by,)


@frozen
class Extra:
    """A bonus (sign 1) or a penalty (sign -1) of so many hundredths."""

    name: str
    title: Titled
    sign: int
    amount: int
    condition: Node
    say: Titled | None
    place: Place

    @property
    def head(self) -> str:
        """The statement's head word."""
        return "bonus" if self.sign > 0 else "penalty"

    @property
    def roots(self) -> tuple[Node, ...]:
        """The expressions that it reads."""
        return (self.condition,)


@frozen
class Section:
    """A section with its criteria; worth in hundredths."""

    name: str
    title: Titled
    worth: int
    points: tuple[Points, ...]
    extras: tuple[Extra, ...]
    place: Place

    @property
    def divisor(self) -> int:
        """Sum of weight x largest points: hundredths x thousandths."""
        return sum(part.weight * part.shape.most for part in self.points)


@frozen
class Limit:
    """A fault (a cap) or a lift (a floor); grade is the place of its grade in the list, best first.

    condition holds and exception does not: the limit bites. lowers: by how many grades a fault lowers that is no cap; its
    grade is then the best.
    """

    head: str
    name: str
    title: Titled
    condition: Node
    exception: Node | None
    grade: int
    say: Titled | None
    place: Place
    lowers: int = 0

    @property
    def by(self) -> int:
        """By how many grades it lowers, or the place of its grade."""
        return self.lowers or self.grade

    @property
    def turn(self) -> Turn:
        """When it has its say."""
        return Turn.LIFTS if self.head == "lift" else Turn.LOWERS if self.lowers else Turn.CAPS

    @property
    def roots(self) -> tuple[Node, ...]:
        """The expressions that it reads."""
        return (self.condition,) if self.exception is None else (self.condition, self.exception)


@frozen
class Grade:
    """A grade; condition None is `otherwise`."""

    name: str
    title: Titled
    condition: Node | None
    say: Titled | None
    place: Place

    @property
    def head(self) -> str:
        """The statement's head word."""
        return "grade"

    @property
    def roots(self) -> tuple[Node, ...]:
        """The expressions that it reads."""
        return () if self.condition is None else (self.condition,)


Part = Points | Extra | Limit | Grade
"""A part that gives a reason."""


def part_key(part: Part) -> str:
    """The key of a part: its head word and its name."""
    return f"{part.head} {part.name}"


@frozen
class Alert:
    """A word of warning about the batch as a whole."""

    name: str
    title: Titled
    condition: Node
    say: Titled | None
    place: Place


Said = Reading
"""What was said of a trait; of places with how many there are."""


@frozen
class Stated:
    """What is said of a trait."""

    trait: str
    said: Said


@frozen
class Phrase:
    """Words that a sorter says, and what they say of a fish.

    wordings: each behind the code of its language, "" for that of the page. stated: one for each trait; none where the words
    say nothing of a fish. corrects: whether they take back what was said before.
    """

    wordings: tuple[tuple[str, str], ...]
    stated: tuple[Stated, ...]
    place: Place
    corrects: bool = False


def words_of_one_trait(phrases: Iterable[Phrase]) -> dict[str, tuple[str, ...]]:
    """By trait the wordings of the phrases that speak of it alone: they may stand in its cells."""
    found: dict[str, tuple[str, ...]] = {}
    for phrase in phrases:
        if len(phrase.stated) == 1:
            trait = phrase.stated[0].trait
            found[trait] = (*found.get(trait, ()), *(words for _, words in phrase.wordings if "," not in words))
    return found


@frozen
class Sample:
    """A fish that the file itself must get right. cannot_tell: the traits that its sorter could not tell."""

    title: str
    record: Mapping[str, Reading]
    outcomes: tuple[Outcome, ...]
    place: Place
    cannot_tell: frozenset[str] = frozenset()


@frozen
class SilentTrait:
    """What a trait is taken to be where nobody mentioned it, unless `unless` is a sure yes of what was recorded."""

    trait: Trait
    reading: Reading
    unless: Node | None
    place: Place


@frozen
class Panel:
    """How the records that several judges made of one fish are put together.

    judges: how many must have judged, None for as many as there are. named_by: how many must name a place, None for more than
    half. middle: which of two in the middle a median takes, `lower` or `higher`; None for halfway of numbers, and open else.
    """

    name: str
    title: Titled
    way: PanelWay
    judges: int | None
    named_by: int | None
    middle: str | None
    place: Place

    @property
    def needed(self) -> int:
        """How many judges it takes to settle a fish."""
        without = 3 if self.way is PanelWay.TRIMMED else 1
        return max(self.judges or 1, self.named_by or 1, without)


@frozen
class Rules:
    """A checked standard, whole.

    variety: as the header names it; each_variety: the varieties that it names, with their skins, none where it names none
    or is for any. traits: all that a record may name. measures: how some of them are derived, each behind those that it
    reads. constants: what measures go by. limits: faults and lifts in the order of the file. order: terms, faults and lifts
    such that each reads only earlier ones. grades: best first. alerts, rounds: over the batch, in the order of the file.
    phrases: what words mean in notes. sayings: how the traits of the variety are spoken of. source: the statements as they are
    written, those of bases among them. silence: what it means, by trait. carried: the traits that a new sorting takes over from
    the one before. panel: how the records of several judges are put together, None where it says nothing of that. subject: what
    its records are about. occasion: the kind that it is for, None where it says none.
    """

    file: str
    title: Titled
    edition: str
    variety: str | None
    stage: str | None
    valid_from: date | None
    valid_until: date | None
    notes: tuple[str, ...]
    traits: Mapping[str, Trait]
    house_traits: tuple[str, ...]
    settings: Mapping[str, Setting]
    terms: Mapping[str, Term]
    sections: tuple[Section, ...]
    limits: tuple[Limit, ...]
    order: tuple[Term | Limit, ...]
    grades: tuple[Grade, ...]
    samples: tuple[Sample, ...]
    source: RuleFile = field(repr=False)
    alerts: tuple[Alert, ...] = ()
    rounds: tuple[Round, ...] = ()
    phrases: tuple[Phrase, ...] = ()
    measures: tuple[TypedMeasure, ...] = ()
    constants: tuple[Constant, ...] = ()
    each_variety: tuple[str, ...] = ()
    silence: Mapping[str, SilentTrait] = field(factory=dict, hash=False)
    sayings: tuple[Saying, ...] = ()
    carried: tuple[str, ...] = ()
    panel: Panel | None = None
    subject: Subject = ITEM
    occasion: str | None = None

    @property
    def titled(self) -> tuple[Titled, ...]:
        """Every title of its parts, its own first, with the words of each `say`."""
        words = (
            *self.settings.values(),
            *self.terms.values(),
            *self.sections,
            *self.criteria,
            *self.limits,
            *self.grades,
        )
        parts = (*words, *self.alerts, *self.rounds)
        says = (getattr(one, "say", None) for one in parts)
        return (self.title, *(one.title for one in parts), *(say for say in says if say is not None))

    @property
    def points(self) -> tuple[Points, ...]:
        """Every `points`, section by section."""
        return tuple(part for section in self.sections for part in section.points)

    @property
    def extras(self) -> tuple[Extra, ...]:
        """Every bonus and penalty, section by section."""
        return tuple(part for section in self.sections for part in section.extras)

    @property
    def criteria(self) -> tuple[Points | Extra, ...]:
        """Every part that gives points."""
        return (*self.points, *self.extras)

    @property
    def parts(self) -> tuple[Part, ...]:
        """Every part that gives a reason."""
        return (*self.points, *self.extras, *self.limits, *self.grades)

    @property
    def roots(self) -> tuple[Node, ...]:
        """The expressions that all statements read, except for terms."""
        return (
            *(root for part in self.parts for root in part.roots),
            *(alert.condition for alert in self.alerts),
            *(one.unless for one in self.silence.values() if one.unless is not None),
            *(root for each in self.rounds for root in each.roots),
        )

    @property
    def said_names(self) -> frozenset[str]:
        """The names in the braces of any `say`."""
        said = [part.say for part in (*self.parts, *self.rounds) if part.say is not None]
        return frozenset(name for say in said for text in (say.text, *say.others.values()) for name in names_in(text))

    @property
    def text(self) -> str:
        """The text of the file itself, without its bases."""
        return self.source.text

    @property
    def positions(self) -> Mapping[Place, int]:
        """Where each statement stands among all that hold, those of bases too, by its place."""
        return {place: i for i, place in enumerate(self.source.places)}

    def words_at(self, place: Place) -> str:
        """What stands at a place of the rule file or of one of its bases, on one line, without remarks."""
        return " ".join(word for word, _, _ in self.placed_words(place))

    def placed_words(self, place: Place) -> list[tuple[str, int, int]]:
        """The words that stand at a place, without remarks, each with its line and column."""
        from koirules.language.parse.cleaning import without_remark

        text = self.source.bases.get(place.file, self.source.text)
        lines = [without_remark(line) for line in text.split("\n")[place.line - 1 : place.end_line]]
        if not lines:
            return []
        respelt = {
            (at.line, at.column - 1): (at.end_column - 1, new)
            for at, new in self.source.respelt.items()
            if at.file == place.file
        }
        lines[-1] = lines[-1][: place.end_column - 1]
        lines[0] = " " * (place.column - 1) + lines[0][place.column - 1 :]

        def now(line: str, number: int, start: int, end: int) -> str:
            """The text between two columns, in the names of today."""
            for at in range(start, end) if respelt else ():
                last, new = respelt.get((number, at), (end, ""))
                if new and last <= end:
                    return f"{line[start:at]}{new}{now(line, number, last, end)}"
            return line[start:end]

        return [
            (now(line, number, *word.span()), number, word.start() + 1)
            for number, line in enumerate(lines, place.line)
            for word in _WORD.finditer(line)
        ]


may_come_later(Rules, "samples", "sayings")
