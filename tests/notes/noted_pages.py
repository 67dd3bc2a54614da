"""The pages of notes with the plain meaning of each remark, and how many of their remarks are read as they were meant."""

import re
from pathlib import Path

from attrs import frozen

from koirules.notes.reader import Hearing, NotesReader
from koirules.notes.remarks import Sort
from koirules.standard.check.phrasing import meet, read_means

HERE = Path(__file__).parent / "pages"
_MEANT = re.compile(r"\s*\{([^{}]*)\}")
_SORTS = {
    "nothing": Sort.NOTHING,
    "forecast": Sort.FORECAST,
    "comparison": Sort.COMPARISON,
    "correction": Sort.CORRECTION,
}


@frozen
class Outcome:
    """A remark of a page. right: read as meant; unread: not understood; else it was misread."""

    line: int
    remark: str
    meant: str
    right: bool
    unread: bool
    got: str


def meanings(*files):
    """The readings of each plain meaning, by its words: alternatives, each with what may come along."""
    found = {}
    for file in files:
        for line in file.read_text(encoding="utf-8").splitlines():
            if line and not line.startswith("#"):
                meaning, _, readings = line.partition(" = ")
                found[meaning.strip()] = [each.split("+") for each in readings.split("|")]
    return found


def outcomes(page, key, rules):
    """What came of every remark of a page."""
    reader = NotesReader.of(rules)
    text = page.read_text(encoding="utf-8")
    meant = [re.findall(_MEANT, line) if not line.startswith("#") else [] for line in text.split("\n")]
    cutter = reader.cutter()
    for line in (line for raw in _MEANT.sub("", text).split("\n") for line in cutter.cut(raw)):
        found = reader.read_each(line)
        wanted = meant[line.number - 1]
        assert len(found) == len(wanted), (page.name, line.number, [remark.text for remark in found], wanted)
        for remark, meaning in zip(found, wanted, strict=True):
            yield outcome(line.number, remark, meaning, key, rules)


def outcome(number, remark, meaning, key, rules):
    got = f"{remark.sort.value} {remark.verdict} {[(f.trait, f.said) for f in remark.found]}"
    unread = remark.sort is Sort.UNKNOWN
    if meaning.startswith("verdict "):
        right = remark.sort is Sort.VERDICT and remark.verdict == {"keep": "keep", "out": "out"}.get(
            meaning[8:], meaning[8:]
        )
        right |= remark.sort is Sort.VERDICT and {remark.verdict, meaning[8:]} <= {"keep", "in"}
        right |= remark.sort is Sort.VERDICT and {remark.verdict, meaning[8:]} <= {"hold", "unsure"}
    elif meaning in _SORTS:
        right = remark.sort is _SORTS[meaning] or (meaning == "nothing" and not remark.found and not unread)
        right |= meaning == "correction" and remark.sort is Sort.NO
    elif meaning == "unclear":
        right = unread or remark.is_detail  # what is told of a part alone, no trait holds
    else:
        right = any(fits(remark, alternative, rules, unread) for alternative in key[meaning])
    return Outcome(number, remark.text, meaning, right, unread, got)


def fits(remark, alternative, rules, unread):
    """Whether a remark says what was meant: each trait with a reading that holds all of it, or lies within."""
    first, *along = (each.strip() for each in alternative)
    if first == "unclear":
        return unread
    if first == "comparison":
        return remark.sort is Sort.COMPARISON
    if first == "nothing":
        return not remark.found and not unread
    if first.startswith("unknown "):
        return [(f.trait, f.said) for f in remark.found] == [(first[8:], None)]
    wanted = {each.trait: each.said for each in read_means(first, rules.traits)}
    beside = {each.trait: each.said for text in along for each in read_means(text, rules.traits)}
    found = {}
    for each in remark.found:
        found[each.trait] = each.said if each.trait not in found else meet(found[each.trait], each.said)
    if not wanted.keys() <= found.keys() or not found.keys() <= {*wanted, *beside}:
        return False
    both = {**beside, **wanted}
    return all(said is not None and meet(said, both[trait]) in {said, both[trait]} for trait, said in found.items())


def fresh(page, standard):
    """The remarks of a page in free speech with their plain meanings, as they are read; without those that may mean anything."""
    text = page.read_text(encoding="utf-8")
    meant = [re.findall(_MEANT, line) if not line.startswith("#") else [] for line in text.split("\n")]
    hearing, read = Hearing.of(standard.notes_reader, ""), standard.notes_reader
    cutter = read.cutter()
    for line in (line for raw in _MEANT.sub("", text).split("\n") for line in cutter.cut(raw)):
        told = zip(hearing.with_lengths(read.read_each(line)), meant[line.number - 1], strict=True)
        yield from ((remark, meaning) for remark, meaning in told if meaning != "unclear")


def tabled(table, reader, rules):
    """The wordings of a table that are read as meant, unread and read otherwise: `reading|another+beside = one; two`."""
    right, unread, otherwise = [], [], []
    for line in table.read_text(encoding="utf-8").splitlines():
        meaning, parted, wordings = line.partition(" = ")
        alternatives = [each.split("+") for each in meaning.split("|")]
        for wording in wordings.split("; ") if parted else ():
            remark = reader.remarks.read(wording)
            fitting = any(fits(remark, each, rules, False) for each in alternatives)
            (unread if remark.sort is Sort.UNKNOWN else right if fitting else otherwise).append(wording)
    return right, unread, otherwise
