"""Derived traits as they will be: what was recorded is grown first, and then measured as it is measured now."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import chain, product
from typing import Any

from attrs import field

from koirules.measures.deriving import Measurer
from koirules.measures.growing_maps import grown_maps
from koirules.measures.growth import Grower, GrowthModel, across, cover_by_eye
from koirules.problems import RecordError
from koirules.standard.check.growing import Growing, follows_length, is_raw
from koirules.standard.derivations import inputs_of
from koirules.standard.measured import constant_settings, needed_for
from koirules.standard.parts import Rules, Setting
from koirules.values import define
from koirules.vocabulary.kinds import Count, Number, Patches
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.readings import PlaceSet, Reading, Span

_MOST_REMEMBERED = 100_000
"""So many grown maps are kept for another reading (a bound of computing)."""
_MOST_VARIANTS = 64
"""So many ways in which a fish may grow are followed up, beyond which nothing is said (a bound of computing)."""

Row = tuple[Reading | None, ...]


@define
class MeasuresAhead:
    """Works out derived traits at one length.

    target: the length in cm. keys: under which names each trait stands beside the record. inputs: what the measures read, and
    after it the traits of `by_eye`, which are told without a map as well: of each its name and on which maps it is measured.
    """

    target: float
    keys: Mapping[str, tuple[str, ...]]
    measurer: Measurer
    model: GrowthModel
    growers: Mapping[str, Grower]
    inputs: tuple[str, ...]
    by_eye: Mapping[str, frozenset[str]] = field(factory=dict)
    _found: dict[tuple[Row, Span], Mapping[str, Reading]] = field(factory=dict)

    @property
    def every_key(self) -> Iterator[str]:
        """The names of all of them."""
        return chain.from_iterable(self.keys.values())

    @classmethod
    def of(
        cls,
        rules: Rules,
        settings: Mapping[str, Setting],
        target: float,
        keys: Mapping[str, tuple[str, ...]],
        model: GrowthModel,
    ) -> MeasuresAhead:
        """What works out the traits of these keys."""
        measures = needed_for(rules.measures, keys)
        constants = constant_settings(rules.constants, settings)
        raw = {n: t for m in measures for n in inputs_of(m) if is_raw(t := rules.traits[n])}
        growers = {
            name: Grower.of(trait.kind, trait.allometry, target, model, is_length=name == rules.subject.grows_by)
            for name, trait in raw.items()
            if follows_length(trait) and trait.allometry is not None and isinstance(trait.kind, Number | Count)
        }
        wanted = frozenset(keys)
        growing = Growing(rules.traits, rules.measures)
        by_eye = {
            name: frozenset(
                each.name for each in growing.inputs(rules.traits[name]) or () if isinstance(each.kind, Patches)
            )
            for name in keys
            if rules.traits[name].white_from_sides
        }
        measurer = Measurer(measures, rules.traits, constants, wanted)
        return cls(target, keys, measurer, model, growers, (*raw, *by_eye), by_eye)

    def rows(self, rows: Sequence[Row], lengths: Sequence[Span]) -> list[Mapping[str, Reading]]:
        """What each fish will have, by key. rows: of each what was recorded of the inputs, in their order."""
        asked = list(dict.fromkeys(zip(rows, lengths, strict=True)))
        new = [one for one in asked if one not in self._found]
        if len(self._found) + len(new) > _MOST_REMEMBERED:
            self._found.clear()
            new = asked
        if new:
            self._found.update(zip(new, self._worked_out(new), strict=True))
        return [self._found[one] for one in zip(rows, lengths, strict=True)]

    def _worked_out(self, asked: Sequence[tuple[Row, Span]]) -> Iterator[Mapping[str, Reading]]:
        variants = [tuple(self._variants(*one)) for one in asked]
        flat = [row for rows in variants for row in rows]
        columns = {
            name: [row[i] for row in flat]
            for i, name in enumerate(self.inputs)
            if name not in self.by_eye and any(row[i] is not None for row in flat)
        }
        derived = self.measurer.derive(columns, len(flat))
        if derived.failed:
            raise RecordError(tuple(derived.failed))
        start = 0
        for rows, one in zip(variants, asked, strict=True):
            found: dict[str, Reading] = dict(self._seen(*one))
            for trait, keys in self.keys.items():
                column = derived.columns.get(trait, [None] * len(flat))[start : start + len(rows)]
                joined = _any_of(column)
                if joined is not None:
                    found.update(dict.fromkeys(keys, joined))
            start += len(rows)
            yield found

    def _seen(self, row: Row, length: Span) -> Iterator[tuple[str, Reading]]:
        """What is told of a fish without a map, by key."""
        readings = dict(zip(self.inputs, row, strict=True))
        for name, maps in self.by_eye.items():
            reading = readings[name]
            if isinstance(reading, Span) and all(readings[each] is None for each in maps):
                cover = cover_by_eye(self.model, reading, length, self.target)
                yield from ((key, cover) for key in self.keys[name])

    def _variants(self, row: Row, length: Span) -> Iterator[Row]:
        """The rows that a row can become; the row itself for a fish that is that long already, none where nothing is known."""
        if length.low >= self.target:
            yield row
            return
        ends = {across(self.model, end, self.target) for end in length}
        options: list[tuple[Reading | None, ...]] = []
        for name, reading in zip(self.inputs, row, strict=True):
            if isinstance(reading, PatchMap):
                # Of a fish that may be that long already, or to be drawn together by more or by less, nothing is known.
                sure = length.high < self.target and len(ends) == 1
                options.append(grown_maps(reading, *ends) if sure else ())
            elif name in self.growers and isinstance(reading, Span):
                options.append((self.growers[name].grown(*reading, *length),))
            else:
                options.append((reading,))
        yield from list(product(*options))[: _MOST_VARIANTS + 1]


def _any_of(column: Sequence[Reading | None]) -> Reading | None:
    """What could be any of several readings; None where there are none or too many, or where one of them is not known."""
    if not column or len(column) > _MOST_VARIANTS or any(reading is None for reading in column):
        return None
    first: Any = column[0]
    for reading in column[1:]:
        match first, reading:
            case Span(low, high), Span(least, most):
                first = Span(min(low, least), max(high, most))
            case PlaceSet(), PlaceSet():
                first = first.either(reading)
            case int(bits), int(others):
                first = bits | others
            case _:
                return None
    return first  # type: ignore[no-any-return]
