"""The text of a file that should be UTF-8, or a problem that says what it is instead."""

from __future__ import annotations

import re
from pathlib import Path

from koirules.problems import Problem
from koirules.problems.record_files import misnamed_file, not_utf8, too_large, unreadable_file, zero_bytes

MOST_BYTES = 512 * 1024 * 1024
"""The largest file that is read in one go."""

_SAVE = "Save the table as an Excel workbook (.xlsx) or as CSV UTF-8, and give that file."
_OTHER_FORMATS = (
    (b"PK\x03\x04", "an Excel workbook (.xlsx)", "If it is one, end its name in .xlsx."),
    (b"\xd0\xcf\x11\xe0", "an old Excel workbook (.xls)", _SAVE),
    (b"%PDF", "a PDF document", _SAVE),
    (b"PAR1", "a Parquet file", _SAVE),
)
_UTF_16 = (b"\xff\xfe", b"\xfe\xff")
_JAPANESE = re.compile("[\u3041-\u30ff]|[\u4e00-\u9fff]{2}")
_WORD = re.compile(r"[^\s,;\t\"]+")


def read_text(path: Path) -> str | Problem:
    """Read the text of a file, without its byte order mark."""
    content = read_bytes(path)
    return content if isinstance(content, Problem) else decoded(str(path), content)


def decoded(file: str, content: bytes, first_row: int = 1) -> str | Problem:
    """The text that bytes are, without its byte order mark. first_row: the number of the first line in the file."""
    for start, what, mend in _OTHER_FORMATS:
        if content.startswith(start):
            return misnamed_file(file, what, mend)
    if content.startswith(_UTF_16) or content[1:20:2] == bytes(len(content[1:20:2])) != b"":
        return not_utf8(file, None, "UTF-16, which some programs call Unicode text", "")
    try:
        text = content.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        return _other_encoding(file, content, error.start, first_row)
    if "\0" in text:
        return zero_bytes(file, text.count("\n", 0, text.index("\0")) + first_row)
    return text


def check_readable(path: Path) -> Problem | None:
    """Say what keeps a file from being read in one go, as far as that shows before it is opened."""
    try:
        if not path.is_file():
            return unreadable_file(str(path), "it is no ordinary file")  # a pipe would be waited for without end
        size = path.stat().st_size
    except OSError as error:
        return unreadable_file(str(path), error.strerror or str(error))
    return too_large(str(path), size, MOST_BYTES) if size > MOST_BYTES else None


def read_bytes(path: Path) -> bytes | Problem:
    """Read the bytes of a file."""
    problem = check_readable(path)
    if problem is not None:
        return problem
    try:
        return path.read_bytes()
    except OSError as error:
        return unreadable_file(str(path), error.strerror or str(error))


def _other_encoding(file: str, content: bytes, start: int, first_row: int) -> Problem:
    """The problem of bytes that are no UTF-8, with the word at fault as the likeliest encoding reads it."""
    row = content.count(b"\n", 0, start) + first_row
    line_start = content.rfind(b"\n", 0, start) + 1
    line_end = content.find(b"\n", start)
    line = content[line_start : line_end if line_end >= 0 else len(content)][: start - line_start + 200]
    for encoding, name in (
        ("cp932", "Shift-JIS, which Japanese Windows"),
        ("cp1252", "Windows-1252, which Western Windows"),
    ):
        text = line.decode(encoding, errors="replace")
        if encoding == "cp1252" or (_is_japanese(content) and "\ufffd" not in text):
            before = len(content[line_start:start].decode(encoding, errors="replace"))
            word = next((match[0] for match in _WORD.finditer(text) if match.end() > before), "")
            return not_utf8(file, row, f"{name} uses", word)
    return not_utf8(file, row, "another encoding", "")


def _is_japanese(content: bytes) -> bool:
    """Whether bytes make sense as Shift-JIS: é and a letter after it make one lone kanji, Japanese text makes many."""
    try:
        return _JAPANESE.search(content.decode("cp932")) is not None
    except UnicodeDecodeError:
        return False
