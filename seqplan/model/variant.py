"""A garment as it is when its choices are made, and what a combination of choices leaves lacking.

What bears ``when`` is there for some picks only. A choice that nobody picks takes its first
option, so that every garment can be planned without asking anybody.
"""

from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import replace
from typing import NamedTuple

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.ids import RuleSlug
from seqplan.base.path import DocPath
from seqplan.model.entry import Entry, Verb
from seqplan.model.garment import Garment, Waiver
from seqplan.model.piece import Piece
from seqplan.words.say import say

Picks = Mapping[str, str]
When = tuple[tuple[str, str], ...]

# What is done to each piece by itself is done to those that are there.
_ONE_BY_ONE = frozenset(
    {
        Verb.CUT,
        Verb.MARK,
        Verb.FUSE,
        Verb.STRAP,
        Verb.FIT,
        Verb.INSPECT,
        Verb.WAIT,
        Verb.SEND_OUT,
    }
)

# The keys under which an entry names its edges, pieces and notion where that is not its verb.
_RUN_KEYS = {
    Verb.INSERT: "in",
    Verb.IN_SEAM_POCKET: "in",
    Verb.ATTACH: "at",
    Verb.DO: "at",
    Verb.FIT: "at",
}
_PIECE_KEYS = {Verb.WAIT: "on", Verb.DO: "on"}
_NOTION_KEYS = {Verb.BIND: "with"}


def default_picks(garment: Garment) -> dict[str, str]:
    """The first option of every choice, which is the usual one."""
    return {choice.id: choice.options[0] for choice in garment.choices}


def holds(when: When, picks: Picks) -> bool:
    """Whether all the choices that ``when`` names are picked as it says.

    Two options of one choice mean either of them.

    >>> holds((("view", "plain"), ("view", "lined")), {"view": "lined"})
    True
    >>> holds((("view", "plain"), ("length", "long")), {"view": "plain", "length": "short"})
    False
    """
    return _failing(when, picks) is None


def never_together(one: When, other: When) -> bool:
    """Whether two things are never there both, because they want other options of one choice.

    >>> never_together((("view", "plain"),), (("view", "lined"),))
    True
    >>> never_together((("view", "plain"),), (("length", "long"),))
    False
    """
    ours, theirs = (_options(when) for when in (one, other))
    return any(not ours[choice] & theirs[choice] for choice in ours.keys() & theirs.keys())


def choose(garment: Garment, picks: Picks) -> Garment:
    """Give the garment with what belongs to the picks, and nothing else.

    Parameters
    ----------
    garment
        The garment with everything that it offers.
    picks
        An option for each choice; the first one for a choice that is missing or has no such
        option.

    Returns
    -------
    Garment
        The same garment, with its picks, without the pieces, notions, fabrics and entries that are
        left out. What only points at them (``after``, ``open``, ``unit``, waivers) no longer does;
        entries that cannot do without them are kept as they are, and ``check_picks`` names them.
    """
    full = _full(garment, picks)
    gone = _gone(garment, full)
    entries = (entry for entry in garment.entries if entry.id not in gone.entries)
    picked = replace(garment, picks=tuple(full.items()))
    if not (gone.pieces or gone.notions or gone.entries):
        return picked
    return replace(
        picked,
        fabrics=tuple(item for item in garment.fabrics if item.id not in gone.fabrics),
        plans=tuple(plan for plan in garment.plans if plan.fabric not in gone.fabrics),
        pieces=tuple(
            _unmarked(piece, garment, gone)
            for piece in garment.pieces
            if piece.id not in gone.pieces
        ),
        notions=tuple(notion for notion in garment.notions if notion.id not in gone.notions),
        entries=tuple(_without(entry, gone) for entry in entries),
        waivers=tuple(_waivers(garment.waivers, gone)),
    )


def check_picks(garment: Garment, picks: Picks) -> tuple[Diagnostic, ...]:
    """Find picks that are not on offer, and entries that need what the picks leave out.

    Parameters
    ----------
    garment
        The garment with everything that it offers.
    picks
        An option for each choice; the first one for a choice that is missing.
    """
    full = _full(garment, picks)
    gone = _gone(garment, full)
    lacks = (
        _lacking(lack, entry, full)
        for entry in garment.entries
        if entry.id not in gone.entries
        for lack in _lacks(_without(entry, gone), gone)
    )
    return (*_unknown_picks(garment, picks), *lacks)


class _Gone(NamedTuple):
    """What a variant leaves out, each with its ``when``, and the fabrics that only that is of."""

    pieces: Mapping[str, When]
    notions: Mapping[str, When]
    entries: Mapping[str, When]
    results: Mapping[str, When]
    fabrics: frozenset[str]
    all_pieces: tuple[str, ...]


class _Lack(NamedTuple):
    """Something that an entry needs: how it is told, its name, its ``when``, and the key."""

    words: str
    name: str
    when: When
    key: str


def _full(garment: Garment, picks: Picks) -> dict[str, str]:
    """An option for every choice."""
    offered = {choice.id: choice.options for choice in garment.choices}
    good = {name: pick for name, pick in picks.items() if pick in offered.get(name, ())}
    return {**default_picks(garment), **good}


def _options(when: When) -> dict[str, set[str]]:
    options: dict[str, set[str]] = {}
    for choice, option in when:
        options.setdefault(choice, set()).add(option)
    return options


def _failing(when: When, picks: Picks) -> str | None:
    """The first choice that is picked otherwise."""
    for choice, _ in when:
        if all(picks.get(choice) != option for name, option in when if name == choice):
            return choice
    return None


def _gone(garment: Garment, picks: Picks) -> _Gone:
    def out(things: Iterable[tuple[str, When]]) -> dict[str, When]:
        return {name: when for name, when in things if not holds(when, picks)}

    pieces = out((piece.id, piece.when) for piece in garment.pieces)
    entries = out((entry.id, entry.when) for entry in garment.entries)
    fabrics = _gone_fabrics(garment, pieces, entries)
    washes = [entry for entry in garment.entries if entry.verb is Verb.PRETREAT]
    entries |= {w.id: w.when for w in washes if w.fabrics and fabrics.issuperset(w.fabrics)}
    made = {name for entry in garment.entries if entry.id not in entries for name in entry.makes}
    results = out((name, entry.when) for entry in garment.entries for name in entry.makes)
    return _Gone(
        pieces=pieces,
        notions=out((notion.id, notion.when) for notion in garment.notions),
        entries=entries,
        results={name: when for name, when in results.items() if name not in made},
        fabrics=fabrics,
        all_pieces=tuple(piece.id for piece in garment.pieces),
    )


def _gone_fabrics(
    garment: Garment, pieces: Collection[str], entries: Collection[str]
) -> frozenset[str]:
    """What only pieces and entries use that are left out."""
    cloth = [(piece.fabric, piece.id in pieces) for piece in garment.pieces]
    cloth += [(entry.fabric, entry.id in entries) for entry in garment.entries]
    kept = {fabric for fabric, is_out in cloth if not is_out}
    return frozenset(name for name, _ in cloth if name is not None and name not in kept)


def _without(entry: Entry, gone: _Gone) -> Entry:
    """The entry without what merely points at things that are left out."""
    after = tuple(op for op in entry.after if op.partition("/")[0] not in gone.entries)
    trimmed = entry._replace(
        after=after,
        because=entry.because if after or not entry.after else None,
        open=None if entry.open in gone.entries else entry.open,
        unit=tuple(piece for piece in entry.unit if piece not in gone.pieces),
        keep_clear=tuple(piece for piece in entry.keep_clear if piece not in gone.pieces),
    )
    left = tuple(piece for piece in entry.pieces if piece not in gone.pieces)
    if left and (entry.verb in _ONE_BY_ONE or entry.pieces == gone.all_pieces):
        half = tuple(piece for piece in entry.half if piece not in gone.pieces)
        trimmed = trimmed._replace(pieces=left, half=half)
    cloth = tuple(fabric for fabric in entry.fabrics if fabric not in gone.fabrics)
    return trimmed._replace(fabrics=cloth) if cloth else trimmed


def _unmarked(piece: Piece, garment: Garment, gone: _Gone) -> Piece:
    """The piece without the marks of what is left out, such as the place of a pocket."""
    marked = {
        is_left_out: {
            place.name
            for entry in garment.entries
            if (entry.id in gone.entries) is is_left_out
            for place in entry.places
            if place.piece == piece.id
        }
        for is_left_out in (True, False)
    }
    idle = marked[True] - marked[False]
    return piece._replace(
        spots=tuple(spot for spot in piece.spots if spot.name not in idle),
        lines=tuple(line for line in piece.lines if line not in idle),
        begins=tuple(begin for begin in piece.begins if begin.name not in idle),
    )


def _waivers(waivers: Iterable[Waiver], gone: _Gone) -> Iterator[Waiver]:
    """Waivers for what is there; one for nothing at all would else hold everywhere."""
    for waiver in waivers:
        at = tuple(op for op in waiver.at if op.partition("/")[0] not in gone.entries)
        if at or not waiver.at:
            yield waiver._replace(at=at)


def _lacks(entry: Entry, gone: _Gone) -> Iterator[_Lack]:
    """Everything that an entry cannot do without and that is left out, each thing once."""
    kinds = {
        "pieces": gone.pieces,
        "notions": gone.notions,
        "entries": gone.entries,
        "results": gone.results,
    }
    seen: set[tuple[str, str]] = set()
    for words, name, key in _needs(entry):
        if name in kinds[words] and (words, name) not in seen:
            seen.add((words, name))
            yield _Lack(words, name, kinds[words][name], key)


def _needs(entry: Entry) -> Iterator[tuple[str, str, str]]:
    """What an entry names and has to find: of which kind, by which name, under which key."""
    verb = entry.verb.value
    named = [(ref.piece, _RUN_KEYS.get(entry.verb, verb)) for ref in entry.run]
    named += [(ref.piece, "to") for ref in entry.to]
    named += [(piece, _PIECE_KEYS.get(entry.verb, verb)) for piece in entry.pieces]
    named += [(piece, "with") for piece in entry.partners]
    place_key = verb if entry.verb is Verb.BUTTONHOLE else "at"
    named += [(place.piece, place_key) for place in entry.places]
    for caught in entry.between:
        named += [(ref.piece, "between") for ref in (caught.edge, caught.at) if ref is not None]
        named += [(caught.piece, "between")] if caught.piece is not None else []
    yield from (("pieces", piece, key) for piece, key in named)
    if entry.notion is not None:
        yield "notions", entry.notion, _NOTION_KEYS.get(entry.verb, verb)
    for caught in entry.between:
        if caught.notion is not None:
            yield "notions", caught.notion, "between"
    if entry.to_name is not None:
        yield "notions", entry.to_name, "to"
        yield "entries", entry.to_name, "to"
    if entry.into is not None:
        yield "entries", entry.into, "in"
    if entry.closes is not None:
        yield "entries", entry.closes, "close"
    yield from (("results", name, "uses") for name in entry.uses)


def _lacking(lack: _Lack, entry: Entry, picks: Picks) -> Diagnostic:
    choice = _failing(lack.when, picks) or ""
    names = {
        "entry": f"`{entry.id}`",
        "name": f"`{lack.name}`",
        "pick": f"`{choice}: {picks.get(choice, '')}`",
        "when": f"`when: {_written(lack.when)}`",
    }
    return Diagnostic(
        slug=RuleSlug("left-out"),
        severity=Severity.ERROR,
        message=say(f"left-out-{lack.words}", **names),
        path=(*entry.path, lack.key),
        fix=say("left-out-fix", **names),
    )


def _written(when: When) -> str:
    """A ``when`` as it stands in a file."""
    options: dict[str, list[str]] = {}
    for choice, option in when:
        options.setdefault(choice, []).append(option)
    pairs = (
        f"{choice}: {found[0] if len(found) == 1 else '[' + ', '.join(found) + ']'}"
        for choice, found in options.items()
    )
    return "{" + ", ".join(pairs) + "}"


def _unknown_picks(garment: Garment, picks: Picks) -> Iterator[Diagnostic]:
    offered = {choice.id: choice.options for choice in garment.choices}
    for name, option in picks.items():
        path: DocPath = ("choices", name) if name in offered else ("choices",)
        if name not in offered:
            known = ", ".join(f"`{choice}`" for choice in offered)
            fix = say("fix-known-names", names=known) if known else say("pick-nothing")
            yield _unknown(say("pick-unknown-choice", name=f"`{name}`"), fix, path)
        elif option not in offered[name]:
            known = ", ".join(f"`{other}`" for other in offered[name])
            message = say("pick-unknown-option", choice=f"`{name}`", found=f"`{option}`")
            yield _unknown(message, say("fix-unknown-option", options=known), path)


def _unknown(message: str, fix: str, path: DocPath) -> Diagnostic:
    return Diagnostic(
        slug=RuleSlug("unknown-pick"),
        severity=Severity.ERROR,
        message=message,
        path=path,
        fix=fix,
    )
