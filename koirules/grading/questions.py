"""What a grade that is not settled hangs on, and which question to ask next.

The measure, defined here and nowhere else: a question is worth the number of grades that its answer rules out. For each
answer a of a trait (answers.py), with share p(a) of the trait's range (uniform), the record is graded with that answer and
the grades still possible are counted; the most decisive trait has the least expected number

    sum over a of p(a) * |grades possible after a|

and of equals the one with the least expected width of the score, sum p(a) * (highest - lowest score); then the first in
the file. This is the expected value of information of a question with the loss "grades still possible" (Raiffa,
Schlaifer, Applied Statistical Decision Theory, 1961), one step ahead, as decision trees choose their splits (Quinlan,
Induction of decision trees, Machine Learning 1, 1986); both from memory.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence

from attrs import frozen

from koirules.grading.answers import Answer, answers_to
from koirules.grading.evaluator import Evaluator, Trace, compile_rules
from koirules.grading.single import Grader
from koirules.standard.cuts import Cuts, cuts_of
from koirules.standard.parts import Setting
from koirules.vocabulary.readings import Reading
from koirules.vocabulary.traits import Trait


@frozen
class Outlook:
    """What an answer would do: the grades possible after it, best first."""

    answer: Answer
    possible: tuple[str, ...]

    @property
    def settles(self) -> bool:
        """Whether the fish would be settled."""
        return len(self.possible) == 1


@frozen
class Question:
    """A trait that the grade hangs on, with what its answers would do.

    expected_grades: how many grades would still be possible after its answer, on average. expected_width: how wide the
    score would still be, in points.
    """

    trait: Trait
    outlooks: tuple[Outlook, ...]
    expected_grades: float
    expected_width: float

    @property
    def words(self) -> str:
        """What the answers would do, in a line: `odome: at least 3 % settles it at keep; below that keep or sell`."""
        told = []
        for outlook in _gathered(self.outlooks):
            answers, possible = outlook
            told.append(
                f"{answers} settles it at {possible[0]}"
                if len(possible) == 1
                else f"{answers}: {' or '.join(possible)}"
            )
        return f"{self.trait.name}: {'; '.join(told)}"


@frozen
class Questioner:
    """Asks a compiled standard what a fish hangs on."""

    grader: Grader
    evaluator: Evaluator
    cuts: Mapping[str, Cuts]
    answers: Mapping[str, tuple[Answer, ...]]

    @classmethod
    def of(cls, grader: Grader, settings: Mapping[str, Setting]) -> Questioner:
        """The questioner of a compiled standard; its traits in the order in which the file reads them."""
        cuts = cuts_of(grader.rules, settings)
        traits = grader.rules.traits
        evaluator = compile_rules(grader.rules, settings, still_asking=True)
        return cls(grader, evaluator, cuts, {name: answers_to(traits[name], cut) for name, cut in cuts.items()})

    def questions(self, record: Mapping[str, Reading], untold: Collection[str] = ()) -> tuple[Question, ...]:
        """The unrecorded traits that the grade of a record hangs on, most decisive first; empty where it is settled.

        untold: traits that cannot be told. A trait none of whose answers changes anything is not among them.
        """
        now = self.evaluator.run(record, untold)
        if now.possible.bit_count() == 1:
            return ()
        asked = (self._question(name, record, untold, now) for name in self.answers if name not in record)
        found = [question for question in asked if question is not None and question.trait.name not in untold]
        return tuple(sorted(found, key=lambda question: (question.expected_grades, question.expected_width)))

    def _question(
        self, name: str, record: Mapping[str, Reading], untold: Collection[str], now: Trace
    ) -> Question | None:
        outlooks = []
        grades = width = 0.0
        changes = False
        for answer in self.answers[name]:
            trace = self.evaluator.run({**record, name: answer.reading}, untold)
            changes = changes or _matters(trace) != _matters(now)
            grades += answer.share * trace.possible.bit_count()
            width += answer.share * (trace.score[1] - trace.score[0]) / 100
            outlooks.append(Outlook(answer, self.grader.named(trace.possible)))
        if not changes:
            return None
        return Question(self.grader.rules.traits[name], tuple(outlooks), grades, width)


def _matters(trace: Trace) -> tuple[object, ...]:
    """What of a trace later answers can still build on."""
    return trace.possible, trace.score, trace.sections, trace.limits, trace.grades


def _gathered(outlooks: Sequence[Outlook]) -> list[tuple[str, tuple[str, ...]]]:
    """Answers that come to the same, together, in the order of the first."""
    together: dict[tuple[str, ...], list[str]] = {}
    for outlook in outlooks:
        together.setdefault(outlook.possible, []).append(outlook.answer.words)
    return [(" or ".join(words), possible) for possible, words in together.items()]
