"""Cloth as a surface: rings of edges, seams that glue them, and what can be walked round."""
