"""The list of operations: which verb each has, its fields, and what one makes for another."""

from typing import NamedTuple

from seqplan.base.ids import EntryId
from seqplan.load import fields
from seqplan.load.entries import read_entry
from seqplan.load.keys import keys_with, verb_keys
from seqplan.load.names import Names, report_unknown
from seqplan.load.nodes import ListNode, MappingNode, Node, Pair, Scalar
from seqplan.load.scope import Scope
from seqplan.load.sink import Sink, listing, quoted
from seqplan.model.entry import Entry, Verb


class Deed(NamedTuple):
    """An entry whose verb is known."""

    pair: Pair
    table: MappingNode
    verb: Verb


def find_deeds(pairs: list[Pair], sink: Sink) -> list[Deed]:
    """Find out what each entry does; those that do not say are reported and left out."""
    deeds: list[Deed] = []
    for pair in pairs:
        table = fields.mapping(pair.value, sink, words="expected-operation")
        main = _main_key(pair, table, sink) if table is not None else None
        if table is not None and main is not None:
            deeds.append(Deed(pair, table, Verb(main.key)))
    return deeds


def read_deeds(deeds: list[Deed], scope: Scope) -> tuple[Entry, ...]:
    """Read the fields of every entry, then see that what is used is made."""
    read: list[tuple[Entry, fields.Fields]] = []
    for deed in deeds:
        keys = keys_with(deed.verb)
        found = fields.read_fields(deed.table, keys, scope.sink)
        fields.check_required(found, keys, deed.pair, scope.sink)
        read.append((read_entry(EntryId(deed.pair.key), deed.verb, found, scope), found))
    _check_results(read, scope, is_whole=len(read) >= len(scope.entries.names))
    _check_gaps(read, scope)
    return tuple(entry for entry, _ in read)


def _main_key(pair: Pair, table: MappingNode, sink: Sink) -> Pair | None:
    """The one key that is a verb."""
    verbs = verb_keys()
    found = [item for item in table.pairs if item.key in verbs]
    found = list({item.key: item for item in reversed(found)}.values())[::-1]
    if not found:
        others = [item.key for item in table.pairs if item.key not in keys_with(Verb.DO)]
        fix = next((sink.suggest(name, verbs, "") for name in others), None)
        sink.error("no-verb", pair, entry=quoted(pair.key), fix=fix)
        return None
    leading = [item for item in found if all(_goes_with(other, item) for other in found)]
    if len(leading) == 1:
        return leading[0]
    names = listing(item.key for item in found)
    sink.error("two-verbs", found[1], entry=quoted(pair.key), verbs=names)
    return None


def _goes_with(other: Pair, main: Pair) -> bool:
    """Whether a key that could be a verb is a plain key of the verb ``main``."""
    if other is main:
        return True
    key = keys_with(Verb(main.key)).get(other.key)
    return key is not None and not key.is_verb


def _check_results(
    read: list[tuple[Entry, fields.Fields]], scope: Scope, *, is_whole: bool
) -> None:
    """Report what is made twice, and what is used though nobody, or only the user, makes it.

    Two entries may make the same thing where a choice is between them.

    Where some entries could not be read (not ``is_whole``), one of those may be the maker.
    """
    sink = scope.sink
    makers: dict[str, list[Entry]] = {}
    for entry, found in read:
        for name, at in _items(entry.makes, found.get("makes")):
            others = makers.setdefault(name, [])
            maker = next((m for m in others if _can_meet(m, entry)), None)
            if maker is not None:
                sink.error("made-twice", at, name=quoted(name), maker=quoted(maker.id))
            others.append(entry)
    known = Names(makers, "fix-nothing-made", is_known=is_whole)
    for entry, found in read:
        for name, at in _items(entry.uses, found.get("uses")):
            if name not in known:
                report_unknown("unknown-result", name, at, known, sink)
            elif name in entry.makes:
                sink.error("uses-its-own", at, name=quoted(name), entry=quoted(entry.id))


def _check_gaps(read: list[tuple[Entry, fields.Fields]], scope: Scope) -> None:
    """Report a gap that is closed where none was left; free words may leave one."""
    entries = {entry.id: entry for entry, _ in read}
    for entry, found in read:
        other = entries.get(entry.closes) if entry.closes else None
        if other is None or other.verb is Verb.DO or other.gap or other.portion:
            continue
        words = "no-gap" if "gap" in keys_with(other.verb) else "no-gap-there"
        scope.sink.error("no-gap", found["close"], words=words, entry=quoted(other.id))


def _can_meet(one: Entry, other: Entry) -> bool:
    """Whether two entries can be in one variant; most garments have no choices to look at."""
    if not (one.when and other.when):
        return True
    from seqplan.model.variant import never_together

    return not never_together(one.when, other.when)


def _items(names: tuple[str, ...], node: Node | None) -> list[tuple[str, Node]]:
    """Each name with the first place where it stands."""
    if node is None:
        return []
    items = node.items if isinstance(node, ListNode) else (node,)
    places = {item.text.strip(): item for item in reversed(items) if isinstance(item, Scalar)}
    return [(name, places.get(name, node)) for name in names]
