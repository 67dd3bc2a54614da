"""A long comparison of frames with single records: `python tests/benchmarks/batch/agreement.py [STANDARDS]`.

Draws standards and eight records for each, as the property does, and stops at the first pair on which columns, rows and
single records differ; prints how many pairs agreed, and how many plans Polars could not carry out. 125,000 standards are a
million pairs (about two hours).
"""

from __future__ import annotations

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[3]))

import polars as pl
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

import koirules
from koirules.grading.batch import BatchGrader
from koirules.grading.columns.reading import Source
from tests.judge.strategies import records, standards, to_mapping
from tests.judge.text import to_text
from tests.properties.test_batch_agreement import as_frame, expected

RECORDS = 8


def main(count: int) -> None:
    pairs = 0
    refused: list[str] = []

    @settings(
        max_examples=count,
        deadline=None,
        database=None,
        suppress_health_check=list(HealthCheck),
        phases=(Phase.generate,),
    )
    @given(st.data())
    def compare(data: st.DataObject) -> None:
        nonlocal pairs
        standard = data.draw(standards())
        text = to_text(standard, None)
        loaded = koirules.read_standard(text)
        mappings = [to_mapping(standard, data.draw(records(standard))) for _ in range(RECORDS)]
        frame = as_frame(mappings)
        grader = BatchGrader(loaded.rules, loaded.settings, loaded.grader, faults=True)
        read = grader.reader({name: Source(name) for name in frame.columns}).read(frame)
        try:
            by_column = grader.by_column(read, RECORDS)
        except pl.exceptions.PolarsError as error:
            refused.append(str(error).splitlines()[0])
            by_column = grader.by_row(read, RECORDS)
        if not by_column.equals(grader.by_row(read, RECORDS)):
            raise SystemExit(f"{text}\n{mappings}\ncolumns and rows differ")
        for mapping, row in zip(mappings, by_column.iter_rows(named=True), strict=True):
            wanted = expected(loaded.grade(mapping))
            if row != wanted:
                raise SystemExit(f"{text}\n{mapping}\nframe  {row}\nsingle {wanted}")
            pairs += 1

    compare()
    print(
        f"{pairs:,} pairs of {count:,} standards agree; {len(refused)} plans were refused by Polars and graded by row"
    )


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000)
