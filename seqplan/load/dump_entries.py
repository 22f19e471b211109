"""Write one entry: for every key of its verb, in the order of the table of keys, what it holds."""

from collections.abc import Callable, Mapping
from typing import Final

from seqplan.base.measure import format_written
from seqplan.load.keys import Key, Takes, keys_with
from seqplan.load.names import ALL
from seqplan.load.writing import (
    quoted_text,
    write_braces,
    write_length,
    write_number,
    write_text,
    write_texts,
    write_when,
    write_yes,
)
from seqplan.model.entry import Caught, Entry, SeamKind, Sides, StrapMethod, Verb

Write = Callable[[Entry], str | None]


def write_entry(entry: Entry) -> str:
    """Write what stands after the name of an entry."""
    keys = keys_with(entry.verb).values()
    return write_braces({key.name: writer_of(key)(entry) for key in keys})


def writer_of(key: Key) -> Write:
    """What writes a key: verbs by what they take, the others by their name, too."""
    return _MAIN[key.takes] if key.is_verb else _BESIDE[key.name, key.takes]


def _run(entry: Entry) -> str | None:
    return write_texts(str(ref) for ref in entry.run)


def _places(entry: Entry) -> str | None:
    return write_texts(str(place) for place in entry.places)


def _run_and_places(entry: Entry) -> str | None:
    return write_texts([*map(str, entry.run), *map(str, entry.places)])


def _pieces(entry: Entry) -> str | None:
    """Whole pieces, some of them with ``half``."""
    half = set(entry.half)
    return write_texts(f"{piece} half" if piece in half else piece for piece in entry.pieces)


def _layered(entry: Entry) -> str | None:
    """Pieces in a row, each with the layers under it: ``[outer + inner, other]``."""
    rows: list[str] = []
    for piece in entry.partners:
        if rows and piece in entry.under:
            rows[-1] += f" + {piece}"
        else:
            rows.append(str(piece))
    return write_texts(rows)


def _fabrics(entry: Entry) -> str:
    return write_texts(entry.fabrics) or ALL


def _between(entry: Entry) -> str | None:
    """What is caught, with the edges at which it is where the author names them."""
    if any(caught.at for caught in entry.between):
        pairs = ((caught, str(caught.at)) for caught in entry.between)
        return write_braces({quoted_text(_caught(one)): quoted_text(at) for one, at in pairs})
    return write_texts(map(_caught, entry.between))


def _caught(caught: Caught) -> str:
    return str(caught.edge or caught.notion or caught.piece)


def _portion(entry: Entry, *, is_named_part: bool) -> str | None:
    portion = entry.portion
    if portion is None or portion.is_named_part is not is_named_part:
        return None
    word = "from" if is_named_part else "before"
    return quoted_text(f"{format_written(portion.length)} {word} {portion.neighbour}")


def _direction(entry: Entry) -> str | None:
    """The direction; a reader drops one leading ``to``, so a second one needs the first."""
    where = entry.press_to
    return write_text(f"to {where}" if where and where.casefold().startswith("to ") else where)


def _method(entry: Entry) -> str | None:
    if entry.verb is Verb.STRAP:
        return None if entry.strap is StrapMethod.TURNED else entry.strap.value
    if entry.verb is Verb.BUTTONHOLE:
        return "bound" if entry.is_bound else None
    method = entry.method or entry.how
    return method.value if method else None


def _from(entry: Entry) -> str | None:
    if entry.verb is Verb.SHORTEN:
        return "bottom" if entry.from_bottom else None
    return "wrong side" if entry.from_wrong_side else None


def _seam(entry: Entry) -> str | None:
    if entry.own_seam is not None:
        return quoted_text(entry.own_seam)
    return None if entry.seam is SeamKind.PLAIN else entry.seam.value


_MAIN: Final[Mapping[Takes, Write]] = {
    Takes.RUN: _run,
    Takes.PIECES: lambda e: _pieces(e) or ALL,
    Takes.PIECE: _pieces,
    Takes.PLACES: _places,
    Takes.FABRICS: _fabrics,
    Takes.NOTION: lambda e: write_text(e.notion),
    Takes.NOTION_OR_PIECE: lambda e: (
        write_text(e.notion or (str(e.by) if e.by else None)) or _pieces(e)
    ),
    Takes.ENTRY: lambda e: write_text(e.closes),
    Takes.HOURS: lambda e: write_number(e.hours),
    Takes.TEXT: lambda e: write_text(e.words),
}
"""What stands after a verb."""

_BESIDE: Final[Mapping[tuple[str, Takes], Write]] = {
    # The other side, and where.
    ("to", Takes.RUN_OR_PIECE): lambda e: write_texts(map(str, e.to)),
    ("to", Takes.NOTION_OR_ENTRY): lambda e: write_text(e.to_name),
    ("to", Takes.CHOICE): lambda e: e.purpose.value if e.purpose else None,
    ("to", Takes.LENGTH): lambda e: write_length(e.left),
    ("to", Takes.EDGES_OR_PLACES): lambda _: None,  # the same is written under `at`
    ("at", Takes.EDGES_OR_PLACES): _run_and_places,
    ("at", Takes.PLACES): _places,
    ("at", Takes.RUN): _run,
    ("in", Takes.RUN): _run,
    ("in", Takes.RUN_OR_CASING): lambda e: write_text(e.into) or _run(e),
    ("on", Takes.PIECES): _pieces,
    ("through", Takes.TEXT): lambda e: write_text(e.through),
    # What goes along.
    ("with", Takes.FABRIC): lambda e: write_text(e.fabric),
    ("with", Takes.PIECES): lambda e: _layered(e),
    ("with", Takes.PIECES_OR_NOTION): lambda e: write_text(e.notion) or _layered(e),
    ("between", Takes.CAUGHT): _between,
    # How.
    ("as", Takes.CHOICE): _seam,
    ("sides", Takes.CHOICE): lambda e: None if e.sides is Sides.RIGHT_TOGETHER else e.sides.value,
    ("method", Takes.CHOICE): _method,
    ("press", Takes.DIRECTION): _direction,
    ("topstitch", Takes.TOPSTITCH): lambda e: write_text(e.topstitch),
    ("part", Takes.PORTION): lambda e: _portion(e, is_named_part=True),
    ("stop", Takes.PORTION): lambda e: _portion(e, is_named_part=False),
    ("in one", Takes.YES_NO): lambda e: write_yes(e.is_in_one),
    ("flat", Takes.YES_NO): lambda e: write_yes(e.is_flat),
    ("doubled", Takes.YES_NO): lambda e: write_yes(e.is_doubled),
    ("wet", Takes.YES_NO): lambda e: write_yes(e.is_wet),
    ("open", Takes.ENTRY): lambda e: write_text(e.open),
    ("open", Takes.EDGE_NAMES): lambda e: write_texts(e.mouth),
    ("ends", Takes.CHOICE): lambda e: e.ends.value if e.ends else None,
    ("close", Takes.CHOICE): lambda e: e.closing.value if e.closing else None,
    ("from", Takes.CHOICE): _from,
    ("on top", Takes.CHOICE): lambda e: e.on_top.value if e.on_top else None,
    ("turned", Takes.CHOICE): lambda e: e.turned,
    ("by", Takes.CHOICE): lambda e: "hand" if e.by_hand else None,
    # Measures.
    ("allowance", Takes.LENGTH): lambda e: write_length(e.allowance),
    ("ease", Takes.LENGTH): lambda e: write_length(e.ease),
    ("depth", Takes.LENGTH): lambda e: write_length(e.depth),
    ("gap", Takes.LENGTH): lambda e: write_length(e.gap),
    ("overlap", Takes.LENGTH): lambda e: write_length(e.overlap),
    ("width", Takes.LENGTH): lambda e: write_length(e.width),
    ("cuts", Takes.LENGTH): lambda e: write_length(e.cuts),
    ("number", Takes.NUMBER): lambda e: write_number(e.number),
    # Free words.
    ("makes", Takes.NAMES): lambda e: write_texts(e.makes),
    ("uses", Takes.NAMES): lambda e: write_texts(e.uses),
    # What every entry may have.
    ("station", Takes.STATION): lambda e: write_text(e.station),
    ("foot", Takes.TEXT): lambda e: write_text(e.foot),
    ("thread", Takes.TEXT): lambda e: write_text(e.thread),
    ("needle", Takes.TEXT): lambda e: write_text(e.needle),
    ("setting", Takes.TEXT): lambda e: write_text(e.setting),
    ("minutes", Takes.NUMBER): lambda e: write_number(e.minutes),
    ("after", Takes.ENTRIES): lambda e: write_texts(e.after),
    ("because", Takes.TEXT): lambda e: write_text(e.because),
    ("without", Takes.TEXTS): lambda e: write_texts(e.without),
    ("unit", Takes.PIECES): lambda e: write_texts(e.unit),
    ("keep clear", Takes.PIECES): lambda e: write_texts(e.keep_clear),
    ("title", Takes.TEXT): lambda e: write_text(e.title),
    ("note", Takes.NOTE): lambda e: write_text(e.note),
    ("say", Takes.TEXT): lambda e: write_text(e.say),
    ("when", Takes.WHEN): lambda e: write_when(e.when),
    ("picture", Takes.TEXT): lambda e: write_text(e.picture),
}
"""What stands after the other keys, by their name and what they take."""
