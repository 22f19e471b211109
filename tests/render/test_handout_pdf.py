"""The booklet as PDF: the same bytes each time, tagged, whole, on both papers, its fonts within."""

import os
import re
import shutil
import subprocess
import sys
from functools import cache
from itertools import product
from pathlib import Path

import pytest
from paper.documents import every_block, texts_of
from render.check_squares import squares_at_the_foot
from tell.sampler import GARMENTS, SHIPPED, document

from seqplan.draw.textwidth import letters_of_the_font
from seqplan.render.handout.paper import Paper
from seqplan.render.handout.pdf import breakable, only_known_letters, pdf
from seqplan.render.handout.unprinted import BoxedLettersWarning

pypdf = pytest.importorskip("pypdf", reason="pypdf is not installed")

POINTS = {Paper.A4: (595.3, 841.9), Paper.LETTER: (612, 792)}
FONTS = shutil.which("pdffonts")
READER = shutil.which("pdftotext")
SOME = ("breakwater-skirt", "gull-skirt", "tide-table-pouch")


@cache
def written(name, paper=Paper.A4):
    made = every_block() if name == "every block" else document(name)
    return pdf(made, paper)


def opened(name, paper=Paper.A4, folder=None):
    path = folder / "handout.pdf"
    path.write_bytes(written(name, paper))
    return pypdf.PdfReader(path)


def plain(text):
    return "".join(text.split()).replace("\N{ZERO WIDTH SPACE}", "")


def text_of(reader):
    return plain("".join(page.extract_text() for page in reader.pages))


@pytest.mark.parametrize("name", ["every block", *SOME])
def test_the_same_handout_gives_the_same_bytes(name):
    made = every_block() if name == "every block" else document(name)
    assert pdf(made, Paper.A4) == written(name)


def test_other_processes_give_the_same_bytes(tmp_path):
    found = set()
    for seed in ("1", "2"):
        path = tmp_path / f"{seed}.pdf"
        subprocess.run(
            [sys.executable, "-m", "seqplan", "handout", GARMENTS / "gull-skirt.yaml", "-o", path],
            check=True,
            env=os.environ | {"PYTHONHASHSEED": seed},
            cwd=GARMENTS.parent,
        )
        found.add(path.read_bytes())
    assert found == {written("gull-skirt")}


@pytest.mark.parametrize("name", ["every block", *SHIPPED])
def test_all_that_the_document_says_is_real_text(name, tmp_path):
    reader = opened(name, folder=tmp_path)
    made = every_block() if name == "every block" else document(name)
    text, told = text_of(reader), _alternatives(reader)
    lost = [each for each in texts_of(made) if plain(each) not in text and plain(each) not in told]
    assert [each for each in lost if _first_small(each) not in text] == []


def _first_small(text):
    """The name of a station begins with a capital where it stands alone."""
    return plain(text[:1].upper() + text[1:])


def _alternatives(reader):
    """What the pictures are told with."""
    tree = reader.trailer["/Root"]["/StructTreeRoot"]
    found, open_ = [], [tree]
    while open_:
        node = open_.pop().get_object()
        if isinstance(node, list):
            open_ += node
        elif isinstance(node, dict):
            if "/Alt" in node:
                found.append(plain(node["/Alt"]))
            if "/K" in node:
                open_.append(node["/K"])
    return set(found)


@pytest.mark.parametrize("name", ["every block", *SOME])
def test_it_is_tagged_and_says_that_it_can_be_read_aloud(name, tmp_path):
    reader = opened(name, folder=tmp_path)
    made = every_block() if name == "every block" else document(name)
    root = reader.trailer["/Root"]
    assert root["/MarkInfo"]["/Marked"]
    assert root["/Lang"].lower().startswith(made.lang)
    assert root["/ViewerPreferences"]["/DisplayDocTitle"]
    assert b"pdfuaid:part" in root["/Metadata"].get_data()
    assert reader.metadata.title == made.title
    assert reader.metadata.author == made.author
    assert reader.metadata.creation_date is None


def test_each_picture_is_told_and_tables_have_headings(tmp_path):
    tree = opened("every block", folder=tmp_path).trailer["/Root"]["/StructTreeRoot"]
    kinds, open_ = [], [tree]
    while open_:
        node = open_.pop().get_object()
        if isinstance(node, list):
            open_ += node
        elif isinstance(node, dict):
            kinds.append(node.get("/S"))
            assert node.get("/S") != "/Figure" or node["/Alt"]
            if "/K" in node:
                open_.append(node["/K"])
    assert kinds.count("/Figure") == 5
    assert {"/H1", "/H2", "/L", "/Table", "/TH", "/TD", "/TOC"} <= set(kinds)


@pytest.mark.parametrize(("name", "paper"), list(product(SOME, Paper)))
def test_the_pages_have_the_size_of_the_paper_and_are_numbered(name, paper, tmp_path):
    reader = opened(name, paper, tmp_path)
    for number, page in enumerate(reader.pages, 1):
        assert (page.mediabox.width, page.mediabox.height) == pytest.approx(POINTS[paper], abs=0.1)
        text = plain(page.extract_text())
        assert plain(f"Page {number} of {len(reader.pages)}") in text
        assert plain(document(name).title) in text


def test_the_headings_are_an_outline_and_the_contents_name_their_pages(tmp_path):
    reader = opened("breakwater-skirt", folder=tmp_path)
    titles = [entry.title for entry in reader.outline if not isinstance(entry, list)]
    assert titles == [part.title for part in document("breakwater-skirt").parts]
    first = plain(reader.pages[0].extract_text())
    for entry in reader.outline:
        if not isinstance(entry, list):
            page = reader.get_destination_page_number(entry) + 1
            assert plain(f"{entry.title}{page}") in first


@pytest.mark.skipif(READER is None, reason="there is no pdftotext")
@pytest.mark.parametrize(("name", "paper"), list(product(SHIPPED, Paper)))
def test_no_text_stands_outside_the_page(name, paper, tmp_path):
    opened(name, paper, tmp_path)
    done = subprocess.run(
        [READER, "-bbox", tmp_path / "handout.pdf", "-"], capture_output=True, text=True, check=True
    )
    wide, high = POINTS[paper]
    boxes = re.findall(r'<word xMin="(.*?)" yMin="(.*?)" xMax="(.*?)" yMax="(.*?)"', done.stdout)
    assert boxes
    for left, top, right, foot in (tuple(map(float, box)) for box in boxes):
        assert left >= 15 / 25.4 * 72 - 1
        assert right <= wide - 15 / 25.4 * 72 + 1
        assert top >= 12 / 25.4 * 72 - 4
        assert foot <= high - 10


@pytest.mark.skipif(FONTS is None, reason="there is no pdffonts")
@pytest.mark.parametrize("name", SOME)
def test_the_fonts_are_within(name, tmp_path):
    opened(name, folder=tmp_path)
    told = subprocess.run(
        [FONTS, tmp_path / "handout.pdf"], capture_output=True, text=True, check=True
    ).stdout.splitlines()[2:]
    assert {line.split()[0].partition("+")[2] for line in told} == {"Arimo", "Arimo-Bold"}
    assert all(re.search(r" yes +yes +yes ", line) for line in told)


@pytest.mark.parametrize("paper", Paper)
def test_the_check_squares_on_every_page_are_as_large_as_they_say(paper, tmp_path):
    for page in opened("breakwater-skirt", paper, tmp_path).pages:
        found = dict(squares_at_the_foot(page))
        assert sorted(found) == pytest.approx([0.75 * 25.4, 20], abs=0.1)
        assert all(high == pytest.approx(wide, abs=0.1) for wide, high in found.items())
        for label in ("2 cm", "¾ in"):
            assert plain(label) in plain(page.extract_text())


def test_a_letter_without_a_shape_is_a_box_and_nothing_else_is_lost(tmp_path):
    made = every_block()
    strange = made.parts[0].blocks[0]._replace(texts=("naïve 縫う \N{GRINNING FACE} ½ cm",))
    from dataclasses import replace

    part = replace(made.parts[0], blocks=(strange, *made.parts[0].blocks[1:]))
    path = tmp_path / "strange.pdf"
    with pytest.warns(BoxedLettersWarning) as told:
        path.write_bytes(pdf(replace(made, parts=(part,)), Paper.A4))
    assert [each.message.letters for each in told] == [{"縫", "う", "\N{GRINNING FACE}"}]
    assert plain("naïve □□ □ ½ cm") in text_of(pypdf.PdfReader(path))


def test_fractions_and_accents_have_their_shapes():
    assert set("½⅓¼¾⅛⅜⅝⅞äöüßÄÖÜéèñçåøœ€…“”„·•\N{MULTIPLICATION SIGN}") <= letters_of_the_font()
    assert only_known_letters("Größe 1½ in") == "Größe 1½ in"


def test_a_word_wider_than_its_column_can_be_broken():
    word = "w" * 90
    assert breakable(f"a {word}").replace("\N{ZERO WIDTH SPACE}", "") == f"a {word}"
    assert max(map(len, breakable(word).split("\N{ZERO WIDTH SPACE}"))) <= 12


def test_large_print_is_set_in_18_points(tmp_path):
    from dataclasses import replace

    path = tmp_path / "large.pdf"
    path.write_bytes(pdf(replace(every_block(), is_large=True), Paper.A4))
    sizes = []

    def see(text, _cm, tm, _font, size):
        if text.strip():
            sizes.append(round(size * abs(tm[3])))

    for page in pypdf.PdfReader(path).pages:
        page.extract_text(visitor_text=see)
    assert max(sizes, key=sizes.count) == 18


def test_the_compiler_is_imported_only_where_a_pdf_is_written():
    code = "import sys, seqplan.cli.app, seqplan.cli.make, seqplan.cli.handout as h; print(h)"
    done = subprocess.run(
        [sys.executable, "-c", code + "; assert 'typst' not in sys.modules"],
        check=False,
        cwd=Path(__file__).parents[2],
    )
    assert done.returncode == 0
