"""From bytes to lines that the grammar can read.

Comments are blanked out (and kept), and what a word processor or a full-width keyboard leaves behind is answered with
its mend and read as if it were mended: every replacement has as many characters as before, so that places stay true.
"""

from __future__ import annotations

import re
import unicodedata

from koirules.language import MOST_BYTES
from koirules.language.rule_file import Comment
from koirules.problems import Place, Problem
from koirules.problems import reading as say
from koirules.values import frozen

_QUOTES = "“”„‟«»＂〝〞「」『』"
_SINGLE = "'‘’‚‛`"
_FULL_WIDTH = "[\uff01\uff04-\uff5e\u3001]+"
_SCAN = re.compile(
    r'(?P<text>"[^"]*")'
    r"|(?P<comment>[#\uff03].*)"
    r'|(?P<open>".*)'
    r"|(?P<apostrophe>(?<=n)['’](?=t(?!\w)))"
    rf'|(?P<quoted>[{_QUOTES}][^{_QUOTES}"]*[{_QUOTES}"]|[{_SINGLE}][^{_SINGLE}]*[{_SINGLE}])'
    rf"|(?P<unclosed>[{_QUOTES}{_SINGLE}].*)"
    r"|(?P<comma>(?<![\w.,])[0-9]+,[0-9]+(?![\w,.]))"
    rf"|(?P<wide>{_FULL_WIDTH})"
    r"|(?P<space>[\u00a0\u2000-\u200a\u202f\u205f\u3000\t\f]+)"
    r"|(?P<minus>[\u2212\u2013\u2010\u2011])"
    r"|(?P<stray>[\u200b-\u200f\u2060\ufeff\u00ad\x00-\x08\x0b\x0e-\x1f\x7f\u0080-\u009f\u2028-\u202e\u2066-\u2069])"
)
_PLAIN = re.compile(r"[ !$-&(-+\--_a-~]*(?:,(?![0-9])[ !$-&(-+\--_a-~]*)*\Z")


@frozen
class Cleaned:
    """Lines without comments, the comments, and the lines whose statement cannot be parsed (counted from 1)."""

    text: str
    lines: tuple[str, ...]
    comments: tuple[Comment, ...]
    unreadable: frozenset[int]
    problems: tuple[Problem, ...]


def decode(data: bytes, file: str) -> str | Problem:
    """The text of a file's bytes, with one kind of line end and composed letters, or the problem that prevents it."""
    if len(data) > MOST_BYTES:
        return say.too_large(file, len(data), MOST_BYTES)
    if data[:2] in {b"\xff\xfe", b"\xfe\xff"}:
        return say.not_utf8(Place(file, 1, 1, 1, 2), "UTF-16")
    data = data.removeprefix(b"\xef\xbb\xbf")
    try:
        return data.decode("utf-8")
    except UnicodeDecodeError as error:
        before = data[: error.start].decode("utf-8").replace("\r\n", "\n").replace("\r", "\n")
        line = before.count("\n") + 1
        column = len(before) - (before.rfind("\n") + 1) + 1
        return say.not_utf8(Place(file, line, column, line, column + 1), _guess(data))


def _guess(data: bytes) -> str:
    if b"\x00" in data:
        return "a file that is no text"
    for encoding, name in (("shift_jis", "Shift JIS"), ("cp1252", "Windows Western (cp1252)")):
        try:
            text = data.decode(encoding)
        except UnicodeDecodeError:
            continue
        if encoding != "shift_jis" or re.search("[\u3040-\u30ff\u4e00-\u9fff]", text):
            return name
    return "another encoding"


def as_counted(text: str) -> str:
    """A text as places count its lines and characters: composed letters, one kind of line end, no mark in front."""
    return unicodedata.normalize("NFC", text.removeprefix("\ufeff").replace("\r\n", "\n").replace("\r", "\n"))


def clean(text: str, file: str) -> Cleaned:
    """The lines of a text as the grammar takes them."""
    text = as_counted(text)
    sweep = _Sweep(file)
    lines = tuple(
        line if _PLAIN.match(line) else sweep.line(number, line) for number, line in enumerate(text.split("\n"), 1)
    )
    return Cleaned(text, lines, tuple(sweep.comments), frozenset(sweep.unreadable), tuple(sweep.problems))


def without_remark(line: str) -> str:
    """A line of a text as it was read, blanks where its remark is."""
    if "#" not in line and "\uff03" not in line:
        return line
    return _SCAN.sub(lambda found: " " * len(found.group()) if found.lastgroup == "comment" else found.group(), line)


def inside(line: str) -> tuple[str, int]:
    """What the end of a line stands in, `remark` or `text` or "", and how many characters stand before that."""
    for found in _SCAN.finditer(line):
        if found.lastgroup in {"comment", "open", "unclosed"}:
            return ("remark" if found.lastgroup == "comment" else "text"), found.start()
    return "", len(line)


class _Sweep:
    """One pass over the lines of a file."""

    def __init__(self, file: str) -> None:
        self.file = file
        self.comments: list[Comment] = []
        self.problems: list[Problem] = []
        self.unreadable: set[int] = set()
        self.strayed = 0

    def line(self, number: int, line: str) -> str:
        """A line as the grammar takes it, of the same length."""

        def replace(found: re.Match[str]) -> str:
            place = Place(self.file, number, found.start() + 1, number, found.end() + 1)
            return self._replace(found, place)

        return _SCAN.sub(replace, line)

    def _replace(self, found: re.Match[str], place: Place) -> str:
        was = found.group()
        match found.lastgroup:
            case "text":
                return was
            case "comment":
                self.comments.append(Comment(was, place))
                return " " * len(was)
            case "space":
                return " " * len(was)
            case "apostrophe":
                return "'"  # of `isn't`, which the parser answers
            case "quoted":
                mended = f'"{was[1:-1]}"'
                self.problems.append(say.wrong_quotes(place, was, mended))
                return mended
            case "comma":
                self.problems.append(say.decimal_comma(place, was))
                return was.replace(",", ".")
            case "wide":
                mended = "".join("," if sign == "\u3001" else chr(ord(sign) - 0xFEE0) for sign in was)
                self.problems.append(say.full_width(place, was, mended))
                return mended
            case "minus":
                self.problems.append(say.sign_for_word(place, was, "-"))
                return "-"
            case "stray":
                if place.line != self.strayed:  # where there is one, there are often hundreds
                    self.strayed = place.line
                    name = unicodedata.name(was, f"code {ord(was)}").lower()
                    self.problems.append(say.stray_character(place, name))
                return " "
            case _:
                self.problems.append(say.unclosed_text(place))
                self.unreadable.add(place.line)
                return was
