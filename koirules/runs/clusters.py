"""The clusters that a run can go to, by the words of `--on`."""

from __future__ import annotations

import os
import shutil
from functools import partial
from importlib.util import find_spec
from pathlib import Path

from koirules.problems import Problem
from koirules.problems import clusters as say
from koirules.runs.addresses import LIKE, is_address
from koirules.runs.run import Runner

KINDS = ("dask", "spark")
_LIBRARIES = {"dask": "distributed", "spark": "pyspark"}


class ClusterError(Exception):
    """A cluster that cannot be used, with the problem that says why."""

    def __init__(self, problem: Problem) -> None:
        super().__init__(problem.cause)
        self.problem = problem


def chosen(on: str) -> Runner | Problem:
    """What does the pieces of a run: `dask` or `spark`, on this machine or, after a colon, at an address.

    A problem says what is missing for it. The runner raises ClusterError for a cluster that does not answer.
    """
    kind, parted, address = on.partition(":")
    if kind not in KINDS:
        return say.unknown_cluster(on, KINDS)
    if parted and not is_address(kind, address):
        return say.no_such_address(kind, address, LIKE[kind])
    if any(find_spec(name) is None for name in (_LIBRARIES[kind], "polars", "pyarrow")):
        return say.cluster_not_installed(kind)
    if kind == "dask":
        from koirules.runs import on_dask

        return partial(on_dask.run, address=address or None)
    if not _has_java():
        return say.no_java()
    from koirules.runs import on_spark

    return partial(on_spark.run, address=address or None)


def unreachable(address: str, error: Exception) -> ClusterError:
    """The error for a cluster that does not answer at an address."""
    first = (str(error).splitlines() or [""])[0] or type(error).__name__
    return ClusterError(say.cluster_out_of_reach(address, first[:200]))


def _has_java() -> bool:
    """Whether Spark will find Java: where JAVA_HOME is set, it looks nowhere else."""
    home = os.environ.get("JAVA_HOME")
    return shutil.which("java", path=Path(home) / "bin" if home else None) is not None
