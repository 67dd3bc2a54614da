"""Figures of a batch, worked out record by record."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from attrs import frozen

from koirules.rounds.evaluation_levels import Asked
from koirules.rounds.node_values import NodeValues, compile_nodes, one_value
from koirules.rounds.tallies import FigureTable, Group, Tally
from koirules.standard.parts import Rules, Setting
from koirules.standard.tree import Figure, Node, Supplied
from koirules.vocabulary.readings import Span

Readings = dict[str, Any]


@frozen
class _Level:
    """Figures that are worked out together, and the function that reads what they need of each fish."""

    figures: tuple[tuple[Supplied, Figure], ...]
    values: NodeValues


@frozen
class FiguresOfRows:
    """Works out the figures that expressions ask for, level by level."""

    levels: tuple[_Level, ...]

    @classmethod
    def of(cls, rules: Rules, settings: Mapping[str, Setting], asked: Asked, *, graded: bool) -> FiguresOfRows:
        """Compile what the figures need. graded: whether records carry their outcome."""
        made: list[_Level] = []
        for level in asked.levels:
            figures = tuple((one, one.source) for one in level if isinstance(one.source, Figure))
            nodes: list[Node] = [node for _, figure in figures for node in figure.reads]
            made.append(_Level(figures, compile_nodes(rules, settings, nodes, graded=graded)))
        return cls(tuple(made))

    @property
    def kept_by(self) -> frozenset[str]:
        """The rounds that figures are taken among the kept of."""
        return frozenset(figure.kept_by for level in self.levels for _, figure in level.figures if figure.kept_by)

    def supply(self, fish: Sequence[Readings], among: Mapping[str, Sequence[Readings]]) -> None:
        """Put the figures into the readings of fish, each over these fish, or over those kept by a round (`among`).

        Those of `among` get them too, since a figure over them may be of what reads another figure.
        """
        asking = [*fish, *(each for kept in among.values() for each in kept)]
        for level in self.levels:
            own = [list(_split(level, each)) for each in asking]
            counting = {"": own[: len(fish)]}
            start = len(fish)
            for name, kept in among.items():
                counting[name] = own[start : start + len(kept)]
                start += len(kept)
            for i, (supplied, figure) in enumerate(level.figures):
                table = FigureTable.of(figure, Tally.of(each[i] for each in counting[figure.kept_by]))
                for readings, each in zip(asking, own, strict=True):
                    reading = table.reading(*each[i])
                    if reading is None:
                        readings.pop(supplied.key, None)  # over more fish it may have been recorded
                    else:
                        readings[supplied.key] = reading

    def overall(self, fish: Sequence[Readings]) -> dict[str, Span]:
        """The figures over fish that are the same for each of them."""
        copies = [dict(each) for each in fish]
        self.supply(copies, {})
        keys = [supplied.key for level in self.levels for supplied, figure in level.figures if not figure.same]
        return {key: copies[0][key] for key in keys if copies and key in copies[0]}


def _split(level: _Level, readings: Readings) -> Iterator[tuple[Group | None, int | None]]:
    """For each figure of a level the group and the value of a fish."""
    values = iter(level.values.run(readings))
    for _, figure in level.figures:
        value = one_value(figure.of.type, next(values))
        group = tuple(one_value(node.type, next(values)) for node in figure.same)
        yield (None if None in group else group), value if isinstance(value, int) else None
