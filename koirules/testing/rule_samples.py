"""Rule files as tests: their own samples become tests of a project in three lines.

```python
@pytest.mark.parametrize("run", koirules.testing.sample_runs("my_standard.koi"), ids=koirules.testing.sample_title)
def test_samples(run):
    assert not run.failures, koirules.testing.told(run)
```
"""

from __future__ import annotations

from os import PathLike

from koirules.api import load_standard
from koirules.grading.sample_runs import SampleRun, run_samples
from koirules.plugins import Registry


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
