"""Classes of values as attrs makes them, which learn to compare and to show themselves when somebody first asks them to.

A command compares and prints the values of a few of the classes that it imports. attrs compiles `__eq__`, `__hash__` and
`__repr__` for each of them beforehand, which takes as long as all else about a class. Here the first call of one of the three has
attrs make them; from then on the class is as if attrs had made it whole.
"""

from __future__ import annotations

from collections.abc import Callable, Set
from typing import TYPE_CHECKING, Any

import attrs

if TYPE_CHECKING:
    from attrs import define as define  # noqa: PLC0414 - so that it may be imported from here
    from attrs import frozen as frozen  # noqa: PLC0414
else:

    def frozen(cls=None, **asked):
        """`attrs.frozen`."""
        return _decorator(attrs.frozen, asked, {"__eq__", "__hash__"})(cls)

    def define(cls=None, **asked):
        """`attrs.define`."""
        return _decorator(attrs.define, asked, {"__eq__", "__hash__"} if asked.get("frozen") else {"__eq__"})(cls)


_UNDERSTOOD = {"eq", "repr", "slots", "frozen"}
"""What attrs may be asked for; with anything else it makes the class whole at once, as with what it makes of bases."""


def _decorator(made_by: Any, asked: dict[str, Any], compared: set[str]) -> Callable[[type | None], Any]:
    def decorated(cls: type | None) -> Any:
        if cls is None:
            return decorated
        own = cls.__dict__.keys()
        if not asked.keys() <= _UNDERSTOOD or cls.__bases__ != (object,) or own & {"__eq__", "__ne__"}:
            return made_by(cls, **asked)
        made: Any = made_by(cls, **{**asked, "eq": False, "repr": False})
        if asked.get("repr", True) and "__repr__" not in own:
            made.__repr__ = _stand_in(made, "__repr__", {"__repr__"})
        if asked.get("eq", True):
            later = compared - own
            for name in later:
                setattr(made, name, _stand_in(made, name, later))
            if not {"__hash__"} & (later | own):
                made.__hash__ = None
        return made

    return decorated


def _stand_in(cls: type, name: str, later: Set[str]) -> Callable[..., Any]:
    def stand_in(*given: Any) -> Any:
        whole = _whole(cls, later)
        for each in later:
            setattr(cls, each, getattr(whole, each))
        return getattr(whole, name)(*given)

    stand_in.__name__, stand_in.__qualname__ = name, f"{cls.__qualname__}.{name}"
    return stand_in


def _whole(cls: Any, wanted: Set[str]) -> type:
    """A class with the same fields for which attrs has made some methods."""
    fields = {
        one.name: attrs.field(init=False, eq=one.eq_key or one.eq, order=False, hash=one.hash, repr=one.repr)
        for one in attrs.fields(cls)
    }
    repr_, eq = "__repr__" in wanted, "__eq__" in wanted
    made: type = attrs.make_class(
        cls.__qualname__, fields, order=False, frozen=True, slots=True, init=False, repr=repr_, eq=eq
    )
    return made
