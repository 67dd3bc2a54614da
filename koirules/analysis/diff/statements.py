"""What changed between two editions, by statement."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from attrs import evolve

from koirules.analysis.diff.aligning import Aligned
from koirules.analysis.diff.changes import Change, Detail, Kind
from koirules.analysis.diff.facets import Facet, Typed, facets_of, header_facets
from koirules.analysis.diff.meanings import SameWords
from koirules.analysis.diff.pages import Key
from koirules.analysis.diff.rechecking import vocabulary_of
from koirules.analysis.diff.reordering import moved, stands
from koirules.language.format.statements import statement_line
from koirules.results.parts_read import traits_beneath
from koirules.standard.derivations import TypedFormula, TypedMeasure, inputs_of
from koirules.standard.measured import needed_for
from koirules.standard.parts import Rules
from koirules.vocabulary.kinds import describe_kind
from koirules.vocabulary.traits import Trait

_COUNT = frozenset(
    {
        "setting",
        "trait",
        "term",
        "section",
        "points",
        "bonus",
        "penalty",
        "fault",
        "lift",
        "grade",
        "silence",
        "carry",
        "panel",
    }
)
"""The kinds of statement that can bear on a grade."""

_ROWS: Sequence[tuple[str, ...]] = (
    ("setting",),
    ("trait",),
    ("term",),
    ("section",),
    ("points", "bonus", "penalty"),
    ("fault", "lift"),
    ("grade",),
    ("silence",),
    ("carry",),
    ("panel",),
    ("alert",),
    ("round",),
    ("phrase",),
    ("sample",),
)
"""Kinds whose statements are told together, in the order of the language reference."""


def changes_between(both: Aligned) -> tuple[Change, ...]:
    """Every change from the older edition to the newer one."""
    found = [*_header(both), *_vocabulary(both)]
    placed = _placed(both)
    same = SameWords()
    old_typed, new_typed = Typed.of(both.old, same), Typed.of(both.new, same)
    for heads in _ROWS:
        gone = [key for key in both.old_page.keys(heads) if key not in both.new_page.entries]
        found.extend(_removed(both, key) for key in gone)
        for key in both.new_page.keys(heads):
            if key not in both.old_page.entries:
                found.append(_added(both, key))
                continue
            change = _changed(both, key, old_typed, new_typed, placed.get(key))
            if change is not None:
                found.append(change)
    return tuple(found)


def _header(both: Aligned) -> Iterator[Change]:
    old, new = header_facets(both.old_page.header), header_facets(both.new_page.header)
    details, _, _ = _details(old, new)
    if details:
        places = (both.old_page.header.place, both.new_page.header.place)
        yield Change(
            Kind.CHANGED,
            "standard",
            "",
            False,
            details,
            old_place=places[0],
            new_place=places[1],
        )


def _vocabulary(both: Aligned) -> Iterator[Change]:
    """Traits of the variety that are not what they were."""
    read = _hung_on(both.old) | _hung_on(both.new)
    old, new = vocabulary_of(both.old), vocabulary_of(both.new)
    for name in sorted(read & (old.keys() | new.keys())):
        one, other = both.old.traits.get(name), both.new.traits.get(name)
        if one is None or other is None:
            continue
        details, counts, _ = _details(_says(one, both.old), _says(other, both.new))
        if details:
            yield Change(Kind.CHANGED, "trait", name, counts, details)


def _hung_on(rules: Rules) -> frozenset[str]:
    """The traits that grades hang on, read or by what follows from them."""
    read = traits_beneath(rules)
    return read.union(*(inputs_of(one) for one in needed_for(rules.measures, read)))


def _says(trait: Trait, rules: Rules) -> list[Facet]:
    kind = describe_kind(trait.kind)
    told = [
        Facet("as", kind, kind),
        Facet("direction", trait.better.value, trait.better, counts=False),
        Facet("with growth", trait.growth.value, trait.growth),
    ]
    if trait.allometry is not None:
        power = f"{trait.allometry.alone:g} + {trait.allometry.with_b:g} b"
        told.append(Facet("as length to the power of", power, trait.allometry))
    for one in rules.measures:
        if trait.name in one.outputs:
            told.append(_follows(one))
            break
    return told


def _follows(measure: TypedMeasure) -> Facet:
    if isinstance(measure, TypedFormula):
        return Facet("follows as", measure.expression, measure.expression)
    return Facet("follows as", f"{measure.name} of {', '.join(measure.inputs)}", measure)


def _removed(both: Aligned, key: Key) -> Change:
    entry = both.as_written.entries[both.written[key]]
    head, name = both.written[key]
    line = statement_line(entry.statement)
    counts = head in _COUNT
    return Change(Kind.REMOVED, head, name, counts, section=entry.section, old=line, old_place=entry.statement.place)


def _added(both: Aligned, key: Key) -> Change:
    entry = both.new_page.entries[key]
    line = statement_line(entry.statement)
    return Change(Kind.ADDED, *key, key[0] in _COUNT, section=entry.section, new=line, new_place=entry.statement.place)


def _changed(both: Aligned, key: Key, old: Typed, new: Typed, place: Detail | None) -> Change | None:
    one, other = both.old_page.entries[key], both.new_page.entries[key]
    details, counts, reworded = _details(
        facets_of(one.statement, key[0], one.section, old), facets_of(other.statement, key[0], other.section, new)
    )
    written = both.as_written.entries[both.written[key]].statement
    before, after = statement_line(written), statement_line(other.statement)
    was = both.was.get(key, "")
    kind = Kind.CHANGED
    if place is not None:
        kind = Kind.CHANGED if details or was else Kind.MOVED
        details = (*details, place)
        counts = counts or key[0] == "grade"
    elif not details and not was:
        if not reworded and statement_line(one.statement) == after:
            return None
        kind, details = Kind.REWORDED, reworded
    return Change(
        kind,
        *key,
        counts and key[0] in _COUNT,
        details,
        was,
        other.section,
        before,
        after,
        written.place,
        other.statement.place,
    )


def _details(old: Sequence[Facet], new: Sequence[Facet]) -> tuple[tuple[Detail, ...], bool, tuple[Detail, ...]]:
    """What two statements say otherwise, whether any of it counts, and what they say in other words only."""
    ours, theirs = _by_what(old), _by_what(new)
    found: list[Detail] = []
    reworded: list[Detail] = []
    counts = False
    left = {what: facet for what, facet in ours.items() if what not in theirs}
    for what, facet in theirs.items():
        before = ours.get(what) or next((one for one in left.values() if one.meaning == facet.meaning), None)
        if before is not None:
            left.pop(before.what, None)
        if before is not None and before.meaning == facet.meaning:
            if before.words != facet.words or before.what != facet.what:
                reworded.append(Detail(what, _told(before, what), facet.words))
            continue
        counts |= facet.counts
        found.append(Detail(what, "" if before is None else before.words, facet.words))
    for facet in left.values():
        counts |= facet.counts
        found.append(Detail(facet.what, facet.words, ""))
    return tuple(found), counts, tuple(reworded)


def _told(facet: Facet, what: str) -> str:
    return facet.words if facet.what == what else f"{facet.what} {facet.words}"


def _by_what(facets: Sequence[Facet]) -> dict[str, Facet]:
    """Facets by what they are; several of one kind have numbers."""
    found: dict[str, Facet] = {}
    for facet in facets:
        what, number = facet.what, 1
        while what in found:
            number += 1
            what = f"{facet.what} ({number})"
        found[what] = evolve(facet, what=what)
    return found


def _placed(both: Aligned) -> Mapping[Key, Detail]:
    """Where what was moved within its row stands now, and stood before."""
    found: dict[Key, Detail] = {}
    rows = [(heads, None) for heads in _ROWS if heads[0] != "points"]
    sections = dict.fromkeys(name for _, name in both.new_page.keys(["section"]))
    for heads, section in [*rows, *((("points", "bonus", "penalty"), section) for section in sections)]:
        old, new = both.old_page.keys(heads, section), both.new_page.keys(heads, section)
        common = [[key for key in row if key in others] for row, others in ((old, set(new)), (new, set(old)))]
        for key in moved(*common):
            words = [stands(key, row, [name for _, name in row]) for row in common]
            if words[0] != words[1]:
                found[key] = Detail("stands", words[0], words[1])
    return found
