"""`koirules ask`: the conversation at the tub, its keyboard, and the file that it fills.

In come keys and lines; out go records, each on disk before anything else is asked.
"""
