"""Results written as they come, a frame at a time: under a passing name until the last of them is there."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import IO, TYPE_CHECKING, Any

from attrs import field

from koirules.records.safe_text import for_csv
from koirules.values import define

if TYPE_CHECKING:
    import polars as pl

RESULT_ENDINGS = (".csv", ".parquet")
_RISKY = r"[\x00-\x1f\x7f-\x9f;]|^[=+\-@＝＋－＠]"
"""Whatever for_csv may change."""


@define
class LargeResults:
    """A file of results in the making. facts: what a Parquet file says about all of them, by name."""

    path: Path
    passing: Path
    facts: Mapping[str, str] = field(factory=dict)
    _file: IO[bytes] | None = None
    _parquet: Any = field(default=None)

    @property
    def is_empty(self) -> bool:
        """Whether nothing was written yet."""
        return self._file is None and self._parquet is None

    def write(self, fish: pl.Series, results: pl.DataFrame, labels: Sequence[pl.Series]) -> None:
        """Append the results of some fish."""
        self.append(result_table(fish, results, labels))

    def append(self, frame: pl.DataFrame) -> None:
        """Append rows of a table of results."""
        if self.path.suffix == ".parquet":
            import pyarrow.parquet as pq

            table = frame.to_arrow()
            if self._parquet is None:
                schema = table.schema.with_metadata(dict(self.facts))
                self._parquet = pq.ParquetWriter(self.passing, schema, compression="zstd")
            self._parquet.write_table(table.cast(self._parquet.schema))
            return
        header = self._file is None
        if self._file is None:
            self._file = self.passing.open("wb")
        _safe(frame).write_csv(self._file, include_header=header, float_precision=2)

    def finish(self) -> str:
        """Give the file its name; "" where there was nothing to write."""
        self.close()
        if not self.passing.exists():
            return ""
        self.passing.replace(self.path)
        return str(self.path)

    def close(self) -> None:
        """Close what is open."""
        if self._parquet is not None:
            self._parquet.close()
        if self._file is not None:
            self._file.close()
        self._parquet = self._file = None


@contextmanager
def large_results(path: Path, mark: str, facts: Mapping[str, str]) -> Iterator[LargeResults]:
    """A file of results that is written beside its name. mark: what tells this writer from others of the same file."""
    passing = path.with_name(f".{path.stem[:100]}.{mark}{path.suffix}")
    results = LargeResults(path, passing, facts)
    try:
        yield results
    finally:
        results.close()
        with suppress(OSError):
            passing.unlink(missing_ok=True)


def facts_of(path: Path) -> dict[str, str]:
    """What a Parquet file of results says about all of them, by name."""
    import pyarrow.parquet as pq

    written = pq.read_schema(path).metadata or {}
    return {key.decode(): value.decode() for key, value in written.items() if key.startswith(b"koirules.")}


def result_table(fish: pl.Series, results: pl.DataFrame, labels: Sequence[pl.Series]) -> pl.DataFrame:
    """The columns of a file of results: the fish, its results, the faults and lifts that surely bite, its labels."""
    import polars as pl

    limits = [name for name in results.columns if " " in name]
    told = [_named(head, [name for name in limits if name.startswith(f"{head} ")]) for head in ("fault", "lift")]
    made = results.with_columns(told).drop(limits)
    taken = {"fish", *made.columns}
    named = [label.alias(f"{label.name} (label)") if label.name in taken else label for label in labels]
    return pl.DataFrame([fish, *made.get_columns(), *named])


def _named(head: str, columns: Sequence[str]) -> pl.Expr:
    """The names of the limits that surely bite, parted by `;`; null where there is none."""
    import polars as pl

    if not columns:
        return pl.lit(None, pl.String).alias(f"{head}s")
    words = [pl.when(pl.col(name)).then(pl.lit(name.removeprefix(f"{head} "))) for name in columns]
    joined = pl.concat_str(words, separator=";", ignore_nulls=True)
    return pl.when(joined != "").then(joined).alias(f"{head}s")


def _safe(frame: pl.DataFrame) -> pl.DataFrame:
    """A frame whose texts no spreadsheet program takes for a formula; only few texts need a look."""
    import polars as pl

    made = []
    for series in frame.get_columns():
        safe = series
        if series.dtype == pl.String:
            rows = series.str.contains(_RISKY).fill_null(value=False).arg_true()
            if len(rows):
                safe = series.scatter(rows, [for_csv(text) for text in series.gather(rows)])
        made.append(safe)
    return pl.DataFrame(made)
