"""Does foresight find what the simulation put in? `python tests/benchmarks/book/planted.py [SEEDS]` (100 seeds, some 2 minutes).

Each seed is a farm of examples/15-three-years. Wanted: at least 80 % of the planted effects found, at most 5 % of the criteria
that mean nothing called telling.
"""

from __future__ import annotations

import sys
from pathlib import Path

ROOT = Path(__file__).parents[3]
sys.path.insert(0, str(ROOT / "plugins" / "book"))
sys.path.insert(0, str(ROOT / "examples" / "15-three-years"))

import simulate
from koirules_book.foresight import foresight

import koirules

PLANTED = {"outline", "tail_stem", "white", "kiwa"}
NULL = {"cover", "odome"}


def told(seeds: range) -> tuple[int, int]:
    """How many planted effects were found, and how many criteria that mean nothing were called telling."""
    standard = koirules.load_standard(ROOT / "examples" / "15-three-years" / "sluice.koi")
    found = wrong = 0
    for seed in seeds:
        columns = simulate.fish_of(seed)
        kept, prices = simulate.kept_and_prices(columns, seed)
        rows = simulate.rows_of(columns, 2024)
        results = []
        for row in rows:
            record = {name.split(" ")[0]: value for name, value in row.items() if name not in {"fish", "pond", "date"}}
            results.append(standard.grade(record, str(row["fish"])))
        outcomes = {
            str(row["fish"]): float(price) for row, price, keeps in zip(rows, prices, kept, strict=True) if keeps
        }
        telling = {
            part.name
            for part in foresight(standard, results, outcomes, "price", rounds=10, seed=seed).parts
            if part.tells
        }
        found += len(PLANTED & telling)
        wrong += len(NULL & telling)
    return found, wrong


if __name__ == "__main__":
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 100
    right, mistaken = told(range(count))
    of_planted, of_nulls = right / (count * len(PLANTED)), mistaken / (count * len(NULL))
    print(f"{count} farms: {of_planted:.1%} of planted effects found, {of_nulls:.1%} of nulls called telling")
