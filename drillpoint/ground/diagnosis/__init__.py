"""What is wrong with a point, why, what it does to the hole, and what to grind: from any few readings of it."""
