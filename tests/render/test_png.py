"""Pictures as PNG."""

import struct

import pytest

pytest.importorskip("typst")

from seqplan.draw.figure import Area, Figure, Words
from seqplan.render.png import PIXELS_PER_INCH, pngs

SMALL = Figure(72, 36, "Small", "small", (Words((4, 20), "front", 8),))
DARK = Figure(36, 72, "Dark", "dark", (Area(((0, 0), (36, 0), (36, 72), (0, 72)), "#000"),))


def size(data):
    assert data.startswith(b"\x89PNG\r\n\x1a\n")
    return struct.unpack(">II", data[16:24])


def test_each_picture_has_its_own_size():
    one, other = pngs([SMALL, DARK])
    inch = PIXELS_PER_INCH
    assert size(one) == pytest.approx((inch, inch / 2), abs=1)
    assert size(other) == pytest.approx((inch / 2, inch), abs=1)


def test_one_picture_and_none():
    assert pngs([]) == ()
    (only,) = pngs([SMALL], 72)
    assert size(only) == pytest.approx((72, 36), abs=1)


def test_the_same_picture_gives_the_same_bytes():
    assert pngs([SMALL, DARK]) == pngs([SMALL, DARK])
    assert pngs([SMALL])[0] == pngs([SMALL, DARK])[0]
    assert pngs([SMALL]) != pngs([DARK])
