"""The batch: its figures, the rounds of a selection, ties, and what a person decided.

In come graded fish; out goes what became of each in every round. Record by record here, over columns in `columnar/`.
"""
