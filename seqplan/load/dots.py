"""Whether a picture of dots is whole: what breaks off or is damaged cannot be printed.

PNG: ISO/IEC 15948. JPEG: ISO/IEC 10918-1, annex B. A PNG is unpacked piece by piece, and nothing of
it is kept; of a JPEG the parts are looked through, but not the dots, which a printer shows as they
are.
"""

import zlib
from collections.abc import Iterator
from math import ceil
from typing import Final

PNG: Final = b"\x89PNG\r\n\x1a\n"
JPEG: Final = b"\xff\xd8\xff"

_CHANNELS: Final = {0: 1, 2: 3, 3: 1, 4: 2, 6: 4}
"""How many numbers a dot has, by the kind of colour."""
_DEPTHS: Final = {0: {1, 2, 4, 8, 16}, 2: {8, 16}, 3: {1, 2, 4, 8}, 4: {8, 16}, 6: {8, 16}}
_PALETTE: Final = 3
_WHOLE: Final = ((0, 0, 1, 1),)
_INTERLACED: Final = (
    (0, 0, 8, 8),
    (4, 0, 8, 8),
    (0, 4, 4, 8),
    (2, 0, 4, 4),
    (0, 2, 2, 4),
    (1, 0, 2, 2),
    (0, 1, 1, 2),
)
"""The passes of an interlaced picture: first column and row, and the steps from one to the next."""
_FILTERS: Final = 5
_PIECE: Final = 1 << 16
_FRAMES: Final = frozenset(range(0xC0, 0xD0)) - {0xC4, 0xC8, 0xCC}
_SCAN: Final = 0xDA


def png_size(data: bytes) -> tuple[int, int]:
    """Width and height, which the first block of a PNG holds; 0 where it holds none."""
    if data[12:16] != b"IHDR" or len(data) < 33:
        return 0, 0
    return int.from_bytes(data[16:20]), int.from_bytes(data[20:24])


def is_whole_png(data: bytes) -> bool:
    """Whether every block is as it was written, and the dots are all there."""
    depth, colour, _, _, passes = data[24:29]
    if depth not in _DEPTHS.get(colour, ()) or passes > 1:
        return False
    blocks = list(_blocks(data))
    kinds = [kind for kind, _ in blocks]
    if not kinds or kinds[-1] != b"IEND" or (colour == _PALETTE and b"PLTE" not in kinds):
        return False
    rows = _rows(png_size(data), depth * _CHANNELS[colour], _INTERLACED if passes else _WHOLE)
    return _holds(b"".join(body for kind, body in blocks if kind == b"IDAT"), rows)


def _blocks(data: bytes) -> Iterator[tuple[bytes, bytes]]:
    """The blocks of a PNG up to its end, or to the first that is not sound."""
    place = len(PNG)
    while place + 12 <= len(data):
        end = place + 8 + int.from_bytes(data[place : place + 4])
        kind, body, check = data[place + 4 : place + 8], data[place + 8 : end], data[end : end + 4]
        if zlib.crc32(kind + body) != int.from_bytes(check) or len(check) < 4:
            return
        yield kind, body
        if kind == b"IEND":
            return
        place = end + 4


def _rows(
    size: tuple[int, int], bits: int, passes: tuple[tuple[int, int, int, int], ...]
) -> Iterator[int]:
    """How many bytes each row takes, its filter included."""
    wide, high = size
    for left, top, across, down in passes:
        columns, rows = ceil((wide - left) / across), ceil((high - top) / down)
        if columns > 0:
            for _ in range(rows):
                yield 1 + ceil(columns * bits / 8)


def _holds(packed: bytes, rows: Iterator[int]) -> bool:
    """Whether packed bytes hold all rows, each with a filter that there is."""
    unpack = zlib.decompressobj()
    ready = bytearray()
    try:
        for wanted in rows:
            while len(ready) < wanted:
                found = unpack.decompress(packed, _PIECE)
                packed = unpack.unconsumed_tail
                if not found:
                    return False
                ready += found
            if ready[0] >= _FILTERS:
                return False
            del ready[:wanted]
    except zlib.error:
        return False
    return True


def jpeg_size(data: bytes) -> tuple[int, int]:
    """Width and height from the header of the frame of a JPEG; 0 where it has none."""
    for marker, body in _segments(data):
        if marker in _FRAMES and len(body) >= 6:
            return int.from_bytes(body[3:5]), int.from_bytes(body[1:3])
    return 0, 0


def is_whole_jpeg(data: bytes) -> bool:
    """Whether a JPEG has all parts that a picture is made of, and an end."""
    segments = list(_segments(data))
    kinds = {marker for marker, _ in segments}
    scan = data.find(bytes([0xFF, _SCAN]))
    return {0xC4, 0xDB, _SCAN} <= kinds and data.find(b"\xff\xd9", scan) > scan + 8


def _segments(data: bytes) -> Iterator[tuple[int, bytes]]:
    """The segments of a JPEG, each with its marker, up to the first scan."""
    place = 2
    while place + 4 <= len(data) and data[place] == 0xFF:
        marker = data[place + 1]
        if marker == 0xFF or 0xD0 <= marker <= 0xD8 or marker == 0x01:
            place += 1 if marker == 0xFF else 2
            continue
        end = place + 2 + int.from_bytes(data[place + 2 : place + 4])
        yield marker, data[place + 4 : end]
        if marker == _SCAN:
            return
        place = end
