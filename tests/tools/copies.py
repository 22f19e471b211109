"""A garment several times over in one file: none of them may change what holds for another."""

from collections.abc import Container
from dataclasses import fields, is_dataclass, replace
from typing import Any

from seqplan.model.garment import Garment

KEPT = {"without", "fabric", "fabrics", "own_seam", "path"}
"""Fields that name no piece, entry or notion."""


def copies(garment: Garment, count: int) -> Garment:
    """A garment several times over in one file, each copy with names of its own."""
    names = {*garment.piece, *garment.entry, *garment.notion}
    made = [renamed(garment, names, f"-{number}") for number in range(count)]
    return replace(
        garment,
        pieces=tuple(piece for each in made for piece in each.pieces),
        notions=tuple(notion for each in made for notion in each.notions),
        entries=tuple(entry for each in made for entry in each.entries),
    )


def renamed(garment: Garment, names: Container[str], suffix: str) -> Garment:
    """A garment in which these names bear a suffix, wherever they stand."""

    def rename(value: Any) -> Any:
        if isinstance(value, str):
            return f"{value}{suffix}" if value in names else value
        if isinstance(value, tuple):
            if not hasattr(value, "_fields"):
                return tuple(map(rename, value))
            names_too = {f: rename(v) for f, v in value._asdict().items() if f not in KEPT}
            return value._replace(**names_too)
        if is_dataclass(value) and not isinstance(value, type):
            held = {f.name: getattr(value, f.name) for f in fields(value)}
            return replace(value, **{f: rename(v) for f, v in held.items() if f not in KEPT})
        return value

    return replace(
        garment,
        pieces=rename(garment.pieces),
        notions=rename(garment.notions),
        entries=rename(garment.entries),
    )


def renamed_id(id_: str, names: Container[str], suffix: str) -> str:
    """The name of an operation of a copy; some parts are called after a piece."""
    entry, slash, part = id_.partition("/")
    return f"{entry}{suffix}{slash}{part}{suffix if part in names else ''}"
