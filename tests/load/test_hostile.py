"""Files made to hurt: each is answered soon, with a place, and never with a traceback."""

import time
import tracemalloc
from collections.abc import Callable
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

_SOUND = file_with(operation="hem: {hem: front.hem, depth: 3}")
_NINES = "9" * 1_900_000

HOSTILE: dict[str, tuple[str | bytes, str]] = {
    "an alias bomb": (_BOMB, "anchor"),
    "ten megabytes": (b"garment: " + b"x" * 10_000_000, "file-too-large"),
    "ten megabytes of text": ("ä" * 5_000_000, "file-too-large"),
    "two million operations": (b"operations:\n" + b"  a: {do: x}\n" * 2_000_000, "file-too-large"),
    "twenty thousand operations": (
        file_with() + "".join(f"  a{n}: {{do: x}}\n" for n in range(20_000)),
        "too-many-names",
    ),
    "ten thousand pieces like one another": (
        "garment: x\npieces:\n  p0: {edges: [a, b]}\n"
        + "".join(f"  p{n + 1}: {{like: p{n}}}\n" for n in range(10_000)),
        "too-many-names",
    ),
    "ten thousand operations one after the other": (
        file_with() + "".join(f"  a{n}: {{do: x, after: a{n + 1}}}\n" for n in range(10_000)),
        "too-many-names",
    ),
    "a run of forty thousand edges": (
        file_with(operation="x: {hem: [" + "front.hem, " * 40_000 + "front.hem]}"),
        "more-findings",
    ),
    "ten thousand keys that are one": ("garment: x\n" * 10_000, "more-findings"),
    "ten thousand tags": ("- !x y\n" * 10_000, "more-findings"),
    "a length of a million digits": (_SOUND.replace(": 3}", f": {_NINES}}}"), "unreadable-length"),
    "a fraction of a million digits": (
        _SOUND.replace(": 3}", f": 1/{_NINES}}}"),
        "unreadable-length",
    ),
    "a power of ten": (_SOUND.replace(": 3}", ": 1e999999999}"), "unreadable-length"),
    "minutes of a million digits": (
        _SOUND.replace("depth: 3", f"minutes: {_NINES}"),
        "unreadable-number",
    ),
    "copies of a million digits": (_SOUND.replace("cut: 2", f"cut: {_NINES}"), "unreadable-cut"),
    "a part of a million digits": (
        file_with(operation=f"x: {{sew: back.centre, part: {_NINES} from hem}}"),
        "unreadable-part",
    ),
    "a name of a hundred thousand letters": (
        file_with(operation=f"x: {{hem: {'n' * 100_000}.{'e' * 100_000}}}"),
        "unknown-piece",
    ),
    "UTF-16 with a byte order mark": (_SOUND.encode("utf-16"), "not-utf-8"),
    "UTF-16 the other way round": (b"\xfe\xff" + _SOUND.encode("utf-16-be"), "not-utf-8"),
    "UTF-16 without a byte order mark": (_SOUND.encode("utf-16-le"), "control-character"),
    "UTF-32": (_SOUND.encode("utf-32"), "not-utf-8"),
    "Latin letters of one byte": (
        _SOUND.replace("Pier", "caf\xe9").encode("latin-1"),
        "not-utf-8",
    ),
    "half a letter of two": (_SOUND.encode().replace(b"Pier", b"\xed\xa0\x80"), "not-utf-8"),
    "half a letter of two, escaped": (_SOUND.replace("Pier", '"\\ud800'), "unknown-escape"),
    "a form feed": (_SOUND.replace("pieces", "\x0cpieces"), "control-character"),
    "a nought in quotes": (_SOUND.replace("Pier apron", '"Pier\\0"'), "control-character"),
    "lines that end as on large machines": (_SOUND.replace("\n", "\x85"), "control-character"),
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
def test_a_hostile_file_is_refused_soon_with_a_place_and_a_hint(name: str) -> None:
    data, slug = HOSTILE[name]
    started = time.process_time()
    loaded = load_text(data)
    assert slug in {item.slug for item in loaded.diagnostics}
    assert all(item.fix for item in loaded.diagnostics)
    _check(loaded)
    print_diagnostics(loaded.diagnostics, loaded.name, loaded.text)
    assert time.process_time() - started < 8


@pytest.mark.parametrize(
    ("name", "limit"),
    [
        ("ten megabytes", "2 MB"),
        ("two million operations", "2 MB"),
        ("twenty thousand operations", "1000 names under `operations`, found 2000"),
        ("ten thousand pieces like one another", "1000 names under `pieces`, found 10001"),
        ("too many values", "100000 values"),
        ("fifty thousand levels", "50 levels"),
        ("ten thousand tags", "1000 findings"),
    ],
)
def test_what_goes_past_a_limit_is_told_the_limit(name: str, limit: str) -> None:
    assert any(limit in item.message for item in load_text(HOSTILE[name][0]).diagnostics)


@pytest.mark.parametrize("name", ["ten megabytes", "a deep list in braces", "an alias bomb"])
def test_a_hostile_file_takes_little_room(name: str) -> None:
    data = HOSTILE[name][0]
    tracemalloc.start()
    try:
        load_text(data)
        most = tracemalloc.get_traced_memory()[1]
    finally:
        tracemalloc.stop()
    assert most < 200_000_000


@pytest.mark.parametrize(
    "spoil",
    [
        lambda text: text.replace("\n", "\r\n"),
        lambda text: text.replace("\n", "\r"),
        lambda text: "\ufeff" + text,
        lambda text: text.rstrip("\n"),
        lambda text: text + "...\n",
    ],
    ids=["carriage returns and line feeds", "carriage returns", "mark", "no last line", "dots"],
)
def test_however_lines_end_the_garment_is_the_same(spoil: Callable[[str], str]) -> None:
    assert load_text(spoil(_SOUND).encode()).garment == load_text(_SOUND).garment is not None


def test_a_right_to_left_garment_is_read_as_any_other() -> None:
    loaded = load_text(
        "garment: \u05de\u05db\u05e0\u05e1\n"
        "pieces:\n  \u05d2\u05d1: {cut: pair, edges: [\u05e6\u05d3, \u05e9\u05d5\u05dc]}\n"
        "operations:\n  \u05ea\u05e4\u05e8: {hem: \u05d2\u05d1.\u05e9\u05d5\u05dc, depth: 2}\n"
    )
    assert loaded.diagnostics == ()
    assert loaded.garment is not None


def test_names_that_differ_only_in_how_an_accent_is_stored_are_one_name_twice() -> None:
    text = file_with(operation="\u00e9t\u00e9: {do: x}\n  e\u0301te\u0301: {do: y}")
    (found,) = load_text(text).diagnostics
    assert found.slug == "duplicate-key"
    assert found.span is not None
    assert found.notes[0].span is not None
    assert found.span.line == found.notes[0].span.line + 1


def test_a_name_is_found_however_its_accents_are_stored() -> None:
    text = file_with(operation="\u00e9t\u00e9: {do: x}\n  b: {do: y, after: e\u0301te\u0301}")
    assert load_text(text).diagnostics == ()


@pytest.mark.parametrize("name", ["Look", "LOOK", "lo\u00f6k", "\uff4cook"])
def test_names_that_people_would_mix_up_are_a_warning_with_both_places(name: str) -> None:
    loaded = load_text(file_with(operation=f"{name}: {{do: x}}"))
    (found,) = loaded.diagnostics
    assert (found.slug, found.severity.value) == ("look-alike-names", "warning")
    assert found.fix is not None
    assert found.notes[0].span is not None
    assert loaded.garment is not None


def test_an_error_after_a_thousand_warnings_is_still_told() -> None:
    names = "".join(f"  a{n}: {{do: x, when: [y]}}\n" for n in range(10))
    warnings = "  b: {do: x, uses: [" + "c, " * 2000 + "c]}\n"
    loaded = load_text(
        file_with() + "  m: {do: x, makes: c}\n" + warnings + names + "  z: {do: [x]}"
    )
    assert loaded.garment is None
    assert "error" in {item.severity.value for item in loaded.diagnostics}


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
