"""A book of a million looks: `python tests/benchmarks/book/size.py [LOOKS]`.

Prints how long the page of a fish takes (median of 50), and how long 10,000 further looks take to add, grading included.
"""

from __future__ import annotations

import sys
import tempfile
import time
from datetime import date
from pathlib import Path
from statistics import median

ROOT = Path(__file__).parents[3]
sys.path.insert(0, str(ROOT / "plugins" / "book"))

from koirules_book.adding import add_looks
from koirules_book.book import Book, as_json, hash_of
from koirules_book.histories import fish_history
from koirules_book.pages import fish_page

import koirules

RECORD = {
    "outline": "good",
    "tail_stem": "fair",
    "shiroji": "white",
    "kiwa": "sharp",
    "hi_cover": "48 %",
    "odome": "6 %",
    "spine": "straight",
}


def main(looks: int) -> None:
    standard = koirules.load_standard(ROOT / "examples" / "15-three-years" / "sluice.koi")
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "farm.book"
        file = Path(folder) / "new.csv"
        rows = "".join(f"N{at},north,good,sharp,white\n" for at in range(10_000))
        file.write_text(f"fish,pond,outline,kiwa,shiroji\n{rows}", encoding="utf-8")
        with Book.start(path) as book:
            text = as_json(RECORD)
            with book.change() as db:
                db.executemany(
                    "INSERT INTO fish (name, pond) VALUES (?, 'north')", ((f"F{at}",) for at in range(looks // 4))
                )
                db.executemany(
                    "INSERT INTO looks (fish, day, pond, record, hash) VALUES (?, ?, 'north', ?, ?)",
                    ((at // 4 + 1, f"{2020 + at % 4}-10-05", text, hash_of(at)) for at in range(looks)),
                )
            times = []
            for at in range(50):
                start = time.perf_counter()
                fish_page(fish_history(book, book.one_named(f"F{at * 991 % (looks // 4)}"), [standard]))
                times.append(time.perf_counter() - start)
            start = time.perf_counter()
            added = add_looks(book, standard, standard.read_records(file), file, date(2024, 10, 5))
            took = time.perf_counter() - start
        size, middle, worst = path.stat().st_size / 2**20, median(times) * 1000, max(times) * 1000
        print(f"{looks:,} looks, {size:,.0f} MiB: a page {middle:.0f} ms (slowest {worst:.0f})")
        print(f"{added.looks:,} looks added in {took:.1f} s, reading and grading included")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000)
