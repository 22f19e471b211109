"""From reasons to orders that people can follow: which reasons bind, units, visits, steps."""
