"""A checked standard made into something that runs: each engine is a room of its own.

| engine | lowers to | for |
| --- | --- | --- |
| scalar | Python source of the traced program (program/) | one record |
| columnar | expressions of Polars, over the value algebra (meaning/) | frames |
| symbolic | terms of z3, over the value algebra | proofs |
"""
