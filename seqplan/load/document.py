"""A garment file as a whole: from a path or a text to a garment and everything said about it."""

from __future__ import annotations

import os
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from seqplan.base.diagnostic import Diagnostic
from seqplan.base.errors import UnreadableFileError
from seqplan.base.path import Span
from seqplan.load.beside import Beside
from seqplan.load.garment import read_garment
from seqplan.load.nodes import Node, Scalar, Spot
from seqplan.load.sink import Sink
from seqplan.load.text import SIZE_LIMIT, read_text
from seqplan.load.tree import read_tree
from seqplan.load.where import Where, place
from seqplan.model.garment import Garment
from seqplan.words.say import say

if TYPE_CHECKING:
    from pathlib import Path

__all__ = ["Loaded", "Where", "load_file", "load_text", "place"]


@dataclass(frozen=True, slots=True)
class Loaded:
    """What came of reading a file.

    Parameters
    ----------
    garment
        The garment, or ``None`` where the file has an error.
    diagnostics
        Everything found, sorted by place, each with its place.
    where
        The place of every path of the file, for findings that come later.
    text, name
        The text that was read, without a byte order mark, and what it is called.
    """

    garment: Garment | None
    diagnostics: tuple[Diagnostic, ...] = ()
    where: Where = field(default_factory=Where)
    text: str = ""
    name: str = "<text>"


def load_text(data: bytes | str, name: str = "<text>", folder: str | Path | None = None) -> Loaded:
    """Read a garment from text, or from bytes in UTF-8.

    Drawings and pictures that it names are looked for in ``folder``; without one there are none.

    Whatever the text holds, the faults in it are diagnostics and never exceptions.
    """
    sink = Sink()
    text, is_readable = read_text(data, sink)
    root = read_tree(text, sink) if is_readable else None
    where = Where(root)
    garment = _read(root, sink, Beside(folder)) if is_readable else None
    return Loaded(garment, place(sink.found, where), where, text, name)


def load_file(path: str | Path) -> Loaded:
    """Read a garment file.

    Raises
    ------
    UnreadableFileError
        When there is no such file, it is a folder, it may not be read, or it is too large.
    """
    folder = os.path.dirname(path) or "."  # noqa: PTH120
    return load_text(read_bytes(path), name=str(path), folder=folder)


def read_bytes(path: str | Path) -> bytes:
    """Read a file whole, as far as it is not too large.

    Raises
    ------
    UnreadableFileError
        When there is no such file, it is a folder, it may not be read, or it is too large.
    """
    try:
        # Not Path.open: pathlib and what it imports take longer than reading the file.
        with open(path, "rb") as file:  # noqa: PTH123
            data = file.read(SIZE_LIMIT + 1)
    except IsADirectoryError as error:
        raise UnreadableFileError(str(path), say("why-folder")) from error
    except FileNotFoundError as error:
        raise UnreadableFileError(str(path), say("why-missing")) from error
    except PermissionError as error:
        raise UnreadableFileError(str(path), say("why-forbidden")) from error
    except (OSError, ValueError) as error:
        why = getattr(error, "strerror", None) or str(error)
        raise UnreadableFileError(str(path), why[:1].lower() + why[1:]) from error
    if len(data) > SIZE_LIMIT:
        limit = SIZE_LIMIT // 1_000_000
        raise UnreadableFileError(str(path), say("why-too-large", limit=limit))
    return data


def _read(root: Node | None, sink: Sink, beside: Beside) -> Garment | None:
    """Read the tree; a text with nothing in it is a fault of its own."""
    if root is not None and not (isinstance(root, Scalar) and root.is_empty):
        return read_garment(root, sink, beside)
    if not sink.has_errors:
        sink.error("empty-file", Spot(Span(1, 1, 1, 1)))
    return None
