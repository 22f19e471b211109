"""Text from files, made so that it hides nothing and turns nothing round where it is shown.

A file may hold marks that turn the direction of everything after them, and the name of a file may
hold anything. Right-to-left text needs no such marks: its letters know their direction, and the
marks that merely stand for a letter, or join letters, are let through.

`visible` is for findings, which speak of single characters; `printable` for whole listings on a
terminal; `straightened` for pages and pictures.
"""

import re
from typing import Final
from unicodedata import category, combining, east_asian_width

_LINE_BREAK: Final = re.compile("\r\n|\r|\n")
_TURNING: Final = re.compile("[\\u202a-\\u202e\\u2066-\\u2069]")
_UNFIT_FOR_TERMINALS: Final = re.compile(
    "[\\x00-\\x09\\x0b-\\x1f\\x7f-\\x9f\\u2028-\\u202e\\u2066-\\u2069\\ud800-\\udfff]"
)
"""What steers a terminal, what breaks or turns its lines, and what has no bytes to be sent."""
_NOT_XML: Final = re.compile(
    "[\\x00-\\x08\\x0b\\x0c\\x0e-\\x1f\\x7f-\\x9f\\ud800-\\udfff\\ufdd0-\\ufdef\\ufffe\\uffff"
    "\\U0010fffe\\U0010ffff]"
)
"""What no page or picture can hold."""
_REPLACEMENT: Final = "\ufffd"


def visible(text: str) -> str:
    """Show hidden characters of a text by their numbers, and bring it into one line.

    >>> visible("a" + chr(0x202E) + "b")
    'a<U+202E>b'
    """
    return shown(_LINE_BREAK.sub(" ", text))


def printable(text: str) -> str:
    r"""Make a text of one or more lines fit for a terminal.

    >>> printable("one\ntwo" + chr(27) + "[31m")
    'one\ntwo<U+001B>[31m'
    """
    return _UNFIT_FOR_TERMINALS.sub(lambda match: _made_visible(match.group()), text)


def straightened(text: str) -> str:
    """Take out what turns a text round, and replace what neither page nor picture can hold.

    >>> straightened("a" + chr(0x202E) + "b" + chr(0))
    'ab�'
    """
    if text.isascii() and text.isprintable():
        return text
    return _NOT_XML.sub(_REPLACEMENT, _TURNING.sub("", text))


def shown(text: str) -> str:
    """Show hidden characters by their numbers, line breaks among them.

    >>> shown("a" + chr(10) + "b")
    'a<U+000A>b'
    """
    return "".join(_made_visible(letter) for letter in text)


def screen_width(text: str) -> int:
    """How many columns a visible text takes on a screen.

    >>> screen_width("naïve"), screen_width("縫う")
    (5, 4)
    """
    return sum(_letter_width(letter) for letter in text)


def _letter_width(letter: str) -> int:
    if combining(letter) or category(letter) in {"Mn", "Me"}:
        return 0
    return 2 if east_asian_width(letter) in {"W", "F"} else 1


def _made_visible(letter: str) -> str:
    if letter == "\t":
        return " "
    if category(letter) in {"Cc", "Cf", "Cs", "Zl", "Zp"}:
        return f"<U+{ord(letter):04X}>"
    return letter
