"""Lengths that their author gives in both systems: read, printed as given, written again."""

import pytest
from load.files import file_with

from seqplan.base.measure import both, both_whole_inches
from seqplan.load.document import load_text
from seqplan.load.dump import dump


def read(text):
    loaded = load_text(file_with(top=f"allowance: {text}"))
    return loaded.garment and loaded.garment.allowance, [d.slug for d in loaded.diagnostics]


@pytest.mark.parametrize(
    ("text", "printed"),
    [
        ("{cm: 1.5, in: 5/8}", "1.5 cm (⅝ in)"),
        ("{in: 5/8, cm: 1.5}", "⅝ in (1.5 cm)"),
        ("{cm: 1.2, in: 1/2}", "1.2 cm (½ in)"),
        ("{mm: 6, in: 1/4}", "6 mm (¼ in)"),
        ("{in: 1 1/2, cm: 4}", "1½ in (4 cm)"),
        ("{cm: 0.5, in: 3/16}", "0.5 cm (3/16 in)"),
        ("{in: 7, cm: 18}", "7 in (18 cm)"),
    ],
)
def test_a_pair_is_printed_as_it_is_given(text, printed):
    length, slugs = read(text)
    assert slugs == []
    assert both(length) == both_whole_inches(length) == printed


@pytest.mark.parametrize(
    "text",
    [
        "{cm: 1.5}",
        "{cm: 1.5, mm: 15}",
        "{cm: 1.5, in: 5/8, mm: 15}",
        "{cm: 1.5 cm, in: 5/8}",
        "{cm: 1.5, in: some}",
        "{cm: 1.5 in, in: 5/8}",
    ],
)
def test_what_is_no_pair_is_an_error_with_its_place(text):
    loaded = load_text(file_with(top=f"allowance: {text}"))
    faults = [(d.slug, d.span.line) for d in loaded.diagnostics]
    assert set(faults) == {("unreadable-length", 2)}


def test_two_measures_that_are_not_the_same_are_told():
    length, slugs = read("{cm: 1.5, in: 3/4}")
    assert both(length) == "1.5 cm (¾ in)"
    assert slugs == ["unlike-lengths"]


def test_a_notion_takes_a_pair_where_it_could_take_sizes():
    loaded = load_text(file_with(notion="cord: {kind: cord, length: {cm: 90, in: 36}}"))
    (cord,) = [n for n in loaded.garment.notions if n.id == "cord"]
    assert (both(cord.length), cord.by_size) == ("90 cm (36 in)", ())


@pytest.mark.parametrize("text", ["{cm: 1.5, in: 5/8}", "{in: 1 1/2, mm: 38}"])
def test_a_pair_is_written_again_as_it_was(text):
    loaded = load_text(file_with(top=f"allowance: {text}"))
    assert f"allowance: {text}" in dump(loaded.garment)
