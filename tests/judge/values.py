"""What an expression can be worth on one fish (intervals, pairs, sets) and what each operator makes of it.

Clauses are those of examples/guide/reference. Nothing here is clever: every rule stands once, in the words of its clause.
"""

from __future__ import annotations

import math

from attrs import frozen

LIMIT = 1_000_000.0


@frozen
class Span:
    """A number or a count: any double from low to high (section 5: a number is an interval)."""

    low: float
    high: float


@frozen
class Truth:
    """A condition: yes if surely, open if only possibly, no if not even possibly (section 5, Kleene)."""

    surely: bool
    possibly: bool


@frozen
class Steps:
    """A scale or a choice: any of the possible steps (section 5: `fair or sharp` is any of these)."""

    order: tuple[str, ...]
    possible: frozenset[str]


@frozen
class PlaceSet:
    """Places: those surely in, those possibly in, and how many there are at least and at most."""

    surely: frozenset[str]
    possibly: frozenset[str]
    least: int
    most: int

    @classmethod
    def between(cls, surely: frozenset[str], possibly: frozenset[str]) -> PlaceSet:
        """As many as the places allow."""
        return cls(surely, possibly, len(surely), len(possibly))

    @classmethod
    def any_of(cls, sets: list[frozenset[str]]) -> PlaceSet:
        """Any of these sets: in surely what all of them hold, possibly what one of them holds; as many as one of them has."""
        sizes = [len(each) for each in sets]
        return cls(frozenset.intersection(*sets), frozenset.union(*sets), min(sizes), max(sizes))


@frozen
class Label:
    """A label: any of these texts; None is any text at all."""

    possible: frozenset[str] | None


Worth = Span | Truth | Steps | PlaceSet | Label

ANY_NUMBER = Span(-LIMIT, LIMIT)
YES = Truth(surely=True, possibly=True)
NO = Truth(surely=False, possibly=False)
OPEN = Truth(surely=False, possibly=True)


# ---- Numbers (section 4 clause 1; section 5) ---------------------------------------------------------------------


def millionths(x: float) -> int:
    """Section 4 clause 1: what is compared or read by a curve is first floor(1000000 x + 0.5)."""
    return math.floor(1_000_000.0 * x + 0.5)


def within_limit(span: Span) -> Span:
    """Section 4, last paragraph: a value that leaves 1,000,000 either side of 0 is not recorded: any number at all."""
    if span.low < -LIMIT or span.high > LIMIT:
        return ANY_NUMBER
    return span


def negative(of: Span) -> Span:
    return within_limit(Span(-of.high, -of.low))


def arithmetic(sign: str, left: Span, right: Span) -> Span:
    """Plain interval arithmetic on doubles as written (section 4 clause 1, section 5)."""
    if sign == "+":
        return within_limit(Span(left.low + right.low, left.high + right.high))
    if sign == "-":
        return within_limit(Span(left.low - right.high, left.high - right.low))
    pairs = [(a, b) for a in (left.low, left.high) for b in (right.low, right.high)]
    if sign == "*":
        ends = [a * b for a, b in pairs]
        return within_limit(Span(min(ends), max(ends)))
    if right.low <= 0.0 <= right.high:
        return ANY_NUMBER  # section 5: a divisor whose interval holds 0
    ends = [a / b for a, b in pairs]
    return within_limit(Span(min(ends), max(ends)))


def lesser(of: list[Span]) -> Span:
    return Span(min(each.low for each in of), min(each.high for each in of))


def greater(of: list[Span]) -> Span:
    return Span(max(each.low for each in of), max(each.high for each in of))


def median(of: list[Span]) -> Span:
    """Section 3: the middle one, of an even number the mean of the two in the middle; it rises with each of them."""

    def middle(values: list[float]) -> float:
        ordered = sorted(values)
        half = len(ordered) // 2
        return ordered[half] if len(ordered) % 2 else (ordered[half - 1] + ordered[half]) / 2

    return Span(middle([each.low for each in of]), middle([each.high for each in of]))


# ---- Conditions (section 5, Kleene) ------------------------------------------------------------------------------


def negated(of: Truth) -> Truth:
    return Truth(not of.possibly, not of.surely)


def all_of(parts: list[Truth]) -> Truth:
    return Truth(all(each.surely for each in parts), all(each.possibly for each in parts))


def any_of(parts: list[Truth]) -> Truth:
    return Truth(any(each.surely for each in parts), any(each.possibly for each in parts))


def held_back(condition: Truth, excepted: Truth | None) -> Truth:
    """Section 4 clause 5: `if C except D` means C and not D, three-valued."""
    return condition if excepted is None else all_of([condition, negated(excepted)])


def count_of(parts: list[Truth]) -> Span:
    """Section 3: how many of them hold, an interval while some are open."""
    return Span(float(sum(each.surely for each in parts)), float(sum(each.possibly for each in parts)))


# ---- Comparisons (section 3, Values; section 4 clause 1) ---------------------------------------------------------


def in_order(operator: str, left: tuple[int, int], right: tuple[int, int]) -> Truth:
    """Both sides as whole numbers from lowest to highest: surely if every pair fits, possibly if some pair does."""
    (a_low, a_high), (b_low, b_high) = left, right
    if operator == "at least":
        return Truth(a_low >= b_high, a_high >= b_low)
    if operator == "above":
        return Truth(a_low > b_high, a_high > b_low)
    if operator == "at most":
        return Truth(a_high <= b_low, a_low <= b_high)
    if operator == "below":
        return Truth(a_high < b_low, a_low < b_high)
    raise AssertionError(operator)


def as_order(worth: Worth) -> tuple[int, int]:
    """Numbers and counts by their rounded ends, a scale by the places of its possible steps."""
    if isinstance(worth, Span):
        return millionths(worth.low), millionths(worth.high)
    assert isinstance(worth, Steps), worth
    codes = [worth.order.index(step) for step in worth.possible]
    return min(codes), max(codes)


def same(left: Worth, right: Worth) -> Truth:
    """`is`: surely when both are one and the same value, possibly when they have a value in common."""
    if isinstance(left, Span) and isinstance(right, Span):
        (a_low, a_high), (b_low, b_high) = as_order(left), as_order(right)
        return Truth(a_low == a_high == b_low == b_high, a_low <= b_high and b_low <= a_high)
    a, b = as_set(left), as_set(right)
    if a is None or b is None:  # a label that may be any text
        return OPEN
    return Truth(len(a) == 1 and a == b, bool(a & b))


def one_of(left: Worth, options: list[Worth]) -> Truth:
    """`is one of`: surely when every possible value is listed, possibly when some possible value is."""
    if isinstance(left, Span):
        return any_of([same(left, option) for option in options])
    a = as_set(left)
    listed = frozenset[str]().union(*(as_set(option) or () for option in options))
    if a is None:
        return OPEN
    return Truth(a <= listed, bool(a & listed))


def as_set(worth: Worth) -> frozenset[str] | None:
    if isinstance(worth, Truth):
        yes = {"yes"} if worth.possibly else set[str]()
        return frozenset(yes if worth.surely else yes | {"no"})
    assert isinstance(worth, Steps | Label), worth
    return worth.possible


# ---- (A if C otherwise B) ----------------------------------------------------------------------------------------


def either(then: Worth, condition: Truth, otherwise: Worth) -> Worth:
    """Section 3 and 5: while C is open the value is any of both: the hull of numbers, the union of steps."""
    if condition.surely:
        return then
    if not condition.possibly:
        return otherwise
    match then, otherwise:
        case Span(), Span():
            return Span(min(then.low, otherwise.low), max(then.high, otherwise.high))
        case Truth(), Truth():
            return Truth(then.surely and otherwise.surely, then.possibly or otherwise.possibly)
        case Steps(), Steps():
            return Steps(then.order, then.possible | otherwise.possible)
        case PlaceSet(), PlaceSet():
            least, most = min(then.least, otherwise.least), max(then.most, otherwise.most)
            return PlaceSet(then.surely & otherwise.surely, then.possibly | otherwise.possibly, least, most)
        case Label(), Label():
            if then.possible is None or otherwise.possible is None:
                return Label(None)
            return Label(then.possible | otherwise.possible)
        case _:
            raise AssertionError((then, otherwise))


# ---- One value (section 6: a fish counts only where E is one value) -----------------------------------------------


def one_number(read: Worth) -> int | None:
    """The millionths of a number, the place of a step, 1 or 0 for yes or no."""
    if isinstance(read, Truth):
        return None if read == OPEN else int(read.surely)
    low, high = as_order(read)
    return low if low == high else None


def one_value(read: Worth) -> object:
    """A value that can be compared with others of its kind; None if it is not sure."""
    match read:
        case Span() | Truth():
            return one_number(read)
        case Steps(_, possible) | Label(possible):
            return None if possible is None or len(possible) != 1 else possible
        case PlaceSet(surely, possibly, _, _):
            return surely if surely == possibly else None
