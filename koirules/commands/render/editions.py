"""Tells what became of a standard between two editions."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import click

from koirules.analysis.diff.changes import Change, Kind, told_detail
from koirules.analysis.diff.comparison import Comparison
from koirules.analysis.diff.parting import Parting, Verdict
from koirules.api import Standard
from koirules.commands.inputs import standard_words
from koirules.commands.output import counted, show_paragraph, shown
from koirules.commands.render.changes import wrapped
from koirules.commands.render.fish import differences, outcome_words, print_rows, written
from koirules.commands.render.moves import tell_moves
from koirules.problems import Place
from koirules.problems.proving import needs_solver


def tell(old: Standard, new: Standard, found: Comparison) -> None:
    """Print a comparison: what changed, and whether a fish can be graded differently."""
    click.echo(f"Old: {standard_words(old).removeprefix('by ')}")
    click.echo(f"New: {standard_words(new).removeprefix('by ')}")
    if old.variety != new.variety:
        one, other = (shown(each.variety or "no variety") for each in (old, new))
        show_paragraph(
            f"The old edition is for {one}, the new one for {other}. What is told of here has the traits of both."
        )
    _tell_changes(old, new, found)
    _tell_parting(old, new, found)
    _tell_unmentioned(old, new, found)
    if found.moves is not None:
        tell_moves(old, new, found, found.moves)
    _tell_growth(old, new)


def _tell_changes(old: Standard, new: Standard, found: Comparison) -> None:
    click.echo(click.style("\nWhat changed", bold=True))
    if not found.changes:
        click.echo("  Nothing.")
        return
    if not found.counting:
        click.echo("  Nothing that can bear on a grade.")
    for change in found.counting:
        _tell_change(old, new, change)
    rest = [change for change in found.changes if not change.counts]
    told = [change for change in rest if change.kind in {Kind.ADDED, Kind.REMOVED, Kind.CHANGED}]
    if told:
        click.echo(click.style("\nChanges that bear on no grade", bold=True))
    for change in told:
        _tell_change(old, new, change)
    for kind, words in (
        (Kind.REWORDED, "\nWritten otherwise, meaning the same"),
        (Kind.MOVED, "\nIn another place, which changes no grade"),
    ):
        names = [shown(change.about) for change in rest if change.kind is kind]
        if names:
            click.echo(click.style(words, bold=True))
            click.echo(wrapped(", ".join(names)))


def _tell_change(old: Standard, new: Standard, change: Change) -> None:
    where = [
        _where(word, place, standard)
        for word, place, standard in (("old", change.old_place, old), ("new", change.new_place, new))
        if place is not None
    ]
    inside = f" in section {change.section}" if change.section else ""
    places = f" ({', '.join(where)})" if where else ""
    word = f": {change.kind.value}" if change.kind in {Kind.ADDED, Kind.REMOVED} else ""
    click.echo(f"  {shown(change.about + inside)}{word}{shown(places)}")
    if change.was:
        click.echo(f"      was called {shown(change.was)}")
    lines = [told_detail(detail) for detail in change.details]
    if change.kind in {Kind.ADDED, Kind.REMOVED}:
        lines = [change.new or change.old]
    for line in lines:
        click.echo(click.wrap_text(shown(line), 110, "      ", "        "))


def _where(word: str, place: Place, standard: Standard) -> str:
    """Where a statement stands: by its line, and by its file where that is a base."""
    same = place.file == standard.rules.file
    return f"{word} line {place.line}" if same else f"{word} {Path(place.file).name} line {place.line}"


def _tell_parting(old: Standard, new: Standard, found: Comparison) -> None:
    click.echo(click.style(f"\nWhether {new.subject.with_article} can be graded differently", bold=True))
    parting = found.parting
    match parting.verdict:
        case Verdict.DIFFER:
            _tell_fish(old, new, found)
        case Verdict.NEVER:
            because = (
                f"proved of every {new.subject.one} of which both know each trait that they read as one value, "
                "written or following from others"
            )
            show_paragraph(f"  No: {because if found.counting else 'nothing that can bear on a grade was changed'}.")
            if found.of_judges:
                show_paragraph(
                    "  That is said of fish with one record. Judges are put together otherwise, so fish that several judges "
                    "recorded may be graded differently: --records FILE shows which of a lot."
                )
        case Verdict.OPEN:
            reasons = f" ({'; '.join(shown(one) for one in parting.reasons)})" if parting.reasons else ""
            show_paragraph(
                f"  Not decided: no such {new.subject.one} was found, and it is not proved that there is none{reasons}."
            )
        case Verdict.APART:
            names = ", ".join(shown(name) for name in parting.apart)
            show_paragraph(
                f"  Not decided: no one record fits both, since these traits have no value in common: {names}."
            )
        case Verdict.NOT_ASKED:
            show_paragraph(f"  Not decided: among the {new.subject.many} that were tried there is none.")
            _tell_needed()


def _tell_unmentioned(old: Standard, new: Standard, found: Comparison) -> None:
    """Print a fish for each trait of which silence means another thing."""
    for one in found.unmentioned:
        trait = shown(one.trait.replace("_", " "))
        show_paragraph(f"  Where nobody mentions {trait}: yes, this one, an ordinary fish but for what is listed.")
        blank = [
            (name, values)
            for name, values in differences(found.parting.traits, one.ordinary, [one.fish])
            if name != one.trait
        ]
        rows: list[tuple[str, Sequence[str]]] = [(one.trait, ["not mentioned"]), *blank]
        rows.append(("by the old edition", [outcome_words(old, found.in_old_names(one.old.possible), one.old.score)]))
        rows.append(("by the new edition", [outcome_words(new, one.new.possible, one.new.score)]))
        print_rows(rows)


def _tell_needed() -> None:
    problem = needs_solver("compare")
    show_paragraph(f"  {problem.cause} {problem.mend}")


def _tell_fish(old: Standard, new: Standard, found: Comparison) -> None:
    parting = found.parting
    if parting.fish is None or parting.old is None or parting.new is None:
        raise AssertionError("editions that part without a fish")
    if parting.away == 0:
        click.echo(f"  Yes: the ordinary {new.subject.one} itself.")
    else:
        none, some = (
            f"no {new.subject.one} with fewer shows it",
            f"{new.subject.with_article} with fewer may show it too",
        )
        fewest = none if parting.fewest else some
        show_paragraph(
            f"  Yes: this one, an ordinary {new.subject.one} but for {counted(parting.away, 'trait')} ({fewest})."
        )
    rows = [*differences(parting.traits, parting.ordinary, [parting.fish])]
    rows.append(
        ("by the old edition", [outcome_words(old, found.in_old_names(parting.old.possible), parting.old.score)])
    )
    rows.append(("by the new edition", [outcome_words(new, parting.new.possible, parting.new.score)]))
    print_rows(rows)
    if not parting.fewest and parting.solver_missing:
        _tell_needed()
    click.echo(
        click.style(f"\nAn ordinary {new.subject.one}, which the one above is but for what is listed", bold=True)
    )
    print_rows(_record_rows(parting), 2)


def _tell_growth(old: Standard, new: Standard) -> None:
    for note in dict.fromkeys(one.growth_note for one in (old, new) if one.growth_note):
        show_paragraph(f"\n{note}", dim=True)


def _record_rows(parting: Parting) -> list[tuple[str, Sequence[str]]]:
    return [(name, [written(parting.traits.get(name), one)]) for name, one in parting.ordinary.items()]
