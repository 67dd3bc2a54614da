"""The distribution of the scores on a page: a dot for each fish with the lines of the grades, and the same in figures."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from koirules.report.page_words import Wording, is_held
from koirules.report.score_bins import Bin, binned, is_scored
from koirules.results.result import Result
from koirules.values import frozen
from koirules.vocabulary.kinds import shortest

_LEFT, _TOP, _FOOT, _RIGHT = 16, 6, 26, 16
_WIDTH, _HEIGHT, _LEAST = 560, 240, 60
_LINE, _LETTER = 17, 7.6
"""Sizes in units of the picture."""
_LONGEST = 24
"""How many letters the name of a line may have."""
_SMALLEST = 2.5
"""A dot with a smaller radius than this is hard to see: bars stand for the fish."""
OPEN = "open"


@frozen
class Dot:
    """A fish. shade: the class of its grade. held: whether a fault holds it below a grade whose line its score reaches."""

    x: float
    y: float
    shade: str
    held: bool
    name: str


@frozen
class Block:
    """The fish of a grade in a step of the scores, where they are too many for dots."""

    x: float
    y: float
    wide: float
    tall: float
    shade: str


@frozen
class GradeMark:
    """The line of a grade with its name."""

    x: float
    y: float
    words: str


@frozen
class Chart:
    """The picture, its legend and its figures."""

    wide: int
    tall: float
    foot: float
    end: float
    radius: float
    dots: tuple[Dot, ...]
    blocks: tuple[Block, ...]
    lines: tuple[GradeMark, ...]
    ticks: tuple[tuple[float, str], ...]
    legend: tuple[tuple[str, str], ...]
    held: int
    missing: int
    label: str
    heads: tuple[str, ...]
    rows: tuple[tuple[str, tuple[str, ...]], ...]


def chart_of(wording: Wording, results: Sequence[Result]) -> Chart | None:
    """The picture; none where nobody gives points."""
    found = binned(results)
    if not found:
        return None
    lines = sorted((line.score, line.title) for line in wording.grades.values() if line.score is not None)
    # Each name stands to the right of its line, the lower scores higher up: no line crosses the name of another.
    names = [f"{_clipped(title)} {wording.tongue.figure(shortest(score))}" for score, title in lines]
    most = found[-1][0].high
    right = float(_RIGHT)
    for (score, _), name in zip(lines, names, strict=True):
        room = (1 - float(score / most)) * (_WIDTH - _LEFT - _RIGHT)
        right = max(right, _LETTER * len(name) + 8 - room)
    end = _WIDTH - right
    top = _TOP + _LINE * len(lines) + 4
    highest = max((one.fish for one, _ in found), default=0) or 1
    step = (end - _LEFT) / len(found)
    dotted = _HEIGHT / highest / 2 - 0.3 >= _SMALLEST
    radius = round(min(step / 2 - 0.7, 8.5, max(_HEIGHT / highest / 2 - 0.3, _SMALLEST)), 2)
    tall = max(_LEAST, highest * (2 * radius + 1) if dotted else _HEIGHT)
    foot = top + tall
    across = [round(_LEFT + step * i, 2) for i in range(len(found) + 1)]
    dots = tuple(_dots(wording, found, across, radius, foot)) if dotted else ()
    tongue = wording.tongue
    told = tongue.joined(
        (
            tongue("{grade} from {score}", grade=title, score=tongue.figure(shortest(score)))
            for score, title in reversed(lines)
        ),
        "; ",
    )
    label = tongue("Scores of {fish}.", fish=wording.about.counted(sum(one.fish for one, _ in found)))
    if told:
        label = tongue.joined([label, tongue("Grade lines: {lines}.", lines=told)], " ")
    held = sum(is_held(result) for _, fish in found for result in fish)
    return Chart(
        wide=_WIDTH,
        tall=round(foot + _FOOT, 2),
        foot=round(foot, 2),
        end=round(end, 2),
        radius=radius,
        dots=dots,
        blocks=() if dotted else tuple(_blocks(wording, found, across, tall, foot, highest)),
        lines=tuple(
            GradeMark(round(_LEFT + float(score / most) * (end - _LEFT), 2), _TOP + _LINE * row + 12, name)
            for row, ((score, _), name) in enumerate(zip(lines, names, strict=True))
        ),
        ticks=tuple(_ticks(found, across)),
        legend=tuple(_legend(wording, found)),
        held=held if dotted else 0,
        missing=sum(not is_scored(result, results) for result in results),
        label=label,
        heads=(tongue("score"), *(title for _, title in _legend(wording, found))),
        rows=tuple(_figures(wording, found)),
    )


def _clipped(title: str) -> str:
    """A title short enough to stand beside its line; the legend has it whole."""
    return title if len(title) <= _LONGEST else f"{title[: _LONGEST - 1]}…"


def _order(wording: Wording, result: Result) -> int:
    """Where a fish stands in its stack: the worst at the foot, those that are not settled on top."""
    return -wording.place[result.grade] if result.grade is not None else 1


def _shade(wording: Wording, result: Result) -> str:
    return OPEN if result.grade is None else wording.shade(result.grade)


def _dots(
    wording: Wording, found: Sequence[tuple[Bin, Sequence[Result]]], across: Sequence[float], radius: float, foot: float
) -> Iterator[Dot]:
    for (_, fish), left, right in zip(found, across, across[1:], strict=False):
        for place, result in enumerate(sorted(fish, key=lambda one: _order(wording, one))):
            y = foot - (2 * radius + 1) * place - radius - 1
            yield Dot(
                round((left + right) / 2, 2),
                round(y, 2),
                _shade(wording, result),
                is_held(result),
                result.fish,
            )


def _blocks(
    wording: Wording,
    found: Sequence[tuple[Bin, Sequence[Result]]],
    across: Sequence[float],
    tall: float,
    foot: float,
    highest: int,
) -> Iterator[Block]:
    for (one, _), left, right in zip(found, across, across[1:], strict=False):
        y = foot
        stacked = [(wording.shade(name), one.settled[name]) for name in reversed(tuple(wording.grades))]
        for shade, count in [*stacked, (OPEN, one.unsettled)]:
            if count:
                high = tall * count / highest
                y -= high
                yield Block(round(left + 1, 2), round(y, 2), round(right - left - 2, 2), round(high, 2), shade)


def _ticks(found: Sequence[tuple[Bin, Sequence[Result]]], across: Sequence[float]) -> Iterator[tuple[float, str]]:
    every = -(-len(found) // 5)
    for place in range(0, len(found) + 1, every):
        score = found[place][0].low if place < len(found) else found[-1][0].high
        yield across[place], shortest(score)


def _legend(wording: Wording, found: Sequence[tuple[Bin, Sequence[Result]]]) -> Iterator[tuple[str, str]]:
    for name, line in wording.grades.items():
        if any(one.settled[name] for one, _ in found):
            yield wording.shade(name), line.title
    if any(one.unsettled for one, _ in found):
        yield OPEN, wording.tongue("not settled")


def _figures(wording: Wording, found: Sequence[tuple[Bin, Sequence[Result]]]) -> Iterator[tuple[str, tuple[str, ...]]]:
    names = [name for name in wording.grades if any(one.settled[name] for one, _ in found)]
    unsettled, tongue = any(one.unsettled for one, _ in found), wording.tongue
    for one, _ in reversed(found):
        if one.fish:
            counts = [*(one.settled[name] for name in names), *([one.unsettled] if unsettled else [])]
            ends = (tongue.figure(shortest(end)) for end in (one.low, one.high))
            yield tongue.stretch(*ends), tuple(map(tongue.whole, counts))
