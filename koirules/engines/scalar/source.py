"""Python source of a program: one statement for each value that is read more than once, all others where they are read.

A value that is chosen between a new value and an earlier one that nothing else reads is a conditional assignment to the
variable of the earlier one. No text of a rule file stands in the source: texts and keys are constants beside it.
"""

from __future__ import annotations

import linecache
from collections.abc import Callable, Collection, Iterable, Mapping, Sequence
from itertools import count
from math import prod
from typing import Any
from weakref import finalize

from koirules.meaning.curves import Curve, Piece, Shape
from koirules.program.graph import Op, Value
from koirules.program.passes import live

_MOST_ADDED = 50
_DEEPEST = 12
"""Python's compiler takes a hundred levels of brackets or so."""

_NUMBERS = count()
_ATOMS = frozenset({Op.CONSTANT, Op.INPUT, Op.TABLE})
_OTHER_END = {Op.LEAST_POINTS: Op.MOST_POINTS, Op.MOST_POINTS: Op.LEAST_POINTS}
_POINTS = frozenset(_OTHER_END)
_READING_TWICE = _POINTS | {Op.LOWEST}


class Constants(dict[str, Any]):
    """What a generated function finds under names that stand in its source."""

    def named(self, value: Any) -> str:
        """A name for a value that source cannot spell."""
        name = f"K{len(self)}"
        self[name] = value
        return name


class Source:
    """The statements that evaluate some values of a program.

    outputs: what is read at the end, each as often as it is read. inputs: the variables of inputs and of what else is
    evaluated already. kept: values that get a variable in any case. labels: names for variables. demands: truths that have
    to hold; where one does not, the function returns None.
    """

    def __init__(
        self,
        outputs: Sequence[Value],
        inputs: Mapping[Value, str],
        constants: Constants,
        *,
        kept: Collection[Value] = (),
        labels: Mapping[Value, str] | None = None,
        demands: Sequence[Value] = (),
    ) -> None:
        self.constants = constants
        self.statements: list[str] = []
        self._variables = dict(inputs)
        self._labels = labels or {}
        self._kept = frozenset(kept)
        self._demands = frozenset(demands)
        self._shapes: dict[tuple[int, str], str] = {}
        self._last: tuple[Value, str] | None = None
        self._values = live([*outputs, *demands], stop=lambda value: value in inputs)
        self._readers: dict[Value, list[Value | None]] = {value: [] for value in self._values}
        for value in (*outputs, *demands):
            self._readers[value].append(None)
        for value in self._values:
            if value not in inputs:
                for operand in value.operands:
                    self._readers[operand].append(value)
        self._twins = {
            (value.operands, id(value.data), value.op): value for value in self._values if value.op in _POINTS
        }
        self._plan()
        for value in self._values:
            if self._is_named(value) and value not in self._variables:
                self._assign(value)
            if value in self._demands:
                self._end_if()
                self.statements.append(f"if {self._denied(value)}: return None")
        self._end_if()

    def spell(self, value: Value) -> str:
        """The source of a value: a variable, a literal or an expression."""
        known = self._variables.get(value)
        return self._expression(value) if known is None else known

    def _plan(self) -> None:
        """Decide which values are expressions in the place where they are read, and where that is."""
        self._inlined: set[Value] = set()
        depth: dict[Value, int] = {}
        for value in self._values:
            if value.op in _ATOMS or len(self._readers[value]) != 1 or value in self._kept or self._by_pieces(value):
                continue
            made = 1 + max((depth.get(one, 0) for one in value.operands), default=0)
            if made < _DEEPEST:
                depth[value] = made
                self._inlined.add(value)
        self._places: dict[Value, Value] = {}
        for value in reversed(self._values):
            reader = self._readers[value][0]
            self._places[value] = self._places[reader] if value in self._inlined and reader is not None else value

    def _by_pieces(self, value: Value) -> bool:
        """Whether a value is read several times by the source of a curve, or is one of two that are made together."""
        if value.op in _POINTS:
            return _is_open(value)
        return any(reader is not None and reader.op in _READING_TWICE for reader in self._readers[value])

    def _is_named(self, value: Value) -> bool:
        return value.op not in _ATOMS and value not in self._inlined

    def _assign(self, value: Value) -> None:
        if value.op is Op.WHERE:
            test, one, other = value.operands
            if self._may_replace(value, other):
                name = self._variables[value] = self._variables[other]
                self._assign_if(test, f"{name} = {self.spell(one)}")
                return
        self._end_if()
        if value.op in _POINTS and _is_open(value):
            self._assign_points(value)
            return
        source = self._expression(value)
        name = self._variables[value] = self._named(value)
        self.statements.append(f"{name} = {source}")

    def _may_replace(self, value: Value, other: Value) -> bool:
        """Whether nothing but the value itself reads the other one, which has a variable."""
        if other.op in _ATOMS or other not in self._variables or other in self._inlined:
            return False
        return all(reader is not None and self._places[reader] is value for reader in self._readers[other])

    def _assign_if(self, test: Value, statement: str) -> None:
        if self._last is not None and self._last[0] is test:
            self._last = test, f"{self._last[1]}; {statement}"
            return
        self._end_if()
        self._last = test, f"if {self.spell(test)}: {statement}"

    def _end_if(self) -> None:
        if self._last is not None:
            self.statements.append(self._last[1])
            self._last = None

    def _assign_points(self, value: Value) -> None:
        """Both ends of what a curve or table gives, in one call."""
        twin = self._twins.get((value.operands, id(value.data), _OTHER_END[value.op]))
        read = ", ".join(self.spell(operand) for operand in value.operands)
        call = f"{self._shape('span', value.data.span, value)}({read})"
        names = {value: self._named(value)} | ({} if twin is None else {twin: self._named(twin)})
        self._variables |= names
        least = next((name for one, name in names.items() if one.op is Op.LEAST_POINTS), "_")
        most = next((name for one, name in names.items() if one.op is Op.MOST_POINTS), "_")
        self.statements.append(f"{least}, {most} = {call}")

    def _named(self, value: Value) -> str:
        return self._labels.get(value, f"v{value.number}")

    def _shape(self, what: str, made: Any, value: Value) -> str:
        key = (id(value.data), what)
        if key not in self._shapes:
            self._shapes[key] = self.constants.named(made)
        return self._shapes[key]

    def _denied(self, value: Value) -> str:
        if value in self._inlined and value.op is Op.EQUAL:
            return " != ".join(self.spell(operand) for operand in value.operands)
        return f"not {self.spell(value)}"

    def _expression(self, value: Value) -> str:  # noqa: C901
        """The source of a value over its operands."""
        spelled = [self.spell(operand) for operand in value.operands]
        match value.op:
            case Op.CONSTANT:
                return self._literal(value.data)
            case Op.TABLE:
                return _by_code(spelled[0], [self._literal(each) for each in value.data], value.data)
            case Op.INPUT:
                raise AssertionError("an input without a variable")
            case Op.ADD | Op.SUBTRACT | Op.MULTIPLY | Op.AT_LEAST | Op.ABOVE | Op.EQUAL | Op.COMMON | Op.EITHER:
                return f"({spelled[0]} {_SIGNS[value.op]} {spelled[1]})"
            case Op.DIVIDE:
                by = value.operands[1]
                return f"({spelled[0]} / {spelled[1] if by.constant and by.data else f'({spelled[1]} or 1.0)'})"
            case Op.HUNDREDTHS:
                return f"({spelled[0]} / 100.0)"
            case Op.NEGATE:
                return f"(-{spelled[0]})"
            case Op.MILLIONTHS:
                return f"floor(1000000.0 * {spelled[0]} + 0.5)"
            case Op.DIVIDE_DOWN:
                return f"({spelled[0]} // {value.data})"
            case Op.LEAST | Op.MOST:
                return f"{'min' if value.op is Op.LEAST else 'max'}({', '.join(spelled)})"
            case Op.TOTAL | Op.COUNT:
                if value.op is Op.TOTAL and len(spelled) <= _MOST_ADDED:
                    return f"({' + '.join(spelled)})"
                # Each `+` is one level of the syntax tree, of which Python's compiler takes some thousand.
                return f"sum(({', '.join(spelled)},))"
            case Op.EVERY:
                return f"({' and '.join(spelled)})"
            case Op.SOME:
                return f"({' or '.join(spelled)})"
            case Op.NO:
                return f"(not {spelled[0]})"
            case Op.WHERE:
                test, one, other = spelled
                return f"({one} if {test} else {other})"
            case Op.MEETS:
                return f"({spelled[0]} & {spelled[1]} != 0)"
            case Op.LOWEST:
                return f"({spelled[0]} & -{spelled[0]})"
            case Op.HALVED:
                return f"({spelled[0]} >> 1)"
            case Op.MEMBERS:
                return f"{spelled[0]}.bit_count()"
            case Op.MISSING:
                return f"({spelled[0]} is None)"
            case Op.PACK:
                strides = [prod(value.data[place + 1 :]) for place in range(len(spelled))]
                return f"({' + '.join(f'{code} * {stride}' for code, stride in zip(spelled, strides, strict=True))})"
            case Op.LEAST_POINTS | Op.MOST_POINTS:
                return self._points(value, spelled[0])

    def _points(self, value: Value, read: str) -> str:
        """What a curve or table gives of one value."""
        shape: Shape = value.data
        if isinstance(shape, Curve):
            return _curve(shape.pieces, shape.at, read)
        levels = {1 << place: gives for place, gives in enumerate(shape.gives)}
        return f"{self._shape('levels', levels, value)}[{read}]"

    def _literal(self, value: Any) -> str:
        if isinstance(value, str):
            return self.constants.named(value)
        return f"({value!r})" if isinstance(value, int | float) and value < 0 else f"{value!r}"


def _is_open(points: Value) -> bool:
    """Whether what a curve or table reads can be several values."""
    return len(points.operands) == 1 or points.operands[0] is not points.operands[1]


_SIGNS = {
    Op.ADD: "+",
    Op.SUBTRACT: "-",
    Op.MULTIPLY: "*",
    Op.AT_LEAST: ">=",
    Op.ABOVE: ">",
    Op.EQUAL: "==",
    Op.COMMON: "&",
    Op.EITHER: "|",
}


def _by_code(code: str, literals: Sequence[str], values: Sequence[Any]) -> str:
    match list(values):
        case [False, True] if values[0] is False:
            return code
        case [True, False] if values[0] is True:
            return f"(not {code})"
        case [_, _]:
            return f"({literals[1]} if {code} else {literals[0]})"
        case _:
            return f"({', '.join(literals)})[{code}]"


def _curve(pieces: Sequence[Piece], knots: Sequence[int], x: str) -> str:
    """The source of a curve at x: the piece before the first knot that is above x, found by halves."""
    if len(pieces) == 1:
        (piece,) = pieces
        return f"({piece.slope} * {x} + {piece.start}) // {piece.over}" if piece.slope else f"{piece.point(0)}"
    half = len(pieces) // 2
    knot = knots[half - 1]
    left = _curve(pieces[:half], knots[: half - 1], x)
    right = _curve(pieces[half:], knots[half:], x)
    return f"({left} if {x} < {knot} else {right})"


def tupled(parts: Iterable[str]) -> str:
    """The source of a tuple."""
    listed = list(parts)
    return f"({', '.join(listed)}{',' if len(listed) == 1 else ''})"


def made(name: str, parameters: str, statements: Sequence[str], constants: Constants) -> Callable[..., Any]:
    """The function `run` of some statements. name: what it is called in tracebacks, where its source is shown too."""
    source = f"def run({parameters}):\n " + "\n ".join(statements) + "\n"
    scope: dict[str, Any] = dict(constants)
    file = f"<{name} {next(_NUMBERS)}>"
    # Only operators, numbers and generated names stand in the source.
    exec(compile(source, file, "exec"), scope)  # noqa: S102
    run: Callable[..., Any] = scope["run"]
    # A traceback, and `inspect.getsource`, show the source as long as there is the function.
    linecache.cache[file] = (len(source), None, source.splitlines(keepends=True), file)
    finalize(run, linecache.cache.pop, file, None)
    return run
