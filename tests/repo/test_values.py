"""Classes of values do all that those of attrs do, though they learn part of it later."""

from __future__ import annotations

import pickle
from fractions import Fraction
from typing import Any

import attrs
import pytest

from koirules import values


@values.frozen
class Pond:
    name: str
    fish: tuple[int, ...] = ()
    remark: str = attrs.field(default="", eq=False, repr=False)
    depth: Fraction | None = attrs.field(default=None, eq=lambda depth: None if depth is None else round(depth))


@values.define
class Net:
    name: str
    mended: list[str] = attrs.Factory(list)


@values.frozen(eq=False)
class Tub:
    name: str


@values.frozen
class Marked:
    name: str

    def __hash__(self) -> int:
        return 7

    def __repr__(self) -> str:
        return "marked"


@values.frozen
class Bowl:
    name: str

    def __eq__(self, other: object) -> bool:
        return True

    def __hash__(self) -> int:
        return 1


def made_by_attrs(cls: Any, **asked: Any) -> Any:
    """The same class as attrs makes it at once."""
    fields = {
        one.name: attrs.field(default=one.default, eq=one.eq_key or one.eq, repr=one.repr) for one in attrs.fields(cls)
    }
    return attrs.make_class(cls.__name__, fields, **asked, slots=True, order=False)


@pytest.mark.parametrize(("cls", "asked"), [(Pond, {"frozen": True}), (Net, {}), (Tub, {"frozen": True, "eq": False})])
def test_values_compare_and_show_themselves_as_those_of_attrs(cls: Any, asked: dict[str, Any]) -> None:
    plain = made_by_attrs(cls, **asked)
    assert repr(cls("long pond")) == repr(plain("long pond"))
    assert (cls.__hash__ is None) == (plain.__hash__ is None)
    for one, other in [("a", "a"), ("a", "b")]:
        assert (cls(one) == cls(other)) == (plain(one) == plain(other))
        assert (cls(one) != cls(other)) == (plain(one) != plain(other))
    assert cls("a") != plain("a")
    assert cls("a").__eq__("a") is NotImplemented


def test_what_counts_for_nothing_is_not_compared_and_a_key_is() -> None:
    assert Pond("a", remark="deep") == Pond("a") == Pond("a", remark="cold")
    assert Pond("a", depth=Fraction(9, 10)) == Pond("a", depth=Fraction(11, 10)) != Pond("a", depth=Fraction(2))
    assert len({Pond("a", depth=Fraction(9, 10)), Pond("a", depth=Fraction(11, 10)), Pond("b")}) == 2
    assert repr(Pond("a", remark="deep")) == "Pond(name='a', fish=(), depth=None)"


def test_what_a_class_says_itself_stays() -> None:
    assert hash(Marked("a")) == 7
    assert repr(Marked("a")) == "marked"
    assert Marked("a") == Marked("a") != Marked("b")
    assert Bowl("a") == Bowl("b")


def test_they_are_made_once() -> None:
    @values.frozen
    class Fish:
        name: str

    first = Fish.__eq__
    assert Fish("a") == Fish("a")
    assert Fish.__eq__ is not first
    assert first(Fish("a"), Fish("a")) is True
    later = Fish.__eq__
    assert Fish("a") == Fish("a")
    assert Fish.__eq__ is later
    assert Fish.__eq__.__qualname__ == f"{Fish.__qualname__}.__eq__"


def test_a_subclass_has_its_own() -> None:
    @values.frozen
    class Koi(Pond):
        age: int = 0

    assert Koi("a") != Pond("a")
    assert Koi("a", age=1) != Koi("a", age=2)
    assert "age=1" in repr(Koi("a", age=1))


def test_they_cannot_be_changed_and_are_pickled() -> None:
    pond = Pond("a", (1, 2))
    with pytest.raises(attrs.exceptions.FrozenInstanceError):
        pond.name = "b"  # type: ignore[misc]
    assert pickle.loads(pickle.dumps(pond)) == pond
    assert attrs.evolve(pond, name="b") == Pond("b", (1, 2))
