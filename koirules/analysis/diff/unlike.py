"""The parts of two editions that are not alike, whatever their statements look like, and what these come to for a fish."""

from __future__ import annotations

from collections.abc import Hashable, Mapping, Sequence
from typing import Any

from koirules.analysis.diff.following import Follows, grown_by, own_of_each
from koirules.engines.scalar.evaluator import Trace
from koirules.engines.symbolic.value_numbering import SameValues
from koirules.grading.single import Grader
from koirules.meaning.curves import Curve
from koirules.program.evaluation_order import late_parts, order_key
from koirules.results.parts_read import points_in, traits_in
from koirules.standard.parts import Extra, Grade, Limit, Part, Points, Section, Setting, Term, part_key
from koirules.values import frozen

_MARKS = ("old", "new")

Sides = tuple[int | None, int | None]
"""The places of a part in the older and in the newer edition, None where there is none."""


def settings_of(grader: Grader) -> Mapping[str, Setting]:
    """The settings that a grader was made with."""
    return grader.reasoner.teller.settings


def same_values(old_follows: Follows, new_follows: Follows) -> SameValues:
    """The numbers for the expressions of both, with what is alike in both."""
    old, new = old_follows.grader, new_follows.grader
    own = own_of_each(old_follows, new_follows)
    same = SameValues(own=own, grown={**grown_by(old_follows, own, "old"), **grown_by(new_follows, own, "new")})
    late = late_parts(new.rules)
    # Criteria may read faults that read no score, and other faults the score.
    _find_faults(old, new, same, [part for part in new.rules.order if order_key(part) not in late])
    sections = [
        {one.name: _section_said(one, grader, same, mark) for one in grader.rules.sections}
        for grader, mark in zip((old, new), _MARKS, strict=True)
    ]
    same.alike |= {f"section {name}" for name, said in sections[0].items() if sections[1].get(name) == said}
    if sections[0] == sections[1]:
        same.alike.add("score")
    _find_faults(old, new, same, [part for part in new.rules.order if order_key(part) in late])
    return same


def _find_faults(old: Grader, new: Grader, same: SameValues, parts: Sequence[Term | Limit]) -> None:
    """Take in the faults that are alike, in an order in which each comes after those that it reads."""
    for part in parts:
        if isinstance(part, Limit) and part.head == "fault":
            other = next((one for one in old.rules.limits if (one.head, one.name) == (part.head, part.name)), None)
            if other is not None and _said(other, old, same, "old") == _said(part, new, same, "new"):
                same.alike.add(f"fault {part.name}")


def _section_said(section: Section, grader: Grader, same: SameValues, mark: str) -> Hashable:
    parts: tuple[Part, ...] = (*section.points, *section.extras)
    return (section.worth, frozenset((part_key(part), _said(part, grader, same, mark)) for part in parts))


def _said(part: Part, grader: Grader, same: SameValues, mark: str) -> Hashable:
    roots = tuple(same.number(root, settings_of(grader), mark) for root in part.roots)
    match part:
        case Points(weight=weight, shape=shape):
            return (roots, weight, shape if isinstance(shape, Curve) else shape.gives)
        case Extra(sign=sign, amount=amount):
            return (roots, sign, amount)
        case Limit(grade=grade, lowers=lowers):
            return (roots, lowers, "" if lowers else grader.grades[grade])
        case Grade():
            return roots


@frozen
class Unlike:
    """The parts that are not alike.

    limits, grades: their places in each edition. alike: the places of the faults and lifts that are, in the newer edition.
    by_points: whether the grades stand in another order or are others. sections: the places of those (in the newer edition)
    that some condition asks for by itself. score: whether the score is not alike. together: the traits that each part reads.
    """

    limits: tuple[Sides, ...]
    grades: tuple[Sides, ...]
    alike: tuple[int, ...]
    by_points: bool
    sections: tuple[int, ...]
    score: bool
    together: tuple[tuple[str, ...], ...]

    @classmethod
    def of(cls, old: Grader, new: Grader, same: SameValues) -> Unlike:
        """Those of two editions."""
        said = [
            {part_key(part): (part, _said(part, grader, same, mark)) for part in grader.rules.parts}
            for grader, mark in zip((old, new), _MARKS, strict=True)
        ]
        keys = dict.fromkeys([*said[1], *said[0]])
        unlike = [key for key in keys if key not in said[0] or key not in said[1] or said[0][key][1] != said[1][key][1]]
        limits = [{part_key(one): i for i, one in enumerate(grader.rules.limits)} for grader in (old, new)]
        grades = [{part_key(one): i for i, one in enumerate(grader.rules.grades)} for grader in (old, new)]
        groups = [
            dict.fromkeys(trait.name for side in said if key in side for trait in traits_in(side[key][0]))
            for key in unlike
        ]
        late: tuple[Part, ...] = (*new.rules.limits, *new.rules.grades)
        asked = {name for part in late for name in points_in(part)}
        return cls(
            tuple((limits[0].get(key), limits[1].get(key)) for key in unlike if key in limits[0] or key in limits[1]),
            tuple((grades[0].get(key), grades[1].get(key)) for key in unlike if key in grades[0] or key in grades[1]),
            tuple(place for key, place in limits[1].items() if key not in unlike),
            old.grades != new.grades,
            tuple(i for i, section in enumerate(new.rules.sections) if section.name in asked),
            "score" not in same.alike,
            tuple(dict.fromkeys(tuple(group) for group in groups if group)),
        )

    @property
    def nothing(self) -> bool:
        """Whether the editions are alike in all that can bear on a grade."""
        return not (self.limits or self.grades or self.by_points or self.score)

    def inner(self, trace: Trace, side: int) -> tuple[Any, ...]:
        """What the parts that are not alike come to in an edition: 0 the older, 1 the newer one."""
        limits = tuple(False if (at := pair[side]) is None else trace.limits[at][4:] for pair in self.limits)
        grades = tuple(False if (at := pair[side]) is None else trace.grades[at] for pair in self.grades)
        return (limits, grades, self.by_points and trace.by_points)

    def heights(self, new: Trace) -> tuple[int, ...]:
        """What a way up or down can go by."""
        return (new.score[0], *(new.sections[i][0] for i in self.sections))

    def hiding(self, new: Trace) -> tuple[bool, ...]:
        """Which faults and lifts of both may bite."""
        return tuple(new.limits[at][5] for at in self.alike)
