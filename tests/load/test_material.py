"""Amounts of cloth, terms, the mark and lay plans: what is read, and every fault, one by one."""

import re
import struct
import zlib

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from load.files import MARK, file_with, split_mark

from seqplan.base.diagnostic import Severity
from seqplan.base.measure import cloth_amount, parse_length
from seqplan.load.document import load_file, load_text
from seqplan.load.dump import dump
from seqplan.load.images import PIXEL_LIMIT, SIZE_LIMIT, ImageFaultError, media_of
from seqplan.model.garment import Amount
from seqplan.words import material

_SIZES = "sizes: [S, M]"


def cloth(amounts: str, top: str = "") -> str:
    return file_with(top=top, fabric=f"net: {{kind: knit, amounts: {amounts}}}")


def svg(inside: str = "", *, top: str = "", head: str = "") -> bytes:
    start = f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"{head}>'
    return f"{top}{start}{inside}</svg>".encode()


def png(wide: int, high: int) -> bytes:
    """A black picture in one colour."""
    return blocks(
        (b"IHDR", struct.pack(">IIBBBBB", wide, high, 1, 0, 0, 0, 0)),
        (b"IDAT", zlib.compress((b"\0" * (1 + (wide + 7) // 8)) * high)),
        (b"IEND", b""),
    )


def jpeg(wide: int, high: int) -> bytes:
    """The parts of a JPEG without its dots, a comment before the frame."""
    comment = b"\xff\xfe\0\x06note"
    frame = b"\xff\xc2\0\x0b\x08" + struct.pack(">HH", high, wide) + b"\x01\x01\x11\0"
    tables = b"\xff\xdb\0\x02" + b"\xff\xc4\0\x02"
    scan = b"\xff\xda\0\x08\x01\x01\0\0\x3f\0" + b"\x55" * 9
    return b"\xff\xd8" + comment + frame + tables + scan + b"\xff\xd9"


def blocks(*parts: tuple[bytes, bytes]) -> bytes:
    """A PNG of these blocks."""
    written = (
        struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))
        for kind, data in parts
    )
    return b"\x89PNG\r\n\x1a\n" + b"".join(written)


def interlaced(colour: int = 2, depth: int = 8) -> bytes:
    """A black PNG of 3 by 5 dots that comes in passes."""
    channels = {0: 1, 2: 3, 3: 1, 4: 2, 6: 4}[colour]
    passes = ((0, 0, 8, 8), (4, 0, 8, 8), (0, 4, 4, 8), (2, 0, 4, 4), (0, 2, 2, 4), (1, 0, 2, 2),
              (0, 1, 1, 2))  # fmt: skip
    rows = b""
    for left, top, across, down in passes:
        columns, lines = len(range(left, 3, across)), len(range(top, 5, down))
        rows += (b"\0" * (1 + (columns * channels * depth + 7) // 8)) * lines * bool(columns)
    head = struct.pack(">IIBBBBB", 3, 5, depth, colour, 0, 0, 1)
    palette = [(b"PLTE", b"\0" * 6)] if colour == 3 else []
    return blocks((b"IHDR", head), *palette, (b"IDAT", zlib.compress(rows)), (b"IEND", b""))


def bomb(deep: int) -> bytes:
    """A drawing in which every part shows the one before ten times."""
    parts = '<rect id="p0" width="1"/>' + "".join(
        f'<g id="p{n}">' + f'<use href="#p{n - 1}"/>' * 10 + "</g>" for n in range(1, deep)
    )
    return svg(f'<defs>{parts}</defs><use href="#p{deep - 1}"/>')


HEAD = (b"IHDR", struct.pack(">IIBBBBB", 4, 4, 8, 2, 0, 0, 0))
ROWS = (b"\0" + b"\x30" * 12) * 4
END = (b"IEND", b"")


ERRORS = (
    ("wrong-type", cloth("¶1.2 m")),
    ("wrong-type", cloth("¶[1.2 m]")),
    ("wrong-type", cloth("¶{}")),
    ("unreadable-width", cloth("{¶wide: 1.2 m}")),
    ("unreadable-width", cloth("{¶S: 1.2 m, 150: {S: 1.2 m, M: 1.3 m}}", _SIZES)),
    ("odd-width", cloth("{¶1.5: 1.2 m}")),
    ("odd-width", cloth("{¶1500: 1.2 m}")),
    ("width-twice", cloth("{150: 1.2 m, ¶150 cm: 1.3 m}")),
    ("duplicate-key", cloth("{150: 1.2 m, ¶150: 1.3 m}")),
    ("amount-without-unit", cloth("{150: ¶1.2}")),
    ("amount-without-unit", cloth("{150: ¶1 3/8}")),
    ("amount-without-unit", cloth("{150: {S: 1.2 m, M: ¶1.3}}", _SIZES)),
    ("unreadable-length", cloth("{150: ¶0 m}")),
    ("unreadable-length", cloth("{150: ¶much}")),
    ("unreadable-length", cloth("{150: ¶{}}")),
    ("unreadable-length", cloth("{150: ¶[1 m]}")),
    ("unknown-size", cloth("{150: {¶XL: 1.2 m, S: 1.2 m, M: 1 m}}", _SIZES)),
    ("unknown-size", cloth("{150: {¶S: 1.2 m}}")),
    ("size-missing", cloth("{150: ¶{S: 1.2 m}}", _SIZES)),
    ("wrong-type", file_with(top="terms: ¶{a: b}")),
    ("empty-list", file_with(top="terms: ¶[]")),
    ("empty-value", file_with(top="date:¶\n")),
    ("wrong-type", file_with(top="plans: ¶lay.svg")),
    ("wrong-type", file_with(top="plans: [¶{fabrik: canvas}]")),
    ("image-unreadable", file_with(top="mark: ¶mark.svg")),
    ("image-unreadable", file_with(top="plans: [{picture: ¶lay.svg, fabric: canvas}]")),
    ("missing-key", file_with(top="plans: [¶{fabric: canvas, width: 90}]")),
)

# How it is called in the sentence, and the file.
PICTURES = (
    ("large", b"\xff\xd8\xff" + b"\0" * SIZE_LIMIT),
    ("large", svg(f"<!--{'x' * SIZE_LIMIT}-->")),
    ("kind", b""),
    ("kind", b"GIF89a"),
    ("kind", b"%PDF-1.7 <<"),
    ("kind", b"<html><body/></html>"),
    ("kind", b"<svg/>"),
    ("kind", "<svg/>".encode("utf-16")),
    ("broken", b"\x89PNG\r\n\x1a\n"),
    ("broken", png(0, 4)),
    ("broken", b"\xff\xd8\xff\xe0\0\x02"),
    ("broken", b"\xff\xd8" + b"\xff\xfe\0\0" * 9),
    ("broken", jpeg(0, 0)),
    ("broken", jpeg(30, 20)[:-12]),
    ("broken", jpeg(30, 20).replace(b"\xff\xc4", b"\xff\xfe")),
    ("broken", png(30, 20)[:-14]),
    ("broken", png(30, 20).replace(b"IDAT", b"IDAX")),
    ("broken", blocks(HEAD, END)),
    ("broken", blocks(HEAD, (b"IDAT", zlib.compress(ROWS[:-1])), END)),
    ("broken", blocks(HEAD, (b"IDAT", zlib.compress(b"\x09" + ROWS[1:])), END)),
    ("broken", blocks(HEAD, (b"IDAT", b"no stream at all"), END)),
    ("broken", blocks((b"IHDR", HEAD[1][:8] + b"\x07\x02\0\0\0"), END)),
    ("broken", svg(head=' width="0" height="9"')),
    ("broken", svg(head=' width="9cm" height="-1cm"')),
    ("repeats", svg('<g id="a"><use href="#a"/></g>')),
    ("repeats", svg('<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>')),
    ("repeats", svg('<pattern id="a"><rect fill="url(#a)"/></pattern>')),
    ("repeats", bomb(9)),
    ("dots", png(40_000, 40_000)[:60]),
    ("dots", jpeg(60_000, 60_000)),
    ("xml", svg("<g>")),
    ("xml", svg("<g>" * 300 + "</g>" * 300)),
    ("xml", b'<?xml version="1.0" encoding="klingon"?><svg/>'),
    ("entity", svg(top='<!DOCTYPE svg [<!ENTITY a "aaaa">]>')),
    ("script", svg("<script>alert(1)</script>")),
    ("script", svg('<s:script xmlns:s="http://www.w3.org/2000/svg"/>')),
    ("event", svg('<g onclick="go()"/>')),
    ("event", svg(head=' OnLoad="go()"')),
    ("moving", svg('<animate attributeName="x"/>')),
    ("moving", svg('<a><set attributeName="href" to="javascript:go()"/></a>')),
    ("document", svg("<foreignObject/>")),
    ("document", svg('<p xmlns="http://www.w3.org/1999/xhtml"/>')),
    ("link", svg('<a href="https://example.org/"/>')),
    ("link", svg('<a href="javascript:go()"/>')),
    ("link", svg('<image href="photo.png"/>')),
    ("link", svg('<image href="data:image/svg+xml,x"/>')),
    ("link", svg('<use x:href="other.svg#a" xmlns:x="http://www.w3.org/1999/xlink"/>')),
    ("link", svg('<rect fill="url(other.svg#a)"/>')),
    ("link", svg("<rect style=\"fill: URL( '//example.org' )\"/>")),
    ("link", svg('<rect style="fill: u\\72l(//example.org)"/>')),
    ("link", svg("<style>@import 'x.css';</style>")),
    ("link", svg("<style>a{b:<![CDATA[url]]>(x.png)}</style>")),
    ("link", svg("<style>a{background:image-set('x.png' 1x)}</style>")),
    ("link", svg(top='<?xml-stylesheet href="x.css"?>')),
    ("base", svg('<use href="#a"/>', head=' xml:base="https://example.org/a.svg"')),
)

SOUND = (
    ("image/svg+xml", svg('<rect id="a" width="9"/><use href="#a"/>')),
    ("image/svg+xml", b"\xef\xbb\xbf" + svg("<title>on the quay</title>")),
    ("image/svg+xml", svg(top='<?xml version="1.0"?>\n<!DOCTYPE svg PUBLIC "-//W3C" "svg.dtd">')),
    ("image/svg+xml", svg('<style>a{fill:url(#b)}</style><rect fill="url(#b)"/>')),
    ("image/svg+xml", svg('<image href="data:image/png;base64,iVBOR"/>')),
    ("image/svg+xml", svg('<metadata><w xmlns="urn:w" resource="http://example.org"/></metadata>')),
    ("image/svg+xml", svg('<g id="top"><a href="#top"/></g><rect width="0"/>')),
    ("image/svg+xml", bomb(5)),
    ("image/png", png(30, 20)),
    ("image/png", blocks(HEAD, (b"IDAT", zlib.compress(ROWS)), END)),
    ("image/png", blocks(HEAD, *((b"IDAT", bytes([b])) for b in zlib.compress(ROWS)), END)),
    *(("image/png", interlaced(colour)) for colour in (0, 2, 3, 4, 6)),
    ("image/png", interlaced(0, 1)),
    ("image/jpeg", jpeg(30, 20)),
)


def pattern_of(key: str) -> str:
    """What a sentence looks like, whatever stands in its places."""
    return re.sub(r"\\{\w+\\}", ".+", re.escape(material.SENTENCES[key].replace("}}", "}")))


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    return tmp_path_factory.mktemp("pictures")


def marked(folder, name: str, data: bytes | None):
    if data is not None:
        (folder / "mark.svg").write_bytes(data)
    (folder / "try.yaml").write_text(file_with(top=f"mark: '{name}'"), encoding="utf-8")
    return load_file(folder / "try.yaml")


@pytest.mark.parametrize(("slug", "text"), ERRORS)
def test_an_error_is_told_once_and_at_its_place(slug, text):
    text, line, column = split_mark(text)
    loaded = load_text(text)
    told = [(d.slug, d.span and (d.span.line, d.span.column)) for d in loaded.diagnostics]
    assert told == [(slug, (line, column))]
    assert loaded.garment is None
    assert loaded.diagnostics[0].fix


@pytest.mark.parametrize(("kind", "data"), PICTURES)
def test_a_picture_that_could_do_harm_is_refused_where_it_is_named(folder, kind, data):
    loaded = marked(folder, "mark.svg", data)
    (fault,) = loaded.diagnostics
    assert (fault.slug, fault.severity, fault.path) == ("image", Severity.ERROR, ("mark",))
    assert re.fullmatch(pattern_of(f"fault-image-{kind}"), fault.message)
    assert fault.fix


@pytest.mark.parametrize(("media", "data"), SOUND)
def test_a_picture_is_known_by_what_is_in_it(folder, media, data):
    loaded = marked(folder, "mark.svg", data)
    assert loaded.diagnostics == ()
    assert loaded.garment.mark.media == media
    assert loaded.garment.mark.data == data


@pytest.mark.parametrize(
    ("name", "why"),
    [
        ("other.svg", "no such file"),
        ("../mark.svg", "does not lie in the folder"),
        ("/etc/mark.svg", "does not lie in the folder"),
        (".", "no such file"),
        ("https://example.org/mark.svg", "no such file"),
        ("a\\b.svg", "does not lie in the folder"),
    ],
)
def test_a_picture_lies_in_the_folder_of_the_garment_or_below(folder, name, why):
    (fault,) = marked(folder, name, None).diagnostics
    assert (fault.slug, why in fault.message) == ("image-unreadable", True)
    assert fault.fix


def test_a_picture_behind_a_link_that_leads_elsewhere_is_not_opened(folder, tmp_path):
    (tmp_path / "away.svg").write_bytes(svg())
    (folder / "link.svg").symlink_to(tmp_path / "away.svg")
    (fault,) = marked(folder, "link.svg", None).diagnostics
    assert "does not lie in the folder" in fault.message


def test_what_is_refused_is_told_with_its_line_and_column_in_the_picture(folder):
    (fault,) = marked(folder, "mark.svg", svg("\n  <script/>")).diagnostics
    assert "`mark.svg:2:3`" in fault.message
    assert "`<script>`" in fault.message


def test_all_faults_are_told_in_one_run_each_at_its_place():
    top = "mark: a.svg\nplans:\n  - {picture: b.svg, fabric: lace, size: XXL, width: far}\n"
    found = load_text(
        file_with(top=top + "sizes: [S]", fabric="net: {amounts: {wide: 1, 150: 2}}")
    ).diagnostics
    assert [(d.slug, d.span.line, d.span.column) for d in found] == [
        ("image-unreadable", 2, 7),
        ("image-unreadable", 4, 15),
        ("unknown-fabric", 4, 30),
        ("unknown-size", 4, 42),
        ("unreadable-length", 4, 54),
        ("unreadable-width", 9, 19),
        ("amount-without-unit", 9, 25),
        ("amount-without-unit", 9, 33),
    ]


def test_every_sentence_has_a_case(folder):
    loaded = [load_text(text.replace(MARK, "")) for _, text in ERRORS]
    loaded += [marked(folder, "mark.svg", data) for _, data in PICTURES]
    messages = [item.message for found in loaded for item in found.diagnostics]
    for key in material.SENTENCES:
        if key.startswith("fault-"):
            assert any(re.fullmatch(pattern_of(key), message) for message in messages), key


@settings(max_examples=200)
@given(
    st.one_of(
        st.binary(max_size=60),
        st.sampled_from(SOUND).flatmap(
            lambda sound: st.integers(0, len(sound[1])).map(lambda cut: sound[1][:cut])
        ),
    )
)
def test_whatever_a_file_holds_it_is_a_picture_or_refused(data):
    try:
        found = media_of(data)
    except ImageFaultError as fault:
        found = fault.kind
    media = {"image/png", "image/jpeg", "image/svg+xml"}
    assert found in media or f"fault-image-{found}" in material.SENTENCES


def test_a_page_at_600_dots_to_the_inch_is_not_too_large():
    assert PIXEL_LIMIT > 4960 * 7016
    assert media_of(png(4960, 7016)) == "image/png"


def test_amounts_are_by_width_and_by_size():
    garment = load_text(
        cloth("{150: 1.2 m, 45 in: {M: 2 yd, S: 1 7/8 yd}}", "sizes: [S, M]")
    ).garment
    small, medium = parse_length("1 7/8 yd"), parse_length("2 yd")
    assert garment.fabrics[-1].amounts == (
        Amount(parse_length("150 cm"), parse_length("1.2 m")),
        Amount(parse_length("45 in"), small, (("S", small), ("M", medium))),
    )


def test_an_amount_may_be_given_in_both_systems():
    loaded = load_text(cloth("{150: {m: 1.3, in: 54}, 115: {S: {in: 72, m: 1.8}}}", "sizes: [S]"))
    one, other = loaded.garment.fabrics[-1].amounts
    assert (cloth_amount(one.length), one.by_size) == ("1.3 m (1½ yd)", ())
    assert cloth_amount(other.by_size[0][1]) == "2 yd (1.8 m)"


def test_a_bare_width_is_in_the_unit_of_the_file():
    garment = load_text(cloth("{60: 2 yd}", "units: in")).garment
    assert garment.fabrics[-1].amounts[0].width == parse_length("60 in")


def test_date_and_terms_are_kept_as_they_are_written():
    top = (
        'date: 2026-08-01\nterms:\n  - "Sew it, and sell what you sew."\n  - Say whose\n    it is.'
    )
    garment = load_text(file_with(top=top)).garment
    assert garment.date == "2026-08-01"
    assert garment.terms == ("Sew it, and sell what you sew.", "Say whose it is.")
    assert load_text(file_with(top="terms: Sew it.")).garment.terms == ("Sew it.",)


def test_a_garment_with_pictures_reads_back_equal(folder):
    (folder / "mark.svg").write_bytes(svg())
    (folder / "lay 1.png").write_bytes(png(4, 4))
    top = "mark: mark.svg\nsizes: [S, M]\nplans:\n  - {picture: lay 1.png, fabric: canvas}\n"
    top += "  - {picture: mark.svg, fabric: canvas, width: 150, size: M, alt: 'Two, folded.'}"
    garment = load_text(file_with(top=top), folder=folder).garment
    assert [plan.size for plan in garment.plans] == [None, "M"]
    assert load_text(dump(garment), folder=folder).garment == garment
