"""Every sentence that people read, whole, in catalogues: nothing is glued from fragments."""
