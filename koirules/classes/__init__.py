"""Into which class of a show does a fish go: which group of varieties, which size?

In: a table that a committee writes as TOML, since groups, sizes, the closed side of a size and the rounding differ from place
to place. Out: the table, checked, or every problem that it has; and for a variety and a length the class that they fall in.
"""
