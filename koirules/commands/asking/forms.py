"""How a trait is asked for in one or two short lines, and how its answer is read."""

from __future__ import annotations

from collections.abc import Mapping
from enum import Enum
from typing import TypeVar

from koirules.values import frozen
from koirules.vocabulary.cells import Misread, read_value
from koirules.vocabulary.expected import COLOURS_EXAMPLE, MAP_EXAMPLE, example_of, range_of
from koirules.vocabulary.kinds import (
    Choice,
    Colours,
    Count,
    Kind,
    Label,
    Number,
    Patches,
    Places,
    Scale,
    YesNo,
    words_of,
)
from koirules.vocabulary.readings import PlaceSet, Reading

_T = TypeVar("_T")


class Order(Enum):
    """What can be typed in place of an answer."""

    EXPLAIN = "?"
    CANNOT_TELL = "-"
    DONE = "d"
    BACK = "u"
    WRITE = "w"
    ASIDE = "s"
    STOP = "q"


DONE_KEY = "d the look is done"
"""The order by which what nobody mentioned counts as the page says, where it says so."""

KEYS = "? explains, - I can't tell, u one back, w write it as in a sheet, s set this one aside, q stop"
"""The orders in words."""

_ORDERS = {order.value: order for order in Order}
_LETTERS = [*"123456789", *(letter for letter in "abcdefghijklmnoprtvxyz" if letter not in _ORDERS)]


@frozen
class Unread:
    """Why what was typed is no answer."""

    words: str


@frozen
class Form:
    """How a trait is asked for.

    options: the words to choose from, by the key of each. single: whether one key is the answer.
    """

    kind: Kind
    options: Mapping[str, str]
    single: bool
    asks: str

    @property
    def listed(self) -> str:
        """The options in one line, or what to type."""
        if not self.options:
            return self.asks
        told = ", ".join(f"{key} {word.replace('_', ' ')}" for key, word in self.options.items())
        return f"{told}{self.asks}"

    def read(self, typed: str) -> Order | Reading | Unread | None:
        """What was typed; None where it was nothing."""
        text = typed.strip()
        return _ORDERS[text.lower()] if text.lower() in _ORDERS else self.written(text)

    def sheet(self, typed: str) -> Order | Reading | Unread | None:
        """What was typed as in a sheet: `-` and `u` are the orders that they are everywhere, unless they can be read."""
        text = typed.strip()
        read = self.written(text)
        order = _ORDERS.get(text.lower())
        return (
            order if order in {Order.CANNOT_TELL, Order.BACK} and (read is None or isinstance(read, Unread)) else read
        )

    def written(self, text: str) -> Reading | Unread | None:
        """What was typed as an answer, and surely no order."""
        kind = self.kind
        if isinstance(kind, YesNo) and text.isdecimal():
            return Unread(f'"{text}" is neither y nor n. {self._expected()}')  # 1 is the first word of other questions
        if isinstance(kind, Places):
            chosen = chosen_of(self.options, text)
            if chosen is not None:
                bits = sum(1 << kind.places.index(word) for word in chosen if word != "none")
                return PlaceSet(bits, bits) if "none" not in chosen or len(chosen) == 1 else Unread("0 is none at all.")
        word = self.options.get(text.lower(), text)
        reading = read_value(kind, word)
        if isinstance(reading, Misread):
            return Unread(f"{reading.cause} {self._expected()}")
        return reading

    def _expected(self) -> str:
        return "Type one of the keys." if self.options else f"{example_of(self.kind)}."


def form_of(kind: Kind) -> Form:
    """The form of a trait of some kind."""
    match kind:
        case YesNo():
            return Form(kind, {"y": "yes", "n": "no"}, single=True, asks="")
        case Scale() | Choice():
            return _choice(kind)
        case Places(places):
            options = {"0": "none", **{str(i): place for i, place in enumerate(places, 1)}}
            return Form(kind, options, single=False, asks="; one or more, then Enter")
        case Count():
            return Form(kind, {}, single=False, asks=f"How many ({range_of(kind)}), then Enter")
        case Number(unit):
            inside = f"in {unit.symbol} " if unit else ""
            plain = range_of(kind).replace(f" {unit.symbol}", "") if unit else range_of(kind)
            return Form(kind, {}, single=False, asks=f"A number {inside}({plain}), then Enter")
        case Label():
            return Form(kind, {}, single=False, asks="A name or word, then Enter")
        case Colours():
            return Form(kind, {}, single=False, asks=f"L*, a* and b*, such as {COLOURS_EXAMPLE}; then Enter")
        case Patches():
            return Form(kind, {}, single=False, asks=f"The patches, such as {MAP_EXAMPLE}; or none; then Enter")


def chosen_of(options: Mapping[str, _T], text: str) -> tuple[_T, ...] | None:
    """The options whose keys were typed, with spaces or commas between them; None where something else was."""
    keys = text.replace(",", " ").split()
    return tuple(dict.fromkeys(options[key] for key in keys)) if keys and all(key in options for key in keys) else None


def _choice(kind: Scale | Choice) -> Form:
    words = words_of(kind)
    if len(words) > len(_LETTERS):
        return Form(kind, {str(i): word for i, word in enumerate(words, 1)}, single=False, asks="; then Enter")
    return Form(kind, dict(zip(_LETTERS, words, strict=False)), single=True, asks="")
