"""Figures and rounds over the columns of a frame.

In comes a frame of graded fish; out go columns that say what became of each fish.
"""
