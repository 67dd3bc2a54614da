"""Prints how long it takes to compare a made standard of so many criteria with editions of it: `editions.py [CRITERIA]`.

Times are those of one processor, from two standards that were read to the answer.
"""

from __future__ import annotations

import re
import sys
from pathlib import Path
from time import process_time

sys.path.insert(0, str(Path(__file__).parents[2]))

import koirules
from koirules.testing.made_records import made_records
from tests.benchmarks.proofs import made


def editions(text: str) -> dict[str, str]:
    """Newer editions of the made standard, by what was changed."""
    hold = "grade hold if score at least 60"
    return {
        "a grade asks for more": text.replace(hold, f"{hold}.5"),
        "a grade asks for a hundredth more": text.replace("score at least 35", "score at least 35.01"),
        "a weight": re.sub(r"points p17 weight \d", "points p17 weight 9", text),
        "a step gives more": text.replace("3 gives 6", "3 gives 6.5", 1),
        "a fault is stricter": text.replace(": no better than hold", ": no better than sell", 1),
        "a lift asks for more": text.replace("part0 at least 11", "part0 at least 11.2"),
        "a fault is gone": re.sub(r"fault f3 .*\n", "", text),
        "every worth": text.replace("worth 12.5", "worth 12", 7).replace("worth 12.5", "worth 16"),
        "other words of a grade, which mean the same": text.replace(
            hold, f"{hold} and (t0 at least 3 or t0 at most 3)"
        ),
        "a fault that another one covers": re.sub(
            r"(fault f\d+ if )(.*)(: no better than cull\n)", r"\1\2\3fault more if \2 and t5 is good\3", text, count=1
        ),
    }


def main() -> None:
    """Print a table."""
    criteria = int(sys.argv[1]) if len(sys.argv) > 1 else 200
    text = made(criteria)
    old = koirules.read_standard(text)
    print("| what changed | answer | traits changed | fewest for certain | time |\n| --- | --- | ---: | --- | ---: |")
    for what, changed in editions(text).items():
        new = koirules.read_standard(changed)
        started = process_time()
        parting = old.compare(new).parting
        took = process_time() - started
        away = (str(parting.away), "yes" if parting.fewest else "no") if parting.fish is not None else ("", "")
        print(f"| {what} | {parting.verdict.value} | {away[0]} | {away[1]} | {took:.1f} s |", flush=True)
    lot = [{**record, "fish": str(i)} for i, record in enumerate(made_records(old.traits.values(), 1_000))]
    started = process_time()
    moves = old.compare(koirules.read_standard(editions(text)["every worth"]), lot).moves
    told = "nobody" if moves is None else f"{len(moves.moves):,} of {moves.graded:,} fish move"
    print(f"\nwith {len(lot):,} records and 8 changes ({told}): {process_time() - started:.1f} s")


if __name__ == "__main__":
    main()
