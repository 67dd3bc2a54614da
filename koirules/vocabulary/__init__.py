"""What may be said about a fish.

In: nothing. Out: units, kinds of value, traits with their ranges and steps, vocabularies that put traits together for a
variety, the reading of one value as a person writes it, and look-up with near names.
"""
