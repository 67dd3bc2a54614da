"""Results as one page that needs nothing else: it opens from a memory stick, reads without a script, and prints."""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Sequence
from hashlib import sha256
from importlib.resources import files
from pathlib import Path

from koirules.languages import Tongue
from koirules.records.about import About
from koirules.records.not_graded import Row
from koirules.report.audience import Audience
from koirules.report.page_model import page_of
from koirules.report.page_pictures import Pictures
from koirules.report.templating import plain, rendered

_MOST_AT_FOOT = 2
"""So many standards have room at the foot of a sheet."""

MOST_FISH = 2_000
"""How many fish a page goes to: beyond it a phone takes long to open, and nobody reads them one by one."""


def write_page(
    path: Path,
    results: Sequence[Row],
    about: About,
    pictures: Pictures | None = None,
    audience: Audience | None = None,
) -> None:
    """Write the page: the best fish, all fish by grade, a table of them, the scores, the selection, and the cautions."""
    audience = audience or Audience()
    style, script = footed(page_file("page.css"), _foot(about)), page_file("page.js") if audience.is_house else ""
    words = (
        [audience.title or about.title] if not audience.is_house else [audience.occasion or about.records, about.title]
    )
    made = rendered(
        "results.html",
        about.tongue,
        page=page_of(results, about, pictures or Pictures(), audience),
        name=_name([word for word in words if word], about.tongue),
        policy=policy(style, script),
        style=style,
        script=script,
    )
    path.write_text(made.lstrip(), encoding="utf-8", newline="\n")


def footed(style: str, words: str) -> str:
    """A style with words at the foot of every sheet of paper; any text."""
    escaped = "".join(
        letter if letter.isalnum() or letter in " ,.:-" else f"\\{ord(letter):x} "
        for letter in plain(words).replace("\n", " ")
    )
    return f'{style}@page {{ @bottom-left {{ content: "{escaped}"; font: 8pt system-ui, sans-serif; }} }}\n'


def sealed(title: str, edition: str, seal: str, tongue: Tongue) -> str:
    """By which text something was graded, as it stands at the foot of a sheet."""
    if not seal:
        return tongue("{title}, edition {edition}", title=title, edition=edition)
    return tongue("{title}, edition {edition}, seal {seal}", title=title, edition=edition, seal=seal[:14])


def _foot(about: About) -> str:
    """What stands at the foot of every sheet of a page of results."""
    parts = about.parts or (about,)
    return sealed_together([sealed(one.title, one.edition, one.seal, about.tongue) for one in parts], about.tongue)


def sealed_together(told: Sequence[str], tongue: Tongue) -> str:
    """The same of several standards; many are at the end of the page."""
    if len(told) > _MOST_AT_FOOT:
        return tongue("{number} standards, with their seals at the end", number=len(told))
    return tongue.joined(told, "; ")


def _name(words: Sequence[str], tongue: Tongue) -> str:
    """The name of a page: of the records, by the standard."""
    if len(words) == 2:
        return tongue("{records} by {standard}", records=words[0], standard=words[1])
    return words[0] if words else tongue("Results")


def policy(style: str, script: str = "") -> str:
    """What the browser is to allow: this style, this script and pictures in the page; nothing from outside, ever."""
    rules = ["default-src 'none'", f"style-src {_hash(style)}"]
    rules += [f"script-src {_hash(script)}"] if script else []
    rules += ["img-src data:", "base-uri 'none'", "form-action 'none'"]
    return "; ".join([*rules, "require-trusted-types-for 'script'", "trusted-types 'none'"])


def _hash(text: str) -> str:
    return f"'sha256-{b64encode(sha256(text.encode()).digest()).decode()}'"


def page_file(name: str) -> str:
    """A style or a script of pages."""
    return files("koirules.report").joinpath("templates", name).read_text(encoding="utf-8").replace("\r\n", "\n")
