"""Make the pictures of the guide from its rule file and its fish: `python examples/guide/pictures/make.py FOLDER`.

Grades, scores, sentences and fish are what `koirules grade … --out results.html` shows; the layout around them is of this file.
"""

from __future__ import annotations

import sys
import textwrap
from collections.abc import Iterator, Sequence
from pathlib import Path
from xml.sax.saxutils import escape

import koirules
from koirules.records.about import About
from koirules.report.appearance import Appearance
from koirules.report.figures import in_tenths
from koirules.report.fish_drawing import fish_drawing
from koirules.report.fish_words import told
from koirules.report.page_words import Wording
from koirules.report.trait_drawing import trait_drawing
from koirules.report.views_of_fish import views_of
from koirules.results.ranking import best_first

GUIDE = Path(__file__).parents[1]
INK, QUIET, PAPER, EDGE = "#0b2b30", "#4b6265", "#f6f4ee", "#cfd9d7"
BADGES = {"keep": ("#0b3238", "#ffffff"), "pond": ("#f3eedf", INK)}
SANS = "system-ui, 'Segoe UI', 'DejaVu Sans', sans-serif"
MONO = "ui-monospace, 'Cascadia Mono', 'DejaVu Sans Mono', monospace"


class Batch:
    """The fish of the guide, graded. results, records: by the name of the fish, best first."""

    def __init__(self) -> None:
        self.standard = koirules.load_standard(GUIDE / "house.koi")
        records = self.standard.read_records(GUIDE / "fish.csv")
        graded = self.standard.grade_records(records).results
        self.records = {record.fish: record for record in records}
        self.results = {one.fish: one for one in best_first(self.standard.grades, graded)}
        about = About("", "", "kohaku", "house.koi", grades=self.standard.grade_lines)
        self.wording = Wording.of(graded, about)

    def drawing(self, fish: str, at: tuple[float, float, float, float]) -> str:
        """A fish at left, top, width and height."""
        return fish_drawing(self.look(fish), title=fish, key=fish, at=at)

    def look(self, fish: str) -> Appearance:
        """What is to be seen of a fish."""
        return views_of(self.standard.rules, self.standard.settings, self.records[fish].readings)[0].look

    def sentence(self, fish: str) -> str:
        """What the page of results says of it."""
        return told(self.wording, self.results[fish], self.look(fish)).sentence


def text(x: float, y: float, words: str, size: int = 14, fill: str = INK, weight: int = 400, face: str = SANS) -> str:
    """A line of text; y is its base line."""
    return (
        f'<text x="{x:g}" y="{y:g}" font-family="{face}" font-size="{size}" font-weight="{weight}" fill="{fill}" '
        f'xml:space="preserve">{escape(words)}</text>'
    )


def lines(x: float, y: float, words: str, width: int, size: int = 14, fill: str = INK) -> Iterator[str]:
    """Text over several lines, `width` letters in each."""
    for number, line in enumerate(textwrap.wrap(words, width)):
        yield text(x, y + number * size * 1.4, line, size, fill)


def badge(x: float, y: float, grade: str) -> str:
    """A grade as the page of results has it: dashed where it is not settled."""
    paint, ink = BADGES.get(grade, ("#ffffff", INK))
    dashed = "" if grade in BADGES else ' stroke-dasharray="4 3"'
    wide = 9 * len(grade) + 22
    return (
        f'<rect x="{x:g}" y="{y:g}" width="{wide}" height="24" rx="12" fill="{paint}" stroke="{INK}"{dashed}/>'
        + text(x + 11, y + 17, grade, 14, ink, 700)
    )


def picture(width: int, height: int, title: str, parts: Sequence[str]) -> str:
    """A picture of its own with a background."""
    size = f'viewBox="0 0 {width} {height}" width="{width}" height="{height}"'
    head = f'<svg xmlns="http://www.w3.org/2000/svg" {size} role="img"><title>{escape(title)}</title>'
    ground = f'<rect width="{width}" height="{height}" rx="10" fill="{PAPER}"/>'
    return "\n".join([head, ground, *parts, "</svg>\n"])


def results(batch: Batch) -> str:
    """The best three fish as cards, the totals above them."""
    grades = [batch.wording.graded(one) for one in batch.results.values()]
    totals = ", ".join(f"{grades.count(name)} {name}" for name in batch.standard.grades)
    totals += f", {sum(' or ' in one for one in grades)} not settled"
    parts = [
        text(24, 40, "A small house: ten fish graded", 22, INK, 700),
        text(24, 66, f"{totals}. The best three:", 15, QUIET),
    ]
    for number, (fish, result) in enumerate(list(batch.results.items())[:3]):
        x = 24 + number * 300
        grade = batch.wording.graded(result)
        score = in_tenths(result.score_low, result.score_high)
        parts += [
            f'<rect x="{x}" y="84" width="292" height="262" rx="10" fill="#ffffff" stroke="{EDGE}"/>',
            batch.drawing(fish, (x + 8, 94, 276, 118)),
            text(x + 16, 242, fish, 18, INK, 700),
            badge(x + 60, 225, grade),
            text(x + 16, 270, f"{score} of 100 points", 15, INK, 700),
            *lines(x + 16, 292, batch.sentence(fish), 40, 13, QUIET),
        ]
    return picture(940, 362, "The best three of ten invented fish, with grade, score and a sentence each", parts)


def rules_and_result(batch: Batch) -> str:
    """The rule file on the left, and on the right one fish as it comes out."""
    page = (GUIDE / "house.koi").read_text(encoding="utf-8").splitlines()
    parts = [text(24, 36, "house.koi", 16, INK, 700)]
    y = 62.0
    for line in page:
        word, _, rest = line.partition(" ")
        wrapped = textwrap.wrap(rest, 58)
        for number, piece in enumerate(wrapped):
            if number == 0:
                parts.append(
                    f'<text x="24" y="{y:g}" font-family="{MONO}" font-size="12.5" fill="{INK}" xml:space="preserve">'
                    f'<tspan font-weight="700" fill="#8a3010">{word}</tspan> {escape(piece)}</text>'
                )
            else:
                parts.append(text(44, y, piece, 12, INK, 400, MONO))
            y += 19
    x = 560
    fish = "T2"
    result = batch.results[fish]
    parts += [
        f'<rect x="{x}" y="18" width="356" height="{y - 4:g}" rx="10" fill="#ffffff" stroke="{EDGE}"/>',
        batch.drawing(fish, (x + 12, 26, 332, 142)),
        text(x + 18, 196, fish, 18, INK, 700),
        badge(x + 60, 179, batch.wording.graded(result)),
        text(x + 140, 196, f"{in_tenths(result.score_low, result.score_high)} of 100 points", 15, INK, 700),
    ]
    down = 222.0
    for reason in result.reasons:
        if reason.kind == "points":
            parts.append(text(x + 18, down, reason.words, 13, QUIET))
            down += 20
    parts += lines(x + 18, down + 14, batch.sentence(fish), 46, 14)
    return picture(940, round(max(y, down) + 24), "A rule file of ten lines, and one fish graded by it", parts)


def make(folder: Path) -> None:
    """Write the pictures into a folder."""
    batch = Batch()
    where = trait_drawing(["shoulders", "sashi_depth", "kiwa", "odome"], "Where words of the trade lie on a fish")
    for name, made in {"results": results(batch), "rules": rules_and_result(batch), "where": where}.items():
        (folder / f"{name}.svg").write_text(made, encoding="utf-8")


if __name__ == "__main__":
    make(Path(sys.argv[1]))
