"""The vocabulary that every floor shares: names, measures, places, findings. Standard library only."""
