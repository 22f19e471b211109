"""What an operation may name: everything that the rest of the file defines."""

from collections.abc import Mapping
from typing import NamedTuple

from seqplan.base.ids import PieceId
from seqplan.load import fields
from seqplan.load.choices import Choices
from seqplan.load.names import Names
from seqplan.load.nodes import Node
from seqplan.load.sink import Sink
from seqplan.model.entry import Verb
from seqplan.model.garment import Notion
from seqplan.model.piece import Piece


class Scope(NamedTuple):
    """What can be named, and where faults go.

    Parameters
    ----------
    sink
        Where faults go.
    units
        The unit of bare lengths.
    fabrics, pieces, notions, stations, entries
        All names that the file defines, those of faulty things among them.
    piece, notion
        The pieces and notions that could be read.
    uncut
        Pieces of which nobody knows how they are cut.
    verbs
        What each operation does, as far as it says so.
    all_pieces
        What ``all`` stands for.
    choices
        What the reader may choose.
    own_seams
        The author's own kinds of seam.
    """

    sink: Sink
    units: str
    fabrics: Names
    pieces: Names
    notions: Names
    stations: Names
    entries: Names
    piece: Mapping[str, Piece]
    uncut: frozenset[str]
    notion: Mapping[str, Notion]
    verbs: Mapping[str, Verb]
    all_pieces: tuple[PieceId, ...]
    choices: Choices
    own_seams: Names

    def known(self, node: Node | None, names: Names, slug: str) -> str | None:
        """Read a name that has to be one of ``names``."""
        return fields.known(node, names, slug, self.sink)
