"""A checked standard made into something that runs: on one record, on columns, on a fish that is not known yet.

In comes the typed tree of a standard; out goes an evaluator. Each engine is a room of its own.
"""
