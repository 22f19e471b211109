"""The list of operations: which verb each has, its fields, and what one makes for another."""

from collections.abc import Iterator
from typing import NamedTuple

from seqplan.base.ids import EntryId
from seqplan.load import fields
from seqplan.load.entries import read_entry
from seqplan.load.keys import Keys, entry_keys, keys_with, verb_keys
from seqplan.load.names import Names, clean, report_unknown
from seqplan.load.nodes import ListNode, MappingNode, Node, Pair, Placed, Scalar
from seqplan.load.scope import Scope
from seqplan.load.sink import Sink, found_instead, listing, quoted
from seqplan.model.entry import Entry, Verb
from seqplan.words.say import say

_BEFORE = "before"


class Deed(NamedTuple):
    """An entry whose verb is known."""

    pair: Pair
    table: MappingNode
    verb: Verb


def find_deeds(pairs: list[Pair], sink: Sink) -> list[Deed]:
    """Find out what each entry does; those that do not say are reported and left out."""
    deeds: list[Deed] = []
    for pair in pairs:
        table = _table(pair, sink)
        deed = _deed(pair, fields.with_strays(table, entry_keys(), sink), sink) if table else None
        if deed is not None:
            deeds.append(deed)
    return deeds


def _table(pair: Pair, sink: Sink) -> MappingNode | None:
    """The keys of an entry; a text is told how its words would be written."""
    node = pair.value
    if isinstance(node, Scalar) and not node.is_empty:
        fix = _entry_in_words(node.text)
        found = found_instead(node)
        sink.error("wrong-type", node, words="expected-operation", found=found, fix=fix)
        return None
    return fields.mapping(node, sink, words="expected-operation")


def _entry_in_words(text: str) -> str | None:
    from seqplan.load.strays import key_and_value

    parted = key_and_value(" ".join(text.split()), verb_keys())
    if parted is None:
        return say("fix-own-words", text=quoted(f"{{do: {text}}}"))
    return say("fix-write", text=quoted(f"{{{parted[0]}: {parted[2]}}}")) if parted[1] else None


def read_deeds(deeds: list[Deed], scope: Scope) -> tuple[Entry, ...]:
    """Read the fields of every entry, then see that what is used is made."""
    read: list[tuple[Entry, fields.Fields]] = []
    for deed in deeds:
        keys = keys_with(deed.verb)
        found = fields.read_fields(_without_before(deed, scope), keys, scope.sink)
        fields.check_required(found, keys, deed.pair, scope.sink)
        read.append((read_entry(EntryId(deed.pair.key), deed.verb, found, scope), found))
    _check_results(read, scope, is_whole=len(read) >= len(scope.entries.names))
    _check_gaps(read, scope)
    _check_caught(read, scope)
    return tuple(entry for entry, _ in read)


def _deed(pair: Pair, table: MappingNode, sink: Sink) -> Deed | None:
    """The entry with the one key that is a verb, or with the one that was meant for a verb."""
    verbs = verb_keys()
    found = [item for item in table.pairs if item.key in verbs]
    found = list({item.key: item for item in reversed(found)}.values())[::-1]
    leading = [item for item in found if all(_goes_with(other, item) for other in found)]
    unknown = [item for item in table.pairs if item.key not in entry_keys()]
    lead = leading[0] if len(leading) == 1 else None
    for item in unknown:
        verb = _verb_meant(item, table, lead, sink)
        if verb is not None:
            words = {"entry": quoted(pair.key), "word": quoted(item.key)}
            fix = sink.offer_of([verb.value])
            sink.error("no-verb", item, words="unknown-verb", fix=fix, **words)
            pairs = (p._replace(key=verb.value) if p is item else p for p in table.pairs)
            return Deed(pair, table._replace(pairs=tuple(pairs)), verb)
    if lead is not None and not (unknown and _is_odd(lead, table)):
        return Deed(pair, table, Verb(lead.key))
    if len(found) > 1 and lead is None:
        names = listing(item.key for item in found)
        sink.error("two-verbs", found[1], entry=quoted(pair.key), verbs=names)
    else:
        _report_no_verb(pair, unknown, table, sink)
    return None


def _verb_meant(item: Pair, table: MappingNode, lead: Pair | None, sink: Sink) -> Verb | None:
    """The verb that an unknown key was meant for, if the other keys of the entry go with it."""
    close = sink.meant(item.key, _by_fitness(entry_keys(), lead))
    if lead is not None and close and close[0] in keys_with(Verb(lead.key)):
        return None
    fitting = (name for name in close if name in verb_keys() and _fits(Verb(name), table))
    name = next(fitting, None)
    return Verb(name) if name is not None else None


def _by_fitness(keys: Keys, lead: Pair | None) -> list[str]:
    """All keys, those first that go with the verb that is there."""
    ours = keys_with(Verb(lead.key)) if lead is not None else {}
    return sorted(keys, key=lambda name: name not in ours)


def _fits(verb: Verb, table: MappingNode) -> bool:
    """Whether all keys that are known at all are plain keys of this verb."""
    ours, known = keys_with(verb), entry_keys()
    return all(
        pair.key in ours and not ours[pair.key].is_verb for pair in table.pairs if pair.key in known
    )


def _is_odd(lead: Pair, table: MappingNode) -> bool:
    """Whether keys are there that do not go with what looks like the verb."""
    ours = keys_with(Verb(lead.key))
    return any(pair.key in entry_keys() and pair.key not in ours for pair in table.pairs)


def _report_no_verb(pair: Pair, unknown: list[Pair], table: MappingNode, sink: Sink) -> None:
    """Name the verbs with which all the known keys go, where that says something."""
    known = [item.key for item in table.pairs if item.key in entry_keys()]
    common = keys_with(Verb.DO)
    is_telling = any(name not in common for name in known)
    fits = [verb.value for verb in Verb if is_telling and _fits(verb, table)]
    fix = say("fix-verbs-that-fit", verbs=listing(fits)) if fits else None
    if unknown:
        words = {"entry": quoted(pair.key), "word": quoted(unknown[0].key)}
        sink.error("no-verb", unknown[0], words="unknown-verb", fix=fix, **words)
    else:
        sink.error("no-verb", pair, entry=quoted(pair.key), fix=fix)


def _goes_with(other: Pair, main: Pair) -> bool:
    """Whether a key that could be a verb is a plain key of the verb ``main``."""
    if other is main:
        return True
    key = keys_with(Verb(main.key)).get(other.key)
    return key is not None and not key.is_verb


def _without_before(deed: Deed, scope: Scope) -> MappingNode:
    """The keys of an entry but for ``before``, which the other operation would have to say."""
    before = deed.table.get(_BEFORE)
    if before is None:
        return deed.table
    sink, entries = scope.sink, scope.entries.names
    items = fields.items_of(before.value)
    named = [clean(item.text) for item in items if isinstance(item, Scalar) and not item.is_empty]
    others = [name if name in entries else next(iter(sink.close(name, entries)), name)
              for name in named]  # fmt: skip
    after = quoted(f"after: {deed.pair.key}")
    fix = say("fix-before", after=after, others=listing(others)) if others else None
    sink.error("unknown-key", before, words="before", fix=fix)
    pairs = tuple(pair for pair in deed.table.pairs if pair.key != _BEFORE)
    return deed.table._replace(pairs=pairs)


def _check_caught(read: list[tuple[Entry, fields.Fields]], scope: Scope) -> None:
    """Warn of pieces that are caught without an edge; a strap that is made first needs none."""
    made = {
        piece for entry, _ in read if entry.verb in {Verb.STRAP, Verb.DO} for piece in entry.pieces
    }
    for entry, found in read:
        for caught in entry.between:
            piece = scope.piece.get(caught.piece or "")
            if piece is None or piece.id in made or not piece.edges:
                continue
            at = next(_named(piece.id, found["between"]), found["between"])
            offers = listing(f"{piece.id}.{edge}" for edge in piece.edge_names)
            fix = say("fix-name-an-edge", offers=offers)
            scope.sink.warning(
                "edge-wanted", at, words="caught-whole", piece=quoted(piece.id), fix=fix
            )


def _named(name: str, node: Node) -> Iterator[Placed]:
    """The places in a list, or among the keys of a mapping, where a name stands."""
    if isinstance(node, MappingNode):
        yield from (pair for pair in node.pairs if clean(pair.key) == name)
    else:
        items = fields.items_of(node)
        yield from (item for item in items if isinstance(item, Scalar) and clean(item.text) == name)


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
