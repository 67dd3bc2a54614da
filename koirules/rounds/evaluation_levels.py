"""What a standard asks of the batch and of earlier looks, in the order in which it can be worked out."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from koirules.standard.parts import Limit, Rules
from koirules.standard.tree import (
    Earlier,
    FaultRead,
    Figure,
    Node,
    Recorded,
    ScoreRead,
    SectionRead,
    Supplied,
    walk,
)
from koirules.values import frozen


@frozen
class Asked:
    """The values beside the record that expressions ask for.

    levels: figures, each level reading only those before it. earlier: values of the look before.
    """

    levels: tuple[tuple[Supplied, ...], ...] = ()
    earlier: tuple[Supplied, ...] = ()

    @property
    def figures(self) -> tuple[Supplied, ...]:
        """Every figure, in working order."""
        return tuple(figure for level in self.levels for figure in level)

    @property
    def nothing(self) -> bool:
        """Whether they ask for nothing but the record."""
        return not self.levels and not self.earlier


def asked_by(rules: Rules, roots: Iterable[Node], *, graded: bool) -> Asked:
    """What expressions ask for beside the record; graded: whether score, faults and grade are known by then."""
    finder = _Finder(rules, graded)
    for root in roots:
        finder.level(root)
    levels: dict[int, list[Supplied]] = {}
    for key, supplied in finder.figures.items():
        levels.setdefault(finder.levels[key], []).append(supplied)
    return Asked(tuple(tuple(levels[level]) for level in sorted(levels)), tuple(finder.earlier.values()))


def asked_before_grades(rules: Rules) -> Asked:
    """What has to be known before the fish are graded."""
    roots = [root for part in rules.parts for root in part.roots]
    roots.extend(rules.terms[name].node for name in rules.said_names if name in rules.terms)
    return asked_by(rules, roots, graded=False)


class _Finder:
    """Finds values beside the record, with how deep each figure stands: a figure of no other figure has level 0."""

    def __init__(self, rules: Rules, graded: bool) -> None:
        self.graded = graded
        self.limits: Mapping[str, Limit] = {limit.name: limit for limit in rules.limits if limit.head == "fault"}
        self.criteria = [root for part in rules.criteria for root in part.roots]
        self.figures: dict[str, Supplied] = {}
        self.levels: dict[str, int] = {}
        self.earlier: dict[str, Supplied] = {}
        self._outcomes: dict[str, int] = {}

    def level(self, root: Node) -> int:
        """How many levels of figures have to be known before an expression can be worked out."""
        most = 0
        for each in walk(root):
            node = each.of if isinstance(each, Recorded) else each
            match node:
                case Supplied(source=Figure() as figure, key=key):
                    if key not in self.figures:
                        self.levels[key] = max((self.level(inner) for inner in figure.reads), default=0)
                        self.figures[key] = node
                    most = max(most, self.levels[key] + 1)
                case Supplied(source=Earlier(), key=key):
                    self.earlier[key] = node
                case ScoreRead() | SectionRead() if not self.graded:
                    most = max(most, self._outcome("score", self.criteria))
                case FaultRead(name=name) if not self.graded:
                    most = max(most, self._outcome(f"fault {name}", self.limits[name].roots))
                case _:
                    pass
        return most

    def _outcome(self, key: str, roots: Iterable[Node]) -> int:
        if key not in self._outcomes:
            self._outcomes[key] = max((self.level(root) for root in roots), default=0)
        return self._outcomes[key]
