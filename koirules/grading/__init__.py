"""A standard applied.

In: the rules of a checked standard and the record of a fish. Out: a result with its grade (or the grades still possible),
its score (or the interval of it) and the reasons, all from one evaluation.
"""
