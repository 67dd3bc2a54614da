"""A page of results as its template shows it: what stands on it, with every choice made and every number in words."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal
from itertools import groupby

from attrs import field, frozen

from koirules.records.about import About
from koirules.records.not_graded import NotGraded, Row, by_standard
from koirules.report.audience import Audience
from koirules.report.figures import figure, in_hundredths, in_tenths
from koirules.report.fish_drawing import Shared
from koirules.report.fish_words import Told, told
from koirules.report.page_pictures import Pictures, Seen, seen
from koirules.report.page_scores import Chart, chart_of
from koirules.report.page_words import Wording, fate_word, row_name, share, width
from koirules.report.photographs import PHOTO, Photograph
from koirules.results.course import RoundCourse, Step
from koirules.results.ranking import best_first
from koirules.results.reason import Reason, State
from koirules.results.result import Contribution, Result, SectionResult
from koirules.vocabulary.subject import Subject

BEST = 3
"""How many fish are shown large."""
SHOWN = 6
"""How many fish of a grade are shown at once; the others are folded away."""


@frozen
class Badge:
    """A grade as a mark: its title, its shade, and its pips. possible: whether a fish could get it or another one."""

    title: str
    shade: str
    pips: tuple[bool, ...] = ()


@frozen
class Bar:
    """A section of a fish.

    worth, got, might: how long its bar is, how much it surely got and may still get, in % of the widest section. filled: how
    much it surely got, in % of its own worth.
    """

    title: str
    words: str
    row: str
    worth: str
    got: str
    might: str
    filled: str


@frozen
class Criterion:
    """A line of the table of a section: what was seen, what it gave, and the most that it gives."""

    words: str
    points: str
    most: str
    row: str
    foreign: bool = True


@frozen
class Fish:
    """A fish as a card. standing: its place from the best on, from 1."""

    id: str
    name: str
    standing: int
    recorded: int
    badge: Badge
    score: str
    scores: str
    grades: str
    stops: str
    sections: str
    standard: int | None
    told: Told
    views: tuple[Seen, ...]
    photograph: Photograph | None
    bars: tuple[Bar, ...]
    criteria: tuple[tuple[str, tuple[Criterion, ...]], ...]
    limits: tuple[Criterion, ...]
    grade_lines: tuple[Criterion, ...]
    labels: tuple[tuple[str, str, str], ...]
    course: tuple[tuple[str, str, str, str], ...]
    points: tuple[str, ...]
    silence: str = ""
    looks: tuple[str, ...] = ()

    @property
    def picture(self) -> Seen | None:
        """The view that its card shows."""
        return self.views[0] if self.views else None


@frozen
class Group:
    """The fish of a grade. more: whether some of them stand among the best already."""

    id: str
    badge: Badge
    count: str
    fish: tuple[Fish, ...]
    rest: tuple[Fish, ...]


@frozen
class Count:
    """How many fish a grade got. left, wide: where its part of the strip lies, in %."""

    badge: Badge
    number: str
    share: str
    left: str
    wide: str
    middle: str
    shown: bool


@frozen
class Round:
    """A round of the selection."""

    title: str
    asks: str
    counts: str
    ties: tuple[str, ...]


@frozen
class Part:
    """A standard of a page with the fish that it graded."""

    wording: Wording
    facts: str
    number: str
    counts: tuple[Count, ...]
    open_words: tuple[tuple[str, str, str], ...]
    best: tuple[Fish, ...]
    groups: tuple[Group, ...]
    table: tuple[Fish, ...]
    sections: tuple[str, ...]
    chart: Chart | None
    rounds: tuple[Round, ...]
    stops: tuple[tuple[str, str], ...]
    cautions: tuple[str, ...]
    settings: str
    most: str


@frozen
class Page:
    """Everything on a page."""

    title: str
    kicker: str
    facts: str
    audience: Audience
    parts: tuple[Part, ...]
    several: bool
    cautions: tuple[str, ...]
    left: tuple[NotGraded, ...]
    left_columns: tuple[str, ...]
    chips: tuple[tuple[str, str], ...]
    rows: tuple[str, ...]
    definitions: str
    subject: Subject
    language: str | None = None
    about: About | None = field(default=None, repr=False)


def page_of(results: Sequence[Row], about: About, pictures: Pictures, audience: Audience) -> Page:
    """Put a page together."""
    shared = Shared()
    titles = _Titles()
    parts: list[Part] = []
    before = recorded = 0
    for number, (one, fish) in enumerate(by_standard(results, about)):
        wording = Wording.of(fish, one, number if about.parts else None, before)
        maker = _Maker(wording, pictures, audience, shared, titles, recorded)
        titles.add(wording, fish)
        if audience.is_house:
            titles.add_rows(fish)
        parts.append(maker.part(fish))
        before += len(one.rounds)
        recorded += len(fish)
    left = tuple(one for one in results if isinstance(one, NotGraded)) if audience.is_house else ()
    common = [words for words in audience.cautions(about) if all(words in part.cautions for part in parts)]
    first = parts[0].wording.about
    whole = sum(len(part.table) for part in parts)
    day = f"{about.day.day} {about.day:%B %Y}" if about.day else ""
    return Page(
        title=audience.title or (first.title if not about.parts else about.records or "Results"),
        kicker=""
        if about.parts
        else " · ".join(
            filter(
                None, (first.title if audience.title else "", f"edition {first.edition}", first.variety, first.stage)
            )
        ),
        facts=" · ".join(
            filter(None, (about.subject.counted(whole), about.records if audience.is_house else "", day, about.classes))
        ),
        audience=audience,
        parts=tuple(parts),
        several=bool(about.parts),
        cautions=tuple(common),
        left=left,
        left_columns=tuple(dict.fromkeys(name for one in left for name in one.labels)),
        chips=tuple((str(i), title) for i, title in enumerate(titles.grades)) if audience.is_house else (),
        rows=tuple(titles.rows.values()),
        definitions=shared.definitions,
        subject=about.subject,
        language=first.language,
        about=about,
    )


class _Titles:
    """What the script knows grades, sections and rows by, over all the standards of a page: their place among these."""

    def __init__(self) -> None:
        self.grades: list[str] = []
        self.sections: list[str] = []
        self.rows: dict[str, str] = {}
        self._numbers: dict[str, int] = {}

    def add_rows(self, results: Sequence[Result]) -> None:
        """Add the rows of fish side by side, in the order of the rule file."""
        for row, title in _rows(results):
            if row not in self.rows:
                self._numbers[row] = len(self.rows)
                self.rows[row] = title

    def row(self, kind: str, name: str) -> str:
        """The number of a row, the same for every fish; "" for one that no script looks for."""
        number = self._numbers.get(row_name(kind, name))
        return "" if number is None else str(number)

    def add(self, wording: Wording, results: Sequence[Result]) -> None:
        for line in wording.grades.values():
            if line.title not in self.grades:
                self.grades.append(line.title)
        for section in results[0].sections.values() if results else ():
            if section.title not in self.sections:
                self.sections.append(section.title)


@frozen
class _Maker:
    """Makes the part of one standard."""

    wording: Wording
    pictures: Pictures
    audience: Audience
    shared: Shared
    titles: _Titles
    before: int

    def part(self, results: Sequence[Result]) -> Part:
        wording = self.wording
        recorded = {id(result): place for place, result in enumerate(results, self.before)}
        ranked = [one for one in best_first(tuple(wording.grades), results) if self.audience.shows(wording, one)]
        best = [one for one in ranked if one.grade is not None][:BEST]
        fish = {
            id(one): self._fish(one, place, recorded[id(one)], large=one in best) for place, one in enumerate(ranked, 1)
        }
        shown = [fish[id(one)] for one in best]
        sections = tuple(section.title for section in ranked[0].sections.values()) if ranked else ()
        most = sum((section.worth for section in ranked[0].sections.values()), Decimal(0)) if ranked else Decimal(0)
        about = wording.about
        return Part(
            wording=wording,
            facts=" · ".join(filter(None, (f"edition {about.edition}", about.variety, about.stage))),
            number=about.subject.counted(len(ranked)),
            counts=tuple(one for one in _counts(wording, ranked) if self.audience.is_house or one.number != "0"),
            open_words=tuple(_open_words(wording, ranked)),
            best=tuple(shown),
            groups=tuple(self._groups(ranked, fish, shown)),
            table=tuple(fish[id(one)] for one in ranked),
            sections=sections,
            chart=chart_of(wording, ranked) if self.audience.is_house else None,
            rounds=tuple(_rounds(about.rounds, about.subject)) if self.audience.is_house else (),
            stops=tuple(_stops(wording, ranked)) if self.audience.is_house else (),
            cautions=self.audience.cautions(about),
            settings="; ".join(f"{name} = {value}" for name, value in about.settings.items()),
            most=figure(most, most),
        )

    def _groups(self, ranked: Sequence[Result], fish: Mapping[int, Fish], best: Sequence[Fish]) -> Iterator[Group]:
        """The fish by grade, best first; those that are not settled stand behind the best grade that they could get."""

        def of(result: Result) -> tuple[int, bool]:
            return self.wording.place[result.possible[0]], result.grade is None

        for (place, is_open), found in groupby(sorted(ranked, key=of), of):
            name = tuple(self.wording.grades)[place]
            everyone = [fish[id(one)] for one in found]
            rest = [one for one in everyone if one not in best]
            if not rest:
                continue
            badge = _open_badge() if is_open else _badge(self.wording, name)
            words = f"{len(rest):,} {'more ' if len(rest) < len(everyone) else ''}{self.wording.about.subject.noun(len(rest))}"
            if is_open:
                words += f", at best {self.wording.grades[name].title}"
            key = f"group{self.wording.key}-{place}{'-open' if is_open else ''}"
            yield Group(key, badge, words, tuple(rest[:SHOWN]), tuple(rest[SHOWN:]))

    def _fish(self, result: Result, standing: int, recorded: int, *, large: bool) -> Fish:
        wording, house = self.wording, self.audience.is_house
        name = f"fish-{recorded}"
        widest = max((section.worth for section in result.sections.values()), default=Decimal(1))
        points = {section.title: section.low for section in result.sections.values()}
        photograph = self.pictures.photographs.get(result.fish)
        limits = [r for r in result.reasons if r.kind in {"fault", "lift"} and r.state is not State.NO] if house else []
        return Fish(
            id=name,
            name=result.fish,
            standing=standing,
            recorded=recorded,
            badge=_badge_of(wording, result),
            score=in_tenths(result.score_low, result.score_high) if result.sections else "",
            scores=f"{result.score_low} {result.score_high}",
            grades=" ".join(str(self.titles.grades.index(wording.grades[one].title)) for one in result.possible),
            stops=_stops_of(wording, result) if house else "",
            sections=" ".join(str(points.get(title, -1)) for title in self.titles.sections),
            standard=wording.number,
            told=told(wording, result, self.pictures.look_of(result.fish), each=2 if large else 1),
            views=seen(self.pictures, result, name, self.shared, large=large),
            photograph=photograph,
            bars=tuple(_bar(self.titles, section, widest) for section in result.sections.values()),
            criteria=tuple(_criteria(self.titles, result)) if house else (),
            limits=tuple(_reason(self.titles, one) for one in limits),
            grade_lines=tuple(_reason(self.titles, one) for one in result.reasons if one.kind == "grade")
            if house
            else (),
            labels=tuple(self._labels(result, photograph)) if house else (),
            course=tuple(_course(wording, self.titles, result)) if house else (),
            points=tuple(in_tenths(one.low, one.high) for one in result.sections.values()),
            silence=_silence(result) if house else "",
            looks=tuple(_looks(wording, result)) if house else (),
        )

    def _labels(self, result: Result, photograph: Photograph | None) -> Iterator[tuple[str, str, str]]:
        """What was carried along, but for what is shown already."""
        shown = {PHOTO} if photograph is not None else set()
        if self.wording.number is not None:
            shown |= {"standard", "seal"}
        yield from (
            (name, text, self.titles.row("label", name)) for name, text in result.labels.items() if name not in shown
        )


def _silence(result: Result) -> str:
    """What was assumed of a fish because nobody mentioned it, apart from what was seen."""
    if not result.assumed:
        return ""
    told = ", ".join(name.replace("_", " ") for name in result.assumed)
    rests = "; without that, another grade is possible" if result.rests_on_silence else ""
    return f"Not mentioned, and taken as the page says: {told}{rests}."


def _looks(wording: Wording, result: Result) -> Iterator[str]:
    """What came of a fish at each look of its sorting, and what the later ones changed."""
    for look in result.looks:
        titles = " or ".join(wording.grades[name].title for name in look.possible)
        points = f", {in_tenths(look.score_low, look.score_high)} points" if result.sections else ""
        yield f"Look {look.number}: {titles}{points}{''.join(f'; {change}' for change in look.changes)}"


def _badge(wording: Wording, grade: str) -> Badge:
    return Badge(wording.grades[grade].title, wording.shade(grade), wording.pips(grade))


def _open_badge(title: str = "not settled") -> Badge:
    return Badge(title, "open")


def _badge_of(wording: Wording, result: Result) -> Badge:
    return _badge(wording, result.grade) if result.grade is not None else _open_badge(wording.graded(result))


def _counts(wording: Wording, results: Sequence[Result]) -> Iterator[Count]:
    settled = Counter(result.grade for result in results if result.grade is not None)
    still = sum(result.grade is None for result in results)
    pairs = [(_badge(wording, name), settled[name]) for name in wording.grades]
    left = 0.0
    for badge, number in [*pairs, *([(_open_badge(), still)] if still else [])]:
        wide = 100 * number / len(results) if results else 0.0
        yield Count(
            badge,
            f"{number:,}",
            share(number, len(results)),
            f"{left:.2f}",
            f"{wide:.2f}",
            f"{left + wide / 2:.2f}",
            wide >= 3,
        )
        left += wide


def _open_words(wording: Wording, results: Sequence[Result]) -> Iterator[tuple[str, str, str]]:
    """What those that are not settled could be, with how many there are."""
    still = Counter(result.possible for result in results if result.grade is None)
    for possible, count in still.most_common():
        titles = " or ".join(wording.grades[name].title for name in possible)
        yield titles, f"{count:,}", share(count, len(results))


def _bar(titles: _Titles, section: SectionResult, widest: Decimal) -> Bar:
    return Bar(
        section.title,
        f"{in_tenths(section.low, section.high)} of {figure(section.worth, section.worth)}",
        titles.row("section", section.name),
        width(section.worth, widest),
        width(section.low, widest),
        width(section.high - section.low, widest),
        width(section.low, section.worth),
    )


def _criteria(titles: _Titles, result: Result) -> Iterator[tuple[str, tuple[Criterion, ...]]]:
    for section in result.sections.values():
        lines = [one for one in result.contributions if one.section == section.name and _counts_for(one)]
        yield section.title, tuple(_criterion(titles, section, one) for one in lines)


def _counts_for(line: Contribution) -> bool:
    """Whether a line of a score has anything to say: a criterion always has, the others where they gave or may give."""
    if line.reason is None:
        return bool(line.points)
    return line.kind == "points" or line.reason.state is not State.NO


def _criterion(titles: _Titles, section: SectionResult, line: Contribution) -> Criterion:
    row = titles.row(line.kind, f"{section.name} {line.name}")
    reason = line.reason
    if reason is None or reason.score_low is None or reason.score_high is None:
        return Criterion(line.title, f"{line.points:.2f}", "", row, foreign=False)
    most = reason.score_most if reason.kind == "points" else None
    given = in_hundredths(reason.score_low, reason.score_high)
    return Criterion(reason.words, given, "" if most is None else f"{most:.2f}", row)


def _reason(titles: _Titles, reason: Reason) -> Criterion:
    return Criterion(reason.words, "", "", titles.row(reason.kind, reason.name))


def _rounds(found: Sequence[RoundCourse], subject: Subject) -> Iterator[Round]:
    for one in found:
        tied = sum(len(tie.fish) for tie in one.ties)
        parts = [subject.counted(len(one.looked_at)), f"{len(one.kept):,} stay", f"{len(one.left):,} leave"]
        parts += [f"{tied:,} tied"] if tied else []
        parts += [f"{len(one.by_hand):,} of those that stay kept by hand"] if one.by_hand else []
        parts += [f"{len(one.open):,} still open"] if one.open else []
        ties = tuple(
            f"Tied for {tie.places} place{'' if tie.places == 1 else 's'}, for a person to choose: {', '.join(tie.fish)}"
            for tie in one.ties
        )
        yield Round(one.title, one.asks, ", ".join(parts) + _where(one), ties)


def _where(one: RoundCourse | Step) -> str:
    where = f"; to {one.sent}" if one.sent else ""
    return where + (f"; next look {one.again.isoformat()}" if one.again else "")


def _course(wording: Wording, titles: _Titles, result: Result) -> Iterator[tuple[str, str, str, str]]:
    """What a person decided about a fish and what each round made of it: title, fate, why, and the row it belongs to."""
    decision = result.decision
    if decision is not None:
        rules = " or ".join(wording.grades[name].title for name in result.by_rules)
        yield "Decided by hand", "", f"{decision.reason} ({decision.by}); by the rules: {rules}", ""
    for step in result.course:
        still = " Still open." if step.open else ""
        yield step.title, f", {fate_word(step)}", f"{step.why}{_where(step)}.{still}", titles.row("round", step.round)


def _stops_of(wording: Wording, result: Result) -> str:
    """The rounds that looked at a fish with its fate in each, as the script knows them: `0-stays 1-leaves`."""
    places = {one.name: place for place, one in enumerate(wording.about.rounds, wording.rounds_before)}
    return " ".join(f"{places[step.round]}-{fate_word(step)}" for step in result.course if step.round in places)


def _stops(wording: Wording, results: Sequence[Result]) -> Iterator[tuple[str, str]]:
    """What can be shown by round, that which would show nothing left out."""
    of = f"{wording.about.title}, " if wording.number is not None else ""
    there = {stop for result in results for stop in _stops_of(wording, result).split()}
    for place, one in enumerate(wording.about.rounds, wording.rounds_before):
        for word in ("stays", "tied", "leaves"):
            if f"{place}-{word}" in there:
                yield f"{place}-{word}", f"{of}{one.title}: {word}"


def _rows(results: Sequence[Result]) -> Iterator[tuple[str, str]]:
    """The name and the title of each row; every result of a standard has the same but for its labels."""
    for name, title in {step.round: step.title for result in results for step in result.course}.items():
        yield row_name("round", name), title
    if results:
        first = results[0]
        for section in first.sections.values():
            yield row_name("section", section.name), section.title
        for line in first.contributions:
            yield row_name(line.kind, f"{line.section} {line.name}"), line.title
        for reason in first.reasons:
            if reason.kind in {"fault", "lift"}:
                yield row_name(reason.kind, reason.name), reason.title
    for name in dict.fromkeys(name for result in results for name in result.labels):
        yield row_name("label", name), name
