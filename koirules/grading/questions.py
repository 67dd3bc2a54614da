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

from collections.abc import Collection, Iterable, Mapping, Sequence
from fractions import Fraction

from attrs import evolve, field

from koirules.candidates.answers import Answer, answer_words, answers_left, answers_to
from koirules.engines.scalar.evaluator import Evaluator, Trace, compile_rules
from koirules.grading.single import Grader
from koirules.program.records import RecordedAs
from koirules.results.parts_read import traits_in
from koirules.results.record import Record
from koirules.results.result import Result
from koirules.standard.cuts import cuts_of
from koirules.standard.parts import Part, Setting
from koirules.values import frozen
from koirules.vocabulary.colour_readings import ColourReadings
from koirules.vocabulary.kinds import Patches
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.readings import Reading, is_sure
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
    score would still be, in points. changes: whether one of its answers alone changes anything.
    """

    trait: Trait
    outlooks: tuple[Outlook, ...]
    expected_grades: Fraction
    expected_width: Fraction
    changes: bool

    def __repr__(self) -> str:
        return f"Question({self.trait.name!r}, {len(self.outlooks)} answers, {float(self.expected_grades):.2f} grades expected)"

    @property
    def gathered(self) -> tuple[tuple[str, tuple[str, ...]], ...]:
        """The answers in words, those that come to the same grades together, with these grades."""
        together: dict[tuple[str, ...], list[Answer]] = {}
        for outlook in self.outlooks:
            together.setdefault(outlook.possible, []).append(outlook.answer)
        return tuple((answer_words(self.trait, answers), possible) for possible, answers in together.items())

    def told(self, titles: Mapping[str, str]) -> str:
        """What its answers would do, those that settle the fish first: `at least 3 %: it is keep; below 3 %: still hold or sell`.

        titles: what each grade is called.
        """
        settling, others = [], []
        for answers, possible in self.gathered:
            plain, grades = answers.replace("_", " "), " or ".join(titles[name] for name in possible)
            if len(possible) == 1:
                settling.append(f"{plain}: it is {grades}")
            else:
                others.append(f"{plain}: still {grades}")
        return "; ".join([*settling, *others])


@frozen
class Known:
    """What is known of a fish while it is asked about.

    readings: by trait name. untold: traits that cannot be told. unnoted: traits that nobody noted down, so that no rule
    finds them recorded, though their value may be asked for still. What is neither may yet be recorded: of all else,
    `is recorded` is open.
    """

    readings: Mapping[str, Reading] = field(factory=dict, hash=False)
    untold: frozenset[str] = frozenset()
    unnoted: frozenset[str] = frozenset()

    @property
    def said(self) -> dict[str, bool]:
        """Of which traits it is said whether they are recorded."""
        return {**dict.fromkeys(self.untold | self.unnoted, False), **dict.fromkeys(self.readings, True)}

    def told(self, trait: Trait, reading: Reading | None) -> Known:
        """The same fish after a trait was asked for; None where it cannot be told. What is not sure is not asked again."""
        name = trait.name
        readings = self.readings if reading is None else {**self.readings, name: reading}
        sure = reading is not None and is_sure(trait.kind, reading)
        return evolve(self, readings=readings, untold=self.untold - {name} if sure else self.untold | {name})

    def noted(self, asked: Iterable[Trait], names: Collection[str]) -> Known:
        """The same fish after it was asked which of several traits are to be noted; all others of them are not noted."""
        return evolve(self, unnoted=self.unnoted | {trait.name for trait in asked} - set(names))


_MOST_ASKED = 2_000
"""For how many fish that are not settled results say what their grades hang on: it takes some milliseconds each."""


@frozen
class Questioner:
    """Asks a compiled standard what a fish hangs on. evaluator: the standard, told what is recorded."""

    grader: Grader
    evaluator: Evaluator
    answers: Mapping[str, tuple[Answer, ...]]

    @classmethod
    def of(cls, grader: Grader, settings: Mapping[str, Setting]) -> Questioner:
        """The questioner of a compiled standard; its traits in the order in which the file reads them."""
        rules = grader.rules
        answers = {name: answers_to(rules.traits[name], cut) for name, cut in cuts_of(rules, settings).items()}
        return cls(grader, compile_rules(rules, settings, RecordedAs.SAID), answers)

    def hangs_on(self, record: Mapping[str, Reading]) -> tuple[Question, ...]:
        """What the grade of a record hangs on, most decisive first; `is recorded` is answered as the record stands."""
        return self.questions(Known(record, unnoted=frozenset(self.answers)))

    def with_hangs_on(self, results: Sequence[Result], records: Iterable[Record]) -> tuple[Result, ...]:
        """The results of records; those that are not settled with the traits that their grades hang on, most decisive first.

        Where very many are not settled, none of them has these traits.
        """
        still = {one.fish: one for one in results if one.grade is None and not one.hangs_on}
        if len(still) > _MOST_ASKED:
            return tuple(results)
        told: dict[str, tuple[str, ...]] = {}
        for record in records:
            if record.fish in still:
                now = len(still[record.fish].possible)
                asked = self.hangs_on(record.readings)
                deciding = [one for one in asked if one.expected_grades < now] or asked
                told[record.fish] = tuple(one.trait.name for one in deciding)
        return tuple(evolve(one, hangs_on=told[one.fish]) if one.fish in told else one for one in results)

    def thin_ahead(self, record: Mapping[str, Reading]) -> tuple[Trait, ...]:
        """The maps of a record with thin patches of which the rules ask what they grow to: nothing said today settles that."""
        return tuple(
            self.grader.rules.traits[name]
            for name, reading in record.items()
            if name in self.evaluator.ahead.reads
            and isinstance(reading, PatchMap)
            and any(p.thin for p in reading.patches)
        )

    def trace(self, known: Known) -> Trace:
        """What a standard makes of what is known so far."""
        return self.evaluator.run(known.readings, known.said)

    def is_settled(self, known: Known) -> bool:
        """Whether nothing that may yet be told changes the grade."""
        return self.trace(known).possible.bit_count() == 1

    def questions(self, known: Known, together: bool = False) -> tuple[Question, ...]:
        """What to ask of a fish that is still being recorded, most decisive first; empty where nothing can change its grade.

        Those are the traits of which one answer alone changes something; where there are none, those that an open part
        reads, since two answers together may. together: take both kinds in any case.
        """
        now = self.trace(known)
        if now.possible.bit_count() == 1:
            return ()
        names = [name for name in self.answers if self._is_open(name, known.readings) and name not in known.untold]
        asked = [question for name in names if (question := self._question(name, known, now)) is not None]
        found = [question for question in asked if question.changes]
        if together or not found:
            read = self.read_by_open(now)
            found = [question for question in asked if question.changes or question.trait.name in read]
        return tuple(sorted(found, key=lambda question: (question.expected_grades, question.expected_width)))

    def to_place(self, known: Known, ordered_by: Collection[str], by_score: bool) -> tuple[Question, ...]:
        """What to ask of a fish of a settled grade whose place in a round is not settled yet, what narrows it most first.

        ordered_by: the traits that the round orders by. by_score: whether it orders by the score or a section.
        """
        now = self.trace(known)
        wanted = set(ordered_by)
        if by_score and now.score[0] < now.score[1]:
            wanted |= self._read_for_score(now)
        names = [n for n in self.answers if n in wanted and self._is_open(n, known.readings) and n not in known.untold]
        asked = [question for name in names if (question := self._question(name, known, now)) is not None]
        return tuple(sorted(asked, key=lambda question: question.expected_width))

    def _read_for_score(self, now: Trace) -> frozenset[str]:
        """The traits that are read by criteria whose points are still open."""
        rules = self.grader.rules
        found: list[Part] = [
            part for part, (_, _, low, high) in zip(rules.points, now.points, strict=True) if low < high
        ]
        found.extend(part for part, (low, high) in zip(rules.extras, now.extras, strict=True) if low != high)
        return frozenset(trait.name for part in found for trait in traits_in(part))

    def _is_open(self, name: str, record: Mapping[str, Reading]) -> bool:
        """Whether a trait was not recorded, or not as one value."""
        return name not in record or not is_sure(self.grader.rules.traits[name].kind, record[name])

    def read_by_open(self, now: Trace) -> frozenset[str]:
        """The traits that are read by something that is still open."""
        rules = self.grader.rules
        found: list[Part] = [
            part for part, (_, _, low, high) in zip(rules.points, now.points, strict=True) if low < high
        ]
        bites = [state[4:] for state in now.limits]
        found.extend(part for part, (low, high) in zip(rules.extras, now.extras, strict=True) if low != high)
        found.extend(part for part, (low, high) in zip(rules.limits, bites, strict=True) if low != high)
        found.extend(part for part, (low, high) in zip(rules.grades, now.grades, strict=True) if low != high)
        return frozenset(trait.name for part in found for trait in traits_in(part))

    def _question(self, name: str, known: Known, now: Trace) -> Question | None:
        """The question of a trait, with what each of its answers would do; None where only one answer is left."""
        record = known.readings
        said = known.said if name in known.unnoted else {**known.said, name: True}
        answers: Sequence[Answer] = self.answers[name]
        if name in record:
            answers = answers_left(answers, self.grader.rules.traits[name], record[name])
        if len(answers) < 2 and name in record:
            return None
        # Fractions, so that of two questions that narrow as much the last bit of a double does not decide.
        whole = sum((answer.share for answer in answers), Fraction(0))
        outlooks = []
        grades = width = Fraction(0)
        # What a grown trait makes of a map shows only when the map is there.
        kind = self.grader.rules.traits[name].kind
        changes = isinstance(kind, Patches) and name not in record and name in self.evaluator.ahead.reads
        for answer in answers:
            trace = self.evaluator.run(told_of(record, name, answer.reading), said)
            changes = changes or _matters(trace) != _matters(now)
            share = answer.share / whole
            grades += share * trace.possible.bit_count()
            width += share * (trace.score[1] - trace.score[0]) / 100
            outlooks.append(Outlook(answer, self.grader.named(trace.possible)))
        return Question(self.grader.rules.traits[name], tuple(outlooks), grades, width, changes)


def told_of(record: Mapping[str, Reading], name: str, reading: Reading) -> dict[str, Reading]:
    """A record with an answer; of a map, or colour readings, that shall still be taken nothing is known but that they are."""
    return dict(record) if isinstance(reading, PatchMap | ColourReadings) else {**record, name: reading}


def _matters(trace: Trace) -> tuple[object, ...]:
    """What of a trace later answers can still build on."""
    return trace.possible, trace.score, trace.sections, trace.limits, trace.grades
