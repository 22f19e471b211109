"""The keys of the language: one table for the readers, the writer, the help and the schema."""

from collections.abc import Mapping
from enum import Enum
from functools import cache, partial
from typing import Final, NamedTuple, TypeAlias

from seqplan.base.language import LANGUAGES
from seqplan.model.entry import (
    Closing,
    Ends,
    Purpose,
    SeamKind,
    SeamMethod,
    Sides,
    StrapMethod,
    Verb,
    ZipMethod,
)
from seqplan.model.garment import Wearer
from seqplan.model.piece import Hand, Layer, Worn


class Section(Enum):
    """Whose keys they are."""

    GARMENT = "garment"
    FABRIC = "fabric"
    PIECE = "piece"
    NOTION = "notion"
    STATION = "station"
    FULLNESS = "darts or pleats"
    SLIT = "slit"
    SHAPE = "shape"
    PLAN = "lay plan"
    WAIVER = "waiver"
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
    PLACES = "pieces, or places on them"
    EDGES_OR_PLACES = "edges, pieces, or places on them"
    CAUGHT = "edges or notions, or where each is caught"
    PIECES_OR_NOTION = "pieces, or a notion"
    NOTION_OR_PIECE = "a notion, a piece, or an edge of one"
    FABRICS = "fabrics, or all"
    FULLNESS = "edges, or edges with a number"
    SPOTS = "names, each with a side if it is on one only"
    SLITS = "slits with where they begin"
    LENGTH_BY_SIZE = "a length, or a length for each size"
    BEGINNINGS = "spots or lines with a length from an edge"
    NOTCHES = "edges with their notches"
    GLOSSARY = "words with what they mean"
    WHEN = "a choice with an option"
    WAIVERS = "rules with a reason"
    HOURS = "a number of hours"
    TOPSTITCH = "yes, or where"
    DIRECTION = "a direction"
    SHAPE = "corners and curves, or a path of a drawing"
    POINTS = "one point, two, or more"
    LENGTHS = "edges with their lengths"
    AMOUNTS = "widths, each with how much"
    PARAGRAPHS = "a paragraph, or a list of them"
    PICTURE = "the name of a picture file"
    PLANS = "lay plans"


LISTS: Final = frozenset(
    {
        Takes.CHOICES,
        Takes.EDGE_LIST,
        Takes.EDGE_NAMES,
        Takes.RUN,
        Takes.RUN_OR_PIECE,
        Takes.RUN_OR_CASING,
        Takes.PIECES,
        Takes.ENTRIES,
        Takes.NAMES,
        Takes.TEXTS,
        Takes.PLACES,
        Takes.EDGES_OR_PLACES,
        Takes.CAUGHT,
        Takes.PIECES_OR_NOTION,
        Takes.FABRICS,
        Takes.FULLNESS,
        Takes.SPOTS,
        Takes.PARAGRAPHS,
        Takes.PLANS,
    }
)
"""What may be a list."""


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


_JOIN = (Verb.SEW, Verb.BASTE)
_FOLD = (Verb.HEM, Verb.CASING)
_SET_ON = (Verb.BAND, Verb.BIND)
_PLACKET = (Verb.TOWER_PLACKET, Verb.CONTINUOUS_PLACKET)
_PARTIAL = (
    *_JOIN,
    Verb.INSERT,
    Verb.DART,
    Verb.PLEAT,
    Verb.GATHER,
    Verb.STAYSTITCH,
    Verb.FINISH,
    Verb.TRIM,
    Verb.GRADE,
    Verb.CLIP,
    Verb.PRESS,
    Verb.UNDERSTITCH,
    Verb.TOPSTITCH,
    Verb.TACK,
)
"""Verbs that may mean a part of an edge only."""

_STITCHING = (
    *_JOIN,
    *_FOLD,
    Verb.INSERT,
    Verb.ATTACH,
    Verb.FINISH,
    Verb.TOPSTITCH,
    Verb.TACK,
    Verb.BUTTONHOLE,
)
"""Verbs whose stitching can catch a layer that it should not."""

_RING_OR_FLAT = ("in the round", "flat")
SEAMS: Final = tuple(kind.value for kind in SeamKind if kind is not SeamKind.OWN)
"""The usual kinds of seam; the author's own are called otherwise."""


_TOP = partial(Key, section=Section.GARMENT)
_FABRIC = partial(Key, section=Section.FABRIC)
_PIECE = partial(Key, section=Section.PIECE)
_NOTION = partial(Key, section=Section.NOTION)
_FULLNESS = partial(Key, section=Section.FULLNESS)
_SLIT = partial(Key, section=Section.SLIT)
_SHAPE = partial(Key, section=Section.SHAPE)
_PLAN = partial(Key, section=Section.PLAN)
_WAIVER = partial(Key, section=Section.WAIVER)
_STATION = partial(Key, section=Section.STATION)
_ENTRY = partial(Key, section=Section.OPERATION)
_VERB = partial(Key, section=Section.OPERATION, is_required=True, is_verb=True)


KEYS: Final[tuple[Key, ...]] = (
    # The garment.
    _TOP(name="garment", takes=Takes.TEXT, is_required=True, help="What the garment is called."),
    _TOP(name="about", takes=Takes.TEXT, help="What it is, in a sentence or two."),
    _TOP(name="author", takes=Takes.TEXT, help="Who designed it."),
    _TOP(name="version", takes=Takes.TEXT, help="Which version of the design this is."),
    _TOP(name="date", takes=Takes.TEXT, help="Of when this version is, as you write dates."),
    _TOP(
        name="mark",
        takes=Takes.PICTURE,
        help="Your own mark: an SVG, PNG or JPEG file beside the garment file.",
    ),
    _TOP(
        name="terms",
        takes=Takes.PARAGRAPHS,
        help="Terms of use: what others may do with your design.",
    ),
    _TOP(
        name="units",
        takes=Takes.CHOICE,
        choices=("cm", "mm", "in"),
        help="The unit of lengths that name none; cm if it is left out.",
    ),
    _TOP(
        name="language",
        takes=Takes.CHOICE,
        choices=tuple(LANGUAGES),
        help="The language that the handouts, pictures and the graph are in; English without it.",
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
    _TOP(
        name="choices",
        takes=Takes.TABLE,
        help="What the reader may choose: each with its options, the default first.",
    ),
    _TOP(
        name="recipes",
        takes=Takes.TABLE,
        help="Kinds of seam of your own: each with its parts in their order.",
    ),
    _TOP(name="waive", takes=Takes.WAIVERS, help="Rules that you set aside, and why."),
    _TOP(name="sizes", takes=Takes.TEXTS, help="The sizes it comes in, the base size first."),
    _TOP(name="plans", takes=Takes.PLANS, help="Pictures of how the pieces lie on the cloth."),
    _TOP(name="glossary", takes=Takes.GLOSSARY, help="Words of your own: each with what it means."),
    # A fabric.
    _FABRIC(name="kind", takes=Takes.TEXT, help="Woven, knit, felt, interfacing or other words."),
    _FABRIC(name="weight", takes=Takes.TEXT, help="Light, medium or heavy, in your words."),
    _FABRIC(
        name="iron",
        takes=Takes.YES_NO,
        help="Whether it bears an iron; yes if it is left out.",
    ),
    _FABRIC(
        name="amounts",
        takes=Takes.AMOUNTS,
        help="How much of it is needed, by the width of the cloth: `{150: 1.2 m, 115: 1.9 m}`.",
    ),
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
    _PIECE(
        name="strip",
        takes=Takes.EDGE_LIST,
        help="A band folded lengthwise: its edges clockwise, one of them called `fold`.",
    ),
    _PIECE(name="slits", takes=Takes.SLITS, help="Slits that are cut into it, by name."),
    _PIECE(name="darts", takes=Takes.FULLNESS, help="The edges at which its darts open."),
    _PIECE(name="pleats", takes=Takes.FULLNESS, help="The edges at which its pleats open."),
    _PIECE(name="spots", takes=Takes.SPOTS, help="Marked places on its face: `pocket@left`."),
    _PIECE(name="lines", takes=Takes.NAMES, help="Marked lines on its face."),
    _PIECE(
        name="begins",
        takes=Takes.BEGINNINGS,
        help="How far from an edge spots and lines begin: `frill-line: 2 from neck`.",
    ),
    _PIECE(name="when", takes=Takes.WHEN, help="The choice for which it is used."),
    _PIECE(name="note", takes=Takes.NOTE, help="A note for the cutting list."),
    _PIECE(
        name="shape",
        takes=Takes.SHAPE,
        help="Its outline along the stitching lines: corners in the order of its edges.",
    ),
    _PIECE(
        name="lengths", takes=Takes.LENGTHS, help="How long edges are, along the stitching line."
    ),
    _PIECE(
        name="notches",
        takes=Takes.NOTCHES,
        help="Edges with the notches on them: `side: 20 from waist`, `cap: [single, double]`.",
    ),
    # Darts or pleats of a piece.
    _FULLNESS(name="on", takes=Takes.TEXT, is_required=True, help="The edge at which they open."),
    _FULLNESS(name="number", takes=Takes.NUMBER, bounds=(1, 99), help="How many; 1 if left out."),
    _FULLNESS(name="intake", takes=Takes.LENGTH, help="How much of the edge each takes up."),
    # A slit.
    _SLIT(
        name="at",
        takes=Takes.TEXT,
        is_required=True,
        help="The two edges between which it begins: `wrist-back | wrist-front`.",
    ),
    _SLIT(name="length", takes=Takes.LENGTH, help="How long it is."),
    # What stands between two corners of a shape.
    _SHAPE(
        name="curve",
        takes=Takes.POINTS,
        help="Handles that bend an edge; for a longer curve, points that it runs through too.",
    ),
    # A lay plan.
    _PLAN(
        name="picture",
        takes=Takes.PICTURE,
        is_required=True,
        help="An SVG, PNG or JPEG file beside the garment file.",
    ),
    _PLAN(name="fabric", takes=Takes.FABRIC, is_required=True, help="The fabric that is cut."),
    _PLAN(name="width", takes=Takes.LENGTH, help="How wide the cloth is."),
    _PLAN(name="size", takes=Takes.TEXT, help="The size, if it is for one only."),
    _PLAN(name="alt", takes=Takes.TEXT, help="The picture in words, for who cannot see it."),
    # A waiver.
    _WAIVER(name="rule", takes=Takes.TEXT, is_required=True, help="The rule that is set aside."),
    _WAIVER(
        name="at",
        takes=Takes.ENTRIES,
        help="Entries, or operations `entry/part`; all of them if left out.",
    ),
    _WAIVER(name="because", takes=Takes.TEXT, is_required=True, help="Why."),
    # A notion.
    _NOTION(name="kind", takes=Takes.TEXT, is_required=True, help="What it is: invisible zip."),
    _NOTION(name="length", takes=Takes.LENGTH_BY_SIZE, help="How long it is."),
    _NOTION(name="width", takes=Takes.LENGTH, help="How wide it is."),
    _NOTION(name="count", takes=Takes.NUMBER, bounds=(1, 999), help="How many; 1 if left out."),
    _NOTION(
        name="iron",
        takes=Takes.YES_NO,
        help="Whether it bears an iron; yes if it is left out.",
    ),
    _NOTION(name="when", takes=Takes.WHEN, help="The choice for which it is used."),
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
    _STATION(
        name="thread minutes",
        takes=Takes.NUMBER,
        bounds=(0, 1440),
        help="To thread another colour there.",
    ),
    _STATION(
        name="needle minutes",
        takes=Takes.NUMBER,
        bounds=(0, 1440),
        help="To change the needle there.",
    ),
    # What an operation does.
    _VERB(
        name="pretreat",
        takes=Takes.FABRICS,
        verbs=(Verb.PRETREAT,),
        help="Wash or steam cloth before it is cut.",
    ),
    _VERB(name="cut", takes=Takes.PIECES, verbs=(Verb.CUT,), help="Cut pieces out."),
    _VERB(name="mark", takes=Takes.PIECES, verbs=(Verb.MARK,), help="Transfer the marks."),
    _VERB(
        name="fuse",
        takes=Takes.PIECES,
        verbs=(Verb.FUSE,),
        help="Fuse interfacing to pieces, or to half the width of a strip: `cuff half`.",
    ),
    _VERB(
        name="strap",
        takes=Takes.PIECES,
        verbs=(Verb.STRAP,),
        help="Make straps, ties or loops of strips.",
    ),
    *(
        _VERB(name=verb.value, takes=Takes.RUN, verbs=(verb,), help=text)
        for verb, text in (
            (Verb.STAYSTITCH, "Staystitch edges so that they do not stretch."),
            (Verb.DART, "Sew darts whose mouth is at an edge."),
            (Verb.PLEAT, "Lay and fix pleats along an edge."),
            (Verb.GATHER, "Gather an edge."),
            (Verb.SLASH, "Cut a slit open."),
            (Verb.SEW, "Sew edges together, or the left copy to the right."),
            (Verb.BASTE, "Baste edges together until a seam holds them."),
            (Verb.HOLD, "Baste a layer along edges, to be one with them from then on."),
            (Verb.BAND, "Set a band on: sew it to an edge, fold it over, fasten it."),
            (Verb.BIND, "Bind an edge with a strip or a tape."),
            (Verb.TOWER_PLACKET, "Set an underlap and a tower into a slit."),
            (Verb.CONTINUOUS_PLACKET, "Bind a slit with one continuous strip."),
            (Verb.BOX_CORNER, "Sew across the corner where two seams meet."),
            (Verb.FINISH, "Finish cut edges so that they do not ravel."),
            (Verb.TRIM, "Trim the allowances."),
            (Verb.GRADE, "Trim allowances to different widths."),
            (Verb.CLIP, "Clip into the allowances of a curve or corner."),
            (Verb.PRESS, "Press seams or edges."),
            (Verb.UNDERSTITCH, "Stitch a facing to its allowances."),
            (Verb.TOPSTITCH, "Stitch where it shows."),
            (Verb.TACK, "Fasten an edge by a few stitches."),
            (Verb.HEM, "Fold an edge up and sew it."),
            (Verb.CASING, "Fold an edge over into a channel."),
            (Verb.REMOVE_BASTING, "Take basting out again."),
            (Verb.FOLD, "Fold an edge, or crease it, for later."),
            (Verb.UNFOLD, "Open a fold out again."),
        )
    ),
    _VERB(
        name="insert", takes=Takes.NOTION, verbs=(Verb.INSERT,), help="Set a zip, thread elastic."
    ),
    _VERB(
        name="attach",
        takes=Takes.NOTION_OR_PIECE,
        verbs=(Verb.ATTACH,),
        help="Sew a notion, or a finished piece, on; a piece that is held by one end: `tie.end`.",
    ),
    _VERB(
        name="patch pocket",
        takes=Takes.PIECE,
        verbs=(Verb.PATCH_POCKET,),
        help="Hem the mouth of a pocket, press its edges under, stitch it on.",
    ),
    _VERB(
        name="in-seam pocket",
        takes=Takes.PIECES,
        verbs=(Verb.IN_SEAM_POCKET,),
        help="Sew pocket bags to the edges of a seam before it is closed.",
    ),
    _VERB(
        name="welt pocket",
        takes=Takes.PIECE,
        verbs=(Verb.WELT_POCKET,),
        help="Set a welt on, cut the mouth, turn it, add the bag.",
    ),
    _VERB(
        name="buttonhole",
        takes=Takes.PLACES,
        verbs=(Verb.BUTTONHOLE,),
        help="Work buttonholes and cut them open.",
    ),
    _VERB(name="turn", takes=Takes.PIECES, verbs=(Verb.TURN,), help="Turn pieces right side out."),
    _VERB(name="nest", takes=Takes.PIECES, verbs=(Verb.NEST,), help="Put one layer into another."),
    _VERB(
        name="roll",
        takes=Takes.PIECES,
        verbs=(Verb.ROLL,),
        help="Roll the body up, out of the way of a seam.",
    ),
    _VERB(name="open", takes=Takes.NOTION, verbs=(Verb.OPEN,), help="Open a zip."),
    _VERB(
        name="shorten",
        takes=Takes.NOTION,
        verbs=(Verb.SHORTEN,),
        help="Oversew the teeth of a zip and cut off what is beyond.",
    ),
    _VERB(name="close", takes=Takes.ENTRY, verbs=(Verb.CLOSE,), help="Close the gap of a seam."),
    _VERB(name="wait", takes=Takes.HOURS, verbs=(Verb.WAIT,), help="Let it hang or dry."),
    _VERB(
        name="send out",
        takes=Takes.PIECES,
        verbs=(Verb.SEND_OUT,),
        help="Give it out of the house: to be pleated, printed, embroidered.",
    ),
    _VERB(name="fit", takes=Takes.PIECES, verbs=(Verb.FIT,), help="Try it on."),
    _VERB(name="inspect", takes=Takes.PIECES, verbs=(Verb.INSPECT,), help="Look it over."),
    _VERB(name="do", takes=Takes.TEXT, verbs=(Verb.DO,), help="Anything else, in your own words."),
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
        choices=SEAMS,
        help="How the seam is made; plain if it is left out.",
    ),
    _ENTRY(
        name="sides",
        takes=Takes.CHOICE,
        verbs=_JOIN,
        choices=tuple(sides.value for sides in Sides),
        help="Which sides lie together; right sides if it is left out.",
    ),
    _ENTRY(
        name="between",
        takes=Takes.CAUGHT,
        verbs=(Verb.SEW,),
        help="What is caught between the two sides: edges, straps, a zip.",
    ),
    _ENTRY(
        name="topstitch",
        takes=Takes.TOPSTITCH,
        verbs=(Verb.SEW, *_SET_ON, Verb.STRAP),
        help="Topstitch it afterwards: yes, how far from the edge, or on which side.",
    ),
    _ENTRY(
        name="with",
        takes=Takes.PIECES,
        verbs=(Verb.HOLD, Verb.WELT_POCKET, Verb.INSERT),
        help="What is laid along: a layer, a pocket bag, the pieces of a fly.",
    ),
    _ENTRY(
        name="with",
        takes=Takes.PIECES,
        verbs=(Verb.BAND, *_PLACKET),
        is_required=True,
        help="The strips that are set on: a band, its two layers, an underlap and a tower.",
    ),
    _ENTRY(
        name="with",
        takes=Takes.PIECES_OR_NOTION,
        verbs=(Verb.BIND,),
        is_required=True,
        help="The strip or tape that binds.",
    ),
    _ENTRY(
        name="with",
        takes=Takes.PIECES_OR_NOTION,
        verbs=(Verb.SEW,),
        help="Of a bound seam: the strip or tape that binds its allowances.",
    ),
    _ENTRY(
        name="ends",
        takes=Takes.CHOICE,
        verbs=_SET_ON,
        choices=tuple(ends.value for ends in Ends),
        help="The ends of a band: closed, left open, or joined to a ring.",
    ),
    _ENTRY(
        name="close",
        takes=Takes.CHOICE,
        verbs=_SET_ON,
        choices=tuple(closing.value for closing in Closing),
        help="How the loose edge of a band is fastened; topstitched if it is left out.",
    ),
    _ENTRY(
        name="from",
        takes=Takes.CHOICE,
        verbs=_SET_ON,
        choices=("right side", "wrong side"),
        help="The side from which a band is set on.",
    ),
    _ENTRY(
        name="from",
        takes=Takes.CHOICE,
        verbs=(Verb.ATTACH,),
        choices=("right side", "wrong side"),
        help="The side of the cloth on which it is sewn on.",
    ),
    _ENTRY(
        name="doubled",
        takes=Takes.YES_NO,
        verbs=(Verb.ATTACH,),
        help="It is laid double, with both its ends at the edge.",
    ),
    _ENTRY(
        name="from",
        takes=Takes.CHOICE,
        verbs=(Verb.SHORTEN,),
        choices=("top", "bottom"),
        help="The end that is cut off; the top if it is left out.",
    ),
    _ENTRY(
        name="in",
        takes=Takes.RUN,
        verbs=(Verb.IN_SEAM_POCKET,),
        is_required=True,
        help="The edges that the bags are sewn to.",
    ),
    _ENTRY(
        name="at",
        takes=Takes.PLACES,
        verbs=(Verb.PATCH_POCKET, Verb.WELT_POCKET),
        is_required=True,
        help="Where: a spot on a piece.",
    ),
    _ENTRY(
        name="open",
        takes=Takes.EDGE_NAMES,
        verbs=(Verb.PATCH_POCKET,),
        help="The edges that stay open, as the mouth of a pocket.",
    ),
    _ENTRY(
        name="number",
        takes=Takes.NUMBER,
        verbs=(Verb.BUTTONHOLE, Verb.ATTACH),
        bounds=(1, 999),
        help="How many.",
    ),
    _ENTRY(
        name="on",
        takes=Takes.PIECES,
        verbs=(Verb.WAIT,),
        help="What hangs or dries.",
    ),
    _ENTRY(
        name="to",
        takes=Takes.CHOICE,
        verbs=(Verb.WAIT,),
        choices=tuple(purpose.value for purpose in Purpose),
        help="What one waits for.",
    ),
    _ENTRY(
        name="to",
        takes=Takes.LENGTH,
        verbs=(Verb.TRIM, Verb.GRADE),
        help="What is left of the allowance, on the side where it is widest.",
    ),
    _ENTRY(
        name="cuts",
        takes=Takes.LENGTH,
        verbs=(Verb.FINISH, Verb.SEW),
        help="How much the knife takes off while the edge is finished.",
    ),
    _ENTRY(name="width", takes=Takes.LENGTH, verbs=(Verb.BOX_CORNER,), help="How wide it is."),
    _ENTRY(
        name="method",
        takes=Takes.CHOICE,
        verbs=(Verb.STRAP,),
        choices=tuple(method.value for method in StrapMethod),
        help="Turned: sewn and drawn through. Folded: pressed in and topstitched.",
    ),
    _ENTRY(
        name="method",
        takes=Takes.CHOICE,
        verbs=(Verb.BUTTONHOLE,),
        choices=("worked", "bound"),
        help="Worked with thread, late; or bound with cloth, before the facing is sewn on.",
    ),
    _ENTRY(
        name="through",
        takes=Takes.TEXT,
        verbs=(Verb.TURN, Verb.ROLL),
        help="The opening through which it is turned.",
    ),
    _ENTRY(name="press", takes=Takes.DIRECTION, verbs=_JOIN, help="Which way it is pressed."),
    _ENTRY(name="allowance", takes=Takes.LENGTH, verbs=_JOIN, help="The allowance of this seam."),
    _ENTRY(
        name="ease",
        takes=Takes.LENGTH,
        verbs=(Verb.SEW,),
        help="How much longer one side may be than the other, to be eased in.",
    ),
    _ENTRY(name="part", takes=Takes.PORTION, verbs=_PARTIAL, help="Only this part: 10 from waist."),
    _ENTRY(name="stop", takes=Takes.PORTION, verbs=_PARTIAL, help="All but this: 10 before waist."),
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
    _ENTRY(
        name="on top",
        takes=Takes.CHOICE,
        verbs=(Verb.INSERT,),
        choices=(*(hand.value for hand in Hand), *(worn.value for worn in Worn)),
        help="Of a fly or a lapped zip: the side that lies on top, by the wearer.",
    ),
    _ENTRY(name="overlap", takes=Takes.LENGTH, verbs=(Verb.INSERT,), help="How far ends overlap."),
    _ENTRY(name="at", takes=Takes.EDGES_OR_PLACES, verbs=(Verb.ATTACH,), help="Where."),
    _ENTRY(name="to", takes=Takes.EDGES_OR_PLACES, verbs=(Verb.ATTACH,), help="Where, likewise."),
    _ENTRY(name="depth", takes=Takes.LENGTH, verbs=_FOLD, help="How deep it is folded."),
    _ENTRY(
        name="depth",
        takes=Takes.LENGTH,
        verbs=(Verb.PATCH_POCKET,),
        help="How deep its mouth is folded, twice; by the pattern if it is left out.",
    ),
    _ENTRY(
        name="gap",
        takes=Takes.LENGTH,
        verbs=(Verb.CASING, Verb.SEW),
        help="What stays open, to thread or to turn through.",
    ),
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
    _ENTRY(
        name="flat", takes=Takes.YES_NO, verbs=(*_FOLD, *_SET_ON), help="Before the seam closes it."
    ),
    _ENTRY(
        name="method",
        takes=Takes.CHOICE,
        verbs=(Verb.HEM,),
        choices=_RING_OR_FLAT,
        help="In the round: the ring is closed first. Flat: before it is closed.",
    ),
    _ENTRY(
        name="method",
        takes=Takes.CHOICE,
        verbs=_JOIN,
        choices=tuple(how.value for how in SeamMethod),
        help="In the round: the ring is closed first. Flat: before it is closed.",
    ),
    _ENTRY(name="on", takes=Takes.PIECES, verbs=(Verb.DO,), help="The pieces it is done on."),
    _ENTRY(name="at", takes=Takes.RUN, verbs=(Verb.DO,), help="The edges it is done at."),
    _ENTRY(name="at", takes=Takes.RUN, verbs=(Verb.FIT,), help="The edges that are fitted."),
    _ENTRY(
        name="wet",
        takes=Takes.YES_NO,
        verbs=(Verb.DO, Verb.SEND_OUT),
        help="It gets wet, and creases and marks come out.",
    ),
    _ENTRY(name="makes", takes=Takes.NAMES, verbs=(Verb.DO,), help="What it makes, by name."),
    _ENTRY(
        name="uses", takes=Takes.NAMES, verbs=(Verb.DO,), help="What it needs that others make."
    ),
    # What goes with every verb.
    _ENTRY(name="station", takes=Takes.STATION, help="Where it is done."),
    _ENTRY(name="foot", takes=Takes.TEXT, help="The presser foot."),
    _ENTRY(name="thread", takes=Takes.TEXT, help="The thread, where it is not the usual one."),
    _ENTRY(name="needle", takes=Takes.TEXT, help="The needle, where it is not the usual one."),
    _ENTRY(name="setting", takes=Takes.TEXT, help="How the machine is set: zigzag, 2 mm wide."),
    _ENTRY(name="minutes", takes=Takes.NUMBER, bounds=(0, 1440), help="How long it takes."),
    _ENTRY(name="after", takes=Takes.ENTRIES, help="What you want done before it."),
    _ENTRY(name="because", takes=Takes.TEXT, help="Your reason for `after`."),
    _ENTRY(name="without", takes=Takes.TEXTS, help="Parts of the recipe that are left out."),
    _ENTRY(name="unit", takes=Takes.PIECES, help="The part of the garment in hand."),
    _ENTRY(
        name="keep clear",
        takes=Takes.PIECES,
        verbs=_STITCHING,
        help="Layers that are folded out of the way of the stitching.",
    ),
    _ENTRY(name="title", takes=Takes.TEXT, help="A heading for the handout."),
    _ENTRY(name="note", takes=Takes.NOTE, help="Your note to the reader."),
    _ENTRY(name="say", takes=Takes.TEXT, help="Your own sentence instead of the usual one."),
    _ENTRY(name="when", takes=Takes.WHEN, help="The choice for which it is done."),
    _ENTRY(name="picture", takes=Takes.TEXT, help="A picture of your own for the step."),
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
    """The keys that say what an operation does."""
    return {key.name: key for key in KEYS if key.is_verb}


@cache
def entry_keys() -> Keys:
    """The keys of operations by name, whatever their verb; of those alike, one that is a list."""
    ours = [key for key in KEYS if key.section is Section.OPERATION]
    return {key.name: key for key in sorted(ours, key=lambda key: key.takes in LISTS)}


def verbs_with(name: str) -> tuple[Verb, ...]:
    """The verbs that a key goes with."""
    return tuple(
        verb for verb in Verb if name in keys_with(verb) and not keys_with(verb)[name].is_verb
    )
