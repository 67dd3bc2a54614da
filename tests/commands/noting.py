"""A session of `koirules note` in a process of its own, to be killed in the middle."""

import csv
import os
import subprocess
import sys
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
PAGE = """standard "Tin Bucket, said at the tub (invented)" edition 1 variety kohaku
grade keep if kiwa at least sharp and steps is sandan
grade sell if kiwa at least fair
grade cull otherwise
"""


def started(folder, out, **more):
    """A session whose input and output are pipes."""
    (folder / "page.koi").write_text(PAGE, encoding="utf-8")
    return subprocess.Popen(
        [sys.executable, "-m", "koirules", "note", "page.koi", "--out", out],
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(ROOT), "PYTHONUNBUFFERED": "1"},
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        encoding="utf-8",
        **more,
    )


def acknowledged_until_killed(folder, out, first, seconds):
    """The numbers of the fish that were answered before the session was killed, a while after its first answer."""
    session = started(folder, out)
    done, number, end = [], first, None
    while end is None or time.monotonic() < end:
        try:
            session.stdin.write(f"{number}: sandan, kiwa sharp\n")
            session.stdin.flush()
        except OSError:
            break
        answer = session.stdout.readline()
        while answer and not answer.removeprefix("> ").startswith(f"{number}:"):
            answer = session.stdout.readline()
        if not answer:
            break
        done.append(number)
        number += 1
        end = time.monotonic() + seconds if end is None else end
    # One more is on its way while the session dies.
    session.stdin.write(f"{number}: sandan, kiwa sharp\n")
    session.stdin.flush()
    session.kill()
    session.communicate()
    return done


def fish_in(path):
    """The fish of a sheet, by name."""
    return {row["fish"]: row for row in csv.DictReader(path.read_text(encoding="utf-8").splitlines())}


def said_in(folder, out):
    """The lines of the journal of a sheet that are whole."""
    text = (folder / f"{out}.said.txt").read_text(encoding="utf-8")
    return text[: text.rfind("\n") + 1].splitlines()
