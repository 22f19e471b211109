"""Writing files whole or not at all."""

import os
import tempfile
from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path

from seqplan.base.errors import UnwritableOutputError


def write_file(path: Path, content: str | bytes) -> None:
    """Write one file: into a temporary file beside it, which then takes its place.

    Raises
    ------
    UnwritableOutputError
        When it cannot be written; what stood there before is untouched.
    """
    if path.is_dir():
        raise UnwritableOutputError(str(path), "it is a folder")
    try:
        handle, temporary = tempfile.mkstemp(dir=path.parent, prefix=f".{path.name}.")
    except OSError as error:
        raise UnwritableOutputError(str(path), _why(error)) from error
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(content.encode("utf-8") if isinstance(content, str) else content)
        mask = os.umask(0)
        os.umask(mask)
        Path(temporary).chmod(0o666 & ~mask)
        Path(temporary).replace(path)
    except OSError as error:
        with suppress(OSError):
            Path(temporary).unlink()
        raise UnwritableOutputError(str(path), _why(error)) from error


def write_folder(folder: Path, files: Mapping[str, str | bytes]) -> None:
    """Write several files into a folder, which is made if it is not there.

    Raises
    ------
    UnwritableOutputError
        When the folder cannot be made or a file cannot be written.
    """
    if folder.exists() and not folder.is_dir():
        raise UnwritableOutputError(str(folder), "it is a file, not a folder")
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise UnwritableOutputError(str(folder), _why(error)) from error
    for name, content in files.items():
        write_file(folder / name, content)


def _why(error: OSError) -> str:
    why = error.strerror or str(error)
    return why[:1].lower() + why[1:]
