"""One record at a time: a standard as a generated Python function.

In comes a standard; out goes a function from readings to a trace of everything that was worked out.
"""
