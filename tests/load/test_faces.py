"""What a piece bears besides its edges: darts, pleats, spots, lines and slits."""

import pytest
from load.files import file_with

from seqplan.load.document import load_text
from seqplan.model.piece import Edge, Fullness, Hand, Piece, Spot

_SIDE = Edge("vent", is_slit=True)


def _piece(line: str) -> Piece:
    loaded = load_text(file_with(piece=line))
    assert loaded.diagnostics == ()
    assert loaded.garment is not None
    return loaded.garment.pieces[-1]


def test_darts_and_pleats_are_edges_alone_or_with_a_number() -> None:
    piece = _piece("flap: {edges: [a, b], darts: a, pleats: [b, {on: a, number: 3}]}")
    assert piece.darts == (Fullness("a"),)
    assert piece.pleats == (Fullness("b"), Fullness("a", 3))


def test_spots_may_be_on_one_side_and_lines_are_names() -> None:
    piece = _piece("flap: {cut: fold, worn: back, spots: [tab, dot@left], lines: [roll, crease]}")
    assert piece.spots == (Spot("tab"), Spot("dot", Hand.LEFT))
    assert piece.lines == ("roll", "crease")


@pytest.mark.parametrize(
    ("edges", "at", "cut", "names"),
    [
        ("[a | b, c]", "a | b", "1", ["a", "vent", "vent", "b", "c"]),
        ("[a, b, c]", "b | c", "pair", ["a", "b", "vent", "vent", "c"]),
        ("[a, b, c]", "c | a", "2", ["a", "b", "c", "vent", "vent"]),
        ("[a, b]", "fold | a", "fold", ["vent", "a", "b"]),
        ("[a, b]", "b | fold", "fold", ["a", "b", "vent"]),
    ],
)
def test_a_slit_adds_its_two_edges_or_one_on_the_fold(
    edges: str, at: str, cut: str, names: list[str]
) -> None:
    piece = _piece(f"flap: {{cut: {cut}, edges: {edges}, slits: {{vent: {{at: {at}}}}}}}")
    assert [edge.name for edge in piece.edges] == names
    assert [edge for edge in piece.edges if edge.is_slit] == [_SIDE] * names.count("vent")
    assert not any(edge.at_mark for edge in piece.edges)


def test_a_piece_like_another_has_its_slits() -> None:
    piece = _piece("flap: {like: sleeve, layer: lining}")
    assert [slit.name for slit in piece.slits] == ["vent"]
    assert _SIDE in piece.edges


def test_an_edge_that_no_edge_comes_close_to_is_listed_by_name() -> None:
    line = "flap: {edges: [a, b], slits: {v: {at: top | b}}}"
    (fault,) = load_text(file_with(piece=line)).diagnostics
    assert fault.message == "`flap` has no edge `top`"
    assert fault.fix == "Known here: `a`, `b`."
