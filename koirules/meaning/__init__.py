"""What the language means: every operator, criterion, section, limit and grade once, over a value algebra.

In: values of any algebra. Out: values of the same algebra. Plain Python numbers are the reference algebra; a tracer
records what is done as a program, which engines lower (program/, engines/).
"""
