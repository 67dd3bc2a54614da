"""From what a person can write down to what a rule can ask.

In: what was recorded, by fish, and the measures that a vocabulary declares. Out: the same with the derived traits that rules
read, what is doubtful about them, and what is wrong with a map or a reading. Measures run once, before grading.
"""
