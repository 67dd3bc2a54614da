"""The outline of a file: its statements by their titles, criteria inside their sections; and what can be folded away."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from attrs import field

from koirules.editing.meaning import part_of
from koirules.language import statements as st
from koirules.language.parse.reader import Read
from koirules.problems import Place
from koirules.standard.inherit.merging import head_of, name_of
from koirules.values import define, frozen


@define
class Entry:
    """A statement in the outline. named: where its name stands. place: all of it, of a section with its criteria."""

    head: str
    name: str
    title: str
    place: Place
    named: Place
    inside: list[Entry] = field(factory=list)


def outline(read: Read) -> list[Entry]:
    """The entries of a file, in its order."""
    entries: list[Entry] = []
    section: Entry | None = None
    for statement in read.rules.statements:
        entry = _entry(statement)
        part = part_of(statement)
        if isinstance(part, st.Section):
            section = entry
        elif isinstance(part, st.Points | st.Extra) and section is not None:
            section.inside.append(entry)
            section.place = section.place.to(entry.place)
            continue
        entries.append(entry)
    return entries


def _entry(statement: st.Statement) -> Entry:
    match statement:
        case st.Header(title=title, place=place):
            return Entry("standard", title.text, "", place, title.place)
        case st.Drop(head=head, name=name, place=place):
            return Entry("drop", name.text, head, place, name.place)
        case st.Rename(to=to, title=title, place=place):
            return Entry("rename", to.text, "" if title is None else title.text, place, to.place)
        case _:
            part = part_of(statement)
            if part is None:
                return Entry("replace", "standard", "", statement.place, statement.place)
            if isinstance(part, st.Sample | st.Phrase):
                return Entry(head_of(part), part.title.text, "", statement.place, part.title.place)
            if isinstance(part, st.Silence):
                named = ", ".join(entry.stated.trait.text for entry in part.entries)
                return Entry("silence", named, "", statement.place, part.name.place)
            if isinstance(part, st.Carry):
                named = ", ".join(word.text for word in part.traits)
                return Entry("carry", named, "", statement.place, part.name.place)
            label = "" if part.title is None else part.title.text
            return Entry(head_of(part), name_of(part), label, statement.place, part.name.place)


@frozen
class Fold:
    """Lines that can be folded under the first of them, counted from 1, both in. remark: they are remarks."""

    first: int
    last: int
    remark: bool = False


def folds(read: Read) -> list[Fold]:
    """What can be folded: statements of several lines, sections with their criteria, blocks of remarks."""
    found = [Fold(s.place.line, s.place.end_line) for s in read.rules.statements if s.place.end_line > s.place.line]
    found += [
        Fold(entry.place.line, entry.place.end_line)
        for entry in outline(read)
        if entry.inside and entry.place.end_line > entry.place.line
    ]
    lines = read.rules.text.split("\n")
    alone = [c.place.line for c in read.rules.comments if lines[c.place.line - 1].lstrip()[:1] in {"#", "\uff03"}]
    found += [Fold(first, last, remark=True) for first, last in _runs(alone) if last > first]
    # One fold begins on a line; the largest is the one that is wanted.
    largest: dict[int, Fold] = {}
    for fold in sorted(found, key=lambda fold: (fold.first, -fold.last)):
        largest.setdefault(fold.first, fold)
    return list(largest.values())


def _runs(lines: Sequence[int]) -> Iterator[tuple[int, int]]:
    first, last = 0, -1
    for line in sorted(set(lines)):
        if line != last + 1:
            if first:
                yield first, last
            first = line
        last = line
    if first:
        yield first, last
