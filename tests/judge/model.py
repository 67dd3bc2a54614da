"""A standard as plain data: just enough of the rule language for the slow judge, its printer and its generators."""

from __future__ import annotations

from decimal import Decimal

from attrs import field, frozen

from tests.judge.expressions import Expression

# ---- Kinds of trait ----------------------------------------------------------------------------------------------


@frozen
class YesNoKind:
    pass


@frozen
class CountKind:
    up_to: int


@frozen
class NumberKind:
    """A number in a unit ("" for a plain one); the range is in that unit."""

    unit: str
    low: Decimal
    high: Decimal


@frozen
class ScaleKind:
    steps: tuple[str, ...]  # worst or least first, as written with <


@frozen
class ChoiceKind:
    steps: tuple[str, ...]


@frozen
class PlacesKind:
    places: tuple[str, ...]


@frozen
class LabelKind:
    pass


Kind = YesNoKind | CountKind | NumberKind | ScaleKind | ChoiceKind | PlacesKind | LabelKind

# ---- Statements (statements.md) --------------------------------------------------------------------------


@frozen
class Trait:
    name: str
    kind: Kind
    label: str = ""
    direction: str = ""  # "", "more" or "less" is better
    given: bool = False  # by the variety, and not declared in the file
    follows: tuple[Decimal, Decimal] | None = None  # length to the power of the first plus the second times b
    fixed: bool = False  # does not change as the fish grows
    whitens: bool = False  # a share that becomes less as white grows in from the sides


@frozen
class Setting:
    """A setting; amounts may be below 0. Without a range it cannot be changed."""

    name: str
    amount: Decimal
    unit: str = ""
    low: Decimal | None = None
    high: Decimal | None = None
    label: str = ""


@frozen
class Term:
    name: str
    means: Expression
    label: str = ""


@frozen
class Knot:
    at: Decimal  # may be below 0
    unit: str
    gives: Decimal


@frozen
class Curve:
    knots: tuple[Knot, ...]


@frozen
class Table:
    """Points by step ("yes" and "no" for yes or no); `anything_else` for the steps that are left over."""

    gives: tuple[tuple[str, Decimal], ...]
    anything_else: Decimal | None = None


@frozen
class Points:
    name: str
    by: Expression
    gives: Curve | Table
    weight: Decimal | None = None  # None: not written, which is 1
    label: str = ""


@frozen
class Bonus:
    name: str
    amount: Decimal
    condition: Expression
    label: str = ""


@frozen
class Penalty:
    name: str
    amount: Decimal
    condition: Expression
    label: str = ""


@frozen
class Section:
    name: str
    worth: Decimal
    criteria: tuple[Points | Bonus | Penalty, ...]
    label: str = ""


@frozen
class Fault:
    name: str
    condition: Expression
    no_better_than: str
    excepted: Expression | None = None
    label: str = ""
    say: str = ""
    lowers: int = 0  # by so many grades, and then it names none


@frozen
class Lift:
    name: str
    condition: Expression
    no_worse_than: str
    excepted: Expression | None = None
    label: str = ""
    say: str = ""


@frozen
class Grade:
    name: str
    condition: Expression | None  # None: otherwise
    label: str = ""


@frozen
class Alert:
    name: str
    condition: Expression
    label: str = "mind this"


@frozen
class Key:
    """highest E, lowest E, those with C."""

    word: str  # "highest", "lowest" or "those with"
    of: Expression


@frozen
class Quota:
    """no more than K with C, or of the same (...)."""

    amount: int
    condition: Expression | None = None
    same: tuple[str, ...] = ()


@frozen
class Round:
    """A round; without keys it has no pick, and with `many` None it picks all.

    `many` may name a setting, or be a share in % of those that the round looks at.

    pool: "" (those kept by the round before), "all", "kept by" or "passed over by" (of the round `pool_of`).
    """

    name: str
    pool: str = ""
    pool_of: str = ""
    keep: Expression | None = None
    possibly: bool = False
    many: int | str | Decimal | None = None
    keys: tuple[Key, ...] = ()
    quotas: tuple[Quota, ...] = ()
    ties: str = ""  # "", "all in" or "by first recorded"
    send: str = ""
    rescues: int = 0
    label: str = ""
    each: tuple[str, ...] = ()  # of `for each (a, b)`


@frozen
class Silent:
    """What a trait is where nobody mentioned it: a value as a record has it; unless the condition is a sure yes."""

    trait: str
    means: object
    unless: Expression | None = None


@frozen
class Panel:
    """How several judges are put together; `way` and `middle` as they are written, "" where nothing is."""

    way: str
    judges: int | None = None
    named_by: int | None = None
    middle: str = ""
    label: str = ""


@frozen
class Standard:
    """One whole standard; grades stand best first."""

    traits: tuple[Trait, ...] = ()
    settings: tuple[Setting, ...] = ()
    terms: tuple[Term, ...] = ()
    sections: tuple[Section, ...] = ()
    faults: tuple[Fault, ...] = ()
    lifts: tuple[Lift, ...] = ()
    grades: tuple[Grade, ...] = field(default=(Grade("keep", None),))
    alerts: tuple[Alert, ...] = ()
    rounds: tuple[Round, ...] = ()
    silence: tuple[Silent, ...] = ()
    panel: Panel | None = None
    title: str = "Lantern Bay trial standard"
    variety: str = ""
