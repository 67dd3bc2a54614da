"""Complete records, in a quarter of the time: a second generated function, made when the first such record comes.

A record is complete where all that the rules read was recorded, as one value. The lines are those of complete_rules.py,
written once; how they come to their values differs with what is at hand. Where a record is not complete, or a value
that is worked out is open all the same, the function gives None, and the one for any record is asked.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import cached_property
from operator import itemgetter
from typing import Any

from attrs import field, frozen

from koirules.engines.scalar.complete_rules import CompleteWriter, Written
from koirules.engines.scalar.emitter import Constants
from koirules.engines.scalar.evaluator import tupled
from koirules.engines.scalar.inlining import inlined
from koirules.engines.scalar.sure_emitter import Input, OpenToEveryFishError
from koirules.standard.parts import Rules, Setting

Sure = tuple[int, int, tuple[int, ...], int, tuple[Any, ...]]
"""What came of a complete record: the bit of its grade, hundredths of the score and of each section, bits of the limits
that bite, in the order of the rules, and what was worked out for them, of which its reasons are told."""

_MOST_TOGETHER = 20


@frozen
class Complete:
    """The rules over complete records, compiled in several ways.

    inputs: what is taken of a record. asked: the keys of which it matters only whether something stands under them.
    """

    _writer: CompleteWriter | None
    _written: Written = field(repr=False)
    inputs: tuple[Input, ...]
    asked: tuple[str, ...]

    @classmethod
    def of(cls, rules: Rules, settings: Mapping[str, Setting]) -> Complete:
        """Write the rules of a standard out, with the settings of this run."""
        writer = CompleteWriter(rules, settings)
        try:
            written = writer.written()
        except OpenToEveryFishError:
            return cls(None, Written((), (), (), ()), (), ())
        return cls(writer, written, tuple(writer.emit.inputs.values()), tuple(writer.emit.asked))

    @cached_property
    def run(self) -> Callable[[Mapping[str, Any]], Sure | None]:
        """Grades the readings of a record; None where it is not complete."""
        constants = self.constants()
        lines = [f"q{number} = {constants.named(key)} in record" for number, key in enumerate(self.asked)]
        lines += taken(self.inputs, [f"r{number}" for number in range(len(self.inputs))], constants)
        unsure: list[str] = []
        for number, one in enumerate(self.inputs):
            if one.steps:
                lines.append(f"{one.name} = {constants.named(one.codes)}[r{number}]")
            elif one.paired:
                lines.append(f"{one.name} = r{number}[0]")
                unsure.append(f"{one.name} != r{number}[1]")
            else:
                lines.append(f"{one.name} = r{number}")
                unsure.append(f"{one.name} is None")
        for first in range(0, len(unsure), _MOST_TOGETHER):
            lines.append(f"if {' or '.join(unsure[first : first + _MOST_TOGETHER])}: return None")
        return self.made(lines, constants)

    def constants(self) -> Constants:
        """What the lines name, to which a function of its own may add: several may be made at the same time."""
        return Constants() if self._writer is None else Constants(self._writer.emit.constants)

    @cached_property
    def run_values(self) -> Callable[[Sequence[Any]], Sure | None]:
        """Grades a row of values (`Input.value`): of all inputs, and then the truths of what is asked."""
        names = [*(one.name for one in self.inputs), *(f"q{number}" for number in range(len(self.asked)))]
        return self.made([f"{', '.join(names)}, = record"] if names else [], self.constants())

    def told_by(self, said: Sequence[Mapping[Any, Any]], order: Sequence[int]) -> Callable[[tuple[Any, ...]], Any]:
        """What gives, of what was worked out of a record, what each of its reasons says.

        said: of each reason, by its key (`Written.keys`); order: of the reasons among these.
        """
        if self._writer is None:
            return _never
        written, constants = self._written, self.constants()
        told = [written.keys[i].told(said[i], constants) for i in order]
        lines = [f"{''.join(f'{name}, ' for name in written.worked)}= record"] if written.worked else []
        lines += inlined([*written.again, f"return {tupled(told)}"])
        return self._writer.made("def run(record):\n " + "\n ".join(lines) + "\n", constants)

    def made(self, lines: Sequence[str], constants: Constants) -> Callable[[Any], Sure | None]:
        """The function that first takes its values by some lines, of which an error says that a record is not complete."""
        if self._writer is None:
            return _never
        inside = "\n  ".join([*lines, *self._written.body])
        source = f"def run(record):\n try:\n  {inside}\n except (KeyError, TypeError):\n  return None\n"
        return self._writer.made(source, constants)


def taken(inputs: Sequence[Input], names: Sequence[str], constants: Constants) -> list[str]:
    """The lines that take what stands under the keys of inputs."""
    keys = [one.key for one in inputs]
    if not keys:
        return []
    # A getter of one key gives what stands there, of several a tuple.
    return [f"{', '.join(names)} = {constants.named(itemgetter(*keys))}(record)"]


def _never(_: object) -> None:
    return None
