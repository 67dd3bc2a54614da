"""Lowers a program to Python source: a function of one record."""
