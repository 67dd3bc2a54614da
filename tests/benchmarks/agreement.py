"""A long comparison of koirules with the slow judge: `python tests/benchmarks/agreement.py [STANDARDS] [batches|compiled]`.

Draws standards and eight records for each, and stops at the first pair on which the judge, single records, frames by row and
frames by column do not all agree; prints how many did. 125,000 standards are a million
pairs (some three hours). With `batches`, standards whose fish are compared, and four batches for each.

With `compiled`, the compiled engine: 2,000 rows for each standard, of values drawn with ties, thresholds and holes and put
together anew, half of them complete, are graded by code and by columns, which must agree in every column; the judge has the
drawn records. 500 standards are a million rows.
"""

import random
import sys
from collections import Counter
from collections.abc import Callable
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

import koirules
from koirules.engines.columnar.reading import Source
from koirules.grading.batch import BatchGrader
from tests.judge.judge import judge
from tests.judge.strategies import batches, completions, layouts, records, standards, standards_that_compare, to_mapping
from tests.judge.text import to_text
from tests.properties.test_agreement import by_judge, by_koirules
from tests.properties.test_batch_agreement import as_frame, expected
from tests.properties.test_whole_batch_agreement import agrees, decisions_of, rows_of

RECORDS = 8
POOL = 12
MIXED = 1_000
BATCHES = 4


def drawn(count: int, compare: Callable[[st.DataObject], None]) -> None:
    """Draw `count` standards."""
    settings(
        max_examples=count,
        deadline=None,
        database=None,
        suppress_health_check=list(HealthCheck),
        phases=(Phase.generate,),
    )(given(st.data())(compare))()


def records_one_by_one(count: int) -> None:
    pairs = 0

    def compare(data: st.DataObject) -> None:
        nonlocal pairs
        standard = data.draw(standards())
        text = to_text(standard, data.draw(layouts()))
        loaded = koirules.read_standard(text)
        drawn = [data.draw(records(standard)) for _ in range(RECORDS)]
        mappings = [to_mapping(standard, record) for record in drawn]
        frame = as_frame(mappings)
        grader = BatchGrader(loaded.rules, loaded.settings, loaded.grader, faults=True)
        read = grader.reader({name: Source(name) for name in frame.columns}).read(frame)
        by_row = grader.by_row(read, RECORDS)
        by_column = grader.by_column(read, RECORDS)
        if not by_column.equals(by_row):
            raise SystemExit(f"{text}\n{mappings}\ncolumns {by_column.rows()}\nrows    {by_row.rows()}")
        for record, mapping, row in zip(drawn, mappings, by_column.iter_rows(named=True), strict=True):
            single = loaded.grade(mapping)
            mine, theirs = by_koirules(single), by_judge(judge(standard, record))
            if mine != theirs or row != expected(single):
                raise SystemExit(f"{text}\n{mapping}\nsingle {mine}\njudge  {theirs}\nframe  {row}")
            pairs += 1

    drawn(count, compare)
    print(f"{pairs:,} pairs of {count:,} standards agree")


def by_code(count: int) -> None:
    found: Counter[str] = Counter()

    def compare(data: st.DataObject) -> None:
        standard = data.draw(standards())
        text = to_text(standard, None)
        loaded = koirules.read_standard(text)
        drawn = [data.draw(records(standard)) for _ in range(POOL)]
        whole = [data.draw(completions(standard, record)) for record in drawn]
        draw = random.Random(data.draw(st.integers(0, 10**9)))
        for pool in (drawn, whole):
            mappings = [to_mapping(standard, record) for record in pool]
            names = sorted({name for mapping in mappings for name in mapping})
            mixed = [{name: draw.choice(mappings).get(name) for name in names} for _ in range(MIXED - POOL)]
            frame = as_frame([*mappings, *mixed])
            grader = BatchGrader(loaded.rules, loaded.settings, loaded.grader, faults=True)
            read = grader.reader({name: Source(name) for name in frame.columns}).read(frame)
            try:
                coded = grader.by_code(read, MIXED)
            except koirules.EngineError as error:
                found[str(error)] += MIXED
                continue
            by_column = grader.by_column(read, MIXED)
            if not coded.equals(by_column) or list(coded.schema.items()) != list(by_column.schema.items()):
                wrong = [name for name in coded.columns if not coded[name].equals(by_column[name])]
                row = coded[wrong[0]].ne_missing(by_column[wrong[0]]).arg_max() if wrong else 0
                raise SystemExit(f"{text}\n{frame.row(row, named=True)}\n{wrong}\n{coded[row]}\n{by_column[row]}")
            for record, row in zip(pool, coded.iter_rows(named=True), strict=False):
                verdict = judge(standard, record)
                said = (verdict.score_low / 100, verdict.score_high / 100, "|".join(verdict.possible))
                if (row["score_low"], row["score_high"], row["possible"]) != said:
                    raise SystemExit(f"{text}\n{record}\njudge {said}\ncode  {row}")
                found["judged"] += 1
            found["rows"] += MIXED

    drawn(count, compare)
    refused = {why: rows for why, rows in found.items() if why not in {"rows", "judged"}}
    print(
        f"{found['rows']:,} rows of {count:,} standards agree, {found['judged']:,} of them with the judge; not compiled:"
        f" {refused or 'none'}"
    )


def whole_batches(count: int) -> None:
    found: Counter[str] = Counter()

    def compare(data: st.DataObject) -> None:
        standard = data.draw(standards_that_compare())
        text = to_text(standard, data.draw(layouts()))
        loaded = koirules.read_standard(text)
        for _ in range(BATCHES):
            batch, seed = data.draw(batches(standard)), data.draw(st.integers(0, 1000))
            try:
                how = agrees(loaded, standard, batch, seed)
            except AssertionError as error:
                raise SystemExit(f"{text}\n{rows_of(standard, batch, seed)}\n{decisions_of(batch)}\n{error}") from error
            found[how] += 1
            found["fish"] += len(batch.fish) if how != "entangled" else 0

    drawn(count, compare)
    print(
        f"{found['columns'] + found['rows']:,} batches of {count:,} standards agree, {found['fish']:,} fish; in"
        f" {found['entangled']:,} equal fish competed for several quotas at once, {found['rows']:,} were compared by rows alone"
    )


if __name__ == "__main__":
    many = int(sys.argv[1]) if len(sys.argv) > 1 else 1_000
    modes = {"batches": whole_batches, "compiled": by_code}
    modes.get("".join(sys.argv[2:]), records_one_by_one)(many)
