from fractions import Fraction

import pytest
from load.files import file_with

from seqplan.base.measure import Length
from seqplan.load.document import load_text
from seqplan.model.entry import Entry, Portion, SeamKind, Verb, ZipMethod
from seqplan.model.piece import EdgeRef, Hand


def _entry(line: str, **lines: str) -> Entry:
    loaded = load_text(file_with(operation=f"x: {{{line}}}", **lines))
    assert loaded.diagnostics == ()
    assert loaded.garment is not None
    return loaded.garment.entries[-1]


def _cm(number: int) -> Length:
    return Length(Fraction(number * 10))


def test_a_run_is_read_in_its_order_with_sides() -> None:
    entry = _entry("finish: [back.hem@left, front.hem, back.hem@right]")
    assert [str(ref) for ref in entry.run] == ["back.hem@left", "front.hem", "back.hem@right"]
    assert entry.run[0] == EdgeRef(entry.run[0].piece, "hem", Hand.LEFT)


def test_a_seam_is_read_with_everything_about_it() -> None:
    entry = _entry(
        "sew: front.side, to: back.side, as: French, press: to back, allowance: 2, in one: yes,"
        " method: in the round, open: look, stop: 3 before waist"
    )
    assert (entry.seam, entry.press_to, entry.allowance) == (SeamKind.FRENCH, "back", _cm(2))
    assert (entry.is_in_one, entry.in_the_round, entry.is_flat) == (True, True, False)
    assert (entry.open, entry.portion) == ("look", Portion(_cm(3), "waist", False))


def test_a_seam_is_plain_unless_it_says_otherwise() -> None:
    entry = _entry("sew: back.centre, part: 10 from opening, method: flat, press: open")
    assert (entry.seam, entry.to, entry.press_to) == (SeamKind.PLAIN, (), "open")
    assert entry.portion == Portion(_cm(10), "opening", True)
    assert entry.is_flat


def test_a_piece_after_to_means_its_edges_of_the_same_names() -> None:
    entry = _entry("sew: [back.waist, back.side@left], to: front", fabric="net: knit")
    assert [str(ref) for ref in entry.to] == ["front.waist", "front.side@left"]


def test_the_first_and_the_last_edge_of_half_a_ring_do_not_meet() -> None:
    loaded = load_text(file_with(operation="x: {sew: front.hem, to: back.hem, part: 1 from waist}"))
    assert [item.slug for item in loaded.diagnostics] == ["not-next-to"]
    assert _entry("sew: pocket.mouth, to: front.hem, part: 1 from side").portion is not None


def test_copies_that_are_alike_may_be_sewn_to_one_another() -> None:
    assert [str(ref) for ref in _entry("sew: strap.long, to: strap.long").to] == ["strap.long"]
    assert _entry("sew: strap.long").to == ()


def test_the_two_sides_of_a_pair_may_be_named() -> None:
    assert _entry("sew: back.centre@left, to: back.centre@right").to[0].hand is Hand.RIGHT


def test_a_piece_whose_edge_stands_twice_may_be_sewn_to_itself() -> None:
    assert _entry("sew: pocket.side").to == ()


@pytest.mark.parametrize(
    ("line", "method"),
    [
        ("insert: zip, in: back.opening", ZipMethod.INVISIBLE),
        ("insert: zip, in: back.opening, method: centred", ZipMethod.CENTRED),
        ("insert: tape, in: back.opening", ZipMethod.CENTRED),
    ],
)
def test_how_a_zip_is_set_follows_from_its_kind(line: str, method: ZipMethod) -> None:
    entry = _entry(line)
    assert (entry.method, str(entry.run[0]), entry.into) == (method, "back.opening", None)


def test_elastic_goes_through_a_casing() -> None:
    entry = _entry("insert: tape, in: channel, overlap: 1")
    assert (entry.into, entry.run, entry.method, entry.overlap) == ("channel", (), None, _cm(1))


def test_interfacing_is_fused_to_pieces() -> None:
    entry = _entry("fuse: [front, pocket], with: fusible")
    assert (entry.pieces, entry.fabric) == (("front", "pocket"), "fusible")


def test_hems_and_casings_are_read() -> None:
    hem = _entry("hem: front.hem, depth: 3, turned: twice, by: hand, flat: yes")
    assert (hem.depth, hem.turned, hem.by_hand, hem.is_flat) == (_cm(3), "twice", True, True)
    assert _entry("hem: front.hem, method: in the round, flat: no").in_the_round
    casing = _entry("casing: front.waist, depth: 3, gap: 4, turned: once")
    assert (casing.gap, casing.turned, casing.is_flat) == (_cm(4), "once", False)


def test_an_edge_is_tacked_to_a_notion_or_an_operation() -> None:
    assert _entry("tack: lining.side, to: zip").to_name == "zip"
    assert _entry("tack: lining.side, to: channel").to_name == "channel"


def test_all_means_all_pieces() -> None:
    assert _entry("turn: all").pieces == ("front", "back", "lining", "strap", "pocket", "patch")
    loaded = load_text("garment: x\noperations: {a: {fit: all}}\n")
    assert loaded.garment is not None
    assert loaded.garment.entries[0].pieces == ()


def test_free_words_say_where_and_what_they_make() -> None:
    entry = _entry("do: Lay it  out, on: all, at: front.hem, makes: [loop, tie]")
    assert (entry.words, entry.makes, len(entry.pieces)) == ("Lay it out", ("loop", "tie"), 6)
    assert _entry("do: B, uses: loop}\n  y: {do: A, makes: loop").verb is Verb.DO


def test_what_all_operations_have_is_read() -> None:
    entry = _entry(
        "press: front.hem, station: iron, foot: zip foot, minutes: 0, after: [look, channel/press],"
        " because: it is flat then, without: [pin], unit: front, title: T, note: N, say: S"
    )
    assert (entry.station, entry.foot, entry.minutes) == ("iron", "zip foot", 0)
    assert (entry.after, entry.because) == (("look", "channel/press"), "it is flat then")
    assert (entry.without, entry.unit) == (("pin",), ("front",))
    assert (entry.title, entry.note, entry.say) == ("T", "N", "S")
    assert entry.path == ("operations", "x")


@pytest.mark.parametrize(
    ("line", "words", "station"),
    [
        ("slash: front.hem", "slash: front.hem", "table"),
        ("buttonhole: [a, b], station: hand", "buttonhole: a, b", "hand"),
        ("patch pocket: {a: b}, at: nowhere, open: x", "patch pocket: a: b", "table"),
        ("band: front.hem, topstitch: 0.5", "band: front.hem", "table"),
    ],
)
def test_a_planned_verb_counts_as_free_words(line: str, words: str, station: str) -> None:
    loaded = load_text(file_with(operation=f"x: {{{line}, after: look}}"))
    assert [item.slug for item in loaded.diagnostics] == ["not-looked-at-yet"]
    assert loaded.garment is not None
    entry = loaded.garment.entries[-1]
    assert (entry.verb, entry.words, entry.station) == (Verb.DO, words, station)
    assert entry.after == ("look",)


def test_nobody_is_asked_who_makes_a_thing_while_some_operation_cannot_be_read() -> None:
    loaded = load_text(file_with(operation="x: {do: A, uses: loop}\n  y: {maeks: loop}"))
    assert [item.slug for item in loaded.diagnostics] == ["no-verb"]
