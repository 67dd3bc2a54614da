"""Notes: what a sorter says or writes at the tub, in any order, made into records.

In: a text of lines and a checked standard with its phrases. Out: one noted fish after another, each with what was understood, by
which phrase, and what was not. A remark is understood whole or not at all.
"""
