"""What stands above the fish: which standard, the cautions, the totals, and what the page can be asked for."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from koirules.formats.page_markup import Inside, Markup, element, joined
from koirules.formats.page_rounds import choices
from koirules.formats.page_words import Wording, share
from koirules.grading.results import Result


def header(wording: Wording, results: Sequence[Result]) -> Markup:
    """The standard, the records, and the settings that were changed."""
    about = wording.about
    facts = [f"edition {about.edition}", about.variety or "", about.stage or ""]
    told: list[Inside] = [
        wording.foreign("h1", about.title),
        element("p", " · ".join(fact for fact in facts if fact)),
        element("p", element("b", f"{len(results):,} fish"), f" from {about.records}" if about.records else ""),
    ]
    if about.settings:
        changed = "; ".join(f"{name} = {value}" for name, value in about.settings.items())
        told.append(element("p", "Changed for this run: ", element("b", changed), class_="changed"))
    ways = [element("a", "To the fish", href="#fish-part")]
    return element("header", *told, element("nav", *ways, class_="ways", aria_label="On this page"))


def cautions(wording: Wording) -> Markup:
    """What a reader should bear in mind before acting on a grade."""
    lines = [element("li", caution) for caution in wording.about.cautions]
    if not lines:
        return Markup("")
    title = element("h2", "Before you act on a grade", id="cautions-title")
    return element("section", title, element("ul", *lines), class_="cautions", aria_labelledby="cautions-title")


def totals(wording: Wording, results: Sequence[Result]) -> Markup:
    """How many fish each grade got, and what those that are not settled could still get."""
    settled = Counter(result.grade for result in results if result.grade is not None)
    still_open = Counter(result.possible for result in results if result.grade is None)
    rows = [_row(wording, name, settled[name], len(results)) for name in wording.grades]
    if still_open:
        number = sum(still_open.values())
        heading = element("th", element("span", class_="mark open", aria_hidden="true"), "not settled", scope="row")
        rows.append(_counted(heading, number, len(results)))
        for possible, count in still_open.most_common():
            titles = " or ".join(wording.grades[name].title for name in possible)
            words = joined(["could be ", wording.foreign("span", titles)])
            rows.append(_counted(element("th", words, scope="row"), count, len(results), class_="detail"))
    head = element("tr", *(element("th", title, scope="col") for title in ("grade", "fish", "share")))
    return element("table", element("thead", head), element("tbody", *rows), class_="totals")


def _row(wording: Wording, name: str, count: int, whole: int) -> Markup:
    line = wording.grades[name]
    mark = element("span", class_=f"mark {wording.shade(name)}", aria_hidden="true")
    return _counted(element("th", mark, wording.foreign("span", line.title), scope="row"), count, whole)


def _counted(heading: Markup, count: int, whole: int, class_: str | None = None) -> Markup:
    return element("tr", heading, element("td", f"{count:,}"), element("td", share(count, whole)), class_=class_)


def controls(wording: Wording, results: Sequence[Result]) -> Markup:
    """What to show and in which order; hidden until the script is there to do it."""
    chips = [
        _chip(str(place), wording.foreign("span", line.title)) for place, line in enumerate(wording.grades.values())
    ]
    if any(result.grade is None for result in results):
        chips.append(_chip("open", "not settled"))
    by_round = list(choices(wording, results))
    rounds = element("label", "Selection", element("select", *by_round, id="round")) if wording.about.rounds else ""
    find = element("label", "Find a fish, or a word in its reasons", element("input", type="search", id="find"))
    return element(
        "form",
        element("fieldset", element("legend", "Show only"), element("div", *chips, class_="chips")),
        element("div", find, rounds, element("label", "Order", element("select", *_orders(results), id="order"))),
        element(
            "div",
            element("button", "Open all reasons", type="button", id="unfold", aria_pressed="false"),
            element("button", "Print", type="button", id="print"),
            element("button", "Show all fish again", type="reset"),
        ),
        element("p", id="shown", role="status"),
        class_="controls scripted",
        aria_label="What to show",
        hidden=True,
    )


def _chip(value: str, title: Inside) -> Markup:
    return element("label", element("input", type="checkbox", name="grade", value=value), title, class_="chip")


def _orders(results: Sequence[Result]) -> Iterator[Markup]:
    yield element("option", "best first", value="best")
    yield element("option", "as recorded", value="recorded")
    yield element("option", "by name", value="name")
    if results and results[0].sections:
        yield element("option", "highest score first", value="score")
        yield element("option", "lowest score first", value="-score")
        for place, section in enumerate(results[0].sections.values()):
            yield element("option", f"most points for {section.title}", value=f"section {place}")
