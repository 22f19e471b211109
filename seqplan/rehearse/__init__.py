"""Rehearsal: walk through an order with the garment in hand, and see where the work gets stuck."""
