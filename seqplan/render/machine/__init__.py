"""Everything as JSON for programs: plain data with stable keys."""
