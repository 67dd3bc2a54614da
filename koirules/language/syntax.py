"""The syntax tree of a rule file: what stands there, with its place, before anybody asks what it means."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal

from koirules.problems import Place
from koirules.values import frozen


@frozen
class Word:
    """A name or a step, as written."""

    text: str
    place: Place


@frozen
class Title:
    """A label in quotes, with its further languages by two-letter code. repeated: a code that is given twice."""

    text: str
    others: Mapping[str, str]
    place: Place
    repeated: Word | None = None


@frozen
class Quantity:
    """A number as written, below 0 too, with the unit beside it (None for a bare number)."""

    value: Decimal
    unit: str | None
    place: Place


# Expressions


@frozen
class Text:
    """A text in quotes inside an expression."""

    text: str
    place: Place


@frozen
class Negative:
    """A value with a minus before it."""

    operand: Expression
    place: Place


@frozen
class Arithmetic:
    """A sum or product: the first operand, then each further one with its sign."""

    first: Expression
    rest: tuple[tuple[str, Expression], ...]
    place: Place


@frozen
class AllOf:
    """Conditions joined by `and`."""

    parts: tuple[Expression, ...]
    place: Place


@frozen
class AnyOf:
    """Conditions joined by `or`."""

    parts: tuple[Expression, ...]
    place: Place


@frozen
class Negated:
    """A condition after `not`."""

    operand: Expression
    place: Place


@frozen
class Tail:
    """What follows the left side of a comparison: `at least`, `between`, `is one of` … with its operands."""

    operator: str
    negated: bool
    operands: tuple[Expression, ...]
    place: Place


@frozen
class Comparison:
    """A left side with its comparison; more than one is a chain, which the checker answers."""

    left: Expression
    tails: tuple[Tail, ...]
    place: Place


@frozen
class CountConditions:
    """`count of (C, C, …)`."""

    items: tuple[Expression, ...]
    place: Place


@frozen
class CountPlaces:
    """`count of P`."""

    operand: Expression
    place: Place


@frozen
class Extreme:
    """`lesser of (…)`, `greater of (…)` or `median of (…)`."""

    operator: str
    items: tuple[Expression, ...]
    place: Place


@frozen
class Conditional:
    """`(A if C otherwise B)`."""

    value: Expression
    condition: Expression
    otherwise: Expression
    place: Place


@frozen
class ScoreRead:
    """`score`."""

    place: Place


@frozen
class GradeRead:
    """`grade`."""

    place: Place


@frozen
class SectionRead:
    """`section NAME`."""

    name: Word
    place: Place


@frozen
class FaultRead:
    """`fault NAME`: did it bite?"""

    name: Word
    place: Place


@frozen
class GrownTo:
    """`E grown to L`."""

    operand: Expression
    target: Expression
    place: Place


@frozen
class Earlier:
    """`earlier E`."""

    operand: Expression
    place: Place


@frozen
class BatchFigure:
    """`batch FIGURE of E …`."""

    figure: str
    percent: Decimal | None
    operand: Expression
    among_same: tuple[Word, ...]
    among_kept: Word | None
    recorded_at_least: int | None
    place: Place


Expression = (
    Word
    | Quantity
    | Text
    | Negative
    | Arithmetic
    | AllOf
    | AnyOf
    | Negated
    | Comparison
    | CountConditions
    | CountPlaces
    | Extreme
    | Conditional
    | ScoreRead
    | GradeRead
    | SectionRead
    | FaultRead
    | GrownTo
    | Earlier
    | BatchFigure
)
