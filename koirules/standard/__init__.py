"""The meaning of a standard.

In: the syntax of a rule file and the varieties that are installed. Out: checked rules, whose expressions are trees of
typed nodes over one table of operations, or every problem of the file in one go. Evaluators, the explainer and the
prover read these trees; nothing is spelt twice.
"""
