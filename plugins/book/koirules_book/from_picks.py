"""From a file of picks to what they say of a standard's weights."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

import numpy as np
from attrs import evolve, frozen

from koirules_book import problems as say
from koirules_book.learning import How, Learnt, Picks, learn_pairs, learn_verdicts
from koirules_book.parts_of_score import Parts, parts_of, present_weights
from koirules_book.picks import IN, OUT, read_pairs, read_verdicts
from koirules_book.problems import BookError, stop_at_judges

if TYPE_CHECKING:
    from koirules import Result, Standard


@frozen
class Asked:
    """The files of picks. records: the file with the records, if not `picks`. best: the grades that mean in."""

    picks: Path
    records: Path | None = None
    column: str = "verdict"
    best: Sequence[str] = ()


def learnt_from(standard: Standard, asked: Asked, how: How) -> Learnt:
    """What picks say. Raises BookError or RecordError with every problem of the files, or where the picks cannot tell."""
    pairs = read_pairs(asked.picks)
    if pairs and asked.records is None:
        raise BookError(
            say.cannot_tell("Pairs name fish and hold no records.", "Add `--records` with the file that has them.")
        )
    labels = [] if asked.records or asked.column in standard.traits else [asked.column]
    read = standard.read_records(asked.records or asked.picks, labels)
    stop_at_judges(str(asked.records or asked.picks), read)
    graded = {record.fish: standard.grade_record(record) for record in standard.measured(read, "records").records}
    parts = parts_of(standard, list(graded.values()))
    gives = present_weights(standard)
    if not pairs:
        verdicts = read_verdicts(asked.picks, standard, asked.column)
        return _of_verdicts(standard, parts, gives, _Judged(graded, verdicts, asked.best), how)
    where = {name: at for at, name in enumerate(graded)}
    missing = [
        say.event_of_nobody(str(asked.picks), row, one) for row, *two in pairs for one in two if one not in where
    ]
    if missing:
        raise BookError(*missing)
    places = [(where[better], where[worse]) for _, better, worse in pairs]
    return learn_pairs(parts, gives, list(graded), places, how)


@frozen
class _Judged:
    graded: Mapping[str, Result]
    verdicts: Mapping[str, str]
    best: Sequence[str]


def _of_verdicts(standard: Standard, parts: Parts, gives: np.ndarray, judged: _Judged, how: How) -> Learnt:
    graded, verdicts = judged.graded, judged.verdicts
    names = list(graded)
    used = [at for at, name in enumerate(names) if name in verdicts]
    if not used:
        raise BookError(
            say.cannot_tell(
                "No fish of the records has a verdict.", "Give the verdicts the names that the records have."
            )
        )
    chosen = _only(parts, used)
    fish = [names[at] for at in used]
    grades = list(standard.grades)
    best_first = {name: at for at, name in enumerate(grades)}
    kept = set(judged.best or grades[:1])
    unknown = sorted(kept - set(grades))
    if unknown:
        raise BookError(
            say.cannot_tell(f"{', '.join(unknown)} is no grade.", f"Name grades of {', '.join(grades)} for `--in`.")
        )
    if verdicts[fish[0]] in {IN, OUT}:
        last_in = max(best_first[name] for name in kept)
        picks = Picks(
            fish,
            np.array([int(verdicts[name] == IN) for name in fish]),
            [OUT, grades[last_in]],
            (chosen.caps <= last_in).astype(int),
            (chosen.floors <= last_in).astype(int),
            np.array([_is_in(graded[name].grade, best_first, last_in) for name in fish]),
        )
    else:
        top = len(grades) - 1
        picks = Picks(
            fish,
            np.array([top - best_first[verdicts[name]] for name in fish]),
            grades[::-1],
            top - chosen.caps,
            top - chosen.floors,
            np.array([-1 if (grade := graded[name].grade) is None else top - best_first[grade] for name in fish]),
        )
    return learn_verdicts(chosen, gives, picks, how)


def _is_in(grade: str | None, best_first: Mapping[str, int], last_in: int) -> int:
    return -1 if grade is None else int(best_first[grade] <= last_in)


def _only(parts: Parts, rows: Sequence[int]) -> Parts:
    at = np.array(rows)
    return evolve(
        parts,
        shares=parts.shares[at],
        extras=parts.extras[at],
        bites=parts.bites[at],
        scores=parts.scores[at],
        caps=parts.caps[at],
        floors=parts.floors[at],
    )
