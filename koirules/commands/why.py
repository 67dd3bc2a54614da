"""`koirules why`: everything about one fish."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from decimal import Decimal

import click

from koirules.api import Standard
from koirules.commands.drawn_fish import draw_fish
from koirules.commands.inputs import (
    decisions_option,
    graded,
    label_option,
    language_option,
    setting_option,
    shown_titles,
    standard_from,
    standard_words,
)
from koirules.commands.output import show_cautions, shown, stop
from koirules.commands.render.batch import score_words
from koirules.commands.render.changes import tell_changes, wrapped
from koirules.commands.render.rounds import tell_course
from koirules.commands.render.two_fish import tell_two
from koirules.grading.distance import to_next_grade
from koirules.report.figures import figure, in_hundredths
from koirules.results.reason import Reason, State
from koirules.results.record import Record
from koirules.results.result import Result, SectionResult
from koirules.vocabulary.kinds import shortest
from koirules.vocabulary.nearness import near

_MOST_QUESTIONS = 5


@click.command("why")
@click.argument("rules")
@click.argument("records", type=click.Path())
@click.argument("fish")
@click.argument("other", required=False, metavar="[FISH]")
@decisions_option
@click.option(
    "--drawing", type=click.Path(), metavar="FILE", help="Draw the fish, as .svg: a koi from above with its patches."
)
@click.option(
    "--exact", is_flag=True, help="Show every number with all of its digits, and what each rule read by name."
)
@label_option
@setting_option
@language_option
def command(
    rules: str,
    records: str,
    fish: str,
    other: str | None,
    decisions: str | None,
    drawing: str | None,
    exact: bool,
    labels: tuple[str, ...],
    changes: tuple[str, ...],
    language: str | None,
) -> None:
    """Show everything about the grade of one FISH of RECORDS by RULES, or set two side by side.

    One fish: each criterion with what was read and what it gave of how much, the faults and lifts, the grades, how far it
    is from the next one, the smallest changes that would have given it that grade, and what each round made of it. Two fish:
    what put one above the other, criterion by criterion, adding up to the difference of their scores.
    """
    standard = standard_from(rules, changes, language)
    if exact:
        standard = standard.in_exact_words()
    batch = graded(standard, records, labels, decisions)
    listed = batch.outcome.records
    found = [_found(name, listed, records, standard.subject.one) for name in (fish, other) if name is not None]
    results = [batch.results[place] for place in found]
    if drawing is not None:
        if other is not None:
            stop(f"A drawing shows one {standard.subject.one}: name one.")
        draw_fish(standard, listed[found[0]], drawing)
    if len(found) == 1:
        _tell(standard, listed[found[0]], results[0])
    else:
        tell_two(standard, results)


def _found(fish: str, listed: Sequence[Record], records: str, noun: str) -> int:
    place = next((place for place, record in enumerate(listed) if record.fish == fish), None)
    if place is None:
        guess = near(fish, [record.fish for record in listed])
        stop(
            f'There is no {noun} "{shown(fish)}" in {shown(records)}.'
            + (f' Did you mean "{shown(guess)}"?' if guess else "")
        )
    return place


def _tell(standard: Standard, record: Record, result: Result) -> None:
    titles = shown_titles(standard)
    graded = " or ".join(titles[name] for name in result.possible)
    score = f", score {score_words(result)}" if standard.rules.sections else ""
    click.echo(click.style(f"{standard.subject.begins} {shown(result.fish)}: {graded}{score}", bold=True))
    click.echo(standard_words(standard))
    if result.decision is not None:
        by_rules = " or ".join(titles[name] for name in result.by_rules)
        words = f"Decided by {result.decision.by}: {result.decision.reason} (by the rules: {by_rules})"
        click.echo(shown(words))
    if standard.growth_note:
        show_cautions([standard.growth_note])
    if record.labels:
        click.echo("; ".join(f"{shown(name)} {shown(text)}" for name, text in record.labels.items()))
    _tell_looks(standard, result)
    _tell_judges(standard, result)
    _tell_silence(standard, record, result)
    _tell_sections(standard, result)
    _tell_left(result)
    limits = [reason for reason in result.reasons if reason.kind in {"fault", "lift"}]
    if limits:
        click.echo(click.style("Faults and lifts", bold=True))
    _tell_listed([reason for reason in limits if reason.state is not State.NO], exact=standard.exact)
    _tell_absent([reason for reason in limits if reason.state is State.NO], exact=standard.exact)
    click.echo(click.style("Grades", bold=True))
    _tell_listed([reason for reason in result.reasons if reason.kind == "grade"], exact=standard.exact)
    _tell_next(standard, record)
    tell_changes(standard, result)
    _tell_questions(standard, record, result)
    tell_course(result)


def _tell_looks(standard: Standard, result: Result) -> None:
    """What came of a fish at each look, and what the later ones changed."""
    titles = shown_titles(standard)
    for look in result.looks:
        graded = " or ".join(titles[name] for name in look.possible)
        score = f", score {figure(look.score_low, look.score_high)}" if standard.rules.sections else ""
        changes = f"; {'; '.join(look.changes)}" if look.changes else ""
        click.echo(wrapped(shown(f"look {look.number}: {graded}{score}{changes}")))
    if result.carried:
        plain = standard.grader.reasoner.teller.plain
        told = ", ".join(plain.trait(standard.traits[name]) for name in result.carried)
        click.echo(wrapped(shown(f"from an earlier look, and not mentioned at the last: {told}")))


def _tell_judges(standard: Standard, result: Result) -> None:
    """What the judges of a fish came to: all together, then each, with what decided."""
    if result.panel is None:
        return
    titles = shown_titles(standard)
    click.echo(wrapped(shown(result.panel.words)))
    for one in result.panel.judges:
        graded = " or ".join(titles[name] for name in one.result.possible)
        score = f", {figure(one.result.score_low, one.result.score_high)}" if standard.rules.sections else ""
        why = f"; {one.result.why}" if one.result.why else ""
        click.echo(wrapped(f"{shown(one.judge)}: {graded}{score}{shown(why)}"))


def _tell_silence(standard: Standard, record: Record, result: Result) -> None:
    """What was assumed of a fish because nobody mentioned it, and what would be possible without."""
    if not result.assumed:
        return
    plain = standard.grader.reasoner.teller.plain
    traits = [standard.traits[name] for name in result.assumed]
    told = "; ".join(f"{plain.trait(trait)} {plain.as_read(trait, record.readings)}" for trait in traits)
    click.echo(click.style("Not mentioned, and taken as the page says", bold=True))
    click.echo(wrapped(shown(told)))
    without = standard.grader.trace_without_silence(record.readings)
    titles = shown_titles(standard)
    graded = " or ".join(titles[name] for name in standard.grader.named(without.possible))
    low, high = (Decimal(end).scaleb(-2) for end in without.score)
    score = f", score {figure(low, high)}" if standard.rules.sections else ""
    click.echo(f"  without that: {shown(graded)}{score}")


def _tell_sections(standard: Standard, result: Result) -> None:
    from rich.box import SIMPLE_HEAD
    from rich.console import Console
    from rich.table import Table
    from rich.text import Text

    console = Console(highlight=False, width=None if sys.stdout.isatty() else 120)
    for section in standard.rules.sections:
        points = result.sections[section.name]
        got = figure(points.low, points.high)
        table = Table(
            box=SIMPLE_HEAD,
            padding=(0, 1),
            pad_edge=False,
            title=Text(f"{shown(section.title.within(standard.language))}: {got} of {shortest(points.worth)}"),
            title_justify="left",
            title_style="bold",
        )
        table.add_column("criterion, what was read and what it gave", overflow="fold", ratio=1)
        table.add_column("of the score", justify="right", min_width=12)
        table.add_column("of", justify="right", min_width=6)
        for reason in result.reasons:
            if reason.section == section.name and reason.kind in {"points", "bonus", "penalty"}:
                table.add_row(Text(shown(reason.words)), _range(reason), _most(reason))
        if _is_held(points, result.reasons):
            table.add_row(Text("(a section gives no more than it is worth, and no less than 0)"), "", "")
        console.print(table)


def _tell_left(result: Result) -> None:
    """The points that each criterion left on the table."""
    left = "; ".join(f"{shown(reason.title)} {reason.left_on_table:.2f}" for reason in result.left_on_table)
    if left:
        click.echo(click.style("Points left on the table, most first", bold=True))
        click.echo(wrapped(left))


def _is_held(section: SectionResult, reasons: Sequence[Reason]) -> bool:
    """Whether the criteria give more, or less, than the section may."""
    inside = [reason for reason in reasons if reason.section == section.name]
    most = sum((reason.score_high or Decimal(0) for reason in inside), Decimal(0))
    least = sum((reason.score_low or Decimal(0) for reason in inside), Decimal(0))
    return most > section.worth + Decimal("0.05") or least < -Decimal("0.05")


def _range(reason: Reason) -> str:
    if reason.score_low is None or reason.score_high is None:
        return ""
    return in_hundredths(reason.score_low, reason.score_high)


def _most(reason: Reason) -> str:
    return "" if reason.score_most is None or reason.kind != "points" else f"{reason.score_most:.2f}"


def _seen(reason: Reason, exact: bool) -> str:
    return reason.read if exact else reason.seen


def _tell_listed(reasons: Sequence[Reason], *, exact: bool) -> None:
    for reason in reasons:
        read = "" if reason.kind == "grade" or reason.state is State.OPEN else f" ({shown(_seen(reason, exact))})"
        click.echo(wrapped(f"{shown(reason.words)}{read}"))


def _tell_absent(reasons: Sequence[Reason], *, exact: bool) -> None:
    """The faults and lifts that are a sure no, on a few lines."""
    if not reasons:
        return
    told = "; ".join(shown(reason.title) + (f" ({shown(reason.read)})" if exact else "") for reason in reasons)
    click.echo(wrapped(f"no: {told}"))


def _tell_questions(standard: Standard, record: Record, result: Result) -> None:
    """What the grade of a fish that is not settled hangs on, most decisive first."""
    questions = standard.questioner.hangs_on(record.readings)
    if not questions and (result.grade is not None or not standard.questioner.thin_ahead(record.readings)):
        return
    plain = standard.grader.reasoner.teller.plain
    titles = shown_titles(standard)
    now = len(result.possible)
    decisive = [question for question in questions if question.expected_grades < now][:_MOST_QUESTIONS]
    click.echo(click.style("What its grade hangs on, most decisive first", bold=True))
    for question in decisive:
        told = question.told(titles)
        click.echo(f"  {shown(plain.trait(question.trait))}: {shown(told)}")
    for trait in standard.questioner.thin_ahead(record.readings):
        click.echo(
            f"  {shown(plain.trait(trait))}: whether what is thin stays as the {standard.subject.one} grows; "
            "nobody can tell today"
        )
    rest = [plain.trait(question.trait) for question in questions if question not in decisive]
    if rest:
        also = "and, though each alone settles nothing, on" if decisive else "on none of these alone"
        click.echo(click.wrap_text(f"{also}: {shown('; '.join(rest))}", 110, "  ", "    "))


def _tell_next(standard: Standard, record: Record) -> None:
    following = to_next_grade(standard.grader, standard.settings, record.readings)
    if following is None:
        return
    name, ways = following
    titles = shown_titles(standard)
    click.echo(click.style(f"What stands between it and {titles[name]}", bold=True))
    for words in ways:
        click.echo(wrapped(shown(words)))
