"""What the parts of a page share: the titles of grades, their shades, and text that may be in another language."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from decimal import Decimal
from functools import cached_property

from koirules.explain.score_lines import GradeLine
from koirules.languages import ENGLISH, Tongue, to_say
from koirules.records.about import About
from koirules.results.course import Fate, Step
from koirules.results.result import Result
from koirules.values import define

SHADES = 5
"""How many shades the style sheet has for grades, from the best to the last."""


@define(slots=False, frozen=True)
class Wording:
    """The words of one page, or of one standard on it.

    about: where its results come from. found: the grades in them, in the order they were met, for results of which nobody
    said what grades there are. number: the place of its standard among several on the page, None where it is the only one.
    rounds_before: how many rounds the standards before it have.
    """

    about: About
    found: tuple[str, ...] = ()
    number: int | None = None
    rounds_before: int = 0

    @classmethod
    def of(cls, results: Sequence[Result], about: About, number: int | None = None, rounds_before: int = 0) -> Wording:
        """The words of a page of some results."""
        found = dict.fromkeys(name for result in results for name in (*result.possible, *result.by_rules))
        return cls(about, tuple(found), number, rounds_before)

    @property
    def key(self) -> str:
        """What the ids of its part of a page end in."""
        return "" if self.number is None else f"-{self.number}"

    @cached_property
    def grades(self) -> Mapping[str, GradeLine]:
        """Every grade by its name, best first."""
        lines = {line.name: line for line in self.about.grades}
        return lines | {name: GradeLine(name, name, None) for name in self.found if name not in lines}

    @cached_property
    def place(self) -> Mapping[str, int]:
        """The place of each grade, 0 for the best."""
        return {name: place for place, name in enumerate(self.grades)}

    def shade(self, grade: str) -> str:
        """The class of the style sheet that gives a grade its shade; the last grade always has the last one."""
        last = len(self.grades) - 1
        return f"shade-{round(self.place[grade] * (SHADES - 1) / last) if last else 0}"

    def pips(self, grade: str) -> tuple[bool, ...]:
        """A grade as full and empty pips, a full one for each grade from it to the last: the best has no empty one."""
        return tuple(place >= self.place[grade] for place in range(len(self.grades)))[::-1]

    def graded(self, result: Result) -> str:
        """The grade of a fish, or each that it could still get."""
        return self.titles(result.possible)

    def titles(self, names: Sequence[str]) -> str:
        """The titles of grades, one or another."""
        return self.tongue.joined((self.grades[name].title for name in names), " or ")

    def trait(self, name: str) -> str:
        """A trait, as a sentence names it."""
        return self.about.traits.get(name, name.replace("_", " "))

    def label(self, name: str) -> str:
        """A column that is carried along, as it is headed."""
        return self.about.traits.get(name) or self.tongue.of(name)

    @property
    def tongue(self) -> Tongue:
        """The language of the page."""
        return self.about.tongue


FATES = (to_say("stays"), to_say("tied"), to_say("leaves"))
"""What becomes of fish in a round."""


def fate_word(step: Step) -> str:
    """What became of a fish in a round, in one word of `FATES`."""
    return {Fate.KEPT: "stays", Fate.TIED: "tied"}.get(step.fate, "leaves")


def is_held(result: Result) -> bool:
    """Whether a fault surely holds a fish below the grade that its points alone would give."""
    return result.grade is not None and any(kind == "fault" for kind, _ in result.grounds.decided)


def share(part: int, whole: int, tongue: Tongue = ENGLISH) -> str:
    """A share in whole per cent: `14 %`; `below 1 %` for what is there and hardly shows."""
    if not part or not whole:
        return "0 %"
    percent = round(100 * part / whole)
    return f"{percent} %" if percent else tongue("below 1 %")


def width(part: Decimal, whole: Decimal) -> str:
    """How far along a scale of 0 to 100 a part of the whole reaches, with two decimals."""
    return f"{100 * part / whole:.2f}" if whole else "0"


def row_name(kind: str, name: str) -> str:
    """What the script knows a row by, the same for every fish."""
    return f"{kind} {name}"
