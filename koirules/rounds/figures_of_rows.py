"""Figures of a batch, worked out record by record."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from koirules.rounds.evaluation_levels import Asked
from koirules.rounds.figure_ends import Ends
from koirules.rounds.node_values import NodeValues, compile_nodes, one_value, value_ends
from koirules.rounds.tallies import FigureTable, Group, Member, Tally
from koirules.standard.parts import Rules, Setting
from koirules.standard.tree import Figure, Node, Supplied
from koirules.values import frozen
from koirules.vocabulary.readings import Span

Readings = dict[str, Any]


@frozen
class Seen:
    """The readings of a fish now, and as wide as they may become once more is recorded.

    counted: whether it is one of those that a figure is now over; staying: whether it surely will be.
    """

    now: Readings
    later: Readings
    counted: bool = True
    staying: bool = True


@frozen
class _Level:
    """Figures that are worked out together, and the function that reads what they need of each fish.

    written: the same for what they are figures of without what silence means, of those that read a silent trait.
    """

    figures: tuple[tuple[Supplied, Figure], ...]
    values: NodeValues
    written: NodeValues

    def assumed(self, readings: Readings) -> list[bool]:
        """For each figure whether a fish has its value from what silence means alone."""
        values = iter(self.written.run(readings))
        return [
            figure.as_written is not None and one_value(figure.of.type, next(values)) is None
            for _, figure in self.figures
        ]


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
            alone = [figure.as_written for _, figure in figures if figure.as_written is not None]
            values, written = (compile_nodes(rules, settings, each, graded=graded) for each in (nodes, alone))
            made.append(_Level(figures, values, written))
        return cls(tuple(made))

    @property
    def kept_by(self) -> frozenset[str]:
        """The rounds that figures are taken among the kept of."""
        return frozenset(figure.kept_by for level in self.levels for _, figure in level.figures if figure.kept_by)

    def supply(
        self, fish: Sequence[Readings], among: Mapping[str, Sequence[Readings]], beside: Sequence[Readings] = ()
    ) -> bool:
        """Put the figures into the readings of fish, each over these fish, or over those kept by a round (`among`).

        beside: readings that get the figures too and count in none.

        Those of `among` get them too, since a figure over them may be of what reads another figure. Gives whether some fish
        does not count in some figure, or counts in a group that is not known.
        """
        lacks = False
        asking = [*fish, *(each for kept in among.values() for each in kept), *beside]
        for level in self.levels:
            own = [list(_split(level, each)) for each in asking]
            lacks = lacks or any(None in pair for each in own[: len(asking) - len(beside)] for pair in each)
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
        return lacks

    def counts(self, fish: Sequence[Readings]) -> list[dict[str, tuple[int, int, int]]]:
        """For each fish, which have their figures over these: by the key of a figure what it counts.

        That is how many fish, of how many, and how many of those it counts have what it is of from silence alone.
        """
        found: list[dict[str, tuple[int, int, int]]] = [{} for _ in fish]
        for level in self.levels:
            own = [list(_split(level, each)) for each in fish]
            silent = [level.assumed(each) for each in fish]
            for i, (supplied, figure) in enumerate(level.figures):
                if figure.kept_by:
                    continue
                every = Counter(each[i][0] for each in own)
                counted = Counter(each[i][0] for each in own if each[i][1] is not None)
                assumed = Counter(
                    each[i][0] for each, of in zip(own, silent, strict=True) if each[i][1] is not None and of[i]
                )
                for counts, readings, each in zip(found, fish, own, strict=True):
                    if supplied.key in readings:
                        group = each[i][0]
                        counts[supplied.key] = counted[group], every[group], assumed[group]
        return found

    def supply_ends(
        self, fish: Sequence[Seen], among: Mapping[str, Sequence[Seen]], beside: Sequence[Seen] = ()
    ) -> bool:
        """Put between which ends the figures lie into what may become of the readings of fish; gives whether any moves.

        beside: readings that get the figures too and count in none.

        A figure that is not recorded now stays so, and is anything at all.
        """
        asking = [*fish, *(each for members in among.values() for each in members), *beside]
        moves = False
        for level in self.levels:
            now = [list(_split(level, each.now if each.counted else each.later)) for each in asking]
            later = [list(_split_ends(level, each.later)) for each in asking]
            ranges = {"": range(len(fish))}
            for name, members in among.items():
                start = list(ranges.values())[-1].stop
                ranges[name] = range(start, start + len(members))
            for i, (supplied, figure) in enumerate(level.figures):
                over = ranges[figure.kept_by]
                each_of = (Member(*now[n][i], *later[n][i], asking[n].counted, asking[n].staying) for n in over)
                table = FigureTable.of(figure, Tally.of_members((one, 1) for one in each_of))
                moves = moves or table.tally.moves
                for n, each in enumerate(asking):
                    if each.counted and supplied.key not in each.now:
                        each.later.pop(supplied.key, None)
                    else:
                        ends = table.ends(*later[n][i])
                        each.later[supplied.key] = Span(*supplied.range) if ends is None else _span(ends)
        return moves

    def overall(self, fish: Sequence[Readings], later: Sequence[Readings]) -> tuple[dict[str, Span], dict[str, Span]]:
        """The figures over fish that are the same for each of them: as they are, and as wide as they may become.

        later: the readings of the fish as wide as they may become.
        """
        copies = [Seen(dict(now), dict(wide)) for now, wide in zip(fish, later, strict=True)]
        if not copies:
            return {}, {}
        lacks = self.supply([each.now for each in copies], {})
        keys = [supplied.key for level in self.levels for supplied, figure in level.figures if not figure.same]
        now = {key: copies[0].now[key] for key in keys if key in copies[0].now}
        if not lacks and all(wide is each for each, wide in zip(fish, later, strict=True)):
            return now, now
        self.supply_ends(copies, {})
        return now, {key: copies[0].later[key] for key in now}


def _split(level: _Level, readings: Readings) -> Iterator[tuple[Group | None, int | None]]:
    """For each figure of a level the group and the value of a fish."""
    values = iter(level.values.run(readings))
    for _, figure in level.figures:
        value = one_value(figure.of.type, next(values))
        group = tuple(one_value(node.type, next(values)) for node in figure.groups)
        yield (None if None in group else group), value if isinstance(value, int) else None


def _split_ends(level: _Level, readings: Readings) -> Iterator[tuple[Group | None, Ends]]:
    """For each figure of a level the group of a fish, and between which ends its value lies."""
    values = iter(level.values.run(readings))
    for _, figure in level.figures:
        ends = value_ends(figure.of.type, next(values))
        group = tuple(one_value(node.type, next(values)) for node in figure.groups)
        yield (None if None in group else group), ends


def _span(ends: Ends) -> Span:
    return Span(ends[0] / 1_000_000.0, ends[1] / 1_000_000.0)
