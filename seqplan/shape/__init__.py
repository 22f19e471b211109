"""The plane: outlines of pieces, their lengths and areas, and paths that others have drawn."""
