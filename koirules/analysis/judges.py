"""How far several judges, or several who learn to sort, agree: on each trait, on the grade, on the order of the fish.

Agreement is Krippendorff's alpha (Krippendorff, Computing Krippendorff's alpha-reliability, 2011): 1 is full agreement, 0 what
chance would give, below 0 worse. Names, choices, yes or no and places are compared as equal or not (nominal), steps of a scale
and grades by their order (ordinal), numbers and counts by their distance (interval). Its 95 % interval is the percentile
bootstrap over the fish (Efron and Tibshirani, An Introduction to the Bootstrap, 1993), drawn with one seed, so that it is the
same in each run. The order of the fish is compared by Kendall's W with its correction for ties, and each judge's order with that
of the others by Spearman's rho (Kendall and Gibbons, Rank Correlation Methods, 1990). The last two books are cited from memory;
the tests hold all of them to published examples and to reference libraries.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Hashable, Iterator, Mapping, Sequence
from decimal import Decimal
from itertools import combinations
from math import sqrt
from random import Random
from typing import Any, Literal

from attrs import field

from koirules.results.parts_read import is_assumed, traits_in
from koirules.results.record import Record
from koirules.results.result import Result
from koirules.standard.parts import Rules
from koirules.values import frozen
from koirules.vocabulary.kinds import Choice, Count, Kind, Label, Number, Places, Scale, YesNo, words_of
from koirules.vocabulary.readings import PlaceSet, Reading, Span, is_sure, show_reading, words_in
from koirules.vocabulary.traits import Trait

Level = Literal["nominal", "ordinal", "interval"]

NOMINAL: Level = "nominal"
ORDINAL: Level = "ordinal"
INTERVAL: Level = "interval"
FEWEST = 10
"""Of fewer fish alpha says little: traits that more fish have come before (from memory)."""

RESAMPLES = 1_000
"""So many times the fish are drawn again for an interval of 95 % (common practice in statistics, no source)."""
_SEED = 20_260_418

TRAIT, GRADE, SCORE, VERDICT = "trait", "grade", "score", "verdict"

Values = Mapping[Hashable, Mapping[str, float]]
"""By fish (of places, by fish and place) what each judge said of it, as a number."""


# ---- Coefficients ------------------------------------------------------------------------------------------------


def alpha(values: Values, level: Level) -> float | None:
    """Krippendorff's alpha; None where nothing was said by two judges, or all said the same."""
    rows, domain = _counted(values), _domain(values)
    if len(domain) < 2:
        return None
    import krippendorff

    counts = [[row[value] for value in domain] for _, row in rows]
    return float(krippendorff.alpha(value_counts=counts, value_domain=domain, level_of_measurement=level))


def alpha_interval(values: Values, level: Level, resamples: int = RESAMPLES) -> tuple[float, float] | None:
    """The 95 % interval of alpha over fish that are drawn anew; None where alpha is None."""
    rows, domain = _counted(values), _domain(values)
    names = list(dict.fromkeys(fish for fish, _ in rows))
    if len(domain) < 2:
        return None
    chance = Random(_SEED)  # noqa: S311 - a lot, not a secret
    drawn = (Counter(chance.choices(names, k=len(names))) for _ in range(resamples))
    # All places of a fish are drawn together.
    found = (alpha_of([(weights[fish], row) for fish, row in rows], domain, level) for weights in drawn)
    ordered = sorted(one for one in found if one is not None)
    return (_percentile(ordered, 0.025), _percentile(ordered, 0.975)) if ordered else None


def alpha_of(rows: Sequence[tuple[int, Mapping[float, int]]], domain: Sequence[float], level: Level) -> float | None:
    """Alpha where each fish counts so many times; None where all said the same.

    rows: how often a fish counts, and how many judges gave each value of it, two or more. A scale is compared as numbers are, by
    the middle rank of each step among all that was said.
    """
    rows = [(times, row) for times, row in rows if times]
    said = {value: sum(times * row[value] for times, row in rows) for value in domain}
    total = sum(said.values())
    at = _middle_ranks(said) if level == ORDINAL else {value: value for value in domain}
    observed = sum(times * _apart_within(row, at, level) / (sum(row.values()) - 1) for times, row in rows) / total
    expected = _apart_within(said, at, level) / (total * (total - 1))
    return 1 - observed / expected if expected > 0 else None


def _apart_within(said: Mapping[float, int], at: Mapping[float, float], level: Level) -> float:
    """How far what was said lies apart over all pairs of sayings: 1 for each pair that differs, or the squared distance."""
    number = sum(said.values())
    if level == NOMINAL:
        return number * number - sum(times * times for times in said.values())
    middle = sum(times * at[value] for value, times in said.items()) / number
    return 2 * number * sum(times * (at[value] - middle) ** 2 for value, times in said.items())


def _middle_ranks(said: Mapping[float, int]) -> dict[float, float]:
    found, below = {}, 0
    for value, times in said.items():
        found[value] = below + times / 2
        below += times
    return found


def _percentile(ordered: Sequence[float], part: float) -> float:
    """Linear between two of the values (type 7 of Hyndman and Fan, 1996)."""
    place = part * (len(ordered) - 1)
    below = int(place)
    above = min(below + 1, len(ordered) - 1)
    return ordered[below] + (place - below) * (ordered[above] - ordered[below])


def _domain(values: Values) -> list[float]:
    return sorted({value for said in values.values() if len(said) > 1 for value in said.values()})


def _counted(values: Values) -> list[tuple[str, Counter[float]]]:
    """Each fish of which two or more said something, of places once for each, and how many judges gave each value."""
    return [(_fish_of(key), Counter(said.values())) for key, said in values.items() if len(said) > 1]


def fleiss(table: Sequence[Sequence[int]]) -> float | None:
    """Fleiss' kappa (Fleiss, Psychological Bulletin 76, 1971): rows of fish, columns of grades, as many judges in each row.

    None where all said the same.
    """
    judges, fish = sum(table[0]), len(table)
    shares = [sum(row[column] for row in table) / (judges * fish) for column in range(len(table[0]))]
    agreed = sum((sum(times * times for times in row) - judges) / (judges * (judges - 1)) for row in table) / fish
    by_chance = sum(share * share for share in shares)
    return None if by_chance == 1 else (agreed - by_chance) / (1 - by_chance)


def ranks(values: Sequence[float]) -> list[float]:
    """The rank of each value, the smallest 1; equal ones share the middle of theirs."""
    ordered = sorted(values)
    first = {value: ordered.index(value) for value in set(values)}
    times = Counter(values)
    return [first[value] + (times[value] + 1) / 2 for value in values]


def concordance(scores: Sequence[Sequence[float]]) -> float | None:
    """Kendall's W of judges (rows) who each put the same fish (columns) in order, with the correction for ties.

    None where nobody tells two fish apart.
    """
    judges, fish = len(scores), len(scores[0])
    ranked = [ranks(row) for row in scores]
    sums = [sum(column) for column in zip(*ranked, strict=True)]
    middle = sum(sums) / fish
    spread = sum((each - middle) ** 2 for each in sums)
    tied = sum(times**3 - times for row in scores for times in Counter(row).values())
    most = judges**2 * (fish**3 - fish) - judges * tied
    return None if most == 0 else 12 * spread / most


def rho(one: Sequence[float], other: Sequence[float]) -> float | None:
    """Spearman's rho; None where one of the two tells no fish apart."""
    first, second = ranks(one), ranks(other)
    middle = (len(one) + 1) / 2
    both = sum((a - middle) * (b - middle) for a, b in zip(first, second, strict=True))
    each = sum((a - middle) ** 2 for a in first) * sum((b - middle) ** 2 for b in second)
    return None if each == 0 else both / sqrt(each)


# ---- What judges said --------------------------------------------------------------------------------------------


@frozen
class Said:
    """What one judge made of each fish. records: measured; `own` are the traits that the judge recorded. verdicts: in a word."""

    judge: str
    records: Mapping[str, Record]
    results: Mapping[str, Result]
    verdicts: Mapping[str, str] = field(factory=dict)


@frozen
class Alike:
    """How far judges agree on one thing. what: trait, grade, score or verdict.

    fish: how many two judges or more spoke of; parted: on how many of these they differ. words: the two that stand against each
    other on most fish, and on how many; None for numbers. read_by: the parts of the standard that read the trait.
    """

    what: str
    name: str
    title: str
    level: Level
    alpha: float | None
    interval: tuple[float, float] | None
    fish: int
    parted: int
    words: tuple[str, str, int] | None = None
    read_by: tuple[str, ...] = ()


@frozen
class JudgeApart:
    """How a judge stands to the others. without: alpha of all others. shift: how many points above their mean, on average."""

    judge: str
    fish: int
    without: float | None
    shift: float | None
    rho: float | None


@frozen
class Parting:
    """A fish on which judges part. grades: how many come to each. differing: by trait, in words, how many say what."""

    fish: str
    grades: tuple[tuple[str, int], ...]
    score_low: float
    score_high: float
    differing: tuple[tuple[str, str], ...]


@frozen
class JudgesAgreement:
    """How far several judges agree.

    whole: on the score, the grade and the verdict. traits: the least agreed on first, those of few fish behind them.
    """

    judges: tuple[str, ...]
    fish: int
    whole: tuple[Alike, ...]
    fleiss: float | None
    concordance: float | None
    traits: tuple[Alike, ...]
    apart: tuple[JudgeApart, ...]
    partings: tuple[Parting, ...]

    @property
    def stands_apart(self) -> JudgeApart | None:
        """The judge without whom the others agree most, where that is more than all of them do; of three judges or more."""
        main = next((one.alpha for one in self.whole if one.alpha is not None), None)
        found = [one for one in self.apart if one.without is not None]
        if main is None or len(self.judges) < 3 or not found:
            return None
        most = max(found, key=lambda one: one.without or 0.0)
        return most if (most.without or 0.0) > main else None


def judges_agreement(
    every: Sequence[Rules],
    said: Sequence[Said],
    titles: Mapping[str, str],
    verdicts: Sequence[str] = (),
    of: Mapping[str, Rules] | None = None,
) -> JudgesAgreement:
    """How far judges agree. every: the standards; of: that of each fish, where there are several, with grades of the same names.

    titles: of traits, by name. verdicts: the words of verdicts in their order, best first.
    """
    grades = [grade.name for grade in every[0].grades]
    show = _Show(tuple(every), of or {}, titles)
    fish = list(dict.fromkeys(name for one in said for name in one.records))
    scores: Values = {
        name: {one.judge: float(score) for one in said if (score := _score(one, name)) is not None} for name in fish
    }
    graded: Values = {
        name: {one.judge: float(-grades.index(grade)) for one in said if (grade := _grade(one, name)) is not None}
        for name in fish
    }
    spoken: Values = {
        name: {one.judge: float(-verdicts.index(one.verdicts[name])) for one in said if name in one.verdicts}
        for name in fish
    }
    whole = [_alike(SCORE, SCORE, SCORE, INTERVAL, scores, lambda _: "")] if show.scored else []
    whole.append(_alike(GRADE, GRADE, GRADE, ORDINAL, graded, lambda value: grades[int(-value)]))
    if any(spoken.values()):
        whole.append(_alike(VERDICT, VERDICT, VERDICT, ORDINAL, spoken, lambda value: verdicts[int(-value)]))
    traits = [one for one in _of_traits(show, said, fish) if one.fish]
    traits.sort(key=lambda one: (one.alpha is None, one.fish < FEWEST, one.alpha or 0.0))
    main, level = (scores, INTERVAL) if show.scored else (graded, ORDINAL)
    if not any(len(each) > 1 for each in main.values()):
        main, level = spoken, ORDINAL
    names = tuple(one.judge for one in said)
    return JudgesAgreement(
        names,
        sum(sum(name in one.records for one in said) > 1 for name in fish),
        tuple(one for one in whole if one.fish),
        _fleiss(graded, names, len(grades)),
        _concordance(main, names),
        tuple(traits),
        tuple(_apart(judge, main, level) for judge in names),
        tuple(_partings(show, said, fish)),
    )


def _grade(one: Said, fish: str) -> str | None:
    result = one.results.get(fish)
    possible = () if result is None else result.by_rules or result.possible
    return possible[0] if len(possible) == 1 else None


def _score(one: Said, fish: str) -> Decimal | None:
    result = one.results.get(fish)
    return None if result is None else result.score


def _alike(
    what: str, name: str, title: str, level: Level, values: Values, word: Any, read_by: Sequence[str] = ()
) -> Alike:
    spoken = {key: each for key, each in values.items() if len(each) > 1}
    parted = {_fish_of(key) for key, each in spoken.items() if len(set(each.values())) > 1}
    against: dict[tuple[float, float], set[str]] = {}
    for key, each in spoken.items():
        for pair in combinations(sorted(set(each.values())), 2):
            against.setdefault(pair, set()).add(_fish_of(key))
    words = None
    if level != INTERVAL and against:
        (one, other), fish = max(against.items(), key=lambda item: len(item[1]))
        words = (word(one), word(other), len(fish))
    fish_named = {_fish_of(key) for key in spoken}
    found = alpha(values, level)
    interval = None if found is None else alpha_interval(values, level)
    return Alike(what, name, title, level, found, interval, len(fish_named), len(parted), words, tuple(read_by))


def _fish_of(key: Hashable) -> str:
    return str(key[0] if isinstance(key, tuple) else key)


@frozen
class _Show:
    """The standards by which fish are graded."""

    every: tuple[Rules, ...]
    of: Mapping[str, Rules]
    titles: Mapping[str, str]

    @property
    def scored(self) -> bool:
        return any(rules.sections for rules in self.every)

    @property
    def traits(self) -> dict[str, Trait]:
        return {name: trait for rules in self.every for name, trait in rules.traits.items()}

    def said(self, one: Said, fish: str, trait: str) -> Reading | None:
        """What a judge said of a trait of a fish, by word or by silence; None where that is nothing, or not sure."""
        record, rules = one.records.get(fish), self.of.get(fish, self.every[0])
        if record is None or trait not in rules.traits:
            return None
        spoken = trait in record.own or is_assumed(rules, trait, record.readings)
        reading = record.readings.get(trait) if spoken else None
        return reading if reading is not None and is_sure(rules.traits[trait].kind, reading) else None


def _of_traits(show: _Show, said: Sequence[Said], fish: Sequence[str]) -> Iterator[Alike]:
    read_by: dict[str, dict[str, None]] = {}
    for part in (part for rules in show.every for part in rules.parts):
        for trait in traits_in(part):
            read_by.setdefault(trait.name, {})[f"{part.head} {part.name}"] = None
    for name, trait in show.traits.items():
        level = _level(trait.kind)
        if level is None:
            continue
        readings: dict[str, dict[str, Reading]] = {}
        for each in fish:
            spoken = ((one.judge, show.said(one, each, name)) for one in said)
            readings[each] = {judge: reading for judge, reading in spoken if reading is not None}
        if any(readings.values()):
            values, word = _numbered(trait.kind, readings)
            title = show.titles.get(name, name)
            yield _alike(TRAIT, name, title, level, values, word, tuple(read_by.get(name, ())))


def _level(kind: Kind) -> Level | None:
    match kind:
        case Scale():
            return ORDINAL
        case Number() | Count():
            return INTERVAL
        case Choice() | YesNo() | Places() | Label():
            return NOMINAL
        case _:
            return None


def _numbered(kind: Kind, readings: Mapping[str, Mapping[str, Reading]]) -> tuple[Values, Any]:
    """What judges said as numbers, of places for each place by itself; and what says such a number in words."""
    if isinstance(kind, Places):
        placed: Values = {
            (fish, place): {
                judge: float(bool(reading.sure >> bit & 1))
                for judge, reading in said.items()
                if isinstance(reading, PlaceSet)
            }
            for fish, said in readings.items()
            for bit, place in enumerate(kind.places)
        }
        return placed, lambda value: "named" if value else "not named"
    if isinstance(kind, Label):
        texts = sorted({str(one) for said in readings.values() for one in said.values()})
        return {
            fish: {judge: float(texts.index(str(one))) for judge, one in said.items()}
            for fish, said in readings.items()
        }, lambda value: texts[int(value)]
    words = words_of(kind) if isinstance(kind, Scale | Choice | YesNo) else ()

    def number(one: Reading) -> float:
        return one.low if isinstance(one, Span) else float(one.bit_length() - 1) if isinstance(one, int) else 0.0

    return {
        fish: {judge: number(one) for judge, one in said.items()} for fish, said in readings.items()
    }, lambda value: words[int(value)].replace("_", " ")


def _complete(values: Values, judges: Sequence[str]) -> list[Hashable]:
    return [fish for fish, said in values.items() if all(judge in said for judge in judges)]


def _fleiss(values: Values, judges: Sequence[str], grades: int) -> float | None:
    fish = _complete(values, judges)
    if not fish or len(judges) < 2:
        return None
    return fleiss(
        [[sum(int(-one) == grade for one in values[each].values()) for grade in range(grades)] for each in fish]
    )


def _concordance(values: Values, judges: Sequence[str]) -> float | None:
    fish = _complete(values, judges)
    return concordance([[values[each][judge] for each in fish] for judge in judges]) if len(fish) > 1 else None


def _apart(judge: str, values: Values, level: Level) -> JudgeApart:
    others = {fish: {name: one for name, one in said.items() if name != judge} for fish, said in values.items()}
    both = [
        (said[judge], sum(others[fish].values()) / len(others[fish]))
        for fish, said in values.items()
        if judge in said and others[fish]
    ]
    shift = sum(own - rest for own, rest in both) / len(both) if both and level == INTERVAL else None
    order = rho([own for own, _ in both], [rest for _, rest in both]) if len(both) > 1 else None
    return JudgeApart(judge, len(both), alpha(others, level), shift, order)


def _partings(show: _Show, said: Sequence[Said], fish: Sequence[str]) -> Iterator[Parting]:
    """The fish on which judges differ in grade or score, those first on which they part most."""
    found: list[tuple[tuple[float, ...], Parting]] = []
    order = [grade.name for grade in show.every[0].grades]
    for name in fish:
        results = [one.results[name] for one in said if name in one.results]
        if len(results) < 2:
            continue
        grades = Counter(grade for one in said if (grade := _grade(one, name)) is not None)
        places = [order.index(grade) for grade in grades]
        low, high = min(float(one.score_low) for one in results), max(float(one.score_high) for one in results)
        if len(grades) < 2 and low == high:
            continue
        told = tuple(sorted(grades.items(), key=lambda item: order.index(item[0])))
        differing = tuple(_differing(show, said, name))
        apart = max(places, default=0) - min(places, default=0)
        found.append(((-apart, low - high), Parting(name, told, low, high, differing)))
    yield from (parting for _, parting in sorted(found, key=lambda each: each[0]))


def _differing(show: _Show, said: Sequence[Said], fish: str) -> Iterator[tuple[str, str]]:
    for name, trait in show.traits.items():
        if _level(trait.kind) is None:
            continue
        spoken = [found for one in said if (found := show.said(one, fish, name)) is not None]
        times = Counter(_shown(trait.kind, one) for one in spoken)
        if len(times) > 1:
            words = ", ".join(f"{word} ({number})" for word, number in times.most_common())
            yield show.titles.get(name, name), words


def _shown(kind: Kind, reading: Reading) -> str:
    if isinstance(kind, Places) and isinstance(reading, PlaceSet):
        return " ".join(words_in(kind, reading.sure)).replace("_", " ") or "none"
    return show_reading(kind, reading).replace("_", " ")
