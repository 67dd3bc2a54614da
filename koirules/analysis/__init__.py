"""Questions about a standard or its results.

In: a compiled standard, sometimes with records. Out: answers as values. The rooms of this package do not import each other.
"""
