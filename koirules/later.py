"""Parts of values that are put together when somebody first asks for them, and till then cost nothing.

Most commands need neither what is said of traits in notes nor the statements of a page as they were written; to import or read
these takes longer than to grade a batch. Whoever holds such a part sees no difference: it is there under its name, and compared,
shown and pickled as any other.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, TypeVar, cast

_T = TypeVar("_T")


class _Later:
    """A part that is not there yet. read: gives it. about: what is known of it without that."""

    __slots__ = ("about", "read")

    def __init__(self, read: Callable[[], object], about: Any) -> None:
        self.read = read
        self.about = about


class _Part(property):
    """A field that may come later, over the slot in which it is held."""

    def __init__(self, slot: Any) -> None:
        self.slot = slot
        super().__init__(self._given, slot.__set__)

    def _given(self, whole: object) -> object:
        held = self.slot.__get__(whole)
        if isinstance(held, _Later):
            held = held.read()
            self.slot.__set__(whole, held)
        return held


def later(read: Callable[[], _T], about: object = None) -> _T:
    """A part that `read` gives once it is asked for; only for fields that may come later. about: what is known of it."""
    return cast("_T", _Later(read, about))


def may_come_later(cls: type, *names: str) -> None:
    """Let fields of a class of values with slots hold a part that comes later."""
    for name in names:
        setattr(cls, name, _Part(cls.__dict__[name]))


def known_of(whole: object, name: str) -> Any:
    """What is known of a part that has not been asked for yet; None of one that is there."""
    held = type(whole).__dict__[name].slot.__get__(whole)
    return held.about if isinstance(held, _Later) else None
