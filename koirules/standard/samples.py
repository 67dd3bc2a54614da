"""Checks the samples of a file: each trait's value, and the names that its outcomes use."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from decimal import Decimal

from koirules.language import statements as st
from koirules.language.syntax import Quantity
from koirules.problems import Edit, Problem, naming, parts, values
from koirules.standard.expressions import Typer
from koirules.standard.numbers import decimals, dimension_of, held, written
from koirules.standard.parts import Sample
from koirules.vocabulary.kinds import (
    Choice,
    Count,
    Kind,
    Label,
    Number,
    Places,
    Scale,
    YesNo,
    describe_kind,
    shortest,
    words_of,
)
from koirules.vocabulary.nearness import near
from koirules.vocabulary.readings import PlaceSet, Reading, Span, step_bits, write_number
from koirules.vocabulary.traits import Trait


def check_sample(statement: st.Sample, typer: Typer, names: Mapping[str, Sequence[str]], most: int) -> Sample | None:
    """A sample, None where it has problems. names: the grades and faults that outcomes may name; most: hundredths."""
    problems = typer.problems
    before = len(problems)
    record: dict[str, Reading] = {}
    for fact in statement.facts:
        trait = typer.traits.get(fact.trait.text)
        if trait is None:
            guess = near(fact.trait.text, typer.traits)
            elsewhere = typer.elsewhere.get(fact.trait.text)
            problems.append(naming.unknown_name(fact.trait.place, fact.trait.text, guess, elsewhere))
            continue
        if trait.name in record:
            problems.append(parts.fact_twice(fact.trait.place, trait.name))
        reading = _reading(fact, trait, problems)
        if reading is not None:
            record[trait.name] = reading
    for outcome in statement.outcomes:
        _check_outcome(outcome, names, most, problems)
    if len(problems) > before:
        return None
    return Sample(statement.title.text, record, statement.outcomes, statement.place)


def _check_outcome(outcome: st.Outcome, names: Mapping[str, Sequence[str]], most: int, problems: list[Problem]) -> None:
    kind = {"comes out": "grade", "shows fault": "fault"}.get(outcome.what)
    if kind is not None and outcome.name is not None and outcome.name.text not in names[kind]:
        word, known = outcome.name, names[kind]
        problems.append(naming.unknown_part(word.place, kind, word.text, near(word.text, known), known))
    if outcome.low is not None and outcome.high is not None:
        if outcome.low > outcome.high:
            problems.append(parts.wrong_outcome(outcome.place))
        elif outcome.low < 0 or outcome.low * 100 > most:
            worth = shortest(Decimal(most) / 100)
            problems.append(values.out_of_bounds(outcome.place, "A score here", "0", worth))


def _reading(fact: st.Fact, trait: Trait, problems: list[Problem]) -> Reading | None:
    kind = trait.kind
    match kind:
        case Number() | Count() if fact.numbers:
            return _span(fact.numbers, trait, kind, problems)
        case Scale() | Choice() | YesNo() if fact.words and not fact.bracketed:
            return _steps(fact, trait.name, kind, problems)
        case Places() if fact.words:
            texts = [word.text for word in fact.words]
            if texts == ["none"]:
                return PlaceSet(0, 0)
            if not fact.bracketed and len(texts) > 1:
                problems.append(parts.wrong_fact(fact.place, trait.name, "places in a bracket, such as (tail, dorsal)"))
                return None
            bits = _steps(fact, trait.name, kind, problems)
            return None if bits is None else PlaceSet(bits, bits)
        case Label() if fact.text is not None:
            return fact.text.strip() or None
        case Label():
            problems.append(parts.wrong_fact(fact.place, trait.name, 'a text in quotes, such as "line A"'))
        case _:
            problems.append(parts.wrong_fact(fact.place, trait.name, _needs(kind)))
    return None


def _needs(kind: Kind) -> str:
    words = words_of(kind)
    return f"one of: {', '.join(words)}" if words else f"a {describe_kind(kind)}"


def _steps(fact: st.Fact, name: str, kind: Scale | Choice | YesNo | Places, problems: list[Problem]) -> int | None:
    known = words_of(kind)
    good = True
    for word in fact.words:
        if word.text not in known:
            problems.append(naming.unknown_step(word.place, word.text, f'"{name}"', known, near(word.text, known)))
            good = False
    return step_bits(kind, (word.text for word in fact.words)) if good else None


def _span(numbers: Sequence[Quantity], trait: Trait, kind: Number | Count, problems: list[Problem]) -> Span | None:
    ends: list[float] = []
    for number in numbers:
        wanted = kind.dimension if isinstance(kind, Number) else None
        if dimension_of(number) != wanted:
            unit = kind.unit.symbol if isinstance(kind, Number) and kind.unit else "a plain number"
            bare = shortest(number.value)
            text = bare if wanted is None else f"{bare} {unit}"
            edit = Edit(number.place, text) if number.unit is None or wanted is None else None
            problems.append(parts.needs_unit(number.place, trait.name, unit, edit))
            return None
        value = held(number, problems)
        if value is None:
            return None
        low, high = (kind.held_low, kind.held_high) if isinstance(kind, Number) else (Decimal(0), Decimal(kind.high))
        if isinstance(kind, Count) and decimals(value):
            problems.append(parts.wrong_fact(number.place, trait.name, "a whole number"))
            return None
        if not low <= value <= high:
            what = f'{written(number)} for "{trait.name}"'
            lowest, highest = write_number(float(low), kind), write_number(float(high), kind)
            problems.append(parts.outside_range(number.place, what, lowest, highest))
            return None
        ends.append(float(value))
    if ends[0] > ends[-1]:
        problems.append(parts.range_backwards(numbers[0].place, written(numbers[0]), written(numbers[-1])))
        return None
    return Span(ends[0], ends[-1])
