"""How few looks settle a fish: `python tests/benchmarks/questions.py [RULES RECORDS]`, by default the example batch.

Every settled fish of the records is asked about anew, as if its full record were what the sorter sees, in several ways;
a trait that the record lacks cannot be told, and is noted by nobody. Prints how many questions it took, as a share of all
traits that the standard reads and of those that the record of the fish has; whether every grade is that of the full record;
and, looking back, how few traits of the full record would have done.
"""

import sys
import time
from collections.abc import Callable, Iterable, Sequence
from pathlib import Path
from random import Random
from statistics import mean, quantiles

sys.path.insert(0, str(Path(__file__).parents[2]))

from attrs import evolve, frozen

import koirules
from koirules.grading.next_look import Asker, Noting
from koirules.grading.questions import Known, Question
from koirules.records.records import read_records
from koirules.results.record import Record

EXAMPLE = ["tosai_kohaku", str(Path(__file__).parents[2] / "examples" / "01-autumn-lot" / "records.csv")]
Way = Callable[[Asker, Known, bool], Question | Noting | None]


@frozen
class Run:
    """One fish asked about: questions, those that were answered with a reading, and whether the grade is the same."""

    questions: int
    recorded: int
    same: bool


def together(asker: Asker, known: Known, noted: bool) -> Question | Noting | None:
    """What `koirules ask` does."""
    return asker.next_one(known) if noted else asker.next_asked(known)


def one_by_one(asker: Asker, known: Known, noted: bool) -> Question | None:  # noqa: ARG001 - a Way
    """What `koirules ask --thorough` does."""
    return asker.next_one(known)


def as_it_stands(asker: Asker, known: Known, noted: bool) -> Question | None:  # noqa: ARG001 - a Way
    """Stops as soon as the record as it stands has a grade: not what the full record may come to."""
    return asker.next_one(evolve(known, unnoted=frozenset(asker.questioner.answers)))


def one_step(asker: Asker, known: Known, noted: bool) -> Question | None:  # noqa: ARG001 - a Way
    """The fewest grades after the next answer, and no look further ahead."""
    return next(iter(asker.questioner.questions(known)), None)


def ask(standard: koirules.Standard, asker: Asker, way: Way, record: Record, times: list[float]) -> Run:
    """Ask about one fish as if its record were what the sorter sees."""
    known, noted, questions = Known(), False, 0
    while True:
        start = time.perf_counter()
        question = way(asker, known, noted)
        times.append((time.perf_counter() - start) * 1000)
        if question is None:
            same = standard.grader.trace(known.readings).possible == standard.grader.trace(record.readings).possible
            return Run(questions, len(known.readings), same)
        questions += 1
        if isinstance(question, Noting):
            known, noted = known.noted(question.traits, record.readings), True
        else:
            known = known.told(question.trait, record.readings.get(question.trait.name))


def looking_back(asker: Asker, record: Record, tries: int = 60) -> int:
    """The least number of traits of a full record without which its grade would be open, of many orders of leaving out."""
    full = {name: reading for name, reading in record.readings.items() if name in asker.questioner.answers}
    known = Known(full, frozenset(asker.questioner.answers) - full.keys())
    random, fewest = Random(1), len(full)
    for _ in range(tries):
        left = dict(full)
        for name in random.sample(list(full), len(full)):
            without = {other: reading for other, reading in left.items() if other != name}
            if asker.questioner.is_settled(evolve(known, readings=without)):
                left = without
        fewest = min(fewest, len(left))
    return fewest


def told(label: str, counts: Sequence[int], wholes: Sequence[int], note: str) -> None:
    """One line: questions on average with quartiles and extremes, and their share."""
    share = mean(count / whole for count, whole in zip(counts, wholes, strict=True))
    low, middle, high = quantiles(counts, n=4)
    print(
        f"{label:<44} {mean(counts):5.1f}   {min(counts):2d} {low:4.0f} {middle:4.0f} {high:4.0f} {max(counts):3d}"
        f"   {share:5.1%}   {note}"
    )


def main(rules: str, records: str, ways: Iterable[str]) -> None:
    standard = koirules.load_standard(rules)
    batch = read_records(Path(records), standard.traits, ()).records
    settled = [record for record in batch if standard.grade_record(record).grade is not None]
    plain = Asker.of(standard.questioner)
    traits = len(plain.questioner.answers)
    has = [len(plain.questioner.answers.keys() & record.readings.keys()) for record in settled]
    print(
        f"{len(settled)} settled fish of {len(batch)}; the standard reads {traits} traits, a record has {mean(has):.1f}."
    )
    print(f"{'':<44}  mean  least, quartiles, most   of {traits}")
    for label in ways:
        way, others = WAYS[label]
        times: list[float] = []
        runs = []
        for record in settled:
            asker = Asker.of(plain.questioner, [o.readings for o in batch if o is not record]) if others else plain
            runs.append(ask(standard, asker, way, record, times))
        differ = sum(not run.same for run in runs)
        of_record = mean(run.recorded / whole for run, whole in zip(runs, has, strict=True))
        note = f"{of_record:.1%} of its record; {differ} other grades; {mean(times):.0f} ms, most {max(times):.0f} ms"
        told(label, [run.questions for run in runs], [traits] * len(runs), note)
    back = [looking_back(plain, record) for record in settled]
    of_record = mean(count / whole for count, whole in zip(back, has, strict=True))
    told("looking back: traits that would have done", back, [traits] * len(back), f"{of_record:.1%} of its record")


WAYS: dict[str, tuple[Way, bool]] = {
    "together, as likely as in the other fish": (together, True),
    "together, all answers as likely": (together, False),
    "one by one, as likely as in the other fish": (one_by_one, True),
    "one by one, all answers as likely": (one_by_one, False),
    "one by one, one step ahead": (one_step, False),
    "as the record stands": (as_it_stands, True),
}

if __name__ == "__main__":
    main(*(sys.argv[1:3] or EXAMPLE), WAYS)
