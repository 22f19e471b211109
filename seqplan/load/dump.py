"""Write a garment as the text that reads back as the same garment.

What a reader puts in by itself (paths, the meaning of ``all`` and of ``to: piece``) comes out in
full. A garment made in Python reads back equal if it could have been read from a file: its parts
carry the paths that a file gives them.
"""

import re
from collections.abc import Iterable, Mapping

from seqplan.base.measure import Length, format_written
from seqplan.load.keys import Key, Section, Takes, keys_of, keys_with
from seqplan.load.names import ALL
from seqplan.load.text import first_unseen
from seqplan.model.entry import Entry, Portion, SeamKind, Verb
from seqplan.model.garment import Fabric, Garment, Notion
from seqplan.model.piece import Cut, Edge, Layer, Piece
from seqplan.model.station import DEFAULT_STATIONS, Station

Values = Mapping[str, str | None]

# Text that needs no quotes anywhere, neither here nor for any other reader of the format.
_PLAIN = re.compile(r"[^\W\d_](?:[\w ./@|()+½¼¾°-]*[\w.)])?")
_TAKEN_WORDS = frozenset({"yes", "no", "on", "off", "true", "false", "null", "y", "n"})
_ESCAPES = {"\\": "\\\\", '"': '\\"', "\n": "\\n", "\t": "\\t"}


def dump(garment: Garment) -> str:
    """Write a garment file.

    Parameters
    ----------
    garment
        A garment that was read, or that could have been.

    Returns
    -------
    str
        The text of the file; reading it gives an equal garment.
    """
    usual = set(DEFAULT_STATIONS)
    stations = [station for station in garment.stations if station not in usual]
    entries = {
        str(entry.id): _braces(_entry(entry), keys_with(entry.verb)) for entry in garment.entries
    }
    sections = {
        "fabrics": _table(garment.fabrics, Section.FABRIC),
        "pieces": _table(garment.pieces, Section.PIECE),
        "notions": _table(garment.notions, Section.NOTION),
        "stations": _table(stations, Section.STATION),
        "operations": entries,
    }
    lines = [f"{name}: {text}" for name, text in _top(garment).items() if text is not None]
    for name in keys_of(Section.GARMENT):
        if sections.get(name):
            lines.append(f"{name}:")
            lines.extend(f"  {_text(key)}: {value}" for key, value in sections[name].items())
    return "\n".join(lines) + "\n"


def _top(garment: Garment) -> Values:
    values = {
        "garment": _text(garment.name),
        "about": _text(garment.about),
        "author": _text(garment.author),
        "version": _text(garment.version),
        "units": garment.units,
        "allowance": _length(garment.allowance),
        "wearer": garment.wearer.value if garment.wearer else None,
        "not shown": _list(_text(word) for word in garment.not_shown),
    }
    return {name: values.get(name) for name in keys_of(Section.GARMENT)}


def _table(
    things: Iterable[Fabric | Piece | Notion | Station], section: Section
) -> Mapping[str, str]:
    return {thing.id: _braces(_thing(thing), keys_of(section)) for thing in things}


def _thing(thing: Fabric | Piece | Notion | Station) -> Values:
    if isinstance(thing, Piece):
        return _piece(thing)
    if isinstance(thing, Fabric):
        return {
            "kind": _text(thing.kind),
            "weight": _text(thing.weight),
            "note": _text(thing.note),
        }
    if isinstance(thing, Notion):
        return {
            "kind": _text(thing.kind),
            "length": _length(thing.length),
            "width": _length(thing.width),
            "count": str(thing.count) if thing.count != 1 else None,
            "note": _text(thing.note),
        }
    return {
        "title": _text(thing.title),
        "mark": _text(thing.mark),
        "minutes": str(thing.minutes),
        "foot minutes": str(thing.foot_minutes),
    }


def _piece(piece: Piece) -> Values:
    is_usual = (piece.cut, piece.copies) == (Cut.ALIKE, 1) and piece.like is None
    cut = str(piece.copies) if piece.cut is Cut.ALIKE else piece.cut.value
    return {
        "of": _text(piece.fabric),
        "like": _text(piece.like),
        "cut": None if is_usual else cut,
        "edges": None if piece.like else _edges(piece.edges),
        "layer": None if piece.layer is Layer.SHELL else piece.layer.value,
        "worn": piece.worn.value if piece.worn else None,
        "selvage": _list(_text(name) for name in piece.selvage),
        "note": _text(piece.note),
    }


def _edges(edges: tuple[Edge, ...]) -> str | None:
    """The list of edges; those that meet at marks share an item."""
    items: list[str] = []
    for edge in edges:
        if edge.at_mark and items:
            items[-1] += f" | {edge.name}"
        else:
            items.append(edge.name)
    return f"[{', '.join(str(_text(item)) for item in items)}]" if items else None


def _entry(entry: Entry) -> Values:
    return {**_everywhere(entry), **_measures(entry), **_join(entry), **_main(entry)}


def _main(entry: Entry) -> Values:
    """What stands after the verb, and what goes with it."""
    run = _list(_text(str(ref)) for ref in entry.run)
    pieces = _list(_text(piece) for piece in entry.pieces)
    by_kind = {
        Takes.RUN: run,
        Takes.PIECES: pieces or ALL,
        Takes.NOTION: _text(entry.notion),
        Takes.TEXT: _text(entry.words),
    }
    return {
        "with": _text(entry.fabric),
        "in": _text(entry.into) or run,
        "at": run,
        "on": pieces,
        "makes": _list(_text(name) for name in entry.makes),
        "uses": _list(_text(name) for name in entry.uses),
        entry.verb.value: by_kind[keys_with(entry.verb)[entry.verb.value].takes],
    }


def _join(entry: Entry) -> Values:
    portion = _portion(entry.portion)
    is_named = entry.portion is not None and entry.portion.is_named_part
    return {
        "to": _text(entry.to_name) or _list(_text(str(ref)) for ref in entry.to),
        "as": None if entry.seam is SeamKind.PLAIN else entry.seam.value,
        "press": _direction(entry.press_to),
        "part": portion if is_named else None,
        "stop": None if is_named else portion,
        "in one": "yes" if entry.is_in_one else None,
        "open": _text(entry.open),
        "method": _method(entry),
        "flat": "yes" if entry.is_flat else None,
    }


def _method(entry: Entry) -> str | None:
    if entry.method is not None:
        return entry.method.value
    if entry.in_the_round:
        return "in the round"
    return "flat" if entry.is_flat and entry.verb is not Verb.HEM else None


def _measures(entry: Entry) -> Values:
    return {
        "allowance": _length(entry.allowance),
        "depth": _length(entry.depth),
        "gap": _length(entry.gap),
        "overlap": _length(entry.overlap),
        "turned": entry.turned,
        "by": "hand" if entry.by_hand else None,
    }


def _everywhere(entry: Entry) -> Values:
    return {
        "station": _text(entry.station),
        "foot": _text(entry.foot),
        "minutes": None if entry.minutes is None else str(entry.minutes),
        "after": _list(_text(name) for name in entry.after),
        "because": _text(entry.because),
        "without": _list(_text(part) for part in entry.without),
        "unit": _list(_text(piece) for piece in entry.unit),
        "title": _text(entry.title),
        "note": _text(entry.note),
        "say": _text(entry.say),
    }


def _portion(portion: Portion | None) -> str | None:
    if portion is None:
        return None
    word = "from" if portion.is_named_part else "before"
    return _text(f"{format_written(portion.length)} {word} {portion.neighbour}")


def _direction(press_to: str | None) -> str | None:
    """The direction; a reader drops one leading ``to``, so a second one needs the first."""
    if press_to is not None and press_to.casefold().startswith("to "):
        return _text(f"to {press_to}")
    return _text(press_to)


def _length(length: Length | None) -> str | None:
    return None if length is None else format_written(length)


def _list(items: Iterable[str | None]) -> str | None:
    written = [item for item in items if item is not None]
    if len(written) == 1:
        return written[0]
    return f"[{', '.join(written)}]" if written else None


def _braces(values: Values, keys: Mapping[str, Key]) -> str:
    """Keys and values in the order of the table of keys; what a key table lacks is left out."""
    pairs = ((name, values.get(name)) for name in keys)
    return "{" + ", ".join(f"{name}: {text}" for name, text in pairs if text is not None) + "}"


def _text(text: str | None) -> str | None:
    """Write a text, in quotes unless it is plain enough for anybody."""
    if text is None:
        return None
    if _PLAIN.fullmatch(text) and "  " not in text and text.casefold() not in _TAKEN_WORDS:
        return text
    return '"' + "".join(_escaped(letter) for letter in text) + '"'


def _escaped(letter: str) -> str:
    if letter in _ESCAPES:
        return _ESCAPES[letter]
    if first_unseen(letter) is None:
        return letter
    code = ord(letter)
    return f"\\x{code:02x}" if code < 256 else f"\\u{code:04x}"
