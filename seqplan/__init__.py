"""seqplan plans, checks and draws the order in which a garment goes together."""

from seqplan.version import VERSION as __version__

__all__ = ["__version__"]
