"""Files made to hurt: each is answered soon, with a place, and never with a traceback."""

import time
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from load.files import file_with

from seqplan.load.document import Loaded, load_text
from seqplan.load.keys import KEYS, Section
from seqplan.render.excerpt import print_diagnostics

_SKIRT = (Path(__file__).parent / "data" / "breakwater-skirt.yaml").read_text("utf-8")


def _check(loaded: Loaded) -> None:
    assert all(item.span is not None for item in loaded.diagnostics)
    assert all(
        item.span.line >= 1 and item.span.column >= 1 for item in loaded.diagnostics if item.span
    )
    is_wrong = any(item.severity.value == "error" for item in loaded.diagnostics)
    assert (loaded.garment is None) == is_wrong
    print_diagnostics(loaded.diagnostics[:20], loaded.name, loaded.text).encode()


_BOMB = "a0: &a0 [x, x, x, x, x, x, x, x, x]\n" + "".join(
    f"a{n}: &a{n} [{', '.join([f'*a{n - 1}'] * 9)}]\n" for n in range(1, 12)
)
_MANY_LIKES = "pieces:\n" + "".join(f"  p{n}: {{like: p{n + 1}}}\n" for n in range(20_000))
_MANY_NAMES = "operations:\n" + "".join(
    f"  e{n}: {{hem: q{n}.r, after: z{n}}}\n" for n in range(15_000)
)

HOSTILE: dict[str, tuple[str | bytes, str]] = {
    "an alias bomb": (_BOMB, "anchor"),
    "ten megabytes": (b"garment: " + b"x" * 10_000_000, "file-too-large"),
    "ten megabytes of text": ("ä" * 5_000_000, "file-too-large"),
    "two million keys": ("".join(f"k{n}: 1\n" for n in range(2_000_000)), "file-too-large"),
    "fifty thousand levels": ("[" * 50_000, "too-deep"),
    "fifty thousand levels of keys": ("".join(" " * n + "a:\n" for n in range(1000)), "too-deep"),
    "a deep list in braces": ("operations: " + "{a: " * 5_000, "too-deep"),
    "too many values": ("operations: [" + "x," * 200_000 + "]", "too-many-values"),
    "nothing but brackets closing": ("]" * 100_000, "unreadable-text"),
    "control characters": ("garment: \x00\x01\x02\x1b[31m\n", "control-character"),
    "a lone surrogate": ("garment: \ud800\n", "control-character"),
    "bytes of every kind": (bytes(range(256)) * 100, "not-utf-8"),
    "pieces like one another": (_MANY_LIKES, "missing-key"),
    "thousands of wrong names": (_MANY_NAMES, "missing-key"),
    "one long line": ("garment: [" + "a, " * 30_000 + "]\n", "missing-key"),
    "a long key": ("k" * 100_000 + ": x\n", "stray-colon"),
    "question marks": ("? " * 10_000, "too-deep"),
    "dashes": ("- " * 10_000, "too-deep"),
    "colons": (": " * 10_000, "uneven-indent"),
    "tabs": ("\t" * 100_000 + "a: b", "tab"),
    "only spaces": (" \n" * 100_000, "empty-file"),
}


@pytest.mark.parametrize("name", HOSTILE)
def test_a_hostile_file_is_refused_soon_and_with_a_place(name: str) -> None:
    data, slug = HOSTILE[name]
    started = time.process_time()
    loaded = load_text(data)
    assert slug in {item.slug for item in loaded.diagnostics}
    _check(loaded)
    assert time.process_time() - started < 8


@settings(max_examples=120, deadline=None)
@given(st.one_of(st.text(max_size=200), st.binary(max_size=200)))
def test_junk_raises_nothing_and_has_places(data: str | bytes) -> None:
    _check(load_text(data))


@settings(max_examples=150, deadline=None)
@given(st.lists(st.text("ab: -[]{}\n\t'\"|>&*!?#,.@/~<\\é\u202e", max_size=6), max_size=60))
def test_junk_made_of_marks_raises_nothing_and_has_places(parts: list[str]) -> None:
    _check(load_text("".join(parts)))


_WHOLE = file_with(operation="x: {sew: front.side, to: back.side, part: 3 from hem, open: look}")


@settings(max_examples=150, deadline=None)
@given(st.data())
def test_a_spoilt_file_raises_nothing_and_has_places(data: st.DataObject) -> None:
    text = data.draw(st.sampled_from([_SKIRT, _WHOLE]))
    for _ in range(data.draw(st.integers(1, 4))):
        start = data.draw(st.integers(0, len(text)))
        end = min(len(text), start + data.draw(st.integers(0, 8)))
        other = data.draw(st.integers(0, len(text)))
        patch = data.draw(
            st.one_of(
                st.text(max_size=4),
                st.sampled_from(
                    ["\n", "\n  ", ": ", "[", "]", "{", "}", ", ", "x", ".", "@left", "|"]
                ),
                st.just(text[other : other + 12]),
            )
        )
        text = text[:start] + patch + text[end:]
    _check(load_text(text))


@settings(max_examples=80, deadline=None)
@given(st.permutations(_WHOLE.splitlines()))
def test_shuffled_lines_raise_nothing_and_have_places(lines: list[str]) -> None:
    _check(load_text("\n".join(lines)))


_VALUES = st.recursive(
    st.sampled_from(
        ["front", "front.side", "zip", "look", "all", "yes", "10 from hem", "", "-", "3"]
    ),
    lambda inner: st.one_of(
        st.lists(inner, max_size=3).map(lambda items: f"[{', '.join(items)}]"),
        st.lists(inner, max_size=2).map(
            lambda items: "{" + ", ".join(f"k{n}: {item}" for n, item in enumerate(items)) + "}"
        ),
    ),
    max_leaves=4,
)
_KEYS = sorted({key.name for key in KEYS if key.section is Section.OPERATION})


@settings(max_examples=200, deadline=None)
@given(st.lists(st.tuples(st.sampled_from(_KEYS), _VALUES), max_size=5))
def test_any_keys_with_any_values_raise_nothing_and_have_places(
    pairs: list[tuple[str, str]],
) -> None:
    line = "x: {" + ", ".join(f"{key}: {value}" for key, value in pairs) + "}"
    _check(load_text(file_with(operation=line)))
