"""What is still lacking after the last operation: one small function for each such finding."""
