"""From what the author wrote to operations at one station each, and the garment they make."""
