"""Made records for the neutral standard: seeded frames, complete or with holes, and Parquet files of them."""

import sys
from pathlib import Path

import numpy as np
import polars as pl
from figures import HOLED, NUMBERS, SCALES, YES_NO

RARE = {
    "spine_bent": 0.03,
    "eye_missing": 0.04,
    "jaw_crooked": 0.03,
    "gill_open": 0.1,
    "parasites": 0.12,
    "fin_torn": 0.15,
}
HOLES = 0.05


def made_frame(
    rows: int, *, holes: bool = False, seed: int = 1, scales: str = "enum", names: bool = False
) -> pl.DataFrame:
    """`rows` made records, the same for the same seed.

    holes: leave 5 % of each of the ten HOLED traits empty. scales: "enum", "categorical" or "text". names: fish are called
    by a text and not by a number.
    """
    draw = np.random.default_rng(seed)
    columns = [pl.Series("id", np.arange(rows))]
    if names:
        columns = [pl.select(pl.format("fish {}", columns[0]).alias("id")).to_series()]
    for name, (unit, low, high) in NUMBERS.items():
        # The sum of two draws: most fish lie in the middle. A quotient by ten is the double nearest to the decimal.
        steps = round((high - low) * 10)
        drawn = (draw.integers(0, steps + 1, rows) + draw.integers(0, steps + 1, rows)) // 2
        tenths = drawn + round(low * 10)
        if unit == "%":
            # A bare share above 0 and up to 1 is refused: it may be a percent, or a part of one.
            tenths = np.where((tenths > 0) & (tenths <= 10), tenths + 10, tenths)
        columns.append(pl.Series(name, tenths / 10.0))
    for name in YES_NO:
        columns.append(pl.Series(name, draw.random(rows) < RARE.get(name, 0.4)))
    for name, steps in SCALES.items():
        kind = pl.Enum(steps)
        codes = pl.Series(name, draw.integers(0, len(steps), rows, dtype=np.uint8)).cat.to(kind)
        columns.append(
            codes if scales == "enum" else codes.cast(pl.Categorical if scales == "categorical" else pl.String)
        )
    frame = pl.DataFrame(columns)
    if not holes:
        return frame
    kept = {name: pl.Series(draw.random(rows) >= HOLES) for name in HOLED}
    return frame.with_columns(pl.when(pl.lit(kept[name])).then(pl.col(name)).alias(name) for name in HOLED)


def write_parquet(folder: Path, rows: int, each: int, *, group: int = 100_000, holes: bool = True) -> list[Path]:
    """`rows` made records as Parquet files of `each` rows, in row groups of `group`; every file has a seed of its own."""
    folder.mkdir(parents=True, exist_ok=True)
    files = []
    for number, begin in enumerate(range(0, rows, each)):
        size = min(each, rows - begin)
        frame = made_frame(size, holes=holes, seed=number + 1).with_columns(pl.col("id") + begin).rename({"id": "fish"})
        files.append(folder / f"records-{number:05}.parquet")
        frame.write_parquet(files[-1], row_group_size=group)
    return files


if __name__ == "__main__":
    # python tests/benchmarks/batch/made_records.py FOLDER ROWS: files of half a million rows each
    write_parquet(Path(sys.argv[1]), int(sys.argv[2]), 500_000)
