"""The selection on a page: alerts, what each round did, what became of each fish in it, and what a person decided."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from koirules.report.page_markup import Inside, Markup, element
from koirules.report.page_words import Wording, row_name
from koirules.results.course import Fate, RoundCourse, Step
from koirules.results.result import Result

_WORDS = {Fate.KEPT: "stays", Fate.TIED: "tied"}
_LEAVES = "leaves"


def fate_word(step: Step) -> str:
    """What became of a fish in a round, in one word."""
    return _WORDS.get(step.fate, _LEAVES)


def alerts(wording: Wording) -> Markup:
    """The words of warning about the batch."""
    lines = [
        element(
            "li",
            wording.foreign("b", alert.words),
            "" if alert.surely else " (perhaps: not enough was recorded to tell)",
        )
        for alert in wording.about.alerts
    ]
    if not lines:
        return Markup("")
    name = f"alerts-title{wording.key}"
    title = element("h3" if wording.key else "h2", "About this batch", id=name)
    return element("section", title, element("ul", *lines), class_="alerts", aria_labelledby=name)


def rounds(wording: Wording) -> Markup:
    """What each round asked, and how many fish stay, leave and are tied."""
    items = [_round(wording, one) for one in wording.about.rounds]
    if not items:
        return Markup("")
    name = f"rounds-title{wording.key}"
    title = element("h3" if wording.key else "h2", "Selection", id=name)
    return element("section", title, element("ol", *items), class_="rounds", aria_labelledby=name)


def _round(wording: Wording, one: RoundCourse) -> Markup:
    tied = sum(len(tie.fish) for tie in one.ties)
    parts = [f"{len(one.looked_at):,} fish", f"{len(one.kept):,} stay", f"{len(one.left):,} leave"]
    parts += [f"{tied:,} tied"] if tied else []
    parts += [f"{len(one.by_hand):,} of those that stay kept by hand"] if one.by_hand else []
    parts += [f"{len(one.open):,} still open"] if one.open else []
    ties: list[Inside] = [
        element(
            "p",
            f"Tied for {tie.places} place{'' if tie.places == 1 else 's'}, for a person to choose: {', '.join(tie.fish)}",
        )
        for tie in one.ties
    ]
    return element(
        "li",
        wording.foreign("b", one.title),
        ": ",
        wording.foreign("span", one.asks),
        element("p", ", ".join(parts) + _where(one)),
        *ties,
    )


def _where(one: RoundCourse | Step) -> str:
    where = f"; to {one.sent}" if one.sent else ""
    return where + (f"; next look {one.again.isoformat()}" if one.again else "")


def course(wording: Wording, result: Result) -> Markup:
    """What a person decided about a fish, and what became of it in each round that looked at it."""
    lines = [*_decided(wording, result), *(_step(wording, step) for step in result.course)]
    return element("ul", *lines, class_="course") if lines else Markup("")


def _decided(wording: Wording, result: Result) -> Iterator[Markup]:
    decision = result.decision
    if decision is not None:
        rules = " or ".join(wording.grades[name].title for name in result.by_rules)
        yield element(
            "li", element("b", "Decided by hand"), f": {decision.reason} ({decision.by}); by the rules: {rules}"
        )


def _step(wording: Wording, step: Step) -> Markup:
    still = " Still open." if step.open else ""
    return element(
        "li",
        element("b", wording.foreign("span", step.title), f", {fate_word(step)}"),
        ": ",
        wording.foreign("span", step.why),
        f"{_where(step)}.{still}",
        data_row=row_name("round", step.round),
    )


def stops(wording: Wording, result: Result) -> str:
    """The rounds that looked at a fish with its fate in each, as the script knows them: `0-stays 1-leaves`."""
    places = {one.name: place for place, one in enumerate(wording.about.rounds, wording.rounds_before)}
    return " ".join(f"{places[step.round]}-{fate_word(step)}" for step in result.course if step.round in places)


def choices(wording: Wording, results: Sequence[Result], *, named: bool) -> Iterator[Markup]:
    """The options of what to show by round, those that would show nothing left out. named: whether they name the standard."""
    of = f"{wording.about.title}, " if named else ""
    there = {stop for result in results for stop in stops(wording, result).split()}
    for place, one in enumerate(wording.about.rounds, wording.rounds_before):
        for word in (*_WORDS.values(), _LEAVES):
            if f"{place}-{word}" in there:
                yield element("option", f"{of}{one.title}: {word}", value=f"{place}-{word}")
