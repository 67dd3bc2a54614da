"""Problems of clusters."""

from __future__ import annotations

from koirules.problems.problem import Cell, Problem


def unknown_cluster(on: str, known: tuple[str, ...]) -> Problem:
    """A run is to go to a cluster of a kind that is not known."""
    return Problem(
        "unknown-cluster",
        Cell("--on"),
        f'"{on}" is no cluster that koirules knows.',
        f"Write {' or '.join(known)}, with the address after a colon where it is not to be one on this machine.",
    )


def cluster_not_installed(kind: str) -> Problem:
    """The library of a cluster is not installed."""
    return Problem(
        "extra-missing",
        Cell("--on"),
        f"A run on {kind} needs the extra `{kind}`, which is not installed.",
        f'Install it: pip install "koirules[{kind}]".',
    )


def no_java() -> Problem:
    """Spark needs Java."""
    return Problem(
        "java-missing",
        Cell("--on"),
        "Spark needs Java, and there is no `java` on this machine.",
        "Install a Java runtime, version 17 or later, or set JAVA_HOME.",
    )


def cluster_out_of_reach(address: str, why: str) -> Problem:
    """A cluster does not answer."""
    return Problem(
        "cluster-out-of-reach",
        Cell("--on"),
        f"No cluster answers at {address}: {why}",
        "Check the address, and that the cluster runs; without an address one is started on this machine.",
    )


def worker_lost(file: str, why: str = "") -> Problem:
    """The worker that graded a piece died again and again. why: what the last one said."""
    return Problem(
        "worker-lost",
        Cell(file),
        f"Each worker that took this file up died over it{f': {why}' if why else ''}.",
        "Look into the log of the cluster: as a rule it is memory. Make the file again with smaller row groups.",
    )
