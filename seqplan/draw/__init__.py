"""Pictures of steps, drawn from the model: measure, place, write."""
