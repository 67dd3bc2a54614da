"""Rule files as tests: their own samples become tests of a project in three lines.

```python
@pytest.mark.parametrize("run", koirules.testing.sample_runs("my_standard.koi"), ids=koirules.testing.sample_title)
def test_samples(run):
    assert not run.failures, koirules.testing.told(run)
```
"""

from __future__ import annotations

import csv
from collections.abc import Iterator
from os import PathLike
from pathlib import Path

from koirules.analysis.coverage import unreached
from koirules.api import Standard, load_standard
from koirules.grading.sample_runs import SampleRun, run_samples
from koirules.plugins import Registry
from koirules.records.records import read_records


def sample_runs(path: str | PathLike[str], registry: Registry | None = None) -> tuple[SampleRun, ...]:
    """Run the samples of a rule file; raises StandardError where the file has problems."""
    return run_samples(load_standard(path, registry).grader)


def sample_title(run: SampleRun) -> str:
    """The title of a sample, for the name of its test."""
    return run.sample.title


def told(run: SampleRun) -> str:
    """What failed in a sample, with every reason of what came instead."""
    failed = [f"the sample {run.sample.title!r} (line {run.sample.place.line})", *run.failures]
    return "\n  ".join([*failed, *(f"{reason.kind}: {reason.words}" for reason in run.result.reasons)])


def ruleset_faults(path: str | PathLike[str], registry: Registry | None = None) -> tuple[str, ...]:
    """What is wrong with a rule set, in words; nothing where it is fit to be shipped.

    It reads without a warning, its samples hold and reach every outcome, and the fish in `records.csv` beside it get the
    grades in `expected.csv` (columns fish and possible, grades parted by `|`, best first). Raises StandardError where the
    file has problems.
    """
    standard = load_standard(path, registry)
    folder = Path(standard.rules.file).parent
    return (
        *(str(warning) for warning in standard.warnings),
        *(told(run) for run in run_samples(standard.grader) if run.failures),
        *(f"no sample reaches: {outcome}" for outcome in unreached(standard.grader)),
        *_records_faults(standard, folder / "records.csv", folder / "expected.csv"),
    )


def _records_faults(standard: Standard, records: Path, expected: Path) -> Iterator[str]:
    batch = read_records(records, standard.traits)
    if batch.problems or not expected.is_file():
        yield from (str(problem) for problem in batch.problems)
        if not expected.is_file():
            yield f"{expected.name} is missing beside the rules"
        return
    with expected.open(encoding="utf-8", newline="") as file:
        wanted = {row["fish"]: row["possible"] for row in csv.DictReader(file)}
    came = {record.fish: "|".join(standard.grade_record(record).possible) for record in batch.records}
    for fish in dict.fromkeys((*wanted, *came)):
        if wanted.get(fish) != came.get(fish):
            yield f"{fish}: expected {wanted.get(fish, 'no such fish')}, and it is {came.get(fish, 'no such fish')}"
