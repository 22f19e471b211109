"""Choices with what they are for, own seams, sizes, waivers."""

import pytest
from load.files import file_with

from seqplan.load.document import load_text
from seqplan.model.garment import Choice, Garment, OwnSeam

_CHOICES = "choices: {view: [plain, lined, short], way: [sides first, hem first]}"
_ASKED = (
    "a: {do: A, when: {view: [lined, short]}}\n  b: {do: B, when: {way: hem  first, view: lined}}"
)


def _garment(**lines: str) -> Garment:
    loaded = load_text(file_with(**lines))
    assert loaded.diagnostics == ()
    assert loaded.garment is not None
    return loaded.garment


def test_a_choice_has_its_options_in_their_order() -> None:
    garment = _garment(top=_CHOICES, operation=_ASKED)
    assert garment.choices == (
        Choice("view", ("plain", "lined", "short"), ("choices", "view")),
        Choice("way", ("sides first", "hem first"), ("choices", "way")),
    )


def test_pieces_notions_and_operations_say_for_which_options_they_are() -> None:
    garment = _garment(
        top=_CHOICES,
        operation=_ASKED,
        piece="flap: {when: {view: short}}",
        notion="cord: {kind: cord, when: {way: sides first}}",
    )
    assert garment.entries[-2].when == (("view", "lined"), ("view", "short"))
    assert garment.entries[-1].when == (("way", "hem first"), ("view", "lined"))
    assert garment.pieces[-1].when == (("view", "short"),)
    assert garment.notions[-1].when == (("way", "sides first"),)


def test_a_choice_that_could_not_be_read_is_not_missed_where_it_is_used() -> None:
    loaded = load_text(
        file_with(top="choices: {view: []}", operation="x: {do: A, when: {view: a}}")
    )
    assert [item.slug for item in loaded.diagnostics] == ["empty-list"]
    loaded = load_text(file_with(top="choices: [view]", operation="x: {do: A, when: {view: a}}"))
    assert [item.slug for item in loaded.diagnostics] == ["wrong-type"]


def test_options_that_nothing_tells_apart_are_named() -> None:
    loaded = load_text(file_with(top=_CHOICES, operation="a: {do: A, when: {way: hem first}}"))
    (warning,) = loaded.diagnostics
    assert warning.message == (
        "nothing tells these options of `view` apart: `plain`, `lined`, `short`"
    )


def test_one_thing_may_be_made_in_two_ways_between_which_there_is_a_choice() -> None:
    line = (
        "a: {do: A, makes: tie, when: {view: [plain, short]}}\n"
        "  b: {do: B, makes: tie, when: {view: lined}}\n  c: {do: C, uses: tie}"
    )
    garment = _garment(top="choices: {view: [plain, lined, short]}", operation=line)
    assert [entry.makes for entry in garment.entries[-3:]] == [("tie",), ("tie",), ()]


def test_an_own_seam_has_its_parts_in_their_order() -> None:
    garment = _garment(top="recipes: {house  seam: [finish, sew, press], plain sew: sew}")
    assert garment.recipes == (
        OwnSeam("house seam", ("finish", "sew", "press"), ("recipes", "house seam")),
        OwnSeam("plain sew", ("sew",), ("recipes", "plain sew")),
    )


def test_a_notion_has_a_length_for_each_size() -> None:
    garment = _garment(
        top="sizes: [M, S, 38]", notion="t: {kind: tape, length: {S: 20, M: 22, 38: 24 in}}"
    )
    assert garment.sizes == ("M", "S", "38")
    tape = garment.notions[-1]
    assert [(size, length.written_in) for size, length in tape.by_size] == [
        ("M", "cm"),
        ("S", "cm"),
        ("38", "in"),
    ]
    assert tape.length == tape.by_size[0][1]


@pytest.mark.parametrize("brackets", ["[{}]", "{}"])
def test_a_rule_is_waived_for_some_operations_or_for_all(brackets: str) -> None:
    line = "{rule: a-rule, at: [look, channel / turn-up], because: it has to}"
    (waiver,) = _garment(top=f"waive: {brackets.format(line)}").waivers
    assert (waiver.rule, waiver.at, waiver.because) == (
        "a-rule",
        ("look", "channel/turn-up"),
        "it has to",
    )
    assert _garment(top="waive: [{rule: a-rule, because: so}]").waivers[0].at == ()
