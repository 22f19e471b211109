"""Markup in any text of a garment is shown as text, whatever the file format."""

import re
from functools import cache
from xml.etree import ElementTree

import pytest
from paper.documents import FIGURE, every_block, spoiled
from render.test_handout import Page
from tell.sampler import booklet, document_of

from seqplan.draw.svg import svg
from seqplan.load.keys import KEYS, Takes
from seqplan.render.handout.html import html
from seqplan.render.handout.paper import Paper
from seqplan.render.handout.pdf import pdf

NASTY = (
    "<script>alert(1)</script>",
    "</style><img src=x onerror=alert(1)>",
    "</title></svg><a href='https://evil.example/'>x</a>",
    '" onmouseover="alert(1)',
    "[x](javascript:alert(1))",
    "![x](https://evil.example/x.png)",
    "<https://evil.example/>",
    "https://evil.example/",
    '#eval("1 + 1")',
    '#import "@preview/evil:1.0.0"',
    '#image("/etc/passwd")',
    "$x^2$ `code` *b* _i_ ~s~",
    "= Heading",
    "{{ 7 * 7 }} {% raw %} {# no #}",
    "a & b &amp; c &#60;",
    'it\'s \\ "quoted" ]]> --> <!--',
    "\\u{41} \\n @label <label>",
)

GARMENT = """
garment: {0}
about: {0}
author: {0}
version: {0}
date: {0}
terms: [{0}]
plans:
  - picture: chandlery-tote-canvas-150.svg
    fabric: shell
    width: 150
    size: {0}
    alt: {0}
sizes: [{0}, L]
choices: {{view: [{0}, plain]}}
fabrics: {{shell: {{kind: {0}, weight: {0}, note: {0}}}}}
notions: {{thing: {{kind: {0}, note: {0}, length: {{{0}: 3, L: 4}}}}}}
stations: {{elsewhere: {{title: {0}, mark: Z}}}}
pieces: {{bag: {{of: shell, cut: 2, edges: [top, side], note: {0}}}}}
waive: [{{rule: raw-edge, because: {0}}}]
operations:
  one: {{do: {0}, title: {0}, note: {0}, picture: {0}, station: elsewhere, foot: {0}}}
  two: {{sew: bag.side, to: bag, say: {0}, press: open, thread: {0}, needle: {0}, setting: {0}}}
  three: {{attach: thing, at: bag.top, after: two, because: {0}, when: {{view: {0}}}}}
"""
REFERENCES = {"on", "at", "rule", "through", "without"}
"""Keys whose text names something that the file defines."""


def quoted(text):
    return "'" + text.replace("'", "''") + "'"


def test_the_garment_has_a_text_wherever_one_can_stand():
    free = {Takes.TEXT, Takes.TEXTS, Takes.NOTE}
    keys = {k.name for k in KEYS if k.takes in free} - REFERENCES
    missing = [key for key in keys if not re.search(rf"\b{key}: \[?\{{0\}}", GARMENT)]
    assert missing == []


def written(nasty):
    return document_of(GARMENT.format(quoted(nasty)))


@cache
def usual():
    pages = (html(every_block(), Paper.A4), booklet("rope-walk-bag"))
    return {tag for page in pages for tag, _ in Page(page).tags}


def check_page(page, least, nasty):
    assert {tag for tag, _ in page.tags} <= usual()
    assert page.open == []
    for _, attrs in page.tags:
        assert not any(name.startswith("on") for name in attrs)
        assert attrs.get("href", "#").startswith("#")
        assert attrs.get("src", "data:image/").startswith("data:image/")
    assert page.text.count(" ".join(nasty.split())) >= least


@pytest.mark.parametrize("nasty", NASTY)
def test_a_page_shows_it_as_text(nasty):
    check_page(Page(html(written(nasty), Paper.A4)), 12, nasty)
    made = spoiled(every_block(), nasty)
    check_page(Page(html(made, Paper.A4)), 60, nasty)


def objects(reader):
    """Every dictionary of a PDF that can be reached from its root."""
    open_, seen = [reader.trailer["/Root"]], set()
    while open_:
        one = open_.pop()
        reference = getattr(one, "idnum", None)
        if reference is not None and reference in seen:
            continue
        seen.add(reference)
        found = one.get_object()
        if isinstance(found, list):
            open_ += list.__iter__(found)
        elif isinstance(found, dict):
            yield found
            open_ += dict.values(found)


def squeezed(text):
    return "".join(text.split()).replace("\N{ZERO WIDTH SPACE}", "")


@pytest.mark.parametrize("nasty", NASTY)
def test_a_pdf_shows_it_as_text(nasty, tmp_path):
    pypdf = pytest.importorskip("pypdf", reason="pypdf is not installed")
    for made, least in ((written(nasty), 12), (spoiled(every_block(), nasty), 50)):
        path = tmp_path / "handout.pdf"
        path.write_bytes(pdf(made, Paper.A4))
        reader = pypdf.PdfReader(path)
        text = squeezed("".join(page.extract_text() for page in reader.pages))
        assert text.count(squeezed(nasty)) >= least
        for found in objects(reader):
            assert not {"/JS", "/JavaScript", "/URI", "/Launch", "/AA"} & set(found)
            assert found.get("/S") not in {"/URI", "/JavaScript", "/Launch", "/GoToR"}
        assert reader.metadata.title == nasty


@pytest.mark.parametrize("nasty", NASTY)
def test_markdown_shows_it_as_text(nasty):
    pytest.importorskip("markdown_it", reason="markdown-it-py is not installed")
    from render.test_handout_markdown import plain, read

    from seqplan.render.handout.markdown import markdown

    for made, least in ((written(nasty), 12), (spoiled(every_block(), nasty), 50)):
        tags, text = read(markdown(made))
        assert not tags & {"a", "img", "script", "code", "pre", "style", "del", "hr"}
        assert plain(text).count(plain(nasty)) >= least


@pytest.mark.parametrize("nasty", NASTY)
def test_pictures_show_it_as_text(nasty):
    root = ElementTree.fromstring(svg(spoiled(FIGURE, nasty)))
    space = "{http://www.w3.org/2000/svg}"
    assert {each.tag.removeprefix(space) for each in root.iter()} == {
        "svg",
        "title",
        "desc",
        "text",
    }
    assert all(each.text == nasty for each in root)
