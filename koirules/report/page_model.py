"""A page of results as its template shows it: what stands on it, with every choice made and every number in words."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal
from itertools import groupby

from attrs import field

from koirules.classes.placing import GROUP, SIZE
from koirules.languages import ENGLISH, Tongue
from koirules.records.about import About
from koirules.records.columns import OWNER, VARIETY
from koirules.records.not_graded import NotGraded, Row, by_standard
from koirules.report.audience import Audience
from koirules.report.figures import figure, in_hundredths, in_tenths, parts_in_tenths
from koirules.report.fish_drawing import Shared
from koirules.report.fish_words import Told, told
from koirules.report.page_pictures import Pictures, Seen, seen
from koirules.report.page_scores import Chart, chart_of
from koirules.report.page_words import FATES, Wording, fate_word, row_name, share, width
from koirules.report.photographs import PHOTO, Photograph
from koirules.results.course import RoundCourse, Step
from koirules.results.ranking import best_first
from koirules.results.reason import Reason, State
from koirules.results.result import Contribution, Result, SectionResult
from koirules.values import frozen
from koirules.vocabulary.subject import FISH_FROM_ABOVE, Subject
from koirules.vocabulary.wordings import UNREAD

BEST = 3
"""How many fish are shown large."""
SHOWN, SHOWN_OF_MANY, MANY = 6, 3, 24
"""How many fish of a grade are shown at once, and on a page of many; the others are folded away."""

_TRANSLATED = (VARIETY, GROUP, SIZE)
"""Labels whose words a catalogue may have."""


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
    unread: str = ""
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
    """How many fish a grade got. left, wide: where its part of the strip lies, in %. again: of how many a remark was not read."""

    badge: Badge
    number: str
    share: str
    left: str
    wide: str
    middle: str
    shown: bool
    again: str = ""


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

    @property
    def foreign(self) -> str | None:
        """The language of titles where it is not that of the page."""
        return self.wording.tongue.foreign


@frozen
class Page:
    """Everything on a page. tongue: its language."""

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
    tongue: Tongue = ENGLISH
    about: About | None = field(default=None, repr=False)

    @property
    def foreign(self) -> str | None:
        """The language of titles where it is not that of the page."""
        return self.tongue.foreign

    @property
    def draws_koi(self) -> bool:
        """Whether all that is drawn is koi from above."""
        return self.subject.drawing == FISH_FROM_ABOVE

    @property
    def draws_others(self) -> bool:
        """Whether there are drawings, and some are of something else."""
        return not self.draws_koi and any(fish.views for part in self.parts for fish in part.table)


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
            titles.add_rows(wording, fish, audience)
        parts.append(maker.part(fish))
        before += len(one.rounds)
        recorded += len(fish)
    left = tuple(one for one in results if isinstance(one, NotGraded)) if audience.is_house else ()
    cautions = map(about.tongue.of, audience.cautions(about))
    common = [words for words in cautions if all(words in part.cautions for part in parts)]
    first = parts[0].wording.about
    whole = sum(len(part.table) for part in parts)
    tongue = about.tongue
    held = audience.day or about.day
    day = tongue.day(held) if held else ""
    called = audience.occasion or (about.records if audience.is_house else "")
    title = audience.title or (
        first.title if not about.parts else audience.occasion or about.records or tongue("Results")
    )
    return Page(
        title=title,
        kicker="" if about.parts else " · ".join(filter(None, (first.title if audience.title else "", *_facts(first)))),
        facts=" · ".join(filter(None, (about.counted(whole), called if called != title else "", day, about.classes))),
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
        tongue=tongue,
        about=about,
    )


def _facts(about: About) -> Iterator[str]:
    """What stands below the title of a standard."""
    tongue = about.tongue
    yield tongue("edition {edition}", edition=about.edition)
    yield from (
        tongue.of(words.replace("_", " ") if tongue.language else words)
        for words in (about.variety, about.stage)
        if words
    )


class _Titles:
    """What the script knows grades, sections and rows by, over all the standards of a page: their place among these."""

    def __init__(self) -> None:
        self.grades: list[str] = []
        self.sections: list[str] = []
        self.rows: dict[str, str] = {}
        self._numbers: dict[str, int] = {}

    def add_rows(self, wording: Wording, results: Sequence[Result], audience: Audience) -> None:
        """Add the rows of fish side by side, in the order of the rule file."""
        for row, title in _rows(wording, results):
            if row not in self.rows and (audience.names_owners or row != row_name("label", OWNER)):
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
        settled = [one for one in ranked if one.grade is not None]
        last = tuple(wording.grades)[-1]
        picks = {one.name for one in wording.about.rounds if one.places is not None}
        picked = [one for one in settled if any(step.kept and step.round in picks for step in one.course)]
        best = (picked or [one for one in settled if one.grade != last] or settled)[:BEST]
        fish = {
            id(one): self._fish(one, place, recorded[id(one)], large=one in best) for place, one in enumerate(ranked, 1)
        }
        shown = [fish[id(one)] for one in best]
        sections = tuple(section.title for section in ranked[0].sections.values()) if ranked else ()
        most = sum((section.worth for section in ranked[0].sections.values()), Decimal(0)) if ranked else Decimal(0)
        about = wording.about
        return Part(
            wording=wording,
            facts=" · ".join(_facts(about)),
            number=about.counted(len(ranked)),
            counts=tuple(one for one in _counts(wording, ranked) if self.audience.is_house or one.number != "0"),
            open_words=tuple(_open_words(wording, ranked)),
            best=tuple(shown),
            groups=tuple(self._groups(ranked, fish, shown)),
            table=tuple(fish[id(one)] for one in ranked),
            sections=sections,
            chart=chart_of(wording, ranked) if self.audience.is_house else None,
            rounds=tuple(_rounds(about)) if self.audience.is_house else (),
            stops=tuple(_stops(wording, ranked)) if self.audience.is_house else (),
            cautions=tuple(map(wording.tongue.of, self.audience.cautions(about))),
            settings="; ".join(f"{name} = {value}" for name, value in about.settings.items()),
            most=figure(most, most, wording.tongue),
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
            tongue, subject = self.wording.tongue, self.wording.about.subject
            badge = _open_badge(tongue("not settled")) if is_open else _badge(self.wording, name)
            words = self.wording.about.counted(len(rest))
            if len(rest) < len(everyone):
                words = tongue.counted(f"more {subject.one}", f"more {subject.many}", len(rest))
            if is_open:
                words = tongue("{fish}, at best {grade}", fish=words, grade=self.wording.grades[name].title)
            key = f"group{self.wording.key}-{place}{'-open' if is_open else ''}"
            shown = SHOWN if len(ranked) <= MANY else SHOWN_OF_MANY
            yield Group(key, badge, words, tuple(rest[:shown]), tuple(rest[shown:]))

    def _fish(self, result: Result, standing: int, recorded: int, *, large: bool) -> Fish:
        wording, house = self.wording, self.audience.is_house
        name = f"fish-{recorded}"
        widest = max((section.worth for section in result.sections.values()), default=Decimal(1))
        points = {section.title: section.low for section in result.sections.values()}
        points_of = parts_in_tenths(
            [(one.low, one.high) for one in result.sections.values()],
            (result.score_low, result.score_high),
            wording.tongue,
        )
        photograph = self.pictures.photographs.get(result.fish)
        limits = [r for r in result.reasons if r.kind in {"fault", "lift"} and r.state is not State.NO] if house else []
        return Fish(
            id=name,
            name=result.fish,
            standing=standing,
            recorded=recorded,
            badge=_badge_of(wording, result),
            score=in_tenths(result.score_low, result.score_high, wording.tongue) if result.sections else "",
            scores=f"{result.score_low} {result.score_high}",
            grades=" ".join(str(self.titles.grades.index(wording.grades[one].title)) for one in result.possible),
            stops=_stops_of(wording, result) if house else "",
            sections=" ".join(str(points.get(title, -1)) for title in self.titles.sections),
            standard=wording.number,
            told=told(wording, result, self.pictures.look_of(result.fish), each=2 if large else 1),
            views=seen(self.pictures, result, name, self.shared, wording.tongue, large=large),
            photograph=photograph,
            bars=tuple(
                _bar(self.titles, section, got, widest, wording.tongue)
                for section, got in zip(result.sections.values(), points_of, strict=True)
            ),
            criteria=tuple(_criteria(self.titles, result, wording.tongue)) if house else (),
            limits=tuple(_reason(self.titles, one) for one in limits),
            grade_lines=tuple(_reason(self.titles, one) for one in result.reasons if one.kind == "grade")
            if house
            else (),
            labels=tuple(self._labels(result, photograph)) if house else (),
            course=tuple(_course(wording, self.titles, result)) if house else (),
            points=tuple(points_of),
            silence=_silence(wording, result) if house else "",
            unread=result.unread if house else "",
            looks=(*_looks(wording, result), *_judges(wording, result)) if house else (),
        )

    def _labels(self, result: Result, photograph: Photograph | None) -> Iterator[tuple[str, str, str]]:
        """What was carried along, but for what is shown already."""
        shown = {UNREAD} | ({PHOTO} if photograph is not None else set())
        shown |= set() if self.audience.names_owners else {OWNER}
        if self.wording.number is not None:
            shown |= {"standard", "seal"}
        yield from (
            (self.wording.label(name), self._said(name, text), self.titles.row("label", name))
            for name, text in result.labels.items()
            if name not in shown
        )

    def _said(self, label: str, text: str) -> str:
        """A label in words: varieties and classes are translated, what people wrote themselves is not."""
        if self.wording.tongue.language is None or label not in _TRANSLATED:
            return text
        return self.wording.tongue.of(text.replace("_", " ") if label == VARIETY else text)


def _silence(wording: Wording, result: Result) -> str:
    """What was assumed of a fish because nobody mentioned it, apart from what was seen."""
    if not result.assumed:
        return ""
    tongue = wording.tongue
    told = tongue.joined(wording.trait(name) for name in result.assumed)
    if result.rests_on_silence:
        return tongue(
            "Not mentioned, and taken as the page says: {traits}; without that, another grade is possible.", traits=told
        )
    return tongue("Not mentioned, and taken as the page says: {traits}.", traits=told)


def _looks(wording: Wording, result: Result) -> Iterator[str]:
    """What came of a fish at each look of its sorting, and what the later ones changed."""
    tongue = wording.tongue
    for look in result.looks:
        told = tongue("Look {number}: {grades}", number=look.number, grades=wording.titles(look.possible))
        if result.sections:
            told += tongue(", {points} points", points=in_tenths(look.score_low, look.score_high, tongue))
        yield tongue.joined([told, *map(str, look.changes)], "; ")


def _judges(wording: Wording, result: Result) -> Iterator[str]:
    """What the judges of a fish came to: all together, then each."""
    if result.panel is None:
        return
    tongue = wording.tongue
    yield result.panel.words
    for one in result.panel.judges:
        told = tongue("{judge}: {grades}", judge=one.judge, grades=wording.titles(one.result.possible))
        if result.sections:
            ends = one.result.score_low, one.result.score_high
            told += tongue(", {points} points", points=in_tenths(*ends, tongue))
        yield told


def _badge(wording: Wording, grade: str) -> Badge:
    return Badge(wording.grades[grade].title, wording.shade(grade), wording.pips(grade))


def _open_badge(title: str) -> Badge:
    return Badge(title, "open")


def _badge_of(wording: Wording, result: Result) -> Badge:
    return _badge(wording, result.grade) if result.grade is not None else _open_badge(wording.graded(result))


def _counts(wording: Wording, results: Sequence[Result]) -> Iterator[Count]:
    settled = Counter(result.grade for result in results if result.grade is not None)
    still = sum(result.grade is None for result in results)
    unread = Counter(result.grade for result in results if result.unread)
    pairs = [(_badge(wording, name), settled[name], unread[name]) for name in wording.grades]
    left = 0.0
    for badge, number, again in [
        *pairs,
        *([(_open_badge(wording.tongue("not settled")), still, unread[None])] if still else []),
    ]:
        wide = 100 * number / len(results) if results else 0.0
        yield Count(
            badge,
            wording.tongue.whole(number),
            share(number, len(results), wording.tongue),
            f"{left:.2f}",
            f"{wide:.2f}",
            f"{left + wide / 2:.2f}",
            wide >= 3,
            wording.tongue("{number} to be read again", number=f"{again:,}") if again else "",
        )
        left += wide


def _open_words(wording: Wording, results: Sequence[Result]) -> Iterator[tuple[str, str, str]]:
    """What those that are not settled could be, with how many there are."""
    still = Counter(result.possible for result in results if result.grade is None)
    for possible, count in still.most_common():
        tongue = wording.tongue
        titles = tongue("could be {grades}", grades=wording.titles(possible))
        yield titles, tongue.whole(count), share(count, len(results), tongue)


def _bar(titles: _Titles, section: SectionResult, got: str, widest: Decimal, tongue: Tongue) -> Bar:
    return Bar(
        section.title,
        tongue("{points} of {most}", points=got, most=figure(section.worth, section.worth, tongue)),
        titles.row("section", section.name),
        width(section.worth, widest),
        width(section.low, widest),
        width(section.high - section.low, widest),
        width(section.low, section.worth),
    )


def _criteria(titles: _Titles, result: Result, tongue: Tongue) -> Iterator[tuple[str, tuple[Criterion, ...]]]:
    for section in result.sections.values():
        lines = [one for one in result.contributions if one.section == section.name and _counts_for(one)]
        yield section.title, tuple(_criterion(titles, section.name, one, tongue) for one in lines)
    # Where judges are put together the sections need not add up to the score.
    rest = [one for one in result.contributions if not one.section and _counts_for(one)]
    if rest:
        yield tongue("all sections together"), tuple(_criterion(titles, "", one, tongue) for one in rest)


def _counts_for(line: Contribution) -> bool:
    """Whether a line of a score has anything to say: a criterion always has, the others where they gave or may give."""
    if line.reason is None:
        return bool(line.points)
    return line.kind == "points" or line.reason.state is not State.NO


def _criterion(titles: _Titles, section: str, line: Contribution, tongue: Tongue) -> Criterion:
    row = titles.row(line.kind, f"{section} {line.name}")
    reason = line.reason
    if reason is None or reason.score_low is None or reason.score_high is None:
        return Criterion(line.title, tongue.figure(f"{line.points:.2f}"), "", row, foreign=False)
    most = reason.score_most if reason.kind == "points" else None
    given = in_hundredths(reason.score_low, reason.score_high, tongue)
    return Criterion(reason.words, given, "" if most is None else tongue.figure(f"{most:.2f}"), row)


def _reason(titles: _Titles, reason: Reason) -> Criterion:
    words = reason.words
    if reason.state is State.HELD_BACK:
        words = words.replace(f"{reason.title}: held back, since ", f"{reason.title}: does not count, because ", 1)
    return Criterion(words, "", "", titles.row(reason.kind, reason.name))


def _rounds(about: About) -> Iterator[Round]:
    tongue = about.tongue
    for one in about.rounds:
        tied = sum(len(tie.fish) for tie in one.ties)
        parts = [
            about.counted(len(one.looked_at)),
            tongue("{number} stay", number=tongue.whole(len(one.kept))),
            tongue("{number} leave", number=tongue.whole(len(one.left))),
        ]
        parts += [tongue("{number} tied", number=tongue.whole(tied))] if tied else []
        if one.by_hand:
            parts.append(tongue("{number} of those that stay kept by hand", number=tongue.whole(len(one.by_hand))))
        parts += [tongue("{number} still open", number=tongue.whole(len(one.open)))] if one.open else []
        ties = tuple(
            tongue.plural(
                "Tied for {number} place, for a person to choose: {fish}",
                "Tied for {number} places, for a person to choose: {fish}",
                tie.places,
                fish=tongue.joined(tie.fish),
            )
            for tie in one.ties
        )
        yield Round(one.title, one.asks, tongue.joined(parts) + _where(one, tongue), ties)


def _where(one: RoundCourse | Step, tongue: Tongue) -> str:
    where = tongue("; to {place}", place=tongue.of(one.sent)) if one.sent else ""
    return where + (tongue("; next look {day}", day=one.again.isoformat()) if one.again else "")


def _course(wording: Wording, titles: _Titles, result: Result) -> Iterator[tuple[str, str, str, str]]:
    """What a person decided about a fish and what each round made of it: title, fate, why, and the row it belongs to."""
    decision, tongue = result.decision, wording.tongue
    if decision is not None:
        why = tongue(
            "{reason} ({judge}); by the rules: {grades}",
            reason=decision.reason,
            judge=decision.by,
            grades=wording.titles(result.by_rules),
        )
        yield tongue("Decided by hand"), "", why, ""
    for step in result.course:
        still = tongue(" Still open.") if step.open else ""
        why = f"{step.why}{_where(step, tongue)}{tongue.of('.', 'end of a sentence')}{still}"
        yield step.title, tongue(", {fate}", fate=tongue.of(fate_word(step))), why, titles.row("round", step.round)


def _stops_of(wording: Wording, result: Result) -> str:
    """The rounds that looked at a fish with its fate in each, as the script knows them: `0-stays 1-leaves`."""
    places = {one.name: place for place, one in enumerate(wording.about.rounds, wording.rounds_before)}
    return " ".join(f"{places[step.round]}-{fate_word(step)}" for step in result.course if step.round in places)


def _stops(wording: Wording, results: Sequence[Result]) -> Iterator[tuple[str, str]]:
    """What can be shown by round, that which would show nothing left out."""
    of = f"{wording.about.title}, " if wording.number is not None else ""
    there = {stop for result in results for stop in _stops_of(wording, result).split()}
    for place, one in enumerate(wording.about.rounds, wording.rounds_before):
        for word in FATES:
            if f"{place}-{word}" in there:
                told = wording.tongue("{title}: {words}", title=one.title, words=wording.tongue.of(word))
                yield f"{place}-{word}", f"{of}{told}"


def _rows(wording: Wording, results: Sequence[Result]) -> Iterator[tuple[str, str]]:
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
        yield row_name("label", name), wording.label(name)
