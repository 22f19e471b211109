"""From the facts of operations to the sentences and lists that people sew from."""
