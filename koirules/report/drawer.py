"""Draws records by the drawing that their subject names: the koi from above, which is ours, or one of a plugin.

A drawing that fails takes nothing down: its record stands on the page without a picture, and the problem names the plugin.
"""

from __future__ import annotations

import sys
from collections.abc import Iterable, Iterator, Mapping
from contextlib import redirect_stdout
from decimal import Decimal
from threading import Thread

from attrs import field

from koirules.languages import ENGLISH, Tongue
from koirules.problems import Problem, plugging
from koirules.problems.failing import failure_told
from koirules.report.plugged_drawings import PluggedDrawing, plugged_drawings
from koirules.report.sketch_markup import SketchError, SoundSketch, sound
from koirules.report.views import SketchView, View
from koirules.report.views_of_fish import view_now, views_of
from koirules.results.record import Record
from koirules.standard.parts import Rules, Setting
from koirules.values import define, frozen
from koirules.vocabulary.colour_readings import ColourReadings
from koirules.vocabulary.drawings import Drawing, Recorded, Value
from koirules.vocabulary.kinds import Choice, Colours, Count, Label, Number, Patches, Places, Scale, YesNo
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.readings import PlaceSet, Reading, Span, is_sure, words_in
from koirules.vocabulary.subject import FISH_FROM_ABOVE
from koirules.vocabulary.traits import Trait

PATIENCE = 5.0
"""So many seconds may a drawing take for one record."""

ROOM = (640, 480)
"""Width and height that a picture is given on a page, in pixels."""

_NAMED = 3
"""So many records are named of those that a drawing failed for in the same way."""


@frozen
class _Failure:
    """Why there is no sketch. bad: whether the drawing answered, with what cannot stand on a page."""

    why: str
    bad: bool = False


@define
class Drawer:
    """Draws the records of one standard, and gathers what went wrong.

    drawings: those of plugins by name, None for the installed ones. patience: in seconds, for each record.
    """

    rules: Rules
    settings: Mapping[str, Setting] = field(factory=dict)
    tongue: Tongue = ENGLISH
    drawings: Mapping[str, PluggedDrawing] | None = None
    patience: float = PATIENCE
    _failed: dict[_Failure, list[str]] = field(factory=dict, init=False)
    _given_up: bool = field(default=False, init=False)

    def views_of(self, readings: Mapping[str, Reading], title: str) -> tuple[View, ...]:
        """The views of one: as it is, a koi also at the lengths that its pattern is asked for; none where nothing draws it."""
        if self.rules.subject.drawing == FISH_FROM_ABOVE:
            return views_of(self.rules, self.settings, readings, self.tongue)
        return tuple(self._sketched(readings, title))

    def views_by_fish(self, records: Iterable[Record]) -> dict[str, tuple[View, ...]]:
        """The views of each record by its name, without those that nothing draws."""
        seen = {one.fish: self.views_of(one.readings, one.fish) for one in records}
        return {fish: views for fish, views in seen.items() if views}

    def view_now(self, readings: Mapping[str, Reading], title: str) -> View | None:
        """The view of a record as it is; None where nothing draws it."""
        if self.rules.subject.drawing == FISH_FROM_ABOVE:
            return view_now(self.rules, readings, self.tongue)
        return next(self._sketched(readings, title), None)

    def take_problems(self) -> tuple[Problem, ...]:
        """What went wrong since the last time: warnings, one for each way in which the drawing failed."""
        found = self._one()
        failed, self._failed = self._failed, {}
        if found is None:
            return ()
        name, plugin = found.drawing.name, found.plugin
        return tuple(
            plugging.bad_drawing(plugin, name, _listed(titles), failure.why)
            if failure.bad
            else plugging.drawing_failed(plugin, name, _listed(titles), failure.why)
            for failure, titles in failed.items()
        )

    def _one(self) -> PluggedDrawing | None:
        drawings = plugged_drawings() if self.drawings is None else self.drawings
        return drawings.get(self.rules.subject.drawing)

    def _sketched(self, readings: Mapping[str, Reading], title: str) -> Iterator[SketchView]:
        found = self._one() if self.rules.subject.drawing and not self._given_up else None
        if found is None:
            return
        recorded = Recorded(title, values_of(self.rules.traits, readings), *ROOM, self.tongue.language or "")
        made = self._asked(found.drawing, recorded)
        if isinstance(made, _Failure):
            self._failed.setdefault(made, []).append(title)
        else:
            yield SketchView(made)

    def _asked(self, drawing: Drawing, recorded: Recorded) -> SoundSketch | _Failure:
        """What a drawing gives for a record. What it prints goes to standard error: standard output may be data."""
        came: list[SoundSketch | _Failure] = []

        def ask() -> None:
            try:
                came.append(sound(drawing.draw(recorded)))
            except SketchError as error:
                came.append(_Failure(str(error), bad=True))
            except BaseException as error:  # a stranger's code may raise anything, and extensions in Rust no Exception
                came.append(_Failure(failure_told(error, drawing.draw)))

        # A thread cannot be stopped; as a daemon it does not keep the process alive either.
        thread = Thread(target=ask, name=f"drawing {drawing.name}", daemon=True)
        with redirect_stdout(sys.stderr):
            thread.start()
            thread.join(self.patience)
        if came:
            return came[0]
        # It may hang for every record, and nobody waits for a thousand.
        self._given_up = True
        return _Failure(f"no answer within {self.patience:g} seconds; it is not asked again")


def values_of(traits: Mapping[str, Trait], readings: Mapping[str, Reading]) -> Mapping[str, Value]:
    """What was surely recorded, as drawings take it."""
    return {
        name: value
        for name, reading in readings.items()
        if (trait := traits.get(name)) is not None and (value := _value(trait, reading)) is not None
    }


def _value(trait: Trait, reading: Reading) -> Value | None:
    if not is_sure(trait.kind, reading):
        return None
    match trait.kind, reading:
        case (Scale() | Choice() as kind, int(bits)):
            return words_in(kind, bits)[0]
        case YesNo() as kind, int(bits):
            return words_in(kind, bits)[0] == "yes"
        case Places() as kind, PlaceSet(sure, _):
            return words_in(kind, sure)
        case Count(), Span(low, _):
            return int(low)
        case Number(unit=unit), Span(low, _):
            return low if unit is None else float(unit.from_held(Decimal(repr(float(low)))))
        case (Label(), str() as told) | (Patches(), PatchMap() as told) | (Colours(), ColourReadings() as told):
            return told
        case _:
            return None


def _listed(titles: list[str]) -> str:
    named = ", ".join(title or "a record" for title in titles[:_NAMED])
    more = len(titles) - _NAMED
    return f"{named} and {more} more" if more > 0 else named
