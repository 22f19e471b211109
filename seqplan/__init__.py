"""seqplan plans, checks and draws the order in which a garment goes together."""

from seqplan.version import VERSION

__version__ = VERSION
__all__ = ["__version__"]
