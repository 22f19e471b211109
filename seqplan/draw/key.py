"""The key of the pictures: one sheet that explains every tone, hatching, letter and line."""

from collections.abc import Iterable
from math import ceil
from typing import Final, NamedTuple

from seqplan.draw.cloth import Cloth, Stitch
from seqplan.draw.figure import (
    PAPER,
    THIN,
    TONE,
    Area,
    Disc,
    Figure,
    Line,
    Mark,
    Strokes,
    Words,
    moved_by,
)
from seqplan.draw.map_lines import edge_marks, slit_marks
from seqplan.draw.map_piece import letter_box, letter_marks
from seqplan.draw.notch_marks import notch_marks
from seqplan.draw.section_picture import end_sample, pen_of, right_side_sample, swatch
from seqplan.draw.textwidth import text_width, wrap
from seqplan.draw.tones import cloth_marks, hatching
from seqplan.rehearse.edges import EdgeState
from seqplan.rehearse.edges import Kind as State
from seqplan.words.say import say

_WIDTH: Final = 480.0
_MARGIN: Final = 6.0
_COLUMNS: Final = 3
_GAP: Final = 14.0
_SAMPLE: Final = 26.0
_SIZE: Final = 8.0
_LEADING: Final = 9.6
_TITLE: Final = 9.0
_BETWEEN: Final = 3.4
_LETTER: Final = 7.0
_HEAVY: Final = 2.6


class _Item(NamedTuple):
    """A sample, drawn round (13, 0), with its letter if it has one, and what it means."""

    sample: tuple[Mark, ...]
    words: str
    letter: str = ""


def key_figure() -> Figure:
    """Draw the key of all pictures; it is the same for every garment."""
    parts = [
        (say("key-sides"), _sides()),
        (say("key-cloth"), _cloths()),
        (say("key-stack"), _on_the_stack()),
        (say("key-section"), _in_the_section()),
        (say("key-edges"), _edges()),
        (say("key-unit"), _in_hand()),
    ]
    columns = ((0, 1, 2), (3,), (4, 5))
    across = (_WIDTH - 2 * _MARGIN - (_COLUMNS - 1) * _GAP) / _COLUMNS
    marks: list[Mark] = []
    low = 0.0
    for place, column in enumerate(columns):
        top = _MARGIN
        for part in column:
            title, items = parts[part]
            found, top = _part(title, items, _MARGIN + place * (across + _GAP), top, across)
            marks += found
        low = max(low, top)
    told = say("key-told", words="; ".join(item.words for _, items in parts for item in items))
    return Figure(_WIDTH, ceil(low + _MARGIN), say("key-title"), told, tuple(marks))


def _part(
    title: str, items: Iterable[_Item], left: float, top: float, across: float
) -> tuple[list[Mark], float]:
    marks: list[Mark] = [Words((left, top + _TITLE), title, _TITLE, is_bold=True, role="title")]
    y = top + _TITLE + 6
    for item in items:
        box = letter_box(item.letter) + 4 if item.letter else 0.0
        room = across - _SAMPLE - 5 - box
        lines = wrap(item.words, room, _SIZE)
        middle = y + max(len(lines) * _LEADING, _LEADING) / 2
        marks += [moved_by(mark, left, middle) for mark in item.sample]
        if item.letter:
            marks += letter_marks(item.letter, left + _SAMPLE + 5, middle)
        for number, line in enumerate(lines):
            base = middle + (number - (len(lines) - 1) / 2) * _LEADING + 0.34 * _SIZE
            marks.append(Words((left + _SAMPLE + 5 + box, base), line, _SIZE, role="key"))
        y += len(lines) * _LEADING + _BETWEEN
    return marks, y + 4


# -- the items -----------------------------------------------------------------------------

_BOX: Final = ((0.0, -5.0), (_SAMPLE, -5.0), (_SAMPLE, 5.0), (0.0, 5.0))


def _box(cloth: Cloth, *, is_right: bool = True) -> list[Mark]:
    return [*cloth_marks(_BOX, cloth, is_right=is_right)]


def _sides() -> list[_Item]:
    found = []
    for is_right, words, letter in (
        (True, "picture-right-side", "picture-right-letter"),
        (False, "picture-wrong-side", "picture-wrong-letter"),
    ):
        half = text_width(say(letter), _LETTER, bold=True) / 2 + 1
        patch = ((13 - half, -4.0), (13 + half, -4.0), (13 + half, 4.0), (13 - half, 4.0))
        sample = [
            *_box(Cloth.SHELL, is_right=is_right),
            Area(patch, PAPER),
            Words((13, 0.35 * _LETTER), say(letter), _LETTER, "middle", is_bold=True, role="side"),
        ]
        found.append(_Item(tuple(sample), say(words)))
    return found


def _cloths() -> list[_Item]:
    found = []
    for cloth in Cloth:
        half = ((0.0, -5.0), (11.0, -5.0), (11.0, 5.0), (0.0, 5.0))
        edge = [moved_by(mark, 13, 0) for mark in swatch(cloth)]
        sample = (*cloth_marks(half, cloth, is_right=True), *edge)
        found.append(_Item(sample, say(f"key-cloth-{cloth.value}")))
    return found


def _line(*spots: tuple[float, float], width: float, dashes: tuple[float, ...] = ()) -> Line:
    return Line(spots, width, dashes)


def _on_the_stack() -> list[_Item]:
    level = ((0.0, 0.0), (_SAMPLE, 0.0))
    pin = (_line((2, 0), (22, 0), width=0.8), Disc((22, 0), 2.0, PAPER, 0.8))
    arrow = (
        _line((13, -6), (13, 3), width=1.2),
        Area(((10, 1), (16, 1), (13, 7)), "#000"),
    )
    corner = (
        *cloth_marks(((0, -6), (26, -6), (26, 6), (8, 6), (0, -2)), Cloth.SHELL, is_right=False),
        *cloth_marks(((0, -2), (8, 6), (8, -2)), Cloth.SHELL, is_right=True),
    )
    bracket = (_line((12, -6), (15, -6), (15, 6), (12, 6), width=1.1),)
    hidden = (_line((26, -4), (2, -4), (2, 4), (26, 4), width=1.1, dashes=(2.4, 1.8)),)
    return [
        _Item((_line(*level, width=1.7, dashes=(5, 2.6)),), say("key-row")),
        _Item(arrow, say("key-arrow")),
        _Item(pin, say("key-pin")),
        _Item(corner, say("key-corner")),
        _Item(bracket, say("key-bracket")),
        _Item(hidden, say("key-hidden")),
    ]


def _in_the_section() -> list[_Item]:
    found = [
        _Item(tuple(right_side_sample()), say("key-teeth")),
        _Item((_line((0, 0), (_SAMPLE, 0), width=1.4),), say("key-table")),
    ]
    found += [
        _Item(tuple(end_sample(name)), say(f"key-end-{name}"))
        for name in ("goes on", "finished", "teeth")
    ]
    for stitch in Stitch:
        width, dashes = pen_of(stitch)
        row = _line((0, 0), (_SAMPLE, 0), width=width, dashes=dashes)
        found.append(_Item((row,), say(f"picture-stitch-{stitch.value}")))
    heavy, dashes = pen_of(Stitch.SEAM)
    found.append(_Item((_line((0, 0), (_SAMPLE, 0), width=heavy + 0.9),), say("key-now")))
    return found


def _edges() -> list[_Item]:
    start, end = 0j, complex(_SAMPLE)
    found = []
    for kind in State:
        state = EdgeState(kind)
        letter = "".join(say(f"map-letter-{key}") for key in state.letters)
        sample = tuple(edge_marks([start, end], state, 1))
        found.append(_Item(sample, say(f"map-key-{kind.value}"), letter))
    finished = EdgeState(State.RAW, is_finished=True)
    sample = tuple(edge_marks([start, end], finished, 1))
    found.append(_Item(sample, say("map-key-finished"), say("map-letter-finished")))
    active = EdgeState(State.RAW, is_active=True)
    found.append(_Item(tuple(edge_marks([start, end], active, 1)), say("map-key-active")))
    notch = (_line((0, -2), (_SAMPLE, -2), width=THIN), *notch_marks(13 - 2j, 1 + 0j, 1))
    found.append(_Item(notch, say("key-notch")))
    found.append(_Item(tuple(slit_marks([start, end], is_cut=False)), say("map-key-slit")))
    return found


def _in_hand() -> list[_Item]:
    level = ((0.0, 0.0), (_SAMPLE, 0.0))
    bow = ((0.0, -4.0), (6.0, 1.0), (13.0, 3.0), (20.0, 1.0), (26.0, -4.0))
    opening = (
        Area(bow, TONE),
        Strokes(tuple(hatching(bow, (1, 1), 4.0)), 0.4),
        Line((*bow, bow[0]), 0.8),
    )
    gap = (
        _line((0, 0), (8, 0), width=_HEAVY),
        _line((18, 0), (26, 0), width=_HEAVY),
        Strokes((((8, -4), (8, 4)), ((18, -4), (18, 4))), 1.4),
    )
    return [
        _Item((_line(*level, width=_HEAVY),), say("key-unit-now")),
        _Item((_line(*level, width=0.8, dashes=(3, 2)),), say("unit-seams")),
        _Item(opening, say("key-opening")),
        _Item(gap, say("key-gap")),
    ]
