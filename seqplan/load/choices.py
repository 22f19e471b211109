"""Choices, sizes, own recipes and waivers: what stands at the top of a file beside the garment."""

from collections.abc import Mapping

from seqplan.base.ids import EntryId, RuleSlug
from seqplan.load import fields
from seqplan.load.keys import Section, keys_of
from seqplan.load.names import Names, clean, read_names, report_unknown
from seqplan.load.nodes import ListNode, MappingNode, Node, Pair
from seqplan.load.sink import Sink, found_instead, listing, quoted
from seqplan.model.garment import Choice, OwnSeam, Waiver

SEAM_PARTS = (
    "sew",
    "trim",
    "grade",
    "clip",
    "finish",
    "press",
    "understitch",
    "topstitch",
    "turn",
)
"""What a seam of the author's own may be made of."""

Choices = Mapping[str, Choice]
When = tuple[tuple[str, str], ...]


def read_choices(table: MappingNode | None, sink: Sink) -> dict[str, Choice]:
    """Read ``choices:``, each with its list of options."""
    found: dict[str, Choice] = {}
    for pair in read_names(table, sink) if table is not None else []:
        options = fields.names_of(pair.value, lambda node: fields.text(node, sink), sink)
        if len(options) == 1:
            sink.error("one-option", pair, choice=quoted(pair.key))
        if options:
            names = tuple(name for name, _ in options)
            found.setdefault(pair.key, Choice(pair.key, names, pair.path))
    return found


def when(node: Node | None, choices: Choices, sink: Sink) -> When:
    """Read ``when: {way: legs first}``."""
    if node is None:
        return ()
    table = fields.mapping(node, sink, words="expected-when")
    if table is None:
        return ()
    found = [_option(pair, choices, sink) for pair in table.pairs]
    return tuple(item for item in found if item is not None)


def _option(pair: Pair, choices: Choices, sink: Sink) -> tuple[str, str] | None:
    option = fields.text(pair.value, sink)
    choice = choices.get(clean(pair.key))
    if choice is None:
        report_unknown(
            "unknown-choice-name", pair.key, pair, Names(choices, "fix-no-choices"), sink
        )
        return None
    if option is None:
        return None
    if option not in choice.options:
        fix = sink.offer(option, choice.options)
        words = {"choice": quoted(choice.id), "options": listing(choice.options)}
        sink.error("unknown-option", pair.value, found=quoted(option), fix=fix, **words)
        return None
    return choice.id, option


def read_recipes(table: MappingNode | None, sink: Sink) -> tuple[OwnSeam, ...]:
    """Read ``recipes:``, the author's own kinds of seam."""
    found = []
    for pair in table.pairs if table is not None else ():
        parts = fields.names_of(pair.value, lambda node: _part(node, sink), sink)
        names = tuple(name for name, _ in parts)
        if names and "sew" not in names:
            sink.error("recipe-without-sew", pair, recipe=quoted(pair.key))
        found.append(OwnSeam(clean(pair.key), names, pair.path))
    return tuple(found)


def _part(node: Node, sink: Sink) -> str | None:
    written = fields.text(node, sink)
    if written is None or written in SEAM_PARTS:
        return written
    fix = sink.offer(written, SEAM_PARTS)
    sink.error("unknown-seam-part", node, found=quoted(written), parts=listing(SEAM_PARTS), fix=fix)
    return None


def read_sizes(node: Node | None, sink: Sink) -> tuple[str, ...]:
    """Read ``sizes:``."""
    found = fields.names_of(node, lambda item: fields.text(item, sink), sink)
    return tuple(name for name, _ in found)


def read_waivers(node: Node | None, entries: Names, sink: Sink) -> tuple[Waiver, ...]:
    """Read ``waive:``, a list of rules, each with a reason."""
    if node is None:
        return ()
    if not isinstance(node, ListNode):
        sink.error("wrong-type", node, words="expected-waivers", found=found_instead(node))
        return ()
    found = [_waiver(item, entries, sink) for item in node.items]
    return tuple(waiver for waiver in found if waiver is not None)


def _waiver(node: Node, entries: Names, sink: Sink) -> Waiver | None:
    keys = keys_of(Section.WAIVER)
    table = fields.mapping(node, sink, words="expected-waiver")
    if table is None:
        return None
    found = fields.read_fields(table, keys, sink)
    fields.check_required(found, keys, table, sink)
    at = fields.names_of(found.get("at"), lambda item: _entry(item, entries, sink), sink)
    return Waiver(
        rule=RuleSlug(fields.text(found.get("rule"), sink) or ""),
        at=tuple(EntryId(name) for name, _ in at),
        because=fields.text(found.get("because"), sink) or "",
        path=table.path,
    )


def _entry(node: Node, entries: Names, sink: Sink) -> str | None:
    written = fields.text(node, sink)
    if written is None:
        return None
    name = clean(written)
    if name not in entries:
        report_unknown("unknown-operation", name, node, entries, sink)
        return None
    return name
