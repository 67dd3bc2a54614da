"""Real clusters on this machine, of two workers each: the same totals and files as one process, whatever happens to a worker."""

from __future__ import annotations

import os
import shutil
import signal
import socket
from collections.abc import Callable, Iterator, Sequence
from functools import partial
from pathlib import Path
from threading import Thread

import polars as pl
import pytest

from koirules.problems import Problem
from koirules.runs import on_dask, on_spark
from koirules.runs.clusters import ClusterError, chosen
from koirules.runs.one import graded_piece
from koirules.runs.run import here, run_files
from koirules.runs.work import Job, Outcome, Piece
from tests.runs.test_files import RULES, made

JOB = Job(RULES, "trial.koi", top=5)
CLUSTERS = {"dask": on_dask.run, "spark": on_spark.run}


@pytest.fixture(params=list(CLUSTERS))
def cluster(request: pytest.FixtureRequest) -> Callable[..., Iterator[Outcome]]:
    if request.param == "spark" and shutil.which("java") is None:
        pytest.skip("Spark needs Java")
    return partial(CLUSTERS[request.param], workers=2)


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """Five files of invented records, one of them of several row groups."""
    made_in = tmp_path / "records"
    made_in.mkdir()
    for number in range(5):
        made(400, number * 400).write_parquet(made_in / f"{number}.parquet", row_group_size=90 if number == 2 else None)
    return made_in


def killed_once(marker: str, job: Job, piece: Piece) -> Outcome:
    """Grades a piece, but the worker that takes the third one up first is killed over it."""
    mark = Path(marker)
    if piece.number == 2 and not mark.exists():
        mark.write_text(str(os.getpid()), encoding="utf-8")
        os.kill(os.getpid(), signal.SIGKILL)
    return graded_piece(job, piece)


def killed_always(job: Job, piece: Piece) -> Outcome:
    if piece.number == 1:
        os.kill(os.getpid(), signal.SIGKILL)
    return graded_piece(job, piece)


def lacking(_job: Job, _piece: Piece) -> Outcome:
    raise ModuleNotFoundError("No module named 'library_of_the_pond'")


def test_a_cluster_gives_what_one_process_gives(
    cluster: Callable[..., Iterator[Outcome]], folder: Path, tmp_path: Path
) -> None:
    alone = run_files(JOB, [str(folder)], here(), str(tmp_path / "alone.parquet"))
    together = run_files(JOB, [str(folder)], cluster, str(tmp_path / "together.parquet"), parted=True)
    assert together.problems == ()
    assert together.totals == alone.totals
    assert together.totals.fish == 2_000
    assert pl.read_parquet(tmp_path / "together.parquet").equals(pl.read_parquet(tmp_path / "alone.parquet"))


def test_a_worker_that_is_killed_costs_nothing(
    cluster: Callable[..., Iterator[Outcome]], folder: Path, tmp_path: Path
) -> None:
    marker = tmp_path / "killed"
    alone = run_files(JOB, [str(folder)], here())
    together = run_files(JOB, [str(folder)], partial(cluster, task=partial(killed_once, str(marker))))
    assert int(marker.read_text(encoding="utf-8")) != os.getpid()
    assert together.problems == ()
    assert together.totals == alone.totals


def test_a_broken_file_and_one_that_kills_its_workers_are_named_and_the_rest_completes(
    cluster: Callable[..., Iterator[Outcome]], folder: Path
) -> None:
    broken = folder / "3.parquet"
    content = broken.read_bytes()
    broken.write_bytes(content[:4] + bytes(300) + content[304:])
    runner = partial(cluster, task=killed_always)
    rest = run_files(JOB, [str(folder)], runner, leave_out=True)
    assert {Path(file).name for file in rest.left_out} == {"1.parquet", "3.parquet"}
    assert {problem.code for problem in rest.problems} == {"worker-lost", "unreadable-file"}
    assert rest.totals.fish == 1_200
    assert run_files(JOB, [str(folder)], here()).failed


def test_what_is_no_cluster_is_told() -> None:
    problem = chosen("abacus")
    assert isinstance(problem, Problem)
    assert problem.code == "unknown-cluster"


def test_a_scheduler_that_does_not_answer_is_told(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(on_dask, "_PATIENCE", 1.0)
    with pytest.raises(ClusterError) as caught:
        run_files(JOB, [str(folder)], partial(on_dask.run, address="tcp://127.0.0.1:9"))
    assert caught.value.problem.code == "cluster-out-of-reach"


def test_a_stranger_that_answers_in_the_place_of_a_scheduler_is_told(folder: Path) -> None:
    with socket.create_server(("127.0.0.1", 0)) as server:

        def answer() -> None:
            with server.accept()[0] as connection:
                connection.sendall(b"HTTP/1.1 400 Bad Request\r\nContent-Length: 0\r\n\r\n" * 20)
                connection.recv(1)

        stranger = Thread(target=answer)
        stranger.start()
        address = f"tcp://127.0.0.1:{server.getsockname()[1]}"
        with pytest.raises(ClusterError, match="no scheduler of Dask") as caught:
            run_files(JOB, [str(folder)], partial(on_dask.run, address=address))
        stranger.join()
    assert caught.value.problem.code == "cluster-out-of-reach"


def test_a_java_home_without_java_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("JAVA_HOME", str(tmp_path))
    problem = chosen("spark")
    assert isinstance(problem, Problem)
    assert problem.code == "java-missing"


@pytest.mark.parametrize(("missing", "code"), [("distributed", "extra-missing"), ("java", "java-missing")])
def test_what_a_cluster_lacks_is_told(missing: str, code: str, monkeypatch: pytest.MonkeyPatch) -> None:
    from importlib import util

    from koirules.runs import clusters as ours

    found: Callable[[str], object] = util.find_spec
    monkeypatch.setattr(ours, "find_spec", lambda name: None if name == missing else found(name))
    if missing == "java":
        monkeypatch.setattr(ours.shutil, "which", lambda *_, **__: None)
        monkeypatch.delenv("JAVA_HOME", raising=False)
    problem = chosen("dask" if missing == "distributed" else "spark")
    assert isinstance(problem, Problem)
    assert problem.code == code


def test_pieces_come_back_for_every_piece(cluster: Callable[..., Iterator[Outcome]], folder: Path) -> None:
    pieces: Sequence[Piece] = tuple(Piece(i, str(folder / f"{i}.parquet")) for i in range(3))
    assert sorted(outcome.piece.number for outcome in cluster(JOB, pieces)) == [0, 1, 2]


@pytest.mark.parametrize("on", ["dask:http://pond", "spark:nonsense", "dask:", "dask:tcp://pond:99999"])
def test_what_is_no_address_is_told_before_anything_runs(on: str) -> None:
    problem = chosen(on)
    assert isinstance(problem, Problem)
    assert problem.code == "wrong-cluster-address"


def test_workers_that_lack_a_library_are_told(cluster: Callable[..., Iterator[Outcome]], folder: Path) -> None:
    with pytest.raises(ClusterError, match="library_of_the_pond") as caught:
        run_files(JOB, [str(folder)], partial(cluster, task=lacking))
    assert caught.value.problem.code == "worker-lacks-library"


def test_a_cluster_without_workers_is_told(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from distributed import LocalCluster

    monkeypatch.setattr(on_dask, "_WORKERLESS", 1.0)
    monkeypatch.setattr(on_dask, "_LOOK_AFTER", 0.3)
    with (
        LocalCluster(n_workers=0, processes=True, dashboard_address=None) as empty,
        pytest.raises(ClusterError) as caught,
    ):
        run_files(JOB, [str(folder)], partial(on_dask.run, address=empty.scheduler_address))
    assert caught.value.problem.code == "cluster-without-workers"
