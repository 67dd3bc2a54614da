"""A comparison of two editions into a file: JSON with all of it, CSV with one table."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path
from typing import Any

from koirules.analysis.diff.changes import Change
from koirules.analysis.diff.comparison import Comparison
from koirules.analysis.diff.moves import Moves
from koirules.analysis.diff.parting import Outcome, Parting
from koirules.problems import Place, Problem
from koirules.problems.saving import unknown_output_ending
from koirules.records.json_results import dumped
from koirules.records.safe_text import for_csv
from koirules.records.writing import check_folder, write_beside
from koirules.values import frozen
from koirules.vocabulary.readings import write_reading

ENDINGS = (".json", ".csv")

_CHANGES = ("statement", "name", "was", "section", "change", "bears_on_grades", "what", "old", "new")
_PLACES = ("old_file", "old_line", "new_file", "new_line")
_MOVES = ("fish", "old_grade", "new_grade", "old_score_low", "old_score_high", "new_score_low", "new_score_high")


@frozen
class Edition:
    """What a file of a comparison says of one edition. settings: those that this run changed."""

    title: str
    edition: str
    seal: str
    variety: str | None
    file: str
    settings: Mapping[str, str]


def check_comparison_path(path: Path) -> Problem | None:
    """Say what is wrong with a path for a comparison, as far as that shows before anything is worked out."""
    if path.suffix.lower() not in ENDINGS:
        return unknown_output_ending(str(path), path.suffix, ENDINGS)
    return check_folder(path)


def write_comparison(path: Path, old: Edition, new: Edition, found: Comparison) -> Problem | None:
    """Write a comparison; a problem says why nothing was written.

    JSON is one object. CSV has a row for each fish that moved, or, where no records were given, for each detail that changed.
    """
    problem = check_comparison_path(path)
    if problem is not None:
        return problem

    def produce(passing: Path) -> None:
        with passing.open("w", encoding="utf-8", newline="") as file:
            if path.suffix.lower() == ".json":
                file.write(f"{dumped(_object(old, new, found), indent=1)}\n")
                return
            import csv

            rows = _change_rows(found.changes) if found.moves is None else _move_rows(found, found.moves)
            writer = csv.writer(file, lineterminator="\n")
            writer.writerows([for_csv(cell) for cell in row] for row in rows)

    return write_beside(path, produce)


def _change_rows(changes: Sequence[Change]) -> Iterator[Sequence[str]]:
    yield (*_CHANGES, *_PLACES)
    for change in changes:
        said = [(one.what, one.old, one.new) for one in change.details] or [("", change.old, change.new)]
        places = [part for place in (change.old_place, change.new_place) for part in _place(place)]
        counts = "yes" if change.counts else "no"
        for each in said:
            yield (change.head, change.name, change.was, change.section, change.kind.value, counts, *each, *places)


def _place(place: Place | None) -> tuple[str, str]:
    return ("", "") if place is None else (place.file, str(place.line))


def _move_rows(found: Comparison, moves: Moves) -> Iterator[Sequence[str]]:
    yield (*_MOVES, "because", "changes")
    for move in moves.moves:
        grades = ("|".join(names) for names in (found.in_old_names(move.old.possible), move.new.possible))
        scores = (f"{end / 100:.2f}" for outcome in (move.old, move.new) for end in outcome.score)
        yield (move.fish, *grades, *scores, move.because.value, "; ".join(move.by))


def _object(old: Edition, new: Edition, found: Comparison) -> dict[str, Any]:
    return {
        "old": _edition(old),
        "new": _edition(new),
        "changes": [_change(change) for change in found.changes],
        "graded_differently": _parting(found, found.parting),
        "where_nobody_mentions": [
            {
                "trait": one.trait,
                "fish": _record(found.parting, one.fish),
                "old": _outcome(one.old, found.in_old_names(one.old.possible)),
                "new": _outcome(one.new, one.new.possible),
            }
            for one in found.unmentioned
        ],
        "moves": None if found.moves is None else _moves(found, found.moves),
    }


def _edition(one: Edition) -> dict[str, Any]:
    return {
        "title": one.title,
        "edition": one.edition,
        "seal": one.seal,
        "variety": one.variety,
        "file": one.file,
        "settings": dict(one.settings),
    }


def _change(change: Change) -> dict[str, Any]:
    places: dict[str, Any] = {}
    for word, place in (("old", change.old_place), ("new", change.new_place)):
        places |= {f"{word}_file": place and place.file, f"{word}_line": place and place.line}
    return {
        "statement": change.head,
        "name": change.name or None,
        "was": change.was or None,
        "section": change.section or None,
        "change": change.kind.value,
        "bears_on_grades": change.counts,
        "words": change.words,
        "details": [{"what": one.what, "old": one.old or None, "new": one.new or None} for one in change.details],
        "old": change.old or None,
        "new": change.new or None,
        **places,
    }


def _record(parting: Parting, fish: Mapping[str, Any] | None) -> dict[str, str] | None:
    traits = parting.traits
    if fish is None:
        return None
    return {name: write_reading(traits[name].kind, one) if name in traits else str(one) for name, one in fish.items()}


def _parting(found: Comparison, parting: Parting) -> dict[str, Any]:
    return {
        "verdict": parting.verdict.value,
        "traits_changed": parting.away if parting.fish is not None else None,
        "fewest": parting.fewest if parting.fish is not None else None,
        "fish": _record(parting, parting.fish),
        "old": None if parting.old is None else _outcome(parting.old, found.in_old_names(parting.old.possible)),
        "new": None if parting.new is None else _outcome(parting.new, parting.new.possible),
        "ordinary_fish": _record(parting, parting.ordinary),
        "no_common_value": list(parting.apart),
        "not_decided_because": list(parting.reasons),
    }


def _outcome(outcome: Outcome, possible: Sequence[str]) -> dict[str, Any]:
    return {
        "possible": list(possible),
        "score_low": outcome.score[0] / 100,
        "score_high": outcome.score[1] / 100,
    }


def _moves(found: Comparison, moves: Moves) -> dict[str, Any]:
    return {
        "graded": moves.graded,
        "same_grade_other_score": moves.rescored,
        "counts": [
            {"old": list(found.in_old_names(one)), "new": list(other), "fish": number}
            for (one, other), number in moves.counts.items()
        ],
        "fish": [
            {
                "fish": move.fish,
                "old": _outcome(move.old, found.in_old_names(move.old.possible)),
                "new": _outcome(move.new, move.new.possible),
                "because": move.because.value,
                "changes": list(move.by),
            }
            for move in moves.moves
        ],
        "rounds": [
            {"round": one.round, "kept_by_old_only": list(one.only_old), "kept_by_new_only": list(one.only_new)}
            for one in moves.rounds
        ],
    }
