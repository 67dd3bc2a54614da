"""Text from strangers made safe for where it is written: never a formula, never a control sequence."""

from __future__ import annotations

import re

MOST_IN_A_CELL = 32_767
"""How many letters a cell of a workbook can hold."""

# Tab, line feed and carriage return stay: they are part of what people write into cells.
_CONTROLS = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\ud800-\udfff]")
_STARTS_FORMULA = re.compile("[=+\\-@\t\r\n＝＋－＠]")
_STARTS_FORMULA_INSIDE = re.compile('([;\t\r\n][ "]*)(?=[=+\\-@＝＋－＠])')


def without_controls(text: str) -> str:
    """A text in which every control character is replaced by �, so that showing it steers no terminal."""
    return _CONTROLS.sub("\ufffd", text)


def for_csv(text: str) -> str:
    """A text that no spreadsheet program takes for a formula, with an apostrophe before what would begin one.

    After `;`, tabs and line ends too: a program that parts cells there would begin a new cell in the middle of the text.
    """
    clean = _STARTS_FORMULA_INSIDE.sub(r"\1'", without_controls(text))
    return f"'{clean}" if _STARTS_FORMULA.match(clean) else clean


def for_workbook(text: str) -> str:
    """A text that a cell of a workbook can hold; what is longer is cut and ends in `…`."""
    clean = without_controls(text)
    if clean.startswith("<r>"):
        clean = f" {clean}"  # the library writes a text between <r> and </r> as markup, unescaped
    return clean if len(clean) <= MOST_IN_A_CELL else clean[: MOST_IN_A_CELL - 1] + "…"
