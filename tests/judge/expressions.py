"""Expressions of the rule language as plain data (conditions.md)."""

from __future__ import annotations

from decimal import Decimal

from attrs import frozen


@frozen
class Literal:
    """A number as written, never below 0 (see Negative), with the unit as written or none."""

    amount: Decimal
    unit: str = ""


@frozen
class YesNo:
    """The words yes and no, right of a comparison."""

    yes: bool


@frozen
class Step:
    """A step of a scale or a choice, right of a comparison or of `otherwise`."""

    name: str


@frozen
class Words:
    """A string, right of a comparison with a label."""

    text: str


@frozen
class Name:
    """A trait, a term or a setting: they share one set of names."""

    name: str


@frozen
class Negative:
    of: Expression


@frozen
class Arithmetic:
    sign: str  # one of + - * /
    left: Expression
    right: Expression


@frozen
class GrownTo:
    """E grown to L."""

    of: Expression
    target: Expression


@frozen
class CountOf:
    """count of (C, C, ...)."""

    conditions: tuple[Expression, ...]


@frozen
class CountPlaces:
    """count of P: P is a trait or a term, or one of these in the look before."""

    of: Name | Earlier


@frozen
class Lesser:
    of: tuple[Expression, ...]


@frozen
class Median:
    of: tuple[Expression, ...]


@frozen
class Greater:
    of: tuple[Expression, ...]


@frozen
class Either:
    """(A if C otherwise B)."""

    then: Expression
    condition: Expression
    otherwise: Expression


@frozen
class Score:
    pass


@frozen
class SectionPoints:
    name: str


@frozen
class FaultBit:
    name: str


@frozen
class GradeNow:
    """grade: the grade of the fish as a scale, worst first."""


FIGURES = ("median", "mean", "lowest", "highest", "percentile", "spread", "standing", "share")


@frozen
class Figure:
    """batch KIND [N] of E [among the same (...)] [among those kept by ROUND] [with N or more recorded]."""

    kind: str  # one of FIGURES
    of: Expression
    percent: Decimal | None = None
    same: tuple[str, ...] = ()  # names
    kept_by: str = ""
    at_least: int | None = None


@frozen
class Earlier:
    """earlier E: E in the look before this one."""

    of: Expression


@frozen
class Or:
    parts: tuple[Expression, ...]


@frozen
class And:
    parts: tuple[Expression, ...]


@frozen
class Not:
    of: Expression


ORDERS = ("at least", "at most", "above", "below")
SAMENESS = ("is", "is not")


@frozen
class Compare:
    operator: str  # one of ORDERS or SAMENESS
    left: Expression
    right: Expression


@frozen
class Between:
    of: Expression
    low: Expression
    high: Expression


@frozen
class IsWithin:
    """E is within A of B."""

    of: Expression
    distance: Expression
    middle: Expression
    negated: bool = False


@frozen
class IsOneOf:
    of: Expression
    options: tuple[Expression, ...]
    negated: bool = False


@frozen
class IsRecorded:
    of: Name | Earlier | Figure
    negated: bool = False


@frozen
class Includes:
    of: Expression
    place: str


Value = Literal | YesNo | Step | Words | Name | Score | SectionPoints | FaultBit | GradeNow | Figure | Earlier
Working = Negative | Arithmetic | GrownTo | CountOf | CountPlaces | Lesser | Greater | Median | Either
Condition = Or | And | Not | Compare | Between | IsWithin | IsOneOf | IsRecorded | Includes
Expression = Value | Working | Condition
