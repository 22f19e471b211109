"""Path data as SVG writes it: the letters M L H V C S Q T A Z with their numbers.

The grammar and the reading of arcs follow the recommendation SVG 1.1, chapter 8 and appendix F.6.
"""

import cmath
import math
import re
from collections.abc import Callable
from typing import Final

from seqplan.shape.curve import Curve, Path

MOST_CURVES: Final = 2000
"""Far more than an outline has; a longer path is refused before it takes long to measure."""

_LARGEST: Final = 1e7
"""Larger than any coordinate of a pattern; further out, sums of squares lose their digits."""

_NUMBER = re.compile(r"[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d{1,3})?")
_BLANK = re.compile(r"[\s,]*")
_STEP: Final = math.pi / 8
"""The most of a circle that one cubic stands for: less than a millionth of the radius off it."""


class PathFaultError(ValueError):
    """Path data that cannot be read.

    Parameters
    ----------
    kind
        What is wrong: ``letter``, ``number``, ``start``, ``second``, ``long`` or ``far``.
    place
        At which letter of the data, from 1.
    found
        What stands there.
    """

    def __init__(self, kind: str, place: int, found: str) -> None:
        super().__init__(f"{kind} at {place}")
        self.kind = kind
        self.place = place
        self.found = found


def read_path(data: str) -> tuple[Path, bool]:
    """Read the one path that path data draws.

    Parameters
    ----------
    data
        The value of the attribute ``d``.

    Returns
    -------
    Path, bool
        Its curves in the units of the data, and whether it is closed; the straight line that
        closes it is the last of them, unless the path has come back to its start by itself.

    Raises
    ------
    PathFaultError
        When it is no path data, or draws more than one path.
    """
    return _Reader(data).read()


class _Reader:
    def __init__(self, data: str) -> None:
        self._data = data
        self._place = 0
        self._curves: list[Curve] = []
        self._here = self._start = 0j
        self._handle: tuple[str, complex] = ("", 0j)
        self._is_begun = self._is_closed = False
        self._draw: dict[str, Callable[[bool], None]] = {
            "L": self._line,
            "H": self._across,
            "V": self._down,
            "C": self._cubic,
            "S": self._smooth_cubic,
            "Q": self._quadratic,
            "T": self._smooth_quadratic,
            "A": self._arc,
        }

    def read(self) -> tuple[Path, bool]:
        letter = ""
        while self._skip_blank():
            if self._data[self._place].isalpha():
                letter = self._data[self._place]
                self._command(letter)
                continue
            # Numbers that follow go on with the same letter; after M they are lines.
            if letter.upper() in ("", "Z"):
                raise self._fault("letter")
            self._one(letter)
        if not self._is_begun:
            raise self._fault("start")
        return tuple(self._curves), self._is_closed

    def _command(self, letter: str) -> None:
        kind = letter.upper()
        if kind not in self._draw and kind not in "MZ":
            raise self._fault("letter")
        if kind == "M" and self._is_begun:
            raise self._fault("second")
        if kind != "M" and not self._is_begun:
            raise self._fault("start")
        if self._is_closed:
            raise self._fault("second")
        self._place += 1
        if kind == "Z":
            self._close()
        elif kind == "M":
            self._here = self._start = self._point(letter.islower())
            self._is_begun = True
        else:
            self._one(letter)

    def _one(self, letter: str) -> None:
        kind = {"M": "L"}.get(letter.upper(), letter.upper())
        if len(self._curves) >= MOST_CURVES:
            raise self._fault("long")
        count = len(self._curves)
        self._draw[kind](letter.islower())
        if kind not in "CSQT":
            self._handle = ("", 0j)
        if any(abs(point) > _LARGEST for curve in self._curves[count:] for point in curve):
            raise self._fault("far")

    def _close(self) -> None:
        self._is_closed = True
        if abs(self._here - self._start) > 1e-6 * max(1.0, abs(self._start)):
            self._add(self._start)
        elif self._curves:
            self._curves[-1] = (*self._curves[-1][:-1], self._start)

    def _add(self, *points: complex) -> None:
        """Go on; a curve that goes nowhere is left out."""
        if any(point != self._here for point in points):
            self._curves.append((self._here, *points))
        self._here = points[-1]

    # -- the letters -------------------------------------------------------------------------

    def _line(self, is_relative: bool) -> None:
        self._add(self._point(is_relative))

    def _across(self, is_relative: bool) -> None:
        start = self._here.real if is_relative else 0.0
        self._add(complex(start + self._number(), self._here.imag))

    def _down(self, is_relative: bool) -> None:
        start = self._here.imag if is_relative else 0.0
        self._add(complex(self._here.real, start + self._number()))

    def _cubic(self, is_relative: bool) -> None:
        first, second, end = (self._point(is_relative) for _ in range(3))
        self._add(first, second, end)
        self._handle = ("C", second)

    def _smooth_cubic(self, is_relative: bool) -> None:
        first = self._mirrored("C")
        second, end = (self._point(is_relative) for _ in range(2))
        self._add(first, second, end)
        self._handle = ("C", second)

    def _quadratic(self, is_relative: bool) -> None:
        handle, end = (self._point(is_relative) for _ in range(2))
        self._add(handle, end)
        self._handle = ("Q", handle)

    def _smooth_quadratic(self, is_relative: bool) -> None:
        handle = self._mirrored("Q")
        self._add(handle, self._point(is_relative))
        self._handle = ("Q", handle)

    def _mirrored(self, kind: str) -> complex:
        """The last handle mirrored at where we are, if the last curve was of this kind."""
        before, handle = self._handle
        return 2 * self._here - handle if before == kind else self._here

    def _arc(self, is_relative: bool) -> None:
        radii = abs(self._number()), abs(self._number())
        turn = self._number()
        is_large, is_clockwise = self._flag(), self._flag()
        end = self._point(is_relative)
        if end == self._here:
            return
        if 0 in radii:
            self._add(end)
            return
        for points in arc(self._here, end, radii, turn, is_large, is_clockwise):
            self._add(*points)

    # -- numbers -----------------------------------------------------------------------------

    def _point(self, is_relative: bool) -> complex:
        point = complex(self._number(), self._number())
        return self._here + point if is_relative else point

    def _number(self) -> float:
        self._skip_blank()
        match = _NUMBER.match(self._data, self._place)
        if match is None:
            raise self._fault("number")
        self._place = match.end()
        return float(match.group())

    def _flag(self) -> bool:
        self._skip_blank()
        found = self._data[self._place : self._place + 1]
        if found not in ("0", "1"):
            raise self._fault("number")
        self._place += 1
        return found == "1"

    def _skip_blank(self) -> bool:
        match = _BLANK.match(self._data, self._place)
        self._place = match.end() if match else self._place
        return self._place < len(self._data)

    def _fault(self, kind: str) -> PathFaultError:
        return PathFaultError(kind, self._place + 1, self._data[self._place : self._place + 12])


def arc(
    start: complex,
    end: complex,
    radii: tuple[float, float],
    turn: float,
    is_large: bool,
    is_clockwise: bool,
) -> list[tuple[complex, complex, complex]]:
    """Cubics that stand for an elliptical arc: the handles and the end of each.

    Parameters
    ----------
    start, end
        Where it begins and ends, two different points.
    radii
        Half the axes of the ellipse, not 0; both grow as far as they have to.
    turn
        How far the first axis is turned, in degrees clockwise on the page.
    is_large
        Whether it is the longer way round.
    is_clockwise
        Whether it runs clockwise on the page.
    """
    rx, ry = radii
    tilt = cmath.exp(1j * math.radians(turn))
    # In these coordinates the ellipse is a circle of radius 1, its axes those of the page.
    half = (start - end) / 2 / tilt
    half = complex(half.real / rx, half.imag / ry)
    grown = max(1.0, abs(half))
    rx, ry, half = rx * grown, ry * grown, half / grown
    rise = math.sqrt(max(0.0, 1 - abs(half) ** 2))
    towards = half / abs(half) * 1j
    centre = towards * rise * (1 if is_large == is_clockwise else -1)
    first = cmath.phase(half - centre)
    sweep = (cmath.phase(-half - centre) - first) % (2 * math.pi)
    if not is_clockwise:
        sweep -= 2 * math.pi
    count = max(1, math.ceil(abs(sweep) / _STEP))
    reach = 4 / 3 * math.tan(sweep / count / 4)

    def placed(point: complex) -> complex:
        point += centre
        return (start + end) / 2 + complex(point.real * rx, point.imag * ry) * tilt

    found = []
    for number in range(count):
        one, other = (cmath.exp(1j * (first + sweep * (number + n) / count)) for n in (0, 1))
        handles = placed(one * (1 + 1j * reach)), placed(other * (1 - 1j * reach))
        found.append((*handles, end if number + 1 == count else placed(other)))
    return found
