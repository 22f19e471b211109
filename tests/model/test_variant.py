"""A garment with its choices made, and what a combination of choices leaves lacking."""

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from seqplan.base.diagnostic import Severity
from seqplan.base.ids import EntryId, NotionId, OpId, PieceId, RuleSlug
from seqplan.model.entry import Caught, Entry, Verb
from seqplan.model.garment import Choice, Fabric, Garment, LayPlan, Notion, Picture, Waiver
from seqplan.model.piece import Edge, EdgeRef, Piece, Place, Spot
from seqplan.model.variant import check_picks, choose, default_picks, holds

_PLAIN = (("view", "plain"),)
_LINED = (("view", "lined"),)


def _piece(name: str, when=(), fabric: str | None = None) -> Piece:
    edges = (Edge("top"), Edge("side"))
    return Piece(PieceId(name), edges, fabric=fabric, when=when, path=("pieces", name))


def _entry(name: str, verb: Verb, **fields) -> Entry:
    return Entry(EntryId(name), verb, path=("operations", name), **fields)


def _edge(name: str) -> EdgeRef:
    piece, _, edge = name.partition(".")
    return EdgeRef(PieceId(piece), edge)


_GARMENT = Garment(
    name="Harbour smock",
    choices=(Choice("view", ("plain", "lined")), Choice("fastening", ("ties", "hook"))),
    fabrics=(Fabric("canvas"), Fabric("twill"), Fabric("spare")),
    plans=tuple(LayPlan(Picture("a.svg", "image/svg+xml", b""), n) for n in ("canvas", "twill")),
    pieces=(
        _piece("front", fabric="canvas"),
        _piece("back", fabric="canvas"),
        _piece("lining", _LINED, "twill"),
    ),
    notions=(
        Notion(id=NotionId("hook"), kind="hook", when=(("fastening", "hook"),)),
        Notion(id=NotionId("tape"), kind="tape"),
    ),
    entries=(
        _entry("wash", Verb.PRETREAT, fabrics=("canvas", "twill")),
        _entry("wash-lining", Verb.PRETREAT, fabrics=("twill",)),
        _entry("cut", Verb.CUT, pieces=tuple(map(PieceId, ("front", "back", "lining")))),
        _entry("side", Verb.SEW, run=(_edge("front.side"),), to=(_edge("back.side"),)),
        _entry("bag", Verb.SEW, run=(_edge("front.top"),), to=(_edge("lining.top"),), when=_LINED),
        _entry("turn", Verb.TURN, pieces=(PieceId("front"),), when=_LINED),
        _entry(
            "press",
            Verb.PRESS,
            run=(_edge("front.side"),),
            after=(OpId("bag/press"), OpId("side")),
            because="it lies flat then",
            unit=(PieceId("front"), PieceId("lining")),
        ),
    ),
    waivers=(
        Waiver(RuleSlug("one"), (OpId("bag/press"), OpId("side")), "so"),
        Waiver(RuleSlug("two"), (OpId("bag"),), "so"),
        Waiver(RuleSlug("three"), (), "so"),
    ),
)


def _names(things) -> list[str]:
    return [thing.id for thing in things]


def _with(entry: Entry, **changes) -> Garment:
    return replace(_GARMENT, entries=(*_GARMENT.entries, entry), **changes)


def test_a_choice_that_nobody_picks_takes_its_first_option() -> None:
    assert default_picks(_GARMENT) == {"view": "plain", "fastening": "ties"}
    assert choose(_GARMENT, {}) == choose(_GARMENT, default_picks(_GARMENT))


def test_what_bears_another_option_is_left_out() -> None:
    plain = choose(_GARMENT, {})
    assert _names(plain.pieces) == ["front", "back"]
    assert _names(plain.notions) == ["tape"]
    assert _names(plain.entries) == ["wash", "cut", "side", "press"]
    everything = choose(_GARMENT, {"view": "lined", "fastening": "hook"})
    assert everything.picks == (("view", "lined"), ("fastening", "hook"))
    assert replace(everything, picks=()) == _GARMENT


def test_cloth_that_only_left_out_pieces_are_cut_from_is_left_out_with_its_wash() -> None:
    plain = choose(_GARMENT, {})
    assert _names(plain.fabrics) == ["canvas", "spare"]
    assert [plan.fabric for plan in plain.plans] == ["canvas"]
    assert plain.entry[EntryId("wash")].fabrics == ("canvas",)


def test_what_is_done_to_each_piece_is_done_to_those_that_are_there() -> None:
    assert choose(_GARMENT, {}).entry[EntryId("cut")].pieces == ("front", "back")
    everything = tuple(piece.id for piece in _GARMENT.pieces)
    turned = choose(_with(_entry("turn-all", Verb.TURN, pieces=everything)), {})
    assert turned.entry[EntryId("turn-all")].pieces == ("front", "back")


def test_what_merely_points_at_something_left_out_no_longer_does() -> None:
    press = choose(_GARMENT, {}).entry[EntryId("press")]
    assert (press.after, press.because) == (("side",), "it lies flat then")
    assert press.unit == ("front",)
    seam = _entry("hem", Verb.SEW, run=(_edge("front.top"),), open=EntryId("bag"))
    assert choose(_with(seam), {}).entry[EntryId("hem")].open is None


def test_a_reason_for_an_order_goes_with_the_order() -> None:
    fit = _entry("fit", Verb.FIT, after=(OpId("bag"),), because="it shows then")
    assert choose(_with(fit), {}).entry[EntryId("fit")].because is None


def test_a_waiver_for_nothing_that_is_there_goes_and_does_not_hold_everywhere() -> None:
    waivers = choose(_GARMENT, {}).waivers
    assert [(waiver.rule, waiver.at) for waiver in waivers] == [("one", ("side",)), ("three", ())]


def test_two_options_of_one_choice_mean_either_and_two_choices_mean_both() -> None:
    either = (*_PLAIN, *_LINED)
    assert holds(either, {"view": "plain"})
    assert holds(either, {"view": "lined"})
    both = (*_LINED, ("fastening", "hook"))
    assert not holds(both, {"view": "lined", "fastening": "ties"})
    assert holds((), {})


def test_a_sound_garment_lacks_nothing_in_any_variant() -> None:
    for view in ("plain", "lined"):
        assert check_picks(_GARMENT, {"view": view, "fastening": "hook"}) == ()


def _lack(entry: Entry) -> tuple[str, tuple[str | int, ...]]:
    (fault,) = check_picks(_with(entry), {})
    assert (fault.slug, fault.severity) == ("left-out", Severity.ERROR)
    assert fault.fix is not None
    assert fault.fix.endswith(".")
    return fault.message, fault.path


def test_an_entry_that_needs_a_piece_left_out_is_named_with_the_pick_to_blame() -> None:
    seam = _entry("trap", Verb.SEW, run=(_edge("front.top"),), to=(_edge("lining.top"),))
    message = "`trap` needs the piece `lining`, which `view: plain` leaves out"
    assert _lack(seam) == (message, ("operations", "trap", "to"))
    (fault,) = check_picks(_with(seam), {})
    assert fault.fix == (
        "Say `when: {view: lined}` in `trap`, too, or put what concerns `lining` into an operation"
        " of its own."
    )


def test_every_way_of_needing_a_piece_is_seen() -> None:
    lining = PieceId("lining")
    for key, entry in {
        "hem": _entry("x", Verb.HEM, run=(_edge("lining.top"),)),
        "at": _entry("x", Verb.DO, run=(_edge("lining.top"),)),
        "on": _entry("x", Verb.DO, pieces=(lining,)),
        "turn": _entry("x", Verb.TURN, pieces=(PieceId("front"), lining)),
        "cut": _entry("x", Verb.CUT, pieces=(lining,)),
        "with": _entry("x", Verb.HOLD, run=(_edge("front.top"),), partners=(lining,)),
        "buttonhole": _entry("x", Verb.BUTTONHOLE, places=(Place(lining),)),
        "between": _entry("x", Verb.SEW, between=(Caught(edge=_edge("lining.top")),)),
    }.items():
        assert _lack(entry)[1] == ("operations", "x", key)
    caught = _entry("x", Verb.SEW, between=(Caught(piece=lining),))
    assert _lack(caught)[1] == ("operations", "x", "between")


def test_an_entry_that_needs_a_notion_left_out_is_named() -> None:
    hook = NotionId("hook")
    message = "`x` needs the notion `hook`, which `fastening: ties` leaves out"
    for key, entry in {
        "attach": _entry("x", Verb.ATTACH, notion=hook),
        "with": _entry("x", Verb.BIND, notion=hook),
        "between": _entry("x", Verb.SEW, between=(Caught(notion=hook),)),
        "to": _entry("x", Verb.TACK, to_name="hook"),
    }.items():
        assert _lack(entry) == (message, ("operations", "x", key))


def test_an_entry_that_needs_a_casing_a_gap_or_a_result_left_out_is_named() -> None:
    bag = EntryId("bag")
    message = "`x` needs the operation `bag`, which `view: plain` leaves out"
    for key, entry in {
        "in": _entry("x", Verb.INSERT, into=bag),
        "close": _entry("x", Verb.CLOSE, closes=bag),
        "to": _entry("x", Verb.TACK, to_name="bag"),
    }.items():
        assert _lack(entry) == (message, ("operations", "x", key))
    loops = _entry("loops", Verb.DO, makes=("loop",), when=_LINED)
    garment = replace(
        _GARMENT, entries=(*_GARMENT.entries, loops, _entry("x", Verb.DO, uses=("loop",)))
    )
    (fault,) = check_picks(garment, {})
    assert fault.message == "`x` uses `loop`, and `view: plain` leaves out what makes it"
    other = _entry("other", Verb.DO, makes=("loop",), when=_PLAIN)
    assert check_picks(replace(garment, entries=(*garment.entries, other)), {}) == ()


def test_a_thing_needed_twice_is_named_once() -> None:
    twice = (_edge("lining.top"), _edge("lining.side"))
    assert len(check_picks(_with(_entry("x", Verb.HEM, run=twice)), {})) == 1


def test_picks_that_are_not_on_offer_are_told_and_the_usual_ones_taken() -> None:
    picks = {"veiw": "lined", "fastening": "zip"}
    messages = [(fault.message, fault.fix, fault.path) for fault in check_picks(_GARMENT, picks)]
    assert messages == [
        ("no choice is called `veiw`", "Known here: `view`, `fastening`.", ("choices",)),
        (
            "`fastening` has no option `zip`",
            "It offers `ties`, `hook`.",
            ("choices", "fastening"),
        ),
    ]
    assert choose(_GARMENT, picks) == choose(_GARMENT, {})
    (fault,) = check_picks(Garment(name="Smock"), {"view": "plain"})
    assert fault.fix == "This garment has no choices."


_CHOICES = (Choice("view", ("plain", "lined", "short")), Choice("fastening", ("ties", "hook")))
_WHENS = st.lists(
    st.sampled_from([(choice.id, option) for choice in _CHOICES for option in choice.options]),
    max_size=3,
    unique=True,
).map(tuple)


@st.composite
def _garments(draw: st.DrawFn, whens=_WHENS) -> Garment:
    pieces = tuple(
        _piece(f"p{number}", draw(whens), draw(st.sampled_from([None, "canvas", "twill"])))
        for number in range(draw(st.integers(0, 4)))
    )
    notions = tuple(
        Notion(id=NotionId(f"n{number}"), kind="tape", when=draw(whens))
        for number in range(draw(st.integers(0, 2)))
    )
    ids = [EntryId(f"e{number}") for number in range(draw(st.integers(1, 5)))]
    known = [piece.id for piece in pieces]

    def some(of: list) -> st.SearchStrategy[tuple]:
        return (
            st.lists(st.sampled_from(of), max_size=3, unique=True).map(tuple) if of else st.just(())
        )

    entries = tuple(
        _entry(
            name,
            draw(st.sampled_from(Verb)),
            pieces=draw(st.one_of(some(known), st.just(tuple(known)))),
            run=tuple(_edge(f"{piece}.top") for piece in draw(some(known))),
            after=draw(some(ids)),
            open=draw(st.sampled_from([None, *ids])),
            unit=draw(some(known)),
            fabrics=draw(some(["canvas", "twill"])),
            fabric=draw(st.sampled_from([None, "twill"])),
            when=draw(whens),
        )
        for name in ids
    )
    return Garment(
        name="Smock",
        choices=_CHOICES,
        fabrics=(Fabric("canvas"), Fabric("twill")),
        pieces=pieces,
        notions=notions,
        entries=entries,
        waivers=(Waiver(RuleSlug("one"), draw(some(ids)), "so"),),
    )


_PICKS = st.fixed_dictionaries({c.id: st.sampled_from(c.options) for c in _CHOICES})


@given(_garments(), _PICKS)
def test_choosing_twice_is_choosing_once(garment: Garment, picks: dict[str, str]) -> None:
    chosen = choose(garment, picks)
    assert choose(chosen, picks) == chosen
    assert check_picks(chosen, picks) == ()


@given(_garments(st.just(())), _PICKS)
def test_a_garment_without_when_is_unchanged(garment: Garment, picks: dict[str, str]) -> None:
    assert replace(choose(garment, picks), picks=()) == garment
    assert check_picks(garment, picks) == ()


@given(_garments())
def test_every_entry_is_in_some_variant(garment: Garment) -> None:
    seen = {
        entry.id
        for view in garment.choices[0].options
        for fastening in garment.choices[1].options
        for entry in choose(garment, {"view": view, "fastening": fastening}).entries
    }
    washes = {entry.id for entry in garment.entries if entry.verb is Verb.PRETREAT}
    assert seen | washes == {entry.id for entry in garment.entries}


@given(_garments(), _PICKS)
def test_a_variant_that_lacks_nothing_names_only_what_is_there(
    garment: Garment, picks: dict[str, str]
) -> None:
    chosen = choose(garment, picks)
    pieces, entries = set(_names(chosen.pieces)), set(_names(chosen.entries))
    for entry in chosen.entries:
        assert {op.partition("/")[0] for op in entry.after} <= entries
        assert entry.open is None or entry.open in entries
        assert set(entry.unit) <= pieces
    if check_picks(garment, picks) == ():
        for entry in chosen.entries:
            assert {ref.piece for ref in entry.run} | set(entry.pieces) <= pieces


def test_a_mark_goes_with_the_last_that_is_laid_on_it() -> None:
    front = _piece("front")._replace(spots=(Spot("pocket"), Spot("badge"), Spot("own")))

    def laid(name: str, spot: str, when: tuple[tuple[str, str], ...]) -> Entry:
        place = Place(PieceId("front"), spot)
        return _entry(name, Verb.ATTACH, notion=NotionId("tape"), places=(place,), when=when)

    garment = replace(
        _GARMENT,
        pieces=(front,),
        entries=(laid("a", "pocket", _LINED), laid("b", "badge", _LINED), laid("c", "badge", ())),
    )
    assert [spot.name for spot in choose(garment, {}).pieces[0].spots] == ["badge", "own"]
    assert choose(garment, {"view": "lined"}).pieces[0].spots == front.spots
