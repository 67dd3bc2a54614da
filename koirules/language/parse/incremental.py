"""The statements of a file as they were read last: a text that changes a little is read again in little time."""

from __future__ import annotations

from typing import Any

import attrs

from koirules.language.statements import Statement
from koirules.problems import Place


class Memory:
    """What the statements of one file were read as, by their text. It holds those of the last reading and no others."""

    def __init__(self) -> None:
        self._known: dict[str, tuple[int, Statement]] = {}
        self._next: dict[str, tuple[int, Statement]] = {}

    def recalled(self, text: str, offset: int) -> Statement | None:
        """The statement of a text that has been read, as it stands behind so many lines; None where it has not."""
        found = self._known.get(text)
        if found is None:
            return None
        was, statement = found
        return statement if was == offset else _moved(statement, offset - was)

    def keep(self, text: str, offset: int, statement: Statement) -> None:
        """Remember what a text behind so many lines was read as."""
        self._next[text] = (offset, statement)

    def copy(self) -> Memory:
        """A memory that knows as much, for a reading that is only tried."""
        tried = Memory()
        tried._known = dict(self._known)
        return tried

    def settle(self) -> None:
        """End a reading: what it did not come across is forgotten."""
        self._known, self._next = self._next, {}


def _moved(node: Any, by: int) -> Any:
    """A node of the syntax so many lines further down."""
    kind: Any = type(node)
    if kind is Place:
        return Place(node.file, node.line + by, node.column, node.end_line + by, node.end_column)
    if kind is tuple:
        return tuple([_moved(each, by) for each in node]) if node else node
    names = _NAMES.get(kind)
    if names is None:
        names = _NAMES[kind] = tuple(each.name for each in attrs.fields(kind)) if attrs.has(kind) else ()
    return kind(*[_moved(getattr(node, name), by) for name in names]) if names else node


_NAMES: dict[type, tuple[str, ...]] = {}
"""The fields of each kind of node, none of what is no node."""
