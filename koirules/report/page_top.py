"""What stands above the fish: which standard, the cautions, the totals."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from koirules.records.about import About
from koirules.report.page_markup import Inside, Markup, element, joined
from koirules.report.page_words import Wording, share
from koirules.results.result import Result


def header(wording: Wording, results: Sequence[Result]) -> Markup:
    """The standard, the records, and the settings that were changed."""
    about = wording.about
    told: list[Inside] = [
        wording.foreign("h1", about.title),
        element("p", facts_of(about)),
        element("p", element("b", f"{len(results):,} fish"), f" from {about.records}" if about.records else ""),
        settings_of(about),
    ]
    return _headed(told, [element("a", "To the fish", href="#fish-part")])


def header_of_several(wordings: Sequence[Wording], whole: About, fish: int, left: int) -> Markup:
    """The records, how many fish were graded by how many standards, and the ways to each of these and to the fish."""
    number = len(wordings)
    graded = f"{fish:,} fish by {number:,} standard{'' if number == 1 else 's'}"
    told: list[Inside] = [
        element("h1", whole.records or "Results"),
        element("p", element("b", graded), f", {left:,} not graded" if left else ""),
    ]
    ways = [element("a", one.about.title, href=f"#standard{one.key}") for one in wordings]
    ways += [element("a", "Not graded", href="#left")] if left else []
    return _headed(told, [*ways, element("a", "To the fish", href="#fish-part")])


def _headed(told: Sequence[Inside], ways: Sequence[Markup]) -> Markup:
    return element("header", *told, element("nav", *ways, class_="ways", aria_label="On this page"))


def facts_of(about: About) -> str:
    """The edition, variety and stage of a standard."""
    facts = [f"edition {about.edition}", about.variety or "", about.stage or ""]
    return " · ".join(fact for fact in facts if fact)


def settings_of(about: About) -> Markup:
    """The settings that a run changed."""
    if not about.settings:
        return Markup("")
    changed = "; ".join(f"{name} = {value}" for name, value in about.settings.items())
    return element("p", "Changed for this run: ", element("b", changed), class_="changed")


def cautions(told: Sequence[str], key: str = "") -> Markup:
    """What a reader should bear in mind before acting on a grade. key: what its id ends in."""
    lines = [element("li", caution) for caution in told]
    if not lines:
        return Markup("")
    name = f"cautions-title{key}"
    title = element("h3" if key else "h2", "Before you act on a grade", id=name)
    return element("section", title, element("ul", *lines), class_="cautions", aria_labelledby=name)


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
