"""The booklet as Markdown: read back it says the same, and nothing in it is markup by accident."""

import re
from html import unescape

import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from paper.documents import every_block, texts_of
from tell.sampler import SHIPPED, document

from seqplan.render.handout.letters import printed
from seqplan.render.handout.markdown import escaped, markdown

markdown_it = pytest.importorskip("markdown_it", reason="markdown-it-py is not installed")

MARKUP = "*_`~[]()<>#|!&;:./\\-+=$@{}^'\" 1ab\n\t"


def read(text):
    """Tags and text of a Markdown text, as a reader of the common flavour with tables sees it."""
    reader = markdown_it.MarkdownIt("commonmark").enable(["table", "strikethrough"])
    page = reader.render(text)
    tags = set(re.findall(r"<(/?\w+)", page))
    return tags, unescape(re.sub(r"<[^>]*>", " ", page))


def plain(text):
    return " ".join(printed(text).replace("\N{NO-BREAK SPACE}", " ").split())


@given(st.text(MARKUP, min_size=1).filter(str.strip))
@example("1. x")
@example("- x")
@example("http://evil.example/?a=b&copy=1")
@example("www.evil.example")
@example("&lt;b&gt; &copy;")
@example("===")
@example("a\\")
def test_whatever_a_text_holds_it_is_read_as_that_text(text):
    tags, found = read(escaped(text))
    assert tags == {"p", "/p"}
    assert plain(found) == plain(text)


@given(st.text(MARKUP, min_size=1).filter(str.strip))
def test_a_cell_and_an_item_hold_a_text_and_nothing_else(text):
    tags, found = read(f"- {escaped(text)}")
    assert tags == {"ul", "/ul", "li", "/li"}
    assert plain(found) == plain(text)
    tags, found = read(f"| a | b |\n| --- | --- |\n| {escaped(text)} | x |")
    assert not tags & {"a", "em", "strong", "code", "img", "h1", "h2"}
    assert plain(found) == f"a b {plain(text)} x"


@pytest.mark.parametrize("name", ["every block", *SHIPPED])
def test_read_back_it_says_all_that_the_document_says(name):
    made = every_block() if name == "every block" else document(name)
    tags, text = read(markdown(made))
    found = plain(text)
    assert [each for each in texts_of(made) if plain(each) not in found] == []
    assert {tag.strip("/") for tag in tags} <= {
        *("h1", "h2", "h3", "h4", "h5", "h6", "p", "ul", "li", "strong", "em", "blockquote"),
        *("table", "thead", "tbody", "tr", "th", "td"),
    }


def test_an_operation_is_one_item_with_a_box():
    text = markdown(every_block())
    item = "- [ ] **M** Row, sewing machine, zip foot\n\n  Stitch it.\n\n  **Check:** it holds"
    assert text.count(item) == 5


def test_pictures_are_told_in_italics():
    text = markdown(every_block())
    assert "*Picture: A row of stitches.*\n\nA caption" in text
    assert "*A grey dot*\n\nThe mark" in text
    assert "![" not in text
