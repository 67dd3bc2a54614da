"""A standard over whole columns: in come frames of records, out go the columns of their results.

The meaning is that of the operations table, read by its own syntax (`meaning`), so that one record and a million agree to
the bit. Polars does the work; it is imported where a frame is at hand.
"""
