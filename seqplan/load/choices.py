"""Choices, sizes, own recipes and waivers: what stands at the top of a file beside the garment."""

from collections.abc import Container, Mapping
from typing import NamedTuple

from seqplan.base.ids import OpId, RuleSlug
from seqplan.load import fields
from seqplan.load.keys import SEAMS, Section, keys_of
from seqplan.load.names import (
    Names,
    check_title,
    clean,
    read_names,
    report_unknown,
)
from seqplan.load.nodes import MappingNode, Node, Pair, Scalar
from seqplan.load.sink import Sink, listing, quoted
from seqplan.model.garment import Choice, Garment, OwnSeam, Waiver
from seqplan.recipes.book import OWN_PARTS

SEAM_PARTS = tuple(OWN_PARTS)
"""What a seam of the author's own may be made of."""

When = tuple[tuple[str, str], ...]


class Choices(NamedTuple):
    """The names of all choices, the faulty ones among them, and the choices that could be read."""

    names: Names
    choice: Mapping[str, Choice]


class Sizes(NamedTuple):
    """The sizes of the garment, the base size first."""

    names: Names
    in_order: tuple[str, ...]


def read_choices(names: Names, table: MappingNode | None, sink: Sink) -> Choices:
    """Read ``choices:``, each with its list of options."""
    found: dict[str, Choice] = {}
    for item in read_names(table, sink) if table is not None else []:
        options = fields.names_of(item.value, lambda node: _title(node, sink), sink)
        offered = tuple(name for name, _ in options)
        if len(offered) == 1 and _is_whole(item.value, offered):
            sink.error("one-option", item, choice=quoted(item.key))
        if offered:
            found.setdefault(item.key, Choice(item.key, offered, item.path))
    return Choices(names, found)


def when(node: Node | None, choices: Choices, sink: Sink) -> When:
    """Read ``when: {way: legs first}``; a list of options means any of them."""
    if node is None:
        return ()
    table = fields.mapping(node, sink, words="expected-when")
    if table is None:
        return ()
    if not table.pairs:
        sink.error("wrong-type", node, words="expected-when", found="`{}`")
    return tuple(item for pair in table.pairs for item in _options(pair, choices, sink))


def _options(pair: Pair, choices: Choices, sink: Sink) -> When:
    """One choice with the option, or the options, for which something is there."""
    name = clean(pair.key)
    if name not in choices.names:
        report_unknown("unknown-choice-name", name, pair, choices.names, sink)
        return ()
    choice = choices.choice.get(name)
    if choice is None:
        return ()
    found = fields.names_of(pair.value, lambda node: _option(node, choice, sink), sink)
    return tuple((choice.id, option) for option, _ in found)


def _option(node: Node, choice: Choice, sink: Sink) -> str | None:
    option = _title(node, sink)
    if option is None or option in choice.options:
        return option
    fix = sink.offer(option, choice.options)
    words = {"choice": quoted(choice.id), "options": listing(choice.options)}
    sink.error("unknown-option", node, found=quoted(option), fix=fix, **words)
    return None


def warn_of_options_alike(garment: Garment, root: MappingNode, sink: Sink) -> None:
    """Warn of options between which nothing in the file makes a difference."""
    named = {option for piece in garment.pieces for option in piece.when}
    named |= {option for notion in garment.notions for option in notion.when}
    named |= {option for entry in garment.entries for option in entry.when}
    table = root.get("choices")
    for choice in garment.choices:
        alike = [option for option in choice.options if (choice.id, option) not in named]
        if len(alike) > 1 and table is not None and isinstance(table.value, MappingNode):
            at = table.value.get(choice.id) or table
            words = {"choice": quoted(choice.id), "options": listing(alike)}
            sink.warning("options-alike", at, **words)


def read_recipes(table: MappingNode | None, sink: Sink) -> tuple[OwnSeam, ...]:
    """Read ``recipes:``, the author's own kinds of seam."""
    found: dict[str, OwnSeam] = {}
    for pair in table.pairs if table is not None else ():
        name = pair.key
        if not check_title(name, pair, sink):
            continue
        if name.casefold() in {seam.casefold() for seam in SEAMS}:
            sink.error("usual-seam", pair, name=quoted(name))
        parts = fields.names_of(pair.value, lambda node: _part(node, sink), sink)
        names = tuple(name for name, _ in parts)
        if names and "sew" not in names and _is_whole(pair.value, names):
            sink.error("recipe-without-sew", pair, recipe=quoted(name))
        found.setdefault(name, OwnSeam(name, names, pair.path))
    return tuple(found.values())


def _is_whole(node: Node, names: Container[str]) -> bool:
    """Whether no item of a list was refused, so that what is missing was not meant to be there."""
    items = fields.items_of(node)
    return all(isinstance(item, Scalar) and clean(item.text) in names for item in items)


def _part(node: Node, sink: Sink) -> str | None:
    written = fields.text(node, sink)
    if written is None or written in SEAM_PARTS:
        return written
    fix = sink.offer(written, SEAM_PARTS)
    sink.error("unknown-seam-part", node, found=quoted(written), parts=listing(SEAM_PARTS), fix=fix)
    return None


def _title(node: Node, sink: Sink) -> str | None:
    """A name that may have spaces: an option, a size."""
    written = fields.text(node, sink)
    name = clean(written) if written is not None else None
    return name if name is not None and check_title(name, node, sink) else None


def read_sizes(node: Node | None, sink: Sink) -> Sizes:
    """Read ``sizes:``; a text with commas was meant as a list."""
    if isinstance(node, Scalar) and "," in node.text:
        sink.error("sizes-in-a-row", node, found=quoted(node.text))
        return Sizes(Names(none_words="fix-no-sizes", is_known=False), ())
    found = fields.names_of(node, lambda item: _title(item, sink), sink)
    in_order = tuple(name for name, _ in found)
    is_whole = node is None or _is_whole(node, in_order)
    return Sizes(Names(dict.fromkeys(in_order), "fix-no-sizes", is_known=is_whole), in_order)


def read_waivers(node: Node | None, entries: Names, sink: Sink) -> tuple[Waiver, ...]:
    """Read ``waive:``, a list of rules, each with a reason."""
    found = fields.listed(node, lambda item: _waiver(item, entries, sink), sink)
    return tuple(waiver for waiver, _ in found)


def _waiver(node: Node, entries: Names, sink: Sink) -> Waiver | None:
    keys = keys_of(Section.WAIVER)
    table = fields.mapping_of(node, keys, sink, words="expected-waiver")
    if table is None:
        return None
    found = fields.read_fields(table, keys, sink)
    fields.check_required(found, keys, table, sink)
    at = fields.names_of(found.get("at"), lambda item: operation(item, entries, sink), sink)
    return Waiver(
        rule=RuleSlug(fields.text(found.get("rule"), sink) or ""),
        at=tuple(OpId(name) for name, _ in at),
        because=fields.text(found.get("because"), sink) or "",
        path=table.path,
    )


def operation(node: Node, entries: Names, sink: Sink) -> str | None:
    """Read the name of an entry, or of one operation of it, written ``entry/part``."""
    written = fields.text(node, sink)
    if written is None:
        return None
    name, slash, part = (clean(piece) for piece in written.partition("/"))
    if name not in entries:
        report_unknown("unknown-operation", name, node, entries, sink)
    elif slash and not part:
        sink.error("part-without-name", node, entry=quoted(name))
    else:
        return f"{name}{slash}{part}"
    return None
