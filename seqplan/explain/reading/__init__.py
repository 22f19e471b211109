"""The author's own words, read as far as they can be held against the rest of the file."""
