"""Write a garment as the text that reads back as the same garment.

What a reader puts in by itself (paths, the meaning of ``all`` and of ``to: piece``) comes out in
full. A garment made in Python reads back equal if it could have been read from a file: its parts
carry the paths that a file gives them.
"""

from collections.abc import Iterable, Iterator, Mapping

from seqplan.base.measure import Length, format_written
from seqplan.load.dump_entries import write_entry
from seqplan.load.keys import Section, keys_of
from seqplan.load.writing import (
    Values,
    quoted_text,
    write_braces,
    write_length,
    write_list,
    write_number,
    write_text,
    write_texts,
    write_when,
)
from seqplan.model.garment import Amount, Choice, Fabric, Garment, LayPlan, Notion, OwnSeam, Waiver
from seqplan.model.piece import (
    Cut,
    Edge,
    Fullness,
    Layer,
    Notch,
    Outline,
    Piece,
    Slit,
    Spot,
)
from seqplan.model.station import DEFAULT_STATIONS, Station


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
    return "\n".join([*_top(garment), *_sections(garment), *_lists(garment)]) + "\n"


def _top(garment: Garment) -> Iterator[str]:
    """What stands in a line of its own."""
    values: Values = {
        "garment": quoted_text(garment.name),
        "about": write_text(garment.about),
        "author": write_text(garment.author),
        "version": write_text(garment.version),
        "date": write_text(garment.date),
        "mark": write_text(garment.mark.file if garment.mark else None),
        "terms": write_texts(garment.terms),
        "units": garment.units,
        "language": garment.language,
        "allowance": write_length(garment.allowance),
        "wearer": garment.wearer.value if garment.wearer else None,
        "not shown": write_texts(garment.not_shown),
        "sizes": _sizes(garment),
        "glossary": _glossary(garment),
    }
    return (f"{name}: {text}" for name, text in values.items() if text is not None)


def _glossary(garment: Garment) -> str | None:
    words = {quoted_text(word): quoted_text(meaning) for word, meaning in garment.glossary}
    return write_braces(words) if words else None


def _sizes(garment: Garment) -> str | None:
    """A list even of one: a comma in a bare text is taken for a list that lost its brackets."""
    names = ", ".join(quoted_text(size) for size in garment.sizes)
    return f"[{names}]" if names else None


def _sections(garment: Garment) -> Iterator[str]:
    """Names with what they are, section by section."""
    usual = set(DEFAULT_STATIONS)
    sections: Mapping[str, Mapping[str, str]] = {
        "choices": {choice.id: _options(choice) for choice in garment.choices},
        "recipes": {own.id: _parts(own) for own in garment.recipes},
        "fabrics": {fabric.id: write_braces(_fabric(fabric)) for fabric in garment.fabrics},
        "pieces": {piece.id: _piece(piece) for piece in garment.pieces},
        "notions": {notion.id: write_braces(_notion(notion)) for notion in garment.notions},
        "stations": {
            station.id: write_braces(_station(station))
            for station in garment.stations
            if station not in usual
        },
        "operations": {entry.id: write_entry(entry) for entry in garment.entries},
    }
    for section, things in sections.items():
        if things:
            yield f"{section}:"
            yield from (f"  {quoted_text(name)}: {text}" for name, text in things.items())


def _lists(garment: Garment) -> Iterator[str]:
    """Things without names, one to a line."""
    lists: Mapping[str, Iterable[Values]] = {
        "plans": map(_plan, garment.plans),
        "waive": map(_waiver, garment.waivers),
    }
    for section, things in lists.items():
        written = [write_braces(thing) for thing in things]
        if written:
            yield f"{section}:"
            yield from (f"  - {text}" for text in written)


def _plan(plan: LayPlan) -> Values:
    return {
        "picture": quoted_text(plan.picture.file),
        "fabric": quoted_text(plan.fabric),
        "width": write_length(plan.width),
        "size": write_text(plan.size),
        "alt": write_text(plan.alt),
    }


def _waiver(waiver: Waiver) -> Values:
    return {
        "rule": quoted_text(waiver.rule),
        "at": write_texts(waiver.at),
        "because": quoted_text(waiver.because),
    }


def _options(choice: Choice) -> str:
    return write_texts(choice.options) or "[]"


def _parts(own: OwnSeam) -> str:
    return write_texts(own.parts) or "[]"


def _fabric(fabric: Fabric) -> Values:
    return {
        "kind": quoted_text(fabric.kind),
        "weight": write_text(fabric.weight),
        "iron": None if fabric.is_ironed else "no",
        "amounts": _amounts(fabric.amounts),
        "note": write_text(fabric.note),
    }


def _amounts(amounts: Iterable[Amount]) -> str | None:
    found = {
        quoted_text(format_written(amount.width)): _by_size(amount.by_size, amount.length)
        for amount in amounts
    }
    return write_braces(found) if found else None


def _by_size(by_size: tuple[tuple[str, Length], ...], length: Length | None) -> str | None:
    """A length for each size, or one for all."""
    measures = {quoted_text(size): write_length(measure) for size, measure in by_size}
    return write_braces(measures) if measures else write_length(length)


def _notion(notion: Notion) -> Values:
    return {
        "kind": quoted_text(notion.kind),
        "length": _by_size(notion.by_size, notion.length),
        "width": write_length(notion.width),
        "iron": None if notion.is_ironed else "no",
        "count": None if notion.count == 1 else str(notion.count),
        "when": write_when(notion.when),
        "note": write_text(notion.note),
    }


def _station(station: Station) -> Values:
    return {
        "title": quoted_text(station.title),
        "mark": quoted_text(station.mark),
        "minutes": write_number(station.minutes),
        "foot minutes": write_number(station.foot_minutes),
        "thread minutes": write_number(station.thread_minutes),
        "needle minutes": write_number(station.needle_minutes),
    }


def _piece(piece: Piece) -> str:
    """A piece in the order of the table of keys."""
    values: Values = {**_cloth(piece), **_ring(piece), **_measured(piece), **_face(piece)}
    return write_braces({name: values.get(name) for name in keys_of(Section.PIECE)})


def _cloth(piece: Piece) -> Values:
    is_usual = (piece.cut, piece.copies) == (Cut.ALIKE, 1) and piece.like is None
    cut = str(piece.copies) if piece.cut is Cut.ALIKE else piece.cut.value
    return {
        "of": write_text(piece.fabric),
        "like": write_text(piece.like),
        "cut": None if is_usual else cut,
        "layer": None if piece.layer is Layer.SHELL else piece.layer.value,
        "worn": piece.worn.value if piece.worn else None,
        "when": write_when(piece.when),
        "note": write_text(piece.note),
    }


def _ring(piece: Piece) -> Values:
    """The edges; a piece that is like another has them, and the slits, from there."""
    if piece.like:
        return {}
    slits = {quoted_text(slit.name): write_braces(_slit(slit)) for slit in piece.slits}
    return {
        "strip" if piece.is_strip else "edges": _edges(piece.edges),
        "slits": write_braces(slits) if slits else None,
    }


def _measured(piece: Piece) -> Values:
    """The shape, which a piece that is like another has from there, and the lengths of edges."""
    lengths = {quoted_text(name): write_length(length) for name, length in piece.lengths}
    return {
        "shape": _outline(piece.shape, piece.cut) if piece.shape and not piece.like else None,
        "lengths": write_braces(lengths) if lengths else None,
    }


def _outline(shape: Outline, cut: Cut) -> str:
    """The corners, with the handles of each side between them."""
    items: list[str] = []
    for start, *handles, _ in shape.sides:
        items.append(_point(start))
        if handles:
            items.append(write_braces({"curve": f"[{', '.join(map(_point, handles))}]"}))
    if cut is Cut.FOLD:
        items.append(_point(shape.sides[-1][-1]))
    return f"[{', '.join(items)}]"


def _point(point: complex) -> str:
    return f"[{_coordinate(point.real)}, {_coordinate(point.imag)}]"


def _coordinate(mm: float) -> str:
    """Centimetres, to the thousandth of a millimetre that coordinates are kept to."""
    return f"{mm / 10:.4f}".rstrip("0").rstrip(".") + " cm"


def _face(piece: Piece) -> Values:
    begins = {
        quoted_text(item.name): quoted_text(f"{format_written(item.length)} from {item.edge}")
        for item in piece.begins
    }
    return {
        "selvage": write_texts(piece.selvage),
        "darts": write_list(map(_fullness, piece.darts)),
        "pleats": write_list(map(_fullness, piece.pleats)),
        "spots": write_texts(map(_spot, piece.spots)),
        "lines": write_texts(piece.lines),
        "begins": write_braces(begins) if begins else None,
        "notches": _notches(piece.notches),
    }


def _notches(notches: tuple[Notch, ...]) -> str | None:
    """The notches of each edge, in their order."""
    edges = dict.fromkeys(notch.edge for notch in notches)
    listed = {
        quoted_text(edge): write_list(quoted_text(str(n)) for n in notches if n.edge == edge)
        for edge in edges
    }
    return write_braces(listed) if listed else None


def _edges(edges: tuple[Edge, ...]) -> str | None:
    """The list of edges; those that meet at marks share an item, those of slits are not in it."""
    items: list[str] = []
    for edge in edges:
        if edge.is_slit:
            continue
        if edge.at_mark and items:
            items[-1] += f" | {edge.name}"
        else:
            items.append(edge.name)
    return f"[{', '.join(map(quoted_text, items))}]" if items else None


def _slit(slit: Slit) -> Values:
    return {
        "at": quoted_text(f"{slit.before} | {slit.after}"),
        "length": write_length(slit.length),
    }


def _fullness(fullness: Fullness) -> str:
    number = None if fullness.number == 1 else str(fullness.number)
    if number is None and fullness.intake is None:
        return quoted_text(fullness.on)
    intake = write_length(fullness.intake)
    return write_braces({"on": quoted_text(fullness.on), "number": number, "intake": intake})


def _spot(spot: Spot) -> str:
    return f"{spot.name}@{spot.hand.value}" if spot.hand else spot.name
