"""The distribution of the scores on a page: a picture with the lines of the grades, and the same in figures."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal

from koirules.report.page_markup import Inside, Markup, element
from koirules.report.page_words import Wording
from koirules.report.score_bins import Bin, bins
from koirules.results.result import Result
from koirules.vocabulary.kinds import shortest

_LEFT, _RIGHT, _TOP, _FOOT = 34, 14, 8, 26
_WIDTH, _HEIGHT = 400, 150
_LINE, _LETTER = 17, 8
"""Sizes in units of the picture, which is as wide as a phone shows it."""


def distribution(wording: Wording, results: Sequence[Result]) -> Markup:
    """The picture and its figures; nothing where nobody gives points."""
    found = bins(results)
    if not found:
        return Markup("")
    unsettled = any(one.unsettled for one in found)
    name = f"scores-title{wording.key}"
    title = element("h3" if wording.key else "h2", "Scores", id=name)
    note = " Fish whose score or grade is not settled stand, in white, at their lowest score." if unsettled else ""
    caption = element(
        "figcaption",
        "How many fish got which score; the broken lines show the lowest score for each grade." + note,
    )
    figures = element("details", element("summary", "The same in figures"), _figures(wording, found))
    picture = element("figure", _picture(wording, found), _legend(wording, found), caption)
    return element("section", title, picture, figures, class_="scores", aria_labelledby=name)


def _picture(wording: Wording, found: Sequence[Bin]) -> Markup:
    lines = sorted((line.score, line.title) for line in wording.grades.values() if line.score is not None)
    most = found[-1].high
    top = _TOP + _LINE * len(lines)
    highest = max(one.fish for one in found) or 1
    parts = [
        *_scale(found, top, highest),
        *(part for one in found for part in _bar(wording, one, most, top, highest)),
        *(part for row, line in enumerate(lines) for part in _grade_line(wording, line, row, most, top)),
    ]
    told = "; ".join(f"{title} from {shortest(score)}" for score, title in reversed(lines))
    label = f"Scores of {sum(one.fish for one in found):,} fish. {f'Grade lines: {told}.' if told else ''}"
    box = f"0 0 {_WIDTH} {top + _HEIGHT + _FOOT}"
    return element("svg", *parts, viewBox=box, role="img", aria_label=label.strip(), class_="chart")


def _across(score: Decimal, most: Decimal) -> float:
    return round(_LEFT + float(score / most) * (_WIDTH - _LEFT - _RIGHT), 2)


def _bar(wording: Wording, one: Bin, most: Decimal, top: int, highest: int) -> Iterator[Markup]:
    left, right = _across(one.low, most) + 1, _across(one.high, most) - 1
    foot = float(top + _HEIGHT)
    stacked = [(wording.shade(name), one.settled[name]) for name in reversed(tuple(wording.grades))]
    for class_, count in [*stacked, ("open", one.unsettled)]:
        if count:
            tall = _HEIGHT * count / highest
            foot -= tall
            yield element(
                "rect", class_=class_, x=left, y=round(foot, 2), width=round(right - left, 2), height=round(tall, 2)
            )


def _grade_line(wording: Wording, line: tuple[Decimal, str], row: int, most: Decimal, top: int) -> Iterator[Markup]:
    """The line of a grade, with its name on a row of its own: lines may lie close together."""
    score, title = line
    x, y = _across(score, most), _TOP + _LINE * row + 12
    yield element("line", class_="grade-line", x1=x, x2=x, y1=y - 10, y2=top + _HEIGHT)
    language = None if title.isascii() else wording.about.language
    words = f"{title} {shortest(score)}"
    late = x + _LETTER * len(words) > _WIDTH
    yield element("text", words, x=x - 4 if late else x + 4, y=y, lang=language, class_="end" if late else None)


def _scale(found: Sequence[Bin], top: int, highest: int) -> Iterator[Markup]:
    foot = top + _HEIGHT
    most = found[-1].high
    yield element("line", class_="axis", x1=_LEFT, x2=_WIDTH - _RIGHT, y1=foot, y2=foot)
    every = -(-len(found) // 5)
    for place in range(0, len(found) + 1, every):
        score = found[place].low if place < len(found) else most
        yield element("text", shortest(score), x=_across(score, most), y=foot + 18, class_="middle")
    for count in sorted({0, highest // 2, highest}):
        y = round(foot - _HEIGHT * count / highest, 2)
        yield element("text", f"{count:,}", x=_LEFT - 6, y=y + 4, class_="end")


def _legend(wording: Wording, found: Sequence[Bin]) -> Markup:
    items: list[Markup] = []
    for name, line in wording.grades.items():
        if any(one.settled[name] for one in found):
            items.append(_item(wording.shade(name), wording.foreign("span", line.title)))
    if any(one.unsettled for one in found):
        items.append(_item("open", "score or grade not settled"))
    return element("ul", *items, class_="legend")


def _item(class_: str, words: Inside) -> Markup:
    return element("li", element("span", class_=f"mark {class_}", aria_hidden="true"), words)


def _figures(wording: Wording, found: Sequence[Bin]) -> Markup:
    names = [name for name in wording.grades if any(one.settled[name] for one in found)]
    titles: list[Inside] = ["score", *(wording.foreign("span", wording.grades[name].title) for name in names)]
    head = element("tr", *(element("th", title, scope="col") for title in [*titles, "score or grade not settled"]))
    rows = [
        element(
            "tr",
            element("th", f"{shortest(one.low)} to {shortest(one.high)}", scope="row"),
            *(element("td", f"{one.settled[name]:,}") for name in names),
            element("td", f"{one.unsettled:,}"),
        )
        for one in reversed(found)
        if one.fish
    ]
    table = element("table", element("thead", head), element("tbody", *rows))
    return element("div", table, class_="wide", tabindex=0, role="group", aria_label="Scores in figures")
