"""What goes wrong with the machine or the caller, as opposed to with the garment."""

from dataclasses import dataclass


class SeqplanError(Exception):
    """The base of all errors that the program raises on purpose."""


@dataclass
class UnreadableFileError(SeqplanError):
    """A file cannot be read: ``path`` as given, ``why`` a short clause."""

    path: str
    why: str

    def __str__(self) -> str:
        return f"cannot read {self.path}: {self.why}"


@dataclass
class UnwritableOutputError(SeqplanError):
    """An output cannot be written: ``path`` as given, ``why`` a short clause."""

    path: str
    why: str

    def __str__(self) -> str:
        return f"cannot write {self.path}: {self.why}"


@dataclass
class MissingToolError(SeqplanError):
    """A program that was asked for is not there, or it failed: ``tool`` and ``why``."""

    tool: str
    why: str

    def __str__(self) -> str:
        return f"{self.tool}: {self.why}"
