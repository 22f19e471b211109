"""Splitting an edge at a mark changes nothing about the garment but the number of its edges."""

from hypothesis import given
from hypothesis import strategies as st
from surface.cloth import glued_polygons, piece

from seqplan.base.ids import EntryId
from seqplan.surface.glued import Glue, Surface
from seqplan.surface.portion import SplitPiece
from seqplan.surface.ring import Rings


def split_all(surface, count):
    """Every edge in so many parts, and every seam with it."""
    split = {
        id_: SplitPiece(piece, {}, dict.fromkeys(piece.edge_names, count))
        for id_, piece in surface.rings.pieces.items()
    }
    cloth = Rings(held.piece for held in split.values())

    def parts(segment):
        first = segment.place * count
        return [segment._replace(place=first + number) for number in range(count)]

    glues = []
    for glue in surface.glues:
        one, other = parts(glue.first), parts(glue.second)
        other = other if glue.aligned else other[::-1]
        glues += [
            Glue(a, b, glue.aligned, EntryId(f"{glue.entry}"))
            for a, b in zip(one, other, strict=True)
        ]
    return Surface(cloth, glues)


def shapes(surface):
    return [(p.discs, len(p.loops), p.genus, p.is_two_sided) for p in surface.parts]


@given(glued_polygons(), st.integers(1, 3))
def test_splitting_edges_changes_no_part_no_loop_and_no_genus(surface, count):
    assert shapes(split_all(surface, count)) == shapes(surface)


@given(glued_polygons(), st.integers(2, 3))
def test_every_loop_has_so_many_times_its_edges(surface, count):
    before = sorted(len(loop) for part in surface.parts for loop in part.loops)
    after = sorted(len(loop) for part in split_all(surface, count).parts for loop in part.loops)
    assert after == [count * length for length in before]


def test_the_parts_of_an_edge_meet_at_marks_and_keep_its_name():
    split = SplitPiece(piece("sheet: top right foot left"), {}, {"top": 3})
    assert [(e.name, e.at_mark) for e in split.piece.edges] == [
        ("top", False),
        ("top", True),
        ("top", True),
        ("right", False),
        ("foot", False),
        ("left", False),
    ]
    assert split.indices("top") == {0, 1, 2}
    assert split.indices("right") == {3}
