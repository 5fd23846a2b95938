"""The editions of the book: plain Python and JavaScript written out from the sympy statements.

`python -m drillpoint.editions` writes them into `drillpoint/generated/`. They are committed, so that calling a relation
needs no sympy and a slider needs no kernel.
"""
