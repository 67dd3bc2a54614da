"""A run on Dask: one task a piece, on workers of this machine or of a cluster."""

from __future__ import annotations

import logging
import os
from collections.abc import Callable, Iterator, Sequence
from contextlib import ExitStack
from typing import Any

from koirules.problems import clusters as say
from koirules.runs.clusters import unreachable
from koirules.runs.one import graded_piece
from koirules.runs.totals import Totals
from koirules.runs.work import Job, Outcome, Piece

_PATIENCE = "20s"
_DEATHS = 3
"""So many workers may die over one piece before it is given up."""


def run(
    job: Job,
    pieces: Sequence[Piece],
    address: str | None = None,
    workers: int | None = None,
    task: Callable[[Job, Piece], Outcome] = graded_piece,
) -> Iterator[Outcome]:
    """Do the pieces, and yield what became of each as it comes.

    address: of a scheduler; without one, workers of one thread each are started here and stopped at the end. A worker that
    dies is replaced and its piece done again. Raises ClusterError where no scheduler answers.
    """
    import dask
    from distributed import Client, LocalCluster, as_completed
    from distributed.scheduler import KilledWorker

    logging.getLogger("distributed").setLevel(logging.CRITICAL)
    # One thread of Polars for each worker: the workers are as many as there are cores.
    quiet = {
        "distributed.scheduler.allowed-failures": _DEATHS,
        "distributed.nanny.pre-spawn-environ": {"POLARS_MAX_THREADS": "1"},
        "distributed.worker.memory.terminate": False,
    }
    with ExitStack() as closing:
        closing.enter_context(dask.config.set(quiet))
        try:
            place: Any = address or closing.enter_context(
                LocalCluster(
                    n_workers=workers or os.cpu_count() or 1,
                    threads_per_worker=1,
                    processes=True,
                    dashboard_address=None,
                    silence_logs=logging.CRITICAL,
                )
            )
            client = closing.enter_context(Client(place, timeout=_PATIENCE, set_as_default=False))
        except (OSError, TimeoutError, ValueError) as error:
            raise unreachable(address or "this machine", error) from error
        futures = {client.submit(task, job, piece, pure=False): piece for piece in pieces}
        for future in as_completed(futures, loop=client.loop):
            try:
                yield future.result()
            except KilledWorker:
                piece = futures[future]
                yield Outcome(piece, Totals(), (say.worker_lost(piece.file),))
            future.release()
