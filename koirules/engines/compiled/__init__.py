"""Lowers a program over the rows of a frame to machine code: a loop over Arrow buffers, on all cores.

In: the program of a standard for one profile of frames (program/frames.py), and the columns of a frame that was read. Out: the
columns of its results. Needs the extra `compiled` (llvmlite). What cannot be lowered, or not proved to be exact, is refused
(`CannotLowerError`), and the columnar engine grades it.
"""
