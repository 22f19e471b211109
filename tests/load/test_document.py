from pathlib import Path

import pytest
from load.files import file_with

from seqplan.base.diagnostic import Diagnostic, Note, Severity
from seqplan.base.errors import UnreadableFileError
from seqplan.base.ids import RuleSlug
from seqplan.base.path import Span
from seqplan.load.document import load_file, load_text, place

_SKIRT = Path(__file__).parent / "data" / "breakwater-skirt.yaml"


def test_the_skirt_loads_without_a_word() -> None:
    loaded = load_file(_SKIRT)
    assert loaded.diagnostics == ()
    assert loaded.garment is not None
    assert len(loaded.garment.entries) == 12
    assert loaded.name == str(_SKIRT)
    assert loaded.text == _SKIRT.read_text("utf-8")


def test_a_missing_file_a_folder_and_a_bad_path_cannot_be_read(tmp_path: Path) -> None:
    with pytest.raises(UnreadableFileError, match="there is no such file"):
        load_file(tmp_path / "none.yaml")
    with pytest.raises(UnreadableFileError, match="it is a folder"):
        load_file(tmp_path)
    with pytest.raises(UnreadableFileError, match="null byte"):
        load_file("a\0b")
    with pytest.raises(UnreadableFileError, match="cannot read"):
        load_file(tmp_path / ("n" * 5000))


def test_a_file_without_permission_cannot_be_read(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(*_: object, **__: object) -> None:
        raise PermissionError

    monkeypatch.setattr("builtins.open", refuse)
    with pytest.raises(UnreadableFileError, match="no permission"):
        load_file(tmp_path / "locked.yaml")


def test_a_file_that_is_too_large_cannot_be_read(tmp_path: Path) -> None:
    path = tmp_path / "large.yaml"
    path.write_bytes(b"#" * 2_000_001)
    with pytest.raises(UnreadableFileError, match="larger than 2 MB"):
        load_file(path)


def test_all_faults_of_a_file_are_told_in_one_run_sorted_by_place() -> None:
    text = file_with(top="abuot: x", operation="x: {hem: fornt.hem, depth: deep, after: nothing}")
    text = text.replace("depth: 2.5", "depth: 2.5, foot: [zip]").replace("cut: 2", "cut: two")
    loaded = load_text(text)
    assert [item.slug for item in loaded.diagnostics] == [
        "unknown-key",
        "unreadable-cut",
        "wrong-type",
        "unknown-piece",
        "unreadable-length",
        "unknown-operation",
    ]
    places = [item.span for item in loaded.diagnostics]
    assert places == sorted(place for place in places if place is not None)


def test_faults_in_an_entry_that_stands_twice_are_told_too() -> None:
    loaded = load_text(file_with(operation="look: {hem: front.hme}"))
    assert [item.slug for item in loaded.diagnostics] == ["duplicate-key", "unknown-edge"]


def test_a_section_that_cannot_be_read_casts_no_doubt_on_what_names_its_things() -> None:
    text = file_with(operation="x: {hem: front.hem}").replace("pieces:\n", "pieces: none\nx:\n")
    assert [item.slug for item in load_text(text).diagnostics] == ["wrong-type", "unknown-key"]


def test_a_piece_with_a_fault_casts_no_doubt_on_its_edges() -> None:
    loaded = load_text(file_with(piece="flap: {edges: [a b]}", operation="x: {hem: flap.rim}"))
    assert [item.slug for item in loaded.diagnostics] == ["bad-name"]


def test_windows_line_ends_and_a_byte_order_mark_change_nothing() -> None:
    text = _SKIRT.read_text("utf-8")
    changed = load_text(b"\xef\xbb\xbf" + text.replace("\n", "\r\n").encode())
    assert changed.diagnostics == ()
    assert changed.garment == load_text(text).garment
    assert not changed.text.startswith("\ufeff")


def test_columns_count_characters_whatever_their_width() -> None:
    loaded = load_text('garment: "🧵 Möwe 縫"\noperations: {nähen: {do: "🧵🧵", fuß: x}}\n')
    (fault,) = loaded.diagnostics
    assert fault.span == Span(2, 32, 2, 35)


def test_columns_are_right_after_a_byte_order_mark() -> None:
    (fault,) = load_text(b"\xef\xbb\xbfgarmnt: x\noperations: {a: {do: b}}\n").diagnostics
    assert fault.span == Span(1, 1, 1, 7)


def test_a_name_is_the_same_however_its_accents_are_typed() -> None:
    loaded = load_text("garment: x\noperations:\n  e\u0301: {do: a}\n  b: {do: b, after: \u00e9}\n")
    assert loaded.diagnostics == ()
    assert loaded.garment is not None
    assert loaded.garment.entries[0].id == "\u00e9"


def test_a_key_twice_shows_both_places() -> None:
    loaded = load_text(file_with(operation="look: {do: Look again}"))
    (fault,) = loaded.diagnostics
    (note,) = fault.notes
    assert note.span is not None
    assert fault.span is not None
    assert note.span.line == fault.span.line - 3


def test_bytes_that_are_no_text_are_placed_at_the_first_bad_one() -> None:
    (fault,) = load_text("garment: Möw".encode() + b"\xff\n").diagnostics
    assert (fault.slug, fault.span) == ("not-utf-8", Span(1, 13, 1, 14))
    (fault,) = load_text("garment: x".encode("utf-16")).diagnostics
    assert (fault.slug, fault.span) == ("not-utf-8", Span(1, 1, 1, 2))
    assert "UTF-16" in fault.message


def test_a_place_is_found_for_every_path_or_the_nearest_above() -> None:
    loaded = load_file(_SKIRT)
    where, lines = loaded.where, loaded.text.splitlines()

    def shown(span: Span) -> str:
        return lines[span.line - 1][span.column - 1 : span.end_column - 1]

    hem = ("operations", "hem")
    assert shown(where.span(hem)) == "hem"
    assert shown(where.value(hem)) == "{hem: [back.hem, front.hem], depth: 3}"
    assert shown(where.span((*hem, "depth"))) == "3"
    assert shown(where.key((*hem, "depth"))) == "depth"
    assert shown(where.span((*hem, "hem"))) == "hem"
    assert shown(where.span((*hem, "hem", 1))) == "front.hem"
    assert where.span((*hem, "foot")) == where.span(hem)
    assert shown(where.span(("operations", "none"))) == "operations"
    assert where.span(("nothing",)) == where.span(()) == Span(1, 1, 1, 1)


def test_findings_that_know_only_a_path_are_placed_and_sorted() -> None:
    where = load_file(_SKIRT).where
    late, early = (
        Diagnostic(
            slug=RuleSlug("a-rule"),
            severity=Severity.WARNING,
            message="a finding",
            path=("operations", name),
            notes=(Note("because of this", ("pieces", "front")), Note("and so it is")),
        )
        for name in ("hem", "zip")
    )
    placed = place([late, early], where)
    assert [item.path[-1] for item in placed] == ["zip", "hem"]
    assert placed[1].span == Span(27, 3, 27, 6)
    assert [note.span for note in placed[0].notes] == [Span(9, 3, 9, 8), None]
