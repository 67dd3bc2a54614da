"""What silence means for one fish (said.md, section 1): which traits it fills in, from the specification alone."""

from __future__ import annotations

from tests.judge import model as m
from tests.judge.judge import Verdict, judge
from tests.judge.look import Record, look_at
from tests.judge.reckoning import truth


def is_by_eye(trait: m.Trait) -> bool:
    """Of house traits: scales, choices, yes-or-no, counts, places and plain numbers."""
    match trait.kind:
        case m.NumberKind(unit):
            return unit == ""
        case m.LabelKind():
            return False
        case _:
            return True


def filled(
    standard: m.Standard, record: Record, *, looked: bool | None = None, cannot_tell: frozenset[str] = frozenset()
) -> dict[str, object]:
    """A record with its silent traits. `unless` sees what was recorded; `?` and what was recorded are never silent."""
    by_eye = {trait.name for trait in standard.traits if is_by_eye(trait)}
    if not (not by_eye.isdisjoint(record) if looked is None else looked):
        return dict(record)
    look = look_at(standard, record, None)
    silent = {
        one.trait: one.means
        for one in standard.silence
        if one.trait not in record
        and one.trait not in cannot_tell
        and not (one.unless is not None and truth(one.unless, look).surely)
    }
    return {**record, **silent}


def judge_said(
    standard: m.Standard, record: Record, *, looked: bool | None = None, cannot_tell: frozenset[str] = frozenset()
) -> Verdict:
    """Grade what a sorter said: silence is read as if it had been written, but `is recorded` is about what was."""
    whole = filled(standard, record, looked=looked, cannot_tell=cannot_tell)
    return judge(standard, whole, recorded=frozenset(record))
