"""Sentences: where an operation can stand."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {}
