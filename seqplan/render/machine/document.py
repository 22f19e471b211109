"""JSON as text."""

import json
import re
from collections.abc import Mapping
from typing import Any, Final

# JSON may say any character by its number; those that could be seen as something else always are.
_HIDDEN: Final = re.compile(
    "[\\x7f-\\x9f\\u061c\\u200b-\\u200f\\u2028-\\u202e\\u2060-\\u2069\\ud800-\\udfff\\ufeff]"
)

Data = dict[str, Any]


def to_json(data: Mapping[str, Any]) -> str:
    """Write data as JSON, indented, keys in the order given, other scripts as they are."""
    text = json.dumps(data, indent=2, ensure_ascii=False) + "\n"
    return _HIDDEN.sub(lambda match: f"\\u{ord(match.group()):04x}", text)
