"""Carries out every mend that is printed about broken rule files: `python tests/benchmarks/mends.py [SLIPS] [SEED] [LINES]`.

The files are those of tests/cases/problems, and SLIPS rule files of this repository (of at most LINES lines) with one slip
each, drawn by SEED. Prints the share of mends after which their problem is gone, how many left more problems than before,
and each mend that did either.
"""

import sys
from collections import Counter
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from tests.language.mending import SEED, Trial, cases, mutations, trials_of, whole_files

GOAL = 99.5


def told(words: str, trial: Trial) -> None:
    line = trial.broken.text.split("\n")[trial.edit.place.line - 1].strip()
    print(f"{words}: {trial.broken.name}\n  {line[:160]}\n  {trial.problem}")
    for problem in trial.after[:3]:
        print(f"    after: {problem}")


def main() -> int:
    given = [int(each) for each in sys.argv[1:]]
    slips, seed, lines = (*given, *(3_000, SEED, 500)[len(given) :])
    broken = [*cases(), *mutations(whole_files(lines), slips, seed)]
    trials = [trial for each in broken for trial in trials_of(each)]
    failed = [trial for trial in trials if not trial.holds]
    harmed = [trial for trial in trials if trial.harms]
    for trial in failed:
        told("the problem is still there", trial)
    for trial in harmed:
        told("more problems than before", trial)
    share = 100 * (1 - len(failed) / len(trials))
    print(
        f"{len(broken):,} broken files, {len(trials):,} mends carried out: {share:.2f} % hold, {len(harmed)} leave more problems"
    )
    print(
        "most frequent:",
        ", ".join(f"{code} {n}" for code, n in Counter(t.problem.code for t in trials).most_common(12)),
    )
    return 0 if share >= GOAL and not harmed else 1


if __name__ == "__main__":
    sys.exit(main())
