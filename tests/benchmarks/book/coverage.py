"""Do the intervals of learnt weights hold the truth? `python tests/benchmarks/book/coverage.py [RUNS]` (500 runs).

Picks of 400 made fish by known weights (5 or more each, their sum 100) with known noise, the prior off, nothing rounded. Wanted:
93 to 97 % over all weights, 90 to 99 % for each.
"""

from __future__ import annotations

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[3] / "plugins" / "book"))

import numpy as np
from koirules_book.learning import How, learn_verdicts
from tests.test_learning import TRUE, made


def main(runs: int) -> None:
    hits = []
    for seed in range(runs):
        parts, _, picks = made(seed)
        found = learn_verdicts(
            parts, np.full(len(TRUE), 100 / len(TRUE)), picks, How(prior=None, rounds=200, seed=seed)
        )
        hits.append([weight.low <= true <= weight.high for weight, true in zip(found.weights, TRUE, strict=True)])
        if sys.stderr.isatty():
            print(f"\r{seed + 1} of {runs}", end="", file=sys.stderr)
    each = np.array(hits).mean(axis=0)
    print(
        f"{runs} runs: {np.mean(hits):.1%} of all intervals hold the truth; by weight {', '.join(f'{one:.1%}' for one in each)}"
    )


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 500)
