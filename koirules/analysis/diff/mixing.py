"""Editions between two editions: the older one with some of the changes made.

What is left out of them (alerts, rounds, samples, words of reasons) changes no grade. Settings, traits and terms that only one of
the editions has are there where something reads them, since by themselves they change nothing.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence

from attrs import evolve

from koirules.analysis.diff.aligning import Aligned
from koirules.analysis.diff.changes import Change, Kind
from koirules.analysis.diff.following import settings_by_name
from koirules.analysis.diff.pages import Entry, Key
from koirules.analysis.diff.rechecking import measures_of, rechecked, vocabulary_of
from koirules.grading.single import Grader
from koirules.language import statements as st
from koirules.standard.check.needs import expressions_of
from koirules.standard.check.ordering import names_read
from koirules.standard.parts import Setting
from koirules.values import frozen
from koirules.vocabulary.traits import Trait

_DECLARED = ("setting", "trait", "term")
_CRITERIA = ("points", "bonus", "penalty")
_LIMITS = ("fault", "lift")


@frozen
class Unit:
    """Changes that can only be made together: one, or a section that comes or goes with its criteria."""

    changes: tuple[Change, ...]

    @property
    def about(self) -> str:
        """What it is about, in words."""
        return self.changes[0].about

    @property
    def adds(self) -> frozenset[Key]:
        """The grades and sections that come with it."""
        heads = {"grade", "section"}
        return frozenset((one.head, one.name) for one in self.changes if one.kind is Kind.ADDED and one.head in heads)


def units_of(changes: Sequence[Change], by_name: Collection[str] = ()) -> tuple[Unit, ...]:
    """The changes that can bear on a grade, by what can be made alone. by_name: settings that count without being read."""
    groups: dict[object, list[Change]] = {}
    whole = {(change.kind, change.name) for change in changes if change.head == "section"}
    for change in changes:
        unread = change.head in _DECLARED and change.name not in by_name
        if not change.counts or (unread and change.kind in {Kind.ADDED, Kind.REMOVED}):
            continue
        key: object = id(change)
        if change.head == "section" and change.kind in {Kind.ADDED, Kind.REMOVED}:
            key = (change.kind, change.name)
        elif change.head in _CRITERIA and (change.kind, change.section) in whole and change.kind is not Kind.CHANGED:
            key = (change.kind, change.section)
        groups.setdefault(key, []).append(change)
    return tuple(Unit(tuple(group)) for group in groups.values())


@frozen
class Mixer:
    """Makes editions between two. old, new: their graders, the older one in the names of the newer one."""

    both: Aligned
    old: Grader
    new: Grader

    def mixed(self, units: Collection[Unit]) -> Grader | None:
        """The older edition with some of the changes made; None where these do not hold together alone."""
        taken = {_key(change, self.both): change for unit in units for change in unit.changes}
        entries = {key: entry for key, entry in self._entries(taken) if key[0] not in _DECLARED}
        declared = self._declared(taken, entries)
        statements = self._laid(entries, declared, taken)
        if statements is None:
            return None
        both = (self.both.old, self.both.new)
        constants = {one.name: one for rules in reversed(both) for one in rules.constants}
        measures = measures_of(*both, [name for head, name in taken if head == "trait"])
        rules = rechecked(statements, self._vocabulary(taken, declared), both[1], measures, tuple(constants.values()))
        if rules is None:
            return None
        return Grader.of(rules, self._settings(rules.settings, taken))

    def with_needed(self, unit: Unit, units: Sequence[Unit]) -> tuple[Unit, ...]:
        """A change with those that bring the grades and sections which it speaks of, itself first."""
        needed: set[Key] = set()
        for change in unit.changes:
            entry = self.both.new_page.entries.get((change.head, change.name))
            if entry is not None and isinstance(entry.statement, st.Limit) and entry.statement.grade is not None:
                needed.add(("grade", entry.statement.grade.text))
            if entry is not None and entry.section:
                needed.add(("section", entry.section))
        return (unit, *(other for other in units if other is not unit and other.adds & needed))

    def _entries(self, taken: Mapping[Key, Change]) -> Iterator[tuple[Key, Entry]]:
        """The statements that only one edition has where they are to be there, and of those of both the one or the other."""
        old, new = self.both.old_page.entries, self.both.new_page.entries
        for key, entry in old.items():
            if key in new:
                yield key, new[key] if key in taken else entry
            elif key not in taken:
                yield key, entry
        for key, entry in new.items():
            if key not in old and key in taken:
                yield key, entry

    def _declared(self, taken: Mapping[Key, Change], entries: Mapping[Key, Entry]) -> dict[Key, Entry]:
        """The settings, traits and terms that something reads, and the settings that count by their name."""
        known: dict[str, tuple[Key, Entry]] = {}
        for page in (self.both.new_page, self.both.old_page):
            for key in page.keys(_DECLARED):
                known.setdefault(key[1], (key, page.entries[key]))
        for key, entry in self._entries(taken):
            if key[0] in _DECLARED:
                known[key[1]] = (key, entry)
        here = {key[1] for key, _ in self._entries(taken) if key[0] == "setting"}
        found: dict[Key, Entry] = {}
        waiting = [name for entry in entries.values() for name in _names_in(entry.statement)]
        waiting += sorted(here & settings_by_name(self.both.old, self.both.new))
        while waiting:
            name = waiting.pop()
            if name in known and known[name][0] not in found:
                key, entry = known[name]
                found[key] = entry
                waiting.extend(_names_in(entry.statement))
        return found

    def _laid(
        self, entries: Mapping[Key, Entry], declared: Mapping[Key, Entry], taken: Mapping[Key, Change]
    ) -> list[st.Statement] | None:
        """All statements in an order that holds; None where a criterion has no section."""
        sections = [key for key in self.both.new_page.entries if key[0] == "section" and key in entries]
        sections += [key for key in entries if key[0] == "section" and key not in sections]
        laid: list[st.Statement] = [self.both.new_page.header, *(entry.statement for entry in declared.values())]
        for section in sections:
            laid.append(entries[section].statement)
            laid.extend(
                entry.statement for key, entry in entries.items() if key[0] in _CRITERIA and entry.section == section[1]
            )
        homeless = [entry for key, entry in entries.items() if key[0] in _CRITERIA]
        if sum(isinstance(one, st.Points | st.Extra) for one in laid) != len(homeless):
            return None
        laid.extend(
            entry.statement
            for key, entry in entries.items()
            if key[0] in _LIMITS or key[0] in {"silence", "carry", "panel"}
        )
        laid.extend(entries[key].statement for key in self._grades(entries, taken))
        return [_wordless(statement) for statement in laid]

    def _grades(self, entries: Mapping[Key, Entry], taken: Mapping[Key, Change]) -> list[Key]:
        """The grades in order: those that came or were moved behind the one that they follow in the newer edition."""
        order = [key for key in self.both.old_page.keys(["grade"]) if key in entries]
        newer = self.both.new_page.keys(["grade"])
        for key in newer:
            change = taken.get(key)
            if change is None or not (change.kind is Kind.ADDED or any(one.what == "stands" for one in change.details)):
                continue
            order = [one for one in order if one != key]
            before = next((one for one in reversed(newer[: newer.index(key)]) if one in order), None)
            order.insert(0 if before is None else order.index(before) + 1, key)
        return order

    def _vocabulary(self, taken: Mapping[Key, Change], declared: Mapping[Key, Entry]) -> dict[str, Trait]:
        old, new = vocabulary_of(self.both.old), vocabulary_of(self.both.new)
        house = {key[1] for key in declared if key[0] == "trait"}
        found = {**new, **old, **{name: new[name] for name in new if ("trait", name) in taken}}
        return {name: trait for name, trait in found.items() if name not in house}

    def _settings(self, settings: Mapping[str, Setting], taken: Mapping[Key, Change]) -> dict[str, Setting]:
        """The settings with the values of the run that they belong to."""
        made: dict[str, Setting] = {}
        for name, setting in settings.items():
            runs = [one.reasoner.teller.settings.get(name) for one in (self.old, self.new)]
            first, second = runs if ("setting", name) not in taken else reversed(runs)
            run = first if first is not None else second
            made[name] = setting if run is None else evolve(setting, value=run.value)
        return made


def _key(change: Change, both: Aligned) -> Key:
    """The key of a statement in the names of the newer edition."""
    if change.kind is not Kind.REMOVED:
        return change.head, change.name
    return next(key for key, was in both.written.items() if was == (change.head, change.name))


def _names_in(statement: st.Statement) -> Iterator[str]:
    for expression in expressions_of(statement):
        yield from names_read(expression)
    if isinstance(statement, st.Silence):
        yield from (entry.stated.trait.text for entry in statement.entries)
    if isinstance(statement, st.Carry):
        yield from (trait.text for trait in statement.traits)


def _wordless(statement: st.Statement) -> st.Statement:
    """A statement without the words that its reason shows, which may name what is not there."""
    match statement:
        case st.Points() | st.Extra() | st.Limit() | st.Grade():
            return evolve(statement, say=None)
        case _:
            return statement
