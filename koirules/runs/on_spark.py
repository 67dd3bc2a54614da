"""A run on Spark: one task a piece, as plain Python on its workers; no row ever goes through Spark itself."""

from __future__ import annotations

import os
import re
import sys
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from typing import Any

from koirules.problems import clusters as say
from koirules.runs.clusters import unreachable
from koirules.runs.one import graded_piece
from koirules.runs.totals import Totals
from koirules.runs.work import Job, Outcome, Piece

_TRIES = 4
_SAID = re.compile(r"^(\w+(?:\.\w+)*(?:Error|Exception): .*)$", re.MULTILINE)
"""The last line of a traceback of Python, within what Java says."""


def run(
    job: Job,
    pieces: Sequence[Piece],
    address: str | None = None,
    workers: int | None = None,
    task: Callable[[Job, Piece], Outcome] = graded_piece,
) -> Iterator[Outcome]:
    """Do the pieces, and yield what became of each.

    address: the URL of a master; without one, workers are started here. A worker that dies is replaced and its piece done
    again. A Spark that runs in this process already is used, and left running. Raises ClusterError where none answers.
    """
    from py4j.protocol import Py4JError
    from pyspark import SparkConf, SparkContext
    from pyspark.errors import PySparkException

    master = address or f"local[{workers or os.cpu_count() or 1},{_TRIES}]"
    # What is private to Spark has no other door: whether there is a context is nowhere else to be seen.
    running = SparkContext._active_spark_context  # noqa: SLF001
    # Workers of this machine take their surroundings from here, those of others from the settings.
    here = {"POLARS_MAX_THREADS": "1"} | ({"PYSPARK_PYTHON": sys.executable} if master.startswith("local") else {})
    with _surroundings(here):
        conf = SparkConf().setMaster(master).setAppName("koirules").set("spark.ui.enabled", "false")
        conf.set("spark.executorEnv.POLARS_MAX_THREADS", "1").set("spark.log.level", "OFF")
        if master.startswith("local"):
            conf.set("spark.driver.host", "localhost")
        try:
            context: Any = running or SparkContext(conf=conf)
        except (Py4JError, PySparkException, OSError) as error:
            raise unreachable(master, error) from error
        try:
            yield from _outcomes(context, job, pieces, task)
        finally:
            if running is None:
                context.stop()


@contextmanager
def _surroundings(wanted: Mapping[str, str]) -> Iterator[None]:
    """Names in the environment of this process, for a while."""
    before = {name: os.environ.get(name) for name in wanted}
    os.environ.update(wanted)
    try:
        yield
    finally:
        for name, value in before.items():
            if value is None:
                os.environ.pop(name, None)
            else:
                os.environ[name] = value


def _outcomes(
    context: Any, job: Job, pieces: Sequence[Piece], task: Callable[[Job, Piece], Outcome]
) -> Iterator[Outcome]:
    from py4j.protocol import Py4JError
    from pyspark.errors import PySparkException

    if not pieces:
        return
    work = context.parallelize(list(pieces), len(pieces)).map(lambda piece: task(job, piece))
    try:
        yield from work.collect()
    except (Py4JError, PySparkException):
        # Spark gives the whole job up with its first task that fails too often; each piece by itself tells which it is.
        for piece in pieces:
            try:
                yield from context.parallelize([piece], 1).map(lambda each: task(job, each)).collect()
            except (Py4JError, PySparkException) as error:
                said = _SAID.findall(str(error))
                yield Outcome(piece, Totals(), (say.worker_lost(piece.file, said[-1][:200] if said else ""),))
