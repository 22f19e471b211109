from fractions import Fraction

import pytest
from load.files import file_with

from seqplan.base.ids import PieceId
from seqplan.base.measure import Length
from seqplan.load.document import load_text
from seqplan.model.entry import (
    Caught,
    Closing,
    Ends,
    Entry,
    Portion,
    SeamKind,
    SeamMethod,
    Sides,
    StrapMethod,
    Verb,
    ZipMethod,
)
from seqplan.model.piece import EdgeRef, Hand, Place


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
    assert (entry.how, entry.sides, entry.gap) == (SeamMethod.FLAT, Sides.RIGHT_TOGETHER, None)


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
    everything = "front back lining strap pocket patch sleeve cuff"
    assert _entry("turn: all").pieces == tuple(everything.split())
    assert _entry("pretreat: all").fabrics == ("canvas", "fusible")
    loaded = load_text("garment: x\noperations: {a: {fit: all}}\n")
    assert loaded.garment is not None
    assert loaded.garment.entries[0].pieces == ()


def test_free_words_say_where_and_what_they_make() -> None:
    entry = _entry("do: Lay it  out, on: all, at: front.hem, makes: [loop, tie]")
    assert (entry.words, entry.makes, len(entry.pieces)) == ("Lay it out", ("loop", "tie"), 8)
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


def test_nobody_is_asked_who_makes_a_thing_while_some_operation_cannot_be_read() -> None:
    loaded = load_text(file_with(operation="x: {do: A, uses: loop}\n  y: {maeks: loop}"))
    assert [item.slug for item in loaded.diagnostics] == ["no-verb"]


def test_half_the_width_of_a_strip_is_fused() -> None:
    entry = _entry("fuse: [cuff half, pocket], with: fusible")
    assert (entry.pieces, entry.half) == (("cuff", "pocket"), ("cuff",))
    assert _entry("fuse: cuff half").half == ("cuff",)
    assert _entry("fuse: front + cuff half").half == ("cuff",)


def test_pieces_are_listed_with_commas_or_with_a_plus() -> None:
    assert _entry("turn: front + back").pieces == ("front", "back")
    assert _entry("turn: [front + back, lining]").pieces == ("front", "back", "lining")


def test_what_is_caught_in_a_seam_is_an_edge_a_piece_or_a_notion() -> None:
    entry = _entry("sew: front.waist, to: back.waist, between: [strap.end, patch, tape]")
    assert [(str(c.edge or c.piece or c.notion), c.at) for c in entry.between] == [
        ("strap.end", None),
        ("patch", None),
        ("tape", None),
    ]
    assert entry.between[0] == Caught(edge=_ref("strap.end"))


def test_what_is_caught_may_say_at_which_edge() -> None:
    line = "sew: [front.waist, front.side], to: back, between: {strap.end: front.waist@left}"
    (caught,) = _entry(line).between
    assert (str(caught.edge), str(caught.at)) == ("strap.end", "front.waist@left")


def _ref(name: str) -> EdgeRef:
    piece, _, edge = name.partition(".")
    return EdgeRef(_entry(f"turn: {piece}").pieces[0], edge)


@pytest.mark.parametrize(
    ("written", "kept"),
    [
        ("yes", "yes"),
        ("True", "yes"),
        ("no", None),
        ("0.5", "0.5 cm"),
        ("1/4 in", "1/4 in"),
        ("on the sleeve", "on the sleeve"),
    ],
)
def test_topstitching_tells_a_distance_from_a_side(written: str, kept: str | None) -> None:
    assert _entry(f"sew: back.centre, topstitch: {written}").topstitch == kept


def test_a_seam_of_the_authors_own_is_known_by_its_name() -> None:
    recipes = "recipes: {house seam: [sew, press]}"
    entry = _entry("sew: back.centre, as: house seam", top=recipes)
    assert (entry.seam, entry.own_seam) == (SeamKind.OWN, "house seam")
    entry = _entry("sew: back.centre, as: House  Seam", top=recipes)
    assert (entry.seam, entry.own_seam) == (SeamKind.OWN, "house seam")
    assert _entry("sew: back.centre, as: french", top=recipes).seam is SeamKind.FRENCH


def test_bands_and_bindings_are_read() -> None:
    band = _entry(
        "band: front.waist, with: strap + pocket, ends: closed, close: by hand, from: wrong side,"
        " flat: yes, topstitch: 0.2"
    )
    assert (band.partners, band.ends, band.closing) == (
        ("strap", "pocket"),
        Ends.CLOSED,
        Closing.BY_HAND,
    )
    assert (band.from_wrong_side, band.is_flat, band.topstitch) == (True, True, "0.2 cm")
    binding = _entry("bind: front.waist, with: tape")
    assert (binding.notion, binding.partners, binding.from_wrong_side) == ("tape", (), False)
    assert _entry("bind: front.waist, with: [tape]").notion == "tape"
    assert _entry("bind: front.waist, with: strap").partners == ("strap",)


def test_pockets_and_places_are_read() -> None:
    pocket = _entry("patch pocket: pocket, at: [front, back.hem], open: mouth")
    assert (pocket.pieces, pocket.mouth) == (("pocket",), ("mouth",))
    assert [str(place) for place in pocket.places] == ["front", "back.hem"]
    welt = _entry("welt pocket: strap, with: pocket, at: cuff.dot@left")
    assert (welt.pieces, welt.partners, str(welt.places[0])) == (
        ("strap",),
        ("pocket",),
        "cuff.dot@left",
    )
    assert _entry("in-seam pocket: pocket, in: front.side").run[0].edge == "side"


def test_buttonholes_are_on_pieces_on_sides_of_them_or_at_spots_lines_and_edges() -> None:
    entry = _entry("buttonhole: [cuff@left, cuff.tab@right, cuff.crease, cuff.end], number: 3")
    assert [str(place) for place in entry.places] == [
        "cuff@left",
        "cuff.tab@right",
        "cuff.crease",
        "cuff.end",
    ]
    assert entry.number == 3


def test_things_are_attached_at_edges_and_places() -> None:
    entry = _entry("attach: strap, to: [front.waist, cuff.tab, back], number: 2")
    assert (entry.pieces, entry.notion, entry.number) == (("strap",), None, 2)
    assert ([str(ref) for ref in entry.run], [str(place) for place in entry.places]) == (
        ["front.waist"],
        ["cuff.tab", "back"],
    )
    assert _entry("attach: zip, at: cuff@left").places == (Place(_id("cuff"), None, Hand.LEFT),)


def _id(name: str) -> PieceId:
    return PieceId(name)


@pytest.mark.parametrize(
    ("written", "hours"), [("24", 24), ("24 hours", 24), ("1h", 1), ("2 Days", 48), ("1 day", 24)]
)
def test_waiting_is_told_in_hours_or_days(written: str, hours: int) -> None:
    entry = _entry(f"wait: {written}, on: front")
    assert (entry.hours, entry.pieces) == (hours, ("front",))


def test_what_is_closed_left_a_gap_or_is_told_in_free_words() -> None:
    assert _entry("close: bag").closes == "bag"
    assert _entry("close: look").closes == "look"
    part = "sew: back.centre, part: 5 from hem"
    assert _entry(f"close: y}}\n  y: {{{part}").verb is Verb.SEW


def test_straps_slits_and_the_rest_are_read() -> None:
    strap = _entry("strap: strap, method: folded, topstitch: yes")
    assert (strap.strap, strap.topstitch) == (StrapMethod.FOLDED, "yes")
    assert _entry("strap: strap").strap is StrapMethod.TURNED
    assert str(_entry("slash: sleeve.vent").run[0]) == "sleeve.vent"
    assert _entry("hold: front.waist, with: lining").partners == ("lining",)
    assert _entry("box corner: [front.hem, front.side], width: 8").width == _cm(8)
    assert _entry("open: zip").notion == "zip"
    assert _entry("turn: front, through: the gap").through == "the gap"
    assert _entry("insert: zip, in: back.opening, method: fly, with: strap").partners == ("strap",)
    assert _entry("sew: back.centre, sides: wrong together").sides is Sides.WRONG_TOGETHER
    assert _entry("do: A, picture: loop.svg").picture == "loop.svg"


def test_a_piece_is_attached_whole_or_by_one_edge_from_either_side() -> None:
    whole = _entry("attach: front, at: back.hem")
    assert (whole.pieces, whole.by, whole.from_wrong_side) == ((PieceId("front"),), None, False)
    held = _entry("attach: front.side, at: back.hem, from: wrong side")
    assert held.pieces == (PieceId("front"),)
    assert held.by == EdgeRef(PieceId("front"), "side")
    assert held.from_wrong_side
