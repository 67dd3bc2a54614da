"""Results and standards as people look at them: pages, handbooks, plots and drawings.

In come results, records and standards; out go HTML, SVG, PNG and Markdown. Numbers are rounded for people here.
"""
