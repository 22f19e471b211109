"""The texts of a file that its author wrote for the reader."""

from collections.abc import Iterator
from typing import NamedTuple

from seqplan.base.path import DocPath
from seqplan.model.garment import Garment


class Text(NamedTuple):
    """A text in the author's own words.

    Parameters
    ----------
    words
        What it says.
    path
        Where the document says so; the last part is the key, such as ``note``.
    place
        The place of its entry in the file, counted from 0; ``None`` for what no entry says.
    """

    words: str
    path: DocPath
    place: int | None = None

    @property
    def is_instruction(self) -> bool:
        """Whether it says what to do, and not something beside it."""
        return self.path[-1] in {"do", "say"}


def texts_of(garment: Garment) -> tuple[Text, ...]:
    """Give every text that may be read closely, in the order of the sections.

    What the garment is about is a description: only measures can be wrong in it.
    """
    about = garment.about or ""
    return (
        *([Text(about, ("about",))] if any(map(str.isdigit, about)) else []),
        *_notes(garment),
        *_told(garment),
    )


def _notes(garment: Garment) -> Iterator[Text]:
    noted = (
        *((fabric.note, fabric.path) for fabric in garment.fabrics),
        *((piece.note, piece.path) for piece in garment.pieces),
        *((notion.note, notion.path) for notion in garment.notions),
    )
    return (Text(note, (*path, "note")) for note, path in noted if note)


def _told(garment: Garment) -> Iterator[Text]:
    for place, entry in enumerate(garment.entries):
        texts = {"do": entry.words, "title": entry.title, "say": entry.say, "note": entry.note}
        for key, words in texts.items():
            if words:
                yield Text(words, (*entry.path, key), place)
