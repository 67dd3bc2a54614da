"""Kills a session of `koirules ask` at random moments and looks for acknowledged answers that are gone.

An answer is acknowledged once the next question stands on the screen. After each kill every acknowledged answer must be in the
file, and taking back must undo the answers of the journal one by one, the last first, with none left in the file at the end.
Run it as `python -m tests.benchmarks.asked_kills [KILLS]` from the root of the checkout; 130 kills take some minutes.
"""

import sys
import tempfile
import time
from pathlib import Path
from random import Random

import koirules
from koirules.commands.asking.session_file import Book
from koirules.records.asked_journal import Answered, journal_of, read_journal
from tests.commands.test_ask_killed import RULES, cells_of, rows_of, twenty_fish
from tests.commands.tub import Sorter

MOST_ANSWERS = 14
LONGEST_WAIT = 0.06
"""Seconds between the last key and the kill, at most: a step of the file takes some milliseconds."""


def main(kills: int = 130) -> int:
    """Print how many answers were acknowledged, how many of them were lost, and how many could not be taken back."""
    random, acknowledged, lost, kept = Random(5), 0, 0, 0
    for kill in range(kills):
        with tempfile.TemporaryDirectory() as name:
            folder = Path(name)
            answered, fish = _asked_until_killed(folder, random)
            out = folder / "lot.csv"
            held = cells_of(rows_of(out)) if out.exists() else {}
            acknowledged += len(answered)
            lost += sum((one, trait) not in held for one, trait in answered if trait in fish[one])
            kept += _left_after_taking_back(folder)
        if kill % 10 == 9:
            print(
                f"{kill + 1} kills: {acknowledged} answers acknowledged, {lost} lost, {kept} not taken back", flush=True
            )
    return 1 if lost or kept else 0


def _asked_until_killed(folder: Path, random: Random) -> tuple[list[tuple[str, str]], dict[str, dict[str, str]]]:
    """Answer some questions and pull the plug while the last answer is on its way; the answers that were acknowledged."""
    rules = folder / "rules.koi"
    rules.write_text(RULES, encoding="utf-8")
    titles = {trait.title: name for name, trait in koirules.load_standard(rules).traits.items()}
    fish = dict(twenty_fish())
    sorter = Sorter([rules, "--out", folder / "lot.csv"], titles, fish)
    acknowledged: list[tuple[str, str]] = []
    for _ in range(random.randrange(1, MOST_ANSWERS)):
        # What was answered before this question was shown is acknowledged; what is typed now is not yet.
        before = len(sorter.answered)
        if not sorter.answer_next():
            break
        acknowledged = sorter.answered[:before]
    time.sleep(random.uniform(0, LONGEST_WAIT))
    sorter.kill()
    return acknowledged, fish


def _left_after_taking_back(folder: Path) -> int:
    """How many steps of the journal could not be taken back, the last first, and how many answers are in the file after that."""
    out = folder / "lot.csv"
    if not out.exists():
        return 0
    book = Book.open(out, koirules.load_standard(folder / "rules.koi"), None, ())
    steps = read_journal(journal_of(out))
    assert isinstance(steps, list), steps
    wrong = 0
    for step in reversed(steps):
        before = cells_of(rows_of(out))
        wrong += book.back() != step.fish
        changed = {key for key in before if cells_of(rows_of(out)).get(key) != before[key]}
        wrong += isinstance(step, Answered) and (step.fish, step.trait) not in changed
    book.hold.release()
    answers = {(step.fish, step.trait) for step in steps if isinstance(step, Answered)}
    return wrong + len(answers.intersection(cells_of(rows_of(out))))


if __name__ == "__main__":
    sys.exit(main(*map(int, sys.argv[1:])))
