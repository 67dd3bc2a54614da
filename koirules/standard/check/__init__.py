"""The checker: from the statements of a file to checked rules, or to every problem that it has.

In comes syntax; out go typed trees, or problems with a place, a cause and a mend.
"""
