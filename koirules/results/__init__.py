"""The record of one fish, and what comes of it: plain data that every room above reads.

In come values as a program gives them; out go records, results, reasons and the course of a selection.
"""
