"""The keys of the language: one table for the readers, the writer, the help and the schema."""

from collections.abc import Mapping
from enum import Enum
from functools import cache, partial
from typing import Final, NamedTuple, TypeAlias

from seqplan.model.entry import SeamKind, Verb, ZipMethod
from seqplan.model.garment import Wearer
from seqplan.model.piece import Layer, Worn


class Section(Enum):
    """Whose keys they are."""

    GARMENT = "garment"
    FABRIC = "fabric"
    PIECE = "piece"
    NOTION = "notion"
    STATION = "station"
    OPERATION = "operation"


class Takes(Enum):
    """What stands after a key."""

    TEXT = "text"
    NOTE = "text of several lines"
    LENGTH = "a length"
    NUMBER = "a whole number"
    YES_NO = "yes or no"
    CHOICE = "one of a few words"
    CHOICES = "a list of a few words"
    CUT = "fold, pair or a number"
    MARK = "one or two letters"
    TABLE = "names with what they are"
    EDGE_LIST = "the edges in their order"
    EDGE_NAMES = "edges of the piece"
    RUN = "edges, as piece.edge"
    RUN_OR_PIECE = "edges, or a piece"
    RUN_OR_CASING = "edges, or a casing operation"
    PIECE = "a piece"
    PIECES = "pieces, or all"
    FABRIC = "a fabric"
    NOTION = "a notion"
    NOTION_OR_ENTRY = "a notion or an operation"
    STATION = "a station"
    ENTRY = "an operation"
    ENTRIES = "operations"
    NAMES = "names"
    TEXTS = "texts"
    PORTION = "a length from an edge"
    DIRECTION = "a direction"


class Status(Enum):
    """Whether a key is looked at yet."""

    BUILT = "built"
    PLANNED = "planned"


class Key(NamedTuple):
    """One key.

    Parameters
    ----------
    section, name
        Where it may stand and how it is written.
    takes
        What stands after it.
    help
        What it is for, in one line.
    verbs
        For keys of an operation: the verbs that it goes with, all of them if empty.
    choices
        The words to choose from.
    bounds
        For whole numbers: the least and the most.
    is_required
        Whether it has to be there.
    is_verb
        Whether it says what an operation does.
    status
        Built, or planned and not looked at yet.
    """

    section: Section
    name: str
    takes: Takes
    help: str
    verbs: tuple[Verb, ...] = ()
    choices: tuple[str, ...] = ()
    bounds: tuple[int, int] = (0, 0)
    is_required: bool = False
    is_verb: bool = False
    status: Status = Status.BUILT


_JOIN = (Verb.SEW, Verb.BASTE)
_FOLD = (Verb.HEM, Verb.CASING)
_RING_OR_FLAT = ("in the round", "flat")

_TOP = partial(Key, section=Section.GARMENT)
_FABRIC = partial(Key, section=Section.FABRIC)
_PIECE = partial(Key, section=Section.PIECE)
_NOTION = partial(Key, section=Section.NOTION)
_STATION = partial(Key, section=Section.STATION)
_ENTRY = partial(Key, section=Section.OPERATION)
_VERB = partial(Key, section=Section.OPERATION, is_required=True, is_verb=True)


def _planned(
    section: Section, *names: str, verbs: tuple[Verb, ...] = (), is_verb: bool = False
) -> tuple[Key, ...]:
    return tuple(
        Key(
            section=section,
            name=name,
            takes=Takes.TEXT,
            help="Planned: not looked at yet.",
            verbs=verbs,
            is_verb=is_verb,
            status=Status.PLANNED,
        )
        for name in names
    )


KEYS: Final[tuple[Key, ...]] = (
    # The garment.
    _TOP(name="garment", takes=Takes.TEXT, is_required=True, help="What the garment is called."),
    _TOP(name="about", takes=Takes.TEXT, help="What it is, in a sentence or two."),
    _TOP(name="author", takes=Takes.TEXT, help="Who designed it."),
    _TOP(name="version", takes=Takes.TEXT, help="Which version of the design this is."),
    _TOP(
        name="units",
        takes=Takes.CHOICE,
        choices=("cm", "mm", "in"),
        help="The unit of lengths that name none; cm if it is left out.",
    ),
    _TOP(name="allowance", takes=Takes.LENGTH, help="The seam allowance where a seam names none."),
    _TOP(
        name="wearer",
        takes=Takes.CHOICE,
        choices=tuple(wearer.value for wearer in Wearer),
        help="Who wears it.",
    ),
    _TOP(
        name="not shown",
        takes=Takes.CHOICES,
        choices=("press", "finish"),
        help="What this file leaves out on purpose.",
    ),
    _TOP(name="fabrics", takes=Takes.TABLE, help="The cloths, by name."),
    _TOP(name="pieces", takes=Takes.TABLE, help="The pieces of cloth, by name."),
    _TOP(name="notions", takes=Takes.TABLE, help="Zips, elastic, buttons and the like, by name."),
    _TOP(name="stations", takes=Takes.TABLE, help="Changes to the stations, and further ones."),
    _TOP(
        name="operations",
        takes=Takes.TABLE,
        is_required=True,
        help="What is done, in the order in which you would do it.",
    ),
    *_planned(Section.GARMENT, "choices", "recipes", "waive", "sizes", "terms", "glossary"),
    # A fabric.
    _FABRIC(name="kind", takes=Takes.TEXT, help="Woven, knit, felt, interfacing or other words."),
    _FABRIC(name="weight", takes=Takes.TEXT, help="Light, medium or heavy, in your words."),
    _FABRIC(name="note", takes=Takes.NOTE, help="A note for whoever buys or cuts it."),
    # A piece.
    _PIECE(name="of", takes=Takes.FABRIC, help="The fabric it is cut from."),
    _PIECE(name="like", takes=Takes.PIECE, help="The piece whose edges this one has."),
    _PIECE(
        name="cut", takes=Takes.CUT, bounds=(1, 99), help="On the fold, as a pair, or how many."
    ),
    _PIECE(
        name="edges",
        takes=Takes.EDGE_LIST,
        help="Its edges, clockwise from the right side; `a | b` for two that meet at a mark.",
    ),
    _PIECE(
        name="layer",
        takes=Takes.CHOICE,
        choices=tuple(layer.value for layer in Layer),
        help="Which layer of the garment it belongs to; shell if it is left out.",
    ),
    _PIECE(
        name="worn",
        takes=Takes.CHOICE,
        choices=tuple(worn.value for worn in Worn),
        help="Where it is worn, which tells the wearer's left from right.",
    ),
    _PIECE(name="selvage", takes=Takes.EDGE_NAMES, help="Edges on the selvage, which never ravel."),
    _PIECE(name="note", takes=Takes.NOTE, help="A note for the cutting list."),
    *_planned(Section.PIECE, "strip", "darts", "pleats", "spots", "lines", "shape", "length"),
    *_planned(Section.PIECE, "notches", "zone"),
    # A notion.
    _NOTION(name="kind", takes=Takes.TEXT, is_required=True, help="What it is: invisible zip."),
    _NOTION(name="length", takes=Takes.LENGTH, help="How long it is."),
    _NOTION(name="width", takes=Takes.LENGTH, help="How wide it is."),
    _NOTION(name="count", takes=Takes.NUMBER, bounds=(1, 999), help="How many; 1 if left out."),
    _NOTION(name="note", takes=Takes.NOTE, help="A note for whoever buys it."),
    # A station.
    _STATION(name="title", takes=Takes.TEXT, help="Its name as people read it."),
    _STATION(name="mark", takes=Takes.MARK, help="One or two letters that stand for it."),
    _STATION(
        name="minutes", takes=Takes.NUMBER, bounds=(0, 1440), help="To go there and get ready."
    ),
    _STATION(
        name="foot minutes", takes=Takes.NUMBER, bounds=(0, 1440), help="To change the foot there."
    ),
    # What an operation does.
    _VERB(name="fuse", takes=Takes.PIECES, verbs=(Verb.FUSE,), help="Fuse interfacing to pieces."),
    *(
        _VERB(name=verb.value, takes=Takes.RUN, verbs=(verb,), help=text)
        for verb, text in (
            (Verb.STAYSTITCH, "Staystitch edges so that they do not stretch."),
            (Verb.DART, "Sew darts whose mouth is at an edge."),
            (Verb.PLEAT, "Lay and fix pleats along an edge."),
            (Verb.GATHER, "Gather an edge."),
            (Verb.SEW, "Sew edges together, or the left copy to the right."),
            (Verb.BASTE, "Baste edges together until a seam holds them."),
            (Verb.FINISH, "Finish cut edges so that they do not ravel."),
            (Verb.TRIM, "Trim the allowances."),
            (Verb.CLIP, "Clip into the allowances of a curve or corner."),
            (Verb.PRESS, "Press seams or edges."),
            (Verb.UNDERSTITCH, "Stitch a facing to its allowances."),
            (Verb.TOPSTITCH, "Stitch where it shows."),
            (Verb.TACK, "Fasten an edge by a few stitches."),
            (Verb.HEM, "Fold an edge up and sew it."),
            (Verb.CASING, "Fold an edge over into a channel."),
            (Verb.REMOVE_BASTING, "Take basting out again."),
        )
    ),
    _VERB(
        name="insert", takes=Takes.NOTION, verbs=(Verb.INSERT,), help="Set a zip, thread elastic."
    ),
    _VERB(name="attach", takes=Takes.NOTION, verbs=(Verb.ATTACH,), help="Sew a notion on."),
    _VERB(name="turn", takes=Takes.PIECES, verbs=(Verb.TURN,), help="Turn pieces right side out."),
    _VERB(name="fit", takes=Takes.PIECES, verbs=(Verb.FIT,), help="Try it on."),
    _VERB(name="inspect", takes=Takes.PIECES, verbs=(Verb.INSPECT,), help="Look it over."),
    _VERB(name="do", takes=Takes.TEXT, verbs=(Verb.DO,), help="Anything else, in your own words."),
    *_planned(Section.OPERATION, "slash", "hold", "bind", "band", "grade", "nest", is_verb=True),
    *_planned(Section.OPERATION, "roll", "open", "close", "fold", "unfold", "wait", is_verb=True),
    *_planned(Section.OPERATION, "send out", "buttonhole", "mark", "cut", is_verb=True),
    *_planned(Section.OPERATION, "pretreat", "patch pocket", "tower placket", is_verb=True),
    # What goes with some verbs.
    _ENTRY(name="with", takes=Takes.FABRIC, verbs=(Verb.FUSE,), help="The interfacing."),
    _ENTRY(
        name="to",
        takes=Takes.RUN_OR_PIECE,
        verbs=_JOIN,
        help="The other side; a piece alone means its edges of the same names.",
    ),
    _ENTRY(
        name="to",
        takes=Takes.NOTION_OR_ENTRY,
        verbs=(Verb.TACK,),
        is_required=True,
        help="What the edge is fastened to.",
    ),
    _ENTRY(
        name="as",
        takes=Takes.CHOICE,
        verbs=(Verb.SEW,),
        choices=tuple(kind.value for kind in SeamKind),
        help="How the seam is made; plain if it is left out.",
    ),
    _ENTRY(name="press", takes=Takes.DIRECTION, verbs=_JOIN, help="Which way it is pressed."),
    _ENTRY(name="allowance", takes=Takes.LENGTH, verbs=_JOIN, help="The allowance of this seam."),
    _ENTRY(name="part", takes=Takes.PORTION, verbs=_JOIN, help="Only this part: 10 from waist."),
    _ENTRY(name="stop", takes=Takes.PORTION, verbs=_JOIN, help="All but this: 10 before waist."),
    _ENTRY(name="in one", takes=Takes.YES_NO, verbs=_JOIN, help="Both copies in one seam."),
    _ENTRY(name="open", takes=Takes.ENTRY, verbs=_JOIN, help="The seam that is still open then."),
    _ENTRY(
        name="in",
        takes=Takes.RUN_OR_CASING,
        verbs=(Verb.INSERT,),
        is_required=True,
        help="The edges a zip is set in, or the casing that elastic goes through.",
    ),
    _ENTRY(
        name="method",
        takes=Takes.CHOICE,
        verbs=(Verb.INSERT,),
        choices=tuple(method.value for method in ZipMethod),
        help="How a zip is set.",
    ),
    _ENTRY(name="overlap", takes=Takes.LENGTH, verbs=(Verb.INSERT,), help="How far ends overlap."),
    _ENTRY(name="at", takes=Takes.RUN, verbs=(Verb.ATTACH,), is_required=True, help="Where."),
    _ENTRY(name="depth", takes=Takes.LENGTH, verbs=_FOLD, help="How deep it is folded."),
    _ENTRY(name="gap", takes=Takes.LENGTH, verbs=(Verb.CASING,), help="What stays open to thread."),
    _ENTRY(
        name="turned",
        takes=Takes.CHOICE,
        verbs=_FOLD,
        choices=("once", "twice"),
        help="How often the edge is turned.",
    ),
    _ENTRY(
        name="by", takes=Takes.CHOICE, verbs=(Verb.HEM,), choices=("hand", "machine"), help="How."
    ),
    _ENTRY(name="flat", takes=Takes.YES_NO, verbs=_FOLD, help="Before the seam closes it."),
    _ENTRY(
        name="method",
        takes=Takes.CHOICE,
        verbs=(*_JOIN, Verb.HEM),
        choices=_RING_OR_FLAT,
        help="In the round: the ring is closed first. Flat: before it is closed.",
    ),
    _ENTRY(name="on", takes=Takes.PIECES, verbs=(Verb.DO,), help="The pieces it is done on."),
    _ENTRY(name="at", takes=Takes.RUN, verbs=(Verb.DO,), help="The edges it is done at."),
    _ENTRY(name="makes", takes=Takes.NAMES, verbs=(Verb.DO,), help="What it makes, by name."),
    _ENTRY(
        name="uses", takes=Takes.NAMES, verbs=(Verb.DO,), help="What it needs that others make."
    ),
    # What goes with every verb.
    _ENTRY(name="station", takes=Takes.STATION, help="Where it is done."),
    _ENTRY(name="foot", takes=Takes.TEXT, help="The presser foot."),
    _ENTRY(name="minutes", takes=Takes.NUMBER, bounds=(0, 1440), help="How long it takes."),
    _ENTRY(name="after", takes=Takes.ENTRIES, help="What you want done before it."),
    _ENTRY(name="because", takes=Takes.TEXT, help="Your reason for `after`."),
    _ENTRY(name="without", takes=Takes.TEXTS, help="Parts of the recipe that are left out."),
    _ENTRY(name="unit", takes=Takes.PIECES, help="The part of the garment in hand."),
    _ENTRY(name="title", takes=Takes.TEXT, help="A heading for the handout."),
    _ENTRY(name="note", takes=Takes.NOTE, help="Your note to the reader."),
    _ENTRY(name="say", takes=Takes.TEXT, help="Your own sentence instead of the usual one."),
    *_planned(Section.OPERATION, "when", "between", "sides", "through", "picture", "keep clear"),
    *_planned(
        Section.OPERATION, "with", verbs=tuple(verb for verb in Verb if verb is not Verb.FUSE)
    ),
)

Keys: TypeAlias = Mapping[str, Key]


@cache
def keys_of(section: Section) -> Keys:
    """The keys of a section that is no operation, by name."""
    return {key.name: key for key in KEYS if key.section is section}


@cache
def keys_with(verb: Verb) -> Keys:
    """The keys that an operation with this verb takes, the verb itself first."""
    ours = [
        key
        for key in KEYS
        if key.section is Section.OPERATION
        and (verb in key.verbs or (not key.verbs and not key.is_verb))
    ]
    return {key.name: key for key in ours}


@cache
def verb_keys() -> Keys:
    """The keys that say what an operation does, planned ones among them."""
    return {key.name: key for key in KEYS if key.is_verb}


def verbs_with(name: str) -> tuple[Verb, ...]:
    """The verbs that a key goes with, where it is built."""
    return tuple(
        verb
        for verb in Verb
        if name in keys_with(verb)
        and keys_with(verb)[name].status is Status.BUILT
        and not keys_with(verb)[name].is_verb
    )
