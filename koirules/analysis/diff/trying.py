"""Looks for fish that two editions grade differently by grading many, the ordinary one and its neighbours first.

Editions mostly part near thresholds. So from one fish the way is gone up and down, the trait first that makes the most of it,
past faults of both, to where anything turns that could part them; and there each trait is taken to the very value at which it
turns in either edition. Where they differ only inside, the way is gone on until it shows in the grade.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice, pairwise, product
from random import Random
from typing import Any

from attrs import field

from koirules.analysis.diff.joint import Joint, Record, Seen, in_common
from koirules.analysis.diff.values import between, values_of
from koirules.candidates.ordinary import made_ordinary
from koirules.values import define, frozen
from koirules.vocabulary.kinds import Count, Number, Patches
from koirules.vocabulary.readings import Reading

MOST_GRADED = 6_000
"""So many fish are graded by both editions in the search; then it is ended."""

MOST_LINES = 40_000_000
"""So many lines of generated functions are run in it, some seconds; of long editions fewer fish are graded."""

MOST_MEASURED = 1_500
"""So many fish at the most where maps are measured for each of them."""

_MOST_DRAWN = 400
"""Of what each edition works out in its own way, so many fish with other inputs are tried."""

_MOST_TOGETHER = 600
"""Of what one part reads together, so many combinations are tried."""


@frozen
class Step:
    """A fish, and what both editions make of it."""

    record: Record
    seen: Seen


class _EndedError(Exception):
    """Enough fish were graded."""


@define
class Search:
    """Looks for fish that two editions part on.

    values: of each trait those at which something turns; None: not recorded. graded: how many fish were graded so far, and
    most: how many may be.
    """

    joint: Joint
    values: dict[str, tuple[Reading | None, ...]] = field(init=False)
    graded: int = 0
    most: int = field(init=False)

    def __attrs_post_init__(self) -> None:
        lines = self.joint.old.evaluator.lines + self.joint.new.evaluator.lines
        self.most = min(MOST_GRADED, MOST_LINES // lines)
        if any(one.derived for one in self.joint.aheads) or self.joint.own:
            self.most = min(self.most, MOST_MEASURED)
        self.values = values_of(self.joint)

    def step(self, record: Record) -> Step:
        """A fish, graded by both."""
        self.graded += 1
        if self.graded > self.most:
            raise _EndedError
        return Step(record, self.joint.seen(record))

    def differs(self, record: Record) -> bool:
        """Whether the editions grade a fish differently."""
        return self.joint.seen(record).differ

    def simplest(self) -> Record | None:
        """The simplest fish of those that were found, with as little changed as it can be; None where none was."""
        found: list[Record] = []
        try:
            ordinary = self.step(self.joint.ordinary)
            scan = {name: list(self._along(ordinary, name)) for name in self.values}
            for record in self._near_ordinary(ordinary, scan):
                found.append(self.plain(record))
                if self.away(found[-1]) <= 1:
                    return found[-1]
            if not found:
                found.extend(self.plain(record) for record in islice(self._elsewhere(ordinary, scan), 1))
        except _EndedError:
            pass
        return min(found, key=self.away, default=None)

    def away(self, record: Record) -> int:
        """In how many traits a fish is other than the ordinary one."""
        ordinary = self.joint.ordinary
        return sum(record.get(name) != ordinary.get(name) for name in {*record, *ordinary})

    def plain(self, record: Record) -> Record:
        """A fish that shows the difference, made as ordinary as it can be."""
        kept = dict(record)
        for name in record:
            if name not in self.joint.ordinary and self.differs({key: kept[key] for key in kept if key != name}):
                del kept[name]
        return made_ordinary(kept, self.joint.ordinary, self.joint.traits, self.differs)

    def near(self, record: Record) -> Record | None:
        """A fish itself if the editions part on it, or one that they do part on and that differs from it in one trait."""
        self.graded = 0
        try:
            return next((step.record for step in self._around(self.step(record)) if step.seen.differ), None)
        except _EndedError:
            return None

    def _near_ordinary(self, ordinary: Step, scan: dict[str, list[Step]]) -> Iterator[Record]:
        """Fish that are graded differently, those first that are the ordinary one but for a trait or for what a part reads."""
        first = [ordinary, *(step for steps in scan.values() for step in steps)]
        first.extend([*self._of_parts(ordinary), *self._of_inputs(ordinary)])
        yield from (step.record for step in first if step.seen.differ)
        inside = next((step for step in first if step.seen.differ_inside), None)
        if inside is not None:
            yield from self._shown(inside, scan)
        yield from self._ways(ordinary, scan)

    def _elsewhere(self, ordinary: Step, scan: dict[str, list[Step]]) -> Iterator[Record]:
        for start in self._starts(ordinary):
            if start.seen.differ:
                yield start.record
            yield from self._ways(start, scan)

    def _ways(self, start: Step, scan: dict[str, list[Step]]) -> Iterator[Record]:
        # By a section fewer traits are changed than by the whole score.
        for height in (*range(1, len(start.seen.heights)), 0):
            for sign in (-1, 1):
                yield from self._way(start, scan, height, sign)

    def _starts(self, ordinary: Step) -> Iterator[Step]:
        """Fish to set out from: where rules ask what grows a short one, those of the samples, and some that were drawn."""
        joint = self.joint
        for name in dict.fromkeys(ahead.grows_by for ahead in joint.aheads if not ahead.nothing):
            if name in self.values:
                yield self.step({**ordinary.record, name: self.values[name][0]})
        for rules, words in ((joint.old.rules, joint.old_words), (joint.new.rules, joint.new_words)):
            for sample in rules.samples:
                told = in_common(sample.record, joint.traits, words)
                yield self.step({**ordinary.record, **{name: one for name, one in told.items() if name in self.values}})
        draw = Random(0)  # noqa: S311 - the same fish every time, no secret
        while True:
            record = dict(ordinary.record)
            share = draw.choice((0.02, 0.05, 0.2, 0.5, 1.0))
            for name, telling in self.values.items():
                if draw.random() < share:
                    _put(record, name, draw.choice(telling))
            yield self.step(record)

    def _of_parts(self, ordinary: Step) -> Iterator[Step]:
        """The ordinary fish with all that a part reads which is not alike, in many combinations."""
        for names in self.joint.unlike.together:
            telling = [self.values[name] for name in names]
            for values in islice(product(*telling), _MOST_TOGETHER):
                record = dict(ordinary.record)
                for name, value in zip(names, values, strict=True):
                    _put(record, name, value)
                yield self.step(record)

    def _of_inputs(self, ordinary: Step) -> Iterator[Step]:
        """The ordinary fish with what traits follow from in each edition's own way, and without these traits."""
        inputs = [
            frozenset().union(*(one.from_what_raw([name]) for one in self.joint.follows)) for name in self.joint.own
        ]
        groups = sorted({tuple(sorted(names & self.values.keys())) for names in inputs})
        draw = Random(0)  # noqa: S311 - the same fish every time, no secret
        for names in groups:
            for _ in range(_MOST_DRAWN // len(groups)):
                record = {name: reading for name, reading in ordinary.record.items() if name not in self.joint.own}
                for name in names:
                    _put(record, name, draw.choice(self.values[name]))
                yield self.step(record)

    def _along(self, start: Step, name: str) -> Iterator[Step]:
        """A fish with each telling value of a trait, and with those at which anything turns between two of them."""
        steps = [self.step(_with(start.record, name, value)) for value in self.values[name]]
        yield from steps
        kind = self.joint.traits[name].kind
        if not isinstance(kind, Number | Count | Patches):
            return
        for one, other in pairwise(step for step in steps if name in step.record):
            # Where both turn they are told apart at the turn of either.
            turns = [i for i in (0, 1) if one.seen.inner[i] != other.seen.inner[i]]
            if turns:
                yield from self._turn(one, other, name, turns[0])

    def _turn(self, one: Step, other: Step, name: str, edition: int) -> Iterator[Step]:
        """The two neighbouring values of a number or map between which something turns in an edition."""
        kind = self.joint.traits[name].kind
        before, after = one, other
        while (middle := between(kind, before.record[name], after.record[name])) is not None:
            step = self.step(_with(one.record, name, middle))
            if step.seen.inner[edition] == one.seen.inner[edition]:
                before = step
            else:
                after = step
        yield before
        yield after

    def _around(self, start: Step) -> Iterator[Step]:
        yield start
        for name in self.values:
            yield from self._along(start, name)

    def _way(self, start: Step, scan: dict[str, list[Step]], height: int, sign: int) -> Iterator[Record]:
        """Up (1) or down (-1) by one of the heights, as far as no fault or lift of both comes to hide what is seen."""
        here = start
        for name, value in _order(start, scan, height, sign):
            following = self.step(_with(here.record, name, value))
            if _hides(following, here):
                continue
            if following.seen.inner != here.seen.inner:
                known = here.seen.differ_inside
                around = self._around(here)
                step = next((one for one in around if one.seen.differ or one.seen.differ_inside > known), None)
                if step is not None and step.seen.differ:
                    yield step.record
                    return
                if step is not None:
                    yield from self._shown(step, scan)
            here = following

    def _shown(self, start: Step, scan: dict[str, list[Step]]) -> Iterator[Record]:
        """From a fish of which the editions differ inside to where that shows, if it does."""
        for sign in (-1, 1):
            here = start
            for name, value in _order(start, scan, 0, sign):
                following = self.step(_with(here.record, name, value))
                if following.seen.differ:
                    yield following.record
                    break
                if following.seen.differ_inside and not _hides(following, here):
                    here = following


def _order(start: Step, scan: dict[str, list[Step]], height: int, sign: int) -> list[tuple[str, Any]]:
    """The traits by what they make of one of the heights, the most first, each with its value."""
    found: list[tuple[int, str, Any]] = []
    for name, steps in scan.items():
        by_value = [(sign * step.seen.heights[height], step) for step in steps if name in step.record]
        if not by_value:
            continue
        now = start.record.get(name)
        here = next((score for score, step in by_value if step.record[name] == now), min(one for one, _ in by_value))
        most, step = max(by_value, key=lambda one: one[0])
        if most > here:
            found.append((most - here, name, step.record[name]))
    return [(name, value) for _, name, value in sorted(found, key=lambda one: -one[0])]


def _hides(following: Step, here: Step) -> bool:
    """Whether a fault or lift of both comes to bite."""
    return any(now and not before for now, before in zip(following.seen.hiding, here.seen.hiding, strict=True))


def _with(record: Record, name: str, value: Reading | None) -> dict[str, Any]:
    made = dict(record)
    _put(made, name, value)
    return made


def _put(record: dict[str, Any], name: str, value: Reading | None) -> None:
    if value is None:
        record.pop(name, None)
    else:
        record[name] = value
