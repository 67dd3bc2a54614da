"""The hooks: all that a plugin author needs to read.

A plugin is an installed distribution with an entry point in the group `koirules` that names a module. The module marks its
functions with `hookimpl`. Each hook is called once, when the first command or library call needs it.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

import pluggy

from koirules.vocabulary.traits import Vocabulary

hookspec = pluggy.HookspecMarker("koirules")
hookimpl = pluggy.HookimplMarker("koirules")
"""Marks a function of a plugin as the answer to the hook of the same name."""


class Hooks:
    """The hook specifications."""

    @hookspec
    def koirules_vocabularies(self) -> Sequence[Vocabulary]:  # type: ignore[empty-body]
        """The vocabularies that the plugin gives: one for each variety, and shared ones that they include.

        Names must be new: a vocabulary or a trait that is already there (in the same variety) is a clash, and the plugin
        is left out with a report that names both.
        """

    @hookspec
    def koirules_rulesets(self) -> Mapping[str, Path]:  # type: ignore[empty-body]
        """The rule sets that the plugin ships: name to rule file, for commands that are given a name and no path."""
