"""What holds for every fish that there could be, by a standard: proved, or shown to fail by a fish.

In comes a grader; out go statements, each proved, found with the fish that shows it (graded as every fish is, before it is
told), or said to be undecided. A fish is one whose every trait that the rules read is known as one value, written or following
from others; traits that a rule asks about with `is recorded`, and values from beside the record, may be missing. What it grows
to is worked out from it, and may be open.
"""
