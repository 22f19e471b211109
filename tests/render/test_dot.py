"""The chart of the dependencies: complete, legible, and the same every time."""

import re

import pytest
from render.charts import BOTH, NAMES, SVG, coat, coverall, drawn, opened, word_sizes

from seqplan.draw.textwidth import text_width
from seqplan.explain.chart import Lanes, make_chart
from seqplan.pipeline import draw_graph, open_garment
from seqplan.render.chart_boxes import operation_words
from seqplan.render.dot import chart_to_dot

NASTY = 'Quay "apron" <b>bold</b> & \\N {x} } ; --> \u202eevil'


@pytest.mark.parametrize(("path", "lanes"), BOTH, ids=NAMES)
def test_every_operation_every_station_and_every_reason_is_in_the_picture(path, lanes):
    found = open_garment(path)
    picture = drawn(found, lanes)
    told = " ".join(picture.words)
    for op in found.garment.operations:
        station = found.garment.garment.station[op.setup.station]
        assert operation_words(found.garment, op) in picture.titles
        assert station.title in told
    chart = make_chart(found.garment, found.binding.held, lanes)
    for link in chart.links:
        assert all(reason.because in picture.titles for reason in link.reasons)


@pytest.mark.parametrize(("path", "lanes"), BOTH, ids=NAMES)
def test_the_key_explains_every_number_and_no_other(path, lanes):
    found = open_garment(path)
    words = drawn(found, lanes).words
    key, title = words.index("Reasons, by their numbers"), words.index(found.garment.garment.name)
    explained = {word for word in words[key:title] if word.isdigit()}
    used = {n for word in words[title:] if re.fullmatch(r"[\d, ]+", word) for n in word.split(", ")}
    assert used == explained != set()


@pytest.mark.parametrize(("path", "lanes"), BOTH, ids=NAMES)
def test_the_key_names_no_reason_twice(path, lanes):
    found = open_garment(path)
    words = drawn(found, lanes).words
    key, title = words.index("Reasons, by their numbers"), words.index(found.garment.garment.name)
    named = [word for word in words[key + 1 : title] if not word.isdigit()]
    assert named
    assert len(named) == len(set(named))


@pytest.mark.parametrize(("path", "lanes"), BOTH, ids=NAMES)
def test_no_text_reaches_over_the_page(path, lanes):
    picture = drawn(open_garment(path), lanes)
    width = float(picture.root.get("viewBox", "").split()[2])
    shift = float(re.search(r"translate\(([\d.]+)", picture.svg)[1])
    for node in picture.root.iter(f"{SVG}text"):
        text = "".join(node.itertext())
        size = float(node.get("font-size", "0"))
        bold = node.get("font-weight") == "bold"
        length = text_width(text, size, bold=bold)
        left = float(node.get("x", "0")) + shift
        left -= {"middle": length / 2, "end": length}.get(node.get("text-anchor", ""), 0)
        assert left >= -1
        assert left + length <= width + 1


@pytest.mark.parametrize("lanes", list(Lanes), ids=lambda lanes: lanes.value)
@pytest.mark.parametrize("text", [coverall(60), coat()], ids=["coverall", "coat"])
def test_sixty_operations_can_be_read_on_a4(text, lanes, tmp_path):
    assert min(word_sizes(drawn(opened(tmp_path, text), lanes))) >= 5.6


@pytest.mark.parametrize(("path", "lanes"), BOTH, ids=NAMES)
def test_a_shipped_garment_prints_in_sizes_that_can_be_read(path, lanes):
    found = open_garment(path)
    least = 6.5 if len(found.garment.operations) < 40 else 5.6
    assert min(word_sizes(drawn(found, lanes))) >= least


def test_the_same_garment_gives_the_same_bytes():
    path, lanes = BOTH[0]
    assert draw_graph(open_garment(path), lanes) == draw_graph(open_garment(path), lanes)


def test_the_order_of_the_reasons_changes_nothing():
    path, lanes = BOTH[0]
    found = open_garment(path)
    texts = {
        chart_to_dot(
            make_chart(found.garment, reasons, lanes), found.garment, title="x", lanes=lanes
        )
        for reasons in (found.binding.held, tuple(reversed(found.binding.held)))
    }
    assert len(texts) == 1


def test_an_open_choice_is_drawn_and_explained(tmp_path):
    picture = drawn(opened(tmp_path, coat()))
    assert "one of the two waits" in " ".join(picture.words)
    assert "whichever is first" in " ".join(picture.words)


def test_what_the_author_asked_for_is_told_apart(tmp_path):
    words = " ".join(drawn(opened(tmp_path, coat())).words)
    assert "you asked for it" in words
    plain = drawn(opened(tmp_path, coverall(20)))
    assert "you asked for it" not in " ".join(plain.words)


def test_the_longest_chain_is_marked_twice_over():
    picture = drawn(open_garment(BOTH[0][0]))
    assert "longest chain" in " ".join(picture.words)
    assert 'stroke-width="2.6"' in picture.svg


def test_text_from_the_file_is_text_in_the_picture(tmp_path):
    yaml = (
        "garment: 'Quay apron \"x\" <b>y</b> & \\N {z} }'\n"
        "operations:\n"
        "  a: {do: fold, title: 'Fold <script>alert(1)</script> & \"press\"'}\n"
        "  b: {do: sew, after: a, because: 'a --> b; \\l <i>'}\n"
    )
    found = opened(tmp_path, yaml)
    assert found.has_order
    picture = drawn(found)
    assert "<script" not in picture.svg
    assert "<b>" not in picture.svg
    assert any("<b>y</b>" in word for word in picture.words)
    assert any("<script>" in word for word in [*picture.words, picture.titles])
