"""What a garment is: pieces with edges, notions, and the entries that act on them. Frozen data."""
