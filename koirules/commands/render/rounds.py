"""The rounds of a selection as a person follows them: round by round, who stays, who leaves, who is tied."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

import click

from koirules.commands.output import counted, show_paragraph, shown
from koirules.commands.render.changes import wrapped
from koirules.languages import Tongue
from koirules.results.course import AlertShown, Fate, RoundCourse, Step, Tied
from koirules.results.result import Result

if TYPE_CHECKING:
    from koirules.runs.selecting import RoundTotals
    from koirules.vocabulary.subject import Subject

_MOST_STAYING = 200
_MOST_TIED = 60
_MOST_NAMED = 20
_MOST_LEAVING = 20


def tell_alerts(alerts: Sequence[AlertShown]) -> None:
    """Print the words of warning about a batch."""
    for alert in alerts:
        sure = "" if alert.surely else " (perhaps: not enough was recorded to tell)"
        click.echo(click.style(f"! {shown(alert.words)}{sure}", bold=True))


def tell_rounds(rounds: Sequence[RoundCourse], results: Sequence[Result], subject: Subject, tongue: Tongue) -> None:
    """Print what each round did with each fish."""
    steps = {(result.fish, step.round): step for result in results for step in result.course}
    for number, one in enumerate(rounds, 1):
        click.echo()
        click.echo(click.style(_head(one, number, tongue), bold=True))
        tied = sum(len(tie.fish) for tie in one.ties)
        parts = [tongue.counted(subject.one, subject.many, len(one.looked_at)), *_stay_and_leave(one, tongue)]
        parts += [tongue.plural("{number} tied", "{number} tied", tied)] if tied else []
        by_hand = len(one.by_hand)
        parts += [tongue("{number} of those that stay kept by hand", number=tongue.whole(by_hand))] if by_hand else []
        where = tongue("; to {place}", place=shown(tongue.of(one.sent))) if one.sent else ""
        again = tongue(", next look {day}", day=one.again.isoformat()) if one.again else ""
        click.echo(f"  {tongue.joined(parts)}{where}{again}")
        _tell_steps(tongue("stays"), one.kept[:_MOST_STAYING], one, steps, tongue)
        _tell_more(len(one.kept) - _MOST_STAYING, tongue)
        for tie in one.ties:
            click.echo(wrapped(_tied(tie, tongue)))
            _tell_more(len(tie.fish) - _MOST_TIED, tongue)
        _tell_steps(tongue("leaves"), one.left[:_MOST_LEAVING], one, steps, tongue)
        _tell_more(len(one.left) - _MOST_LEAVING, tongue)


def _head(one: RoundCourse, number: int, tongue: Tongue) -> str:
    return tongue("Round {number}, {title}: {asks}", number=number, title=shown(one.title), asks=shown(one.asks))


def _stay_and_leave(one: RoundCourse, tongue: Tongue) -> list[str]:
    return [
        tongue.plural("{number} stays", "{number} stay", len(one.kept)),
        tongue.plural("{number} leaves", "{number} leave", len(one.left)),
    ]


def _tied(tie: Tied, tongue: Tongue) -> str:
    fish = tongue.joined(map(shown, tie.fish[:_MOST_TIED]))
    return tongue.plural(
        "tied for {number} place, for a person to choose: {fish}",
        "tied for {number} places, for a person to choose: {fish}",
        tie.places,
        fish=fish,
    )


def tell_rounds_in_short(rounds: Sequence[RoundCourse], tongue: Tongue) -> None:
    """Print of each round how many stay and leave, and by name, where they are few, who stays, is open or tied."""
    for number, one in enumerate(rounds, 1):
        where = tongue(", to {place}", place=shown(tongue.of(one.sent))) if one.sent else ""
        named = "".join(
            f"; {word}: {tongue.joined(map(shown, fish))}"
            for word, fish in ((tongue("stay"), one.kept), (tongue("still open"), one.open))
            if 0 < len(fish) <= _MOST_NAMED
        )
        parts = f"{tongue.joined(_stay_and_leave(one, tongue))}{where}{named}"
        show_paragraph(tongue("Round {number}, {title}: {asks}", number=number, title=shown(one.title), asks=parts))
        for tie in one.ties:
            show_paragraph(f"  {_tied(tie, tongue)}")


def _tell_more(number: int, tongue: Tongue) -> None:
    if number > 0:
        more = tongue("… and {number} more", number=tongue.whole(number))
        click.echo(f"  {more} ({tongue('see a file of results')})")


def tell_course(result: Result) -> None:
    """Print what each round made of one fish."""
    if result.course:
        click.echo(click.style("Rounds", bold=True))
    for step in result.course:
        stays = "stays" if step.kept else "tied" if step.fate is Fate.TIED else "leaves"
        where = f"; to {shown(step.sent)}" if step.sent else ""
        again = f", next look {step.again.isoformat()}" if step.again else ""
        still = "  [still open]" if step.open else ""
        why = "" if step.why == "kept" else f", {shown(step.why)}"
        click.echo(wrapped(f"{shown(step.title)}: {stays}{why}{where}{again}{still}"))


def tell_round_totals(rounds: Sequence[RoundTotals], subject: Subject) -> None:
    """Print what each round did with the fish of whole files."""
    for number, one in enumerate(rounds, 1):
        click.echo(click.style(f"Round {number}, {shown(one.title)}: {shown(one.asks)}", bold=True))
        tied = f", {one.tied:,} tied" if one.tied else ""
        stay, leave = counted(one.kept, "stays", "stay"), counted(one.left, "leaves", "leave")
        where = f"; to {shown(one.sent)}" if one.sent else ""
        click.echo(f"  {subject.counted(one.looked_at)}, {stay}, {leave}{tied}{where}")
        if one.open:
            click.echo(f"  {one.open:,} of them still open: not everything was recorded")
        if one.named and one.kept <= len(one.named):
            click.echo(wrapped(f"stay: {', '.join(map(shown, one.named))}"))


def _tell_steps(
    word: str, fish: Sequence[str], one: RoundCourse, steps: dict[tuple[str, str], Step], tongue: Tongue
) -> None:
    width = max((len(shown(name)) for name in fish), default=0)
    for name in fish:
        step = steps[name, one.name]
        why = "" if step.fate is Fate.KEPT and step.place is None and step.by_hand is None else f"  {shown(step.why)}"
        still = f"  [{tongue('still open')}]" if step.open else ""
        click.echo(wrapped(f"{word}  {shown(name):<{width}}{why}{still}"))
