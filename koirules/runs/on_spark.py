"""A run on Spark: one job a piece, as plain Python on its workers; no row ever goes through Spark itself."""

from __future__ import annotations

import os
import re
import subprocess
import sys
import warnings
from collections.abc import Callable, Iterator, Mapping, Sequence
from concurrent.futures import FIRST_COMPLETED, ThreadPoolExecutor, wait
from contextlib import contextmanager
from time import monotonic
from typing import Any
from uuid import uuid4

from koirules.problems import clusters as say
from koirules.runs.addresses import why_silent
from koirules.runs.clusters import ClusterError, unreachable
from koirules.runs.one import graded_piece
from koirules.runs.totals import Totals
from koirules.runs.work import Job, Outcome, Piece

_TRIES = 4
_AT_ONCE = 32
"""So many jobs are sent at once at least: one fills a core, and further ones wait in Spark until one is free."""

_PATIENCE = 20.0
"""Seconds for a master to take a connection."""

_WORKLESS = 300.0
"""Seconds that no worker may be at work on anything."""

_LOOK_AFTER = 5.0
_SAID = re.compile(r"^(\w+(?:\.\w+)*(?:Error|Exception): .*)$", re.MULTILINE)
"""The last line of a traceback of Python, within what Java says."""


def run(
    job: Job,
    pieces: Sequence[Piece],
    address: str | None = None,
    workers: int | None = None,
    task: Callable[[Job, Piece], Outcome] = graded_piece,
) -> Iterator[Outcome]:
    """Do the pieces, and yield what became of each as it comes.

    address: the URL of a master; without one, workers are started here. A worker that dies is replaced and its piece done
    again. A Spark that runs in this process already is used, and left running. Raises ClusterError where none answers, or
    no worker can work.
    """
    from pyspark import SparkContext

    master = address or f"local[{workers or os.cpu_count() or 1},{_TRIES}]"
    # What is private to Spark has no other door: whether there is a context is nowhere else to be seen.
    running = SparkContext._active_spark_context  # noqa: SLF001
    # Workers of this machine take their surroundings from here, those of others from the settings.
    here = {"POLARS_MAX_THREADS": "1"} | ({"PYSPARK_PYTHON": sys.executable} if master.startswith("local") else {})
    with _surroundings(here):
        with warnings.catch_warnings():
            # Spark warns of versions of pandas, which it is not asked to use.
            warnings.simplefilter("ignore", FutureWarning)
            context: Any = running or _started(master)
        try:
            yield from _outcomes(context, job, pieces, task)
        finally:
            if running is None:
                context.stop()


def _started(master: str) -> Any:
    from pyspark import SparkConf, SparkContext
    from pyspark.java_gateway import launch_gateway

    if master.startswith("spark:") and (why := why_silent(master, _PATIENCE)):
        raise unreachable(master, ConnectionError(why))
    conf = SparkConf().setMaster(master).setAppName("koirules")
    conf.set("spark.ui.enabled", "false").set("spark.ui.showConsoleProgress", "false")
    conf.set("spark.executorEnv.POLARS_MAX_THREADS", "1").set("spark.log.level", "OFF")
    if master.startswith("local"):
        conf.set("spark.driver.host", "localhost")
    try:
        # Java greets and warns on the stream of errors before any setting of its log is read.
        quiet = {"stdout": subprocess.DEVNULL, "stderr": subprocess.DEVNULL}
        has_java = SparkContext._gateway is not None  # noqa: SLF001 - as above
        return SparkContext(conf=conf, gateway=None if has_java else launch_gateway(conf, quiet))
    except Exception as error:  # Java, the way to it, and Spark each have errors of their own
        raise unreachable(master, _in_short(error)) from error


def _in_short(error: Exception) -> Exception:
    """What Java says of an error, without where in Java it was."""
    java = getattr(error, "java_exception", None)
    if java is None:
        return error
    return ConnectionError(str(java.getMessage() or java.toString()))


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
    """What became of each piece. Each is a job: Spark gives a whole job up with its first task that fails too often."""
    tag = f"koirules-{uuid4()}"
    threads = ThreadPoolExecutor(min(max(len(pieces), 1), max(_AT_ONCE, 2 * context.defaultParallelism)))
    waiting = {threads.submit(_one, context, tag, job, piece, task) for piece in pieces}
    seen = monotonic()
    try:
        while waiting:
            done, waiting = wait(waiting, timeout=_LOOK_AFTER, return_when=FIRST_COMPLETED)
            for future in done:
                yield future.result()
            if done or _is_busy(context):
                seen = monotonic()
            elif monotonic() - seen > _WORKLESS:
                raise ClusterError(say.no_workers(context.master))
    finally:
        if waiting:
            _cancel(context, tag)
        threads.shutdown(cancel_futures=True)


def _one(context: Any, tag: str, job: Job, piece: Piece, task: Callable[[Job, Piece], Outcome]) -> Outcome:
    from py4j.protocol import Py4JError
    from pyspark.errors import PySparkException

    try:
        context.addJobTag(tag)
        outcome: Outcome = context.parallelize([piece], 1).map(lambda each: task(job, each)).collect()[0]
    except (Py4JError, PySparkException, OSError, AttributeError) as error:
        if _is_gone(context):
            lost = ConnectionError("the connection was lost in the middle of the run")
            raise unreachable(context.master, lost) from error
        said = _SAID.findall(str(error))
        why = said[-1][:200] if said else ""
        if why.startswith(("ModuleNotFoundError", "ImportError")):
            raise ClusterError(say.workers_lack(context.master, why)) from error
        return Outcome(piece, Totals(), (say.worker_lost(piece.file, why),))
    return outcome


def _is_busy(context: Any) -> bool:
    """Whether any worker is at work."""
    tracker = context.statusTracker()
    stages = (tracker.getStageInfo(stage) for stage in tracker.getActiveStageIds())
    return any(stage is not None and stage.numActiveTasks for stage in stages)


def _is_gone(context: Any) -> bool:
    """Whether Spark itself has stopped, or Java with it."""
    try:
        return bool(context._jsc.sc().isStopped())  # noqa: SLF001 - the Java side alone knows
    except Exception:  # no answer is an answer
        return True


def _cancel(context: Any, tag: str) -> None:
    if not _is_gone(context):
        context.cancelJobsWithTag(tag)
