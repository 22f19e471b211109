"""Orders of operations: fewest or cheapest changes, fewest moves, by unit. Knows no garment."""
