"""No cliffs: while one number of a fish goes from end to end, nothing jumps but what is meant to.

Each sample of a standard that is settled, and its ideal fish, is walked along every number and count that the standard reads,
in steps of a hundredth of the range. Where the score moves by more than five points in a step, or the grade changes because a
fault begins to bite, `meant_jumps.csv` must list it, with the reason; `--refresh-cases` adds what is new, without a reason.
Changes of the grade at a line on the score are no jumps.
"""

from __future__ import annotations

import csv
from pathlib import Path

import pytest

from koirules.analysis.flaws import Graded
from koirules.grading.sample_runs import run_samples
from koirules.vocabulary.kinds import Count, Number
from tests.rulesets.shipped import FOLDERS, flaws, standard

MEANT = Path(__file__).with_name("meant_jumps.csv")
STEPS = 100


def meant() -> dict[tuple[str, str, str], str]:
    with MEANT.open(encoding="utf-8", newline="") as file:
        return {(row["rule set"], row["trait"], row["what"]): row["why"] for row in csv.DictReader(file)}


def jumps_of(name: str) -> set[tuple[str, str, str]]:
    found = flaws(name)
    rules = standard(name).rules
    fish = [found.ideal.readings]
    fish += [run.sample.record for run in run_samples(standard(name).grader) if len(run.result.possible) == 1]
    jumps: set[tuple[str, str, str]] = set()
    for trait in rules.traits.values():
        if not isinstance(trait.kind, Number | Count) or trait.name not in found.cuts:
            continue
        for one in fish:
            if trait.name in one:
                for before, after in found.walk(trait, one, STEPS):
                    jumps |= {(name, trait.name, what) for what in between(before, after)}
    return jumps


def between(before: Graded, after: Graded) -> set[str]:
    """What jumps from one fish to its neighbour."""
    told = {"score"} if abs(before.result.score_low - after.result.score_low) > 5 else set()
    if before.result.possible != after.result.possible:
        told |= {f"fault {each}" for each in set(before.result.faults) ^ set(after.result.faults)}
        told |= {f"lift {each}" for each in set(before.result.lifts) ^ set(after.result.lifts)}
    return told


@pytest.mark.parametrize("name", FOLDERS)
def test_nothing_jumps_but_what_is_meant_to(name: str, refresh_cases: bool) -> None:
    listed = meant()
    found = jumps_of(name)
    if refresh_cases:
        listed = {key: why for key, why in listed.items() if key[0] != name or key in found}
        listed |= {key: "" for key in found if key not in listed}
        with MEANT.open("w", encoding="utf-8", newline="") as file:
            writer = csv.writer(file, lineterminator="\n")
            writer.writerow(["rule set", "trait", "what", "why"])
            writer.writerows([*key, why] for key, why in sorted(listed.items()))
        return
    assert sorted(found - listed.keys()) == []
    assert sorted(key for key in listed if key[0] == name and key not in found) == []


def test_every_jump_that_is_meant_has_its_reason() -> None:
    assert [key for key, why in meant().items() if not why.strip()] == []
