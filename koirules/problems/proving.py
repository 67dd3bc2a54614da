"""Problems of proofs and comparisons."""

from __future__ import annotations

from koirules.problems.extras import to_install
from koirules.problems.problem import Cell, Problem


def needs_solver(command: str) -> Problem:
    """The solver is not installed."""
    return Problem(
        "extra-missing",
        Cell(f"koirules {command}"),
        "Statements about every fish need the extra `proofs`, which is not installed.",
        f"Install it: {to_install('proofs')}.",
    )
