"""The top of the file: its keys, its sections, and the garment they make together."""

from dataclasses import replace

from seqplan.base.path import Span
from seqplan.load import fields
from seqplan.load.choices import (
    Sizes,
    read_choices,
    read_recipes,
    read_sizes,
    read_waivers,
    warn_of_options_alike,
)
from seqplan.load.keys import Section, keys_of
from seqplan.load.materials import Offer, read_fabrics, read_notions, read_stations
from seqplan.load.names import Names, names_in, read_names
from seqplan.load.nodes import MappingNode, Node, Scalar, Spot
from seqplan.load.operations import find_deeds, read_deeds
from seqplan.load.pieces import Around, read_pieces
from seqplan.load.scope import Scope
from seqplan.load.sink import Sink, found_instead
from seqplan.model.garment import Garment, Wearer

_SECTIONS = ("choices", "recipes", "fabrics", "pieces", "notions", "stations", "operations")


def read_garment(root: Node, sink: Sink) -> Garment | None:
    """Read the whole tree; ``None`` where anything in it is wrong."""
    if not isinstance(root, MappingNode):
        words = "expected-garment-text" if isinstance(root, Scalar) else "expected-garment"
        sink.error("wrong-type", root, words=words, found=found_instead(root))
        return None
    keys = keys_of(Section.GARMENT)
    found = fields.read_fields(root, keys, sink)
    top = Span(root.span.line, root.span.column, root.span.line, root.span.column + 1)
    fields.check_required(found, keys, Spot(top), sink)
    units = fields.choice(found.get("units"), sink, keys["units"]) or "cm"
    sizes = read_sizes(found.get("sizes"), sink)
    wearer = fields.choice(found.get("wearer"), sink, keys["wearer"])
    garment = Garment(
        name=fields.text(found.get("garment"), sink) or "",
        about=fields.text(found.get("about"), sink),
        author=fields.text(found.get("author"), sink),
        version=fields.text(found.get("version"), sink),
        units=units,
        allowance=fields.length(found.get("allowance"), sink, units),
        wearer=Wearer(wearer) if wearer else None,
        not_shown=_not_shown(found.get("not shown"), sink),
        sizes=sizes.in_order,
    )
    garment = _with_sections(garment, sizes, root, sink)
    entries = names_in(root.get("operations"), "fix-no-operations")
    garment = replace(garment, waivers=read_waivers(found.get("waive"), entries, sink))
    if sink.has_errors:
        return None
    warn_of_options_alike(garment, root, sink)
    return garment


def _not_shown(node: Node | None, sink: Sink) -> tuple[str, ...]:
    key = keys_of(Section.GARMENT)["not shown"]
    found = fields.names_of(node, lambda item: fields.choice(item, sink, key), sink)
    return tuple(word for word, _ in found)


def _with_sections(garment: Garment, sizes: Sizes, root: MappingNode, sink: Sink) -> Garment:
    """Read the sections in the order in which they name one another."""
    table = {name: fields.table(root.get(name), sink) for name in _SECTIONS}
    choices = read_choices(root.get("choices"), table["choices"], sink)
    recipes = read_recipes(table["recipes"], sink)
    fabrics = read_fabrics(table["fabrics"], sink)
    fabric_names = names_in(root.get("fabrics"), "fix-no-fabrics")
    piece_names = names_in(root.get("pieces"), "fix-no-pieces")
    around = Around(piece_names, fabric_names, choices, garment.units)
    pieces = read_pieces(table["pieces"], around, sink)
    notions = read_notions(table["notions"], sink, Offer(garment.units, sizes, choices))
    stations = read_stations(table["stations"], sink)
    operations = table["operations"]
    deeds = find_deeds(read_names(operations, sink) if operations is not None else [], sink)
    usual = {station.id: station for station in stations}
    own = names_in(root.get("stations"), "")
    scope = Scope(
        sink=sink,
        units=garment.units,
        fabrics=fabric_names,
        pieces=piece_names,
        notions=names_in(root.get("notions"), "fix-no-notions"),
        stations=Names({**usual, **own.names}, is_known=own.is_known),
        entries=names_in(root.get("operations"), "fix-no-operations"),
        piece=pieces,
        notion={notion.id: notion for notion in notions},
        verbs={deed.pair.key: deed.verb for deed in deeds},
        all_pieces=tuple(piece.id for piece in pieces.values()),
        choices=choices,
        own_seams=names_in(root.get("recipes"), ""),
    )
    return replace(
        garment,
        choices=tuple(choices.choice.values()),
        recipes=recipes,
        fabrics=fabrics,
        pieces=tuple(pieces.values()),
        notions=notions,
        stations=stations,
        entries=read_deeds(deeds, scope),
    )
