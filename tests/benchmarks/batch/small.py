"""From how many rows a plan of columns pays: `python tests/benchmarks/batch/small.py [--rows 50,100,200,400,800]`.

For the neutral standard, complete and with holes, and the example standard with its own fish: the processor time of a frame
row by row, by a plan of columns that is there, and of making that plan; the least of several runs. `grading/batch.py` goes by it.
"""

from __future__ import annotations

import argparse
import sys
import time
from collections.abc import Callable
from pathlib import Path

HERE = Path(__file__).parent
ROOT = HERE.parents[2]
sys.path[:0] = [str(HERE), str(ROOT)]

import polars as pl
from made_records import made_frame

import koirules
from koirules.engines.columnar.grown import with_grown
from koirules.grading import frames


def least(run: Callable[[], object], times: int) -> float:
    """Milliseconds of the quickest run."""
    found = []
    for _ in range(times):
        begin = time.process_time()
        run()
        found.append(time.process_time() - begin)
    return min(found) * 1e3


def measure(what: str, standard: koirules.Standard, records: pl.DataFrame, rows: int) -> None:
    frame = pl.concat([records] * (rows // records.height + 1)).head(rows)
    grader = standard.batch(engine="columnar")
    sources = frames.matched(frame.columns, grader)
    read = grader.reader(sources).read(frame.select([source.column for source in sources.values()]))
    held = with_grown(read, grader.grader.evaluator.ahead, rows).held
    by_row = least(lambda: grader.by_row(read, rows), 9)
    by_column = least(lambda: grader.by_column(read, rows), 9)
    made = least(lambda: (grader._plans.clear(), grader.plan(held)), 3)
    print(f"| {what} | {rows:,} | {by_row:.1f} ms | {by_column:.1f} ms | {made:.1f} ms |", flush=True)


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--rows", default="50,100,200,400,800")
    sizes = [int(rows) for rows in parser.parse_args().rows.split(",")]
    neutral = koirules.load_standard(HERE / "neutral.koi")
    print("| records | how many | row by row | by a plan | to make it |\n| --- | ---: | ---: | ---: | ---: |")
    lot = pl.read_csv(ROOT / "examples" / "01-autumn-lot" / "records.csv", infer_schema=False)
    example = koirules.load_standard(ROOT / "rulesets" / "tosai_kohaku" / "standard.koi")
    for rows in sizes:
        measure("neutral, complete", neutral, made_frame(1_000), rows)
        measure("neutral, 5 % holes in ten traits", neutral, made_frame(1_000, holes=True), rows)
        measure("example", example, lot, rows)


if __name__ == "__main__":
    main()
