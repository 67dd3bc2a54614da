"""Measures at work on invented records: what they give where less is known must hold what they give where more is."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence, Set
from random import Random

from attrs import evolve

from koirules.api import Standard, read_standard
from koirules.plugins import Registry
from koirules.problems import Cell, StandardError, measuring
from koirules.results.record import Record
from koirules.standard.measured import formulas_left_out, measures_of, unsound_formulas
from koirules.testing.made_records import made_records
from koirules.testing.whole_rules import whole_rules
from koirules.vocabulary.kinds import Kind, words_of
from koirules.vocabulary.measures import Computed
from koirules.vocabulary.readings import PlaceSet, Reading, Span, show_reading
from koirules.vocabulary.traits import Variety

_LEFT_OUT, _WIDENED = 0.3, 0.3
_RAN_INTO_ERROR = "measure-failed"


def of_measures(variety: Variety, registry: Registry, number: int) -> Iterator[str]:
    """What is wrong with the measures of a variety, a sentence each: one that fails, one that is not sound.

    Sound: a trait that is derived while an input is missing, or not sure, holds what is derived of the same fish in full.
    What only helps a measure to be more exact (`helped_by`) stays as it is.
    """
    for problem in unsound_formulas(variety):
        yield f"{problem.cause} {problem.mend}"
    for one in formulas_left_out(variety):
        problem = measuring.formula_of_no_trait(Cell("measures"), one.trait, one.expression)
        yield f"{problem.cause} {problem.mend}"
    derived = [name for measure in measures_of(variety) for name in measure.outputs]
    if not derived:
        return
    helping = {name for measure in variety.measures if isinstance(measure, Computed) for name in measure.helped_by}
    try:
        standard = read_standard(whole_rules(variety).text, "everything.koi", registry)
    except StandardError:
        return  # told where the rule file is tried out
    raw = [trait for name, trait in variety.traits.items() if name not in derived]
    made = made_records(raw, number, missing=0, unsure=0)
    read = [standard.reader.read(record, str(place)) for place, record in enumerate(made)]
    whole = [record for record in read if isinstance(record, Record)]
    random = Random(0)  # noqa: S311 - nobody's secret
    less = [evolve(record, readings=_less(record.readings, standard, helping, random)) for record in whole]
    yield from _compared(standard, whole, less, derived)


def _compared(
    standard: Standard, whole: Sequence[Record], less: Sequence[Record], derived: Sequence[str]
) -> Iterator[str]:
    full, partly = (standard.measured(records, "invented records") for records in (whole, less))
    for problem in (*full.problems, *partly.problems):
        if problem.code == _RAN_INTO_ERROR:
            yield f"{problem.cause}"
    told: set[str] = set()
    for one, other in zip(full.records, partly.records, strict=True):
        if one.doubts:
            continue  # what follows lies outside of what a trait can be: there is no such fish
        for name in derived:
            narrow, wide = one.readings.get(name), other.readings.get(name)
            if narrow is not None and wide is not None and name not in told and not holds(wide, narrow):
                told.add(name)
                kind = standard.traits[name].kind
                yield (
                    f"the measure of {name} is not sound: it gives {show_reading(kind, narrow)} of an invented record, and "
                    f"{show_reading(kind, wide)} where less of it is known"
                )


def holds(wide: Reading, narrow: Reading) -> bool:
    """Whether everything that one reading could be, another could be too."""
    match wide, narrow:
        case Span(low, high), Span(inner_low, inner_high):
            return low <= inner_low and inner_high <= high
        case PlaceSet(), PlaceSet():
            return wide.holds(narrow)
        case int(bits), int(inner):
            return not inner & ~bits
        case _:
            return wide == narrow


def _less(readings: Mapping[str, Reading], standard: Standard, helping: Set[str], random: Random) -> dict[str, Reading]:
    """The same readings, some left out and some widened to what could be; those that help stay."""
    less: dict[str, Reading] = {}
    for name, reading in readings.items():
        drawn = 1.0 if name in helping else random.random()
        if drawn >= _LEFT_OUT:
            widen = drawn < _LEFT_OUT + _WIDENED
            less[name] = _wider(standard.traits[name].kind, reading, random) if widen else reading
    return less


def _wider(kind: Kind, reading: Reading, random: Random) -> Reading:
    match reading:
        case Span(low, high):
            width = abs(high) * 0.1 * random.random()
            return Span(low - width, high + width)
        case PlaceSet(sure, possible, _, most):
            sure &= random.getrandbits(len(words_of(kind)))
            return PlaceSet(sure, possible, random.randint(sure.bit_count(), reading.least), most)
        case int(bits):
            return bits | 1 << random.randrange(len(words_of(kind)))
        case _:
            return reading  # a label or a map is written or it is not
