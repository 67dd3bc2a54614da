"""What a vocabulary is about: the word for one of them, what to bear in mind with them at hand, and how they grow."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from types import MappingProxyType

from attrs import field

from koirules.values import frozen

SORTING, SHOW = "sorting", "show"

FISH_FROM_ABOVE = "fish from above"
"""The drawing that koirules has itself: a koi from above, with its patches. Plugins bring others (`koirules_drawings`)."""

OCCASIONS = (SORTING, SHOW)
"""The kinds of occasion that a standard can be for; the first one is meant where it says none."""


@frozen
class Cautions:
    """What to bear in mind on one kind of occasion, each a paragraph of plain text.

    deciding: before one acts on a grade; for those who decide, so that a page for a customer goes without. handling: before
    one takes the first in hand. moving: where they go to another place or owner. short: the gist on two or three lines of a
    terminal.
    """

    deciding: tuple[str, ...] = ()
    handling: tuple[str, ...] = ()
    moving: tuple[str, ...] = ()
    short: str = ""

    @property
    def all(self) -> tuple[str, ...]:
        """All of them, those about decisions first."""
        return (*self.deciding, *self.handling, *self.moving)


def _unchanging(cautions: Mapping[str, Cautions]) -> Mapping[str, Cautions]:
    return MappingProxyType(dict(cautions))


@frozen
class Subject:
    """What the records of a vocabulary are about, as sentences name it.

    one, many: the noun, singular and plural: `fish` and `fish`, `pot` and `pots`. cautions: by kind of occasion (`OCCASIONS`);
    on an occasion that has none, those for sorting hold. in_hand: the heading above them in a handbook. at_work: the heading
    of phrases, which names where people say them. on_paper: how one is handled, in at most 250 letters, for the foot of a
    printed sheet. place, places: where one of them goes, as a column and as the title of printed lists. grows_by: the trait, a
    length, that `grown to` goes by; standards without a vocabulary may have one of that name as well. drawing: which drawing
    shows one of them, `FISH_FROM_ABOVE` or the name of one that a plugin brings; "" where none does, and pages draw nothing
    then.
    """

    one: str
    many: str
    cautions: Mapping[str, Cautions] = field(factory=dict, hash=False, converter=_unchanging)
    in_hand: str = "Before you begin"
    at_work: str = "What is said at work"
    on_paper: str = ""
    place: str = "place"
    places: str = "Places"
    grows_by: str = "length"
    drawing: str = ""

    def counted(self, number: int) -> str:
        """How many, with the noun: `1 pot`, `1,200 pots`."""
        return f"{number:,} {self.noun(number)}"

    def noun(self, number: int) -> str:
        """The noun for so many."""
        return self.one if number == 1 else self.many

    @property
    def opening(self) -> str:
        """The noun with its article at the head of a sentence."""
        return self.with_article[:1].upper() + self.with_article[1:]

    @property
    def begins(self) -> str:
        """The noun at the head of a sentence: `Fish`, `Pot`."""
        return self.one[:1].upper() + self.one[1:]

    @property
    def many_begin(self) -> str:
        """The plural at the head of a sentence."""
        return self.many[:1].upper() + self.many[1:]

    @property
    def with_article(self) -> str:
        """The noun with its article: `a fish`, `an orchid`; by its first letter."""
        return f"{'an' if self.one[:1].lower() in 'aeiou' else 'a'} {self.one}"

    def cautions_for(self, occasion: str | None) -> Cautions:
        """What to bear in mind on a kind of occasion; None stands for sorting."""
        return self.cautions.get(occasion or SORTING) or self.cautions.get(SORTING) or Cautions()


_GRADE = "A grade is the result of one look by one standard. What is done about it, a person decides."

ITEM = Subject("item", "items", {SORTING: Cautions((_GRADE,), short=_GRADE)})
"""What records are about where no vocabulary says it."""


def in_common(subjects: Iterable[Subject]) -> Subject:
    """What several are about: the same subject, or items where they differ."""
    found = tuple(dict.fromkeys(subjects))
    return found[0] if len(found) == 1 else ITEM
