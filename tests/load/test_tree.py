import pytest
import yaml
from load.files import file_with

from seqplan.base.path import Span
from seqplan.load import tree
from seqplan.load.document import load_text
from seqplan.load.nodes import ListNode, MappingNode, Scalar
from seqplan.load.sink import Sink


def _read(text: str) -> MappingNode:
    root = tree.read_tree(text, Sink())
    assert isinstance(root, MappingNode)
    return root


def test_scalars_stay_the_text_that_was_written() -> None:
    written = ["no", "1:30", "5/8", "010", "2026-01-02", "~", "1e3", "0x1F", ".inf"]
    root = _read("".join(f"k{place}: {text}\n" for place, text in enumerate(written)))
    values = [pair.value for pair in root.pairs]
    assert [value.text for value in values if isinstance(value, Scalar)] == written


def test_nodes_know_their_places_and_paths() -> None:
    root = _read("a: x\nb:\n  - y\n  - {c: 'zü'}\n")
    (first, second) = root.pairs
    assert (first.key, first.span, first.value.span) == ("a", Span(1, 1, 1, 2), Span(1, 4, 1, 5))
    assert isinstance(second.value, ListNode)
    inner = second.value.items[1]
    assert isinstance(inner, MappingNode)
    assert inner.pairs[0].value == Scalar("zü", Span(4, 9, 4, 13), ("b", 1, "c"), is_plain=False)


def test_a_key_that_stands_twice_is_kept_twice_and_the_first_is_looked_up() -> None:
    sink = Sink()
    root = tree.read_tree("a: 1\na: 2\n", sink)
    assert isinstance(root, MappingNode)
    assert len(root.pairs) == 2
    assert root.get("a") is root.pairs[0]
    assert [item.slug for item in sink.found] == ["duplicate-key"]


def test_both_parsers_give_the_same_tree(monkeypatch: pytest.MonkeyPatch) -> None:
    text = file_with(operation="x: {do: 'é 🧵', note: |-\n    a\n    b\n  }").replace(
        "note: |-\n    a\n    b\n  ", "note: a"
    )
    fast = _read(text)
    monkeypatch.setattr(tree, "_LOADER", yaml.SafeLoader)
    assert _read(text) == fast


@pytest.mark.parametrize(
    ("text", "slug"),
    [
        ("a: [1, 2\nb: 3\n", "unclosed-list"),
        ("a: {x: 1\n", "unclosed-braces"),
        ("a: 'x\n", "unclosed-quote"),
        ("a:\n\tb: 1\n", "tab"),
        ("a: |\n  x\n\ty\n", "tab"),
        ("a: b: c\n", "stray-colon"),
        ("a: @x\n", "stray-character"),
        ("a: *\n", "stray-character"),
        ("a:\n  b: 1\n c: 2\n", "uneven-indent"),
        ("- a\nb: 1\n", "uneven-indent"),
        ("a: 1\nbcd\ne: 1\n", "missing-colon"),
        ('a: "\\q"\n', "unknown-escape"),
        ("a: ]\n", "unreadable-text"),
    ],
)
@pytest.mark.parametrize("loader", ["CSafeLoader", "SafeLoader"])
def test_both_parsers_lead_to_the_same_message(
    text: str, slug: str, loader: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(tree, "_LOADER", getattr(yaml, loader))
    sink = Sink()
    tree.read_tree(text, sink)
    assert [item.slug for item in sink.found] == [slug]


def test_a_list_that_is_never_closed_shows_where_it_begins() -> None:
    (fault,) = load_text("garment: x\nnot shown: [a b\n\n\n c: {d\n").diagnostics
    assert [note.span for note in fault.notes] == [Span(2, 12, 2, 13)]


def test_anchors_aliases_and_tags_are_all_told_in_one_run() -> None:
    text = "garment: &a x\nabout: *a\nauthor: !!str y\noperations: {b: {do: *a, <<: {}}}\n"
    assert [item.slug for item in load_text(text).diagnostics] == [
        "anchor",
        "alias",
        "tag",
        "alias",
        "merge-key",
    ]
