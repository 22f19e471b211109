"""From the text of a garment file to a garment, or to every reason why there is none."""
