"""Outlines of pieces: lengths and areas of edges, marks, cutting lines; and sketches."""

import math
from itertools import pairwise

import pytest
from garments.shipped import GARMENTS
from hypothesis import given, settings
from load.strategies_garment import pieces

from seqplan.base.measure import Length
from seqplan.load.document import load_file, load_text
from seqplan.model.piece import Cut, Edge, Layer, Outline, Piece
from seqplan.shape.curve import area, path_length
from seqplan.shape.outline import OutlineFaultError, edge_length, lay, runs_of, sides_between
from seqplan.shape.pathdata import read_path
from seqplan.shape.sketch import sketch


def piece(names, sides, **more):
    edges = tuple(Edge(name.removeprefix("|"), name.startswith("|")) for name in names)
    return Piece("p", edges, shape=Outline(sides), **more)


def ring(*corners):
    return tuple(pairwise([*corners, corners[0]]))


SQUARE = ring(0j, 100 + 0j, 100 + 100j, 100j)


def test_each_edge_has_its_length_and_the_piece_its_area():
    laid = lay(piece("abcd", SQUARE))
    assert laid.length == (100, 100, 100, 100)
    assert laid.area == 10_000


def test_half_a_piece_has_the_area_of_both_halves():
    sides = ((0j, 50 + 0j), (50 + 0j, 50 + 80j), (50 + 80j, 80j))
    laid = lay(piece("abc", sides, cut=Cut.FOLD))
    assert laid.length == (50, 80, 50)
    assert laid.area == 2 * 50 * 80
    assert len(laid.whole()) == 4 + 2
    assert {p.real for p in laid.whole()} == {-50, 0, 50}


def test_a_full_circle_skirt_has_the_waist_and_hem_of_the_handbook():
    """A waist of 72 cm wants a radius of 72 / 2π; a skirt of 60 cm has a hem of 2π (r + 60)."""
    radius = 720 / (2 * math.pi)
    path, _ = read_path(
        f"M0 {-radius} A{radius} {radius} 0 0 1 {radius} 0 L{radius + 600} 0"
        f" A{radius + 600} {radius + 600} 0 0 0 0 {-radius - 600} Z"
    )
    turned = [tuple(curve[::-1]) for curve in reversed(path)]
    sides = sides_between(tuple(turned), (4,))
    laid = lay(piece(["centre", "hem", "side", "waist"], sides))
    assert laid.length[3] == pytest.approx(720 / 4, abs=0.1)
    assert laid.length[1] == pytest.approx(2 * math.pi * (radius + 600) / 4, abs=0.1)
    ring_area = math.pi * ((radius + 600) ** 2 - radius**2) / 4
    assert laid.area == pytest.approx(ring_area, rel=1e-5)


def test_a_mark_splits_its_side_at_the_length_that_is_stated():
    lengths = (("c", Length(30)),)
    laid = lay(piece(["a", "b", "|c", "d", "e"], SQUARE, lengths=lengths))
    assert laid.length == pytest.approx((100, 70, 30, 100, 100))
    assert laid.edges[1][-1][-1] == pytest.approx(100 + 70j)


@pytest.mark.parametrize(
    ("kind", "names", "sides", "more"),
    [
        ("corners", "abc", SQUARE, {}),
        ("mark", ["a", "b", "|c", "d", "e"], SQUARE, {}),
        ("beyond", ["a", "b", "|c", "d", "e"], SQUARE, {"lengths": (("c", Length(130)),)}),
        ("direction", "abcd", ring(0j, 100j, 100 + 100j, 100 + 0j), {}),
        ("fold", "a", ((0j, 30 + 10j, 20 + 80j),), {"cut": Cut.FOLD}),
        ("fold", "ab", ((0j, -30 + 10j), (-30 + 10j, 80j)), {"cut": Cut.FOLD}),
    ],
)
def test_what_does_not_fit_is_refused(kind, names, sides, more):
    with pytest.raises(OutlineFaultError, match=kind):
        lay(piece(names, sides, **more))


def test_a_piece_without_a_shape_is_not_laid_but_its_stated_lengths_are_known():
    plain = Piece("p", (Edge("a"), Edge("b"), Edge("a")), lengths=(("a", Length(40)),))
    assert lay(plain) is None
    assert edge_length(plain, "a") == 80
    assert edge_length(plain, "b") is None


def test_the_cutting_line_of_a_half_does_not_leave_the_fold():
    sides = ((0j, 50 + 0j), (50 + 0j, 50 + 80j), (50 + 80j, 80j))
    line = lay(piece("abc", sides, cut=Cut.FOLD)).cutting_line(lambda place: (10, 15, 30)[place])
    assert {(round(p.real, 6), round(p.imag, 6)) for p in line} == {
        (0, -10), (65, -10), (65, 110), (0, 110),
    }  # fmt: skip


def test_the_cutting_line_of_curves_is_that_of_another_library():
    shapely = pytest.importorskip("shapely")
    path, _ = read_path("M0 0 C60 -20 120 -20 180 0 Q200 300 250 600 L-60 600 Z")
    laid = lay(piece("abcd", sides_between(path, (4,))))
    ours = shapely.Polygon([(p.real, p.imag) for p in laid.cutting_line(lambda _: 15)])
    inner = shapely.Polygon([(p.real, p.imag) for p in laid.whole()])
    theirs = inner.buffer(15, join_style="mitre", mitre_limit=4)
    assert ours.area == pytest.approx(theirs.area, rel=1e-4)
    assert ours.symmetric_difference(theirs).area < 0.001 * theirs.area


def test_smooth_curves_of_a_drawing_are_one_side():
    path, _ = read_path("M0 0 C10 0 20 0 30 0 S50 5 60 10 L60 80 L0 80 Z")
    assert [len(side) for side in sides_between(path, (4,))] == [7, 2, 2, 2]
    assert sides_between(path, (3,)) is None


# -- sketches ----------------------------------------------------------------------------------


def check(laid, edges):
    lines = [path for path, edge in zip(laid.edges, edges, strict=True) if not edge.is_slit]
    assert all(path_length(path) > 0 for path in lines)
    curves = [curve for path in lines for curve in path]
    for one, other in pairwise(curves):
        assert abs(one[-1] - other[0]) < 1e-6
    if laid.is_fold:
        assert abs(curves[0][0].real - curves[-1][-1].real) < 1e-6
        assert curves[0][0].imag < curves[-1][-1].imag
    else:
        assert abs(curves[-1][-1] - curves[0][0]) < 1e-6
    assert laid.area > 0


@settings(max_examples=80, deadline=None)
@given(pieces(["linen"], ()))
def test_any_list_of_edges_has_a_sketch_that_goes_round_clockwise(made):
    for found in made:
        if found.edges:
            check(sketch(found), found.edges)
            assert sketch(found) == sketch(found)


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_every_piece_of_the_garments_has_a_sketch(path):
    for found in load_file(path).garment.pieces:
        if found.edges:
            check(sketch(found), found.edges)


def sketched(text, layer=Layer.SHELL):
    loaded = load_text(f"garment: Try\npieces: {{p: {text}}}\noperations: {{a: {{do: x, on: p}}}}")
    found = loaded.garment.pieces[0]
    laid = sketch(found._replace(layer=layer))
    return {edge.name: path for edge, path in zip(found.edges, laid.edges, strict=True)}, laid


def test_what_the_trade_has_at_the_top_lies_at_the_top():
    lines, _ = sketched("{cut: fold, edges: [neck, shoulder, armhole, side, hem]}")
    heights = {n: sum(p.imag for p in path[0]) / len(path[0]) for n, path in lines.items()}
    assert max(heights["neck"], heights["shoulder"]) < heights["armhole"]
    assert heights["armhole"] < heights["side"] < heights["hem"]


def test_neck_and_armhole_are_hollow_and_a_cap_is_round():
    lines, _ = sketched("{cut: fold, edges: [neck, shoulder, armhole, side, hem]}")
    for name in ("neck", "armhole"):
        (curve,) = lines[name]
        assert area([curve, (curve[-1], curve[0])]) < 0, name
    lines, _ = sketched("{cut: pair, edges: [cap, underarm-back, wrist, underarm-front]}")
    (start, *_), (*_, end) = lines["cap"]
    assert area([*lines["cap"], (end, start)]) > 0


def test_the_list_may_begin_anywhere():
    one, _ = sketched("{edges: [waist, side, hem, centre]}")
    other, _ = sketched("{edges: [hem, centre, waist, side]}")
    assert {name: one[name] for name in sorted(one)} == {n: other[n] for n in sorted(other)}


def test_stated_lengths_keep_their_proportion():
    _, laid = sketched("{edges: [top, side, foot, side], lengths: {top: 20, side: 60}}")
    assert laid.length[1] == pytest.approx(3 * laid.length[0])


def test_the_edges_of_a_list_lie_between_the_right_corners():
    assert runs_of((Edge("a"), Edge("b", True), Edge("c"))) == ((0, 1), (2,))
    slit = Edge("s", is_slit=True)
    assert runs_of((Edge("a"), slit, slit, Edge("b"), Edge("c"))) == ((0, 3), (4,))
    assert runs_of((slit, Edge("a"), Edge("b"))) == ((1,), (2,))
