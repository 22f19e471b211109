"""Shapes of pieces: what is read, and every fault, each in a file with nothing else wrong."""

import re

import pytest
from load.files import MARK, file_with, split_mark

from seqplan.base.diagnostic import Severity
from seqplan.load.document import load_file, load_text
from seqplan.model.piece import Outline
from seqplan.shape.outline import lay
from seqplan.words import outlines

_HALF = "[[0, 0], [18, -1], [25, 60], [0, 60]]"


def flap(keys: str, edges: str = "a, b, c", cut: str = "fold") -> str:
    """A file with a piece of three edges."""
    return file_with(piece=f"flap: {{cut: {cut}, edges: [{edges}], {keys}}}")


def svg(path: str, *, top: str = "", around: str = "") -> str:
    head = f'<svg xmlns="http://www.w3.org/2000/svg" width="100mm" viewBox="0 0 100 100">{around}'
    tail = "</g>" if around else ""
    return f'{top}{head}<path id="front" d="{path}"/>{tail}</svg>'


ERRORS = (
    ("wrong-type", flap("lengths: ¶[a]")),
    ("wrong-type", flap("lengths: ¶{}")),
    ("unreadable-length", flap("lengths: {a: ¶far}")),
    ("unknown-edge", flap("lengths: {¶d: 20}")),
    ("wrong-type", flap("shape: ¶flap")),
    ("wrong-type", flap("shape: ¶flap.png#front")),
    ("wrong-type", flap("shape: ¶{curve: [0, 0]}")),
    ("wrong-type", flap("shape: [[0, 0], ¶18, [25, 60], [0, 60]]")),
    ("wrong-type", flap("shape: [[0, 0], ¶[18, -1, 2], [25, 60], [0, 60]]")),
    ("wrong-type", flap("shape: [[0, 0], ¶{bend: [1, 2]}, [18, -1], [25, 60], [0, 60]]")),
    ("unreadable-coordinate", flap("shape: [[0, 0], [18, ¶up], [25, 60], [0, 60]]")),
    ("unreadable-coordinate", flap("shape: [[0, 0], [18, ¶--1], [25, 60], [0, 60]]")),
    ("far-corner", flap("shape: [[0, 0], [18, -1], [¶25 yd, 60], [0, 60]]")),
    (
        "curve-points",
        flap("shape: [[0, 0], {curve: ¶[[1, 1], [2, 2], [3, 3]]}, [18, -1], [0, 60]]"),
    ),
    ("curve-nowhere", flap("shape: [¶{curve: [1, 1]}, [0, 0], [18, -1], [25, 60], [0, 60]]")),
    ("curve-nowhere", flap("shape: [[0, 0], [18, -1], [25, 60], [0, 60], ¶{curve: [1, 1]}]")),
    (
        "curve-nowhere",
        flap("shape: [[0, 0], {curve: [9, 1]}, ¶{curve: [9, 2]}, [18, 0], [25, 60], [0, 60]]"),
    ),
    ("corner-twice", flap("shape: [[0, 0], ¶[0, 0], [18, -1], [25, 60], [0, 60]]")),
    ("shape-too-long", flap(f"shape: ¶[{', '.join(['[0, 0]'] * 2001)}]")),
    ("shape-corners", flap("shape: ¶[[0, 0], [18, -1], [25, 60]]")),
    ("shape-corners", flap("shape: ¶[[0, 0], [18, -1], [25, 60], [0, 60]]", cut="pair")),
    ("shape-mark", flap(f"shape: ¶{_HALF}", edges="a, b, c, d | e", cut="pair")),
    ("shape-beyond", flap(f"lengths: {{e: 70}}, shape: ¶{_HALF}", "a, b, c, d | e", "pair")),
    ("shape-direction", flap("shape: ¶[[0, 0], [0, 60], [25, 60]]", cut="1")),
    ("shape-fold", flap("shape: ¶[[0, 0], [-18, -1], [-25, 60], [0, 60]]")),
    ("shape-fold", flap("shape: ¶[[0, 0], [18, -1], [25, 60], [3, 60]]")),
    (
        "shape-too-long",
        flap(f"shape: ¶[[0, 0], {{curve: [{', '.join(['[1, 1]'] * 2000)}]}}, [18, -1], [0, 60]]"),
    ),
    ("shape-without-edges", file_with(piece="flap: {shape: ¶[[0, 0], [1, 1]]}")),
    ("edges-twice", file_with(piece="flap: {like: front, shape: ¶[[0, 0], [1, 1]]}")),
    ("unreadable-length", flap("darts: {on: a, intake: ¶wide}")),
    ("shape-unreadable", flap("shape: ¶flap.svg#front")),
)

# Slug, what the piece names, and the drawing.
DRAWINGS = (
    ("shape-unreadable", "elsewhere.svg#front", ""),
    ("shape-unreadable", "../flap.svg#front", svg("M0 0h1v1z")),
    ("shape-unreadable", "/etc/flap.svg#front", svg("M0 0h1v1z")),
    ("shape-drawing", "flap.svg#front", "<svg"),
    ("shape-drawing", "flap.svg#front", "<html/>"),
    ("shape-drawing", "flap.svg#back", svg("M0 0h1v1z")),
    ("shape-drawing", "flap.svg#frnt", svg("M0 0h1v1z")),
    ("shape-drawing", "flap.svg#g", svg("M0 0", around='<g id="g">')),
    ("shape-drawing", "flap.svg#front", svg("M0 0h1v1z", around='<g transform="scale(2)">')),
    (
        "shape-drawing",
        "flap.svg#front",
        svg("M0 0h1v1z", top='<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]>'),
    ),
    ("shape-drawing", "flap.svg#front", svg("M0 0 B 1 1")),
    ("shape-drawing", "flap.svg#front", svg("M0 0 L 1")),
    ("shape-drawing", "flap.svg#front", svg("L0 0")),
    ("shape-drawing", "flap.svg#front", svg("M0 0h1v1z M3 3h1v1z")),
    ("shape-drawing", "flap.svg#front", svg("M0 0" + "h1v1" * 1001)),
    ("shape-drawing", "flap.svg#front", svg("M0 0 L 1e9 0")),
    ("shape-drawing", "flap.svg#front", "<!--" + "x" * 2_000_000 + "-->"),
    ("far-corner", "flap.svg#front", svg("M0 0h180 l70 60000 h-250z")),
    ("shape-corners", "flap.svg#front", svg("M0 0h180v600z")),
)


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    return tmp_path_factory.mktemp("drawings")


def drawn(folder, name: str, drawing: str, cut: str = "fold", edges: str = "a, b, c"):
    if drawing:
        (folder / "flap.svg").write_text(drawing, encoding="utf-8")
    (folder / "try.yaml").write_text(flap(f"shape: '{name}'", edges, cut), encoding="utf-8")
    return load_file(folder / "try.yaml")


@pytest.mark.parametrize(("slug", "marked"), ERRORS)
def test_an_error_is_told_once_and_at_its_place(slug, marked):
    text, line, column = split_mark(marked)
    told = [(d.slug, d.span and (d.span.line, d.span.column)) for d in load_text(text).diagnostics]
    assert told == [(slug, (line, column))]


@pytest.mark.parametrize(("slug", "name", "drawing"), DRAWINGS)
def test_what_is_wrong_with_a_drawing_is_told_once_where_it_is_named(folder, slug, name, drawing):
    (fault,) = drawn(folder, name, drawing).diagnostics
    assert (fault.slug, fault.severity) == (slug, Severity.ERROR)
    assert fault.path == ("pieces", "flap", "shape")
    assert fault.fix


def test_every_sentence_has_a_case(folder):
    loaded = [load_text(text.replace(MARK, "")) for _, text in ERRORS]
    loaded += [drawn(folder, name, drawing) for _, name, drawing in DRAWINGS]
    open_one = drawn(folder, "flap.svg#front", svg("M0 0h180v600"), cut="pair")
    messages = [item.message for found in (*loaded, open_one) for item in found.diagnostics]
    for key, sentence in outlines.SENTENCES.items():
        if key.startswith("fault-"):
            pattern = re.sub(r"\\{\w+\\}", ".+", re.escape(sentence.replace("}}", "}")))
            assert any(re.fullmatch(pattern, message) for message in messages), key


def test_a_fault_in_a_drawing_tells_its_line_and_column(folder):
    drawing = svg("M0 0 Lx").replace("<path", "\n   <path")
    (fault,) = drawn(folder, "flap.svg#front", drawing).diagnostics
    assert "flap.svg:2:4" in fault.message
    assert "7: x" in fault.message


def piece_of(text: str):
    loaded = load_text(text)
    assert loaded.diagnostics == ()
    return loaded.garment.pieces[-1]


def test_half_a_shape_goes_from_the_top_of_the_fold_to_its_foot():
    piece = piece_of(flap(f"shape: {_HALF}"))
    assert piece.shape == Outline(
        ((0j, 180 - 10j), (180 - 10j, 250 + 600j), (250 + 600j, 600j)),
    )


def test_a_whole_shape_comes_back_to_its_first_corner_said_or_not():
    one = piece_of(flap("shape: [[0, 0], [10, 0], [10, 10]]", cut="pair"))
    other = piece_of(flap("shape: [[0, 0], [10, 0], [10, 10], [0, 0]]", cut="pair"))
    assert one.shape == other.shape
    assert one.shape.sides[-1] == (100 + 100j, 0j)


def test_handles_stand_between_the_corners():
    bent = "[[0, 0], {curve: [9, 1]}, [18, 0], {curve: [[20, 9], [24, 30]]}, [25, 60], [0, 60]]"
    piece = piece_of(flap(f"shape: {bent}"))
    assert [len(side) for side in piece.shape.sides] == [3, 4, 2]
    assert piece.shape.sides[0] == (0j, 90 + 10j, 180 + 0j)


def test_coordinates_may_name_their_unit():
    shape = "[[0, 0], [1 in, -5 mm], [2 5/8 in, 10 mm], [0, 10 mm]]"
    piece = piece_of(flap(f"shape: {shape}", cut="pair", edges="a, b, c, d"))
    assert [side[0] for side in piece.shape.sides] == [0j, 25.4 - 5j, 66.675 + 10j, 10j]


def test_a_mark_lies_where_the_lengths_say():
    shape = "shape: [[0, 0], [30, 0], [30, 50], [0, 50]], lengths: {zip: 20}"
    piece = piece_of(flap(shape, "top, side, foot, centre | zip", "pair"))
    assert [round(length) for length in lay(piece).length] == [300, 500, 300, 300, 200]


def test_a_mark_may_be_a_corner_of_its_own():
    shape = "shape: [[0, 0], [30, 0], [30, 50], [0, 50], [0, 20]]"
    piece = piece_of(flap(shape, "top, side, foot, centre | zip", "pair"))
    assert [round(length) for length in lay(piece).length] == [300, 500, 300, 300, 200]


def test_a_piece_like_another_has_its_shape_and_its_lengths():
    text = file_with(
        piece=f"a: {{cut: fold, edges: [x, y, z], lengths: {{x: 9}}, shape: {_HALF}}}\n"
        "  b: {like: a, lengths: {y: 8}}\n  c: {like: a, cut: 2}"
    )
    one, two, three = load_text(text).garment.pieces[-3:]
    assert one.shape == two.shape
    assert [name for name, _ in two.lengths] == ["x", "y"]
    assert three.shape is None, "half an outline is not that of a whole piece"


@pytest.mark.parametrize(
    "path",
    [
        "M0 0 H180 L250 600 H0 Z",
        "m0,0 h180 l70 600 h-250 z",
        "M0 0 C60 0 120 0 180 0 L250 600 L0 600",
        "M0 0 L90 0 L180 0 L250 600 L0 600",
    ],
)
def test_a_path_of_a_drawing_is_a_shape(folder, path):
    loaded = drawn(folder, "flap.svg#front", svg(path))
    assert loaded.diagnostics == ()
    lengths = lay(loaded.garment.pieces[-1]).length
    assert lengths == pytest.approx([180, (70**2 + 600**2) ** 0.5, 250], abs=0.01)


@pytest.mark.parametrize(
    ("size", "millimetres"),
    [
        ('width="100mm" viewBox="0 0 100 100"', 1),
        ('width="10cm" viewBox="0 0 1000 100"', 0.1),
        ('width="4in" viewBox="0 0 101.6 100"', 1),
        ('width="100" viewBox="0 0 100 100"', 25.4 / 96),
        ('width="100%" viewBox="0 0 100 100"', 25.4 / 96),
        ("", 25.4 / 96),
    ],
)
def test_the_size_of_a_drawing_says_how_long_its_unit_is(folder, size, millimetres):
    drawing = (
        f'<svg xmlns="http://www.w3.org/2000/svg" {size}><path id="p" d="M0 0h90v90h-90z"/></svg>'
    )
    loaded = drawn(folder, "flap.svg#p", drawing, cut="1", edges="a, b, c, d")
    assert lay(loaded.garment.pieces[-1]).length == pytest.approx([90 * millimetres] * 4, abs=0.01)


def test_an_old_document_type_without_entities_is_no_fault(folder):
    top = '<?xml version="1.0"?><!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "svg11.dtd">\n'
    loaded = drawn(folder, "flap.svg#front", svg("M0 0h180l70 600h-250z", top=top))
    assert loaded.diagnostics == ()


def test_a_drawing_behind_a_link_that_leads_elsewhere_is_not_opened(folder, tmp_path):
    (tmp_path / "away.svg").write_text(svg("M0 0h180l70 600h-250z"), encoding="utf-8")
    (folder / "link.svg").symlink_to(tmp_path / "away.svg")
    (fault,) = drawn(folder, "link.svg#front", "").diagnostics
    assert "does not lie in the folder" in fault.message
