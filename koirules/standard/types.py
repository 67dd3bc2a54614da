"""The types of expressions."""

from __future__ import annotations

from koirules.values import frozen
from koirules.vocabulary.kinds import Choice, Colours, Count, Kind, Label, Number, Patches, Places, Scale, YesNo
from koirules.vocabulary.units import Dimension


@frozen
class Truth:
    """A condition, or a yes-or-no trait."""


@frozen
class Numeric:
    """A number: of a dimension, or bare where that is None; `whole` where it is a count."""

    dimension: Dimension | None
    whole: bool = False


@frozen
class Steps:
    """A scale (`ordered`) or a choice, by its words, the lowest first."""

    words: tuple[str, ...]
    ordered: bool


@frozen
class PlaceWords:
    """A set of places out of the given ones."""

    words: tuple[str, ...]


@frozen
class TextLabel:
    """Any text."""


@frozen
class PatternMap:
    """A map of patches, of which a rule can only ask whether it was recorded."""


@frozen
class ColourList:
    """Colour readings, of which a rule can only ask whether they were recorded."""


Type = Truth | Numeric | Steps | PlaceWords | TextLabel | PatternMap | ColourList


def type_of_kind(kind: Kind) -> Type:
    """The type of an expression that reads a trait of a kind."""
    match kind:
        case YesNo():
            return Truth()
        case Count():
            return Numeric(None, whole=True)
        case Number():
            return Numeric(kind.dimension)
        case Scale(words):
            return Steps(words, ordered=True)
        case Choice(words):
            return Steps(words, ordered=False)
        case Places(words):
            return PlaceWords(words)
        case Label():
            return TextLabel()
        case Patches():
            return PatternMap()
        case Colours():
            return ColourList()


def type_words(kind: Type) -> str:
    """A type as a part of a sentence: `a length`, `a scale (thin < fair < strong)`."""
    match kind:
        case Truth():
            return "a yes-or-no"
        case Numeric(None, whole):
            return "a count" if whole else "a plain number"
        case Numeric(Dimension.ANGLE, _):
            return "an angle in deg"
        case Numeric(Dimension.SHARE, _):
            return "a share in %"
        case Numeric(Dimension() as dimension, _):
            return f"a {dimension.word} in {dimension.value}"
        case Steps(words, ordered):
            return f"a scale ({' < '.join(words)})" if ordered else f"a choice ({', '.join(words)})"
        case PlaceWords():
            return "a set of places"
        case TextLabel():
            return "a label (any text)"
        case PatternMap():
            return "a map of patches"
        case ColourList():
            return "a list of colour readings"
        case _:
            raise AssertionError(kind)
