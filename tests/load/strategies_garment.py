"""Garments as they could have been read from a file, for laws about reading and writing."""

from dataclasses import replace
from fractions import Fraction
from typing import TypeVar
from unicodedata import normalize

from hypothesis import strategies as st

from seqplan.base.ids import EntryId, NotionId, OpId, PieceId
from seqplan.base.measure import Length, parse_length
from seqplan.load.fields import LONGEST_MM
from seqplan.load.resolve import neighbours
from seqplan.load.text import first_unseen
from seqplan.model.entry import Entry, Portion, SeamKind, Verb, ZipMethod
from seqplan.model.garment import Fabric, Garment, Notion, Wearer
from seqplan.model.piece import Cut, Edge, EdgeRef, Hand, Layer, Piece, Worn
from seqplan.model.station import DEFAULT_STATIONS, Station

T = TypeVar("T")

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
        st.one_of(st.sampled_from(["yes", "1:30", "5/8", "a: b", "# c", "- d"]), st.text(letters))
        .map(lambda text: " ".join(text.split()))
        .filter(lambda text: text != "" and first_unseen(text) is None)
    )


def notes() -> st.SearchStrategy[str]:
    return st.lists(texts(), min_size=1, max_size=3).map("\n".join)


def lengths() -> st.SearchStrategy[Length]:
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


def maybe(strategy: st.SearchStrategy[T]) -> st.SearchStrategy[T | None]:
    return st.one_of(st.none(), strategy)


@st.composite
def fabrics(draw: st.DrawFn) -> tuple[Fabric, ...]:
    return tuple(
        Fabric(
            id=name,
            kind=draw(texts()),
            weight=draw(maybe(texts())),
            note=draw(maybe(notes())),
            path=("fabrics", name),
        )
        for name in draw(st.lists(names(), max_size=2, unique=True))
    )


@st.composite
def notions(draw: st.DrawFn) -> tuple[Notion, ...]:
    return tuple(
        Notion(
            id=NotionId(name),
            kind=draw(texts()),
            length=draw(maybe(lengths())),
            width=draw(maybe(lengths())),
            count=draw(st.integers(1, 999)),
            note=draw(maybe(notes())),
            path=("notions", name),
        )
        for name in draw(st.lists(names(), max_size=2, unique=True))
    )


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
def pieces(draw: st.DrawFn, fabric_names: list[str]) -> tuple[Piece, ...]:
    made: list[Piece] = []
    for name in draw(st.lists(names(), max_size=4, unique=True)):
        cut, copies = draw(
            st.sampled_from([(Cut.FOLD, 1), (Cut.PAIR, 2), (Cut.ALIKE, 1), (Cut.ALIKE, 3)])
        )
        edges = draw(edge_lists())
        is_like = draw(st.booleans())
        other = draw(st.sampled_from(made)) if made and is_like else None
        made.append(
            Piece(
                id=PieceId(name),
                edges=other.edges if other else edges,
                cut=cut,
                copies=copies,
                fabric=draw(maybe(st.sampled_from(fabric_names))) if fabric_names else None,
                layer=draw(st.sampled_from(Layer)),
                like=other.id if other else None,
                worn=draw(maybe(st.sampled_from(Worn))),
                selvage=() if other or not edges else draw(_some([edge.name for edge in edges])),
                note=draw(maybe(notes())),
                path=("pieces", name),
            )
        )
    return tuple(made)


def edge_lists() -> st.SearchStrategy[tuple[Edge, ...]]:
    def at_marks(found: list[tuple[str, bool]]) -> tuple[Edge, ...]:
        return tuple(Edge(name, mark and place > 0) for place, (name, mark) in enumerate(found))

    return st.lists(st.tuples(names(), st.booleans()), max_size=5).map(at_marks)


def _some(of: list[str], *, min_size: int = 0) -> st.SearchStrategy[tuple[str, ...]]:
    if not of:
        return st.just(())
    return st.lists(st.sampled_from(of), min_size=min_size, max_size=3, unique=True).map(tuple)


class _Maker:
    """Draws entries for one garment."""

    def __init__(self, draw: st.DrawFn, garment: Garment, ids: list[str]) -> None:
        self.draw = draw
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
            station=self.draw(maybe(st.sampled_from([s.id for s in self.garment.stations]))),
            foot=self.draw(maybe(texts())),
            minutes=self.draw(maybe(st.integers(0, 1440))),
            unit=self.some_pieces(),
            after=tuple(map(OpId, after)),
            because=self.draw(texts()) if after else None,
            without=self.draw(_some(["press", "finish", "turn up"])),
            title=self.draw(maybe(texts())),
            note=self.draw(maybe(notes())),
            say=self.draw(maybe(texts())),
            path=("operations", entry_id),
        )
        return self.with_verb(base, self.draw(st.sampled_from(Verb)))

    def with_verb(self, base: Entry, verb: Verb) -> Entry:
        """Give the entry what its verb takes, or leave it in free words where that is lacking."""
        run, plain = self.run(), base._replace(verb=verb, words=None)
        if verb is Verb.DO:
            return base._replace(run=run, pieces=self.some_pieces(), makes=self.makes(base.id))
        if verb in {Verb.FUSE, Verb.TURN, Verb.FIT, Verb.INSPECT}:
            return self.on_pieces(base, plain)
        if not run:
            return base
        if verb in {Verb.SEW, Verb.BASTE}:
            return self.join(plain, run)
        if verb in {Verb.INSERT, Verb.ATTACH, Verb.TACK}:
            return self.fasten(base, plain, run)
        if verb in {Verb.HEM, Verb.CASING}:
            return self.fold(plain, run)
        return plain._replace(run=run)

    def makes(self, entry_id: str) -> tuple[str, ...]:
        return (f"of-{self.ids.index(entry_id)}",) if self.draw(st.booleans()) else ()

    def on_pieces(self, base: Entry, plain: Entry) -> Entry:
        if not self.garment.pieces:
            return plain if plain.verb is not Verb.FUSE else base
        fabric = None
        if plain.verb is Verb.FUSE and self.garment.fabrics:
            fabric = self.draw(maybe(st.sampled_from([f.id for f in self.garment.fabrics])))
        return plain._replace(pieces=self.some_pieces(min_size=1), fabric=fabric)

    def join(self, plain: Entry, run: tuple[EdgeRef, ...]) -> Entry:
        to = self.run(len(run), run)
        if not to:
            counts = [
                len(self.garment.piece[ref.piece].segments(ref.edge)) for ref in run if not ref.hand
            ]
            if len(counts) < len(run) or min(counts) < 2:
                return plain._replace(verb=Verb.PRESS, run=run)
        method = self.draw(st.sampled_from(["", "in the round", "flat"]))
        others = self.others(plain.id)
        seam = self.draw(st.sampled_from(SeamKind)) if plain.verb is Verb.SEW else SeamKind.PLAIN
        return plain._replace(
            run=run,
            to=to,
            seam=seam,
            press_to=self.draw(maybe(st.sampled_from(["back", "open", "to", "to to", "up to it"]))),
            allowance=self.draw(maybe(lengths())),
            portion=self.portion(run),
            is_in_one=self.draw(st.booleans()),
            in_the_round=method == "in the round",
            is_flat=method == "flat",
            open=EntryId(self.draw(st.sampled_from(others))) if others else None,
        )

    def portion(self, run: tuple[EdgeRef, ...]) -> Portion | None:
        met = sorted(
            set[str]().union(*(neighbours(self.garment.piece[r.piece], r.edge) for r in run))
        )
        if not met or self.draw(st.booleans()):
            return None
        return Portion(
            self.draw(lengths()), self.draw(st.sampled_from(met)), self.draw(st.booleans())
        )

    def fasten(self, base: Entry, plain: Entry, run: tuple[EdgeRef, ...]) -> Entry:
        known = [notion.id for notion in self.garment.notions]
        if plain.verb is Verb.TACK:
            names_to = [*known, *self.others(plain.id)]
            if not names_to:
                return base
            return plain._replace(run=run, to_name=self.draw(st.sampled_from(names_to)))
        if not known:
            return base
        plain = plain._replace(notion=self.draw(st.sampled_from(known)), run=run)
        if plain.verb is Verb.ATTACH:
            return plain
        return plain._replace(method=self.draw(st.sampled_from(ZipMethod)))

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
        return entry._replace(by_hand=self.draw(st.booleans()), in_the_round=in_the_round)


def _linked(entries: list[Entry], draw: st.DrawFn) -> tuple[Entry, ...]:
    """Let some use what others make, and thread some notions through casings."""
    made = [(name, entry.id) for entry in entries for name in entry.makes]
    casings = [entry.id for entry in entries if entry.verb is Verb.CASING]
    linked = []
    for entry in entries:
        others = [name for name, maker in made if maker != entry.id]
        if entry.verb is Verb.DO and others:
            entry = entry._replace(uses=draw(_some(others)))
        if entry.verb is Verb.INSERT and casings:
            into = draw(st.sampled_from(casings))
            overlap = draw(maybe(lengths()))
            entry = entry._replace(run=(), method=None, into=into, overlap=overlap)
        linked.append(entry)
    return tuple(linked)


@st.composite
def garments(draw: st.DrawFn) -> Garment:
    cloths = draw(fabrics())
    garment = Garment(
        name=draw(texts()),
        about=draw(maybe(texts())),
        author=draw(maybe(texts())),
        version=draw(maybe(texts())),
        units=draw(st.sampled_from(["cm", "mm", "in"])),
        allowance=draw(maybe(lengths())),
        wearer=draw(maybe(st.sampled_from(Wearer))),
        fabrics=cloths,
        pieces=draw(pieces([cloth.id for cloth in cloths])),
        notions=draw(notions()),
        stations=draw(stations()),
        not_shown=draw(_some(["press", "finish"])),
    )
    ids = draw(st.lists(names(), min_size=1, max_size=6, unique=True))
    maker = _Maker(draw, garment, ids)
    return replace(garment, entries=_linked([maker.entry(entry_id) for entry_id in ids], draw))
