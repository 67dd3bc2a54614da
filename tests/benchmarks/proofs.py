"""Prints how long each kind of statement takes to prove for a made standard of so many criteria: `proofs.py [CRITERIA]`."""

from __future__ import annotations

import sys
from pathlib import Path
from random import Random
from time import perf_counter

sys.path.insert(0, str(Path(__file__).parents[2]))

import koirules
from koirules.analysis.proofs.better import better, ordered_traits
from koirules.analysis.proofs.every import ABOUT_PARTS
from koirules.analysis.proofs.prover import Prover
from koirules.analysis.proofs.statements import KINDS, Outcome, Statement

SECTIONS = 8


def made(criteria: int, seed: int = 1) -> str:
    """A standard: a third of the criteria are tables, the others curves; faults over two traits each, one lift."""
    draw = Random(seed)
    lines = ['standard "made" edition 1']
    for i in range(criteria):
        kind = ("count up to 20, less is better", "number in cm from 0 to 100, more is better")
        scale = "scale poor < fair < good < best, more is better"
        lines.append(f"trait t{i} as {scale if i % 3 == 2 else kind[i % 3]}")
    for fault in range(criteria * 3 // 10):
        one, other = draw.randrange(criteria), draw.randrange(criteria)
        grade = draw.choice(("hold", "sell", "cull"))
        lines.append(f"fault f{fault} if {_bad(one, draw)} and {_bad(other, draw)}: no better than {grade}")
    for section in range(SECTIONS):
        lines.append(f"section part{section} worth {100 / SECTIONS}")
        for i in range(section * criteria // SECTIONS, (section + 1) * criteria // SECTIONS):
            lines.append(f"points p{i} weight {draw.randint(1, 5)} by t{i}: {_gives(i, draw)}")
    lines.append("lift strong if section part0 at least 11: no worse than hold")
    lines.append("grade keep if score at least 75 and section part0 at least 8")
    lines += ["grade hold if score at least 60", "grade sell if score at least 35", "grade cull otherwise"]
    return "\n".join(lines) + "\n"


def _bad(i: int, draw: Random) -> str:
    return (f"t{i} above {draw.randint(5, 18)}", f"t{i} below {draw.randint(5, 60)} cm", f"t{i} is poor")[i % 3]


def _gives(i: int, draw: Random) -> str:
    low, high = draw.randint(1, 20), draw.randint(30, 60)
    return (
        "0 gives 10, 3 gives 6, 15 gives 0",
        f"{low} cm gives 0, {high} cm gives 10, {draw.randint(70, 99)} cm gives {draw.randint(4, 10)}",
        "poor gives 0, fair gives 4, good gives 7, best gives 10",
    )[i % 3]


def main() -> None:
    """Print a table."""
    criteria = int(sys.argv[1]) if len(sys.argv) > 1 else 200
    grader = koirules.read_standard(made(criteria)).grader
    started = perf_counter()
    prover = Prover.of(grader)
    print(f"made ready, with {len(prover.pool):,} fish graded: {perf_counter() - started:.1f} s")
    print("| statements | how many | not decided | the longest | together |\n| --- | ---: | ---: | ---: | ---: |")
    for kind, asked in ABOUT_PARTS.items():
        _row(KINDS[kind], asked(prover))
    whole = Prover.of(grader, whole=True)
    _row(KINDS["better"], (better(whole, trait) for trait in ordered_traits(whole)))


def _row(words: str, statements: object) -> None:
    found: list[Statement] = []
    times = []
    started = last = perf_counter()
    for statement in statements:  # type: ignore[attr-defined]
        now = perf_counter()
        times.append(now - last)
        last = now
        found.append(statement)
    left = sum(statement.outcome is Outcome.OPEN for statement in found)
    longest = max(times, default=0.0)
    print(f"| {words} | {len(found)} | {left} | {longest:.1f} s | {perf_counter() - started:.1f} s |", flush=True)


if __name__ == "__main__":
    main()
