"""The booklet as a page: well formed, complete, needing nothing, the same each time."""

import re
from dataclasses import replace
from html.parser import HTMLParser
from importlib.resources import files
from itertools import pairwise

import pytest
from paper.documents import every_block, texts_of
from tell.sampler import SHIPPED, booklet, document, sheet

from seqplan.render.handout.html import css_counters, css_string, html
from seqplan.render.handout.paper import Paper, page_of_pages

ALL = (*SHIPPED, "dress", "tube")

NASTY = (
    "<script>alert(1)</script>",
    "</style><img src=x onerror=alert(1)>",
    '" onmouseover="alert(1)',
    "a & b &amp; c",
    'it\'s \\ "quoted"',
    "]]> --> <!--",
)


class Page(HTMLParser):
    """The elements of a page, with what stands in them."""

    VOID = frozenset({"meta", "input", "br", "col", "img"})

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
    written = booklet(name)
    page = Page(written)
    assert page.open == []
    assert len(page.ids) == len(set(page.ids))
    assert not page.all("script")
    assert not page.all("link")
    assert set(re.findall(r"url\((.{6})", written)) == {'"data:'}
    assert "@import" not in written
    assert "http" not in written
    assert page.all("html") == [{"lang": "en"}]


@pytest.mark.parametrize("name", ALL)
def test_the_page_says_all_that_the_document_says(name):
    made = document(name)
    page = Page(booklet(name))
    text = page.text + " ".join(attrs["alt"] for attrs in page.all("img"))
    assert [each for each in texts_of(made) if " ".join(each.split()) not in text] == []


def test_every_block_is_written():
    page = Page(html(every_block(), Paper.A4))
    told = [attrs["alt"] for attrs in page.all("img")]
    labels = [attrs.get("aria-label") for _, attrs in page.tags]
    for text in texts_of(every_block()):
        assert text in page.text or text in told or text in labels, text
    assert all(attrs["src"].startswith("data:image/") for attrs in page.all("img"))


@pytest.mark.parametrize("name", ALL)
def test_every_operation_has_a_box_with_a_name(name):
    made = sheet(name)
    page = Page(booklet(name))
    boxes = page.all("input")
    glance = made.steps
    assert len(boxes) == made.operations + len(made.cutting) + len(made.checks) + glance
    for box in boxes:
        assert set(box["aria-labelledby"].split()) <= set(page.ids)


@pytest.mark.parametrize("name", ALL)
def test_the_contents_lead_to_every_part(name):
    page = Page(booklet(name))
    targets = [attrs["href"] for attrs in page.all("a")]
    groups = len(sheet(name).groups)
    assert len(targets) == len(document(name).parts) + groups
    assert {target[1:] for target in targets} <= set(page.ids)


@pytest.mark.parametrize("name", ALL)
def test_headings_go_down_one_level_at_a_time(name):
    page = Page(booklet(name))
    levels = [int(tag[1]) for tag, _ in page.tags if re.fullmatch("h[1-6]", tag)]
    assert levels[0] == 1
    assert levels.count(1) == 1
    assert all(after <= before + 1 for before, after in pairwise(levels))


@pytest.mark.parametrize("name", ALL)
def test_the_same_document_gives_the_same_bytes(name):
    assert html(document(name), Paper.A4) == booklet(name)


@pytest.mark.parametrize("paper", Paper)
def test_the_page_is_printed_on_the_paper_that_is_asked_for(paper):
    written = html(every_block(), paper)
    assert f"size: {paper.value};" in written
    foot = css_counters(page_of_pages())
    title = css_string(every_block().title)
    assert f'@bottom-right {{ content: {title} "\\a" {foot}; }}' in written
    assert "counter(page)" in foot
    assert "counter(pages)" in foot


def test_large_print_says_so():
    assert 'class="large"' in html(replace(every_block(), is_large=True), Paper.A4)
    assert 'class="large"' not in html(every_block(), Paper.A4)


@pytest.mark.parametrize("nasty", NASTY)
def test_a_css_string_holds_nothing_that_could_end_it(nasty):
    inner = str(css_string(nasty))[1:-1]
    assert re.fullmatch(r"(?:[0-9A-Za-z]|\\[0-9a-f]+ )*", inner)
    back = re.sub(r"\\([0-9a-f]+) ", lambda match: chr(int(match[1], 16)), inner)
    assert back == nasty


def luminance(colour):
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one, other):
    high, low = sorted((luminance(one), luminance(other)), reverse=True)
    return (high + 0.05) / (low + 0.05)


def test_every_colour_of_text_can_be_read_on_both_grounds():
    style = files("seqplan.render.handout").joinpath("handout.css").read_text("utf-8")
    colours = dict(re.findall(r"--(\w+): (#[0-9a-f]{6});", style))
    for name in ("ink", "soft", "accent", "warm"):
        assert contrast(colours[name], "#ffffff") >= 4.5
        assert contrast(colours[name], colours["tint"]) >= 4.5
