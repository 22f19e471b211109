"""The list of operations: which verb each has, its fields, and what one makes for another."""

from typing import NamedTuple

from seqplan.base.ids import EntryId
from seqplan.load import fields
from seqplan.load.entries import read_entry
from seqplan.load.keys import Key, Status, keys_with, verb_keys
from seqplan.load.names import Names, report_unknown
from seqplan.load.nodes import ListNode, MappingNode, Node, Pair, Scalar
from seqplan.load.scope import Scope
from seqplan.load.sink import Sink, listing, quoted
from seqplan.model.entry import Entry, Verb


class Deed(NamedTuple):
    """An entry whose verb is known; ``verb`` is ``None`` for one that is not looked at yet."""

    pair: Pair
    table: MappingNode
    main: Pair
    verb: Verb | None


def find_deeds(pairs: list[Pair], sink: Sink) -> list[Deed]:
    """Find out what each entry does; those that do not say are reported and left out."""
    deeds: list[Deed] = []
    for pair in pairs:
        table = fields.mapping(pair.value, sink, words="expected-operation")
        main = _main_key(pair, table, sink) if table is not None else None
        if table is None or main is None:
            continue
        is_planned = verb_keys()[main.key].status is Status.PLANNED
        deeds.append(Deed(pair, table, main, None if is_planned else Verb(main.key)))
    return deeds


def read_deeds(deeds: list[Deed], scope: Scope) -> tuple[Entry, ...]:
    """Read the fields of every entry, then see that what is used is made."""
    read: list[tuple[Entry, fields.Fields]] = []
    for deed in deeds:
        entry_id = EntryId(deed.pair.key)
        found = _fields(deed, scope)
        entry = read_entry(entry_id, deed.verb or Verb.DO, found, scope)
        read.append((entry, found))
    is_whole = len(read) >= len(scope.entries.names) and all(deed.verb for deed in deeds)
    _check_results(read, scope, is_whole=is_whole)
    return tuple(entry for entry, _ in read)


def _main_key(pair: Pair, table: MappingNode, sink: Sink) -> Pair | None:
    """The one key that is a verb."""
    verbs = verb_keys()
    found = [item for item in table.pairs if item.key in verbs]
    found = list({item.key: item for item in reversed(found)}.values())[::-1]
    if not found:
        built = [key.name for key in verbs.values() if key.status is Status.BUILT]
        others = [item.key for item in table.pairs if item.key not in keys_with(Verb.DO)]
        fix = next((sink.suggest(name, built, "") for name in others), None)
        sink.error("no-verb", pair, entry=quoted(pair.key), fix=fix)
        return None
    leading = [item for item in found if all(_goes_with(other, item) for other in found)]
    if len(leading) == 1:
        return leading[0]
    if verbs[found[0].key].status is Status.PLANNED:
        return found[0]
    names = listing(item.key for item in found)
    sink.error("two-verbs", found[1], entry=quoted(pair.key), verbs=names)
    return None


def _goes_with(other: Pair, main: Pair) -> bool:
    """Whether a key that could be a verb is a plain key of the verb ``main``."""
    if other is main:
        return True
    if verb_keys()[main.key].status is Status.PLANNED:
        return False
    key = keys_with(Verb(main.key)).get(other.key)
    return key is not None and not key.is_verb


def _fields(deed: Deed, scope: Scope) -> fields.Fields:
    """The fields of an entry; for one with a planned verb, only those that all entries have."""
    if deed.verb is not None:
        keys = keys_with(deed.verb)
        found = fields.read_fields(deed.table, keys, scope.sink)
        fields.check_required(found, keys, deed.pair, scope.sink)
        return found
    scope.sink.warning(
        "not-looked-at-yet", deed.main, words="verb-not-looked-at-yet", verb=quoted(deed.main.key)
    )
    everywhere: dict[str, Key] = {
        name: key for name, key in keys_with(Verb.DO).items() if not key.verbs
    }
    known = tuple(pair for pair in deed.table.pairs if pair.key in everywhere)
    rest = MappingNode(known, deed.table.span, deed.table.path)
    found = dict(fields.read_fields(rest, everywhere, scope.sink))
    words = f"{deed.main.key}: {_written(deed.main.value)}"
    value = deed.main.value
    found[Verb.DO.value] = Scalar(words, value.span, value.path)
    found.setdefault("station", Scalar("table", deed.main.span, deed.main.path))
    return found


def _written(node: Node) -> str:
    """The text of a node in one line."""
    if isinstance(node, Scalar):
        return node.text
    if isinstance(node, ListNode):
        return ", ".join(_written(item) for item in node.items)
    return ", ".join(f"{pair.key}: {_written(pair.value)}" for pair in node.pairs)


def _check_results(
    read: list[tuple[Entry, fields.Fields]], scope: Scope, *, is_whole: bool
) -> None:
    """Report what is made twice, and what is used though nobody, or only the user, makes it.

    Where some entries could not be read (not ``is_whole``), one of those may be the maker.
    """
    sink = scope.sink
    makers: dict[str, EntryId] = {}
    for entry, found in read:
        for name, at in _items(entry.makes, found.get("makes")):
            maker = makers.setdefault(name, entry.id)
            if maker != entry.id:
                sink.error("made-twice", at, name=quoted(name), maker=quoted(maker))
    known = Names(makers, "fix-nothing-made", is_known=is_whole)
    for entry, found in read:
        for name, at in _items(entry.uses, found.get("uses")):
            if name not in known:
                report_unknown("unknown-result", name, at, known, sink)
            elif name in entry.makes:
                sink.error("uses-its-own", at, name=quoted(name), entry=quoted(entry.id))


def _items(names: tuple[str, ...], node: Node | None) -> list[tuple[str, Node]]:
    """Each name with the first place where it stands."""
    if node is None:
        return []
    items = node.items if isinstance(node, ListNode) else (node,)
    places = {item.text.strip(): item for item in reversed(items) if isinstance(item, Scalar)}
    return [(name, places.get(name, node)) for name in names]
