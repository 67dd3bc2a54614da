"""Best-first search over candidate records: the nearest changes, a completion that satisfies a goal.

In come a grader and a record; out go changes and witnesses.
"""
