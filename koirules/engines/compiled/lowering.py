"""A program over the rows of a frame as LLVM IR: one function that works through rows, a vector of them at a time.

Whole numbers are doubles where they come of a curve or a division, and 32-bit integers where they are looked up or counted.
Both are exact: the bounds of the program prove that they fit, and what they do not prove is refused. Nothing is marked as fast
or contracted, so that LLVM rounds where Python does. A fused multiply-add stands only in curves, whose bound covers it
(`curves.py`).
"""

from __future__ import annotations

import struct
from collections.abc import Callable, Sequence
from enum import Enum
from typing import assert_never

from koirules.engines.compiled.curves import Hinges, Lines, Steps, exact_form
from koirules.engines.compiled.layout import (
    EXACT,
    HUNDREDTHS,
    INTEGERS,
    MOST_SMALL,
    SET,
    THERE,
    UPPER,
    VALUES,
    Entry,
    Layout,
    Slot,
    TableSlot,
    Target,
)
from koirules.meaning.curves import Curve, Shape, Table
from koirules.program.graph import Kind, Op, Part, Read, Value
from koirules.program.passes import live
from koirules.program.profiles import Looked, RowProgram
from koirules.values import frozen

LANES = 16
"""So many rows are one vector; rows of a chunk are a multiple of it."""


class CannotLowerError(Exception):
    """A program that this engine has no exact machine code for; says why in a few words."""


class Type(Enum):
    """What a vector is made of."""

    DOUBLE = "double"
    INT = "i32"
    LONG = "i64"
    TRUTH = "i1"

    __hash__ = object.__hash__

    @property
    def spelled(self) -> str:
        """The type in LLVM IR."""
        return f"<{LANES} x {self.value}>"


@frozen
class Spelled:
    """A vector under its name in LLVM IR, or a constant."""

    type: Type
    name: str


def lowered(layout: Layout, target: Target) -> str:
    """The module, as text. Raises CannotLowerError."""
    return _Module(layout.program, layout, target).text()


def attributes(target: Target) -> str:
    """The attributes of a function: the processor, and that its widest vectors may be used."""
    wide = '"min-legal-vector-width"="512" "prefer-vector-width"="512"'
    return f'attributes #0 = {{ nounwind "target-cpu"="{target.cpu}" "target-features"="{target.features}" {wide} }}'


class _Module:
    def __init__(self, program: RowProgram, layout: Layout, target: Target) -> None:
        self.program, self.layout, self.target = program, layout, target
        self.entry: list[str] = []
        self.body: list[str] = []
        self.declared: set[str] = set()
        self.known: dict[Value, Spelled] = {}
        self.casts: dict[tuple[str, Type], str] = {}
        self.codes: dict[str, str] = {}
        self.count = 0

    def text(self) -> str:
        """The text of the module."""
        for number in range(self.layout.words):
            self.entry.append(f"%at{number} = getelementptr i64, ptr %args, i64 {number}")
            self.entry.append(f"%w{number} = load i64, ptr %at{number}, align 8")
        for value in live(self.layout.written.values()):
            self.known[value] = self._lower(value)
        for slot, value in self.layout.written.items():
            self._store(slot, value)
        entry, body = "\n  ".join(self.entry), "\n  ".join(self.body)
        return f"""{chr(10).join(sorted(self.declared))}
define void @grade(ptr noalias %args, i64 %first, i64 %end) #0 {{
entry:
  {entry}
  br label %rows
rows:
  %row = phi i64 [ %first, %entry ], [ %next, %rows ]
  %byte = lshr i64 %row, 3
  {body}
  %next = add i64 %row, {LANES}
  %more = icmp slt i64 %next, %end
  br i1 %more, label %rows, label %done
done:
  ret void
}}
{attributes(self.target)}
"""

    # Single instructions

    def _made(self, type_: Type, instruction: str) -> Spelled:
        self.count += 1
        name = f"%v{self.count}"
        self.body.append(f"{name} = {instruction}")
        return Spelled(type_, name)

    def _binary(self, type_: Type, what: str, a: Spelled, b: Spelled) -> Spelled:
        return self._made(type_, f"{what} {a.type.spelled} {a.name}, {b.name}")

    def _call(self, type_: Type, function: str, *operands: Spelled) -> Spelled:
        types = ", ".join(one.type.spelled for one in operands)
        self.declared.add(f"declare {type_.spelled} @{function}({types})")
        given = ", ".join(f"{one.type.spelled} {one.name}" for one in operands)
        return self._made(type_, f"call {type_.spelled} @{function}({given})")

    def _chosen(self, test: Spelled, one: Spelled, other: Spelled) -> Spelled:
        return self._made(
            one.type,
            f"select {test.type.spelled} {test.name}, {one.type.spelled} {one.name}, {other.type.spelled} {other.name}",
        )

    def _compared(self, how: str, a: Spelled, b: Spelled) -> Spelled:
        if a.type is Type.DOUBLE:
            return self._binary(Type.TRUTH, f"fcmp {_DOUBLES[how]}", a, b)
        return self._binary(Type.TRUTH, f"icmp {_INTS[how]}", a, b)

    def _floor(self, a: Spelled) -> Spelled:
        return self._call(Type.DOUBLE, f"llvm.floor.v{LANES}f64", a)

    def _times_plus(self, factor: float, x: Spelled, more: Spelled) -> Spelled:
        """Factor · x + more; rounded once where the processor can."""
        if self.target.fused:
            return self._call(Type.DOUBLE, f"llvm.fma.v{LANES}f64", double(factor), x, more)
        return self._binary(Type.DOUBLE, "fadd", self._binary(Type.DOUBLE, "fmul", double(factor), x), more)

    def _as(self, type_: Type, a: Spelled) -> Spelled:
        """A number as another type of number."""
        if a.type is type_:
            return a
        known = self.casts.get((a.name, type_))
        if known is None:
            what = "sitofp" if type_ is Type.DOUBLE else "fptosi"
            made = self._made(type_, f"{what} {a.type.spelled} {a.name} to {type_.spelled}")
            known = self.casts[a.name, type_] = made.name
        return Spelled(type_, known)

    # Inputs and outputs

    def _address(self, word: int, index: str, bytes_each: int) -> str:
        self.count += 1
        name = f"%p{self.count}"
        self.body.append(f"{name}b = inttoptr i64 %w{word} to ptr")
        self.body.append(f"{name} = getelementptr i{8 * bytes_each}, ptr {name}b, i64 {index}")
        return name

    def _index(self, word: int, of: str) -> str:
        """A place in a column; columns that no row has stand still, as their stride is 0."""
        if self.program.profile.complete:
            return of
        self.count += 1
        self.body.append(f"%i{self.count} = mul i64 {of}, %w{word + 1}")
        return f"%i{self.count}"

    def _doubles(self, slot: Slot) -> Spelled:
        address = self._address(slot.word, self._index(slot.word, "%row"), 8)
        return self._made(Type.DOUBLE, f"load {Type.DOUBLE.spelled}, ptr {address}, align 8")

    def _truths(self, slot: Slot) -> Spelled:
        address = self._address(slot.word, self._index(slot.word, "%byte"), 1)
        loaded = self._made(Type.TRUTH, f"load i{LANES}, ptr {address}, align 1")
        return self._made(Type.TRUTH, f"bitcast i{LANES} {loaded.name} to {Type.TRUTH.spelled}")

    def _store(self, slot: Slot, value: Value) -> None:
        made = self.known[value]
        match slot.what:
            case what if what == HUNDREDTHS:
                points = self._binary(Type.DOUBLE, "fdiv", self._as(Type.DOUBLE, made), double(100.0))
                address = self._address(slot.word, "%row", 8)
                self.body.append(f"store {points.type.spelled} {points.name}, ptr {address}, align 8")
            case what if what == SET:
                bytes_each = self.layout.bytes_of_sets
                address = self._address(slot.word, "%row", bytes_each)
                kind, name = made.type.spelled, made.name
                if bytes_each == 1:
                    kind = f"<{LANES} x i8>"
                    name = self._made(Type.INT, f"trunc {made.type.spelled} {made.name} to {kind}").name
                self.body.append(f"store {kind} {name}, ptr {address}, align {bytes_each}")
            case _:
                packed = self._made(Type.INT, f"bitcast {made.type.spelled} {made.name} to i{LANES}")
                address = self._address(slot.word, "%byte", 1)
                self.body.append(f"store i{LANES} {packed.name}, ptr {address}, align 1")

    def _input(self, value: Value) -> Spelled:
        read = value.data
        if isinstance(read, Looked):
            return self._looked_up(value, read.key)
        if not isinstance(read, Read):
            raise AssertionError("an input that reads nothing")
        match read.part:
            case Part.ONE | Part.FIRST | Part.SECOND:
                return self._doubles(self.layout.inputs[read.key, UPPER if read.part is Part.SECOND else VALUES])
            case Part.CODE:
                return self._truths(self.layout.inputs[read.key, VALUES])
            case Part.RECORDED:
                return self._truths(self.layout.inputs[read.key, THERE])
            case Part.LEAST | Part.MOST | Part.WHOLE | Part.SURELY | Part.POSSIBLY:
                raise AssertionError("an input that follows from a code")
            case _:
                assert_never(read.part)

    def _looked_up(self, value: Value, key: str) -> Spelled:
        """What follows from the code of a column: an entry of a table that is filled for each frame."""
        if value.kind is Kind.TEXT:
            raise CannotLowerError("texts of several columns")
        if value.kind is Kind.SET and not self.layout.largest(value) < INTEGERS:
            raise CannotLowerError("more than 30 levels or places that are compared with those of another trait")
        if value.kind is Kind.WHOLE and not self.layout.largest(value) < EXACT:
            raise CannotLowerError("points or weights so large that doubles do not hold them")
        codes = Spelled(Type.INT, self._codes(key))
        table = self.layout.tables[value]
        if table.holds is Entry.BIT:
            # One word of truths, shifted by the code.
            one = self._made(Type.INT, f"load i32, ptr {self._entry(table)}, align 4").name
            first = self._made(Type.INT, f"insertelement {Type.INT.spelled} poison, i32 {one}, i64 0").name
            spread = f"{Type.INT.spelled} {first}, {Type.INT.spelled} poison, <{LANES} x i32> zeroinitializer"
            shifted = self._binary(Type.INT, "lshr", self._made(Type.INT, f"shufflevector {spread}"), codes)
            return self._made(Type.TRUTH, f"trunc {Type.INT.spelled} {shifted.name} to {Type.TRUTH.spelled}")
        small = self.layout.entries[key] == MOST_SMALL
        if table.holds is Entry.INTEGER and small and self.target.permutes:
            whole = self._made(Type.INT, f"load {Type.INT.spelled}, ptr {self._entry(table)}, align 4")
            return self._call(Type.INT, "llvm.x86.avx512.permvar.si.512", whole, codes)
        type_ = Type.DOUBLE if table.holds is Entry.DOUBLE else Type.INT
        found = "poison"
        for lane in range(LANES):
            code = self._made(Type.INT, f"extractelement {Type.INT.spelled} {codes.name}, i64 {lane}").name
            address = self._entry(table, code, type_)
            one = self._made(type_, f"load {type_.value}, ptr {address}, align 4").name
            found = self._made(type_, f"insertelement {type_.spelled} {found}, {type_.value} {one}, i64 {lane}").name
        made = Spelled(type_, found)
        return made if value.kind is not Kind.TRUTH else self._compared("!=", made, integer(0))

    def _entry(self, table: TableSlot, code: str = "0", type_: Type = Type.INT) -> str:
        self.count += 1
        name = f"%p{self.count}"
        self.body.append(f"{name}b = inttoptr i64 %w{self.layout.tables_word} to ptr")
        self.body.append(f"{name}t = getelementptr i32, ptr {name}b, i64 {table.offset}")
        self.body.append(f"{name} = getelementptr {type_.value}, ptr {name}t, i32 {code}")
        return name

    def _codes(self, key: str) -> str:
        """The codes of a column, as integers; where nothing was recorded the last code."""
        if key not in self.codes:
            slot = self.layout.inputs[key, VALUES]
            address = self._address(slot.word, self._index(slot.word, "%row"), 1)
            loaded = self._made(Type.INT, f"load <{LANES} x i8>, ptr {address}, align 1")
            codes = self._made(Type.INT, f"zext <{LANES} x i8> {loaded.name} to {Type.INT.spelled}")
            if not self.program.profile.complete:
                there = self._truths(self.layout.inputs[key, THERE])
                codes = self._chosen(there, codes, integer(self.layout.entries[key] - 1))
            self.codes[key] = codes.name
        return self.codes[key]

    # Values

    def _lower(self, value: Value) -> Spelled:  # noqa: C901
        operands = [self.known[one] for one in value.operands]
        match value.op:
            case Op.CONSTANT:
                return self._constant(value)
            case Op.INPUT:
                return self._input(value)
            case Op.ADD | Op.SUBTRACT:
                ends = [self._as(Type.DOUBLE, one) for one in operands]
                return self._binary(Type.DOUBLE, "fadd" if value.op is Op.ADD else "fsub", *ends)
            case Op.MULTIPLY:
                return self._multiplied(value, operands)
            case Op.DIVIDE:
                over, by = (self._as(Type.DOUBLE, one) for one in operands)
                nothing = self._compared("==", by, double(0.0))
                return self._binary(Type.DOUBLE, "fdiv", over, self._chosen(nothing, double(1.0), by))
            case Op.NEGATE:
                if value.kind is Kind.NUMBER:
                    return self._made(Type.DOUBLE, f"fneg {Type.DOUBLE.spelled} {operands[0].name}")
                # A whole number has no negative zero.
                return self._binary(Type.DOUBLE, "fsub", double(0.0), self._as(Type.DOUBLE, operands[0]))
            case Op.MILLIONTHS:
                times = self._binary(Type.DOUBLE, "fmul", double(1_000_000.0), self._as(Type.DOUBLE, operands[0]))
                return self._floor(self._binary(Type.DOUBLE, "fadd", times, double(0.5)))
            case Op.DIVIDE_DOWN:
                return self._divided_down(value, operands[0])
            case Op.LEAST | Op.MOST:
                return self._extreme("<" if value.op is Op.LEAST else ">", operands)
            case Op.TOTAL:
                return self._total(value, operands)
            case Op.COUNT:
                ones = [self._chosen(one, integer(1), integer(0)) for one in operands]
                return self._folded(ones, lambda a, b: self._binary(Type.INT, "add", a, b))
            case Op.AT_LEAST:
                return self._compared(">=", *self._alike(operands))
            case Op.ABOVE:
                return self._compared(">", *self._alike(operands))
            case Op.EQUAL:
                if value.operands[0].kind is Kind.TEXT:
                    raise CannotLowerError("texts of several columns that are compared")
                if operands[0].type is Type.TRUTH:
                    return self._no(self._binary(Type.TRUTH, "xor", *operands))
                return self._compared("==", *self._alike(operands))
            case Op.EVERY | Op.SOME:
                what = "and" if value.op is Op.EVERY else "or"
                return self._folded(operands, lambda a, b: self._binary(Type.TRUTH, what, a, b))
            case Op.NO:
                return self._no(operands[0])
            case Op.WHERE:
                test, *ends = operands
                return self._chosen(test, *self._alike(ends))
            case Op.COMMON | Op.EITHER:
                return self._binary(Type.INT, "and" if value.op is Op.COMMON else "or", *operands)
            case Op.MEETS:
                return self._compared("!=", self._binary(Type.INT, "and", *operands), integer(0))
            case Op.LOWEST:
                return self._binary(
                    Type.INT, "and", operands[0], self._binary(Type.INT, "sub", integer(0), operands[0])
                )
            case Op.HALVED:
                return self._binary(Type.INT, "lshr", operands[0], integer(1))
            case Op.MEMBERS:
                return self._call(Type.INT, f"llvm.ctpop.v{LANES}i32", operands[0])
            case Op.HUNDREDTHS:
                return self._binary(Type.DOUBLE, "fdiv", self._as(Type.DOUBLE, operands[0]), double(100.0))
            case Op.LEAST_POINTS | Op.MOST_POINTS:
                return self._points(value.data, operands, least=value.op is Op.LEAST_POINTS)
            case Op.MISSING | Op.TABLE | Op.PACK:
                raise CannotLowerError("texts" if value.op is Op.MISSING else "tables of codes")
            case _:
                assert_never(value.op)

    def _constant(self, value: Value) -> Spelled:
        match value.kind:
            case Kind.NUMBER:
                return double(value.data)
            case Kind.TRUTH:
                return truth(value.data)
            case Kind.WHOLE | Kind.SET:
                if abs(value.data) < INTEGERS:
                    return integer(value.data)
                if value.kind is Kind.SET or abs(value.data) > EXACT:
                    raise CannotLowerError("numbers or sets that are too large")
                return double(value.data)
            case Kind.TEXT:
                raise CannotLowerError("texts")
            case _:
                assert_never(value.kind)

    def _no(self, a: Spelled) -> Spelled:
        return self._binary(Type.TRUTH, "xor", a, truth(value=True))

    def _alike(self, parts: Sequence[Spelled]) -> list[Spelled]:
        """Numbers as doubles where any of them is one."""
        if any(one.type is Type.DOUBLE for one in parts):
            return [self._as(Type.DOUBLE, one) for one in parts]
        return list(parts)

    def _folded(self, parts: Sequence[Spelled], join: Callable[[Spelled, Spelled], Spelled]) -> Spelled:
        """Parts joined two by two, so that the processor can do several at once; the order of whole sums is free."""
        level = list(parts)
        while len(level) > 1:
            pairs = [join(level[i], level[i + 1]) for i in range(0, len(level) - 1, 2)]
            level = pairs + level[len(level) - len(level) % 2 :]
        return level[0]

    def _extreme(self, sign: str, parts: Sequence[Spelled]) -> Spelled:
        """The first of the smallest or largest, as `min` and `max` have it: a later one only where it is beyond."""
        best, *others = self._alike(parts)
        for one in others:
            best = self._chosen(self._compared(sign, one, best), one, best)
        return best

    def _fits(self, value: Value, limit: int) -> bool:
        """Whether a sum or product, and each of its parts added up without their signs, stays below a limit."""
        if value.op is Op.TOTAL:
            return sum(self.layout.largest(one) for one in value.operands) < limit
        return self.layout.largest(value) < limit

    def _multiplied(self, value: Value, operands: Sequence[Spelled]) -> Spelled:
        if value.kind is Kind.NUMBER:
            return self._binary(Type.DOUBLE, "fmul", *(self._as(Type.DOUBLE, one) for one in operands))
        if all(one.type is Type.INT for one in operands) and self._fits(value, INTEGERS):
            return self._binary(Type.INT, "mul", *operands)
        self._demand(value)
        # A product of 0 and a negative number is -0.0 in doubles; adding 0.0 makes it 0.0.
        made = self._binary(Type.DOUBLE, "fmul", *(self._as(Type.DOUBLE, one) for one in operands))
        signed = any(self.layout.bounds.of(one)[0] < 0 for one in value.operands)
        return self._binary(Type.DOUBLE, "fadd", made, double(0.0)) if signed else made

    def _demand(self, value: Value) -> None:
        if not self._fits(value, EXACT):
            raise CannotLowerError("points or weights so large that doubles do not hold their sums")

    def _total(self, value: Value, operands: Sequence[Spelled]) -> Spelled:
        ints = [one for one in operands if one.type is Type.INT]
        doubles = [one for one in operands if one.type is Type.DOUBLE]
        if ints and not self._fits(value, INTEGERS):
            small = [
                one
                for one, of in zip(operands, value.operands, strict=True)
                if one.type is Type.INT and self.layout.largest(of) < INTEGERS // len(operands)
            ]
            doubles += [self._as(Type.DOUBLE, one) for one in ints if one not in small]
            ints = small
        self._demand(value)
        if ints:
            summed = self._folded(ints, lambda a, b: self._binary(Type.INT, "add", a, b))
            if not doubles:
                return summed
            doubles.append(self._as(Type.DOUBLE, summed))
        return self._folded(doubles, lambda a, b: self._binary(Type.DOUBLE, "fadd", a, b))

    def _divided_down(self, value: Value, over: Spelled) -> Spelled:
        """floor(n / d) as floor((n + 1/2) · (1 / d)): exact while |n| < 2^51 - 2.

        n + 1/2 is a double, and (n + 1/2) / d is at least 1 / (2 d) away from every whole number. The reciprocal and the
        product round once each, by 2^-53 of their size at most, so that both together are off by less than
        (|n| + 1/2) / d · 2^-52 · (1 + 2^-54) < 1 / (2 d).
        """
        if not self.layout.largest(value.operands[0]) < EXACT - 2:
            raise CannotLowerError("points or weights so large that doubles do not hold their quotients")
        half = self._binary(Type.DOUBLE, "fadd", self._as(Type.DOUBLE, over), double(0.5))
        return self._floor(self._binary(Type.DOUBLE, "fmul", half, double(1.0 / value.data)))

    # Curves and tables

    def _points(self, shape: Shape, read: Sequence[Spelled], *, least: bool) -> Spelled:
        match shape:
            case Curve():
                ends = [self._as(Type.DOUBLE, one) for one in dict.fromkeys(read)]
                points = [self._curve(shape, one) for one in ends]
                return points[0] if len(ends) == 1 else self._span(shape, ends, points, least=least)
            case Table():
                return self._levels(shape, read[0], least=least)
            case _:
                assert_never(shape)

    def _curve(self, curve: Curve, x: Spelled) -> Spelled:
        form = exact_form(curve)
        match form:
            case None:
                raise CannotLowerError("a curve whose points doubles are too short for")
            case float():
                return double(form)
            case Hinges(start, bends, last):
                made, x = double(start), self._held(x, "<", last)
                for bend, knot in bends:
                    made = self._times_plus(bend, self._held(x, ">", knot), made)
                return self._floor(made)
            case Steps(start, pieces):
                made = double(start)
                for slope, left, right in pieces:
                    within = self._held(self._held(x, ">", left), "<", right)
                    made = self._times_plus(slope, self._binary(Type.DOUBLE, "fsub", within, double(left)), made)
                return self._floor(made)
            case Lines():
                return self._line(form, x)
            case _:
                assert_never(form)

    def _line(self, form: Lines, x: Spelled) -> Spelled:
        x = self._held(self._held(x, ">", form.at[0]), "<", form.last)
        slope, start, over = (long(each[0]) for each in (form.slopes, form.starts, form.overs))
        for at, *piece in zip(form.at[1:], form.slopes[1:], form.starts[1:], form.overs[1:], strict=True):
            beyond = self._compared(">=", x, double(at))
            slope, start, over = (
                self._chosen(beyond, long(new), old) for new, old in zip(piece, (slope, start, over), strict=True)
            )
        whole = self._made(Type.LONG, f"fptosi {x.type.spelled} {x.name} to {Type.LONG.spelled}")
        above = self._binary(Type.LONG, "add", self._binary(Type.LONG, "mul", slope, whole), start)
        quotient = self._binary(Type.LONG, "sub", self._binary(Type.LONG, "udiv", above, over), long(form.below))
        return self._made(Type.DOUBLE, f"sitofp {Type.LONG.spelled} {quotient.name} to {Type.DOUBLE.spelled}")

    def _held(self, x: Spelled, sign: str, bound: float) -> Spelled:
        """The smaller or larger of x and a bound."""
        return self._chosen(self._compared(sign, x, double(bound)), x, double(bound))

    def _span(self, curve: Curve, ends: Sequence[Spelled], points: Sequence[Spelled], *, least: bool) -> Spelled:
        """The least or most between two numbers: that of their own points, and of each knot in between."""
        sign = "<" if least else ">"
        best = self._extreme(sign, points)
        for at, gives in zip(curve.at, curve.gives, strict=True):
            inside = self._binary(
                Type.TRUTH,
                "and",
                self._compared("<", ends[0], double(at)),
                self._compared(">=", ends[1], double(at)),
            )
            beyond = self._binary(Type.TRUTH, "and", inside, self._compared(sign, double(gives), best))
            best = self._chosen(beyond, double(gives), best)
        return best

    def _levels(self, table: Table, bits: Spelled, *, least: bool) -> Spelled:
        """The least or most over the levels of a set."""
        if max(map(abs, table.gives)) >= INTEGERS:
            raise CannotLowerError("points too large for 32 bits")
        sign = "<" if least else ">"
        best = integer(INTEGERS if least else -INTEGERS)
        for level, gives in enumerate(table.gives):
            among = self._compared("!=", self._binary(Type.INT, "and", bits, integer(1 << level)), integer(0))
            beyond = self._binary(Type.TRUTH, "and", among, self._compared(sign, integer(gives), best))
            best = self._chosen(beyond, integer(gives), best)
        return best


_DOUBLES = {">=": "oge", ">": "ogt", "<": "olt", "==": "oeq", "!=": "une"}
_INTS = {">=": "sge", ">": "sgt", "<": "slt", "==": "eq", "!=": "ne"}


def double(value: float) -> Spelled:
    """A constant vector of doubles, by the bits of the double."""
    bits = struct.pack(">d", float(value)).hex().upper()
    return Spelled(Type.DOUBLE, f"splat (double 0x{bits})")


def integer(value: int) -> Spelled:
    """A constant vector of integers."""
    return Spelled(Type.INT, f"splat (i32 {value})")


def long(value: int) -> Spelled:
    """A constant vector of 64-bit integers."""
    return Spelled(Type.LONG, f"splat (i64 {value})")


def truth(value: bool) -> Spelled:
    """A constant vector of truths."""
    return Spelled(Type.TRUTH, f"splat (i1 {'true' if value else 'false'})")
