"""A standard over whole columns: in come frames of records, out go the columns of their results.

In: frames, and the program of a frame of their shape (program/frames.py). Out: columns. Each operation is lowered to an
expression of Polars (`lowering`), so that one record and a million agree to the bit. Polars is imported where a frame is at hand.
"""
