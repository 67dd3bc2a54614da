"""A part that comes later is there as any other, and is put together once."""

from __future__ import annotations

import copy
import pickle

import attrs
import pytest

from koirules.later import known_of, later, may_come_later
from koirules.values import frozen


@frozen
class Page:
    name: str
    lines: tuple[str, ...] = ()


may_come_later(Page, "lines")

CALLS: list[str] = []


def read() -> tuple[str, ...]:
    CALLS.append("read")
    return ("one", "two")


@pytest.fixture
def page() -> Page:
    CALLS.clear()
    return Page("a", later(read, about=2))


WHOLE = Page("a", ("one", "two"))


def test_it_is_read_once_and_when_it_is_asked_for(page: Page) -> None:
    assert page.name == "a"
    assert known_of(page, "lines") == 2
    assert CALLS == []
    assert page.lines == page.lines == ("one", "two")
    assert known_of(page, "lines") is None
    assert CALLS == ["read"]


def test_nobody_sees_a_difference(page: Page) -> None:
    assert [one.name for one in attrs.fields(Page)] == ["name", "lines"]
    assert repr(Page("a", later(read))) == repr(WHOLE)
    assert hash(Page("a", later(read))) == hash(WHOLE)
    assert page == WHOLE
    assert attrs.evolve(Page("a", later(read)), name="b") == Page("b", ("one", "two"))
    for made in (copy.copy(Page("a", later(read))), pickle.loads(pickle.dumps(Page("a", later(read))))):
        assert made == WHOLE


def test_it_cannot_be_set(page: Page) -> None:
    with pytest.raises(attrs.exceptions.FrozenInstanceError):
        page.lines = ()  # type: ignore[misc]
    assert page == WHOLE


def test_a_part_that_cannot_be_read_is_asked_for_again() -> None:
    def fails() -> tuple[str, ...]:
        raise OSError("not now")

    page = Page("a", later(fails))
    for _ in range(2):
        with pytest.raises(OSError, match="not now"):
            _ = page.lines
