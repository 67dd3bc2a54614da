"""Whether two editions can ever grade a fish differently, with the simplest fish that was found, or the proof that none is."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from enum import Enum
from importlib.util import find_spec
from typing import TYPE_CHECKING, Any

from attrs import evolve

from koirules.analysis.diff.joint import Joint, Record
from koirules.analysis.diff.trying import Search
from koirules.values import frozen
from koirules.vocabulary.traits import Trait

if TYPE_CHECKING:
    from koirules.analysis.diff.asking import Asker

_MOST_ASKED = 3
"""Whether a fish with fewer traits changed would do is asked of fish with at most so many: for more it is too hard."""


class Verdict(Enum):
    """The answer."""

    DIFFER = "some fish is graded differently"
    NEVER = "no fish is graded differently"
    OPEN = "not decided"
    APART = "no record fits both"
    NOT_ASKED = "not asked"


@frozen
class Outcome:
    """What an edition makes of a fish: the possible grades, best first, and the lowest and highest hundredths of its score."""

    possible: tuple[str, ...]
    score: tuple[int, int]


@frozen
class Parting:
    """The answer to whether two editions can ever grade a fish differently.

    proved: whether it is so for certain: a fish that was graded is certain too. fish: the simplest one that was found; away: in
    how many traits it is other than the ordinary one; fewest: whether it is certain that none with fewer shows it. ordinary:
    the ordinary fish of both. old, new: what each edition makes of the fish, in the names of the newer one. traits: what the
    fish can have. apart: the traits that no one record can have for both. solver_missing: whether the solver was not there
    to be asked. reasons: of what was not decided, what it hangs on that is more than the solver has.
    """

    verdict: Verdict
    traits: Mapping[str, Trait]
    ordinary: Record
    fish: Record | None = None
    away: int = 0
    fewest: bool = False
    old: Outcome | None = None
    new: Outcome | None = None
    apart: tuple[str, ...] = ()
    solver_missing: bool = False
    reasons: tuple[str, ...] = ()

    @property
    def never(self) -> bool:
        """Whether it is proved that no fish is graded differently."""
        return self.verdict is Verdict.NEVER


def has_solver() -> bool:
    """Whether the solver is installed."""
    return find_spec("z3") is not None


def parting(joint: Joint, *, solver: bool, progress: Callable[[str], None] = lambda _: None) -> Parting:
    """Whether two editions can ever part. solver: whether it may be asked; without it fish are only tried."""
    if joint.apart:
        return Parting(Verdict.APART, joint.traits, joint.ordinary, apart=joint.apart)
    if joint.unlike.nothing:
        return Parting(Verdict.NEVER, joint.traits, joint.ordinary)
    progress("grading many fish by both")
    search = Search(joint)
    found = search.simplest()
    if not solver:
        # Of none and of one trait nothing need be asked: the ordinary fish was graded.
        verdict = Verdict.NOT_ASKED if found is None else Verdict.DIFFER
        told = _told(search, verdict, found, fewest=found is not None and search.away(found) <= 1)
        return evolve(told, solver_missing=True)
    if found is not None and not 1 < search.away(found) <= _MOST_ASKED:
        return _told(search, Verdict.DIFFER, found, fewest=search.away(found) <= 1)
    progress("asking of every fish")
    asker = _asker(joint)
    if asker is None:
        told = _told(search, Verdict.OPEN if found is None else Verdict.DIFFER, found, fewest=False)
        return evolve(told, reasons=("some condition chooses among too many words",) if found is None else ())
    if found is None:
        proved, found = asker.ask(search.near)
        if found is None:
            told = _told(search, Verdict.NEVER if proved else Verdict.OPEN, None, fewest=False)
            return told if proved else evolve(told, reasons=_reasons(joint))
        found = search.plain(found)
    return _simplest(search, asker, found, progress)


def _simplest(search: Search, asker: Asker, found: Record, progress: Callable[[str], None]) -> Parting:
    """The fish with the fewest traits changed, as far as the solver can tell."""
    fewest = search.away(found) <= 1
    while not fewest and search.away(found) <= _MOST_ASKED:
        progress("asking for a simpler fish")
        fewer = search.away(found) - 1
        proved, other = asker.ask(lambda record: record if search.differs(record) else None, fewer)
        if other is None:
            fewest = proved
            break
        found = search.plain(other)
        fewest = search.away(found) <= 1
    return _told(search, Verdict.DIFFER, found, fewest=fewest)


def _reasons(joint: Joint) -> tuple[str, ...]:
    """Why a question about both editions may not have been decided."""
    from koirules.analysis.proofs.open_answers import named, reasons_in

    found: list[str] = []
    for one in joint.follows:
        ahead = one.grader.evaluator.ahead
        roots = [root for part in one.grader.rules.parts for root in part.roots]
        growers = {wanted.key: wanted.grower for wanted in ahead.wanted if wanted.grower.least >= 0}
        found.extend(reasons_in(roots, growers, one.derived & joint.optional))
    if joint.own:
        words = "where nobody wrote {}, each edition works it out in its own way"
        found.append(words.format(named(sorted(joint.own), "traits")))
    return tuple(dict.fromkeys(found))


def _asker(joint: Joint) -> Asker | None:
    """What asks the solver; None where some condition chooses among too many words."""
    from koirules.analysis.diff.asking import Asker
    from koirules.engines.symbolic.meaning import TooManyReadings

    try:
        return Asker.of(joint)
    except TooManyReadings:
        return None


def _told(search: Search, verdict: Verdict, found: Record | None, *, fewest: bool) -> Parting:
    joint = search.joint
    if found is None:
        return Parting(verdict, joint.traits, joint.ordinary)
    old, new = outcomes(joint, found)
    return Parting(verdict, joint.traits, joint.ordinary, found, search.away(found), fewest, old, new)


def outcomes(joint: Joint, record: Mapping[str, Any]) -> tuple[Outcome, Outcome]:
    """What both editions make of a fish."""
    old, new = joint.traces(record)
    return (
        Outcome(joint.old.named(old.possible), old.score),
        Outcome(joint.new.named(new.possible), new.score),
    )
