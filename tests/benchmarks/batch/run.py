"""Times of the batch evaluator against peers: `python tests/benchmarks/batch/run.py [--rows 1000,100000] [--repeat 7]`.

Every peer grades the same complete records of the neutral standard; the runs take turns in one process, and medians are
shown, with the ratio to the expert's Polars with the same exact arithmetic. Peak memory is that of a process of its own,
above what the records take. First all are compared: those that are exact must agree on every record.
"""

from __future__ import annotations

import argparse
import os
import platform
import statistics
import subprocess
import sys
import time
from functools import partial
from importlib.util import find_spec
from pathlib import Path

HERE = Path(__file__).parent
sys.path[:0] = [str(HERE), str(HERE.parents[2])]

import polars as pl
from made_records import made_frame

import koirules

EXACT = {
    "koirules",
    "koirules, score and grade alone",
    "koirules, 5 % holes in ten traits",
    "koirules, machine code",
    "expert Polars, exact",
    "plain function",
}


def standard() -> koirules.Standard:
    return koirules.load_standard(HERE / "neutral.koi")


def peers() -> dict:
    import expert_doubles
    import expert_exact
    import other_peers

    loaded = standard()
    lean = loaded.batch(sections=False, engine="columnar")

    def alone(frame: pl.DataFrame) -> pl.DataFrame:
        from koirules.engines.columnar.reading import Source

        read = lean.reader({name: Source(name) for name in frame.columns if name in loaded.traits}).read(frame)
        return lean.grade(read, frame.height)

    columnar, compiled = (partial(loaded.grade_frame, engine=engine) for engine in ("columnar", "compiled"))
    return {
        "koirules": columnar,
        "koirules, score and grade alone": alone,
        "koirules, 5 % holes in ten traits": columnar,
        "koirules, machine code": compiled,
        "koirules, machine code, 5 % holes in ten traits": compiled,
        "expert Polars, exact": expert_exact.grade,
        "expert Polars, exact, 5 % holes in ten traits": expert_exact.grade_with_holes,
        "expert Polars, doubles": expert_doubles.grade,
        "idiomatic Polars": other_peers.idiomatic,
        "numpy": other_peers.with_numpy,
        "DuckDB": other_peers.with_duckdb,
        "plain function": other_peers.by_function,
    }


def answers(graded: pl.DataFrame) -> list[tuple[int, int]]:
    if "possible" in graded.columns:
        return [
            (round(score * 100), grade)
            for score, grade in graded.select("score", pl.col("grade").to_physical()).iter_rows()
        ]
    return [(int(score), int(grade)) for score, grade in graded.select("score", "grade").iter_rows()]


def compare(rows: int) -> None:
    frame = made_frame(rows, seed=5)
    truth = answers(peers()["plain function"](frame))
    print(f"Of {rows:,} records, those on which a peer differs from the plain function:")
    for name, grade in peers().items():
        if "holes" not in name:
            wrong = sum(mine != theirs for mine, theirs in zip(answers(grade(frame)), truth, strict=True))
            print(f"  {name}: {wrong}")
            if wrong and name in EXACT:
                raise SystemExit(f"{name} is not exact")


def compare_holes(rows: int) -> None:
    import expert_exact

    for holes in (False, True):
        frame = made_frame(rows, seed=6, holes=holes)
        theirs = (expert_exact.grade_with_holes if holes else expert_exact.grade)(frame)
        if not standard().grade_frame(frame).select(theirs.columns).equals(theirs):
            raise SystemExit("koirules and the expert differ")
    print(f"With holes and without koirules and the expert agree in every column of all {rows:,}.")


def measure(rows: int, repeat: int, names: list[str]) -> None:
    whole, holed = made_frame(rows), made_frame(rows, holes=True)
    found: dict[str, list[float]] = {name: [] for name in names}
    called = {name: grade for name, grade in peers().items() if name in names}
    for name, grade in called.items():
        grade(holed if "holes" in name else whole)
    for _ in range(repeat):
        for name, grade in called.items():
            begin = time.perf_counter()
            grade(holed if "holes" in name else whole)
            found[name].append(time.perf_counter() - begin)
    base = statistics.median(found.get("expert Polars, exact") or [float("nan")])
    for name, times in found.items():
        took = statistics.median(times)
        peak = memory(rows, name)
        print(
            f"| {name} | {rows:,} | {took * 1000:,.1f} ms | {rows / took / 1e6:.2f} | {took / base:.2f} | {peak} |",
            flush=True,
        )


def memory(rows: int, name: str) -> str:
    words = [sys.executable, __file__, "--memory", name, "--rows", str(rows)]
    done = subprocess.run(words, capture_output=True, text=True, check=True)
    return f"{int(done.stdout)} MiB"


def peak_of(rows: int, name: str) -> None:
    grade = peers()[name]
    frame = made_frame(rows, holes="holes" in name)
    grade(frame.head(5_000))
    # The kernel forgets the highest use of memory so far, which was that of making the records.
    Path("/proc/self/clear_refs").write_text("5")
    before = highest()
    grade(frame)
    print((highest() - before) // 1024)


def highest() -> int:
    """The highest use of memory since it was last forgotten, in KiB."""
    lines = Path("/proc/self/status").read_text().splitlines()
    return next(int(line.split()[1]) for line in lines if line.startswith("VmHWM"))


RECORDS, AT_ONCE = 500, 50


def single(repeat: int) -> None:
    """One record at a time, of RECORDS different ones, AT_ONCE of them in turns.

    Others use the machine too: of each few records the fastest run counts, which is over before anybody else gets a turn.
    """
    import other_peers

    loaded = standard()
    mappings = made_frame(RECORDS, seed=3).drop("id").rows(named=True)
    records = [loaded.reader.read(mapping, "") for mapping in mappings]
    readings = [record.readings for record in records]
    inputs = loaded.grader.complete.inputs
    values = [[one.value(each[one.key]) for one in inputs] for each in readings]

    def graded(mapping: dict) -> tuple:
        result = loaded.grade(mapping)
        return result.score, result.grade, result.faults

    def reasoned(mapping: dict) -> tuple:
        result = loaded.grade(mapping)
        return result.score, result.grade, result.faults, result.reasons

    def looked_at(mapping: dict) -> list:
        result = loaded.grade(mapping)
        return [result.score, result.grade, result.faults, *result.reasons]

    tests = {
        "plain function over a dict": (other_peers.plain_function, mappings),
        "koirules, the generated function over the dict": (loaded._at_once.run, mappings),
        "koirules, … over a record that was read": (loaded.grader.complete.run, readings),
        "koirules, … over values that were taken out": (loaded.grader.complete.run_values, values),
        "koirules, the generated function for any record": (loaded.grader.evaluator.run, readings),
        "koirules, a mapping read and graded": (graded, mappings),
        "koirules, … with all its reasons": (reasoned, mappings),
        "koirules, … and each of them looked at": (looked_at, mappings),
    }
    if find_spec("cel") is not None:  # pip install common-expression-language
        import with_cel

        tests["CEL, one program"] = (with_cel.grade_one, mappings)
    wanted = [other_peers.plain_function(mapping) for mapping in mappings]
    if [(sure[1], sure[0].bit_length() - 1) for sure in map(loaded._at_once.run, mappings)] != wanted:
        raise SystemExit("the generated function and the plain one differ")
    found = {name: [float("inf")] * (RECORDS // AT_ONCE) for name in tests}
    for _ in range(10 * repeat):
        for turn in range(RECORDS // AT_ONCE):
            for name, (test, given) in tests.items():
                few = given[turn * AT_ONCE : (turn + 1) * AT_ONCE]
                for _ in range(2):
                    begin = time.perf_counter()
                    for each in few:
                        test(each)
                    # The first of the two brings the records back into the caches.
                    found[name][turn] = min(found[name][turn], (time.perf_counter() - begin) / AT_ONCE)
    base = statistics.mean(found["plain function over a dict"])
    print("\n| one record | µs | ratio |\n| --- | ---: | ---: |")
    for name, times in found.items():
        print(f"| {name} | {statistics.mean(times) * 1e6:.1f} | {statistics.mean(times) / base:.2f} |")


def machine() -> str:
    model = next(
        (line.split(":")[1].strip() for line in Path("/proc/cpuinfo").read_text().splitlines() if "model name" in line),
        "",
    )
    return f"{model or platform.machine()}, {os.cpu_count()} cores, Python {platform.python_version()}, Polars {pl.__version__}"


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--rows", default="1000,100000,1000000")
    parser.add_argument("--repeat", type=int, default=7)
    parser.add_argument("--memory", default="")
    parser.add_argument("--only", default="")
    given = parser.parse_args()
    if given.memory:
        peak_of(int(given.rows), given.memory)
        return
    print(machine() + f", median of {given.repeat}\n")
    compare(20_000)
    compare_holes(20_000)
    print("\n| peer | records | time | million/s | to expert, exact | memory above the records |")
    print("| --- | ---: | ---: | ---: | ---: | ---: |")
    for rows in map(int, given.rows.split(",")):
        slow = {"plain function"} if rows > 200_000 else set()
        names = [name for name in peers() if name not in slow and given.only in name]
        measure(rows, given.repeat, names)
    single(given.repeat)


if __name__ == "__main__":
    main()
