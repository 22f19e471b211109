"""Files that a garment file names: drawings and pictures in its own folder, or below it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from seqplan.base.errors import UnreadableFileError
from seqplan.words.say import say

if TYPE_CHECKING:
    from pathlib import Path


class Beside:
    """The files beside a garment file.

    Parameters
    ----------
    folder
        The folder of the garment file; ``None`` for a text that is no file, which has none.
    """

    def __init__(self, folder: str | Path | None = None) -> None:
        self._folder = folder
        self._read: dict[tuple[str, int], bytes] = {}

    def read(self, name: str, limit: int) -> bytes:
        """The bytes of a file, and one more than ``limit`` of a file that is larger.

        Parameters
        ----------
        name
            The name of the file, from the folder of the garment file on, with ``/`` in between.
        limit
            How many bytes are wanted at most.

        Raises
        ------
        UnreadableFileError
            When there is no such file, or it lies elsewhere: a garment file from a stranger must
            not make the program open whatever it likes.
        """
        if (name, limit) not in self._read:
            self._read[name, limit] = self._bytes(name, limit)
        return self._read[name, limit]

    def _bytes(self, name: str, limit: int) -> bytes:
        from pathlib import Path

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
                return file.read(limit + 1)
        except PermissionError as error:
            raise UnreadableFileError(name, say("why-forbidden")) from error
        except (OSError, ValueError) as error:
            raise UnreadableFileError(name, say("why-missing")) from error
