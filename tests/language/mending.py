"""Every mend that is printed, carried out: the files it is tried on, how its words are read, and what has come of it.

A mend is tried alone, on the text that its problem was told of, and the text is read again. It *holds* if its problem is
gone. It *harms* if more problems that refuse the file are told after it than before.
"""

import random
import re
from collections.abc import Iterable, Iterator
from pathlib import Path

from attrs import evolve, frozen

import koirules
from koirules.language.diagnose.mending import edited
from koirules.language.parse.cleaning import as_counted
from koirules.loading.reading import load_text
from koirules.problems import Edit, Place, Problem
from koirules.testing import registry_with

TESTS = Path(__file__).parents[1]
CASES = TESTS / "cases" / "problems"
SEED = 20261130
BOX = registry_with()  # whatever else is installed here

_WRITE = re.compile(
    r'(?:Write|Turn it round:|Did you mean|If they are one number, write|or|if it is a decimal comma,) "([^"]+)"'
)
_WORD = re.compile(r'"[^"\n]*"|[^\W\d]\w*|[0-9][\w.]*|\S')


@frozen
class Broken:
    """A text that does not read, and the folder that its bases are looked for in."""

    name: str
    text: str
    folder: Path


@frozen
class Trial:
    """What came of one mend."""

    broken: Broken
    problem: Problem
    edit: Edit
    before: int
    after: tuple[Problem, ...]
    holds: bool

    @property
    def harms(self) -> bool:
        """Whether more problems stand than before."""
        return len(self.after) > self.before


def problems_of(text: str, folder: Path) -> tuple[Problem, ...]:
    """The problems of a text, as its author is told them; warnings too if it is refused."""
    try:
        koirules.read_standard(text, registry=BOX, folder=folder)
    except koirules.StandardError as error:
        return error.problems
    return ()


def refusing(text: str, folder: Path) -> tuple[Problem, ...]:
    """The problems of a text that refuse it; their mends are not looked at, which takes less time."""
    checked = load_text(text, "standard.koi", BOX.varieties, BOX.rulesets, folder, most_tried=0)
    return tuple(problem for problem in checked.problems if not problem.warning)


def mends_of(problem: Problem) -> list[Edit]:
    """What the words of a problem ask its reader to do, each way of it as a change of the text.

    A mend that leaves a choice to its reader (`Add the others`) asks for more than words can carry, and gives none.
    """
    if not isinstance(problem.site, Place):
        return []
    if problem.edit is not None:
        return [problem.edit]
    if re.match(r"Delete (?:it|the comma)\b", problem.mend):
        return [Edit(problem.site, "")]
    if re.match(r'(?:Write|Turn it round:|Did you mean) "', problem.mend):
        found = _WRITE.findall(problem.mend)
        return [Edit(problem.site, text) for text in found if "…" not in text]
    return []


def trials_of(broken: Broken) -> Iterator[Trial]:
    """Each mend of a text, tried alone."""
    text = as_counted(broken.text)
    problems = problems_of(broken.text, broken.folder)
    before = sum(not problem.warning for problem in problems)
    for problem in problems:
        for edit in mends_of(problem):
            yield tried(evolve(broken, text=text), problem, edit, before)


def tried(broken: Broken, problem: Problem, edit: Edit, before: int) -> Trial:
    """What comes of one change of a text. before: how many problems refuse the text as it is."""
    after = refusing(edited(broken.text, [edit]), broken.folder)
    return Trial(broken, problem, edit, before, after, not any(_same(problem, edit, each) for each in after))


def _same(problem: Problem, edit: Edit, other: Problem) -> bool:
    """Whether a problem of the mended text is the one that was mended: the same words about the same place."""
    if (problem.code, problem.cause) != (other.code, other.cause) or not isinstance(other.site, Place):
        return False
    site, place = problem.site, edit.place
    assert isinstance(site, Place)
    lines = edit.text.count("\n") - (place.end_line - place.line)
    line = site.line + (lines if site.line > place.end_line else 0)
    return line == other.site.line and abs(site.column - other.site.column) <= 2


def cases() -> list[Broken]:
    """The broken files of tests/cases/problems that are text."""
    found = []
    for path in sorted(CASES.glob("*.koi")):
        data = path.read_bytes()
        try:
            found.append(Broken(path.stem, data.decode("utf-8-sig"), CASES))
        except UnicodeDecodeError:
            continue
    return found


def whole_files(most_lines: int = 10_000) -> list[Broken]:
    """The rule files of the repository that read."""
    root = TESTS.parent
    paths = [path for room in ("rulesets", "examples", "plugins") for path in sorted((root / room).rglob("*.koi"))]
    texts = [Broken(str(path.relative_to(root)), path.read_text(encoding="utf-8"), path.parent) for path in paths]
    return [each for each in texts if each.text.count("\n") <= most_lines and not refusing(each.text, each.folder)]


_SAID = (
    ("at least", ("at lest", ">=", "more than or equal to", "minimum", "atleast", "from", "not below")),
    ("at most", ("<=", "no more than", "maximum", "up to", "at mots", "not above")),
    ("below", ("<", "less than", "under", "smaller than", "belov")),
    ("above", (">", "more than", "over", "greater than", "abov")),
    ("between", ("from", "in between", "betwen")),
    ("is", ("=", "==", "equals", "are", "has", "")),
    ("is not", ("!=", "isn't", "is no", "not")),
    ("gives", ("=", "->", "give", "gets", ":", "")),
    ("means", ("=", "is", "mean", ":", "")),
    ("if", ("when", "where", "if the", "")),
    ("except", ("unless", "but not", "except if")),
    ("otherwise", ("else", "default", "if nothing else", "")),
    ("anything else", ("everything else", "else", "other", "anything", "the rest")),
    ("no better than", ("no better then", "not better than", "at most", "no worse than", "")),
    ("and", ("&", "&&", ",", "and if", "")),
    ("or", ("|", "||", ",", "or if", "/")),
    ("weight", ("times", "x", "weigth", "")),
    ("worth", ("of", "=", "with", "")),
    ("by", ("for", "of", "from", "")),
    ("count of", ("number of", "count", "count of the")),
    ("score", ("points", "total", "the score", "scores")),
    ("section", ("sections", "part", "")),
    ("cm", ("inches", "inch", "centimetres", "CM", "")),
    ("%", ("percent", "per cent", "points", "")),
    ("fault", ("faults", "Fault", "error", "falt")),
    ("grade", ("Grade", "grades", "class", "gade")),
    ("points", ("Points", "point", "criterion", "pionts")),
    ("edition", ("Edition", "version", "ed", "editon")),
    ("variety", ("Variety", "breed", "for", "varitey")),
    ("stage", ("Stage", "age", "stag")),
)
"""Words of the language, and what people write in their place."""


def mutations(texts: Iterable[Broken], count: int, seed: int = SEED) -> Iterator[Broken]:
    """Texts with one slip each, drawn by a seed: a word left out, doubled, misspelt, swapped, or said in another way."""
    draw = random.Random(seed)
    whole = list(texts)
    made = 0
    while made < count:
        source = draw.choice(whole)
        kind = draw.choice(_SLIPS)
        text = kind(source.text, draw)
        if text is None or text == source.text:
            continue
        made += 1
        yield Broken(f"{source.name}, {kind.__name__.strip('_')} {made}", text, source.folder)


def _words(text: str) -> list[tuple[int, int]]:
    """Where the words of a text stand, without its remarks."""
    found = []
    begin = 0
    for line in text.split("\n"):
        for word in _WORD.finditer(line):
            if word.group() == "#":
                break
            found.append((begin + word.start(), begin + word.end()))
        begin += len(line) + 1
    return found


def _left_out(text: str, draw: random.Random) -> str:
    begin, end = draw.choice(_words(text))
    return text[:begin] + text[end:].removeprefix(" ")


def _doubled(text: str, draw: random.Random) -> str:
    begin, end = draw.choice(_words(text))
    return f"{text[:end]} {text[begin:end]}{text[end:]}"


def _swapped(text: str, draw: random.Random) -> str:
    words = _words(text)
    i = draw.randrange(len(words) - 1)
    (a, b), (c, d) = words[i], words[i + 1]
    return text[:a] + text[c:d] + text[b:c] + text[a:b] + text[d:]


def _misspelt(text: str, draw: random.Random) -> str | None:
    begin, end = draw.choice(_words(text))
    word = text[begin:end]
    if len(word) < 4 or not word.isalnum():
        return None
    i = draw.randrange(1, len(word) - 1)
    wrong = draw.choice(
        (word[:i] + word[i + 1 :], word[:i] + word[i + 1] + word[i] + word[i + 2 :], word[:i] + "e" + word[i + 1 :])
    )
    return text[:begin] + wrong + text[end:]


def _said_otherwise(text: str, draw: random.Random) -> str | None:
    was, ways = draw.choice(_SAID)
    found = list(re.finditer(rf"(?<![\w\"]){re.escape(was)}(?!\w)", text))
    if not found:
        return None
    place = draw.choice(found)
    return text[: place.start()] + draw.choice(ways) + text[place.end() :]


def _sign(text: str, draw: random.Random) -> str:
    _, end = draw.choice(_words(text))
    return text[:end] + draw.choice((",", ":", ".", ";", ")", "(", "!", "?", "=", '"', "-", "'")) + text[end:]


def _comma(text: str, draw: random.Random) -> str | None:
    found = list(re.finditer(r"(?<![\w.])[0-9]+\.[0-9]+", text))
    if not found:
        return None
    place = draw.choice(found)
    return text[: place.start()] + place.group().replace(".", ",") + text[place.end() :]


def _line(text: str, draw: random.Random) -> str:
    lines = text.split("\n")
    i = draw.randrange(len(lines))
    lines[i] = lines[i].lstrip() if lines[i].startswith(" ") else f"  {lines[i]}"
    return "\n".join(lines)


def _capital(text: str, draw: random.Random) -> str:
    begin, end = draw.choice(_words(text))
    return text[:begin] + draw.choice((text[begin:end].capitalize(), text[begin:end].upper())) + text[end:]


def _filler(text: str, draw: random.Random) -> str:
    begin, _ = draw.choice(_words(text))
    return (
        text[:begin]
        + draw.choice(("the ", "a ", "not ", "very ", "is ", "of ", "and ", "about ", "then ", "no "))
        + text[begin:]
    )


def _unit(text: str, draw: random.Random) -> str | None:
    found = list(re.finditer(r"(?<![\w.\"-])[0-9]+(?:\.[0-9]+)?(?![\w.-])(?: (?:cm|mm|%|g|kg)(?!\w))?", text))
    if not found:
        return None
    place = draw.choice(found)
    number = place.group().split()[0]
    ways = (
        f"{number} cm",
        f"{number} %",
        f"{number} points",
        f"{number}cm",
        f"{number}-{number}",
        f"{number} or more",
        f"{number} to {number}",
        f"about {number}",
        "",
    )
    return text[: place.start()] + draw.choice(ways) + text[place.end() :]


def _quotes(text: str, draw: random.Random) -> str | None:
    found = list(re.finditer(r'"[^"\n]*"', text))
    if not found:
        return None
    place = draw.choice(found)
    inner = place.group()[1:-1]
    ways = (inner, f"'{inner}'", f"“{inner}”", f'"{inner}', f'{inner}"', f"({inner})")
    return text[: place.start()] + draw.choice(ways) + text[place.end() :]


def _another(text: str, draw: random.Random) -> str:
    words = _words(text)
    (begin, end), (a, b) = draw.choice(words), draw.choice(words)
    return text[:begin] + text[a:b] + text[end:]


_SLIPS = (
    _left_out,
    _doubled,
    _swapped,
    _misspelt,
    _misspelt,
    _said_otherwise,
    _said_otherwise,
    _said_otherwise,
    _sign,
    _comma,
    _line,
    _capital,
    _filler,
    _unit,
    _quotes,
    _another,
)
