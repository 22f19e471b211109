import re
from html.parser import HTMLParser
from importlib.resources import files
from itertools import pairwise

import pytest
from seqplan.render.handout.page import booklet_html, css_string, paragraphs, place_words
from tell.sampler import SHIPPED, booklet, sheet, sheet_of

ALL = (*SHIPPED, "dress", "tube")

NASTY = (
    "<script>alert(1)</script>",
    "</style><img src=x onerror=alert(1)>",
    '" onmouseover="alert(1)',
    "{{ 7 * 7 }} {% raw %} {# no #}",
    "a & b &amp; c",
    'it\'s \\ "quoted"',
    "]]> --> <!--",
)


class Page(HTMLParser):
    """The elements of a page, with what stands in them."""

    VOID = frozenset({"meta", "input", "br"})

    def __init__(self, html):
        super().__init__()
        self.tags, self.open, self.texts, self.ids = [], [], [], []
        self.feed(html)
        self.close()

    def handle_starttag(self, tag, attrs):
        self.tags.append((tag, dict(attrs)))
        self.ids += [value for name, value in attrs if name == "id"]
        if tag not in self.VOID:
            self.open.append(tag)

    def handle_endtag(self, tag):
        assert self.open.pop() == tag

    def handle_data(self, data):
        if "style" not in self.open:
            self.texts.append(data)

    @property
    def text(self):
        return " ".join("".join(self.texts).replace("\N{NO-BREAK SPACE}", " ").split())

    def all(self, tag):
        return [attrs for found, attrs in self.tags if found == tag]


@pytest.mark.parametrize("name", ALL)
def test_the_page_is_well_formed_and_needs_nothing_from_elsewhere(name):
    html = booklet(name)
    page = Page(html)
    assert page.open == []
    assert len(page.ids) == len(set(page.ids))
    assert not page.all("script")
    assert not page.all("link")
    assert "url(" not in html
    assert "@import" not in html
    assert "http" not in html
    assert page.all("html") == [{"lang": "en"}]


@pytest.mark.parametrize("name", ALL)
def test_the_page_says_all_that_the_sheet_says(name):
    made = sheet(name)
    text = Page(booklet_html(made)).text
    for group in made.groups:
        assert group.heading in text
        for step in group.steps:
            assert step.heading in text
            for sentence in step.sentences:
                assert all(part in text for part in sentence.texts)
                assert sentence.check in text
    for need in made.needs:
        assert all(line in text for line in need.lines)
    for lines in (made.allowances, made.marks, made.reading, made.checks, made.cutting_notes):
        assert all(line in text for line in lines)
    assert all(term.meaning in text for term in made.glossary)


@pytest.mark.parametrize("name", ALL)
def test_every_operation_has_a_box_with_a_name(name):
    made = sheet(name)
    page = Page(booklet(name))
    boxes = page.all("input")
    assert len(boxes) == made.operations + len(made.cutting) + len(made.checks)
    for box in boxes:
        assert set(box["aria-labelledby"].split()) <= set(page.ids)


@pytest.mark.parametrize("name", ALL)
def test_headings_go_down_one_level_at_a_time(name):
    page = Page(booklet(name))
    levels = [int(tag[1]) for tag, _ in page.tags if re.fullmatch("h[1-6]", tag)]
    assert levels[0] == 1
    assert levels.count(1) == 1
    assert all(after <= before + 1 for before, after in pairwise(levels))


@pytest.mark.parametrize("name", ALL)
def test_the_same_sheet_gives_the_same_bytes(name):
    assert booklet_html(sheet(name)) == booklet_html(sheet(name))


@pytest.mark.parametrize("nasty", NASTY)
def test_text_from_a_file_is_escaped_everywhere(nasty):
    quoted = "'" + nasty.replace("'", "''") + "'"
    made = sheet_of(
        f"""
garment: {quoted}
about: {quoted}
author: {quoted}
version: {quoted}
fabrics: {{shell: {{kind: {quoted}, weight: {quoted}, note: {quoted}}}}}
notions: {{thing: {{kind: {quoted}, note: {quoted}}}}}
stations: {{elsewhere: {{title: {quoted}, mark: Z}}}}
pieces: {{bag: {{of: shell, cut: 2, edges: [top, side], note: {quoted}}}}}
operations:
  one: {{do: {quoted}, title: {quoted}, note: {quoted}, station: elsewhere, foot: {quoted}}}
  two: {{sew: bag.side, to: bag, say: {quoted}, press: open}}
  three: {{attach: thing, at: bag.top}}
"""
    )
    page = Page(booklet_html(made))
    usual = Page(booklet_html(sheet("rope-walk-bag")))
    assert {tag for tag, _ in page.tags} <= {tag for tag, _ in usual.tags}
    assert not [attrs for _, attrs in page.tags if any(name.startswith("on") for name in attrs)]
    assert page.open == []
    assert page.text.count(" ".join(nasty.split())) >= 8


@pytest.mark.parametrize("nasty", NASTY)
def test_a_css_string_holds_nothing_that_could_end_it(nasty):
    inner = str(css_string(nasty))[1:-1]
    assert re.fullmatch(r"(?:[0-9A-Za-z]|\\[0-9a-f]+ )*", inner)
    back = re.sub(r"\\([0-9a-f]+) ", lambda match: chr(int(match[1], 16)), inner)
    assert back == nasty


def test_short_sentences_follow_on():
    long = "Stitch from the mark to the other end, as close beside the fold as you can."
    assert paragraphs([long, "Do so twice.", long]) == [f"{long} Do so twice.", long]


def test_new_words_stand_beside_a_step_as_long_as_there_is_room():
    first = sheet("rope-walk-bag").groups[0].steps[0]
    beside, below = place_words(first)
    assert (*beside, *below) == first.terms
    assert beside
    assert below
    short = sheet("breakwater-skirt").groups[0].steps[0]
    assert place_words(short) == ((), short.terms)


def luminance(colour):
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one, other):
    high, low = sorted((luminance(one), luminance(other)), reverse=True)
    return (high + 0.05) / (low + 0.05)


def test_every_colour_of_text_can_be_read_on_both_grounds():
    style = files("seqplan.render.handout").joinpath("booklet.css").read_text("utf-8")
    colours = dict(re.findall(r"--(\w+): (#[0-9a-f]{6});", style))
    for name in ("ink", "soft", "accent", "warm"):
        assert contrast(colours[name], "#ffffff") >= 4.5
        assert contrast(colours[name], colours["tint"]) >= 4.5
