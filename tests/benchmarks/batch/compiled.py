"""Times of the compiled engine: `python tests/benchmarks/batch/compiled.py [--rows 1000000,10000000] [--repeat 9]`.

The neutral standard, from frame to results: the expert's Polars, the columnar and the compiled engine take turns in one process,
each warm, and medians are shown. All engines must agree in every column. Then, each in a fresh process, the first call, with
code in the cache folder; with `--files FOLDER` (of `made_records.py`) whole files to totals; and one record.
"""

from __future__ import annotations

import argparse
import gc
import os
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

HERE = Path(__file__).parent
sys.path[:0] = [str(HERE), str(HERE.parents[2])]

import expert_exact
import polars as pl
from made_records import made_frame
from run import machine, standard

from koirules.engines.compiled import engine as of_engine


def in_turns(tests: dict[str, Callable[[], object]], repeat: int) -> dict[str, float]:
    """The median seconds of each, the runs taking turns. Results are given back before the next run begins."""
    found: dict[str, list[float]] = {name: [] for name in tests}
    for test in tests.values():
        test()
        test()
    for _ in range(repeat):
        for name, test in tests.items():
            begin = time.perf_counter()
            result = test()
            found[name].append(time.perf_counter() - begin)
            del result
            gc.collect(0)
    return {name: statistics.median(times) for name, times in found.items()}


def frames(rows: int, repeat: int) -> None:
    loaded = standard()
    for holes in (False, True):
        frame = made_frame(rows, holes=holes)
        expert = expert_exact.grade_with_holes if holes else expert_exact.grade
        if not loaded.grade_frame(frame, engine="compiled").equals(loaded.grade_frame(frame, engine="columnar")):
            raise SystemExit("the engines differ")
        times = in_turns(
            {
                "expert Polars, exact": lambda frame=frame, expert=expert: expert(frame),
                "columnar": lambda frame=frame: loaded.grade_frame(frame, engine="columnar"),
                "compiled": lambda frame=frame: loaded.grade_frame(frame, engine="compiled"),
            },
            repeat,
        )
        base = times["expert Polars, exact"]
        what = "5 % holes in ten traits" if holes else "complete"
        for name, took in times.items():
            print(f"| {name} | {what} | {rows:,} | {took * 1e3:,.1f} ms | {took / base:.2f} |", flush=True)


FIRST = """
import sys, time
sys.path[:0] = {paths!r}
from made_records import made_frame
from run import standard
frame, loaded = made_frame({rows}), standard()
loaded.grade_frame(frame.head(1_000), engine="columnar")
begin = time.perf_counter()
loaded.grade_frame(frame, engine={engine!r})
print(time.perf_counter() - begin)
"""


def first_calls(rows: int, repeat: int) -> None:
    """The first call on a large frame in a fresh process, after a small one; the compiled engine finds its code."""
    with tempfile.TemporaryDirectory() as folder:
        found: dict[str, list[float]] = {"columnar": [], "None": []}
        for turn in range(repeat + 1):
            for name, times in found.items():
                text = FIRST.format(paths=sys.path[:2], rows=rows, engine=None if name == "None" else name)
                done = subprocess.run(
                    [sys.executable, "-c", text],
                    env=os.environ | {"KOIRULES_CACHE": folder},
                    capture_output=True,
                    text=True,
                    check=True,
                )
                if turn:
                    times.append(float(done.stdout))
        for name, times in found.items():
            told = "compiled, its code kept" if name == "None" else name
            print(
                f"| {told}, the first call of a process | complete | {rows:,} | {statistics.median(times) * 1e3:,.1f} ms | |"
            )


def files(folder: str, repeat: int) -> None:
    from koirules.runs.run import here, run_files
    from koirules.runs.work import Job

    rules = (HERE / "neutral.koi").read_text(encoding="utf-8")
    job = Job(rules, "neutral.koi")
    worth = of_engine.WORTH_FROM

    def totals(least: float) -> object:
        of_engine.WORTH_FROM = least
        of_engine.READY_FROM = 2_000 if least == worth else least
        return run_files(job, [folder], here()).totals

    if totals(worth) != totals(float("inf")):
        raise SystemExit("the engines differ")
    times = in_turns({"columnar": lambda: totals(float("inf")), "compiled": lambda: totals(worth)}, repeat)
    for name, took in times.items():
        print(f"| {name}, files to totals | {took * 1e3:,.0f} ms | {took / times['columnar']:.2f} |", flush=True)


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--rows", default="1000000,10000000")
    parser.add_argument("--repeat", type=int, default=9)
    parser.add_argument("--files", default="")
    given = parser.parse_args()
    print(f"{machine()}, {pl.thread_pool_size()} threads, median of {given.repeat}\n")
    print("| engine | records | how many | time | to the expert |\n| --- | --- | ---: | ---: | ---: |")
    for rows in map(int, filter(None, given.rows.split(","))):
        frames(rows, given.repeat)
    if given.rows:
        first_calls(1_000_000, given.repeat)
    if given.files:
        files(given.files, given.repeat)


if __name__ == "__main__":
    main()
