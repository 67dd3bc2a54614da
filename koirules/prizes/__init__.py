"""Who wins which prize of a show, over the fish of several standards and by what the committee wrote down?

In: an occasion, which is a TOML table with one entry a prize, the fish as they were graded and put into classes, the votes of
judges, and what a person decided about ties. Out: the placings of each prize, what still waits and for what, or every problem
of the table. Nothing is drawn by lot, and no tie is broken by the order of a file.
"""
