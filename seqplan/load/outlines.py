"""The shape of a piece: corners and curves, or a path of a drawing; and the lengths of edges."""

import re
from collections.abc import Iterable, Sequence
from typing import NamedTuple

from seqplan.base.errors import UnreadableFileError
from seqplan.base.measure import Length, parse_length
from seqplan.load import fields
from seqplan.load.beside import Beside
from seqplan.load.keys import Section, keys_of
from seqplan.load.names import clean
from seqplan.load.nodes import ListNode, MappingNode, Node, Pair, Scalar
from seqplan.load.sink import Sink, found_instead, listing, quoted
from seqplan.model.piece import Cut, Outline, Piece, Side
from seqplan.shape.drawing import SIZE_LIMIT, DrawingFaultError, read_drawing
from seqplan.shape.outline import OutlineFaultError, lay, runs_of, sides_between
from seqplan.shape.pathdata import MOST_CURVES
from seqplan.words.say import say

FARTHEST_MM = 10_000
"""Farther than any point of a piece lies from where its points are measured from."""

_FILE = re.compile(r"^\s*(?P<file>\S.*\.svg)\s*#\s*(?P<id>\S+)\s*$", re.IGNORECASE)


class _Corner(NamedTuple):
    point: complex
    at: Node


class _Curve(NamedTuple):
    points: tuple[complex, ...]
    at: Node


def read_lengths(
    node: Node | None, units: str, sink: Sink
) -> tuple[tuple[tuple[str, Length], ...], tuple[tuple[str, Pair], ...]]:
    """Read ``lengths:``; and the names of the edges with the places where they stand."""
    table = fields.mapping(node, sink, words="expected-lengths") if node is not None else None
    if table is not None and not table.pairs:
        sink.error("wrong-type", table, words="expected-lengths", found="`{}`")
    pairs = {clean(pair.key): pair for pair in reversed(table.pairs)} if table else {}
    named = tuple(reversed(pairs.items()))
    found = ((name, fields.length(pair.value, sink, units)) for name, pair in named)
    return tuple((name, length) for name, length in found if length is not None), named


def with_outline(piece: Piece, node: Node | None, units: str, beside: Beside, sink: Sink) -> Piece:
    """The piece with its shape, where it can be read and fits the edges."""
    if node is None or fields.is_empty(node, sink):
        return piece
    if not piece.edges:
        sink.error("shape-without-edges", node, piece=quoted(piece.id))
        return piece
    if isinstance(node, ListNode):
        sides = _listed(node, piece.cut, units, sink)
    else:
        sides = _drawn(node, piece, beside, sink)
    if sides is None:
        return piece
    shaped = piece._replace(shape=Outline(sides))
    try:
        lay(shaped)
    except OutlineFaultError as fault:
        _report(fault, shaped, node, sink)
        return piece
    return shaped


def _report(fault: OutlineFaultError, piece: Piece, node: Node, sink: Sink) -> None:
    """Say why a shape does not fit the edges."""
    count, corners = len(piece.shape.sides) if piece.shape else 0, len(runs_of(piece.edges))
    edges = sum(not edge.is_slit for edge in piece.edges)
    is_fold = piece.cut is Cut.FOLD
    words = f"shape-{fault.kind}"
    if fault.kind == "corners":
        words = "shape-corners-fold" if is_fold else words
        wanted = sorted({corners + is_fold, edges + is_fold})
        names = {"found": count + is_fold, "wanted": " or ".join(map(str, wanted))}
        sink.error(f"shape-{fault.kind}", node, words=words, piece=quoted(piece.id), **names)
        return
    sink.error(words, node, piece=quoted(piece.id), edge=quoted(fault.edge))


# -- a list of corners and curves --------------------------------------------------------------


def _listed(node: ListNode, cut: Cut, units: str, sink: Sink) -> tuple[Side, ...] | None:
    """The sides that a list of corners and curves describes."""
    if sum(map(_size, node.items)) > MOST_CURVES:
        sink.error("shape-too-long", node, limit=MOST_CURVES)
        return None
    read: list[tuple[_Corner | _Curve, Node]] = fields.listed(
        node, lambda item: _item(item, units, sink), sink
    )
    if len(read) < len(node.items) or not read:
        return None
    found = [item for item, _ in read]
    return None if _is_out_of_place(found, cut, sink) else _sides(found, cut)


def _size(item: Node) -> int:
    """How many points an item has, about."""
    pairs = item.pairs if isinstance(item, MappingNode) else ()
    curves = [pair.value for pair in pairs if isinstance(pair.value, ListNode)]
    return 1 + sum(len(curve.items) for curve in curves)


def _is_out_of_place(found: Sequence[_Corner | _Curve], cut: Cut, sink: Sink) -> bool:
    """Whether a curve does not lie between two corners, or two corners are one."""
    count = sink.count
    for place, item in enumerate(found):
        before = found[place - 1] if place else None
        if isinstance(item, _Curve):
            is_last = place + 1 == len(found)
            if not isinstance(before, _Corner) or (is_last and cut is Cut.FOLD):
                sink.error("curve-nowhere", item.at)
        elif isinstance(before, _Corner) and before.point == item.point:
            sink.error("corner-twice", item.at, found=found_instead(item.at))
    return sink.count > count


def _sides(found: Sequence[_Corner | _Curve], cut: Cut) -> tuple[Side, ...]:
    """Sides from corner to corner, and back to the first one unless it is at a fold."""
    first = found[0].point if isinstance(found[0], _Corner) else 0j
    last = found[-1]
    comes_back = isinstance(last, _Corner) and len(found) > 1 and last.point == first
    rest: Iterable[_Corner | _Curve] = found[1:]
    if cut is not Cut.FOLD and not comes_back:
        rest = (*rest, _Corner(first, last.at))
    sides: list[Side] = []
    here = first
    handles: tuple[complex, ...] = ()
    for item in rest:
        if isinstance(item, _Curve):
            handles = item.points
        else:
            sides.append((here, *handles, item.point))
            here, handles = item.point, ()
    return tuple(sides)


def _item(node: Node, units: str, sink: Sink) -> _Corner | _Curve | None:
    if isinstance(node, MappingNode):
        return _curve(node, units, sink)
    point = _point(node, units, sink)
    return None if point is None else _Corner(point, node)


def _curve(node: MappingNode, units: str, sink: Sink) -> _Curve | None:
    keys = keys_of(Section.SHAPE)
    table = fields.mapping_of(node, keys, sink, words="expected-corner")
    found = fields.read_fields(table, keys, sink).get("curve") if table is not None else None
    if found is None:
        return None
    is_many = isinstance(found, ListNode) and isinstance((*found.items, None)[0], ListNode)
    nodes = found.items if isinstance(found, ListNode) and is_many else (found,)
    points = [_point(item, units, sink) for item in nodes]
    if len(points) != 1 and len(points) % 3 != 2:
        sink.error("curve-points", found, found=len(points))
        return None
    good = tuple(point for point in points if point is not None)
    return _Curve(good, node) if len(good) == len(points) else None


def _point(node: Node, units: str, sink: Sink) -> complex | None:
    """Two lengths: how far to the right, and how far down; either may have a minus before it."""
    if not isinstance(node, ListNode) or len(node.items) != 2:
        sink.error("wrong-type", node, words="expected-corner", found=found_instead(node))
        return None
    numbers = [_coordinate(item, units, sink) for item in node.items]
    right, down = numbers
    return None if right is None or down is None else complex(right, down)


def _coordinate(node: Node, units: str, sink: Sink) -> float | None:
    written = node.text.strip() if isinstance(node, Scalar) else ""
    is_minus = written.startswith("-")
    measure = parse_length(written.removeprefix("-"), default_unit=units)
    if measure is None:
        sink.error("unreadable-coordinate", node, found=found_instead(node))
        return None
    if measure.mm > FARTHEST_MM:
        sink.error("far-corner", node, found=found_instead(node), limit=FARTHEST_MM // 1000)
        return None
    return round(float(-measure.mm if is_minus else measure.mm), 3) + 0.0


# -- a path of a drawing -----------------------------------------------------------------------


def _drawn(node: Node, piece: Piece, beside: Beside, sink: Sink) -> tuple[Side, ...] | None:
    """The sides of a path in a drawing."""
    match = _FILE.match(node.text) if isinstance(node, Scalar) else None
    if match is None:
        sink.error("wrong-type", node, words="expected-shape", found=found_instead(node))
        return None
    file = match["file"]
    try:
        path, is_closed = read_drawing(beside.read(file, SIZE_LIMIT), match["id"])
    except UnreadableFileError as error:
        sink.error("shape-unreadable", node, file=quoted(file), why=error.why)
        return None
    except DrawingFaultError as fault:
        _report_drawing(fault, file, match["id"], node, sink)
        return None
    is_fold = piece.cut is Cut.FOLD
    rounded = [tuple(_rounded(point) for point in curve) for curve in path]
    if any(max(abs(p.real), abs(p.imag)) > FARTHEST_MM for curve in rounded for p in curve):
        sink.error("far-corner", node, found=quoted(match["id"]), limit=FARTHEST_MM // 1000)
        return None
    if rounded and is_closed and is_fold:
        # The line that closes the half is the fold, which is no edge.
        rounded.pop()
    if not is_closed and not is_fold and rounded and rounded[-1][-1] != rounded[0][0]:
        sink.error("shape-open", node, id=quoted(match["id"]), piece=quoted(piece.id))
        return None
    edges = sum(not edge.is_slit for edge in piece.edges)
    counts = (edges, len(runs_of(piece.edges)))
    # Where the count fits nothing, the curves themselves go into the report.
    return sides_between(tuple(rounded), counts) or tuple(rounded)


def _rounded(point: complex) -> complex:
    return complex(round(point.real, 3) + 0.0, round(point.imag, 3) + 0.0)


def _report_drawing(fault: DrawingFaultError, file: str, id_: str, node: Node, sink: Sink) -> None:
    """Say what is wrong with a drawing, and where in it."""
    at = quoted(f"{file}:{fault.line}:{fault.column}" if fault.line else file)
    fix = None
    if fault.kind == "missing":
        fix = sink.suggest(id_, fault.known, "fix-shape-no-paths")
    elif fault.kind.startswith("data-"):
        fix = say("fix-shape-data")
    sink.error(
        "shape-drawing",
        node,
        words=f"shape-{fault.kind}",
        file=at,
        id=quoted(id_),
        found=quoted(fault.found),
        known=listing(fault.known),
        fix=fix,
    )
