"""The version, apart from everything else so that asking for it costs nothing."""

VERSION = "0.1.0"
