"""What the parser complains of, and how a line was meant; both as plain data."""

from typing import NamedTuple


class Complaint(NamedTuple):
    """A complaint of the parser; ``opened`` is where that began which it could not finish."""

    problem: str
    context: str
    line: int
    column: int
    opened: tuple[int, int] | None


class Repair(NamedTuple):
    """A line as it should be.

    Parameters
    ----------
    words
        What was wrong, as the name of its sentence.
    number, column
        The place of the slip, from 1.
    line
        The whole line, put right.
    text
        The part of it to show.
    shift
        How much longer it is than the line that was written.
    """

    words: str
    number: int
    column: int
    line: str
    text: str
    shift: int
