"""What the trade teaches about order, rule by rule, with its published sources."""
