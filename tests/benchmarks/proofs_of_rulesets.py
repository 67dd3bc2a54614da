"""Proves the standards of rulesets/ and plugins/: `python tests/benchmarks/proofs_of_rulesets.py [NAME…]`.

Prints for each the processor time and how many of its answers were not decided. The aim is 60 seconds of processor time
for each on a machine of 2020, and at most 5 % of the answers not decided. Exit status 1 where one misses the second.
"""

import sys
from pathlib import Path
from time import process_time

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))
ROOMS = sorted(path for path in (ROOT / "plugins").iterdir() if (path / "pyproject.toml").exists())
sys.path[:0] = [str(path) for path in ROOMS]

import koirules
from koirules.analysis.proofs.every import proofs
from koirules.analysis.proofs.statements import Outcome
from koirules.plugins import Registry
from koirules.testing import registry_with

MOST_OPEN = 0.05


def installed() -> Registry:
    """Every plugin of the repository, installed or not."""
    modules = [f"koirules_{path.name}" for path in ROOMS if (path / f"koirules_{path.name}").is_dir()]
    return registry_with(*(__import__(name) for name in modules))


def main() -> int:
    """Prove one after another."""
    registry = installed()
    missed = 0
    for name in sys.argv[1:] or sorted(registry.rulesets):
        standard = koirules.load_standard(name, registry)
        began = process_time()
        found = proofs(standard.grader.of_known_fish).statements
        left = sum(one.outcome is Outcome.OPEN for one in found)
        missed += left > MOST_OPEN * len(found)
        print(f"{name:<22} {process_time() - began:>6.1f} s, {left} of {len(found)} answers not decided", flush=True)
    return 1 if missed else 0


if __name__ == "__main__":
    sys.exit(main())
