"""Exit codes, the same for every command."""

from enum import IntEnum


class Status(IntEnum):
    """What a command ends with."""

    FINE = 0
    """Done, and nothing is wrong."""
    FINDINGS = 1
    """The garment has errors, or no order exists."""
    USAGE = 2
    """The command line is wrong."""
    UNREADABLE = 3
    """A file cannot be read or written, or a program that is needed is missing."""


EXIT_CODES = """\b
Exit codes:
  0  fine
  1  the garment has errors, or no order exists
  2  the command line is wrong
  3  a file cannot be read or written, or a needed program is missing
"""
