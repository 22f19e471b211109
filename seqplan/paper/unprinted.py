"""What of a garment cannot be printed, as findings: letters without a shape, damaged pictures."""

import re
from collections.abc import Collection, Iterable, Iterator
from typing import Final

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.ids import RuleSlug
from seqplan.base.path import DocPath, Span
from seqplan.model.garment import Garment, Picture
from seqplan.words.say import say

_LINE_BREAK: Final = re.compile("\r\n|\r|\n")


def boxed_letters(text: str, letters: Collection[str]) -> tuple[Diagnostic, ...]:
    """Tell which letters stand as boxes, each where the file has it first.

    Parameters
    ----------
    text
        The text of the garment file.
    letters
        The letters. One that does not stand in the file, as it was written by its number, is told
        without a place.
    """
    by_line: dict[int, tuple[Span | None, list[str]]] = {}
    for letter in sorted(letters, key=lambda letter: (text.find(letter), letter)):
        span = _first_place(text, letter)
        _, found = by_line.setdefault(span.line if span else 0, (span, []))
        found.append(letter)
    return tuple(
        Diagnostic(
            slug=RuleSlug("letter-without-shape"),
            severity=Severity.WARNING,
            message=say("check-letter-without-shape", letters=", ".join(map(_named, found))),
            span=span,
            fix=say("check-letter-without-shape-fix"),
        )
        for span, found in by_line.values()
    )


def _first_place(text: str, letter: str) -> Span | None:
    place = text.find(letter)
    if place < 0:
        return None
    *before, line = _LINE_BREAK.split(text[:place])
    column = len(line) + 1
    return Span(len(before) + 1, column, len(before) + 1, column + 1)


def _named(letter: str) -> str:
    return say("check-letter", letter=letter, number=f"U+{ord(letter):04X}")


def damaged_images(garment: Garment, images: Iterable[bytes]) -> tuple[Diagnostic, ...]:
    """Tell where the file names pictures that cannot be printed.

    Parameters
    ----------
    garment
        The garment.
    images
        The bytes of the pictures.
    """
    damaged = set(images)
    return tuple(
        Diagnostic(
            slug=RuleSlug("image"),
            severity=Severity.ERROR,
            message=say("fault-image-broken", file=f"`{picture.file}`"),
            path=path,
            fix=say("fix-image-broken"),
        )
        for path, picture in _pictures(garment)
        if picture.data in damaged
    )


def _pictures(garment: Garment) -> Iterator[tuple[DocPath, Picture]]:
    if garment.mark:
        yield ("mark",), garment.mark
    for plan in garment.plans:
        yield (*plan.path, "picture"), plan.picture
