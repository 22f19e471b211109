from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from load.strategies_garment import garments

from seqplan.base.measure import parse_length
from seqplan.load.document import load_file, load_text
from seqplan.load.dump import dump
from seqplan.load.dump_entries import writer_of
from seqplan.load.keys import keys_with
from seqplan.model.entry import Verb
from seqplan.model.garment import Garment

_SKIRT = Path(__file__).parent / "data" / "breakwater-skirt.yaml"
_GARMENTS = sorted((Path(__file__).parents[2] / "garments").glob("*.yaml"))


@settings(max_examples=60, deadline=None, suppress_health_check=list(HealthCheck))
@given(garments())
def test_a_garment_that_was_written_reads_back_equal(garment: Garment) -> None:
    text = dump(garment)
    loaded = load_text(text)
    errors = [item for item in loaded.diagnostics if item.severity.value == "error"]
    assert errors == []
    assert loaded.garment == garment
    assert dump(loaded.garment) == text


# A gap is closed that somebody left; elastic goes through a casing that somebody made.
_TOGETHER = {Verb.CLOSE: [Verb.FINISH, Verb.DO], Verb.INSERT: [Verb.INSERT, Verb.CASING]}


@pytest.mark.parametrize("verb", Verb)
@settings(max_examples=6, deadline=None, suppress_health_check=list(HealthCheck))
@given(data=st.data())
def test_whatever_an_entry_says_reads_back_equal(verb: Verb, data: st.DataObject) -> None:
    garment = data.draw(garments(_TOGETHER.get(verb, [verb]), least=2))
    assert load_text(dump(garment)).garment == garment


@pytest.mark.parametrize("path", [_SKIRT, *_GARMENTS], ids=lambda path: path.stem)
def test_garments_to_start_from_read_back_equal(path: Path) -> None:
    garment = load_file(path).garment
    assert garment is not None
    assert load_text(dump(garment), folder=path.parent).garment == garment


def test_every_key_of_an_operation_that_is_looked_at_is_written() -> None:
    for verb in Verb:
        for key in keys_with(verb).values():
            assert writer_of(key) is not None


def test_text_that_other_readers_would_take_for_something_else_is_quoted() -> None:
    garment = load_text("garment: 'no'\nversion: 1:30\noperations: {a: {do: '# cut'}}\n").garment
    assert garment is not None
    assert dump(garment) == (
        'garment: "no"\nversion: "1:30"\nunits: cm\noperations:\n  a: {do: "# cut"}\n'
    )


def test_fine_inches_are_written_so_that_they_read_back() -> None:
    garment = load_text("garment: Pier apron\noperations: {a: {do: cut}}\n").garment
    assert garment is not None
    fine = replace(garment, allowance=parse_length("0.1255 in"))
    assert load_text(dump(fine)).garment == fine


def test_hidden_characters_of_a_garment_made_elsewhere_are_written_as_numbers() -> None:
    garment = load_text("garment: Pier apron\noperations: {a: {do: cut}}\n").garment
    assert garment is not None
    text = dump(replace(garment, name="a\x07\u2028b"))
    assert text.startswith('garment: "a\\x07\\u2028b"\n')


def test_all_is_written_where_there_are_no_pieces() -> None:
    garment = load_text("garment: Pier apron\noperations: {a: {turn: all}}\n").garment
    assert garment is not None
    assert "a: {turn: all}" in dump(garment)
