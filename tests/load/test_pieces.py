from load.files import file_with

from seqplan.load.document import load_text
from seqplan.model.piece import Cut, Edge, Layer, Piece, Worn


def _piece(line: str) -> Piece:
    loaded = load_text(file_with(piece=line))
    assert loaded.diagnostics == ()
    assert loaded.garment is not None
    return loaded.garment.pieces[-1]


def test_a_piece_is_cut_once_unless_it_says_otherwise() -> None:
    assert (_piece("flap: {note: x}").cut, _piece("flap: {note: x}").copies) == (Cut.ALIKE, 1)
    assert (_piece("flap: {cut: 4}").cut, _piece("flap: {cut: 4}").copies) == (Cut.ALIKE, 4)
    assert (_piece("flap: {cut: pair}").cut, _piece("flap: {cut: pair}").copies) == (Cut.PAIR, 2)
    assert (_piece("flap: {cut: Fold}").cut, _piece("flap: {cut: fold}").copies) == (Cut.FOLD, 1)


def test_bars_make_edges_that_meet_at_marks() -> None:
    piece = _piece("flap: {edges: [top, low | mid | high]}")
    assert piece.edges == (Edge("top"), Edge("low"), Edge("mid", True), Edge("high", True))


def test_a_single_edge_counts_as_a_list() -> None:
    assert _piece("flap: {edges: rim}").edges == (Edge("rim"),)


def test_everything_else_is_read() -> None:
    piece = _piece("flap: {of: canvas, edges: [a, b], worn: back, selvage: b, layer: facing}")
    assert (piece.fabric, piece.worn, piece.selvage) == ("canvas", Worn.BACK, ("b",))
    assert (piece.layer, piece.path) == (Layer.FACING, ("pieces", "flap"))


def test_a_piece_like_another_has_its_edges_and_its_cut() -> None:
    piece = _piece("flap: {like: back, layer: facing}")
    assert [edge.name for edge in piece.edges] == ["waist", "side", "hem", "centre", "opening"]
    assert (piece.cut, piece.copies, piece.layer, piece.like) == (
        Cut.PAIR,
        2,
        Layer.FACING,
        "back",
    )
    assert (piece.fabric, piece.worn) == (None, None)


def test_a_piece_like_another_may_be_cut_its_own_way() -> None:
    piece = _piece("flap: {like: back, cut: 1}")
    assert (piece.cut, piece.copies, len(piece.edges)) == (Cut.ALIKE, 1, 5)


def test_likeness_is_followed_through_others_in_any_order() -> None:
    loaded = load_text(
        file_with(piece="a: {like: b}\n  b: {like: c, cut: 3}\n  c: {edges: [rim], cut: pair}")
    )
    assert loaded.garment is not None
    made = loaded.garment.pieces[-3:]
    assert [(piece.copies, piece.edge_names) for piece in made] == [
        (3, ("rim",)),
        (3, ("rim",)),
        (2, ("rim",)),
    ]


def test_pieces_outside_a_circle_that_lead_into_it_are_not_blamed() -> None:
    loaded = load_text(file_with(piece="a: {like: b}\n  b: {like: c}\n  c: {like: b}"))
    (fault,) = loaded.diagnostics
    assert fault.slug == "like-circle"
    assert fault.message.endswith("`b`, `c`, `b`")
    assert fault.path == ("pieces", "b", "like")


def test_a_piece_whose_notches_are_wrong_says_so_before_its_edges_are_missed() -> None:
    loaded = load_text(file_with(piece="band: {notches: long}", operation="x: {hem: band.attach}"))
    assert [item.slug for item in loaded.diagnostics] == ["wrong-type", "unknown-edge"]
    assert loaded.diagnostics[1].fix == "It has no edges at all; list them under `edges:`."


def test_a_strip_has_a_fold_that_is_never_raw() -> None:
    piece = _piece("band: {strip: [attach, end, fold, end]}")
    assert piece.is_strip
    assert [(edge.name, edge.is_folded) for edge in piece.edges] == [
        ("attach", False),
        ("end", False),
        ("fold", True),
        ("end", False),
    ]
    assert _piece("flap: {like: cuff, layer: lining}").is_strip


def test_an_edge_called_fold_is_a_plain_edge_where_the_piece_is_no_strip() -> None:
    assert _piece("flap: {edges: [fold, end]}").edges[0] == Edge("fold")
