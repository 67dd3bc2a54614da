"""What several judges of one fish come to together (examples/guide/reference/panels.md), by trying all that each could mean.

Steps, options, yes or no and places are put together for every choice of what each judge leaves open; a number can only rise
where one of the judges says more, so its ends come of all low ends and of all high ends. Points are exact fractions.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from decimal import Decimal
from fractions import Fraction
from itertools import product

from attrs import evolve

from tests.judge import model as m
from tests.judge import values as v
from tests.judge.judge import Ends, Verdict, after_limits, by_points, half_up, judge, look_at_ranges
from tests.judge.look import Record, look_at, trait_worth
from tests.judge.silence import filled

# ---- Trait by trait ----------------------------------------------------------------------------------------------


def panel_record(standard: m.Standard, panel: m.Panel, judges: Sequence[Record]) -> dict[str, object]:
    """What the panel recorded of a fish: a trait is recorded where one judge recorded it; a text that is not sure is none."""
    found: dict[str, object] = {}
    for trait in standard.traits:
        if not any(trait.name in record for record in judges):
            continue
        said = together(trait, panel, [trait_worth(trait, record) for record in judges])
        if said != v.Label(None):
            found[trait.name] = said
    return found


def together(trait: m.Trait, panel: m.Panel, said: Sequence[v.Worth]) -> v.Worth:
    match trait.kind:
        case m.NumberKind() | m.CountKind() as kind:
            spans = [each for each in said if isinstance(each, v.Span)]
            halfway = isinstance(kind, m.NumberKind)
            low, _ = middle_number([each.low for each in spans], panel.middle, halfway)
            _, high = middle_number([each.high for each in spans], panel.middle, halfway)
            return v.Span(low, high)
        case m.ScaleKind(steps):
            return v.Steps(steps, every(said, lambda choice: middle_steps(choice, steps, panel.middle)))
        case m.ChoiceKind(steps):
            return v.Steps(steps, every(said, most_often))
        case m.YesNoKind():
            possible = every([as_words(each) for each in said], most_often)
            return v.Truth("no" not in possible, "yes" in possible)
        case m.PlacesKind(places):
            sets = [each for each in said if isinstance(each, v.PlaceSet)]
            if len(sets) == 1:
                return sets[0]
            states = {place: named(place, sets, panel) for place in places}
            return v.PlaceSet.between(
                frozenset(place for place in places if states[place] == {True}),
                frozenset(place for place in places if True in states[place]),
            )
        case m.LabelKind():
            return text_together([each.possible for each in said if isinstance(each, v.Label)])
    raise AssertionError(trait)


def middle_number(values: list[float], takes: str, halfway: bool) -> tuple[float, float]:
    """The median; of two in the middle the one that the panel takes, else the number halfway, else both ends."""
    ordered = sorted(values)
    low, high = ordered[(len(values) - 1) // 2], ordered[len(values) // 2]
    if takes:
        low = high = low if takes == "lower" else high
    if halfway and low != high:
        low = high = float((Fraction(Decimal(repr(low))) + Fraction(Decimal(repr(high)))) / 2)
    return low, high


def every(said: Sequence[v.Worth], put: Callable[[tuple[str, ...]], Iterable[str]]) -> frozenset[str]:
    """All that comes of some choice of what each judge leaves open."""
    open_to = [sorted(each.possible) for each in said if isinstance(each, v.Steps)]
    assert len(open_to) == len(said)
    return frozenset(found for choice in product(*open_to) for found in put(choice))


def middle_steps(choice: tuple[str, ...], steps: tuple[str, ...], takes: str) -> Iterable[str]:
    places = sorted(steps.index(step) for step in choice)
    low, high = places[(len(places) - 1) // 2], places[len(places) // 2]
    if takes:
        low = high = low if takes == "lower" else high
    return steps[low : high + 1]


def most_often(choice: tuple[str, ...]) -> Iterable[str]:
    times = {word: choice.count(word) for word in choice}
    return [word for word in times if times[word] == max(times.values())]


def as_words(said: v.Worth) -> v.Steps:
    assert isinstance(said, v.Truth)
    possible = {"yes"} if said.surely else {"yes", "no"} if said.possibly else {"no"}
    return v.Steps(("no", "yes"), frozenset(possible))


def named(place: str, sets: Sequence[v.PlaceSet], panel: m.Panel) -> set[bool]:
    """Whether the place is in, for every choice of what each judge leaves open; of half and half both."""
    states = [{place in each.surely, place in each.possibly} for each in sets]
    found: set[bool] = set()
    for choice in product(*map(sorted, states)):
        names, half = sum(choice), Fraction(len(sets), 2)
        if panel.named_by is not None:
            found.add(names >= panel.named_by)
        else:
            found |= {True, False} if names == half else {names > half}
    return found


def text_together(said: Sequence[frozenset[str] | None]) -> v.Label:
    """The text that is written most often, whatever those who wrote none would write: any of the texts, or another one."""
    texts = sorted({text for each in said if each is not None for text in each})
    choices = product(*([*texts, "another text altogether"] if each is None else sorted(each) for each in said))
    found = {word for choice in choices for word in most_often(choice)}
    return v.Label(frozenset(found) if len(found) == 1 else None)


# ---- By score and by votes ---------------------------------------------------------------------------------------


def judge_panel(standard: m.Standard, shared: Record, judges: Sequence[Record]) -> Verdict:
    """What comes of a fish. shared: what is recorded of it without a judge, which holds for those who say nothing else."""
    panel = standard.panel
    assert panel is not None
    written: list[Record] = [{**shared, **each} for each in judges]
    read: list[Record] = [filled(standard, each) for each in written]
    missing = max(0, needed(panel) - len(judges))
    written += [shared] * missing
    read += [shared] * missing
    record = panel_record(standard, panel, read)
    recorded = frozenset(panel_record(standard, panel, written))
    if panel.way == "trait by trait":
        return judge(standard, record, recorded=recorded)
    each = [judge(standard, seen, recorded=frozenset(said)) for seen, said in zip(read, written, strict=True)]
    faults = {
        one.name: half([states(one.name, seen.faults, seen.open_faults) for seen in each]) for one in standard.faults
    }
    lifts = {one.name: half([states(one.name, seen.lifts, seen.open_lifts) for seen in each]) for one in standard.lifts}
    score = points_together(panel, [(one.score_low, one.score_high) for one in each])
    sections = {name: points_together(panel, [one.sections[name] for one in each]) for name in each[0].sections}
    if panel.way == "by votes":
        possible = votes(standard, each)
    else:
        look = look_at(standard, record, recorded)
        look = evolve(look, sections=sections, score=score, bites=faults, anything=lambda: look_at_ranges(standard))
        possible = after_limits(standard, by_points(standard, look), lifts, faults)
    return Verdict(
        possible=possible,
        score_low=score[0],
        score_high=score[1],
        sections=sections,
        points={key: points_together(panel, [one.points[key] for one in each]) for key in each[0].points},
        faults=tuple(name for name, bit in faults.items() if bit.surely),
        lifts=tuple(name for name, bit in lifts.items() if bit.surely),
        open_faults=tuple(name for name, bit in faults.items() if bit.possibly and not bit.surely),
        open_lifts=tuple(name for name, bit in lifts.items() if bit.possibly and not bit.surely),
    )


def needed(panel: m.Panel) -> int:
    """A mean without the highest and the lowest needs three, and a place that N must name needs N."""
    return max(panel.judges or 1, panel.named_by or 1, 3 if panel.way.endswith("lowest") else 1)


def states(name: str, surely: tuple[str, ...], perhaps: tuple[str, ...]) -> v.Truth:
    return v.Truth(name in surely, name in surely or name in perhaps)


def half(said: Sequence[v.Truth]) -> v.Truth:
    """Yes by more than half of the judges; half and half is open."""
    yes, no = sum(each.surely for each in said), sum(not each.possibly for each in said)
    return v.Truth(2 * yes > len(said), not 2 * no > len(said))


def points_together(panel: m.Panel, ends: Sequence[Ends]) -> Ends:
    low, high = (half_up(exact_points(panel, list(each))) for each in zip(*ends, strict=True))
    return low, high


def exact_points(panel: m.Panel, points: list[int]) -> Fraction:
    ordered = sorted(points)
    match panel.way:
        case "by median of score":
            low, high = ordered[(len(points) - 1) // 2], ordered[len(points) // 2]
            return Fraction(low if panel.middle == "lower" else high if panel.middle else Fraction(low + high, 2))
        case "by mean of score without the highest and the lowest":
            return Fraction(sum(ordered[1:-1]), len(points) - 2)
        case _:
            return Fraction(sum(points), len(points))


def votes(standard: m.Standard, each: Sequence[Verdict]) -> tuple[str, ...]:
    """Every grade that has the most votes for some choice of the grades that each judge leaves possible."""
    found = {name for choice in product(*(one.possible for one in each)) for name in most_often(choice)}
    return tuple(grade.name for grade in standard.grades if grade.name in found)
