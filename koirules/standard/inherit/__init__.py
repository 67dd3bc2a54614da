"""Standards that build on another one: their statements merged, and the effective text.

In come the statements of a base and of a file; out goes one list of statements with the origin of each.
"""
