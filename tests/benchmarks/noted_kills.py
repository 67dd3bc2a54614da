"""Kills a session of `koirules note` at random moments and looks for answered lines that are gone.

Run it as `python -m tests.benchmarks.noted_kills [KILLS]` from the root of the checkout; 200 kills take some minutes.
"""

import sys
import tempfile
from pathlib import Path
from random import Random

from tests.commands.noting import acknowledged_until_killed, fish_in, said_in


def main(kills=200):
    """Print how many lines were answered, and how many of them were lost."""
    random, answered, lost = Random(5), 0, 0
    for kill in range(kills):
        with tempfile.TemporaryDirectory() as name:
            folder = Path(name)
            done = acknowledged_until_killed(folder, "lot.csv", 1, random.uniform(0, 0.5))
            kept = said_in(folder, "lot.csv")
            rows = fish_in(folder / "lot.csv")
            answered += len(done)
            lost += sum(f"{number}: sandan, kiwa sharp" not in kept or str(number) not in rows for number in done)
        if kill % 20 == 19:
            print(f"{kill + 1} kills: {answered} lines answered, {lost} lost", flush=True)
    return lost


if __name__ == "__main__":
    sys.exit(main(*map(int, sys.argv[1:])))
