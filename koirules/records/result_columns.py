"""The columns of a table of results: the same in every format that is a table."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal

from attrs import field

from koirules.records.not_graded import NotGraded, Row
from koirules.records.recorded_values import Recorded
from koirules.results.result import LookResult, Result
from koirules.values import frozen
from koirules.vocabulary.kinds import shortest

_BEFORE_SECTIONS = ("fish", "grade", "possible", "score", "score_low", "score_high")
_AFTER_SECTIONS = ("faults", "lifts", "hangs_on", "why")
_OF_SILENCE = ("assumed", "rests_on_silence")
_OF_LOOKS = ("looks", "changed", "carried")
_OF_DECISIONS = ("by_rules", "decided_by", "decision_reason")
_OF_ROUNDS = ("kept_by", "left_in", "tied_in", "open_in", "sent_to", "next_look", "course")


@frozen
class ResultColumns:
    """The headings of a table of results, and the sections and labels whose columns are among them.

    decided, rounds, silent, again: whether a person decided about a fish, whether there was a selection, whether anything was
    assumed of a fish because nobody mentioned it, and whether there is anything to look at again. looks: whether a fish had
    several looks, or carried something forward. recorded: the values beside the results.
    """

    sections: tuple[str, ...]
    labels: tuple[str, ...]
    decided: bool = False
    rounds: bool = False
    silent: bool = False
    again: bool = False
    looks: bool = False
    recorded: Recorded = field(factory=Recorded, hash=False)

    @property
    def headings(self) -> tuple[str, ...]:
        """Every heading, in order; a label that is called like another column says that it is a label."""
        ends = tuple(f"{section}_{end}" for section in self.sections for end in ("low", "high"))
        ours = (*_BEFORE_SECTIONS, *ends, *_AFTER_SECTIONS)
        ours += ("look_again",) if self.again else ()
        ours += _OF_SILENCE if self.silent else ()
        ours += _OF_LOOKS if self.looks else ()
        ours += _OF_DECISIONS if self.decided else ()
        ours += _OF_ROUNDS if self.rounds else ()
        ours += tuple(f"{one} (recorded)" if one in ours else one for one in self.recorded.headings)
        return (*ours, *(f"{label} (label)" if label in ours else label for label in self.labels))

    def row(self, result: Row) -> Iterator[str | Decimal | None]:
        """The cells of a result, one for each heading: texts, numbers, and None where a cell is blank."""
        if isinstance(result, NotGraded):
            told = {"fish": result.fish, "why": result.why}
            yield from (told.get(heading) for heading in self.headings[: len(self.headings) - len(self.labels)])
            yield from (result.labels.get(label) for label in self.labels)
        else:
            yield from self._graded(result)
            yield from self.recorded.of(result.fish)
            yield from (result.labels.get(label) for label in self.labels)

    def _graded(self, result: Result) -> Iterator[str | Decimal | None]:
        yield result.fish
        yield result.grade
        yield "|".join(result.possible)
        yield from (result.score, result.score_low, result.score_high)
        for name in self.sections:
            section = result.sections.get(name)
            yield section.low if section else None
            yield section.high if section else None
        yield from (";".join(names) for names in (result.faults, result.lifts, result.hangs_on))
        yield result.why
        if self.again:
            yield "; ".join(one.words for one in result.look_again)
        if self.silent:
            yield "|".join(result.assumed)
            yield "yes" if result.rests_on_silence else "no"
        if self.looks:
            yield "; ".join(look_words(look) for look in result.looks)
            yield "; ".join(change for look in result.looks for change in look.changes)
            yield "|".join(result.carried)
        if self.decided:
            decision = result.decision
            yield "|".join(result.by_rules) if decision else None
            yield from (decision.by, decision.reason) if decision else (None, None)
        if self.rounds:
            yield "|".join(result.kept_by)
            yield from (result.left_in, result.tied_in, "|".join(result.open_in), result.sent_to)
            yield None if result.next_look is None else result.next_look.isoformat()
            yield "; ".join(f"{step.title}: {step.why}" for step in result.course)


def columns_of(results: Sequence[Row], recorded: Recorded | None = None) -> ResultColumns:
    """Find the columns that results need: their sections, every label that any of them carries, and what was recorded."""
    graded = [result for result in results if not isinstance(result, NotGraded)]
    sections = dict.fromkeys(name for result in graded for name in result.sections)
    labels = dict.fromkeys(label for result in results for label in result.labels)
    decided = any(result.decision is not None for result in graded)
    rounds, silent = any(result.course for result in graded), any(result.assumed for result in graded)
    looks = any(result.looks or result.carried for result in graded)
    again = any(result.look_again for result in graded)
    return ResultColumns(tuple(sections), tuple(labels), decided, rounds, silent, again, looks, recorded or Recorded())


def look_words(look: LookResult) -> str:
    """What came of a fish at a look: `look 1: hold, 61.5`."""
    low, high = (shortest(end) for end in (look.score_low, look.score_high))
    return f"look {look.number}: {' or '.join(look.possible)}, {low if low == high else f'{low} to {high}'}"
