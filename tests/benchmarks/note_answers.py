"""How long a sorter at the tub waits: from Enter to the answer of `koirules note`, through a terminal of 60 x 20.

Run it as `python -m tests.benchmarks.note_answers [LINES]` from the root of the checkout. Beside the time it prints what the
command itself used of the processor (Linux), and the load of the machine.
"""

import os
import sys
import tempfile
import time
from pathlib import Path

from tests.benchmarks.notes import lines
from tests.commands.noted_terminal import Noting


def processor_ms(session):
    """What a session has used of the processor so far."""
    told = Path(f"/proc/{session.child.pid}/stat").read_text(encoding="ascii").rpartition(") ")[2].split()
    return 1000 * (int(told[11]) + int(told[12])) / os.sysconf("SC_CLK_TCK")


def main(number=200):
    """Print the median, the 95th percentile and the longest of some answers."""
    with tempfile.TemporaryDirectory() as name:
        session = Noting(["tosai_kohaku", "--out", Path(name) / "lot.csv"])
        session.says("all: health well, whole, spine straight")
        took, used = [], processor_ms(session)
        for line in lines(number):
            begun = time.perf_counter()
            session.says(line)
            took.append(1000 * (time.perf_counter() - begun))
        used = (processor_ms(session) - used) / number
        session.ends()
    took.sort()
    load = ", ".join(f"{each:.1f}" for each in os.getloadavg())
    print(
        f"{number} lines at a terminal, Enter to answer: {took[len(took) // 2]:.0f} ms (median), "
        f"{took[len(took) * 95 // 100]:.0f} ms (95 %), {took[-1]:.0f} ms at the most; "
        f"{used:.0f} ms of the processor each; load of {os.cpu_count()} cores {load}"
    )


if __name__ == "__main__":
    sys.exit(main(*map(int, sys.argv[1:])))
