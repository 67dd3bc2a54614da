"""A page about every kind of problem: what it means, an example that makes it, the mend. One file an area, in TOML.

The tests make every example's problem with it, and see that its mended lines make none.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from functools import cache
from importlib.resources import files

from koirules.values import frozen

AREAS = ("rules", "sharing", "records", "classes", "prizes", "commands", "plugins")


@frozen
class Page:
    """What a problem code means.

    area: what has the problem (one of AREAS). wrong: lines that make it, and right: the same, mended; both "" where no
    short text shows it, and `when` says in words how one comes to see it. whole: the lines are a whole rule file.
    named: the name of the file that the lines stand in, where it matters.
    """

    code: str
    area: str
    means: str
    mend: str
    wrong: str = ""
    right: str = ""
    when: str = ""
    whole: bool = False
    named: str = ""


@cache
def pages() -> Mapping[str, Page]:
    """Every page by its code, in alphabetical order."""
    found: dict[str, Page] = {}
    for area in AREAS:
        text = files(__package__).joinpath(f"{area}.toml").read_text(encoding="utf-8")
        for code, told in tomllib.loads(text).items():
            found[code] = Page(code=code, area=area, **told)
    return dict(sorted(found.items()))
