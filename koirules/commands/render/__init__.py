"""What commands print: tables, rounds, changes, editions and proofs as words in a terminal.

In come results of the library; out goes text. Nothing is worked out here.
"""
