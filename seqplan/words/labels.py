"""Sentences: labels."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {}
