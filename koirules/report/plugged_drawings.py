"""The drawings that plugins bring, for this room, which lies below that of plugins and is handed them when it is imported."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from koirules.values import define, frozen
from koirules.vocabulary.drawings import Drawing


@frozen
class PluggedDrawing:
    """A drawing of a plugin. plugin: the plugin as problems name it."""

    drawing: Drawing
    plugin: str


@define
class _Plugged:
    load: Callable[[], Mapping[str, PluggedDrawing]] = dict


_plugged = _Plugged()


def use_drawings(load: Callable[[], Mapping[str, PluggedDrawing]]) -> None:
    """Say where the drawings of plugins come from. load: called each time when one is looked for."""
    _plugged.load = load


def plugged_drawings() -> Mapping[str, PluggedDrawing]:
    """The drawings of the installed plugins, by name."""
    return _plugged.load()
