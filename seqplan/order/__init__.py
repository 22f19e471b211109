"""Orders of operations: fewest changes of set-up, fewest moves, unit by unit. Knows no garment."""
