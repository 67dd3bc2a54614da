"""One fish on a page: its grade, its points by section, the reasons in words, and what was carried along."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from decimal import Decimal

from attrs import frozen

from koirules.report.figures import figure, in_hundredths
from koirules.report.page_controls import Asked
from koirules.report.page_markup import Inside, Markup, element, joined
from koirules.report.page_parts import Part
from koirules.report.page_pictures import Pictures, pictures_of
from koirules.report.page_rounds import course, stops
from koirules.report.page_words import Wording, row_name, width
from koirules.report.photographs import PHOTO
from koirules.results.reason import Reason, State
from koirules.results.result import Contribution, Result, SectionResult


@frozen
class Standing:
    """Where a fish stands in its batch: its place from the best on, and in the records, both from 0."""

    best: int
    recorded: int


def card(part: Part, asked: Asked, result: Result, standing: Standing, pictures: Pictures) -> Markup:
    """The fish as an item of the list; the script of the page reads its `data-` attributes and changes none."""
    wording = part.wording
    name = f"fish-{standing.recorded}"
    scored = bool(result.sections)
    widest = max((section.worth for section in result.sections.values()), default=Decimal(1))
    return element(
        "li",
        _head(wording, result, name, scored=scored),
        pictures_of(pictures, result, name),
        _sections(wording, result, widest) if scored else Markup(""),
        course(wording, result),
        _why(wording, result),
        _looks(wording, result),
        _silence(result),
        _labels(result, _shown_elsewhere(wording, result, pictures)),
        _choice(name),
        _everything(wording, result),
        class_="fish",
        id=name,
        data_best=standing.best,
        data_recorded=standing.recorded,
        data_grades=asked.grades_of(part, result),
        data_score=f"{result.score_low} {result.score_high}",
        data_stops=stops(wording, result) or None,
        data_sections=asked.points_of(result) if scored else None,
        data_standard=wording.number,
    )


def _head(wording: Wording, result: Result, name: str, *, scored: bool) -> Markup:
    score = element("p", element("b", figure(result.score_low, result.score_high)), " points", class_="score")
    return element(
        "div",
        element("h3", element("bdi", result.fish), id=f"{name}-name"),
        element(
            "p",
            element("span", class_=f"mark {wording.shade(result.possible[0])}", aria_hidden="true"),
            wording.foreign("b", wording.graded(result)),
            element("span", " (not settled)") if result.grade is None else "",
            class_="grade",
        ),
        score if scored else "",
        "" if wording.number is None else _by(wording),
        class_="head",
    )


def _by(wording: Wording) -> Markup:
    """Which of several standards graded a fish."""
    about = wording.about
    return element("p", "by ", wording.foreign("span", about.title), f", edition {about.edition}", class_="by")


def _shown_elsewhere(wording: Wording, result: Result, pictures: Pictures) -> frozenset[str]:
    """The labels that need not stand among the others: what is seen, and which of several standards it was."""
    seen = {PHOTO} if result.fish in pictures.photographs else set()
    return frozenset(seen if wording.number is None else seen | {"standard", "seal"})


def _sections(wording: Wording, result: Result, widest: Decimal) -> Markup:
    rows = [
        element(
            "tr",
            element("th", wording.foreign("span", section.title), scope="row"),
            element("td", _bar(section, widest), class_="bar"),
            element("td", f"{figure(section.low, section.high)} of {figure(section.worth, section.worth)}"),
            data_row=row_name("section", section.name),
        )
        for section in result.sections.values()
    ]
    return element(
        "table",
        element("caption", "Points by section", class_="unseen"),
        element("tbody", *rows),
        class_="sections",
    )


def _bar(section: SectionResult, widest: Decimal) -> Markup:
    """A track as long as the section is worth, filled as far as it surely got, paler as far as it might."""
    sure, possible = width(section.low, widest), width(section.high - section.low, widest)
    parts = [element("rect", class_="track", width=width(section.worth, widest), height=10)]
    parts.append(element("rect", class_="got", width=sure, height=10))
    if section.high > section.low:
        parts.append(element("rect", class_="might", x=sure, width=possible, height=10))
    return element("svg", *parts, viewBox="0 0 100 10", preserveAspectRatio="none", aria_hidden="true")


def _why(wording: Wording, result: Result) -> Markup:
    told = [wording.foreign("li", reason.words) for reason in result.main_reasons]
    return element("ul", *told, class_="why") if told else Markup("")


def _looks(wording: Wording, result: Result) -> Markup:
    """What came of a fish at each look of its sorting, and what the later ones changed."""
    told = [
        element(
            "li",
            f"Look {look.number}: ",
            wording.foreign("span", " or ".join(wording.grades[name].title for name in look.possible)),
            f", {figure(look.score_low, look.score_high)} points" if result.sections else "",
            *(element("span", f"; {change}") for change in look.changes),
        )
        for look in result.looks
    ]
    return element("ul", *told, class_="looks") if told else Markup("")


def _silence(result: Result) -> Markup:
    """What was assumed of a fish because nobody mentioned it, apart from what was seen."""
    if not result.assumed:
        return Markup("")
    told = ", ".join(name.replace("_", " ") for name in result.assumed)
    rests = "; without that, another grade is possible" if result.rests_on_silence else ""
    return element("p", f"Not mentioned, and taken as the page says: {told}{rests}.", class_="silence")


def _labels(result: Result, shown: Collection[str]) -> Markup:
    """What was carried along, but for what is shown already."""
    told = [
        element("div", element("dt", name), element("dd", text), data_row=row_name("label", name))
        for name, text in result.labels.items()
        if name not in shown
    ]
    return element("dl", *told, class_="labels") if told else Markup("")


def _choice(name: str) -> Markup:
    box = element("input", type="checkbox", class_="chosen", aria_describedby=f"{name}-name")
    return element("label", box, " Put side by side", class_="choice scripted", hidden=True)


def _everything(wording: Wording, result: Result) -> Markup:
    """All the reasons, folded away: what each criterion gave, the faults and lifts that did anything, the grades."""
    parts = [_criteria(wording, result, section) for section in result.sections.values()]
    limits = [r for r in result.reasons if r.kind in {"fault", "lift"} and r.state is not State.NO]
    for title, reasons in (
        ("Faults and lifts", limits),
        ("Grades", [reason for reason in result.reasons if reason.kind == "grade"]),
    ):
        if reasons:
            told = [_line(wording, reason) for reason in reasons]
            parts.append(joined([element("h4", title), element("ul", *told)]))
    return element("details", element("summary", "All reasons"), *parts)


def _line(wording: Wording, reason: Reason) -> Markup:
    return element("li", wording.foreign("span", reason.words), data_row=row_name(reason.kind, reason.name))


def _criteria(wording: Wording, result: Result, section: SectionResult) -> Markup:
    head = element(
        "tr",
        element("th", "what was seen, and what it gave", scope="col"),
        element("th", "of the score", scope="col"),
        element("th", "at most", scope="col"),
    )
    rows = [
        element("tr", *_cells(wording, line), data_row=row_name(line.kind, f"{section.name} {line.name}"))
        for line in result.contributions
        if line.section == section.name and _counts(line)
    ]
    return element(
        "table",
        element("caption", wording.foreign("span", section.title)),
        element("thead", head),
        element("tbody", *rows),
        class_="criteria",
    )


def _counts(line: Contribution) -> bool:
    """Whether a line of a score has anything to say: a criterion always has, the others where they gave or may give."""
    if line.reason is None:
        return bool(line.points)
    return line.kind == "points" or line.reason.state is not State.NO


def _cells(wording: Wording, line: Contribution) -> Iterator[Inside]:
    reason = line.reason
    if reason is None or reason.score_low is None or reason.score_high is None:
        yield element("td", line.title)
        yield element("td", f"{line.points:.2f}")
        yield element("td")
        return
    yield wording.foreign("td", reason.words)
    yield element("td", in_hundredths(reason.score_low, reason.score_high))
    most = reason.score_most if reason.kind == "points" else None
    yield element("td", "" if most is None else f"{most:.2f}")
