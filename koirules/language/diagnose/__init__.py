"""Why a statement could not be read, in plain words, with a mend.

In comes the place where the grammar stopped; out goes a problem.
"""
