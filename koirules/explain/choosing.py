"""Which two or three reasons mattered most."""

from __future__ import annotations

from collections.abc import Callable, Collection, Sequence
from decimal import Decimal
from operator import itemgetter

from koirules.languages import ENGLISH, Tongue
from koirules.results.reason import Grounds, Reason, State
from koirules.values import frozen

MOST_REASONS = 3


@frozen
class Standing:
    """Where a fish stands among the grades (0 is the best): best and worst still possible, with and without limits.

    next_asks_more: whether the score is not what the next better grade is missing. assumed: kind and name of each reason that
    rests on something that nobody mentioned.
    """

    grades: Sequence[str]
    best: int
    worst: int
    best_by_points: int
    worst_by_points: int
    next_asks_more: bool
    assumed: Collection[tuple[str, str]] = ()

    @property
    def is_settled(self) -> bool:
        """Whether only one grade is possible."""
        return self.best == self.worst


def grounds_of(reasons: Sequence[Reason], standing: Standing, tongue: Tongue = ENGLISH) -> Grounds:
    """Why a fish has its grade.

    First all faults that bite, then those that were held back, then the lifts that decided. Of a fish that is not settled,
    the faults and lifts that could still change its grade and the criteria with most points open. Then the points, unless a
    fault settled the grade: of a fish of the best grade its greatest strengths, and apart from them what it missed most; of
    any other the condition of the next better grade, where it is not the score that is missing, and what it missed most.
    """
    faults, forgiven = (
        tuple(reason for reason in reasons if reason.kind == "fault" and reason.state is state)
        for state in (State.YES, State.HELD_BACK)
    )
    deciding = _deciding(reasons, standing)
    lifts = tuple(reason for reason in deciding if reason.kind == "lift")
    others = [] if standing.is_settled else _still_open(reasons, standing)
    scored = [reason for reason in reasons if reason.kind == "points" or (reason.state is State.YES and reason.section)]
    wide = {id(reason) for reason in others}
    missed = [reason for reason in _most_first(scored, _missed) if id(reason) not in wide]
    strong = [reason for reason in _most_first(scored, _strength) if id(reason) not in wide]
    best = standing.best == 0 and standing.is_settled
    if standing.is_settled and any(reason.kind == "fault" for reason in deciding):
        missed, strong = [], []  # a fault settled it: no point that it missed has mattered
    elif not best and not deciding and not others:
        others = _next_grade(reasons, standing)
    room = max(0, MOST_REASONS - len(deciding) - len(others))
    if best:
        gains = tuple(strong[: room - 1] if missed else strong[:room])
        losses = tuple([reason for reason in missed if all(reason is not gain for gain in gains)][: min(room, 1)])
    else:
        losses = tuple(missed[:room])
        gains = tuple([reason for reason in strong if all(reason is not loss for loss in losses)][: room - len(losses)])
    found = (*faults, *forgiven, *lifts, *others, *losses, *gains)
    if not found:
        # Nothing but the conditions of the grades: the one that is still open, or the one that holds.
        grades = [reason for reason in reasons if reason.kind == "grade" and reason.state is not State.NO]
        others = sorted(grades, key=lambda reason: reason.state is not State.OPEN)[:1]
    return Grounds(
        faults,
        forgiven,
        lifts,
        frozenset((reason.kind, reason.name) for reason in deciding),
        tuple(others[:MOST_REASONS]),
        losses,
        gains,
        best,
        frozenset(standing.assumed),
        tongue,
    )


def _most_first(reasons: Sequence[Reason], amount_of: Callable[[Reason], Decimal]) -> list[Reason]:
    """Those of which there is any amount, the most first."""
    amounts = [(amount_of(reason), reason) for reason in reasons]
    return [reason for _, reason in sorted((pair for pair in amounts if pair[0] > 0), key=itemgetter(0), reverse=True)]


def _deciding(reasons: Sequence[Reason], standing: Standing) -> list[Reason]:
    biting = [reason for reason in reasons if reason.state is State.YES and reason.kind in {"fault", "lift"}]
    place = {name: i for i, name in enumerate(standing.grades)}
    fallen = standing.best > standing.best_by_points
    # A fault without a grade of its own lowers; it counted unless a cap took the fish below that.
    caps = [r for r in biting if r.kind == "fault" and fallen and place.get(r.outcome, standing.best) == standing.best]
    floors = [r for r in biting if r.kind == "lift" and place[r.outcome] == standing.worst < standing.worst_by_points]
    return [*caps, *floors]


def _still_open(reasons: Sequence[Reason], standing: Standing) -> list[Reason]:
    place = {name: i for i, name in enumerate(standing.grades)}
    found = []
    for reason in reasons:
        if reason.state is not State.OPEN or reason.kind not in {"fault", "lift"}:
            continue
        # An open cap matters where something better is possible, an open floor where something worse is.
        outcome = place.get(reason.outcome, len(place) - 1)
        if outcome > standing.best if reason.kind == "fault" else outcome < standing.worst_by_points:
            found.append(reason)
    wide = sorted((reason for reason in reasons if _width(reason) > 0), key=_width, reverse=True)
    return [*found, *wide[:MOST_REASONS]]


def _next_grade(reasons: Sequence[Reason], standing: Standing) -> list[Reason]:
    if standing.best == 0 or not standing.next_asks_more:
        return []
    wanted = standing.grades[standing.best - 1]
    return [
        reason
        for reason in reasons
        if reason.kind == "grade" and reason.name == wanted and reason.state is not State.YES
    ]


def _width(reason: Reason) -> Decimal:
    if reason.score_low is None or reason.score_high is None:
        return Decimal(0)
    return reason.score_high - reason.score_low


def _missed(reason: Reason) -> Decimal:
    return reason.left_on_table


def _strength(reason: Reason) -> Decimal:
    low, most = reason.score_low, reason.score_most
    if not low or not most:
        return Decimal(0)
    return low if low * 10 >= most * 7 else Decimal(0)
