"""A checked standard made into something that runs: each engine is a room of its own.

| engine | lowers to | for |
| --- | --- | --- |
| scalar | Python source of the traced program (program/) | one record |
| columnar | expressions of Polars, of the program of a frame | frames |
| compiled | machine code by LLVM, of the program of a row | large frames |
| symbolic | terms of z3, over the value algebra | proofs |
"""
