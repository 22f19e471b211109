"""What goes wrong with the machine or the caller, as opposed to with the garment."""


class SeqplanError(Exception):
    """The base of all errors that the program raises on purpose.

    ``is_finding`` tells what is wrong with the garment from what is wrong with files and tools.
    """

    is_finding = False


class _NamedError(SeqplanError):
    """An error about one named thing; ``why`` is a short clause."""

    form = "{name}: {why}"

    def __init__(self, name: str, why: str) -> None:
        super().__init__(name, why)
        self.name = name
        self.why = why

    def __str__(self) -> str:
        return self.form.format(name=self.name, why=self.why)


class UnreadableFileError(_NamedError):
    """A file cannot be read: ``name`` is its path as given."""

    form = "cannot read {name}: {why}"


class UnwritableOutputError(_NamedError):
    """An output cannot be written: ``name`` is its path as given."""

    form = "cannot write {name}: {why}"


class MissingToolError(_NamedError):
    """A program that was asked for is not there, or it failed: ``name`` is what it is called."""
