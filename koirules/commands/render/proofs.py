"""Tells what was proved of a standard, to people and as data."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence

import click

from koirules.analysis.proofs.every import Proofs
from koirules.analysis.proofs.statements import KINDS, Outcome, Shown, Statement
from koirules.api import Standard
from koirules.commands.output import counted, show_paragraph, shown
from koirules.commands.render.fish import Row, differences, outcome_words, print_rows, written
from koirules.problems.quoting import in_words
from koirules.vocabulary.readings import Reading

_ALL_WELL: Mapping[str, str] = {
    "grade": "Every grade can be reached.",
    "limit": "Each can bite, can fail to, and changes the grade of some {many}.",
    "extra": "Each holds of some {many} and not of others.",
    "comparison": "Each holds of some {many} and not of others.",
    "together": "None do.",
    "under": "None.",
    "round": "Some {many} pass each of them, and some leave.",
    "better": "Proved of each.",
}


def tell_about(standard: Standard) -> None:
    """Print which standard is asked about, and of which fish."""
    rules = standard.rules
    click.echo(click.style(f"{shown(standard.title)}, edition {shown(rules.edition)}", bold=True))
    show_paragraph(
        f"These answers are about every {standard.subject.one} with one known value for each trait. A trait that a rule asks "
        "about with `is recorded` may also be missing, except where better and worse are compared."
    )


def tell_kind(standard: Standard, kind: str, found: Proofs) -> None:
    """Print the answers to one question."""
    _tell_kind(standard, found, KINDS[kind], found.statements)


def tell_end(standard: Standard, found: Proofs) -> None:
    """Print what goes for all answers, what was not reached, and the totals."""
    rules = standard.rules
    if any(statement.fish for statement in found.statements):
        click.echo(
            click.style(
                f"\nThe ordinary {standard.subject.one}: those above are like it except for the traits listed with them",
                bold=True,
            )
        )
        print_rows([(name, [written(rules.traits.get(name), one)]) for name, one in found.ordinary.items()], 2)
    if standard.growth_note:
        show_paragraph(f"\n{standard.growth_note}", dim=True)
    slips = sum(statement.slip for statement in found.statements)
    left = sum(statement.outcome is Outcome.OPEN for statement in found.statements)
    click.echo(f"\n{counted(slips, 'slip')}; {counted(left, 'question')} not decided.")
    if found.unreached:
        show_paragraph(f"No time was left for: {'; '.join(map(shown, found.unreached))}. Give more with --seconds.")


def _tell_kind(standard: Standard, found: Proofs, heading: str, statements: Sequence[Statement]) -> None:
    if not statements and heading not in {KINDS["together"], KINDS["under"]}:
        return
    click.echo(click.style(f"\n{heading}", bold=True))
    told = [one for one in statements if not _is_plain(one)]
    plain = [one for one in statements if _is_plain(one)]
    if not told and plain and plain[0].kind == "better":
        show_paragraph("  Proved of each trait: " + ", ".join(map(_about, plain)))
    elif plain and plain[0].kind == "better":
        show_paragraph("  Proved of " + ", ".join(map(_about, plain)))
    elif not told:
        kind = next(kind for kind, words in KINDS.items() if words == heading)
        click.echo(f"  {_ALL_WELL[kind].format(many=standard.subject.many)}")
    elif plain:
        click.echo(f"  {counted(len(plain), 'other is', 'others are')} as they should be.")
    if told and told[0].kind == "under":
        _tell_under(told)
        return
    for statement in told:
        line = f"line {statement.line}: " if statement.line else ""
        word = {Outcome.OPEN: "not decided: "}.get(statement.outcome, "")
        click.echo(
            f"  {click.style('slip: ', bold=True) if statement.slip else ''}{word}{line}{shown(statement.words)}"
        )
        if statement.fish:
            print_rows(_rows(standard, found, statement.fish))
            doubts = list(dict.fromkeys(name for fish in statement.fish for name in fish.doubts))
            if doubts:
                show_paragraph(f"    The value written counts; its other traits would give another {in_words(doubts)}.")


def _tell_under(statements: Sequence[Statement]) -> None:
    """Fault by fault, the lifts that are never seen under it."""
    by_fault: dict[tuple[int, str, Outcome], list[str]] = {}
    for one in statements:
        fault, lift = one.about.split(", ")
        by_fault.setdefault((one.line, fault, one.outcome), []).append(lift.removeprefix("lift "))
    for (line, fault, outcome), lifts in by_fault.items():
        word = "not decided: " if outcome is Outcome.OPEN else ""
        click.echo(f"  {word}line {line}: the {shown(fault)} hides: {shown(', '.join(lifts))}")


def _about(statement: Statement) -> str:
    """The trait of a statement, with what stays the same."""
    held = f" (with the same {in_words(statement.held, 'and')})" if statement.held else ""
    return f"{statement.about}{held}"


def _is_plain(statement: Statement) -> bool:
    """Whether a statement says only that all is as it should be."""
    if statement.kind == "better":
        return statement.outcome is Outcome.PROVED
    return statement.outcome is Outcome.FOUND and statement.kind in {"grade", "limit", "extra", "comparison", "round"}


def _rows(standard: Standard, found: Proofs, fish: Sequence[Shown]) -> list[Row]:
    rows = differences(standard.traits, found.ordinary, [one.record for one in fish])
    got = [outcome_words(standard, one.possible, one.score) for one in fish]
    return [*rows, ("comes out", got)]


def as_data(standard: Standard, found: Proofs) -> str:
    """The statements as JSON."""
    made = {
        "standard": standard.title,
        "edition": standard.edition,
        "settings_changed": list(standard.changed),
        "not_reached": list(found.unreached),
        "ordinary_fish": _record(standard, found.ordinary),
        "statements": [
            {
                "kind": one.kind,
                "about": one.about,
                "words": one.words,
                "outcome": one.outcome.value,
                "slip": one.slip,
                "line": one.line or None,
                "held": list(one.held),
                "fish": [
                    {
                        "record": _record(standard, fish.record),
                        "possible": list(fish.possible),
                        "score_low": fish.score[0] / 100,
                        "score_high": fish.score[1] / 100,
                        "doubts": list(fish.doubts),
                    }
                    for fish in one.fish
                ],
            }
            for one in found.statements
        ],
    }
    return json.dumps(made, ensure_ascii=False, indent=2)


def _record(standard: Standard, record: Mapping[str, Reading]) -> dict[str, str]:
    return {name: written(standard.traits.get(name), reading) for name, reading in record.items()}
