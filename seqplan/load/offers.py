"""Offers for edges that cannot be found: with their piece, so that they can be taken as they stand.

Everything here is asked only after a fault, and so takes its time.
"""

import re

from seqplan.load.nodes import ListNode, MappingNode, Node, Scalar
from seqplan.load.scope import Scope
from seqplan.load.sink import listing, quoted
from seqplan.model.piece import Piece
from seqplan.words.say import say

_REFERENCE = r"[^\s.,;&+]+\.[^\s.,;&+]+"
_MOST_OFFERED = 4


def edge_meant(written: str, node: Node, scope: Scope) -> str | None:
    """A repair for what is no `piece.edge`: a list, a side after a dot, or one half of it."""
    refs = re.findall(_REFERENCE, written)
    if len(refs) > 1:
        return _several(refs, written, node)
    parts = written.split(".")
    if len(parts) == 3 and parts[2].casefold() in {"left", "right"}:
        return say("fix-write", text=quoted(f"{parts[0]}.{parts[1]}@{parts[2].casefold()}"))
    name, at, side = written.partition("@")
    piece = scope.piece.get(name)
    if piece is not None and piece.edges:
        return say(
            "fix-name-an-edge", offers=listing(f"{name}.{e}{at}{side}" for e in piece.edge_names)
        )
    found = _with_other_dot(name, scope) or _owners(name, scope)
    return _offer([f"{ref}{at}{side}" for ref in found])


def edge_of(piece: Piece, edge: str, scope: Scope) -> str | None:
    """A repair for an edge that a piece does not have: one of its own, or of another piece."""
    close = [f"{piece.id}.{name}" for name in scope.sink.close(edge, piece.edge_names)]
    if close:
        return _offer(close)
    owners = _owners(edge, scope, is_exact=True)
    if owners and piece.edges:
        return say("fix-edge-elsewhere", edges=listing(piece.edge_names), offers=listing(owners))
    return scope.sink.suggest(edge, piece.edge_names, "fix-no-edges")


def both_meant(first: str, second: str, scope: Scope) -> str | None:
    """A repair for `edge.piece`, and for a reference with a slip in either half."""
    piece = scope.piece.get(second)
    if piece is not None and first in piece.edge_names:
        return say("fix-piece-first", text=quoted(f"{second}.{first}"))
    close = scope.sink.close(first, scope.piece)
    if len(close) != 1 or second in scope.piece[close[0]].edge_names:
        return None
    edges = scope.sink.close(second, scope.piece[close[0]].edge_names)
    return _offer([f"{close[0]}.{edge}" for edge in edges])


def edges_in(node: ListNode | MappingNode) -> str | None:
    """A repair for a list or a mapping where one edge is wanted."""
    if isinstance(node, MappingNode):
        texts = [pair.key for pair in node.pairs if _is_bare(pair.value)]
        refs = texts if len(texts) == len(node.pairs) else []
        if len(node.pairs) == 1 and isinstance(node.pairs[0].value, Scalar) and not refs:
            refs = [f"{node.pairs[0].key}.{node.pairs[0].value.text}"]
            return say("fix-write", text=quoted(refs[0]))
    else:
        refs = [item.text for item in node.items if isinstance(item, Scalar)]
    return say("fix-write", text=quoted(f"[{', '.join(refs)}]")) if refs else None


def _is_bare(node: Node) -> bool:
    return isinstance(node, Scalar) and node.is_empty


def _several(refs: list[str], written: str, node: Node) -> str:
    """Several edges in a row, as a list or as the two sides of a seam."""
    is_item = bool(node.path) and isinstance(node.path[-1], int)
    if len(refs) == 2 and " to " in written and not is_item:
        key = f"{node.path[-1]}: " if node.path else ""
        return say("fix-write", text=quoted(f"{key}{refs[0]}, to: {refs[1]}"))
    row = ", ".join(refs)
    return say("fix-write", text=quoted(row if is_item else f"[{row}]"))


def _with_other_dot(name: str, scope: Scope) -> list[str]:
    """`front-side`, `front side` or `front:side` for `front.side`."""
    return [
        f"{piece.id}.{edge}"
        for piece in scope.piece.values()
        for edge in piece.edge_names
        if re.fullmatch(rf"{re.escape(piece.id)}[\s:/_-]+{re.escape(edge)}", name)
    ]


def _owners(edge: str, scope: Scope, *, is_exact: bool = False) -> list[str]:
    """The edges of this name, or of the name that comes closest, with their pieces."""
    every = dict.fromkeys(name for piece in scope.piece.values() for name in piece.edge_names)
    close = [edge] if edge in every else [] if is_exact else scope.sink.close(edge, every)
    return [
        f"{piece.id}.{name}"
        for piece in scope.piece.values()
        for name in piece.edge_names
        if name in close
    ]


def _offer(refs: list[str]) -> str | None:
    if not refs:
        return None
    if len(refs) == 1:
        return say("fix-did-you-mean", name=quoted(refs[0]))
    if len(refs) == 2:
        return say("fix-did-you-mean-either", one=quoted(refs[0]), two=quoted(refs[1]))
    return say("fix-name-one", offers=listing(refs[:_MOST_OFFERED]))
