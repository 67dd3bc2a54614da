"""Records in, results out: one file a format.

In: files of records as people keep them (CSV, XLSX, JSON lines), and results to be written. Out: batches of records
with every problem of the file, and files of results or blank record sheets. A format's file knows how its bytes are
laid out and nothing of traits; what a column or a cell means is worked out once, for all formats.
"""
