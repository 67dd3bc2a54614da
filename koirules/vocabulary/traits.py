"""Traits, and the vocabularies that put them together for a variety."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from enum import Enum
from types import MappingProxyType

from attrs import Factory, field

from koirules.later import may_come_later
from koirules.values import frozen
from koirules.vocabulary.kinds import Colours, Kind, Label, Number, Patches
from koirules.vocabulary.measures import Constant, Measure
from koirules.vocabulary.phrases import Saying
from koirules.vocabulary.subject import ITEM, Subject
from koirules.vocabulary.units import Dimension


class Better(Enum):
    """In which direction a trait gets better, all else equal."""

    MORE = "more is better"
    LESS = "less is better"
    TARGET = "best in between"
    NEITHER = "neither is better"


class Growth(Enum):
    """How a trait changes as the fish grows."""

    FIXED = "does not change"
    RISES = "rises"
    FALLS = "falls"
    VARIES = "may rise or fall"


@frozen
class Allometry:
    """How a figure follows the length of a growing fish: as length to the power of `alone + with_b * b`, where W = a L^b.

    With the outline and the density kept, W is as L G^2, so that girth is as L^((b-1)/2); see measures/growth.py.
    """

    alone: float = 0.0
    with_b: float = 0.0

    def power(self, b: float) -> float:
        """The power of length that the figure is as."""
        return self.alone + self.with_b * b


UNCHANGED = Allometry()
AS_LENGTH = Allometry(1.0)
AS_GIRTH = Allometry(-0.5, 0.5)
AS_WEIGHT = Allometry(0.0, 1.0)
GIRTH_OVER_LENGTH = Allometry(-1.5, 0.5)
LENGTH_OVER_GIRTH = Allometry(1.5, -0.5)
WEIGHT_OVER_LENGTH_CUBED = Allometry(-3.0, 1.0)


def _unchanging_titles(titles: Mapping[str, str]) -> Mapping[str, str]:
    return MappingProxyType(dict(titles))


def _unchanging_traits(traits: Mapping[str, Trait]) -> Mapping[str, Trait]:
    return MappingProxyType(dict(traits))


def _is_by_eye(kind: Kind) -> bool:
    match kind:
        case Label() | Patches() | Colours():
            return False
        case Number(unit=unit):
            return unit is None or unit.dimension is Dimension.SHARE
        case _:
            return True


@frozen
class Trait:
    """One thing that can be said about a fish.

    name: the word that rule files and record sheets use. title: what a person reads. describe: one line that a new
    helper understands. titles: the title in further languages, by two-letter code. allometry: how a number follows the
    length as the fish grows, None where nobody can say (what does not change at all says so by `growth`). by_eye: whether
    who looks at the fish judges it, and neither board, scale, tape nor reader give it; by default of words, counts, places,
    plain numbers and shares. never_silent: what nobody may take for granted, such as health and injuries. white_from_sides:
    whether it is a share that becomes less as white grows in from the sides, so that it can be asked grown without a map. usual:
    by stage (`tosai`, "" for any other) between which ends a number lies for nearly every fish, in the unit of the trait.
    source: where its meaning, range and words come from, or that they are common practice or from memory.
    """

    name: str
    title: str
    kind: Kind
    better: Better = Better.NEITHER
    growth: Growth = Growth.VARIES
    describe: str = ""
    titles: Mapping[str, str] = field(factory=dict, hash=False, converter=_unchanging_titles)
    allometry: Allometry | None = None
    by_eye: bool = field(default=Factory(lambda self: _is_by_eye(self.kind), takes_self=True))
    never_silent: bool = False
    white_from_sides: bool = False
    usual: Mapping[str, tuple[Decimal, Decimal]] = field(factory=dict, hash=False, eq=False)
    source: str = field(default="", hash=False, eq=False)

    def usual_at(self, stage: str | None) -> tuple[Decimal, Decimal] | None:
        """Between which ends a number lies for nearly every fish of a stage; None where nobody can say."""
        of_kind = self.kind.usual if isinstance(self.kind, Number) else None
        return self.usual.get((stage or "").strip().casefold(), self.usual.get("", of_kind))

    def within(self, language: str | None) -> str:
        """The title in a language, or the first one where it is not given in that language."""
        return self.title if language is None else self.titles.get(language, self.title)


@frozen
class Vocabulary:
    """The traits that one source gives: the shared ones, or those of a variety.

    name: the word after `variety` in a rule file, or after `with` for a skin. includes: names of vocabularies whose
    traits belong to this one too. is_skin: it lies over a variety, as ginrin does over showa: `variety showa with ginrin`.
    is_variety: it can stand after `variety`; neither for traits that are only there to be included. measures: how some of
    the traits are derived from others. constants: what measures go by. also: what else people write for it into a cell of
    records or a table of classes, `sanke`. forms: those among such fish that have a name of their own, `shiro utsuri`.
    phrases: what people say, and what it means as a rule file would write it after `means`: `"two patches": "steps is nidan"`.
    sayings: how people speak of the traits, for whole tables of phrases. subject: what its records are about; None for that of
    what it includes, the last one that has one.
    """

    name: str
    title: str
    traits: tuple[Trait, ...]
    includes: tuple[str, ...] = ()
    describe: str = ""
    is_skin: bool = False
    is_variety: bool = field(default=Factory(lambda self: not self.is_skin, takes_self=True))
    measures: tuple[Measure, ...] = ()
    constants: tuple[Constant, ...] = ()
    also: tuple[str, ...] = ()
    forms: tuple[str, ...] = ()
    phrases: Mapping[str, str] = field(factory=dict, hash=False, converter=_unchanging_titles)
    sayings: tuple[Saying, ...] = ()
    subject: Subject | None = None


@frozen
class Addition:
    """What a plugin adds to a vocabulary of somebody else: measures for other people's varieties, or phrases.

    to: the name of that vocabulary; all that include it have the addition too. traits, measures, constants, phrases: as
    those of a Vocabulary, with names that are not there yet.
    """

    to: str
    traits: tuple[Trait, ...] = ()
    measures: tuple[Measure, ...] = ()
    constants: tuple[Constant, ...] = ()
    phrases: Mapping[str, str] = field(factory=dict, hash=False, converter=_unchanging_titles)
    sayings: tuple[Saying, ...] = ()


@frozen
class Variety:
    """A variety, with its skins if any, and all of its traits put together, by name, in the order of its sources.

    name: as a header has it: `showa`, `showa with ginrin`, `showa with (ginrin, doitsu)`. Measures and constants likewise.
    also, forms: as those of its vocabulary. phrases: of all its sources, its own before those of what it includes. subject:
    what its records are about.
    """

    name: str
    title: str
    traits: Mapping[str, Trait] = field(converter=_unchanging_traits, hash=False)
    describe: str = ""
    measures: tuple[Measure, ...] = ()
    constants: tuple[Constant, ...] = ()
    also: tuple[str, ...] = ()
    forms: tuple[str, ...] = ()
    phrases: Mapping[str, str] = field(factory=dict, hash=False, converter=_unchanging_titles)
    sayings: tuple[Saying, ...] = field(default=(), hash=False)
    subject: Subject = ITEM


may_come_later(Vocabulary, "sayings")
may_come_later(Variety, "sayings")
