"""How long commands take to start, beside a commit before: `python tests/benchmarks/startup.py [COMMIT] [RUNS]`.

Both versions run in one go, in turns, each command RUNS times (7), on this Python and what is installed for it; the commit is
checked out into a passing folder, and both are compiled first, so that neither is read as source. Prints the median of the
processor time of each, which a busy machine disturbs less than the clock does, and the ratio; asserts nothing. `first` is with
an empty cache folder, `again` with what the first run left there; `without interegular` hides that library, which makes Lark
compare all terminals where it is installed.
"""

import compileall
import os
import resource
import statistics
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).parents[2]
BEFORE = "3b613dc"
RECORDS = ROOT / "examples" / "01-autumn-lot" / "records.csv"
COMMANDS = {
    "python alone": None,
    "--help": ["--help"],
    "check tosai_kohaku": ["check", "tosai_kohaku"],
    "grade the example batch": ["grade", "tosai_kohaku", str(RECORDS)],
}
RUN = "import sys\nif {hide}: sys.modules['interegular'] = None\nfrom koirules.commands import main\nmain({words!r})"


def checked_out(commit: str, folder: Path) -> Path:
    """A checkout of a commit within a folder; it and ours are compiled."""
    old = folder / "old"
    subprocess.run(["git", "clone", "-q", "--shared", "--no-checkout", ROOT, old], check=True)
    subprocess.run(["git", "-C", old, "checkout", "-q", commit], check=True)
    for checkout in (old, ROOT):
        for code in (checkout / "koirules", checkout / "plugins"):
            compileall.compile_dir(code, quiet=2)
    return old


def seconds(checkout: Path, words: list[str] | None, kept: Path, hide: bool = False) -> float:
    """The processor time of a command, by the koirules and the plugins of a checkout."""
    paths = os.pathsep.join(map(str, (checkout, *sorted((checkout / "plugins").iterdir()))))
    code = "pass" if words is None else RUN.format(hide=hide, words=words)
    env = {**os.environ, "PYTHONDONTWRITEBYTECODE": "", "PYTHONPATH": paths, "KOIRULES_CACHE": str(kept)}
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=checkout / "examples", env=env, capture_output=True, text=True, check=False
    )
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    if done.returncode not in (0, 1) or "Traceback" in done.stderr:  # 1: something asked for does not hold
        sys.exit(f"{words} ended with {done.returncode} in {checkout}:\n{done.stderr}")
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


def main(commit: str = BEFORE, runs: str = "7") -> None:
    with tempfile.TemporaryDirectory() as folder:
        old, kept = checked_out(commit, Path(folder)), Path(folder, "kept")
        kept.mkdir(mode=0o700)
        print(f"processor time, median of {runs} runs in turns; before: {commit}\n")
        print(f"{'':44}{'before':>9}{'first':>9}{'again':>9}{'ratio':>9}")
        for hide in (False, True):
            for name, words in COMMANDS.items():
                if words is None and hide:
                    continue
                shown = f"{name}, without interegular" if hide else name
                times: dict[str, list[float]] = {"before": [], "first": [], "again": []}
                for _ in range(int(runs)):
                    with tempfile.TemporaryDirectory() as empty:
                        times["before"].append(seconds(old, words, kept, hide))
                        times["first"].append(seconds(ROOT, words, Path(empty), hide))
                        times["again"].append(seconds(ROOT, words, Path(empty), hide))
                before, first, again = (statistics.median(times[one]) for one in ("before", "first", "again"))
                print(f"{shown:44}{before:9.3f}{first:9.3f}{again:9.3f}{again / before:9.2f}", flush=True)


if __name__ == "__main__":
    main(*sys.argv[1:])
