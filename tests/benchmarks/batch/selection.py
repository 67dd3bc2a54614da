"""A selection over a large batch beside the same written by hand in Polars: `python tests/benchmarks/batch/selection.py`.

A made batch of so many fish in 40 spawnings, a standard with figures among the same spawning and three rounds with
quotas. The hand-written one is what somebody who knows Polars writes for just this standard, with the same exact answers
for complete records; both are run in turns in the same process, and have to agree on every fish.
"""

from __future__ import annotations

import argparse
import statistics
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[3]))

import polars as pl

import koirules

RULES = """standard "made for measuring" edition 1
  variety kohaku
section body worth 60
points stem by tail_stem: thin gives 0, fair gives 6, strong gives 10
points size by batch standing of length among the same (spawning): 0 % gives 0, 100 % gives 10
section skin worth 40
points edge by kiwa: blurred gives 0, fair gives 4, sharp gives 8, razor gives 10
fault small if length below batch percentile 10 of length among the same (spawning): no better than hold
fault slim if width below batch median of width among the same (spawning) - 1 cm: no better than hold
grade keep if score at least 70
grade hold if score at least 50
grade sell otherwise
round first keep those with grade at least hold
round second
  keep those with length at least batch median of length among the same (spawning)
  pick 2000 by highest score, then highest length, then highest width
  no more than 100 of the same (spawning)
round last
  pick 200 by highest batch standing of width, then highest score, then highest length
  no more than 60 with steps is ippon
"""
STEMS, EDGES, STEPS = ["thin", "fair", "strong"], ["blurred", "fair", "sharp", "razor"], ["ippon", "nidan", "sandan"]


def made(rows: int) -> pl.DataFrame:
    """A made batch: lengths and widths to a hundredth of a millimetre, so that few fish are equal."""
    numbers = pl.int_range(rows, eager=True)

    def mixed(salt: int, many: int) -> pl.Series:
        return (numbers.hash(salt) % many).cast(pl.Int64)

    def words(salt: int, of: list[str]) -> pl.Series:
        return pl.Series(of).gather(mixed(salt, len(of)))

    return pl.DataFrame(
        {
            "fish": "F" + numbers.cast(pl.String),
            "length": (800 * 10 + mixed(1, 80_000)).cast(pl.Float64) / 10_000 + 8,
            "width": (mixed(2, 30_000)).cast(pl.Float64) / 10_000 + 1,
            "tail_stem": words(3, STEMS),
            "kiwa": words(4, EDGES),
            "steps": words(5, STEPS),
            "spawning": "S" + mixed(6, 40).cast(pl.String),
        }
    )


def by_hand(frame: pl.DataFrame) -> pl.DataFrame:
    """The same for complete records, by hand: whole hundredths and millionths."""
    length = (pl.col("length") * 1e6 + 0.5).floor().cast(pl.Int64)
    width = (pl.col("width") * 1e6 + 0.5).floor().cast(pl.Int64)
    work = frame.lazy().with_row_index("row").with_columns(l=length, w=width)
    n = pl.len().over("spawning").cast(pl.Int64)
    below = (pl.col("l").rank("min").over("spawning") - 1).cast(pl.Int64)
    equal = pl.len().over("spawning", "l").cast(pl.Int64)
    standing = (2 * 100_000_000 * (2 * below + equal) + 2 * n) // (4 * n)
    stem = pl.col("tail_stem").replace_strict(STEMS, [0, 6000, 10000], return_dtype=pl.Int64)
    edge = pl.col("kiwa").replace_strict(EDGES, [0, 4000, 8000, 10000], return_dtype=pl.Int64)
    size = (2 * 10_000 * standing + 100_000_000) // 200_000_000
    body = (2 * 6000 * (stem + size) + 20_000) // 40_000
    skin = (2 * 4000 * edge + 10_000) // 20_000
    p10 = exact_quantile("l", 1, 10, ["spawning"])
    half = exact_quantile("w", 1, 2, ["spawning"])
    capped = (pl.col("l") < p10) | (pl.col("w") < half - 1_000_000)
    work = work.with_columns(standing=standing).with_columns(score=body + skin, capped=capped)
    score = pl.col("score")
    grade = pl.when((score >= 7000) & ~pl.col("capped")).then(2).when(score >= 5000).then(1).otherwise(0)
    work = work.with_columns(grade=grade).collect()
    first = work.filter(pl.col("grade") >= 1)
    second = (
        first.filter(pl.col("l") >= exact_quantile("l", 1, 2, ["spawning"]))
        .sort("score", "l", "w", descending=True)
        .filter(pl.int_range(pl.len()).over("spawning") < 100)
        .head(2000)
    )
    n2 = second.height
    share = (2 * 100_000_000 * (2 * (pl.col("w").rank("min") - 1) + pl.len().over("w")).cast(pl.Int64) + 2 * n2) // (
        4 * n2
    )
    ordered = second.with_columns(share=share).sort("share", "score", "l", descending=True)
    ippon = pl.col("steps") == "ippon"
    last = ordered.filter(~ippon | (ippon.cum_sum() <= 60)).head(200)
    return work.select(
        "row",
        "score",
        "grade",
        kept=pl.col("row").is_in(first["row"].implode()).cast(pl.Int8)
        + pl.col("row").is_in(second["row"].implode())
        + pl.col("row").is_in(last["row"].implode()),
    )


def exact_quantile(name: str, upper: int, lower: int, by: list[str]) -> pl.Expr:
    """A quantile of whole numbers by group, in a straight line between the two nearest, half up."""
    ordered, number = pl.col(name).sort(), pl.len().cast(pl.Int64)
    below, rest = (number - 1) * upper // lower, (number - 1) * upper % lower
    low = ordered.get(below)
    high = ordered.get(pl.min_horizontal(below + 1, number - 1))
    return (low + (2 * (high - low) * rest + lower) // (2 * lower)).over(by)


def agree(ours: pl.DataFrame, theirs: pl.DataFrame) -> None:
    """Raise where the two differ in the score, the grade or the rounds of any fish."""
    score = (ours["score"] * 100).round().cast(pl.Int64)
    grades = ours["grade"].cast(pl.String).replace_strict(["sell", "hold", "keep"], [0, 1, 2], return_dtype=pl.Int64)
    kept = ours["kept_by"].str.count_matches(r"\w+").fill_null(0).cast(pl.Int64)
    for name, one, other in (
        ("score", score, theirs["score"]),
        ("grade", grades, theirs["grade"]),
        ("kept", kept, theirs["kept"]),
    ):
        wrong = (one != other.cast(pl.Int64)).sum()
        if wrong:
            raise SystemExit(f"{wrong} fish differ in {name}")


def main() -> None:
    """Print the table."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--rows", type=int, nargs="+", default=[1_000, 100_000, 1_000_000])
    parser.add_argument("--repeat", type=int, default=5)
    given = parser.parse_args()
    standard = koirules.read_standard(RULES, "measured.koi")
    print("| fish | koirules | by hand in Polars | ratio |\n| ---: | ---: | ---: | ---: |")
    for rows in given.rows:
        frame = made(rows)
        agree(standard.grade_frame(frame), by_hand(frame))
        times: tuple[list[float], list[float]] = ([], [])
        for _ in range(given.repeat):
            for spent, run in zip(times, (standard.grade_frame, by_hand), strict=True):
                start = time.perf_counter()
                run(frame)
                spent.append(time.perf_counter() - start)
        ours, theirs = (statistics.median(spent) for spent in times)
        print(f"| {rows:,} | {ours * 1000:.0f} ms | {theirs * 1000:.0f} ms | {ours / theirs:.2f} |", flush=True)


if __name__ == "__main__":
    main()
