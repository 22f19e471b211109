"""Sentences: what to undo when something was forgotten, and how to go on."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "rescue-done-already": "`{before}` is done already and stays.",
}
