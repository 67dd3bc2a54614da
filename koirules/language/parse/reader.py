"""The reader: text in, statements, comments and problems out. It never raises, whatever the text."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from typing import Any

from attrs import evolve, field
from lark import Tree
from lark.exceptions import UnexpectedInput

from koirules.language.diagnose.hints import explain
from koirules.language.parse.builder import Builder
from koirules.language.parse.cleaning import Cleaned, clean, decode
from koirules.language.parse.incremental import Memory
from koirules.language.parse.statement_builder import NoSuchDateError, build_statement
from koirules.language.parse.tables import grammar
from koirules.language.statements import Header, RuleFile, Statement
from koirules.meaning.expressions import FIRST_WORDS
from koirules.problems import Place, Problem
from koirules.problems import reading as say
from koirules.values import frozen
from koirules.vocabulary.nearness import near
from koirules.vocabulary.words import HEAD_WORDS

MOST_STATEMENTS = 2_000
MOST_NESTING = 32

_FIRST_WORD = re.compile(r"[^\W\d]\w*|\S+")
_STATEMENT = re.compile(
    r"\s+(?:points|bonus|penalty|trait|term|setting|lift)\s+"
    # A step may be called like a head word: `points gives 5` goes on with a table.
    rf"(?!(?:gives|and|or|if|otherwise|{'|'.join(FIRST_WORDS)})(?!\w))[^\W\d]\w*"
    r'\s+(?:"|weight\s|by\s|as\s|means\s|=|[0-9]|if\s)'
    r'|\s+(?:sample|points|bonus|penalty|fault|lift|setting|trait|alert)\s+"'
)
_CAPITAL = re.compile(r"[A-Z][A-Za-z]+(?=\s+\S)")
_DEPTH = re.compile(r'"[^"\n]*"|[()]|(?:(?:not(?!\w)|-)\s*)+')
_HEADER_LINES = frozenset({"edition", "variety", "any", "stage", "for", "valid", "based", "note"})
_CONTINUATIONS = frozenset(
    {
        "edition",
        "variety",
        "any",
        "stage",
        "for",
        "valid",
        "based",
        "note",
        "with",
        "comes",
        "stays",
        "scores",
        "shows",
        "leaves",
    }
    | {"if", "except", "say", "by", "weight", "worth", "no", "as", "means", "from", "keep", "pick", "send", "rescues"}
    | {"ties", "otherwise", "and", "or", "unless"}
)

_ROUND_PARTS = frozenset({"keep", "pick", "send", "rescues", "ties"})
_LIMIT = re.compile(r"no\s+(?:better|worse|more)(?!\w)")


@frozen
class Read:
    """A rule file as far as it could be read, with every problem of its text.

    guesses: those of the problems whose mend is a guess at what was meant, each with what can be said without a guess.
    """

    rules: RuleFile
    problems: tuple[Problem, ...]
    guesses: Mapping[Problem, Problem] = field(factory=dict, eq=False)


@frozen
class _Piece:
    """The text of one statement and the number of lines before it."""

    text: str
    offset: int


def read_bytes(data: bytes, file: str) -> Read:
    """Read the bytes of a rule file."""
    text = decode(data, file)
    if isinstance(text, Problem):
        return Read(RuleFile(file, "", (), ()), (text,))
    return read_text(text, file)


def read_text(text: str, file: str, memory: Memory | None = None) -> Read:
    """Read the text of a rule file. memory: of its last reading; what comes out is the same without one, only later."""
    memory = memory or Memory()
    cleaned, in_capitals = _heads_small(clean(text, file), file)
    problems = [*cleaned.problems, *in_capitals]
    statements: list[Statement] = []
    unread: list[tuple[str, str]] = []
    guesses: dict[Problem, Problem] = {}
    named = False
    for number, piece in enumerate(_pieces(cleaned, file, problems)):
        if number >= MOST_STATEMENTS:
            problems.append(say.too_many_statements(_line_place(file, piece.offset + 1, 1), MOST_STATEMENTS))
            break
        last = piece.offset + piece.text.count("\n") + 1
        if any(piece.offset < line <= last for line in cleaned.unreadable):
            unread.append(_named(piece.text))
            continue
        read = memory.recalled(piece.text, piece.offset) or _statement(piece, file, first=number == 0)
        if isinstance(read, _Unread):
            listing = say.names_head_words(read.problem)
            problems.append(say.another_unknown_head(read.problem) if listing and named else read.problem)
            named |= listing
            if read.plain is not None:
                guesses[read.problem] = read.plain
            unread.append(_named(piece.text))
        else:
            memory.keep(piece.text, piece.offset, read)
            statements.append(read)
    memory.settle()
    return Read(
        RuleFile(file, cleaned.text, tuple(statements), cleaned.comments, tuple(unread)), tuple(problems), guesses
    )


def _heads_small(cleaned: Cleaned, file: str) -> tuple[Cleaned, list[Problem]]:
    """The lines with head words in small letters, so that what else is wrong behind one in capitals is found too."""
    problems: list[Problem] = []
    lines = list(cleaned.lines)
    for number, line in enumerate(lines, 1):
        found = _CAPITAL.match(line)
        if found is not None and found.group().lower() in HEAD_WORDS:
            word = found.group()
            problems.append(say.unknown_head(_word_place(file, number, word), word, word.lower()))
            lines[number - 1] = word.lower() + line[len(word) :]
    return (evolve(cleaned, lines=tuple(lines)) if problems else cleaned), problems


def read_header(text: str, file: str) -> Header | None:
    """The header of a rule file, without the rest being read; None where there is none that can be read."""
    cleaned = clean(text, file)
    first = next(_pieces(cleaned, file, []), None)
    found = None if first is None else _statement(first, file)
    return found if isinstance(found, Header) else None


def _pieces(cleaned: Cleaned, file: str, problems: list[Problem]) -> Iterator[_Piece]:
    begin: int | None = None
    last = 0
    for number, line in enumerate(cleaned.lines):
        if not line.strip():
            continue
        if line[0] != " ":
            if begin is not None and _goes_on(line, cleaned.lines[last], cleaned.lines[begin]):
                word = line.split()[0]
                problems.append(say.not_indented(_word_place(file, number + 1, word), word))
                last = number
                continue
            if begin is not None:
                yield _piece(cleaned, begin, number)
            begin = number
        elif _STATEMENT.match(line):
            # No statement goes on like this, so this is the next one, written as an outline.
            word = line.split()[0]
            column = len(line) - len(line.lstrip()) + 1
            problems.append(say.indented_statement(_line_place(file, number + 1, column), word))
            if begin is not None:
                yield _piece(cleaned, begin, number)
            begin = number
        elif begin is None:
            # A line of a header whose first line is missing is told as that.
            if line.split()[0] not in _HEADER_LINES:
                problems.append(say.indented_start(_line_place(file, number + 1, len(line) - len(line.lstrip()) + 1)))
            begin = number
        last = number
    if begin is not None:
        yield _piece(cleaned, begin, len(cleaned.lines))


def begins_statement(line: str, before: str) -> bool:
    """Whether a statement begins on a line, both lines being as the grammar takes them."""
    return (line[:1].strip() != "" and not _goes_on(line, before)) or _STATEMENT.match(line) is not None


def _goes_on(line: str, before: str, begins: str = "round") -> bool:
    """Whether a line at the left edge goes on with the statement above: by its first word, or by how that line ends.

    begins: the first line of that statement. Parts of a round go on with nothing else, and `no` alone with nothing.
    """
    first = _FIRST_WORD.search(line)
    word = first.group() if first else ""
    if word in HEAD_WORDS:
        return False
    if line[0] in ":," or before.rstrip()[-1:] in {":", ","}:
        return True
    if word in _ROUND_PARTS:
        return "round" in begins.split()[:2]
    return word in _CONTINUATIONS and (word != "no" or _LIMIT.match(line) is not None)


def _word_place(file: str, line: int, word: str) -> Place:
    return Place(file, line, 1, line, 1 + len(word))


def _piece(cleaned: Cleaned, begin: int, end: int) -> _Piece:
    return _Piece("\n".join(cleaned.lines[begin:end]).rstrip(), begin)


@frozen
class _Unread:
    """Why a statement cannot be read. plain: the same without a guess at what was meant, where the problem holds one."""

    problem: Problem
    plain: Problem | None = None


def _statement(piece: _Piece, file: str, *, first: bool = False) -> Statement | _Unread:
    found = _FIRST_WORD.search(piece.text)
    word = found.group() if found else ""
    column = found.start() + 1 if found else 1
    place = Place(file, piece.offset + 1, column, piece.offset + 1, column + len(word))
    if word not in HEAD_WORDS:
        if word in _HEADER_LINES and (first or piece.text[:1] == " "):
            return _Unread(say.header_line_missing(place, word))
        if word in _CONTINUATIONS and word not in _ROUND_PARTS and word != "no":
            return _Unread(say.not_indented(place, word))
        guess = near(word, sorted(HEAD_WORDS))
        return _Unread(say.unknown_head(place, word, guess), say.unknown_head(place, word, None) if guess else None)
    deep = _too_deep(piece, file)
    if deep is not None:
        return _Unread(deep)
    try:
        tree = grammar().parse(piece.text)
    except UnexpectedInput as error:
        return _Unread(*explain(error, piece.text, word, Builder(file, piece.offset)))
    return _build(tree, Builder(file, piece.offset))


def _named(text: str) -> tuple[str, str]:
    """The head word and the name of a statement that could not be read, as far as they can be told."""
    head, _, rest = text.strip().partition(" ")
    if head in _HEADER_LINES:
        return "standard", ""
    found = _FIRST_WORD.match(rest.strip())
    return near(head, sorted(HEAD_WORDS)) or head, found.group() if found else ""


def _build(tree: Tree[Any], builder: Builder) -> Statement | _Unread:
    node = tree.children[0]
    try:
        return build_statement(builder, node)
    except NoSuchDateError as error:
        return _Unread(say.no_such_date(error.word.place, error.word.text))


def _too_deep(piece: _Piece, file: str) -> Problem | None:
    """The problem of a statement whose brackets, `not` and signs lie more than so many levels deep, all together."""
    open_brackets: list[int] = []
    signs, end = 0, -1
    for found in _DEPTH.finditer(piece.text):
        word = found.group()
        if word[0] == '"':
            continue
        if word == ")":
            open_brackets = open_brackets[:-1]
            continue
        if word == "(":
            # Signs right before a bracket stay open as long as it does.
            open_brackets.append(1 + (signs if found.start() == end else 0))
            signs = 0
        else:
            signs, end = word.count("not") + word.count("-"), found.end()
        if sum(open_brackets) + signs > MOST_NESTING:
            before = piece.text[: found.start()]
            line = before.count("\n") + 1 + piece.offset
            return say.nested_too_deep(_line_place(file, line, len(before) - before.rfind("\n")), MOST_NESTING)
    return None


def is_too_deep(text: str) -> bool:
    """Whether the text of a statement is nested deeper than the reader takes it."""
    return _too_deep(_Piece(text, 0), "") is not None


def _line_place(file: str, line: int, column: int) -> Place:
    return Place(file, line, column, line, column + 1)
