"""What the walk keeps besides seams: a module for each thing that changes from step to step."""
