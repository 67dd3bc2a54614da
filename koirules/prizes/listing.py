"""A list of prizes: the occasion with what came of it, as every output shows it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from attrs import field

from koirules.classes.placing import GROUP, NONE, SIZE
from koirules.classes.table import ClassTable
from koirules.languages import ENGLISH, Tongue
from koirules.prizes.awarding import Award, Entrant, Part, Placings, Waiting
from koirules.prizes.occasion import Occasion
from koirules.prizes.wording import PrizeWords
from koirules.records.columns import OWNER, VARIETY
from koirules.results.result import Result
from koirules.values import frozen


@frozen
class Left:
    """A fish that is in no class or was not graded, and why. may_win: whether a prize of the table is for it all the same."""

    fish: str
    why: str
    may_win: bool = False


@frozen
class By:
    """A standard that graded fish."""

    title: str
    edition: str
    seal: str

    @property
    def words(self) -> str:
        """Its title with the edition, in English."""
        return f"{self.title}, edition {self.edition}"

    def told(self, tongue: Tongue) -> str:
        """The same in a language."""
        return tongue("{title}, edition {edition}", title=self.title, edition=self.edition)


@frozen
class GradeAndScore:
    """What a fish was graded, in words: the titles of the grades still possible, and its points; "" where there are none."""

    grade: str = ""
    score: str = ""


def graded_as(result: Result, titles: Mapping[str, str], tongue: Tongue, *, scores: bool) -> GradeAndScore:
    """The grade and score of a result. titles: of the grades, by their names. scores: whether its standard gives points."""
    grade = tongue.joined((titles.get(name, name) for name in result.possible), " or ")
    low, high = (tongue.figure(f"{end:.2f}") for end in (result.score_low, result.score_high))
    score = low if low == high else tongue.stretch(low, high)
    return GradeAndScore(grade, score if scores else "")


@frozen
class PrizeList:
    """What came of an occasion.

    left: fish in no class, then fish not graded. labels, graded: of each graded fish. records: the file.
    """

    occasion: Occasion
    table: ClassTable | None
    placings: tuple[Placings, ...]
    left: tuple[Left, ...]
    standards: tuple[By, ...]
    labels: Mapping[str, Mapping[str, str]] = field(hash=False)
    records: str = ""
    words: PrizeWords = field(factory=PrizeWords)
    graded: Mapping[str, GradeAndScore] = field(factory=dict, hash=False)

    @property
    def tongue(self) -> Tongue:
        """The language that it is told in."""
        return self.words.tongue

    @property
    def title(self) -> str:
        """What the occasion is called."""
        return self.tongue.of(self.occasion.title)

    @property
    def day(self) -> str:
        """The date in words."""
        day = self.occasion.day
        return self.tongue.of(day) if isinstance(day, str) else self.tongue.day(day)

    @property
    def class_words(self) -> str:
        """The class table with its edition, "" without one."""
        if self.table is None:
            return ""
        return self.tongue(
            "{title}, edition {edition}", title=self.tongue.of(self.table.title), edition=self.table.edition
        )

    @property
    def awards(self) -> tuple[tuple[Placings, Part, Award], ...]:
        """Every place that is given, prize after prize."""
        return tuple((one, part, each) for one in self.placings for part in one.parts for each in part.awards)

    @property
    def waiting(self) -> tuple[tuple[Placings, Part, Waiting], ...]:
        """Every place that waits."""
        return tuple((one, part, each) for one in self.placings for part in one.parts for each in part.waiting)

    @property
    def left_together(self) -> tuple[tuple[str, tuple[str, ...]], ...]:
        """Each reason why fish are in no class or not graded, with these fish."""
        found: dict[str, list[str]] = {}
        for one in self.left:
            why = self.tongue("{why}; can win where a prize says so", why=one.why) if one.may_win else one.why
            found.setdefault(why, []).append(one.fish)
        return tuple((why, tuple(fish)) for why, fish in found.items())

    def told(self, fish: str, label: str) -> str:
        """A label of a fish, "" where it has none."""
        return self.labels.get(fish, {}).get(label, "")

    def grade_and_score(self, fish: str) -> GradeAndScore:
        """The grade and score of a fish, in words."""
        return self.graded.get(fish, GradeAndScore())

    def variety(self, fish: str) -> str:
        """The variety of a fish, as it was recorded."""
        return self.tongue.of(self.told(fish, VARIETY).replace("_", " "))

    def has_owners(self) -> bool:
        """Whether an owner is recorded of any fish."""
        return any(labels.get(OWNER) for labels in self.labels.values())


def entrants_of(
    parts: Sequence[Sequence[Result]],
    table: ClassTable | None,
    lowest: Sequence[str] = (),
    tongue: Tongue = ENGLISH,
) -> tuple[Entrant, ...]:
    """Graded fish as prizes look at them. parts: the results by standard, with their classes as labels.

    lowest: the lowest grade of each standard. A fish that a fault puts there has its last word: it wins nothing.
    """
    grades = [*lowest, *[""] * len(parts)]
    return tuple(
        _entrant(one, table, number, grades[number], tongue) for number, results in enumerate(parts) for one in results
    )


def _entrant(result: Result, table: ClassTable | None, standard: int, last: str, tongue: Tongue) -> Entrant:
    groups = () if table is None else tuple(group.name for group in table.groups)
    sizes = () if table is None or table.sizes is None else tuple(size.name for size in table.sizes.sizes)
    labels = dict(result.labels)
    group, size = (labels.pop(label, "") if table is not None else "" for label in (GROUP, SIZE))
    why: list[str] = []
    if groups and group not in groups:
        why.append(tongue("no class for its variety") if group == NONE else tongue("its variety is not recorded"))
    if sizes and size not in sizes:
        measured = "" if table is None or table.sizes is None else tongue.of(table.sizes.trait.replace("_", " "))
        if not size:
            why.append(tongue("its {measure} is not recorded", measure=measured))
        elif size == NONE:
            why.append(tongue("no size for its {measure}", measure=measured))
        else:
            why.append(
                tongue("its size could be {sizes}: measure it again", sizes=tongue.joined(size.split(" or "), " or "))
            )
    barred = (
        []
        if result.grade != last
        else [one.title for one in result.reasons if one.kind == "fault" and one.name in result.faults]
    )
    if barred:
        why.append(tongue("kept from prizes by a fault: {faults}", faults=tongue.joined(barred)))
    settled = {GROUP: group if group in groups else "", SIZE: size if size in sizes else ""}
    return Entrant(
        fish=result.fish,
        outside=tongue.joined(why, " and ", "reasons"),
        labels={**labels, **{label: name for label, name in settled.items() if name}},
        grades=result.possible,
        score=(result.score_low, result.score_high),
        sections={name: (one.low, one.high) for name, one in result.sections.items()},
        standard=standard,
    )
