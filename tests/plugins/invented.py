"""Invented plugins for tests, and what holds for each that is left out."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Any

from koirules.hooks import Drawing, RecordReader, ResultWriter, Subcommand, Unit, hookimpl
from koirules.plugins import Registry, registry_with
from koirules.problems import Problem
from koirules.vocabulary.kinds import Scale
from koirules.vocabulary.traits import Addition, Trait, Vocabulary

NET = Trait("net", "net", Scale(("faint", "clear")))


class Gives:
    """A plugin that gives these vocabularies and rule sets, and by the hooks of version 2 what `more` has for each."""

    KOIRULES_API = 2

    def __init__(self, *vocabularies: Any, rulesets: Any = None, name: str = "invented", **more: Any) -> None:
        self.__name__ = name
        self.vocabularies = vocabularies
        self.rulesets = {} if rulesets is None else rulesets
        self.more = more

    @hookimpl
    def koirules_vocabularies(self) -> Sequence[Vocabulary]:
        return self.vocabularies

    @hookimpl
    def koirules_rulesets(self) -> Mapping[str, Path]:
        return self.rulesets

    @hookimpl
    def koirules_subcommands(self) -> Sequence[Subcommand]:
        return self.more.get("subcommands", ())

    @hookimpl
    def koirules_record_readers(self) -> Sequence[RecordReader]:
        return self.more.get("readers", ())

    @hookimpl
    def koirules_result_writers(self) -> Sequence[ResultWriter]:
        return self.more.get("writers", ())

    @hookimpl
    def koirules_additions(self) -> Sequence[Addition]:
        return self.more.get("additions", ())

    @hookimpl
    def koirules_units(self) -> Sequence[Unit]:
        return self.more.get("units", ())

    @hookimpl
    def koirules_drawings(self) -> Sequence[Drawing]:
        return self.more.get("drawings", ())


def lace(*traits: Any, name: str = "lace", **rest: Any) -> Vocabulary:
    return Vocabulary(name, name, traits or (NET,), **rest)


def with_kind(kind: Any) -> Gives:
    return Gives(lace(Trait("net", "net", kind)))


def only_problem(registry: Registry) -> Problem:
    (problem,) = registry.problems
    return problem


def assert_left_out(registry: Registry) -> None:
    """Nothing of a bad plugin is left, all else is there, and its problems are warnings that name it."""
    plain = registry_with()
    assert registry.varieties == plain.varieties
    assert registry.vocabularies == plain.vocabularies
    assert registry.rulesets == plain.rulesets
    assert registry.sources == plain.sources
    assert registry.problems
    for problem in registry.problems:
        assert problem.warning
        assert "invented" in str(problem.site)
