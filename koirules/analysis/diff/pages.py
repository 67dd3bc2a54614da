"""The statements of a standard by kind and name, and in which section each criterion stands."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from koirules.language import statements as st
from koirules.standard.inherit.merging import head_of, name_of
from koirules.values import frozen

Key = tuple[str, str]
"""Head word and name; a second sample of one title has a number behind it."""


@frozen
class Entry:
    """A statement and the section that it stands in, "" for what stands in none."""

    statement: st.Part
    section: str = ""


@frozen
class Page:
    """The header and the statements of a standard, whole with its bases, in their order."""

    header: st.Header
    entries: Mapping[Key, Entry]

    @classmethod
    def of(cls, statements: Iterable[st.Statement]) -> Page:
        """The page of statements that a checker has passed."""
        entries: dict[Key, Entry] = {}
        header, section = None, ""
        for statement in statements:
            match statement:
                case st.Header():
                    header = statement
                    continue
                case st.Replace() | st.Drop() | st.Rename():
                    continue
                case st.Section(name=name):
                    section = name.text
                case _:
                    pass
            head, name_here = head_of(statement), name_of(statement)
            number = 1
            while (head, name_here) in entries:  # samples of one title
                number += 1
                name_here = f"{name_of(statement)} ({number})"
            inside = isinstance(statement, st.Points | st.Extra)
            entries[head, name_here] = Entry(statement, section if inside else "")
        if header is None:
            raise AssertionError("a checked standard without a header")
        return cls(header, entries)

    def keys(self, heads: Sequence[str], section: str | None = None) -> list[Key]:
        """The keys of some kinds of statement, in their order; section: only of criteria in it."""
        return [
            key
            for key, entry in self.entries.items()
            if key[0] in heads and (section is None or entry.section == section)
        ]

    @property
    def statements(self) -> tuple[st.Statement, ...]:
        """All statements, the header first."""
        return (self.header, *(entry.statement for entry in self.entries.values()))
