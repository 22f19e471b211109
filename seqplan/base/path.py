"""Where something stands: a path inside the document, and a place in the text."""

from typing import NamedTuple, TypeAlias

DocPath: TypeAlias = tuple[str | int, ...]
"""A route through the document, such as ``("operations", "hem", "depth")``.

The model knows only paths. A path becomes a line when something is printed, so that a garment
built in Python and one read from a file carry the same reasons.
"""


class Span(NamedTuple):
    """A place in a text file; lines and columns count from 1, the end column is exclusive."""

    line: int
    column: int
    end_line: int
    end_column: int


def format_path(path: DocPath) -> str:
    """Write a path as people read it.

    >>> format_path(("operations", "hem", "depth"))
    'operations.hem.depth'
    >>> format_path(("pieces", "front", "edges", 2))
    'pieces.front.edges[2]'
    """
    text = ""
    for part in path:
        if isinstance(part, int):
            text += f"[{part}]"
        else:
            text += f".{part}" if text else part
    return text
