"""The vocabulary every floor shares: names, measures, places, findings. Stdlib only."""
