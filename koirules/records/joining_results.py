"""Files of results put together into one, in the order given."""

from __future__ import annotations

import shutil
from collections.abc import Sequence
from pathlib import Path
from typing import Any


def joined(parts: Sequence[Path], target: Path) -> None:
    """Write the rows of all parts to the target; they have the same columns. Without parts the target is left empty."""
    if target.suffix.lower() == ".parquet":
        _join_parquet(parts, target)
    else:
        _join_csv(parts, target)


def _join_csv(parts: Sequence[Path], target: Path) -> None:
    with target.open("wb") as out:
        for number, part in enumerate(parts):
            with part.open("rb") as opened:
                heading = opened.readline()
                while heading.count(b'"') % 2:
                    heading += opened.readline()
                if not number:
                    out.write(heading)
                shutil.copyfileobj(opened, out, 1 << 20)


def _join_parquet(parts: Sequence[Path], target: Path) -> None:
    import pyarrow.parquet as pq

    if len(parts) == 1:
        shutil.copyfile(parts[0], target)
        return
    writer: Any = None
    try:
        for part in parts:
            with pq.ParquetFile(part) as opened:
                for group in range(opened.num_row_groups):
                    table = opened.read_row_group(group)
                    if writer is None:
                        writer = pq.ParquetWriter(target, table.schema, compression="zstd")
                    writer.write_table(table.cast(writer.schema))
    finally:
        if writer is not None:
            writer.close()
