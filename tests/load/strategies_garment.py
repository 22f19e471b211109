"""Garments as they could have been read from a file, for laws about reading and writing."""

import math
from collections.abc import Collection
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise
from typing import TypeVar
from unicodedata import normalize

from hypothesis import strategies as st

from seqplan.base.ids import EntryId, NotionId, OpId, PieceId, RuleSlug
from seqplan.base.language import LANGUAGES
from seqplan.base.measure import MM_PER_INCH, Length, parse_length
from seqplan.base.path import Span
from seqplan.load.faces import CutSlit, with_slits
from seqplan.load.fields import LONGEST_MM
from seqplan.load.keys import SEAMS, keys_with
from seqplan.load.names import check_title, clean
from seqplan.load.nodes import Pair, Scalar
from seqplan.load.notches import taken_over
from seqplan.load.resolve import neighbours
from seqplan.load.sink import Sink
from seqplan.load.text import first_unseen
from seqplan.model.entry import (
    Caught,
    Closing,
    Ends,
    Entry,
    Portion,
    Purpose,
    SeamKind,
    SeamMethod,
    Sides,
    StrapMethod,
    Verb,
    ZipMethod,
)
from seqplan.model.garment import Amount, Choice, Fabric, Garment, Notion, OwnSeam, Waiver, Wearer
from seqplan.model.piece import (
    Beginning,
    Cut,
    Edge,
    EdgeRef,
    Fullness,
    Hand,
    Layer,
    Notch,
    Outline,
    Piece,
    Place,
    Slit,
    Spot,
    Worn,
)
from seqplan.model.station import DEFAULT_STATIONS, Station
from seqplan.shape.notches import beside, length_of

T = TypeVar("T")

_NOWHERE = Scalar("", Span(1, 1, 1, 1), ())
_NO_PAIR = Pair("", Span(1, 1, 1, 1), _NOWHERE)
_ON_PIECES = frozenset(
    {
        Verb.CUT,
        Verb.MARK,
        Verb.FUSE,
        Verb.STRAP,
        Verb.TURN,
        Verb.NEST,
        Verb.ROLL,
        Verb.SEND_OUT,
        Verb.FIT,
        Verb.INSPECT,
    }
)
_POCKETS = frozenset({Verb.PATCH_POCKET, Verb.WELT_POCKET, Verb.IN_SEAM_POCKET, Verb.BUTTONHOLE})
_ALONE = frozenset({Verb.WAIT, Verb.PRETREAT, Verb.OPEN, Verb.SHORTEN, Verb.CLOSE})

_FIRST = st.characters(categories=["L", "Nd"])
_LATER = st.characters(categories=["L", "Nd"], include_characters="-_")
_ODD_NAMES = ("no", "null", "12", "1e3", "side-seam", "back_facing", "Ärmel", "縫う", "x-")


def names() -> st.SearchStrategy[str]:
    made = st.builds("{}{}".format, _FIRST, st.text(_LATER, max_size=6))
    return st.one_of(
        st.sampled_from(_ODD_NAMES),
        made.filter(lambda name: normalize("NFC", name) == name and name != "all"),
    )


def texts() -> st.SearchStrategy[str]:
    letters = st.characters(exclude_categories=["Cs"])
    return (
        st.one_of(
            st.sampled_from(["yes", "1:30", "5/8", "a: b", "# c", "- d"]),
            st.text(letters, max_size=8),
        )
        .map(lambda text: " ".join(text.split()))
        .filter(lambda text: text != "" and first_unseen(text) is None)
    )


def notes() -> st.SearchStrategy[str]:
    return st.lists(texts(), min_size=1, max_size=2).map("\n".join)


def lengths() -> st.SearchStrategy[Length]:
    return st.one_of(single_lengths(), pairs())


def single_lengths() -> st.SearchStrategy[Length]:
    """Lengths in one system, as they also stand within a text."""
    number = st.one_of(
        st.integers(0, 999_999).map(str),
        st.builds("{}.{}".format, st.integers(0, 9999), st.integers(0, 9999)),
        st.builds("{} {}/{}".format, st.integers(0, 99), st.integers(0, 99), st.integers(1, 99)),
    )
    unit = st.sampled_from(["", " mm", " cm", " m", " in", '"', " yd"])
    read = st.builds(lambda number, unit: parse_length(number + unit), number, unit)
    return read.map(lambda length: length or Length(Fraction(15))).filter(
        lambda length: length.mm <= LONGEST_MM
    )


def pairs() -> st.SearchStrategy[Length]:
    """Lengths that their author gives in both systems, either of them first."""
    metric = st.builds(
        lambda tenths, unit: (Fraction(tenths, 10) * (10 if unit == "cm" else 1), unit),
        st.integers(1, 9999),
        st.sampled_from(["mm", "cm"]),
    )

    def both(side: tuple[Fraction, str], is_swapped: bool) -> Length:
        sixteenth = MM_PER_INCH / 16
        inches = (max(1, round(side[0] / sixteenth)) * sixteenth, "in")
        one, other = (inches, side) if is_swapped else (side, inches)
        return Length(*one, pair=other)

    return st.builds(both, metric, st.booleans())


def maybe(strategy: st.SearchStrategy[T]) -> st.SearchStrategy[T | None]:
    return st.one_of(st.none(), strategy)


def seldom(strategy: st.SearchStrategy[T]) -> st.SearchStrategy[T | None]:
    """What every entry may have; a garment in which all of them had it would be too large."""
    return st.one_of(st.none(), st.none(), st.none(), strategy)


@st.composite
def amounts(draw: st.DrawFn, sizes: tuple[str, ...]) -> tuple[Amount, ...]:
    some = lengths().filter(lambda length: length.mm > 0)
    made = []
    for centimetres in draw(st.lists(st.integers(5, 500), max_size=2, unique=True)):
        measures = [(size, draw(some)) for size in sizes]
        by_size = tuple(measures) if draw(st.booleans()) else ()
        length = by_size[0][1] if by_size else draw(some)
        made.append(Amount(Length(Fraction(centimetres * 10)), length, by_size))
    return tuple(made)


@st.composite
def fabrics(draw: st.DrawFn, sizes: tuple[str, ...] = (), least: int = 0) -> tuple[Fabric, ...]:
    return tuple(
        Fabric(
            id=name,
            kind=draw(texts()),
            weight=draw(maybe(texts())),
            amounts=draw(amounts(sizes)),
            note=draw(maybe(notes())),
            path=("fabrics", name),
        )
        for name in draw(st.lists(names(), min_size=least, max_size=2, unique=True))
    )


def titles() -> st.SearchStrategy[str]:
    """Names that may have spaces: options, sizes, seams of one's own."""
    odd = st.sampled_from(["no", "legs first", "38", "1:30", "with {braces}"])
    return st.one_of(odd, texts()).filter(
        lambda text: len(text) <= 64 and clean(text) == text and check_title(text, _NOWHERE, Sink())
    )


@st.composite
def choices(draw: st.DrawFn) -> tuple[Choice, ...]:
    return tuple(
        Choice(
            name,
            tuple(draw(st.lists(titles(), min_size=2, max_size=3, unique=True))),
            ("choices", name),
        )
        for name in draw(st.lists(names(), max_size=2, unique=True))
    )


@st.composite
def whens(draw: st.DrawFn, offered: tuple[Choice, ...]) -> tuple[tuple[str, str], ...]:
    asked = [choice for choice in offered if draw(st.integers(0, 3)) == 0]
    return tuple(
        (choice.id, option)
        for choice in asked
        for option in draw(_some(list(choice.options), min_size=1))
    )


@st.composite
def recipes(draw: st.DrawFn) -> tuple[OwnSeam, ...]:
    usual = {seam.casefold() for seam in SEAMS}
    called = titles().filter(lambda name: name.casefold() not in usual)
    return tuple(
        OwnSeam(
            name,
            tuple(draw(st.permutations(["sew", *draw(_some(["trim", "press", "finish"]))]))),
            ("recipes", name),
        )
        for name in draw(st.lists(called, max_size=2, unique=True))
    )


@st.composite
def notions(
    draw: st.DrawFn, sizes: tuple[str, ...], offered: tuple[Choice, ...], least: int = 0
) -> tuple[Notion, ...]:
    made = []
    for name in draw(st.lists(names(), min_size=least, max_size=2, unique=True)):
        measures = [(size, draw(lengths())) for size in sizes]
        by_size = tuple(measures) if draw(st.booleans()) else ()
        made.append(
            Notion(
                id=NotionId(name),
                kind=draw(st.one_of(st.sampled_from(["invisible zip", "elastic"]), texts())),
                length=by_size[0][1] if by_size else draw(maybe(lengths())),
                width=draw(maybe(lengths())),
                count=draw(st.integers(1, 999)),
                note=draw(maybe(notes())),
                by_size=by_size,
                when=draw(whens(offered)),
                path=("notions", name),
            )
        )
    return tuple(made)


@st.composite
def stations(draw: st.DrawFn) -> tuple[Station, ...]:
    usual = {station.id: station for station in DEFAULT_STATIONS}
    for name in draw(st.lists(st.sampled_from(sorted(usual)), max_size=2, unique=True)):
        usual[name] = usual[name]._replace(
            minutes=draw(st.integers(0, 1440)), path=("stations", name)
        )
    for name in draw(st.lists(names(), max_size=2, unique=True)):
        usual[name] = Station(
            id=name,
            title=draw(texts()),
            mark=draw(st.sampled_from(["P", "Ö", "9b"])),
            minutes=draw(st.integers(0, 1440)),
            foot_minutes=draw(st.integers(0, 1440)),
            path=("stations", name),
        )
    return tuple(usual.values())


@st.composite
def pieces(
    draw: st.DrawFn, fabric_names: list[str], offered: tuple[Choice, ...], least: int = 0
) -> tuple[Piece, ...]:
    made: list[Piece] = []
    for name in draw(st.lists(names(), min_size=least, max_size=3, unique=True)):
        cut, copies = draw(
            st.sampled_from([(Cut.FOLD, 1), (Cut.PAIR, 2), (Cut.ALIKE, 1), (Cut.ALIKE, 3)])
        )
        piece = Piece(
            id=PieceId(name),
            edges=(),
            cut=cut,
            copies=copies,
            fabric=draw(maybe(st.sampled_from(fabric_names))) if fabric_names else None,
            layer=draw(st.sampled_from(Layer)),
            worn=draw(maybe(st.sampled_from(Worn))),
            when=draw(whens(offered)),
            note=draw(maybe(notes())),
            path=("pieces", name),
        )
        if made and draw(st.booleans()):
            other = draw(st.sampled_from(made))
            ring = {"edges": other.edges, "slits": other.slits, "is_strip": other.is_strip}
            is_same = (piece.cut is Cut.FOLD) == (other.cut is Cut.FOLD)
            outline = other.shape if is_same else None
            piece = piece._replace(like=other.id, shape=outline, lengths=other.lengths, **ring)
        else:
            piece = draw(measured(draw(shaped(piece, least))))
        piece = draw(marked(piece)) if draw(st.booleans()) else piece
        likes = [other for other in made if other.id == piece.like]
        made.append(piece._replace(notches=taken_over(piece, *likes)) if likes else piece)
    return tuple(made)


@st.composite
def shaped(draw: st.DrawFn, piece: Piece, least: int = 0) -> Piece:
    """A piece with edges of its own, perhaps those of a strip, and perhaps with slits."""
    edges = draw(edge_lists(least))
    is_strip = draw(st.booleans()) and all(edge.name != "fold" for edge in edges)
    if is_strip:
        place = draw(st.integers(0, len(edges)))
        edges = (*edges[:place], Edge("fold", is_folded=True), *edges[place:])
    slits: list[Slit] = []
    for name in draw(st.lists(names(), max_size=2, unique=True)):
        places = [(one.name, other.name) for one, other in pairwise(edges)]
        places += [("fold", edges[0].name)] if piece.cut is Cut.FOLD and edges else []
        if not places or name in {edge.name for edge in edges}:
            continue
        slit = Slit(name, *draw(st.sampled_from(places)), draw(maybe(lengths())))
        edges = with_slits(edges, piece, [CutSlit(slit, _NO_PAIR, _NOWHERE)], Sink())
        slits.append(slit)
    return piece._replace(edges=edges, is_strip=is_strip, slits=tuple(slits))


@st.composite
def measured(draw: st.DrawFn, piece: Piece) -> Piece:
    """A piece with lengths of some edges, and perhaps with an outline round the fold or a centre.

    Its corners lie clockwise on a circle, and its handles near the straight lines.
    """
    some = draw(_some(list(piece.edge_names)))
    piece = piece._replace(lengths=tuple((name, draw(lengths())) for name in some))
    count = sum(not edge.is_slit for edge in piece.edges)
    is_fold = piece.cut is Cut.FOLD
    if count < (1 if is_fold else 3) or not draw(st.booleans()):
        return piece
    turn, rounds = (count, 0.5) if is_fold else (count, 1.0)
    circle = [
        complex(
            round(200 * math.sin(2 * math.pi * rounds * n / turn), 3) + 0.0,
            round(-200 * math.cos(2 * math.pi * rounds * n / turn), 3) + 0.0,
        )
        for n in range(count + 1)
    ]
    circle[-1] = complex(0, 200) if is_fold else circle[0]
    sides = []
    for one, other in pairwise(circle):
        handles = draw(st.sampled_from([0, 1, 2, 5])) or (1 if (count, is_fold) == (1, True) else 0)
        bulge = 1j * (one - other) * 0.3
        between = [one + (other - one) * (n + 1) / (handles + 1) + bulge for n in range(handles)]
        rounded = [complex(round(p.real, 3) + 0.0, round(p.imag, 3) + 0.0) for p in between]
        sides.append((one, *rounded, other))
    return piece._replace(shape=Outline(tuple(sides)))


@st.composite
def marked(draw: st.DrawFn, piece: Piece) -> Piece:
    """A piece with what it bears besides its edges."""
    edges = list(piece.edge_names)
    has_sides = piece.worn is not None and piece.cut is not Cut.ALIKE
    hands = st.sampled_from([None, *Hand]) if has_sides else st.none()
    free = names().filter(lambda name: name not in edges)
    spots = st.lists(st.builds(Spot, free, hands), max_size=2, unique=True)
    number, takes = st.integers(1, 99), maybe(lengths())
    piece = piece._replace(
        selvage=draw(_some(edges)),
        darts=tuple(Fullness(name, draw(number), draw(takes)) for name in draw(_some(edges))),
        pleats=tuple(Fullness(name, draw(number)) for name in draw(_some(edges))),
        spots=tuple(draw(spots)),
        lines=tuple(draw(st.lists(free, max_size=2, unique=True))),
    )
    marks = list(dict.fromkeys((*(spot.name for spot in piece.spots), *piece.lines)))
    begun = draw(_some(marks)) if edges else ()
    begins = (
        Beginning(name, draw(lengths())._replace(pair=None), draw(st.sampled_from(edges)))
        for name in begun
    )
    return piece._replace(begins=tuple(begins), notches=tuple(draw(notches(piece))))


@st.composite
def notches(draw: st.DrawFn, piece: Piece) -> list[Notch]:
    """Notches of some edges of a piece, each where it can stand."""
    found: list[Notch] = []
    for place, edge in enumerate(piece.edges):
        if edge.is_slit or any(edge.name == notch.edge for notch in found):
            continue
        marks = draw(st.lists(st.integers(1, 3), max_size=3))
        ends = beside(piece, place)
        is_alone = sum(other.name == edge.name for other in piece.edges) == 1
        for count in marks:
            whole = length_of(piece, place)
            room = draw(lengths())._replace(pair=None)
            is_within = whole is None or float(room.mm) < whole
            notch = Notch(edge.name, count, is_middle=draw(st.booleans()))
            if is_alone and is_within and ends[0] != ends[1] and draw(st.booleans()):
                end = draw(st.sampled_from([name for name in ends if name]))
                notch = Notch(edge.name, count, room, end)
            if notch.length is None or notch not in found:
                found.append(notch)
    return found


def edge_lists(least: int = 0) -> st.SearchStrategy[tuple[Edge, ...]]:
    def at_marks(found: list[tuple[str, bool]]) -> tuple[Edge, ...]:
        return tuple(Edge(name, mark and place > 0) for place, (name, mark) in enumerate(found))

    return st.lists(st.tuples(names(), st.booleans()), min_size=least, max_size=4).map(at_marks)


def _some(of: list[T], *, min_size: int = 0) -> st.SearchStrategy[tuple[T, ...]]:
    if not of:
        return st.just(())
    return st.lists(st.sampled_from(of), min_size=min_size, max_size=3, unique=True).map(tuple)


class _Maker:
    """Draws entries for one garment."""

    def __init__(
        self, draw: st.DrawFn, garment: Garment, ids: list[str], verbs: Collection[Verb]
    ) -> None:
        self.draw = draw
        self.verbs = list(verbs)
        self.garment = garment
        self.ids = ids
        self.all_edges = [
            (piece, name) for piece in garment.pieces for name in piece.edge_names
        ]  # fmt: skip

    def run(self, size: int | None = None, avoid: tuple[EdgeRef, ...] = ()) -> tuple[EdgeRef, ...]:
        taken = {(ref.piece, ref.edge) for ref in avoid}
        free = [(piece, name) for piece, name in self.all_edges if (piece.id, name) not in taken]
        least, most = (size, size) if size else (1, 3)
        if len(free) < least:
            return ()
        picked = self.draw(
            st.lists(
                st.sampled_from(free),
                min_size=least,
                max_size=most,
                unique_by=lambda edge: (edge[0].id, edge[1]),
            )
        )
        return tuple(self.ref(piece, name) for piece, name in picked)

    def ref(self, piece: Piece, name: str) -> EdgeRef:
        has_sides = piece.worn is not None and piece.cut is not Cut.ALIKE
        hand = self.draw(maybe(st.sampled_from(Hand))) if has_sides else None
        return EdgeRef(piece.id, name, hand)

    def others(self, entry_id: str) -> list[str]:
        return [other for other in self.ids if other != entry_id]

    def some_pieces(self, *, min_size: int = 0) -> tuple[PieceId, ...]:
        known = [piece.id for piece in self.garment.pieces]
        return tuple(map(PieceId, self.draw(_some(list(known), min_size=min_size))))

    def entry(self, entry_id: str) -> Entry:
        others = self.others(entry_id)
        after = self.draw(_some([*others, *(f"{other}/press" for other in others)]))
        base = Entry(
            id=EntryId(entry_id),
            verb=Verb.DO,
            words=self.draw(texts()),
            station=self.draw(seldom(st.sampled_from([s.id for s in self.garment.stations]))),
            foot=self.draw(seldom(texts())),
            minutes=self.draw(seldom(st.integers(0, 1440))),
            unit=self.some_pieces(),
            after=tuple(map(OpId, after)),
            because=self.draw(texts()) if after else None,
            without=self.draw(_some(["press", "finish", "turn up"])),
            title=self.draw(seldom(texts())),
            note=self.draw(seldom(notes())),
            say=self.draw(seldom(texts())),
            when=self.draw(whens(self.garment.choices)),
            picture=self.draw(seldom(texts())),
            path=("operations", entry_id),
        )
        return self.with_verb(base, self.draw(st.sampled_from(self.verbs)))

    def with_verb(self, base: Entry, verb: Verb) -> Entry:
        """Give the entry what its verb takes, or leave it in free words where that is lacking."""
        run, plain = self.run(), base._replace(verb=verb, words=None)
        if verb is Verb.DO:
            return base._replace(run=run, pieces=self.some_pieces(), makes=self.makes(base.id))
        if verb in _ON_PIECES:
            return self.on_pieces(base, plain)
        if verb in _POCKETS:
            return self.pocket(base, plain, run)
        if verb in _ALONE:
            return self.alone(base, plain)
        if verb in {Verb.SLASH, Verb.TOWER_PLACKET}:
            run = self.slits()
        return self.on_edges(base, plain, run) if run else base

    def on_edges(self, base: Entry, plain: Entry, run: tuple[EdgeRef, ...]) -> Entry:
        verb = plain.verb
        if verb in {Verb.SEW, Verb.BASTE}:
            return self.join(plain, run)
        if verb in {Verb.INSERT, Verb.ATTACH, Verb.TACK}:
            return self.fasten(base, plain, run)
        if verb in {Verb.HEM, Verb.CASING}:
            return self.fold(plain, run)
        if verb in {Verb.BAND, Verb.BIND, Verb.TOWER_PLACKET, Verb.CONTINUOUS_PLACKET, Verb.HOLD}:
            return self.set_on(base, plain, run)
        width = self.draw(maybe(lengths())) if verb is Verb.BOX_CORNER else None
        portion = self.portion(run) if "part" in keys_with(verb) else None
        return plain._replace(run=run, width=width, portion=portion)

    def slits(self) -> tuple[EdgeRef, ...]:
        known = [(piece, slit) for piece in self.garment.pieces for slit in piece.slits]
        if not known:
            return ()
        piece, slit = self.draw(st.sampled_from(known))
        return (self.ref(piece, slit.name),)

    def notions(self) -> list[NotionId]:
        return [notion.id for notion in self.garment.notions]

    def own_pieces(self) -> list[PieceId]:
        """Pieces that no notion shares its name with."""
        return [piece.id for piece in self.garment.pieces if piece.id not in self.notions()]

    def places(self, *, with_edges: bool) -> tuple[Place, ...]:
        found = []
        for piece in self.draw(_some(list(self.garment.pieces), min_size=1)):
            marks: list[tuple[str | None, Hand | None]] = [(None, None)]
            marks += [(spot.name, spot.hand) for spot in piece.spots]
            marks += [(line, None) for line in piece.lines if line not in {m for m, _ in marks}]
            marks += [(name, None) for name in piece.edge_names if with_edges]
            name, side = self.draw(st.sampled_from(marks))
            has_sides = piece.worn is not None and piece.cut is not Cut.ALIKE
            hand = self.draw(maybe(st.sampled_from(Hand))) if has_sides and not side else side
            sided = {spot.hand for spot in piece.spots if spot.name == name}
            hand = hand if not sided or None in sided or hand in sided else None
            found.append(Place(piece.id, name, hand))
        return tuple(found)

    def topstitch(self) -> str | None:
        """As a reader leaves it: yes, a distance with its unit, or a side."""
        return self.draw(st.sampled_from([None, "yes", "5 mm", "3/8 in", "body", "on the yoke"]))

    def set_on(self, base: Entry, plain: Entry, run: tuple[EdgeRef, ...]) -> Entry:
        verb = plain.verb
        if verb is Verb.HOLD:
            return plain._replace(run=run, partners=self.some_pieces())
        if verb is Verb.BIND and self.notions() and self.draw(st.booleans()):
            plain = plain._replace(notion=self.draw(st.sampled_from(self.notions())))
        elif self.own_pieces():
            plain = plain._replace(partners=self.draw(_some(self.own_pieces(), min_size=1)))
        else:
            return base
        if verb not in {Verb.BAND, Verb.BIND}:
            return plain._replace(run=run)
        inner = plain.partners[1:]
        under = self.draw(_some(list(inner))) if inner and verb is Verb.BAND else ()
        return plain._replace(
            run=run,
            under=tuple(piece for piece in inner if piece in under),
            ends=self.draw(maybe(st.sampled_from(Ends))),
            closing=self.draw(maybe(st.sampled_from(Closing))),
            from_wrong_side=self.draw(st.booleans()),
            topstitch=self.topstitch(),
            is_flat=self.draw(st.booleans()),
        )

    def pocket(self, base: Entry, plain: Entry, run: tuple[EdgeRef, ...]) -> Entry:
        if not self.garment.pieces or (plain.verb is Verb.IN_SEAM_POCKET and not run):
            return base
        if plain.verb is Verb.IN_SEAM_POCKET:
            return plain._replace(run=run, pieces=self.some_pieces(min_size=1))
        if plain.verb is Verb.BUTTONHOLE:
            number = self.draw(maybe(st.integers(1, 999)))
            return plain._replace(places=self.places(with_edges=True), number=number)
        piece = self.draw(st.sampled_from(self.garment.pieces))
        plain = plain._replace(pieces=(piece.id,), places=self.places(with_edges=True))
        if plain.verb is Verb.WELT_POCKET:
            return plain._replace(partners=self.some_pieces())
        return plain._replace(mouth=self.draw(_some(list(piece.edge_names))))

    def alone(self, base: Entry, plain: Entry) -> Entry:
        if plain.verb is Verb.WAIT:
            return plain._replace(
                hours=self.draw(st.integers(1, 9999)),
                pieces=self.some_pieces(),
                purpose=self.draw(maybe(st.sampled_from(Purpose))),
            )
        if plain.verb is Verb.PRETREAT:
            known = [fabric.id for fabric in self.garment.fabrics]
            return plain._replace(fabrics=self.draw(_some(known, min_size=1)))
        zips = [notion.id for notion in self.garment.notions if "zip" in notion.kind]
        if plain.verb in {Verb.OPEN, Verb.SHORTEN} and zips:
            from_bottom = plain.verb is Verb.SHORTEN and self.draw(st.booleans())
            notion = self.draw(st.sampled_from(zips))
            return plain._replace(notion=notion, from_bottom=from_bottom)
        return base

    def makes(self, entry_id: str) -> tuple[str, ...]:
        return (f"of-{self.ids.index(entry_id)}",) if self.draw(st.booleans()) else ()

    def on_pieces(self, base: Entry, plain: Entry) -> Entry:
        if not self.garment.pieces:
            return plain if plain.verb is not Verb.FUSE else base
        plain = plain._replace(pieces=self.some_pieces(min_size=1))
        if plain.verb is Verb.FUSE:
            known = [fabric.id for fabric in self.garment.fabrics]
            fabric = self.draw(maybe(st.sampled_from(known))) if known else None
            half = tuple(piece for piece in plain.pieces if self.draw(st.booleans()))
            return plain._replace(fabric=fabric, half=half)
        if plain.verb is Verb.STRAP:
            method = self.draw(st.sampled_from(StrapMethod))
            return plain._replace(strap=method, topstitch=self.topstitch())
        if plain.verb in {Verb.TURN, Verb.ROLL}:
            return plain._replace(through=self.draw(maybe(texts())))
        return plain

    def join(self, plain: Entry, run: tuple[EdgeRef, ...]) -> Entry:
        to = self.run(len(run), run)
        if not to:
            counts = [
                len(self.garment.piece[ref.piece].segments(ref.edge)) for ref in run if not ref.hand
            ]
            if len(counts) < len(run) or min(counts) < 2:
                return plain._replace(verb=Verb.PRESS, run=run)
        others = self.others(plain.id)
        plain = plain._replace(
            run=run,
            to=to,
            sides=self.draw(st.sampled_from(Sides)),
            press_to=self.draw(maybe(st.sampled_from(["back", "open", "to", "to to", "up to it"]))),
            allowance=self.draw(maybe(lengths())),
            portion=self.portion(run),
            is_in_one=self.draw(st.booleans()),
            how=self.draw(maybe(st.sampled_from(SeamMethod))),
            open=EntryId(self.draw(st.sampled_from(others))) if others else None,
        )
        return self.seam(plain) if plain.verb is Verb.SEW else plain

    def seam(self, plain: Entry) -> Entry:
        """What only a sewn join has."""
        usual = [kind for kind in SeamKind if kind is not SeamKind.OWN]
        own = [own.id for own in self.garment.recipes]
        plain = plain._replace(
            seam=self.draw(st.sampled_from(usual)),
            gap=self.draw(maybe(lengths())),
            ease=self.draw(maybe(lengths())),
            topstitch=self.topstitch(),
            between=self.between((*plain.run, *plain.to)),
        )
        if own and self.draw(st.booleans()):
            name = self.draw(st.sampled_from(own))
            return plain._replace(seam=SeamKind.OWN, own_seam=name)
        return plain

    def between(self, sides: tuple[EdgeRef, ...]) -> tuple[Caught, ...]:
        found = [Caught(edge=ref) for ref in self.run(avoid=sides)]
        found += [Caught(notion=name) for name in self.draw(_some(self.notions()))]
        found += [Caught(piece=name) for name in self.draw(_some(self.own_pieces()))]
        found = found if self.draw(st.booleans()) else []
        if not self.draw(st.booleans()):
            return tuple(found)
        return tuple(item._replace(at=self.draw(st.sampled_from(sides))) for item in found)

    def portion(self, run: tuple[EdgeRef, ...]) -> Portion | None:
        met = sorted(
            set[str]().union(*(neighbours(self.garment.piece[r.piece], r.edge) for r in run))
        )
        if not met or self.draw(st.booleans()):
            return None
        return Portion(
            self.draw(single_lengths()), self.draw(st.sampled_from(met)), self.draw(st.booleans())
        )

    def fasten(self, base: Entry, plain: Entry, run: tuple[EdgeRef, ...]) -> Entry:
        known = [notion.id for notion in self.garment.notions]
        if plain.verb is Verb.TACK:
            names_to = [*known, *self.others(plain.id)]
            if not names_to:
                return base
            name = self.draw(st.sampled_from(names_to))
            return plain._replace(run=run, to_name=name, portion=self.portion(run))
        if plain.verb is Verb.ATTACH:
            return self.attach(base, plain, run)
        if not known:
            return base
        plain = plain._replace(notion=self.draw(st.sampled_from(known)), run=run)
        method = self.draw(st.sampled_from(ZipMethod))
        partners = self.some_pieces()
        return plain._replace(method=method, partners=partners, portion=self.portion(run))

    def attach(self, base: Entry, plain: Entry, run: tuple[EdgeRef, ...]) -> Entry:
        if self.notions() and self.draw(st.booleans()):
            plain = plain._replace(notion=self.draw(st.sampled_from(self.notions())))
        elif self.own_pieces():
            piece = self.draw(st.sampled_from(self.own_pieces()))
            held = [EdgeRef(p.id, name) for p, name in self.all_edges if p.id == piece]
            by = self.draw(maybe(st.sampled_from(held))) if held else None
            plain = plain._replace(pieces=(piece,), by=by)
        else:
            return base
        plain = plain._replace(from_wrong_side=self.draw(st.booleans()))
        places = self.places(with_edges=False) if self.draw(st.booleans()) else ()
        number = self.draw(maybe(st.integers(1, 999)))
        return plain._replace(run=run, places=places, number=number)

    def fold(self, plain: Entry, run: tuple[EdgeRef, ...]) -> Entry:
        entry = plain._replace(
            run=run,
            depth=self.draw(maybe(lengths())),
            turned=self.draw(maybe(st.sampled_from(["once", "twice"]))),
            is_flat=self.draw(st.booleans()),
        )
        if plain.verb is Verb.CASING:
            return entry._replace(gap=self.draw(maybe(lengths())))
        in_the_round = not entry.is_flat and self.draw(st.booleans())
        how = SeamMethod.IN_THE_ROUND if in_the_round else None
        return entry._replace(by_hand=self.draw(st.booleans()), how=how)


def _linked(entries: list[Entry], draw: st.DrawFn) -> tuple[Entry, ...]:
    """Let some use what others make, thread notions through casings, and close gaps."""
    made = [(name, entry.id) for entry in entries for name in entry.makes]
    casings = [entry.id for entry in entries if entry.verb is Verb.CASING]
    gaps = [e.id for e in entries if e.verb is Verb.DO or e.gap is not None]
    linked = []
    for entry in entries:
        others = [name for name, maker in made if maker != entry.id]
        open_ones = [name for name in gaps if name != entry.id]
        if entry.verb is Verb.DO and others:
            entry = entry._replace(uses=draw(_some(others)))
        if entry.verb is Verb.INSERT and casings:
            into = draw(st.sampled_from(casings))
            overlap = draw(maybe(lengths()))
            entry = entry._replace(run=(), method=None, into=into, overlap=overlap, partners=())
            entry = entry._replace(portion=None)
        if entry.verb is Verb.FINISH and open_ones and draw(st.booleans()):
            closes = draw(st.sampled_from(open_ones))
            entry = entry._replace(verb=Verb.CLOSE, run=(), portion=None, closes=closes)
        linked.append(entry)
    return tuple(linked)


@st.composite
def waivers(draw: st.DrawFn, ids: list[str]) -> tuple[Waiver, ...]:
    rules = draw(st.lists(st.sampled_from(["press-before-crossing", "no"]), max_size=2))
    return tuple(
        Waiver(
            RuleSlug(rule),
            tuple(OpId(name) for name in draw(_some([*ids, *(f"{name}/press" for name in ids)]))),
            draw(texts()),
            ("waive", place),
        )
        for place, rule in enumerate(rules)
    )


@st.composite
def garments(draw: st.DrawFn, verbs: Collection[Verb] = tuple(Verb), least: int = 0) -> Garment:
    """Draw a garment with entries of some verbs, and at least so many of everything they need."""
    sizes = tuple(draw(st.lists(titles(), max_size=3, unique=True)))
    cloths = draw(fabrics(sizes, least))
    offered = draw(choices())
    ids = draw(st.lists(names(), min_size=1, max_size=4, unique=True))
    garment = Garment(
        name=draw(texts()),
        about=draw(maybe(texts())),
        author=draw(maybe(texts())),
        version=draw(maybe(texts())),
        date=draw(maybe(texts())),
        terms=tuple(draw(st.lists(texts(), max_size=2))),
        glossary=tuple(
            (word, draw(texts())) for word in draw(st.lists(names(), max_size=2, unique=True))
        ),
        units=draw(st.sampled_from(["cm", "mm", "in"])),
        language=draw(st.sampled_from([None, *LANGUAGES])),
        allowance=draw(maybe(lengths())),
        wearer=draw(maybe(st.sampled_from(Wearer))),
        fabrics=cloths,
        pieces=draw(pieces([cloth.id for cloth in cloths], offered, least)),
        notions=draw(notions(sizes, offered, least)),
        stations=draw(stations()),
        not_shown=draw(_some(["press", "finish"])),
        choices=offered,
        recipes=draw(recipes()),
        waivers=draw(waivers(ids)),
        sizes=sizes,
    )
    maker = _Maker(draw, garment, ids, verbs)
    return replace(garment, entries=_linked([maker.entry(entry_id) for entry_id in ids], draw))
