"""Runs every command over broken files with drawn words: `python -m tests.benchmarks.hostile_commands [TRIALS] [FIRST]`.

Run it from the root of the checkout. Prints each trial that ended in a traceback, in another status than 0, 1 or 2, or not
within a bounded time, and how the others ended; exit status 1 where there was one. Without words it makes 4,600 trials.
"""

import sys
import tempfile
from collections import Counter
from pathlib import Path

from tests.commands.hostile import tried


def main(trials: int = 4_600, first: int = 0) -> int:
    """Make the trials of these numbers."""
    ends: Counter[tuple[str, int]] = Counter()
    slowest = 0.0
    bad = 0
    with tempfile.TemporaryDirectory() as folder:
        for number in range(first, first + trials):
            for _, done in tried(range(number, number + 1), Path(folder), every=True):
                ends[done.words[0], done.status] += 1
                slowest = max(slowest, done.seconds)
                if done.wrong:
                    bad += 1
                    print(f"{number}: {done.words} {done.wrong}", flush=True)
    for (name, status), count in sorted(ends.items()):
        print(f"{name:<12} status {status}: {count}")
    print(f"{trials} trials, {bad} ended badly; the slowest took {slowest:.1f} s of processor time")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main(*map(int, sys.argv[1:])))
