"""Text from files inside the graph language."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from seqplan.render.engine import render_svg
from seqplan.render.quoting import markup, quote

NASTY = ['"', "\\", '\\"', "a\\N", "<b>", "&amp;", "}", "//", "\n", "é ½ 漢", "'", "--", "->", "#"]


@pytest.mark.parametrize("text", NASTY)
def test_a_quoted_text_is_shown_as_it_is(text):
    svg = render_svg(f'digraph g {{ a [pos="0,0", label={quote("x" + text + "y")}] }}')
    assert "<svg" in svg


@pytest.mark.parametrize("text", NASTY)
def test_a_text_in_markup_is_shown_as_it_is(text):
    svg = render_svg(f'digraph g {{ a [pos="0,0", label=<<B>{markup("x" + text + "y")}</B>>] }}')
    assert "<svg" in svg


@given(st.text(max_size=60))
def test_no_text_ends_its_quotes(text):
    quoted = quote(text)
    assert quoted.startswith('"')
    assert quoted.endswith('"')
    inner = quoted[1:-1].replace("\\\\", "").replace('\\"', "")
    assert '"' not in inner


@given(st.text(max_size=60))
def test_markup_holds_no_brackets(text):
    assert not set('<>"') & set(markup(text))
