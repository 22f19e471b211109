"""What an operation cannot do without: it uses what another one makes."""
