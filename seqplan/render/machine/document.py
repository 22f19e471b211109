"""JSON as text."""

import json
from collections.abc import Mapping
from typing import Any

Data = dict[str, Any]


def to_json(data: Mapping[str, Any]) -> str:
    """Write data as JSON, indented, keys in the order given, other scripts as they are."""
    return json.dumps(data, indent=2, ensure_ascii=False) + "\n"
