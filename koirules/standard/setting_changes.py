"""Changes of settings for a run."""

from __future__ import annotations

import re
from collections.abc import Mapping
from decimal import Decimal, InvalidOperation

from attrs import evolve

from koirules.problems import Problem, parts
from koirules.standard.parts import Rules, Setting
from koirules.vocabulary.kinds import shortest
from koirules.vocabulary.nearness import near
from koirules.vocabulary.units import UNITS, WRITTEN_OTHERWISE, Unit

_WRITTEN = re.compile(r"\s*([+-]?[0-9]+(?:\.[0-9]+)?)\s*(\S*)\s*\Z")


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
    found = _WRITTEN.match(str(written))
    unit = setting.unit
    if found is None:
        return _problem(setting, f'"{written}" is no number', f"Write a number{_in(unit)}.")
    try:
        number = Decimal(found.group(1))
    except InvalidOperation:
        return _problem(setting, f'"{written}" is no number', f"Write a number{_in(unit)}.")
    symbol = WRITTEN_OTHERWISE.get(found.group(2), found.group(2))
    if symbol:
        given = UNITS.get(symbol)
        if given is None or unit is None or given.dimension is not unit.dimension:
            return _problem(setting, f'"{symbol}" is not a unit of it', f"Give it{_in(unit) or ' as a plain number'}.")
        unit = given
    value = number if unit is None else unit.to_held(number)
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


def _in(unit: Unit | None) -> str:
    return "" if unit is None else f" in {unit.symbol}"


def _problem(setting: Setting, why: str, mend: str) -> Problem:
    return parts.bad_setting(setting.name, why, mend)
