"""What the script needs to set fish side by side: the dialog, and the title of every row in the order of the rule file."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from koirules.report.page_markup import Markup, element, joined
from koirules.report.page_words import row_name
from koirules.results.result import Result


def side_by_side(graded: Sequence[Sequence[Result]]) -> Markup:
    """The tray of the fish that are chosen, the dialog that shows them, and the titles of its rows.

    graded: the results of each standard.
    """
    tray = element(
        "div",
        element("a", "What to show", href="#fish-part"),
        element("p", id="chosen", role="status"),
        element("button", "Side by side", type="button", id="compare", hidden=True),
        element("button", "Take out", type="button", id="clear", hidden=True),
        id="tray",
        class_="scripted",
        role="region",
        aria_label="Chosen for side by side",
        hidden=True,
    )
    dialog = element(
        "dialog",
        element("h2", "Side by side", id="side-title"),
        element(
            "div",
            element("label", element("input", type="checkbox", id="differing"), "Only what differs", class_="chip"),
            element("button", "Close", type="button", id="close"),
        ),
        element("div", id="side", tabindex=0, role="group", aria_labelledby="side-title"),
        id="beside",
        aria_labelledby="side-title",
    )
    rows: dict[str, str] = {}
    for row, title in (one for results in graded for one in _rows(results)):
        rows.setdefault(row, title)
    titles = [element("li", title, data_row=row) for row, title in rows.items()]
    # The tray sticks to the foot of the screen only as a part of the body itself.
    return joined([tray, dialog, element("ul", *titles, id="rows", hidden=True)])


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
