"""The tidy writer: a rule file in the one layout, its comments where they were.

In come statements; out goes text that reads the same.
"""
