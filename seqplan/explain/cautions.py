"""Cords and small parts on children's clothes, found by what notions and pieces are called.

They are cautions and no verdicts: what is allowed, the rules of the country decide where the
garment is worn. Sources: CPSC, "Drawstrings in Children's Upper Outerwear", and ASTM F1816 (United
States); EN 14682 on cords and drawstrings, as told by Tukes (Europe); 16 CFR 1501 on small parts.
"""

from collections.abc import Iterator
from typing import Final, NamedTuple

from seqplan.base.diagnostic import Diagnostic, Note, Severity
from seqplan.base.ids import NotionId, RuleSlug
from seqplan.base.path import DocPath
from seqplan.model.entry import Entry, Verb
from seqplan.model.garment import Garment, Notion, Wearer
from seqplan.words.say import say

_CORDS: Final = frozenset(
    {"cord", "drawcord", "drawstring", "halter", "lacing", "ribbon", "shoelace", "string", "tie"}
)
_SMALL: Final = frozenset(
    {
        "bead",
        "bell",
        "bow",
        "button",
        "buckle",
        "charm",
        "eyelet",
        "hook",
        "pompom",
        "rhinestone",
        "rivet",
        "sequin",
        "snap",
        "stopper",
        "stud",
        "toggle",
    }
)
_NECK: Final = frozenset({"collar", "halter", "hood", "neck", "neckline", "throat"})


class Cord(NamedTuple):
    """A cord, drawstring or tie, and where it is.

    ``is_at_neck`` tells whether it is drawn through, or fastened at, a neck edge or a hood.
    """

    name: str
    path: DocPath
    is_at_neck: bool = False


def check_cautions(garment: Garment) -> Iterator[Diagnostic]:
    """Caution against cords and small parts where a child wears it; quiet for everybody else."""
    if garment.wearer is not Wearer.CHILD:
        return
    for cord in find_cords(garment):
        yield _caution("cord-at-neck" if cord.is_at_neck else "free-cord-ends", cord)
    for notion in garment.notions:
        if is_zip(notion) or is_small_part(notion):
            yield _caution("small-part", notion, "zip" if is_zip(notion) else "")


def find_cords(garment: Garment) -> tuple[Cord, ...]:
    """Find cords and ties: each where it is drawn through or fastened, else where it is named."""
    found = [cord for entry in garment.entries for cord in _cords_of(garment, entry)]
    placed = {cord.name for cord in found}
    loose = (n for n in garment.notions if _is_cord(n) and n.id not in placed)
    return (*found, *(Cord(notion.id, notion.path) for notion in loose))


def is_small_part(notion: Notion) -> bool:
    """Whether it could be swallowed, should it come off."""
    return not _SMALL.isdisjoint(_words(notion.kind, notion.id))


def is_zip(notion: Notion) -> bool:
    """Whether it is a zip, the pull of which can come off."""
    return "zip" in _words(notion.kind)


def _is_cord(notion: Notion) -> bool:
    return not _CORDS.isdisjoint(_words(notion.kind, notion.id))


def _cords_of(garment: Garment, entry: Entry) -> Iterator[Cord]:
    """The cords that an entry draws through, fastens or catches."""
    names: list[str] = [id_ for id_ in _notions(entry) if _is_cord(garment.notion[id_])]
    names += [piece for piece in _pieces(entry) if not _CORDS.isdisjoint(_words(piece))]
    is_at_neck = not _NECK.isdisjoint(_words(*_place(garment, entry)))
    yield from (Cord(name, entry.path, is_at_neck) for name in dict.fromkeys(names))


def _notions(entry: Entry) -> list[NotionId]:
    named = (entry.notion, *(caught.notion for caught in entry.between))
    return [id_ for id_ in named if id_ is not None]


def _pieces(entry: Entry) -> Iterator[str]:
    """The pieces of cloth that an entry fastens or catches."""
    if entry.verb is Verb.ATTACH:
        yield from entry.pieces
    for caught in entry.between:
        if caught.edge is not None:
            yield caught.edge.piece
        elif caught.piece is not None:
            yield caught.piece


def _place(garment: Garment, entry: Entry) -> Iterator[str]:
    """The names of the pieces and edges where an entry works; of a casing that it goes through."""
    if entry.into is not None and entry.into in garment.entry:
        entry = garment.entry[entry.into]
    for ref in (*entry.run, *entry.to):
        yield from (ref.piece, ref.edge)
    for place in entry.places:
        yield from (place.piece, place.name or "")


def _words(*names: str) -> frozenset[str]:
    """The words of names, one and many alike."""
    words = " ".join(names).casefold().replace("-", " ").replace("_", " ").split()
    return frozenset(words) | {word.removesuffix("s") for word in words}


def _caution(slug: str, what: Cord | Notion, form: str = "") -> Diagnostic:
    name = what.name if isinstance(what, Cord) else what.id
    return Diagnostic(
        slug=RuleSlug(slug),
        severity=Severity.CAUTION,
        message=say("-".join(filter(None, ("check", slug, form))), name=name),
        path=what.path,
        notes=(Note(say(f"check-{slug}-source")), Note(say("check-caution-rules"))),
        fix=say(f"check-{slug}-fix", name=name),
    )
