"""A standard as a program: what its meaning does over any record, recorded once.

In: a checked standard, with the settings of a run. Out: a graph of primitive operations in static single assignment form,
with constants folded and common subexpressions shared, which an engine lowers (engines/).
"""
