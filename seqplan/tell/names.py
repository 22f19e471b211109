"""How pieces, edges and seams are called. Lists of names, and nothing else, are joined."""

from collections.abc import Iterable, Sequence
from itertools import takewhile

from seqplan.base.ids import PieceId
from seqplan.model.entry import Entry
from seqplan.model.garment import Garment
from seqplan.model.piece import EdgeRef, Hand, Layer, Place
from seqplan.model.station import Station
from seqplan.words.say import say, translated


def listing(names: Iterable[str]) -> str:
    """A list of names as people say it.

    >>> listing(["front"]), listing(["front", "back"]), listing(["a", "b", "c"])
    ('front', 'front and back', 'a, b and c')
    """
    found = list(names)
    if not found:
        return ""
    most = found[0]
    for name in found[1:-1]:
        most = say("step-list-comma", one=most, other=name)
    return say("step-list-and", most=most, last=found[-1]) if len(found) > 1 else most


def comma_list(names: Sequence[str]) -> str:
    """The beginning of a list that goes on.

    >>> comma_list(["front", "back", "yoke"])
    'front, back, yoke'
    """
    told = names[0]
    for name in names[1:]:
        told = say("step-list-comma", one=told, other=name)
    return told


def readable(name: str) -> str:
    """A name from a file as people read it.

    >>> readable("side-seams")
    'side seams'
    """
    return " ".join(name.replace("-", " ").replace("_", " ").split())


def quoted(name: str) -> str:
    """An author's name as it stands inside a sentence; some languages set it off by quotes.

    >>> quoted("side")
    'side'
    """
    return say("step-name", name=name)


def notion_kind(kind: str) -> str:
    """The kind of a notion as a list has it: in the reader's language where it is a usual one."""
    return translated("notion", readable(kind))


def notion_words(kind: str) -> str:
    """The kind of a notion as it stands inside a sentence; the author's own words are quoted."""
    return _known_or_quoted("notion", readable(kind))


def where_words(place: str) -> str:
    """Where something lies, as a sentence calls it: a usual word, or what the author calls so."""
    return _known_or_quoted("where", readable(place))


def _known_or_quoted(context: str, word: str) -> str:
    known = translated(context, word)
    return known if known != word else quoted(word)


def station_title(station: Station) -> str:
    """The title of a station: the author's, or the usual one in the reader's language."""
    return translated("station", station.title)


def capital(text: str) -> str:
    """The text with a capital first letter; the rest stays as it is.

    >>> capital("right side of A")
    'Right side of A'
    """
    return text[:1].upper() + text[1:]


def as_sentence(text: str) -> str:
    """An author's words with a full stop, unless they end with some mark already.

    >>> as_sentence("press"), as_sentence("Press!")
    ('press.', 'Press!')
    """
    tidy = " ".join(text.split())
    return tidy if tidy[-1:] in ".!?…:;" else say("step-authors-words", words=tidy)


def as_clause(text: str) -> str:
    """An author's words in one line and without a full stop, to stand inside a sentence.

    >>> as_clause("Cut it long. ")
    'Cut it long'
    """
    return " ".join(text.split()).removesuffix(".")


def name_pieces(garment: Garment, pieces: Iterable[PieceId]) -> str:
    """Whole pieces: "the front piece", "the front and back pieces"."""
    ids = list(dict.fromkeys(pieces))
    names = listing(quoted(garment.piece[id_].title) for id_ in ids)
    return say("step-pieces", count=sum(garment.piece[id_].copies for id_ in ids), pieces=names)


def name_copies(garment: Garment, pieces: Iterable[PieceId]) -> str:
    """The copies of a piece, counted: "the 2 back pieces"; like ``name_pieces`` for several."""
    ids = list(dict.fromkeys(pieces))
    if len(ids) != 1:
        return name_pieces(garment, ids)
    piece = garment.piece[ids[0]]
    if piece.copies == 1:
        return name_pieces(garment, ids)
    return say("step-piece-copies", count=piece.copies, pieces=quoted(piece.title))


def in_garment_order(garment: Garment, pieces: Iterable[PieceId]) -> tuple[PieceId, ...]:
    """Pieces in the order of the file."""
    wanted = set(pieces)
    return tuple(piece.id for piece in garment.pieces if piece.id in wanted)


def name_edge(ref: EdgeRef) -> str:
    """The name of an edge, with the wearer's side where the file names one."""
    name = quoted(readable(ref.edge))
    if ref.hand is None:
        return name
    return say("step-worn-left" if ref.hand is Hand.LEFT else "step-worn-right", name=name)


def name_edges(garment: Garment, refs: Sequence[EdgeRef]) -> str:
    """Edges with their pieces: "the side and foot edges of the panel pieces"."""
    pieces_of: dict[str, list[PieceId]] = {}
    for ref in refs:
        pieces_of.setdefault(name_edge(ref), []).append(ref.piece)
    edges_of: dict[tuple[PieceId, ...], list[str]] = {}
    for edge, pieces in pieces_of.items():
        edges_of.setdefault(tuple(dict.fromkeys(pieces)), []).append(edge)
    return listing(_name_group(garment, edges, pieces, refs) for pieces, edges in edges_of.items())


def _name_group(
    garment: Garment, edges: list[str], pieces: tuple[PieceId, ...], refs: Sequence[EdgeRef]
) -> str:
    held = [ref for ref in refs if ref.piece in pieces and name_edge(ref) in edges]
    count = sum(garment.piece[ref.piece].stretches(ref.edge, ref.hand) for ref in held)
    told = name_pieces(garment, pieces)
    return say("step-edges-of", count=count, edges=listing(edges), pieces=told)


def name_places(garment: Garment, places: Iterable[Place]) -> str:
    """Places on faces: "the pocket place mark of the front piece on the wearer's left"."""
    return listing(dict.fromkeys(_name_place(garment, place) for place in places))


def _name_place(garment: Garment, place: Place) -> str:
    piece = garment.piece[place.piece]
    told = name_pieces(garment, (place.piece,))
    hands = {spot.hand for spot in piece.spots if spot.name == place.name}
    hand = place.hand or (hands.pop() if len(hands) == 1 else None)
    if hand is not None:
        key = "step-place-left" if hand is Hand.LEFT else "step-place-right"
        told = say(key, piece=quoted(piece.title))
    if place.name is None:
        return told
    kind = "edge" if place.name in piece.edge_names else "line"
    if any(spot.name == place.name for spot in piece.spots):
        kind = "mark"
    name = readable(place.name)
    if kind != "edge":
        name = name.removesuffix(f" {kind}")
    return say(f"step-place-{kind}", name=quoted(name), pieces=told)


def name_seam(garment: Garment, entry: Entry) -> str:
    """A seam by its edges: "side seam", "side seam of the facing"."""
    base = name_seam_plainly(entry)
    layers = {garment.piece[ref.piece].layer for ref in (*entry.run, *entry.to)}
    if len(layers) == 1 and Layer.SHELL not in layers:
        return say("step-seam-layer", seam=base, layer=translated("layer", layers.pop().value))
    return base


def name_seam_plainly(entry: Entry) -> str:
    """A seam by its edges, whatever layer it is in."""
    one = list(dict.fromkeys(name_edge(ref) for ref in entry.run))
    other = list(dict.fromkeys(name_edge(ref) for ref in entry.to))
    if not other or set(one) == set(other):
        return _seam_along(one, readable(entry.run[-1].edge))
    stems = _stems([readable(ref.edge) for ref in entry.run], [readable(x.edge) for x in entry.to])
    if stems:
        return _seam_along([quoted(stem) for stem in stems], stems[-1])
    return say("step-seam-between", one=listing(one), other=listing(other))


def _seam_along(edges: Iterable[str], last: str) -> str:
    """The seam along edges, the last of which may be called a seam already."""
    return say("step-seam-named" if last.endswith("seam") else "step-seam", edges=listing(edges))


def _stems(one: Sequence[str], other: Sequence[str]) -> tuple[str, ...]:
    """What the names of the edges that meet have in common; nothing where some share nothing.

    >>> _stems(["side", "underarm front"], ["side", "underarm back"])
    ('side', 'underarm')
    >>> _stems(["cap"], ["armhole"])
    ()
    """
    if len(one) != len(other):
        return ()
    pairs = zip(map(str.split, one), map(str.split, other), strict=True)
    found = [
        " ".join(a for a, _ in takewhile(lambda pair: pair[0] == pair[1], zip(x, y, strict=False)))
        for x, y in pairs
    ]
    return tuple(dict.fromkeys(found)) if all(found) else ()
