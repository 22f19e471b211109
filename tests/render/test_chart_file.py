"""A graph as a file: PDF and PNG say and show what the SVG does, the same each time."""

import re
import shutil
import struct
import subprocess
from functools import cache

import pytest
from garments.shipped import opened

from seqplan.base.language import LANGUAGES, speaking
from seqplan.explain.chart import Lanes
from seqplan.pipeline import draw_graph, write_graph
from seqplan.render.chart_file import SUFFIXES, chart_file
from seqplan.render.handout.paper import Paper

READER = shutil.which("pdftotext")
needs_reader = pytest.mark.skipif(READER is None, reason="there is no pdftotext")

NAMES = ("breakwater-skirt", "chandlery-tote", "lamp-room-tee")
SMALL = (
    '<svg xmlns="http://www.w3.org/2000/svg" width="{wide}pt" height="{high}pt"'
    ' viewBox="0 0 {wide} {high}"><title>{title}</title><desc>Two boxes.</desc>'
    '<text x="10" y="40" font-family="Arimo" font-size="12">{title}</text></svg>'
)


@cache
def graph(name):
    return draw_graph(opened(name), Lanes.UNIT)


def small(wide=200, high=100, title="Quay skirt"):
    return SMALL.format(wide=wide, high=high, title=title)


def told(pdf, tmp_path, *command):
    """What a program says of a PDF."""
    path = tmp_path / "graph.pdf"
    path.write_bytes(pdf)
    done = subprocess.run(
        [*command, path, *(["-"] if command[0] == READER else [])],
        capture_output=True,
        text=True,
        check=True,
    )
    return done.stdout


def size_of(pdf):
    box = re.search(rb"/MediaBox ?\[0 0 ([\d.]+) ([\d.]+)\]", pdf)
    return tuple(float(side) for side in box.groups())


def pixels(png):
    """Width and height of a PNG."""
    assert png.startswith(b"\x89PNG\r\n\x1a\n")
    return struct.unpack(">II", png[16:24])


@pytest.mark.parametrize("suffix", SUFFIXES)
def test_equal_graphs_give_equal_bytes(suffix):
    assert chart_file(small(), suffix) == chart_file(small(), suffix)


def test_an_svg_stays_as_it_is():
    assert chart_file(small(title="Ärmel"), ".svg") == small(title="Ärmel").encode()


@needs_reader
@pytest.mark.parametrize("name", NAMES)
def test_a_pdf_is_as_large_as_the_graph_on_one_page_with_real_text(name, tmp_path):
    svg = graph(name)
    pdf = write_graph(svg, ".pdf")
    wanted = [float(side) for side in re.findall(r'(?:width|height)="([\d.]+)pt"', svg)[:2]]
    assert size_of(pdf) == pytest.approx(wanted, abs=0.01)
    assert len(re.findall(rb"/Type\s*/Page\b", pdf)) == 1
    text = " ".join(told(pdf, tmp_path, READER, "-layout").split())
    for words in re.findall(r"<text[^>]*>([^<]+)</text>", svg):
        assert " ".join(words.replace("&amp;", "&").split()) in text, words
    assert opened(name).garment.garment.name in told(pdf, tmp_path, "pdfinfo")
    fonts = told(pdf, tmp_path, "pdffonts").splitlines()[2:]
    assert fonts
    assert all("Arimo" in line and "yes yes yes" in line for line in fonts)


@needs_reader
def test_a_pdf_can_be_read_aloud(tmp_path):
    info = told(chart_file(small(), ".pdf"), tmp_path, "pdfinfo")
    assert re.search(r"Tagged:\s+yes", info)
    assert re.search(r"Title:\s+Quay skirt", info)
    assert "CreationDate" not in info


@pytest.mark.parametrize(
    ("paper", "wide", "high", "sheet"),
    [
        (Paper.A4, 200, 300, (595.28, 841.89)),
        (Paper.A4, 300, 200, (841.89, 595.28)),
        (Paper.LETTER, 538, 785, (612, 792)),
        (Paper.LETTER, 785, 538, (792, 612)),
    ],
)
def test_on_paper_the_sheet_lies_as_the_graph_does(paper, wide, high, sheet):
    pdf = chart_file(small(wide, high), ".pdf", paper)
    assert size_of(pdf) == pytest.approx(sheet, abs=0.01)


@needs_reader
@pytest.mark.parametrize("paper", [None, *Paper])
@pytest.mark.parametrize(("wide", "high"), [(538, 785), (1200, 300), (300, 1200), (100, 50)])
def test_nothing_of_a_graph_is_cut_off_and_nothing_enlarged(paper, wide, high, tmp_path):
    corners = (
        f'<text x="{x}" y="{y}" font-family="Arimo" font-size="12">corner</text>'
        for x, y in ((0, 12), (wide - 36, 12), (0, high - 3), (wide - 36, high - 3))
    )
    svg = small(wide, high).replace("</svg>", "".join(corners) + "</svg>")
    boxes = told(chart_file(svg, ".pdf", paper), tmp_path, READER, "-bbox")
    page = [
        float(side) for side in re.search(r'<page width="(\S+)" height="(\S+)"', boxes).groups()
    ]
    found = [
        tuple(map(float, numbers))
        for numbers in re.findall(
            r'xMin="(\S+)" yMin="(\S+)" xMax="(\S+)" yMax="(\S+)">corner<', boxes
        )
    ]
    assert len(found) == 4
    margin = 28.3 if paper else -0.5
    assert min(min(box[0], box[1]) for box in found) >= margin - 0.5
    assert max(box[2] for box in found) <= page[0] - margin + 0.5
    assert max(box[3] for box in found) <= page[1] - margin + 0.5
    assert max(box[3] - box[1] for box in found) < 16


def test_a_png_has_192_dots_to_the_inch():
    assert pixels(chart_file(small(216, 108), ".png")) == (576, 288)
    assert pixels(chart_file(small(), ".png", Paper.LETTER)) == (11 * 192, int(8.5 * 192))


def test_letters_that_the_font_lacks_are_boxes_in_both(tmp_path):
    pdf = chart_file(small(title="naïve 縫う"), ".pdf")
    assert pdf == chart_file(small(title="naïve □□"), ".pdf")


def test_a_pdf_says_in_which_language_it_is():
    for language in LANGUAGES:
        with speaking(language):
            assert f"/Lang({language})".encode() in chart_file(small(), ".pdf")


def test_words_that_look_like_markup_stay_words():
    nasty = "#panic() $ * _ ] &lt;b&gt; \\\\ &quot;"
    assert chart_file(small(title=nasty), ".pdf").startswith(b"%PDF")
    assert chart_file(small(title=nasty), ".png").startswith(b"\x89PNG")
