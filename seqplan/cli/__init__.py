"""The command line: commands parse, call the pipeline, print, and exit."""
