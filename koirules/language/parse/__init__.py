"""From text to syntax: cleaning, the grammar, and the reader. Lark lives here and in `diagnose/`.

In comes text; out go statements, comments and problems.
"""
