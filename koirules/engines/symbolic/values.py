"""What else the solver knows of a fish that is not known yet: truths, levels, and sets of places."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import z3

from koirules.values import frozen


@frozen(eq=False)
class Bits:
    """A set of places: for each place whether it is in."""

    truths: tuple[Any, ...]


@frozen(eq=False)
class Cases:
    """One of several readings (levels as bits, a text, None), each with when it is that: exactly one of them holds."""

    each: tuple[tuple[Any, Any], ...]


class Logic:
    """And, or and not in one context, with what is known already left out."""

    def __init__(self, context: z3.Context) -> None:
        self.context = context

    def every(self, parts: Sequence[Any]) -> Any:
        """Where all hold."""
        open_parts = [part for part in parts if not isinstance(part, bool)]
        if any(part is False for part in parts):
            return False
        return True if not open_parts else open_parts[0] if len(open_parts) == 1 else z3.And(*open_parts)

    def some(self, parts: Sequence[Any]) -> Any:
        """Where any holds."""
        open_parts = [part for part in parts if not isinstance(part, bool)]
        if any(part is True for part in parts):
            return True
        return False if not open_parts else open_parts[0] if len(open_parts) == 1 else z3.Or(*open_parts)

    def no(self, part: Any) -> Any:
        """Where it does not hold."""
        return not part if isinstance(part, bool) else z3.Not(part)

    def chosen(self, test: Any, one: Any, other: Any) -> Any:
        """One truth where the test holds, else the other."""
        if isinstance(test, bool):
            return one if test else other
        return self.some([self.every([test, one]), self.every([self.no(test), other])])

    def truth(self, part: Any) -> Any:
        """A truth as a term."""
        return z3.BoolVal(part, self.context) if isinstance(part, bool) else part
