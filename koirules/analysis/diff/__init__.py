"""Two editions of a standard: what was changed, whether they can ever grade a fish differently, and who moves in a batch.

In come two checked standards, each whole with its bases; out go changes by statement, in words and as data, the simplest fish
that they part on or the proof that there is none, and for records which change moved each fish. What the evaluator says
of a fish has the last word everywhere.
"""
