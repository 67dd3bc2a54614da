"""How long `koirules prove` takes beside a commit before: `python tests/benchmarks/proofs_before.py [COMMIT] [RUNS] [NAME…]`.

Both versions prove the same rule files, those that the commit shipped under a NAME (by default some of plugins), in turns, each
RUNS times (7), with what the first run of each left in the cache. Prints the medians of the processor time and their ratio;
asserts nothing.
"""

import statistics
import sys
import tempfile
from pathlib import Path

from startup import BEFORE, ROOT, checked_out, seconds

NAMES = ("fry_showa", "fry_taisho_sanke", "fry_doitsu_kohaku", "fry_hikari_muji")


def main(commit: str = BEFORE, runs: str = "7", *names: str) -> None:
    with tempfile.TemporaryDirectory() as folder:
        old = checked_out(commit, Path(folder))
        print(f"processor time, median of {runs} runs in turns; before: {commit}\n")
        print(f"{'':44}{'before':>9}{'now':>9}{'ratio':>9}")
        for name in names or NAMES:
            (rules,) = old.rglob(f"rulesets/{name}/standard.koi")
            times: dict[Path, list[float]] = {old: [], ROOT: []}
            for _ in range(int(runs)):
                for number, checkout in enumerate(times):
                    kept = Path(folder, f"kept{number}")
                    kept.mkdir(mode=0o700, exist_ok=True)
                    times[checkout].append(seconds(checkout, ["prove", str(rules)], kept))
            before, now = map(statistics.median, times.values())
            print(f"{name:44}{before:9.2f}{now:9.2f}{now / before:9.2f}", flush=True)


if __name__ == "__main__":
    main(*sys.argv[1:])
