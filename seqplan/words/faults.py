"""Sentences: faults."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "fault-empty-file": "the file is empty",
}
