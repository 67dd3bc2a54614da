"""Kills a process that enters looks, again and again: `python tests/benchmarks/book/kills.py [KILLS]` (200 kills).

After every kill the book must be sound, and each file in it whole or not at all; at the end every look is there once.
"""

from __future__ import annotations

import random
import signal
import subprocess
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).parents[3]
sys.path.insert(0, str(ROOT / "plugins" / "book"))

from koirules_book.book import Book

RULES = ROOT / "examples" / "15-three-years" / "sluice.koi"
ROWS = 400


def main(kills: int) -> None:
    drawn = random.Random(1)
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "farm.book"
        Book.start(path).close()
        interrupted = 0
        for number in range(kills):
            file = Path(folder) / f"{number}.csv"
            rows = "".join(f"K{number}-{at},north,good,sharp\n" for at in range(ROWS))
            file.write_text(f"fish,pond,outline,kiwa\n{rows}", encoding="utf-8")
            words = [sys.executable, "-m", "koirules", "book", "enter", RULES, path, file, "--day", "2024-10-05"]
            one = subprocess.Popen(words, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
            log = path.with_name("farm.book-wal")
            while one.poll() is None and not (log.exists() and log.stat().st_size):
                time.sleep(0.002)
            time.sleep(drawn.random() * 0.15)
            one.send_signal(signal.SIGKILL)
            interrupted += one.wait() == -signal.SIGKILL
            with Book.open(path) as book:
                looks = book.db.execute("SELECT count(*) FROM looks").fetchone()[0]
                if book.damage() or looks % ROWS:
                    sys.exit(f"kill {number}: {looks} looks, {book.damage()}")
            again = subprocess.run(words, capture_output=True, text=True, check=False)
            if again.returncode:
                sys.exit(f"kill {number}: the file cannot be entered again: {again.stderr}")
        with Book.open(path) as book:
            looks = book.db.execute("SELECT count(*) FROM looks").fetchone()[0]
        print(
            f"{interrupted} of {kills} kills met a running process; {looks} looks of {kills * ROWS}, none twice, no damage"
        )


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 200)
