"""The top of the file: its keys, its sections, and the garment they make together."""

from dataclasses import replace

from seqplan.base.path import Span
from seqplan.load import fields
from seqplan.load.beside import Beside
from seqplan.load.choices import (
    Sizes,
    read_choices,
    read_recipes,
    read_sizes,
    read_waivers,
    warn_of_options_alike,
)
from seqplan.load.keys import Section, Takes, keys_of
from seqplan.load.materials import Offer, read_fabrics, read_notions, read_stations
from seqplan.load.names import Names, names_in, read_names
from seqplan.load.nodes import ListNode, MappingNode, Node, Scalar, Spot
from seqplan.load.operations import find_deeds, read_deeds
from seqplan.load.pieces import Around, read_pieces
from seqplan.load.scope import Scope
from seqplan.load.sink import Sink, found_instead
from seqplan.model.garment import Garment, Wearer

_SECTIONS = ("choices", "recipes", "fabrics", "pieces", "notions", "stations", "operations")
_COVER = frozenset({"glossary", "mark", "plans", "terms"})
"""What few files have, so that its readers are imported only then."""

_NONE = {
    "choices": "fix-no-choices",
    "fabrics": "fix-no-fabrics",
    "pieces": "fix-no-pieces",
    "notions": "fix-no-notions",
    "operations": "fix-no-operations",
}
"""What to say where a section with nothing in it is named."""


def read_garment(root: Node, sink: Sink, beside: Beside) -> Garment | None:
    """Read the whole tree; ``None`` where anything in it is wrong."""
    if not isinstance(root, MappingNode):
        words = "expected-garment-text" if isinstance(root, Scalar) else "expected-garment"
        sink.error("wrong-type", root, words=words, found=found_instead(root))
        return None
    keys = keys_of(Section.GARMENT)
    root, is_whole = _as_meant(root, sink)
    found = fields.read_fields(root, keys, sink)
    top = Span(root.span.line, root.span.column, root.span.line, root.span.column + 1)
    wanted = {name: key for name, key in keys.items() if is_whole or key.takes is not Takes.TABLE}
    fields.check_required(found, wanted, Spot(top), sink)
    units = fields.choice(found.get("units"), sink, keys["units"]) or "cm"
    sizes = read_sizes(found.get("sizes"), sink)
    wearer = fields.choice(found.get("wearer"), sink, keys["wearer"])
    garment = Garment(
        name=fields.text(found.get("garment"), sink) or "",
        about=fields.text(found.get("about"), sink),
        author=fields.text(found.get("author"), sink),
        version=fields.text(found.get("version"), sink),
        date=fields.text(found.get("date"), sink),
        units=units,
        language=fields.choice(found.get("language"), sink, keys["language"]),
        allowance=fields.length(found.get("allowance"), sink, units),
        wearer=Wearer(wearer) if wearer else None,
        not_shown=_not_shown(found.get("not shown"), sink),
        sizes=sizes.in_order,
    )
    known = _names_by_section(root, is_whole=is_whole)
    garment = _with_sections(garment, sizes, root, known, sink, beside)
    entries = known["operations"]
    garment = replace(garment, waivers=read_waivers(found.get("waive"), entries, sink))
    if _COVER & found.keys():
        around = (known["fabrics"], sizes, beside)
        garment = _with_cover(garment, found, around, sink)
    if sink.has_errors:
        return None
    warn_of_options_alike(garment, root, sink)
    return garment


def _with_cover(
    garment: Garment, found: fields.Fields, around: tuple[Names, Sizes, Beside], sink: Sink
) -> Garment:
    """The garment with its terms, its mark, its lay plans and its own words."""
    from seqplan.load.cover import Offer, read_glossary, read_picture, read_plans, read_terms

    fabrics, sizes, beside = around
    offer = Offer(fabrics, sizes, garment.units, beside)
    return replace(
        garment,
        terms=read_terms(found.get("terms"), sink),
        mark=read_picture(found.get("mark"), offer.beside, sink),
        plans=read_plans(found.get("plans"), offer, sink),
        glossary=read_glossary(found.get("glossary"), sink),
    )


def _not_shown(node: Node | None, sink: Sink) -> tuple[str, ...]:
    key = keys_of(Section.GARMENT)["not shown"]
    found = fields.names_of(node, lambda item: fields.choice(item, sink, key), sink)
    return tuple(word for word, _ in found)


def _as_meant(root: MappingNode, sink: Sink) -> tuple[MappingNode, bool]:
    """The sections as they were meant, and whether none of them is lost under an unknown key."""
    keys = keys_of(Section.GARMENT)
    if _is_outline_odd(root):
        from seqplan.load.outline import outlined

        root = outlined(root, sink)
    meant = fields.spelt(root, keys, sink)
    known = {pair.span for pair in meant.pairs}
    lost = (pair for pair in root.pairs if pair.span not in known)
    return meant, all(isinstance(pair.value, Scalar) for pair in lost)


def _is_outline_odd(root: MappingNode) -> bool:
    """Whether a section or an entry has nothing below it, or a list."""
    sections = [pair.value for pair in root.pairs if pair.key in _SECTIONS]
    tables = [node for node in sections if isinstance(node, MappingNode)]
    entries = [pair.value for table in tables for pair in table.pairs]
    return len(tables) < len(sections) or any(
        isinstance(node, ListNode) or (isinstance(node, Scalar) and node.is_empty)
        for node in entries
    )


def _names_by_section(root: MappingNode, *, is_whole: bool) -> dict[str, Names]:
    """What each section defines; one that is missing may be there under a name not known."""
    pairs = {name: root.get(name) for name in _SECTIONS}
    missing = Names(is_known=False)
    return {
        name: names_in(pair, _NONE.get(name, "")) if is_whole or pair is not None else missing
        for name, pair in pairs.items()
    }


def _with_sections(
    garment: Garment,
    sizes: Sizes,
    root: MappingNode,
    known: dict[str, Names],
    sink: Sink,
    beside: Beside,
) -> Garment:
    """Read the sections in the order in which they name one another."""
    table = {name: fields.table(root.get(name), sink) for name in _SECTIONS}
    choices = read_choices(known["choices"], table["choices"], sink)
    recipes = read_recipes(table["recipes"], sink)
    offer = Offer(garment.units, sizes, choices)
    fabrics = read_fabrics(table["fabrics"], sink, offer)
    around = Around(known["pieces"], known["fabrics"], choices, garment.units, beside)
    pieces, uncut = read_pieces(table["pieces"], around, sink)
    notions = read_notions(table["notions"], sink, offer)
    stations = read_stations(table["stations"], sink)
    operations = table["operations"]
    deeds = find_deeds(read_names(operations, sink) if operations is not None else [], sink)
    usual = {station.id: station for station in stations}
    own = known["stations"]
    scope = Scope(
        sink=sink,
        units=garment.units,
        fabrics=known["fabrics"],
        pieces=known["pieces"],
        notions=known["notions"],
        stations=Names({**usual, **own.names}, is_known=own.is_known),
        entries=known["operations"],
        piece=pieces,
        uncut=uncut,
        notion={notion.id: notion for notion in notions},
        verbs={deed.pair.key: deed.verb for deed in deeds},
        all_pieces=tuple(piece.id for piece in pieces.values()),
        choices=choices,
        own_seams=known["recipes"],
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
