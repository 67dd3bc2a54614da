"""Values that a fish could have instead: the answers to a question, the nearest other values, an ordinary fish.

In come a standard and a record; out go candidate values and changes.
"""
