"""The rounds of a selection as a person follows them: round by round, who stays, who leaves, who is tied."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

import click

from koirules.commands.output import counted, show_paragraph, shown
from koirules.commands.render.changes import wrapped
from koirules.results.course import AlertShown, Fate, RoundCourse, Step
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


def tell_rounds(rounds: Sequence[RoundCourse], results: Sequence[Result], subject: Subject) -> None:
    """Print what each round did with each fish."""
    steps = {(result.fish, step.round): step for result in results for step in result.course}
    for number, one in enumerate(rounds, 1):
        click.echo()
        click.echo(click.style(f"Round {number}, {shown(one.title)}: {shown(one.asks)}", bold=True))
        tied = sum(len(tie.fish) for tie in one.ties)
        parts = [
            subject.counted(len(one.looked_at)),
            counted(len(one.kept), "stays", "stay"),
            counted(len(one.left), "leaves", "leave"),
        ]
        parts += [f"{tied:,} tied"] if tied else []
        parts += [f"{len(one.by_hand):,} of those that stay kept by hand"] if one.by_hand else []
        where = f"; to {shown(one.sent)}" if one.sent else ""
        again = f", next look {one.again.isoformat()}" if one.again else ""
        click.echo(f"  {', '.join(parts)}{where}{again}")
        _tell_steps("stays", one.kept[:_MOST_STAYING], one, steps)
        _tell_more(len(one.kept) - _MOST_STAYING)
        for tie in one.ties:
            places = f"{tie.places} place{'s' if tie.places != 1 else ''}"
            named = ", ".join(shown(fish) for fish in tie.fish[:_MOST_TIED])
            click.echo(wrapped(f"tied for {places}, for a person to choose: {named}"))
            _tell_more(len(tie.fish) - _MOST_TIED)
        _tell_steps("leaves", one.left[:_MOST_LEAVING], one, steps)
        _tell_more(len(one.left) - _MOST_LEAVING)


def tell_rounds_in_short(rounds: Sequence[RoundCourse]) -> None:
    """Print of each round how many stay and leave, and by name, where they are few, who stays, is open or tied."""
    for number, one in enumerate(rounds, 1):
        parts = [counted(len(one.kept), "stays", "stay"), counted(len(one.left), "leaves", "leave")]
        where = f", to {shown(one.sent)}" if one.sent else ""
        named = "".join(
            f"; {word}: {', '.join(map(shown, fish))}"
            for word, fish in (("stay", one.kept), ("still open", one.open))
            if 0 < len(fish) <= _MOST_NAMED
        )
        show_paragraph(f"Round {number}, {shown(one.title)}: {', '.join(parts)}{where}{named}")
        for tie in one.ties:
            places = f"{tie.places} place{'s' if tie.places != 1 else ''}"
            show_paragraph(
                f"  tied for {places}, for a person to choose: {', '.join(map(shown, tie.fish[:_MOST_TIED]))}"
            )


def _tell_more(number: int) -> None:
    if number > 0:
        click.echo(f"  … and {number:,} more (see a file of results)")


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


def _tell_steps(word: str, fish: Sequence[str], one: RoundCourse, steps: dict[tuple[str, str], Step]) -> None:
    width = max((len(shown(name)) for name in fish), default=0)
    for name in fish:
        step = steps[name, one.name]
        why = "" if step.fate is Fate.KEPT and step.place is None and step.by_hand is None else f"  {shown(step.why)}"
        still = "  [still open]" if step.open else ""
        click.echo(wrapped(f"{word}  {shown(name):<{width}}{why}{still}"))
