"""The booklet on paper: no page is left half empty, on A4 and on Letter."""

import re
import shutil
import subprocess
from itertools import cycle, product
from pathlib import Path

import pytest
from paper.reading import find, walk
from render.check_squares import squares_at_the_foot
from tell.sampler import SHIPPED, booklet, built, document, planned

from seqplan.paper.blocks import Deed, Part
from seqplan.paper.handouts import Asked, compose
from seqplan.render.handout.paper import MARGIN_FOOT, MARGIN_TOP, Paper
from seqplan.render.handout.pdf import pdf

CHROMIUM = Path("/usr/bin/chromium")
READER = shutil.which("pdftotext")

TOP, FOOT = (each / 25.4 * 72 for each in (MARGIN_TOP, MARGIN_FOOT))
"""The margins of the page in points."""
PRINTS = list(product(SHIPPED, Paper))
IN_A_BROWSER = list(zip(SHIPPED, cycle(Paper), strict=False))
"""Each on one of the papers: a browser takes its time."""
USUAL = 0.58
LEAST = 0.4
LEAST_LAST = 0.07
"""How full a page is but for two, the worst of a booklet, and the last one.

The last may hold but the terms of use.

What fills more than half a page, the headings of a section and a long first operation with high
pictures, may leave the page before it so empty.
"""


@pytest.fixture(scope="module")
def browser():
    playwright = pytest.importorskip("playwright.sync_api", reason="playwright is not installed")
    with playwright.sync_playwright() as running:
        opened = running.chromium.launch(executable_path=str(CHROMIUM), args=["--no-sandbox"])
        yield opened
        opened.close()


def _fullness(pdf: Path) -> list[float]:
    """How far down the last word on each page stands, as a part of the page within margins."""
    done = subprocess.run([READER, "-bbox", pdf, "-"], capture_output=True, text=True, check=True)
    found = []
    for height, words in re.findall(
        r'<page width="[\d.]+" height="([\d.]+)">(.*?)</page>', done.stdout, re.DOTALL
    ):
        room = float(height) - TOP - FOOT
        ends = [float(end) - TOP for end in re.findall(r'yMax="([\d.]+)"', words)]
        found.append(max((end for end in ends if end <= room + 1), default=0) / room)
    return found


def _check(*fullness: float) -> None:
    *others, last = fullness
    assert others
    in_order = sorted(others)
    assert in_order[0] >= LEAST
    assert all(fullness >= USUAL for fullness in in_order[2:])
    assert last >= LEAST_LAST


@pytest.mark.browser
@pytest.mark.skipif(not CHROMIUM.exists(), reason=f"there is no chromium at {CHROMIUM}")
@pytest.mark.skipif(READER is None, reason="there is no pdftotext")
@pytest.mark.parametrize(("name", "paper"), IN_A_BROWSER)
def test_no_page_that_a_browser_prints_is_left_half_empty(name, paper, browser, tmp_path):
    page = browser.new_page()
    page.set_content(booklet(name, paper))
    page.pdf(path=tmp_path / "booklet.pdf", prefer_css_page_size=True)
    page.close()
    _check(*_fullness(tmp_path / "booklet.pdf"))
    pypdf = pytest.importorskip("pypdf", reason="pypdf is not installed")
    for printed in pypdf.PdfReader(tmp_path / "booklet.pdf").pages:
        for square, side in zip(squares_at_the_foot(printed), (20, 0.75 * 25.4), strict=True):
            assert square == pytest.approx((side, side), abs=0.1)


@pytest.mark.skipif(READER is None, reason="there is no pdftotext")
@pytest.mark.parametrize(("name", "paper"), PRINTS)
def test_no_page_of_the_pdf_is_left_half_empty(name, paper, tmp_path):
    (tmp_path / "booklet.pdf").write_bytes(pdf(document(name), paper))
    _check(*_fullness(tmp_path / "booklet.pdf"))


@pytest.mark.parametrize(("name", "paper"), PRINTS)
def test_no_shot_breaks_over_a_page(name, paper, tmp_path):
    pypdf = pytest.importorskip("pypdf", reason="pypdf is not installed")
    (made,) = compose("filming", built(name), planned(name), Asked()).values()
    (tmp_path / "shots.pdf").write_bytes(pdf(made, paper))
    pages = [_plain(page.extract_text()) for page in pypdf.PdfReader(tmp_path / "shots.pdf").pages]
    shots = [part for part in find(made, Part) if part.is_whole]
    assert shots
    for shot in shots:
        (page,) = (page for page in pages if _plain(shot.title + shot.remark) in page)
        deeds = [block for block in walk(shot.blocks) if isinstance(block, Deed)]
        assert deeds
        assert all(_plain(text) in page for deed in deeds for text in deed.texts)


def _plain(text: str) -> str:
    return "".join(text.split()).replace("\N{ZERO WIDTH SPACE}", "")
