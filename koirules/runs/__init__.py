"""Whole files, however many: in come names of files, out go totals that merge exactly, and files of results.

What travels to a worker is a `Job` and a `Piece`, never a row; what comes back is an `Outcome`. One process and a cluster
differ only in who calls `graded_piece`.
"""
