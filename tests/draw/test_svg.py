"""The one writer of the format."""

import xml.etree.ElementTree as ET

from hypothesis import given
from hypothesis import strategies as st

from seqplan.draw.figure import Area, Disc, Figure, Group, Line, Strokes, Words
from seqplan.draw.svg import inline_svg, number, svg

EVERYTHING = Figure(
    100,
    50,
    "Title",
    "Words",
    (
        Group((Line(((0, 0), (10, 0), (10, 10)), radius=4, role="edge"),), "layer", "front", "R"),
        Strokes((((0, 0), (5, 5)), ((5, 0), (10, 5))), dashes=(2, 1)),
        Area(((0, 0), (10, 0), (10, 10)), outline=1),
        Disc((5, 5), 2, outline=0.5),
        Words((5, 5), "front", 8, "middle", is_bold=True, role="label"),
    ),
)


def tags(text):
    return [element.tag.rpartition("}")[2] for element in ET.fromstring(text).iter()]


def test_a_file_of_its_own_and_one_in_a_page_show_the_same():
    alone, inside = svg(EVERYTHING), inline_svg(EVERYTHING)
    assert tags(alone) == tags(inside)
    assert "http" not in inside
    assert alone.endswith("</svg>\n")


def test_corners_are_rounded():
    (way,) = [e.get("d") for e in ET.fromstring(svg(EVERYTHING)).iter() if e.get("class") == "edge"]
    assert way == "M0 0L6 0Q10 0 10 4L10 10"


@given(st.text())
def test_any_text_comes_out_as_text(words):
    figure = Figure(10, 10, words, words, (Group((Words((0, 0), words, 8),), "ply", words),))
    root = ET.fromstring(svg(figure))
    shown = {"".join(element.itertext()) for element in root if element.tag.endswith("title")}
    assert len(list(root.iter())) == 5
    assert all(" ".join(text.split()) == text for text in shown)


@given(st.floats(-1e5, 1e5))
def test_numbers_are_short_and_near(value):
    assert abs(float(number(value)) - value) <= 0.051
    assert "e" not in number(value)
    assert number(value) != "-0"
