"""A ground point as a closed solid of triangles: for pictures, for printing and for measuring by other programs."""
