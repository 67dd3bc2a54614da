"""How well and how fast notes are read: the invented pages, ten thousand lines, and the answer to one line.

Run it as `python -m tests.benchmarks.notes` from the root of the checkout.
"""

import random
import re
import sys
import time

import koirules
from koirules.notes.reader import Hearing, NotesReader, cells
from koirules.notes.remarks import Sort
from tests.notes.noted_pages import _MEANT, HERE, fresh, meanings, outcomes

PAGE = """standard "Tin Bucket, nothing of its own (invented)" edition 1 variety kohaku
grade keep if kiwa at least sharp
grade hold if kiwa is fair
grade sell if kiwa is blurred and length above 10 cm
grade out otherwise
"""
PAGES = ("laconic_breeder", "talkative_dealer", "careful_helper", "late_breeder", "late_dealer", "late_helper")


def shares():
    """Of each page, how many remarks were read as they were meant, how many not at all, and how many as something else."""
    rules, key = koirules.read_standard(PAGE).rules, meanings(*sorted(HERE.glob("meanings*.txt")))
    for name in PAGES:
        found = list(outcomes(HERE / f"{name}.txt", key, rules))
        right, unread = sum(one.right for one in found), sum(one.unread and not one.right for one in found)
        wrong = len(found) - right - unread
        print(f"{name}: {len(found)} remarks, {100 * right / len(found):.1f} % right, {unread} unread, {wrong} misread")


def understood():
    """Of each page in free speech, how many remarks are understood, of those that mean one thing.

    Phrases were taught on the fresh pages, on two of the later ones (breeder, dealer), and on those of the first and second other
    writer, after their first opening; none was on the others.
    """
    others = sorted(str(each.relative_to(HERE.parent)) for each in (HERE.parent / "other_pages").iterdir())
    for folder in ("fresh_pages", "unseen_pages", "later_pages", *others):
        for page in sorted((HERE.parent / folder).glob("*.txt")):
            found = list(fresh(page, koirules.read_standard(PAGE)))
            share = sum(remark.sort is not Sort.UNKNOWN for remark, _ in found) / len(found)
            pages = folder.replace("_", " ").replace("/", ", ")
            print(f"{pages}, {page.stem}: {len(found)} remarks, {100 * share:.0f} % understood")


def lines(number):
    """Lines of four remarks each, drawn from the pages."""
    texts = [_MEANT.sub("", (HERE / f"{name}.txt").read_text(encoding="utf-8")) for name in PAGES]
    said = [line.split(":", 1)[1] for text in texts for line in text.splitlines() if re.match(r"\d", line)]
    remarks = [remark.strip() for line in said for remark in line.split(",") if remark.strip()]
    draw = random.Random(1)
    return [f"{fish}: {', '.join(draw.sample(remarks, 4))}" for fish in range(1, number + 1)]


def main():
    """Print the times, as of a process that reads one standard, and then the shares."""
    standard = koirules.load_standard("tosai_kohaku")
    begun = time.perf_counter()
    reader = NotesReader.of(standard.rules)
    print(f"the phrases of tosai_kohaku are put together in {time.perf_counter() - begun:.2f} s")
    text = "\n".join(lines(10_000))
    begun = time.perf_counter()
    reader.read(text)
    print(f"10,000 lines of four remarks are read in {time.perf_counter() - begun:.2f} s")
    hearing = Hearing.of(NotesReader.of(standard.rules), "")
    standard.questions({"kiwa": "sharp"})
    took = []
    for line in lines(300):
        begun = time.perf_counter()
        hearing.take(line)
        record = {"fish": "x", **cells(hearing.notes.fish[-1], standard.traits)}
        standard.grade(record)
        standard.questions(record)
        took.append(1000 * (time.perf_counter() - begun))
    took.sort()
    print(
        f"a line is read and graded, and what it hangs on is found, in {took[150]:.0f} ms (median), {took[285]:.0f} ms (95 %)"
    )
    shares()
    understood()


if __name__ == "__main__":
    sys.exit(main())
