"""Drawings that a garment file names: SVG files in its own folder, or below it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from seqplan.base.errors import UnreadableFileError
from seqplan.words.say import say

if TYPE_CHECKING:
    from pathlib import Path


class Drawings:
    """The drawings beside a garment file.

    Parameters
    ----------
    folder
        The folder of the garment file; ``None`` for a text that is no file, which has none.
    """

    def __init__(self, folder: str | Path | None = None) -> None:
        self._folder = folder
        self._read: dict[str, bytes] = {}

    def read(self, name: str) -> bytes:
        """The bytes of a drawing.

        Parameters
        ----------
        name
            The name of the file, from the folder of the garment file on, with ``/`` in between.

        Raises
        ------
        UnreadableFileError
            When there is no such file, it is too large, or it lies elsewhere: a garment file from
            a stranger must not make the program open whatever it likes.
        """
        if name not in self._read:
            self._read[name] = self._bytes(name)
        return self._read[name]

    def _bytes(self, name: str) -> bytes:
        from pathlib import Path

        from seqplan.shape.drawing import SIZE_LIMIT

        if self._folder is None:
            raise UnreadableFileError(name, say("why-no-folder"))
        folder = Path(self._folder)
        try:
            path = (folder / name).resolve()
            if "\\" in name or not path.is_relative_to(folder.resolve()):
                raise UnreadableFileError(name, say("why-elsewhere"))
            if not path.is_file():
                raise UnreadableFileError(name, say("why-missing"))
            with path.open("rb") as file:
                return file.read(SIZE_LIMIT + 1)
        except PermissionError as error:
            raise UnreadableFileError(name, say("why-forbidden")) from error
        except (OSError, ValueError) as error:
            raise UnreadableFileError(name, say("why-missing")) from error
