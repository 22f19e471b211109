"""The notches of a piece: edges, each with what stands along it."""

import re
from collections.abc import Iterable
from functools import partial
from math import inf
from typing import Final

from seqplan.base.measure import parse_length
from seqplan.load import fields
from seqplan.load.names import clean
from seqplan.load.nodes import Node, Pair
from seqplan.load.sink import Sink, quoted
from seqplan.model.piece import MARKS, Cut, Notch, Piece
from seqplan.shape.notches import beside, length_of

_NOTCH: Final = re.compile(
    rf"^(?:(?P<marks>{'|'.join(MARKS)})(?:\s+|$))?"
    r"(?:(?P<middle>middle)|(?P<length>\S.*?)\s+from\s+(?P<neighbour>\S+))?$"
)


Written = tuple[Notch, Node]
"""A notch with the place where it is written."""


def read_notches(
    node: Node | None, units: str, sink: Sink
) -> tuple[tuple[Written, ...], tuple[tuple[str, Pair], ...]]:
    """Read ``notches:``; and the names of the edges with the places where they stand."""
    table = fields.mapping(node, sink, words="expected-notches") if node is not None else None
    if table is not None and not table.pairs:
        sink.error("wrong-type", table, words="expected-notches", found="`{}`")
    found: list[Written] = []
    pairs = table.pairs if table is not None else ()
    for pair in pairs:
        read = partial(_notch, clean(pair.key), units=units, sink=sink)
        for notch, at in fields.listed(pair.value, read, sink):
            if notch.length is not None and any(notch == other for other, _ in found):
                sink.warning("listed-twice", at, name=quoted(fields.text(at, sink) or ""))
            else:
                found.append((notch, at))
    return tuple(found), tuple((clean(pair.key), pair) for pair in pairs)


def _notch(edge: str, node: Node, *, units: str, sink: Sink) -> Notch | None:
    written = fields.text(node, sink)
    if written is None:
        return None
    match = _NOTCH.match(written)
    length = (
        parse_length(match["length"], default_unit=units) if match and match["length"] else None
    )
    is_far = length is not None and length.mm > fields.LONGEST_MM
    if match is None or is_far or (length is None and match["length"]):
        sink.error("unreadable-notch", node, words="expected-notch", found=quoted(written))
        return None
    return Notch(
        edge,
        MARKS.get(match["marks"] or "", 1),
        length,
        clean(match["neighbour"]) if length is not None else None,
        is_middle=match["middle"] is not None,
    )


def check_notches(piece: Piece, written: Iterable[Written], sink: Sink) -> None:
    """Report notches that are measured from where their edge does not end, or lie beyond it."""
    for notch, at in written:
        for place, edge in enumerate(piece.edges):
            if edge.name == notch.edge and not _is_sound(piece, place, notch, at, sink):
                break


def _is_sound(piece: Piece, place: int, notch: Notch, at: Node, sink: Sink) -> bool:
    if notch.length is None:
        return True
    names = {"edge": quoted(f"{piece.id}.{notch.edge}"), "neighbour": quoted(notch.neighbour or "")}
    ends = beside(piece, place)
    if notch.neighbour not in ends:
        fix = sink.suggest(notch.neighbour or "", sorted({end for end in ends if end}), "")
        sink.error("not-next-to", at, **names, fix=fix)
    elif ends[0] == ends[1]:
        sink.error("notch-either-end", at, **names)
    else:
        whole = length_of(piece, place)
        if whole is None or float(notch.length.mm) < whole:
            return True
        sink.error("notch-beyond", at, **names)
    return False


def taken_over(piece: Piece, other: Piece) -> tuple[Notch, ...]:
    """The notches of a piece that is like another: those of edges for which it has none itself.

    What the other one measures from its fold, or has in the middle of half an edge, tells nothing
    about a piece that is not cut on the fold.
    """
    is_same = (piece.cut is Cut.FOLD) == (other.cut is Cut.FOLD)
    edges = {notch.edge for notch in piece.notches}
    rest = (notch for notch in other.notches if notch.edge not in edges)
    fitting = (n for n in rest if (is_same or not n.is_middle) and _fits(piece, n))
    return (*piece.notches, *fitting)


def _fits(piece: Piece, notch: Notch) -> bool:
    """Whether the notch can stand on the edges of a piece."""
    places = [place for place, edge in enumerate(piece.edges) if edge.name == notch.edge]
    if notch.length is None:
        return True
    far = float(notch.length.mm)
    return all(
        beside(piece, place).count(notch.neighbour) == 1 and far < (length_of(piece, place) or inf)
        for place in places
    )
