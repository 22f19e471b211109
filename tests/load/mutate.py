"""Garment files spoilt at random, but the same way every time: a mutant is made by its number.

Even numbers spoil the text: lines, indentation, single characters. Odd numbers spoil the meaning:
words, keys and entries change places, so that most of them still read as a garment, and a strange
one. Before either, some files lose operations: what is left over is then met by chance as well.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from random import Random
from typing import Any, TypeAlias

import yaml

from seqplan.load.keys import KEYS, Section

GARMENTS = sorted((Path(__file__).parents[2] / "garments").glob("*.yaml"))

_THINNED = 0.7
"""How many mutants lose half of their operations first: what is short is quick to try."""

Value: TypeAlias = "str | list[Any] | Table"
Slot: TypeAlias = "tuple[list[Any], int]"
"""A place in a tree that holds a value: a container, and where in it."""


class Table(list[Any]):
    """A mapping as ``[key, value]`` pairs, so that a key may stand twice."""


@dataclass(frozen=True)
class Mutant:
    """A spoilt file, and the number that makes it again."""

    number: int
    of: str
    text: str


@contextmanager
def named(number: int) -> Iterator[None]:
    """Say of whatever goes wrong inside with which mutant it did."""
    try:
        yield
    except Exception as error:
        error.add_note(f"mutant {number} of {mutant(number).of}")
        raise


def mutant(number: int) -> Mutant:
    """Make one mutant; the number says of which file, and everything that is done to it."""
    rng = Random(number)
    path = GARMENTS[(number // 2) % len(GARMENTS)]
    text = _mutated_text(path, rng) if number % 2 == 0 else _mutated_meaning(path, rng)
    return Mutant(number, path.name, text)


# --- the text ---------------------------------------------------------------------------------


_ODD = (
    "\t", "\x00", "\x1b[31m", "\r", "\x0c", "\u2028", "\u202e", "\u200b", "\ufeff", "\U0001f9f5",
    "é", "e\u0301", "[", "]", "{", "}", ":", ": ", ",", "#", " #", "&a ", "*a", "!x ", "|", ">",
    "'", '"', "\\", "%", "@", "`", "? ", "- ", "---\n", "...\n", "<<", ".", "/", "@left",
    "999999999",
)  # fmt: skip


def _drop_lines(lines: list[str], rng: Random) -> None:
    place = rng.randrange(len(lines))
    del lines[place : place + rng.randint(1, 3)]


def _repeat_line(lines: list[str], rng: Random) -> None:
    lines.insert(rng.randint(0, len(lines)), rng.choice(lines))


def _swap_lines(lines: list[str], rng: Random) -> None:
    one, other = rng.randrange(len(lines)), rng.randrange(len(lines))
    lines[one], lines[other] = lines[other], lines[one]


def _indent_line(lines: list[str], rng: Random) -> None:
    place = rng.randrange(len(lines))
    line = lines[place]
    lines[place] = rng.choice([" " + line, "  " + line, line[1:], line.lstrip(), "\t" + line])


def _flip_character(lines: list[str], rng: Random) -> None:
    place = rng.randrange(len(lines))
    at = rng.randint(0, len(lines[place]))
    line = lines[place]
    lines[place] = line[:at] + chr(rng.randrange(32, 127)) + line[at + 1 :]


def _insert_odd(lines: list[str], rng: Random) -> None:
    place = rng.randrange(len(lines))
    at = rng.randint(0, len(lines[place]))
    lines[place] = lines[place][:at] + rng.choice(_ODD) + lines[place][at:]


def _drop_character(lines: list[str], rng: Random) -> None:
    place = rng.randrange(len(lines))
    at = rng.randint(0, len(lines[place]))
    lines[place] = lines[place][:at] + lines[place][at + rng.randint(1, 4) :]


def _cut_off(lines: list[str], rng: Random) -> None:
    del lines[rng.randint(1, len(lines)) :]
    lines[-1] = lines[-1][: rng.randint(0, len(lines[-1]))]


_TEXT: tuple[Callable[[list[str], Random], None], ...] = (
    _drop_lines,
    _repeat_line,
    _swap_lines,
    _indent_line,
    _flip_character,
    _insert_odd,
    _drop_character,
    _cut_off,
)


def _mutated_text(path: Path, rng: Random) -> str:
    lines = list(_lines(path))
    if rng.random() < _THINNED:
        lines = [line for line in lines if line[:1] not in " #" or rng.random() < 0.5]
    for _ in range(rng.choice((1, 1, 1, 2, 3))):
        rng.choice(_TEXT)(lines, rng)
        lines = lines or [""]
    return "\n".join(lines) + "\n"


@cache
def _lines(path: Path) -> tuple[str, ...]:
    return tuple(path.read_text("utf-8").splitlines())


# --- the meaning ------------------------------------------------------------------------------


@dataclass(frozen=True)
class _Bench:
    """A tree on the bench, with what can be taken from: its words, its names, the known keys."""

    rng: Random
    tree: Table
    words: Sequence[str]

    def slots(self) -> list[Slot]:
        return list(_slots(self.tree))

    def section(self, name: str) -> Table:
        found = next((pair[1] for pair in self.tree if pair[0] == name), None)
        return found if isinstance(found, Table) else Table()

    def names(self, section: str) -> list[str]:
        return [pair[0] for pair in self.section(section)] or ["nothing"]

    def tables(self) -> list[Table]:
        """Every mapping with something in it."""
        inner = (box[place] for box, place in _slots(self.tree))
        return [self.tree, *(value for value in inner if isinstance(value, Table) and value)]

    def entries(self, section: str) -> list[Table]:
        """What stands under the names of a section, as far as it has keys."""
        return [pair[1] for pair in self.section(section) if isinstance(pair[1], Table)]

    def edge(self) -> str:
        """An edge that is there: a piece, one of its edges, now and then a side."""
        pieces = [pair for pair in self.section("pieces") if isinstance(pair[1], Table)]
        if not pieces:
            return "front.side"
        name, keys = self.rng.choice(pieces)
        edges = next((value for key, value in keys if key == "edges"), ["side"])
        edge = self.rng.choice(edges) if edges and isinstance(edges, list) else "side"
        first = str(edge).split("|")[0].strip()
        return f"{name}.{first}" + self.rng.choice(("", "", "", "@left", "@right"))

    def edges(self) -> Value:
        count = self.rng.choice((1, 1, 2, 2, 3))
        return self.edge() if count == 1 else [self.edge() for _ in range(count)]

    def operation(self) -> str:
        name = self.rng.choice(self.names("operations"))
        return name + self.rng.choice(("", "", "", "/press", "/finish", "/turn-up", "/clip"))


def _slots(root: list[Any]) -> Iterator[Slot]:
    """Every place of a tree that holds a value, in the order of the text."""
    for place, item in enumerate(root):
        box, at = (item, 1) if isinstance(root, Table) else (root, place)
        yield box, at
        if isinstance(box[at], list):
            yield from _slots(box[at])


def _swap_words(bench: _Bench) -> None:
    found = [(box, at) for box, at in bench.slots() if isinstance(box[at], str)]
    (one, here), (other, there) = bench.rng.choice(found), bench.rng.choice(found)
    one[here], other[there] = other[there], one[here]


def _borrow_word(bench: _Bench) -> None:
    box, at = bench.rng.choice(bench.slots())
    box[at] = bench.rng.choice(bench.words)


def _rename(bench: _Bench) -> None:
    """Change the piece, the edge or the side of one reference."""
    found = [(b, a) for b, a in bench.slots() if isinstance(b[a], str) and "." in b[a]]
    if found:
        box, at = bench.rng.choice(found)
        box[at] = bench.edge()


def _rename_definition(bench: _Bench) -> None:
    table = bench.rng.choice(bench.tables())
    pair = bench.rng.choice(table)
    other = bench.rng.choice(bench.rng.choice(bench.tables()))
    pair[0] = bench.rng.choice((other[0], pair[0].upper(), pair[0] + "x", pair[0][:1]))


def _swap_key(bench: _Bench) -> None:
    entries = [entry for entry in bench.entries("operations") if entry]
    if entries:
        bench.rng.choice(bench.rng.choice(entries))[0] = bench.rng.choice(_OPERATION_KEYS)


def _swap_values(bench: _Bench) -> None:
    tables = bench.tables()
    one = bench.rng.choice(bench.rng.choice(tables))
    other = bench.rng.choice(bench.rng.choice(tables))
    if _holds(one[1], other) or _holds(other[1], one):
        return
    one[1], other[1] = other[1], one[1]


def _holds(value: Any, pair: Any) -> bool:
    """Whether a pair lies inside a value, so that the two cannot change places."""
    return isinstance(value, list) and any(
        item is pair or _holds(item[1] if isinstance(value, Table) else item, pair)
        for item in value
    )


def _shuffle(bench: _Bench) -> None:
    table = bench.section("operations") or bench.tree
    bench.rng.shuffle(table)


def _move(bench: _Bench) -> None:
    table = bench.section("operations") or bench.tree
    pair = table.pop(bench.rng.randrange(len(table)))
    table.insert(bench.rng.randint(0, len(table)), pair)


def _drop(bench: _Bench) -> None:
    table = bench.rng.choice(bench.tables())
    table.pop(bench.rng.randrange(len(table)))


def _repeat(bench: _Bench) -> None:
    table = bench.rng.choice(bench.tables())
    twin = _copied(bench.rng.choice(table))
    twin[0] = bench.rng.choice((twin[0], twin[0] + "-again"))
    table.insert(bench.rng.randint(0, len(table)), twin)


def _change_list(bench: _Bench) -> None:
    lists = [
        box[at] for box, at in bench.slots() if isinstance(box[at], list) and box[at]
        and not isinstance(box[at], Table)
    ]  # fmt: skip
    if not lists:
        return
    one, other = bench.rng.choice(lists), bench.rng.choice(lists)
    change = bench.rng.randrange(5)
    if change == 0:
        one.reverse()
    elif change == 1:
        one[:] = one[: bench.rng.randint(0, len(one))]
    elif change == 2:
        one.append(bench.rng.choice(one))
    elif change == 3:
        one[:] = _copied(other)
    else:
        bench.rng.shuffle(one)


def _nest(bench: _Bench) -> None:
    box, at = bench.rng.choice(bench.slots())
    inner = box[at]
    box[at] = bench.rng.choice(([inner], [inner, inner], Table([["sew", inner]]), [[inner]]))


def _replace(bench: _Bench) -> None:
    box, at = bench.rng.choice(bench.slots())
    box[at] = bench.rng.choice(
        ("", [], Table(), ["a", "b"], Table([["a", "b"]]), "0", "-1", "x" * 99)
    )


def _add_key(bench: _Bench) -> None:
    """Give an operation another key, with a value that could stand there."""
    entries = bench.entries("operations")
    if not entries:
        return
    key, make = bench.rng.choice(_PLAUSIBLE)
    entry = bench.rng.choice(entries)
    entry[:] = [pair for pair in entry if pair[0] != key]
    entry.append([key, make(bench)])


def _change_piece(bench: _Bench) -> None:
    """Cut a piece otherwise, give it another ring, another layer or another side."""
    pieces = bench.entries("pieces")
    if not pieces:
        return
    key, make = bench.rng.choice(_OF_PIECES)
    piece = bench.rng.choice(pieces)
    gone = {key, "edges"} if key == "like" else {key}
    piece[:] = [pair for pair in piece if pair[0] not in gone]
    piece.append([key, make(bench)])


def _new_entry(bench: _Bench) -> None:
    """Add an operation that could be meant."""
    operations = bench.section("operations")
    verb, make = bench.rng.choice(_VERBS)
    entry = Table([[verb, make(bench)]])
    if verb in {"sew", "baste"} and bench.rng.random() < 0.7:
        entry.append(["to", bench.edges()])
    if verb == "insert":
        entry.append(["in", bench.rng.choice((bench.operation(), bench.edges()))])
    if verb == "tack":
        entry.append(["to", bench.operation()])
    operations.insert(
        bench.rng.randint(0, len(operations)), [f"new{bench.rng.randrange(3)}", entry]
    )


def _graft(bench: _Bench) -> None:
    """Put what another garment has into the same file; names of both may clash."""
    other = _copied(_tree(bench.rng.choice(GARMENTS)))
    for section in ("fabrics", "pieces", "notions", "operations"):
        ours = bench.section(section)
        known = {pair[0] for pair in ours}
        theirs = next((pair[1] for pair in other if pair[0] == section), Table())
        ours += [pair for pair in theirs if pair[0] not in known or bench.rng.random() < 0.02]


def _sewn_edges(bench: _Bench) -> None:
    """Let a join be of other edges than it was."""
    found = [
        pair for entry in bench.entries("operations") for pair in entry
        if pair[0] in {"sew", "to", "hem", "casing", "finish", "in", "at"}
    ]  # fmt: skip
    if found:
        bench.rng.choice(found)[1] = bench.edges()


_PLAUSIBLE: tuple[tuple[str, Callable[[_Bench], Value]], ...] = (
    ("after", lambda b: b.operation()),
    ("after", lambda b: [b.operation(), b.operation()]),
    ("open", lambda b: b.rng.choice(b.names("operations"))),
    ("to", lambda b: b.edges()),
    ("to", lambda b: b.rng.choice(b.names("pieces"))),
    ("as", lambda b: b.rng.choice(("plain", "pressed open", "finished together", "French"))),
    ("as", lambda b: "faced"),
    ("in one", lambda b: b.rng.choice(("yes", "no"))),
    ("flat", lambda b: b.rng.choice(("yes", "no"))),
    ("method", lambda b: b.rng.choice(("in the round", "flat", "invisible", "centred"))),
    ("part", lambda b: f"{b.rng.randint(1, 99)} from {b.edge().split('.')[1]}"),
    ("stop", lambda b: f"{b.rng.randint(1, 99)} before {b.edge().split('.')[1]}"),
    ("gap", lambda b: str(b.rng.randint(1, 9))),
    ("press", lambda b: b.rng.choice(("to back", "open", "to left", "towards the sea"))),
    ("turned", lambda b: b.rng.choice(("once", "twice"))),
    ("by", lambda b: b.rng.choice(("hand", "machine"))),
    ("without", lambda b: [b.rng.choice(("press", "clip", "finish", "trim", "turn-up"))]),
    ("unit", lambda b: b.rng.choice((*b.names("pieces"), "all"))),
    ("minutes", lambda b: str(b.rng.choice((0, 1, 7, 10**6)))),
    ("station", lambda b: b.rng.choice(("iron", "hand", "table", "overlock", "lockstitch"))),
    ("makes", lambda b: b.rng.choice(("part", "other"))),
    ("uses", lambda b: b.rng.choice(("part", "other"))),
    ("say", lambda b: b.rng.choice(b.words)),
)  # fmt: skip

_OF_PIECES: tuple[tuple[str, Callable[[_Bench], Value]], ...] = (
    ("cut", lambda b: b.rng.choice(("fold", "pair", "1", "2", "3", "4"))),
    ("like", lambda b: b.rng.choice(b.names("pieces"))),
    ("layer", lambda b: b.rng.choice(("shell", "facing", "lining", "interlining"))),
    ("worn", lambda b: b.rng.choice(("front", "back"))),
    ("selvage", lambda b: b.edge().split(".")[1]),
    ("edges", lambda b: [b.edge().split(".")[1] for _ in range(b.rng.randint(1, 5))]),
    ("edges", lambda b: [b.edge().split("@")[0].split(".")[1] + " | " + w for w in "ab"]),
)

_VERBS: tuple[tuple[str, Callable[[_Bench], Value]], ...] = (
    *((verb, lambda b: b.edges()) for verb in (
        "sew", "sew", "baste", "hem", "casing", "finish", "press", "topstitch", "staystitch",
        "dart", "pleat", "gather", "trim", "clip", "understitch", "tack", "remove basting",
    )),
    *((verb, lambda b: b.rng.choice((*b.names("pieces"), "all"))) for verb in (
        "fuse", "turn", "fit", "inspect",
    )),
    ("insert", lambda b: b.rng.choice(b.names("notions"))),
    ("attach", lambda b: b.rng.choice(b.names("notions"))),
    ("do", lambda b: b.rng.choice(b.words)),
)  # fmt: skip

_MEANING: tuple[Callable[[_Bench], None], ...] = (
    _swap_words,
    _borrow_word,
    _rename,
    _rename_definition,
    _swap_key,
    _swap_values,
    _shuffle,
    _move,
    _drop,
    _repeat,
    _change_list,
    _nest,
    _replace,
)
_STRANGE: tuple[Callable[[_Bench], None], ...] = (
    _add_key,
    _change_piece,
    _new_entry,
    _sewn_edges,
    _rename,
    _move,
    _shuffle,
    _graft,
)
"""Changes after which a file mostly still reads, and what it says is strange."""

_OPERATION_KEYS = sorted({key.name for key in KEYS if key.section is Section.OPERATION})


def _mutated_meaning(path: Path, rng: Random) -> str:
    bench = _Bench(rng, _copied(_tree(path)), _words())
    operations = bench.section("operations")
    if rng.random() < _THINNED:
        operations[:] = [pair for pair in operations if rng.random() < 0.5]
    changes = _MEANING if rng.random() < 0.4 else _STRANGE
    for _ in range(rng.choice((1, 1, 2, 3, 8))):
        rng.choice(changes)(bench)
    return _written(bench.tree)


@cache
def _tree(path: Path) -> Table:
    tree = _plain(yaml.compose(path.read_text("utf-8"), Loader=yaml.SafeLoader))
    assert isinstance(tree, Table)
    return tree


@cache
def _words() -> tuple[str, ...]:
    """Every word and every key of all the files, and every key and choice there is."""
    words = {word for path in GARMENTS for word in _strings(_tree(path))}
    words |= {key.name for key in KEYS} | {word for key in KEYS for word in key.choices}
    return (
        *sorted(words),
        "",
        "~",
        "1e9",
        "1/0",
        "5/8 in",
        "-3 cm",
        "front.",
        ".side",
        "@left",
        "/",
    )


def _strings(value: Value) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, Table):
        for key, inner in value:
            yield key
            yield from _strings(inner)
    else:
        for inner in value:
            yield from _strings(inner)


def _copied(value: Any) -> Any:
    """Copy a tree; much quicker than the general way, which takes a tenth of all the time."""
    if isinstance(value, str):
        return value
    return type(value)(_copied(item) for item in value)


def _plain(node: yaml.Node | None) -> Value:
    if isinstance(node, yaml.MappingNode):
        return Table([key.value, _plain(value)] for key, value in node.value)
    if isinstance(node, yaml.SequenceNode):
        return [_plain(item) for item in node.value]
    assert isinstance(node, yaml.ScalarNode)
    return str(node.value)


def _written(tree: Table) -> str:
    """Write a tree as people do: sections as blocks, what stands in them in braces."""
    lines: list[str] = []
    for key, value in tree:
        if isinstance(value, Table) and value:
            lines.append(f"{_quoted(key)}:")
            lines += [f"  {_quoted(name)}: {_flow(inner)}" for name, inner in value]
        else:
            lines.append(f"{_quoted(key)}: {_flow(value)}")
    return "\n".join(lines) + "\n"


def _flow(value: Value) -> str:
    if isinstance(value, str):
        return _quoted(value)
    if isinstance(value, Table):
        return "{" + ", ".join(f"{_quoted(key)}: {_flow(inner)}" for key, inner in value) + "}"
    return "[" + ", ".join(_flow(item) for item in value) + "]"


def _quoted(text: str) -> str:
    if text.replace(" ", "").replace("-", "").isalnum() and not text.startswith(("-", " ")):
        return text
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n") + '"'
