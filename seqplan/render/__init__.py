"""What is read and looked at: values in, text out. Formats know nothing of one another."""
