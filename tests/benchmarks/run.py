"""Times of the installed koirules on this machine: `python tests/benchmarks/run.py`. Prints a table; asserts nothing.

Commands are whole processes, from start to end, the median of seven; `python -c pass` runs between them as the peer, so
that a slow machine shows as one. Of one record the fastest of a hundred short runs counts, since others use the machine too.
The example standard asks what a fish will be when grown: only with a map of its red are all its figures known.
"""

import contextlib
import io
import platform
import statistics
import subprocess
import sys
import time
from pathlib import Path

import koirules

ROOT = Path(__file__).parents[2]
RULES = ROOT / "rulesets" / "tosai_kohaku" / "standard.koi"
RECORDS = ROOT / "examples" / "01-autumn-lot" / "records.csv"
MAP = "8 to 26 left 60 right 55; 40 to 60 left 30 right 50"
RUNS = 7


def process(*words: str) -> float:
    begin = time.perf_counter()
    subprocess.run([sys.executable, *words], check=False, capture_output=True, cwd=ROOT.anchor)
    return time.perf_counter() - begin


def processes(*words: str) -> tuple[float, float]:
    """Median seconds of a command, and of the bare interpreter run between its runs."""
    mine, bare = [], []
    for _ in range(RUNS):
        bare.append(process("-c", "pass"))
        mine.append(process(*words))
    return statistics.median(mine), statistics.median(bare)


def call(function) -> float:
    found = []
    for _ in range(RUNS):
        begin = time.perf_counter()
        function()
        found.append(time.perf_counter() - begin)
    return statistics.median(found)


def quick(function, times: int = 50) -> float:
    """Seconds of one of many calls, the fastest of a hundred runs."""
    found = []
    for _ in range(100):
        begin = time.perf_counter()
        for _ in range(times):
            function()
        found.append((time.perf_counter() - begin) / times)
    return min(found)


def largest() -> str:
    """A rule file at the bound of 2,000 statements."""
    head = 'standard "large" edition 1 variety kohaku\nsection all worth 100\n'
    points = [
        f'points p{i} "criterion {i}" weight 2 by length: {i % 50 + 1} cm gives 0, {i % 50 + 20} cm gives 10\n'
        for i in range(1_000)
    ]
    faults = [
        f'fault f{i} "fault {i}" if kiwa is blurred and length above {i % 100 + 10} cm: no better than b\n'
        for i in range(996)
    ]
    return head + "".join(points) + "".join(faults) + "grade a if score at least 50\ngrade b otherwise\n"


def whole_record(standard) -> dict[str, object]:
    """A record with every trait that the standard reads, in the middle of its range."""
    from koirules.vocabulary.kinds import Count, Label, Number, Patches, Places, words_of

    record: dict[str, object] = {}
    for name in standard.grader.traits_read():
        kind = standard.traits[name].kind
        match kind:
            case Number():
                record[name] = float((kind.low + kind.high) / 2)
            case Count():
                record[name] = 0
            case Places():
                record[name] = "none"
            case Label():
                record[name] = "A"
            case Patches():
                pass  # added where it is asked for
            case _:
                record[name] = words_of(kind)[-1]
    return record


def main() -> None:
    rows: list[tuple[str, str, str]] = []
    for label, words in (
        ("`koirules --help`", ("-m", "koirules", "--help")),
        ("`koirules check` of the example standard", ("-m", "koirules", "check", str(RULES))),
        ("`koirules grade` of the example batch, start to end", ("-m", "koirules", "grade", str(RULES), str(RECORDS))),
    ):
        mine, bare = processes(*words)
        rows.append((label, f"{mine * 1000:.0f} ms", f"{mine / bare:.1f} x a bare start of Python"))
    text = largest()
    with contextlib.redirect_stdout(io.StringIO()):
        koirules.read_standard('standard "warm" edition 1\ngrade a otherwise')
    statements = text.count("\n")
    read = call(lambda: koirules.read_standard(text))
    rows.append((f"a rule file of {statements:,} statements, read and checked", f"{read * 1000:.0f} ms", ""))
    standard = koirules.load_standard(RULES)
    record = whole_record(standard)
    open_ = standard.reader.read(record, "fish")
    (made,) = standard.measured([standard.reader.read(record | {"hi_patches": MAP}, "fish")], "record").records
    plain = quick(lambda: standard.grade_record(made))
    told = quick(lambda: standard.grade_record(made).reasons)
    looked = quick(lambda: list(standard.grade_record(made).reasons))
    left_open = quick(lambda: standard.grade_record(open_))
    mapped = quick(lambda: standard.grade(record))
    count = len(standard.grade_record(made).reasons)
    rows.append(("one complete record that was read and measured already", f"{plain * 1e6:.0f} µs", ""))
    rows.append((f"… with its {count} reasons", f"{told * 1e6:.0f} µs", f"{told / plain:.1f} x without"))
    rows.append(("… each of them looked at", f"{looked * 1e6:.0f} µs", f"{looked / plain:.1f} x without"))
    rows.append(
        ("one without a map, so that figures stay open", f"{left_open * 1e6:.0f} µs", f"{left_open / plain:.1f} x")
    )
    rows.append((f"… from a mapping of {len(record)} values", f"{mapped * 1e6:.0f} µs", f"{mapped / plain:.1f} x"))
    print(f"Python {platform.python_version()}, {platform.machine()}, median of {RUNS}\n")
    print("| what | time | against |\n| --- | ---: | --- |")
    for row in rows:
        print(f"| {' | '.join(row)} |")


if __name__ == "__main__":
    main()
