"""The standards of a page: what stands there of each, and what fish of them all can be asked for together."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from attrs import frozen

from koirules.records.about import About
from koirules.records.not_graded import NotGraded, Row, by_standard
from koirules.report.page_markup import Markup, element, joined
from koirules.report.page_rounds import alerts, rounds
from koirules.report.page_scores import distribution
from koirules.report.page_top import cautions, facts_of, settings_of, totals
from koirules.report.page_words import Wording
from koirules.results.result import Result


@frozen
class Part:
    """A standard of a page with the fish that it graded, as they were recorded."""

    wording: Wording
    results: tuple[Result, ...]


def parts_of(results: Sequence[Row], about: About) -> tuple[Part, ...]:
    """The standards of a page."""
    found: list[Part] = []
    before = 0
    for number, (one, fish) in enumerate(by_standard(results, about)):
        found.append(Part(Wording.of(fish, one, number if about.parts else None, before), fish))
        before += len(one.rounds)
    return tuple(found)


def overview(parts: Sequence[Part], whole: About) -> Markup:
    """What stands above the fish: alerts, cautions, totals, scores and rounds, of the one standard or of each."""
    if not whole.parts:
        wording = parts[0].wording
        return joined([alerts(wording), cautions(wording.about.cautions), *_figures(parts[0]), rounds(wording)])
    shared = [words for words in whole.cautions if all(words in one.wording.about.cautions for one in parts)]
    return joined([cautions(shared), *(_standing(one, shared) for one in parts)])


def _figures(part: Part) -> Iterator[Markup]:
    wording, key = part.wording, part.wording.key
    grades = element(
        "section",
        element("h3" if key else "h2", "Grades", id=f"grades-title{key}"),
        totals(wording, part.results),
        class_="grades",
        aria_labelledby=f"grades-title{key}",
    )
    yield element("div", grades, distribution(wording, part.results), class_="overview")


def _standing(part: Part, shared: Sequence[str]) -> Markup:
    """One standard of several, with its own totals, scores, rounds, alerts and cautions."""
    wording = part.wording
    about, title = wording.about, f"standard{wording.key}"
    more = [words for words in about.cautions if words not in shared]
    return element(
        "section",
        element("h2", wording.foreign("span", about.title), id=title),
        element("p", facts_of(about)),
        element("p", element("b", f"{len(part.results):,} fish")),
        settings_of(about),
        alerts(wording),
        cautions(more, wording.key),
        *_figures(part),
        rounds(wording),
        class_="part",
        aria_labelledby=title,
    )


def not_graded(left: Sequence[NotGraded]) -> Markup:
    """The fish that no standard was for, or more than one, with the reason."""
    if not left:
        return Markup("")
    columns = list(dict.fromkeys(name for one in left for name in one.labels))
    head = element("tr", *(element("th", title, scope="col") for title in ("fish", *columns, "why")))
    rows = [
        element(
            "tr",
            element("th", element("bdi", one.fish), scope="row"),
            *(element("td", one.labels.get(name, "")) for name in columns),
            element("td", one.why.removeprefix("not graded: ")),
        )
        for one in left
    ]
    table = element("table", element("thead", head), element("tbody", *rows))
    return element(
        "section",
        element("h2", "Not graded", id="left-title"),
        element("p", f"{len(left):,} fish had no standard that was for them alone."),
        element("div", table, class_="wide", tabindex=0, role="group", aria_label="Fish that were not graded"),
        class_="left",
        id="left",
        aria_labelledby="left-title",
    )
