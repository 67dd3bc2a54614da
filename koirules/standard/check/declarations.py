"""What a file declares by name: house traits and settings, and the rules that every name obeys."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from decimal import ROUND_CEILING, ROUND_FLOOR, Decimal

from attrs import evolve

from koirules.language import statements as st
from koirules.language.syntax import Title, Word
from koirules.problems import Edit, Place, Problem, measuring, naming, parts, reading, values
from koirules.standard.numbers import MOST, decimals, dimension_of, held, unit_of, written
from koirules.standard.parts import Setting
from koirules.standard.titles import Titled
from koirules.vocabulary.expected import range_of
from koirules.vocabulary.kinds import Choice, Count, Kind, Label, Number, Places, Scale, YesNo, shortest
from koirules.vocabulary.measures import Constant
from koirules.vocabulary.traits import Better, Trait
from koirules.vocabulary.units import UNITS, Unit
from koirules.vocabulary.words import NOT_STEPS, NOT_TRAITS, RESERVED, is_name, scripts_in

MOST_STEPS = 64
MOST_COUNT = 1_000_000


def titled(title: Title | None, name: str) -> Titled:
    """A title, or the name where there is none."""
    return Titled(name.replace("_", " "), {}) if title is None else Titled(title.text, dict(title.others))


def maybe_titled(title: Title | None) -> Titled | None:
    """The words of a `say`, where there are some."""
    return None if title is None else Titled(title.text, dict(title.others))


class Names:
    """The names that a file has given so far, by kind."""

    def __init__(self, problems: list[Problem]) -> None:
        self.problems = problems
        self.places: dict[tuple[str, str], Place] = {}

    def take_value(
        self, word: Word, vocabulary: Mapping[str, Trait], variety: str, reserved: frozenset[str] = RESERVED
    ) -> bool:
        """Give a name to a trait, term or setting, which share one set of names with the traits of the variety."""
        if word.text in vocabulary:
            self.problems.append(naming.named_like_trait(word.place, word.text, variety))
            return False
        return self.take("value", "trait, term or setting", word, reserved)

    def take(self, group: str, kind: str, word: Word, reserved: frozenset[str] = RESERVED) -> bool:
        """Give a name to something of a kind; False, with a problem, where the name is not free or not fit."""
        good = self.fit(word, reserved)
        first = self.places.get((group, word.text))
        if first is not None:
            self.problems.append(naming.named_twice(word.place, kind, word.text, first))
            return False
        self.places[group, word.text] = word.place
        return good

    def fit(self, word: Word, reserved: frozenset[str] = RESERVED) -> bool:
        """Whether a word can be a name at all."""
        if word.text in reserved:
            self.problems.append(reading.reserved_as_name(word.place, word.text))
            return False
        if not is_name(word.text):
            scripts = sorted((script.capitalize() for script in scripts_in(word.text)), reverse=True)
            mixed = len(scripts) > 1
            self.problems.append(
                reading.mixed_scripts(word.place, word.text, scripts)
                if mixed
                else reading.not_a_number(word.place, word.text)
            )
            return False
        return True


def house_traits(
    declared: Iterable[st.HouseTrait], vocabulary: Mapping[str, Trait], variety: str, names: Names
) -> dict[str, Trait]:
    """The traits that the file declares itself."""
    made: dict[str, Trait] = {}
    for statement in declared:
        name = statement.name
        free = names.take_value(name, vocabulary, variety, NOT_TRAITS)
        kind = _kind(statement.kind, names.problems)
        if not free or kind is None:
            continue
        label = titled(statement.title, name.text)
        better = {None: Better.NEITHER, "more": Better.MORE, "less": Better.LESS}[statement.better]
        # In a unit, a house trait is measured until somebody says otherwise, and a rule file has no words for that.
        by_eye = not isinstance(kind, Label) and not (isinstance(kind, Number) and kind.unit is not None)
        made[name.text] = Trait(name.text, label.text, kind, better, titles=label.others, by_eye=by_eye)
    return made


def _kind(kind: st.KindWritten, problems: list[Problem]) -> Kind | None:
    match kind.word:
        case "yes_no":
            return YesNo()
        case "label":
            return Label()
        case "count":
            return _count(kind, problems)
        case "number":
            return _number(kind, problems)
        case word:
            return _words(kind, word, problems)


def _count(kind: st.KindWritten, problems: list[Problem]) -> Kind | None:
    high = Decimal(0) if kind.high is None else kind.high.value
    if decimals(high) or not 1 <= high <= MOST_COUNT:
        problems.append(values.out_of_bounds(kind.place, "The end of a count, a whole number,", "1", "1,000,000"))
        return None
    return Count(int(high))


def _number(kind: st.KindWritten, problems: list[Problem]) -> Kind | None:
    if kind.low is None or kind.high is None:
        raise AssertionError("the grammar gives a number without its range")
    unit = None if kind.unit is None else UNITS[kind.unit]
    symbol = kind.high.unit or kind.low.unit
    if unit is None and symbol is not None:
        low, high = (written(evolve(q, unit=None) if q.unit == symbol else q) for q in (kind.low, kind.high))
        problems.append(values.unit_behind_the_range(kind.place, symbol, f"number in {symbol} from {low} to {high}"))
        return None
    ends: list[Decimal] = []
    for end in (kind.low, kind.high):
        own = unit if end.unit is None else unit_of(end)
        if unit is not None and own is not None and own.dimension != unit.dimension:
            problems.append(parts.needs_unit(end.place, "the range", unit.symbol, None))
            return None
        exact = end.value if unit is None or own is None or own is unit else unit.from_held(own.to_held(end.value))
        in_held = exact if unit is None else unit.to_held(exact)
        if unit is not None and decimals(exact) <= 6 < decimals(in_held) and unit.per != 1:
            problems.append(_not_held(kind, unit))
            return None
        if decimals(exact) > 6 or decimals(in_held) > 6:
            problems.append(values.not_exact(end.place, written(end), 6))
            return None
        if abs(in_held) > MOST:
            problems.append(values.out_of_bounds(end.place, "The range", "-1,000,000", "1,000,000"))
            return None
        ends.append(exact)
    if ends[0] >= ends[1]:
        problems.append(parts.range_backwards(kind.place, shortest(ends[0]), shortest(ends[1])))
        return None
    return Number(unit, ends[0], ends[1])


def _not_held(kind: st.KindWritten, unit: Unit) -> Problem:
    """A range in thirds and the like of the unit in which it is held: no whole millionths, by which evaluators go."""
    if kind.low is None or kind.high is None:
        raise AssertionError("the grammar gives a number without its range")
    low, high = (UNITS[end.unit or unit.symbol].to_held(end.value) for end in (kind.low, kind.high))
    ends = (low.to_integral_value(ROUND_FLOOR), high.to_integral_value(ROUND_CEILING))
    held = f"number in {unit.dimension.value} from {shortest(ends[0])} to {shortest(ends[1])}"
    return values.range_not_held(kind.place, unit.symbol, unit.told, held)


def _words(kind: st.KindWritten, word: str, problems: list[Problem]) -> Kind | None:
    good = True
    seen: set[str] = set()
    for step in kind.words:
        if step.text in NOT_STEPS or (word == "places" and step.text == "none"):
            problems.append(naming.reserved_step(step.place, step.text))
            good = False
        elif step.text in seen:
            problems.append(naming.repeated_step(step.place, step.text))
            good = False
        seen.add(step.text)
    if len(kind.words) < 2 and word != "places":
        problems.append(naming.too_few_steps(kind.place, word))
        good = False
    if len(kind.words) > MOST_STEPS:
        problems.append(naming.too_many_steps(kind.place, word, MOST_STEPS))
        good = False
    texts = tuple(step.text for step in kind.words)
    if not good:
        return None
    match word:
        case "scale":
            return Scale(texts)
        case "choice":
            return Choice(texts)
        case _:
            return Places(texts)


def settings(
    declared: Iterable[st.Setting], vocabulary: Mapping[str, Trait], variety: str, names: Names
) -> dict[str, Setting]:
    """The settings that the file declares."""
    made: dict[str, Setting] = {}
    for statement in declared:
        free = names.take_value(statement.name, vocabulary, variety)
        setting = _setting(statement, names.problems)
        if free and setting is not None:
            made[setting.name] = setting
    return made


def _bare_setting(statement: st.Setting) -> Problem | None:
    """The problem of a setting without the unit that its range has."""
    symbol = next((end.unit for end in (statement.low, statement.high) if end is not None and end.unit), None)
    if statement.value.unit is not None or symbol is None:
        return None
    place = statement.value.place
    edit = Edit(place, f"{written(statement.value)} {symbol}")
    return parts.needs_unit(place, statement.name.text, symbol, edit)


def _setting(statement: st.Setting, problems: list[Problem]) -> Setting | None:
    value = held(statement.value, problems)
    ends = [value, value]
    bare = _bare_setting(statement)
    if bare is not None:
        problems.append(bare)
        return None
    for i, end in enumerate((statement.low, statement.high)):
        if end is None:
            continue
        if dimension_of(end) != dimension_of(statement.value):
            unit = statement.value.unit
            edit = Edit(end.place, f"{written(end)} {unit}") if unit and end.unit is None else None
            problems.append(parts.needs_unit(end.place, statement.name.text, unit or "a plain number", edit))
            return None
        ends[i] = held(end, problems)
    low, high = ends
    if value is None or low is None or high is None:
        return None
    if statement.low is not None and statement.high is not None:
        if low >= high:
            problems.append(parts.range_backwards(statement.low.place, written(statement.low), written(statement.high)))
            return None
        if not low <= value <= high:
            problems.append(
                parts.outside_range(
                    statement.value.place, written(statement.value), written(statement.low), written(statement.high)
                )
            )
            return None
    return Setting(
        statement.name.text,
        titled(statement.title, statement.name.text),
        unit_of(statement.value),
        value,
        low,
        high,
        statement.low is not None,
        statement.place,
    )


def check_constants(made: Mapping[str, Setting], constants: Iterable[Constant], problems: list[Problem]) -> None:
    """Check the settings that have the name of a constant of the variety: they are what its measures go by."""
    for constant in constants:
        setting = made.get(constant.name)
        if setting is None:
            continue
        kind = constant.kind
        dimension = None if setting.unit is None else setting.unit.dimension
        if dimension != kind.dimension or not kind.held_low <= setting.low <= setting.high <= kind.held_high:
            within = range_of(kind)
            problems.append(measuring.constant_of_another_kind(setting.place, constant.name, within))
