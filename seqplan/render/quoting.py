"""Any text, written so that the graph language takes it for text and for nothing else.

Two places take text: strings in quotes, where a backslash and an ampersand mean something, and
labels in angle brackets, which are read like XML. What XML has no way to write is shown as the
replacement character.
"""

import re
from typing import Final

from seqplan.base.visible import straightened

_BLANK: Final = re.compile("[ \\t\\n\\r\\u2028\\u2029]+")
JOINER: Final = "\u2060"
"""Invisible; after a backslash it keeps the backslash from speaking for the letter that follows."""
_BACKSLASH: Final = "\\" + JOINER
_READ_TWICE: Final = 4 * "\\" + JOINER
"""Backslashes of a tooltip are read twice, and each time two of them make one."""


def clean(text: str) -> str:
    r"""Bring a text into one line, with nothing in it that cannot be shown.

    >>> clean("one\ntwo\x00")
    'one two�'
    """
    return straightened(_BLANK.sub(" ", text))


def quote(text: str) -> str:
    r"""Write a text of one or more lines, other than a label, as a string in quotes.

    >>> quote('a "b" & c')
    '"a &quot;b&quot; &amp; c"'
    """
    lines = (markup(line).replace(_BACKSLASH, _READ_TWICE) for line in text.split("\n"))
    return '"' + "\\n".join(lines) + '"'


def name(text: str) -> str:
    r"""Write a name that nobody reads as a string in quotes: letters, digits and ``-_/`` stay."""
    return '"' + re.sub(r"[^\w/-]", lambda m: f".{ord(m[0]):x}.", text) + '"'


def markup(text: str) -> str:
    r"""Write a text so that it can stand in a label in angle brackets.

    >>> markup("<b> & \\"c\\"")
    '&lt;b&gt; &amp; &quot;c&quot;'
    """
    return (
        clean(text)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace('"', "&quot;")
        .replace("\\", _BACKSLASH)
    )
