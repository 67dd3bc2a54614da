"""The plot of a batch: a bar for each fish, its points by section, the lines of the grades, and where the cuts fell."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal

from koirules.records.about import About
from koirules.report.figures import figure
from koirules.report.page_words import is_held
from koirules.report.plot_groups import Group, groups
from koirules.report.plot_marks import GRID, GROUND, INK, QUIET, Area, Drawing, Line, Mark, Words, box, words_width
from koirules.report.score_bins import most_points
from koirules.results.result import Result
from koirules.values import frozen
from koirules.vocabulary.kinds import shortest

PAINTS = ("#0b3238", "#e88931", "#2a427e", "#cfb49b", "#7a2bc9", "#edc9c9", "#a25f22", "#e1efde")
"""The colours of sections: each has a lightness of its own, so that they are told apart in grey too; then over again."""

_OPEN = "#d0d9d6"
_LEFT, _RIGHT, _TALL = 64.0, 150.0, 360.0
_WIDE, _GAP = 1200.0, 14.0
_ROW, _SIZE = 21.0, 15.0
_SLANT = 7.0
_NAMED, _PARTED = 9.0, 4.0
"""How wide a bar must be for the name of its fish to stand below it, and for fine lines between it and the next."""


def plot_of(results: Sequence[Result], about: About) -> Drawing:
    """Lay the plot of a batch out; there is a fish, and a section that gives points."""
    sheet = _Sheet.of(results, about)
    marks = [
        box(0, 0, _WIDE, sheet.height, GROUND),
        *sheet.heading(),
        *sheet.scale(),
        *sheet.bars(),
        *sheet.grade_lines(),
        *sheet.cuts(),
    ]
    return Drawing(sheet.title, sheet.described, _WIDE, sheet.height, tuple(marks))


@frozen
class _Column:
    """A bar: its fish and where it stands. held: whether a fault holds the fish below a line that it reaches."""

    result: Result
    left: float
    right: float
    held: bool = False


@frozen
class _Sheet:
    """Where everything stands on the plot."""

    about: About
    groups: tuple[Group, ...]
    columns: tuple[tuple[_Column, ...], ...]
    sections: tuple[tuple[str, str], ...]
    legend: tuple[tuple[float, float, str, str], ...]
    labels: tuple[tuple[float, int, str], ...]
    most: Decimal
    names: float
    top: float

    @classmethod
    def of(cls, results: Sequence[Result], about: About) -> _Sheet:
        """Give everything its place."""
        found = groups(results, about)
        columns = tuple(_columns(found, len(results)))
        sections = tuple({s.name: s.title for result in results for s in result.sections.values()}.items())
        legend = tuple(_legend(sections, opened=any(result.score is None for result in results)))
        narrow = columns[0][0].right - columns[0][0].left < _NAMED
        names = 0 if narrow else max(words_width(result.fish, 11) for result in results) + 10
        top = 62 + _ROW * (1 + max(row for _, row, _, _ in legend))
        labels = tuple(_labels(found, columns))
        return cls(about, found, columns, sections, legend, labels, most_points(results), names, top)

    @property
    def height(self) -> float:
        """How high the whole is."""
        return self.foot + self.names + _ROW * (1 + max(row for _, row, _ in self.labels)) + 34

    @property
    def gap(self) -> float:
        """How far groups stand apart."""
        return _gap(self.groups)

    @property
    def foot(self) -> float:
        """Where the bars stand."""
        return self.top + _TALL

    def at(self, score: Decimal) -> float:
        """How high a score stands."""
        return round(self.foot - _TALL * float(score / self.most), 2)

    @property
    def title(self) -> str:
        """What it shows, in a line."""
        records = f"{self.about.records} by " if self.about.records else ""
        return f"{records}{self.about.title}, edition {self.about.edition}"

    @property
    def described(self) -> str:
        """The same in words, for those who do not see it."""
        told = "; ".join(f"{len(group.fish):,} {group.title}" for group in self.groups)
        lines = [f"{line.title} from {shortest(line.score)}" for line in self.about.grades if line.score is not None]
        fish = sum(len(group.fish) for group in self.groups)
        of = self.about.subject.counted(fish)
        return f"Points of {of} by section. {told}." + (f" Grade lines: {'; '.join(lines)}." if lines else "")

    def heading(self) -> Iterator[Mark]:
        """The title, the settings of the run, and which colour is which section."""
        yield Words(self.title, (_LEFT, 22), 19, bold=True)
        changed = "; ".join(f"{name} = {value}" for name, value in self.about.settings.items())
        held = any(column.held for columns in self.columns for column in columns)
        told = f"Points of each {self.about.subject.one} by section, best first" + (
            f"; a bar over {self.about.subject.with_article}: held down by a fault" if held else ""
        )
        told += f"{f'; changed for this run: {changed}' if changed else ''}"
        yield Words(told, (_LEFT, 43), 13, ink=QUIET)
        for left, row, title, paint in self.legend:
            middle = 64 + _ROW * row
            yield box(left, middle - 7, left + 14, middle + 7, INK)
            yield box(left + 1, middle - 6, left + 13, middle + 6, paint)
            yield Words(title, (left + 20, middle))

    def scale(self) -> Iterator[Mark]:
        """The scores that can be had, with fine lines across."""
        step = next(s for s in (Decimal(one).scaleb(p) for p in range(6) for one in (1, 2, 5)) if self.most / s <= 6)
        score = Decimal(0)
        while score <= self.most:
            y = self.at(score)
            yield Line((_LEFT, y), (_WIDE - _RIGHT, y), GRID if score else INK)
            yield Words(shortest(score), (_LEFT - 8, y), 13, "end", ink=QUIET)
            score += step

    def bars(self) -> Iterator[Mark]:
        """The points by section, one on the other, what may still come of it on top, and the names of the fish."""
        for group, columns in zip(self.groups, self.columns, strict=True):
            under = [Decimal(0)] * len(columns)
            for number, (name, title) in enumerate(self.sections):
                over = [low + _points(column.result, name) for low, column in zip(under, columns, strict=True)]
                paint = PAINTS[number % len(PAINTS)]
                yield self._area(columns, under, over, paint, f"{title}: {group.title}")
                under = over
            high = [max(column.result.score_high, low) for column, low in zip(columns, under, strict=True)]
            if high != under:
                yield self._area(columns, under, high, _OPEN, f"what may still come of it: {group.title}")
            if columns[0].right - columns[0].left > _PARTED:
                yield from self._partings(columns, high)
                for column, low, most in zip(columns, under, high, strict=True):
                    if most > low:
                        yield from self._frame(column, low, most)
                        yield from self._hatch(column, low, most)
                yield from (self._held(column, most) for column, most in zip(columns, high, strict=True) if column.held)
            if self.names:
                yield from (self._name(column) for column in columns)

    def _area(
        self, columns: Sequence[_Column], under: Sequence[Decimal], over: Sequence[Decimal], paint: str, what: str
    ) -> Area:
        there = [(c.left, c.right, self.at(a), self.at(b)) for c, a, b in zip(columns, under, over, strict=True)]
        upper = [point for left, right, _, y in there for point in ((left, y), (right, y))]
        lower = [point for left, right, y, _ in reversed(there) for point in ((right, y), (left, y))]
        return Area((*upper, *lower), paint, what)

    def _partings(self, columns: Sequence[_Column], high: Sequence[Decimal]) -> Iterator[Line]:
        """Fine lines between bars, as high as the higher neighbour."""
        for column, *both in zip(columns[1:], high, high[1:], strict=False):
            yield Line((column.left, self.at(max(both))), (column.left, self.foot - 1), GROUND, 1.5)

    def _frame(self, column: _Column, low: Decimal, high: Decimal) -> Iterator[Mark]:
        corners = [(x, y) for x in (column.left, column.right) for y in (self.at(low), self.at(high))]
        for one, other in ((0, 1), (2, 3), (1, 3)):
            yield Line(corners[one], corners[other], QUIET, 0.75)

    def _hatch(self, column: _Column, low: Decimal, high: Decimal) -> Iterator[Line]:
        """Slanted strokes over what may still come of a fish: it is told from points in grey print too."""
        wide = column.right - column.left
        y, top = self.at(low), self.at(high)
        while y - wide >= top:
            yield Line((column.left, y), (column.right, y - wide), QUIET, 0.75)
            y -= _SLANT

    def _held(self, column: _Column, high: Decimal) -> Line:
        """A bar over a fish that a fault holds below a line that it reaches."""
        y = self.at(high) - 4
        return Line((column.left + 1, y), (column.right - 1, y), INK, 3)

    def _name(self, column: _Column) -> Words:
        return Words(column.result.fish, ((column.left + column.right) / 2, self.foot + 6), 11, "end", upright=True)

    def grade_lines(self) -> Iterator[Mark]:
        """From which score on a grade can be had; names that would stand on one another are moved apart."""
        lowest = self.foot
        for line in sorted((x for x in self.about.grades if x.score is not None), key=lambda x: x.score or 0):
            y = self.at(line.score or Decimal(0))
            yield Line((_LEFT, y), (_WIDE - _RIGHT, y), INK, 1.5, dashed=True)
            lowest = min(y, lowest - 17)
            yield Words(
                f"{line.title} {figure(line.score or Decimal(0), line.score or Decimal(0))}",
                (_WIDE - _RIGHT + 8, lowest),
            )

    def cuts(self) -> Iterator[Mark]:
        """Where one group ends and the next begins, and what each is called."""
        low = self.foot + self.names + 2
        for number, (columns, (_, row, _)) in enumerate(zip(self.columns, self.labels, strict=True)):
            left, right = columns[0].left, columns[-1].right
            yield Line((left, low), (right, low), INK, 2.5)
            yield Line((left, low), (left, low + 12 + _ROW * row), INK)
            if number:
                yield Line((left - self.gap / 2, self.top - 8), (left - self.gap / 2, low), INK, 2)
        for left, row, title in self.labels:
            y = low + 13 + _ROW * row
            # What lies under a name, such as the line to a name below it, would make it hard to read.
            yield box(left + 2, y - 8, left + words_width(title, _SIZE) + 6, y + 9, GROUND)
            yield Words(title, (left + 5, y), _SIZE)


def _points(result: Result, section: str) -> Decimal:
    return result.sections[section].low if section in result.sections else Decimal(0)


def _gap(found: Sequence[Group]) -> float:
    """How far groups stand apart: less where there are many."""
    return min(_GAP, 0.3 * (_WIDE - _LEFT - _RIGHT) / len(found))


def _columns(found: Sequence[Group], fish: int) -> Iterator[tuple[_Column, ...]]:
    gap = _gap(found)
    each = (_WIDE - _LEFT - _RIGHT - gap * (len(found) + 1)) / fish
    left = _LEFT + gap
    for group in found:
        lefts = [left + each * number for number in range(len(group.fish))]
        yield tuple(
            # Where bars are fine lines, a mark over one would be none.
            _Column(result, round(x, 2), round(x + each, 2), each > _PARTED and is_held(result))
            for result, x in zip(group.fish, lefts, strict=True)
        )
        left = lefts[-1] + each + gap


def _legend(sections: Sequence[tuple[str, str]], *, opened: bool) -> Iterator[tuple[float, int, str, str]]:
    """Where the colours are explained, row by row: left, row, title, colour."""
    left, row = _LEFT, 0
    told = [(title, PAINTS[number % len(PAINTS)]) for number, (_, title) in enumerate(sections)]
    for title, paint in [*told, *([("what may still come of it", _OPEN)] if opened else [])]:
        wide = 20 + words_width(title, _SIZE) + 24
        if left + wide > _WIDE and left > _LEFT:
            left, row = _LEFT, row + 1
        yield left, row, title, paint
        left += wide


def _labels(found: Sequence[Group], columns: Sequence[Sequence[_Column]]) -> Iterator[tuple[float, int, str]]:
    """Where the groups are named: left, row, words; each in the first row in which nothing stands there yet."""
    ends: list[float] = []
    for group, fish in zip(found, columns, strict=True):
        words = f"{group.title}, {len(group.fish):,}"
        left = min(fish[0].left, _WIDE - words_width(words, _SIZE) - 12)
        row = next((number for number, end in enumerate(ends) if end < left), len(ends))
        end = left + words_width(words, _SIZE) + 12
        ends[row : row + 1] = [end]
        yield left, row, words
