"""Problems of clusters."""

from __future__ import annotations

from koirules.problems.extras import to_install
from koirules.problems.problem import Cell, Problem


def unknown_cluster(on: str, known: tuple[str, ...]) -> Problem:
    """A run is to go to a cluster of a kind that is not known."""
    return Problem(
        "unknown-cluster",
        Cell("--on"),
        f'"{on}" is no cluster that koirules knows.',
        f"Write {' or '.join(known)}, with the address after a colon where it is not to be one on this machine.",
    )


def no_such_address(kind: str, address: str, like: str) -> Problem:
    """What stands after the colon is no address of a cluster of this kind."""
    return Problem(
        "wrong-cluster-address",
        Cell("--on"),
        f'"{address}" is no address of a cluster on {kind}.',
        f"Write it like {like}, or {kind} alone for one on this machine.",
    )


def cluster_not_installed(kind: str) -> Problem:
    """The library of a cluster is not installed."""
    return Problem(
        "extra-missing",
        Cell("--on"),
        f"A run on {kind} needs the extra `{kind}`, which is not installed.",
        f"Install it: {to_install(kind)}.",
    )


def no_java() -> Problem:
    """Spark needs Java."""
    return Problem(
        "java-missing",
        Cell("--on"),
        "Spark needs Java, and there is no `java` where it looks for it.",
        "Install a Java runtime, version 17 or later, and set JAVA_HOME to its folder or to nothing.",
    )


def cluster_out_of_reach(address: str, why: str) -> Problem:
    """A cluster does not answer."""
    return Problem(
        "cluster-out-of-reach",
        Cell("--on"),
        f"No cluster answers at {address}: {why}",
        "Check the address, and that the cluster runs; without an address one is started on this machine.",
    )


def no_workers(address: str) -> Problem:
    """A cluster answers, but no worker takes any work."""
    return Problem(
        "cluster-without-workers",
        Cell("--on"),
        f"The cluster at {address} answers, but none of its workers took up any work.",
        "See that its workers run and are free, then try again.",
    )


def workers_lack(address: str, why: str) -> Problem:
    """The workers of a cluster cannot load what grades."""
    return Problem(
        "worker-lacks-library",
        Cell("--on"),
        f"The workers of the cluster at {address} cannot load what they need: {why}",
        "Install the same koirules, with the same extra, for the Python of every worker.",
    )


def worker_lost(file: str, why: str = "") -> Problem:
    """The worker that graded a piece died again and again. why: what the last one said."""
    return Problem(
        "worker-lost",
        Cell(file),
        f"Each worker that took this file up died over it{f': {why}' if why else ''}.",
        "Look into the log of the cluster: as a rule it is memory. Make the file again with smaller row groups.",
    )
