"""Formulas written out by `python -m drillpoint.editions`; never edited by hand."""
