"""Why a fish came out as it did, in words.

In comes the trace of one evaluation; out go reasons, what is missing for the next grade, and two fish side by side.
"""
