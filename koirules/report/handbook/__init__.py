"""A standard as a page to print and hand to judges: all that it says, in words, with its curves drawn.

In: a standard that grades. Out: one file, HTML or Markdown. What the page says is made once, as blocks (`blocks.py`), from
the typed parts of the standard and in the words in which reasons are told; what it looks like is for `as_html.py` and
`as_markdown.py`.
"""

from koirules.report.handbook.page import Subject, blocks_of
from koirules.report.handbook.show import Chapter, Show, show_blocks
from koirules.report.handbook.written import WRITERS, check_handbook_path, write_handbook, write_show_handbook

__all__ = [
    "WRITERS",
    "Chapter",
    "Show",
    "Subject",
    "blocks_of",
    "check_handbook_path",
    "show_blocks",
    "write_handbook",
    "write_show_handbook",
]
