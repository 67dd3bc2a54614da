"""How derived traits come from raw ones: what a vocabulary declares, to be carried out once, before anything is graded.

A formula of the rule language is seen through by all who read rules; what no formula can say is a function over whole
columns of readings, with the same readings in and out.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from decimal import Decimal
from functools import partial

from attrs import field

from koirules.values import frozen
from koirules.vocabulary.kinds import Number
from koirules.vocabulary.misreads import Misread
from koirules.vocabulary.readings import Reading

Column = Sequence[Reading | None]
"""What was read of one trait, fish by fish; None where it was not recorded."""


@frozen
class Constant:
    """A number that measures go by, such as where the gill edge lies; a standard may set it with a `setting` of its name.

    kind: its unit and range. value: in the unit of its kind.
    """

    name: str
    title: str
    kind: Number
    value: Decimal
    describe: str = ""


@frozen
class Given:
    """What a measure is given. readings: a column for each of its inputs. fish: how many each column has.

    constants: those of the vocabulary by name, in the held unit. wanted: the outputs that somebody reads.
    """

    readings: Mapping[str, Column]
    fish: int
    constants: Mapping[str, float]
    wanted: frozenset[str]


@frozen
class Found:
    """What a measure found. readings: a column for each output that was wanted, None where nothing can be said.

    wrong: by input and fish (counted from 0), what about a reading shows only when it is measured.
    """

    readings: Mapping[str, Column]
    wrong: Mapping[str, Mapping[int, Misread]] = field(factory=dict)


@frozen
class Formula:
    """A derived trait that an expression of the rule language gives, over other traits and constants of the vocabulary."""

    trait: str
    expression: str


def _what_is_called(function: object) -> object:
    """A function as it is compared: two partials of one function with equal arguments do the same."""
    if isinstance(function, partial):
        return (function.func, _hashable(function.args), _hashable(function.keywords))
    return function


def _hashable(value: object) -> object:
    if isinstance(value, Mapping):
        return tuple((key, _hashable(one)) for key, one in value.items())
    return tuple(map(_hashable, value)) if isinstance(value, tuple | list) else value


@frozen
class Computed:
    """Derived traits that a function gives.

    inputs: without these it says nothing. helped_by: traits that make it more exact where they are there. outputs: what it
    gives. compute: called with whole columns; it imports what is heavy when it is called. estimate: whether its outputs
    are no more than likely, so that a record that says otherwise is nothing to wonder at. plugin: whose it is, which
    koirules fills in when it loads the plugin.
    """

    name: str
    inputs: tuple[str, ...]
    outputs: tuple[str, ...]
    compute: Callable[[Given], Found] = field(repr=False, eq=_what_is_called)
    helped_by: tuple[str, ...] = ()
    estimate: bool = False
    plugin: str = field(default="", eq=False, repr=False)


Measure = Formula | Computed


def outputs_of(measure: Measure) -> tuple[str, ...]:
    """The traits that a measure gives."""
    return (measure.trait,) if isinstance(measure, Formula) else measure.outputs
