"""What a page can be asked for: which fish to show, and in which order."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from attrs import frozen

from koirules.report.page_markup import Inside, Markup, element
from koirules.report.page_parts import Part
from koirules.report.page_rounds import choices
from koirules.results.result import Result


@frozen
class Asked:
    """What the script knows grades and sections by, over all the standards of a page: their place among these titles."""

    grades: tuple[str, ...]
    sections: tuple[str, ...]

    @classmethod
    def of(cls, parts: Sequence[Part]) -> Asked:
        """Those of some standards, each title once."""
        grades = dict.fromkeys(line.title for part in parts for line in part.wording.grades.values())
        first = [part.results[0] for part in parts if part.results]
        sections = dict.fromkeys(section.title for result in first for section in result.sections.values())
        return cls(tuple(grades), tuple(sections))

    def grades_of(self, part: Part, result: Result) -> str:
        """The grades that a fish could get."""
        return " ".join(str(self.grades.index(part.wording.grades[name].title)) for name in result.possible)

    def points_of(self, result: Result) -> str:
        """The points of a fish in each section; -1 in one that its standard does not have."""
        points = {section.title: section.low for section in result.sections.values()}
        return " ".join(str(points.get(title, -1)) for title in self.sections)


def controls(parts: Sequence[Part], asked: Asked) -> Markup:
    """What to show and in which order; hidden until the script is there to do it."""
    chips = [_chip(str(place), _titled(parts, title)) for place, title in enumerate(asked.grades)]
    if any(result.grade is None for part in parts for result in part.results):
        chips.append(_chip("open", "not settled"))
    find = element("label", "Find a fish, or a word in its reasons", element("input", type="search", id="find"))
    lists = [
        element("label", title, element("select", *options, id=name))
        for title, name, options in (
            ("Standard", "standard", list(_standards(parts))),
            ("Selection", "round", list(_rounds(parts))),
            ("Order", "order", list(_orders(asked))),
        )
        if options
    ]
    return element(
        "form",
        element("fieldset", element("legend", "Show only"), element("div", *chips, class_="chips")),
        element("div", find, *lists),
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


def _titled(parts: Sequence[Part], title: str) -> Markup:
    """The title of a grade, in the language of the standard that has it."""
    of = next(part for part in parts if any(line.title == title for line in part.wording.grades.values()))
    return of.wording.foreign("span", title)


def _chip(value: str, title: Inside) -> Markup:
    return element("label", element("input", type="checkbox", name="grade", value=value), title, class_="chip")


def _standards(parts: Sequence[Part]) -> Iterator[Markup]:
    if len(parts) > 1:
        yield element("option", "every standard", value="")
        for part in parts:
            about = part.wording.about
            yield element("option", f"{about.title}, edition {about.edition}", value=part.wording.number)


def _rounds(parts: Sequence[Part]) -> Iterator[Markup]:
    if any(part.wording.about.rounds for part in parts):
        yield element("option", "every fish", value="")
        for part in parts:
            yield from choices(part.wording, part.results, named=len(parts) > 1)


def _orders(asked: Asked) -> Iterator[Markup]:
    yield element("option", "best first", value="best")
    yield element("option", "as recorded", value="recorded")
    yield element("option", "by name", value="name")
    if asked.sections:
        yield element("option", "highest score first", value="score")
        yield element("option", "lowest score first", value="-score")
        for place, title in enumerate(asked.sections):
            yield element("option", f"most points for {title}", value=f"section {place}")
