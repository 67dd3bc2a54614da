"""The statements of a rule file, as syntax."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

from koirules.language.round_parts import RoundPart
from koirules.language.rule_file import Base as Base  # noqa: PLC0414 - a statement and the file in which it stands go together
from koirules.language.rule_file import Comment as Comment  # noqa: PLC0414
from koirules.language.rule_file import RuleFile as RuleFile  # noqa: PLC0414
from koirules.language.syntax import Expression, Quantity, Text, Title, Word
from koirules.meaning.panels import PanelWay
from koirules.problems import Place
from koirules.values import frozen


@frozen
class BasedOn:
    """`based on "FILE" edition X seal …`: the standard that this one changes."""

    file: Text
    edition: Word
    seal: Word | None
    place: Place


@frozen
class Header:
    """The standard's own statement: what it is called and what it is for.

    varieties: those that it names, one or several. any_variety: the words `any variety`, None where it does not have them.
    occasion: the word behind `for`, what kind of occasion it is for.
    """

    title: Title
    edition: Word | None
    varieties: tuple[Word, ...]
    any_variety: Word | None
    skins: tuple[Word, ...]
    stage: Word | None
    valid_from: date | None
    valid_until: date | None
    valid_place: Place | None
    based_on: BasedOn | None
    notes: tuple[Text, ...]
    repeated: tuple[Word, ...]
    place: Place
    occasion: Word | None = None

    @property
    def speaks(self) -> Word | None:
        """Where it says what variety it is for; None where it says none."""
        return self.any_variety or next(iter(self.varieties), None)


@frozen
class Setting:
    """`setting NAME = Q from Q to Q "…"`."""

    name: Word
    value: Quantity
    low: Quantity | None
    high: Quantity | None
    title: Title | None
    place: Place


@frozen
class KindWritten:
    """A kind as a house trait states it; `word` is one of yes, count, number, scale, choice, places, label."""

    word: str
    words: tuple[Word, ...]
    unit: str | None
    low: Quantity | None
    high: Quantity | None
    place: Place


@frozen
class HouseTrait:
    """`trait NAME "…" as KIND, more is better`."""

    name: Word
    title: Title | None
    kind: KindWritten
    better: str | None
    place: Place


@frozen
class Term:
    """`term NAME "…" means E`."""

    name: Word
    title: Title | None
    expression: Expression
    place: Place


@frozen
class Section:
    """`section NAME "…" worth N`; without a worth it reopens a section of the base."""

    name: Word
    title: Title | None
    worth: Quantity | None
    place: Place


@frozen
class Row:
    """One `v gives p` of a curve or table; key None is `anything else`."""

    key: Quantity | Word | None
    gives: Quantity
    place: Place


@frozen
class Points:
    """`points NAME "…" weight W by E: v gives p, …`."""

    name: Word
    title: Title | None
    weight: Quantity | None
    by: Expression
    rows: tuple[Row, ...]
    say: Title | None
    place: Place


@frozen
class Extra:
    """A `bonus` or a `penalty` (head says which): `N if C`."""

    head: str
    name: Word
    title: Title | None
    amount: Quantity
    condition: Expression
    say: Title | None
    place: Place


@frozen
class Limit:
    """A `fault` (no better than) or a `lift` (no worse than). lowers: by how many grades a fault lowers, which names none."""

    head: str
    name: Word
    title: Title | None
    condition: Expression
    exception: Expression | None
    grade: Word | None
    say: Title | None
    place: Place
    lowers: Quantity | None = None


@frozen
class Grade:
    """`grade NAME if C` or, with condition None, `grade NAME otherwise`."""

    name: Word
    title: Title | None
    condition: Expression | None
    after: Word | None
    say: Title | None
    place: Place


@frozen
class SoMany:
    """How many places are in, and not which: `1 of them`, `at least 2 of (tail, dorsal, anal)`.

    bound: `at least`, `at most` or "". numbers: one, or both ends. among: the places in the bracket; none for all others.
    """

    bound: str
    numbers: tuple[Quantity, ...]
    among: tuple[Word, ...]
    place: Place


@frozen
class Fact:
    """One trait of a sample, with its value as text in the way of a record, or as the words in a bracket.

    words_to: the two words are the ends of what it could be, as in `fair to razor`. not_known: the sorter could not tell.
    so_many: how many places are in beside those of `words`.
    """

    trait: Word
    numbers: tuple[Quantity, ...]
    words: tuple[Word, ...]
    text: str | None
    bracketed: bool
    place: Place
    words_to: bool = False
    not_known: bool = False
    so_many: SoMany | None = None


OUTCOMES = {
    "comes out": "grade",
    "stays open": "",
    "scores from": "",
    "section from": "section",
    "shows fault": "fault",
    "shows lift": "lift",
    "shows bonus": "bonus",
    "shows penalty": "penalty",
    "shows no fault": "",
    "leaves in": "round",
    "kept in": "round",
}
"""What a sample can be asked to come to, and the head word of what it then names."""


@frozen
class Outcome:
    """What a sample must come to, one of OUTCOMES."""

    what: str
    name: Word | None
    low: Decimal | None
    high: Decimal | None
    place: Place

    @property
    def names(self) -> str:
        """The head word of what it names; "" where it names nothing."""
        return OUTCOMES[self.what]


@frozen
class Sample:
    """`sample "…" with … outcomes`."""

    title: Title
    facts: tuple[Fact, ...]
    outcomes: tuple[Outcome, ...]
    place: Place


@frozen
class Stated:
    """A trait with what it is: `T is V`, `T at least V`, `T includes P`, `count of T is N`.

    operator: `is`, `at least`, `at most`, `above`, `below` or `includes`. fact: the trait with what stands behind the operator,
    as a sample has it. counts: whether it is about how many places there are.
    """

    operator: str
    fact: Fact
    counts: bool
    place: Place

    @property
    def trait(self) -> Word:
        """The trait that it is about."""
        return self.fact.trait


@frozen
class Silent:
    """An entry of `silence means`: what a trait is taken to be where nobody mentioned it. unless: C of `unless C`."""

    stated: Stated
    unless: Expression | None
    place: Place


@frozen
class Silence:
    """`silence means T is V, …`. Once a file has been put together with its base, each has one entry."""

    entries: tuple[Silent, ...]
    place: Place

    @property
    def name(self) -> Word:
        """The trait of the first entry."""
        return self.entries[0].stated.trait


@frozen
class Carry:
    """`carry forward T, …`. Once a file has been put together with its base, each has one trait."""

    traits: tuple[Word, ...]
    place: Place

    @property
    def name(self) -> Word:
        """The first trait."""
        return self.traits[0]


@frozen
class Panel:
    """`panel NAME "…" WAY at least N judges …`: how the records that several judges made of one fish are put together.

    middle: `lower` or `higher`.
    """

    name: Word
    title: Title | None
    way: PanelWay
    judges: Quantity | None
    named_by: Quantity | None
    middle: Word | None
    place: Place


@frozen
class Phrase:
    """`phrase "…", "…" means …`: words that a sorter says, and what they say of a fish; nothing where `stated` is empty.

    corrects: whether they take back what was said before, as `correction` says it.
    """

    wordings: tuple[Title, ...]
    stated: tuple[Stated, ...]
    place: Place
    corrects: bool = False

    @property
    def title(self) -> Title:
        """The first wording, by which the statement is called."""
        return self.wordings[0]


@frozen
class Alert:
    """`alert NAME "…" if C`."""

    name: Word
    title: Title | None
    condition: Expression
    say: Title | None
    place: Place


@frozen
class Round:
    """`round NAME "…" at look N` with its parts, in the order written; look None is everything known."""

    name: Word
    title: Title | None
    parts: tuple[RoundPart, ...]
    place: Place
    look: Quantity | None = None


Part = (
    Setting
    | HouseTrait
    | Term
    | Section
    | Points
    | Extra
    | Limit
    | Grade
    | Alert
    | Round
    | Silence
    | Carry
    | Panel
    | Phrase
    | Sample
)
"""What a standard is made of below its header."""


@frozen
class Replace:
    """`replace` and a statement: it takes the place of the one of its kind and name in the base."""

    statement: Part | Header
    place: Place


@frozen
class Drop:
    """`drop KIND NAME`: the base's statement of that kind and name does not hold; a sample or phrase is named by its text."""

    head: str
    name: Word | Text
    place: Place


@frozen
class Rename:
    """`rename grade NAME to NAME ["…"]`: the base's grade goes by another name, with another title where one is written."""

    name: Word
    to: Word
    title: Title | None
    place: Place


Statement = Header | Part | Replace | Drop | Rename
