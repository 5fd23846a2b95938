"""Setting up and starting: what `python3 -m drillpoint open`, `test` and `check` do.

Standard library only, since nothing else is installed when it runs.
"""
