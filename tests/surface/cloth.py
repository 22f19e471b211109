"""Pieces and seams from short texts, and random ones."""

import re

from hypothesis import strategies as st

from seqplan.base.ids import EntryId, PieceId
from seqplan.model.piece import Cut, Edge, Piece
from seqplan.surface.glued import Glue, Surface
from seqplan.surface.pairing import pair_two_sides, pair_with_itself
from seqplan.surface.ring import EdgeEnd, Rings

_CUTS = {"fold": (Cut.FOLD, 1), "pair": (Cut.PAIR, 2)}


def piece(text, **more):
    """Build a piece from ``front fold: waist side hem centre|opening``; 1 copy without a cut."""
    head, _, ring = text.partition(":")
    name, *how = head.split()
    cut, copies = (
        _CUTS.get(how[0], (Cut.ALIKE, int(how[0]) if how[0].isdecimal() else 1))
        if how
        else (Cut.ALIKE, 1)
    )
    edges = tuple(
        Edge(edge, at_mark=place > 0)
        for run in ring.split()
        for place, edge in enumerate(run.split("|"))
    )
    return Piece(id=PieceId(name), edges=edges, cut=cut, copies=copies, **more)


def rings(text):
    """Build the rings of one piece a line."""
    return Rings(piece(line) for line in text.strip().splitlines())


def points(surface):
    """The points of a surface, each as the edge ends that meet there."""
    found = {}
    for segment in surface.rings.segments:
        for end in (EdgeEnd(segment, False), EdgeEnd(segment, True)):
            found.setdefault(surface.point(end), set()).add(end)
    return {frozenset(ends) for ends in found.values()}


def edge(cloth, text):
    """Find ``back.side``, or with ``#1`` the one of the next copy or half."""
    name, place = re.fullmatch(r"([^#]+)(?:#(\d+))?", text).groups()
    return edges(cloth, name)[int(place or 0)]


def edges(cloth, text):
    """Find every copy of ``back.side``."""
    name, _, called = text.partition(".")
    return cloth.pieces[PieceId(name)].segments(called)


def glue(cloth, text):
    """Read ``a.right = b.left``, end to start; ``a.right x b.left``, start to start."""
    one, mark, other = text.split()
    return Glue(edge(cloth, one), edge(cloth, other), mark == "x", EntryId(text))


def glued(pieces, *glues):
    """Build a surface from pieces and hand-picked glues."""
    cloth = rings(pieces)
    return Surface(cloth, [glue(cloth, text) for text in glues])


def seams(cloth, *texts):
    """Sew all copies as a sewist means it: ``front.side + back.side``, or ``back.centre``."""
    found = []
    for text in texts:
        one, _, other = text.partition(" + ")
        pairs = (
            pair_two_sides(cloth, edges(cloth, one), edges(cloth, other))
            if other
            else pair_with_itself(cloth, edges(cloth, one))
        )
        found += [Glue(p.first, p.second, p.aligned, EntryId(text)) for p in pairs]
    return found


def sewn(pieces, *texts):
    """Build a surface from pieces and seams."""
    cloth = rings(pieces)
    return Surface(cloth, seams(cloth, *texts))


def the_part(surface):
    (part,) = surface.parts
    return part


def names(surface, segments):
    return [f"{s.piece}.{surface.rings.name(s)}" for s in segments]


def loops(surface):
    """Loops as sorted lists of sorted edge names, for comparing with what is counted by hand."""
    return sorted(sorted(names(surface, loop)) for part in surface.parts for loop in part.loops)


@st.composite
def polygons(draw, least=1, most=4):
    """Draw pieces of all cuts with one to five edges."""
    letters = "abcd"[: draw(st.integers(least, most))]
    return Rings(
        Piece(
            id=PieceId(letter),
            edges=tuple(Edge(str(place)) for place in range(draw(st.integers(1, 5)))),
            cut=draw(st.sampled_from(Cut)),
            copies=draw(st.integers(1, 2)),
        )
        for letter in letters
    )


@st.composite
def glued_polygons(draw, least_free=0, **options):
    """Draw pieces with some of their edges glued in pairs, twisted or not."""
    cloth = draw(polygons(**options))
    mixed = draw(st.permutations(cloth.segments))
    count = draw(st.integers(0, max(0, len(mixed) - least_free) // 2))
    return Surface(
        cloth,
        [
            Glue(mixed[2 * place], mixed[2 * place + 1], draw(st.booleans()), EntryId(f"s{place}"))
            for place in range(count)
        ],
    )
