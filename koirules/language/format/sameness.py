"""Whether two texts read as the same statements, wherever these stand."""

from __future__ import annotations

from typing import Any

import attrs

from koirules.language.parse.reader import Read
from koirules.language.statements import Statement
from koirules.problems import Place


def is_same(one: Read, other: Read) -> bool:
    """Whether two texts read without problems as the same statements in the same order, and hold as many remarks."""
    return (
        not other.problems
        and len(one.rules.comments) == len(other.rules.comments)
        and len(one.rules.statements) == len(other.rules.statements)
        and all(
            first is second or unplaced(first) == unplaced(second)
            for first, second in zip(one.rules.statements, other.rules.statements, strict=True)
        )
    )


def unplaced(statement: Statement) -> dict[str, Any]:
    """A statement as plain data, without its places."""
    return attrs.asdict(statement, filter=lambda _, value: not isinstance(value, Place))
