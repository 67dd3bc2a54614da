"""From the text of a rule file to its syntax tree.

In: bytes or text. Out: the statements with their places, the comments, and every problem of the text in one go. A
statement is cut out at the left edge before it is parsed, so that a mistake in one never hides the next. Lark lives
only here.
"""

MOST_BYTES = 1_000_000
"""How large a rule file may be."""
