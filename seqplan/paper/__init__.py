"""Put what is told and drawn on paper: which blocks stand on a handout, before any file format."""
