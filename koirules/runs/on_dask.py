"""A run on Dask: one task a piece, on workers of this machine or of a cluster."""

from __future__ import annotations

import asyncio
import logging
import os
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import ThreadPoolExecutor
from contextlib import AbstractContextManager, ExitStack, contextmanager
from queue import Empty, SimpleQueue
from time import monotonic
from typing import Any

from koirules.problems import clusters as say
from koirules.runs.clusters import ClusterError, unreachable
from koirules.runs.one import graded_piece
from koirules.runs.totals import Totals
from koirules.runs.work import Job, Outcome, Piece

_PATIENCE = 20.0
"""Seconds for a scheduler to answer."""

_WORKERLESS = 300.0
"""Seconds that a cluster may be without any worker: those that grow with the work need a while for the first."""

_LOOK_AFTER = 5.0
"""Seconds without a result after which it is seen whether there are workers at all."""

_STRANGER = "what answers there is no scheduler of Dask"

_SETTINGS = {
    # A worker may die over a piece once; the second death makes the piece suspect.
    "distributed.scheduler.allowed-failures": 1,
    # One thread of Polars for each worker: the workers are as many as there are cores.
    "distributed.nanny.pre-spawn-environ": {"POLARS_MAX_THREADS": "1"},
    "distributed.worker.memory.terminate": False,
}


def run(
    job: Job,
    pieces: Sequence[Piece],
    address: str | None = None,
    workers: int | None = None,
    task: Callable[[Job, Piece], Outcome] = graded_piece,
) -> Iterator[Outcome]:
    """Do the pieces, and yield what became of each as it comes.

    address: of a scheduler; without one, workers of one thread each are started here and stopped at the end. A worker that
    dies is replaced and its piece done again. Raises ClusterError where no scheduler answers, or no worker can work.
    """
    import dask
    from distributed import Client

    with ExitStack() as closing:
        closing.enter_context(_silent("distributed", "distributed.client"))
        closing.enter_context(dask.config.set(_SETTINGS))
        if address:
            _greet(address)
        place: Any = address or closing.enter_context(_here(workers or os.cpu_count() or 1))
        where = address or "this machine"
        try:
            client = closing.enter_context(Client(place, timeout=_PATIENCE, set_as_default=False))
        except (OSError, TimeoutError, ValueError) as error:
            raise unreachable(where, error) from error
        suspects = list[Piece]()
        for piece, outcome in _done(client, where, job, pieces, task):
            if outcome is not None:
                yield outcome
            else:
                suspects.append(piece)
        # Dask blames all pieces that wait at a worker that dies; each alone shows which of them it is.
        for suspect in suspects:
            for piece, outcome in _done(client, where, job, [suspect], task):
                yield outcome or Outcome(piece, Totals(), (say.worker_lost(piece.file),))


def _done(
    client: Any, where: str, job: Job, pieces: Sequence[Piece], task: Callable[[Job, Piece], Outcome]
) -> Iterator[tuple[Piece, Outcome | None]]:
    """Each piece as it comes, with what became of it: None where its workers died."""
    done: SimpleQueue[Any] = SimpleQueue()
    waiting = {}
    for piece in pieces:
        future = client.submit(task, job, piece, pure=False)
        waiting[future.key] = (piece, future)
        future.add_done_callback(done.put)
    seen = monotonic()
    while waiting:
        try:
            future = done.get(timeout=_LOOK_AFTER)
        except Empty:
            seen = monotonic() if _has_workers(client, where) else seen
            if monotonic() - seen > _WORKERLESS:
                raise ClusterError(say.no_workers(where)) from None
            continue
        piece, _ = waiting.pop(future.key)
        yield piece, _result(future, where)
        seen = monotonic()


def _result(future: Any, where: str) -> Outcome | None:
    from distributed.scheduler import KilledWorker, NoWorkerError

    if future.status in {"cancelled", "lost"}:
        raise unreachable(where, ConnectionError("the connection was lost in the middle of the run"))
    error = future.exception()
    if error is None:
        outcome: Outcome = future.result()
        return outcome
    if isinstance(error, KilledWorker):
        return None
    if isinstance(error, NoWorkerError):
        raise ClusterError(say.no_workers(where)) from error
    # A scheduler that cannot load the work says so in an error of its own, with this one as its cause.
    for missing in (error, error.__cause__):
        if isinstance(missing, ImportError):
            raise ClusterError(say.workers_lack(where, str(missing))) from error
    raise error


def _has_workers(client: Any, where: str) -> bool:
    try:
        return bool(client.ncores())
    except Exception as error:  # whatever the connection dies of
        raise unreachable(where, error) from error


@contextmanager
def _silent(*names: str) -> Iterator[None]:
    """Loggers that say nothing for a while: what matters comes back as an outcome or an error."""
    before = [(logger, logger.level) for logger in map(logging.getLogger, names)]
    try:
        for logger, _ in before:
            logger.setLevel(logging.CRITICAL)
        yield
    finally:
        for logger, level in before:
            logger.setLevel(level)


def _here(workers: int) -> AbstractContextManager[Any]:
    from distributed import LocalCluster

    cluster: AbstractContextManager[Any] = LocalCluster(
        n_workers=workers,
        threads_per_worker=1,
        processes=True,
        dashboard_address=":0",
        silence_logs=logging.CRITICAL,
    )
    return cluster


def _greet(address: str) -> None:
    """Ask who is there: a client that meets no scheduler of Dask takes long to give up, and leaves a traceback behind."""
    from distributed.core import connect
    from distributed.security import Security

    async def identity() -> Any:
        comm = await connect(address, timeout=_PATIENCE, **Security().get_connection_args("client"))
        try:
            await comm.write({"op": "identity", "reply": True})
            return await comm.read()
        finally:
            comm.abort()

    try:
        # In a thread of its own, because this one may have a loop that runs.
        with ThreadPoolExecutor(1) as thread:
            answer = thread.submit(asyncio.run, asyncio.wait_for(identity(), 2 * _PATIENCE)).result()
    except OSError as error:  # a TimeoutError too
        raise unreachable(address, error) from error
    except Exception as error:  # a stranger may answer, and with anything
        raise unreachable(address, ConnectionError(_STRANGER)) from error
    if not isinstance(answer, dict) or answer.get("type") != "Scheduler":
        raise unreachable(address, ConnectionError(_STRANGER))
