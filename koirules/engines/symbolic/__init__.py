"""The rules over every fish at once: a standard as terms of the solver z3, of which statements about all fish are asked.

In come checked rules; out goes, for fish that are variables, what the evaluator of one record would give. The meaning of an
operator comes from the operations table, whose source is read by its own syntax, as the columns do it. Numbers are exact
rationals; how far doubles may stand from them is carried along, and where that could decide a comparison either answer is
left open. So what the terms rule out no fish can do, and what they allow is tried by the evaluator before it is told.
"""
