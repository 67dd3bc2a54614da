"""Draws what five invented judges recorded of every sixth fish, and writes it behind the entries: `python draw_judges.py`.

What stands in a row without a judge is what was seen when the fish came in. Each judge sees each word of it as it is, or a step
off; judge D is strict about lustre, judge E about everything, and here and there a judge cannot tell (`?`). The same seed gives
the same rows, whenever this is run.
"""

import csv
import re
from pathlib import Path
from random import Random

FOLDER = Path(__file__).resolve().parent
JUDGES = ("judge A", "judge B", "judge C", "judge D", "judge E")
STRICT = {"judge E": 0.35}
STRICT_ABOUT = {("judge D", "lustre"): 0.6}
OFF, CANNOT_TELL = 0.12, 0.01


def words_of_traits():
    """The words of each trait that a page gives points for, from the worst to the best."""
    found = {}
    for path in sorted((FOLDER / "rules").rglob("*.koi")):
        for trait, row in re.findall(r"^points .*? by (\w+): (.+)$", path.read_text(encoding="utf-8"), re.MULTILINE):
            found[trait] = re.findall(r"(\w+) gives", row)
    return found


def seen(chance, judge, trait, words, word):
    """What a judge records where the entry sheet has a word."""
    if chance.random() < CANNOT_TELL:
        return "?"
    at = words.index(word)
    if chance.random() < STRICT.get(judge, 0.0) + STRICT_ABOUT.get((judge, trait), 0.0):
        at -= 1
    elif chance.random() < OFF:
        at += chance.choice((-1, 1))
    return words[min(max(at, 0), len(words) - 1)]


def main():
    """Write the rows of the judges behind the entries."""
    with (FOLDER / "entries.csv").open(encoding="utf-8", newline="") as file:
        entries = [row for row in csv.DictReader(file) if not row.get("judge")]
    words = words_of_traits()
    chance = Random("Lantern Bay, 18 April 2026")  # noqa: S311 - a lot, not a secret
    columns = ["fish", "judge", *(name for name in entries[0] if name not in {"fish", "judge"})]
    judged = [
        {"fish": row["fish"], "judge": judge}
        | {trait: seen(chance, judge, trait, words[trait], row[trait]) for trait in words if row.get(trait)}
        for row in entries[::6]
        for judge in JUDGES
    ]
    with (FOLDER / "entries.csv").open("w", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, columns, restval="", lineterminator="\n")
        writer.writeheader()
        writer.writerows([*entries, *judged])


if __name__ == "__main__":
    main()
