"""Which look to take next at a fish that is being recorded: the one that settled fish of its kind needed most often.

The measure, defined here and nowhere else: a look is worth how surely it is one of the last that a fish needs. Sixteen
fish are thought up that could be this one: each open trait gets one of its answers (answers.py) at random, by the share of
its range, or as often as other fish of the batch had it. For each of them the looks that settle it are found afterwards:
all are taken away again, the least decisive (questions.py, with the same shares) first, and those without which the grade
would be open again are put back. A look that is one of n such looks counts 1 / n for this fish, so that the ways that end
soon count most; the look with the greatest sum comes next, of equals the more decisive one.

It stands for the expected number of questions left, which is too dear to work out. To ask what small certificates of
drawn outcomes hold is how functions are evaluated at the least expected cost (Deshpande, Hellerstein, Kletenik,
Approximation algorithms for stochastic Boolean function evaluation, SODA 2014; Golovin, Krause, Adaptive submodularity,
JAIR 42, 2011; both from memory). tests/grading/test_asking.py counts small standards out.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction
from random import Random
from typing import TypeVar

from attrs import evolve

from koirules.candidates.answers import within
from koirules.grading.questions import Known, Question, Questioner, told_of
from koirules.results.parts_read import asked_whether_recorded
from koirules.values import frozen
from koirules.vocabulary.readings import Reading
from koirules.vocabulary.traits import Trait

_T = TypeVar("_T")

_FISH_THOUGHT_UP = 16
_FISH_BEFOREHAND = 5
"""As many fish as the shares of the ranges count for, beside the other fish of a batch: one fish says little of the next."""

_LOOKS_BEFORE_NOTING = 1
"""One look is taken before the question of what else is to be noted: it may be a fault that ends the matter."""


@frozen
class Noting:
    """One question about several traits that count only where somebody noted them: which of them are to be noted?"""

    traits: tuple[Trait, ...]


@frozen
class Asker:
    """Chooses what to ask next.

    shares: how likely each answer of a trait is, in the order of its answers. remarks: the traits of which a rule asks
    whether they are recorded.
    """

    questioner: Questioner
    shares: Mapping[str, tuple[Fraction, ...]]
    remarks: frozenset[str]

    @classmethod
    def of(cls, questioner: Questioner, batch: Iterable[Mapping[str, Reading]] = ()) -> Asker:
        """An asker; batch: readings of other fish, which make answers as likely as they were there."""
        weights = {
            name: [_FISH_BEFOREHAND * answer.share for answer in answers]
            for name, answers in questioner.answers.items()
        }
        for readings in batch:
            _count(questioner, readings, weights)
        shares = {name: tuple(weight / sum(listed) for weight in listed) for name, listed in weights.items()}
        return cls(questioner, shares, asked_whether_recorded(questioner.grader.rules))

    def next_one(self, known: Known) -> Question | None:
        """The trait to ask for next; None where nothing that may yet be told changes the grade, or nothing can be told."""
        return self._most_needed(known, self.questioner.questions(known, together=True))

    def next_asked(self, known: Known) -> Question | Noting | None:
        """What to ask next of a fish that was not asked yet what else is to be noted of it; None where nothing is left.

        Traits that count only where they were noted are at first taken as not noted, and then asked for all at once.
        """
        unnoted = self.remarks - known.readings.keys() - known.untold
        plain = self.questioner.questions(evolve(known, unnoted=known.unnoted | unnoted), together=True)
        if plain and len(known.readings) + len(known.untold) < _LOOKS_BEFORE_NOTING:
            return self._most_needed(evolve(known, unnoted=known.unnoted | unnoted), plain)
        now = self.questioner.trace(known)
        if now.possible.bit_count() == 1:
            return None
        # One of them alone may change nothing as long as much else is open, so all that an open part reads are asked for.
        read = self.questioner.read_by_open(now) & unnoted
        if len(read) < 2:
            return self.next_one(known)
        traits = self.questioner.grader.rules.traits
        return Noting(tuple(traits[name] for name in self.questioner.answers if name in read))

    def _most_needed(self, known: Known, questions: Sequence[Question]) -> Question | None:
        if len(questions) < 2:
            return next(iter(questions), None)
        questions = sorted(questions, key=lambda question: (self._expected_grades(question), question.expected_width))
        need = dict.fromkeys((question.trait.name for question in questions), Fraction(0))
        random = Random(0)  # noqa: S311 - the same record is asked the same question
        for _ in range(_FISH_THOUGHT_UP):
            needed = self._needed(known, questions, random)
            for name in needed:
                need[name] += Fraction(1, len(needed))
        return max(questions, key=lambda question: need[question.trait.name])

    def _needed(self, known: Known, questions: Sequence[Question], random: Random) -> list[str]:
        """The looks that settle one fish that is thought up, or bring it as far as it can be brought."""
        run = self.questioner.evaluator.run
        readings, said = dict(known.readings), known.said
        for question in questions:
            name = question.trait.name
            readings = told_of(readings, name, self._drawn(question, random))
            if name not in known.unnoted:
                said[name] = True
        possible = run(readings, said).possible
        needed: list[str] = []
        # What nobody noted goes first: a fish that may be called whole is not asked for its eyes, mouth and fins before.
        least_first = questions[::-1]
        for question in sorted(least_first, key=lambda question: question.trait.name not in known.unnoted):
            name = question.trait.name
            reading, was = readings.get(name), said.get(name)
            _put(readings, name, known.readings.get(name))
            _put(said, name, known.said.get(name))
            if run(readings, said).possible != possible:
                _put(readings, name, reading)
                _put(said, name, was)
                needed.append(name)
        return needed

    def _drawn(self, question: Question, random: Random) -> Reading:
        (drawn,) = random.choices(question.outlooks, [float(share) for share in self._shares(question)])
        return drawn.answer.reading

    def _expected_grades(self, question: Question) -> Fraction:
        """The grades left after a question, as likely as its answers are in this batch."""
        shares = self._shares(question)
        left = (len(outlook.possible) for outlook in question.outlooks)
        weighed = (share * grades for share, grades in zip(shares, left, strict=True))
        return sum(weighed, Fraction(0)) / sum(shares, Fraction(0))

    def _shares(self, question: Question) -> list[Fraction]:
        """How likely each answer of a question is."""
        name = question.trait.name
        by_words = dict(zip((a.words for a in self.questioner.answers[name]), self.shares[name], strict=True))
        return [by_words[outlook.answer.words] for outlook in question.outlooks]


def _put(mapping: dict[str, _T], name: str, value: _T | None) -> None:
    if value is None:
        mapping.pop(name, None)
    else:
        mapping[name] = value


def _count(questioner: Questioner, readings: Mapping[str, Reading], weights: Mapping[str, list[Fraction]]) -> None:
    """Add what was read of one fish: one to the answer that it was, or its part to each that it could have been."""
    for name, reading in readings.items():
        hit = [i for i, answer in enumerate(questioner.answers.get(name, ())) if within(answer, reading) is not None]
        for i in hit:
            weights[name][i] += Fraction(1, len(hit))
