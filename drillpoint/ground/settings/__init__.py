"""From wanted angles back to the wheel: how a cone or a plane must be set, and what each setting does."""
