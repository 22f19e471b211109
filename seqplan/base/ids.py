"""Names of things, typed so that a piece is never taken for an operation."""

from typing import NewType

PieceId = NewType("PieceId", str)
"""A piece as the garment file calls it, such as ``back-facing``."""

EntryId = NewType("EntryId", str)
"""One entry under ``operations:`` as its author calls it, such as ``side-seams``."""

OpId = NewType("OpId", str)
"""One operation after recipes are expanded: ``side-seams`` or ``side-seams/press``."""

NotionId = NewType("NotionId", str)
"""A notion: zip, elastic, cord, hook."""

RuleSlug = NewType("RuleSlug", str)
"""The name of a rule, which says the rule: ``press-before-crossing``."""
