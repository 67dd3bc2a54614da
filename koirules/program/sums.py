"""Sums: tables of several codes looked up as one, and what two sums share added up once.

Why: a lookup is the dearest step of a sum over a column, and the tables of a section read a dozen codes. Codes are packed:
several of them become one number of mixed radix, and what they add up to is one table over it. Looking up one sum is as dear
as looking up one summand. The least and the most of a section share all that no hole changes.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import product
from math import prod

from attrs import field

from koirules.program.bounds import Bounds
from koirules.program.graph import Kind, Op, Tracer, Value
from koirules.program.passes import live
from koirules.values import define

_MOST_PACKED = 720
"""A pack stands for no more combinations: its tables should stay in the nearest cache."""
_FEW_CODES = 24
"""A column with more codes than this is not packed."""


@define(eq=False)
class _Sum:
    """A sum of whole numbers: what is known, what each code adds, and values with what they are multiplied by."""

    known: int = 0
    tables: dict[Value, tuple[int, ...]] = field(factory=dict)
    terms: dict[Value, int] = field(factory=dict)

    def add(self, value: Value, times: int = 1) -> None:
        """Add a value so many times, with what it is itself a sum of."""
        waiting = [(value, times)]
        while waiting:
            one, by = waiting.pop()
            factor = next((each for each in one.operands if each.constant), None)
            if one.constant:
                self.known += by * one.data
            elif one.op is Op.TABLE:
                (code,) = one.operands
                known = self.tables.get(code, (0,) * len(one.data))
                self.tables[code] = tuple(a + by * b for a, b in zip(known, one.data, strict=True))
            elif one.op is Op.TOTAL:
                waiting += [(each, by) for each in reversed(one.operands)]
            elif one.op is Op.MULTIPLY and factor is not None:
                waiting += [(each, by * factor.data) for each in one.operands if each is not factor]
            else:
                self.terms[one] = self.terms.get(one, 0) + by


@define
class Sums:
    """Rewrites the sums of a program. The values of a rewritten program lie in the same tracer."""

    tracer: Tracer
    bounds: Bounds
    _sums: dict[Value, _Sum] = field(factory=dict)
    _packs: list[tuple[tuple[Value, ...], tuple[int, ...]]] = field(factory=list)
    _shared: dict[Value, dict[Value, int]] = field(factory=dict)
    _made: dict[Value, Value] = field(factory=dict)

    @classmethod
    def of(cls, tracer: Tracer, bounds: Bounds, outputs: Iterable[Value]) -> Sums:
        """Look at the sums that some outputs need."""
        made = cls(tracer, bounds)
        values = live(outputs)
        inner = {
            operand
            for value in values
            if value.op is Op.TOTAL or (value.op is Op.MULTIPLY and any(each.constant for each in value.operands))
            for operand in value.operands
        }
        for value in values:
            if value.op is Op.TOTAL and value not in inner:
                made._sums[value] = found = _Sum()
                found.add(value)
        made._pack()
        made._share()
        return made

    def rewritten(self, output: Value) -> Value:
        """A value, over sums that were rewritten."""
        for value in live([output], lambda one: one in self._made):
            if value in self._made:
                continue
            total = self._sums.get(value)
            operands = tuple(self._made[operand] for operand in value.operands) if total is None else ()
            if total is not None:
                made = self._total(value, total)
            elif operands == value.operands:
                made = value
            else:
                made = self.tracer.over(value, operands)
            if made is not value and value in self.bounds.known:
                self.bounds.note(made, *self.bounds.known[value])
            self._made[value] = made
        return self._made[output]

    def _pack(self) -> None:
        """Put codes together, the first that fit, as long as a pack is not too large: those that may be null last."""
        codes: dict[Value, int] = {}
        for total in self._sums.values():
            codes |= {code: len(table) for code, table in total.tables.items() if len(table) <= _FEW_CODES}
        together: list[Value] = []
        for code in sorted(codes, key=lambda one: (one.data.otherwise is not None, one.number)):
            if together and prod(codes[one] for one in (*together, code)) > _MOST_PACKED:
                self._packs.append((tuple(together), tuple(codes[one] for one in together)))
                together = []
            together.append(code)
        if together:
            self._packs.append((tuple(together), tuple(codes[one] for one in together)))

    def _share(self) -> None:
        """Find for each sum the earlier one with which it shares most."""
        by_term: dict[Value, list[Value]] = {}
        for value, total in self._sums.items():
            near = {one: None for term in total.terms for one in by_term.get(term, ()) if one not in self._shared}
            found = {one: dict(total.terms.items() & self._sums[one].terms.items()) for one in near}
            best = max(found, key=lambda one: len(found[one]), default=None)
            if best is not None and len(found[best]) > 1:
                # In the order of the sum, which does not depend on how values are hashed.
                self._shared[value] = self._shared[best] = {
                    term: by for term, by in total.terms.items() if term in found[best]
                }
            else:
                for term in total.terms:
                    by_term.setdefault(term, []).append(value)

    def _total(self, value: Value, total: _Sum) -> Value:
        shared = self._shared.get(value, {})
        own = {term: by for term, by in total.terms.items() if term not in shared}
        parts = [self._added(value, self._grouped(value, shared))] if shared else []
        parts += [*self._grouped(value, own), *self._looked_up(total.tables)]
        if total.known or not parts:
            parts.append(self.tracer.constant(total.known))
        return self._added(value, parts)

    def _grouped(self, value: Value, terms: dict[Value, int]) -> list[Value]:
        """What is multiplied by the same number is added first."""
        by_factor: dict[int, list[Value]] = {}
        for term, by in terms.items():
            by_factor.setdefault(by, []).append(self.rewritten(term))
        return [
            self.tracer.multiply(self.tracer.constant(by), self._added(value, parts)) for by, parts in by_factor.items()
        ]

    def _added(self, value: Value, parts: Sequence[Value]) -> Value:
        return parts[0] if len(parts) == 1 else self.tracer.over(value, tuple(parts))

    def _looked_up(self, tables: dict[Value, tuple[int, ...]]) -> list[Value]:
        """The tables of each pack as one."""
        packed = {code for codes, _ in self._packs for code in codes}
        found = [self.tracer.table(code, Kind.WHOLE, table) for code, table in tables.items() if code not in packed]
        for codes, sizes in self._packs:
            each = [tables.get(code, (0,) * size) for code, size in zip(codes, sizes, strict=True)]
            if not any(map(any, each)):
                continue
            code = codes[0] if len(codes) == 1 else self.tracer.pack(codes, sizes)
            found.append(self.tracer.table(code, Kind.WHOLE, [sum(values) for values in product(*each)]))
        return found
