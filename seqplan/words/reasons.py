"""Sentences: reasons."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {}
