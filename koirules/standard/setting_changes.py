"""Changes of settings for a run."""

from __future__ import annotations

import re
from collections.abc import Mapping
from decimal import Decimal

from attrs import evolve

from koirules.problems import Problem, parts
from koirules.standard.numbers import MOST, MOST_DECIMALS, decimals
from koirules.standard.parts import Rules, Setting
from koirules.vocabulary.kinds import shortest
from koirules.vocabulary.nearness import near
from koirules.vocabulary.units import UNITS, WRITTEN_OTHERWISE, Unit

# An exponent is no unit: the rules have no such way of writing a number.
_WRITTEN = re.compile(r"\s*([+-]?[0-9]+(?:\.[0-9]+)?)(?![0-9.]*[eE][+-]?[0-9])\s*(\S*)\s*\Z")
_MOST_DIGITS = 400  # of the greatest float, and some


def change_settings(
    rules: Rules, settings: Mapping[str, Setting], changes: Mapping[str, str | int | float | Decimal]
) -> dict[str, Setting] | tuple[Problem, ...]:
    """The settings with some values changed, or every problem of the changes."""
    made = dict(settings)
    problems: list[Problem] = []
    for name, written in changes.items():
        setting = rules.settings.get(name)
        if setting is None:
            guess = near(name, rules.settings)
            known = ", ".join(rules.settings) or "none"
            mend = f'Did you mean "{guess}"?' if guess else f"This standard has: {known}."
            problems.append(parts.bad_setting(name, "there is no such setting", mend))
            continue
        value = _value(setting, written)
        if isinstance(value, Problem):
            problems.append(value)
        else:
            made[name] = evolve(setting, value=value)
    return tuple(problems) if problems else made


def _value(setting: Setting, written: str | float | Decimal) -> Decimal | Problem:
    found = _WRITTEN.match(_as_text(written))
    unit = setting.unit
    if found is None:
        return _problem(setting, f'"{written}" is no number', f"Write a number{_in(unit)}.")
    number = Decimal(found.group(1))
    if decimals(number) > MOST_DECIMALS:
        return _problem(setting, f"it has more than {MOST_DECIMALS} decimals", "Round it.")
    symbol = WRITTEN_OTHERWISE.get(found.group(2), found.group(2))
    if symbol:
        given = UNITS.get(symbol)
        if given is None or unit is None or given.dimension is not unit.dimension:
            return _problem(setting, f'"{symbol}" is not a unit of it', f"Give it{_in(unit) or ' as a plain number'}.")
        unit = given
    # What lies out of every bound is not converted: with thousands of digits that would be slow and inexact.
    value = number if unit is None or abs(number) > MOST * 10 else unit.to_held(number)
    if setting.whole and value != value.to_integral_value():
        return _problem(setting, "it holds a number of fish", "Give it a whole number.")
    if not setting.changeable and value != setting.value:
        return _problem(setting, "it has no range", "Give it one in the rule file: `from … to …`.")
    if not setting.low <= value <= setting.high:
        low, high = (
            shortest(end if setting.unit is None else setting.unit.from_held(end))
            for end in (setting.low, setting.high)
        )
        return _problem(
            setting, "the value lies outside its range", f"Take one from {low} to {high}{_in(setting.unit)}."
        )
    return value


def _as_text(written: str | float | Decimal) -> str:
    """A number in its plain form, without an exponent; what is no number at all as it is."""
    if isinstance(written, bool | str):
        return str(written)
    exact = Decimal(repr(float(written))) if isinstance(written, float) else Decimal(written)
    # Only so far as bounds and decimals can tell; `1e999999` would be a text of a million digits.
    plain = exact.is_finite() and abs(exact.adjusted()) < _MOST_DIGITS
    return format(exact, "f") if plain else str(written)


def _in(unit: Unit | None) -> str:
    return "" if unit is None else f" in {unit.symbol}"


def _problem(setting: Setting, why: str, mend: str) -> Problem:
    return parts.bad_setting(setting.name, why, mend)
