"""The rule book: each rule in a module of its own, all of them in one table."""
