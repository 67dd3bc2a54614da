"""The tidy writer: a rule file in the one layout, its comments where they were.

What it writes reads as the same statements. It is written for files without problems: what stands twice where one may
stand is not kept.
"""

from __future__ import annotations

from bisect import bisect
from collections import deque
from collections.abc import Iterable, Iterator, Sequence

from koirules.language.format.line_breaking import indent_of, laid, lines_of
from koirules.language.format.pieces import Piece, joined
from koirules.language.format.statements import pieces_of
from koirules.language.parse.reader import is_too_deep
from koirules.language.statements import Comment, Header, RuleFile, Statement
from koirules.problems import Place
from koirules.values import frozen


def tidy(rules: RuleFile) -> str:
    """The text of a rule file in the one layout."""
    source = rules.text.split("\n")
    lines: list[str] = []
    last = 0
    comments = deque(rules.comments)
    for statement in rules.statements:
        last = _put_comments(_taken(comments, statement.place.line - 1), lines, last)
        _put_blank(lines, last, statement.place.line)
        last = statement.place.end_line
        lines.extend(_statement(statement, _taken(comments, last), source))
    _put_comments(comments, lines, last)
    return "".join(f"{line}\n" for line in lines)


def _taken(comments: deque[Comment], line: int) -> list[Comment]:
    """The comments up to a line, which are no longer left."""
    taken: list[Comment] = []
    while comments and comments[0].place.line <= line:
        taken.append(comments.popleft())
    return taken


def tidy_statement(statement: Statement) -> str:
    """A statement in the one layout, without comments."""
    return "\n".join(lines_of(_pieces(statement)))


def laid_statement(statement: Statement) -> list[tuple[str, Place | None]]:
    """The lines of a statement in the one layout, each with the place of the first of its words that was read."""
    return [
        (indent + joined(line), next((piece.at for piece in line if piece.at is not None), None))
        for indent, line in laid(_pieces(statement))
    ]


def _pieces(statement: Statement) -> list[Piece]:
    pieces = pieces_of(statement)
    # The brackets for the reader's sake can be too many for the reader.
    return pieces_of(statement, bare=True) if is_too_deep(joined(pieces)) else pieces


def _put_comments(comments: Iterable[Comment], lines: list[str], last: int) -> int:
    for comment in comments:
        _put_blank(lines, last, comment.place.line)
        lines.append(_words(comment))
        last = comment.place.line
    return last


def _put_blank(lines: list[str], last: int, line: int) -> None:
    if lines and line > last + 1:
        lines.append("")


def _words(comment: Comment) -> str:
    return "#" + comment.text[1:].rstrip()


@frozen
class _Remark:
    """A comment inside a statement. before: the number of the piece that it stands before. own: on a line of its own."""

    words: str
    before: int
    own: bool


def _statement(statement: Statement, comments: Sequence[Comment], source: Sequence[str]) -> list[str]:
    pieces = _pieces(statement)
    if not comments:
        return lines_of(pieces)
    remarks: dict[int, list[_Remark]] = {}
    for remark in _remarks(statement, comments, pieces, source):
        remarks.setdefault(remark.before, []).append(remark)
    lines: list[str] = []
    begin = 0
    for end in sorted({*remarks, len(pieces)}):
        lines.extend(lines_of(pieces[begin:end], begins=begin == 0))
        here = remarks.get(end, [])
        # One remark can stand behind a line; any other gets a line.
        behind = next((remark for remark in here if not remark.own), None)
        if behind is not None:
            lines[-1] += f"  {behind.words}"
        indent = indent_of(pieces[end]) if end < len(pieces) else ""
        lines.extend(indent + remark.words for remark in here if remark is not behind)
        begin = end
    return lines


def _remarks(
    statement: Statement, comments: Sequence[Comment], pieces: Sequence[Piece], source: Sequence[str]
) -> Iterator[_Remark]:
    read = sorted((piece.at.line, piece.at.column, i) for i, piece in enumerate(pieces) if piece.at is not None)
    # The parts of a header are put in order, and what is said behind the last of them goes with it.
    end_line = 0 if isinstance(statement, Header) else statement.place.end_line
    for comment in comments:
        place, words = comment.place, _words(comment)
        own = not source[place.line - 1][: place.column - 1].strip()
        if place.line == end_line:
            yield _Remark(words, len(pieces), own)
            continue
        after = bisect(read, (place.line, place.column))
        if own and after < len(read):
            before = read[after][2]
            while before > 1 and pieces[before - 1].at is None and not pieces[before - 1].back:
                before -= 1
        else:
            before = read[after - 1][2] + 1
            while before < len(pieces) and pieces[before].at is None and pieces[before].back:
                before += 1
        yield _Remark(words, before, own)
