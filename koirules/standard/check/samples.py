"""Checks the samples of a file: each trait's value, and the names that its outcomes use."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from decimal import Decimal

from attrs import evolve

from koirules.language import statements as st
from koirules.language.syntax import Quantity
from koirules.problems import Edit, Place, Problem, naming, parts, sentences, values
from koirules.standard.check.expressions import Typer
from koirules.standard.check.sectioning import MOST_WORTH
from koirules.standard.numbers import decimals, dimension_of, held, share_meant, written
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
from koirules.vocabulary.units import Dimension


def check_sample(statement: st.Sample, typer: Typer, names: Mapping[str, Sequence[str]]) -> Sample | None:
    """A sample, None where it has problems. names: of each kind of part, those that outcomes may name."""
    problems = typer.problems
    before = len(problems)
    record: dict[str, Reading] = {}
    cannot_tell: set[str] = set()
    for i, fact in enumerate(statement.facts):
        trait = typer.traits.get(fact.trait.text)
        if trait is None and fact.trait.text == "stays" and i > 0:
            problems.append(_comma_before_outcome(statement.facts[i - 1], fact))
            continue
        if trait is None and not typer.vocabulary_known:
            continue  # the file is refused at its header, and no trait can be missed
        if trait is None:
            guess = near(fact.trait.text, typer.traits)
            elsewhere = typer.elsewhere.get(fact.trait.text)
            problems.append(naming.unknown_name(fact.trait.place, fact.trait.text, guess, elsewhere))
            continue
        if trait.name in record or trait.name in cannot_tell:
            problems.append(parts.fact_twice(fact.trait.place, trait.name))
        if fact.not_known:
            cannot_tell.add(trait.name)
            continue
        reading = fact_reading(fact, trait, problems)
        if reading is not None:
            record[trait.name] = reading
    for outcome in statement.outcomes:
        _check_outcome(outcome, names, typer.sections, problems)
    if len(problems) > before:
        return None
    return Sample(statement.title.text, record, statement.outcomes, statement.place, frozenset(cannot_tell))


def _comma_before_outcome(before: st.Fact, fact: st.Fact) -> Problem:
    # `, stays open` reads as a fact, the only outcome of two plain words.
    last, first = before.place, fact.place
    between = Place(last.file, last.end_line, last.end_column, first.line, first.column)
    return sentences.comma_before_outcome(between, " " if last.end_line == first.line else "\n  ")


def _check_outcome(
    outcome: st.Outcome, names: Mapping[str, Sequence[str]], worths: Mapping[str, int], problems: list[Problem]
) -> None:
    """worths: of each section, in hundredths."""
    kind, word = outcome.names, outcome.name
    if word is not None and word.text not in names[kind]:
        known = names[kind]
        problems.append(naming.unknown_part(word.place, kind, word.text, near(word.text, known), known))
        return
    most, what = sum(worths.values()), "A score here"
    if word is not None and kind == "section":
        most, what = worths.get(word.text, MOST_WORTH), "What a section gives"
    if outcome.low is not None and outcome.high is not None:
        if outcome.low > outcome.high:
            problems.append(parts.wrong_outcome(outcome.place))
        elif outcome.low < 0 or outcome.low * 100 > most:
            worth = shortest(Decimal(most) / 100)
            problems.append(values.out_of_bounds(outcome.place, what, "0", worth))


def fact_reading(fact: st.Fact, trait: Trait, problems: list[Problem]) -> Reading | None:
    """The reading of a written value; None, with a problem, where it is no value of its trait."""
    kind = trait.kind
    match kind:
        case Number() | Count() if fact.numbers:
            return _span(fact.numbers, trait, kind, problems)
        case Scale() | Choice() | YesNo() if fact.words and not fact.bracketed:
            return _steps(fact, trait.name, kind, problems)
        case Places() if fact.so_many is not None:
            return _so_many(fact, fact.so_many, trait, kind, problems)
        case Places() if fact.numbers:
            problems.append(
                parts.wrong_fact(fact.place, trait.name, 'places, or how many of them, such as "1 of them"')
            )
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
    if not good:
        return None
    texts = [word.text for word in fact.words]
    if not fact.words_to:
        return step_bits(kind, texts)
    if not isinstance(kind, Scale):
        problems.append(parts.wrong_fact(fact.place, name, "several words joined with `or`, since they have no order"))
        return None
    first, last = (known.index(text) for text in texts)
    if first > last:
        problems.append(parts.range_backwards(fact.place, *texts))
        return None
    return step_bits(kind, known[first : last + 1])


def _so_many(fact: st.Fact, said: st.SoMany, trait: Trait, kind: Places, problems: list[Problem]) -> PlaceSet | None:
    """Places that are in, and how many others."""
    before = len(problems)
    for word in (*fact.words, *said.among):
        if word.text not in kind.places:
            guess = near(word.text, kind.places)
            problems.append(naming.unknown_step(word.place, word.text, f'"{trait.name}"', kind.places, guess))
    texts = [word.text for word in (*fact.words, *said.among)]
    if len(set(texts)) < len(texts):
        problems.append(parts.wrong_fact(fact.place, trait.name, "each place once"))
    if len(problems) > before:
        return None
    sure = step_bits(kind, [word.text for word in fact.words])
    among = [word.text for word in said.among] or [place for place in kind.places if place not in texts]
    number = _span(said.numbers, evolve(trait, kind=Count(len(among))), Count(len(among)), problems)
    if number is None:
        return None
    least = 0 if said.bound == "at most" else int(number.low)
    most = len(among) if said.bound == "at least" else int(number.high)
    size = sure.bit_count()
    return PlaceSet(sure, sure | step_bits(kind, among), size + least, size + most).narrowed()


def _span(numbers: Sequence[Quantity], trait: Trait, kind: Number | Count, problems: list[Problem]) -> Span | None:
    ends: list[float] = []
    first, last = numbers[0], numbers[-1]
    if first.unit is None and last.unit is not None:
        numbers = (evolve(first, unit=last.unit), last)  # `20 to 30 cm`, as a record may have it
    for number in numbers:
        if dimension_of(number) != (kind.dimension if isinstance(kind, Number) else None):
            # Where neither end has a unit, one behind the last is enough.
            problems.append(_unit_missing(last if number.unit is None else number, trait.name, kind))
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


def _unit_missing(number: Quantity, name: str, kind: Number | Count) -> Problem:
    wanted = kind.dimension if isinstance(kind, Number) else None
    both = share_meant(number) if wanted is Dimension.SHARE else None
    if both is not None:
        return values.share_needs_unit(number.place, f'"{name}"', *both)
    unit = kind.unit.symbol if isinstance(kind, Number) and kind.unit else "a plain number"
    bare = shortest(number.value)
    text = bare if wanted is None else f"{bare} {unit}"
    edit = Edit(number.place, text) if number.unit is None or wanted is None else None
    return parts.needs_unit(number.place, name, unit, edit)
