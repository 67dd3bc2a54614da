"""Results as one page that needs nothing else: it opens from a memory stick, reads without a script, and prints."""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Iterator, Sequence
from hashlib import sha256
from html import escape
from importlib.resources import files
from pathlib import Path
from string import Template

from koirules.records.about import About
from koirules.records.not_graded import NotGraded, Row
from koirules.report.page_controls import Asked, controls
from koirules.report.page_fish import Standing, card
from koirules.report.page_markup import escaped
from koirules.report.page_parts import not_graded, overview, parts_of
from koirules.report.page_pictures import Pictures
from koirules.report.page_side_by_side import side_by_side
from koirules.report.page_top import header, header_of_several
from koirules.results.ranking import best_first

MOST_FISH = 2_000
"""How many fish a page goes to: beyond it a phone takes long to open, and nobody reads them one by one."""


def write_html(path: Path, results: Sequence[Row], about: About, pictures: Pictures | None = None) -> None:
    """Write the page: the standard or standards, the cautions, the totals, the scores, and every fish, best first."""
    with path.open("w", encoding="utf-8", newline="\n") as file:
        for piece in _pieces(results, about, pictures or Pictures()):
            file.write(piece)


def _pieces(results: Sequence[Row], about: About, pictures: Pictures) -> Iterator[str]:
    parts = parts_of(results, about)
    asked = Asked.of(parts)
    graded = [result for part in parts for result in part.results]
    left = [one for one in results if isinstance(one, NotGraded)]
    wordings = [part.wording for part in parts]
    top = header_of_several(wordings, about, len(graded), len(left)) if about.parts else header(wordings[0], graded)
    style, script = _template("page.css"), _template("page.js")
    name = " by ".join(words for words in (about.records, about.title) if words) or "Results"
    page = Template(_template("page.html")).substitute(
        policy=escape(_policy(style, script), quote=True),
        title=escaped(name),
        style=style,
        script=script,
        header=top.text,
        overview=overview(parts, about).text,
        left=not_graded(left).text,
        controls=controls(parts, asked).text,
        beside=side_by_side([part.results for part in parts]).text,
        fish=_FISH,
    )
    # Found from the left: a text of a stranger cannot hold the mark, whose brackets would be escaped.
    before, after = page.split(_FISH)
    yield before
    recorded = {id(result): place for place, result in enumerate(graded)}
    ranked = [(part, one) for part in parts for one in best_first(tuple(part.wording.grades), part.results)]
    for best, (part, result) in enumerate(ranked):
        yield card(part, asked, result, Standing(best, recorded[id(result)]), pictures).text + "\n"
    yield after


_FISH = "<!-- fish -->"


def _policy(style: str, script: str) -> str:
    """What the browser is to allow: this style, this script and pictures in the page; nothing from outside, ever."""
    return "; ".join(
        (
            "default-src 'none'",
            f"style-src {_hash(style)}",
            f"script-src {_hash(script)}",
            "img-src data:",
            "base-uri 'none'",
            "form-action 'none'",
            "require-trusted-types-for 'script'",
            "trusted-types 'none'",
        )
    )


def _hash(text: str) -> str:
    return f"'sha256-{b64encode(sha256(text.encode()).digest()).decode()}'"


def _template(name: str) -> str:
    return files("koirules.report").joinpath(name).read_text(encoding="utf-8").replace("\r\n", "\n")
