from fractions import Fraction

import pytest

from seqplan.base.measure import Length
from seqplan.base.path import Span
from seqplan.load import fields
from seqplan.load.keys import Section, keys_of
from seqplan.load.nodes import ListNode, Node, Scalar
from seqplan.load.sink import Sink, listing, quoted

_AT = Span(1, 1, 1, 2)


def _scalar(text: str) -> Scalar:
    return Scalar(text, _AT, ("about",))


def _slugs(sink: Sink) -> list[str]:
    return [item.slug for item in sink.found]


def test_text_is_stripped_and_brought_into_one_line() -> None:
    assert fields.text(_scalar("  a  b\n c "), Sink()) == "a b c"


def test_a_note_keeps_its_lines() -> None:
    assert fields.note(_scalar(" a  b \n\n  c\n"), Sink()) == "a b\n\nc"


def test_what_is_absent_reads_as_none_without_a_word() -> None:
    sink = Sink()
    key = keys_of(Section.GARMENT)["units"]
    read = [
        fields.text(None, sink),
        fields.note(None, sink),
        fields.name(None, sink),
        fields.length(None, sink, "cm"),
        fields.number(None, sink, (0, 9)),
        fields.yes_no(None, sink),
        fields.choice(None, sink, key),
    ]
    assert read == [None] * 7
    assert fields.listed(None, lambda _: None, sink) == []
    assert sink.found == ()


@pytest.mark.parametrize(
    ("text", "value"),
    [("yes", True), ("TRUE", True), ("no", False), ("False", False), ("on", None), ("1", None)],
)
def test_yes_and_no_are_read_in_any_capitals(text: str, value: bool | None) -> None:
    assert fields.yes_no(_scalar(text), Sink()) is value


@pytest.mark.parametrize(
    ("text", "value"),
    [("0", 0), ("7", 7), ("007", 7), ("9", 9), ("10", None), ("-1", None), ("1.0", None)],
)
def test_whole_numbers_are_kept_within_their_bounds(text: str, value: int | None) -> None:
    sink = Sink()
    assert fields.number(_scalar(text), sink, (0, 9)) == value
    assert _slugs(sink) == ([] if value is not None else ["unreadable-number"])


def test_a_bare_length_is_in_the_units_of_the_file() -> None:
    assert fields.length(_scalar("1 5/8"), Sink(), "in") == Length(Fraction(1651, 40), "in")
    assert fields.length(_scalar("3"), Sink(), "mm") == Length(Fraction(3), "mm")


def test_a_choice_is_read_in_any_capitals_and_offers_what_comes_close() -> None:
    key, sink = keys_of(Section.PIECE)["layer"], Sink()
    assert fields.choice(_scalar("FACING"), sink, key) == "facing"
    assert fields.choice(_scalar("fasing"), sink, key) is None
    (fault,) = sink.found
    assert fault.message == (
        "expected one of `shell`, `facing`, `lining`, `interlining`, found `fasing`"
    )
    assert fault.fix == "Did you mean `facing`?"


def test_a_single_value_counts_as_a_list_of_one() -> None:
    def read(node: Node) -> str | None:
        return fields.text(node, Sink())

    one = _scalar("a")
    assert fields.listed(one, read, Sink()) == [("a", one)]
    assert fields.listed(ListNode((one,), _AT, ()), read, Sink()) == [("a", one)]


def test_an_empty_value_is_named_by_its_key() -> None:
    sink = Sink()
    assert fields.text(_scalar(" "), sink) is None
    assert sink.found[0].message == "nothing stands after `about`"


def test_names_that_differ_only_by_capitals_are_offered_first() -> None:
    assert Sink().suggest("Front", ["fronts", "front"], "") == "Did you mean `front`?"


def test_two_close_names_are_both_offered() -> None:
    assert Sink().suggest("hen", ["hem", "hens"], "") == "Did you mean `hem` or `hens`?"


def test_where_no_name_is_close_the_known_ones_are_listed() -> None:
    assert Sink().suggest("zip", ["waist", "side"], "") == "Known here: `waist`, `side`."


def test_long_lists_and_long_texts_are_shortened() -> None:
    assert listing(f"n{n}" for n in range(13)).endswith("`n11`, …")
    assert listing(f"n{n}" for n in range(12)).endswith("`n11`")
    assert len(quoted("x" * 500)) == 62
    assert quoted("a\n  b") == "`a b`"
